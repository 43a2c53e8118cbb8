//! A placement in the numbers that people write.

use crate::contact::Placement;
use crate::quantity::{degrees, radians};

/// A placement as people write it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct PlacementNumbers {
    /// Pinion away from the crossing point, mm.
    pub pinion_axial_mm: f64,
    /// Ring gear away from the pinion, mm.
    pub wheel_axial_mm: f64,
    /// Offset beyond the designed one, mm.
    pub offset_mm: f64,
    /// Shaft angle beyond the designed one, degrees.
    pub shaft_angle_deg: f64,
}

impl PlacementNumbers {
    /// Of the core's placement.
    pub fn of(placement: Placement) -> Self {
        Self {
            pinion_axial_mm: placement.pinion_axial_mm,
            wheel_axial_mm: placement.wheel_axial_mm,
            offset_mm: placement.offset_mm,
            shaft_angle_deg: degrees(placement.shaft_angle_rad),
        }
    }

    /// In the order of the columns of a file: pinion, ring gear and offset in mm, shaft angle in degrees.
    pub fn row(&self) -> [f64; 4] {
        [
            self.pinion_axial_mm,
            self.wheel_axial_mm,
            self.offset_mm,
            self.shaft_angle_deg,
        ]
    }

    /// The core's placement.
    pub fn placement(&self) -> Placement {
        Placement {
            pinion_axial_mm: self.pinion_axial_mm,
            wheel_axial_mm: self.wheel_axial_mm,
            offset_mm: self.offset_mm,
            shaft_angle_rad: radians(self.shaft_angle_deg),
        }
    }
}
