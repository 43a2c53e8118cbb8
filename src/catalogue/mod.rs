//! What ships inside the program: the files of `assets/` and `scenarios/`, embedded when it is built.
//!
//! `build.rs` finds them, so that a new TOML file in its folder is all that a new gear set, support or exercise takes. The
//! order of each list follows from what the files say.

use std::sync::LazyLock;

use crate::bearing::Support;
use crate::exercise::{Scenario, Source, Sources};
use crate::gear::Design;

/// An embedded file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Embedded {
    /// Its name on the command line: the file name without the ending.
    pub name: &'static str,
    /// Its text.
    pub text: &'static str,
}

include!(concat!(env!("OUT_DIR"), "/embedded.rs"));

/// All gear sets, by ratio.
pub static GEAR_SETS: LazyLock<Vec<Embedded>> = LazyLock::new(|| {
    in_order(GEAR_FILES, |text| {
        let design = Design::from_toml(text).ok()?;
        Some([f64::from(design.wheel_teeth) / f64::from(design.pinion_teeth), 0.0])
    })
});

/// The embedded gear set of this name.
pub fn gear_set(name: &str) -> Option<&'static Embedded> {
    GEAR_FILES.iter().find(|e| e.name == name)
}

/// All pinion supports, from light to heavy: by the bore of the head bearing.
pub static SUPPORTS: LazyLock<Vec<Embedded>> = LazyLock::new(|| {
    in_order(SUPPORT_FILES, |text| {
        let support = Support::from_toml(text).ok()?;
        Some([support.head_bearing.bore_mm, support.tail_bearing.bore_mm])
    })
});

/// The embedded pinion support of this name.
pub fn support(name: &str) -> Option<&'static Embedded> {
    SUPPORT_FILES.iter().find(|e| e.name == name)
}

/// All exercises, from reading to saying no: by step and then by the `order` that their files give.
pub static SCENARIOS: LazyLock<Vec<Embedded>> = LazyLock::new(|| {
    in_order(SCENARIO_FILES, |text| {
        let scenario = Scenario::from_toml(text).ok()?;
        let order = scenario.order.map_or(f64::INFINITY, f64::from);
        Some([f64::from(scenario.step), order])
    })
});

/// The embedded scenario of this name.
pub fn scenario(name: &str) -> Option<&'static Embedded> {
    SCENARIO_FILES.iter().find(|e| e.name == name)
}

/// Files by their keys, those with the same keys by name. A file that cannot be read comes last; a test reads them all.
fn in_order(files: &[Embedded], keys: fn(&str) -> Option<[f64; 2]>) -> Vec<Embedded> {
    let mut keyed: Vec<([f64; 2], Embedded)> = files
        .iter()
        .map(|file| (keys(file.text).unwrap_or([f64::INFINITY; 2]), *file))
        .collect();
    keyed.sort_by(|([a, more_a], _), ([b, more_b], _)| a.total_cmp(b).then(more_a.total_cmp(more_b)));
    keyed.into_iter().map(|(_, file)| file).collect()
}

/// Gear sets and supports of the catalogue, for exercises.
#[derive(Debug, Clone, Copy, Default)]
pub struct Shelf;

impl Sources for Shelf {
    fn text(&self, kind: Source, name: &str) -> Option<String> {
        let found = match kind {
            Source::Gears => gear_set(name),
            Source::Support => support(name),
        };
        found.map(|e| e.text.to_owned())
    }
}
