//! Finding and reading gear sets: a file, or one that ships with the program.

use std::path::Path;

use crate::catalogue;
use crate::gear::{Design, GearSet, GearSetProblem, GeometryError, Side};
use crate::report::problem::problem_text;
use crate::store;
use crate::text::{Document, Limits, Problems, decode};
use crate::words::say;

use super::Failure;

/// A gear set with the name under which it was found.
#[derive(Debug, Clone, PartialEq)]
pub struct FoundGearSet {
    /// File name, or the name of the embedded set.
    pub source: String,
    /// As designed.
    pub design: Design,
    /// The text it was read from.
    pub text: String,
}

impl FoundGearSet {
    /// The gears of the set.
    ///
    /// # Errors
    /// Gears that cannot exist, shown at the line that has to change.
    pub fn prepare(&self) -> Result<GearSet, Failure> {
        GearSet::new(self.design.clone()).map_err(|error| {
            let mut problems = Problems::new();
            let key = key_to_change(&self.design, &error);
            let document = Document::parse::<GeometryError>(&self.text);
            let place = document.map_or(0..0, |document| document.place_of(key));
            problems.note_own(place, error);
            Failure::input(problem_text(&self.source, &self.text, &problems))
        })
    }
}

/// Names of what ships with the program, one a line.
pub(super) fn listed(names: &[&str]) -> String {
    ["  ", &names.join("\n  ")].concat()
}

/// The key of the file that a geometry error speaks of first.
fn key_to_change(design: &Design, error: &GeometryError) -> &'static str {
    match error {
        GeometryError::OffsetTooLarge { .. } => "pair.offset_mm",
        GeometryError::NoLimitRadius { .. } => "pair.limit_radius_mm",
        GeometryError::ImpossibleBlank { .. } => "pair.wheel_face_width_mm",
        GeometryError::NoBladeAngle { side } | GeometryError::NoRegularContact { side } => match side {
            Side::Drive => "pair.pressure_angle_drive_deg",
            Side::Coast => "pair.pressure_angle_coast_deg",
        },
        GeometryError::NegativePointWidth { .. } if design.thickness_factor < 0.0 => "pair.thickness_factor",
        GeometryError::NegativePointWidth { .. } => "pair.depth_factor",
        GeometryError::CutterMissesFlank { .. } => "pair.cutter_radius_mm",
    }
}

/// The gear set `source`: the name of an embedded set, or a file.
///
/// # Errors
/// No such set and no such file, or everything that is wrong with the file.
pub fn find(source: &str) -> Result<FoundGearSet, Failure> {
    if let Some(embedded) = catalogue::gear_set(source) {
        return read(source, embedded.text.as_bytes());
    }
    let path = Path::new(source);
    if !path.exists() && !source.contains(['/', '\\', '.'])
        || !path.exists() && path.extension().is_none_or(|e| e != "toml")
    {
        let names: Vec<&str> = catalogue::GEAR_SETS.iter().map(|e| e.name).collect();
        return Err(Failure::bad_input(say!(
            "files-no-gear-set",
            name = source,
            names = listed(&names)
        )));
    }
    read(source, &store::read_within(path, Limits::HAND_WRITTEN.bytes)?)
}

/// The gear set in a file.
///
/// # Errors
/// No such file, or everything that is wrong with it.
pub fn open(path: &Path) -> Result<FoundGearSet, Failure> {
    let found = read(
        &path.to_string_lossy(),
        &store::read_within(path, Limits::HAND_WRITTEN.bytes)?,
    )?;
    // Gears that cannot exist are told with the line that has to change.
    found.prepare()?;
    Ok(found)
}

/// All embedded gear sets.
///
/// # Errors
/// As for a file; a test reads them all, so that this does not happen to people.
pub fn embedded() -> Result<Vec<FoundGearSet>, Failure> {
    catalogue::GEAR_SETS
        .iter()
        .map(|e| read(e.name, e.text.as_bytes()))
        .collect()
}

/// Reads a gear set from the bytes of a file shown to people as `source`.
///
/// # Errors
/// Everything that is wrong with the text.
pub fn read(source: &str, bytes: &[u8]) -> Result<FoundGearSet, Failure> {
    let text = decode::<GearSetProblem>(bytes, Limits::HAND_WRITTEN)
        .map_err(|problems| Failure::input(problem_text(source, &String::from_utf8_lossy(bytes), &problems)))?;
    let design = Design::from_toml(text).map_err(|problems| Failure::input(problem_text(source, text, &problems)))?;
    Ok(FoundGearSet {
        source: source.to_owned(),
        design,
        text: text.to_owned(),
    })
}
