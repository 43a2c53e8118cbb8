//! Words of the score: what counts, and why points were lost. Each reason with its numbers, and the way to do it better.

mod economy;
mod outcome;
mod process;
mod shared;
mod understanding;
mod whole;

pub use shared::{asked_for, counted};

use crate::exercise::{LossReason, ScorePart};
use crate::words::say;

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
pub fn part(part: ScorePart) -> String {
    match part {
        ScorePart::Outcome => say!("score-part-outcome"),
        ScorePart::Process => say!("score-part-process"),
        ScorePart::Understanding => say!("score-part-understanding"),
        ScorePart::Economy => say!("score-part-economy"),
        ScorePart::Cap => say!("score-part-cap"),
    }
}
