//! Where the work is dangerous, and what one does about it.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Something put on or used for safety.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Precaution {
    /// Eye protection.
    EyeProtection,
    /// Guard in front of the press.
    PressGuard,
    /// Gloves against heat.
    HotGloves,
    /// Hoist or a second pair of hands.
    Hoist,
    /// Holding bar that rests against the bench, clear of hands.
    HoldingBar,
    /// Bearing held still while air is blown on it.
    BearingHeld,
}

/// A hazard that is really there, with what meets it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Caution {
    /// A hardened ring under a press can burst.
    RingUnderPress,
    /// Drifts and pullers throw splinters.
    Splinters,
    /// The wheel is hot.
    HotWheel,
    /// The carrier is heavy.
    HeavyCarrier,
    /// Whoever holds the flange feels the whole torque of the nut.
    NutReaction,
    /// A bearing spun by air flies apart.
    AirSpunBearing,
}

impl Caution {
    /// What meets it.
    pub fn precaution(self) -> Precaution {
        match self {
            Self::RingUnderPress => Precaution::PressGuard,
            Self::Splinters => Precaution::EyeProtection,
            Self::HotWheel => Precaution::HotGloves,
            Self::HeavyCarrier => Precaution::Hoist,
            Self::NutReaction => Precaution::HoldingBar,
            Self::AirSpunBearing => Precaution::BearingHeld,
        }
    }
}
