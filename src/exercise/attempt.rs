//! An attempt: an exercise, a seed, and what has been done so far.

use std::sync::Arc;

use super::history::Moment;
use super::outcome::Outcome;
use super::prepared::{Exercise, ExerciseError};
use super::seen::Seen;
use crate::bench::{Answer, Bench, Operation};

/// An attempt at an exercise. The same exercise, seed and operations give the same answers, bit for bit.
#[derive(Debug, Clone)]
pub struct Attempt {
    exercise: Arc<Exercise>,
    seed: u64,
    bench: Bench,
    answers: Vec<Answer>,
    history: Vec<Moment>,
}

impl Attempt {
    /// Begins one.
    ///
    /// # Errors
    /// [`ExerciseError`] for a seed whose axle cannot be.
    pub fn begin(exercise: Arc<Exercise>, seed: u64) -> Result<Self, ExerciseError> {
        let bench = exercise.begin(seed)?;
        Ok(Self {
            exercise,
            seed,
            history: vec![Moment::begin(&bench)],
            bench,
            answers: Vec::new(),
        })
    }

    /// Does one operation.
    pub fn apply(&mut self, operation: &Operation) -> Answer {
        let mut answer = self.bench.apply(operation);
        // The bench books the hint; what it says stands on the card.
        if let Operation::Hint { level } = operation
            && answer.done
        {
            let place = usize::try_from(level.saturating_sub(1)).unwrap_or(usize::MAX);
            answer
                .noticed
                .extend(self.exercise.scenario().hints.get(place).cloned());
        }
        if answer.done {
            let moment = Moment::next(&self.bench, operation, self.history.last());
            self.history.push(moment);
        }
        self.answers.push(answer.clone());
        answer
    }

    /// The exercise.
    pub fn exercise(&self) -> &Arc<Exercise> {
        &self.exercise
    }

    /// Its seed.
    pub fn seed(&self) -> u64 {
        self.seed
    }

    /// The bench, truth included: for scoring and the debrief, never for a trainee.
    pub fn bench(&self) -> &Bench {
        &self.bench
    }

    /// What happened, with the true state behind it: for scoring and the debrief, never for a trainee.
    pub fn history(&self) -> &[Moment] {
        &self.history
    }

    /// What the trainee may know.
    pub fn seen(&self) -> Seen {
        Seen::of(&self.exercise, &self.bench, &self.answers)
    }

    /// True numbers of the axle as it stands.
    pub fn outcome(&self) -> Outcome {
        Outcome::of(&self.bench)
    }

    /// Whether the axle has been handed over.
    pub fn is_finished(&self) -> bool {
        self.bench.is_finished()
    }
}
