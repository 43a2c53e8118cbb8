//! Words of the score: what counts, and why points were lost. Each reason with its numbers, and the way to do it better.

mod economy;
mod outcome;
mod process;
mod shared;
mod understanding;
mod whole;

pub use shared::{asked_for, counted};
pub use understanding::plate_needs;

use crate::exercise::{LossReason, ScorePart};

/// Why points were lost, in a sentence or more.
pub fn loss(reason: &LossReason) -> String {
    match reason {
        LossReason::Outcome(reason) => outcome::words(reason),
        LossReason::Process(reason) => process::words(reason),
        LossReason::Understanding(reason) => understanding::words(reason),
        LossReason::Economy(reason) => economy::words(reason),
        LossReason::Whole(reason) => whole::words(reason),
    }
}

/// What points belong to.
pub fn part(part: ScorePart) -> &'static str {
    match part {
        ScorePart::Outcome => "outcome",
        ScorePart::Process => "process",
        ScorePart::Understanding => "understanding",
        ScorePart::Economy => "economy",
        ScorePart::Cap => "cap",
    }
}
