//! Parts that were condemned, against those that really cannot be set right.

use crate::axle::{Member, Moves};
use crate::bench::{Judgement, Measurand, OperationKind, Part};
use crate::exercise::attempt::Attempt;
use crate::exercise::history::Deed;
use crate::quantity::{degrees, number, signed};

/// Placements closer than this are the same for two prints that should bracket something, mm.
const SAME_PLACE_MM: f64 = 0.01;

/// What was said of the parts.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Verdict {
    faults: Vec<Fault>,
    /// Sound parts that were condemned: operation, part.
    alarms: Vec<(u32, Part)>,
    /// The last operation.
    end: u32,
}

/// Something that no setting cures.
#[derive(Debug, Clone, PartialEq)]
struct Fault {
    part: Part,
    /// In a clause with its numbers.
    what: String,
    /// Whether it came with the axle; else it was done on the bench.
    brought: bool,
    /// The operation that reported it with evidence.
    reported: Option<u32>,
    /// Evidence that was there: numbers compared, prints at two places.
    evidence: [bool; 2],
}

impl Verdict {
    pub(super) fn of(attempt: &Attempt) -> Self {
        let bench = attempt.bench();
        let truth = bench.truth();
        let mut faults = Vec::new();
        let mut fault = |part: Part, what: String, brought: bool| {
            let said = bench.judgements().iter().filter(|j| j.part == part);
            let weighed: Vec<(u32, [bool; 2])> = said.map(|j| (j.operation, evidence(attempt, j))).collect();
            // What spoiled a wheel on the bench needs no more evidence than that it was seen.
            let enough = |[numbers, prints]: [bool; 2]| !brought || prints || (numbers && part == Part::Gears);
            let good = weighed.iter().find(|(_, evidence)| enough(*evidence));
            faults.push(Fault {
                part,
                what,
                brought,
                reported: good.map(|(operation, _)| *operation),
                evidence: good.map_or([false; 2], |(_, evidence)| *evidence),
            });
        };
        if !truth.numbers_match() {
            let (pinion, wheel) = (truth.pair.pinion_number, truth.pair.wheel_number);
            let what = format!("the pinion is etched {pinion}, the ring gear {wheel}: they were never lapped together");
            fault(Part::Gears, what, true);
        }
        for (member, moves) in [(Member::Offset, Moves::Offset), (Member::Squareness, Moves::ShaftAngle)] {
            let off = truth.deviations.get(member);
            let most = bench.setting().axle.chain().link(member).map_or(0.0, |l| l.tolerance);
            if off.abs() > most {
                let what = if moves == Moves::Offset {
                    format!(
                        "the axes lie {} mm off their offset, {} mm may pass",
                        signed(off, 3),
                        number(most, 3)
                    )
                } else {
                    let (off, most) = (degrees(off), degrees(most));
                    format!(
                        "the axes stand {}° out of square, {}° may pass",
                        signed(off, 3),
                        number(most, 3)
                    )
                };
                fault(Part::Case, what, true);
            }
        }
        if bench.wheel_is_scrap() {
            let heated = bench.ledger().spoiled.iter().find(|(_, part)| *part == Part::Gears);
            let what = format!("operation {} overheated the ring gear", heated.map_or(0, |(o, _)| *o));
            fault(Part::Gears, what, false);
        }
        let spoiled = |part: Part| bench.setting().single_use.contains(&part);
        let alarms = bench
            .judgements()
            .iter()
            .filter(|j| !faults.iter().any(|f| f.part == j.part) && !spoiled(j.part))
            .map(|j| (j.operation, j.part))
            .collect();
        Self {
            faults,
            alarms,
            end: attempt.history().last().map_or(0, |m| m.operation),
        }
    }

    /// Whether an axle that could not be set right was stopped, with evidence, and nothing sound was blamed with it.
    pub(super) fn is_rightful_stop(&self) -> bool {
        self.came_with_fault() && self.alarms.is_empty() && self.faults.iter().all(|f| f.reported.is_some())
    }

    /// Whether the axle came with a fault that no setting cures.
    pub(super) fn came_with_fault(&self) -> bool {
        self.faults.iter().any(|f| f.brought)
    }

    /// Whether all its faults were reported, whatever else was blamed besides.
    pub(super) fn reported_all(&self) -> bool {
        self.came_with_fault() && self.faults.iter().all(|f| f.reported.is_some())
    }

    /// Number of sound parts that were condemned.
    pub(super) fn alarms(&self) -> usize {
        self.alarms.len()
    }

    /// Whether so much was condemned that the verdict says nothing: the operation that went too far.
    pub(super) fn blanket(&self) -> Option<u32> {
        self.alarms.get(1).map(|(operation, _)| *operation)
    }

    /// Evidence for the faults that came with the axle, where all were reported: numbers compared, prints at two places.
    pub(super) fn evidence(&self) -> [bool; 2] {
        let brought = || self.faults.iter().filter(|f| f.brought);
        // A case has no number to compare.
        let numbers = brought().all(|f| f.part != Part::Gears || f.evidence[0]);
        [numbers, brought().all(|f| f.evidence[1])]
    }

    /// The operation that reported the first fault.
    pub(super) fn reported(&self) -> Option<u32> {
        self.faults.iter().find_map(|f| f.reported)
    }

    /// Faults that were not reported: operation and sentence.
    pub(super) fn missed(&self) -> impl Iterator<Item = (u32, String)> + '_ {
        self.faults.iter().filter(|f| f.reported.is_none()).map(|f| {
            let sentence = format!(
                "At hand-over, operation {}, it was not reported with evidence that {}; no setting cures that. Compare the \
                 numbers, take prints at two depths, and condemn the {} by them.",
                self.end,
                f.what,
                f.part.name()
            );
            (self.end, sentence)
        })
    }

    /// Sound parts condemned: operation and sentence.
    pub(super) fn false_alarms(&self) -> impl Iterator<Item = (u32, String)> + '_ {
        self.alarms.iter().map(|(operation, part)| {
            let sentence = format!(
                "Operation {operation} condemned the {}, which nothing is wrong with: that costs like a fault missed. Bracket \
                 with two builds before a part is blamed.",
                part.name()
            );
            (*operation, sentence)
        })
    }
}

/// Whether the numbers had been compared before a judgement, and whether prints at two places stand behind it.
fn evidence(attempt: &Attempt, judgement: &Judgement) -> [bool; 2] {
    let bench = attempt.bench();
    let entries = &bench.ledger().entries;
    let numbers = entries
        .iter()
        .any(|e| e.kind == OperationKind::CompareNumbers && e.operation < judgement.operation);
    let records = bench.records().iter();
    let prints = records.filter(|r| r.what == Measurand::Print {} && judgement.evidence.contains(&r.number));
    let places: Vec<_> = prints
        .filter_map(|record| {
            let looked = |d: &Deed| matches!(d, Deed::Looked { .. });
            let mut history = attempt.history().iter();
            history
                .find(|m| m.operation == record.operation && looked(&m.deed))?
                .rolled_at
        })
        .collect();
    let apart = places.iter().any(|a| {
        places
            .iter()
            .any(|b| (a.pinion_axial_mm - b.pinion_axial_mm).abs() > SAME_PLACE_MM)
    });
    [numbers, apart]
}
