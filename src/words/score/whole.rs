//! Why points of the whole attempt were lost.

use crate::exercise::Incurable;
use crate::exercise::score::reason::{CapCause, Whole};
use crate::quantity::{degrees, number};
use crate::words::debrief::amount::both;
use crate::words::{answer, bench, say};

pub(super) fn words(reason: &Whole) -> String {
    match reason {
        Whole::NotHandedOver { operations } => say!("score-not-signed-off", operations = *operations),
        Whole::Capped { cause, most, without } => say!(
            "score-capped",
            cause = capped(cause),
            most = number(*most, 0),
            without = number(*without, 1)
        ),
    }
}

fn capped(cause: &CapCause) -> String {
    match cause {
        CapCause::Unsafe { operation, caution } => say!(
            "score-cap-unsafe",
            operation = *operation,
            caution = answer::caution(*caution)
        ),
        CapCause::Missed { operation, fault } => say!(
            "score-cap-missed",
            operation = *operation,
            fault = incurable(fault),
            part = bench::part(fault.part())
        ),
        CapCause::FalseAlarm { operation, part } => say!(
            "score-cap-false-alarm",
            operation = *operation,
            part = bench::part(*part)
        ),
    }
}

/// What no setting cures, as a sentence.
fn incurable(fault: &Incurable) -> String {
    match fault {
        Incurable::NumbersDiffer {
            pinion_number,
            wheel_number,
        } => say!(
            "score-fault-numbers",
            pinion = *pinion_number,
            ring_gear = *wheel_number
        ),
        Incurable::OffsetOff { off_mm, most_mm } => {
            say!("score-fault-offset", off = both(off_mm.abs()), most = both(*most_mm))
        }
        Incurable::OutOfSquare { off_rad, most_rad } => say!(
            "score-fault-square",
            off = number(degrees(off_rad.abs()), 3),
            most = number(degrees(*most_rad), 3)
        ),
        Incurable::RingGearOverheated { operation } => say!("score-fault-overheated", operation = *operation),
    }
}
