//! Checking files of any of our kinds.

use std::convert::Infallible;
use std::path::Path;

use crate::catalogue;
use crate::exercise::journal;
use crate::store;
use crate::text::{Document, Limits, Problems, decode};
use crate::words;
use crate::words::answer::torn_line;
use crate::words::say;

use super::attempt::journal_failure;
use super::{Failure, gear_sets, scenarios, supports};

/// Checks a file, or an embedded one by its name, and says in one line what it is; doubtful geometry adds
/// a line a warning.
///
/// # Errors
/// Everything that is wrong with it, gears that cannot exist included.
pub fn check(source: &str) -> Result<String, Failure> {
    if catalogue::support(source).is_some() {
        return supports::find(source).map(|found| support_line(&found));
    }
    if catalogue::scenario(source).is_some() {
        return scenarios::find(source).map(|found| scenario_line(&found));
    }
    let path = Path::new(source);
    if path.is_file() && path.extension().is_some_and(|e| e == "jsonl") {
        return journal_line(source, path);
    }
    if catalogue::gear_set(source).is_none() && path.is_file() {
        let bytes = store::read_within(path, Limits::HAND_WRITTEN.bytes)?;
        let kind = says_kind(&bytes).unwrap_or_default();
        if kind.starts_with("lashwright-support/") {
            return supports::read(source, &bytes).map(|found| support_line(&found));
        }
        if kind.starts_with("lashwright-scenario/") {
            return scenarios::find(source).map(|found| scenario_line(&found));
        }
    }
    let found = gear_sets::find(source)?;
    let set = found.prepare()?;
    let design = &found.design;
    let mut lines = vec![say!(
        "check-gears",
        warnings = set.warnings().len(),
        source = found.source.clone(),
        name = design.name.clone(),
        ring_gear = design.wheel_teeth,
        pinion = design.pinion_teeth
    )];
    lines.extend(set.warnings().iter().map(|warning| {
        format!(
            "  {}",
            say!("check-warning", what = words::error::warning(warning).line())
        )
    }));
    Ok(lines.join("\n"))
}

fn support_line(found: &supports::FoundSupport) -> String {
    let (source, name) = (found.source.clone(), found.support.name.clone());
    if found.support.has_sleeve() {
        say!("check-support-crush", source = source, name = name)
    } else {
        say!("check-support-solid", source = source, name = name)
    }
}

/// What a journal is, without doing it again.
fn journal_line(source: &str, path: &Path) -> Result<String, Failure> {
    let bytes = store::read_within(path, journal::LIMITS.bytes)?;
    let read = journal::read(&bytes).map_err(|error| journal_failure(path, &words::error::journal(&error).line()))?;
    let (exercise, seed) = (read.header.scenario.clone(), read.header.seed.to_string());
    let operations = read.entries.len();
    Ok(match (&read.sealed, &read.torn) {
        (Some(_), _) => say!(
            "check-journal-sealed",
            source = source,
            exercise = exercise,
            seed = seed,
            operations = operations
        ),
        (None, None) => say!(
            "check-journal-open",
            source = source,
            exercise = exercise,
            seed = seed,
            operations = operations
        ),
        (None, Some(bytes)) => say!(
            "check-journal-torn",
            source = source,
            exercise = exercise,
            seed = seed,
            operations = operations,
            torn = torn_line(*bytes)
        ),
    })
}

fn scenario_line(found: &scenarios::FoundScenario) -> String {
    let scenario = found.exercise.scenario();
    say!(
        "check-exercise",
        source = found.source.clone(),
        title = words::card::texts(scenario).title,
        step = scenario.step,
        layout = scenario.layout.name()
    )
}

/// What a text calls itself, of whatever version. A text that is no TOML says nothing.
fn says_kind(bytes: &[u8]) -> Option<String> {
    let text = decode::<Infallible>(bytes, Limits::HAND_WRITTEN).ok()?;
    let document = Document::parse::<Infallible>(text).ok()?;
    document
        .root()
        .text("format", 1..=60, &mut Problems::<Infallible>::new())
}
