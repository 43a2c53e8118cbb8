//! Where the axle stands against the bands that it is judged by.

use crate::bench::{Measurand, Note, Record, StemChoice};
use crate::contact::{Contact, FlankContact, Placement};
use crate::exercise::attempt::Attempt;
use crate::exercise::counted::Counted;
use crate::exercise::outcome::Outcome;
use crate::exercise::scenario::Window;
use crate::exercise::score::{
    COAST_TIMES, EDGE_SHARE, LASH_ZERO_MM, NUT_ZERO_SHARE, PACK_MM, PRINT_FULL, PRINT_ZERO, WRENCH_SHARE, best_depth_mm,
};
use crate::exercise::wanted::{Asked, AskedFor, DepthFrom};

use super::belief::{Subject, notes_of, true_now};

/// What a standing is measured in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measure {
    /// mm.
    Length,
    /// mm, with its sign: a deviation.
    Deviation,
    /// Felt by hand, N m.
    Torque,
    /// Of a nut, N m.
    NutTorque,
    /// Halves of a tooth's length or height.
    Tooth,
}

/// Where a value lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Place {
    /// Full marks.
    Full,
    /// Some.
    Between,
    /// None.
    Off,
}

/// A quantity that was judged.
#[derive(Debug, Clone, PartialEq)]
pub struct Standing {
    /// What it is, for people.
    pub name: String,
    /// In what.
    pub measure: Measure,
    /// Full marks within. An end that nothing can pass is that of `zero`.
    pub full: Window,
    /// No marks from its ends on.
    pub zero: Window,
    /// What is true; none where what it speaks of is not together.
    pub truth: Option<f64>,
    /// What the trainee wrote down last that still holds.
    pub noted: Option<f64>,
    /// What the trainee's instruments showed last that still holds.
    pub read: Option<f64>,
    /// Whether the note is judged and not the axle.
    pub judges_note: bool,
    /// Whether an edge of the tooth touches: then the place of the print does not matter.
    pub on_edge: bool,
}

impl Standing {
    /// The value that is judged.
    pub fn judged(&self) -> Option<f64> {
        if self.judges_note { self.noted } else { self.truth }
    }

    /// Where it lies; off where there is none.
    pub fn place(&self) -> Place {
        match self.judged() {
            Some(value) if !self.on_edge && self.full.holds(value) => Place::Full,
            Some(value) if !self.on_edge && value > self.zero.low && value < self.zero.high => Place::Between,
            _ => Place::Off,
        }
    }

    fn new(name: &str, measure: Measure, full: Window, zero: Window, truth: Option<f64>) -> Self {
        Self {
            name: name.to_owned(),
            measure,
            full,
            zero,
            truth,
            noted: None,
            read: None,
            judges_note: false,
            on_edge: false,
        }
    }

    /// From 0 up to a limit, none from twice that on.
    fn at_most(name: &str, most: f64, truth: Option<f64>) -> Self {
        let from_zero = |high| Window { low: 0.0, high };
        Self::new(name, Measure::Length, from_zero(most), from_zero(2.0 * most), truth)
    }

    fn about_zero(name: &str, measure: Measure, [full, zero]: [f64; 2], truth: Option<f64>) -> Self {
        let about = |size: f64| Window { low: -size, high: size };
        Self::new(name, measure, about(full), about(zero), truth)
    }
}

/// All that was judged in the outcome.
pub(super) fn standings(attempt: &Attempt, outcome: &Outcome, depths: &mut Depths<'_>) -> Vec<Standing> {
    let scenario = attempt.exercise().scenario();
    let mut all: Vec<Standing> = scenario
        .counts
        .iter()
        .flat_map(|counted| of(attempt, outcome, depths, *counted))
        .collect();
    all.extend(scenario.asked.iter().map(|asked| value(attempt, outcome, asked)));
    all.extend(pack(attempt));
    all
}

fn of(attempt: &Attempt, outcome: &Outcome, depths: &mut Depths<'_>, counted: Counted) -> Vec<Standing> {
    let targets = &attempt.exercise().scenario().targets;
    let share = stem_share(attempt);
    match counted {
        Counted::Depth => vec![depth(attempt, outcome, depths)],
        Counted::Lash => {
            let full = targets.lash_mm;
            let zero = Window {
                low: full.low - LASH_ZERO_MM,
                high: full.high + LASH_ZERO_MM,
            };
            let truth = outcome.lash_mm.map(|[tightest, _]| share * tightest);
            vec![Standing {
                noted: tightest(&lash_noted(attempt)),
                read: tightest(&lash_read(attempt)),
                ..Standing::new("Lash, tightest place", Measure::Length, full, zero, truth)
            }]
        }
        Counted::Spread => {
            let truth = outcome.lash_spread_mm.map(|spread| share * spread);
            vec![Standing {
                noted: spread(&lash_noted(attempt)),
                read: spread(&lash_read(attempt)),
                ..Standing::at_most("Lash, spread around the ring gear", targets.lash_spread_mm, truth)
            }]
        }
        Counted::Runout => {
            // A dial stands at the outer end of the teeth and shows more than there is in the middle.
            let gears = attempt.bench().setting().axle.gears();
            let at_teeth = |shown: f64| shown * gears.wheel_mean_radius_mm / gears.outer_pitch_radius_mm;
            let subject = Subject::Of(Measurand::WheelFaceRunout {});
            vec![Standing {
                noted: fresh_note(attempt, subject).map(at_teeth),
                read: fresh_read(attempt, subject).map(at_teeth),
                ..Standing::at_most(
                    "Face runout of the ring gear, at its teeth",
                    targets.face_runout_mm,
                    Some(outcome.wheel_face_runout_mm),
                )
            }]
        }
        Counted::PinionTorque => vec![Standing {
            noted: fresh_note(attempt, Subject::PinionTorque),
            read: fresh_read(attempt, Subject::PinionTorque),
            ..Standing::new(
                "Rolling torque, pinion alone",
                Measure::Torque,
                targets.pinion_torque_nm,
                targets.pinion_torque_zero_nm,
                outcome.pinion_torque_nm,
            )
        }],
        Counted::NutTorque => {
            let [least, most] = [targets.nut_torque_nm, targets.most_nut_torque_nm];
            let full = Window {
                low: (1.0 - WRENCH_SHARE) * least,
                high: most,
            };
            let zero = Window {
                low: full.low - NUT_ZERO_SHARE * least,
                high: (1.0 + NUT_ZERO_SHARE) * most,
            };
            let stands = attempt.bench().nut_torque_nm();
            vec![Standing::new(
                "Pinion nut stands at",
                Measure::NutTorque,
                full,
                zero,
                stands,
            )]
        }
        Counted::SideTorque => vec![Standing {
            noted: sides_add(attempt, last_note),
            read: sides_add(attempt, last_read),
            ..Standing::new(
                "Side bearings add",
                Measure::Torque,
                targets.side_torque_nm,
                targets.side_torque_zero_nm,
                outcome.side_torque_nm,
            )
        }],
        Counted::Print => prints(attempt, outcome, depths.approval),
    }
}

/// How far the pinion stands from the best place, positive too shallow.
fn depth(attempt: &Attempt, outcome: &Outcome, depths: &mut Depths<'_>) -> Standing {
    let scenario = attempt.exercise().scenario();
    let bands = scenario.targets.depth_mm;
    let name = match scenario.depth_from {
        DepthFrom::Best => "Depth, from the best place (+ too shallow)",
        DepthFrom::Found => "Depth, from where it ran (+ too shallow)",
    };
    let truth = place(outcome).and_then(|at| Some(at.pinion_axial_mm - depths.wanted_mm(attempt, at)?));
    Standing::about_zero(name, Measure::Deviation, bands, truth)
}

/// Where the gears stand; a pinion alone counts as if the wheel stood as designed.
pub(super) fn place(outcome: &Outcome) -> Option<Placement> {
    let alone = outcome.pinion_axial_mm.map(|pinion_axial_mm| Placement {
        pinion_axial_mm,
        ..Placement::NOMINAL
    });
    outcome.placement.or(alone)
}

/// The P that depth is judged against, worked out once for each place of the wheel.
#[derive(Debug)]
pub(super) struct Depths<'a> {
    approval: &'a Contact,
    found: Vec<([u64; 3], Option<f64>)>,
}

impl<'a> Depths<'a> {
    pub(super) fn new(approval: &'a Contact) -> Self {
        Self {
            approval,
            found: Vec::new(),
        }
    }

    /// mm; `at` says where the wheel stands and how the axes lie. All attempts asked for have to be of the same seed.
    pub(super) fn wanted_mm(&mut self, attempt: &Attempt, at: Placement) -> Option<f64> {
        if let (DepthFrom::Found, Some(found)) = (attempt.exercise().scenario().depth_from, attempt.found_at_mm()) {
            return Some(found);
        }
        let key = [at.wheel_axial_mm, at.offset_mm, at.shaft_angle_rad].map(f64::to_bits);
        if let Some((_, depth)) = self.found.iter().find(|(k, _)| *k == key) {
            return *depth;
        }
        let depth = best_depth_mm(&attempt.bench().setting().pair, at, self.approval);
        self.found.push((key, depth));
        depth
    }
}

/// What the card's stem shows of a transverse lash.
pub(super) fn stem_share(attempt: &Attempt) -> f64 {
    let stem = attempt.exercise().scenario().targets.stem.stem();
    stem.share(attempt.bench().setting().axle.gears())
}

fn prints(attempt: &Attempt, outcome: &Outcome, approval: &Contact) -> Vec<Standing> {
    let approved = [&approval.drive, &approval.coast];
    let edge = |f: &FlankContact| f.edge_contact.map_or(0.0, |e| e.wheel + e.pinion_tip);
    let mut all = Vec::new();
    for (k, (words, times)) in [("Drive print", 1.0), ("Coast print", COAST_TIMES)]
        .into_iter()
        .enumerate()
    {
        let flank = outcome.flanks.as_ref().and_then(|flanks| flanks.get(k));
        let wanted = approved.get(k).copied();
        let on_edge = flank.zip(wanted).is_some_and(|(f, w)| edge(f) - edge(w) > EDGE_SHARE);
        for (axis, way) in ["along the tooth (+ to the heel)", "up the tooth (+ to the top)"]
            .into_iter()
            .enumerate()
        {
            let truth = flank.and_then(|flank| {
                let (is, wanted) = (flank.pattern?, wanted?.pattern?);
                Some(is.centroid.get(axis)? - wanted.centroid.get(axis)?)
            });
            let full = times * PRINT_FULL.get(axis).copied().unwrap_or(0.0);
            // The sheet holds the height of the drive print's middle, and nothing else of a print.
            let noted = print_noted(attempt).filter(|_| (k, axis) == (0, 1));
            let wanted_height = wanted.and_then(|wanted| wanted.pattern).map(|p| p.centroid[1]);
            all.push(Standing {
                on_edge,
                noted: noted.zip(wanted_height).map(|(noted, wanted)| noted - wanted),
                ..Standing::about_zero(
                    &format!("{words}, {way}"),
                    Measure::Tooth,
                    [full, times * PRINT_ZERO],
                    truth,
                )
            });
        }
    }
    all
}

/// A value that the card asks for: the last note is judged against what is true at the end.
fn value(attempt: &Attempt, outcome: &Outcome, asked: &Asked) -> Standing {
    let note = attempt.bench().notes().iter().rev().find(|n| asked.what.is(n.what));
    let measure = match asked.what {
        AskedFor::RollingTorque => Measure::Torque,
        _ => Measure::Length,
    };
    let truth = match (asked.what, note) {
        (AskedFor::RollingTorque, _) => outcome
            .pinion_torque_nm
            .map(|pinion| pinion + outcome.side_torque_nm.unwrap_or(0.0)),
        (AskedFor::Lash, None) => outcome.lash_mm.map(|[tightest, _]| stem_share(attempt) * tightest),
        (AskedFor::Lash, Some(note)) => true_now(attempt, outcome, note.what, attempt_stem(attempt)),
        (AskedFor::PinionDepth, _) => true_now(attempt, outcome, Measurand::PinionDepth {}, attempt_stem(attempt)),
        (AskedFor::PinionEndPlay, _) => outcome.pinion_play_mm,
        (AskedFor::WheelFaceRunout, _) => {
            true_now(attempt, outcome, Measurand::WheelFaceRunout {}, attempt_stem(attempt))
        }
    };
    let about = |size: f64| Window {
        low: truth.unwrap_or(0.0) - size,
        high: truth.unwrap_or(0.0) + size,
    };
    let fresh = |r: &&Record| !r.stale && asked.what.is(r.what);
    let read = attempt
        .bench()
        .records()
        .iter()
        .rev()
        .find(fresh)
        .and_then(super::belief::shown);
    Standing {
        noted: note.map(|n| n.value).filter(|_| truth.is_some()),
        read,
        judges_note: true,
        ..Standing::new(
            &format!("Written down for {}", asked.what.words()),
            measure,
            about(asked.full),
            about(asked.zero),
            truth,
        )
    }
}

fn pack(attempt: &Attempt) -> Option<Standing> {
    let wanted = attempt.exercise().scenario().pack?;
    let bench = attempt.bench();
    let about = |size: f64| Window {
        low: wanted.size_mm - size,
        high: wanted.size_mm + size,
    };
    let [full, zero] = PACK_MM;
    let what = Measurand::ShimPack { place: wanted.place };
    let fresh = bench.records().iter().rev().find(|r| !r.stale && r.what == what);
    Some(Standing {
        read: fresh.and_then(super::belief::shown),
        ..Standing::new(
            "Thickness of the pack",
            Measure::Length,
            about(full),
            about(zero),
            Some(bench.packs().thickness_mm(&bench.setting().kit, wanted.place)),
        )
    })
}

/// How the card has the stem laid.
pub(super) fn attempt_stem(attempt: &Attempt) -> StemChoice {
    attempt.exercise().scenario().targets.stem
}

/// Lash at each tooth that still holds, the last one of each, from values with the newest first.
fn of_each_tooth(values: impl Iterator<Item = (Measurand, f64)>) -> Vec<f64> {
    let mut teeth: Vec<(u32, f64)> = Vec::new();
    for (what, value) in values {
        if let Measurand::Lash { tooth } = what
            && !teeth.iter().any(|(t, _)| *t == tooth)
        {
            teeth.push((tooth, value));
        }
    }
    teeth.into_iter().map(|(_, value)| value).collect()
}

/// What instruments showed, taken as the card has the stem.
fn lash_read(attempt: &Attempt) -> Vec<f64> {
    let card = attempt_stem(attempt);
    let fresh = attempt.bench().records().iter().rev().filter(|r| {
        !r.stale
            && matches!(r.what, Measurand::Lash { .. })
            && super::belief::stem_of(attempt, r.operation) == Some(card)
    });
    of_each_tooth(fresh.filter_map(|r| Some((r.what, super::belief::shown(r)?))))
}

/// What stands on the sheet.
fn lash_noted(attempt: &Attempt) -> Vec<f64> {
    let fresh = attempt.bench().notes().iter().rev().filter(|note| !note.stale);
    of_each_tooth(fresh.map(|note| (note.what, note.value)))
}

fn tightest(teeth: &[f64]) -> Option<f64> {
    teeth.iter().copied().reduce(f64::min)
}

/// Of two teeth at least.
fn spread(teeth: &[f64]) -> Option<f64> {
    let most = teeth.iter().copied().reduce(f64::max)?;
    (teeth.len() > 1).then_some(most - tightest(teeth)?)
}

/// Height of the drive print's middle on the sheet, as long as it holds.
fn print_noted(attempt: &Attempt) -> Option<f64> {
    let notes = attempt.bench().notes();
    let fresh = |note: &&Note| !note.stale && note.what == Measurand::Print {};
    notes.iter().rev().find(fresh).map(|note| note.value)
}

/// Torque of the whole less that of the pinion alone, as long as both hold: the carrier going in changes nothing of the latter.
fn sides_add(attempt: &Attempt, last: fn(&Attempt, Subject) -> Option<(f64, bool)>) -> Option<f64> {
    let (whole, stale) = last(attempt, Subject::TotalTorque)?;
    let (alone, old) = last(attempt, Subject::PinionTorque)?;
    (!stale && !old).then_some(whole - alone)
}

/// The last value on the sheet, and whether it is stale.
fn last_note(attempt: &Attempt, subject: Subject) -> Option<(f64, bool)> {
    let notes = notes_of(attempt);
    let (_, note) = notes.into_iter().rev().find(|(s, _)| *s == subject)?;
    Some((note.value, note.stale))
}

/// The last value that was read, and whether it is stale.
fn last_read(attempt: &Attempt, subject: Subject) -> Option<(f64, bool)> {
    let reads = super::belief::reads_of(attempt);
    let (_, record) = reads.into_iter().rev().find(|(s, _)| *s == subject)?;
    Some((super::belief::shown(record)?, record.stale))
}

fn fresh_note(attempt: &Attempt, subject: Subject) -> Option<f64> {
    notes_of(attempt)
        .into_iter()
        .rev()
        .find(|(s, note)| *s == subject && !note.stale)
        .map(|(_, note)| note.value)
}

fn fresh_read(attempt: &Attempt, subject: Subject) -> Option<f64> {
    super::belief::reads_of(attempt)
        .into_iter()
        .rev()
        .find(|(s, record)| *s == subject && !record.stale)
        .and_then(|(_, record)| super::belief::shown(record))
}
