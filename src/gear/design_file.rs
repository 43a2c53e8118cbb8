//! The file format `lashwright-gears/1`: reading and checking.
//!
//! Source: the format and its ranges are our own; the names are those of ISO 23509:2006.

use crate::text::{Document, NumberRange, Problems, Table};

use super::{DepthTaper, Design, EaseOff};

/// What only a gear set file can have wrong.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum GearSetProblem {
    /// The wheel has no more teeth than the pinion.
    WheelTeeth {
        /// Of the wheel.
        wheel: u32,
        /// Of the pinion.
        pinion: u32,
    },
    /// The teeth are longer than the wheel has room for.
    FaceWidth {
        /// Face width, mm.
        face_mm: f64,
        /// Outer pitch diameter, mm.
        diameter_mm: f64,
    },
    /// Neither the limit radius nor the cutter radius is given.
    NoRadius,
}

/// What ease-off may be, µm: far beyond what lapping or grinding leaves.
const EASE_OFF_UM: NumberRange = NumberRange::closed(-1000.0, 1000.0);
/// Limit radius and cutter radius, mm.
const RADIUS_MM: NumberRange = NumberRange::closed(5.0, 2000.0);
/// Pressure angles, degrees: cutters are made from about 10 to 35.
const PRESSURE_ANGLE_DEG: NumberRange = NumberRange::closed(5.0, 40.0);

impl Design {
    /// Reads a gear set file.
    ///
    /// # Errors
    /// Everything that is wrong with the text: what is not TOML, unknown keys, missing keys, wrong kinds, values out of
    /// range. Whether the geometry exists is not looked at here.
    pub fn from_toml(text: &str) -> Result<Self, Problems<GearSetProblem>> {
        let document = Document::parse(text)?;
        let mut problems = Problems::new();
        let mut root = document.root();
        if !root.format("lashwright-gears", 1, &mut problems) {
            return Err(problems);
        }
        let name = root.text("name", 1..=60, &mut problems);
        let pair = root.table("pair", &mut problems);
        let (mut drive, mut coast) = (None, None);
        if let Some(mut ease_off) = root.optional_table("ease_off", &mut problems) {
            drive = ease_off.optional_table("drive", &mut problems);
            coast = ease_off.optional_table("coast", &mut problems);
            ease_off.finish(&mut problems);
        }
        let ease_off_drive = drive.map_or_else(EaseOff::default, |table| read_ease_off(table, &mut problems));
        let ease_off_coast = coast.map_or_else(EaseOff::default, |table| read_ease_off(table, &mut problems));
        root.finish(&mut problems);
        let design = match (name, pair) {
            (Some(name), Some(pair)) => read_pair(pair, name, ease_off_drive, ease_off_coast, &mut problems),
            (None, Some(pair)) => read_pair(pair, String::new(), ease_off_drive, ease_off_coast, &mut problems),
            _ => None,
        };
        problems.verdict(design)
    }
}

fn read_pair(
    mut pair: Table<'_>,
    name: String,
    ease_off_drive: EaseOff,
    ease_off_coast: EaseOff,
    problems: &mut Problems<GearSetProblem>,
) -> Option<Design> {
    let p = problems;
    let pinion_teeth = pair.integer("pinion_teeth", 5..=30, p);
    let wheel_teeth = pair.integer("wheel_teeth", 20..=120, p);
    let offset_mm = pair.number("offset_mm", NumberRange::closed(0.0, 300.0), p);
    let wheel_outer_pitch_diameter_mm =
        pair.number("wheel_outer_pitch_diameter_mm", NumberRange::closed(20.0, 2000.0), p);
    let wheel_face_width_mm = pair.number("wheel_face_width_mm", NumberRange::closed(2.0, 400.0), p);
    let pinion_mean_spiral_angle_deg = pair.number("pinion_mean_spiral_angle_deg", NumberRange::closed(0.0, 70.0), p);
    let limit_radius = pair.optional_number("limit_radius_mm", RADIUS_MM, p);
    let cutter_radius = pair.optional_number("cutter_radius_mm", RADIUS_MM, p);
    let pressure_angle_drive_deg = pair.number("pressure_angle_drive_deg", PRESSURE_ANGLE_DEG, p);
    let pressure_angle_coast_deg = pair.number("pressure_angle_coast_deg", PRESSURE_ANGLE_DEG, p);
    let depth = pair.choice(
        "depth",
        &[("tapered", DepthTaper::Tapered), ("uniform", DepthTaper::Uniform)],
        p,
    );
    let depth_factor = pair.optional_number("depth_factor", NumberRange::closed(0.5, 4.0), p);
    let clearance_factor = pair.optional_number("clearance_factor", NumberRange::closed(0.0, 0.5), p);
    let wheel_addendum_factor = pair.optional_number("wheel_addendum_factor", NumberRange::closed(0.02, 0.98), p);
    let thickness_factor = pair.optional_number("thickness_factor", NumberRange::closed(-0.5, 0.5), p);
    let lash_mm = pair.optional_number("lash_mm", NumberRange::closed(0.0, 2.0), p);

    if let (Some(pinion), Some(wheel)) = (pinion_teeth, wheel_teeth)
        && wheel <= pinion
    {
        p.note_own(
            pair.place_of("wheel_teeth"),
            GearSetProblem::WheelTeeth { wheel, pinion },
        );
    }
    if let (Some(face_mm), Some(diameter_mm)) = (wheel_face_width_mm, wheel_outer_pitch_diameter_mm)
        && 2.0 * face_mm >= diameter_mm
    {
        p.note_own(
            pair.place_of("wheel_face_width_mm"),
            GearSetProblem::FaceWidth { face_mm, diameter_mm },
        );
    }
    if !pair.has("limit_radius_mm") && !pair.has("cutter_radius_mm") {
        p.note_own(pair.place(), GearSetProblem::NoRadius);
    }
    pair.finish(p);

    let (pinion_teeth, wheel_teeth) = (pinion_teeth?, wheel_teeth?);
    let ratio = f64::from(wheel_teeth) / f64::from(pinion_teeth);
    Some(Design {
        name,
        pinion_teeth,
        wheel_teeth,
        offset_mm: offset_mm?,
        wheel_outer_pitch_diameter_mm: wheel_outer_pitch_diameter_mm?,
        wheel_face_width_mm: wheel_face_width_mm?,
        pinion_mean_spiral_angle_deg: pinion_mean_spiral_angle_deg?,
        limit_radius_mm: limit_radius.or(cutter_radius)?,
        cutter_radius_mm: cutter_radius.or(limit_radius)?,
        pressure_angle_drive_deg: pressure_angle_drive_deg?,
        pressure_angle_coast_deg: pressure_angle_coast_deg?,
        depth: depth?,
        depth_factor: depth_factor.unwrap_or(2.0),
        clearance_factor: clearance_factor.unwrap_or(0.125),
        wheel_addendum_factor: wheel_addendum_factor.unwrap_or(0.21 + 0.29 / (ratio * ratio)),
        thickness_factor: thickness_factor.unwrap_or(0.03),
        lash_mm: lash_mm.unwrap_or(0.15),
        ease_off_drive,
        ease_off_coast,
    })
}

fn read_ease_off(mut table: Table<'_>, problems: &mut Problems<GearSetProblem>) -> EaseOff {
    let mut number = |key| table.optional_number(key, EASE_OFF_UM, problems).unwrap_or(0.0);
    let ease_off = EaseOff {
        lengthwise_crown_um: number("lengthwise_crown_um"),
        profile_crown_um: number("profile_crown_um"),
        twist_um: number("twist_um"),
        lengthwise_slope_um: number("lengthwise_slope_um"),
        profile_slope_um: number("profile_slope_um"),
    };
    table.finish(problems);
    ease_off
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::{FileUnit, ProblemKind};

    /// The sample of the format's own description.
    pub(crate) const SAMPLE: &str = r#"format = "lashwright-gears/1"
name = "Sample, 41 to 11"
[pair]
pinion_teeth = 11
wheel_teeth = 41
offset_mm = 35.0
wheel_outer_pitch_diameter_mm = 220.0
wheel_face_width_mm = 32.0
pinion_mean_spiral_angle_deg = 50.0
limit_radius_mm = 95.25
pressure_angle_drive_deg = 20.0
pressure_angle_coast_deg = 20.0
depth = "tapered"
[ease_off.drive]
lengthwise_crown_um = 60.0
profile_crown_um = 20.0
"#;

    #[test]
    fn the_sample_is_read_with_its_defaults() {
        let design = Design::from_toml(SAMPLE).expect("the sample is right");
        assert_eq!((design.pinion_teeth, design.wheel_teeth), (11, 41), "teeth");
        assert!(
            (design.cutter_radius_mm - 95.25).abs() < 1e-12,
            "cutter radius from the limit radius"
        );
        assert!(
            (design.wheel_addendum_factor - 0.230_874_479).abs() < 1e-9,
            "0.21 + 0.29 / (41/11)²"
        );
        assert!((design.depth_factor - 2.0).abs() < 1e-12, "depth factor");
        assert!((design.lash_mm - 0.15).abs() < 1e-12, "lash");
        assert!(
            (design.ease_off_drive.lengthwise_crown_um - 60.0).abs() < 1e-12,
            "ease-off"
        );
        assert_eq!(design.ease_off_coast, EaseOff::default(), "no ease-off on coast");
    }

    #[test]
    fn all_problems_are_found_at_once() {
        let text = SAMPLE
            .replace("pinion_teeth = 11", "pinion_teath = 11")
            .replace("offset_mm = 35.0", "offset_mm = -3")
            .replace("= 220.0", "= 8.66")
            .replace("\"tapered\"", "\"taperd\"")
            .replace("wheel_face_width_mm = 32.0", "wheel_face_width_mm = \"32\"");
        let problems = Design::from_toml(&text).expect_err("five problems");
        let kinds: Vec<_> = problems.list().iter().map(|p| &p.kind).collect();
        assert_eq!(kinds.len(), 6, "{kinds:#?}");
        let has = |fits: &dyn Fn(&ProblemKind<GearSetProblem>) -> bool| kinds.iter().any(|kind| fits(kind));
        assert!(
            has(&|kind| matches!(
                kind,
                ProblemKind::UnknownKey {
                    near: Some("pinion_teeth"),
                    ..
                }
            )),
            "{kinds:#?}"
        );
        assert!(
            has(&|kind| matches!(
                kind,
                ProblemKind::OutOfRange { mix_up: Some(mix_up), .. }
                    if mix_up.given_in == FileUnit::Inches && (mix_up.meant - 219.964).abs() < 1e-9
            )),
            "{kinds:#?}"
        );
        assert!(
            has(&|kind| matches!(kind, ProblemKind::UnknownWord { near: Some(near), .. } if near == "tapered")),
            "{kinds:#?}"
        );
        for problem in problems.list() {
            assert!(text.get(problem.span.clone()).is_some(), "{problem:?} can be drawn");
        }
    }
}
