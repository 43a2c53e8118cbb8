//! The hash of a state, part by part: pairs of attempts that come to differ in one thing only.

use std::sync::Arc;

use lashwright::axle::{Assembly, Member, SpacerFitted, Truth};
use lashwright::bearing::SpacerMemory;
use lashwright::bench::{Bench, BenchSetUp, Operation, OperationKind, StartingState};
use proptest::strategy::{Strategy as _, ValueTree as _};
use proptest::test_runner::TestRunner;

use super::random::{any_of, any_operation};
use super::{SETTINGS, any_bench};

/// What of a state differs; everything else that can be seen from outside must not.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Differs {
    Fitted,
    Pinion,
    Carrier,
    Sheet,
    Kit,
    Account,
    Instruments,
    Truth,
}

fn bare() -> Bench {
    Bench::new(Arc::clone(&SETTINGS[0]), Truth::default(), &StartingState::Bare).expect("a start")
}

fn done(start: &Bench, operations: &[&str]) -> Bench {
    let mut bench = start.clone();
    for json in operations {
        let operation = Operation::from_json(json).unwrap_or_else(|e| panic!("{json}: {e}"));
        let answer = bench.apply(&operation);
        assert!(answer.done, "{json}: {:?}", answer.refused);
    }
    bench
}

/// Two benches that differ in one thing alone have two hashes.
fn has_two_hashes(what: Differs, [one, other]: [&Bench; 2]) {
    let same = [
        (Differs::Fitted, one.assembly() == other.assembly()),
        (Differs::Truth, one.truth() == other.truth()),
        (Differs::Kit, one.packs() == other.packs()),
        (Differs::Account, one.ledger() == other.ledger()),
        (
            Differs::Sheet,
            one.records() == other.records()
                && one.notes() == other.notes()
                && one.predictions() == other.predictions()
                && one.judgements() == other.judgements()
                && one.plates_judged() == other.plates_judged()
                && one.hints() == other.hints(),
        ),
    ];
    for (part, same) in same {
        assert_eq!(same, part != what, "{what:?}: {part:?}");
    }
    assert_ne!(one.state_hash(), other.state_hash(), "{what:?}");
}

/// From one start, one operation or another after the same ones.
fn sees(what: Differs, before: &[&str], [one, other]: [&str; 2]) {
    let start = done(&bare(), before);
    let [first, second] = [one, other].map(|json| done(&start, &[json]));
    assert_eq!(
        first.state_hash(),
        done(&bare(), &[before, &[one]].concat()).state_hash(),
        "the same operations, the same hash"
    );
    println!("{what:?}: {one} or {other}");
    has_two_hashes(what, [&first, &second]);
}

const HEAD_CUP: &str =
    r#"{"do":"press","ring":"head_cup","force_kn":30,"precautions":["eye_protection","press_guard"]}"#;
const TAIL_CUP: &str =
    r#"{"do":"press","ring":"tail_cup","force_kn":30,"precautions":["eye_protection","press_guard"]}"#;
const WHEEL_SEAT: &str = r#"{"do":"clean","what":"wheel_seat"}"#;
const THREADS: &str = r#"{"do":"clean","what":"threads","precautions":["eye_protection"]}"#;
const FIRST_PIECE: &str = r#"{"do":"fit_shims","place":"depth","pieces":[0]}"#;
/// Of the same size as the first.
const TWIN: &str = r#"{"do":"fit_shims","place":"depth","pieces":[24]}"#;
const WHEEL_ON: [&str; 2] = [
    r#"{"do":"heat_wheel","to_c":110,"precautions":["hot_gloves"]}"#,
    r#"{"do":"fit_wheel","crosswise":true,"precautions":["hot_gloves"]}"#,
];

#[test]
fn the_hash_sees_the_pinion_group() {
    // The rings that are on, in a case so wide that nothing holds them: an assembly of gaps alone has them not.
    let mut wide = Truth::default();
    wide.press.head_cone_n = 0.0;
    wide.press.head_cup_n = 0.0;
    wide.press.tail_cup_n = 0.0;
    let start = Bench::new(Arc::clone(&SETTINGS[0]), wide, &StartingState::Bare).expect("a start");
    let [head, tail] = [HEAD_CUP, TAIL_CUP].map(|press| done(&start, &[press]));
    has_two_hashes(Differs::Pinion, [&head, &tail]);
    // What the sleeve that lies on the bench has been through.
    let [little, much] = [0.1, 0.2].map(|plastic_shortening_mm| {
        let mut assembly = Assembly::bare();
        assembly.spacer = SpacerFitted::Sleeve(SpacerMemory { plastic_shortening_mm });
        let start = StartingState::Assembled {
            assembly: Box::new(assembly),
            packs: Default::default(),
        };
        let start = Bench::new(Arc::clone(&SETTINGS[0]), Truth::default(), &start).expect("a start");
        done(&start, &[r#"{"do":"remove_spacer"}"#])
    });
    has_two_hashes(Differs::Pinion, [&little, &much]);
}

#[test]
fn the_hash_sees_the_carrier_group() {
    let heat = |to_c: u32| format!(r#"{{"do":"heat_wheel","to_c":{to_c},"precautions":["hot_gloves"]}}"#);
    sees(Differs::Carrier, &[], [&heat(60), &heat(70)]);
    sees(Differs::Carrier, &[WHEEL_SEAT], [WHEEL_SEAT, THREADS]);
    sees(Differs::Carrier, &[THREADS], [THREADS, WHEEL_SEAT]);
    let before = [&[THREADS, WHEEL_SEAT], &WHEEL_ON[..]].concat();
    let cold = [&before[..], &[r#"{"do":"wait","minutes":600}"#]].concat();
    sees(
        Differs::Carrier,
        &cold,
        [
            r#"{"do":"tighten_ring_bolts","thread_lock":true}"#,
            r#"{"do":"tighten_ring_bolts","thread_lock":false}"#,
        ],
    );
    for pair in [
        [
            r#"{"do":"brush_paste","teeth":[3],"film":"usual"}"#,
            r#"{"do":"brush_paste","teeth":[4],"film":"usual"}"#,
        ],
        [
            r#"{"do":"brush_paste","teeth":[3],"film":"usual"}"#,
            r#"{"do":"brush_paste","teeth":[3],"film":"thick"}"#,
        ],
    ] {
        sees(Differs::Carrier, &before, pair);
    }
}

#[test]
fn the_hash_sees_the_sheet() {
    let read = r#"{"do":"measure","what":{"quantity":"shim_piece","piece":0},"instrument":"micrometer"}"#;
    let other = r#"{"do":"measure","what":{"quantity":"shim_piece","piece":24},"instrument":"micrometer"}"#;
    sees(Differs::Sheet, &[], [read, other]);
    let note = |rest: &str| format!(r#"{{"do":"note","what":{{"quantity":"lash","tooth":0}},{rest}}}"#);
    for [one, other] in [
        [note(r#""value":0.1"#), note(r#""value":0.2"#)],
        [note(r#""value":0.1"#), note(r#""value":0.1,"record":1"#)],
        [note(r#""value":0.1,"remark":"a""#), note(r#""value":0.1,"remark":"b""#)],
    ] {
        sees(Differs::Sheet, &[read], [&one, &other]);
    }
    for pair in [
        [
            r#"{"do":"predict","about":"lash","chances":[1,0,0]}"#,
            r#"{"do":"predict","about":"lash","chances":[0,0,1]}"#,
        ],
        [
            r#"{"do":"predict","about":"lash","chances":[1,0,0]}"#,
            r#"{"do":"predict","about":"pinion_torque","chances":[1,0,0]}"#,
        ],
        [
            r#"{"do":"judge_plate","plate":0,"chances":[1,0,0]}"#,
            r#"{"do":"judge_plate","plate":0,"chances":[0,1,0]}"#,
        ],
        [
            r#"{"do":"judge_plate","plate":0,"chances":[1,0,0]}"#,
            r#"{"do":"judge_plate","plate":1,"chances":[1,0,0]}"#,
        ],
        [r#"{"do":"hint","level":1}"#, r#"{"do":"hint","level":2}"#],
        [
            r#"{"do":"condemn","part":"gears","evidence":[1]}"#,
            r#"{"do":"condemn","part":"case","evidence":[1]}"#,
        ],
        [
            r#"{"do":"condemn","part":"gears","evidence":[1]}"#,
            r#"{"do":"condemn","part":"gears","evidence":[1,1]}"#,
        ],
    ] {
        sees(Differs::Sheet, &[read], pair);
    }
}

#[test]
fn the_hash_sees_the_shop() {
    sees(Differs::Kit, &[], [FIRST_PIECE, TWIN]);
    // Which pieces are clean: the one that was fitted meanwhile is not.
    let rest = [
        r#"{"do":"clean","what":"shims"}"#,
        r#"{"do":"remove_shims","place":"depth"}"#,
    ];
    let [first, twin] = [FIRST_PIECE, TWIN].map(|fit| done(&bare(), &[&[fit], &rest[..]].concat()));
    has_two_hashes(Differs::Kit, [&first, &twin]);
    sees(
        Differs::Account,
        &[],
        [r#"{"do":"wait","minutes":3}"#, r#"{"do":"wait","minutes":5}"#],
    );
    sees(
        Differs::Account,
        &[],
        [HEAD_CUP, r#"{"do":"press","ring":"head_cup","force_kn":30}"#],
    );
    // At the temperature of the room a thermometer shows the same however often it is set up.
    let read = |again: bool| {
        format!(
            r#"{{"do":"measure","what":{{"quantity":"wheel_temperature"}},"instrument":"thermometer","set_up_again":{again}}}"#
        )
    };
    sees(Differs::Instruments, &[&read(false)], [&read(false), &read(true)]);
}

#[test]
fn the_hash_sees_truth_and_what_is_fitted_and_the_seed() {
    let [one, other] = [0.01, 0.02].map(|depth_mm| {
        let mut truth = Truth::default();
        truth.deviations.set(Member::HeadBearingStand, depth_mm);
        Bench::new(Arc::clone(&SETTINGS[0]), truth, &StartingState::Bare).expect("a start")
    });
    has_two_hashes(Differs::Truth, [&one, &other]);
    sees(
        Differs::Fitted,
        &[],
        [
            r#"{"do":"spread_case","by_mm":0.1}"#,
            r#"{"do":"spread_case","by_mm":0.2}"#,
        ],
    );
    let setting = BenchSetUp {
        seed: SETTINGS[0].seed + 1,
        ..(*SETTINGS[0]).clone()
    };
    let elsewhere = Bench::new(Arc::new(setting), Truth::default(), &StartingState::Bare).expect("a start");
    assert_ne!(elsewhere.state_hash(), bare().state_hash(), "another seed");
}

/// Something that no bench does.
fn refused(bench: &Bench) -> Bench {
    let mut bench = bench.clone();
    let nothing =
        Operation::from_json(r#"{"do":"measure","what":{"quantity":"print"},"instrument":"nothing"}"#).expect("good");
    assert!(!bench.apply(&nothing).done, "refused");
    bench
}

/// A refusal counts, and nothing else of it: two that have nothing in common give one hash.
#[test]
fn the_hash_sees_that_operations_are_counted() {
    let start = bare();
    let one = refused(&start);
    assert_ne!(one.state_hash(), start.state_hash(), "counted");
    let mut other = start.clone();
    assert!(
        !other
            .apply(&Operation::from_json(r#"{"do":"remove_nut"}"#).expect("good"))
            .done,
        "no nut is on"
    );
    assert_eq!(one.state_hash(), other.state_hash(), "only counted");
    assert_ne!(refused(&one).state_hash(), one.state_hash(), "counted again");
}

/// Whatever is done changes more than the count: for every kind of operation, out of random attempts.
#[test]
fn the_hash_sees_every_change() {
    let mut runner = TestRunner::deterministic();
    let mut seen: Vec<OperationKind> = Vec::new();
    let missing = |seen: &[OperationKind]| -> Vec<OperationKind> {
        let all = OperationKind::ALL.iter().copied();
        all.filter(|kind| !seen.contains(kind)).collect()
    };
    for _ in 0..400 {
        let wanted = missing(&seen);
        if wanted.is_empty() {
            break;
        }
        let mut bench = any_bench().new_tree(&mut runner).expect("a bench").current();
        let mut again = bench.clone();
        for _ in 0..40 {
            // What was not done yet is tried wherever an attempt comes by.
            let tried = wanted.iter().map(|kind| any_of(*kind).boxed());
            for strategy in tried.chain([any_operation().boxed()]) {
                let operation = strategy.new_tree(&mut runner).expect("one").current();
                let before = bench.clone();
                let answer = bench.apply(&operation);
                again.apply(&operation);
                assert_eq!(
                    bench.state_hash(),
                    again.state_hash(),
                    "the same operations: {operation:?}"
                );
                let only_counted = refused(&before).state_hash() == bench.state_hash();
                assert_eq!(only_counted, !answer.done, "{operation:?}");
                if answer.done && !seen.contains(&operation.kind()) {
                    seen.push(operation.kind());
                }
                if bench.is_finished() {
                    bench = before.clone();
                    again = before;
                }
            }
        }
    }
    assert_eq!(missing(&seen), [], "never done");
}
