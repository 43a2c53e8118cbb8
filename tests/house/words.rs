//! Words: what the program says stands in message files, all of it, and the files hold nothing else.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use fluent_syntax::ast::{CallArguments, Entry, Expression, InlineExpression, Pattern, PatternElement};
use proc_macro2::{Delimiter, TokenStream, TokenTree};

use super::floors::rust_files;

/// The language that everything is written in first.
const FIRST: &str = "en-US";

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// Messages of a language: identifier against the variables that it names.
type Messages = BTreeMap<String, BTreeSet<String>>;

fn variables_of_pattern(pattern: &Pattern<String>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            variables_of(expression, found);
        }
    }
}

fn variables_of(expression: &Expression<String>, found: &mut BTreeSet<String>) {
    match expression {
        Expression::Select { selector, variants } => {
            variables_of_inline(selector, found);
            for variant in variants {
                variables_of_pattern(&variant.value, found);
            }
        }
        Expression::Inline(inline) => variables_of_inline(inline, found),
    }
}

fn variables_of_inline(inline: &InlineExpression<String>, found: &mut BTreeSet<String>) {
    let arguments = |arguments: &CallArguments<String>, found: &mut BTreeSet<String>| {
        for each in &arguments.positional {
            variables_of_inline(each, found);
        }
    };
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.clone());
        }
        InlineExpression::FunctionReference { arguments: of, .. } => arguments(of, found),
        InlineExpression::Placeable { expression } => variables_of(expression, found),
        InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
        InlineExpression::MessageReference { .. } | InlineExpression::TermReference { .. } => {
            panic!("messages of this project do not call each other: a test could not follow their variables")
        }
    }
}

/// The messages of one language; damaged and double ones are told.
fn messages(folder: &Path) -> Messages {
    let mut all = Messages::new();
    let mut files: Vec<_> = std::fs::read_dir(folder)
        .expect("a folder of messages")
        .map(|entry| entry.expect("an entry").path())
        .collect();
    files.sort();
    for file in files {
        let text = std::fs::read_to_string(&file).expect("text");
        let resource =
            fluent_syntax::parser::parse(text).unwrap_or_else(|(_, errors)| panic!("{}: {errors:?}", file.display()));
        for entry in resource.body {
            let Entry::Message(message) = entry else {
                assert!(
                    !matches!(entry, Entry::Junk { .. } | Entry::Term(_)),
                    "{}",
                    file.display()
                );
                continue;
            };
            let id = message.id.name;
            let mut variables = BTreeSet::new();
            let value = message
                .value
                .unwrap_or_else(|| panic!("{}: {id} is empty", file.display()));
            variables_of_pattern(&value, &mut variables);
            assert!(message.attributes.is_empty(), "{}: {id} has attributes", file.display());
            let before = all.insert(id.clone(), variables);
            assert!(before.is_none(), "{}: {id} is there twice", file.display());
        }
    }
    all
}

/// One call of a message in the sources.
#[derive(Debug)]
struct Call {
    file: PathBuf,
    id: String,
    variables: BTreeSet<String>,
}

/// A literal of the sources that looks like words for people.
#[derive(Debug)]
struct Literal {
    file: PathBuf,
    line: usize,
    text: String,
}

#[derive(Default)]
struct Found {
    calls: Vec<Call>,
    literals: Vec<Literal>,
}

/// Macros whose texts are for whoever works on the program.
const FOR_DEVELOPERS: &[&str] = &[
    "panic",
    "unreachable",
    "todo",
    "assert",
    "assert_eq",
    "assert_ne",
    "debug_assert",
    "debug_assert_eq",
    "trace",
    "debug",
    "info",
    "warn",
    "error",
    "include_str",
    "concat",
    "env",
];

/// A text without the tags of SVG and HTML in it, also where one goes on in another text.
fn without_tags(text: &str) -> String {
    let mut plain = String::new();
    let mut rest = match (text.find('>'), text.find('<')) {
        (Some(end), start) if start.is_none_or(|start| start > end) => &text[end + 1..],
        _ => text,
    };
    while let Some((before, tag)) = rest.split_once('<') {
        plain.push_str(before);
        // Words on both sides of a tag are not beside each other.
        plain.push('|');
        rest = tag.split_once('>').map_or("", |(_, after)| after);
    }
    plain.push_str(rest);
    plain
}

/// What a text names in braces is no word of it.
fn without_holes(text: &str) -> String {
    let mut plain = String::new();
    let mut depth = 0_u32;
    for letter in text.chars() {
        match letter {
            '{' => {
                depth += 1;
                plain.push('{');
            }
            '}' => {
                depth = depth.saturating_sub(1);
                plain.push('}');
            }
            _ if depth == 0 => plain.push(letter),
            _ => {}
        }
    }
    plain
}

/// A text that people would read: two words beside each other, or one word that begins like a sentence.
fn is_for_people(text: &str) -> bool {
    let text = without_holes(&without_tags(text));
    let letters: Vec<char> = text.chars().collect();
    let words = letters.windows(4).any(|w| {
        matches!(w, [a, b, ' ' | '\u{a0}', c] if a.is_alphabetic() && b.is_alphabetic() && (c.is_alphabetic() || *c == '{'))
            || matches!(w, [a, ' ' | '\u{a0}', b, c] if (a.is_alphabetic() || *a == '}') && b.is_alphabetic() && c.is_alphabetic())
    });
    let word = letters.len() > 1
        && letters.first().is_some_and(|c| c.is_uppercase())
        && letters.iter().skip(1).all(|c| c.is_lowercase());
    words || word
}

/// The text of a string literal, or none.
fn text_of(literal: &str) -> Option<String> {
    let plain = literal.strip_prefix('"').and_then(|l| l.strip_suffix('"'));
    let raw = || {
        let inner = literal.strip_prefix('r')?.trim_matches('#');
        inner.strip_prefix('"').and_then(|l| l.strip_suffix('"'))
    };
    // A line that goes on is one text.
    let text = plain.or_else(raw)?;
    let mut joined = String::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once("\\\n") {
        joined.push_str(before);
        rest = after.trim_start();
    }
    joined.push_str(rest);
    Some(joined.replace("\\u{a0}", "\u{a0}"))
}

fn walk(tokens: TokenStream, file: &Path, found: &mut Found) {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    let mut at = 0;
    while let Some(token) = tokens.get(at) {
        let next = |more: usize| tokens.get(at + more);
        match token {
            // An attribute; what it belongs to is left out with it where it is for tests alone.
            TokenTree::Punct(hash) if hash.as_char() == '#' => {
                let inner = usize::from(matches!(next(1), Some(TokenTree::Punct(p)) if p.as_char() == '!'));
                if let Some(TokenTree::Group(attribute)) = next(1 + inner) {
                    at += 2 + inner;
                    displayed(attribute.stream(), file, found);
                    if attribute.stream().to_string().replace(' ', "") == "cfg(test)" {
                        while let Some(token) = tokens.get(at) {
                            at += 1;
                            let ends = match token {
                                TokenTree::Group(body) => body.delimiter() == Delimiter::Brace,
                                TokenTree::Punct(end) => end.as_char() == ';',
                                TokenTree::Ident(_) | TokenTree::Literal(_) => false,
                            };
                            if ends {
                                break;
                            }
                        }
                    }
                    continue;
                }
            }
            TokenTree::Ident(name) => {
                let called = matches!(next(1), Some(TokenTree::Punct(p)) if p.as_char() == '!');
                match (called, next(2), next(1)) {
                    (true, Some(TokenTree::Group(body)), _) if *name == "say" => {
                        call(body.stream(), file, found);
                        at += 3;
                        continue;
                    }
                    (true, Some(TokenTree::Group(_)), _) if FOR_DEVELOPERS.iter().any(|known| name == known) => {
                        at += 3;
                        continue;
                    }
                    (false, _, Some(TokenTree::Group(_))) if *name == "expect" || *name == "expect_err" => {
                        at += 2;
                        continue;
                    }
                    _ => {}
                }
            }
            TokenTree::Literal(literal) => {
                if let Some(text) = text_of(&literal.to_string()).filter(|text| is_for_people(text)) {
                    found.literals.push(Literal {
                        file: file.to_owned(),
                        line: literal.span().start().line,
                        text,
                    });
                }
            }
            TokenTree::Group(group) => walk(group.stream(), file, found),
            TokenTree::Punct(_) => {}
        }
        at += 1;
    }
}

/// The text of an `error("...")` attribute is shown to whoever meets the error.
fn displayed(attribute: TokenStream, file: &Path, found: &mut Found) {
    let mut tokens = attribute.into_iter();
    if let (Some(TokenTree::Ident(name)), Some(TokenTree::Group(body))) = (tokens.next(), tokens.next())
        && name == "error"
    {
        walk(body.stream(), file, found);
    }
}

/// `"id", name = value, ...`
fn call(tokens: TokenStream, file: &Path, found: &mut Found) {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    let Some(TokenTree::Literal(id)) = tokens.first() else {
        // The macro's own pattern.
        return;
    };
    let mut variables = BTreeSet::new();
    let mut starts = false;
    let mut value: Vec<TokenTree> = Vec::new();
    for (at, token) in tokens.iter().enumerate().skip(1) {
        match token {
            TokenTree::Punct(comma) if comma.as_char() == ',' => starts = true,
            TokenTree::Ident(name) if starts => {
                starts = false;
                let set = matches!(tokens.get(at + 1), Some(TokenTree::Punct(p)) if p.as_char() == '=');
                assert!(set, "{}: {id}: {name} has no value", file.display());
                variables.insert(name.to_string());
            }
            other => value.push(other.clone()),
        }
    }
    // Messages inside the values of a message.
    walk(value.into_iter().collect(), file, found);
    found.calls.push(Call {
        file: file.to_owned(),
        id: id.to_string().trim_matches('"').to_owned(),
        variables,
    });
}

fn sources() -> Found {
    let mut found = Found::default();
    let folder = root().join("src");
    for file in rust_files(&folder) {
        let text = std::fs::read_to_string(&file).expect("a source");
        let tokens: TokenStream = text.parse().unwrap_or_else(|e| panic!("{}: {e}", file.display()));
        let below = file.strip_prefix(&folder).expect("below src").to_owned();
        walk(tokens, &below, &mut found);
    }
    found
}

#[test]
fn every_message_that_is_asked_for_is_there_with_its_variables_and_none_is_left_over() {
    let english = messages(&root().join("assets/words").join(FIRST));
    let found = sources();
    let mut wrong = Vec::new();
    for call in &found.calls {
        let place = call.file.display();
        match english.get(&call.id) {
            None => wrong.push(format!("{place}: there is no message {}", call.id)),
            Some(names) if *names != call.variables => wrong.push(format!(
                "{place}: {} names {names:?} and is given {:?}",
                call.id, call.variables
            )),
            Some(_) => {}
        }
    }
    let asked: BTreeSet<&str> = found.calls.iter().map(|call| call.id.as_str()).collect();
    let unused = english.keys().filter(|id| !asked.contains(id.as_str()));
    wrong.extend(unused.map(|id| format!("nothing says {id}")));
    println!("{} messages, asked for at {} places", english.len(), found.calls.len());
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn other_languages_say_the_same_with_the_same_variables() {
    let words = root().join("assets/words");
    let english = messages(&words.join(FIRST));
    for folder in std::fs::read_dir(&words).expect("languages") {
        let folder = folder.expect("a language").path();
        for (id, variables) in messages(&folder) {
            let original = english.get(&id);
            assert_eq!(
                original,
                Some(&variables),
                "{}: {id}: English names {original:?}",
                folder.display()
            );
        }
    }
}

/// What looks like words and is none, by file.
const NO_WORDS: &[(&str, &[&str])] = &[
    // Names of random streams: what is drawn hangs on each letter.
    (
        "bench/consequence/pinion.rs",
        &[
            "pinion bearings",
            "side bearings",
            "{stream} bought at operation {}: {}",
        ],
    ),
    ("bench/instrument/length.rs", &["arbor and block"]),
    (
        "bench/instrument/using.rs",
        &[
            "instrument {} {what}",
            "instrument {} set-up {} {what}",
            "instrument {} reading {} {what}",
        ],
    ),
    ("bench/kit.rs", &["label of shim {number}", "mislabelled shim {number}"]),
    ("bench/measure.rs", &["where tooth {tooth} stopped, {use_count}"]),
    ("bench/pinion_group.rs", &["nut friction {}", "nut friction of step {}"]),
    (
        "exercise/begin.rs",
        &["kinds of plates", "plate {number}", "wheel off", "squeeze off"],
    ),
    // Names of folders.
    ("job/saved_files.rs", &["Lashwright"]),
    ("store/data_folder.rs", &["Documents"]),
    ("exercise/technician/random.rs", &["somebody who does anything"]),
    (
        "exercise/variant.rs",
        &[
            "made {}",
            "phase {}",
            "factor {name}",
            "match number",
            "class errors",
            "fault {}",
            "fault {} there",
            "one of {group}",
        ],
    ),
    // Classes and attributes of the debrief's page.
    (
        "report/debrief/believed.rs",
        &["n truth", "p class=\\\"small muted\\\""],
    ),
    ("report/debrief/judged.rs", &["n truth", "n belief"]),
    ("report/debrief/made.rs", &["n truth"]),
    (
        "report/debrief/page.rs",
        &["p class=\\\"small muted\\\"", "div class=\\\"muted small\\\""],
    ),
    (
        "report/debrief/plates.rs",
        &["div class=\\\"truth\\\"", "div class=\\\"belief\\\""],
    ),
    (
        "report/debrief/prints.rs",
        &["p class=\\\"lead\\\"", "div class=\\\"belief\\\""],
    ),
    ("report/debrief/truth.rs", &["n truth"]),
    ("report/debrief/what_if.rs", &["small belief", "small truth"]),
    // Names of fonts.
    ("drawing/svg.rs", &["B612, 'DejaVu Sans', sans-serif"]),
    // A type's name where it is looked at while debugging, and the program's own name.
    ("job/mesh/rows.rs", &["Rows"]),
    ("report/mesh/sheet.rs", &["Lashwright"]),
    // Keys of the keyboard, as they are kept.
    ("view/keys/action.rs", &["Plus", "Minus", "Space", "Comma", "Period"]),
    (
        "view/keys/name.rs",
        &[
            "Space",
            "Colon",
            "Comma",
            "Minus",
            "Period",
            "Plus",
            "Semicolon",
            "Backslash",
            "Slash",
            "Pipe",
            "Questionmark",
            "Exclamationmark",
            "Backtick",
            "Quote",
        ],
    ),
];

/// Style sheets: of their file the text that begins so.
const STYLE_SHEETS: &[(&str, &str)] = &[("report/html.rs", "@page{")];

#[test]
fn no_text_for_people_stands_in_the_program() {
    let mut excused: BTreeSet<(&str, &str)> = NO_WORDS
        .iter()
        .flat_map(|(file, texts)| texts.iter().map(|text| (*file, *text)))
        .collect();
    let mut literals = Vec::new();
    let found = sources().literals;
    let known = excused.clone();
    for literal in &found {
        let file = literal.file.to_str().expect("a name");
        let here = known.iter().find(|(of, text)| *of == file && *text == literal.text);
        let style = STYLE_SHEETS
            .iter()
            .any(|(of, start)| *of == file && literal.text.starts_with(start));
        match here {
            Some(excuse) => {
                excused.remove(excuse);
            }
            None if style => {}
            None => literals.push(format!("{file}:{}: {:?}", literal.line, literal.text)),
        }
    }
    assert!(literals.is_empty(), "{} texts\n{}", literals.len(), literals.join("\n"));
    assert!(excused.is_empty(), "no longer there, so no longer excused: {excused:?}");
}

#[test]
fn the_test_itself_sees_words_and_calls() {
    let mut found = Found::default();
    let source = r#"
        /// Doc comments are for developers.
        #[error("attributes too")]
        fn one() -> String { let a = "Begin"; format!("{a} of them"); say!("an-id", count = 3, of = say!("inner")) }
        fn two() { x.expect("not for people"); panic!("nor this one"); let key = "no_words"; let unit = "N·m"; }
        #[cfg(test)]
        mod tests { const A: &str = "left out"; }
    "#;
    walk(source.parse().expect("Rust"), Path::new("here"), &mut found);
    let texts: Vec<&str> = found.literals.iter().map(|l| l.text.as_str()).collect();
    assert_eq!(texts, ["attributes too", "Begin", "{a} of them"]);
    let calls: Vec<(&str, usize)> = found.calls.iter().map(|c| (c.id.as_str(), c.variables.len())).collect();
    assert_eq!(calls, [("inner", 0), ("an-id", 2)]);
}
