//! Every package that the program stands on has a licence of the list in deny.toml.

use std::collections::BTreeSet;
use std::process::Command;

/// Whether an SPDX expression can be met with licences of `allowed`: one side of each OR, both sides of each AND.
/// A slash is an old way to write OR.
fn can_be_met(expression: &str, allowed: &BTreeSet<String>) -> bool {
    let plain = expression.replace('/', " OR ");
    // AND binds stronger than OR; parentheses come first.
    fn met(text: &str, allowed: &BTreeSet<String>) -> bool {
        for word in [" OR ", " AND "] {
            let mut depth = 0_i32;
            for (at, c) in text.char_indices() {
                match c {
                    '(' => depth += 1,
                    ')' => depth -= 1,
                    _ => {}
                }
                if depth == 0 && text[at..].starts_with(word) {
                    let (left, right) = (met(&text[..at], allowed), met(&text[at + word.len()..], allowed));
                    return if word == " OR " { left || right } else { left && right };
                }
            }
        }
        let text = text.trim();
        match text.strip_prefix('(').and_then(|t| t.strip_suffix(')')) {
            Some(inner) => met(inner, allowed),
            None => allowed.contains(text),
        }
    }
    met(&plain, allowed)
}

fn allowed() -> BTreeSet<String> {
    let text = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/deny.toml")).expect("deny.toml");
    let document: toml::Table = text.parse().expect("TOML");
    document["licenses"]["allow"]
        .as_array()
        .expect("a list")
        .iter()
        .map(|v| v.as_str().expect("a text").to_owned())
        .collect()
}

#[test]
fn expressions_are_understood() {
    let allowed: BTreeSet<String> = ["MIT", "Zlib"].map(str::to_owned).into();
    for (expression, met) in [
        ("MIT", true),
        ("GPL-3.0", false),
        ("GPL-3.0 OR MIT", true),
        ("GPL-3.0/MIT", true),
        ("MIT AND Zlib", true),
        ("MIT AND GPL-3.0", false),
        ("(GPL-3.0 OR MIT) AND Zlib", true),
        ("GPL-3.0 OR MIT AND Zlib", true),
        ("(GPL-3.0 OR BSD-0) AND Zlib", false),
    ] {
        assert_eq!(can_be_met(expression, &allowed), met, "{expression}");
    }
}

#[test]
fn every_licence_is_on_the_list() {
    let output = Command::new(env!("CARGO"))
        .args([
            "metadata",
            "--locked",
            "--offline",
            "--format-version",
            "1",
            "--filter-platform",
            "x86_64-unknown-linux-gnu",
        ])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .expect("cargo runs");
    assert!(
        output.status.success(),
        "cargo metadata: {}",
        String::from_utf8_lossy(&output.stderr)
    );
    let metadata: serde_json::Value = serde_json::from_slice(&output.stdout).expect("JSON");
    let packages = metadata["packages"].as_array().expect("a list");
    assert!(packages.len() > 100, "the packages were not found");
    let allowed = allowed();
    let refused: Vec<String> = packages
        .iter()
        .map(|p| {
            (
                p["name"].as_str().unwrap_or("?"),
                p["license"].as_str().unwrap_or("no licence named"),
            )
        })
        .filter(|(_, licence)| !can_be_met(licence, &allowed))
        .map(|(name, licence)| format!("{name}: {licence}"))
        .collect();
    assert!(
        refused.is_empty(),
        "not on the list of deny.toml:\n{}",
        refused.join("\n")
    );
}
