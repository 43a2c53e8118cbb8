//! Why points of the economy were lost.

use super::shared::missing;
use crate::exercise::score::reason::EconomyReason;
use crate::quantity::number;
use crate::words::say;

pub(super) fn words(reason: &EconomyReason) -> String {
    match reason {
        EconomyReason::NothingSaved {
            operation,
            missing: what,
        } => say!("score-nothing-saved", missing = missing(*operation, *what)),
        EconomyReason::TearDowns { tear_downs, par } => say!("score-teardowns", count = *tear_downs, par = *par),
        EconomyReason::RingGearScrapped { operation } => say!("score-ring-gear-scrapped", operation = *operation),
        EconomyReason::Parts { money, par, refit } => say!(
            "score-parts",
            cost = number(*money, 0),
            par = number(*par, 0),
            refit = number(*refit, 0)
        ),
        EconomyReason::OutcomeNotReached { share } => {
            say!("score-outcome-not-reached", share = number(100.0 * share, 0))
        }
    }
}
