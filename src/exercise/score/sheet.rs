//! Outcome of exercises that ask for something else than an axle: values, a pack, judgements of painted plates.

use super::handed::Handed;
use super::marks::{Mark, falling};
use super::reason::{OutcomeReason, PlateNeeds, ProcessReason};
use crate::bench::{Measurand, Operation, PlateJudged};
use crate::exercise::attempt::Attempt;
use crate::exercise::judgement::TURNS;
use crate::exercise::scenario::{Asked, AskedFor};

/// A pack is right within, and worth nothing beyond, mm.
pub(in crate::exercise) const PACK_MM: [f64; 2] = [0.010, 0.030];
/// Share of the plates that has to be judged right for full marks, and the share that guessing reaches.
const PLATES: [f64; 2] = [10.0 / 12.0, 1.0 / 3.0];
/// Readings that a value stands on, at least.
const READINGS: usize = 2;

/// Marks of everything besides the axle that the exercise asks for.
pub(super) fn marks(handed: &Handed<'_>) -> Vec<Mark> {
    let scenario = handed.attempt.exercise().scenario();
    let mut marks: Vec<Mark> = scenario.asked.iter().map(|asked| value(handed, asked)).collect();
    marks.extend(pack(handed));
    marks.extend(plates(handed));
    marks
}

/// Marks for how it was gone about.
pub(super) fn ways(handed: &Handed<'_>) -> Vec<Mark> {
    let (bench, scenario) = (handed.bench(), handed.attempt.exercise().scenario());
    let mut marks = Vec::new();
    for asked in &scenario.asked {
        let read = bench
            .records()
            .iter()
            .filter(|r| !r.stale && asked.what.is(r.what))
            .count();
        let share = read.min(READINGS) as f64 / READINGS as f64;
        marks.push(Mark::new(3.0, share, None, || ProcessReason::FewReadings {
            asked: asked.what,
            read,
            wanted: READINGS,
        }));
        if asked.what == AskedFor::RollingTorque {
            let turned = bench.assembly().pinion_turns;
            marks.push(Mark::reached(3.0, turned >= TURNS, None, || ProcessReason::FewTurns {
                turned,
                wanted_turns: TURNS,
            }));
        }
    }
    if let Some(wanted) = scenario.pack {
        let what = Measurand::ShimPack { place: wanted.place };
        let measured = bench.records().iter().filter(|r| !r.stale && r.what == what).count();
        marks.push(Mark::reached(3.0, measured > 0, None, || {
            ProcessReason::PackNotMeasured {}
        }));
    }
    if scenario.plates.is_some() {
        let all = bench.setting().plates.len();
        let looked = (0_u32..)
            .zip(&bench.setting().plates)
            .filter(|(plate, _)| {
                first_said(handed.attempt, *plate).is_some_and(|said| {
                    let seen = |r: &&crate::bench::Record| {
                        r.what == (Measurand::Plate { plate: *plate }) && r.operation < said.operation
                    };
                    bench.records().iter().any(|r| seen(&r))
                })
            })
            .count();
        marks.push(Mark::new(3.0, looked as f64 / all.max(1) as f64, None, || {
            ProcessReason::PlatesNotLookedAt { looked, all }
        }));
    }
    marks
}

/// A value that was asked for, by its last note.
fn value(handed: &Handed<'_>, asked: &Asked) -> Mark {
    let notes = handed.bench().notes();
    let Some(note) = notes.iter().rev().find(|n| asked.what.is(n.what)) else {
        return Mark::reached(1.0, false, Some(handed.finish()), || OutcomeReason::ValueNotWritten {
            asked: asked.what,
        });
    };
    let Some(truth) = truth(handed, asked.what, note.what) else {
        return Mark::reached(1.0, false, Some(note.operation), || OutcomeReason::ValueOfNothing {
            operation: note.operation,
            noted: note.value,
        });
    };
    let off = (note.value - truth).abs();
    Mark::new(1.0, falling(off, asked.full, asked.zero), Some(note.operation), || {
        OutcomeReason::ValueOff {
            asked: asked.what,
            noted: note.value,
            truth,
            full: asked.full,
            zero: asked.zero,
        }
    })
}

/// What is true of a value that was asked for.
fn truth(handed: &Handed<'_>, what: AskedFor, noted: Measurand) -> Option<f64> {
    let (bench, outcome) = (handed.bench(), &handed.outcome);
    let gears = bench.setting().axle.gears();
    match (what, noted) {
        (AskedFor::Lash, Measurand::Lash { tooth }) => {
            let stem = handed.attempt.exercise().scenario().targets.stem.stem();
            Some(stem.share(gears) * bench.mean_play_mm(tooth)?)
        }
        (AskedFor::Lash, _) => None,
        (AskedFor::RollingTorque, _) => Some(outcome.pinion_torque_nm? + outcome.side_torque_nm.unwrap_or(0.0)),
        (AskedFor::PinionDepth, _) => bench.built().pinion?.head_distance_mm,
        (AskedFor::PinionEndPlay, _) => outcome.pinion_play_mm,
        (AskedFor::WheelFaceRunout, _) => {
            bench.assembly().wheel?;
            Some(outcome.wheel_face_runout_mm * gears.outer_pitch_radius_mm / gears.wheel_mean_radius_mm)
        }
    }
}

fn pack(handed: &Handed<'_>) -> Option<Mark> {
    let wanted = handed.attempt.exercise().scenario().pack?;
    let bench = handed.bench();
    let pieces = bench.packs().at(wanted.place).len();
    let size_mm = bench.packs().thickness_mm(&bench.setting().kit, wanted.place);
    let [full, zero] = PACK_MM;
    let most = usize::try_from(wanted.pieces).unwrap_or(usize::MAX);
    let right = falling((size_mm - wanted.size_mm).abs(), full, zero);
    let share = if pieces > most { 0.5 * right } else { right };
    let fits = |s: &Operation| matches!(s, Operation::FitShims { place, .. } if *place == wanted.place);
    let last = handed
        .attempt
        .steps()
        .iter()
        .rev()
        .find(|s| s.answer.done && fits(&s.operation));
    Some(Mark::new(1.0, share, last.map(|s| s.answer.operation), || {
        OutcomeReason::Pack {
            size_mm,
            pieces,
            wanted_mm: wanted.size_mm,
            full_mm: full,
            zero_mm: zero,
            most_pieces: most,
        }
    }))
}

/// The first judgement of a plate: what is said after it does not count.
fn first_said(attempt: &Attempt, plate: u32) -> Option<&PlateJudged> {
    attempt.bench().plates_judged().iter().find(|j| j.plate == plate)
}

/// For each plate its number, what it needs, and what was said of it.
pub(super) fn judged(attempt: &Attempt) -> Vec<(u32, PlateNeeds, Option<&PlateJudged>)> {
    (0_u32..)
        .zip(&attempt.bench().setting().plates)
        .map(|(plate, painted)| {
            (
                plate,
                PlateNeeds::of(painted.placement.pinion_axial_mm),
                first_said(attempt, plate),
            )
        })
        .collect()
}

/// Whether what is needed was called the likeliest.
fn is_right(needed: PlateNeeds, said: &PlateJudged) -> bool {
    let needed = needed.index();
    let own = said.chances.get(needed).copied().unwrap_or(0.0);
    (0..3)
        .zip(said.chances)
        .all(|(place, chance)| place == needed || chance < own)
}

fn plates(handed: &Handed<'_>) -> Option<Mark> {
    handed.attempt.exercise().scenario().plates.as_ref()?;
    let judged = judged(handed.attempt);
    let right = judged
        .iter()
        .filter(|(_, needed, said)| said.is_some_and(|s| is_right(*needed, s)))
        .count();
    let wrong = judged
        .iter()
        .find_map(|(_, needed, said)| said.filter(|s| !is_right(*needed, s)).map(|s| s.operation));
    let all = judged.len();
    let [full, none] = PLATES;
    let share = (right as f64 / all.max(1) as f64 - none) / (full - none);
    Some(Mark::new(1.0, share.min(1.0), wrong, || OutcomeReason::Plates {
        right,
        all,
        full_from: (full * all as f64).ceil(),
    }))
}
