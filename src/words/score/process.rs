//! Why points of the process were lost.

use super::shared::{asked_for, missing, nut};
use crate::exercise::score::reason::{Checked, ProcessReason, ReusedPart, UnsafeAct};
use crate::quantity::number;
use crate::words::{answer, bench, say};

pub(super) fn words(reason: &ProcessReason) -> String {
    match reason {
        ProcessReason::NumbersNotCompared {} => say!("score-numbers-not-compared"),
        ProcessReason::NotBracketed {} => say!("score-not-bracketed"),
        ProcessReason::NothingToVerify {
            operation,
            missing: what,
        } => say!("score-nothing-to-verify", missing = missing(*operation, *what)),
        ProcessReason::LashUnverified {
            places,
            wanted,
            one_side,
            coarse,
            acceptable_share,
            overtaken,
        } => {
            let share = number(100.0 * acceptable_share, 0);
            let sentences = [
                Some(say!("score-lash-unverified", places = *places, wanted = *wanted)),
                one_side.then(|| say!("score-lash-one-side")),
                (*coarse > 0).then(|| say!("score-lash-coarse", count = *coarse, share = share)),
                (*overtaken > 0).then(|| say!("score-lash-stale", count = *overtaken)),
                Some(say!("score-lash-again")),
            ];
            sentences.into_iter().flatten().collect::<Vec<_>>().join(" ")
        }
        ProcessReason::PrintUnverified { faint, overtaken } => {
            say!("score-print-unverified", faint = *faint, stale = *overtaken)
        }
        ProcessReason::PrintKnownWrong {
            operation,
            off: [along, up],
        } => say!(
            "score-print-known-wrong",
            operation = *operation,
            along = number(*along, 2),
            up = number(*up, 2)
        ),
        ProcessReason::TorqueUnverified { overtaken } => say!("score-torque-unverified", stale = *overtaken),
        ProcessReason::TorqueReadEarly { turns, wanted_turns } => say!(
            "score-torque-early",
            turns = number(*turns, 0),
            wanted = number(*wanted_turns, 0)
        ),
        ProcessReason::NoteMissing { of, notes } => say!("score-note-missing", of = checked(*of), notes = *notes),
        ProcessReason::NoteUnfounded { of, notes } => {
            say!("score-note-unfounded", of = checked(*of), notes = *notes)
        }
        ProcessReason::Hazards { acts } => hazards(acts),
        ProcessReason::Reused { parts } => reused(parts),
        ProcessReason::NutNotToCard(stands) => nut(stands),
        ProcessReason::NoSeal { operation } => say!("score-no-seal", operation = *operation),
        ProcessReason::LocksOut { locked } => say!("score-locks-out", locked = *locked),
        ProcessReason::CapsSwapped {} => say!("score-caps-swapped"),
        ProcessReason::CapsLoose { operation } => say!("score-caps-loose", operation = *operation),
        ProcessReason::BoltsUnsound { operation } => say!("score-bolts-unsound", operation = *operation),
        ProcessReason::FewReadings { asked, read, wanted } => say!(
            "score-few-readings",
            quantity = asked_for(*asked),
            read = *read,
            wanted = *wanted
        ),
        ProcessReason::FewTurns { turned, wanted_turns } => say!(
            "score-few-turns",
            turns = number(*turned, 0),
            wanted = number(*wanted_turns, 0)
        ),
        ProcessReason::PackNotMeasured {} => say!("score-pack-not-measured"),
        ProcessReason::PlatesNotLookedAt { looked, all } => {
            say!("score-plates-not-looked-at", looked = *looked, all = *all)
        }
    }
}

fn hazards(acts: &[UnsafeAct]) -> String {
    let operations: Vec<String> = acts.iter().map(|act| act.operation.to_string()).collect();
    let first: Vec<_> = acts.iter().take(1).map(|act| answer::caution(act.caution)).collect();
    say!(
        "score-hazards",
        count = acts.len(),
        operations = operations.join(", "),
        caution = first.concat()
    )
}

fn reused(parts: &[ReusedPart]) -> String {
    let which: Vec<String> = parts
        .iter()
        .map(|reused| {
            say!(
                "score-reused-part",
                part = bench::part(reused.part),
                operation = reused.operation
            )
        })
        .collect();
    say!("score-reused", count = parts.len(), parts = which.join("; "))
}

/// What is checked, as messages choose by it.
const fn checked(of: Checked) -> &'static str {
    match of {
        Checked::Lash => "lash",
        Checked::Print => "print",
        Checked::RollingTorque => "torque",
    }
}
