//! Doing everything in a journal again.

use std::path::Path;

use crate::document::attempt::{ReplayDocument, ScoreDocument};
use crate::exercise::{Attempt, journal, score};
use crate::job::{Failure, debrief, json, scenarios};
use crate::report::attempt as pages;
use crate::store;
use crate::words::{self, say};

use super::axle::{answered, begin, journal_failure, par_of, texts};

/// Reads a journal and does everything in it again.
///
/// # Errors
/// A journal that cannot be read, is damaged or newer; a scenario that is not there any more.
pub fn replay(path: &Path) -> Result<ReplayDocument, Failure> {
    done_again(path).map(|(document, _)| document)
}

/// As [`replay`], and writes the debrief of the attempt that came out as a page of HTML, whole or not at all.
///
/// # Errors
/// As [`replay`]; an attempt that is not finished, a file that cannot be written.
pub fn replay_debrief(path: &Path, file: &Path) -> Result<ReplayDocument, Failure> {
    debrief::target_is_free(file, &[path])?;
    let (document, attempt) = done_again(path)?;
    let said = match (document.identical, document.recomputed) {
        (true, _) => say!("pages-journal-identical"),
        (false, true) => say!("pages-journal-other-version"),
        (false, false) => say!("pages-journal-changed"),
    };
    debrief::write(&attempt, &document.scenario, Some(&said), file)?;
    Ok(document)
}

/// What came out, for people.
pub fn text(found: &ReplayDocument) -> String {
    pages::replay(found)
}

/// What came out, as one JSON document.
///
/// # Errors
/// Only where it cannot be written as JSON, which is a fault of the program.
pub fn document(found: &ReplayDocument) -> Result<String, Failure> {
    json::pretty(found)
}

fn done_again(path: &Path) -> Result<(ReplayDocument, Attempt), Failure> {
    let bytes = store::read_within(path, journal::LIMITS.bytes)?;
    let read = journal::read(&bytes).map_err(|error| journal_failure(path, &words::error::journal(&error).line()))?;
    let found = scenarios::find(&read.header.scenario)?;
    let mut attempt = begin(&found, read.header.seed)?;
    let mut first_difference = None;
    for (index, entry) in read.entries.iter().enumerate() {
        let operation = read.operation(entry).map_err(|error| {
            Failure::bad_input(say!(
                "card-operation-unreadable",
                path = path.display().to_string(),
                number = index + 1,
                why = error.to_string()
            ))
        })?;
        let answer = answered(&mut attempt, &operation);
        if !read.is_answer(entry, &answer) && first_difference.is_none() {
            first_difference = Some(index + 1);
        }
    }
    let points = ScoreDocument::new(&score(&attempt, &par_of(&found, read.header.seed)?));
    // Journals that were sealed before there was a score hold none.
    let kept = read.sealed.as_ref().filter(|score| !score.is_null());
    let score_identical = kept
        .map(|kept| json::value(&points).map(|now| now == *kept))
        .transpose()?;
    let document = ReplayDocument {
        journal: path.display().to_string(),
        scenario: read.header.scenario.clone(),
        format: read.format(),
        seed: read.header.seed,
        operations: read.entries.len(),
        identical: first_difference.is_none() && score_identical != Some(false),
        first_difference,
        recomputed: !read.same_physics() || !read.same_texts(texts(&found)),
        sealed: read.sealed.is_some(),
        score: points,
        score_identical,
        notice: read.torn.map(words::answer::torn_line),
        state_hash: attempt.bench().state_hash(),
        note: words::simulated(),
    };
    Ok((document, attempt))
}
