//! What is written down and signed: notes, predictions, hints, hand-over.

use super::readings::Reading;
use crate::bench::{Operation, Predicted};

/// Rows of the prediction slip.
pub const SLIP_ROWS: [Predicted; 6] = [
    Predicted::Lash,
    Predicted::PinionTorque,
    Predicted::DriveLength,
    Predicted::DriveHeight,
    Predicted::CoastLength,
    Predicted::CoastHeight,
];

/// How sure one can be: words, and the chance of what was chosen.
pub const SURE: [(&str, f64); 3] = [("60 %", 0.6), ("80 %", 0.8), ("95 %", 0.95)];

/// A prediction: this outcome of the three, as sure as that.
pub fn predict(about: Predicted, outcome: usize, sure: usize) -> Operation {
    Operation::Predict {
        about,
        chances: chances(outcome, sure),
    }
}

/// Chances of three outcomes for somebody who is as sure as that of one of them.
pub(super) fn chances(outcome: usize, sure: usize) -> [f64; 3] {
    let chance = SURE.get(sure).map_or(0.8, |(_, chance)| *chance);
    let rest = 0.5 * (1.0 - chance);
    let mut chances = [rest; 3];
    if let Some(place) = chances.get_mut(outcome) {
        *place = 1.0 - 2.0 * rest;
    }
    chances
}

/// What was read, for the set-up sheet.
pub fn note(reading: &Reading, value: f64) -> Operation {
    Operation::Note {
        what: reading.what,
        value,
        record: Some(reading.number),
        remark: String::new(),
    }
}

/// Asks for a hint of this level.
pub const fn hint(level: u32) -> Operation {
    Operation::Hint { level }
}

/// Hands the axle over.
pub const fn finish() -> Operation {
    Operation::Finish {}
}
