//! Each operation in one line.

use crate::axle::ROOM_C;
use crate::bench::{
    Brushing, CapTorque, Caution, Cleaned, Level, Measurand, Notice, Operation, Part, Predicted, Reading, ReadingPart,
    Refusal, ShimPiece, Side, SpacerChoice, StemChoice, Toward, Turned, Unit,
};
use crate::contact::Placement;
use crate::exercise::attempt::{Attempt, Step};
use crate::exercise::history::Moment;
use crate::gear::Side as Flank;
use crate::quantity::{Units, fine_length, length, number, nut_torque, signed, torque};

use super::words;

/// An operation in the order of the attempt.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Its number.
    pub operation: u32,
    /// Minutes since the beginning when it was done.
    pub at_minutes: f64,
    /// Minutes that it took.
    pub minutes: f64,
    /// Money that it cost.
    pub money: f64,
    /// What was done and what it showed, in a sentence.
    pub words: String,
    /// Of which kind: lines of one kind behind each other may be told together.
    pub kind: String,
    /// What was read, without what of.
    pub shown: Option<String>,
    /// What was noticed.
    pub noticed: Vec<Notice>,
    /// Why it was not done.
    pub refused: Option<Refusal>,
    /// Whether it took apart what was built.
    pub tear_down: bool,
    /// Hazards that were not met.
    pub cautions: Vec<Caution>,
    /// Parts spoiled.
    pub spoiled: Vec<Part>,
    /// Whether painted teeth were rolled.
    pub rolled: bool,
    /// Whether it is the hand-over.
    pub hand_over: bool,
    /// True change of where the gears stand since they last stood somewhere: pinion outward, ring gear away, mm.
    pub truth_moved_mm: Option<[f64; 2]>,
}

/// Changes of place below this are not told, mm.
const TOLD_MM: f64 = 0.002;

/// All of an attempt.
pub(super) fn lines(attempt: &Attempt) -> Vec<Line> {
    let kit = &attempt.bench().setting().kit;
    let mut moments = attempt.history().iter().peekable();
    let mut before = moments.next();
    let mut stood: Option<Placement> = before.and_then(|m| m.placement);
    let mut minutes = 0.0;
    let mut all = Vec::new();
    for step in attempt.steps() {
        let answer = &step.answer;
        let moment: Option<&Moment> = moments.next_if(|m| m.operation == answer.operation);
        let tear_down = moment.is_some_and(|m| before.is_some_and(|b| m.tear_downs > b.tear_downs));
        let moved = moment.and_then(|m| m.placement).and_then(|now| {
            let was = stood.replace(now)?;
            let by = [
                now.pinion_axial_mm - was.pinion_axial_mm,
                now.wheel_axial_mm - was.wheel_axial_mm,
            ];
            by.iter().any(|mm| mm.abs() >= TOLD_MM).then_some(by)
        });
        before = moment.or(before);
        let readings = || answer.readings.iter().map(reading).collect::<Vec<_>>().join(", ");
        all.push(Line {
            operation: answer.operation,
            at_minutes: minutes,
            minutes: answer.minutes,
            money: answer.money,
            words: did(&step.operation, kit),
            kind: kind(step),
            shown: (answer.done && matches!(step.operation, Operation::Measure { .. }))
                .then(|| shown(step).unwrap_or_else(readings)),
            noticed: answer.noticed.clone(),
            refused: answer.refused.clone(),
            tear_down,
            cautions: answer.cautions.clone(),
            spoiled: answer.spoiled.clone(),
            rolled: answer.done && matches!(step.operation, Operation::Roll { .. }),
            hand_over: answer.done && matches!(step.operation, Operation::Finish {}),
            truth_moved_mm: moved,
        });
        minutes += answer.minutes;
    }
    all
}

/// What can be told together: the same thing measured in the same way, or one shim piece after the other.
fn kind(step: &Step) -> String {
    match &step.operation {
        Operation::Measure {
            what, instrument, stem, ..
        } if step.answer.done => match what {
            Measurand::ShimPiece { .. } => format!("pieces by {instrument}"),
            Measurand::Lash { .. } => format!("lash by {instrument}, {}", words::stem(*stem)),
            _ => format!("{what:?} by {instrument}"),
        },
        _ => String::new(),
    }
}

fn reading(reading: &Reading) -> String {
    let value = reading.value.map_or_else(
        || "nothing".to_owned(),
        |value| match reading.unit {
            Unit::Millimeter => both(value),
            Unit::NewtonMeter => torque(value, Units::Metric),
            unit @ (Unit::Celsius | Unit::One) => format!("{}\u{a0}{}", number(value, 2), unit.symbol())
                .trim_end()
                .to_owned(),
        },
    );
    format!("{} {value}", reading.quantity.key())
}

/// Short forms of what long readings showed.
fn shown(step: &Step) -> Option<String> {
    let Operation::Measure { what, .. } = &step.operation else {
        return None;
    };
    let readings = &step.answer.readings;
    let answer = &step.answer;
    match what {
        Measurand::Print {} | Measurand::Plate { .. } => {
            let flank = |flank: Flank| {
                let [along, up] = answer.centroid(flank)?;
                Some(format!("length {}, height {}", signed(along, 2), signed(up, 2)))
            };
            let flanks = [(Flank::Drive, "drive"), (Flank::Coast, "coast")].map(|(f, name)| {
                let words = flank(f).unwrap_or_else(|| "no print".to_owned());
                format!("{name}: {words}")
            });
            Some(flanks.join("; "))
        }
        Measurand::Lash { tooth } => Some(format!(
            "tooth {tooth}: {}",
            both(readings.first().and_then(|r| r.value)?)
        )),
        Measurand::ShimPiece { piece } => Some(format!(
            "piece {piece}: {}",
            length(readings.first().and_then(|r| r.value)?, Units::Metric)
        )),
        Measurand::RollingTorque {} | Measurand::BreakawayTorque {} | Measurand::CarrierTorque {} => {
            let turns = answer.value(ReadingPart::Rolling)?;
            let starts = answer
                .value(ReadingPart::Breakaway)
                .filter(|_| matches!(what, Measurand::BreakawayTorque {}));
            let nm = starts.unwrap_or(turns);
            Some(amount(*what, nm))
        }
        _ => Some(
            readings
                .first()?
                .value
                .map_or_else(|| "nothing".to_owned(), |value| amount(*what, value)),
        ),
    }
}

/// A value of a quantity, in both units where it has two: hand torque in inch-pounds, that of a nut in foot-pounds.
fn amount(what: Measurand, value: f64) -> String {
    let in_both = |of: fn(f64, Units) -> String| format!("{} ({})", of(value, Units::Metric), of(value, Units::Inch));
    match what.unit() {
        Unit::Millimeter => both(value),
        Unit::NewtonMeter if matches!(what, Measurand::NutTorque {}) => in_both(nut_torque),
        Unit::NewtonMeter => in_both(torque),
        unit @ (Unit::Celsius | Unit::One) => format!("{}\u{a0}{}", number(value, 2), unit.symbol())
            .trim_end()
            .to_owned(),
    }
}

/// A length in both units.
pub(super) fn both(mm: f64) -> String {
    format!("{} ({})", fine_length(mm, Units::Metric), fine_length(mm, Units::Inch))
}

/// What an operation is, as a sentence without its end.
fn did(operation: &Operation, kit: &[ShimPiece]) -> String {
    match operation {
        Operation::Measure {
            what,
            instrument,
            set_up_again,
            stem,
        } => measured(*what, instrument, *set_up_again, *stem),
        Operation::FitShims { place, pieces } => {
            let label = |piece: &u32| kit.get(usize::try_from(*piece).ok()?).map(|p| p.labelled_mm);
            let sum: f64 = pieces.iter().filter_map(label).sum();
            format!(
                "Fitted {}: {} by label, {} piece{}",
                words::pack(*place),
                both(sum),
                pieces.len(),
                if pieces.len() == 1 { "" } else { "s" }
            )
        }
        Operation::RemoveShims { place } => format!("Took the {} out", words::pack(*place)),
        Operation::TurnNut { angle_deg, .. } => {
            format!("Turned the pinion nut by {}°", signed(*angle_deg, 1))
        }
        Operation::TightenNut { torque_nm, wrench, .. } => format!(
            "Tightened the pinion nut to {} ({}) with the {}",
            nut_torque(*torque_nm, Units::Metric),
            nut_torque(*torque_nm, Units::Inch),
            plain(wrench)
        ),
        Operation::TurnAdjuster { side, notches } => format!(
            "Turned the adjuster {} by {} notches",
            side_words(*side),
            signed(*notches, 1)
        ),
        Operation::Note {
            what, value, remark, ..
        } => {
            let value = amount(*what, *value);
            let remark = if remark.is_empty() {
                String::new()
            } else {
                format!(" ({remark})")
            };
            format!("Wrote down {}: {value}{remark}", quantity(*what))
        }
        Operation::Predict { about, chances } => format!("Predicted {}: {}", predicted(*about), odds(*about, *chances)),
        Operation::JudgePlate { plate, chances } => {
            let [deeper, right, shallower] = chances.map(|c| number(100.0 * c, 0));
            format!("Judged plate {plate}: deeper {deeper}\u{a0}%, right {right}\u{a0}%, shallower {shallower}\u{a0}%")
        }
        Operation::Condemn { part, reason, .. } => format!("Condemned the {}: {reason}", part.name()),
        Operation::Press { ring, force_kn, .. } => {
            format!(
                "Pressed the {} on with {}\u{a0}kN",
                words::ring(*ring),
                number(*force_kn, 0)
            )
        }
        Operation::PullOff { ring, .. } => format!("Pulled the {} off", words::ring(*ring)),
        Operation::Replace { part } => format!("Took a new part from the shelf: {}", part.name()),
        Operation::HeatWheel { to_c, .. } => format!("Heated the ring gear to {}\u{a0}°C", number(*to_c, 0)),
        Operation::Wait { minutes } => format!(
            "Waited {}\u{a0}min while the ring gear cools toward {}\u{a0}°C",
            number(*minutes, 0),
            number(ROOM_C, 0)
        ),
        Operation::Roll { drag_nm, passes } => format!(
            "Rolled the painted teeth: drag {}\u{a0}N·m, {passes} passes each way",
            number(*drag_nm, 0)
        ),
        Operation::BrushPaste { teeth, film } => format!(
            "Brushed paste on {} teeth, {}",
            teeth.len(),
            match film {
                Brushing::Thin => "wiped thin",
                Brushing::Usual => "as usual",
                Brushing::Thick => "laid on thick",
            }
        ),
        Operation::Turn { what, turns } => format!(
            "Turned the {} {} times",
            turned(*what),
            number(*turns, usize::from((turns - turns.round()).abs() > 1e-9))
        ),
        Operation::Push { what, toward } => format!(
            "Pushed the {} {}",
            turned(*what),
            match toward {
                Toward::Mesh => "into mesh",
                Toward::Apart => "out of mesh",
            }
        ),
        Operation::Hint { level } => format!("Asked for hint {level}"),
        Operation::SpreadCase { by_mm } => format!("Spread the case by {}", both(*by_mm)),
        other => plain_deed(other).to_owned(),
    }
}

/// Operations whose line holds no number.
fn plain_deed(operation: &Operation) -> &'static str {
    match operation {
        Operation::CompareNumbers {} => "Compared the numbers etched on both gears and read the pinion's mark",
        Operation::TakeApart { to, .. } => match to {
            Level::Caps => "Took the caps and locks off",
            Level::Carrier => "Took apart: carrier out",
            Level::Wheel => "Took apart: ring gear off its carrier",
            Level::Nut => "Took apart: nut, flange and seal off",
            Level::Pinion => "Took apart: pinion out",
            Level::Bearings => "Took apart: pinion bearings pulled",
        },
        Operation::FitSetUpBearings {} => "Slipped the set-up bearings in",
        Operation::RemoveSetUpBearings {} => "Took the set-up bearings out",
        Operation::FitSpacer { spacer, new } => match (spacer, new) {
            (SpacerChoice::None, _) => "Built without a spacer, for a trial",
            (SpacerChoice::Own, true) => "Put a new spacer on",
            (SpacerChoice::Own, false) => "Put the spacer on",
        },
        Operation::RemoveSpacer {} => "Took the spacer off",
        Operation::InsertPinion {} => "Put the pinion in",
        Operation::RemovePinion {} => "Took the pinion out",
        Operation::FitSeal {} => "Drove a new pinion seal in",
        Operation::RemoveSeal {} => "Pulled the pinion seal",
        Operation::FitNut { new: true } => "Put flange and a new nut on",
        Operation::FitNut { new: false } => "Put flange and the old nut on",
        Operation::RemoveNut { .. } => "Took nut and flange off",
        Operation::BoltCartridge {} => "Bolted the cartridge to the case",
        Operation::UnboltCartridge {} => "Unbolted the cartridge",
        Operation::FitWheel { crosswise: true, .. } => "Drew the ring gear on, bolts crosswise",
        Operation::FitWheel { crosswise: false, .. } => "Drew the ring gear on, bolt after bolt round the circle",
        Operation::RemoveWheel {} => "Took the ring gear off its carrier",
        Operation::TightenRingBolts { thread_lock: true } => "Torqued the ring gear's bolts with thread-lock",
        Operation::TightenRingBolts { thread_lock: false } => "Torqued the ring gear's bolts without thread-lock",
        Operation::SetCarrierIn { .. } => "Set the carrier in",
        Operation::LiftCarrierOut { .. } => "Lifted the carrier out",
        Operation::ReleaseSpreader {} => "Took the spreader off",
        Operation::FitCaps { as_marked: true } => "Put the caps on, each on its own side",
        Operation::FitCaps { as_marked: false } => "Put the caps on, changed round",
        Operation::TightenCaps { to: CapTorque::Snug } => "Drew the caps up snug",
        Operation::TightenCaps { to: CapTorque::Full } => "Torqued the caps",
        Operation::LoosenCaps {} => "Slackened the caps to snug",
        Operation::RemoveCaps {} => "Took the caps off",
        Operation::FitLock { side: Side::Tooth } => "Locked the adjuster on the tooth side",
        Operation::FitLock { side: Side::Back } => "Locked the adjuster behind the ring gear",
        Operation::RemoveLock { side: Side::Tooth } => "Took the lock on the tooth side out",
        Operation::RemoveLock { side: Side::Back } => "Took the lock behind the ring gear out",
        Operation::Clean { what, .. } => match what {
            Cleaned::WheelSeat => "Cleaned and stoned the ring gear's seat",
            Cleaned::Shims => "Wiped and deburred the shims",
            Cleaned::Threads => "Degreased the bolt threads",
            Cleaned::Teeth => "Wiped the teeth",
            Cleaned::Bearings => "Washed the bearings and dried them with air",
        },
        Operation::Finish {} => "Handed the axle over",
        // These have numbers and are told by `did`.
        Operation::Measure { .. }
        | Operation::FitShims { .. }
        | Operation::RemoveShims { .. }
        | Operation::Press { .. }
        | Operation::PullOff { .. }
        | Operation::TightenNut { .. }
        | Operation::TurnNut { .. }
        | Operation::HeatWheel { .. }
        | Operation::Wait { .. }
        | Operation::SpreadCase { .. }
        | Operation::TurnAdjuster { .. }
        | Operation::Turn { .. }
        | Operation::Push { .. }
        | Operation::BrushPaste { .. }
        | Operation::Roll { .. }
        | Operation::Replace { .. }
        | Operation::Note { .. }
        | Operation::Predict { .. }
        | Operation::JudgePlate { .. }
        | Operation::Hint { .. }
        | Operation::Condemn { .. } => "Worked on the axle",
    }
}

fn measured(what: Measurand, instrument: &str, again: bool, stem: StemChoice) -> String {
    let how = match what {
        Measurand::Lash { .. } => format!(", {}", words::stem(stem)),
        _ => String::new(),
    };
    let by = if instrument == "eye" {
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

/// A name on the bench as it is spoken.
fn plain(name: &str) -> String {
    name.replace('_', " ")
}

/// A quantity in the middle of a sentence, exactly enough for one line.
pub(super) fn quantity(what: Measurand) -> String {
    match what {
        Measurand::Lash { tooth } => format!("lash at tooth {tooth}"),
        Measurand::WheelFaceRunout {} => "the ring gear's face runout".to_owned(),
        Measurand::WheelRadialRunout {} => "the ring gear's radial runout".to_owned(),
        Measurand::PinionRunout {} => "the pinion's runout".to_owned(),
        Measurand::NutTorque {} => "the nut's torque".to_owned(),
        Measurand::BreakawayTorque {} => "breakaway torque".to_owned(),
        Measurand::RollingTorque {} => "rolling torque".to_owned(),
        Measurand::CarrierTorque {} => "the carrier's torque".to_owned(),
        Measurand::PinionDepth {} => "the pinion's depth by arbor and block".to_owned(),
        Measurand::PinionEndPlay {} => "the pinion's end play".to_owned(),
        Measurand::CarrierEndPlay {} => "the carrier's end play".to_owned(),
        Measurand::CaseSpread {} => "the spread of the case".to_owned(),
        Measurand::ShimPiece { piece } => format!("shim piece {piece}"),
        Measurand::ShimPack { place } => format!("the pack of {}", words::pack(place)),
        Measurand::SeatGap { ring } => format!("the gap behind the {}", words::ring(ring)),
        Measurand::WheelTemperature {} => "the ring gear's temperature".to_owned(),
        Measurand::Print {} => "the print".to_owned(),
        Measurand::Plate { plate } => format!("plate {plate}"),
        Measurand::MatchNumbers {} => "the etched numbers".to_owned(),
    }
}

fn side_words(side: Side) -> &'static str {
    match side {
        Side::Tooth => "on the tooth side",
        Side::Back => "behind the ring gear",
    }
}

fn turned(what: Turned) -> &'static str {
    match what {
        Turned::Pinion => "pinion",
        Turned::Carrier => "carrier",
    }
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
