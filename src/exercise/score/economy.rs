//! Economy: tear-downs and parts beyond par and one more. Measuring costs nothing here, and neither does time.
//!
//! To leave an axle as it is saves nothing: the points are won in the measure in which the outcome was.

use super::handed::Handed;
use super::marks::{Mark, falling};
use super::reason::EconomyReason;
use super::verdict::Verdict;
use crate::bench::Part;
use crate::exercise::par::{self, Par};

/// Tear-downs beyond par and one more that leave nothing of their share.
const MOST_TEAR_DOWNS: f64 = 3.0;
/// Sets of parts for a refit, beyond par and one more, that leave nothing of their share.
const MOST_REFITS: f64 = 2.0;

/// `reached` is the share of the outcome's points.
pub(super) fn marks(handed: &Handed<'_>, verdict: &Verdict, par: &Par, reached: f64) -> Vec<Mark> {
    if !handed.is_together() && !verdict.is_rightful_stop() {
        let why = || EconomyReason::NothingSaved {
            operation: handed.finish(),
            missing: handed.missing(handed.asks_mesh()),
        };
        return vec![Mark::reached(1.0, false, Some(handed.finish()), why)];
    }
    let ledger = handed.bench().ledger();
    let history = handed.attempt.history();
    let allowed = par.teardowns.saturating_add(1);
    let beyond = ledger.tear_downs.saturating_sub(allowed);
    let first = history.iter().find(|m| m.tear_downs > allowed).map(|m| m.operation);
    let tear_downs = Mark::new(6.0, falling(f64::from(beyond), 0.0, MOST_TEAR_DOWNS), first, || {
        EconomyReason::TearDowns {
            tear_downs: ledger.tear_downs,
            par: par.teardowns,
        }
    });
    let refit = par::refit_price(handed.attempt.exercise(), &handed.bench().setting().tariff);
    let free = par.money + refit;
    let over = ledger.money - free;
    let first = history.iter().find(|m| m.money > free).map(|m| m.operation);
    let scrap = ledger.spoiled.iter().find(|(_, part)| *part == Part::Gears);
    let share = if scrap.is_some() {
        0.0
    } else {
        falling(over, 0.0, MOST_REFITS * refit)
    };
    let parts = Mark::new(4.0, share, scrap.map(|(o, _)| *o).or(first), || match scrap {
        Some((operation, _)) => EconomyReason::RingGearScrapped { operation: *operation },
        None => EconomyReason::Parts {
            money: ledger.money,
            par: par.money,
            refit,
        },
    });
    let mut marks = vec![tear_downs, parts];
    // What the outcome left open comes off first, the rest off what there is.
    let mut saved = 0.0;
    for mark in &mut marks {
        saved += mark.weight * (1.0 - reached);
        mark.weight *= reached;
    }
    marks.push(Mark::reached(saved, saved <= 0.0, Some(handed.finish()), || {
        EconomyReason::OutcomeNotReached { share: 1.0 - reached }
    }));
    marks
}
