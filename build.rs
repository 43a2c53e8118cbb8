//! Finds the files that ship inside the program: every TOML file in the folders below becomes an entry of `src/catalogue`,
//! every message file below `assets/words` one of `src/words`. Adding or removing one builds them anew; no list names them.
#![expect(
    clippy::disallowed_methods,
    reason = "what is embedded is looked up and written while building"
)]

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::{env, fs, io};

/// Folders with what the constant of their files is called.
const FOLDERS: [(&str, &str); 3] = [
    ("assets/gears", "GEAR_FILES"),
    ("assets/supports", "SUPPORT_FILES"),
    ("scenarios", "SCENARIO_FILES"),
];

/// Folder with a folder of message files a language.
const WORDS: &str = "assets/words";

fn main() -> io::Result<()> {
    println!("cargo::rerun-if-changed=build.rs");
    let root = PathBuf::from(variable("CARGO_MANIFEST_DIR")?);
    let out = PathBuf::from(variable("OUT_DIR")?);
    let mut code = String::new();
    for (folder, constant) in FOLDERS {
        // Of a folder cargo looks at the times of all that lies in it, and of itself.
        println!("cargo::rerun-if-changed={folder}");
        writeln!(
            code,
            "/// Files of `{folder}`, by name.\nconst {constant}: &[Embedded] = &["
        )
        .map_err(io::Error::other)?;
        for file in files_in(&root.join(folder), Some("toml"))? {
            let name = plain(file.file_stem().map(Path::new))?;
            let text = included(&format!("{folder}/{name}.toml"));
            writeln!(code, "    Embedded {{ name: {name:?}, text: {text} }},").map_err(io::Error::other)?;
        }
        code += "];\n";
    }
    fs::write(out.join("embedded.rs"), code)?;

    println!("cargo::rerun-if-changed={WORDS}");
    let mut code = String::from("/// Languages with their message files.\nconst LANGUAGES: &[(&str, &[&str])] = &[\n");
    for folder in files_in(&root.join(WORDS), None)? {
        let language = plain(folder.file_name().map(Path::new))?;
        writeln!(code, "    ({language:?}, &[").map_err(io::Error::other)?;
        for file in files_in(&folder, Some("ftl"))? {
            let name = plain(file.file_name().map(Path::new))?;
            let text = included(&format!("{WORDS}/{language}/{name}"));
            writeln!(code, "        {text},").map_err(io::Error::other)?;
        }
        code += "    ]),\n";
    }
    fs::write(out.join("messages.rs"), code + "];\n")
}

/// The text of a file of the project, looked up where the compiler runs: checkouts may share one target folder, and with it
/// what is written here.
fn included(path: &str) -> String {
    format!(
        "include_str!(concat!(env!(\"CARGO_MANIFEST_DIR\"), {:?}))",
        format!("/{path}")
    )
}

/// What cargo hands over.
fn variable(name: &str) -> io::Result<String> {
    env::var(name).map_err(io::Error::other)
}

/// What lies in a folder and has this ending (none: its folders), by name.
fn files_in(folder: &Path, ending: Option<&str>) -> io::Result<Vec<PathBuf>> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        let wanted = match ending {
            Some(wanted) => path.extension().is_some_and(|ending| ending == wanted),
            None => path.is_dir(),
        };
        if wanted {
            files.push(path);
        }
    }
    files.sort();
    Ok(files)
}

/// A path as text.
fn plain(path: Option<&Path>) -> io::Result<&str> {
    path.and_then(Path::to_str)
        .ok_or_else(|| io::Error::other(format!("a name that is no plain text: {path:?}")))
}
