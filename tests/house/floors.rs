//! A floor uses only the floors below it that it may use. The table is the house of DEVELOPERS.md.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// Floors of the core, from the top down: each may use those in its own list.
const CORE: &[&str] = &[
    "exercise", "bench", "axle", "contact", "bearing", "gear", "text", "numerics", "quantity",
];

/// What each floor may use besides itself.
fn allowed(floor: &str) -> Vec<&'static str> {
    let with_core = |more: &[&'static str]| [more, CORE].concat();
    match floor {
        "main" => vec!["cli", "app", "job"],
        "app" => with_core(&["panels", "job", "view", "words", "drawing"]),
        "panels" => vec!["view", "words", "drawing", "quantity"],
        "cli" => vec!["job", "words"],
        "job" => with_core(&[
            "store",
            "class",
            "catalogue",
            "report",
            "document",
            "view",
            "words",
            "drawing",
        ]),
        "report" => with_core(&["document", "view", "words", "drawing"]),
        "class" => vec!["exercise", "drawing", "document"],
        "view" | "document" => with_core(&["words"]),
        "catalogue" | "words" | "store" => CORE.to_vec(),
        "exercise" => vec![
            "bench", "axle", "contact", "bearing", "gear", "text", "numerics", "quantity",
        ],
        "bench" => vec!["axle", "contact", "bearing", "gear", "text", "numerics", "quantity"],
        "axle" => vec!["contact", "bearing", "gear", "text", "numerics", "quantity"],
        "contact" => vec!["gear", "text", "numerics", "quantity"],
        "bearing" | "gear" => vec!["text", "numerics", "quantity"],
        "text" => vec!["numerics", "quantity"],
        "numerics" | "drawing" => vec!["quantity"],
        "quantity" => vec!["numerics"],
        // The tour only names the floors.
        "lib" => vec![],
        _ => panic!("src/{floor} is a floor that the table of the house does not know"),
    }
}

/// Crates and parts of the standard library that only some floors may name.
const KEPT_IN: &[(&str, &[&str])] = &[
    ("bevy", &["app"]),
    ("bevy_egui", &["app"]),
    ("wgpu", &["app"]),
    ("winit", &["app"]),
    ("x11rb", &["app"]),
    ("egui", &["app", "panels"]),
    ("clap", &["cli"]),
    ("codespan_reporting", &["report"]),
    ("fluent_bundle", &["words"]),
    ("unic_langid", &["text", "words"]),
    ("std::fs", &["store"]),
    ("std::time", &["app", "store"]),
    ("std::env", &["app", "cli", "store"]),
    ("std::process", &["app", "cli", "store", "main"]),
];

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// All Rust files under `folder`.
pub(crate) fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).expect("folder is readable") {
        let path = entry.expect("entry is readable").path();
        if path.is_dir() {
            found.extend(rust_files(&path));
        } else if path.extension().is_some_and(|e| e == "rs") {
            found.push(path);
        }
    }
    found.sort();
    found
}

/// The floor that a file below `src` belongs to.
fn floor_of(file: &Path) -> String {
    let below = file.strip_prefix(root().join("src")).expect("below src");
    let first = below
        .components()
        .next()
        .expect("a name")
        .as_os_str()
        .to_string_lossy()
        .into_owned();
    first.trim_end_matches(".rs").to_owned()
}

/// `source` without comments and without the contents of text literals, also of those that go over several lines.
pub(crate) fn code_only(source: &str) -> String {
    let mut code = String::with_capacity(source.len());
    let mut rest = source;
    while let Some(c) = rest.chars().next() {
        let skipped = if rest.starts_with("//") {
            rest.find('\n').unwrap_or(rest.len())
        } else if rest.starts_with("/*") {
            rest.find("*/").map_or(rest.len(), |end| end + 2)
        } else if c == '"' {
            text_length(rest)
        } else if c == 'r' && !code.ends_with(|before: char| before.is_alphanumeric() || before == '_') {
            raw_text_length(rest)
        } else if rest.starts_with("'\"'") || rest.starts_with("'\\\"'") {
            // A quotation mark as a character.
            3 + usize::from(rest.starts_with("'\\"))
        } else {
            0
        };
        if skipped == 0 {
            code.push(c);
            rest = &rest[c.len_utf8()..];
        } else {
            code.push_str(if c == '"' || c == 'r' { "\"\"" } else { " " });
            rest = &rest[skipped..];
        }
    }
    code
}

/// How long the text literal is that the source begins with.
fn text_length(source: &str) -> usize {
    let mut escaped = false;
    for (at, c) in source.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return at + 1,
            _ => {}
        }
    }
    source.len()
}

/// How long the raw text literal is that the source begins with; 0 where it begins with none.
fn raw_text_length(source: &str) -> usize {
    let hashes = source[1..].chars().take_while(|c| *c == '#').count();
    let end = format!("\"{}", "#".repeat(hashes));
    let start = 1 + hashes + 1;
    if source[1 + hashes..].starts_with('"') {
        source[start..]
            .find(&end)
            .map_or(source.len(), |at| start + at + end.len())
    } else {
        0
    }
}

/// First names after `start::` in `code`, also inside `start::{a, b::c}`.
fn names_after(code: &str, start: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let name_at = |text: &str| {
        text.trim_start()
            .chars()
            .take_while(|c| c.is_alphanumeric() || *c == '_')
            .collect::<String>()
    };
    for (at, _) in code.match_indices(start) {
        let before = code[..at].chars().next_back().unwrap_or(' ');
        if before.is_alphanumeric() || before == '_' || before == ':' {
            continue;
        }
        let rest = code[at + start.len()..].trim_start();
        if let Some(group) = rest.strip_prefix('{') {
            let mut depth = 1;
            let mut item = String::new();
            for c in group.chars() {
                match c {
                    '{' => depth += 1,
                    '}' => depth -= 1,
                    _ => {}
                }
                if depth == 0 || (depth == 1 && c == ',') {
                    names.insert(name_at(&item));
                    item.clear();
                    if depth == 0 {
                        break;
                    }
                } else {
                    item.push(c);
                }
            }
        } else {
            names.insert(name_at(rest));
        }
    }
    names.remove("");
    names
}

/// Every edge in the sources that the table forbids, as a readable line.
fn broken_edges(floor: &str, code: &str) -> Vec<String> {
    let may = allowed(floor);
    let mut broken = Vec::new();
    let mut used = names_after(code, "crate::");
    used.extend(names_after(code, "lashwright::"));
    for name in used {
        let is_floor = CORE.contains(&name.as_str())
            || [
                "app",
                "panels",
                "cli",
                "job",
                "report",
                "view",
                "document",
                "words",
                "drawing",
                "store",
                "catalogue",
                "class",
            ]
            .contains(&name.as_str());
        if is_floor && name != floor && !may.contains(&name.as_str()) {
            broken.push(format!("{floor} uses {name}"));
        }
    }
    for (kept, floors) in KEPT_IN {
        let named = match kept.split_once("::") {
            Some((library, part)) => names_after(code, &format!("{library}::")).contains(part),
            None => !names_after(code, &format!("{kept}::")).is_empty(),
        };
        if named && !floors.contains(&floor) {
            broken.push(format!("{floor} names {kept}, which is kept in {floors:?}"));
        }
    }
    broken
}

#[test]
fn floors_use_only_what_they_may() {
    let mut broken = Vec::new();
    let files = rust_files(&root().join("src"));
    assert!(files.len() > 20, "the sources were not found");
    for file in files {
        let code = code_only(&std::fs::read_to_string(&file).expect("source is readable"));
        for line in broken_edges(&floor_of(&file), &code) {
            broken.push(format!("{}: {line}", file.display()));
        }
    }
    assert!(broken.is_empty(), "forbidden edges:\n{}", broken.join("\n"));
}

/// The scan itself: it must see what it is there to see.
#[test]
fn the_scan_sees_forbidden_edges() {
    let seen = |floor, code: &str| broken_edges(floor, &code_only(code));
    assert_eq!(
        seen("gear", "use crate::contact::Placement;"),
        ["gear uses contact"],
        "plain"
    );
    assert_eq!(
        seen("panels", "use crate::{\n view::A, store::{B, C},\n};"),
        ["panels uses store"],
        "group"
    );
    assert_eq!(seen("gear", "fn f() { crate::job::x() }"), ["gear uses job"], "path");
    assert_eq!(seen("gear", "let x = std::fs::read(p);").len(), 1, "file system");
    assert_eq!(seen("job", "use bevy::prelude::*;").len(), 1, "Bevy");
    assert_eq!(seen("panels", "use bevy_egui::egui;").len(), 1, "Bevy's egui");
    assert!(
        seen(
            "gear",
            "use crate::numerics::math; // crate::app::x\nlet s = \"crate::app::x\";"
        )
        .is_empty(),
        "allowed"
    );
    assert!(
        seen("app", "use crate::panels::x; use bevy::prelude::*;").is_empty(),
        "allowed"
    );
    assert!(
        seen(
            "gear",
            "let s = \"two\\\" \n crate::app::x\"; let t = r#\"a\" crate::app::y\"#; /* crate::app::z */"
        )
        .is_empty(),
        "texts over several lines, raw texts, long comments"
    );
    assert_eq!(
        seen("gear", "let c = '\"'; crate::app::x").len(),
        1,
        "after a quotation mark"
    );
}

/// One noun a file: where one grows past 900 lines, a noun ended on the way.
#[test]
fn no_file_is_longer_than_nine_hundred_lines() {
    for file in rust_files(&root().join("src"))
        .into_iter()
        .chain(rust_files(&root().join("tests")))
    {
        let lines = std::fs::read_to_string(&file)
            .expect("source is readable")
            .lines()
            .count();
        assert!(lines <= 900, "{} has {lines} lines", file.display());
    }
}
