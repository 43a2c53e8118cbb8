//! The end of an attempt: what is true of the axle, beside what the trainee wrote down, and how the reference technician
//! went about it.

use super::Amount;
use super::board::LogEntry;
use super::readings::{along_words, up_words};
use crate::exercise::debrief::{Build, Debrief, HiddenSize, Line, Measure, SizeUnit};
pub use crate::exercise::debrief::{Place as Verdict, Section, Standing};
use crate::exercise::{Attempt, Outcome, Score};
use crate::quantity::{Units, deviation, fine_length, number, signed};
use crate::words::{self, say};

/// Sizes that are nearer to their drawing are not told one by one, mm or degrees.
const AS_DRAWN: f64 = 0.002;

/// What the debrief shows. It is made only of an axle that has been handed over.
#[derive(Debug, Clone, PartialEq)]
pub struct DebriefView {
    /// What of the following is told: a measuring exercise has no builds and no setting.
    pub sections: Vec<Section>,
    /// What was judged, with its bands, true and believed.
    pub standings: Vec<Standing>,
    /// What was hidden: name, and value in either unit. None without [`Section::State`].
    pub hidden: Vec<(String, [String; 2])>,
    /// Parts that were not as drawn.
    pub made: Vec<MadeLine>,
    /// Faults that this axle had, of those the exercise may have.
    pub faults: Vec<String>,
    /// True prints in words: drive, coast. None without [`Section::State`].
    pub prints: Option<[String; 2]>,
    /// Points of 100.
    pub total: f64,
    /// Parts of the score: name, points, points there are.
    pub parts: Vec<(String, f64, f64)>,
    /// Points lost, the most first.
    pub losses: Vec<LossLine>,
    /// What the reference technician takes for this axle: tear-downs, minutes, money.
    pub par: (u32, f64, f64),
    /// The trainee's builds in order.
    pub builds: Vec<BuildLine>,
    /// What the reference technician's way is worth.
    pub reference_total: f64,
    /// The reference technician's builds in order.
    pub reference: Vec<BuildLine>,
    /// What the reference technician did, operation by operation, where it is not told build by build.
    pub reference_log: Vec<LogEntry>,
}

/// Points lost, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct LossLine {
    /// How many.
    pub points: f64,
    /// The operation that it comes from.
    pub operation: Option<u32>,
    /// Why, and the way to do it better.
    pub why: String,
}

/// A part that is not as drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct MadeLine {
    /// What.
    pub name: String,
    /// How far it is off, in either unit.
    pub off: [String; 2],
    /// Where it could be found.
    pub found_by: String,
}

/// A build: from one tear-down to the next.
#[derive(Debug, Clone, PartialEq)]
pub struct BuildLine {
    /// Its name.
    pub name: String,
    /// What was changed since the build before.
    pub changed: Vec<String>,
    /// What was read of it, in either unit.
    pub saw: [Vec<String>; 2],
    /// How much deeper the pinion would have to be for the best, mm.
    pub deeper_mm: Option<f64>,
    /// Points that it would have been worth if it had been handed over.
    pub worth: Option<f64>,
}

/// Digits of something judged, without its unit.
pub fn standing_digits(measure: Measure, value: f64, units: Units) -> String {
    match (measure, units) {
        (Measure::Length, _) => Amount::FineLength.digits(value, units),
        (Measure::Deviation, Units::Metric) => signed(value, 3),
        (Measure::Deviation, Units::Inch) => signed(Amount::FineLength.shown(value, units), 4),
        (Measure::Torque, _) => Amount::HandTorque.digits(value, units),
        (Measure::NutTorque, _) => Amount::NutTorque.digits(value, units),
        (Measure::Tooth, _) => signed(value, 2),
    }
}

/// Where full marks are, in words with the unit.
pub fn standing_band(standing: &Standing, units: Units) -> String {
    let (full, measure) = (standing.full, standing.measure());
    let digits = |value: f64| standing_digits(measure, value, units);
    let with_unit = |digits: &str| match measure {
        Measure::Length | Measure::Deviation => format!("{digits}\u{a0}{}", Amount::Length.unit(units)),
        Measure::Torque => format!("{digits}\u{a0}{}", Amount::HandTorque.unit(units)),
        Measure::NutTorque => format!("{digits}\u{a0}{}", Amount::NutTorque.unit(units)),
        Measure::Tooth => say!("verdict-of-half-a-tooth", share = digits),
    };
    let symmetric = (full.low + full.high).abs() < 1e-9;
    if symmetric {
        say!(
            "verdict-within",
            size = with_unit(digits(full.high).trim_start_matches('+'))
        )
    } else if full.low <= 0.0 && measure != Measure::Tooth {
        say!("verdict-at-most", most = with_unit(&digits(full.high)))
    } else {
        say!(
            "verdict-between",
            low = digits(full.low),
            high = with_unit(&digits(full.high))
        )
    }
}

impl DebriefView {
    /// Of a finished attempt and its debrief.
    pub fn new(attempt: &Attempt, debrief: &Debrief) -> Self {
        let weights = attempt.exercise().scenario().weights;
        let score = &debrief.score;
        let parts = vec![
            (say!("verdict-outcome"), score.outcome, weights.outcome),
            (say!("verdict-process"), score.process, weights.process),
            (
                say!("verdict-understanding"),
                score.understanding,
                weights.understanding,
            ),
            (say!("verdict-economy"), score.economy, weights.economy),
        ];
        let hidden = &debrief.hidden;
        let mut made: Vec<&HiddenSize> = hidden
            .sizes
            .iter()
            .filter(|size| size.counts && size.off.abs() >= AS_DRAWN)
            .collect();
        made.sort_by(|a, b| b.off.abs().total_cmp(&a.off.abs()));
        let (par, way) = (&debrief.par, &debrief.reference);
        let hints = words::card::texts(attempt.exercise().scenario()).hints;
        let state = debrief.has(Section::State).then_some(&debrief.outcome);
        let by_operation: &[Line] = if debrief.has(Section::Builds) { &[] } else { &way.lines };
        Self {
            sections: debrief.sections.clone(),
            standings: debrief.standings.clone(),
            hidden: state.map(true_numbers).unwrap_or_default(),
            made: made.into_iter().map(made_line).collect(),
            faults: hidden
                .faults
                .iter()
                .filter(|f| f.there)
                .map(|f| words::debrief::hidden::fault(&f.kind))
                .collect(),
            prints: state.map(true_prints),
            total: score.total,
            parts: parts.into_iter().filter(|(_, _, full)| *full > 0.0).collect(),
            losses: losses(score),
            par: (par.teardowns, par.minutes, par.money),
            builds: debrief.builds.iter().map(build_line).collect(),
            reference_total: way.score.total,
            reference: way.builds.iter().map(build_line).collect(),
            reference_log: by_operation
                .iter()
                .map(|line| {
                    let mut entry = LogEntry::new(&line.operation, &line.answer, hints);
                    // Readings first: nobody took the reference's down.
                    entry.sentences.splice(0..0, words::debrief::shown(line));
                    entry
                })
                .collect(),
        }
    }
}

impl DebriefView {
    /// Whether it has this section.
    pub fn has(&self, section: Section) -> bool {
        self.sections.contains(&section)
    }
}

fn losses(score: &Score) -> Vec<LossLine> {
    let mut losses: Vec<LossLine> = score
        .losses
        .iter()
        .map(|loss| LossLine {
            points: loss.points,
            operation: loss.operation,
            why: words::score::loss(&loss.reason),
        })
        .collect();
    losses.sort_by(|a, b| b.points.total_cmp(&a.points));
    losses
}

fn made_line(size: &HiddenSize) -> MadeLine {
    let off = match size.unit {
        SizeUnit::Millimeter => [Units::Metric, Units::Inch].map(|units| deviation(size.off, units)),
        SizeUnit::Degree => [(); 2].map(|()| format!("{}°", signed(size.off, 3))),
    };
    MadeLine {
        name: words::debrief::hidden::member(size.member),
        off,
        found_by: words::debrief::hidden::found_by(size.member),
    }
}

fn build_line(build: &Build) -> BuildLine {
    let saw = |units: Units| {
        let told = build.saw.told().into_iter();
        told.map(|(kind, value)| words::debrief::build::saw(kind, value, units))
            .collect()
    };
    BuildLine {
        name: words::debrief::build::name(build),
        changed: build.changed.iter().map(words::debrief::build::change).collect(),
        saw: [saw(Units::Metric), saw(Units::Inch)],
        deeper_mm: build.truth_deeper_mm,
        worth: build.what_if.as_ref().map(|what_if| what_if.score.total),
    }
}

/// What can stand elsewhere than it was designed to.
#[derive(Debug, Clone, Copy)]
enum Moved {
    Pinion,
    RingGear,
    Offset,
}

/// How far something stands from its designed place, with the way in words.
fn from_place(of: Moved, value_mm: f64, units: Units) -> String {
    // Nearer than its digits show.
    if value_mm.abs() < 0.000_5 {
        return say!("verdict-as-designed");
    }
    let size = fine_length(value_mm.abs(), units);
    match (of, value_mm > 0.0) {
        (Moved::Pinion, true) => say!("verdict-pinion-away", size = size),
        (Moved::Pinion, false) => say!("verdict-pinion-toward", size = size),
        (Moved::RingGear, true) => say!("verdict-ring-gear-away", size = size),
        (Moved::RingGear, false) => say!("verdict-ring-gear-toward", size = size),
        (Moved::Offset, true) => say!("verdict-offset-more", size = size),
        (Moved::Offset, false) => say!("verdict-offset-less", size = size),
    }
}

/// What is true of the axle, name and value in either unit.
fn true_numbers(outcome: &Outcome) -> Vec<(String, [String; 2])> {
    let either = |value: Option<f64>, of: fn(f64, Units) -> String| {
        [Units::Metric, Units::Inch]
            .map(|units| value.map_or_else(|| say!("verdict-not-together"), |value| of(value, units)))
    };
    let force = |value: f64, _: Units| say!("verdict-kilonewtons", force = number(1.0e-3 * value, 2));
    let placement = outcome.placement;
    vec![
        (
            say!("verdict-pinion"),
            either(placement.map(|p| p.pinion_axial_mm), |v, u| {
                from_place(Moved::Pinion, v, u)
            }),
        ),
        (
            say!("verdict-ring-gear"),
            either(placement.map(|p| p.wheel_axial_mm), |v, u| {
                from_place(Moved::RingGear, v, u)
            }),
        ),
        (
            say!("verdict-offset"),
            either(placement.map(|p| p.offset_mm), |v, u| from_place(Moved::Offset, v, u)),
        ),
        (say!("verdict-pinion-preload"), either(outcome.pinion_preload_n, force)),
        (say!("verdict-side-preload"), either(outcome.side_preload_n, force)),
        (
            say!("verdict-face-runout"),
            either(Some(outcome.wheel_face_runout_mm), |v, u| Amount::FineLength.text(v, u)),
        ),
    ]
}

/// True prints in words.
fn true_prints(outcome: &Outcome) -> [String; 2] {
    let print = |k: usize| {
        let flank = outcome.flanks.as_ref().and_then(|flanks| flanks.get(k));
        match flank.map(|f| f.pattern) {
            None => say!("verdict-not-together"),
            Some(None) => say!("verdict-nothing-marked"),
            Some(Some(pattern)) => say!(
                "verdict-pattern",
                share = number(100.0 * pattern.area_fraction, 0),
                along = along_words(pattern.centroid[0]),
                up = up_words(pattern.centroid[1]),
            ),
        }
    };
    [print(0), print(1)]
}
