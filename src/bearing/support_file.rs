//! The file format `lashwright-support/2`, and `/1`, which names rows of the friction table instead of their constants and
//! does not say which nut torque the support is meant for: reading and checking.
//!
//! Source: the format and its ranges are our own.

use super::fastener::ThreadJoint;
use super::friction_constants::FrictionConstants;
use super::friction_series::FrictionSeries;
use super::oil::Oil;
use super::spacer::{LengthFault, Spacer, SpacerKind};
use super::support::Support;
use super::support_problem::SupportProblem;
use super::tapered::{BearingKind, TaperedBearing};
use super::under_load;
use crate::text::{Document, NumberRange, Problems, Table};

/// Versions of the format that are read.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Version {
    /// With `friction_series`.
    One,
    /// With `friction` and `nut_torque_nm`.
    Two,
}

/// Which of the two kinds of spacers a file names.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Kind {
    Solid,
    Collapsible,
}

impl Support {
    /// Reads a support file.
    ///
    /// # Errors
    /// Everything that is wrong with the text: what is not TOML, unknown keys, missing keys, wrong kinds, values out of
    /// range, dimensions that cannot belong together.
    pub fn from_toml(text: &str) -> Result<Self, Problems<SupportProblem>> {
        let document = Document::parse(text)?;
        let mut problems = Problems::new();
        let p = &mut problems;
        let mut root = document.root();
        let version = match root.version("lashwright-support", 1..=2, p) {
            None => return Err(problems),
            Some(1) => Version::One,
            Some(_) => Version::Two,
        };
        let name = root.text("name", 1..=60, p);
        let meant = read_meant_nut_torque(&mut root, version, p);
        let head = root.table("head_bearing", p).and_then(|t| read_bearing(t, version, p));
        let tail = root.table("tail_bearing", p).and_then(|t| read_bearing(t, version, p));
        let spacer = root.table("spacer", p).and_then(|t| read_spacer(t, p));
        let nut = root.table("nut", p).and_then(|t| read_nut(t, p));
        let seal = root.table("seal", p).and_then(|mut t| {
            let shaft = t.number("shaft_diameter_mm", NumberRange::closed(5.0, 300.0), p);
            t.finish(p);
            shaft
        });
        let oil = root.table("oil", p).and_then(|t| read_oil(t, p));
        let under_load = root
            .optional_table("under_load", p)
            .and_then(|t| under_load::read(t, p));
        root.finish(p);
        let support = (|| {
            let (spacer, zero_preload_length_mm, structure_stiffness_n_per_um) = spacer?;
            Some(Self {
                name: name?,
                meant_nut_torque_nm: meant.ok()?,
                head_bearing: head?,
                tail_bearing: tail?,
                spacer,
                zero_preload_length_mm,
                structure_stiffness_n_per_mm: 1.0e3 * structure_stiffness_n_per_um,
                nut: nut?,
                seal_shaft_diameter_mm: seal?,
                oil: oil?,
                under_load,
            })
        })();
        problems.verdict(support)
    }
}

/// Nut torque that the support is meant for; version 1 does not have it. An error where it is wrong,
/// which then stands among the problems.
fn read_meant_nut_torque(
    root: &mut Table<'_>,
    version: Version,
    p: &mut Problems<SupportProblem>,
) -> Result<Option<f64>, ()> {
    let torque = NumberRange::closed(1.0, 3_000.0);
    match version {
        Version::Two => root.number("nut_torque_nm", torque, p).map(Some).ok_or(()),
        Version::One => {
            refuse_of_version_two(root, "nut_torque_nm", p);
            Ok(None)
        }
    }
}

/// Notes a key of version 2 in a file of version 1.
fn refuse_of_version_two(table: &mut Table<'_>, key: &'static str, p: &mut Problems<SupportProblem>) {
    if table.has(key) {
        table.refuse(key, SupportProblem::OfVersionTwo { key }, p);
    }
}

fn read_bearing(mut table: Table<'_>, version: Version, p: &mut Problems<SupportProblem>) -> Option<TaperedBearing> {
    let bore = table.number("bore_mm", NumberRange::closed(5.0, 400.0), p);
    let outside = table.number("outside_diameter_mm", NumberRange::closed(10.0, 600.0), p);
    let friction = match version {
        Version::One => read_series(&mut table, p).map(|series| (series.constants(), series.is_steep())),
        Version::Two => read_constants(&mut table, p),
    };
    let thrust_factor_y = table.number("thrust_factor_y", NumberRange::closed(0.3, 5.0), p);
    let roller_count = table.integer("roller_count", 4..=100, p);
    let roller_length_mm = table.number("roller_length_mm", NumberRange::closed(2.0, 200.0), p);
    let friction_factor = table.number("friction_factor", NumberRange::closed(0.05, 20.0), p);
    if let (Some(bore_mm), Some(outside_mm)) = (bore, outside)
        && outside_mm < 1.2 * bore_mm
    {
        p.note_own(
            table.place_of("outside_diameter_mm"),
            SupportProblem::CupTooSmall { bore_mm, outside_mm },
        );
    }
    table.finish(p);
    let (friction, steep) = friction?;
    Some(TaperedBearing {
        kind: BearingKind::Tapered,
        bore_mm: bore?,
        outside_diameter_mm: outside?,
        friction,
        steep,
        thrust_factor_y: thrust_factor_y?,
        roller_count: roller_count?,
        roller_length_mm: roller_length_mm?,
        friction_factor: friction_factor?,
    })
}

/// The constants of the friction moment, and whether the bearing is steep. Ranges reach ten times and more beyond the rows
/// of the friction table.
fn read_constants(table: &mut Table<'_>, p: &mut Problems<SupportProblem>) -> Option<(FrictionConstants, bool)> {
    if table.has("friction_series") {
        let row = table
            .text("friction_series", 1..=12, p)
            .and_then(|word| FrictionSeries::from_name(&word));
        table.refuse("friction_series", SupportProblem::OfVersionOne { row }, p);
    }
    let steep = table.flag("steep", false, p);
    let mut constants = if table.has("friction_series") {
        table.optional_table("friction", p)?
    } else {
        table.table("friction", p)?
    };
    let r1 = constants.number("r1", NumberRange::closed(1.0e-7, 1.0e-4), p);
    let r2 = constants.number("r2", NumberRange::closed(1.0, 200.0), p);
    let s1 = constants.number("s1", NumberRange::closed(5.0e-4, 0.5), p);
    let s2 = constants.number("s2", NumberRange::closed(0.1, 50.0), p);
    constants.finish(p);
    let constants = FrictionConstants {
        r1: r1?,
        r2: r2?,
        s1: s1?,
        s2: s2?,
    };
    Some((constants, steep?))
}

/// The row of the friction table; words are few enough to be listed once.
fn read_series(table: &mut Table<'_>, p: &mut Problems<SupportProblem>) -> Option<FrictionSeries> {
    for key in ["friction", "steep"] {
        refuse_of_version_two(table, key, p);
    }
    let word = table.text("friction_series", 1..=12, p)?;
    let series = FrictionSeries::from_name(&word);
    if series.is_none() {
        p.note_own(
            table.place_of("friction_series"),
            SupportProblem::UnknownSeries { word },
        );
    }
    series
}

/// The spacer, the zero-preload length in mm, and the structure's stiffness in N/µm.
fn read_spacer(mut table: Table<'_>, p: &mut Problems<SupportProblem>) -> Option<(Spacer, f64, f64)> {
    let kind = table.choice("kind", &[("solid", Kind::Solid), ("collapsible", Kind::Collapsible)], p);
    let free = table.number("free_length_mm", NumberRange::closed(2.0, 500.0), p);
    let zero = table.number("zero_preload_length_mm", NumberRange::closed(2.0, 500.0), p);
    let area = table.number("area_mm2", NumberRange::closed(20.0, 20_000.0), p);
    let structure = table.number("structure_stiffness_n_per_um", NumberRange::closed(5.0, 5_000.0), p);
    let spacer_kind = match kind {
        Some(Kind::Collapsible) => {
            let yield_force = table.number("yield_force_n", NumberRange::closed(500.0, 1.0e6), p);
            let hardening = table.number("hardening_n_per_mm", NumberRange::closed(0.0, 1.0e6), p);
            yield_force
                .zip(hardening)
                .map(|(yield_force_n, hardening_n_per_mm)| SpacerKind::Collapsible {
                    yield_force_n,
                    hardening_n_per_mm,
                })
        }
        Some(Kind::Solid) => {
            refuse_sleeve_keys(&mut table, p);
            Some(SpacerKind::Solid)
        }
        None => {
            // Which keys belong here is not known: ask for both, so that neither is called unknown as well.
            for key in ["yield_force_n", "hardening_n_per_mm"] {
                table.optional_number(key, NumberRange::closed(f64::NEG_INFINITY, f64::INFINITY), p);
            }
            None
        }
    };
    if let (Some(kind), Some(free), Some(zero)) = (kind, free, zero)
        && let Some(fault) = LengthFault::of(kind == Kind::Collapsible, free, zero)
    {
        p.note_own(table.place_of("free_length_mm"), SupportProblem::Length(fault));
    }
    table.finish(p);
    let spacer = Spacer {
        kind: spacer_kind?,
        free_length_mm: free?,
        area_mm2: area?,
    };
    Some((spacer, zero?, structure?))
}

fn refuse_sleeve_keys(table: &mut Table<'_>, p: &mut Problems<SupportProblem>) {
    for key in ["yield_force_n", "hardening_n_per_mm"] {
        if table.has(key) {
            table.refuse(key, SupportProblem::OfSleeve { key }, p);
        }
    }
}

fn read_nut(mut table: Table<'_>, p: &mut Problems<SupportProblem>) -> Option<ThreadJoint> {
    let friction = NumberRange::closed(0.02, 0.6);
    let pitch = table.number("pitch_mm", NumberRange::closed(0.3, 10.0), p);
    let pitch_diameter = table.number("pitch_diameter_mm", NumberRange::closed(5.0, 200.0), p);
    let face = table.number("face_mean_diameter_mm", NumberRange::closed(5.0, 400.0), p);
    let friction_thread = table.number("friction_thread", friction, p);
    let friction_face = table.number("friction_face", friction, p);
    if let (Some(pitch_mm), Some(diameter_mm)) = (pitch, pitch_diameter)
        && 4.0 * pitch_mm > diameter_mm
    {
        p.note_own(
            table.place_of("pitch_mm"),
            SupportProblem::PitchTooCoarse { pitch_mm, diameter_mm },
        );
    }
    if let (Some(face_mm), Some(diameter_mm)) = (face, pitch_diameter)
        && face_mm <= diameter_mm
    {
        p.note_own(
            table.place_of("face_mean_diameter_mm"),
            SupportProblem::FaceInsideThread { face_mm, diameter_mm },
        );
    }
    table.finish(p);
    Some(ThreadJoint {
        pitch_mm: pitch?,
        pitch_diameter_mm: pitch_diameter?,
        face_mean_diameter_mm: face?,
        friction_thread: friction_thread?,
        friction_face: friction_face?,
    })
}

fn read_oil(mut table: Table<'_>, p: &mut Problems<SupportProblem>) -> Option<Oil> {
    let at_40 = table.number("viscosity_40_mm2_s", NumberRange::closed(5.0, 3_000.0), p);
    let at_100 = table.number("viscosity_100_mm2_s", NumberRange::closed(2.0, 200.0), p);
    if let (Some(cool), Some(hot)) = (at_40, at_100)
        && hot >= cool
    {
        p.note_own(
            table.place_of("viscosity_100_mm2_s"),
            SupportProblem::ThickerWhenHot {
                at_40_mm2_s: cool,
                at_100_mm2_s: hot,
            },
        );
    }
    table.finish(p);
    Some(Oil {
        viscosity_40_mm2_s: at_40?,
        viscosity_100_mm2_s: at_100?,
    })
}
