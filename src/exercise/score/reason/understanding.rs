//! Why points of the understanding were lost.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::bench::Predicted;
use crate::exercise::judgement::PLATE_TOLERANCE_MM;

/// What was foreseen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "reason", rename_all = "snake_case")]
pub enum UnderstandingReason {
    /// No change was looked at again.
    NothingToPredict {},
    /// A change was looked at that nobody had predicted.
    NotPredicted {
        /// Number of the operation that looked at it.
        operation: u32,
    },
    /// What was predicted, against what came.
    Predicted {
        /// Number of the operation that predicted it.
        operation: u32,
        /// Chance that was given to what came.
        chance: f64,
        /// What it was about.
        about: Predicted,
        /// How it changed: mm of lash, share of torque, place of a print in flank coordinates.
        change: f64,
    },
    /// What was said of a painted plate, against what it needs.
    Plate {
        /// Number of the plate.
        plate: u32,
        /// What it needs.
        needs: PlateNeeds,
        /// Chance that was given to that.
        chance: f64,
    },
}

/// What the pinion of a painted plate needs, in the order of the chances of a judgement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum PlateNeeds {
    /// To come deeper.
    Deeper,
    /// Nothing.
    Nothing,
    /// To stand shallower.
    Shallower,
}

impl PlateNeeds {
    /// Of a plate whose pinion stands so far out of its place, mm; negative: too deep.
    pub fn of(pinion_axial_mm: f64) -> Self {
        if pinion_axial_mm > PLATE_TOLERANCE_MM {
            Self::Deeper
        } else if pinion_axial_mm < -PLATE_TOLERANCE_MM {
            Self::Shallower
        } else {
            Self::Nothing
        }
    }

    /// Its place in the chances of a judgement.
    pub fn index(self) -> usize {
        match self {
            Self::Deeper => 0,
            Self::Nothing => 1,
            Self::Shallower => 2,
        }
    }
}
