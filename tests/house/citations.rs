//! Sources are cited themselves: author, title, year. Nothing cites a page that is not in the repository, by its file, by a
//! number in brackets or by the code of a row.
//!
//! Every file of the physics floors with a formula says in its tour where it comes from, or that it is our own.

use std::path::{Path, PathBuf};

use super::floors::{code_only, rust_files};

/// Parts of citations of other places, in two halves, so that this file does not hold them.
const ELSEWHERE: &[(&str, &str)] = &[
    ("checks", "/"),
    ("trade", ".md"),
    ("design", ".md"),
    ("hobbed", ".md"),
    ("load", ".md"),
    ("gear", "-inputs"),
    ("check", " page"),
    ("Check", " 1."),
    ("check", " 1."),
];

/// Letters of row codes, which have one or two digits.
const CODES: &str = "NTFSHKPL";

/// Symbols and names that look like a code, and where they are at home.
const SYMBOLS: &[(&[&str], &[&str])] = &[
    // The key that lists the keys.
    (
        &["F1"],
        &[
            "src/panels",
            "src/view",
            "src/app",
            "tests/panels",
            "tests/window",
            "README.md",
            "DEVELOPERS.md",
        ],
    ),
    // Hashes of lines.
    (&["H0", "H1", "H2"], &["src/exercise/journal.rs"]),
    // Constants of the friction table, and Palmgren's load.
    (&["S1", "S2", "P1"], &["src/bearing"]),
    // Preload of a pair.
    (&["F0"], &["tests/outside/bearing/pair_solution.rs"]),
    // Constants of gauge studies, and a factor of ISO 23509.
    (
        &["K1", "K2"],
        &[
            "tests/outside/gauge_study.rs",
            "tests/outside/iso_23509.rs",
            "tests/GUIDE.md",
        ],
    ),
];

/// Floors whose files name the sources of their formulas.
const PHYSICS: &[&str] = &["gear", "contact", "bearing", "axle", "numerics"];

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Files of the repository that people read: sources, texts, data.
fn files() -> Vec<PathBuf> {
    fn under(folder: &Path, found: &mut Vec<PathBuf>) {
        for entry in std::fs::read_dir(folder).expect("folder is readable") {
            let path = entry.expect("entry is readable").path();
            if path.is_dir() {
                under(&path, found);
            } else {
                found.push(path);
            }
        }
    }
    let mut found = Vec::new();
    for folder in ["src", "tests", "benches", "assets", "scenarios"] {
        under(&root().join(folder), &mut found);
    }
    for entry in std::fs::read_dir(root()).expect("folder is readable") {
        found.push(entry.expect("entry is readable").path());
    }
    found.retain(|path| {
        path.extension()
            .is_some_and(|e| ["rs", "md", "toml", "jsonl", "csv", "svg"].iter().any(|known| e == *known))
            // What this file looks for stands in its own samples.
            && !path.ends_with("tests/house/citations.rs")
    });
    found.sort();
    found
}

/// What a line of Rust says to people: its comment and its texts. Of other files, all of it.
fn said(line: &str, rust: bool) -> String {
    if !rust {
        return line.to_owned();
    }
    let (mut found, mut in_text, mut before) = (String::new(), false, ' ');
    for (at, c) in line.char_indices() {
        if !in_text && line[at..].starts_with("//") {
            found.push_str(&line[at..]);
            break;
        }
        if c == '"' && before != '\\' && before != '\'' {
            in_text = !in_text;
            found.push(' ');
        } else if in_text {
            found.push(c);
        }
        before = c;
    }
    found
}

/// Words of a line, each with what stands before and behind it.
fn words(line: &str) -> impl Iterator<Item = (&str, Option<char>, Option<char>)> {
    let word = |c: char| c.is_alphanumeric() || c == '_';
    line.char_indices()
        .filter(move |(at, c)| word(*c) && !line[..*at].chars().next_back().is_some_and(word))
        .map(move |(at, _)| {
            let rest = &line[at..];
            let end = rest.find(|c: char| !word(c)).unwrap_or(rest.len());
            (&rest[..end], line[..at].chars().next_back(), rest[end..].chars().next())
        })
}

/// Citations of other places in a line of a file.
fn cited(file: &str, line: &str) -> Vec<String> {
    let line = said(line, is_rust(file));
    let mut found: Vec<String> = ELSEWHERE
        .iter()
        .map(|(a, b)| format!("{a}{b}"))
        .filter(|part| line.contains(part.as_str()))
        .collect();
    for (word, before, behind) in words(&line) {
        let digits = word.trim_start_matches(|c| CODES.contains(c));
        let is_code = word.len() == digits.len() + 1
            && (1..=2).contains(&digits.len())
            && digits.chars().all(|c| c.is_ascii_digit())
            && !matches!(before, Some('#' | '.' | '-' | '/'));
        let is_symbol = || {
            SYMBOLS
                .iter()
                .any(|(names, homes)| names.contains(&word) && homes.iter().any(|home| file.starts_with(home)))
        };
        if is_code && !is_symbol() {
            found.push(word.to_owned());
        }
        let number = (1..=2).contains(&word.len()) && word.chars().all(|c| c.is_ascii_digit());
        let comment = !is_rust(file) || line.trim_start().starts_with("//");
        // A number in brackets behind a space; data have none there, and code is no comment.
        if number && comment && !is_data(file) && before == Some('[') && behind == Some(']') {
            let bracket = format!(" [{word}]");
            if line.contains(&bracket) && !line.contains(&format!("{bracket}(")) {
                found.push(bracket);
            }
        }
    }
    found
}

fn is_rust(file: &str) -> bool {
    ends_in(file, &["rs"])
}

fn is_data(file: &str) -> bool {
    ends_in(file, &["toml", "jsonl", "csv", "svg"])
}

fn ends_in(file: &str, ends: &[&str]) -> bool {
    Path::new(file)
        .extension()
        .is_some_and(|e| ends.iter().any(|end| e == *end))
}

#[test]
fn nothing_cites_a_page_that_is_not_here() {
    let files = files();
    assert!(files.len() > 200, "the files were not found");
    let mut wrong = Vec::new();
    for path in files {
        let name = path
            .strip_prefix(root())
            .expect("below")
            .to_string_lossy()
            .replace('\\', "/");
        let text = std::fs::read_to_string(&path).expect("file is readable");
        for (number, line) in text.lines().enumerate() {
            for citation in cited(&name, line) {
                wrong.push(format!("{name}:{}: {citation}", number + 1));
            }
        }
    }
    assert!(
        wrong.is_empty(),
        "name the source itself, with author, title and year:\n{}",
        wrong.join("\n")
    );
}

#[test]
fn formulas_name_their_source() {
    let mut wrong = Vec::new();
    let mut with_formulas = 0;
    for floor in PHYSICS {
        for path in rust_files(&root().join("src").join(floor)) {
            let text = std::fs::read_to_string(&path).expect("source is readable");
            let body = text.split("#[cfg(test)]").next().unwrap_or_default();
            let code = code_only(body).replace("numerics::math", "");
            let has_formula = ["math::", "libm::", " * ", " / "]
                .iter()
                .any(|sign| code.contains(sign));
            let tour: String = text.lines().take_while(|line| line.starts_with("//!")).collect();
            if has_formula {
                with_formulas += 1;
                if !tour.contains("Source: ") {
                    wrong.push(path.display().to_string());
                }
            }
        }
    }
    assert!(with_formulas > 40, "the formulas were not found");
    assert!(
        wrong.is_empty(),
        "say in the tour of the file where its formulas come from (`Source: ...`), or that they are our own:\n{}",
        wrong.join("\n")
    );
}

/// The scan itself: it must see what it is there to see.
#[test]
fn the_scan_sees_citations() {
    let seen = |line: &str| cited("tests/outside/sample.rs", line);
    assert_eq!(seen("/// As in `checks/gears.md` 3.2."), ["checks/"], "a folder");
    assert_eq!(seen("//! Signs of design.md section 6."), ["design.md"], "a file");
    assert_eq!(seen("/// N5: four threads."), ["N5"], "a row");
    assert_eq!(seen("//! and the rest: rows T8, T9, T11."), ["T8", "T9", "T11"], "rows");
    assert_eq!(seen("    Row::new(\"S7 approach\", x)"), ["S7"], "in a text");
    assert_eq!(
        seen("/// Workshop text [27]: timed."),
        [" [27]"],
        "a number in brackets"
    );
    for fine in [
        "/// ISO 23509:2006; M20x1.5; E1102; 2203/E",
        "let x = K3[2] * S7;",
        "/// See [`Pair`] and [0.5]",
        "/// values\u{a0}[1, 2]",
    ] {
        assert!(seen(fine).is_empty(), "{fine}");
    }
    assert!(
        cited("src/panels/help.rs", "[\"F1\", \"this list\"],").is_empty(),
        "a symbol at home"
    );
    assert_eq!(cited("src/gear/pitch.rs", "/// K1 = 1"), ["K1"], "a symbol elsewhere");
}
