//! What holds at the bench whatever is done there.

use std::sync::{Arc, LazyLock};

use lashwright::axle::{Assembly, Layout, Member, Nut, Truth};
use lashwright::bench::{
    Bench, Brushing, CapTorque, Cleaned, Level, Measurand, Operation, Part, Precaution, Predicted, ReadingPart, Ring,
    Setting, ShimPiece, ShimPlace, Side, SpacerChoice, Start, StemChoice, Tool, Toward, Turned, limits,
};
use lashwright::contact::{FilmLeft, Pair};
use proptest::prelude::*;
use serde_json::Value;

use super::axles::{axle_with, gears, gears_of};

/// Made once: a gear set takes longer than an attempt.
static SETTINGS: LazyLock<Vec<Arc<Setting>>> = LazyLock::new(|| {
    Layout::ALL
        .into_iter()
        .map(|layout| {
            let axle = axle_with(layout, layout.depth_shims()[0]);
            let pair = Arc::new(Pair::new(gears(gears_of(layout))));
            let kit = ShimPlace::ALL
                .into_iter()
                .flat_map(|place| {
                    [0.05, 0.13, 0.25, 0.5, 0.9, 6.0].map(|labelled_mm| ShimPiece {
                        place,
                        labelled_mm,
                        true_mm: labelled_mm + 0.004,
                    })
                })
                .collect();
            Arc::new(Setting::usual(axle, pair, 11, kit))
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
            Start::Assembled {
                assembly: Box::new(Assembly::nominal(&setting.axle).expect("numbers")),
                packs: [vec![4], spacer, sides, back],
            }
        } else {
            Start::Bare
        };
        Bench::new(setting, truth, &start).expect("a start")
    })
}

fn any_precautions() -> impl Strategy<Value = Vec<Precaution>> {
    proptest::sample::subsequence(
        vec![
            Precaution::EyeProtection,
            Precaution::PressGuard,
            Precaution::HotGloves,
            Precaution::Hoist,
            Precaution::HoldingBar,
        ],
        0..=5,
    )
}

fn any_ring() -> impl Strategy<Value = Ring> {
    proptest::sample::select(Ring::ALL.to_vec())
}

fn any_place() -> impl Strategy<Value = ShimPlace> {
    proptest::sample::select(ShimPlace::ALL.to_vec())
}

fn any_side() -> impl Strategy<Value = Side> {
    prop_oneof![Just(Side::Tooth), Just(Side::Back)]
}

fn any_turned() -> impl Strategy<Value = Turned> {
    prop_oneof![Just(Turned::Pinion), Just(Turned::Carrier)]
}

fn any_measurand() -> impl Strategy<Value = Measurand> {
    prop_oneof![
        (0..60_u32).prop_map(|tooth| Measurand::Lash { tooth }),
        Just(Measurand::WheelFaceRunout {}),
        Just(Measurand::WheelRadialRunout {}),
        Just(Measurand::PinionRunout {}),
        Just(Measurand::BreakawayTorque {}),
        Just(Measurand::RollingTorque {}),
        Just(Measurand::CarrierTorque {}),
        Just(Measurand::PinionDepth {}),
        Just(Measurand::PinionEndPlay {}),
        Just(Measurand::CarrierEndPlay {}),
        Just(Measurand::CaseSpread {}),
        (0..30_u32).prop_map(|piece| Measurand::ShimPiece { piece }),
        any_place().prop_map(|place| Measurand::ShimPack { place }),
        any_ring().prop_map(|ring| Measurand::SeatGap { ring }),
        Just(Measurand::WheelTemperature {}),
        Just(Measurand::Print {}),
    ]
}

/// Any instrument of the bench, or none: then the fitting one is taken.
fn any_tool() -> impl Strategy<Value = Option<String>> {
    let names: Vec<String> = Tool::usual().into_iter().map(|t| t.name).collect();
    proptest::option::weighted(0.2, proptest::sample::select(names))
}

/// The instrument for a quantity.
fn fitting_tool(what: Measurand) -> &'static str {
    match what {
        Measurand::NutTorque { .. } => "large_dial_wrench",
        Measurand::BreakawayTorque { .. } | Measurand::RollingTorque { .. } | Measurand::CarrierTorque { .. } => {
            "small_dial_wrench"
        }
        Measurand::PinionDepth { .. } => "depth_gauge",
        Measurand::ShimPiece { .. } | Measurand::ShimPack { .. } => "micrometer",
        Measurand::SeatGap { .. } => "feeler",
        Measurand::WheelTemperature { .. } => "thermometer",
        Measurand::Print { .. } => "eye",
        _ => "dial_indicator",
    }
}

fn any_pinion_operation() -> impl Strategy<Value = Operation> {
    prop_oneof![
        (any_place(), proptest::collection::vec(0..25_u32, 0..4))
            .prop_map(|(place, pieces)| Operation::FitShims { place, pieces }),
        (any_ring(), 8.0..30.0_f64, any_precautions()).prop_map(|(ring, force_kn, precautions)| Operation::Press {
            ring,
            force_kn,
            precautions
        }),
        (any_ring(), any_precautions()).prop_map(|(ring, precautions)| Operation::PullOff { ring, precautions }),
        Just(Operation::FitSetUpBearings {}),
        Just(Operation::RemoveSetUpBearings {}),
        any::<bool>().prop_map(|new| Operation::FitSpacer {
            spacer: SpacerChoice::Own,
            new
        }),
        Just(Operation::FitSpacer {
            spacer: SpacerChoice::None,
            new: false
        }),
        Just(Operation::RemoveSpacer {}),
        Just(Operation::InsertPinion {}),
        Just(Operation::RemovePinion {}),
        Just(Operation::FitSeal {}),
        Just(Operation::RemoveSeal {}),
        any::<bool>().prop_map(|new| Operation::FitNut { new }),
        any_precautions().prop_map(|precautions| Operation::RemoveNut { precautions }),
        (0.0..700.0_f64, any_precautions()).prop_map(|(torque_nm, precautions)| Operation::TightenNut {
            torque_nm,
            wrench: "click_wrench".to_owned(),
            precautions
        }),
        (-90.0..90.0_f64, any_precautions()).prop_map(|(angle_deg, precautions)| Operation::TurnNut {
            angle_deg,
            wrench: Some("large_dial_wrench".to_owned()),
            precautions
        }),
        Just(Operation::BoltCartridge {}),
        Just(Operation::UnboltCartridge {}),
    ]
}

fn any_wheel_operation() -> impl Strategy<Value = Operation> {
    prop_oneof![
        (20.0..250.0_f64, any_precautions()).prop_map(|(to_c, precautions)| Operation::HeatWheel { to_c, precautions }),
        (0.0..60.0_f64).prop_map(|minutes| Operation::Wait { minutes }),
        (any::<bool>(), any_precautions())
            .prop_map(|(crosswise, precautions)| Operation::FitWheel { crosswise, precautions }),
        Just(Operation::RemoveWheel {}),
        any::<bool>().prop_map(|thread_lock| Operation::TightenRingBolts { thread_lock }),
        (0..3_u32, any_precautions()).prop_map(|(marks_out_teeth, precautions)| Operation::SetCarrierIn {
            marks_out_teeth,
            precautions
        }),
        any_precautions().prop_map(|precautions| Operation::LiftCarrierOut { precautions }),
        (0.0..0.6_f64).prop_map(|by_mm| Operation::SpreadCase { by_mm }),
        Just(Operation::ReleaseSpreader {}),
        any::<bool>().prop_map(|as_marked| Operation::FitCaps { as_marked }),
        prop_oneof![Just(CapTorque::Snug), Just(CapTorque::Full)].prop_map(|to| Operation::TightenCaps { to }),
        Just(Operation::LoosenCaps {}),
        Just(Operation::RemoveCaps {}),
        (any_side(), -20..20_i32).prop_map(|(side, quarters)| Operation::TurnAdjuster {
            side,
            notches: 0.5 * f64::from(quarters)
        }),
        any_side().prop_map(|side| Operation::FitLock { side }),
        any_side().prop_map(|side| Operation::RemoveLock { side }),
    ]
}

fn any_other_operation() -> impl Strategy<Value = Operation> {
    prop_oneof![
        6 => (any_measurand(), any_tool(), any::<bool>()).prop_map(|(what, tool, set_up_again)| Operation::Measure {
            what,
            instrument: tool.unwrap_or_else(|| fitting_tool(what).to_owned()),
            set_up_again,
            stem: StemChoice::SquareToTrace,
        }),
        1 => Just(Operation::CompareNumbers {}),
        1 => prop_oneof![
            Just(Level::Caps), Just(Level::Carrier), Just(Level::Wheel), Just(Level::Nut), Just(Level::Pinion), Just(Level::Bearings)
        ].prop_map(|to| Operation::TakeApart { to, precautions: vec![] }),
        1 => any_place().prop_map(|place| Operation::RemoveShims { place }),
        2 => (any_turned(), 0.0..20.0_f64).prop_map(|(what, turns)| Operation::Turn { what, turns }),
        1 => (any_turned(), prop_oneof![Just(Toward::Mesh), Just(Toward::Apart)])
            .prop_map(|(what, toward)| Operation::Push { what, toward }),
        1 => prop_oneof![Just(Cleaned::WheelSeat), Just(Cleaned::Shims), Just(Cleaned::Threads), Just(Cleaned::Teeth), Just(Cleaned::Bearings)]
            .prop_map(|what| Operation::Clean { what, precautions: vec![] }),
        1 => (proptest::collection::vec(0..60_u32, 0..6), prop_oneof![Just(Brushing::Thin), Just(Brushing::Usual), Just(Brushing::Thick)])
            .prop_map(|(teeth, film)| Operation::BrushPaste { teeth, film }),
        1 => (0.0..30.0_f64, 1..12_u32).prop_map(|(drag_nm, passes)| Operation::Roll { drag_nm, passes }),
        1 => proptest::sample::select(Part::ALL.to_vec()).prop_map(|part| Operation::Replace { part }),
        1 => (any_measurand(), -1.0..1.0_f64).prop_map(|(what, value)| Operation::Note { what, value, record: None, remark: "by eye".to_owned() }),
        1 => Just(Operation::Predict { about: Predicted::Lash, chances: [0.2, 0.3, 0.5] }),
        1 => (1..=3_u32).prop_map(|level| Operation::Hint { level }),
        1 => proptest::collection::vec(0..4_u32, 0..3)
            .prop_map(|evidence| Operation::Condemn { part: Part::Gears, reason: "no match".to_owned(), evidence }),
    ]
}

fn any_operation() -> impl Strategy<Value = Operation> {
    prop_oneof![
        4 => any_pinion_operation(),
        4 => any_wheel_operation(),
        3 => any_other_operation(),
    ]
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

    /// An operation that changes the state changes the hash, and a value taken twice without a change between is not stale.
    #[test]
    fn the_hash_sees_every_change(start in any_bench(), operations in proptest::collection::vec(any_operation(), 1..25)) {
        let mut bench = start;
        for operation in &operations {
            let before = bench.clone();
            bench.apply(operation);
            prop_assert_ne!(bench.state_hash(), before.state_hash(), "{:?} counts", operation);
        }
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
        let error = Operation::from_json(&value.to_string()).expect_err("there are no such fields").to_string();
        for name in &unknown {
            prop_assert!(error.contains(&format!("`{name}`")), "{name}: {error}");
        }
        prop_assert!(error.contains(&format!("`{}`", operation.kind().key())), "{error}");
    }

    /// Whatever is sent in place of an operation is read or refused.
    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,200}") {
        if let Err(error) = Operation::from_json(&text) {
            prop_assert!(!error.to_string().is_empty(), "says why");
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
    let start = Start::Assembled {
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
