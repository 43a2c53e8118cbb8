//! Parts that were condemned, against those that really cannot be set right.

use super::reason::CapCause;
use crate::bench::{Judgement, Measurand, OperationKind, Part};
use crate::exercise::attempt::Attempt;
use crate::exercise::history::Deed;
use crate::exercise::incurable::{Incurable, incurable_now};

/// Placements closer than this are the same for two prints that should bracket something, mm.
const SAME_PLACE_MM: f64 = 0.01;

/// What was said of the parts.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Verdict {
    faults: Vec<Uncured>,
    /// Sound parts that were condemned: operation, part.
    alarms: Vec<(u32, Part)>,
    /// The last operation.
    end: u32,
}

/// Something that no setting cures.
#[derive(Debug, Clone, PartialEq)]
struct Uncured {
    what: Incurable,
    /// The operation that reported it with evidence.
    reported: Option<u32>,
    /// Evidence that was there: numbers compared, prints at two places.
    evidence: [bool; 2],
}

impl Verdict {
    pub(super) fn of(attempt: &Attempt) -> Self {
        let bench = attempt.bench();
        let faults: Vec<Uncured> = incurable_now(bench)
            .into_iter()
            .map(|what| {
                let said = bench.judgements().iter().filter(|j| j.part == what.part());
                let weighed: Vec<(u32, [bool; 2])> = said.map(|j| (j.operation, evidence(attempt, j))).collect();
                // What spoiled a wheel on the bench needs no more evidence than that it was seen.
                let enough = |[numbers, prints]: [bool; 2]| {
                    !what.came_with_axle() || prints || (numbers && what.part() == Part::Gears)
                };
                let good = weighed.iter().find(|(_, evidence)| enough(*evidence));
                Uncured {
                    what,
                    reported: good.map(|(operation, _)| *operation),
                    evidence: good.map_or([false; 2], |(_, evidence)| *evidence),
                }
            })
            .collect();
        let spoiled = |part: Part| bench.setting().single_use.contains(&part);
        let alarms = bench
            .judgements()
            .iter()
            .filter(|j| !faults.iter().any(|f| f.what.part() == j.part) && !spoiled(j.part))
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
        self.faults.iter().any(|f| f.what.came_with_axle())
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
        let brought = || self.faults.iter().filter(|f| f.what.came_with_axle());
        // A case has no number to compare.
        let numbers = brought().all(|f| f.what.part() != Part::Gears || f.evidence[0]);
        [numbers, brought().all(|f| f.evidence[1])]
    }

    /// The operation that reported the first fault.
    pub(super) fn reported(&self) -> Option<u32> {
        self.faults.iter().find_map(|f| f.reported)
    }

    /// Faults that were not reported.
    pub(super) fn missed(&self) -> impl Iterator<Item = CapCause> + '_ {
        let missed = self.faults.iter().filter(|f| f.reported.is_none());
        missed.map(|f| CapCause::Missed {
            operation: self.end,
            fault: f.what,
        })
    }

    /// Sound parts condemned.
    pub(super) fn false_alarms(&self) -> impl Iterator<Item = CapCause> + '_ {
        self.alarms.iter().map(|(operation, part)| CapCause::FalseAlarm {
            operation: *operation,
            part: *part,
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
