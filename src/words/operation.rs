//! What each operation is: as it is logged while it is done, and told in the past afterwards. A new operation gets both its
//! phrases here.

use crate::axle::ROOM_C;
use crate::bench::{
    Brushing, CapTorque, CarrierSide, Cleaned, Level, Measurand, Operation, Part, Predicted, SpacerChoice, StemChoice,
    Toward,
};
use crate::exercise::debrief::Line;
use crate::quantity::{number, signed};
use crate::words::bench::{part as part_name, plate_number};

use super::Amount;
use super::bench as shop;
use super::debrief::amount::{HAIR_MM, both, both_nut_torque};
use super::debrief::quantity::{pack, plain, quantity, ring, side, stem, turned};
use super::debrief::value_of;
use crate::bench::{Tool, Turned};
use crate::quantity::Units;

/// What was done, for the log.
pub fn operation(done: &Operation, units: Units) -> String {
    let turned = |what: &Turned| match what {
        Turned::Pinion => "pinion",
        Turned::Carrier => "carrier",
    };
    match done {
        Operation::Measure { what, instrument, .. } => {
            format!("{}, {}", shop::measurand(*what), shop::tool(instrument))
        }
        Operation::CompareNumbers {} => "Read the numbers on both gears".to_owned(),
        Operation::TakeApart { to, .. } => format!("Take apart: {}", shop::level(*to)),
        Operation::FitShims { place: at, pieces } => {
            let pieces: Vec<String> = pieces.iter().map(u32::to_string).collect();
            format!("Lay in the {}: {}", shop::place(*at), pieces.join(" + "))
        }
        Operation::RemoveShims { place: at } => format!("Take the {} out", shop::place(*at)),
        Operation::Press { ring: of, force_kn, .. } => format!(
            "Press the {} on, {}",
            shop::ring(*of),
            Amount::Kilonewtons.text(*force_kn, units)
        ),
        Operation::PullOff { ring: of, .. } => format!("Pull the {} off", shop::ring(*of)),
        Operation::FitSetUpBearings {} => "Slip the set-up bearings in".to_owned(),
        Operation::RemoveSetUpBearings {} => "Take the set-up bearings out".to_owned(),
        Operation::FitSpacer {
            spacer: SpacerChoice::None,
            ..
        } => "Leave the spacer out".to_owned(),
        Operation::FitSpacer { new, .. } => {
            format!(
                "Put the spacer on, {}",
                if *new { "a new one" } else { "the one that is there" }
            )
        }
        Operation::RemoveSpacer {} => "Take the spacer off".to_owned(),
        Operation::InsertPinion {} => "Put the pinion in".to_owned(),
        Operation::RemovePinion {} => "Take the pinion out".to_owned(),
        Operation::FitSeal {} => "Drive a new seal in".to_owned(),
        Operation::RemoveSeal {} => "Pull the seal out".to_owned(),
        Operation::FitNut { new } => format!("Flange and nut on{}", if *new { ", a new nut" } else { "" }),
        Operation::RemoveNut { .. } => "Nut and flange off".to_owned(),
        Operation::TightenNut { torque_nm, wrench, .. } => format!(
            "Tighten the nut to {}, {}",
            Amount::NutTorque.text(*torque_nm, units),
            shop::tool(wrench)
        ),
        Operation::TurnNut { angle_deg, .. } => {
            format!("Turn the nut by {}", Amount::Degrees.text(*angle_deg, units))
        }
        Operation::BoltCartridge {} => "Bolt the cartridge on".to_owned(),
        Operation::UnboltCartridge {} => "Unbolt the cartridge".to_owned(),
        Operation::HeatWheel { to_c, .. } => {
            format!("Heat the ring gear to {}", Amount::Celsius.text(*to_c, units))
        }
        Operation::Wait { minutes } => format!("Wait {}", Amount::Minutes.text(*minutes, units)),
        Operation::FitWheel { crosswise, .. } => format!(
            "Draw the ring gear on, {}",
            if *crosswise { "crosswise" } else { "round the circle" }
        ),
        Operation::RemoveWheel {} => "Take the ring gear off".to_owned(),
        Operation::TightenRingBolts { thread_lock } => {
            format!(
                "Torque the ring gear's bolts, {} thread-locking",
                if *thread_lock { "with" } else { "without" }
            )
        }
        Operation::SetCarrierIn { marks_out_teeth: 0, .. } => "Set the carrier in".to_owned(),
        Operation::SetCarrierIn { marks_out_teeth, .. } => {
            format!("Set the carrier in, marks out by {marks_out_teeth}")
        }
        Operation::LiftCarrierOut { .. } => "Lift the carrier out".to_owned(),
        Operation::SpreadCase { by_mm } => format!("Spread the case by {}", Amount::Length.text(*by_mm, units)),
        Operation::ReleaseSpreader {} => "Take the spreader off".to_owned(),
        Operation::FitCaps { as_marked: true } => "Caps on, snug".to_owned(),
        Operation::FitCaps { as_marked: false } => "Caps on, snug, sides swapped".to_owned(),
        Operation::TightenCaps { to: CapTorque::Full } => "Torque the caps".to_owned(),
        Operation::TightenCaps { to: CapTorque::Snug } => "Snug the caps".to_owned(),
        Operation::LoosenCaps {} => "Slacken the caps".to_owned(),
        Operation::RemoveCaps {} => "Caps off".to_owned(),
        Operation::TurnAdjuster { side: of, notches } => format!(
            "Turn the adjuster, {}, by {}",
            shop::side(*of),
            Amount::Notches.text(*notches, units)
        ),
        Operation::FitLock { side: of } => format!("Lock in, {}", shop::side(*of)),
        Operation::RemoveLock { side: of } => format!("Lock out, {}", shop::side(*of)),
        Operation::Turn { what, turns } => {
            format!("Turn the {} by {}", turned(what), Amount::Turns.text(*turns, units))
        }
        Operation::Push { what, toward } => format!(
            "Push the {} {}",
            turned(what),
            match toward {
                Toward::Mesh => "into mesh",
                Toward::Apart => "out of mesh",
            }
        ),
        Operation::Clean { what, .. } => shop::cleaned(*what).to_owned(),
        Operation::BrushPaste { teeth, film } => format!("Brush paste on {} teeth, {}", teeth.len(), coat(*film)),
        Operation::Roll { passes, .. } => format!("Roll the painted teeth, {passes} passes each way"),
        Operation::Replace { part } => format!("New {} from the shelf", shop::part(*part)),
        Operation::Note { what, value, .. } => {
            format!(
                "Write down {}: {}",
                shop::measurand(*what),
                shop::amount(*what).text(*value, units)
            )
        }
        Operation::Predict { about, .. } => format!("Slip signed: {}", shop::predicted(*about)),
        Operation::JudgePlate { plate, .. } => format!("Judge painted plate {}", plate_number(*plate)),
        Operation::Hint { level } => format!("Hint {level}"),
        Operation::Condemn { part, .. } => format!("Condemn the {}", shop::part(*part)),
        Operation::Finish {} => "Hand the axle over".to_owned(),
    }
}

fn coat(film: Brushing) -> &'static str {
    match film {
        Brushing::Thin => "thin",
        Brushing::Usual => "as usual",
        Brushing::Thick => "thick",
    }
}

/// What was done, as a sentence without its end.
pub fn did(line: &Line) -> String {
    match &line.operation {
        Operation::Measure {
            what,
            instrument,
            set_up_again,
            stem,
        } => measured(*what, instrument, *set_up_again, *stem),
        Operation::CompareNumbers {} => {
            "Compared the numbers etched on both gears and read the pinion's mark".to_owned()
        }
        Operation::TakeApart { to, .. } => taken_apart(*to).to_owned(),
        Operation::FitShims { place, pieces } => format!(
            "Fitted {}: {} by label, {} piece{}",
            pack(*place),
            both(line.labelled_mm),
            pieces.len(),
            if pieces.len() == 1 { "" } else { "s" }
        ),
        Operation::RemoveShims { place } => format!("Took the {} out", pack(*place)),
        Operation::Press { ring: of, force_kn, .. } => {
            format!("Pressed the {} on with {}\u{a0}kN", ring(*of), number(*force_kn, 0))
        }
        Operation::PullOff { ring: of, .. } => format!("Pulled the {} off", ring(*of)),
        Operation::FitSetUpBearings {} => "Slipped the set-up bearings in".to_owned(),
        Operation::RemoveSetUpBearings {} => "Took the set-up bearings out".to_owned(),
        Operation::FitSpacer { spacer, new } => spacer_fitted(*spacer, *new).to_owned(),
        Operation::RemoveSpacer {} => "Took the spacer off".to_owned(),
        Operation::InsertPinion {} => "Put the pinion in".to_owned(),
        Operation::RemovePinion {} => "Took the pinion out".to_owned(),
        Operation::FitSeal {} => "Drove a new pinion seal in".to_owned(),
        Operation::RemoveSeal {} => "Pulled the pinion seal".to_owned(),
        Operation::FitNut { new: true } => "Put flange and a new nut on".to_owned(),
        Operation::FitNut { new: false } => "Put flange and the old nut on".to_owned(),
        Operation::RemoveNut { .. } => "Took nut and flange off".to_owned(),
        Operation::TightenNut { torque_nm, wrench, .. } => format!(
            "Tightened the pinion nut to {} with the {}",
            both_nut_torque(*torque_nm),
            plain(wrench)
        ),
        Operation::TurnNut { angle_deg, .. } => format!("Turned the pinion nut by {}°", signed(*angle_deg, 1)),
        Operation::BoltCartridge {} => "Bolted the cartridge to the case".to_owned(),
        Operation::UnboltCartridge {} => "Unbolted the cartridge".to_owned(),
        Operation::HeatWheel { to_c, .. } => format!("Heated the ring gear to {}\u{a0}°C", number(*to_c, 0)),
        Operation::Wait { minutes } => format!(
            "Waited {}\u{a0}min while the ring gear cools toward {}\u{a0}°C",
            number(*minutes, 0),
            number(ROOM_C, 0)
        ),
        Operation::FitWheel { crosswise: true, .. } => "Drew the ring gear on, bolts crosswise".to_owned(),
        Operation::FitWheel { crosswise: false, .. } => {
            "Drew the ring gear on, bolt after bolt round the circle".to_owned()
        }
        Operation::RemoveWheel {} => "Took the ring gear off its carrier".to_owned(),
        Operation::TightenRingBolts { thread_lock } => {
            let with = if *thread_lock { "with" } else { "without" };
            format!("Torqued the ring gear's bolts {with} thread-lock")
        }
        Operation::SetCarrierIn { marks_out_teeth, .. } => carrier_in(*marks_out_teeth),
        Operation::LiftCarrierOut { .. } => "Lifted the carrier out".to_owned(),
        Operation::SpreadCase { by_mm } => format!("Spread the case by {}", both(*by_mm)),
        Operation::ReleaseSpreader {} => "Took the spreader off".to_owned(),
        Operation::FitCaps { as_marked: true } => "Put the caps on, each on its own side".to_owned(),
        Operation::FitCaps { as_marked: false } => "Put the caps on, changed round".to_owned(),
        Operation::TightenCaps { to: CapTorque::Snug } => "Drew the caps up snug".to_owned(),
        Operation::TightenCaps { to: CapTorque::Full } => "Torqued the caps".to_owned(),
        Operation::LoosenCaps {} => "Slackened the caps to snug".to_owned(),
        Operation::RemoveCaps {} => "Took the caps off".to_owned(),
        Operation::TurnAdjuster { side: of, notches } => {
            format!("Turned the adjuster {} by {} notches", side(*of), signed(*notches, 1))
        }
        Operation::FitLock { side: of } => format!("Locked the adjuster {}", side(*of)),
        Operation::RemoveLock { side: of } => lock_out(*of).to_owned(),
        Operation::Turn { what, turns } => turned_over(&turned(*what), *turns),
        Operation::Push { what, toward } => {
            let way = match toward {
                Toward::Mesh => "into mesh",
                Toward::Apart => "out of mesh",
            };
            format!("Pushed the {} {way}", turned(*what))
        }
        Operation::Clean { what, .. } => cleaned(*what).to_owned(),
        Operation::BrushPaste { teeth, film } => brushed(teeth.len(), *film),
        Operation::Roll { drag_nm, passes } => format!(
            "Rolled the painted teeth: drag {}\u{a0}N·m, {passes} passes each way",
            number(*drag_nm, 0)
        ),
        Operation::Replace { part } => format!("Took a new part from the shelf: {}", part_name(*part)),
        Operation::Note {
            what, value, remark, ..
        } => noted(*what, *value, remark),
        Operation::Predict { about, chances } => format!("Predicted {}: {}", predicted(*about), odds(*about, *chances)),
        Operation::JudgePlate { plate: of, chances } => {
            let [deeper, right, shallower] = chances.map(|c| number(100.0 * c, 0));
            let plate = plate_number(*of);
            format!("Judged plate {plate}: deeper {deeper}\u{a0}%, right {right}\u{a0}%, shallower {shallower}\u{a0}%")
        }
        Operation::Hint { level } => format!("Asked for hint {level}"),
        Operation::Condemn { part, reason, .. } => condemned(*part, reason),
        Operation::Finish {} => "Handed the axle over".to_owned(),
    }
}

fn measured(what: Measurand, instrument: &str, again: bool, laid: StemChoice) -> String {
    let how = match what {
        Measurand::Lash { .. } => format!(", {}", stem(laid)),
        _ => String::new(),
    };
    let by = if instrument == Tool::EYE {
        "Looked at".to_owned()
    } else if again {
        format!("With the {} set up afresh{how}, read", plain(instrument))
    } else {
        format!("With the {}{how}, read", plain(instrument))
    };
    // Which tooth and which piece stands with what was read.
    let of = match what {
        Measurand::Lash { .. } => "lash".to_owned(),
        Measurand::ShimPiece { .. } => "shims".to_owned(),
        other => quantity(other),
    };
    format!("{by} {of}")
}

fn taken_apart(to: Level) -> &'static str {
    match to {
        Level::Caps => "Took the caps and locks off",
        Level::Carrier => "Took apart: carrier out",
        Level::Wheel => "Took apart: ring gear off its carrier",
        Level::Nut => "Took apart: nut, flange and seal off",
        Level::Pinion => "Took apart: pinion out",
        Level::Bearings => "Took apart: pinion bearings pulled",
    }
}

fn spacer_fitted(spacer: SpacerChoice, new: bool) -> &'static str {
    match (spacer, new) {
        (SpacerChoice::None, _) => "Built without a spacer, for a trial",
        (SpacerChoice::Own, true) => "Put a new spacer on",
        (SpacerChoice::Own, false) => "Put the spacer on",
    }
}

fn carrier_in(marks_out_teeth: u32) -> String {
    match marks_out_teeth {
        0 => "Set the carrier in".to_owned(),
        1 => "Set the carrier in, timing marks out by 1 tooth".to_owned(),
        teeth => format!("Set the carrier in, timing marks out by {teeth} teeth"),
    }
}

fn lock_out(side: CarrierSide) -> &'static str {
    match side {
        CarrierSide::Tooth => "Took the lock on the tooth side out",
        CarrierSide::Back => "Took the lock behind the ring gear out",
    }
}

fn turned_over(what: &str, turns: f64) -> String {
    let decimals = usize::from((turns - turns.round()).abs() > 1e-9);
    format!("Turned the {what} {} times", number(turns, decimals))
}

fn cleaned(what: Cleaned) -> &'static str {
    match what {
        Cleaned::WheelSeat => "Cleaned and stoned the ring gear's seat",
        Cleaned::Shims => "Wiped and deburred the shims",
        Cleaned::Threads => "Degreased the bolt threads",
        Cleaned::Teeth => "Wiped the teeth",
        Cleaned::Bearings => "Washed the bearings and dried them with air",
    }
}

fn brushed(teeth: usize, film: Brushing) -> String {
    let how = match film {
        Brushing::Thin => "wiped thin",
        Brushing::Usual => "as usual",
        Brushing::Thick => "laid on thick",
    };
    format!("Brushed paste on {teeth} teeth, {how}")
}

fn noted(what: Measurand, value: f64, remark: &str) -> String {
    let value = value_of(what, value);
    let remark = if remark.is_empty() {
        String::new()
    } else {
        format!(" ({remark})")
    };
    let of = match what {
        // The sheet holds one number of a print.
        Measurand::Print {} if remark.is_empty() => "the height of the drive print's middle".to_owned(),
        other => quantity(other),
    };
    format!("Wrote down {of}: {value}{remark}")
}

fn condemned(part: Part, reason: &str) -> String {
    let reason = if reason.is_empty() {
        String::new()
    } else {
        format!(": {reason}")
    };
    format!("Condemned the {}{reason}", part_name(part))
}

fn predicted(about: Predicted) -> &'static str {
    match about {
        Predicted::Lash => "lash",
        Predicted::PinionTorque => "torque at the nut",
        Predicted::DriveLength => "the drive print along the tooth",
        Predicted::DriveHeight => "the drive print's height",
        Predicted::CoastLength => "the coast print along the tooth",
        Predicted::CoastHeight => "the coast print's height",
    }
}

fn odds(about: Predicted, chances: [f64; 3]) -> String {
    let names = match about {
        Predicted::Lash | Predicted::PinionTorque => ["less", "same", "more"],
        Predicted::DriveLength | Predicted::CoastLength => ["to toe", "same", "to heel"],
        Predicted::DriveHeight | Predicted::CoastHeight => ["to root", "same", "to top"],
    };
    let parts: Vec<String> = names
        .into_iter()
        .zip(chances)
        .map(|(name, chance)| format!("{name} {}\u{a0}%", number(100.0 * chance, 0)))
        .collect();
    parts.join(", ")
}

/// What an operation spoiled.
pub fn spoiled(parts: &[Part]) -> String {
    let parts: Vec<&str> = parts.iter().map(|part| part_name(*part)).collect();
    format!("Spoiled: {}.", parts.join(", "))
}

/// How far the gears moved: pinion outward, ring gear away.
pub fn moved([pinion_mm, wheel_mm]: [f64; 2]) -> String {
    let by = |mm: f64, less: &str, more: &str| {
        if mm.abs() < HAIR_MM {
            "as it was".to_owned()
        } else {
            format!("{}\u{a0}mm {}", number(mm.abs(), 3), if mm < 0.0 { less } else { more })
        }
    };
    format!(
        "Moved: pinion {}, ring gear {}.",
        by(pinion_mm, "deeper", "shallower"),
        by(wheel_mm, "toward the pinion", "away")
    )
}
