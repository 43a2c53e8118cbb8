//! Journals: cut anywhere, any bit flipped, lines taken out or exchanged, any bytes at all.

use lashwright::exercise::journal::{JournalError, ReadJournal, read};
use lashwright::numerics::random::Stream;
use lashwright::words;
use proptest::prelude::*;
use serde_json::{Value, json};

use super::journals::{self, SEED, TEXTS, begin};

fn entries() -> Vec<(Value, Value)> {
    vec![
        (
            json!({"do": "turn", "what": "pinion", "turns": 10.0}),
            json!({"operation": 1, "done": true, "minutes": 1.0}),
        ),
        (
            json!({"do": "note", "remark": "a \"quoted\" word,\n\"hash\":\"0\"}", "value": 0.12}),
            json!({"operation": 2, "done": true, "noticed": ["Größe \u{2028} läuft"]}),
        ),
        (json!({"do": "finish"}), json!({"operation": 3, "done": true})),
    ]
}

/// A short journal and where each of its lines ends.
fn journal(sealed: bool) -> (Vec<u8>, Vec<usize>) {
    let (mut writer, mut text) = begin();
    let mut ends = vec![text.len()];
    for (operation, answer) in entries() {
        text.push_str(&writer.entry(&operation, &answer).expect("room"));
        ends.push(text.len());
    }
    if sealed {
        text.push_str(&writer.seal(&json!({"total": 88.5})).expect("room"));
        ends.push(text.len());
    }
    (text.into_bytes(), ends)
}

#[test]
fn what_was_written_is_read() {
    for sealed in [false, true] {
        let (bytes, _) = journal(sealed);
        let found = read(&bytes).expect("whole");
        assert_eq!(found.header.seed, SEED);
        assert!(found.same_physics() && found.same_texts(TEXTS), "written here and now");
        assert!(!found.same_texts(["scenario", "gears", "other"]), "for other parts");
        let written: Vec<(Value, Value)> = found
            .entries
            .iter()
            .map(|e| (e.operation.clone(), e.answer.clone()))
            .collect();
        assert_eq!(written, entries());
        assert_eq!(found.sealed.is_some(), sealed);
        assert!(
            found.torn.is_none() && found.whole_bytes == bytes.len(),
            "nothing was dropped"
        );
        assert_eq!(found.go_on().is_none(), sealed, "a sealed journal is finished");
        let again = journals::written(&found.header, &found.entries, found.sealed.as_ref());
        assert_eq!(again.as_bytes(), bytes, "written again, the same bytes");
    }
}

#[test]
fn a_journal_goes_on_where_it_ended() {
    let (bytes, ends) = journal(false);
    let half = read(&bytes[..ends[1]]).expect("whole lines");
    let mut writer = half.go_on().expect("not sealed");
    let mut text = bytes[..ends[1]].to_vec();
    for (operation, answer) in &entries()[1..] {
        text.extend(writer.entry(operation, answer).expect("room").bytes());
    }
    assert_eq!(text, bytes, "the same lines as if it had never ended");
    let sealed = journal(true).0;
    text.extend(writer.seal(&json!({"total": 88.5})).expect("room").bytes());
    assert_eq!(text, sealed, "and the same seal");
}

/// Cut at every byte: what loads is a row of whole operations, and what was dropped is said.
#[test]
fn cut_at_every_byte_it_loads_to_the_last_whole_operation_or_names_the_damage() {
    for sealed in [false, true] {
        let (bytes, ends) = journal(sealed);
        for cut in 0..bytes.len() {
            let whole = ends.iter().filter(|end| **end <= cut).count();
            match read(&bytes[..cut]) {
                Ok(found) => {
                    assert!(whole >= 1, "cut at {cut}: a header that is not whole was read");
                    assert_eq!(found.entries.len(), (whole - 1).min(3), "cut at {cut}");
                    assert_eq!(found.whole_bytes, ends[whole - 1], "cut at {cut}");
                    assert_eq!(
                        found.torn.is_some(),
                        cut > ends[whole - 1],
                        "cut at {cut}: said, and only if so"
                    );
                    assert!(found.sealed.is_none(), "cut at {cut}: the seal is gone");
                }
                Err(error) => {
                    assert!(whole == 0, "cut at {cut}: {error}");
                    assert!(!words::error::journal(&error).what.is_empty(), "says what it is");
                }
            }
        }
    }
}

/// Whether a journal that was read says that something is wrong with it.
fn noticed(found: &Result<ReadJournal, JournalError>) -> bool {
    found.as_ref().map_or(true, |read| read.torn.is_some())
}

#[test]
fn every_flipped_bit_is_noticed() {
    for sealed in [false, true] {
        let (bytes, _) = journal(sealed);
        let mut flipped = bytes.clone();
        for place in 0..bytes.len() {
            for bit in 0..8 {
                flipped[place] ^= 1 << bit;
                let found = read(&flipped);
                assert!(
                    noticed(&found),
                    "byte {place}, bit {bit} of {:?}",
                    String::from_utf8_lossy(&bytes[place.saturating_sub(10)..(place + 10).min(bytes.len())])
                );
                flipped[place] ^= 1 << bit;
            }
        }
        assert_eq!(flipped, bytes, "all put back");
    }
}

#[test]
fn lines_taken_out_doubled_or_exchanged_are_noticed() {
    let (bytes, ends) = journal(true);
    let starts: Vec<usize> = std::iter::once(0).chain(ends.iter().copied()).collect();
    let line = |k: usize| &bytes[starts[k]..starts[k + 1]];
    let count = ends.len();
    for k in 0..count - 1 {
        let without: Vec<u8> = (0..count).filter(|i| *i != k).flat_map(line).copied().collect();
        assert!(noticed(&read(&without)), "without line {}", k + 1);
        let doubled: Vec<u8> = (0..count)
            .flat_map(|i| line(i).repeat(1 + usize::from(i == k)))
            .collect();
        assert!(noticed(&read(&doubled)), "line {} twice", k + 1);
        let exchanged: Vec<u8> = (0..count)
            .flat_map(|i| {
                line(if i == k {
                    k + 1
                } else if i == k + 1 {
                    k
                } else {
                    i
                })
            })
            .copied()
            .collect();
        assert!(noticed(&read(&exchanged)), "lines {} and {} exchanged", k + 1, k + 2);
    }
    let twice = [&bytes[..], line(1)].concat();
    assert!(
        matches!(read(&twice), Err(JournalError::Damaged { line: 6, .. })),
        "a line after the seal: {:?}",
        read(&twice).map(|r| r.entries.len())
    );
}

#[test]
fn newer_journals_and_other_files_are_refused_by_name() {
    let (bytes, _) = journal(false);
    let text = String::from_utf8(bytes).expect("text");
    // A newer version with a good hash of its own.
    let first = text.lines().next().expect("a line");
    let body = first
        .split(",\"hash\"")
        .next()
        .expect("a body")
        .replace("journal/2", "journal/9");
    let hash = blake3::hash(body.as_bytes()).to_hex();
    let newer = format!("{body},\"hash\":\"{hash}\"}}\n");
    let error = read(newer.as_bytes()).expect_err("newer");
    assert!(
        words::error::journal(&error).what.contains("lashwright-journal/9"),
        "{error}"
    );
    for other in ["", "\n", "hello\n", "{}\n", "{\"format\":\"lashwright-gears/1\"}\n"] {
        assert_eq!(
            read(other.as_bytes()).expect_err("no journal"),
            JournalError::NotAJournal,
            "{other:?}"
        );
    }
    let huge = vec![b' '; 16 * 1024 * 1024 + 1];
    assert!(matches!(read(&huge), Err(JournalError::TooLarge { .. })), "too large");
}

/// 20,000 damaged journals: never a panic, never more operations than were written.
#[test]
fn damaged_journals_never_panic() {
    let mut stream = Stream::new(20_260_103, "damaged journals");
    let good = journal(true).0;
    let mut whole = 0;
    for _ in 0..20_000 {
        let mut bytes = good.clone();
        for _ in 0..=stream.index(4) {
            let length = u64::try_from(bytes.len()).expect("small");
            let at = usize::try_from(stream.index(length + 1)).expect("small");
            let count = usize::try_from(stream.index(60)).expect("small").min(bytes.len() - at);
            match stream.index(4) {
                0 => drop(bytes.drain(at..at + count)),
                1 => {
                    let copy = bytes[at..at + count].to_vec();
                    bytes.splice(at..at, copy);
                }
                2 => drop(bytes.splice(at..at + count, *b"\"}\n{\"before\":\"")),
                _ => bytes
                    .iter_mut()
                    .skip(at)
                    .take(1)
                    .for_each(|b| *b ^= 1 << stream.index(8)),
            }
        }
        if let Ok(found) = read(&bytes) {
            assert!(found.entries.len() <= 3, "more than was written");
            whole += usize::from(found.torn.is_none() && bytes != good && found.sealed.is_some());
        }
    }
    assert_eq!(whole, 0, "a damaged journal that looks whole");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2_000, ..ProptestConfig::default() })]

    #[test]
    fn any_bytes(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
        prop_assert!(read(&bytes).is_err());
    }
}
