//! How the parts were really made: each hidden member of the chain, other hidden numbers, and the faults that may be there.

use crate::axle::{Member, Moves, When};
use crate::bench::{Measurand, Operation};
use crate::exercise::attempt::Attempt;
use crate::exercise::scenario::{Factor, FaultKind};
use crate::exercise::variant::faults_there;

use super::words;

/// Everything hidden.
#[derive(Debug, Clone, PartialEq)]
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
    /// Its name in the trade's words.
    pub words: &'static str,
    /// How far it is from its drawing, mm (degrees for squareness; total over a turn for runouts).
    pub off: f64,
    /// What inspection lets pass, in the same way; 0 where nothing is drawn.
    pub tolerance: f64,
    /// "mm" or "°".
    pub unit: &'static str,
    /// Whether it counts in the axle as handed over.
    pub counts: bool,
    /// What it does to the axle.
    pub shifts: Vec<Shift>,
    /// Where it could be found.
    pub found_by: &'static str,
    /// Whether the bench has something that shows it by itself or mixed with others.
    pub findable: bool,
    /// The first operation that looked where it shows.
    pub looked: Option<u32>,
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
    /// What it is, in the trade's words.
    pub words: &'static str,
    /// Its value.
    pub value: f64,
    /// "×" for times nominal, "mm", "kN", "%".
    pub unit: &'static str,
}

/// Something that may be wrong in this exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct HiddenFault {
    /// What.
    pub words: &'static str,
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
            let (words, found_by, shown_by) = words::member(member, axle.layout().has_cartridge());
            let (times, unit) = if member == Member::Squareness {
                (180.0 / std::f64::consts::PI, "°")
            } else if is_swing(member) {
                (2.0, "mm")
            } else {
                (1.0, "mm")
            };
            Some(HiddenSize {
                member,
                words,
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
                found_by,
                findable: !shown_by.is_empty(),
                looked: looked(attempt, shown_by),
            })
        })
        .collect()
}

/// The first record of one of these quantities.
fn looked(attempt: &Attempt, names: &[&str]) -> Option<u32> {
    let of_it = |what: &Measurand| names.contains(&what.name());
    let records = attempt.bench().records();
    records.iter().find(|r| of_it(&r.what)).map(|r| r.operation)
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
                Factor::SleeveYield => (truth.sleeve.yield_times, "×"),
                Factor::SleeveHardening => (truth.sleeve.hardening_times, "×"),
                Factor::NutFriction => (truth.nut.friction_times, "×"),
                Factor::NutScatter => (100.0 * truth.nut.scatter_share, "%"),
                Factor::HeadFriction => (truth.friction.head_times, "×"),
                Factor::TailFriction => (truth.friction.tail_times, "×"),
                Factor::SideFriction => (truth.friction.side_times, "×"),
                Factor::SealDrag => (truth.friction.seal_times, "×"),
                Factor::CaseStiffness => (truth.case.stiffness_times, "×"),
                Factor::ThreadSlackMm => (tooth_slack_mm, "mm"),
                Factor::WheelInterferenceMm => (truth.wheel_fit.interference_mm, "mm"),
                Factor::HeadConePressN => (1.0e-3 * truth.press.head_cone_n, "kN"),
                Factor::HeadCupPressN => (1.0e-3 * truth.press.head_cup_n, "kN"),
                Factor::TailCupPressN => (1.0e-3 * truth.press.tail_cup_n, "kN"),
            };
            Some(HiddenNumber {
                words: words::factor(*factor),
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
            words: match fault.kind {
                FaultKind::Size(member, _) => words::member(member, scenario.layout.has_cartridge()).0,
                FaultKind::MismatchedGears { .. } => "Pinion and ring gear that were not lapped together",
                FaultKind::SwappedCaps => "Bearing caps in each other's place",
                FaultKind::ChipUnderWheel => "A chip between ring gear and carrier",
                FaultKind::WornFlanks { .. } => "Teeth worn by running",
            },
            there,
            share: fault.share,
        })
        .collect()
}
