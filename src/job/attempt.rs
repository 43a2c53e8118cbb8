//! An attempt without a screen: operations in, answers out, each kept before it is shown.

use std::path::Path;
use std::sync::Arc;

use serde_json::Value;

use crate::bench::{Answer, Operation};
use crate::document::attempt::{
    AttemptDocument, ExerciseRow, LossDocument, ReplayDocument, ScoreDocument, TruthDocument, UsedDocument,
};
use crate::exercise::journal::{self, Header, Writer};
use crate::exercise::{Attempt, Par, Score, par, score};
use crate::store::{self, JournalFile};

use super::Failure;
use super::scenarios::{self, FoundScenario};

pub use super::attempt_text::{answer_text, card_text, final_text};

/// Program and version that write journals.
const CREATED_BY: &str = concat!("lashwright ", env!("CARGO_PKG_VERSION"));

/// All exercises that ship with the program.
///
/// # Errors
/// As for a file; a test reads them all.
pub fn list() -> Result<Vec<ExerciseRow>, Failure> {
    Ok(scenarios::embedded()?
        .iter()
        .map(|found| ExerciseRow::new(&found.source, found.exercise.scenario()))
        .collect())
}

/// An attempt under way, with its journal if it has one.
#[derive(Debug)]
pub struct Session {
    found: FoundScenario,
    attempt: Attempt,
    par: Par,
    /// Of the finished attempt.
    score: Option<Score>,
    journal: Option<(JournalFile, Option<Writer>)>,
}

impl Session {
    /// Begins an attempt. With a journal its first line is on the disk when this returns.
    ///
    /// # Errors
    /// A scenario that cannot be found, read or played; a journal that cannot be made.
    pub fn begin(scenario: &str, seed: u64, journal: Option<&Path>) -> Result<Self, Failure> {
        let found = scenarios::find(scenario)?;
        let attempt = begin(&found, seed)?;
        let journal = journal
            .map(|path| -> Result<_, Failure> {
                let mut file = JournalFile::create(path)?;
                let (writer, line) = Writer::begin(&Header::new(&found.source, texts(&found), seed, CREATED_BY));
                file.append(&line)?;
                Ok((file, Some(writer)))
            })
            .transpose()?;
        Ok(Self {
            par: par_of(&found, seed)?,
            score: None,
            found,
            attempt,
            journal,
        })
    }

    /// The attempt.
    pub fn attempt(&self) -> &Attempt {
        &self.attempt
    }

    /// Does the operation that a line of JSON names, keeps it and gives its answer. The axle handed over seals the journal.
    ///
    /// # Errors
    /// A line that is no operation, or a journal that cannot be written: then nothing was done.
    pub fn apply(&mut self, line: &str) -> Result<Answer, Failure> {
        let operation = Operation::from_json(line).map_err(|error| Failure::input(format!("error: {error}.")))?;
        let mut next = self.attempt.clone();
        let answer = next.apply(&operation);
        let sealed = next.is_finished();
        if sealed && self.score.is_none() {
            self.score = Some(score(&next, &self.par));
        }
        if let Some((file, writer)) = &mut self.journal {
            let Some(mut going_on) = writer.take() else {
                return Err(Failure::input("error: the axle has been handed over."));
            };
            let mut lines = going_on.entry(&value(&operation)?, &value(&answer)?);
            if let Some(score) = self.score.as_ref().filter(|_| sealed) {
                lines.push_str(&going_on.clone().seal(&value(&ScoreDocument::new(score))?));
            }
            file.append(&lines)?;
            *writer = (!sealed).then_some(going_on);
        }
        self.attempt = next;
        Ok(answer)
    }

    /// What stands at the end.
    pub fn document(&self) -> AttemptDocument {
        let bench = self.attempt.bench();
        let points = self.score.clone().unwrap_or_else(|| score(&self.attempt, &self.par));
        AttemptDocument {
            scenario: self.found.source.clone(),
            seed: self.attempt.seed(),
            finished: self.attempt.is_finished(),
            score: ScoreDocument::new(&points),
            par: UsedDocument::of_par(&self.par),
            used: UsedDocument::new(bench.ledger()),
            losses: points.losses.iter().map(LossDocument::new).collect(),
            truth: self
                .attempt
                .is_finished()
                .then(|| TruthDocument::new(&self.attempt.outcome())),
            state_hash: bench.state_hash(),
        }
    }
}

/// Texts that an attempt depends on: scenario, gear set, support.
fn texts(found: &FoundScenario) -> [&str; 3] {
    let [gears, support] = &found.parts;
    [&found.text, gears, support]
}

fn begin(found: &FoundScenario, seed: u64) -> Result<Attempt, Failure> {
    Attempt::begin(Arc::new(found.exercise.clone()), seed).map_err(|error| {
        Failure::input(format!(
            "error: seed {seed} of `{}` cannot be played: {error}.",
            found.source
        ))
    })
}

fn par_of(found: &FoundScenario, seed: u64) -> Result<Par, Failure> {
    par(&Arc::new(found.exercise.clone()), seed).map_err(|error| {
        Failure::input(format!(
            "error: seed {seed} of `{}` cannot be played: {error}.",
            found.source
        ))
    })
}

fn value<T: serde::Serialize>(of: &T) -> Result<Value, Failure> {
    serde_json::to_value(of).map_err(|error| Failure::other(format!("error: {error}.")))
}

/// Reads a journal and does everything in it again.
///
/// # Errors
/// A journal that cannot be read, is damaged or newer; a scenario that is not there any more.
pub fn replay(path: &Path) -> Result<ReplayDocument, Failure> {
    let bytes = store::read_within(path, journal::LIMITS.bytes)?;
    let read = journal::read(&bytes).map_err(|error| Failure::input(format!("error: {}: {error}.", path.display())))?;
    let found = scenarios::find(&read.header.scenario)?;
    let mut attempt = begin(&found, read.header.seed)?;
    let mut first_difference = None;
    for (index, entry) in read.entries.iter().enumerate() {
        let operation: Operation = serde_json::from_value(entry.operation.clone()).map_err(|error| {
            Failure::input(format!(
                "error: {}: operation {} cannot be read any more: {error}.",
                path.display(),
                index + 1
            ))
        })?;
        let answer = attempt.apply(&operation);
        if value(&answer)? != entry.answer && first_difference.is_none() {
            first_difference = Some(index + 1);
        }
    }
    let points = ScoreDocument::new(&score(&attempt, &par_of(&found, read.header.seed)?));
    // Journals that were sealed before there was a score hold none.
    let kept = read.sealed.as_ref().filter(|score| !score.is_null());
    let score_identical = kept.map(|kept| value(&points).map(|now| now == *kept)).transpose()?;
    Ok(ReplayDocument {
        journal: path.display().to_string(),
        scenario: read.header.scenario.clone(),
        seed: read.header.seed,
        operations: read.entries.len(),
        identical: first_difference.is_none() && score_identical != Some(false),
        first_difference,
        recomputed: !read.same_physics() || !read.same_texts(texts(&found)),
        sealed: read.sealed.is_some(),
        score: points,
        score_identical,
        notice: read.torn.clone(),
        state_hash: attempt.bench().state_hash(),
    })
}
