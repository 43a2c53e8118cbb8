//! The journal of an attempt under way: what was answered stands on the disk.

use serde::Serialize;
use serde_json::Value;

use crate::bench::Operation;
use crate::exercise::journal::{Full, Writer};
use crate::job::{Failure, json};
use crate::store::JournalFile;
use crate::words::{self, say};

/// Where an attempt is kept.
#[derive(Debug)]
pub struct Journal {
    file: JournalFile,
    /// None once the journal is sealed.
    writer: Option<Writer>,
    kept: Vec<Operation>,
}

impl Journal {
    /// A journal whose first line is in its file.
    pub fn new(file: JournalFile, writer: Writer) -> Self {
        Self {
            file,
            writer: Some(writer),
            kept: Vec::new(),
        }
    }

    /// A journal that is gone on with: its open file, what goes on after its last whole line (none for a sealed one), and the
    /// operations that stand in it.
    pub fn opened(file: JournalFile, writer: Option<Writer>, kept: Vec<Operation>) -> Self {
        Self { file, writer, kept }
    }

    /// All operations that stand in it: an attempt that went further than its journal is done again from them.
    pub fn kept(&self) -> &[Operation] {
        &self.kept
    }

    /// Whether there is room for an operation, asked before it is done.
    ///
    /// # Errors
    /// A journal that is sealed, or that has no room but for the end.
    pub fn takes(&self, operation: &Operation) -> Result<(), Failure> {
        match &self.writer {
            None => Err(Failure::bad_input(say!("card-signed-off-already"))),
            Some(writer) if writer.is_full() && !matches!(operation, Operation::Finish {}) => Err(Failure::bad_input(
                say!("card-journal-full", why = words::error::journal_full()),
            )),
            Some(_) => Ok(()),
        }
    }

    /// Puts an operation and its answer on the disk; a score seals the journal.
    ///
    /// # Errors
    /// What cannot be read again, or cannot be written: the chain and the file are then where they were.
    pub fn keep(
        &mut self,
        operation: Operation,
        answer: &impl Serialize,
        score: Option<&Value>,
    ) -> Result<(), Failure> {
        let full = |_: Full| Failure::bad_input(say!("card-journal-too-large", why = words::error::journal_full()));
        self.takes(&operation)?;
        // A copy goes on, and takes the place of the writer once its lines are on the disk.
        let mut going_on = self.writer.clone();
        let mut lines = String::new();
        if let Some(writer) = &mut going_on {
            lines.push_str(
                &writer
                    .entry(&json::value(&operation)?, &json::value(answer)?)
                    .map_err(full)?,
            );
        }
        if let Some(score) = score
            && let Some(writer) = going_on.take()
        {
            lines.push_str(&writer.seal(score).map_err(full)?);
        }
        self.file.append(&lines)?;
        self.writer = going_on;
        self.kept.push(operation);
        Ok(())
    }
}
