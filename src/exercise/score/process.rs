//! Process: a final verification that still holds, the sheet, and how the parts were put together.

use super::handed::Handed;
use super::marks::Mark;
use super::reason::{Checked, ProcessReason, ReusedPart, UnsafeAct};
use super::result::nut_share;
use super::sheet;
use super::verdict::Verdict;
use crate::axle::{Caps, SideSetting};
use crate::bench::instrument::{Dial, WrenchKind};
use crate::bench::{Instrument, Measurand, ReadingPart, Record};
use crate::exercise::counted::Counted;
use crate::exercise::history::Deed;
use crate::exercise::judgement::{PRINT_FULL, TURNS};
use crate::exercise::scenario::DepthFrom;
use crate::gear::Side as Flank;

/// Places around the wheel at which lash is read.
const PLACES: usize = 3;
/// Largest share of a window that six deviations of an instrument may take (AIAG, Measurement Systems Analysis: over 30 %
/// an instrument is not acceptable; from memory).
const ACCEPTABLE_SHARE: f64 = 0.30;
/// How far a note of lash may lie from what was read, mm.
const LASH_NOTE_MM: f64 = 0.02;
/// How far a note of torque may lie from what was read, as a share.
const TORQUE_NOTE_SHARE: f64 = 0.10;

/// Weights of the three checks and of their notes: the verification is what the part is for.
const CHECK: f64 = 4.0;
/// The print is where everything shows: it counts twice.
const PRINT_CHECK: f64 = 8.0;
const NOTE: f64 = 2.0;
/// Weight of safety.
const SAFETY: f64 = 2.0;
/// Weight of each way of putting something together.
const WAY: f64 = 1.0;

/// What asks for a check of lash, of the print, of rotating torque.
const LASH: &[Counted] = &[Counted::Lash, Counted::Spread];
const PRINT: &[Counted] = &[Counted::Print, Counted::Depth];
const TORQUE: &[Counted] = &[Counted::PinionTorque, Counted::SideTorque, Counted::NutTorque];
/// A drive print seen farther than this from the approved one, in full bands, is known to be wrong.
const KNOWN_WRONG: f64 = 1.75;

pub(super) fn marks(handed: &Handed<'_>, verdict: &Verdict) -> Vec<Mark> {
    if verdict.is_rightful_stop() {
        let mut marks = Vec::new();
        let [numbers, prints] = verdict.evidence();
        let told = verdict.reported();
        marks.push(Mark::reached(6.0, numbers, told, || {
            ProcessReason::NumbersNotCompared {}
        }));
        marks.push(Mark::reached(6.0, prints, told, || ProcessReason::NotBracketed {}));
        marks.extend([safety(handed), reuse(handed)]);
        return marks;
    }
    let mut marks = sheet::ways(handed);
    if handed.counts().is_empty() {
        if !handed.bench().ledger().unsafe_acts.is_empty() {
            marks.push(safety(handed));
        }
        return marks;
    }
    if !handed.is_together() {
        // Work that was not done was not done well either.
        let why = || ProcessReason::NothingToVerify {
            operation: handed.finish(),
            missing: handed.missing(handed.asks_mesh()),
        };
        return vec![Mark::reached(1.0, false, Some(handed.finish()), why)];
    }
    let asks = |of: &[Counted]| of.iter().any(|c| handed.counts().contains(c));
    if asks(LASH) {
        marks.push(lash_check(handed));
    }
    if handed.asks_mesh() && asks(PRINT) {
        marks.push(print_check(handed));
    }
    if asks(TORQUE) {
        marks.push(torque_check(handed));
    }
    marks.extend(notes(handed));
    // What came in closed up and was left so is nobody's merit.
    if handed.was_worked_on() {
        marks.extend([safety(handed), reuse(handed)]);
        marks.extend(ways(handed));
    }
    marks
}

/// Readings of a quantity that nothing has overtaken.
fn fresh<'a>(handed: &Handed<'a>, of: fn(Measurand) -> bool) -> impl Iterator<Item = &'a Record> {
    let records = handed.bench().records().iter();
    records.filter(move |r| !r.stale && of(r.what))
}

/// How many readings were overtaken by a later change, and the last of them.
fn stale(handed: &Handed<'_>, of: fn(Measurand) -> bool) -> (usize, Option<u32>) {
    let records = handed.bench().records().iter();
    let stale: Vec<u32> = records.filter(|r| r.stale && of(r.what)).map(|r| r.operation).collect();
    (stale.len(), stale.last().copied())
}

fn is_lash(what: Measurand) -> bool {
    matches!(what, Measurand::Lash { .. })
}

fn is_print(what: Measurand) -> bool {
    what == Measurand::Print {}
}

fn is_torque(what: Measurand) -> bool {
    what == Measurand::RollingTorque {}
}

/// Six standard deviations of one reading with a set-up of its own, mm.
fn six_deviations_mm(dial: &Dial) -> f64 {
    6.0 * (dial.set_up_mm * dial.set_up_mm + dial.reading_mm * dial.reading_mm).sqrt()
}

fn lash_check(handed: &Handed<'_>) -> Mark {
    let window = handed.attempt.exercise().scenario().targets.lash_mm;
    let width = window.high - window.low;
    let tools = &handed.bench().setting().tools;
    let mut coarse = 0;
    let mut teeth: Vec<u32> = Vec::new();
    for record in fresh(handed, is_lash) {
        let tool = tools.iter().find(|t| t.name == record.instrument).map(|t| t.instrument);
        let good = matches!(tool, Some(Instrument::Dial(dial)) if six_deviations_mm(&dial) <= ACCEPTABLE_SHARE * width);
        if !good {
            coarse += 1;
        } else if let Measurand::Lash { tooth } = record.what {
            teeth.push(tooth);
        }
    }
    teeth.sort_unstable();
    teeth.dedup();
    let places = teeth.len();
    let around = handed.bench().setting().axle.gears().wheel_teeth;
    // Places all on one side of the wheel say nothing of the other.
    let bunched = widest_gap(&teeth, around) > around.div_ceil(2);
    let share = match (places, bunched) {
        (PLACES.., false) => 1.0,
        (0, _) => 0.0,
        (1, _) => 1.0 / 3.0,
        _ => 2.0 / 3.0,
    };
    let (overtaken, last) = stale(handed, is_lash);
    Mark::new(CHECK, share, last.filter(|_| places == 0), || {
        ProcessReason::LashUnverified {
            places,
            wanted: PLACES,
            one_side: bunched && places >= PLACES,
            coarse,
            acceptable_share: ACCEPTABLE_SHARE,
            overtaken,
        }
    })
}

/// The widest way round from one tooth to the next that was read.
fn widest_gap(sorted: &[u32], around: u32) -> u32 {
    let ends = sorted.first().zip(sorted.last());
    let over = ends.map_or(around, |(first, last)| (first + around).saturating_sub(*last));
    let between = sorted.windows(2).map(|pair| match pair {
        [a, b] => b - a,
        _ => 0,
    });
    between.fold(over, u32::max)
}

fn print_check(handed: &Handed<'_>) -> Mark {
    let mut faint = 0;
    let mut last_clear = None;
    for record in fresh(handed, is_print) {
        let drive = record.centroid(Flank::Drive);
        match drive.filter(|_| record.centroid(Flank::Coast).is_some()) {
            Some(centroid) => last_clear = Some((record.operation, centroid)),
            None => faint += 1,
        }
    }
    let (overtaken, last) = stale(handed, is_print);
    let Some((operation, seen)) = last_clear else {
        return Mark::reached(PRINT_CHECK, false, last, || ProcessReason::PrintUnverified {
            faint,
            overtaken,
        });
    };
    // Worn gears go back to where they ran, whatever their print looks like.
    let judged = handed.attempt.exercise().scenario().depth_from == DepthFrom::Best;
    let off = handed
        .approval
        .drive
        .pattern
        .filter(|_| judged)
        .map_or([0.0; 2], |wanted| {
            [0, 1].map(|k: usize| (seen[k] - wanted.centroid[k]).abs())
        });
    let known = off.iter().zip(PRINT_FULL).any(|(off, full)| *off > KNOWN_WRONG * full);
    Mark::reached(PRINT_CHECK, !known, Some(operation), || {
        ProcessReason::PrintKnownWrong { operation, off }
    })
}

/// Turns that the pinion had made since its bearings were set, before this operation.
fn turns_before(handed: &Handed<'_>, operation: u32) -> f64 {
    let history = handed.attempt.history();
    let before = history.iter().rev().find(|m| m.operation < operation);
    before.map_or(0.0, |m| m.pinion_turns)
}

/// Readings of rotating torque that still hold, by something that can read it.
fn torque_records<'a>(handed: &Handed<'a>) -> impl Iterator<Item = &'a Record> {
    let bench = handed.bench();
    fresh(handed, is_torque).filter(|record| {
        let tool = bench.setting().tools.iter().find(|t| t.name == record.instrument);
        matches!(tool.map(|t| t.instrument), Some(Instrument::Wrench(w)) if w.kind != WrenchKind::Click)
    })
}

fn torque_check(handed: &Handed<'_>) -> Mark {
    let turns: Vec<(u32, f64)> = torque_records(handed)
        .map(|r| (r.operation, turns_before(handed, r.operation)))
        .collect();
    let most = turns.iter().map(|(_, turns)| *turns).fold(0.0, f64::max);
    let share = match (turns.is_empty(), most >= TURNS) {
        (true, _) => 0.0,
        (false, false) => 0.5,
        (false, true) => 1.0,
    };
    let (overtaken, last) = stale(handed, is_torque);
    let operation = turns.last().map(|(operation, _)| *operation).or(last);
    Mark::new(CHECK, share, operation, || {
        if turns.is_empty() {
            ProcessReason::TorqueUnverified { overtaken }
        } else {
            ProcessReason::TorqueReadEarly {
                turns: most,
                wanted_turns: TURNS,
            }
        }
    })
}

/// The set-up sheet: a note for each check, that nothing has overtaken and that a reading bears out.
fn notes(handed: &Handed<'_>) -> Vec<Mark> {
    let lash: Vec<f64> = fresh(handed, is_lash)
        .filter_map(|r| r.value(ReadingPart::Lash))
        .collect();
    let torque: Vec<f64> = fresh(handed, is_torque)
        .filter_map(|r| r.value(ReadingPart::Rolling))
        .collect();
    // A print that is known to be wrong is no verification, however well it is written down.
    let shows_right = print_check(handed).share >= 1.0;
    let lash_holds = |value: f64| lash.iter().any(|read| (read - value).abs() <= LASH_NOTE_MM);
    let torque_holds = |value: f64| {
        torque
            .iter()
            .any(|read| (read - value).abs() <= TORQUE_NOTE_SHARE * read.abs())
    };
    let mut marks = Vec::new();
    let asks = |of: &[Counted]| of.iter().any(|c| handed.counts().contains(c));
    if asks(LASH) {
        marks.push(note(handed, Checked::Lash, &lash_holds));
    }
    if handed.asks_mesh() && asks(PRINT) {
        marks.push(note(handed, Checked::Print, &|_| shows_right));
    }
    if asks(TORQUE) {
        marks.push(note(handed, Checked::RollingTorque, &torque_holds));
    }
    marks
}

fn note(handed: &Handed<'_>, checked: Checked, holds: &dyn Fn(f64) -> bool) -> Mark {
    let of = match checked {
        Checked::Lash => is_lash,
        Checked::Print => is_print,
        Checked::RollingTorque => is_torque,
    };
    let of_it: Vec<_> = handed.bench().notes().iter().filter(|n| of(n.what)).collect();
    let fresh = of_it.iter().filter(|n| !n.stale).count();
    let good = of_it.iter().any(|n| !n.stale && holds(n.value));
    Mark::reached(NOTE, good, of_it.last().map(|n| n.operation), || {
        if fresh == 0 {
            ProcessReason::NoteMissing {
                of: checked,
                notes: of_it.len(),
            }
        } else {
            ProcessReason::NoteUnfounded {
                of: checked,
                notes: fresh,
            }
        }
    })
}

fn safety(handed: &Handed<'_>) -> Mark {
    let acts = &handed.bench().ledger().unsafe_acts;
    Mark::reached(SAFETY, acts.is_empty(), acts.first().map(|(o, _)| *o), || {
        let act = |&(operation, caution): &_| UnsafeAct { operation, caution };
        ProcessReason::Hazards {
            acts: acts.iter().map(act).collect(),
        }
    })
}

fn reuse(handed: &Handed<'_>) -> Mark {
    let reused = &handed.bench().ledger().reused;
    Mark::reached(WAY, reused.is_empty(), reused.first().map(|(o, _)| *o), || {
        let part = |&(operation, part): &_| ReusedPart { operation, part };
        ProcessReason::Reused {
            parts: reused.iter().map(part).collect(),
        }
    })
}

/// How things were closed up.
fn ways(handed: &Handed<'_>) -> Vec<Mark> {
    let bench = handed.bench();
    let assembly = bench.assembly();
    let finish = handed.finish();
    let mut marks = Vec::new();
    // Where the nut's torque is part of the outcome it is not charged twice.
    if !handed.counts().contains(&Counted::NutTorque) {
        let (share, stands) = nut_share(handed);
        marks.push(Mark::new(WAY, share, handed.last(&Deed::Pinion), || {
            ProcessReason::NutNotToCard(stands)
        }));
    }
    marks.push(Mark::reached(WAY, assembly.seal, Some(finish), || {
        ProcessReason::NoSeal { operation: finish }
    }));
    if !handed.asks_mesh() {
        return marks;
    }
    if bench.setting().axle.layout().side_setting() == SideSetting::Adjusters {
        let locked = assembly.side.iter().filter(|s| s.locked).count();
        marks.push(Mark::new(WAY, 0.5 * locked as f64, handed.last(&Deed::Side), || {
            ProcessReason::LocksOut { locked }
        }));
    }
    let caps = assembly.caps == Caps::Torqued && !assembly.caps_swapped;
    marks.push(Mark::reached(WAY, caps, handed.last(&Deed::Side), || {
        if assembly.caps == Caps::Torqued {
            ProcessReason::CapsSwapped {}
        } else {
            ProcessReason::CapsLoose { operation: finish }
        }
    }));
    marks.push(Mark::reached(
        WAY,
        bench.bolts_are_sound(),
        handed.last(&Deed::Wheel),
        || ProcessReason::BoltsUnsound { operation: finish },
    ));
    marks
}
