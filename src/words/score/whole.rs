//! Why points of the whole attempt were lost.

use crate::exercise::Incurable;
use crate::exercise::score::reason::{CapCause, Whole};
use crate::quantity::{degrees, number, signed};
use crate::words::{answer, bench};

pub(super) fn words(reason: &Whole) -> String {
    match reason {
        Whole::NotHandedOver { operations } => {
            format!("The axle was not handed over in {operations} operations: finish, and it is judged.")
        }
        Whole::Capped { cause, most, without } => format!(
            "{} No more than {} of 100 points are left; without it there were {}.",
            capped(cause),
            number(*most, 0),
            number(*without, 1)
        ),
    }
}

fn capped(cause: &CapCause) -> String {
    match cause {
        CapCause::Unsafe { operation, caution } => format!(
            "Operation {operation} was done without its precaution. {}",
            answer::caution(*caution)
        ),
        CapCause::Missed { operation, fault } => format!(
            "At hand-over, operation {operation}, it was not reported with evidence that {}; no setting cures that. Compare \
             the numbers, take prints at two depths, and condemn the {} by them.",
            incurable(fault),
            bench::part(fault.part())
        ),
        CapCause::FalseAlarm { operation, part } => format!(
            "Operation {operation} condemned the {}, which nothing is wrong with: that costs like a fault missed. Bracket \
             with two builds before a part is blamed.",
            bench::part(*part)
        ),
    }
}

/// What no setting cures, as a clause.
fn incurable(fault: &Incurable) -> String {
    match fault {
        Incurable::NumbersDiffer {
            pinion_number,
            wheel_number,
        } => format!(
            "the pinion is etched {pinion_number}, the ring gear {wheel_number}: they were never lapped together"
        ),
        Incurable::OffsetOff { off_mm, most_mm } => format!(
            "the axes lie {} mm off their offset, {} mm may pass",
            signed(*off_mm, 3),
            number(*most_mm, 3)
        ),
        Incurable::OutOfSquare { off_rad, most_rad } => format!(
            "the axes stand {}° out of square, {}° may pass",
            signed(degrees(*off_rad), 3),
            number(degrees(*most_rad), 3)
        ),
        Incurable::RingGearOverheated { operation } => format!("operation {operation} overheated the ring gear"),
    }
}
