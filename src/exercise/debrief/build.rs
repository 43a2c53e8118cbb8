//! Builds: what was changed for each, what it showed, what was true of it, and what it would have been worth.
//!
//! A build is what stands between two tear-downs: gears in mesh, or a pinion that was closed up without them. Its state is
//! that before the tear-down that ended it, the last one's that at hand-over.

use std::collections::BTreeSet;

use super::line::{both, quantity};
use super::replay;
use super::standing::{Depths, place, stem_share};
use super::words;
use crate::bench::{Cleaned, Measurand, Operation, Part, Record, ShimPlace, Side};
use crate::contact::{self, Contact, Film, Placement, Route};
use crate::exercise::attempt::{Attempt, Step};
use crate::exercise::history::{Deed, Moment};
use crate::exercise::outcome::Outcome;
use crate::exercise::par::Par;
use crate::exercise::prepared::ExerciseError;
use crate::exercise::score::{Score, score};
use crate::exercise::technician::{Chart, LARGEST_STEP_MM, LEAST_STEP_MM, Middles, asks, middles};
use crate::quantity::{Units, number, nut_torque, signed};

/// A build.
#[derive(Debug, Clone)]
pub struct Build {
    /// Its number, from 1.
    pub number: u32,
    /// Whether it is the axle as it came in, not worked on yet.
    pub as_found: bool,
    /// Whether it is what was handed over.
    pub handed_over: bool,
    /// First and last operation: from the tear-down of the build before to its own last one.
    pub operations: [u32; 2],
    /// Minutes since the beginning at its end.
    pub minutes: f64,
    /// Money so far at its end.
    pub money: f64,
    /// What was changed since the build before, each in a few words with numbers.
    pub changed: Vec<String>,
    /// What the trainee saw of it.
    pub saw: Saw,
    /// What is true of it.
    pub truth: Outcome,
    /// Tightest lash in the card's reading, mm.
    pub truth_lash_mm: Option<f64>,
    /// How much deeper the pinion would have to stand for the best that this axle can be set to, mm.
    pub truth_deeper_mm: Option<f64>,
    /// Prints that were rolled in it, each place once.
    pub prints: Vec<BuildPrint>,
    /// What it would have been worth if it had been handed over.
    pub what_if: Option<WhatIf>,
}

/// The last readings of a build.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Saw {
    /// Rolling torque of the pinion alone, N m.
    pub pinion_torque_nm: Option<f64>,
    /// Rolling torque with the gears in mesh, N m.
    pub total_torque_nm: Option<f64>,
    /// Smallest of the last lash readings at each tooth, mm, as the stem lay.
    pub lash_mm: Option<f64>,
    /// Distance from the wheel's axis to the pinion's head, mm.
    pub pinion_depth_mm: Option<f64>,
    /// End play of the pinion, mm.
    pub end_play_mm: Option<f64>,
    /// Face runout of the ring gear's back, mm.
    pub face_runout_mm: Option<f64>,
}

/// A print of a build.
#[derive(Debug, Clone)]
pub struct BuildPrint {
    /// The operation that rolled it; none for what nobody rolled before hand-over.
    pub rolled: Option<u32>,
    /// Where the gears stood.
    pub placement: Placement,
    /// What is true of both flanks there under a usual film.
    pub truth: Contact,
    /// Whether the gears were moved after it and before the build ended.
    pub moved_since: bool,
    /// Middles of both prints as the trainee saw them, mean of all looks.
    pub seen: Option<Middles>,
    /// How often it was looked at.
    pub looks: u32,
    /// What the rule asks for.
    pub asks: Asks,
}

/// How much deeper the rule of the trade asks the pinion to go, mm, negative for shallower: the heights of both prints,
/// drive counted double, over the slopes of the set's chart, at most 0.254 mm at once and nothing below 0.05 mm.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Asks {
    /// By the prints as they were seen.
    pub seen_mm: Option<f64>,
    /// By the true prints.
    pub truth_mm: Option<f64>,
}

/// What a build would have been worth.
#[derive(Debug, Clone, PartialEq)]
pub struct WhatIf {
    /// Its score if it had been handed over after its last operation.
    pub score: Score,
}

/// What builds are judged by.
#[derive(Debug, Clone, Copy)]
pub(super) struct Sheet<'a> {
    /// Chart of the set.
    pub(super) chart: &'a Chart,
    /// Par of the seed.
    pub(super) par: &'a Par,
}

/// From the first to the last operation between two tear-downs.
#[derive(Debug, Clone, Copy)]
struct Period {
    first: u32,
    last: u32,
}

/// All builds of an attempt that was handed over; `what_if` is worked out for each if asked for.
///
/// # Errors
/// As [`Attempt::begin`].
pub(super) fn builds(
    attempt: &Attempt,
    sheet: &Sheet<'_>,
    depths: &mut Depths<'_>,
    what_if: bool,
) -> Result<Vec<Build>, ExerciseError> {
    let periods = periods(attempt);
    let ends: BTreeSet<u32> = std::iter::once(0).chain(periods.iter().map(|p| p.last)).collect();
    let states = replay::after(attempt, &ends)?;
    let Some(mut before) = states.get(&0) else {
        return Ok(Vec::new());
    };
    let mut found: Vec<Build> = Vec::new();
    let mut since = 0;
    for period in &periods {
        let Some(state) = states.get(&period.last) else {
            continue;
        };
        let handed_over = Some(period.last) == periods.last().map(|p| p.last);
        if !handed_over && !is_build(attempt, state, *period) {
            continue;
        }
        let span = Period {
            first: since + 1,
            last: period.last,
        };
        let number = u32::try_from(found.len()).unwrap_or(u32::MAX).saturating_add(1);
        let mut build = build(attempt, [state, before], span, sheet, depths, handed_over);
        build.number = number;
        if what_if {
            let mut given = state.clone();
            given.apply(&Operation::Finish {});
            build.what_if = Some(WhatIf {
                score: score(&given, sheet.par),
            });
        }
        found.push(build);
        before = state;
        since = period.last;
    }
    Ok(found)
}

/// Periods between tear-downs; the last one ends before the hand-over.
fn periods(attempt: &Attempt) -> Vec<Period> {
    let history = attempt.history();
    let mut periods = Vec::new();
    let mut first = 1;
    let mut tear_downs = 0;
    let mut end = 0;
    for moment in history {
        if moment.tear_downs > tear_downs {
            tear_downs = moment.tear_downs;
            periods.push(Period {
                first,
                last: moment.operation.saturating_sub(1),
            });
            first = moment.operation;
        }
        end = moment.operation;
    }
    periods.push(Period {
        first,
        last: end.saturating_sub(1),
    });
    periods
}

/// Operations of a period that were done.
fn done(attempt: &Attempt, period: Period) -> impl Iterator<Item = &Step> {
    let inside = move |s: &&Step| s.answer.operation >= period.first && s.answer.operation <= period.last;
    attempt.steps().iter().filter(inside).filter(|s| s.answer.done)
}

fn moments(attempt: &Attempt, period: Period) -> impl Iterator<Item = &Moment> {
    let inside = move |m: &&Moment| m.operation >= period.first && m.operation <= period.last;
    attempt.history().iter().filter(inside)
}

/// Gears in mesh, or a pinion that was closed up.
fn is_build(attempt: &Attempt, state: &Attempt, period: Period) -> bool {
    let built = state.bench().built();
    // The first operation of a period is the tear-down itself.
    let worked = || {
        moments(attempt, period)
            .skip(1)
            .any(|m| matches!(m.deed, Deed::Pinion | Deed::Depth))
    };
    built.placement.is_some() || (built.pinion.is_some() && worked())
}

fn build(
    attempt: &Attempt,
    [state, before]: [&Attempt; 2],
    span: Period,
    sheet: &Sheet<'_>,
    depths: &mut Depths<'_>,
    handed_over: bool,
) -> Build {
    let outcome = state.outcome();
    let deeper = place(&outcome).and_then(|at| Some(at.pinion_axial_mm - depths.wanted_mm(state, at)?));
    let ledger = state.bench().ledger();
    let worked =
        moments(attempt, span).any(|m| matches!(m.deed, Deed::Pinion | Deed::Depth | Deed::Side | Deed::Wheel));
    Build {
        number: 0,
        as_found: !worked && before.bench().operations() == 0,
        handed_over,
        operations: [span.first, span.last],
        minutes: ledger.minutes,
        money: ledger.money,
        changed: changed(attempt, state, before, span),
        saw: saw(attempt, state, span),
        truth_lash_mm: outcome.lash_mm.map(|[tightest, _]| stem_share(state) * tightest),
        truth_deeper_mm: deeper,
        prints: prints(attempt, state, span, sheet, &outcome, handed_over),
        truth: outcome,
        what_if: None,
    }
}

/// What was changed, with sizes.
fn changed(attempt: &Attempt, state: &Attempt, before: &Attempt, span: Period) -> Vec<String> {
    let (now, was) = (state.bench(), before.bench());
    let kit = &now.setting().kit;
    let mut said = Vec::new();
    for place in ShimPlace::ALL {
        let labels = |bench: &crate::bench::Bench| -> f64 {
            let pieces = bench.packs().at(place).iter();
            pieces.filter_map(|&k| kit.get(k)).map(|p| p.labelled_mm).sum()
        };
        let (then, is) = (labels(was), labels(now));
        let (there, is_there) = (!was.packs().at(place).is_empty(), !now.packs().at(place).is_empty());
        let name = words::pack(place);
        if is_there && !there {
            said.push(format!("{name} {} by label", both(is)));
        } else if there && !is_there {
            said.push(format!("{name} out"));
        } else if now.packs().at(place) != was.packs().at(place) {
            let by = is - then;
            let (size, way) = if by < 0.0 { (-by, "thinner") } else { (by, "thicker") };
            said.push(format!("{name} {} {way} by label", both(size)));
        }
    }
    let mut notches = [0.0; 2];
    let (mut turned_deg, mut nut_turns) = (0.0, 0_u32);
    let mut plain: Vec<String> = Vec::new();
    for step in done(attempt, span) {
        match &step.operation {
            Operation::TurnAdjuster { side, notches: by } => {
                let [tooth, back] = &mut notches;
                *(if *side == Side::Tooth { tooth } else { back }) += by;
            }
            Operation::TurnNut { angle_deg, .. } => {
                turned_deg += angle_deg;
                nut_turns += 1;
            }
            Operation::TightenNut { torque_nm, .. } => {
                plain.push(format!(
                    "nut tightened to {} ({})",
                    nut_torque(*torque_nm, Units::Metric),
                    nut_torque(*torque_nm, Units::Inch)
                ));
            }
            Operation::FitSpacer { new: true, .. } => plain.push("new spacer".to_owned()),
            Operation::FitNut { new: true } => plain.push("new nut".to_owned()),
            Operation::FitSeal {} => plain.push("new seal".to_owned()),
            Operation::Replace { part } if *part != Part::RingBolts => plain.push(format!("new {}", part.name())),
            Operation::FitWheel { crosswise, .. } => plain.push(format!(
                "ring gear drawn on {}",
                if *crosswise { "crosswise" } else { "round the circle" }
            )),
            Operation::Clean {
                what: Cleaned::WheelSeat,
                ..
            } => plain.push("ring gear's seat cleaned".to_owned()),
            Operation::Press { ring, .. } => plain.push(format!("{} pressed on", words::ring(*ring))),
            Operation::FitCaps { as_marked: false } => plain.push("caps changed round".to_owned()),
            Operation::Condemn { part, .. } => plain.push(format!("condemned: {}", part.name())),
            _ => {}
        }
    }
    for (by, words) in notches.into_iter().zip(["tooth-side adjuster", "adjuster behind"]) {
        let by: f64 = by;
        if by.abs() > 1e-9 {
            said.push(format!("{words} {} notches", signed(by, 1)));
        }
    }
    if nut_turns > 0 {
        plain.push(format!(
            "nut turned on by {}° in {nut_turns} steps",
            number(turned_deg, 1)
        ));
    }
    let mut once: Vec<String> = Vec::new();
    for words in plain {
        if !once.contains(&words) {
            once.push(words);
        }
    }
    said.extend(once);
    said
}

fn saw(attempt: &Attempt, state: &Attempt, span: Period) -> Saw {
    let mut saw = Saw::default();
    let mut lash: Vec<(u32, f64)> = Vec::new();
    let records = state.bench().records().iter();
    // What was read before the last change is no reading of this build.
    let of_it = |r: &&Record| !r.stale && r.operation >= span.first && r.operation <= span.last;
    for record in records.filter(of_it) {
        let Some(value) = super::belief::shown(record) else {
            continue;
        };
        match record.what {
            Measurand::RollingTorque {} => {
                if attempt.in_mesh_after(record.operation) {
                    saw.total_torque_nm = Some(value);
                } else {
                    saw.pinion_torque_nm = Some(value);
                }
            }
            Measurand::Lash { tooth } => {
                lash.retain(|(other, _)| *other != tooth);
                lash.push((tooth, value));
            }
            Measurand::PinionDepth {} => saw.pinion_depth_mm = Some(value),
            Measurand::PinionEndPlay {} => saw.end_play_mm = Some(value),
            Measurand::WheelFaceRunout {} => saw.face_runout_mm = Some(value),
            _ => {}
        }
    }
    saw.lash_mm = lash.into_iter().map(|(_, mm)| mm).reduce(f64::min);
    saw
}

fn prints(
    attempt: &Attempt,
    state: &Attempt,
    span: Period,
    sheet: &Sheet<'_>,
    outcome: &Outcome,
    handed_over: bool,
) -> Vec<BuildPrint> {
    let pair = &state.bench().setting().pair;
    let solved = |placement| contact::solve(pair, placement, Film::default(), Route::Exact);
    let mut prints: Vec<BuildPrint> = Vec::new();
    for moment in moments(attempt, span) {
        match &moment.deed {
            Deed::Rolled => {
                let Some(placement) = moment.rolled_at else { continue };
                if let Some(last) = prints.last_mut()
                    && last.placement == placement
                {
                    continue;
                }
                prints.push(BuildPrint {
                    rolled: Some(moment.operation),
                    placement,
                    truth: solved(placement),
                    moved_since: false,
                    seen: None,
                    looks: 0,
                    asks: Asks::default(),
                });
            }
            Deed::Looked {
                what: Measurand::Print {},
                ..
            } => {
                let place = usize::try_from(moment.operation).unwrap_or(0).saturating_sub(1);
                let middles = attempt.steps().get(place).and_then(|s| middles(&s.answer));
                if let (Some(print), Some(middles)) = (prints.last_mut(), middles) {
                    print.look(middles);
                }
            }
            _ => {}
        }
    }
    let stands = outcome.placement;
    for print in &mut prints {
        print.moved_since = stands.is_none_or(|at| !near(at, print.placement));
    }
    if handed_over
        && let Some(placement) = stands
        && prints.last().is_none_or(|p| p.moved_since)
    {
        prints.push(BuildPrint {
            rolled: None,
            placement,
            truth: solved(placement),
            moved_since: false,
            seen: None,
            looks: 0,
            asks: Asks::default(),
        });
    }
    let charts = [sheet.chart.drive, sheet.chart.coast];
    let step = |middles: Middles| {
        let (deeper, _) = asks(charts, middles);
        let deeper = deeper.clamp(-LARGEST_STEP_MM, LARGEST_STEP_MM);
        if deeper.abs() < LEAST_STEP_MM { 0.0 } else { deeper }
    };
    for print in &mut prints {
        let flanks = [&print.truth.drive, &print.truth.coast].map(|f| f.pattern.map(|p| p.centroid));
        let [drive, coast] = flanks;
        print.asks = Asks {
            seen_mm: print.seen.map(step),
            truth_mm: drive.zip(coast).map(|(d, c)| step([d, c])),
        };
    }
    prints
}

/// Whether two places are the same to a print.
fn near(a: Placement, b: Placement) -> bool {
    const SAME_MM: f64 = 0.002;
    (a.pinion_axial_mm - b.pinion_axial_mm).abs() < SAME_MM && (a.wheel_axial_mm - b.wheel_axial_mm).abs() < SAME_MM
}

impl BuildPrint {
    /// One more look: the mean of all.
    fn look(&mut self, middles: Middles) {
        let before = f64::from(self.looks);
        self.looks = self.looks.saturating_add(1);
        let count = f64::from(self.looks);
        self.seen = Some(match self.seen {
            None => middles,
            Some(mut mean) => {
                for (mean, new) in mean.iter_mut().flatten().zip(middles.iter().flatten()) {
                    *mean = (*mean * before + new) / count;
                }
                mean
            }
        });
    }
}

impl Saw {
    /// What was read, each with its quantity; lengths in mm and torques in N m.
    pub fn told(&self) -> Vec<(String, f64, bool)> {
        let depth = quantity(Measurand::PinionDepth {});
        [
            ("pinion alone".to_owned(), self.pinion_torque_nm, true),
            ("in mesh".to_owned(), self.total_torque_nm, true),
            ("lash".to_owned(), self.lash_mm, false),
            (depth, self.pinion_depth_mm, false),
            ("end play".to_owned(), self.end_play_mm, false),
            ("face runout".to_owned(), self.face_runout_mm, false),
        ]
        .into_iter()
        .filter_map(|(name, value, torque)| Some((name, value?, torque)))
        .collect()
    }
}
