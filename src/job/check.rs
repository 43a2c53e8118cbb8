//! Checking files of any of our kinds.

use std::convert::Infallible;
use std::path::Path;

use crate::catalogue;
use crate::exercise::journal;
use crate::report::check as pages;
use crate::store;
use crate::text::{Document, Limits, Problems, decode};
use crate::words;

use super::attempt::journal_failure;
use super::{AtFault, Failure, gear_sets, scenarios, supports};

/// Checks all files; the answer has one line a file, or all problems of all files.
///
/// # Errors
/// As [`check`], of all files at once.
pub fn all(files: &[String]) -> Result<String, Failure> {
    let mut lines = Vec::new();
    let mut failures: Vec<Failure> = Vec::new();
    for file in files {
        match check(file) {
            Ok(line) => lines.push(line),
            Err(failure) => failures.push(failure),
        }
    }
    if failures.is_empty() {
        return Ok(lines.join("\n"));
    }
    let fault = if failures.iter().any(|f| f.fault == AtFault::Other) {
        AtFault::Other
    } else {
        AtFault::Input
    };
    let texts: Vec<String> = failures.into_iter().map(|f| f.text).collect();
    Err(Failure {
        fault,
        text: texts.join("\n\n"),
    })
}

/// Checks a file, or an embedded one by its name, and says in one line what it is; doubtful geometry adds
/// a line a warning.
///
/// # Errors
/// Everything that is wrong with it, gears that cannot exist included.
pub fn check(source: &str) -> Result<String, Failure> {
    if catalogue::support(source).is_some() {
        return supports::find(source).map(|found| pages::support(&found.source, &found.support));
    }
    if catalogue::scenario(source).is_some() {
        return scenarios::find(source).map(|found| pages::scenario(&found.source, found.exercise.scenario()));
    }
    let path = Path::new(source);
    if path.is_file() && path.extension().is_some_and(|e| e == "jsonl") {
        return journal_line(source, path);
    }
    if catalogue::gear_set(source).is_none() && path.is_file() {
        let bytes = store::read_within(path, Limits::HAND_WRITTEN.bytes)?;
        let kind = says_kind(&bytes).unwrap_or_default();
        if kind.starts_with("lashwright-support/") {
            return supports::read(source, &bytes).map(|found| pages::support(&found.source, &found.support));
        }
        if kind.starts_with("lashwright-scenario/") {
            return scenarios::find(source).map(|found| pages::scenario(&found.source, found.exercise.scenario()));
        }
    }
    let found = gear_sets::find(source)?;
    Ok(pages::gears(&found.source, &found.prepare()?))
}

/// What a journal is, without doing it again.
fn journal_line(source: &str, path: &Path) -> Result<String, Failure> {
    let bytes = store::read_within(path, journal::LIMITS.bytes)?;
    let read = journal::read(&bytes).map_err(|error| journal_failure(path, &words::error::journal(&error).line()))?;
    Ok(pages::journal(source, &read))
}

/// What a text calls itself, of whatever version. A text that is no TOML says nothing.
fn says_kind(bytes: &[u8]) -> Option<String> {
    let text = decode::<Infallible>(bytes, Limits::HAND_WRITTEN).ok()?;
    let document = Document::parse::<Infallible>(text).ok()?;
    document
        .root()
        .text("format", 1..=60, &mut Problems::<Infallible>::new())
}
