//! Random sane gear sets: a shipped set with everything moved a little.

use lashwright::catalogue::GEAR_SETS;
use lashwright::gear::{DepthTaper, Design, EaseOff};
use proptest::prelude::*;

/// How far from 1 the lengths and the ease-off of a random set may be.
const LENGTHS: f64 = 0.03;
const EASE_OFF: f64 = 0.2;

fn eased(e: &EaseOff, by: [f64; 2]) -> EaseOff {
    EaseOff {
        lengthwise_crown_um: e.lengthwise_crown_um * (1.0 + EASE_OFF * by[0]),
        profile_crown_um: e.profile_crown_um * (1.0 + EASE_OFF * by[1]),
        ..*e
    }
}

/// A set near the shipped one of this index; all of `by` from −1 to 1.
fn near(index: usize, by: [f64; 10]) -> Design {
    let design = Design::from_toml(GEAR_SETS[index].text).expect("shipped sets are read");
    Design {
        offset_mm: design.offset_mm * (1.0 + LENGTHS * by[0]),
        wheel_outer_pitch_diameter_mm: design.wheel_outer_pitch_diameter_mm * (1.0 + LENGTHS * by[1]),
        wheel_face_width_mm: design.wheel_face_width_mm * (1.0 + LENGTHS * by[2]),
        pinion_mean_spiral_angle_deg: design.pinion_mean_spiral_angle_deg + by[3],
        limit_radius_mm: design.limit_radius_mm * (1.0 + LENGTHS * by[4]),
        cutter_radius_mm: design.cutter_radius_mm * (1.0 + LENGTHS * by[4]),
        pressure_angle_drive_deg: design.pressure_angle_drive_deg + by[5],
        pressure_angle_coast_deg: design.pressure_angle_coast_deg + by[5],
        ease_off_drive: eased(&design.ease_off_drive, [by[6], by[7]]),
        ease_off_coast: eased(&design.ease_off_coast, [by[8], by[9]]),
        ..design
    }
}

/// Any sane set.
pub(crate) fn any_set() -> impl Strategy<Value = Design> {
    (0..GEAR_SETS.len(), prop::array::uniform10(-1.0..1.0)).prop_map(|(index, by)| near(index, by))
}

/// Whether the set is of the family whose cutter is large and whose depth is tapered.
pub(crate) fn tapered(design: &Design) -> bool {
    design.depth == DepthTaper::Tapered
}

/// All lengths times `k`, the relief and the lash too.
pub(crate) fn scaled(design: &Design, k: f64) -> Design {
    let ease = |e: &EaseOff| EaseOff {
        lengthwise_crown_um: e.lengthwise_crown_um * k,
        profile_crown_um: e.profile_crown_um * k,
        twist_um: e.twist_um * k,
        lengthwise_slope_um: e.lengthwise_slope_um * k,
        profile_slope_um: e.profile_slope_um * k,
    };
    Design {
        offset_mm: design.offset_mm * k,
        wheel_outer_pitch_diameter_mm: design.wheel_outer_pitch_diameter_mm * k,
        wheel_face_width_mm: design.wheel_face_width_mm * k,
        limit_radius_mm: design.limit_radius_mm * k,
        cutter_radius_mm: design.cutter_radius_mm * k,
        lash_mm: design.lash_mm * k,
        ease_off_drive: ease(&design.ease_off_drive),
        ease_off_coast: ease(&design.ease_off_coast),
        ..design.clone()
    }
}
