//! Journals that the tests write.

use lashwright::exercise::journal::{Entry, Header, Writer};
use serde_json::Value;

/// In place of scenario, gear set and support.
pub(crate) const TEXTS: [&str; 3] = ["scenario", "gears", "support"];
/// Seed that their first line names.
pub(crate) const SEED: u64 = 7;

/// A journal that begins: its writer and its first line.
pub(crate) fn begin() -> (Writer, String) {
    Writer::begin(&Header::new("oat-barn-tractor", TEXTS, SEED, "lashwright 0.1.0"))
}

/// A journal of these entries with hashes of its own, sealed where there is a score.
pub(crate) fn written(header: &Header, entries: &[Entry], score: Option<&Value>) -> String {
    let (mut writer, mut lines) = Writer::begin(header);
    for entry in entries {
        lines += &writer.entry(&entry.operation, &entry.answer).expect("room");
    }
    if let Some(score) = score {
        lines += &writer.seal(score).expect("room");
    }
    lines
}
