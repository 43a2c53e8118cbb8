//! Pages and pictures that a person saves from the window: all in one folder, where documents are looked for.

use std::path::{Path, PathBuf};

use super::Failure;
use crate::store;
use crate::words::say;

/// Most files of one name in the folder.
const MOST: u32 = 10_000;

/// Where pages and pictures of the person at this machine go: a folder of the program's name among the documents, or beside
/// the attempts where the system names none; none where it names neither.
pub fn folder() -> Option<PathBuf> {
    store::documents_folder()
        .map(|documents| documents.join("Lashwright"))
        .or_else(|| store::data_folder().map(|data| data.join("pages")))
}

/// Names for new files that differ in their endings only, as many as there are endings, none of which is taken; the folder
/// is made where it is not there.
///
/// # Errors
/// A folder that cannot be made, or one that is full.
pub fn new_files(folder: &Path, name: &str, endings: &[&str]) -> Result<Vec<PathBuf>, Failure> {
    store::make_folder(folder)?;
    (1..=MOST)
        .map(|number| -> Vec<PathBuf> {
            endings
                .iter()
                .map(|ending| folder.join(format!("{name}-{number}.{ending}")))
                .collect()
        })
        .find(|files| files.iter().all(|file| !file.exists()))
        .ok_or_else(|| {
            Failure::went_wrong(say!(
                "files-folder-full-of",
                folder = folder.display().to_string(),
                name = name,
                most = MOST
            ))
        })
}
