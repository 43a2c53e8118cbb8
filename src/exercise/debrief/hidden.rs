//! How the parts were really made: each hidden member of the chain, other hidden numbers, and the faults that may be there.

use crate::axle::{Member, Moves, When};
use crate::bench::{MeasurandKind, Operation};
use crate::exercise::attempt::Attempt;
use crate::exercise::scenario::{Factor, FaultKind};
use crate::exercise::variant::faults_there;

use super::shown_by::shown_by;

/// Everything hidden.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Hidden {
    /// Members of the chain, in the chain's order.
    pub sizes: Vec<HiddenSize>,
    /// Other numbers.
    pub numbers: Vec<HiddenNumber>,
    /// What may be wrong in this exercise, and whether it was in this axle.
    pub faults: Vec<HiddenFault>,
}

/// A member of the chain.
#[derive(Debug, Clone, PartialEq)]
pub struct HiddenSize {
    /// Which.
    pub member: Member,
    /// How far it is from its drawing, in its unit; total over a turn for runouts.
    pub off: f64,
    /// What inspection lets pass, in the same way; 0 where nothing is drawn.
    pub tolerance: f64,
    /// In what both are told.
    pub unit: SizeUnit,
    /// Whether it counts in the axle as handed over.
    pub counts: bool,
    /// What it does to the axle.
    pub shifts: Vec<Shift>,
    /// Quantities that show it, by itself or mixed with others; none where nothing on the bench does.
    pub shown_by: &'static [MeasurandKind],
    /// The first operation that looked where it shows.
    pub looked: Option<u32>,
}

/// What a size is told in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SizeUnit {
    /// mm.
    Millimeter,
    /// Degrees.
    Degree,
}

/// What a member moves, and how far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shift {
    /// What.
    pub moves: Moves,
    /// mm (rad for the shaft angle).
    pub by: f64,
}

/// A hidden number beside the chain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HiddenNumber {
    /// What it is.
    pub factor: Factor,
    /// Its value.
    pub value: f64,
    /// In what.
    pub unit: NumberUnit,
}

/// What a hidden number beside the chain is told in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NumberUnit {
    /// Times what the drawing says.
    Times,
    /// Percent.
    Percent,
    /// mm.
    Millimeter,
    /// kN.
    Kilonewton,
}

/// Something that may be wrong in this exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct HiddenFault {
    /// What.
    pub kind: FaultKind,
    /// Whether it was there in this axle.
    pub there: bool,
    /// Share of the axles of this exercise in which it is.
    pub share: f64,
}

pub(super) fn hidden(attempt: &Attempt) -> Hidden {
    Hidden {
        sizes: sizes(attempt),
        numbers: numbers(attempt),
        faults: faults(attempt),
    }
}

/// Runouts are told as a dial shows them: total over a turn, twice the swing.
fn is_swing(member: Member) -> bool {
    matches!(
        member,
        Member::WheelFaceRunout | Member::WheelRadialRunout | Member::WheelSeatChip | Member::PinionRunout
    )
}

fn sizes(attempt: &Attempt) -> Vec<HiddenSize> {
    let bench = attempt.bench();
    let (truth, axle) = (bench.truth(), &bench.setting().axle);
    let set_up_used = attempt
        .steps()
        .iter()
        .any(|s| s.answer.done && matches!(s.operation, Operation::FitSetUpBearings {}));
    let gaps = [Member::HeadConeGap, Member::HeadCupGap, Member::TailCupGap];
    axle.chain()
        .links()
        .filter(|link| !link.member.is_fitted() || gaps.contains(&link.member))
        .filter(|link| set_up_used || link.when != When::SetUpBearings)
        .filter_map(|link| {
            let member = link.member;
            let deviation = truth.deviations.get(member);
            // A gap is no size of a drawing: it is told where it was there.
            if gaps.contains(&member) && deviation.abs() < 1e-9 {
                return None;
            }
            let shown_by = shown_by(member);
            let (times, unit) = if member == Member::Squareness {
                (180.0 / std::f64::consts::PI, SizeUnit::Degree)
            } else if is_swing(member) {
                (2.0, SizeUnit::Millimeter)
            } else {
                (1.0, SizeUnit::Millimeter)
            };
            Some(HiddenSize {
                member,
                off: times * deviation,
                tolerance: times * link.tolerance,
                unit,
                counts: link.when.holds(bench.assembly()),
                shifts: link
                    .effects
                    .iter()
                    .map(|effect| Shift {
                        moves: effect.moves,
                        by: effect.per_unit * deviation,
                    })
                    .collect(),
                shown_by,
                looked: looked(attempt, shown_by),
            })
        })
        .collect()
}

/// The first record of one of these quantities.
fn looked(attempt: &Attempt, kinds: &[MeasurandKind]) -> Option<u32> {
    let mut records = attempt.bench().records().iter();
    records.find(|r| kinds.contains(&r.what.kind())).map(|r| r.operation)
}

fn numbers(attempt: &Attempt) -> Vec<HiddenNumber> {
    let bench = attempt.bench();
    let truth = bench.truth();
    let layout = bench.setting().axle.layout();
    let [tooth_slack_mm, _] = truth.case.thread_slack_mm;
    let scenario = attempt.exercise().scenario();
    scenario
        .factors
        .iter()
        .filter_map(|(factor, _)| {
            let (value, unit) = match factor {
                Factor::SleeveYield | Factor::SleeveHardening if !layout.has_sleeve() => return None,
                Factor::ThreadSlackMm if layout.has_sleeve() => return None,
                // It stands with the numbers and marks of the gears.
                Factor::MarkErrorMm => return None,
                Factor::SleeveYield => (truth.sleeve.yield_times, NumberUnit::Times),
                Factor::SleeveHardening => (truth.sleeve.hardening_times, NumberUnit::Times),
                Factor::NutFriction => (truth.nut.friction_times, NumberUnit::Times),
                Factor::NutScatter => (100.0 * truth.nut.scatter_share, NumberUnit::Percent),
                Factor::HeadFriction => (truth.friction.head_times, NumberUnit::Times),
                Factor::TailFriction => (truth.friction.tail_times, NumberUnit::Times),
                Factor::SideFriction => (truth.friction.side_times, NumberUnit::Times),
                Factor::SealDrag => (truth.friction.seal_times, NumberUnit::Times),
                Factor::CaseStiffness => (truth.case.stiffness_times, NumberUnit::Times),
                Factor::ThreadSlackMm => (tooth_slack_mm, NumberUnit::Millimeter),
                Factor::WheelInterferenceMm => (truth.wheel_fit.interference_mm, NumberUnit::Millimeter),
                Factor::HeadConePressN => (1.0e-3 * truth.press.head_cone_n, NumberUnit::Kilonewton),
                Factor::HeadCupPressN => (1.0e-3 * truth.press.head_cup_n, NumberUnit::Kilonewton),
                Factor::TailCupPressN => (1.0e-3 * truth.press.tail_cup_n, NumberUnit::Kilonewton),
            };
            Some(HiddenNumber {
                factor: *factor,
                value,
                unit,
            })
        })
        .collect()
}

fn faults(attempt: &Attempt) -> Vec<HiddenFault> {
    let scenario = attempt.exercise().scenario();
    scenario
        .faults
        .iter()
        .zip(faults_there(scenario, attempt.seed()))
        .map(|(fault, there)| HiddenFault {
            kind: fault.kind,
            there,
            share: fault.share,
        })
        .collect()
}
