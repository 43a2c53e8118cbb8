//! The same operations once more, stopped where somebody wants to look.

use std::collections::{BTreeMap, BTreeSet};

use crate::exercise::attempt::Attempt;
use crate::exercise::prepared::ExerciseError;

/// The attempt as it stood after each of these operations; 0 is its beginning.
///
/// # Errors
/// As [`Attempt::begin`]: none for an attempt that was begun before.
pub(super) fn after(attempt: &Attempt, operations: &BTreeSet<u32>) -> Result<BTreeMap<u32, Attempt>, ExerciseError> {
    let mut states = BTreeMap::new();
    let Some(last) = operations.last() else {
        return Ok(states);
    };
    let mut again = Attempt::begin(attempt.exercise().clone(), attempt.seed())?;
    if operations.contains(&0) {
        states.insert(0, again.clone());
    }
    for (number, step) in (1_u32..=*last).zip(attempt.steps()) {
        again.apply(&step.operation);
        if operations.contains(&number) {
            states.insert(number, again.clone());
        }
    }
    Ok(states)
}
