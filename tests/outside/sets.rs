//! The shipped gear sets, for the core and for the oracles.

use lashwright::catalogue::GEAR_SETS;
use lashwright::gear::{DepthTaper, Design, EaseOff};

use super::oracle::numbers::Numbers;

/// The shipped set whose name starts with this ratio.
pub(crate) fn shipped(ratio: &str) -> Design {
    let found = GEAR_SETS
        .iter()
        .find(|e| e.name.starts_with(ratio))
        .expect("a shipped set of this ratio");
    Design::from_toml(found.text).expect("shipped sets are read")
}

/// All shipped sets.
pub(crate) fn all() -> Vec<Design> {
    GEAR_SETS
        .iter()
        .map(|e| Design::from_toml(e.text).expect("shipped sets are read"))
        .collect()
}

/// A design's numbers as the oracles want them.
pub(crate) fn numbers(design: &Design) -> Numbers {
    let ease = |e: &EaseOff| {
        [
            e.lengthwise_crown_um,
            e.profile_crown_um,
            e.twist_um,
            e.lengthwise_slope_um,
            e.profile_slope_um,
        ]
    };
    Numbers {
        z1: f64::from(design.pinion_teeth),
        z2: f64::from(design.wheel_teeth),
        offset: design.offset_mm,
        d_e2: design.wheel_outer_pitch_diameter_mm,
        b2: design.wheel_face_width_mm,
        beta_m1_deg: design.pinion_mean_spiral_angle_deg,
        limit_radius: design.limit_radius_mm,
        cutter_radius: design.cutter_radius_mm,
        alpha_drive_deg: design.pressure_angle_drive_deg,
        alpha_coast_deg: design.pressure_angle_coast_deg,
        tapered: design.depth == DepthTaper::Tapered,
        k_d: design.depth_factor,
        k_c: design.clearance_factor,
        c_ham: design.wheel_addendum_factor,
        k_t: design.thickness_factor,
        lash: design.lash_mm,
        ease_um: [ease(&design.ease_off_drive), ease(&design.ease_off_coast)],
    }
}
