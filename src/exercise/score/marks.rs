//! From single marks to the points of a part.

use super::points::{Loss, ScorePart};
use super::reason::LossReason;
use crate::exercise::scenario::Window;

/// One thing that is judged within a part.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Mark {
    /// Its share of the part, to those of the other marks.
    pub(super) weight: f64,
    /// How much of it was reached, 0 to 1.
    pub(super) share: f64,
    /// Where the rest was lost.
    pub(super) operation: Option<u32>,
    /// Why; none where all was reached.
    pub(super) reason: Option<LossReason>,
}

impl Mark {
    /// A mark that was reached or not.
    pub(super) fn reached<R: Into<LossReason>>(
        weight: f64,
        reached: bool,
        operation: Option<u32>,
        why: impl FnOnce() -> R,
    ) -> Self {
        Self::new(weight, if reached { 1.0 } else { 0.0 }, operation, why)
    }

    /// A mark that was reached in full.
    pub(super) fn full(weight: f64) -> Self {
        Self {
            weight,
            share: 1.0,
            operation: None,
            reason: None,
        }
    }

    /// A mark that was reached by a share.
    pub(super) fn new<R: Into<LossReason>>(
        weight: f64,
        share: f64,
        operation: Option<u32>,
        why: impl FnOnce() -> R,
    ) -> Self {
        // A share that is no number was not reached.
        let share = if share > 0.0 { share.min(1.0) } else { 0.0 };
        Self {
            weight,
            share,
            operation,
            reason: (share < 1.0).then(|| why().into()),
        }
    }
}

/// Points of a part: `full` less what its marks lost, each of which is told.
pub(super) fn tally(part: ScorePart, full: f64, marks: &[Mark], losses: &mut Vec<Loss>) -> f64 {
    let weights: f64 = marks.iter().map(|m| m.weight).sum();
    let mut points = full;
    for mark in marks {
        let Some(reason) = mark.reason.as_ref().filter(|_| weights > 0.0) else {
            continue;
        };
        let lost = full * mark.weight * (1.0 - mark.share) / weights;
        points -= lost;
        losses.push(Loss {
            part,
            points: lost,
            operation: mark.operation,
            reason: reason.clone(),
        });
    }
    // Rounding may leave a hair below nothing.
    if points > 1e-9 { points } else { 0.0 }
}

/// All of it inside the window, none from the ends of the outer one on, straight in between.
pub(super) fn within(value: f64, full: Window, zero: Window) -> f64 {
    let outside = full.outside(value);
    let room = if value < full.low {
        full.low - zero.low
    } else {
        zero.high - full.high
    };
    falling(outside, 0.0, room)
}

/// All of it up to `full`, none from `zero` on, straight in between.
pub(super) fn falling(value: f64, full: f64, zero: f64) -> f64 {
    if value <= full {
        1.0
    } else if value < zero {
        (zero - value) / (zero - full)
    } else {
        0.0
    }
}
