//! A person's own attempts: what lies in their folder, finished and not.

use std::path::{Path, PathBuf};

use crate::exercise::journal;
use crate::job::{Failure, store_error};
use crate::report::problem::error_line;
use crate::store;
use crate::words::{self, say};

/// Ending of journals.
const ENDING: &str = "jsonl";
/// Most attempts at one axle of one exercise.
const MOST: u32 = 10_000;

/// An attempt in the folder.
#[derive(Debug, Clone, PartialEq)]
pub struct Kept {
    /// Its journal.
    pub path: PathBuf,
    /// Name of its exercise.
    pub scenario: String,
    /// Which axle of it.
    pub seed: u64,
    /// Operations so far.
    pub operations: usize,
    /// Whether the axle was handed over.
    pub finished: bool,
    /// Points that it was sealed with, if it holds any.
    pub score: Option<f64>,
}

/// The folder of the person at this machine; none where the system names none.
pub fn folder() -> Option<PathBuf> {
    store::attempts_folder()
}

/// All attempts in a folder, the newest last, and what is wrong with the others.
pub fn list(folder: &Path) -> (Vec<Kept>, Vec<String>) {
    let (mut kept, mut problems) = (Vec::new(), Vec::new());
    for path in store::files_in(folder, ENDING) {
        match read(&path) {
            Ok(found) => kept.push(found),
            Err(problem) => problems.push(problem),
        }
    }
    (kept, problems)
}

fn read(path: &Path) -> Result<Kept, String> {
    let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
    let bytes = store::read_within(path, journal::LIMITS.bytes).map_err(|error| store_error(&error).line())?;
    let read = journal::read(&bytes)
        .map_err(|error| say!("files-journal", path = name, why = words::error::journal(&error).line()))?;
    Ok(Kept {
        path: path.to_owned(),
        scenario: read.header.scenario,
        seed: read.header.seed,
        operations: read.entries.len(),
        finished: read.sealed.is_some(),
        score: read
            .sealed
            .as_ref()
            .and_then(|score| score.get("total").and_then(serde_json::Value::as_f64)),
    })
}

/// A file name for a new attempt that is not taken yet; the folder is made where it is not there.
///
/// # Errors
/// A folder that cannot be made, or one that is full.
pub fn new_journal(folder: &Path, scenario: &str, seed: u64) -> Result<PathBuf, Failure> {
    store::make_folder(folder)?;
    // A scenario that is a file goes by its name.
    let stem = Path::new(scenario).file_stem().unwrap_or_default().to_string_lossy();
    (1..=MOST)
        .map(|number| folder.join(format!("{stem}-axle-{seed}-{number}.{ENDING}")))
        .find(|path| !path.exists())
        .ok_or_else(|| {
            Failure::went_wrong(say!(
                "files-folder-full",
                folder = folder.display().to_string(),
                most = MOST
            ))
        })
}

/// Why a journal could not be opened, in one sentence without what a terminal wants.
pub fn sentence(failure: &Failure) -> String {
    let mark = error_line("");
    let text = &failure.text;
    text.strip_prefix(mark.as_str()).map_or_else(|| text.clone(), capital)
}

/// With a capital at the start.
fn capital(sentence: &str) -> String {
    let mut rest = sentence.chars();
    let first: String = rest.next().map(|c| c.to_uppercase().collect()).unwrap_or_default();
    first + rest.as_str()
}
