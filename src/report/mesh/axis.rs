//! One axis of placement.

use crate::words::say;

use super::numbers::PlacementNumbers;

/// One axis of placement.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Axis {
    /// The pinion along its axis, mm.
    PinionAxial,
    /// The ring gear along its axis, mm.
    WheelAxial,
    /// The offset beyond the designed one, mm.
    Offset,
    /// The shaft angle beyond the designed one, degrees.
    ShaftAngle,
}

impl Axis {
    pub(super) const ALL: [Self; 4] = [Self::PinionAxial, Self::WheelAxial, Self::Offset, Self::ShaftAngle];

    /// The axis that is written so: its word, or the letter that stood for it before.
    pub fn named(name: &str) -> Option<Self> {
        match name {
            "pinion" | "P" | "p" => Some(Self::PinionAxial),
            "ring-gear" | "G" | "g" => Some(Self::WheelAxial),
            "offset" | "E" | "e" => Some(Self::Offset),
            "shaft-angle" | "S" | "s" | "Σ" => Some(Self::ShaftAngle),
            _ => None,
        }
    }

    pub(super) fn name(self) -> String {
        match self {
            Self::PinionAxial => say!("mesh-pinion-depth"),
            Self::WheelAxial => say!("mesh-ring-gear"),
            Self::Offset => say!("mesh-offset"),
            Self::ShaftAngle => say!("mesh-shaft-angle"),
        }
    }

    /// What negative and positive values mean, in few words.
    pub(super) fn words(self) -> [String; 2] {
        match self {
            Self::PinionAxial => [say!("mesh-short-deeper"), say!("mesh-short-shallower")],
            Self::WheelAxial => [say!("mesh-short-toward-pinion"), say!("mesh-short-from-pinion")],
            Self::Offset => [say!("mesh-less-offset"), say!("mesh-more-offset")],
            Self::ShaftAngle => [say!("mesh-angle-closed"), say!("mesh-angle-opened")],
        }
    }

    pub(super) fn is_angle(self) -> bool {
        self == Self::ShaftAngle
    }

    /// mm or degrees.
    pub(super) fn of(self, numbers: &PlacementNumbers) -> f64 {
        match self {
            Self::PinionAxial => numbers.pinion_axial_mm,
            Self::WheelAxial => numbers.wheel_axial_mm,
            Self::Offset => numbers.offset_mm,
            Self::ShaftAngle => numbers.shaft_angle_deg,
        }
    }

    /// Moves a placement to a value of this axis.
    pub fn set(self, numbers: &mut PlacementNumbers, value: f64) {
        *match self {
            Self::PinionAxial => &mut numbers.pinion_axial_mm,
            Self::WheelAxial => &mut numbers.wheel_axial_mm,
            Self::Offset => &mut numbers.offset_mm,
            Self::ShaftAngle => &mut numbers.shaft_angle_deg,
        } = value;
    }
}
