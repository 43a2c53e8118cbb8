//! An attempt: an exercise, a seed, and what has been done so far.

use std::sync::Arc;

use super::history::Moment;
use super::outcome::Outcome;
use super::prepared::{Exercise, ExerciseError};
use super::trainee_view::TraineeView;
use crate::bench::{Answer, Bench, Notice, Operation};

/// An attempt at an exercise. The same exercise, seed and operations give the same answers, bit for bit.
#[derive(Debug, Clone)]
pub struct Attempt {
    exercise: Arc<Exercise>,
    seed: u64,
    bench: Bench,
    steps: Vec<Step>,
    found_at_mm: Option<f64>,
    history: Vec<Moment>,
}

/// One operation that was asked for, with its answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What was asked for.
    pub operation: Operation,
    /// What the trainee saw.
    pub answer: Answer,
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
            found_at_mm: bench.built().pinion.and_then(|p| p.axial_mm),
            bench,
            steps: Vec::new(),
        })
    }

    /// Does one operation.
    pub fn apply(&mut self, operation: &Operation) -> Answer {
        let mut answer = self.bench.apply(operation);
        // The bench books the hint; whether there is one, and what it says, stands on the card.
        if let Operation::Hint { level } = operation
            && answer.done
            && usize::try_from(*level).is_ok_and(|level| level <= self.exercise.scenario().hints.len())
        {
            answer.noticed.push(Notice::Hint { level: *level });
        }
        if answer.done {
            let moment = Moment::next(&self.bench, operation, self.history.last());
            self.history.push(moment);
        }
        self.steps.push(Step {
            operation: operation.clone(),
            answer: answer.clone(),
        });
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

    /// Whether the gears were in mesh after an operation, as anybody saw who stood there.
    pub fn in_mesh_after(&self, operation: u32) -> bool {
        let before = self.history.iter().rev().find(|moment| moment.operation <= operation);
        before.is_some_and(|moment| moment.placement.is_some())
    }

    /// What happened, with the true state behind it: for scoring and the debrief, never for a trainee.
    pub fn history(&self) -> &[Moment] {
        &self.history
    }

    /// What the trainee may know.
    pub fn seen(&self) -> TraineeView {
        TraineeView::of(&self.exercise, &self.bench, self.steps.iter().map(|s| &s.answer))
    }

    /// Everything that was asked for, done or refused, in order.
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// P when the axle came in, mm, if its pinion was held: for the score, never for a trainee.
    pub fn found_at_mm(&self) -> Option<f64> {
        self.found_at_mm
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
