//! Random operations of every kind: a new kind or quantity does not compile before it has its own here.

use lashwright::bench::{
    Brushing, CapTorque, CarrierSide, Cleaned, Level, Measurand, MeasurandKind, Operation, OperationKind, Part,
    Precaution, Predicted, Ring, ShimPlace, SpacerChoice, StemChoice, Tool, Toward, Turned,
};
use proptest::prelude::*;
use proptest::sample::select;
use proptest::strategy::{Union, ValueTree as _};
use proptest::test_runner::TestRunner;

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
    select(Ring::ALL.to_vec())
}

fn any_place() -> impl Strategy<Value = ShimPlace> {
    select(ShimPlace::ALL.to_vec())
}

fn any_part() -> impl Strategy<Value = Part> {
    select(Part::ALL.to_vec())
}

fn any_side() -> impl Strategy<Value = CarrierSide> {
    select(vec![CarrierSide::Tooth, CarrierSide::Back])
}

fn any_turned() -> impl Strategy<Value = Turned> {
    select(vec![Turned::Pinion, Turned::Carrier])
}

/// Three chances that add up to 1.
fn any_chances() -> impl Strategy<Value = [f64; 3]> {
    select(vec![[0.2, 0.3, 0.5], [1.0, 0.0, 0.0], [0.25, 0.5, 0.25]])
}

/// Any tooth, piece, place or ring of a quantity.
fn any_measurand_of(kind: MeasurandKind) -> BoxedStrategy<Measurand> {
    match kind {
        MeasurandKind::Lash => (0..60_u32).prop_map(|tooth| Measurand::Lash { tooth }).boxed(),
        MeasurandKind::WheelFaceRunout => Just(Measurand::WheelFaceRunout {}).boxed(),
        MeasurandKind::WheelRadialRunout => Just(Measurand::WheelRadialRunout {}).boxed(),
        MeasurandKind::PinionRunout => Just(Measurand::PinionRunout {}).boxed(),
        MeasurandKind::NutTorque => Just(Measurand::NutTorque {}).boxed(),
        MeasurandKind::BreakawayTorque => Just(Measurand::BreakawayTorque {}).boxed(),
        MeasurandKind::RollingTorque => Just(Measurand::RollingTorque {}).boxed(),
        MeasurandKind::CarrierTorque => Just(Measurand::CarrierTorque {}).boxed(),
        MeasurandKind::PinionDepth => Just(Measurand::PinionDepth {}).boxed(),
        MeasurandKind::PinionEndPlay => Just(Measurand::PinionEndPlay {}).boxed(),
        MeasurandKind::CarrierEndPlay => Just(Measurand::CarrierEndPlay {}).boxed(),
        MeasurandKind::CaseSpread => Just(Measurand::CaseSpread {}).boxed(),
        MeasurandKind::ShimPiece => (0..30_u32).prop_map(|piece| Measurand::ShimPiece { piece }).boxed(),
        MeasurandKind::ShimPack => any_place().prop_map(|place| Measurand::ShimPack { place }).boxed(),
        MeasurandKind::SeatGap => any_ring().prop_map(|ring| Measurand::SeatGap { ring }).boxed(),
        MeasurandKind::WheelTemperature => Just(Measurand::WheelTemperature {}).boxed(),
        MeasurandKind::Print => Just(Measurand::Print {}).boxed(),
        MeasurandKind::Plate => (0..3_u32).prop_map(|plate| Measurand::Plate { plate }).boxed(),
        MeasurandKind::MatchNumbers => Just(Measurand::MatchNumbers {}).boxed(),
    }
}

fn any_measurand() -> impl Strategy<Value = Measurand> {
    select(MeasurandKind::ALL.to_vec()).prop_flat_map(any_measurand_of)
}

/// Any instrument of the bench, or none: then the fitting one is taken.
fn any_tool() -> impl Strategy<Value = Option<String>> {
    let names: Vec<String> = Tool::usual().into_iter().map(|t| t.name).collect();
    proptest::option::weighted(0.2, select(names))
}

/// The instrument for a quantity.
fn fitting_tool(what: MeasurandKind) -> &'static str {
    match what {
        MeasurandKind::NutTorque => "large_dial_wrench",
        MeasurandKind::BreakawayTorque | MeasurandKind::RollingTorque | MeasurandKind::CarrierTorque => {
            "small_dial_wrench"
        }
        MeasurandKind::PinionDepth => "depth_gauge",
        MeasurandKind::ShimPiece | MeasurandKind::ShimPack => "micrometer",
        MeasurandKind::SeatGap => "feeler",
        MeasurandKind::WheelTemperature => "thermometer",
        MeasurandKind::Print | MeasurandKind::Plate | MeasurandKind::MatchNumbers => "eye",
        MeasurandKind::Lash
        | MeasurandKind::WheelFaceRunout
        | MeasurandKind::WheelRadialRunout
        | MeasurandKind::PinionRunout
        | MeasurandKind::PinionEndPlay
        | MeasurandKind::CarrierEndPlay
        | MeasurandKind::CaseSpread => "dial_indicator",
    }
}

/// Any operation of a kind.
#[expect(clippy::too_many_lines, reason = "one arm a kind of operation")]
pub(super) fn any_of(kind: OperationKind) -> BoxedStrategy<Operation> {
    use OperationKind as Kind;
    match kind {
        Kind::Measure => (any_measurand(), any_tool(), any::<bool>())
            .prop_map(|(what, tool, set_up_again)| Operation::Measure {
                what,
                instrument: tool.unwrap_or_else(|| fitting_tool(what.kind()).to_owned()),
                set_up_again,
                stem: StemChoice::SquareToTrace,
            })
            .boxed(),
        Kind::CompareNumbers => Just(Operation::CompareNumbers {}).boxed(),
        Kind::TakeApart => select(vec![
            Level::Caps,
            Level::Carrier,
            Level::Wheel,
            Level::Nut,
            Level::Pinion,
            Level::Bearings,
        ])
        .prop_map(|to| Operation::TakeApart {
            to,
            precautions: vec![],
        })
        .boxed(),
        Kind::FitShims => (any_place(), proptest::collection::vec(0..25_u32, 0..4))
            .prop_map(|(place, pieces)| Operation::FitShims { place, pieces })
            .boxed(),
        Kind::RemoveShims => any_place().prop_map(|place| Operation::RemoveShims { place }).boxed(),
        Kind::Press => (any_ring(), 8.0..30.0_f64, any_precautions())
            .prop_map(|(ring, force_kn, precautions)| Operation::Press {
                ring,
                force_kn,
                precautions,
            })
            .boxed(),
        Kind::PullOff => (any_ring(), any_precautions())
            .prop_map(|(ring, precautions)| Operation::PullOff { ring, precautions })
            .boxed(),
        Kind::FitSetUpBearings => Just(Operation::FitSetUpBearings {}).boxed(),
        Kind::RemoveSetUpBearings => Just(Operation::RemoveSetUpBearings {}).boxed(),
        Kind::FitSpacer => select(vec![
            (SpacerChoice::Own, true),
            (SpacerChoice::Own, false),
            (SpacerChoice::None, false),
        ])
        .prop_map(|(spacer, new)| Operation::FitSpacer { spacer, new })
        .boxed(),
        Kind::RemoveSpacer => Just(Operation::RemoveSpacer {}).boxed(),
        Kind::InsertPinion => Just(Operation::InsertPinion {}).boxed(),
        Kind::RemovePinion => Just(Operation::RemovePinion {}).boxed(),
        Kind::FitSeal => Just(Operation::FitSeal {}).boxed(),
        Kind::RemoveSeal => Just(Operation::RemoveSeal {}).boxed(),
        Kind::FitNut => any::<bool>().prop_map(|new| Operation::FitNut { new }).boxed(),
        Kind::RemoveNut => any_precautions()
            .prop_map(|precautions| Operation::RemoveNut { precautions })
            .boxed(),
        Kind::TightenNut => (0.0..700.0_f64, any_precautions())
            .prop_map(|(torque_nm, precautions)| Operation::TightenNut {
                torque_nm,
                wrench: "click_wrench".to_owned(),
                precautions,
            })
            .boxed(),
        Kind::TurnNut => (-90.0..90.0_f64, any_precautions())
            .prop_map(|(angle_deg, precautions)| Operation::TurnNut {
                angle_deg,
                wrench: Some("large_dial_wrench".to_owned()),
                precautions,
            })
            .boxed(),
        Kind::BoltCartridge => Just(Operation::BoltCartridge {}).boxed(),
        Kind::UnboltCartridge => Just(Operation::UnboltCartridge {}).boxed(),
        Kind::HeatWheel => (20.0..250.0_f64, any_precautions())
            .prop_map(|(to_c, precautions)| Operation::HeatWheel { to_c, precautions })
            .boxed(),
        Kind::Wait => (0.0..60.0_f64).prop_map(|minutes| Operation::Wait { minutes }).boxed(),
        Kind::FitWheel => (any::<bool>(), any_precautions())
            .prop_map(|(crosswise, precautions)| Operation::FitWheel { crosswise, precautions })
            .boxed(),
        Kind::RemoveWheel => Just(Operation::RemoveWheel {}).boxed(),
        Kind::TightenRingBolts => any::<bool>()
            .prop_map(|thread_lock| Operation::TightenRingBolts { thread_lock })
            .boxed(),
        Kind::SetCarrierIn => (0..3_u32, any_precautions())
            .prop_map(|(marks_out_teeth, precautions)| Operation::SetCarrierIn {
                marks_out_teeth,
                precautions,
            })
            .boxed(),
        Kind::LiftCarrierOut => any_precautions()
            .prop_map(|precautions| Operation::LiftCarrierOut { precautions })
            .boxed(),
        Kind::SpreadCase => (0.0..0.6_f64).prop_map(|by_mm| Operation::SpreadCase { by_mm }).boxed(),
        Kind::ReleaseSpreader => Just(Operation::ReleaseSpreader {}).boxed(),
        Kind::FitCaps => any::<bool>()
            .prop_map(|as_marked| Operation::FitCaps { as_marked })
            .boxed(),
        Kind::TightenCaps => select(vec![CapTorque::Snug, CapTorque::Full])
            .prop_map(|to| Operation::TightenCaps { to })
            .boxed(),
        Kind::LoosenCaps => Just(Operation::LoosenCaps {}).boxed(),
        Kind::RemoveCaps => Just(Operation::RemoveCaps {}).boxed(),
        Kind::TurnAdjuster => (any_side(), -20..20_i32)
            .prop_map(|(side, halves)| Operation::TurnAdjuster {
                side,
                notches: 0.5 * f64::from(halves),
            })
            .boxed(),
        Kind::FitLock => any_side().prop_map(|side| Operation::FitLock { side }).boxed(),
        Kind::RemoveLock => any_side().prop_map(|side| Operation::RemoveLock { side }).boxed(),
        Kind::Turn => (any_turned(), 0.0..20.0_f64)
            .prop_map(|(what, turns)| Operation::Turn { what, turns })
            .boxed(),
        Kind::Push => (any_turned(), select(vec![Toward::Mesh, Toward::Apart]))
            .prop_map(|(what, toward)| Operation::Push { what, toward })
            .boxed(),
        Kind::Clean => select(vec![
            Cleaned::WheelSeat,
            Cleaned::Shims,
            Cleaned::Threads,
            Cleaned::Teeth,
            Cleaned::Bearings,
        ])
        .prop_map(|what| Operation::Clean {
            what,
            precautions: vec![],
        })
        .boxed(),
        Kind::BrushPaste => (
            proptest::collection::vec(0..60_u32, 0..6),
            select(vec![Brushing::Thin, Brushing::Usual, Brushing::Thick]),
        )
            .prop_map(|(teeth, film)| Operation::BrushPaste { teeth, film })
            .boxed(),
        Kind::Roll => (0.0..30.0_f64, 1..12_u32)
            .prop_map(|(drag_nm, passes)| Operation::Roll { drag_nm, passes })
            .boxed(),
        Kind::Replace => any_part().prop_map(|part| Operation::Replace { part }).boxed(),
        Kind::Note => (any_measurand(), -1.0..1.0_f64, proptest::option::of(1..6_u32))
            .prop_map(|(what, value, record)| Operation::Note {
                what,
                value,
                record,
                remark: "by eye".to_owned(),
            })
            .boxed(),
        Kind::Predict => (
            select(vec![
                Predicted::Lash,
                Predicted::PinionTorque,
                Predicted::DriveLength,
                Predicted::DriveHeight,
                Predicted::CoastLength,
                Predicted::CoastHeight,
            ]),
            any_chances(),
        )
            .prop_map(|(about, chances)| Operation::Predict { about, chances })
            .boxed(),
        Kind::JudgePlate => (0..3_u32, any_chances())
            .prop_map(|(plate, chances)| Operation::JudgePlate { plate, chances })
            .boxed(),
        Kind::Hint => (1..=3_u32).prop_map(|level| Operation::Hint { level }).boxed(),
        Kind::Condemn => (any_part(), proptest::collection::vec(0..4_u32, 0..3))
            .prop_map(|(part, evidence)| Operation::Condemn {
                part,
                reason: "no match".to_owned(),
                evidence,
            })
            .boxed(),
        Kind::Finish => Just(Operation::Finish {}).boxed(),
    }
}

/// Any operation: much is read, and an attempt seldom ends early.
pub(super) fn any_operation() -> impl Strategy<Value = Operation> {
    let weight = |kind| {
        if kind == OperationKind::Measure {
            64
        } else if kind == OperationKind::Finish {
            1
        } else {
            8
        }
    };
    let kinds = OperationKind::ALL.iter();
    Union::new_weighted(kinds.map(|kind| (weight(*kind), any_of(*kind))).collect())
}

/// Every kind of operation and every quantity comes up, and is what it was asked for as.
#[test]
fn random_operations_are_of_every_kind() {
    let mut runner = TestRunner::deterministic();
    for kind in OperationKind::ALL {
        for _ in 0..20 {
            let operation = any_of(*kind).new_tree(&mut runner).expect("one").current();
            assert_eq!(operation.kind(), *kind, "{operation:?}");
        }
    }
    for kind in MeasurandKind::ALL {
        let what = any_measurand_of(kind).new_tree(&mut runner).expect("one").current();
        assert_eq!(what.kind(), kind, "{what:?}");
    }
    let mut kinds = Vec::new();
    let mut measured = Vec::new();
    for _ in 0..10_000 {
        let operation = any_operation().new_tree(&mut runner).expect("one").current();
        kinds.push(operation.kind());
        if let Operation::Measure { what, .. } = operation {
            measured.push(what.kind());
        }
    }
    for kind in OperationKind::ALL {
        assert!(kinds.contains(kind), "{kind:?} never came up");
    }
    for kind in MeasurandKind::ALL {
        assert!(measured.contains(&kind), "{kind:?} was never measured");
    }
}
