//! From scenario and seed to hidden truth.

use std::collections::BTreeMap;
use std::f64::consts::TAU;

use super::fitted::Fitted;
use super::scenario::{Factor, Fault, FaultKind, Scenario};
use crate::axle::{Member, Truth};
use crate::gear::{EaseOff, Hunting};
use crate::numerics::random::Stream;

/// Members that swing once a turn and so have a direction.
const SWINGING: [Member; 5] = [
    Member::WheelFaceRunout,
    Member::WheelRadialRunout,
    Member::WheelSeatChip,
    Member::WheelTilt,
    Member::PinionRunout,
];
/// Pitch errors that are lapped into the classes of teeth that meet only each other, µm. Common practice, no source.
const CLASS_ERROR_UM: [f64; 2] = [5.0, 10.0];

/// The truth of a seed: the same bits on every machine. `teeth` are those of pinion and wheel.
///
/// Every number comes from a stream of its own name, so that a scenario with one more of them, wherever it stands in the
/// file, leaves the others as they are.
pub fn truth(scenario: &Scenario, teeth: [u32; 2], seed: u64) -> Truth {
    let stream = |name: &str| Stream::new(seed, name);
    let mut truth = Truth::default();
    for (member, spread) in &scenario.made {
        let size = spread.draw(&mut stream(&format!("made {}", member.name())));
        truth.deviations.set(*member, size);
    }
    for member in SWINGING {
        let phase = stream(&format!("phase {}", member.name())).between(0.0, TAU);
        truth.phases_rad.set(member, phase);
    }
    truth.mark_etched_mm = truth.deviations.get(Member::PinionMark);
    for (factor, spread) in &scenario.factors {
        let (name, _) = factor.name_and_range();
        set(&mut truth, *factor, spread.draw(&mut stream(&format!("factor {name}"))));
    }
    // Marks are etched in hundredths.
    truth.mark_etched_mm = (100.0 * truth.mark_etched_mm).round() / 100.0;
    // Bearings that ran before do not settle again.
    if !scenario.start.new_bearings {
        truth.friction.unturned_share *= 0.3;
    }
    let mut numbers = stream("match number");
    let number = 100 + small(numbers.index(900));
    let pinion_of_another_set = 100 + (number - 100 + 1 + small(numbers.index(898))) % 900;
    truth.pair.pinion_number = number;
    truth.pair.wheel_number = number;
    truth.pair.class_errors_um = class_errors(teeth, &mut stream("class errors"));
    for (fault, there) in scenario.faults.iter().zip(faults_there(scenario, seed)) {
        let mut drawn = stream(&format!("fault {}", fault.name));
        put_in(&mut truth, fault, there, &mut drawn, pinion_of_another_set);
    }
    // What stands together at the start was pressed home; a bare bench holds no swapped caps.
    if scenario.start.fitted == Fitted::Nothing {
        truth.case.caps_found_swapped = false;
    }
    truth
}

/// Which of the scenario's faults are there in a seed, in their order.
pub(super) fn faults_there(scenario: &Scenario, seed: u64) -> Vec<bool> {
    // Faults that exclude each other share one draw and take turns along it.
    let mut taken: BTreeMap<u32, f64> = BTreeMap::new();
    scenario
        .faults
        .iter()
        .map(|fault| match fault.one_of {
            None => Stream::new(seed, &format!("fault {} there", fault.name)).unit() < fault.share,
            Some(group) => {
                let drawn = Stream::new(seed, &format!("one of {group}")).unit();
                let from = taken.entry(group).or_insert(0.0);
                let there = drawn >= *from && drawn < *from + fault.share;
                *from += fault.share;
                there
            }
        })
        .collect()
}

fn set(truth: &mut Truth, factor: Factor, value: f64) {
    match factor {
        Factor::MarkErrorMm => truth.mark_etched_mm += value,
        Factor::SleeveYield => truth.sleeve.yield_times = value,
        Factor::SleeveHardening => truth.sleeve.hardening_times = value,
        Factor::NutFriction => truth.nut.friction_times = value,
        Factor::NutScatter => truth.nut.scatter_share = value,
        Factor::HeadFriction => truth.friction.head_times = value,
        Factor::TailFriction => truth.friction.tail_times = value,
        Factor::SideFriction => truth.friction.side_times = value,
        Factor::SealDrag => truth.friction.seal_times = value,
        Factor::CaseStiffness => truth.case.stiffness_times = value,
        Factor::ThreadSlackMm => truth.case.thread_slack_mm = [value; 2],
        Factor::WheelInterferenceMm => truth.wheel_fit.interference_mm = value,
        Factor::HeadConePressN => truth.press.head_cone_n = value,
        Factor::HeadCupPressN => truth.press.head_cup_n = value,
        Factor::TailCupPressN => truth.press.tail_cup_n = value,
    }
}

fn class_errors([pinion, wheel]: [u32; 2], stream: &mut Stream) -> Vec<f64> {
    let classes = Hunting::of(pinion, wheel).map_or(1, |hunting| hunting.classes);
    if classes < 2 {
        return Vec::new();
    }
    (0..classes)
        .map(|_| {
            let [low, high] = CLASS_ERROR_UM;
            let size = stream.between(low, high);
            if stream.unit() < 0.5 { -size } else { size }
        })
        .collect()
}

/// Puts a fault in, if this seed has it. What is drawn does not depend on whether it does.
fn put_in(truth: &mut Truth, fault: &Fault, there: bool, stream: &mut Stream, pinion_of_another_set: u32) {
    match fault.kind {
        FaultKind::Size(member, spread) => {
            let size = spread.draw(stream);
            if there {
                truth.deviations.set(member, truth.deviations.get(member) + size);
            }
        }
        FaultKind::MismatchedGears { flank_um } => {
            let mut deviation = || EaseOff {
                lengthwise_slope_um: stream.between(-flank_um, flank_um),
                profile_slope_um: stream.between(-flank_um, flank_um),
                twist_um: stream.between(-flank_um, flank_um),
                ..EaseOff::default()
            };
            let flanks = [deviation(), deviation()];
            if there {
                truth.pair.flank_deviation = flanks;
                truth.pair.pinion_number = pinion_of_another_set;
            }
        }
        FaultKind::SwappedCaps => truth.case.caps_found_swapped |= there,
        FaultKind::ChipUnderWheel => truth.wheel_fit.found_dirty |= there,
        FaultKind::WornFlanks { flank_um } => {
            // Wear takes the crown and leans to where the load was.
            let mut worn = || EaseOff {
                lengthwise_crown_um: -stream.between(0.2, 0.6) * flank_um,
                profile_crown_um: -stream.between(0.2, 0.6) * flank_um,
                lengthwise_slope_um: stream.between(-flank_um, flank_um),
                profile_slope_um: stream.between(-flank_um, flank_um),
                ..EaseOff::default()
            };
            let flanks = [worn(), worn()];
            if there {
                truth.pair.flank_deviation = flanks;
            }
        }
    }
}

/// A number below a thousand.
fn small(number: u64) -> u32 {
    u32::try_from(number).unwrap_or(0)
}
