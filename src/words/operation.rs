//! What each operation is: as it is logged while it is done, and told in the past afterwards. A new operation gets both its
//! phrases here.

use super::bench as shop;
use super::debrief::amount::{HAIR_MM, both, both_nut_torque};
use super::debrief::quantity::quantity;
use super::debrief::value_of;
use super::{Amount, say};
use crate::axle::ROOM_C;
use crate::bench::{
    Brushing, CapTorque, Cleaned, Level, Measurand, Operation, Part, Predicted, Ring, SpacerChoice, StemChoice, Tool,
    Toward, Turned,
};
use crate::exercise::debrief::Line;
use crate::quantity::{Units, number};

/// What was done, for the log.
pub fn operation(done: &Operation, units: Units) -> String {
    match done {
        Operation::Measure { what, instrument, .. } => say!(
            "operation-measure",
            what = shop::measurand(*what),
            instrument = shop::tool(instrument)
        ),
        Operation::CompareNumbers {} => say!("operation-compare-numbers"),
        Operation::TakeApart { to, .. } => say!("operation-take-apart", to = shop::level(*to)),
        Operation::FitShims { place: at, pieces } => {
            let numbers: Vec<String> = pieces.iter().map(u32::to_string).collect();
            say!(
                "operation-fit-shims",
                place = shop::place(*at),
                count = pieces.len(),
                pieces = numbers.join(" + ")
            )
        }
        Operation::RemoveShims { place: at } => say!("operation-remove-shims", place = shop::place(*at)),
        Operation::Press { ring: of, force_kn, .. } => {
            let force = Amount::Kilonewtons.text(*force_kn, units);
            if shop::is_cup(*of) {
                say!("operation-press-cup", part = shop::ring(*of), force = force)
            } else {
                say!("operation-press-cone", part = shop::ring(*of), force = force)
            }
        }
        Operation::PullOff { ring: of, .. } if shop::is_cup(*of) => say!("operation-pull-cup", part = shop::ring(*of)),
        Operation::PullOff { ring: of, .. } => say!("operation-pull-cone", part = shop::ring(*of)),
        Operation::FitSetUpBearings {} => say!("operation-fit-set-up-bearings"),
        Operation::RemoveSetUpBearings {} => say!("operation-remove-set-up-bearings"),
        Operation::FitSpacer {
            spacer: SpacerChoice::None,
            ..
        } => say!("operation-fit-no-spacer"),
        Operation::FitSpacer { new: true, .. } => say!("operation-fit-new-spacer"),
        Operation::FitSpacer { new: false, .. } => say!("operation-fit-spacer"),
        Operation::RemoveSpacer {} => say!("operation-remove-spacer"),
        Operation::InsertPinion {} => say!("operation-insert-pinion"),
        Operation::RemovePinion {} => say!("operation-remove-pinion"),
        Operation::FitSeal {} => say!("operation-fit-seal"),
        Operation::RemoveSeal {} => say!("operation-remove-seal"),
        Operation::FitNut { new: true } => say!("operation-fit-new-nut"),
        Operation::FitNut { new: false } => say!("operation-fit-nut"),
        Operation::RemoveNut { .. } => say!("operation-remove-nut"),
        Operation::TightenNut { torque_nm, wrench, .. } => say!(
            "operation-tighten-nut",
            torque = Amount::NutTorque.text(*torque_nm, units),
            instrument = shop::tool(wrench)
        ),
        Operation::TurnNut { angle_deg, .. } => {
            let angle = Amount::Degrees.text(angle_deg.abs(), units);
            if *angle_deg < 0.0 {
                say!("operation-turn-nut-off", angle = angle)
            } else {
                say!("operation-turn-nut-on", angle = angle)
            }
        }
        Operation::BoltCartridge {} => say!("operation-bolt-cartridge"),
        Operation::UnboltCartridge {} => say!("operation-unbolt-cartridge"),
        Operation::HeatWheel { to_c, .. } => say!(
            "operation-heat-ring-gear",
            temperature = Amount::Celsius.text(*to_c, units)
        ),
        Operation::Wait { minutes } => say!("operation-wait", time = Amount::Minutes.text(*minutes, units)),
        Operation::FitWheel { crosswise: true, .. } => say!("operation-fit-ring-gear-crosswise"),
        Operation::FitWheel { crosswise: false, .. } => say!("operation-fit-ring-gear-around"),
        Operation::RemoveWheel {} => say!("operation-remove-ring-gear"),
        Operation::TightenRingBolts { thread_lock: true } => say!("operation-torque-ring-gear-bolts-locked"),
        Operation::TightenRingBolts { thread_lock: false } => say!("operation-torque-ring-gear-bolts"),
        Operation::SetCarrierIn { marks_out_teeth, .. } => say!("operation-set-carrier-in", teeth = *marks_out_teeth),
        Operation::LiftCarrierOut { .. } => say!("operation-lift-carrier-out"),
        Operation::SpreadCase { by_mm } => say!("operation-spread-housing", size = Amount::Length.text(*by_mm, units)),
        Operation::ReleaseSpreader {} => say!("operation-release-spreader"),
        Operation::FitCaps { as_marked: true } => say!("operation-fit-caps"),
        Operation::FitCaps { as_marked: false } => say!("operation-fit-caps-swapped"),
        Operation::TightenCaps { to: CapTorque::Full } => say!("operation-torque-caps"),
        Operation::TightenCaps { to: CapTorque::Snug } => say!("operation-snug-caps"),
        Operation::LoosenCaps {} => say!("operation-loosen-caps"),
        Operation::RemoveCaps {} => say!("operation-remove-caps"),
        Operation::TurnAdjuster { side: of, notches } => {
            let side = shop::side_key(*of);
            let by = Amount::Notches.text(notches.abs(), units);
            if *notches < 0.0 {
                say!("operation-turn-adjuster-out", side = side, notches = by)
            } else {
                say!("operation-turn-adjuster-in", side = side, notches = by)
            }
        }
        Operation::FitLock { side: of } => say!("operation-fit-lock", side = shop::side_key(*of)),
        Operation::RemoveLock { side: of } => say!("operation-remove-lock", side = shop::side_key(*of)),
        Operation::Turn { what, turns } => {
            let turns = Amount::Turns.text(*turns, units);
            match what {
                Turned::Pinion => say!("operation-turn-pinion", turns = turns),
                Turned::Carrier => say!("operation-turn-carrier", turns = turns),
            }
        }
        Operation::Push { what, toward } => match (what, toward) {
            (Turned::Pinion, Toward::Mesh) => say!("operation-push-pinion-in"),
            (Turned::Pinion, Toward::Apart) => say!("operation-push-pinion-out"),
            (Turned::Carrier, Toward::Mesh) => say!("operation-push-carrier-in"),
            (Turned::Carrier, Toward::Apart) => say!("operation-push-carrier-out"),
        },
        Operation::Clean { what, .. } => shop::cleaned(*what),
        Operation::BrushPaste { teeth, film } => say!("operation-brush", count = teeth.len(), film = film_key(*film)),
        Operation::Roll { passes, .. } => say!("operation-roll", passes = *passes),
        Operation::Replace { part } => say!("operation-replace", part = shop::part(*part)),
        Operation::Note { what, value, .. } => say!(
            "operation-note",
            what = shop::measurand(*what),
            value = shop::amount(*what).text(*value, units)
        ),
        Operation::Predict { about, .. } => say!("operation-predict", about = shop::predicted(*about)),
        Operation::JudgePlate { plate, .. } => say!("operation-judge-plate", plate = shop::plate_number(*plate)),
        Operation::Hint { level } => say!("operation-hint", level = *level),
        Operation::Condemn { part, .. } => say!("operation-reject", part = shop::part(*part)),
        Operation::Finish {} => say!("operation-sign-off"),
    }
}

/// What messages call a film of paste.
const fn film_key(film: Brushing) -> &'static str {
    match film {
        Brushing::Thin => "thin",
        Brushing::Usual => "usual",
        Brushing::Thick => "thick",
    }
}

/// What was done, as a sentence without its end.
#[expect(clippy::too_many_lines, reason = "a line an operation")]
pub fn did(line: &Line) -> String {
    match &line.operation {
        Operation::Measure {
            what,
            instrument,
            set_up_again,
            stem,
        } => measured(*what, instrument, *set_up_again, *stem),
        Operation::CompareNumbers {} => say!("operation-did-compare-numbers"),
        Operation::TakeApart { to, .. } => taken_apart(*to),
        Operation::FitShims { place, pieces } => say!(
            "operation-did-fit-shims",
            place = shop::place(*place),
            size = both(line.labelled_mm),
            count = pieces.len()
        ),
        Operation::RemoveShims { place } => say!("operation-did-remove-shims", place = shop::place(*place)),
        Operation::Press { ring: of, force_kn, .. } => pressed(*of, *force_kn),
        Operation::PullOff { ring: of, .. } if shop::is_cup(*of) => {
            say!("operation-did-pull-cup", part = shop::ring(*of))
        }
        Operation::PullOff { ring: of, .. } => say!("operation-did-pull-cone", part = shop::ring(*of)),
        Operation::FitSetUpBearings {} => say!("operation-did-fit-set-up-bearings"),
        Operation::RemoveSetUpBearings {} => say!("operation-did-remove-set-up-bearings"),
        Operation::FitSpacer {
            spacer: SpacerChoice::None,
            ..
        } => say!("operation-did-fit-no-spacer"),
        Operation::FitSpacer {
            spacer: SpacerChoice::Own,
            new: true,
        } => say!("operation-did-fit-new-spacer"),
        Operation::FitSpacer {
            spacer: SpacerChoice::Own,
            new: false,
        } => say!("operation-did-fit-spacer"),
        Operation::RemoveSpacer {} => say!("operation-did-remove-spacer"),
        Operation::InsertPinion {} => say!("operation-did-insert-pinion"),
        Operation::RemovePinion {} => say!("operation-did-remove-pinion"),
        Operation::FitSeal {} => say!("operation-did-fit-seal"),
        Operation::RemoveSeal {} => say!("operation-did-remove-seal"),
        Operation::FitNut { new: true } => say!("operation-did-fit-new-nut"),
        Operation::FitNut { new: false } => say!("operation-did-fit-nut"),
        Operation::RemoveNut { .. } => say!("operation-did-remove-nut"),
        Operation::TightenNut { torque_nm, wrench, .. } => say!(
            "operation-did-tighten-nut",
            torque = both_nut_torque(*torque_nm),
            instrument = shop::tool(wrench)
        ),
        Operation::TurnNut { angle_deg, .. } => {
            let angle = Amount::Degrees.text(angle_deg.abs(), Units::Metric);
            if *angle_deg < 0.0 {
                say!("operation-did-turn-nut-off", angle = angle)
            } else {
                say!("operation-did-turn-nut-on", angle = angle)
            }
        }
        Operation::BoltCartridge {} => say!("operation-did-bolt-cartridge"),
        Operation::UnboltCartridge {} => say!("operation-did-unbolt-cartridge"),
        Operation::HeatWheel { to_c, .. } => say!(
            "operation-did-heat-ring-gear",
            temperature = Amount::Celsius.text(*to_c, Units::Metric)
        ),
        Operation::Wait { minutes } => say!(
            "operation-did-wait",
            time = Amount::Minutes.text(*minutes, Units::Metric),
            room = Amount::Celsius.text(ROOM_C, Units::Metric)
        ),
        Operation::FitWheel { crosswise: true, .. } => say!("operation-did-fit-ring-gear-crosswise"),
        Operation::FitWheel { crosswise: false, .. } => say!("operation-did-fit-ring-gear-around"),
        Operation::RemoveWheel {} => say!("operation-did-remove-ring-gear"),
        Operation::TightenRingBolts { thread_lock: true } => say!("operation-did-torque-ring-gear-bolts-locked"),
        Operation::TightenRingBolts { thread_lock: false } => say!("operation-did-torque-ring-gear-bolts"),
        Operation::SetCarrierIn { marks_out_teeth, .. } => {
            say!("operation-did-set-carrier-in", teeth = *marks_out_teeth)
        }
        Operation::LiftCarrierOut { .. } => say!("operation-did-lift-carrier-out"),
        Operation::SpreadCase { by_mm } => say!("operation-did-spread-housing", size = both(*by_mm)),
        Operation::ReleaseSpreader {} => say!("operation-did-release-spreader"),
        Operation::FitCaps { as_marked: true } => say!("operation-did-fit-caps"),
        Operation::FitCaps { as_marked: false } => say!("operation-did-fit-caps-swapped"),
        Operation::TightenCaps { to: CapTorque::Snug } => say!("operation-did-snug-caps"),
        Operation::TightenCaps { to: CapTorque::Full } => say!("operation-did-torque-caps"),
        Operation::LoosenCaps {} => say!("operation-did-loosen-caps"),
        Operation::RemoveCaps {} => say!("operation-did-remove-caps"),
        Operation::TurnAdjuster { side: of, notches } => {
            let side = shop::side_key(*of);
            let by = Amount::Notches.text(notches.abs(), Units::Metric);
            if *notches < 0.0 {
                say!("operation-did-turn-adjuster-out", side = side, notches = by)
            } else {
                say!("operation-did-turn-adjuster-in", side = side, notches = by)
            }
        }
        Operation::FitLock { side: of } => say!("operation-did-fit-lock", side = shop::side_key(*of)),
        Operation::RemoveLock { side: of } => say!("operation-did-remove-lock", side = shop::side_key(*of)),
        Operation::Turn { what, turns } => {
            let turns = Amount::Turns.text(*turns, Units::Metric);
            match what {
                Turned::Pinion => say!("operation-did-turn-pinion", turns = turns),
                Turned::Carrier => say!("operation-did-turn-carrier", turns = turns),
            }
        }
        Operation::Push { what, toward } => match (what, toward) {
            (Turned::Pinion, Toward::Mesh) => say!("operation-did-push-pinion-in"),
            (Turned::Pinion, Toward::Apart) => say!("operation-did-push-pinion-out"),
            (Turned::Carrier, Toward::Mesh) => say!("operation-did-push-carrier-in"),
            (Turned::Carrier, Toward::Apart) => say!("operation-did-push-carrier-out"),
        },
        Operation::Clean { what, .. } => cleaned(*what),
        Operation::BrushPaste { teeth, film } => {
            say!("operation-did-brush", count = teeth.len(), film = film_key(*film))
        }
        Operation::Roll { drag_nm, passes } => say!(
            "operation-did-roll",
            drag = Amount::NutTorque.text(*drag_nm, Units::Metric),
            passes = *passes
        ),
        Operation::Replace { part } => say!("operation-did-replace", part = shop::part(*part)),
        Operation::Note {
            what, value, remark, ..
        } => noted(*what, *value, remark),
        Operation::Predict { about, chances } => predicted(*about, *chances),
        Operation::JudgePlate { plate: of, chances } => {
            let [deeper, right, shallower] = chances.map(percent);
            say!(
                "operation-did-judge-plate",
                plate = shop::plate_number(*of),
                deeper = deeper,
                right = right,
                shallower = shallower
            )
        }
        Operation::Hint { level } => say!("operation-did-hint", level = *level),
        Operation::Condemn { part, reason, .. } if reason.is_empty() => {
            say!("operation-did-reject", part = shop::part(*part))
        }
        Operation::Condemn { part, reason, .. } => {
            say!("operation-did-reject-reason", part = shop::part(*part), reason = reason)
        }
        Operation::Finish {} => say!("operation-did-sign-off"),
    }
}

fn percent(chance: f64) -> String {
    number(100.0 * chance, 0)
}

fn measured(what: Measurand, instrument: &str, again: bool, laid: StemChoice) -> String {
    let by = shop::tool(instrument);
    // Which tooth and which piece stands with what was read.
    let of = match what {
        Measurand::Lash { .. } if again => {
            return say!(
                "operation-did-read-backlash-set-up-again",
                instrument = by,
                stem = shop::stem(laid)
            );
        }
        Measurand::Lash { .. } => {
            return say!("operation-did-read-backlash", instrument = by, stem = shop::stem(laid));
        }
        Measurand::ShimPiece { .. } => say!("operation-shims-read"),
        other => quantity(other),
    };
    if instrument == Tool::EYE {
        say!("operation-did-look", what = of)
    } else if again {
        say!("operation-did-read-set-up-again", instrument = by, what = of)
    } else {
        say!("operation-did-read", what = of, instrument = by)
    }
}

fn taken_apart(to: Level) -> String {
    match to {
        Level::Caps => say!("operation-did-take-caps-off"),
        Level::Carrier => say!("operation-did-take-carrier-out"),
        Level::Wheel => say!("operation-did-take-ring-gear-off"),
        Level::Nut => say!("operation-did-take-nut-off"),
        Level::Pinion => say!("operation-did-take-pinion-out"),
        Level::Bearings => say!("operation-did-pull-bearings"),
    }
}

fn pressed(of: Ring, force_kn: f64) -> String {
    let force = Amount::Kilonewtons.text(force_kn, Units::Metric);
    if shop::is_cup(of) {
        say!("operation-did-press-cup", part = shop::ring(of), force = force)
    } else {
        say!("operation-did-press-cone", part = shop::ring(of), force = force)
    }
}

fn cleaned(what: Cleaned) -> String {
    match what {
        Cleaned::WheelSeat => say!("operation-did-clean-ring-gear-seat"),
        Cleaned::Shims => say!("operation-did-clean-shims"),
        Cleaned::Threads => say!("operation-did-clean-threads"),
        Cleaned::Teeth => say!("operation-did-clean-teeth"),
        Cleaned::Bearings => say!("operation-did-clean-bearings"),
    }
}

fn noted(what: Measurand, value: f64, remark: &str) -> String {
    let value = value_of(what, value);
    let of = match what {
        // The sheet holds one number of a print.
        Measurand::Print {} if remark.is_empty() => say!("operation-drive-pattern-height"),
        other => quantity(other),
    };
    if remark.is_empty() {
        say!("operation-did-note", of = of, value = value)
    } else {
        say!("operation-did-note-remark", of = of, value = value, remark = remark)
    }
}

fn predicted(about: Predicted, chances: [f64; 3]) -> String {
    let [less, same, more] = chances.map(percent);
    match about {
        Predicted::Lash => say!("operation-did-predict-backlash", less = less, same = same, more = more),
        Predicted::PinionTorque => say!("operation-did-predict-torque", less = less, same = same, more = more),
        Predicted::DriveLength => say!(
            "operation-did-predict-drive-length",
            less = less,
            same = same,
            more = more
        ),
        Predicted::DriveHeight => say!(
            "operation-did-predict-drive-height",
            less = less,
            same = same,
            more = more
        ),
        Predicted::CoastLength => say!(
            "operation-did-predict-coast-length",
            less = less,
            same = same,
            more = more
        ),
        Predicted::CoastHeight => say!(
            "operation-did-predict-coast-height",
            less = less,
            same = same,
            more = more
        ),
    }
}

/// What an operation spoiled.
pub fn spoiled(parts: &[Part]) -> String {
    let parts: Vec<String> = parts.iter().map(|part| shop::part(*part)).collect();
    say!("operation-spoiled", parts = parts.join(", "))
}

/// How far the gears moved: pinion outward, ring gear away.
pub fn moved([pinion_mm, wheel_mm]: [f64; 2]) -> String {
    let way = |mm: f64| {
        if mm.abs() < HAIR_MM {
            "same"
        } else if mm < 0.0 {
            "in"
        } else {
            "out"
        }
    };
    say!(
        "operation-moved",
        pinion_way = way(pinion_mm),
        pinion = both(pinion_mm.abs()),
        ring_gear_way = way(wheel_mm),
        ring_gear = both(wheel_mm.abs())
    )
}
