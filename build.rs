//! Finds the files that ship inside the program: every TOML file in the folders below becomes an entry of `src/catalogue`.
//! Adding or removing one builds the catalogue anew; no list names them.
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

fn main() -> io::Result<()> {
    let root = PathBuf::from(variable("CARGO_MANIFEST_DIR")?);
    let mut code = String::new();
    for (folder, constant) in FOLDERS {
        // Of a folder cargo looks at the times of all that lies in it, and of itself.
        println!("cargo::rerun-if-changed={folder}");
        writeln!(
            code,
            "/// Files of `{folder}`, by name.\nconst {constant}: &[Embedded] = &["
        )
        .map_err(io::Error::other)?;
        for file in toml_files(&root.join(folder))? {
            let name = plain(file.file_stem().map(Path::new))?;
            let path = format!("/{folder}/{name}.toml");
            // Looked up where the compiler runs: checkouts may share one target folder, and with it what is written here.
            writeln!(
                code,
                "    Embedded {{ name: {name:?}, text: include_str!(concat!(env!(\"CARGO_MANIFEST_DIR\"), {path:?})) }},"
            )
            .map_err(io::Error::other)?;
        }
        code += "];\n";
    }
    println!("cargo::rerun-if-changed=build.rs");
    fs::write(Path::new(&variable("OUT_DIR")?).join("embedded.rs"), code)
}

/// What cargo hands over.
fn variable(name: &str) -> io::Result<String> {
    env::var(name).map_err(io::Error::other)
}

/// The TOML files in a folder, by name.
fn toml_files(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.extension().is_some_and(|ending| ending == "toml") {
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
