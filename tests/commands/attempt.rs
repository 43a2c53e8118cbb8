//! `lashwright attempt`, `replay`, `operations`: a build played from the shell, mistakes that say
//! what to do.

use insta::assert_snapshot;
use lashwright::exercise::journal;
use lashwright::store;
use serde_json::Value;

use super::journals;
use super::program::{Folder, attempt, operations, run, run_in, words};

const EXERCISE: &str = "oat-barn-tractor";

const READINGS: [&str; 6] = [
    r#"{"do":"measure","what":{"quantity":"lash","tooth":0},"instrument":"lever_dial"}"#,
    r#"{"do":"turn","what":"pinion","turns":10}"#,
    r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"click_wrench"}"#,
    r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    r#"{"do":"note","what":{"quantity":"rolling_torque"},"value":3.1,"remark":"small dial wrench, seal in"}"#,
    r#"{"do":"finish"}"#,
];

#[test]
fn an_attempt_is_answered_line_by_line_and_ends_with_the_truth() {
    let folder = Folder::new("attempt");
    let file = operations(&folder, &READINGS);
    let journal = folder.file("journal.jsonl");
    let run = attempt(EXERCISE, 3, &file, &["--journal", words(&journal), "--json"]);
    assert_eq!((run.code, run.err.as_str()), (0, ""));
    let lines: Vec<Value> = run
        .out
        .lines()
        .map(|line| serde_json::from_str(line).expect("one document a line"))
        .collect();
    assert_eq!(lines.len(), READINGS.len() + 1, "an answer each, and the end");
    for (k, answer) in lines[..READINGS.len()].iter().enumerate() {
        assert_eq!(answer["operation"], k + 1);
        assert_eq!(
            answer["done"],
            k != 2,
            "a click wrench cannot read rotating torque: {answer}"
        );
    }
    assert!(
        lines[2]["refused_text"]
            .as_str()
            .is_some_and(|why| why.contains("beam")),
        "says what can: {}",
        lines[2]
    );
    let end = &lines[READINGS.len()];
    // What the gears should show is told as on the card, and belongs to no truth.
    let approval = &end["approval_prints"][0];
    for flank in ["drive", "coast"] {
        let [length, height] = [0, 1].map(|k| approval[flank]["centroid"][k].as_f64().expect("a place"));
        assert!(
            length.abs() < 0.1 && (0.05..0.3).contains(&height),
            "{flank}: {approval}"
        );
        let share = approval[flank]["area_fraction"].as_f64().expect("a share");
        let lean = approval[flank]["lean"].as_str().expect("words");
        assert!((0.1..0.6).contains(&share) && !lean.is_empty(), "{flank}: {approval}");
    }
    assert_eq!(end["finished"], true);
    assert_eq!(end["seed"], 3);
    assert!(end["truth"]["pinion_axial_mm"].is_number(), "{end}");
    assert_eq!(end["state_hash"].as_str().map(str::len), Some(64));
    // Points add up, and every lost one is told.
    let points = |key: &str| end["score"][key].as_f64().expect("points");
    let parts: f64 = ["outcome", "process", "economy", "understanding"]
        .map(points)
        .iter()
        .sum();
    assert!(
        (0.0..=100.0).contains(&points("total")) && points("total") <= parts + 1e-9,
        "{end}"
    );
    let losses = end["losses"].as_array().expect("a list");
    let lost: f64 = losses.iter().map(|l| l["points"].as_f64().expect("points")).sum();
    assert!((100.0 - points("total") - lost).abs() < 1e-9, "{end}");
    for loss in losses {
        assert!(loss["part"].is_string() && loss["why"].is_string(), "{loss}");
        assert!(loss["operation"].is_null() || loss["operation"].is_u64(), "{loss}");
    }
    for key in ["teardowns", "minutes", "money"] {
        assert!(
            end["par"][key].is_number() && end["used"][key].is_number(),
            "{key}: {end}"
        );
    }
    // What costs nothing costs 0; no sum of no prices shows through.
    for text in [
        run.out.as_bytes(),
        &store::read_within(&journal, 1 << 20).expect("there"),
    ] {
        let text = String::from_utf8_lossy(text);
        assert!(text.contains("\"money\":0.0") && !text.contains(":-0.0"), "{text}");
    }
    // Before the end nothing of the truth is said.
    for answer in &lines[..READINGS.len()] {
        assert!(
            answer.get("truth").is_none() && !answer.to_string().contains("axial"),
            "{answer}"
        );
    }
    let replayed = super::program::run(&["replay", words(&journal), "--json"]);
    assert_eq!(replayed.code, 0, "{}", replayed.err);
    let replayed: Value = serde_json::from_str(&replayed.out).expect("a document");
    assert_eq!(replayed["identical"], true, "{replayed}");
    assert_eq!(replayed["sealed"], true);
    assert_eq!(replayed["state_hash"], end["state_hash"], "the same state");
    assert_eq!(replayed["score_identical"], true, "{replayed}");
    assert_eq!(replayed["score"], end["score"], "the same points");
}

#[test]
fn an_attempt_that_is_not_finished_has_no_points() {
    let folder = Folder::new("unfinished");
    let file = operations(&folder, &READINGS[..2]);
    let run = attempt(EXERCISE, 3, &file, &["--json"]);
    let end: Value = serde_json::from_str(run.out.lines().last().expect("lines")).expect("a document");
    assert_eq!(end["finished"], false);
    assert_eq!(end["score"]["total"], 0.0, "{end}");
    assert!(end["truth"].is_null(), "{end}");
}

/// A journal whose chain is whole but whose score is another: told. One that was sealed without a score is no worse.
#[test]
fn replay_compares_the_score() {
    let folder = Folder::new("score");
    let file = operations(&folder, &READINGS);
    let kept = folder.file("kept.jsonl");
    attempt(EXERCISE, 4, &file, &["--journal", words(&kept), "--json"]);
    let read = journal::read(&store::read_within(&kept, 1 << 20).expect("there")).expect("whole");
    let sealed = read.sealed.clone().expect("sealed");
    assert!(sealed["total"].is_number(), "{sealed}");
    let mut better = sealed.clone();
    better["total"] = Value::from(100.0);
    for (name, score, identical) in [
        ("better", better, Some(false)),
        ("none", Value::Null, None),
        ("same", sealed, Some(true)),
    ] {
        let lines = journals::written(&read.header, &read.entries, Some(&score));
        let path = folder.file(&format!("{name}.jsonl"));
        store::write_whole(&path, lines.as_bytes()).expect("written");
        let told: Value = serde_json::from_str(&run(&["replay", words(&path), "--json"]).out).expect("a document");
        assert_eq!(told["score_identical"].as_bool(), identical, "{name}: {told}");
        assert_eq!(told["identical"], identical != Some(false), "{name}: {told}");
        let people = run(&["replay", words(&path)]).out;
        assert_eq!(
            people.contains("holds another"),
            identical == Some(false),
            "{name}: {people}"
        );
    }
}

#[test]
fn the_same_seed_gives_the_same_lines_and_another_seed_others() {
    let folder = Folder::new("seeds");
    let file = operations(&folder, &READINGS);
    let with = |seed| attempt(EXERCISE, seed, &file, &["--json"]).out;
    assert_eq!(with(5), with(5));
    assert_ne!(with(5), with(6));
}

#[test]
fn people_read_the_card_the_answers_and_the_end() {
    let folder = Folder::new("people");
    let file = operations(&folder, &READINGS);
    let run = attempt(EXERCISE, 3, &file, &[]);
    assert_eq!((run.code, run.err.as_str()), (0, ""));
    assert_snapshot!("attempt_for_people", run.out);
}

#[test]
fn all_exercises_are_listed() {
    let list = run(&["attempt", "--list", "--json"]);
    let rows: Value = serde_json::from_str(&list.out).expect("a list");
    let rows = rows.as_array().expect("a list");
    assert_eq!(rows.len(), lashwright::catalogue::SCENARIOS.len());
    for row in rows {
        for key in ["name", "title", "step", "layout", "whole_build", "solvable"] {
            assert!(row.get(key).is_some(), "{key} of {row}");
        }
    }
    let people = run(&["attempt", "--list"]).out;
    assert!(people.contains(EXERCISE), "{people}");
}

/// Each operation that the schema knows is in the list for people, and a sample of each kind of limit.
#[test]
fn all_operations_are_listed_with_their_fields() {
    let schema: Value = serde_json::from_str(&run(&["operations", "--json"]).out).expect("a schema");
    let names: Vec<&str> = schema["oneOf"]
        .as_array()
        .expect("alternatives")
        .iter()
        .map(|one| one["properties"]["do"]["const"].as_str().expect("a name"))
        .collect();
    assert!(names.len() > 40, "{names:?}");
    let people = run(&["operations"]).out;
    for name in &names {
        assert!(
            people.contains(&format!("\n{name}: ")) || people.starts_with(&format!("{name}: ")),
            "{name}"
        );
    }
    // Both say the same of every field.
    let fields = schema["oneOf"].as_array().into_iter().flatten();
    for (name, field) in fields.flat_map(|one| one["properties"].as_object().into_iter().flatten()) {
        if name != "do" {
            let about = field["description"].as_str().expect("words");
            assert!(people.contains(&format!(". {about}\n")), "{name}: {about}");
        }
    }
    for said in [
        "force_kn: number 0.5 to 200",
        "precautions: list of one of",
        "may be left out",
    ] {
        assert!(people.contains(said), "nothing of {said}");
    }
}

#[test]
fn mistakes_say_what_to_do_and_leave_no_half_journal() {
    let folder = Folder::new("mistakes");
    let journal = folder.file("kept.jsonl");
    let bad = operations(
        &folder,
        &[r#"{"do":"turn","what":"pinion","turns":10}"#, r#"{"do":"tum"}"#],
    );
    let run_it = attempt(EXERCISE, 1, &bad, &["--journal", words(&journal), "--json"]);
    assert_eq!(run_it.code, 2, "{}", run_it.out);
    assert!(
        run_it.err.contains("line 2") && run_it.err.contains("lashwright operations"),
        "{}",
        run_it.err
    );
    // What was done before the mistake is kept.
    let kept = journal::read(&store::read_within(&journal, 1 << 20).expect("there")).expect("whole");
    assert_eq!(kept.entries.len(), 1);
    // An attempt is never written over.
    let again = attempt(EXERCISE, 1, &bad, &["--journal", words(&journal)]);
    assert_eq!(again.code, 2);
    assert!(again.err.contains("is there already"), "{}", again.err);
    for (arguments, said) in [
        (&["attempt", "no-such"] as &[&str], EXERCISE),
        (&["attempt", EXERCISE, "--operations", "no-such.jsonl"], "no-such.jsonl"),
        (&["replay", "no-such.jsonl"], "no-such.jsonl"),
        (&["attempt"], "SCENARIO"),
    ] {
        let run = run(arguments);
        assert_eq!(run.code, 2, "{arguments:?}: {}", run.out);
        assert!(run.err.contains(said), "{arguments:?}: {}", run.err);
    }
}

/// Somebody who wrote a line by hand hears of all its fields at once, inner ones too.
#[test]
fn all_wrong_fields_of_a_line_are_told_at_once() {
    let folder = Folder::new("fields");
    let line = concat!(
        r#"{"do":"measure","what":{"quantity":"lash","teeth":0},"instrumnt":"lever_dial","#,
        r#""stem":"along_motion","colour":"blue"}"#
    );
    let bad = operations(&folder, &[line]);
    let run = attempt(EXERCISE, 1, &bad, &[]);
    assert_eq!(run.code, 2, "{}", run.out);
    for said in [
        "`measure` does not take `colour`, `instrumnt` (did you mean `instrument`?), and needs `instrument`",
        "`lash` in `what` does not take `teeth`",
        "and needs `tooth`",
        "lashwright operations",
    ] {
        assert!(run.err.contains(said), "{said}: {}", run.err);
    }
}

#[test]
fn a_changed_journal_is_told_from_a_damaged_one_and_check_knows_both() {
    let folder = Folder::new("changed");
    let file = operations(&folder, &READINGS);
    let kept = folder.file("kept.jsonl");
    let played = attempt(EXERCISE, 1, &file, &["--journal", words(&kept), "--json"]);
    assert_eq!(played.code, 0, "{}", played.err);
    let whole = run(&["check", words(&kept)]);
    assert_eq!(whole.code, 0, "{}", whole.err);
    assert!(
        whole.out.contains("journal") && whole.out.contains("sealed"),
        "{}",
        whole.out
    );
    let mut bytes = store::read_within(&kept, 1 << 20).expect("there");
    let at = bytes.len() / 2;
    bytes[at] ^= 1;
    store::write_whole(&kept, &bytes).expect("written");
    for command in ["check", "replay"] {
        let run = run(&[command, words(&kept)]);
        assert_eq!((run.code, run.out.as_str()), (2, ""), "{command}");
        assert!(
            run.err.contains("damaged") && run.err.contains("line"),
            "{command}: {}",
            run.err
        );
    }
}

/// The card speaks the language that the program speaks, where the exercise has texts in it, and English for the rest; the
/// attempt is the same.
#[test]
fn a_card_speaks_the_language_of_the_program() {
    let folder = Folder::new("card-language");
    let file = operations(&folder, &[r#"{"do":"hint","level":1}"#, r#"{"do":"finish"}"#]);
    let exercise = "tests/commands/scenarios/two_languages.toml";
    let arguments = ["attempt", exercise, "--seed", "1", "--operations", words(&file)];
    let [english, other] = ["en-US", "pseudo"].map(|language| run_in(language, &arguments));
    assert_eq!((english.code, other.code), (0, 0), "{}{}", english.err, other.err);
    for (run, there, not_there) in [
        (
            &english,
            ["Two languages", "A label is only"],
            ["Ťwó łáñğúáğéś", "Ółd łábéł"],
        ),
        (
            &other,
            ["Ťwó łáñğúáğéś", "Ółd łábéł"],
            ["Two languages", "A label is only"],
        ),
    ] {
        for said in there {
            assert!(run.out.contains(said), "{said}: {}", run.out);
        }
        for said in not_there {
            assert!(!run.out.contains(said), "{said}: {}", run.out);
        }
        assert!(run.out.contains("Leave the rest of the axle alone."), "{}", run.out);
    }
    let state = |run: &str| {
        let hash = run
            .split_whitespace()
            .find(|word| word.len() == 64 && word.chars().all(|c| c.is_ascii_hexdigit()));
        hash.map(str::to_owned)
    };
    assert!(state(&english.out).is_some());
    assert_eq!(state(&english.out), state(&other.out), "the same attempt");
}
