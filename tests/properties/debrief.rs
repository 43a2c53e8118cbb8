//! The debrief: it can be told of every finished attempt, its numbers are numbers, it agrees with the score, and what was
//! believed never comes to stand where the truth stands.

use std::sync::Arc;

use lashwright::bench::Operation;
use lashwright::exercise::debrief::{Measure, Place, Section, Subject};
use lashwright::exercise::technician::{Policy, play};
use lashwright::exercise::{Attempt, Debrief, ExerciseError};
use lashwright::job::{debrief, scenarios};
use lashwright::words;

use super::begun::{begin, exercise};

/// A number that nobody measures.
const NOBODY_READS: f64 = 7.654_321;

fn debrief_of(attempt: &Attempt) -> Debrief {
    Debrief::of(attempt).expect("a finished attempt")
}

fn told(debrief: &Debrief) -> String {
    // The gears are left out: their tables are long, and no part of what is told.
    let Debrief {
        score,
        par,
        used,
        outcome,
        sections,
        standings,
        beliefs,
        packs,
        marks,
        plates,
        hidden,
        designed: _,
        approval,
        builds,
        lines,
        reference,
    } = debrief;
    format!(
        "{score:?} {par:?} {used:?} {outcome:?} {sections:?} {standings:?} {beliefs:?} {packs:?} {marks:?} {plates:?} {hidden:?} \
         {approval:?} {builds:?} {lines:?} {reference:?}"
    )
}

/// Whether a number in a debug text is none.
fn has_no_number(text: &str) -> bool {
    text.contains("NaN") || text.split(|c: char| !c.is_alphanumeric()).any(|word| word == "inf")
}

fn agrees(name: &str, attempt: &Attempt, by_rules: bool) {
    let debrief = debrief_of(attempt);
    assert!(!has_no_number(&told(&debrief)), "{name}: all numbers are finite");
    let page = debrief::page(attempt, name, None).expect("a page");
    assert!(!page.contains("NaN"), "{name}: also on the page");
    for loss in &debrief.score.losses {
        let why = words::score::loss(&loss.reason);
        let start: String = why.chars().take_while(|c| !"<>&'\"".contains(*c)).collect();
        assert!(page.contains(&start), "{name}: {start}");
    }
    // Each operation is told, once.
    assert_eq!(debrief.lines.len(), attempt.steps().len(), "{name}");
    let tear_downs = debrief.lines.iter().filter(|l| l.tear_down).count();
    assert_eq!(u32::try_from(tear_downs), Ok(debrief.used.teardowns), "{name}");
    let minutes: f64 = debrief.lines.iter().map(|l| l.answer.minutes).sum();
    assert!((minutes - debrief.used.minutes).abs() < 1e-6, "{name}: {minutes}");
    // What was handed over is the last build, and worth what the attempt is.
    if debrief.has(Section::Builds) {
        let last = debrief.builds.last().expect("something was handed over");
        assert!(last.handed_over, "{name}");
        let what_if = last.what_if.as_ref().expect("worked out");
        assert_eq!(what_if.score, debrief.score, "{name}: the same work, the same points");
        assert_eq!(last.truth, debrief.outcome, "{name}: the same axle");
    }
    for (build, number) in debrief.builds.iter().zip(1..) {
        assert_eq!(build.number, number, "{name}");
        let what_if = build.what_if.as_ref().expect("worked out");
        assert!((0.0..=100.0).contains(&what_if.score.total), "{name} {number}");
    }
    // Bands and points say the same.
    let scenario = attempt.exercise().scenario();
    if attempt.bench().judgements().is_empty() && scenario.plates.is_none() {
        let all_full = debrief.standings.iter().all(|s| s.place() == Place::Full);
        let full_points = debrief.score.outcome >= scenario.weights.outcome - 1e-9;
        if full_points || by_rules {
            assert_eq!(
                all_full, full_points,
                "{name}: {} points of the outcome, {:?}",
                debrief.score.outcome, debrief.standings
            );
        }
    }
}

#[test]
fn every_exercise_can_be_told() {
    for found in scenarios::embedded().expect("embedded exercises are good") {
        let exercise = Arc::new(found.exercise);
        for (policy, seed) in [(Policy::Reference, 1), (Policy::Random, 2)] {
            let attempt = play(&exercise, seed, policy).expect("a seed that can be played");
            let name = format!("{} {seed} {}", found.source, policy.name());
            agrees(&name, &attempt, policy == Policy::Reference);
        }
    }
}

#[test]
fn work_by_a_wrong_rule_can_be_told() {
    let exercise = exercise("oat-barn-tractor");
    for seed in 1..=2 {
        let attempt = play(&exercise, seed, Policy::Reversed).expect("a seed that can be played");
        agrees(&format!("reversed {seed}"), &attempt, true);
    }
}

#[test]
fn nothing_is_told_before_the_axle_is_handed_over() {
    let exercise = exercise("oat-barn-tractor");
    let mut attempt = begin(&exercise, 1);
    assert_eq!(Debrief::of(&attempt).err(), Some(ExerciseError::NotFinished), "at once");
    let failure = debrief::page(&attempt, "oat-barn-tractor", None).expect_err("no page");
    assert!(failure.text.contains("not signed off yet"), "{}", failure.text);
    attempt.apply(&Operation::Finish {});
    assert!(Debrief::of(&attempt).is_ok(), "handed over");
}

/// The same work with other values written down: everything that is true stays, bit for bit.
#[test]
fn what_was_believed_never_stands_for_the_truth() {
    for name in ["oat-barn-tractor", "what-the-dial-says", "feed-lorry-cartridge"] {
        let exercise = exercise(name);
        let played = play(&exercise, 2, Policy::Reference).expect("a seed that can be played");
        let mut other = begin(&exercise, 2);
        let mut notes = 0;
        for step in played.steps() {
            let mut operation = step.operation.clone();
            if let Operation::Note { value, .. } = &mut operation {
                *value = NOBODY_READS;
                notes += 1;
            }
            other.apply(&operation);
        }
        assert!(notes > 0, "{name}: something was written down");
        let (one, two) = (debrief_of(&played), debrief_of(&other));
        assert_eq!(one.outcome, two.outcome, "{name}");
        assert_eq!(one.hidden, two.hidden, "{name}");
        assert_eq!((&one.packs, one.marks), (&two.packs, two.marks), "{name}");
        assert_eq!(one.beliefs.len(), two.beliefs.len(), "{name}");
        for (a, b) in one.beliefs.iter().zip(&two.beliefs) {
            assert_eq!((a.subject, &a.read), (b.subject, &b.read), "{name}");
            assert_eq!((a.truth, a.truth_then), (b.truth, b.truth_then), "{name}");
            if let Some(note) = &b.noted {
                assert_eq!(note.value.to_bits(), NOBODY_READS.to_bits(), "{name}: told as written");
            }
            assert_ne!(b.truth, Some(NOBODY_READS), "{name}: {:?}", b.subject);
        }
        assert!(
            two.beliefs.iter().any(|b| b.noted.is_some()),
            "{name}: notes stand among the beliefs"
        );
        for (a, b) in one.standings.iter().zip(&two.standings) {
            assert_eq!((a.truth, a.read), (b.truth, b.read), "{name}: {:?}", a.what);
        }
        for (a, b) in one.builds.iter().zip(&two.builds) {
            assert_eq!((&a.truth, a.saw), (&b.truth, b.saw), "{name}");
        }
    }
}

/// A reading differs from what was true in that moment by what the instrument is off, and by no more.
#[test]
fn readings_stand_beside_what_was_true_when_they_were_taken() {
    let exercise = exercise("dairy-van-light-axle");
    let played = play(&exercise, 1, Policy::Reference).expect("a seed that can be played");
    let debrief = debrief_of(&played);
    let mut compared = 0;
    for belief in &debrief.beliefs {
        let Some(off) = belief.reading_off() else { continue };
        // The lever dial of the bench is good to hundredths; lash also varies along a pitch.
        let most = match belief.subject {
            Subject::PinionTorque | Subject::TotalTorque => 0.3,
            Subject::Of(_) if belief.measure() == Measure::Length => 0.03,
            Subject::Of(_) => continue,
        };
        assert!(off.abs() < most, "{belief:?}");
        compared += 1;
    }
    assert!(compared >= 5, "{compared} readings");
}

/// Headings of what only an axle that is set up has.
const OF_A_SET_UP: [&str; 6] = [
    "How the axle really stands",
    "Shim packs",
    "Numbers and mark on the gears",
    "How the parts were made",
    "build by build",
    "Patterns in a row",
];

/// An exercise that is there to be read tells only of what was asked and read. Its reference plays the same axle.
#[test]
fn a_measuring_exercise_tells_of_what_was_measured() {
    let whole = play(&exercise("oat-barn-tractor"), 3, Policy::Reference).expect("a seed that can be played");
    let page = debrief::page(&whole, "oat-barn-tractor", None).expect("a page");
    let headings = |page: &str| -> Vec<String> {
        let parts = page.split("<h").skip(1);
        parts
            .filter_map(|part| Some(part.split_once('>')?.1.split("</h").next()?.to_owned()))
            .collect()
    };
    let all = headings(&page);
    println!("{all:?}");
    assert_eq!(
        debrief_of(&whole).sections,
        Section::ALL,
        "an axle that is set up has all"
    );
    for heading in OF_A_SET_UP {
        assert!(
            all.iter().any(|h| h.contains(heading)),
            "{heading} is no heading any more"
        );
    }
    let packs = vec![Section::Packs];
    for (name, sections) in [
        ("what-the-dial-says", Vec::new()),
        ("feel-then-read", Vec::new()),
        ("twelve-prints", Vec::new()),
        ("shim-drawer", packs),
    ] {
        let exercise = exercise(name);
        for (seed, policy) in [(3, Policy::Reference), (4, Policy::Reference)] {
            let attempt = play(&exercise, seed, policy).expect("a seed that can be played");
            let debrief = debrief_of(&attempt);
            let told = headings(&debrief::page(&attempt, name, None).expect("a page"));
            let compared = attempt
                .steps()
                .iter()
                .any(|s| s.answer.done && s.operation == Operation::CompareNumbers {});
            let mut wanted = sections.clone();
            if compared {
                wanted.push(Section::Marks);
            }
            assert_eq!(debrief.sections, wanted, "{name}: {told:?}");
            assert!(
                debrief.builds.is_empty() && debrief.reference.builds.is_empty(),
                "{name}"
            );
            assert_eq!(debrief.packs.is_empty(), !wanted.contains(&Section::Packs), "{name}");
            for heading in OF_A_SET_UP {
                let has = told.iter().any(|h| h.contains(heading));
                let may = heading == "Shim packs" && wanted.contains(&Section::Packs)
                    || heading.starts_with("Numbers") && compared;
                assert_eq!(has, may, "{name}: {heading} in {told:?}");
            }
            assert!(
                told.iter().any(|h| h.contains("operation by operation")),
                "{name}: {told:?}"
            );
            // The same axle: what the reference reads is what its own attempt at this seed reads, and at no other.
            let answers: Vec<_> = debrief.reference.lines.iter().map(|l| &l.answer).collect();
            let at = |seed| play(&exercise, seed, Policy::Reference).expect("a seed that can be played");
            let same = at(attempt.seed());
            let other = at(attempt.seed() + 10);
            assert!(
                answers.iter().copied().eq(same.steps().iter().map(|s| &s.answer)),
                "{name} {seed}"
            );
            assert!(
                !answers.iter().copied().eq(other.steps().iter().map(|s| &s.answer)),
                "{name} {seed}"
            );
            assert_eq!(attempt.bench().truth(), same.bench().truth(), "{name} {seed}");
        }
    }
}
