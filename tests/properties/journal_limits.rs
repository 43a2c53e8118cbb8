//! Journals at their limits: other versions, lines and files too long, any values, any mixture of lines.

use std::time::{Duration, Instant};

use lashwright::exercise::journal::{Damage, Full, JournalError, LIMITS, ReadJournal, read};
use lashwright::job::attempt::{OpenAttempt, operation_of};
use lashwright::words;
use proptest::prelude::*;
use serde_json::{Value, json};

use super::journals::begin;

/// A newer version is refused by its name whatever its lines look like; one that has never been is no newer one; a version
/// that was ours and lost a bit is damage.
#[test]
fn other_versions_are_refused_by_name() {
    let said = |version: &str| {
        read(format!("{{\"format\":\"lashwright-journal/{version}\",\"kept\":\"otherwise\"}}\n").as_bytes())
            .expect_err("not ours")
    };
    for version in ["3", "9", "10", "184467440737095516160"] {
        let error = said(version);
        let told = words::error::journal(&error).line();
        assert!(matches!(error, JournalError::Newer { .. }), "{version}: {error}");
        assert!(
            told.contains(&format!("lashwright-journal/{version}`")) && told.contains("newer"),
            "{told}"
        );
    }
    for version in ["0", "", "01", "-1", "x", "1.5", "1 "] {
        let error = said(version);
        assert!(
            matches!(error, JournalError::NoSuchVersion { .. }),
            "{version}: {error}"
        );
    }
    let (_, first) = begin();
    for other in ["0", "3", "6", "9", "r"] {
        let flipped = first.replacen("journal/2", &format!("journal/{other}"), 1);
        assert!(
            matches!(read(flipped.as_bytes()), Err(JournalError::Damaged { line: 1, .. })),
            "{other}"
        );
    }
}

/// A newer version whose first line is no text, no JSON or of any length is refused by its name as well; one that goes on
/// like ours, with something put in, is damage of ours.
#[test]
fn other_versions_are_named_even_where_nothing_else_can_be_read() {
    let begins = |version: &str| format!("{{\"format\":\"lashwright-journal/{version}\"").into_bytes();
    let brackets = vec![b'['; 1 << 20];
    let ends: [&[u8]; 4] = [b" and so on\n", b",\"\xff\xfe\"}\n", &brackets, b", not at its end"];
    for end in ends {
        let end = if end.len() > 1000 {
            [end, b"\n"].concat()
        } else {
            end.to_vec()
        };
        let said = |version| read(&[begins(version), end.clone()].concat()).expect_err("not ours");
        assert!(
            matches!(said("3"), JournalError::Newer { ref format } if format == "lashwright-journal/3"),
            "{}",
            said("2")
        );
        assert!(matches!(said("0"), JournalError::NoSuchVersion { .. }), "{}", said("0"));
        assert!(
            matches!(said("1"), JournalError::Damaged { line: 1, .. }),
            "{}",
            said("1")
        );
    }
    // A name that goes on for ever is said back in part.
    let error = read(&[begins(&"9".repeat(300_000)), b"}\n".to_vec()].concat()).expect_err("newer");
    assert!(
        matches!(error, JournalError::Newer { .. }) && words::error::journal(&error).line().len() < 300,
        "{error}"
    );
}

/// Ends a body with its hash, whatever its length.
fn hashed(body: &str) -> String {
    let hash = blake3::hash(body.as_bytes()).to_hex();
    format!("{body},\"hash\":\"{hash}\"}}\n")
}

/// Lines beyond any length are named before anything is made of them, and never written.
#[test]
fn lines_too_long_are_named() {
    let long = "[".repeat(1 << 20);
    let first = format!("{{\"format\":\"lashwright-journal/2\",\"scenario\":{long}\n");
    assert!(
        matches!(
            read(first.as_bytes()),
            Err(JournalError::Damaged {
                line: 1,
                what: Damage::TooLong
            })
        ),
        "the first"
    );
    assert_eq!(
        read(format!("{long}\n").as_bytes()).expect_err("no journal"),
        JournalError::NotAJournal
    );
    let (mut writer, text) = begin();
    let before = text
        .split("\"hash\":\"")
        .nth(1)
        .and_then(|rest| rest.get(..64))
        .expect("a hash");
    let remark = "m".repeat(300_000);
    let line = hashed(&format!(
        "{{\"before\":\"{before}\",\"operation\":\"{remark}\",\"answer\":0"
    ));
    assert!(
        matches!(
            read((text.clone() + &line).as_bytes()),
            Err(JournalError::Damaged {
                line: 2,
                what: Damage::TooLong
            })
        ),
        "the second"
    );
    assert_eq!(writer.entry(&json!(remark), &json!(0)), Err(Full), "an operation");
    assert_eq!(writer.clone().seal(&json!(remark)), Err(Full), "a score");
    // The chain is where it was.
    let next = writer.entry(&json!("short"), &json!(0)).expect("room");
    let end = writer.seal(&json!(1)).expect("room");
    assert_eq!(read((text + &next + &end).as_bytes()).expect("read").entries.len(), 1);
}

/// The longest line that is written can be read: at the limit nothing is lost between writer and reader.
#[test]
fn the_longest_line_can_be_read() {
    let with = |length: usize| {
        let (mut writer, text) = begin();
        writer
            .entry(&json!("m".repeat(length)), &json!(0))
            .map(|line| (line.len(), text + &line))
    };
    let (mut fits, mut fits_not) = (1, 1 << 20);
    while fits_not - fits > 1 {
        let middle = usize::midpoint(fits, fits_not);
        if with(middle).is_ok() {
            fits = middle;
        } else {
            fits_not = middle;
        }
    }
    let (length, text) = with(fits).expect("it fits");
    println!("longest line: {length} bytes");
    assert!(length > 250_000, "{length}");
    assert_eq!(read(text.as_bytes()).expect("read").entries.len(), 1);
}

/// Whatever a writer gives can be read, until it gives nothing more: the end of the attempt fits even then. One that goes on
/// from what was read is as full.
#[test]
fn what_is_written_until_full_can_be_read() {
    let (mut writer, mut text) = begin();
    // Near the longest line, so that the room kept free is really needed.
    let operation = json!({"do": "note", "remark": "m".repeat(250_000)});
    let answer = json!({"done": true});
    let mut count = 0;
    while !writer.is_full() {
        text.push_str(&writer.entry(&operation, &answer).expect("room"));
        count += 1;
    }
    let going_on = read(text.as_bytes()).expect("read").go_on().expect("not sealed");
    assert!(going_on.is_full(), "as full as the one that wrote it");
    let (mut handed_over, mut end) = (writer.clone(), text.clone());
    end.push_str(&handed_over.entry(&operation, &answer).expect("room for the end"));
    end.push_str(&handed_over.seal(&operation).expect("room for the seal"));
    println!("{count} lines, then the end: {} bytes", end.len());
    let found = read(end.as_bytes()).expect("read");
    assert_eq!(found.entries.len(), count + 1);
    assert!(found.sealed.is_some(), "sealed");
    // A caller that does not ask gets no line that could not be read, and can still seal.
    let full = loop {
        match writer.entry(&operation, &answer) {
            Ok(line) => text.push_str(&line),
            Err(full) => break full,
        }
        assert!(text.len() <= LIMITS.bytes, "{} bytes", text.len());
    };
    let said = words::error::journal_full();
    assert!(said.contains("as large as it can be"), "{full}: {said}");
    text.push_str(&writer.seal(&operation).expect("room for the seal"));
    let found = read(text.as_bytes()).expect("read");
    assert!(found.sealed.is_some(), "sealed");
    assert!(
        (LIMITS.bytes - 600_000..=LIMITS.bytes).contains(&text.len()),
        "full means full: {}",
        text.len()
    );
}

/// What a session adds to an operation does not grow with what was done before. It is seen on operations after the end, which
/// the bench refuses at once: all that is left is the session's own work, and a copy of thousands of answers and records
/// would be a hundred times that.
#[test]
#[expect(clippy::disallowed_methods, reason = "a test that measures time")]
fn a_long_attempt_is_no_slower_to_a_session() {
    let ended = |operations: u32| {
        let mut session = OpenAttempt::begin("oat-barn-tractor", 5, None).expect("begun");
        for _ in 0..operations {
            let answer =
                session.apply(operation_of(r#"{"do":"turn","what":"pinion","turns":1}"#).expect("an operation"));
            assert!(answer.expect("an operation").done, "it turns");
        }
        assert!(
            session
                .apply(operation_of(r#"{"do":"finish"}"#).expect("an operation"))
                .expect("an operation")
                .done,
            "the end"
        );
        session
    };
    let [mut short, mut long] = [ended(1), ended(3000)];
    let time = |session: &mut OpenAttempt| {
        let start = Instant::now();
        for _ in 0..20 {
            let answer = session
                .apply(operation_of(r#"{"do":"finish"}"#).expect("an operation"))
                .expect("an operation");
            assert!(!answer.done, "it has been handed over");
        }
        start.elapsed()
    };
    // The best of many, taken in turns: what else the machine does falls on both.
    let mut best = [Duration::MAX; 2];
    for _ in 0..20 {
        best = [best[0].min(time(&mut short)), best[1].min(time(&mut long))];
    }
    println!("20 operations take {:?} after 2 and {:?} after 3001", best[0], best[1]);
    assert!(best[1] < 10 * best[0], "{best:?}");
}

fn value() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<u64>().prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        any::<f64>()
            .prop_filter("JSON has no other", |x| x.is_finite())
            .prop_map(Value::from),
        any::<String>().prop_map(Value::from),
    ];
    leaf.prop_recursive(4, 40, 5, |inner| {
        prop_oneof![
            proptest::collection::vec(inner.clone(), 0..5).prop_map(Value::from),
            proptest::collection::btree_map(any::<String>(), inner, 0..5)
                .prop_map(|map| Value::Object(map.into_iter().collect())),
        ]
    })
}

/// Numbers by their bits, everything else by what it is.
fn same(a: &Value, b: &Value) -> bool {
    match (a, b) {
        (Value::Number(x), Value::Number(y)) => {
            x == y && x.as_f64().map(f64::to_bits) == y.as_f64().map(f64::to_bits) && x.is_f64() == y.is_f64()
        }
        (Value::Array(x), Value::Array(y)) => x.len() == y.len() && x.iter().zip(y).all(|(x, y)| same(x, y)),
        (Value::Object(x), Value::Object(y)) => {
            x.len() == y.len() && x.iter().zip(y).all(|((k, x), (l, y))| k == l && same(x, y))
        }
        _ => a == b,
    }
}

fn written(count: u32) -> Vec<(Value, Value)> {
    (0..count)
        .map(|k| {
            (
                json!({"do": "turn", "turns": k}),
                json!({"operation": k + 1, "reading": 0.1 * f64::from(k)}),
            )
        })
        .collect()
}

fn lines(entries: &[(Value, Value)], sealed: bool) -> Vec<String> {
    let (mut writer, first) = begin();
    let mut lines = vec![first];
    lines.extend(
        entries
            .iter()
            .map(|(operation, answer)| writer.entry(operation, answer).expect("room")),
    );
    if sealed {
        lines.push(writer.seal(&Value::Null).expect("room"));
    }
    lines
}

/// Whether what was read are the first of what was written.
fn begins(found: &ReadJournal, entries: &[(Value, Value)]) -> bool {
    found.entries.len() <= entries.len()
        && found
            .entries
            .iter()
            .zip(entries)
            .all(|(found, (operation, answer))| same(&found.operation, operation) && same(&found.answer, answer))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2_000, ..ProptestConfig::default() })]

    /// Any values come back as they went in, numbers bit for bit.
    #[test]
    fn any_values_come_back(operation in value(), answer in value()) {
        let entries = [(operation, answer)];
        let text = lines(&entries, true).concat();
        prop_assert_eq!(text.matches('\n').count(), 3);
        let found = read(text.as_bytes()).expect("read");
        prop_assert!(found.torn.is_none() && found.sealed.is_some());
        prop_assert!(found.entries.len() == 1 && begins(&found, &entries));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 20_000, ..ProptestConfig::default() })]

    /// Lines of two journals in any order, some cut, some with bytes put in: what loads are the first operations of one that
    /// was written, never others.
    #[test]
    fn any_mixture_loads_to_a_beginning_of_what_was_written(
        picks in proptest::collection::vec((any::<bool>(), 0_usize..6, any::<u16>(), 0_u8..8, any::<u8>()), 1..9),
        straight in 0_usize..5,
    ) {
        let entries = [written(4), vec![(json!({"do": "finish"}), json!({"done": true})); 4]];
        let journals = [lines(&entries[0], true), lines(&entries[1], true)];
        // Some lines as they were written, so that the others are met inside the chain too.
        let mut bytes: Vec<u8> = journals[0].iter().take(straight).flat_map(|line| line.bytes()).collect();
        for (which, line, at, how, byte) in picks {
            let mut piece = journals[usize::from(which)][line].clone().into_bytes();
            let at = usize::from(at) % piece.len();
            match how {
                0 => piece.truncate(at),
                1 => piece.insert(at, byte),
                2 => piece[at] ^= byte,
                _ => {}
            }
            bytes.extend(piece);
        }
        if let Ok(found) = read(&bytes) {
            prop_assert!(begins(&found, &entries[0]) || begins(&found, &entries[1]));
            prop_assert!(found.whole_bytes <= bytes.len());
            if found.sealed.is_some() {
                prop_assert_eq!(found.entries.len(), 4);
            }
        }
    }

    /// Any bytes, and any bytes after a beginning of ours: no panic, and nothing is made of them.
    #[test]
    fn any_bytes_are_no_journal(bytes in proptest::collection::vec(any::<u8>(), 0..300), kept in 0_usize..3) {
        let entries = written(2);
        let begun: String = lines(&entries, false).into_iter().take(kept).collect();
        let all = [begun.as_bytes(), &bytes].concat();
        if let Ok(found) = read(&all) {
            prop_assert!(kept > 0 && found.entries.len() == kept - 1 && begins(&found, &entries));
            prop_assert_eq!(found.torn.is_some(), !bytes.is_empty());
        }
    }
}
