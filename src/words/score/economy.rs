//! Why points of the economy were lost.

use super::shared::{count, missing};
use crate::exercise::score::reason::EconomyReason;
use crate::quantity::number;

pub(super) fn words(reason: &EconomyReason) -> String {
    match reason {
        EconomyReason::NothingSaved {
            operation,
            missing: what,
        } => format!("{}: nothing was saved by leaving it.", missing(*operation, *what)),
        EconomyReason::TearDowns { tear_downs, par } => format!(
            "There were {} where par is {par} and one more is free: bracket with two builds and go between them.",
            count(
                usize::try_from(*tear_downs).unwrap_or(usize::MAX),
                "tear-down",
                "tear-downs"
            )
        ),
        EconomyReason::RingGearScrapped { operation } => {
            format!("Operation {operation} made scrap of the ring gear: keep under its temperature.")
        }
        EconomyReason::Parts { money, par, refit } => format!(
            "Parts for {} where par is {} and one refit for {} more is free: parts of single use are lost with each build.",
            number(*money, 0),
            number(*par, 0),
            number(*refit, 0)
        ),
        EconomyReason::OutcomeNotReached { share } => format!(
            "{} % of the outcome was not reached, and what it did not take is not saved.",
            number(100.0 * share, 0)
        ),
    }
}
