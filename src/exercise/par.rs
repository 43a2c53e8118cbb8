//! Par: what an attempt should take.

use std::sync::Arc;

use super::attempt::Attempt;
use super::prepared::{Exercise, ExerciseError};
use super::technician::{Policy, play};
use crate::bench::{Part, Tariff};

/// What an attempt should take: what the reference technician takes for the same seed, with the same instruments.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Par {
    /// Tear-downs.
    pub teardowns: u32,
    /// Minutes.
    pub minutes: f64,
    /// Money for parts.
    pub money: f64,
}

impl Par {
    /// What an attempt took.
    pub fn of(attempt: &Attempt) -> Self {
        let ledger = attempt.bench().ledger();
        Self {
            teardowns: ledger.tear_downs,
            minutes: ledger.minutes,
            money: ledger.money,
        }
    }
}

/// Par of a seed: the reference technician plays it.
///
/// # Errors
/// [`ExerciseError`] for a seed that cannot be played.
pub fn par(exercise: &Arc<Exercise>, seed: u64) -> Result<Par, ExerciseError> {
    Ok(Par::of(&play(exercise, seed, Policy::Reference)?))
}

/// Price of all parts of single use: one refit of everything.
pub(super) fn refit_price(exercise: &Exercise, tariff: &Tariff) -> f64 {
    let sleeve = exercise.axle().layout().has_sleeve().then_some(Part::Sleeve);
    let parts = [Part::Seal, Part::Nut, Part::RingBolts].into_iter().chain(sleeve);
    parts.map(|p| tariff.price_of(p)).sum()
}
