//! Why points were lost, as values: what was judged, with its numbers. Their sentences stand in `words::score`.
//!
//! Each part of the score has reasons of its own; [`Whole`] holds those that speak of the attempt as a whole.

mod economy;
mod outcome;
mod process;
mod shared;
mod understanding;

pub use economy::EconomyReason;
pub use outcome::{OutcomeReason, PinionTorqueWay};
pub use process::{Checked, ProcessReason, ReusedPart, UnsafeAct};
pub use shared::{Missing, NutStands};
pub use understanding::{PlateNeeds, UnderstandingReason};

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::bench::{Caution, Part};
use crate::exercise::incurable::Incurable;

/// Why points were lost. In documents its key `reason` says which it is; no two reasons of all parts have the same.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(untagged)]
pub enum LossReason {
    /// What the axle has become.
    Outcome(OutcomeReason),
    /// How it was checked, written down and put together.
    Process(ProcessReason),
    /// What was foreseen.
    Understanding(UnderstandingReason),
    /// What it took.
    Economy(EconomyReason),
    /// The attempt as a whole.
    Whole(Whole),
}

impl From<OutcomeReason> for LossReason {
    fn from(reason: OutcomeReason) -> Self {
        Self::Outcome(reason)
    }
}

impl From<ProcessReason> for LossReason {
    fn from(reason: ProcessReason) -> Self {
        Self::Process(reason)
    }
}

impl From<UnderstandingReason> for LossReason {
    fn from(reason: UnderstandingReason) -> Self {
        Self::Understanding(reason)
    }
}

impl From<EconomyReason> for LossReason {
    fn from(reason: EconomyReason) -> Self {
        Self::Economy(reason)
    }
}

impl From<Whole> for LossReason {
    fn from(reason: Whole) -> Self {
        Self::Whole(reason)
    }
}

/// Reasons that speak of the whole attempt.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "reason", rename_all = "snake_case")]
pub enum Whole {
    /// The axle was not handed over.
    NotHandedOver {
        /// How many operations were done.
        operations: u32,
    },
    /// The total is capped.
    Capped {
        /// By what.
        cause: CapCause,
        /// Points that are left at most.
        most: f64,
        /// Points without the cap.
        without: f64,
    },
}

/// What caps a total.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "cause", rename_all = "snake_case")]
pub enum CapCause {
    /// Something was done without its precaution.
    Unsafe {
        /// Number of the operation.
        operation: u32,
        /// The hazard.
        caution: Caution,
    },
    /// Something that no setting cures was not reported with evidence.
    Missed {
        /// Number of the operation that handed the axle over.
        operation: u32,
        /// What it was.
        fault: Incurable,
    },
    /// A sound part was condemned.
    FalseAlarm {
        /// Number of the operation.
        operation: u32,
        /// The part.
        part: Part,
    },
}

impl CapCause {
    /// The operation that it comes from.
    pub fn operation(&self) -> u32 {
        match self {
            Self::Unsafe { operation, .. } | Self::Missed { operation, .. } | Self::FalseAlarm { operation, .. } => {
                *operation
            }
        }
    }
}
