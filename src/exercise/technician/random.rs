//! Somebody who does anything: operations drawn from the list, with numbers that are not absurd.

use super::hands::Hands;
use crate::bench::{
    Brushing, CapTorque, CarrierSide, Cleaned, Level, Measurand, Operation, Predicted, Ring, ShimPlace, SpacerChoice,
    StemChoice, Tool, Turned,
};
use crate::numerics::random::Stream;

/// Operations until the axle is handed over.
const OPERATIONS: u32 = 120;

pub(super) fn play(mut hands: Hands, seed: u64) -> Hands {
    let mut stream = Stream::new(seed, "somebody who does anything");
    let pieces = u64::try_from(hands.sees().kit.len()).unwrap_or(1).max(1);
    for _ in 0..OPERATIONS {
        let operation = draw(&mut stream, pieces);
        hands.does(operation);
    }
    hands.does(Operation::Finish {});
    hands
}

/// One of these.
fn one<T: Copy>(stream: &mut Stream, of: &[T], otherwise: T) -> T {
    let index = stream.index(of.len() as u64);
    usize::try_from(index)
        .ok()
        .and_then(|i| of.get(i))
        .copied()
        .unwrap_or(otherwise)
}

fn draw(stream: &mut Stream, pieces: u64) -> Operation {
    let place = one(stream, &ShimPlace::ALL, ShimPlace::Depth);
    let ring = one(stream, &Ring::ALL, Ring::HeadCone);
    let side = one(stream, &[CarrierSide::Tooth, CarrierSide::Back], CarrierSide::Tooth);
    let whole = |stream: &mut Stream, low: f64, high: f64| stream.between(low, high).round();
    match stream.index(32) {
        0 => Operation::FitShims {
            place,
            pieces: (0..2)
                .map(|_| u32::try_from(stream.index(pieces)).unwrap_or(0))
                .collect(),
        },
        1 => Operation::Press {
            ring,
            force_kn: whole(stream, 5.0, 30.0),
            precautions: Vec::new(),
        },
        2 => Operation::FitSpacer {
            spacer: SpacerChoice::Own,
            new: stream.unit() < 0.5,
        },
        3 => Operation::InsertPinion {},
        4 => Operation::FitSeal {},
        5 => Operation::FitNut {
            new: stream.unit() < 0.5,
        },
        6 => Operation::TightenNut {
            torque_nm: whole(stream, 40.0, 330.0),
            wrench: "click_wrench".to_owned(),
            precautions: Vec::new(),
        },
        7 => Operation::TurnNut {
            angle_deg: whole(stream, -30.0, 60.0),
            wrench: None,
            precautions: Vec::new(),
        },
        8 => Operation::BoltCartridge {},
        9 => Operation::UnboltCartridge {},
        10 => Operation::HeatWheel {
            to_c: whole(stream, 60.0, 260.0),
            precautions: Vec::new(),
        },
        11 => Operation::FitWheel {
            crosswise: stream.unit() < 0.5,
            precautions: Vec::new(),
        },
        12 => Operation::TightenRingBolts {
            thread_lock: stream.unit() < 0.5,
        },
        13 => Operation::SetCarrierIn {
            marks_out_teeth: 0,
            precautions: Vec::new(),
        },
        14 => Operation::FitCaps {
            as_marked: stream.unit() < 0.5,
        },
        15 => Operation::TightenCaps { to: CapTorque::Full },
        16 => Operation::LoosenCaps {},
        17 => Operation::TurnAdjuster {
            side,
            notches: whole(stream, -4.0, 12.0),
        },
        18 => Operation::FitLock { side },
        19 => Operation::RemoveLock { side },
        20 => Operation::Turn {
            what: one(stream, &[Turned::Pinion, Turned::Carrier], Turned::Pinion),
            turns: whole(stream, 1.0, 20.0),
        },
        21 => Operation::Clean {
            what: one(
                stream,
                &[Cleaned::WheelSeat, Cleaned::Shims, Cleaned::Threads],
                Cleaned::Shims,
            ),
            precautions: Vec::new(),
        },
        22..=30 => look_or_say(stream),
        _ => Operation::SpreadCase {
            by_mm: stream.between(0.0, 0.6),
        },
    }
}

/// Something that is looked at, said or written.
fn look_or_say(stream: &mut Stream) -> Operation {
    let whole = |stream: &mut Stream, low: f64, high: f64| stream.between(low, high).round();
    match stream.index(9) {
        0 => Operation::BrushPaste {
            teeth: vec![0, 1, 2],
            film: Brushing::Usual,
        },
        1 => Operation::Roll {
            drag_nm: whole(stream, 0.0, 20.0),
            passes: 4,
        },
        2 => Operation::TakeApart {
            to: one(
                stream,
                &[Level::Caps, Level::Carrier, Level::Nut, Level::Pinion],
                Level::Carrier,
            ),
            precautions: Vec::new(),
        },
        3 => Operation::Predict {
            about: one(
                stream,
                &[Predicted::Lash, Predicted::DriveHeight, Predicted::PinionTorque],
                Predicted::Lash,
            ),
            chances: one(
                stream,
                &[[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]],
                [0.0, 1.0, 0.0],
            ),
        },
        4 => Operation::Note {
            what: Measurand::RollingTorque {},
            value: stream.between(0.0, 5.0),
            record: None,
            remark: String::new(),
        },
        5 => Operation::JudgePlate {
            plate: u32::try_from(stream.index(12)).unwrap_or(0),
            chances: one(
                stream,
                &[[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]],
                [0.0, 1.0, 0.0],
            ),
        },
        6 => measure(Measurand::Print {}, Tool::EYE),
        7 => measure(Measurand::RollingTorque {}, "small_dial_wrench"),
        _ => measure(
            Measurand::Lash {
                tooth: u32::try_from(stream.index(30)).unwrap_or(0),
            },
            "dial_indicator",
        ),
    }
}

fn measure(what: Measurand, instrument: &str) -> Operation {
    Operation::Measure {
        what,
        instrument: instrument.to_owned(),
        set_up_again: true,
        stem: StemChoice::default(),
    }
}
