//! Economy: tear-downs and parts beyond par and one more. Measuring costs nothing here, and neither does time.
//!
//! To leave an axle as it is saves nothing: the points are won in the measure in which the outcome was.

use super::handed::Handed;
use super::marks::{Mark, count, falling};
use super::verdict::Verdict;
use crate::bench::Part;
use crate::exercise::par::{self, Par};
use crate::quantity::number;

/// Tear-downs beyond par and one more that leave nothing of their share.
const MOST_TEAR_DOWNS: f64 = 3.0;
/// Sets of parts for a refit, beyond par and one more, that leave nothing of their share.
const MOST_REFITS: f64 = 2.0;

/// `reached` is the share of the outcome's points.
pub(super) fn marks(handed: &Handed<'_>, verdict: &Verdict, par: &Par, reached: f64) -> Vec<Mark> {
    if !handed.is_together() && !verdict.is_rightful_stop() {
        let why = || {
            format!(
                "{}: nothing was saved by leaving it.",
                handed.missing(handed.asks_mesh())
            )
        };
        return vec![Mark::reached(1.0, false, Some(handed.finish()), why)];
    }
    let ledger = handed.bench().ledger();
    let history = handed.attempt.history();
    let allowed = par.teardowns.saturating_add(1);
    let beyond = ledger.tear_downs.saturating_sub(allowed);
    let first = history.iter().find(|m| m.tear_downs > allowed).map(|m| m.operation);
    let tear_downs = Mark::new(6.0, falling(f64::from(beyond), 0.0, MOST_TEAR_DOWNS), first, || {
        format!(
            "There were {} where par is {} and one more is free: bracket with two builds and go between them.",
            count(
                usize::try_from(ledger.tear_downs).unwrap_or(usize::MAX),
                "tear-down",
                "tear-downs"
            ),
            par.teardowns
        )
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
        Some((operation, _)) => {
            format!("Operation {operation} made scrap of the ring gear: keep under its temperature.")
        }
        None => format!(
            "Parts for {} where par is {} and one refit for {} more is free: parts of single use are lost with each build.",
            number(ledger.money, 0),
            number(par.money, 0),
            number(refit, 0)
        ),
    });
    let mut marks = vec![tear_downs, parts];
    // What the outcome left open comes off first, the rest off what there is.
    let mut saved = 0.0;
    for mark in &mut marks {
        saved += mark.weight * (1.0 - reached);
        mark.weight *= reached;
    }
    marks.push(Mark::reached(saved, saved <= 0.0, Some(handed.finish()), || {
        format!(
            "{} % of the outcome was not reached, and what it did not take is not saved.",
            number(100.0 * (1.0 - reached), 0)
        )
    }));
    marks
}
