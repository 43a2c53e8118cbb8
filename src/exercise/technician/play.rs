//! Plays a seed to its end.

use std::sync::Arc;

use super::chart::Chart;
use super::hands::Hands;
use super::person::Technician;
use super::policy::Policy;
use super::random;
use crate::exercise::attempt::Attempt;
use crate::exercise::prepared::{Exercise, ExerciseError};

/// Plays a seed of an exercise to its end.
///
/// # Errors
/// [`ExerciseError`] for a seed that cannot be played.
pub fn play(exercise: &Arc<Exercise>, seed: u64, policy: Policy) -> Result<Attempt, ExerciseError> {
    let hands = Hands::new(Attempt::begin(exercise.clone(), seed)?);
    let hands = match policy {
        Policy::Random => random::play(hands, seed),
        Policy::Reference | Policy::Reversed => {
            let chart = Chart::of(exercise)?;
            let mut technician = Technician::new(hands, chart, policy == Policy::Reversed);
            technician.work();
            technician.hands
        }
    };
    Ok(hands.end())
}
