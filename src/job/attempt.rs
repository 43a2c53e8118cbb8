//! An attempt without a screen: operations in, answers out, each kept before it is shown.

use std::path::Path;
use std::sync::{Arc, OnceLock};

use serde_json::Value;

use crate::bench::{Answer, Operation};
use crate::document::attempt::{
    AnswerDocument, ApprovalDocument, AttemptDocument, ExerciseRow, LossDocument, ReplayDocument, ScoreDocument,
    TruthDocument, UsedDocument,
};
use crate::exercise::journal::{self, Header, Writer};
use crate::exercise::technician::{Policy, play};
use crate::exercise::{Attempt, Par, Score, par, score};
use crate::store::{self, JournalFile};

use crate::words::{self, say};

use super::attempt_journal::Journal;
use super::scenarios::{self, FoundScenario};
use super::{Failure, debrief, text_file};

mod resume;

use super::attempt_text::answer_text;
pub use super::attempt_text::{card_text, final_text};

/// Program and version that write journals.
const CREATED_BY: &str = concat!("lashwright ", env!("CARGO_PKG_VERSION"));

/// Longest line that names an operation, bytes: its texts and lists are limited, and this is many times what they take.
pub const LONGEST_LINE: usize = 64 * 1024;

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
pub struct OpenAttempt {
    found: FoundScenario,
    attempt: Attempt,
    /// Worked out when it is first asked for: the reference technician plays the seed.
    par: OnceLock<Par>,
    /// Of the finished attempt.
    score: Option<Score>,
    journal: Option<Journal>,
}

impl OpenAttempt {
    /// Begins an attempt. With a journal its first line is on the disk when this returns.
    ///
    /// # Errors
    /// A scenario that cannot be found, read or played; a journal that cannot be made.
    pub fn begin(scenario: &str, seed: u64, journal: Option<&Path>) -> Result<Self, Failure> {
        let found = scenarios::find(scenario)?;
        let attempt = begin(&found, seed)?;
        let journal = journal
            .map(|path| -> Result<_, Failure> {
                let (writer, line) = Writer::begin(&Header::new(&found.source, texts(&found), seed, CREATED_BY));
                Ok(Journal::new(JournalFile::create(path, &line)?, writer))
            })
            .transpose()?;
        Ok(Self {
            par: OnceLock::new(),
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

    /// The score of the finished attempt; none before its end.
    pub fn score(&self) -> Option<&Score> {
        self.score.as_ref()
    }

    /// Does an operation, keeps it and gives its answer. The axle handed over seals the journal.
    ///
    /// # Errors
    /// A journal that is sealed, full or cannot be written: then nothing was done, and once there is room again the attempt
    /// goes on.
    pub fn apply(&mut self, operation: Operation) -> Result<Answer, Failure> {
        if let Some(journal) = &self.journal {
            journal.takes(&operation)?;
        }
        let answer = answered(&mut self.attempt, &operation);
        if self.attempt.is_finished() && self.score.is_none() {
            self.score = Some(score(&self.attempt, &self.par()?));
        }
        if let Some(journal) = &mut self.journal {
            let sealed = self.score.as_ref().map(|s| value(&ScoreDocument::new(s))).transpose()?;
            if let Err(failure) = journal.keep(operation, &answer, sealed.as_ref()) {
                self.attempt = begin(&self.found, self.attempt.seed())?;
                for operation in journal.kept() {
                    self.attempt.apply(operation);
                }
                self.score = None;
                return Err(failure);
            }
        }
        Ok(answer)
    }

    /// Name of the exercise, as [`scenarios::find`] takes it.
    pub fn source(&self) -> &str {
        &self.found.source
    }

    /// Writes the debrief of the finished attempt as a page of HTML, whole or not at all.
    ///
    /// # Errors
    /// An attempt that is not finished, a file that cannot be written.
    pub fn write_debrief(&self, file: &Path) -> Result<(), Failure> {
        debrief::write(&self.attempt, &self.found.source, None, file)
    }

    /// An answer as JSON, with the words of what is typed in it.
    pub fn answer_document(&self, answer: Answer) -> AnswerDocument {
        AnswerDocument::new(answer, words::card::texts(self.found.exercise.scenario()).hints)
    }

    /// An answer in words.
    pub fn answer_text(&self, answer: &Answer) -> String {
        answer_text(answer, words::card::texts(self.found.exercise.scenario()).hints)
    }

    /// What the reference technician takes for this seed.
    ///
    /// # Errors
    /// None in practice: a seed that begins can be played.
    pub fn par(&self) -> Result<Par, Failure> {
        if let Some(par) = self.par.get() {
            return Ok(*par);
        }
        let par = par_of(&self.found, self.attempt.seed())?;
        Ok(*self.par.get_or_init(|| par))
    }

    /// What stands at the end.
    ///
    /// # Errors
    /// As for [`OpenAttempt::par`].
    pub fn document(&self) -> Result<AttemptDocument, Failure> {
        let bench = self.attempt.bench();
        let par = self.par()?;
        let points = self.score.clone().unwrap_or_else(|| score(&self.attempt, &par));
        Ok(AttemptDocument {
            scenario: self.found.source.clone(),
            seed: self.attempt.seed(),
            finished: self.attempt.is_finished(),
            approval_prints: self
                .attempt
                .exercise()
                .approval_prints()
                .iter()
                .map(ApprovalDocument::new)
                .collect(),
            score: ScoreDocument::new(&points),
            par: UsedDocument::of_par(&par),
            used: UsedDocument::new(bench.ledger()),
            losses: points.losses.iter().map(LossDocument::new).collect(),
            truth: self
                .attempt
                .is_finished()
                .then(|| TruthDocument::new(&self.attempt.outcome())),
            state_hash: bench.state_hash(),
        })
    }
}

/// The operation that a line of JSON names.
///
/// # Errors
/// A line that is too long or no operation.
pub fn operation_of(line: &str) -> Result<Operation, Failure> {
    if line.len() > LONGEST_LINE {
        return Err(text_file::too_long(LONGEST_LINE));
    }
    Operation::from_json(line).map_err(|error| {
        Failure::bad_input(say!(
            "card-operation-wrong",
            why = words::error::operation(&error).line()
        ))
    })
}

/// Does an operation. An operation that costs nothing costs 0 and not −0, which the sum of no prices is.
fn answered(attempt: &mut Attempt, operation: &Operation) -> Answer {
    let mut answer = attempt.apply(operation);
    answer.money += 0.0;
    answer
}

/// The operations of somebody who plays a seed to its end, as JSON lines: `reference`, `reversed` or `random`.
///
/// # Errors
/// A policy that there is not; a scenario that cannot be found, read or played.
pub fn played(scenario: &str, seed: u64, policy: &str) -> Result<Vec<String>, Failure> {
    let Some(policy) = Policy::ALL.into_iter().find(|p| p.name() == policy) else {
        let names: Vec<&str> = Policy::ALL.into_iter().map(Policy::name).collect();
        return Err(Failure::bad_input(say!(
            "card-nobody-plays",
            policy = policy,
            names = names.join(", ")
        )));
    };
    let found = scenarios::find(scenario)?;
    let attempt = play(&Arc::new(found.exercise.clone()), seed, policy)
        .map_err(|error| unplayable(scenario, seed, &words::error::exercise(&error).line()))?;
    attempt
        .steps()
        .iter()
        .map(|step| serde_json::to_string(&step.operation).map_err(Failure::of_program))
        .collect()
}

/// Texts that an attempt depends on: scenario, gear set, support.
fn texts(found: &FoundScenario) -> [&str; 3] {
    let [gears, support] = &found.parts;
    [&found.text, gears, support]
}

fn begin(found: &FoundScenario, seed: u64) -> Result<Attempt, Failure> {
    Attempt::begin(Arc::new(found.exercise.clone()), seed)
        .map_err(|error| unplayable(&found.source, seed, &words::error::exercise(&error).line()))
}

fn par_of(found: &FoundScenario, seed: u64) -> Result<Par, Failure> {
    par(&Arc::new(found.exercise.clone()), seed)
        .map_err(|error| unplayable(&found.source, seed, &words::error::exercise(&error).line()))
}

/// Why an axle of an exercise cannot be played.
fn unplayable(exercise: &str, seed: u64, why: &str) -> Failure {
    Failure::bad_input(say!(
        "card-cannot-be-played",
        seed = seed.to_string(),
        exercise = exercise,
        why = why
    ))
}

pub(super) fn value<T: serde::Serialize>(of: &T) -> Result<Value, Failure> {
    serde_json::to_value(of).map_err(Failure::of_program)
}

/// Reads a journal and does everything in it again.
///
/// # Errors
/// A journal that cannot be read, is damaged or newer; a scenario that is not there any more.
pub fn replay(path: &Path) -> Result<ReplayDocument, Failure> {
    done_again(path).map(|(document, _)| document)
}

/// As [`replay`], and writes the debrief of the attempt that came out as a page of HTML, whole or not at all.
///
/// # Errors
/// As [`replay`]; an attempt that is not finished, a file that cannot be written.
pub fn replay_debrief(path: &Path, file: &Path) -> Result<ReplayDocument, Failure> {
    debrief::target_is_free(file, &[path])?;
    let (document, attempt) = done_again(path)?;
    let said = match (document.identical, document.recomputed) {
        (true, _) => say!("pages-journal-identical"),
        (false, true) => say!("pages-journal-other-version"),
        (false, false) => say!("pages-journal-changed"),
    };
    debrief::write(&attempt, &document.scenario, Some(&said), file)?;
    Ok(document)
}

/// What is wrong with a journal.
pub(super) fn journal_failure(path: &Path, why: &str) -> Failure {
    Failure::bad_input(say!("files-journal", path = path.display().to_string(), why = why))
}

fn done_again(path: &Path) -> Result<(ReplayDocument, Attempt), Failure> {
    let bytes = store::read_within(path, journal::LIMITS.bytes)?;
    let read = journal::read(&bytes).map_err(|error| journal_failure(path, &words::error::journal(&error).line()))?;
    let found = scenarios::find(&read.header.scenario)?;
    let mut attempt = begin(&found, read.header.seed)?;
    let mut first_difference = None;
    for (index, entry) in read.entries.iter().enumerate() {
        let operation = read.operation(entry).map_err(|error| {
            Failure::bad_input(say!(
                "card-operation-unreadable",
                path = path.display().to_string(),
                number = index + 1,
                why = error.to_string()
            ))
        })?;
        let answer = answered(&mut attempt, &operation);
        if !read.is_answer(entry, &answer) && first_difference.is_none() {
            first_difference = Some(index + 1);
        }
    }
    let points = ScoreDocument::new(&score(&attempt, &par_of(&found, read.header.seed)?));
    // Journals that were sealed before there was a score hold none.
    let kept = read.sealed.as_ref().filter(|score| !score.is_null());
    let score_identical = kept.map(|kept| value(&points).map(|now| now == *kept)).transpose()?;
    let document = ReplayDocument {
        journal: path.display().to_string(),
        scenario: read.header.scenario.clone(),
        format: read.format(),
        seed: read.header.seed,
        operations: read.entries.len(),
        identical: first_difference.is_none() && score_identical != Some(false),
        first_difference,
        recomputed: !read.same_physics() || !read.same_texts(texts(&found)),
        sealed: read.sealed.is_some(),
        score: points,
        score_identical,
        notice: read.torn.map(words::answer::torn_line),
        state_hash: attempt.bench().state_hash(),
    };
    Ok((document, attempt))
}
