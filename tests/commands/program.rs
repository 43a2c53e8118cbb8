//! Running the program.

use std::path::{Path, PathBuf};
use std::process::Output;

use assert_cmd::Command;
use lashwright::store;

/// An empty folder that is taken away at the end.
pub(crate) struct Folder(PathBuf);

impl Folder {
    pub(crate) fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("lashwright-{name}-{}", std::process::id()));
        std::fs::create_dir_all(&path).expect("a folder");
        Self(path)
    }

    pub(crate) fn file(&self, name: &str) -> PathBuf {
        self.0.join(name)
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        // If it cannot be taken away, the system's own cleaning does it.
        drop(std::fs::remove_dir_all(&self.0));
    }
}

/// What a run printed and how it ended.
pub(crate) struct Run {
    pub(crate) code: i32,
    pub(crate) out: String,
    pub(crate) err: String,
}

/// Runs the program with these arguments in the package's folder, without a display.
pub(crate) fn run(arguments: &[&str]) -> Run {
    run_in("en-US", arguments)
}

/// The same in the language of this tag.
pub(crate) fn run_in(language: &str, arguments: &[&str]) -> Run {
    let Output { status, stdout, stderr } = Command::cargo_bin("lashwright")
        .expect("the program was built")
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .env("LASHWRIGHT_LANG", language)
        .args(arguments)
        .output()
        .expect("it runs");
    Run {
        code: status.code().expect("it ended by itself"),
        out: String::from_utf8(stdout).expect("text"),
        err: String::from_utf8(stderr).expect("text"),
    }
}

/// Whether a text holds a number that is none, also right behind a letter as in the path of a drawing.
pub(crate) fn has_no_number(text: &str) -> bool {
    let words = text.split(|c: char| !c.is_alphanumeric());
    text.contains("NaN") || words.into_iter().any(|word| word.ends_with("inf"))
}

/// A path as an argument.
pub(crate) fn words(path: &Path) -> &str {
    path.to_str().expect("a plain name")
}

/// Writes operations into a file of the folder, one a line.
pub(crate) fn operations(folder: &Folder, lines: &[&str]) -> PathBuf {
    let file = folder.file("operations.jsonl");
    store::write_whole(&file, (lines.join("\n") + "\n").as_bytes()).expect("written");
    file
}

/// Plays the operations of a file at a seed of an exercise, with more arguments behind.
pub(crate) fn attempt(exercise: &str, seed: u32, file: &Path, more: &[&str]) -> Run {
    let seed = seed.to_string();
    let given = ["attempt", exercise, "--seed", &seed, "--operations", words(file)];
    run(&[&given, more].concat())
}

#[test]
fn help_says_the_job_and_the_caution() {
    let run = run(&["--help"]);
    assert_eq!(run.code, 0, "exit code");
    assert!(run.out.contains("ring and pinion"), "{}", run.out);
    assert!(run.out.contains("never a specification for a real axle"), "{}", run.out);
}

#[test]
fn help_of_every_command_says_what_its_arguments_are() {
    for command in [
        "check",
        "gears",
        "preload",
        "mesh",
        "attempt",
        "replay",
        "operations",
        "schema",
        "picture",
    ] {
        let [short, long] = ["-h", "--help"].map(|flag| run(&[command, flag]));
        for help in [&short, &long] {
            assert_eq!((help.code, help.err.as_str()), (0, ""), "{command}");
            assert!(help.out.contains("Print help"), "{command}: {}", help.out);
        }
    }
    let version = run(&["--version"]);
    assert_eq!(version.code, 0, "{}", version.err);
    assert!(version.out.starts_with("lashwright "), "{}", version.out);
}

#[test]
fn a_slip_on_the_command_line_is_bad_input() {
    let run = run(&["chekc"]);
    assert_eq!((run.code, run.out.as_str()), (2, ""), "{}", run.err);
    assert!(run.err.contains("check"), "suggests the command: {}", run.err);
}
