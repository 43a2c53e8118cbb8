//! The journal of an attempt under way: what was answered stands on the disk.

use serde::Serialize;
use serde_json::Value;

use crate::bench::Operation;
use crate::exercise::journal::{Full, Writer};
use crate::store::JournalFile;

use super::Failure;
use super::attempt::value;

/// Where an attempt is kept.
#[derive(Debug)]
pub(super) struct Journal {
    file: JournalFile,
    /// None once the journal is sealed.
    writer: Option<Writer>,
    kept: Vec<Operation>,
}

impl Journal {
    /// A journal whose first line is in its file.
    pub(super) fn new(file: JournalFile, writer: Writer) -> Self {
        Self {
            file,
            writer: Some(writer),
            kept: Vec::new(),
        }
    }

    /// All operations that stand in it: an attempt that went further than its journal is done again from them.
    pub(super) fn kept(&self) -> &[Operation] {
        &self.kept
    }

    /// Whether there is room for an operation, asked before it is done.
    ///
    /// # Errors
    /// A journal that is sealed, or that has no room but for the end.
    pub(super) fn takes(&self, operation: &Operation) -> Result<(), Failure> {
        match &self.writer {
            None => Err(Failure::input("error: the axle has been handed over.")),
            Some(writer) if writer.is_full() && !matches!(operation, Operation::Finish {}) => {
                Err(Failure::input(format!("error: {Full}; only `finish` is taken now.")))
            }
            Some(_) => Ok(()),
        }
    }

    /// Puts an operation and its answer on the disk; a score seals the journal.
    ///
    /// # Errors
    /// What cannot be read again, or cannot be written: the chain and the file are then where they were.
    pub(super) fn keep(
        &mut self,
        operation: Operation,
        answer: &impl Serialize,
        score: Option<&Value>,
    ) -> Result<(), Failure> {
        let full = |error: Full| Failure::input(format!("error: {error}."));
        self.takes(&operation)?;
        // A copy goes on, and takes the place of the writer once its lines are on the disk.
        let mut going_on = self.writer.clone();
        let mut lines = String::new();
        if let Some(writer) = &mut going_on {
            lines.push_str(&writer.entry(&value(&operation)?, &value(answer)?).map_err(full)?);
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::exercise::journal::{Header, read};
    use crate::store::read_within;
    use serde_json::json;

    /// A journal filled up with long remarks takes nothing but the end, and is whole and sealed after it.
    #[test]
    fn a_full_journal_takes_only_the_end() {
        let (mut writer, mut text) = Writer::begin(&Header::new("tried", ["", "", ""], 1, "test"));
        let remark = json!("m".repeat(200_000));
        while !writer.is_full() {
            text.push_str(&writer.entry(&remark, &json!(0)).expect("room"));
        }
        let path = std::env::temp_dir().join(format!("lashwright-full-journal-{}.jsonl", std::process::id()));
        let mut journal = Journal::new(JournalFile::create(&path, &text).expect("made"), writer);
        let turn = Operation::from_json(r#"{"do":"turn","what":"pinion","turns":1}"#).expect("an operation");
        for refused in [journal.takes(&turn), journal.keep(turn, &json!({}), None)] {
            let failure = refused.expect_err("full");
            assert!(
                failure.text.contains("as large as one can be") && failure.text.contains("`finish`"),
                "{failure}"
            );
        }
        assert!(journal.kept().is_empty(), "nothing was kept");
        let finish = Operation::Finish {};
        journal.takes(&finish).expect("the end");
        // A score without end is refused, and leaves room for a shorter one.
        let endless = json!("m".repeat(300_000));
        journal
            .keep(Operation::Finish {}, &json!({"done": true}), Some(&endless))
            .expect_err("too long");
        journal
            .keep(finish, &json!({"done": true}), Some(&json!(50)))
            .expect("the end");
        let bytes = read_within(&path, usize::MAX).expect("there");
        drop(std::fs::remove_file(&path));
        let found = read(&bytes).expect("whole");
        assert_eq!((found.sealed, found.torn), (Some(json!(50)), None));
        assert_eq!(journal.kept(), [Operation::Finish {}]);
        assert!(
            journal
                .takes(&Operation::Finish {})
                .expect_err("sealed")
                .text
                .contains("handed over"),
            "only now"
        );
    }
}
