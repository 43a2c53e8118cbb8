//! Where the axle stands against the bands that it is judged by.

use super::depths::{Depths, card_stem, place, stem_share};
use super::subject::{Measure, Subject, notes_of, reads_of, stem_of};
use super::truth::true_now;
use crate::bench::{Measurand, Note, Record};
use crate::contact::{Contact, FlankContact};
use crate::exercise::attempt::Attempt;
use crate::exercise::counted::Counted;
use crate::exercise::outcome::Outcome;
use crate::exercise::scenario::Window;
use crate::exercise::scenario::{Asked, AskedFor, DepthFrom};
use crate::exercise::score::{
    COAST_TIMES, EDGE_SHARE, LASH_ZERO_MM, NUT_ZERO_SHARE, PACK_MM, PRINT_FULL, PRINT_ZERO, WRENCH_SHARE,
};
use crate::gear;

/// What was judged.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Judged {
    /// How far the pinion stands from where it should, positive too shallow.
    Depth(DepthFrom),
    /// Lash at its tightest.
    Lash,
    /// How much lash differs around the wheel.
    Spread,
    /// Face runout of the wheel at its teeth.
    Runout,
    /// Rotating torque of the pinion alone.
    PinionTorque,
    /// Torque that the pinion nut stands at.
    NutTorque,
    /// What the side bearings add to it.
    SideTorque,
    /// Where a print lies from the approval print.
    Print(gear::Side, PrintAxis),
    /// A note that the card asks for.
    Written(AskedFor),
    /// Thickness of a pack.
    Pack,
}

/// A direction on a flank.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PrintAxis {
    /// Along the tooth, positive to the heel.
    Along,
    /// Up the tooth, positive to the top.
    Up,
}

impl Judged {
    /// In what it is measured.
    pub fn measure(self) -> Measure {
        match self {
            Self::Depth(_) => Measure::Deviation,
            Self::Lash
            | Self::Spread
            | Self::Runout
            | Self::Pack
            | Self::Written(
                AskedFor::Lash | AskedFor::PinionDepth | AskedFor::PinionEndPlay | AskedFor::WheelFaceRunout,
            ) => Measure::Length,
            Self::PinionTorque | Self::SideTorque | Self::Written(AskedFor::RollingTorque) => Measure::Torque,
            Self::NutTorque => Measure::NutTorque,
            Self::Print(..) => Measure::Tooth,
        }
    }
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
    /// What it is.
    pub what: Judged,
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
    /// In what it is measured.
    pub fn measure(&self) -> Measure {
        self.what.measure()
    }

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

    fn new(what: Judged, full: Window, zero: Window, truth: Option<f64>) -> Self {
        Self {
            what,
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
    fn at_most(what: Judged, most: f64, truth: Option<f64>) -> Self {
        let from_zero = |high| Window { low: 0.0, high };
        Self::new(what, from_zero(most), from_zero(2.0 * most), truth)
    }

    fn about_zero(what: Judged, [full, zero]: [f64; 2], truth: Option<f64>) -> Self {
        let about = |size: f64| Window { low: -size, high: size };
        Self::new(what, about(full), about(zero), truth)
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
                ..Standing::new(Judged::Lash, full, zero, truth)
            }]
        }
        Counted::Spread => {
            let truth = outcome.lash_spread_mm.map(|spread| share * spread);
            vec![Standing {
                noted: spread(&lash_noted(attempt)),
                read: spread(&lash_read(attempt)),
                ..Standing::at_most(Judged::Spread, targets.lash_spread_mm, truth)
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
                    Judged::Runout,
                    targets.face_runout_mm,
                    Some(outcome.wheel_face_runout_mm),
                )
            }]
        }
        Counted::PinionTorque => vec![Standing {
            noted: fresh_note(attempt, Subject::PinionTorque),
            read: fresh_read(attempt, Subject::PinionTorque),
            ..Standing::new(
                Judged::PinionTorque,
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
            vec![Standing::new(Judged::NutTorque, full, zero, stands)]
        }
        Counted::SideTorque => vec![Standing {
            noted: sides_add(attempt, last_note),
            read: sides_add(attempt, last_read),
            ..Standing::new(
                Judged::SideTorque,
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
    let truth = place(outcome).and_then(|at| Some(at.pinion_axial_mm - depths.wanted_mm(attempt, at)?));
    Standing::about_zero(Judged::Depth(scenario.depth_from), bands, truth)
}

fn prints(attempt: &Attempt, outcome: &Outcome, approval: &Contact) -> Vec<Standing> {
    let approved = [&approval.drive, &approval.coast];
    let edge = |f: &FlankContact| f.edge_contact.map_or(0.0, |e| e.wheel + e.pinion_tip);
    let mut all = Vec::new();
    for (k, side) in gear::Side::BOTH.into_iter().enumerate() {
        let times = match side {
            gear::Side::Drive => 1.0,
            gear::Side::Coast => COAST_TIMES,
        };
        let flank = outcome.flanks.as_ref().and_then(|flanks| flanks.get(k));
        let wanted = approved.get(k).copied();
        let on_edge = flank.zip(wanted).is_some_and(|(f, w)| edge(f) - edge(w) > EDGE_SHARE);
        for (axis, way) in [PrintAxis::Along, PrintAxis::Up].into_iter().enumerate() {
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
                ..Standing::about_zero(Judged::Print(side, way), [full, times * PRINT_ZERO], truth)
            });
        }
    }
    all
}

/// A value that the card asks for: the last note is judged against what is true at the end.
fn value(attempt: &Attempt, outcome: &Outcome, asked: &Asked) -> Standing {
    let note = attempt.bench().notes().iter().rev().find(|n| asked.what.is(n.what));
    let truth = match (asked.what, note) {
        (AskedFor::RollingTorque, _) => outcome
            .pinion_torque_nm
            .map(|pinion| pinion + outcome.side_torque_nm.unwrap_or(0.0)),
        (AskedFor::Lash, None) => outcome.lash_mm.map(|[tightest, _]| stem_share(attempt) * tightest),
        (AskedFor::Lash, Some(note)) => true_now(attempt, outcome, note.what, card_stem(attempt)),
        (AskedFor::PinionDepth, _) => true_now(attempt, outcome, Measurand::PinionDepth {}, card_stem(attempt)),
        (AskedFor::PinionEndPlay, _) => outcome.pinion_play_mm,
        (AskedFor::WheelFaceRunout, _) => true_now(attempt, outcome, Measurand::WheelFaceRunout {}, card_stem(attempt)),
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
        .and_then(Record::main_value);
    Standing {
        noted: note.map(|n| n.value).filter(|_| truth.is_some()),
        read,
        judges_note: true,
        ..Standing::new(Judged::Written(asked.what), about(asked.full), about(asked.zero), truth)
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
        read: fresh.and_then(Record::main_value),
        ..Standing::new(
            Judged::Pack,
            about(full),
            about(zero),
            Some(bench.packs().thickness_mm(&bench.setting().kit, wanted.place)),
        )
    })
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
    let card = card_stem(attempt);
    let fresh = attempt.bench().records().iter().rev().filter(|r| {
        !r.stale && matches!(r.what, Measurand::Lash { .. }) && stem_of(attempt, r.operation) == Some(card)
    });
    of_each_tooth(fresh.filter_map(|r| Some((r.what, r.main_value()?))))
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
    let reads = reads_of(attempt);
    let (_, record) = reads.into_iter().rev().find(|(s, _)| *s == subject)?;
    Some((record.main_value()?, record.stale))
}

fn fresh_note(attempt: &Attempt, subject: Subject) -> Option<f64> {
    notes_of(attempt)
        .into_iter()
        .rev()
        .find(|(s, note)| *s == subject && !note.stale)
        .map(|(_, note)| note.value)
}

fn fresh_read(attempt: &Attempt, subject: Subject) -> Option<f64> {
    reads_of(attempt)
        .into_iter()
        .rev()
        .find(|(s, record)| *s == subject && !record.stale)
        .and_then(|(_, record)| record.main_value())
}
