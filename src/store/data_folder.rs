//! The folders of a person: where own attempts, keys and choices are kept, and where pages and pictures are saved.

use std::env;
use std::path::{Path, PathBuf};

use super::StoreError;

/// Where data of the person at this machine belong: below `XDG_DATA_HOME`, or below `HOME` where the XDG base directory
/// specification puts data. None where neither says an absolute path. The folder need not be there.
pub fn data_folder() -> Option<PathBuf> {
    let absolute = |name: &str, below: &str| {
        let path = PathBuf::from(env::var_os(name)?);
        path.is_absolute().then(|| path.join(below))
    };
    absolute("XDG_DATA_HOME", "")
        .or_else(|| absolute("HOME", ".local/share"))
        .map(|data| data.join("lashwright"))
}

/// Where attempts of the person at this machine belong.
pub fn attempts_folder() -> Option<PathBuf> {
    data_folder().map(|data| data.join("attempts"))
}

/// Largest file of the user's folders that is read, bytes.
const USER_FOLDERS_LIMIT: usize = 64 * 1024;

/// Where the person at this machine looks for documents, if the system names such a folder: `XDG_DOCUMENTS_DIR`, from the
/// environment or as `user-dirs.dirs` says it, else `Documents` below the home folder where that is there.
///
/// Source: freedesktop.org, xdg-user-dirs, the file's own description.
pub fn documents_folder() -> Option<PathBuf> {
    const KEY: &str = "XDG_DOCUMENTS_DIR";
    let absolute = |path: PathBuf| path.is_absolute().then_some(path);
    let variable = |name: &str| env::var_os(name).map(PathBuf::from).and_then(absolute);
    if let Some(folder) = variable(KEY) {
        return Some(folder);
    }
    let home = variable("HOME").or_else(|| variable("USERPROFILE"))?;
    let file = variable("XDG_CONFIG_HOME")
        .unwrap_or_else(|| home.join(".config"))
        .join("user-dirs.dirs");
    let named = super::read_within(&file, USER_FOLDERS_LIMIT)
        .ok()
        .and_then(|bytes| user_folder(&String::from_utf8_lossy(&bytes), KEY, &home));
    // Whoever wants no such folder names the home folder itself.
    named
        .filter(|folder| *folder != home)
        .or_else(|| Some(home.join("Documents")).filter(|folder| folder.is_dir()))
}

/// The folder of a key in `user-dirs.dirs`: a path below the home folder, or an absolute one, between quotation marks.
fn user_folder(text: &str, key: &str, home: &Path) -> Option<PathBuf> {
    let value = text.lines().find_map(|line| {
        let (name, value) = line.trim().split_once('=')?;
        (name.trim() == key).then(|| value.trim().trim_matches('"'))
    })?;
    let path = match value.strip_prefix("$HOME") {
        Some(below) => home.join(below.trim_start_matches('/')),
        None => PathBuf::from(value),
    };
    path.is_absolute().then_some(path)
}

/// Makes a folder and those above it, where they are not there.
///
/// # Errors
/// [`StoreError::Write`].
pub fn make_folder(path: &Path) -> Result<(), StoreError> {
    std::fs::create_dir_all(path).map_err(|source| StoreError::Write {
        path: path.to_owned(),
        source,
    })
}

/// Files with this ending in a folder, those that were written last at the end; none where there is no such folder or it cannot be read.
pub fn files_in(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder).into_iter().flatten().flatten();
    let mut found: Vec<PathBuf> = entries
        .map(|entry| entry.path())
        .filter(|path| path.extension().is_some_and(|e| e == ending) && path.is_file())
        .collect();
    found.sort_by_cached_key(|path| {
        let written = path.metadata().and_then(|data| data.modified()).ok();
        (written, path.clone())
    });
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_folder_of_documents_is_read_as_the_system_writes_it() {
        let home = Path::new("/home/trainee");
        let text = "# This file is written by xdg-user-dirs-update\nXDG_DESKTOP_DIR=\"$HOME/Desktop\"\n\
                    XDG_DOCUMENTS_DIR=\"$HOME/Unterlagen\"\nXDG_MUSIC_DIR=\"/srv/music\"\nXDG_VIDEOS_DIR=\"videos\"\n";
        let of = |key| user_folder(text, key, home);
        assert_eq!(of("XDG_DOCUMENTS_DIR"), Some(home.join("Unterlagen")), "below home");
        assert_eq!(of("XDG_MUSIC_DIR"), Some(PathBuf::from("/srv/music")), "absolute");
        assert_eq!(of("XDG_VIDEOS_DIR"), None, "neither");
        assert_eq!(of("XDG_PICTURES_DIR"), None, "not there");
    }
}
