//! Files from anywhere: no bytes make a reader panic, and every problem can be drawn.

use lashwright::catalogue;
use lashwright::exercise::{CardTexts, Scenario};
use lashwright::gear::{Design, GearSetProblem};
use lashwright::job::{gear_sets, problem_text, scenarios};
use lashwright::numerics::random::Stream;
use lashwright::text::{Limits, decode};
use lashwright::words::problem::told;
use proptest::prelude::*;

/// Inputs a run, as the project's rule for parsers says.
const INPUTS: u32 = 20_000;

/// Reads `bytes` as a gear set and draws what is wrong with it.
fn read_and_draw(bytes: &[u8]) {
    match gear_sets::read("fuzzed.toml", bytes) {
        Ok(found) => assert!(found.design.wheel_teeth > found.design.pinion_teeth, "checked"),
        Err(failure) => assert!(failure.text.contains("fuzzed.toml"), "names the file: {failure}"),
    }
}

/// Pieces that a careless or malicious writer might put into a file.
const PIECES: &[&str] = &[
    "\n",
    "=",
    "[",
    "]",
    "[[",
    "{",
    "}",
    "\"",
    "\"\"\"",
    "'",
    ",",
    ".",
    "-",
    "+",
    "_",
    "#",
    "0x",
    "1e400",
    "-0.0",
    "nan",
    "inf",
    "é",
    "\u{202e}",
    "\u{feff}",
    "\t",
    "\r",
    "\r\n",
    "\\u0000",
    "99999999999999999999",
    "1979-05-27T07:32:00Z",
    "true",
    "pair",
    "[pair]",
    "ease_off.drive",
    "pinion_teeth = ",
    "offset_mm = ",
    "format = \"lashwright-gears/1\"",
    "lash_mm = 0.1\n",
    "[texts.de]\n",
    "[texts.\"\"]\n",
    "texts",
    "de",
    "en-US",
];

/// Takes out, doubles, exchanges and inserts at random places of a good file.
fn damaged(stream: &mut Stream, text: &str) -> Vec<u8> {
    let mut bytes = text.as_bytes().to_vec();
    for _ in 0..=stream.index(6) {
        let length = u64::try_from(bytes.len()).expect("small");
        let at = usize::try_from(stream.index(length + 1)).expect("small");
        let count = usize::try_from(stream.index(40)).expect("small").min(bytes.len() - at);
        match stream.index(5) {
            0 => drop(bytes.drain(at..at + count)),
            1 => {
                let copy = bytes[at..at + count].to_vec();
                bytes.splice(at..at, copy);
            }
            2 => {
                let piece = PIECES[usize::try_from(stream.index(PIECES.len() as u64)).expect("small")];
                bytes.splice(at..at + count, piece.bytes());
            }
            3 => bytes
                .iter_mut()
                .skip(at)
                .take(1)
                .for_each(|b| *b ^= 1 << stream.index(8)),
            _ => {
                let piece = PIECES[usize::try_from(stream.index(PIECES.len() as u64)).expect("small")];
                bytes.splice(at..at, piece.bytes());
            }
        }
    }
    bytes
}

#[test]
fn damaged_gear_set_files_never_panic() {
    let mut stream = Stream::new(20_260_101, "damaged gear set files");
    let (mut good, mut bad) = (0, 0);
    for round in 0..INPUTS {
        let set = &catalogue::GEAR_SETS[round as usize % catalogue::GEAR_SETS.len()];
        let bytes = damaged(&mut stream, set.text);
        read_and_draw(&bytes);
        if gear_sets::read("x", &bytes).is_ok() {
            good += 1;
        } else {
            bad += 1;
        }
    }
    println!("{good} still good, {bad} refused");
    assert!(
        good > 100 && bad > 10_000,
        "damage of both kinds is wanted: {good} good, {bad} bad"
    );
}

/// Texts in other languages, for any scenario.
const TEXTS: &str =
    "\n[texts.de]\ntitle = \"Titel\"\nhints = [\"a\", \"b\", \"c\"]\n[texts.pt-BR]\ntitle = \"Título\"\n";

#[test]
fn damaged_scenario_files_never_panic() {
    let mut stream = Stream::new(20_260_102, "damaged scenario files");
    let (mut good, mut bad) = (0, 0);
    for round in 0..INPUTS {
        let scenario = &catalogue::SCENARIOS[round as usize % catalogue::SCENARIOS.len()];
        // Half of them with texts in other languages, which no exercise that ships has.
        let text = if round % 2 == 0 {
            scenario.text.to_owned()
        } else {
            format!("{}{TEXTS}", scenario.text)
        };
        let bytes = damaged(&mut stream, &text);
        match scenarios::read("fuzzed.toml", &bytes, None) {
            Ok(found) => {
                assert!(!found.exercise.scenario().told.is_empty(), "checked");
                good += 1;
            }
            Err(failure) => {
                assert!(failure.text.contains("fuzzed.toml"), "names the file: {failure}");
                bad += 1;
            }
        }
    }
    println!("{good} still good, {bad} refused");
    assert!(
        good > 100 && bad > 10_000,
        "damage of both kinds is wanted: {good} good, {bad} bad"
    );
}

#[test]
fn deep_nesting_is_refused_and_not_followed() {
    for text in [
        "[".repeat(30_000),
        "a = ".to_owned() + &"[".repeat(30_000),
        "a.".repeat(20_000) + "b = 1",
        "a = ".to_owned() + &"{ b = ".repeat(8_000),
    ] {
        read_and_draw(text.as_bytes());
    }
}

#[test]
fn a_file_over_the_limit_is_refused() {
    let big = "#".repeat(Limits::HAND_WRITTEN.bytes + 1);
    let failure = gear_sets::read("big.toml", big.as_bytes()).expect_err("too large");
    assert!(failure.text.contains("65537 bytes"), "{failure}");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 4_000, ..ProptestConfig::default() })]

    /// Texts in other languages: what a file gives is shown where its language is wanted, English elsewhere and for the rest;
    /// and nothing else of the scenario depends on them.
    #[test]
    fn texts_in_other_languages_are_read_as_they_stand(
        given in proptest::collection::btree_map(
            prop_oneof![Just("de"), Just("de-AT"), Just("pt-BR"), Just("zh-Hant-TW"), Just("en-GB")],
            (
                proptest::option::of("[a-zA-Z äéñ漢]{1,84}"),
                proptest::option::of(proptest::collection::vec("[a-zéñ漢]{1,420}", 3)),
            ),
            0..5,
        ),
    ) {
        let plain = catalogue::scenario("twelve-prints").expect("embedded").text;
        let english = Scenario::from_toml(plain).expect("good");
        let mut text = plain.to_owned();
        for (tag, (title, hints)) in &given {
            text.extend([format!("\n[texts.{tag}]\n")]);
            text.extend(title.iter().map(|title| format!("title = {title:?}\n")));
            text.extend(hints.iter().map(|hints| format!("hints = {hints:?}\n")));
        }
        let read = Scenario::from_toml(&text).map_err(|problems| {
            let all: Vec<String> = problems.list().iter().map(|p| told(p).what).collect();
            TestCaseError::fail(all.join("; "))
        })?;
        let own = CardTexts {
            title: &english.title,
            told: &english.told,
            aims: &english.aims,
            hints: &english.hints,
            cautions: &english.cautions,
        };
        for (tag, (title, hints)) in &given {
            let texts = read.texts_in(tag);
            prop_assert_eq!(texts.title, title.as_deref().unwrap_or(own.title), "{}", tag);
            prop_assert_eq!(texts.hints, hints.as_deref().unwrap_or(own.hints), "{}", tag);
            prop_assert_eq!((texts.told, texts.aims, texts.cautions), (own.told, own.aims, own.cautions));
        }
        for elsewhere in ["en-US", "en", "fr", "pseudo", "", "no language"] {
            prop_assert_eq!(read.texts_in(elsewhere), own, "{}", elsewhere);
        }
        // The region counts where it is there, and the language where it is not.
        if let Some((title, _)) = given.get("de").or_else(|| given.get("de-AT")) {
            prop_assert_eq!(read.texts_in("de-CH").title, title.as_deref().unwrap_or(own.title));
        }
        prop_assert_eq!(Scenario { translated: Vec::new(), ..read }, english);
    }

    /// Every slip in them is told, where it stands.
    #[test]
    fn slips_in_other_languages_are_told(
        (tag, line, said) in prop_oneof![
            ("[a-z]{4,12}".prop_filter("no name of a language", |tag| tag != "pseudo"), Just("title = \"x\""), Just("language tag")),
            (Just("DE".to_owned()), Just("title = \"x\""), Just("standard form")),
            (Just("en-US".to_owned()), Just("title = \"x\""), Just("top of the file")),
            (Just("de".to_owned()), Just("tilte = \"x\""), Just("tilte")),
            (Just("de".to_owned()), Just("title = \"\""), Just("title")),
            (Just("de".to_owned()), Just("hints = [\"a\", \"b\"]"), Just("hints")),
            (Just("de".to_owned()), Just("told = []"), Just("told")),
            (Just("de".to_owned()), Just("aims = 3"), Just("aims")),
        ],
        more in 1..400_usize,
    ) {
        let plain = catalogue::scenario("twelve-prints").expect("embedded").text;
        let text = format!("{plain}\n[texts.fr]\ntitle = \"Douze\"\n[texts.{tag}]\n{line}\n");
        let problems = Scenario::from_toml(&text).expect_err("a slip");
        prop_assert_eq!(problems.list().len(), 1, "{:?}", problems.list());
        let problem = &problems.list()[0];
        prop_assert!(told(problem).what.contains(said), "{}", told(problem).what);
        let at = text.rfind("[texts.").expect("there");
        prop_assert!(problem.span.start >= at, "in its own table: {:?} of {at}", problem.span);
        // As long as the window has room for, and no longer.
        let long = format!("{plain}\n[texts.de]\ntitle = \"{}\"\n", "x".repeat(more));
        prop_assert_eq!(Scenario::from_toml(&long).is_ok(), more <= 84, "{}", more);
    }

    /// Any bytes at all.
    #[test]
    fn any_bytes(bytes in proptest::collection::vec(any::<u8>(), 0..600)) {
        read_and_draw(&bytes);
    }

    /// Any text after a good start, so that the reader gets past the format line.
    #[test]
    fn any_text_after_a_good_start(tail in ".{0,300}") {
        read_and_draw(format!("format = \"lashwright-gears/1\"\nname = \"x\"\n[pair]\n{tail}").as_bytes());
    }

    /// Every place of every problem lies in the text, on whole characters.
    #[test]
    fn every_problem_has_a_place(tail in ".{0,200}") {
        let text = format!("format = \"lashwright-gears/1\"\n{tail}");
        let shown = decode::<GearSetProblem>(text.as_bytes(), Limits::HAND_WRITTEN);
        if let Ok(shown) = shown
            && let Err(problems) = Design::from_toml(shown)
        {
            prop_assert!(!problems.is_empty());
            for problem in problems.list() {
                prop_assert!(shown.get(problem.span.clone()).is_some(), "{problem:?}");
                let told = told(problem);
                prop_assert!(!told.what.is_empty() && !told.cure.is_empty());
            }
            prop_assert!(problem_text("x.toml", shown, &problems).contains("error: "));
        }
    }

    /// Numbers inside their ranges are read to the last bit, written plainly or with an exponent.
    #[test]
    fn numbers_come_in_as_written(offset in 0.0_f64..300.0, lash in 0.001_f64..2.0) {
        let given = catalogue::gear_set("3.73-tapered-ring-224")
            .expect("embedded")
            .text
            .lines()
            .map(|line| match line.split_once(" = ") {
                Some(("offset_mm", _)) => format!("offset_mm = {offset:?}"),
                Some(("lash_mm", _)) => format!("lash_mm = {lash:e}"),
                _ => line.to_owned(),
            })
            .collect::<Vec<_>>()
            .join("\n");
        let design = Design::from_toml(&given).expect("a good file");
        prop_assert_eq!(design.offset_mm.to_bits(), offset.to_bits());
        prop_assert_eq!(design.lash_mm.to_bits(), lash.to_bits());
    }
}
