//! The journal of an attempt: JSON lines in a chain of hashes. Pure text; [`crate::exercise`] reads and writes no file.
//!
//! ```text
//! {"format":"lashwright-journal/2","scenario":…,"seed":…,…,"hash":H0}
//! {"before":H0,"operation":{…},"answer":{…},"hash":H1}
//! {"before":H1,"operation":{…},"answer":{…},"hash":H2}
//! {"before":H2,"score":…,"seal":S}
//! ```
//! Every line ends in the BLAKE3 of all its bytes before the key `hash`, and holds that of the line before. The last line of
//! a finished attempt seals the chain: its hash runs over all lines. A line that stands whole in a file is therefore known
//! to be what was written, the last one included; what is missing at the end of an attempt that was never sealed cannot be
//! known. The chain finds damage, not cheating: anyone can hash again.
//!
//! Answers are values: numbers and names of what was seen, never sentences, so that a rewording touches no journal. Format 1
//! kept sentences in its answers. It is read like this one, and its answers are compared by their numbers
//! ([`ReadJournal::is_answer`]); one that is gone on with stays of format 1.
//!
//! A journal of another version of the physics is read like any other and said to be so ([`ReadJournal::same_physics`]): its
//! answers have to be recomputed, and may then differ without anything being broken.

use serde::{Deserialize, Serialize};
use serde_json::Value;
use thiserror::Error;

use crate::bench::{Answer, Operation};
use crate::contact::PHYSICS_VERSION;
use crate::text::Limits;

/// Name and version of the format that is written.
pub const FORMAT: &str = "lashwright-journal/2";
/// Names and versions that are read, by their number.
const READ: [&str; 2] = ["lashwright-journal/1", FORMAT];
/// What comes before the version in the name.
const KIND: &str = "lashwright-journal/";
/// First version of the physics in which a reading goes stale only by what it depends on.
const STALE_AS_NOW: u32 = 2;
/// Key that ends a line, and the one that ends the last.
const HASH: &str = ",\"hash\":\"";
const SEAL: &str = ",\"seal\":\"";
/// Letters of a hash.
const HEX: usize = 64;

/// Most bytes that ending a body adds: key, hash, quote, bracket, line end.
const ENDING: usize = HASH.len() + HEX + 3;

/// How large a journal may be.
pub const LIMITS: Limits = Limits {
    bytes: 16 * 1024 * 1024,
};
/// Longest line, bytes: far more than any operation, whose texts and lists are limited, with its answer.
const LONGEST_LINE: usize = 256 * 1024;
/// Version that this program writes.
const VERSION: &str = "2";
/// How the first line of every version begins, up to the name of the format.
const OPENING: &[u8] = b"{\"format\":\"";
/// Letters of another version's name that are said back.
const LONGEST_NAME: usize = 60;

/// What the first line says.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Header {
    format: String,
    /// Name of the scenario, or of its file.
    pub scenario: String,
    /// BLAKE3 of the scenario's text.
    pub scenario_hash: String,
    /// BLAKE3 of the gear set's text.
    pub gears_hash: String,
    /// BLAKE3 of the support's text.
    pub support_hash: String,
    /// Version of the physics that gave the answers.
    pub physics_version: u32,
    /// Seed of the attempt.
    pub seed: u64,
    /// Program and version that wrote it.
    pub created_by: String,
}

impl Header {
    /// For an attempt that begins now.
    pub fn new(scenario: &str, texts: [&str; 3], seed: u64, created_by: &str) -> Self {
        let [scenario_hash, gears_hash, support_hash] = texts.map(|text| hash_of(text.as_bytes()));
        Self {
            format: FORMAT.to_owned(),
            scenario: scenario.to_owned(),
            scenario_hash,
            gears_hash,
            support_hash,
            physics_version: PHYSICS_VERSION,
            seed,
            created_by: created_by.to_owned(),
        }
    }
}

/// One operation with its answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Entry {
    /// What was done.
    pub operation: Value,
    /// What was answered.
    pub answer: Value,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct EntryLine {
    before: String,
    operation: Value,
    answer: Value,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SealLine {
    before: String,
    score: Value,
}

/// BLAKE3 in hexadecimal letters.
fn hash_of(bytes: &[u8]) -> String {
    blake3::hash(bytes).to_hex().to_string()
}

/// A line that would make a journal larger than can be read again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[error("{self:?}")]
pub struct Full;

/// Writes lines, each with its line end. The caller puts them where they are kept before it shows what they say.
#[derive(Debug, Clone)]
pub struct Writer {
    before: String,
    all: blake3::Hasher,
    bytes: usize,
}

impl Writer {
    fn new() -> Self {
        Self {
            before: String::new(),
            all: blake3::Hasher::new(),
            bytes: 0,
        }
    }

    /// Begins a journal: the writer and the first line.
    pub fn begin(header: &Header) -> (Self, String) {
        let mut writer = Self::new();
        // A header holds numbers and texts only: nothing in it can fail to be written.
        let body = serde_json::to_string(header).unwrap_or_default();
        let line = writer.ended(body);
        (writer, line)
    }

    /// Whether only the end of the attempt fits in any more: its operation and the seal. The caller then takes nothing else,
    /// so that an attempt can always be handed over.
    pub fn is_full(&self) -> bool {
        self.bytes.saturating_add(3 * LONGEST_LINE) > LIMITS.bytes
    }

    /// The line of an operation and its answer. Room for a seal is always left.
    ///
    /// # Errors
    /// [`Full`] for a line that could not be read again; the chain is then where it was.
    pub fn entry(&mut self, operation: &Value, answer: &Value) -> Result<String, Full> {
        let body = format!(
            "{{\"before\":\"{}\",\"operation\":{operation},\"answer\":{answer}}}",
            self.before
        );
        self.fits(body.len(), LIMITS.bytes - LONGEST_LINE)?;
        Ok(self.ended(body))
    }

    /// The last line of a finished attempt.
    ///
    /// # Errors
    /// [`Full`] for a score that could not be read again.
    pub fn seal(mut self, score: &Value) -> Result<String, Full> {
        let body = format!("{{\"before\":\"{}\",\"score\":{score}", self.before);
        self.fits(body.len(), LIMITS.bytes)?;
        self.all.update(body.as_bytes());
        let seal = self.all.finalize().to_hex();
        Ok(format!("{body}{SEAL}{seal}\"}}\n"))
    }

    /// Whether a line with this body can be read again, in a journal of at most `most` bytes.
    fn fits(&self, body: usize, most: usize) -> Result<(), Full> {
        let line = body.saturating_add(ENDING);
        let fits = line <= LONGEST_LINE && self.bytes.saturating_add(line) <= most;
        fits.then_some(()).ok_or(Full)
    }

    /// Ends a JSON object with its hash.
    fn ended(&mut self, body: String) -> String {
        let open = body.strip_suffix('}').unwrap_or(&body).to_owned();
        let hash = hash_of(open.as_bytes());
        let line = format!("{open}{HASH}{hash}\"}}\n");
        self.take(&line, hash);
        line
    }

    /// Takes a whole line, with its line end, into the chain.
    fn take(&mut self, line: &str, hash: String) {
        self.all.update(line.as_bytes());
        self.bytes = self.bytes.saturating_add(line.len());
        self.before = hash;
    }
}

/// A journal that was read.
#[derive(Debug, Clone)]
pub struct ReadJournal {
    /// Its first line.
    pub header: Header,
    /// All whole operations.
    pub entries: Vec<Entry>,
    /// The score that it was sealed with; none while the attempt is not finished.
    pub sealed: Option<Value>,
    /// Bytes of a last line that was not written to its end and was dropped; none where nothing was.
    pub torn: Option<usize>,
    /// Bytes up to the end of the last whole line.
    pub whole_bytes: usize,
    writer: Writer,
}

impl ReadJournal {
    /// The number of its format.
    pub fn format(&self) -> u32 {
        let place = READ.iter().position(|format| *format == self.header.format);
        u32::try_from(place.map_or(READ.len(), |place| place + 1)).unwrap_or(u32::MAX)
    }

    /// The operation of an entry.
    ///
    /// # Errors
    /// What the reader says of one that this program does not know.
    pub fn operation(&self, entry: &Entry) -> Result<Operation, serde_json::Error> {
        let mut operation: Operation = serde_json::from_value(entry.operation.clone())?;
        // Format 1 named the record that a note was read from in the words beside it.
        if self.format() == 1
            && let Operation::Note { record, remark, .. } = &mut operation
            && record.is_none()
        {
            *record = record_in(remark);
        }
        Ok(operation)
    }

    /// Whether the answer of an entry is this one: every value in it; of format 1, whose sentences may have changed since,
    /// every number. Before version 2 of the physics more readings went stale than a change touched: which ones is not
    /// compared there.
    pub fn is_answer(&self, entry: &Entry, now: &Answer) -> bool {
        let mut kept = entry.answer.clone();
        if self.header.physics_version < STALE_AS_NOW
            && let Some(fields) = kept.as_object_mut()
        {
            fields.remove("stale");
            if !now.stale.is_empty() {
                fields.insert("stale".to_owned(), Value::from(now.stale.clone()));
            }
        }
        if self.format() > 1 {
            return serde_json::from_value::<Answer>(kept).is_ok_and(|kept| kept == *now);
        }
        serde_json::to_value(now).is_ok_and(|now| without_words(now) == without_words(kept))
    }

    /// Whether its answers are those of this version of the physics.
    pub fn same_physics(&self) -> bool {
        self.header.physics_version == PHYSICS_VERSION
    }

    /// Whether it was written for these texts: scenario, gear set, support.
    pub fn same_texts(&self, texts: [&str; 3]) -> bool {
        let found = [
            &self.header.scenario_hash,
            &self.header.gears_hash,
            &self.header.support_hash,
        ];
        texts
            .iter()
            .zip(found)
            .all(|(text, hash)| hash_of(text.as_bytes()) == *hash)
    }

    /// Goes on after its last whole line; none for a sealed one.
    pub fn go_on(&self) -> Option<Writer> {
        self.sealed.is_none().then(|| self.writer.clone())
    }
}

/// The record that the words beside a note of format 1 begin with, as in "record 3, dial indicator".
fn record_in(remark: &str) -> Option<u32> {
    remark.split(',').next()?.strip_prefix("record ")?.parse().ok()
}

/// An answer without what was told in words in format 1: notices, the reason of a refusal, names of readings.
fn without_words(mut answer: Value) -> Value {
    if let Some(fields) = answer.as_object_mut() {
        fields.remove("noticed");
        fields.remove("refused");
        let readings = fields.get_mut("readings").and_then(Value::as_array_mut);
        for reading in readings.into_iter().flatten().filter_map(Value::as_object_mut) {
            reading.remove("name");
            reading.remove("quantity");
        }
    }
    answer
}

/// How damage of a line shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Damage {
    /// It stands after the seal.
    AfterSeal,
    /// It is longer than any line is.
    TooLong,
    /// It holds bytes that are no text.
    NoText,
    /// Its seal does not fit the lines before.
    Seal,
    /// It cannot be read.
    Unreadable,
    /// It does not follow the line before.
    Chain,
    /// It was not written to its end.
    Unfinished,
    /// It does not say what it is.
    NoFormat,
    /// It has no hash.
    NoHash,
    /// Its hash does not fit.
    Hash,
    /// Its version is not what was written.
    Version,
}

/// Why a journal cannot be read.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{self:?}")]
pub enum JournalError {
    /// Larger than any attempt is.
    TooLarge {
        /// Its size.
        bytes: usize,
        /// The limit.
        most: usize,
    },
    /// No journal at all.
    NotAJournal,
    /// A journal of a version that this program does not know yet.
    Newer {
        /// What it calls itself.
        format: String,
    },
    /// A version that there has never been.
    NoSuchVersion {
        /// What it calls itself.
        format: String,
    },
    /// A line that is not what was written.
    Damaged {
        /// Counted from 1.
        line: usize,
        /// How that shows.
        what: Damage,
    },
}

/// Reads a journal.
///
/// # Errors
/// [`JournalError`]; a torn last line is none, it is dropped and said in [`ReadJournal::torn`].
pub fn read(bytes: &[u8]) -> Result<ReadJournal, JournalError> {
    if bytes.len() > LIMITS.bytes {
        return Err(JournalError::TooLarge {
            bytes: bytes.len(),
            most: LIMITS.bytes,
        });
    }
    let whole_bytes = bytes.iter().rposition(|b| *b == b'\n').map_or(0, |at| at + 1);
    let (whole, rest) = bytes.split_at(whole_bytes);
    // What stands after the last line end is empty and no line.
    let inside = whole.strip_suffix(b"\n").unwrap_or(whole);
    let mut lines = inside
        .split(|b| *b == b'\n')
        .enumerate()
        .map(|(index, line)| (index + 1, line));
    let first = lines.next().map_or(&[][..], |(_, line)| line);
    let header = read_header(first, rest)?;
    let mut writer = Writer::new();
    pass(&mut writer, 1, first)?;
    let mut entries = Vec::new();
    let mut sealed = None;
    for (number, line) in lines {
        let damaged = |what| JournalError::Damaged { line: number, what };
        if sealed.is_some() {
            return Err(damaged(Damage::AfterSeal));
        }
        if line.len() > LONGEST_LINE {
            return Err(damaged(Damage::TooLong));
        }
        let text = std::str::from_utf8(line).map_err(|_why| damaged(Damage::NoText))?;
        if let Some((body, seal)) = ended_by(text, SEAL) {
            let mut all = writer.all.clone();
            all.update(body.as_bytes());
            if all.finalize().to_hex().as_str() != seal {
                return Err(damaged(Damage::Seal));
            }
            let line: SealLine =
                serde_json::from_str(&format!("{body}}}")).map_err(|_why| damaged(Damage::Unreadable))?;
            if line.before != writer.before {
                return Err(damaged(Damage::Chain));
            }
            sealed = Some(line.score);
            continue;
        }
        let before = writer.before.clone();
        let body = pass(&mut writer, number, line)?;
        let line: EntryLine = serde_json::from_str(&body).map_err(|_why| damaged(Damage::Unreadable))?;
        if line.before != before {
            return Err(damaged(Damage::Chain));
        }
        entries.push(Entry {
            operation: line.operation,
            answer: line.answer,
        });
    }
    let torn = (!rest.is_empty()).then_some(rest.len());
    if sealed.is_some() && torn.is_some() {
        let line = entries.len() + 3;
        return Err(JournalError::Damaged {
            line,
            what: Damage::AfterSeal,
        });
    }
    Ok(ReadJournal {
        header,
        entries,
        sealed,
        torn,
        whole_bytes,
        writer,
    })
}

/// The first line, as far as it says what it is.
fn read_header(first: &[u8], rest: &[u8]) -> Result<Header, JournalError> {
    let damaged = |what| JournalError::Damaged { line: 1, what };
    if first.is_empty() {
        // Not even the first line is whole: nothing was begun.
        return Err(not_ours(rest, Damage::Unfinished));
    }
    // Before anything is made of it: a megabyte of brackets would take many times its size.
    if first.len() > LONGEST_LINE {
        return Err(not_ours(first, Damage::TooLong));
    }
    let text = std::str::from_utf8(first).map_err(|_why| not_ours(first, Damage::NoText))?;
    let said: Value = serde_json::from_str(text).map_err(|_why| not_ours(first, Damage::Unreadable))?;
    let format = said.get("format").and_then(Value::as_str).unwrap_or_default();
    if !format.starts_with(KIND) {
        // A flipped letter of the name is damage all the same: a line with its hash is ours.
        return Err(if text.contains(HASH) && text.contains("scenario_hash") {
            damaged(Damage::NoFormat)
        } else {
            JournalError::NotAJournal
        });
    }
    if !READ.contains(&format) {
        return Err(other_version(text, format));
    }
    let (body, hash) = ended_by(text, HASH).ok_or_else(|| damaged(Damage::NoHash))?;
    if hash_of(body.as_bytes()) != hash {
        return Err(damaged(Damage::Hash));
    }
    serde_json::from_str(&format!("{body}}}")).map_err(|_why| damaged(Damage::Unreadable))
}

/// Why a first line that cannot be taken apart is not read: its name is asked of its first bytes alone.
fn not_ours(line: &[u8], what: Damage) -> JournalError {
    let name = line
        .strip_prefix(OPENING)
        .and_then(|rest| rest.get(..rest.iter().position(|b| *b == b'"')?))
        .and_then(|name| std::str::from_utf8(name).ok())
        .filter(|name| name.starts_with(KIND));
    match name {
        Some(name) if !READ.contains(&name) => version_error(name),
        Some(_) => JournalError::Damaged { line: 1, what },
        None if line
            .windows(KIND.len())
            .take(LONGEST_LINE)
            .any(|bytes| bytes == KIND.as_bytes()) =>
        {
            JournalError::Damaged { line: 1, what }
        }
        None => JournalError::NotAJournal,
    }
}

/// Why a journal of another version is not read. Nothing is asked of it but its name: a newer version may end its lines in
/// other ways, or none.
fn other_version(text: &str, format: &str) -> JournalError {
    // What fits its hash as soon as the version is ours was ours, and is damaged there.
    let ours = ended_by(text, HASH).is_some_and(|(body, hash)| {
        READ.iter()
            .any(|known| hash_of(body.replacen(format, known, 1).as_bytes()) == hash)
    });
    if ours {
        return JournalError::Damaged {
            line: 1,
            what: Damage::Version,
        };
    }
    version_error(format)
}

/// A version that is not ours is a newer one or none at all.
fn version_error(format: &str) -> JournalError {
    let version = format.strip_prefix(KIND).unwrap_or_default();
    let format = format.chars().take(LONGEST_NAME).collect();
    // Compared as they are written: no number is too large to be newer.
    let is_number = version.bytes().all(|b| b.is_ascii_digit()) && !version.starts_with('0');
    if is_number && (version.len(), version) > (VERSION.len(), VERSION) {
        JournalError::Newer { format }
    } else {
        JournalError::NoSuchVersion { format }
    }
}

/// Checks a line's hash and takes it into the chain; gives the object without its hash.
fn pass(writer: &mut Writer, number: usize, line: &[u8]) -> Result<String, JournalError> {
    let damaged = |what| JournalError::Damaged { line: number, what };
    let text = std::str::from_utf8(line).map_err(|_why| damaged(Damage::NoText))?;
    let (body, hash) = ended_by(text, HASH).ok_or_else(|| damaged(Damage::NoHash))?;
    if hash_of(body.as_bytes()) != hash {
        return Err(damaged(Damage::Hash));
    }
    writer.take(&format!("{text}\n"), hash.to_owned());
    Ok(format!("{body}}}"))
}

/// What stands before a key with a hash that ends a line, and the hash.
fn ended_by<'t>(line: &'t str, key: &str) -> Option<(&'t str, &'t str)> {
    let rest = line.strip_suffix("\"}")?;
    let at = rest.len().checked_sub(HEX)?;
    let (head, hash) = (rest.get(..at)?, rest.get(at..)?);
    let hex = hash.bytes().all(|b| b.is_ascii_digit() || (b'a'..=b'f').contains(&b));
    let body = head.strip_suffix(key)?;
    hex.then_some((body, hash))
}
