//! Builds: what was changed for each, what it showed, what was true of it, and what it would have been worth.
//!
//! A build is what stands between two tear-downs: gears in mesh, or a pinion that was closed up without them. Its state is
//! that before the tear-down that ended it, the last one's that at hand-over.

use std::collections::BTreeSet;

use super::change::{Change, changes};
use super::depths::{Depths, place, stem_share};
use super::period::Period;
use super::print::{BuildPrint, prints};
use super::replay;
use super::saw::{Saw, saw};
use crate::bench::Operation;
use crate::exercise::attempt::Attempt;
use crate::exercise::history::Deed;
use crate::exercise::outcome::Outcome;
use crate::exercise::par::Par;
use crate::exercise::prepared::ExerciseError;
use crate::exercise::score::{Score, score};
use crate::exercise::technician::Chart;

/// A build.
#[derive(Debug, Clone)]
pub struct Build {
    /// Its number, from 1.
    pub number: u32,
    /// Whether it is the axle as it came in, not worked on yet.
    pub as_found: bool,
    /// Whether it is what was handed over.
    pub handed_over: bool,
    /// First and last operation: from the tear-down of the build before to its own last one.
    pub operations: [u32; 2],
    /// Minutes since the beginning at its end.
    pub minutes: f64,
    /// Money so far at its end.
    pub money: f64,
    /// What was changed since the build before.
    pub changed: Vec<Change>,
    /// What the trainee saw of it.
    pub saw: Saw,
    /// What is true of it.
    pub truth: Outcome,
    /// Tightest lash in the card's reading, mm.
    pub truth_lash_mm: Option<f64>,
    /// How much deeper the pinion would have to stand for the best that this axle can be set to, mm.
    pub truth_deeper_mm: Option<f64>,
    /// Prints that were rolled in it, each place once.
    pub prints: Vec<BuildPrint>,
    /// What it would have been worth if it had been handed over.
    pub what_if: Option<WhatIf>,
}

/// What a build would have been worth.
#[derive(Debug, Clone, PartialEq)]
pub struct WhatIf {
    /// Its score if it had been handed over after its last operation.
    pub score: Score,
}

/// What builds are judged by.
#[derive(Debug, Clone, Copy)]
pub(super) struct JudgedBy<'a> {
    /// Chart of the set.
    pub(super) chart: &'a Chart,
    /// Par of the seed.
    pub(super) par: &'a Par,
}

/// All builds of an attempt that was handed over; `what_if` is worked out for each if asked for.
///
/// # Errors
/// As [`Attempt::begin`].
pub(super) fn builds(
    attempt: &Attempt,
    sheet: &JudgedBy<'_>,
    depths: &mut Depths<'_>,
    what_if: bool,
) -> Result<Vec<Build>, ExerciseError> {
    let periods = Period::all(attempt);
    let ends: BTreeSet<u32> = std::iter::once(0).chain(periods.iter().map(|p| p.last)).collect();
    let states = replay::after(attempt, &ends)?;
    let Some(mut before) = states.get(&0) else {
        return Ok(Vec::new());
    };
    let mut found: Vec<Build> = Vec::new();
    let mut since = 0;
    for period in &periods {
        let Some(state) = states.get(&period.last) else {
            continue;
        };
        let handed_over = Some(period.last) == periods.last().map(|p| p.last);
        if !handed_over && !is_build(attempt, state, *period) {
            continue;
        }
        let span = Period {
            first: since + 1,
            last: period.last,
        };
        let number = u32::try_from(found.len()).unwrap_or(u32::MAX).saturating_add(1);
        let mut build = build(attempt, [state, before], span, sheet, depths, handed_over);
        build.number = number;
        if what_if {
            let mut given = state.clone();
            given.apply(&Operation::Finish {});
            build.what_if = Some(WhatIf {
                score: score(&given, sheet.par),
            });
        }
        found.push(build);
        before = state;
        since = period.last;
    }
    Ok(found)
}

/// Gears in mesh, or a pinion that was closed up.
fn is_build(attempt: &Attempt, state: &Attempt, period: Period) -> bool {
    let built = state.bench().built();
    // The first operation of a period is the tear-down itself.
    let worked = || {
        let mut after_it = period.moments(attempt).skip(1);
        after_it.any(|m| matches!(m.deed, Deed::Pinion | Deed::Depth))
    };
    built.placement.is_some() || (built.pinion.is_some() && worked())
}

fn build(
    attempt: &Attempt,
    [state, before]: [&Attempt; 2],
    span: Period,
    sheet: &JudgedBy<'_>,
    depths: &mut Depths<'_>,
    handed_over: bool,
) -> Build {
    let outcome = state.outcome();
    let deeper = place(&outcome).and_then(|at| Some(at.pinion_axial_mm - depths.wanted_mm(state, at)?));
    let ledger = state.bench().ledger();
    let worked = span
        .moments(attempt)
        .any(|m| matches!(m.deed, Deed::Pinion | Deed::Depth | Deed::Side | Deed::Wheel));
    Build {
        number: 0,
        as_found: !worked && before.bench().operations() == 0,
        handed_over,
        operations: [span.first, span.last],
        minutes: ledger.minutes,
        money: ledger.money,
        changed: changes(attempt, state.bench(), before.bench(), span),
        saw: saw(attempt, state, span),
        truth_lash_mm: outcome.lash_mm.map(|[tightest, _]| stem_share(state) * tightest),
        truth_deeper_mm: deeper,
        prints: prints(attempt, span, sheet.chart, outcome.placement, handed_over),
        truth: outcome,
        what_if: None,
    }
}
