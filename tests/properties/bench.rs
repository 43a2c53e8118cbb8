//! What holds at the bench whatever is done there.

mod random;
mod stale;
mod state_hash;

use std::sync::{Arc, LazyLock};

use lashwright::axle::{Assembly, Layout, Member, Nut, Truth};
use lashwright::bench::{
    Bench, BenchSetUp, Brushing, Cleaned, Measurand, Operation, Plate, Precaution, ReadingPart, ShimPiece, ShimPlace,
    StartingState, StemChoice, limits,
};
use lashwright::contact::{FilmLeft, Pair, Placement};
use lashwright::words;
use proptest::prelude::*;
use serde_json::Value;

use self::random::any_operation;
use super::axles::{axle_with, gears, gears_of};

/// Made once: a gear set takes longer than an attempt.
static SETTINGS: LazyLock<Vec<Arc<BenchSetUp>>> = LazyLock::new(|| {
    Layout::ALL
        .into_iter()
        .map(|layout| {
            let axle = axle_with(layout, layout.depth_shims()[0]);
            let pair = Arc::new(Pair::new(gears(gears_of(layout))));
            let mut kit: Vec<ShimPiece> = ShimPlace::ALL
                .into_iter()
                .flat_map(|place| {
                    [0.05, 0.13, 0.25, 0.5, 0.9, 6.0].map(|labelled_mm| ShimPiece {
                        place,
                        labelled_mm,
                        true_mm: labelled_mm + 0.004,
                    })
                })
                .collect();
            // A twin of the first piece.
            kit.push(kit[0]);
            let plate = Plate {
                gears: gears_of(layout).to_owned(),
                pair: Arc::clone(&pair),
                placement: Placement::NOMINAL,
            };
            Arc::new(BenchSetUp {
                plates: vec![plate.clone(), plate],
                ..BenchSetUp::usual(axle, pair, 11, kit)
            })
        })
        .collect()
});

fn any_bench() -> impl Strategy<Value = Bench> {
    (0..SETTINGS.len(), any::<bool>(), -0.1..0.1_f64, 0.0..0.05_f64).prop_map(|(layout, whole, depth, runout)| {
        let setting = Arc::clone(&SETTINGS[layout]);
        let mut truth = Truth::default();
        truth.deviations.set(Member::HeadBearingStand, depth);
        truth.deviations.set(Member::WheelFaceRunout, runout);
        truth.pair.class_errors_um = vec![4.0, -4.0];
        let start = if whole {
            let sides = if layout == 0 { vec![17] } else { vec![] };
            let back = if layout == 0 { vec![23] } else { vec![] };
            let spacer = if layout == 0 { vec![] } else { vec![8, 9] };
            StartingState::Assembled {
                assembly: Box::new(Assembly::nominal(&setting.axle).expect("numbers")),
                packs: [vec![4], spacer, sides, back],
            }
        } else {
            StartingState::Bare
        };
        Bench::new(setting, truth, &start).expect("a start")
    })
}

/// No number of an answer is missing or infinite.
fn all_numbers(value: &Value) -> bool {
    match value {
        Value::Number(n) => n.as_f64().is_some_and(f64::is_finite),
        Value::Array(entries) => entries.iter().all(all_numbers),
        Value::Object(fields) => fields.values().all(all_numbers),
        _ => true,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Random attempts: no panic, numbers everywhere, refusals change nothing, the same attempt gives the same bits, and
    /// the account only grows.
    #[test]
    fn any_attempt_goes_through(start in any_bench(), operations in proptest::collection::vec(any_operation(), 1..60)) {
        let mut bench = start.clone();
        let mut again = start;
        for operation in &operations {
            let before = bench.clone();
            let answer = bench.apply(operation);
            let second = again.apply(operation);
            prop_assert_eq!(&answer, &second, "{:?}", operation);
            let value = serde_json::to_value(&answer).expect("an answer is JSON");
            prop_assert!(all_numbers(&value), "{value}");
            prop_assert_eq!(answer.done, answer.refused.is_none(), "{:?}", &answer);
            if !answer.done {
                prop_assert_eq!(bench.assembly(), before.assembly());
                prop_assert_eq!(bench.ledger(), before.ledger());
                prop_assert_eq!(bench.records(), before.records());
            }
            // What the bench judges was told before the act, with what meets it.
            let told = operation.hazards();
            for caution in before.cautions(operation) {
                let hazard = caution.hazard();
                prop_assert!(told.contains(&hazard), "{:?} does not tell {:?}", operation, hazard);
                prop_assert_eq!(hazard.precaution(), Some(caution.precaution()));
            }
            let of_kind = operation.kind().hazards();
            prop_assert!(told.iter().all(|hazard| of_kind.contains(hazard)), "{:?}", operation);
            prop_assert!(bench.ledger().minutes >= before.ledger().minutes, "time only passes");
            prop_assert!(bench.ledger().money >= before.ledger().money, "money is only spent");
            for record in before.records().iter().filter(|r| r.stale) {
                let now = bench.records().iter().find(|r| r.number == record.number).expect("records stay");
                prop_assert!(now.stale, "stale once, stale for ever");
            }
            // What is fitted is possible.
            let a = bench.assembly();
            prop_assert!(a.pinion_in || matches!(a.nut, Nut::Off), "a nut without its pinion: {a:?}");
        }
        prop_assert_eq!(bench.state_hash(), again.state_hash());
    }

    /// Operations survive the way through their text, and every number in them has a range.
    #[test]
    fn operations_are_data(operation in any_operation()) {
        let text = serde_json::to_string(&operation).expect("JSON");
        prop_assert_eq!(&Operation::from_json(&text).expect("in range"), &operation);
        let value: Value = serde_json::from_str(&text).expect("JSON");
        prop_assert!(has_ranges("", &value), "{text}");
        prop_assert_eq!(value["do"].as_str().map(str::to_owned), Some(operation.kind().key().to_owned()));
    }

    /// However many fields there are not, each is named.
    #[test]
    fn every_unknown_field_is_named(
        operation in any_operation(),
        unknown in proptest::collection::btree_set("zz[a-z]{1,8}", 1..6),
    ) {
        let mut value = serde_json::to_value(&operation).expect("JSON");
        for name in &unknown {
            value[name] = Value::from(1);
        }
        let error = Operation::from_json(&value.to_string()).expect_err("there are no such fields");
        let error = words::error::operation(&error).line();
        for name in &unknown {
            prop_assert!(error.contains(&format!("`{name}`")), "{name}: {error}");
        }
        prop_assert!(error.contains(&format!("`{}`", operation.kind().key())), "{error}");
    }

    /// Whatever is sent in place of an operation is read or refused.
    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,200}") {
        if let Err(error) = Operation::from_json(&text) {
            prop_assert!(!words::error::operation(&error).what.is_empty(), "says why");
        }
    }
}

fn has_ranges(field: &str, value: &Value) -> bool {
    match value {
        Value::Number(_) => limits::range_of(field).is_some(),
        Value::Array(entries) => entries.iter().all(|e| has_ranges(field, e)),
        Value::Object(fields) => fields.iter().all(|(name, value)| has_ranges(name, value)),
        _ => true,
    }
}

/// The random attempts above do get somewhere: of a whole axle's operations a fair share is done, in mesh and out of it.
#[test]
fn random_attempts_get_somewhere() {
    use proptest::strategy::ValueTree as _;
    use proptest::test_runner::TestRunner;
    let mut runner = TestRunner::deterministic();
    let (mut asked, mut done, mut meshed, mut held, mut read) = (0, 0, 0, 0, 0);
    for _ in 0..60 {
        let mut bench = any_bench().new_tree(&mut runner).expect("a bench").current();
        for _ in 0..60 {
            let operation = any_operation().new_tree(&mut runner).expect("an operation").current();
            asked += 1;
            let answer = bench.apply(&operation);
            done += i32::from(answer.done);
            read += i32::from(!answer.readings.is_empty());
            meshed += i32::from(bench.built().placement.is_some());
            held += i32::from(bench.built().pinion.is_some());
        }
    }
    println!("of {asked} operations {done} done, {read} readings, {meshed} in mesh, {held} with the pinion held");
    assert!(done * 4 > asked, "{done} of {asked}");
    assert!(
        meshed * 50 > asked && held * 10 > asked && read * 50 > asked,
        "{meshed} {held} {read} of {asked}"
    );
}

/// What is seen of the paste is the print that is told in numbers: its share of the flank and its middle, as far as an eye goes
/// wrong.
#[test]
fn the_paste_that_is_left_is_the_print_that_is_told() {
    let setting = Arc::clone(&SETTINGS[1]);
    let start = StartingState::Assembled {
        assembly: Box::new(Assembly::nominal(&setting.axle).expect("numbers")),
        packs: [vec![4], vec![8, 9], vec![], vec![]],
    };
    let mut bench = Bench::new(setting, Truth::default(), &start).expect("a start");
    assert_eq!(bench.paste_left(), None, "no paste");
    let brush = Operation::BrushPaste {
        teeth: vec![3, 4],
        film: Brushing::Usual,
    };
    assert!(bench.apply(&brush).done, "painted");
    let whole = bench.paste_left().expect("painted");
    assert_eq!((&whole.teeth[..], whole.flanks), (&[3, 4][..], [None, None]));
    let roll = Operation::Roll {
        drag_nm: 40.0,
        passes: 6,
    };
    assert!(bench.apply(&roll).done, "rolled");
    let left = bench.paste_left().expect("painted");
    let look = Operation::Measure {
        what: Measurand::Print {},
        instrument: "eye".to_owned(),
        set_up_again: false,
        stem: StemChoice::default(),
    };
    let told = bench.apply(&look);
    let value = |name: String| {
        let part = ReadingPart::try_from(name).expect("a value of a reading");
        told.value(part).expect("told")
    };
    let [columns, rows] = FilmLeft::SIZE;
    for (flank, film) in ["drive", "coast"].into_iter().zip(&left.flanks) {
        let gaps = film.as_ref().expect("rolled").gaps();
        assert_eq!(gaps.len(), columns * rows);
        let (mut sum, mut along, mut up) = (0.0, 0.0, 0.0);
        for (k, _) in gaps.iter().enumerate().filter(|(_, gap)| **gap < 1.0) {
            sum += 1.0;
            along += 2.0 * (k % columns) as f64 / (columns - 1) as f64 - 1.0;
            up += 2.0 * (k / columns) as f64 / (rows - 1) as f64 - 1.0;
        }
        let area = sum / gaps.len() as f64;
        let pairs = [
            (area, value(format!("{flank}_area")), 0.015),
            // The eye goes a few hundredths wrong.
            (along / sum, value(format!("{flank}_centroid_along")), 0.08),
            (up / sum, value(format!("{flank}_centroid_up")), 0.08),
        ];
        println!("{flank}: {pairs:?}");
        for (seen, told, allowed) in pairs {
            assert!((seen - told).abs() < allowed, "{flank}: {seen} seen, {told} told");
        }
    }
    let wiped = Operation::Clean {
        what: Cleaned::Teeth,
        precautions: vec![Precaution::EyeProtection],
    };
    assert!(bench.apply(&wiped).done, "wiped");
    assert_eq!(bench.paste_left(), None, "wiped off");
}
