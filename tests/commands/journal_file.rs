//! Journals on the disk: programs killed at any moment, disks that are full, two programs at one file.

use std::io::{BufRead as _, BufReader, Read as _, Write as _};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use lashwright::bench::Operation;
use lashwright::exercise::journal::{self, Writer};
use lashwright::job::attempt::Journal;
use lashwright::job::attempt::{LONGEST_LINE, OpenAttempt, operation_of};
use lashwright::job::{AtFault, store_error, text_file};
use lashwright::numerics::random::Stream;
use lashwright::store::{JournalFile, StoreError, read_within, write_whole};
use serde_json::{Value, json};

use super::journals;
use super::program::Folder;

fn bytes_of(path: &Path) -> Vec<u8> {
    read_within(path, journal::LIMITS.bytes).expect("a journal")
}

fn attempt(journal: &Path) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_lashwright"));
    command
        .args(["attempt", "oat-barn-tractor", "--seed", "5", "--json", "--journal"])
        .arg(journal)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped());
    command
}

/// A line of answers as a journal keeps it: without the words that are printed beside what is typed.
fn kept_of(line: &str) -> Value {
    let mut answer: Value = serde_json::from_str(line).expect("one document a line");
    let fields = answer.as_object_mut().expect("an object");
    fields.retain(|key, _| !key.ends_with("_text") && key != "note");
    answer
}

/// Operations that change the bench, read it and are refused by it.
fn operations(count: usize) -> String {
    let kinds = [
        r#"{"do":"turn","what":"pinion","turns":3}"#,
        r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"cord_and_scale"}"#,
        r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"click_wrench"}"#,
        r#"{"do":"turn","what":"pinion","turns":1}"#,
    ];
    let lines: Vec<&str> = kinds.into_iter().cycle().take(count).collect();
    lines.join("\n") + "\n"
}

/// Sends operations from a thread of their own, so that a program that is killed meanwhile blocks nobody; says whether all
/// of them were taken.
fn feed(child: &mut Child, text: String) -> std::thread::JoinHandle<bool> {
    let mut input = child.stdin.take().expect("piped");
    // The program may be gone before it has taken everything: that is what is tried.
    std::thread::spawn(move || input.write_all(text.as_bytes()).is_ok())
}

/// A program killed 100 times, after any number of answers and at any moment, loses no operation that it has answered: each
/// answer that came out of it stands in the journal, in its order. SIGKILL, and what the system keeps; a power cut is not
/// tried.
#[test]
fn a_program_killed_at_any_moment_loses_no_answered_operation() {
    const KILLS: u64 = 100;
    const OPERATIONS: usize = 4000;
    let folder = Folder::new("killed");
    let mut stream = Stream::new(1, "moments to kill at");
    let (mut answered, mut kept_beyond, mut torn, mut before_any) = (0, 0, 0, 0);
    for kill in 0..KILLS {
        let path = folder.file(&format!("{kill}.jsonl"));
        let mut child = attempt(&path).spawn().expect("it runs");
        let feeding = feed(&mut child, operations(OPERATIONS));
        let mut output = BufReader::new(child.stdout.take().expect("piped"));
        // One in five dies while it starts, the others after some answers and a moment more.
        let wanted = if kill % 5 == 0 { 0 } else { 1 + stream.index(60) };
        let mut answers: Vec<Value> = Vec::new();
        let mut read_on = |answers: &mut Vec<Value>| {
            let mut line = String::new();
            let found = output.read_line(&mut line).expect("text");
            if found > 0 && line.ends_with('\n') {
                answers.push(kept_of(&line));
            }
            found > 0
        };
        while (answers.len() as u64) < wanted && read_on(&mut answers) {}
        let micros = if wanted == 0 { 60_000 } else { 3_000 };
        std::thread::sleep(Duration::from_micros(stream.index(micros)));
        child.kill().expect("killed");
        let status = child.wait().expect("it ends");
        assert!(
            status.code().is_none(),
            "kill {kill}: it was killed, it did not end: {status}"
        );
        // Answers that were out but not yet read count as answered.
        while read_on(&mut answers) {}
        feeding.join().expect("fed");
        answered += answers.len();
        before_any += usize::from(answers.is_empty());
        if answers.is_empty() && !path.exists() {
            continue;
        }
        let bytes = bytes_of(&path);
        if answers.is_empty() && !bytes.contains(&b'\n') {
            continue;
        }
        let found = journal::read(&bytes).unwrap_or_else(|error| panic!("kill {kill}: {error}"));
        torn += usize::from(found.torn.is_some());
        let kept: Vec<&Value> = found.entries.iter().map(|entry| &entry.answer).collect();
        assert!(
            kept.len() >= answers.len(),
            "kill {kill}: {} of {} answers kept",
            kept.len(),
            answers.len()
        );
        assert!(
            kept.len() <= answers.len() + 1,
            "kill {kill}: one operation in flight at most"
        );
        assert!(
            kept.iter().zip(&answers).all(|(a, b)| **a == *b),
            "kill {kill}: the same answers"
        );
        kept_beyond += kept.len() - answers.len();
        if kill % 20 == 1 {
            let again = Command::new(env!("CARGO_BIN_EXE_lashwright"))
                .args(["replay", "--json"])
                .arg(&path)
                .output()
                .expect("it runs");
            let again: Value = serde_json::from_slice(&again.stdout).expect("a document");
            assert_eq!(again["identical"], true, "kill {kill}: {again}");
            assert_eq!(again["operations"], kept.len(), "kill {kill}: {again}");
        }
    }
    println!(
        "{answered} operations answered, none lost; killed {before_any} times before any answer, {kept_beyond} times between \
         keeping and answering, {torn} times within a line"
    );
    assert!(answered > 1000 && before_any >= 5, "the kills fell where they should");
}

/// Runs a program that may make no file larger than so many blocks of 512 bytes (1,024 in some shells): the limit stands for
/// a full disk. The signal that would end the program is held off, so that writing fails as it does on a full disk. The
/// limit is a soft one, so that it can be lifted.
#[cfg(unix)]
fn with_little_room(blocks: u32, program: &Path) -> Command {
    let script = format!("trap '' XFSZ; ulimit -S -f {blocks}; exec \"$0\" \"$@\"");
    let mut command = Command::new("sh");
    command
        .args(["-c", &script])
        .arg(program)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped());
    command
}

/// A full disk: the program says so and stops, and the journal holds what was answered, with no torn line at its end.
#[test]
#[cfg(unix)]
fn a_full_disk_leaves_whole_lines() {
    let folder = Folder::new("full");
    let path = folder.file("a.jsonl");
    let mut child = with_little_room(16, Path::new(env!("CARGO_BIN_EXE_lashwright")))
        .args(["attempt", "oat-barn-tractor", "--json", "--journal"])
        .arg(&path)
        .spawn()
        .expect("a shell");
    let feeding = feed(&mut child, operations(200));
    let output = child.wait_with_output().expect("it ends");
    feeding.join().expect("fed");
    assert_eq!(
        output.status.code(),
        Some(1),
        "a failure of the machine, not of the input"
    );
    let said = String::from_utf8(output.stderr).expect("text");
    assert!(said.contains("cannot write") && said.contains("a.jsonl"), "{said}");
    let answers: Vec<Value> = BufReader::new(&output.stdout[..])
        .lines()
        .map(|line| kept_of(&line.expect("text")))
        .collect();
    let found = journal::read(&bytes_of(&path)).expect("whole");
    assert!(
        found.torn.is_none(),
        "the line that did not fit was taken off: {:?}",
        found.torn
    );
    let kept: Vec<Value> = found.entries.into_iter().map(|entry| entry.answer).collect();
    assert!(kept.len() > 10, "{} fitted", kept.len());
    assert_eq!(kept, answers, "what was answered, and no more");
}

/// No room even for the first line: nothing is left behind that would be in the way of the next try.
#[test]
#[cfg(unix)]
fn a_journal_that_cannot_be_begun_leaves_no_file() {
    let folder = Folder::new("begun");
    let path = folder.file("a.jsonl");
    let output = with_little_room(0, Path::new(env!("CARGO_BIN_EXE_lashwright")))
        .args(["attempt", "oat-barn-tractor", "--json", "--journal"])
        .arg(&path)
        .stdin(Stdio::null())
        .output()
        .expect("a shell");
    let said = String::from_utf8(output.stderr).expect("text");
    assert_eq!(output.status.code(), Some(1), "{said}");
    assert!(said.contains("cannot write") && said.contains("a.jsonl"), "{said}");
    assert!(output.stdout.is_empty(), "nothing was answered");
    assert!(!path.exists(), "no file was left");
}

/// Runs a test of this file again in a process of its own, with little room.
#[cfg(target_os = "linux")]
fn again_with_little_room(blocks: u32, test: &str, path: &Path) -> std::process::Output {
    with_little_room(blocks, &std::env::current_exe().expect("this program"))
        .args(["--exact", test, "--nocapture"])
        .env(JOURNAL, path)
        .stdin(Stdio::null())
        .output()
        .expect("it runs")
}

/// Set in the process with little room: where its journal goes.
#[cfg(target_os = "linux")]
const JOURNAL: &str = "LASHWRIGHT_TEST_JOURNAL";

/// A full disk in the middle of an attempt: the operation was not done, the bench is as it was before, and once there is
/// room the attempt goes on to its seal as if nothing had happened.
#[test]
#[cfg(target_os = "linux")]
fn an_attempt_goes_on_when_there_is_room_again() {
    let Some(path) = std::env::var_os(JOURNAL) else {
        let folder = Folder::new("room");
        let path = folder.file("a.jsonl");
        let name = "journal_file::an_attempt_goes_on_when_there_is_room_again";
        let output = again_with_little_room(16, name, &path);
        let said = String::from_utf8_lossy(&output.stdout);
        assert!(
            output.status.success() && said.contains("sealed after a failure"),
            "{said}{}",
            String::from_utf8_lossy(&output.stderr)
        );
        return;
    };
    let path = Path::new(&path);
    let mut session = OpenAttempt::begin("oat-barn-tractor", 5, Some(path)).expect("begun");
    let lines = operations(4);
    let mut lines = lines.lines().cycle();
    let mut answered = Vec::new();
    let failure = loop {
        let before = (session.document(), session.attempt().seen());
        match session.apply(operation_of(lines.next().expect("endless")).expect("an operation")) {
            Ok(answer) => answered.push(serde_json::to_value(answer).expect("a document")),
            Err(failure) => {
                assert_eq!(
                    (session.document(), session.attempt().seen()),
                    before,
                    "nothing was done"
                );
                break failure;
            }
        }
    };
    assert!(
        failure.fault == AtFault::Other && failure.text.contains("cannot write"),
        "{failure}"
    );
    assert!(answered.len() > 10, "{} fitted", answered.len());
    let kept = bytes_of(path);
    // Still no room: said again, and nothing else.
    for _ in 0..3 {
        assert_eq!(
            session
                .apply(operation_of(r#"{"do":"finish"}"#).expect("an operation"))
                .expect_err("no room")
                .text,
            failure.text
        );
        assert_eq!(bytes_of(path), kept, "whole lines, no part of another");
        assert!(!session.attempt().is_finished(), "not handed over");
    }
    let lifted = Command::new("prlimit")
        .args([&format!("--pid={}", std::process::id()), "--fsize=unlimited"])
        .status()
        .expect("prlimit of util-linux");
    assert!(lifted.success(), "{lifted}");
    for line in [
        "{\"do\":\"turn\",\"what\":\"pinion\",\"turns\":2}",
        r#"{"do":"finish"}"#,
    ] {
        let answer = session.apply(operation_of(line).expect("an operation")).expect("room");
        assert_eq!(
            answer.operation as usize,
            answered.len() + 1,
            "numbers go on without a gap"
        );
        answered.push(serde_json::to_value(answer).expect("a document"));
    }
    let found = journal::read(&bytes_of(path)).expect("whole");
    assert!(found.sealed.is_some() && found.torn.is_none(), "sealed");
    let kept: Vec<Value> = found.entries.into_iter().map(|entry| entry.answer).collect();
    assert_eq!(kept, answered, "what was answered, and no more");
    let again = lashwright::job::attempt::replay(path).expect("replayed");
    assert!(again.identical && !again.recomputed, "{again:?}");
    assert_eq!(
        again.state_hash,
        session.document().expect("a document").state_hash,
        "the same state"
    );
    assert!(
        session
            .apply(operation_of(r#"{"do":"finish"}"#).expect("an operation"))
            .expect_err("sealed")
            .text
            .contains("signed off"),
        "only now"
    );
    println!("sealed after a failure");
}

/// What fails for any other reason leaves an attempt where it was, too.
#[test]
fn an_attempt_whose_journal_was_changed_stays_where_it_was() {
    let folder = Folder::new("stays");
    let path = folder.file("a.jsonl");
    let mut session = OpenAttempt::begin("oat-barn-tractor", 5, Some(&path)).expect("begun");
    let lines = operations(4);
    for line in lines.lines() {
        session.apply(operation_of(line).expect("an operation")).expect("kept");
    }
    let before = (session.document(), session.attempt().seen());
    let whole = bytes_of(&path);
    write_over(&path, &[&whole[..], b"a line of another program\n"].concat());
    let failure = session
        .apply(operation_of(r#"{"do":"finish"}"#).expect("an operation"))
        .expect_err("changed");
    assert!(
        failure.text.contains("another program changed it") && failure.text.contains("a.jsonl"),
        "{failure}"
    );
    assert_eq!(
        (session.document(), session.attempt().seen()),
        before,
        "nothing was done"
    );
    write_over(&path, &whole);
    assert_eq!(
        session
            .apply(operation_of(r#"{"do":"finish"}"#).expect("an operation"))
            .expect("put back")
            .operation,
        5
    );
    assert!(
        journal::read(&bytes_of(&path)).expect("whole").sealed.is_some(),
        "sealed"
    );
}

/// Puts these bytes into a file that is open elsewhere.
fn write_over(path: &Path, bytes: &[u8]) {
    std::fs::OpenOptions::new()
        .write(true)
        .truncate(true)
        .open(path)
        .and_then(|mut other| other.write_all(bytes))
        .expect("changed");
}

fn turn(writer: &mut Writer, number: u32) -> String {
    writer
        .entry(&json!({"do": "turn", "turns": number}), &json!({"done": true}))
        .expect("room")
}

/// A journal with some entries in a file, and the writer that goes on.
fn begun(path: &Path, entries: u32) -> (JournalFile, Writer) {
    let (mut writer, line) = journals::begin();
    let mut file = JournalFile::create(path, &line).expect("made");
    for number in 0..entries {
        let line = turn(&mut writer, number);
        file.append(&line).expect("written");
    }
    (file, writer)
}

#[test]
fn an_attempt_is_never_written_over() {
    let folder = Folder::new("over");
    let (written, path) = (folder.file("written.jsonl"), folder.file("a.jsonl"));
    drop(begun(&written, 3));
    // A program that another test starts just now holds the lock of what is open here for a moment longer; not of a copy.
    std::fs::copy(&written, &path).expect("copied");
    let before = bytes_of(&path);
    assert!(
        matches!(JournalFile::create(&path, "x\n"), Err(StoreError::Exists { .. })),
        "there is one already"
    );
    let output = attempt(&path).stdin(Stdio::null()).output().expect("it runs");
    let said = String::from_utf8(output.stderr).expect("text");
    assert!(said.contains("is there already"), "{said}");
    assert_eq!(output.status.code(), Some(2), "{said}");
    assert_eq!(bytes_of(&path), before, "nothing was changed");
}

/// A journal that a program holds is locked: another one is told so, by the journal's name, and changes nothing.
#[test]
fn two_programs_do_not_write_one_journal() {
    let folder = Folder::new("locked");
    let path = folder.file("one.jsonl");
    let mut first = attempt(&path).spawn().expect("it runs");
    let mut input = first.stdin.take().expect("piped");
    let mut answers = BufReader::new(first.stdout.take().expect("piped")).lines();
    input.write_all(operations(1).as_bytes()).expect("it listens");
    answers.next().expect("an answer").expect("text");
    let before = bytes_of(&path);
    let second = attempt(&path).stdin(Stdio::null()).output().expect("it runs");
    let said = String::from_utf8(second.stderr).expect("text");
    assert_eq!(second.status.code(), Some(1), "{said}");
    assert!(
        said.contains("one.jsonl is being written by another Lashwright") && second.stdout.is_empty(),
        "{said}"
    );
    for _ in 0..2 {
        let open = JournalFile::open(&path, 1 << 20);
        assert!(
            matches!(open, Err(StoreError::Locked { .. })),
            "nor to go on with it: {open:?}"
        );
    }
    assert_eq!(bytes_of(&path), before, "nothing was changed");
    // The first one was not disturbed.
    input.write_all(operations(2).as_bytes()).expect("it listens");
    for _ in 0..2 {
        answers.next().expect("an answer").expect("text");
    }
    drop(input);
    assert!(first.wait().expect("ends").success(), "the end of its input ends it");
    let (held, bytes) = JournalFile::open(&path, 1 << 20).expect("free again");
    assert_eq!(journal::read(&bytes).expect("whole").entries.len(), 3);
    // And the other way round, and once more free: then it is simply there already.
    let refused = || {
        let output = attempt(&path).stdin(Stdio::null()).output().expect("it runs");
        String::from_utf8(output.stderr).expect("text")
    };
    assert!(refused().contains("another Lashwright"), "{}", refused());
    drop(held);
    assert!(refused().contains("is there already"), "{}", refused());
}

/// Torn by a kill, cut to its whole lines, gone on with: the same bytes as if nothing had happened.
#[test]
fn a_torn_journal_is_cut_and_gone_on_with() {
    let folder = Folder::new("torn");
    let (whole, torn) = (folder.file("whole.jsonl"), folder.file("torn.jsonl"));
    drop(begun(&whole, 6));
    let all = bytes_of(&whole);
    drop(begun(&folder.file("part.jsonl"), 4));
    let part = bytes_of(&folder.file("part.jsonl"));
    for extra in [0, 1, 40, 150] {
        write_whole(&torn, &all[..part.len() + extra]).expect("written");
        let (mut file, bytes) = JournalFile::open(&torn, 1 << 20).expect("opened");
        let found = journal::read(&bytes).expect("read");
        assert_eq!(found.torn.is_some(), extra > 0, "{extra} bytes more");
        assert_eq!((found.entries.len(), found.whole_bytes), (4, part.len()));
        file.cut_to(found.whole_bytes).expect("cut");
        let mut writer = found.go_on().expect("not sealed");
        for number in 4..6 {
            let line = turn(&mut writer, number);
            file.append(&line).expect("written");
        }
        drop(file);
        assert_eq!(bytes_of(&torn), all, "{extra} bytes more");
    }
}

#[test]
fn a_journal_that_was_changed_meanwhile_is_not_written_on() {
    let folder = Folder::new("changed by another");
    let path = folder.file("a.jsonl");
    let (mut file, mut writer) = begun(&path, 2);
    let before = bytes_of(&path);
    let line = turn(&mut writer, 2);
    let longer = [&before[..], b"a line of another program\n"].concat();
    let change = |length: usize| write_over(&path, &longer[..length]);
    for length in [0, before.len() - 1, before.len() + 26] {
        change(length);
        let error = file.append(&line).expect_err("changed");
        assert!(
            store_error(&error).what.contains("another program changed it"),
            "{error}"
        );
        assert_eq!(bytes_of(&path).len(), length, "left as it was found");
    }
    change(before.len());
    file.append(&line).expect("put back as it was");
    assert_eq!(bytes_of(&path), [&before[..], line.as_bytes()].concat());
    assert!(file.cut_to(1 << 20).is_err(), "a file is not made longer with nothing");
}

/// A file larger than a journal can be is not taken in.
#[test]
fn a_journal_is_read_within_limits() {
    let folder = Folder::new("limits");
    let path = folder.file("a.jsonl");
    drop(begun(&path, 5));
    let length = bytes_of(&path).len();
    assert!(
        matches!(JournalFile::open(&path, length - 1), Err(StoreError::TooLarge { .. })),
        "one byte too many"
    );
    assert!(JournalFile::open(&path, length).is_ok(), "just as many");
}

/// Lines on standard input are taken within a limit: of what never ends no more is held than that.
#[test]
fn lines_are_read_within_a_limit() {
    let read = |bytes: &[u8]| -> Vec<Result<String, AtFault>> {
        text_file::lines_within(bytes, 5)
            .map(|line| line.map_err(|failure| failure.fault))
            .collect()
    };
    let good = |lines: &[&str]| -> Vec<Result<String, AtFault>> { lines.iter().map(|l| Ok((*l).to_owned())).collect() };
    assert_eq!(read(b""), good(&[]));
    assert_eq!(read(b"\n\r\n"), good(&["", ""]));
    assert_eq!(
        read(b"12345\n12345\r\nab\rcd\n12345"),
        good(&["12345", "12345", "ab\rcd", "12345"])
    );
    for long in [
        &b"ok\n123456\nok\n"[..],
        b"ok\n1234567890",
        b"ok\n12345\r",
        b"ok\n\xff\n",
    ] {
        assert_eq!(
            read(long),
            [good(&["ok"]), vec![Err(AtFault::Input)]].concat(),
            "the first failure is the last: {:?}",
            String::from_utf8_lossy(long)
        );
    }
    let mut endless = std::io::repeat(b'x').take(1 << 30);
    let found: Vec<_> = text_file::lines_within(BufReader::new(&mut endless), LONGEST_LINE).collect();
    assert!(
        matches!(&found[..], [Err(failure)] if failure.text.contains("too long")),
        "{found:?}"
    );
    // What the buffer took beyond the line is at most its own size.
    let taken = (1 << 30) - endless.limit();
    assert!(taken < 2 * LONGEST_LINE as u64, "{taken} bytes taken");
}

/// A line that goes on and on is refused by its number long before it ends, and what was answered before is kept.
#[test]
fn an_operation_of_any_length_is_refused() {
    let folder = Folder::new("long");
    let path = folder.file("a.jsonl");
    let mut child = attempt(&path).spawn().expect("it runs");
    let text = operations(1) + "{\"do\":\"note\",\"remark\":\"" + &"m".repeat(64 << 20);
    let feeding = feed(&mut child, text);
    let output = child.wait_with_output().expect("it ends");
    assert!(!feeding.join().expect("fed"), "it did not take all 64 MiB");
    let said = String::from_utf8(output.stderr).expect("text");
    assert_eq!(output.status.code(), Some(2), "{said}");
    assert!(said.starts_with("line 2: error: this line is too long"), "{said}");
    assert_eq!(journal::read(&bytes_of(&path)).expect("whole").entries.len(), 1);
    // The same of a file, and the longest that is taken.
    let line = operations(1);
    let line = line.trim_end();
    let padded = line.replacen('{', &format!("{{{}", " ".repeat(LONGEST_LINE - line.len())), 1);
    let file = folder.file("operations.jsonl");
    for (more, code) in [("", 0), (" ", 2)] {
        let text = padded.replacen('{', &format!("{{{more}"), 1);
        write_whole(&file, format!("{text}\n").as_bytes()).expect("written");
        let run = super::program::run(&[
            "attempt",
            "oat-barn-tractor",
            "--operations",
            file.to_str().expect("a plain name"),
            "--json",
        ]);
        assert_eq!(run.code, code, "{} bytes: {}", text.len(), run.err);
        assert_eq!(run.err.contains("line 1: error: this line is too long"), code == 2);
    }
}

/// A journal filled up with long remarks takes nothing but the end, and is whole and sealed after it.
#[test]
fn a_full_journal_takes_only_the_end() {
    let folder = Folder::new("filled");
    let path = folder.file("a.jsonl");
    let (mut writer, mut text) = journals::begin();
    let remark = json!("m".repeat(200_000));
    while !writer.is_full() {
        text.push_str(&writer.entry(&remark, &json!(0)).expect("room"));
    }
    let mut journal = Journal::new(JournalFile::create(&path, &text).expect("made"), writer);
    let turn = Operation::from_json(operations(1).trim_end()).expect("an operation");
    for refused in [journal.takes(&turn), journal.keep(turn, &json!({}), None)] {
        let failure = refused.expect_err("full");
        assert!(
            failure.text.contains("as large as it can be") && failure.text.contains("`finish`"),
            "{failure}"
        );
    }
    let finish = || Operation::Finish {};
    let done = json!({"done": true});
    journal.takes(&finish()).expect("the end");
    // A score without end is refused, and leaves room for a shorter one.
    let endless = json!("m".repeat(300_000));
    journal.keep(finish(), &done, Some(&endless)).expect_err("too long");
    assert!(journal.kept().is_empty(), "nothing was kept");
    assert_eq!(bytes_of(&path), text.as_bytes(), "nothing was written");
    journal.keep(finish(), &done, Some(&json!(50))).expect("the end");
    assert_eq!(journal.kept(), [finish()]);
    let failure = journal.takes(&finish()).expect_err("sealed");
    assert!(failure.text.contains("signed off"), "{failure}");
    let found = journal::read(&bytes_of(&path)).expect("whole");
    assert_eq!((found.sealed, found.torn), (Some(json!(50)), None));
}
