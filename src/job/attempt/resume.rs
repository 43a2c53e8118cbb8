//! Going on with an attempt that was left, or that ended with the program.

use std::path::Path;
use std::sync::OnceLock;

use crate::exercise::{journal, score};
use crate::job::{Failure, scenarios};
use crate::store::JournalFile;
use crate::words;
use crate::words::answer::torn_line;
use crate::words::say;

use super::axle::{answered, begin, journal_failure, texts};
use super::journal::Journal;
use super::open::OpenAttempt;

impl OpenAttempt {
    /// Opens a journal, does everything in it again and goes on with it: what is done next is added at its end. A torn last
    /// line is cut off and said. A finished attempt is opened to be looked at.
    ///
    /// # Errors
    /// A journal that cannot be read or is damaged, that another program is writing, whose scenario is not there, or whose
    /// answers do not come out again: such an attempt can be replayed, but not gone on with.
    pub fn resume(path: &Path) -> Result<(Self, Option<String>), Failure> {
        let (mut file, bytes) = JournalFile::open(path, journal::LIMITS.bytes)?;
        let shown = || path.display().to_string();
        let read =
            journal::read(&bytes).map_err(|error| journal_failure(path, &words::error::journal(&error).line()))?;
        let found = scenarios::find(&read.header.scenario)?;
        let mut attempt = begin(&found, read.header.seed)?;
        let mut operations = Vec::with_capacity(read.entries.len());
        for (index, entry) in read.entries.iter().enumerate() {
            let number = index + 1;
            let operation = read.operation(entry).map_err(|error| {
                Failure::bad_input(say!(
                    "card-operation-unreadable",
                    path = shown(),
                    number = number,
                    why = error.to_string()
                ))
            })?;
            let answer = answered(&mut attempt, &operation);
            if !read.is_answer(entry, &answer) {
                let why = if read.same_physics() && read.same_texts(texts(&found)) {
                    say!("card-answer-changed", path = shown(), number = number)
                } else {
                    say!("card-answer-other-version", path = shown(), number = number)
                };
                return Err(Failure::bad_input(why));
            }
            operations.push(operation);
        }
        file.cut_to(read.whole_bytes)?;
        let mut session = Self {
            par: OnceLock::new(),
            score: None,
            found,
            attempt,
            journal: Some(Journal::opened(file, read.go_on(), operations)),
        };
        if session.attempt.is_finished() {
            session.score = Some(score(&session.attempt, &session.par()?));
        }
        Ok((session, read.torn.map(torn_line)))
    }
}
