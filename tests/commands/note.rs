//! Whatever prints simulated values says what they are not, in every form.

use std::collections::BTreeSet;
use std::path::Path;

use lashwright::{store, words};
use serde_json::Value;

use super::program::{Folder, run, words as path_of};

const SET: &str = "3.73-tapered-ring-224";
const SUPPORT: &str = "light-axle-sleeve";
const EXERCISE: &str = "feel-then-read";
const TABLE: [&str; 6] = ["--nut-torque-from", "100", "--nut-torque-to", "200", "--step", "50"];

/// What is printed.
#[derive(Debug, Clone, Copy)]
enum Form {
    /// Text for people: the note stands in a line of its own.
    Text,
    /// One JSON document, or a list of them: each has the note under a key.
    Document,
    /// A JSON document a line.
    Lines,
    /// A table with the note as its first line, a comment.
    Table,
    /// No simulated values: what was checked, names, operations, schemas.
    Nothing,
}

/// A file without what markup puts between and into its words.
fn read_words(file: &Path) -> String {
    let bytes = store::read_within(file, 1 << 24).expect("the file was written");
    let text = String::from_utf8(bytes).expect("text");
    let mut plain = String::new();
    let mut rest = text.as_str();
    while let Some((before, tag)) = rest.split_once('<') {
        plain.push_str(before);
        plain.push(' ');
        rest = tag.split_once('>').map_or("", |(_, after)| after);
    }
    plain.push_str(rest);
    plain.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn has_note(document: &Value, what: &str) {
    assert_eq!(document["note"], words::simulated(), "{what}");
}

fn check(arguments: &[&str], form: Form) {
    let what = arguments.join(" ");
    let printed = run(arguments);
    assert_eq!((printed.code, printed.err.as_str()), (0, ""), "{what}");
    let note = words::simulated();
    match form {
        Form::Text => assert!(printed.out.lines().any(|line| line == note), "{what}: {}", printed.out),
        Form::Document => match serde_json::from_str(&printed.out).expect("one JSON document") {
            Value::Array(list) => {
                assert!(!list.is_empty(), "{what}");
                for document in &list {
                    has_note(document, &what);
                }
            }
            document => has_note(&document, &what),
        },
        Form::Lines => {
            assert!(printed.out.lines().count() > 1, "{what}: {}", printed.out);
            for line in printed.out.lines() {
                has_note(&serde_json::from_str(line).expect("a JSON document"), &what);
            }
        }
        Form::Table => assert_eq!(printed.out.lines().next(), Some(format!("# {note}").as_str()), "{what}"),
        Form::Nothing => assert!(!printed.out.contains(&note), "{what} prints simulated values after all"),
    }
}

#[test]
fn every_command_says_what_simulated_values_are_not() {
    let folder = Folder::new("note");
    let [journal, svg, chart, preload, html, again] =
        ["j.jsonl", "m.svg", "c.svg", "p.svg", "d.html", "e.html"].map(|name| folder.file(name));
    let [journal_path, svg_path, chart_path, preload_path, html_path, again_path] =
        [&journal, &svg, &chart, &preload, &html, &again].map(|file| path_of(file));
    let played = ["attempt", EXERCISE, "--seed", "1", "--play", "reference"];
    let axes = "pinion=-0.1:0.1:0.1,ring-gear=0:0.1:0.1";
    let table = |more: &[&'static str]| [&["preload", SUPPORT], &TABLE[..], more].concat();
    let cases: Vec<(Vec<&str>, Form)> = vec![
        (vec!["mesh", SET, "--picture", svg_path], Form::Text),
        (
            vec!["mesh", SET, "--route", "fast", "--picture", chart_path, "--chart", axes],
            Form::Text,
        ),
        (vec!["mesh", SET, "--json"], Form::Document),
        (
            vec!["mesh", SET, "--placements", "tests/commands/mesh_inputs/good.csv"],
            Form::Lines,
        ),
        (vec!["preload", SUPPORT, "--picture", preload_path], Form::Text),
        (vec!["preload", SUPPORT, "--json"], Form::Document),
        (table(&[]), Form::Text),
        (table(&["--json"]), Form::Document),
        (table(&["--csv"]), Form::Table),
        (
            [&played[..], &["--debrief", html_path, "--journal", journal_path]].concat(),
            Form::Text,
        ),
        ([&played[..], &["--json"]].concat(), Form::Lines),
        (vec!["attempt", "--list", "--json"], Form::Document),
        (vec!["attempt", "--list"], Form::Nothing),
        (vec!["replay", journal_path, "--debrief", again_path], Form::Text),
        (vec!["replay", journal_path, "--json"], Form::Document),
        (vec!["gears", "--json"], Form::Document),
        (vec!["gears"], Form::Nothing),
        (vec!["check", SET, SUPPORT, EXERCISE], Form::Nothing),
        (vec!["operations"], Form::Nothing),
        (vec!["operations", "--json"], Form::Nothing),
        (vec!["schema", "mesh"], Form::Nothing),
    ];
    for (arguments, form) in &cases {
        check(arguments, *form);
    }
    for file in [&svg, &chart, &preload, &html, &again] {
        let text = read_words(file);
        assert!(text.contains(&words::simulated()), "{}: {text}", file.display());
    }
    // A command that comes has to be thought of here; `picture` draws the window.
    let tried: BTreeSet<&str> = cases
        .iter()
        .filter_map(|(arguments, _)| arguments.first().copied())
        .collect();
    let help = run(&["--help"]).out;
    let known: BTreeSet<&str> = help
        .lines()
        .filter_map(|line| line.strip_prefix("  ")?.split_once("  ").map(|(name, _)| name))
        .filter(|name| !name.is_empty() && name.chars().all(|c| c.is_ascii_lowercase()))
        .filter(|name| *name != "picture")
        .collect();
    assert_eq!(tried, known);
}

/// Every document with a published schema says there that it has the note.
#[test]
fn every_schema_has_the_note() {
    for name in lashwright::document::SCHEMAS {
        let schema: Value = serde_json::from_str(&run(&["schema", name]).out).expect("a schema");
        let of = if schema["type"] == "array" {
            let reference = schema["items"]["$ref"].as_str().expect("a row");
            schema.pointer(reference.trim_start_matches('#')).expect("defined")
        } else {
            &schema
        };
        assert_eq!(of["properties"]["note"]["type"], "string", "{name}");
        let required = of["required"].as_array().expect("a list");
        assert!(required.iter().any(|key| key == "note"), "{name}: {required:?}");
    }
}
