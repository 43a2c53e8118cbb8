//! The list of gear sets, as `lashwright gears --json` prints it.

use schemars::JsonSchema;
use serde::Serialize;

use crate::gear::{DepthTaper, Design};
use crate::words;

/// One gear set in the list.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct GearSetRow {
    /// Name on the command line.
    pub name: String,
    /// Name shown to people.
    pub title: String,
    /// z1.
    pub pinion_teeth: u32,
    /// z2.
    pub wheel_teeth: u32,
    /// z2 / z1.
    pub ratio: f64,
    /// a, mm; 0 for spiral bevel gears.
    pub offset_mm: f64,
    /// d_e2, mm.
    pub wheel_outer_pitch_diameter_mm: f64,
    /// "tapered" or "uniform".
    pub depth: String,
    /// What simulated values are not: no specification for a real axle.
    pub note: String,
}

impl GearSetRow {
    /// The row of a design found under `name`.
    pub fn new(name: &str, design: &Design) -> Self {
        Self {
            name: name.to_owned(),
            title: design.name.clone(),
            pinion_teeth: design.pinion_teeth,
            wheel_teeth: design.wheel_teeth,
            ratio: f64::from(design.wheel_teeth) / f64::from(design.pinion_teeth),
            offset_mm: design.offset_mm,
            wheel_outer_pitch_diameter_mm: design.wheel_outer_pitch_diameter_mm,
            depth: match design.depth {
                DepthTaper::Tapered => "tapered",
                DepthTaper::Uniform => "uniform",
            }
            .to_owned(),
            note: words::simulated(),
        }
    }
}
