//! `attempt … --debrief` and `replay … --debrief`: one page of HTML that needs nothing else, or no file at all.

use std::path::Path;

use lashwright::store;
use serde_json::Value;

use super::program::{Folder, Run, attempt, operations, run, words};

const EXERCISE: &str = "dairy-van-light-axle";

fn page_of(path: &Path) -> String {
    String::from_utf8(store::read_within(path, 1 << 24).expect("it was written")).expect("text")
}

/// As the page writes text.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
        .replace('\'', "&#39;")
}

fn end_of(run: &Run) -> Value {
    serde_json::from_str(run.out.lines().last().expect("lines")).expect("a document")
}

fn files_in(folder: &Folder) -> Vec<String> {
    let inside = folder.file("x");
    let parent = inside.parent().expect("a folder");
    let mut names: Vec<String> = std::fs::read_dir(parent)
        .expect("it is there")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    names
}

/// Every element that is opened is closed, in order.
fn assert_well_formed(page: &str) {
    let mut open: Vec<&str> = Vec::new();
    for piece in page.split('<').skip(1) {
        let (tag, _) = piece.split_once('>').expect("a tag ends");
        let name = tag.trim_start_matches('/').split([' ', '/']).next().expect("a name");
        if tag.starts_with('!') || tag.ends_with('/') || matches!(name, "meta" | "br") {
            continue;
        }
        if tag.starts_with('/') {
            assert_eq!(open.pop(), Some(name), "closes what was opened last, at <{tag}>");
        } else {
            open.push(name);
        }
    }
    assert_eq!(open, Vec::<&str>::new(), "all closed");
}

/// Every reference into the page leads somewhere, and no name is given twice.
fn assert_names_meet(page: &str) {
    let after = |mark: &str, end: char| -> Vec<String> {
        page.split(mark)
            .skip(1)
            .map(|piece| piece.split(end).next().expect("an end").to_owned())
            .collect()
    };
    let mut names = after(" id=\"", '"');
    for wanted in after("url(#", ')').into_iter().chain(after("href=\"#", '"')) {
        assert!(names.contains(&wanted), "`{wanted}` is named in the page");
    }
    let count = names.len();
    names.sort();
    names.dedup();
    assert_eq!(names.len(), count, "no name twice");
}

#[test]
fn the_page_of_the_reference_is_complete_and_needs_nothing_else() {
    let folder = Folder::new("debrief");
    let (page_file, journal) = (folder.file("debrief.html"), folder.file("journal.jsonl"));
    // Of this seed the technician builds more than once.
    let run = run(&[
        "attempt",
        EXERCISE,
        "--seed",
        "1",
        "--play",
        "reference",
        "--journal",
        words(&journal),
        "--debrief",
        words(&page_file),
        "--json",
    ]);
    assert_eq!((run.code, run.err.as_str()), (0, ""));
    assert_eq!(files_in(&folder), ["debrief.html", "journal.jsonl"], "nothing else");
    let page = page_of(&page_file);
    for outside in ["http", "<script", "src=", "@import", "<link", "javascript", "onclick"] {
        assert!(!page.contains(outside), "the page holds `{outside}`");
    }
    assert!(!page.contains("NaN") && !page.contains("inf "), "numbers are numbers");
    assert_well_formed(&page);
    assert_names_meet(&page);
    let caution = page.find("never a specification for a real axle").expect("the caution");
    let first = page.find("<h2>").expect("a section");
    assert!(caution < first, "the caution stands at the top");
    for section in [
        "Score and reasons",
        "Truth beside belief",
        "Patterns in a row",
        "The reference technician\u{2019}s way",
        "What if",
        "Everything that was done",
    ] {
        assert!(page.contains(&format!("<h2>{section}</h2>")), "{section}");
    }
    // Every lost point is told, with its sentence.
    let end = end_of(&run);
    let losses = end["losses"].as_array().expect("a list");
    assert!(!losses.is_empty(), "a seed with a loss: {end}");
    for loss in losses {
        let why = escaped(loss["why"].as_str().expect("a sentence"));
        assert!(page.contains(&why), "{why}");
    }
    // Every print that was rolled is there, and each operation.
    let mut builds = 0;
    for (number, line) in (1..).zip(run.out.lines()) {
        let answer: Value = serde_json::from_str(line).expect("a document");
        if answer.get("operation").is_none() {
            continue;
        }
        assert!(page.contains(&format!("<a id=\"op{number}\">")), "operation {number}");
        builds += usize::from(line.contains("drive_centroid_along"));
    }
    assert!(builds > 0, "prints were looked at");
    let tear_downs = end["used"]["teardowns"].as_u64().expect("a number");
    assert!(tear_downs > 0, "a seed with more than one build: {end}");
    assert_eq!(
        page.matches("<span class=\"tag\">TEARDOWN</span>").count(),
        usize::try_from(tear_downs).expect("few"),
        "each tear-down is marked"
    );
    assert!(
        page.contains("Build 1") && page.contains("signed off</b>"),
        "builds have names"
    );
    // The journal gives the same page, but for the sentence that says so.
    let again_file = folder.file("again.html");
    let again = super::program::run(&["replay", words(&journal), "--debrief", words(&again_file)]);
    assert_eq!((again.code, again.err.as_str()), (0, ""));
    let said = "<p>Recomputed from its journal: every answer came out again bit for bit.</p>\n";
    let again = page_of(&again_file);
    assert!(again.contains(said), "it says where it comes from");
    assert_eq!(again.replace(said, ""), page, "the same page");
}

/// An axle that was read and handed over, with notes that try to break out of the page.
const HOSTILE: [&str; 5] = [
    r#"{"do":"turn","what":"pinion","turns":10}"#,
    r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    r#"{"do":"note","what":{"quantity":"rolling_torque"},"value":3.1,"remark":"<b>&\"'</td><script>alert(1)</script>"}"#,
    r#"{"do":"condemn","part":"case","reason":"</table><img src=x onerror=alert(1)>","evidence":[1]}"#,
    r#"{"do":"finish"}"#,
];

#[test]
fn what_people_wrote_stays_text() {
    let folder = Folder::new("debrief-hostile");
    let file = operations(&folder, &HOSTILE);
    let page_file = folder.file("debrief.html");
    let run = attempt("oat-barn-tractor", 3, &file, &["--debrief", words(&page_file)]);
    assert_eq!((run.code, run.err.as_str()), (0, ""));
    let page = page_of(&page_file);
    assert!(
        page.contains("&lt;b&gt;&amp;&quot;&#39;&lt;/td&gt;&lt;script&gt;alert(1)&lt;/script&gt;"),
        "the note is there as text"
    );
    assert!(page.contains("&lt;img src=x onerror=alert(1)&gt;"), "so is the reason");
    assert!(
        !page.contains("<script") && !page.contains("<img"),
        "no element of theirs"
    );
    assert_well_formed(&page);
    assert!(
        page.contains("never looked at"),
        "the print that nobody rolled is told as such"
    );
}

/// What is felt by hand is told in inch-pounds, what a nut is tightened to in foot-pounds, as their wrenches are marked.
#[test]
fn the_torque_of_a_nut_is_told_in_foot_pounds() {
    let folder = Folder::new("debrief-torques");
    let note = |what: &str, value: f64| {
        format!(r#"{{"do":"note","what":{{"quantity":"{what}"}},"value":{value},"remark":""}}"#)
    };
    let lines = [
        note("nut_torque", 250.0),
        note("rolling_torque", 2.0),
        r#"{"do":"finish"}"#.to_owned(),
    ];
    let file = operations(&folder, &lines.each_ref().map(String::as_str));
    let page_file = folder.file("debrief.html");
    let run = attempt("crush-and-stop", 1, &file, &["--debrief", words(&page_file)]);
    assert_eq!((run.code, run.err.as_str()), (0, ""));
    let page = page_of(&page_file).replace('\u{a0}', " ");
    // 250 N m over 1.355 818 N m, 2 N m over 0.112 985 N m.
    for said in [
        "250 N·m <span class=\"inch\">(184 ft·lb)</span>",
        "Wrote down the pinion nut torque: 250 N·m (184 ft·lb)",
        "2.00 N·m <span class=\"inch\">(17.7 in·lb)</span>",
        "Wrote down rotating torque: 2.00 N·m (17.7 in·lb)",
    ] {
        assert!(page.contains(said) || page.contains(&escaped(said)), "{said}");
    }
    let rows: Vec<&str> = page
        .split("<tr")
        .filter(|row| row.contains("inion nut torque"))
        .collect();
    assert!(!rows.is_empty(), "the nut is told of");
    for row in rows {
        assert!(!row.contains("in·lb"), "{row}");
    }
    assert!(page.contains("N·m (117 to 310 ft·lb)"), "the card's limits of the nut");
}

/// The page tells as much of an operation as the log does, and numbers plates as the window does: from 1.
#[test]
fn the_page_counts_plates_from_one_and_tells_marks_that_are_out() {
    let folder = Folder::new("debrief-plates");
    let lines = [
        r#"{"do":"set_carrier_in","marks_out_teeth":2}"#,
        r#"{"do":"judge_plate","plate":0,"chances":[0.2,0.5,0.3]}"#,
        r#"{"do":"finish"}"#,
    ];
    let file = operations(&folder, &lines);
    let page_file = folder.file("debrief.html");
    let run = attempt("twelve-prints", 1, &file, &["--debrief", words(&page_file)]);
    assert_eq!((run.code, run.err.as_str()), (0, ""));
    let page = page_of(&page_file).replace('\u{a0}', " ");
    for said in [
        "Set the carrier in, timing marks off by 2 teeth.",
        "Judged painted plate 1: pinion toward the ring gear (deeper) 20 %, right 50 %, away from the ring gear (shallower) 30 %",
        "<b>Painted plate 1</b>",
        "<b>Painted plate 12</b>",
    ] {
        assert!(page.contains(said), "{said}");
    }
    assert!(!page.contains("late 0"), "no plate is the zeroth");
}

#[test]
fn an_attempt_that_is_not_finished_has_no_debrief() {
    let folder = Folder::new("debrief-unfinished");
    let file = operations(&folder, &HOSTILE[..2]);
    let (page_file, journal) = (folder.file("debrief.html"), folder.file("journal.jsonl"));
    let refused = attempt(
        "oat-barn-tractor",
        3,
        &file,
        &["--journal", words(&journal), "--debrief", words(&page_file)],
    );
    assert_eq!(refused.code, 2, "{}", refused.out);
    assert!(
        refused.err.contains("not signed off yet") && refused.err.contains("finish"),
        "says what to do: {}",
        refused.err
    );
    assert_eq!(
        files_in(&folder),
        ["journal.jsonl", "operations.jsonl"],
        "nothing half-written"
    );
    let replayed = run(&["replay", words(&journal), "--debrief", words(&page_file)]);
    assert_eq!((replayed.code, replayed.out.as_str()), (2, ""), "{}", replayed.err);
    assert_eq!(files_in(&folder), ["journal.jsonl", "operations.jsonl"], "nor there");
}

#[test]
fn a_debrief_is_never_written_over_what_it_comes_from() {
    let folder = Folder::new("debrief-over");
    let file = operations(&folder, &HOSTILE);
    let (journal, page_file) = (folder.file("journal.jsonl"), folder.file("debrief.html"));
    let over = |page: &Path| {
        attempt(
            "oat-barn-tractor",
            1,
            &file,
            &["--journal", words(&journal), "--debrief", words(page)],
        )
    };
    for target in [&file, &journal] {
        let refused = over(target);
        assert_eq!((refused.code, refused.out.as_str()), (2, ""), "{}", refused.err);
        assert!(refused.err.contains("another name"), "{}", refused.err);
    }
    assert_eq!(files_in(&folder), ["operations.jsonl"], "no journal was begun");
    assert_eq!(over(&page_file).code, 0, "a name of its own is fine");
    let before = page_of(&journal);
    let refused = run(&["replay", words(&journal), "--debrief", words(&journal)]);
    assert_eq!((refused.code, refused.out.as_str()), (2, ""), "{}", refused.err);
    assert_eq!(page_of(&journal), before, "the journal is untouched");
    // A folder that is not there: said, and the page that was there before stays.
    let nowhere = folder.file("nowhere").join("debrief.html");
    let refused = run(&["replay", words(&journal), "--debrief", words(&nowhere)]);
    assert_eq!((refused.code, refused.out.as_str()), (1, ""), "{}", refused.err);
    assert!(refused.err.contains("cannot write"), "{}", refused.err);
}
