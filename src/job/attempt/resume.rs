//! Going on with an attempt that was left, or that ended with the program.

use std::path::Path;
use std::sync::OnceLock;

use super::{Journal, OpenAttempt, answered, begin, texts};
use crate::exercise::{journal, score};
use crate::job::{Failure, scenarios};
use crate::store::JournalFile;
use crate::words;
use crate::words::answer::torn_line;

impl OpenAttempt {
    /// Opens a journal, does everything in it again and goes on with it: what is done next is added at its end. A torn last
    /// line is cut off and said. A finished attempt is opened to be looked at.
    ///
    /// # Errors
    /// A journal that cannot be read or is damaged, that another program is writing, whose scenario is not there, or whose
    /// answers do not come out again: such an attempt can be replayed, but not gone on with.
    pub fn resume(path: &Path) -> Result<(Self, Option<String>), Failure> {
        let (mut file, bytes) = JournalFile::open(path, journal::LIMITS.bytes)?;
        let fail = |what: String| Failure::input(format!("error: {}: {what}", path.display()));
        let read = journal::read(&bytes).map_err(|error| fail(words::error::journal(&error).line()))?;
        let found = scenarios::find(&read.header.scenario)?;
        let mut attempt = begin(&found, read.header.seed)?;
        let mut operations = Vec::with_capacity(read.entries.len());
        for (index, entry) in read.entries.iter().enumerate() {
            let operation = read
                .operation(entry)
                .map_err(|error| fail(format!("operation {} cannot be read any more: {}.", index + 1, error)))?;
            let answer = answered(&mut attempt, &operation);
            if !read.is_answer(entry, &answer) {
                let why = if read.same_physics() && read.same_texts(texts(&found)) {
                    "The file or the program is not what it was."
                } else {
                    "It was begun with another version of the physics or of the exercise."
                };
                return Err(fail(format!(
                    "operation {} does not come out again as it was answered, so it cannot be gone on with. {why} \
                     `lashwright replay` shows what it holds.",
                    index + 1
                )));
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
