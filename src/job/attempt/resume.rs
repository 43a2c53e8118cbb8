//! Going on with an attempt that was left, or that ended with the program.

use std::path::Path;

use super::{Session, begin, texts, value};
use crate::bench::Operation;
use crate::exercise::journal;
use crate::job::{Failure, scenarios};
use crate::store::JournalFile;

/// An attempt that was opened again.
#[derive(Debug)]
pub struct Resumed {
    /// The attempt, as it was left.
    pub session: Session,
    /// What was done so far, refused operations included.
    pub operations: Vec<Operation>,
    /// What was dropped at the end of the journal, for people.
    pub notice: Option<String>,
}

impl Session {
    /// Opens a journal, does everything in it again and goes on with it: what is done next is added at its end. A torn last
    /// line is cut off and said in the notice. A finished attempt is opened to be looked at.
    ///
    /// # Errors
    /// A journal that cannot be read or is damaged, that another program is writing, whose scenario is not there, or whose
    /// answers do not come out again: such an attempt can be replayed, but not gone on with.
    pub fn resume(path: &Path) -> Result<Resumed, Failure> {
        let (mut file, bytes) = JournalFile::open(path, journal::LIMITS.bytes)?;
        let fail = |what: String| Failure::input(format!("error: {}: {what}", path.display()));
        let read = journal::read(&bytes).map_err(|error| fail(format!("{error}.")))?;
        let found = scenarios::find(&read.header.scenario)?;
        let mut attempt = begin(&found, read.header.seed)?;
        let mut operations = Vec::with_capacity(read.entries.len());
        for (index, entry) in read.entries.iter().enumerate() {
            let operation: Operation = serde_json::from_value(entry.operation.clone())
                .map_err(|error| fail(format!("operation {} cannot be read any more: {error}.", index + 1)))?;
            let answer = attempt.apply(&operation);
            if value(&answer)? != entry.answer {
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
        if read.torn.is_some() {
            file.cut_to(read.whole_bytes)?;
        }
        let writer = read.go_on();
        let session = Self {
            found,
            attempt,
            journal: Some((file, writer)),
        };
        Ok(Resumed {
            session,
            operations,
            notice: read.torn,
        })
    }
}
