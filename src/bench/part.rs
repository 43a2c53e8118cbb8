//! Parts that can be spoiled, replaced or condemned, and what they cost.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A part with a price.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Part {
    /// Collapsible sleeve.
    Sleeve,
    /// Solid spacer.
    SolidSpacer,
    /// Pinion nut.
    Nut,
    /// Pinion seal.
    Seal,
    /// Both pinion bearings.
    PinionBearings,
    /// Both side bearings.
    SideBearings,
    /// Bolts of the wheel.
    RingBolts,
    /// Ring gear and pinion.
    Gears,
    /// Case or cartridge.
    Case,
    /// Carrier.
    Carrier,
}

impl Part {
    /// All parts, in the order of their numbers.
    pub const ALL: [Self; 10] = [
        Self::Sleeve,
        Self::SolidSpacer,
        Self::Nut,
        Self::Seal,
        Self::PinionBearings,
        Self::SideBearings,
        Self::RingBolts,
        Self::Gears,
        Self::Case,
        Self::Carrier,
    ];

    /// Its name in files and operations.
    pub fn key(self) -> &'static str {
        match self {
            Self::Sleeve => "sleeve",
            Self::SolidSpacer => "solid_spacer",
            Self::Nut => "nut",
            Self::Seal => "seal",
            Self::PinionBearings => "pinion_bearings",
            Self::SideBearings => "side_bearings",
            Self::RingBolts => "ring_bolts",
            Self::Gears => "gears",
            Self::Case => "case",
            Self::Carrier => "carrier",
        }
    }
}
