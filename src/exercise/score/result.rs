//! Outcome: the truth against the card's bands.

use super::best_depth::best_depth_mm;
use super::handed::Handed;
use super::marks::{Mark, falling, within};
use super::reason::{NutStands, OutcomeReason, PinionTorqueWay};
use super::sheet;
use super::verdict::Verdict;
use crate::axle::Moves;
use crate::contact::{self, FlankContact, Placement, Route};
use crate::exercise::counted::Counted;
use crate::exercise::history::Deed;
use crate::exercise::judgement::PRINT_FULL;
use crate::exercise::scenario::DepthFrom;
use crate::exercise::scenario::Window;
use crate::gear::Side;

/// Lash outside of its window at which no marks are left, mm (common practice, no source).
pub(in crate::exercise) const LASH_ZERO_MM: f64 = 0.05;
/// Distance of a drive print from its approval print at which no marks are left, either way.
pub(in crate::exercise) const PRINT_ZERO: f64 = 0.5;
/// How much wider the bands of a coast print are.
pub(in crate::exercise) const COAST_TIMES: f64 = 2.0;
/// Weights of drive and coast print.
const FLANKS: [f64; 2] = [0.75, 0.25];
/// Share of the roll on an edge that counts as edge contact, beyond what the approval print has.
pub(in crate::exercise) const EDGE_SHARE: f64 = 0.02;
/// Share of the nut's least torque that is lost in a good wrench and a careful pull: two and a half deviations of 4 %.
pub(in crate::exercise) const WRENCH_SHARE: f64 = 0.10;
/// Share of the nut's torque, beyond, within which marks fall to none.
pub(in crate::exercise) const NUT_ZERO_SHARE: f64 = 0.15;
/// What a solid spacer's shims do to rotating torque, N m a mm: the middle of 4 to 9 in-lb a thousandth (common practice, no
/// source).
const NM_PER_SHIM_MM: f64 = 28.9;

/// How the points are shared out. Judgement: depth and print are what the job is about, and nobody who hands over an axle
/// that runs on its edges has half of the points.
fn weight(counted: Counted) -> f64 {
    match counted {
        Counted::Depth => 17.0,
        Counted::Print => 16.0,
        Counted::Lash => 6.0,
        Counted::PinionTorque => 5.0,
        Counted::NutTorque => 3.0,
        Counted::Spread => 2.5,
        Counted::SideTorque => 2.0,
        Counted::Runout => 1.5,
    }
}

/// Marks of everything that counts; of the verdict alone where the axle could not be set right and that was said, and where
/// everything was blamed.
pub(super) fn marks(handed: &Handed<'_>, verdict: &Verdict) -> Vec<Mark> {
    if let Some(operation) = verdict.blanket() {
        return vec![Mark::reached(1.0, false, Some(operation), || {
            OutcomeReason::BlanketVerdict {
                sound_parts: verdict.alarms(),
            }
        })];
    }
    if verdict.reported_all() {
        return vec![Mark::full(1.0)];
    }
    let there = |counted: Counted| {
        if counted.needs_mesh() {
            handed.meshed
        } else {
            handed.pinion_stays
        }
    };
    let (judged, missing): (Vec<Counted>, Vec<Counted>) = handed.counts().iter().partition(|c| there(**c));
    let mut marks: Vec<Mark> = judged.into_iter().flat_map(|c| marks_of(handed, c)).collect();
    marks.extend(sheet::marks(handed));
    if !missing.is_empty() {
        let weights = missing.iter().map(|c| weight(*c)).sum();
        marks.push(Mark::reached(weights, false, Some(handed.finish()), || {
            let mesh = missing.iter().any(|c| c.needs_mesh());
            OutcomeReason::NotTogether {
                operation: handed.finish(),
                missing: handed.missing(mesh),
                counted: missing,
            }
        }));
    }
    marks
}

fn marks_of(handed: &Handed<'_>, counted: Counted) -> Vec<Mark> {
    let weight = weight(counted);
    let finished = Some(handed.finish());
    let (outcome, targets) = (&handed.outcome, &handed.attempt.exercise().scenario().targets);
    let nothing = || {
        let why = || OutcomeReason::TeethApart {
            operation: handed.finish(),
        };
        vec![Mark::reached(weight, false, finished, why)]
    };
    match counted {
        Counted::Depth => {
            // A pinion alone is judged as if the wheel stood where it was designed to.
            let alone = outcome.pinion_axial_mm.map(|pinion_axial_mm| Placement {
                pinion_axial_mm,
                ..Placement::NOMINAL
            });
            let Some(at) = outcome.placement.or(alone) else {
                return nothing();
            };
            vec![depth(handed, weight, at)]
        }
        Counted::Lash => {
            let (Some([tightest, _]), Some(at)) = (outcome.lash_mm, outcome.placement) else {
                return nothing();
            };
            vec![lash(handed, weight, tightest, at)]
        }
        Counted::Spread => {
            let Some(spread) = outcome.lash_spread_mm else {
                return nothing();
            };
            let spread = stem_share(handed) * spread;
            let most = targets.lash_spread_mm;
            vec![Mark::new(
                weight,
                falling(spread, most, 2.0 * most),
                handed.last(&Deed::Wheel),
                || OutcomeReason::LashSpread {
                    spread_mm: spread,
                    full_mm: most,
                    zero_mm: 2.0 * most,
                },
            )]
        }
        Counted::Runout => {
            let runout = outcome.wheel_face_runout_mm;
            let most = targets.face_runout_mm;
            vec![Mark::new(
                weight,
                falling(runout, most, 2.0 * most),
                handed.last(&Deed::Wheel),
                || OutcomeReason::FaceRunout {
                    runout_mm: runout,
                    full_mm: most,
                    zero_mm: 2.0 * most,
                },
            )]
        }
        Counted::PinionTorque => vec![pinion_torque(handed, weight)],
        Counted::NutTorque => vec![nut_torque(handed, weight)],
        Counted::SideTorque => {
            let felt = outcome.side_torque_nm.unwrap_or(0.0);
            let (full, zero) = (targets.side_torque_nm, targets.side_torque_zero_nm);
            vec![Mark::new(
                weight,
                within(felt, full, zero),
                handed.last(&Deed::Side),
                || OutcomeReason::SideTorque {
                    felt_nm: felt,
                    full_nm: full,
                    zero_nm: zero,
                },
            )]
        }
        Counted::Print => prints(handed, weight),
    }
}

fn depth(handed: &Handed<'_>, weight: f64, at: Placement) -> Mark {
    let bench = handed.bench();
    let operation = handed.last(&Deed::Depth);
    let found = handed.attempt.found_at_mm();
    let from = handed.attempt.exercise().scenario().depth_from;
    let best = match (from, found) {
        (DepthFrom::Found, Some(found)) => Some(found),
        (DepthFrom::Best, _) | (DepthFrom::Found, None) => best_depth_mm(&bench.setting().pair, at, &handed.approval),
    };
    let Some(best) = best else {
        return Mark::reached(weight, false, operation, || OutcomeReason::NoDepthPrints {
            wheel_axial_mm: at.wheel_axial_mm,
        });
    };
    let off = at.pinion_axial_mm - best;
    let [full, zero] = handed.attempt.exercise().scenario().targets.depth_mm;
    Mark::new(weight, falling(off.abs(), full, zero), operation, || {
        let axle = &bench.setting().axle;
        let per_unit = axle.chain().per_unit(axle.depth_shim_member(), Moves::PinionAxial);
        let thicker = -off * per_unit > 0.0;
        OutcomeReason::Depth {
            off_mm: off,
            from,
            full_mm: full,
            zero_mm: zero,
            shim_mm: if thicker { off.abs() } else { -off.abs() },
        }
    })
}

/// What the card's stem shows of a transverse lash.
fn stem_share(handed: &Handed<'_>) -> f64 {
    let stem = handed.attempt.exercise().scenario().targets.stem.stem();
    stem.share(handed.bench().setting().axle.gears())
}

fn lash(handed: &Handed<'_>, weight: f64, tightest: f64, at: Placement) -> Mark {
    let share = stem_share(handed);
    let full = handed.attempt.exercise().scenario().targets.lash_mm;
    let zero = Window {
        low: full.low - LASH_ZERO_MM,
        high: full.high + LASH_ZERO_MM,
    };
    let reads = share * tightest;
    Mark::new(weight, within(reads, full, zero), handed.last(&Deed::Side), || {
        // What the card's stem gains when the wheel is moved away.
        const BY_MM: f64 = 0.05;
        let moved = Placement {
            wheel_axial_mm: at.wheel_axial_mm + BY_MM,
            ..at
        };
        let pair = &handed.bench().setting().pair;
        let least = |at| {
            let curve = contact::lash_mm(pair, at, Route::Exact, 8).unwrap_or_default();
            curve.into_iter().map(|(_, lash)| lash).reduce(f64::min)
        };
        let slope = least(moved)
            .zip(least(at))
            .map_or(share, |(a, b)| share * (a - b) / BY_MM);
        OutcomeReason::Lash {
            reads_mm: reads,
            full_mm: full,
            zero_mm: LASH_ZERO_MM,
            away_mm: (0.5 * (full.low + full.high) - reads) / if slope > 0.1 { slope } else { 1.0 },
        }
    })
}

fn pinion_torque(handed: &Handed<'_>, weight: f64) -> Mark {
    let targets = &handed.attempt.exercise().scenario().targets;
    let felt = handed.outcome.pinion_torque_nm.unwrap_or(0.0);
    let (full, zero) = (targets.pinion_torque_nm, targets.pinion_torque_zero_nm);
    Mark::new(weight, within(felt, full, zero), handed.last(&Deed::Pinion), || {
        let low = felt < full.low;
        let way = match (handed.bench().setting().axle.layout().has_sleeve(), low) {
            (true, true) => PinionTorqueWay::TurnNutOn {},
            (true, false) => PinionTorqueWay::NewSleeve {},
            (false, low) => {
                let by_mm = full.outside(felt) / NM_PER_SHIM_MM;
                PinionTorqueWay::SpacerShims {
                    thicker_mm: if low { -by_mm } else { by_mm },
                }
            }
        };
        OutcomeReason::PinionTorque {
            felt_nm: felt,
            full_nm: full,
            zero_nm: zero,
            way,
        }
    })
}

fn nut_torque(handed: &Handed<'_>, weight: f64) -> Mark {
    let (share, stands) = nut_share(handed);
    Mark::new(weight, share, handed.last(&Deed::Pinion), || {
        OutcomeReason::NutTorque(stands)
    })
}

/// How far the nut's torque keeps to its limits, and what it stands at.
pub(super) fn nut_share(handed: &Handed<'_>) -> (f64, NutStands) {
    let targets = &handed.attempt.exercise().scenario().targets;
    let (least, most) = (targets.nut_torque_nm, targets.most_nut_torque_nm);
    let stands_nm = handed.bench().nut_torque_nm().unwrap_or(0.0);
    // A wrench that is right within what is permitted to it must not cost anything.
    let full = Window {
        low: (1.0 - WRENCH_SHARE) * least,
        high: most,
    };
    let zero = Window {
        low: full.low - NUT_ZERO_SHARE * least,
        high: (1.0 + NUT_ZERO_SHARE) * most,
    };
    let stands = NutStands {
        stands_nm,
        least_nm: least,
        most_nm: most,
    };
    (within(stands_nm, full, zero), stands)
}

fn prints(handed: &Handed<'_>, weight: f64) -> Vec<Mark> {
    let operation = handed.last(&Deed::Depth).or_else(|| handed.last(&Deed::Side));
    let Some(flanks) = &handed.outcome.flanks else {
        return vec![Mark::reached(weight, false, operation, || OutcomeReason::NoPrints {
            operation: handed.finish(),
        })];
    };
    let approved = [&handed.approval.drive, &handed.approval.coast];
    let sides = [(Side::Drive, 1.0), (Side::Coast, COAST_TIMES)];
    let mut marks = Vec::new();
    for (((flank, approved), side), part) in flanks.iter().zip(approved).zip(sides).zip(FLANKS) {
        marks.push(print(weight * part, flank, approved, side, operation));
    }
    marks
}

fn print(
    weight: f64,
    flank: &FlankContact,
    approved: &FlankContact,
    (side, times): (Side, f64),
    operation: Option<u32>,
) -> Mark {
    let edge = |f: &FlankContact| f.edge_contact.map_or(0.0, |e| e.wheel + e.pinion_tip);
    let (Some(print), Some(wanted)) = (flank.pattern, approved.pattern) else {
        return Mark::reached(weight, false, operation, || OutcomeReason::NoPrintOnFlank {
            flank: side,
        });
    };
    let on_edge = edge(flank) - edge(approved);
    let off = [0, 1].map(|k: usize| print.centroid[k] - wanted.centroid[k]);
    let share = if on_edge > EDGE_SHARE {
        0.0
    } else {
        let [along, up] = [0, 1].map(|k: usize| falling(off[k].abs(), times * PRINT_FULL[k], times * PRINT_ZERO));
        if along < up { along } else { up }
    };
    Mark::new(weight, share, operation, || {
        if on_edge > EDGE_SHARE {
            OutcomeReason::EdgeContact {
                flank: side,
                share: on_edge,
            }
        } else {
            OutcomeReason::PrintOff {
                flank: side,
                off,
                full: PRINT_FULL.map(|full| times * full),
                zero: times * PRINT_ZERO,
            }
        }
    })
}
