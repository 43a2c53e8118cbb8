//! Attempts that the tests begin.

use std::sync::Arc;

use lashwright::exercise::{Attempt, Exercise};
use lashwright::job::scenarios;

/// An exercise that ships.
pub(crate) fn exercise(name: &str) -> Arc<Exercise> {
    Arc::new(scenarios::find(name).expect("embedded").exercise)
}

/// An attempt at an exercise.
pub(crate) fn begin(exercise: &Arc<Exercise>, seed: u64) -> Attempt {
    Attempt::begin(Arc::clone(exercise), seed).expect("an attempt")
}
