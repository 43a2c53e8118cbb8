//! From single marks to the points of a part.

use super::{Loss, ScorePart};
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
    /// Why; not looked at where all was reached.
    pub(super) why: String,
}

impl Mark {
    /// A mark that was reached or not.
    pub(super) fn reached(weight: f64, reached: bool, operation: Option<u32>, why: impl FnOnce() -> String) -> Self {
        Self::new(weight, if reached { 1.0 } else { 0.0 }, operation, why)
    }

    /// A mark that was reached by a share.
    pub(super) fn new(weight: f64, share: f64, operation: Option<u32>, why: impl FnOnce() -> String) -> Self {
        // A share that is no number was not reached.
        let share = if share > 0.0 { share.min(1.0) } else { 0.0 };
        Self {
            weight,
            share,
            operation,
            why: if share < 1.0 { why() } else { String::new() },
        }
    }
}

/// Points of a part: `full` less what its marks lost, each of which is told.
pub(super) fn tally(part: ScorePart, full: f64, marks: &[Mark], losses: &mut Vec<Loss>) -> f64 {
    let weights: f64 = marks.iter().map(|m| m.weight).sum();
    let mut points = full;
    for mark in marks.iter().filter(|m| m.share < 1.0 && weights > 0.0) {
        let lost = full * mark.weight * (1.0 - mark.share) / weights;
        points -= lost;
        losses.push(Loss {
            part,
            points: lost,
            operation: mark.operation,
            why: mark.why.clone(),
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

/// A number of things in words.
pub(super) fn count(number: usize, one: &str, many: &str) -> String {
    format!("{number} {}", if number == 1 { one } else { many })
}
