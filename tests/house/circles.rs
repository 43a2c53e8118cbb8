//! Files of a floor do not refer to each other in a circle.
//!
//! Each file under `src/<floor>` is a node; a path in its code that begins with `super`, `self` or `crate::<floor>`, or with
//! the name of a module inside the file's own folder, is an edge to the file that defines what the path ends in. A name
//! that a `mod.rs` passes on leads to the file behind it, so that a `mod.rs` which only declares and passes on is no part
//! of a circle.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use super::floors::{code_only, rust_files};

/// Files in circles, a floor. It only becomes smaller: where it does, lower the number here; a floor without circles has
/// no line.
const IN_CIRCLES: &[(&str, usize)] = &[
    ("app", 14),
    ("axle", 3),
    ("cli", 7),
    ("exercise", 8),
    ("gear", 4),
    ("job", 2),
    ("view", 4),
];

/// One file of a floor.
#[derive(Debug, Default)]
struct Module {
    /// Modules that it declares.
    children: BTreeSet<String>,
    /// What it defines itself.
    defines: BTreeSet<String>,
    /// Names that it takes from elsewhere: name to path; whether it passes the name on, and whether it says it besides.
    takes: Vec<Taken>,
    /// All other paths in its code.
    paths: Vec<Vec<String>>,
    /// Whether it is a `mod.rs` (or the like) of a folder.
    of_folder: bool,
}

#[derive(Debug)]
struct Taken {
    name: String,
    path: Vec<String>,
    passed_on: bool,
    said: bool,
}

/// The files of one floor by the path of their module, from the crate on.
type Floor = BTreeMap<Vec<String>, Module>;

fn is_word(c: char) -> bool {
    c.is_alphanumeric() || c == '_'
}

/// Words and marks of the code, `::` as one.
fn tokens(code: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut characters = code.chars().peekable();
    while let Some(c) = characters.next() {
        if is_word(c) {
            let mut word = String::from(c);
            while let Some(&next) = characters.peek().filter(|next| is_word(**next)) {
                word.push(next);
                characters.next();
            }
            found.push(word);
        } else if c == ':' && characters.peek() == Some(&':') {
            characters.next();
            found.push("::".to_owned());
        } else if !c.is_whitespace() {
            found.push(c.to_string());
        }
    }
    found
}

/// The paths of a `use`, from its first word to its `;`: each with the name that it is known by.
fn paths_of_use(tokens: &[String], at: &mut usize, before: &[String], found: &mut Vec<(Vec<String>, String)>) {
    let mut path = before.to_vec();
    while let Some(token) = tokens.get(*at) {
        match token.as_str() {
            "::" => *at += 1,
            "{" => {
                *at += 1;
                while tokens.get(*at).is_some_and(|t| t != "}") {
                    assert_ne!(tokens[*at], ";", "a use that ends within its braces");
                    if tokens[*at] == "," {
                        *at += 1;
                    } else {
                        paths_of_use(tokens, at, &path, found);
                    }
                }
                *at += 1;
                return;
            }
            "as" => {
                let name = tokens.get(*at + 1).cloned().unwrap_or_default();
                *at += 2;
                found.push((path, name));
                return;
            }
            "," | ";" | "}" => break,
            word => {
                path.push(word.to_owned());
                *at += 1;
            }
        }
    }
    if path.last().is_some_and(|last| last == "self") && path.len() > 1 {
        path.pop();
    }
    let name = path.last().cloned().unwrap_or_default();
    found.push((path, name));
}

/// Code without modules inside the file, which are tests and say `super` for the file itself.
fn without_inner_modules(tokens: Vec<String>) -> Vec<String> {
    let mut kept = Vec::with_capacity(tokens.len());
    let mut at = 0;
    while at < tokens.len() {
        if tokens[at] == "mod" && tokens.get(at + 2).is_some_and(|t| t == "{") {
            let mut depth = 0;
            at += 2;
            while at < tokens.len() {
                match tokens[at].as_str() {
                    "{" => depth += 1,
                    "}" => depth -= 1,
                    _ => {}
                }
                at += 1;
                if depth == 0 {
                    break;
                }
            }
        } else {
            kept.push(tokens[at].clone());
            at += 1;
        }
    }
    kept
}

/// What a file declares, defines, takes and says.
fn read(code: &str, of_folder: bool) -> Module {
    let tokens = without_inner_modules(tokens(code));
    let mut module = Module {
        of_folder,
        ..Module::default()
    };
    let mut uses: Vec<(Vec<String>, String, bool)> = Vec::new();
    let mut said: BTreeSet<String> = BTreeSet::new();
    let mut at = 0;
    while at < tokens.len() {
        let token = tokens[at].as_str();
        let next = tokens.get(at + 1).map_or("", String::as_str);
        match token {
            // Not `+ use<...>`, which says what a returned type holds.
            "use" if next != "<" => {
                // `pub use`, `pub(crate) use`, `pub(in a::b) use` pass on.
                let passed_on = at > 0 && (tokens[at - 1] == "pub" || tokens[at - 1] == ")");
                at += 1;
                let mut found = Vec::new();
                paths_of_use(&tokens, &mut at, &[], &mut found);
                uses.extend(found.into_iter().map(|(path, name)| (path, name, passed_on)));
            }
            "mod" if tokens.get(at + 2).is_some_and(|t| t == ";") => {
                module.children.insert(next.to_owned());
                at += 3;
            }
            "fn" | "struct" | "enum" | "trait" | "type" | "const" | "static" | "union" => {
                module.defines.insert(next.to_owned());
                at += 1;
            }
            word if word.chars().all(is_word) && (at == 0 || tokens[at - 1] != "::") => {
                let mut path = vec![word.to_owned()];
                while tokens.get(at + 1).is_some_and(|t| t == "::")
                    && tokens.get(at + 2).is_some_and(|t| t.chars().all(is_word))
                {
                    path.push(tokens[at + 2].clone());
                    at += 2;
                }
                said.insert(word.to_owned());
                if path.len() > 1 {
                    module.paths.push(path);
                }
                at += 1;
            }
            _ => at += 1,
        }
    }
    module.takes = uses
        .into_iter()
        .map(|(path, name, passed_on)| Taken {
            said: said.contains(&name),
            name,
            path,
            passed_on,
        })
        .collect();
    module
}

/// The file that defines what a path ends in, seen from a module. None where the path leads out of the floor.
fn defining(floor: &Floor, from: &[String], path: &[String], depth: usize) -> Option<Vec<String>> {
    let (mut at, mut rest) = (from.to_vec(), path);
    match path.first()?.as_str() {
        "crate" => (at, rest) = (Vec::new(), &path[1..]),
        "self" => rest = &path[1..],
        "super" => {
            while let Some(("super", more)) = rest.split_first().map(|(first, more)| (first.as_str(), more)) {
                at.pop()?;
                rest = more;
            }
        }
        name if floor.get(from)?.children.contains(name) => {}
        name => {
            let taken = floor.get(from)?.takes.iter().find(|taken| taken.name == name)?;
            let whole: Vec<String> = taken.path.iter().chain(&path[1..]).cloned().collect();
            let further = depth > 0 && taken.path.first() != path.first();
            return further.then(|| defining(floor, from, &whole, depth - 1)).flatten();
        }
    }
    for (k, name) in rest.iter().enumerate() {
        let mut inner = at.clone();
        inner.push(name.clone());
        if floor.contains_key(&inner) {
            at = inner;
            continue;
        }
        let module = floor.get(&at)?;
        if module.defines.contains(name) || depth == 0 {
            return Some(at);
        }
        let passed = module.takes.iter().find(|taken| taken.name == *name);
        if let Some(taken) = passed {
            let whole: Vec<String> = taken.path.iter().chain(&rest[k + 1..]).cloned().collect();
            return defining(floor, &at, &whole, depth - 1);
        }
        // A name that comes with `*`, or one that a macro makes: of the file itself.
        return Some(at);
    }
    floor.contains_key(&at).then_some(at)
}

/// Files to which each file refers.
fn edges(floor: &Floor) -> BTreeMap<Vec<String>, BTreeSet<Vec<String>>> {
    let mut edges = BTreeMap::new();
    for (name, module) in floor {
        let mut to = BTreeSet::new();
        // What a folder's own file only passes on is no use of it.
        let taken = module
            .takes
            .iter()
            .filter(|taken| !(module.of_folder && taken.passed_on && !taken.said))
            .map(|taken| &taken.path);
        for path in taken.chain(&module.paths) {
            to.extend(defining(floor, name, path, 8));
        }
        to.remove(name);
        edges.insert(name.clone(), to);
    }
    edges
}

/// Groups of files that refer to each other in a circle.
fn circles(floor: &Floor) -> Vec<Vec<String>> {
    let edges = edges(floor);
    let reached: BTreeMap<_, _> = edges
        .keys()
        .map(|start| {
            let mut reached: BTreeSet<&Vec<String>> = BTreeSet::new();
            let mut open: Vec<&Vec<String>> = vec![start];
            while let Some(here) = open.pop() {
                for next in &edges[here] {
                    if reached.insert(next) {
                        open.push(next);
                    }
                }
            }
            (start, reached)
        })
        .collect();
    let mut found: Vec<Vec<String>> = Vec::new();
    let mut placed: BTreeSet<&Vec<String>> = BTreeSet::new();
    for start in edges.keys().filter(|start| reached[start].contains(start)) {
        if placed.contains(start) {
            continue;
        }
        let circle: Vec<&Vec<String>> = edges
            .keys()
            .filter(|other| reached[start].contains(other) && reached[other].contains(start))
            .collect();
        placed.extend(circle.iter().copied());
        found.push(circle.into_iter().map(|module| module.join("::")).collect());
    }
    found
}

/// A floor of files: (path below `src`, code).
fn floor_of(files: &[(PathBuf, String)]) -> Floor {
    files
        .iter()
        .map(|(path, code)| {
            let of_folder = path.ends_with("mod.rs");
            let mut module: Vec<String> = path
                .with_extension("")
                .components()
                .map(|part| part.as_os_str().to_string_lossy().into_owned())
                .collect();
            if of_folder {
                module.pop();
            }
            (module, read(&code_only(code), of_folder))
        })
        .collect()
}

#[test]
fn files_of_a_floor_do_not_refer_in_circles() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut floors: BTreeMap<String, Vec<(PathBuf, String)>> = BTreeMap::new();
    for file in rust_files(&src) {
        let below = file.strip_prefix(&src).expect("below src").to_path_buf();
        let mut parts = below.components();
        let first = parts.next().expect("a name").as_os_str().to_string_lossy().into_owned();
        if parts.next().is_some() {
            let code = std::fs::read_to_string(&file).expect("source is readable");
            floors.entry(first).or_default().push((below, code));
        }
    }
    assert!(floors.len() > 10, "the floors were not found");
    let mut wrong = Vec::new();
    for (floor, files) in &floors {
        let circles = circles(&floor_of(files));
        let count: usize = circles.iter().map(Vec::len).sum();
        let known = IN_CIRCLES
            .iter()
            .find(|(name, _)| name == floor)
            .map_or(0, |(_, count)| *count);
        if count != known {
            let what = if count > known {
                "open the circle"
            } else {
                "lower the number"
            };
            wrong.push(format!(
                "{floor}: {count} files in circles, {known} known: {what}\n{circles:#?}"
            ));
        }
    }
    for (floor, count) in IN_CIRCLES {
        if !floors.contains_key(*floor) || *count == 0 {
            wrong.push(format!("{floor}: take its line out"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// The scan itself: it must see what it is there to see.
#[test]
fn the_scan_sees_circles() {
    let seen = |files: &[(&str, &str)]| {
        let files: Vec<(PathBuf, String)> = files
            .iter()
            .map(|(path, code)| (PathBuf::from(path), (*code).to_owned()))
            .collect();
        circles(&floor_of(&files))
    };
    let tour = ("f/mod.rs", "mod a; mod b; pub use a::A; pub use b::{B, C as D};");
    assert_eq!(
        seen(&[
            tour,
            ("f/a.rs", "use super::b::B; struct A;"),
            ("f/b.rs", "use crate::f::a::A; struct B;")
        ]),
        [["f::a", "f::b"]],
        "by the files' own names"
    );
    assert_eq!(
        seen(&[
            tour,
            ("f/a.rs", "use super::{D, c}; struct A;"),
            ("f/b.rs", "fn x() -> crate::f::A { y() } struct C;")
        ]),
        [["f::a", "f::b"]],
        "by names that are passed on, one of them under another name, one without a use"
    );
    assert!(
        seen(&[
            tour,
            ("f/a.rs", "use super::B; struct A; mod tests { use super::*; }"),
            ("f/b.rs", "// use super::A;\nuse crate::g::A; struct B;")
        ])
        .is_empty(),
        "one way only"
    );
    assert_eq!(
        seen(&[
            ("f/mod.rs", "mod a; pub use a::A; pub struct B { a: A }"),
            ("f/a.rs", "use super::B; struct A;")
        ]),
        [["f", "f::a"]],
        "a tour that says what it passes on"
    );
    assert_eq!(
        seen(&[
            ("f/mod.rs", "mod a; pub struct B; fn c() { a::go() }"),
            ("f/a.rs", "use super::B; fn go() {}")
        ]),
        [["f", "f::a"]],
        "a tour that calls its files"
    );
    assert_eq!(
        seen(&[
            ("f/mod.rs", "mod a; mod b; pub use b::go;"),
            ("f/a.rs", "use super::b; fn x() { b::go() }"),
            ("f/b/mod.rs", "mod c; pub use c::go;"),
            ("f/b/c.rs", "use crate::f::a::x; fn go() {}")
        ]),
        [["f::a", "f::b::c"]],
        "by the name of a folder"
    );
    assert_eq!(
        seen(&[
            ("f/mod.rs", "mod a; mod b; mod c;"),
            ("f/a.rs", "use super::{b::{self, B}, c};"),
            ("f/b.rs", "use super::c::C;"),
            ("f/c.rs", "use super::a::A;")
        ]),
        [["f::a", "f::b", "f::c"]],
        "of three"
    );
}
