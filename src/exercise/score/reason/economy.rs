//! Why points of the economy were lost.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::shared::Missing;

/// What it took.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "reason", rename_all = "snake_case")]
pub enum EconomyReason {
    /// An axle that is not together saves nothing.
    NothingSaved {
        /// Number of the operation that handed it over.
        operation: u32,
        /// What is missing.
        missing: Missing,
    },
    /// More was taken apart than par and one more.
    TearDowns {
        /// How often.
        tear_downs: u32,
        /// Par.
        par: u32,
    },
    /// The wheel was made scrap.
    RingGearScrapped {
        /// Number of the operation.
        operation: u32,
    },
    /// More parts were used than par and one refit.
    Parts {
        /// Money for them.
        money: f64,
        /// Par.
        par: f64,
        /// One refit of everything of single use.
        refit: f64,
    },
    /// What the outcome did not take is not saved.
    OutcomeNotReached {
        /// Share of the outcome that was not reached.
        share: f64,
    },
}
