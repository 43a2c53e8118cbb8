//! What every way into an attempt does: the axle of a seed on the bench, its par, one operation.

use std::path::Path;
use std::sync::Arc;

use crate::bench::{Answer, Operation};
use crate::exercise::{Attempt, Par, par};
use crate::job::Failure;
use crate::job::scenarios::FoundScenario;
use crate::words::{self, say};

pub(super) fn begin(found: &FoundScenario, seed: u64) -> Result<Attempt, Failure> {
    Attempt::begin(Arc::new(found.exercise.clone()), seed)
        .map_err(|error| unplayable(&found.source, seed, &words::error::exercise(&error).line()))
}

pub(super) fn par_of(found: &FoundScenario, seed: u64) -> Result<Par, Failure> {
    par(&Arc::new(found.exercise.clone()), seed)
        .map_err(|error| unplayable(&found.source, seed, &words::error::exercise(&error).line()))
}

/// Texts that an attempt depends on: scenario, gear set, support.
pub(super) fn texts(found: &FoundScenario) -> [&str; 3] {
    let [gears, support] = &found.parts;
    [&found.text, gears, support]
}

/// Does an operation. An operation that costs nothing costs 0 and not −0, which the sum of no prices is.
pub(super) fn answered(attempt: &mut Attempt, operation: &Operation) -> Answer {
    let mut answer = attempt.apply(operation);
    answer.money += 0.0;
    answer
}

/// Why an axle of an exercise cannot be played.
pub(super) fn unplayable(exercise: &str, seed: u64, why: &str) -> Failure {
    Failure::bad_input(say!(
        "card-cannot-be-played",
        seed = seed.to_string(),
        exercise = exercise,
        why = why
    ))
}

/// What is wrong with a journal.
pub(in crate::job) fn journal_failure(path: &Path, why: &str) -> Failure {
    Failure::bad_input(say!("files-journal", path = path.display().to_string(), why = why))
}
