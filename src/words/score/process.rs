//! Why points of the process were lost.

use super::shared::{asked_for, count, missing, nut};
use crate::exercise::score::reason::{Checked, ProcessReason};
use crate::quantity::number;
use crate::words::{answer, bench};

#[expect(clippy::too_many_lines, reason = "one arm a reason")]
pub(super) fn words(reason: &ProcessReason) -> String {
    match reason {
        ProcessReason::NumbersNotCompared {} => {
            "The gears were condemned before their 2 numbers had been compared: read what is etched first.".to_owned()
        }
        ProcessReason::NotBracketed {} => {
            "The verdict does not stand on 2 prints at different depths: bracket before a part is blamed.".to_owned()
        }
        ProcessReason::NothingToVerify {
            operation,
            missing: what,
        } => format!(
            "{}: nothing could be verified, and the way to it wins no points.",
            missing(*operation, *what)
        ),
        ProcessReason::LashUnverified {
            places,
            wanted,
            one_side,
            coarse,
            acceptable_share,
            overtaken,
        } => {
            let mut why = format!(
                "Lash as handed over was read at {} with a dial that can tell ({wanted} around the ring gear are wanted)",
                count(*places, "place", "places")
            );
            if *one_side {
                why.push_str(", and all of them lie on one side");
            }
            if *coarse > 0 {
                let coarse = format!(
                    "; {} from a dial whose scatter fills more than {} % of the window",
                    count(*coarse, "reading came", "readings came"),
                    number(100.0 * acceptable_share, 0)
                );
                why.push_str(&coarse);
            }
            if *overtaken > 0 {
                let overtaken = format!("; {} overtaken by a later change", count(*overtaken, "was", "were"));
                why.push_str(&overtaken);
            }
            why + ". Read it again after the last change."
        }
        ProcessReason::PrintUnverified { faint, overtaken } => format!(
            "No print of both flanks shows the axle as handed over ({faint} were too faint to read, {overtaken} overtaken by \
             a later change): paint, roll under a firm drag, and look again after the last change."
        ),
        ProcessReason::PrintKnownWrong {
            operation,
            off: [along, up],
        } => format!(
            "Operation {operation} saw the drive print {} along and {} up from the approved one, and the axle was handed over \
             so: a check is there to be acted upon.",
            number(*along, 2),
            number(*up, 2)
        ),
        ProcessReason::TorqueUnverified { overtaken } => format!(
            "Rotating torque as handed over was read 0 times ({} overtaken by a later change): turn the pinion ten times and \
             read it with a pointer or a cord.",
            count(*overtaken, "reading was", "readings were")
        ),
        ProcessReason::TorqueReadEarly { turns, wanted_turns } => format!(
            "Rotating torque was read after {} turns of the pinion: rollers that have not found their place drag more, so turn \
             it {} times first.",
            number(*turns, 0),
            number(*wanted_turns, 0)
        ),
        ProcessReason::NoteMissing { of, notes } => format!(
            "The sheet holds {} of {} and none for the axle as handed over: write down what was read, with what, in which \
             state.",
            count(*notes, "note", "notes"),
            checked(*of)
        ),
        ProcessReason::NoteUnfounded { of, notes } => format!(
            "The sheet holds {} of {} that no reading bears out: write down what the instrument showed.",
            count(*notes, "note", "notes"),
            checked(*of)
        ),
        ProcessReason::Hazards { acts } => {
            let which: Vec<String> = acts.iter().map(|act| act.operation.to_string()).collect();
            let first = acts
                .first()
                .map_or_else(String::new, |act| answer::caution(act.caution));
            format!(
                "{} not met (operation {}). {first}",
                count(acts.len(), "hazard was", "hazards were"),
                which.join(", ")
            )
        }
        ProcessReason::Reused { parts } => {
            let which: Vec<String> = parts
                .iter()
                .map(|reused| format!("{} at operation {}", bench::part(reused.part), reused.operation))
                .collect();
            format!(
                "{} used again that the card lets be used once ({}): take new ones.",
                count(parts.len(), "part was", "parts were"),
                which.join(", ")
            )
        }
        ProcessReason::NutNotToCard(stands) => nut(stands),
        ProcessReason::NoSeal { operation } => format!(
            "The axle was handed over at operation {operation} without its pinion seal: fit a new one before the flange."
        ),
        ProcessReason::LocksOut { locked } => {
            format!("{locked} of 2 side adjusters have their lock in: go on to the next slot and lock it.")
        }
        ProcessReason::CapsSwapped {} => {
            "The 2 caps stand in each other's place: they were bored with the case and fit their own side only."
                .to_owned()
        }
        ProcessReason::CapsLoose { operation } => {
            format!(
                "At hand-over, operation {operation}, the caps were not at full torque: lash read so is another one."
            )
        }
        ProcessReason::BoltsUnsound { operation } => format!(
            "At hand-over, operation {operation}, the ring gear's bolts were not sound: torque them cold, with thread-lock on \
             clean threads."
        ),
        ProcessReason::FewReadings { asked, read, wanted } => format!(
            "{} of {} stood behind the value: set the instrument up afresh and read again, {wanted} times at least.",
            count(*read, "reading", "readings"),
            asked_for(*asked)
        ),
        ProcessReason::FewTurns { turned, wanted_turns } => format!(
            "The pinion was turned {} times in all: rollers find their place over {}.",
            number(*turned, 0),
            number(*wanted_turns, 0)
        ),
        ProcessReason::PackNotMeasured {} => {
            "The pack was measured 0 times as it lies there: labels and sums are not a measurement.".to_owned()
        }
        ProcessReason::PlatesNotLookedAt { looked, all } => {
            format!("{looked} of {all} plates were looked at and then judged.")
        }
    }
}

fn checked(of: Checked) -> &'static str {
    match of {
        Checked::Lash => "lash",
        Checked::Print => "the print",
        Checked::RollingTorque => "rotating torque",
    }
}
