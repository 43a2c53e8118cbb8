//! Outcome: the truth against the card's bands.

use super::best_depth::{PRINT_FULL, best_depth_mm};
use super::handed::Handed;
use super::marks::{Mark, falling, within};
use super::sheet;
use super::verdict::Verdict;
use crate::axle::Moves;
use crate::contact::{self, FlankContact, Placement, Route};
use crate::exercise::counted::Counted;
use crate::exercise::history::Deed;
use crate::exercise::scenario::Window;
use crate::exercise::wanted::DepthFrom;
use crate::quantity::{number, signed};

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
/// What a solid spacer's shims do to rolling torque, N m a mm: the middle of 4 to 9 in-lb a thousandth (common practice, no
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
            format!(
                "{} sound parts were condemned: a verdict on everything tells nobody anything. Condemn what the evidence \
                 shows.",
                verdict.alarms()
            )
        })];
    }
    if verdict.reported_all() {
        return vec![Mark::reached(1.0, true, None, String::new)];
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
            let words: Vec<&str> = missing.iter().map(|c| c.words()).collect();
            let mesh = missing.iter().any(|c| c.needs_mesh());
            format!("{}: there is no judging {}.", handed.missing(mesh), words.join(", "))
        }));
    }
    marks
}

fn marks_of(handed: &Handed<'_>, counted: Counted) -> Vec<Mark> {
    let weight = weight(counted);
    let finished = Some(handed.finish());
    let (outcome, targets) = (&handed.outcome, &handed.attempt.exercise().scenario().targets);
    let nothing = || {
        let why = || {
            format!(
                "At hand-over, operation {}, the teeth did not meet as gears.",
                handed.finish()
            )
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
                || {
                    format!(
                        "Lash differs by {} mm around the ring gear (full marks up to {} mm, none from {} mm): clean the seat, \
                     warm the ring gear, draw the bolts up crosswise, and read its runout.",
                        number(spread, 3),
                        number(most, 3),
                        number(2.0 * most, 3)
                    )
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
                || {
                    format!(
                        "The ring gear's face runs out by {} mm (full marks up to {} mm, none from {} mm): look for a chip on \
                     its seat and fit it warm.",
                        number(runout, 3),
                        number(most, 3),
                        number(2.0 * most, 3)
                    )
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
                || {
                    format!(
                        "The side bearings add {}: {} both sides by the same amount, so that the ring gear stays where it is.",
                        torque_words(felt, full, zero),
                        if felt < full.low { "tighten" } else { "ease" }
                    )
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
    let best = match (handed.attempt.exercise().scenario().depth_from, found) {
        (DepthFrom::Found, Some(found)) => Some(found),
        _ => best_depth_mm(&bench.setting().pair, at, &handed.approval),
    };
    let words = match handed.attempt.exercise().scenario().depth_from {
        DepthFrom::Best => "for the best that this axle can be set to",
        DepthFrom::Found => "for where it ran before",
    };
    let Some(best) = best else {
        return Mark::reached(weight, false, operation, || {
            format!(
                "With the ring gear {} mm from its place no depth leaves a print on the drive flank: set lash first.",
                signed(at.wheel_axial_mm, 3)
            )
        });
    };
    let off = at.pinion_axial_mm - best;
    let [full, zero] = handed.attempt.exercise().scenario().targets.depth_mm;
    Mark::new(weight, falling(off.abs(), full, zero), operation, || {
        let axle = &bench.setting().axle;
        let per_unit = axle.chain().per_unit(axle.depth_shim_member(), Moves::PinionAxial);
        let thicker = -off * per_unit > 0.0;
        format!(
            "The pinion stands {} mm too {} {words} (full marks within {} mm, none from {} \
             mm): make the depth shim {} mm {}.",
            number(off.abs(), 3),
            if off > 0.0 { "shallow" } else { "deep" },
            number(full, 3),
            number(zero, 3),
            number(off.abs(), 2),
            if thicker { "thicker" } else { "thinner" }
        )
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
        let away = (0.5 * (full.low + full.high) - reads) / if slope > 0.1 { slope } else { 1.0 };
        format!(
            "Lash at the tightest place is {} mm in the card's reading (full marks from {} to {} mm, none {} mm outside): \
             move the ring gear {} mm {} the pinion, as much out of one side as into the other.",
            number(reads, 3),
            number(full.low, 3),
            number(full.high, 3),
            number(LASH_ZERO_MM, 3),
            number(away.abs(), 2),
            if away > 0.0 { "away from" } else { "toward" }
        )
    })
}

fn torque_words(felt_nm: f64, full: Window, zero: Window) -> String {
    format!(
        "{} N·m (full marks from {} to {} N·m, none from {} N·m down or {} N·m up)",
        number(felt_nm, 2),
        number(full.low, 2),
        number(full.high, 2),
        number(zero.low, 2),
        number(zero.high, 2)
    )
}

fn pinion_torque(handed: &Handed<'_>, weight: f64) -> Mark {
    let targets = &handed.attempt.exercise().scenario().targets;
    let felt = handed.outcome.pinion_torque_nm.unwrap_or(0.0);
    let (full, zero) = (targets.pinion_torque_nm, targets.pinion_torque_zero_nm);
    Mark::new(weight, within(felt, full, zero), handed.last(&Deed::Pinion), || {
        let low = felt < full.low;
        let way = match (handed.bench().setting().axle.layout().has_sleeve(), low) {
            (true, true) => "turn the nut on, by half of what is missing each time".to_owned(),
            (true, false) => "fit a new sleeve and stop earlier: backing off leaves no preload".to_owned(),
            (false, low) => format!(
                "make the spacer shims about {} mm {}",
                number(full.outside(felt) / NM_PER_SHIM_MM, 3),
                if low { "thinner" } else { "thicker" }
            ),
        };
        format!(
            "Settled, the pinion alone turns with {}: {way}.",
            torque_words(felt, full, zero)
        )
    })
}

fn nut_torque(handed: &Handed<'_>, weight: f64) -> Mark {
    let (share, stands, limits) = nut_share(handed);
    Mark::new(weight, share, handed.last(&Deed::Pinion), || nut_words(stands, limits))
}

/// How far the nut's torque keeps to its limits, what it stands at, and the limits, N m.
pub(super) fn nut_share(handed: &Handed<'_>) -> (f64, f64, [f64; 2]) {
    let targets = &handed.attempt.exercise().scenario().targets;
    let [least, most] = [targets.nut_torque_nm, targets.most_nut_torque_nm];
    let stands = handed.bench().nut_torque_nm().unwrap_or(0.0);
    // A wrench that is right within what is permitted to it must not cost anything.
    let full = Window {
        low: (1.0 - WRENCH_SHARE) * least,
        high: most,
    };
    let zero = Window {
        low: full.low - NUT_ZERO_SHARE * least,
        high: (1.0 + NUT_ZERO_SHARE) * most,
    };
    (within(stands, full, zero), stands, [least, most])
}

pub(super) fn nut_words(stands_nm: f64, [least, most]: [f64; 2]) -> String {
    format!(
        "The pinion nut stands at {} N·m; the card wants {} N·m at least and {} N·m at most: {}.",
        number(stands_nm, 0),
        number(least, 0),
        number(most, 0),
        if stands_nm < least {
            "less clamp lets the parts work loose, so tighten it to the card"
        } else {
            "more spoils thread and spacer, so begin again with new parts"
        }
    )
}

fn prints(handed: &Handed<'_>, weight: f64) -> Vec<Mark> {
    let operation = handed.last(&Deed::Depth).or_else(|| handed.last(&Deed::Side));
    let Some(flanks) = &handed.outcome.flanks else {
        return vec![Mark::reached(weight, false, operation, || {
            format!("At hand-over, operation {}, there was no print.", handed.finish())
        })];
    };
    let approved = [&handed.approval.drive, &handed.approval.coast];
    let named = [("drive", 1.0), ("coast", COAST_TIMES)];
    let mut marks = Vec::new();
    for (((flank, approved), (name, times)), part) in flanks.iter().zip(approved).zip(named).zip(FLANKS) {
        marks.push(print(weight * part, flank, approved, (name, times), operation));
    }
    marks
}

fn print(
    weight: f64,
    flank: &FlankContact,
    approved: &FlankContact,
    (name, times): (&str, f64),
    operation: Option<u32>,
) -> Mark {
    let edge = |f: &FlankContact| f.edge_contact.map_or(0.0, |e| e.wheel + e.pinion_tip);
    let (Some(print), Some(wanted)) = (flank.pattern, approved.pattern) else {
        return Mark::reached(weight, false, operation, || {
            format!("The {name} flank shows no print: 0 % of it is marked. Set depth and lash first.")
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
        let bands = format!(
            "full marks within {} along and {} up, none from {}",
            number(times * PRINT_FULL[0], 2),
            number(times * PRINT_FULL[1], 2),
            number(times * PRINT_ZERO, 2)
        );
        if on_edge > EDGE_SHARE {
            format!(
                "On the {name} flank an edge touches over {} % of the roll: bring the height right by depth before anything \
                 else.",
                number(100.0 * on_edge, 0)
            )
        } else {
            format!(
                "The {name} print lies {} along and {} up from the approval print ({bands}): height on both flanks first, by \
                 depth; length is the second witness.",
                signed(off[0], 2),
                signed(off[1], 2)
            )
        }
    })
}
