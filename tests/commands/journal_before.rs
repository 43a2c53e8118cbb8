//! Journals of format 1, whose answers told in sentences: two that a program of that time wrote, one handed over, one left
//! half done.

use std::path::{Path, PathBuf};

use lashwright::bench::Operation;
use lashwright::exercise::journal::{self, ReadJournal};
use lashwright::job::attempt::{OpenAttempt, operation_of, replay};
use lashwright::store;
use serde_json::Value;

use super::journals::written;
use super::program::{Folder, run, words};

const HANDED_OVER: &str = "what-the-dial-says-1-reference.jsonl";
const HALF_DONE: &str = "by-hand.jsonl";

fn kept(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests/commands/journals")
        .join(name)
}

fn read(path: &Path) -> ReadJournal {
    journal::read(&store::read_within(path, journal::LIMITS.bytes).expect("there")).expect("whole")
}

fn copy(folder: &Folder, name: &str) -> PathBuf {
    let path = folder.file(name);
    let bytes = store::read_within(&kept(name), journal::LIMITS.bytes).expect("there");
    store::write_whole(&path, &bytes).expect("written");
    path
}

fn replayed(path: &Path) -> Value {
    let run = run(&["replay", words(path), "--json"]);
    assert_eq!(run.code, 0, "{}", run.err);
    serde_json::from_str(&run.out).expect("a document")
}

#[test]
fn format_1_comes_out_again() {
    for (name, operations, sealed) in [(HANDED_OVER, 11, true), (HALF_DONE, 15, false)] {
        let told = replayed(&kept(name));
        assert_eq!(told["format"], 1, "{told}");
        assert_eq!(told["operations"], operations, "{told}");
        assert_eq!(told["identical"], true, "{told}");
        assert!(told["first_difference"].is_null(), "{told}");
        assert_eq!(told["sealed"], sealed, "{told}");
        let identical = sealed.then_some(true);
        assert_eq!(told["score_identical"].as_bool(), identical, "{told}");
    }
}

/// The record that a note was read from stood in the words beside it.
#[test]
fn format_1_names_records_in_words() {
    let (session, torn) = {
        let folder = Folder::new("format-1-notes");
        OpenAttempt::resume(&copy(&folder, HALF_DONE)).expect("gone on with")
    };
    assert_eq!(torn, None);
    let records: Vec<Option<u32>> = session.attempt().bench().notes().iter().map(|n| n.record).collect();
    assert_eq!(records, [Some(1), Some(2), None], "two read, one guessed");
}

/// One that was left half done is gone on with, stays of its format, and comes out again when it is handed over.
#[test]
fn format_1_is_gone_on_with() {
    let folder = Folder::new("format-1-goes-on");
    let path = copy(&folder, HALF_DONE);
    let before = store::read_within(&path, journal::LIMITS.bytes).expect("there");
    let (mut session, torn) = OpenAttempt::resume(&path).expect("gone on with");
    assert_eq!(torn, None);
    for (line, done) in [
        (
            r#"{"do":"measure","what":{"quantity":"shim_piece","piece":3},"instrument":"micrometer"}"#,
            true,
        ),
        (
            r#"{"do":"note","what":{"quantity":"shim_piece","piece":3},"value":0.1,"record":4}"#,
            true,
        ),
        (r#"{"do":"press","ring":"head_cup","force_kn":20}"#, false),
    ] {
        let answer = session.apply(operation_of(line).expect("an operation")).expect("kept");
        assert_eq!(answer.done, done, "{line}: {:?}", answer.refused);
    }
    assert_eq!(session.attempt().steps().len(), 18, "15 and 3");
    drop(session);
    // Left once more, and handed over; a copy, because a program that another test starts may hold the lock for a moment.
    let left = store::read_within(&path, journal::LIMITS.bytes).expect("there");
    let path = folder.file("left.jsonl");
    store::write_whole(&path, &left).expect("written");
    let (mut session, _) = OpenAttempt::resume(&path).expect("gone on with again");
    session.apply(Operation::Finish {}).expect("kept");
    let state = session.document().expect("a document").state_hash;
    drop(session);
    let after = store::read_within(&path, journal::LIMITS.bytes).expect("there");
    assert!(after.starts_with(&before), "what stood there stands there");
    let told = replay(&path).expect("replayed");
    assert_eq!((told.format, told.operations), (1, 19));
    assert!(told.identical && told.sealed, "{told:?}");
    assert_eq!(told.score_identical, Some(true), "{told:?}");
    assert_eq!(told.state_hash, state, "the same state");
}

/// A reading changed in a chain that is whole: said at its operation, and not gone on with.
#[test]
fn a_changed_value_of_format_1_is_found() {
    let folder = Folder::new("format-1-changed");
    for (name, operation) in [(HANDED_OVER, 3), (HALF_DONE, 5)] {
        let ReadJournal {
            header,
            mut entries,
            sealed,
            ..
        } = read(&kept(name));
        let whole = store::read_within(&kept(name), journal::LIMITS.bytes).expect("there");
        let same = written(&header, &entries, sealed.as_ref());
        assert_eq!(same.as_bytes(), whole, "{name}: written again without a change");
        let shown = &mut entries[operation - 1].answer["readings"][0]["value"];
        let value = shown.as_f64().expect("a reading");
        *shown = Value::from(value + 0.002);
        let path = folder.file(name);
        let changed = written(&header, &entries, sealed.as_ref());
        store::write_whole(&path, changed.as_bytes()).expect("written");
        let told = replayed(&path);
        assert_eq!(told["format"], 1, "{told}");
        assert_eq!(told["identical"], false, "{told}");
        assert_eq!(told["first_difference"], operation, "{told}");
        let failure = OpenAttempt::resume(&path).expect_err("not what was answered");
        let said = format!("operation {operation} does not come out again");
        assert!(failure.text.contains(&said), "{failure}");
    }
}

/// Until version 2 of the physics more readings went stale than a change touched: which ones is not asked of a journal of
/// that time, and is of one of today.
#[test]
fn what_went_stale_before_is_not_compared() {
    let folder = Folder::new("stale-before");
    let ReadJournal { mut header, .. } = read(&kept(HALF_DONE));
    for (version, identical) in [(1, true), (2, false)] {
        let ReadJournal {
            mut entries, sealed, ..
        } = read(&kept(HALF_DONE));
        let entry = entries.iter_mut().find(|e| e.answer["stale"].is_array());
        let stale = &mut entry.expect("something went stale").answer["stale"];
        assert_eq!(*stale, serde_json::json!([1, 2]));
        *stale = serde_json::json!([1, 2, 3]);
        header.physics_version = version;
        let path = folder.file(&format!("{version}.jsonl"));
        let text = written(&header, &entries, sealed.as_ref());
        store::write_whole(&path, text.as_bytes()).expect("written");
        let told = replayed(&path);
        assert_eq!(told["identical"], identical, "{version}: {told}");
        assert_eq!(OpenAttempt::resume(&path).is_ok(), identical, "{version}");
    }
}
