//! An attempt under way: operations in, answers out, each kept before it is shown.

use std::path::Path;
use std::sync::OnceLock;

use crate::bench::{Answer, Operation};
use crate::document::attempt::{
    AnswerDocument, ApprovalDocument, AttemptDocument, LossDocument, ScoreDocument, TruthDocument, UsedDocument,
};
use crate::exercise::journal::{Header, Writer};
use crate::exercise::{Attempt, Par, Score, score};
use crate::job::scenarios::{self, FoundScenario};
use crate::job::{Failure, debrief, json};
use crate::report::attempt as pages;
use crate::store::JournalFile;
use crate::words;

use super::axle::{answered, begin, par_of, texts};
use super::journal::Journal;

/// Program and version that write journals.
const CREATED_BY: &str = concat!("lashwright ", env!("CARGO_PKG_VERSION"));

/// An attempt under way, with its journal if it has one.
#[derive(Debug)]
pub struct OpenAttempt {
    pub(super) found: FoundScenario,
    pub(super) attempt: Attempt,
    /// Worked out when it is first asked for: the reference technician plays the seed.
    pub(super) par: OnceLock<Par>,
    /// Of the finished attempt.
    pub(super) score: Option<Score>,
    pub(super) journal: Option<Journal>,
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
            let sealed = self
                .score
                .as_ref()
                .map(|s| json::value(&ScoreDocument::new(s)))
                .transpose()?;
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

    /// The card for people.
    pub fn card(&self) -> String {
        pages::card(&self.attempt)
    }

    /// An answer as one line of JSON, with the words of what is typed in it.
    ///
    /// # Errors
    /// Only where it cannot be written as JSON, which is a fault of the program.
    pub fn answer_line(&self, answer: Answer) -> Result<String, Failure> {
        json::line(&AnswerDocument::new(answer, self.hints()))
    }

    /// An answer in words.
    pub fn answer_text(&self, answer: &Answer) -> String {
        pages::answer(answer, self.hints())
    }

    /// What stands at the end, for people.
    ///
    /// # Errors
    /// As for [`OpenAttempt::par`].
    pub fn end_text(&self) -> Result<String, Failure> {
        Ok(pages::end(&self.document()?, self.found.exercise.scenario().weights))
    }

    /// What stands at the end, as one line of JSON.
    ///
    /// # Errors
    /// As for [`OpenAttempt::par`].
    pub fn end_line(&self) -> Result<String, Failure> {
        json::line(&self.document()?)
    }

    fn hints(&self) -> &[String] {
        words::card::texts(self.found.exercise.scenario()).hints
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
            note: words::simulated(),
        })
    }
}
