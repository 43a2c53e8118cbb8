//! Shim packs, etched numbers and marks, painted plates: labels beside what they label.

use crate::axle::Member;
use crate::bench::{Measurand, Record, ShimPlace};
use crate::exercise::attempt::Attempt;
use crate::exercise::score::PlateNeeds;

/// A pack as handed over.
#[derive(Debug, Clone, PartialEq)]
pub struct PackFitted {
    /// Where it lies.
    pub place: ShimPlace,
    /// Its pieces.
    pub pieces: Vec<PieceFitted>,
    /// Sum of the labels, mm.
    pub labelled_mm: f64,
    /// What a micrometer showed of the whole pack last, mm.
    pub read_mm: Option<f64>,
    /// True thickness with whatever dirt and burrs lie between, mm.
    pub truth_mm: f64,
}

/// A piece of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PieceFitted {
    /// Its number in the kit.
    pub number: u32,
    /// What its label says, mm.
    pub labelled_mm: f64,
    /// What a micrometer showed last, mm.
    pub read_mm: Option<f64>,
    /// True thickness, mm.
    pub truth_mm: f64,
}

/// What is etched on the gears, and what is true of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GearMarks {
    /// The operation that compared them, if one did.
    pub compared: Option<u32>,
    /// Number on the pinion and on the ring gear.
    pub numbers: [u32; 2],
    /// Mark on the pinion's head, mm, + stands farther out.
    pub mark_etched_mm: f64,
    /// What it ought to say, mm.
    pub mark_truth_mm: f64,
}

/// A painted plate.
#[derive(Debug, Clone, PartialEq)]
pub struct PlateSeen {
    /// Its number, from 0.
    pub plate: u32,
    /// Name of the set written on it.
    pub gears: String,
    /// How much deeper its pinion has to come, mm; negative: shallower.
    pub deeper_truth_mm: f64,
    /// What it needs.
    pub needs: PlateNeeds,
    /// What was said first: operation, chances of deeper, right, shallower.
    pub said: Option<(u32, [f64; 3])>,
}

/// All packs that are fitted, in the order of their places.
pub(super) fn packs(attempt: &Attempt) -> Vec<PackFitted> {
    let bench = attempt.bench();
    let kit = &bench.setting().kit;
    let last = |what: Measurand| bench.records().iter().rev().find(|r| r.what == what);
    ShimPlace::ALL
        .into_iter()
        .filter(|place| !bench.packs().at(*place).is_empty())
        .map(|place| {
            let pieces: Vec<PieceFitted> = bench
                .packs()
                .at(place)
                .iter()
                .filter_map(|&index| {
                    let number = u32::try_from(index).ok()?;
                    Some(PieceFitted {
                        number,
                        labelled_mm: kit.get(index)?.labelled_mm,
                        read_mm: last(Measurand::ShimPiece { piece: number }).and_then(Record::main_value),
                        truth_mm: bench.packs().height_mm(kit, index),
                    })
                })
                .collect();
            PackFitted {
                place,
                labelled_mm: pieces.iter().map(|p| p.labelled_mm).sum(),
                pieces,
                // Of a pack that was made up anew since it says nothing.
                read_mm: last(Measurand::ShimPack { place })
                    .filter(|r| !r.stale)
                    .and_then(Record::main_value),
                truth_mm: bench.packs().thickness_mm(kit, place),
            }
        })
        .collect()
}

pub(super) fn marks(attempt: &Attempt) -> GearMarks {
    let bench = attempt.bench();
    let truth = bench.truth();
    let compared = bench.records().iter().find(|r| r.what == Measurand::MatchNumbers {});
    GearMarks {
        compared: compared.map(|r| r.operation),
        numbers: [truth.pair.pinion_number, truth.pair.wheel_number],
        mark_etched_mm: truth.mark_etched_mm,
        mark_truth_mm: truth.deviations.get(Member::PinionMark),
    }
}

pub(super) fn plates(attempt: &Attempt) -> Vec<PlateSeen> {
    let bench = attempt.bench();
    (0_u32..)
        .zip(&bench.setting().plates)
        .map(|(plate, painted)| {
            let out_mm = painted.placement.pinion_axial_mm;
            let said = bench.plates_judged().iter().find(|j| j.plate == plate);
            PlateSeen {
                plate,
                gears: painted.gears.clone(),
                deeper_truth_mm: out_mm,
                needs: PlateNeeds::of(out_mm),
                said: said.map(|s| (s.operation, s.chances)),
            }
        })
        .collect()
}
