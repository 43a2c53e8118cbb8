//! The end of an attempt: what is true of the axle, beside what the trainee wrote down.

use super::{Amount, BenchView, WantedRange};
use crate::exercise::{Attempt, Counted, Outcome, Par, Score};
use crate::quantity::{Units, deviation, number, signed};

/// What the debrief shows. It is made only of an axle that has been handed over.
#[derive(Debug, Clone, PartialEq)]
pub struct DebriefView {
    /// What was wanted, true and believed.
    pub lines: Vec<DebriefLine>,
    /// What was hidden: name, and value in either unit.
    pub hidden: Vec<(&'static str, [String; 2])>,
    /// True prints in words: drive, coast.
    pub prints: [String; 2],
    /// Points of 100.
    pub total: f64,
    /// Parts of the score: name, points, points there are.
    pub parts: Vec<(&'static str, f64, f64)>,
    /// Points lost, the most first.
    pub losses: Vec<LossLine>,
    /// What the reference technician takes for this axle: tear-downs, minutes, money.
    pub par: (u32, f64, f64),
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

/// One wanted value.
#[derive(Debug, Clone, PartialEq)]
pub struct DebriefLine {
    /// What of.
    pub name: String,
    /// Which range was wanted.
    pub range: WantedRange,
    /// What is true; none where it is not together.
    pub truth: Option<f64>,
    /// What stood on the sheet.
    pub belief: Option<f64>,
}

impl DebriefLine {
    /// The range as a pair of numbers.
    pub fn ends(&self) -> [f64; 2] {
        match self.range {
            WantedRange::Between(_, low, high) | WantedRange::Never(_, low, high) => [low, high],
            WantedRange::AtMost(_, most) => [0.0, most],
            WantedRange::Within(_, value) | WantedRange::Just(_, value) => [value, value],
            WantedRange::Words(_) => [0.0, 0.0],
        }
    }

    /// Whether the truth lies inside.
    pub fn inside(&self) -> Option<bool> {
        let [low, high] = self.ends();
        self.truth.map(|value| value >= low && value <= high)
    }
}

impl DebriefView {
    /// Of an attempt with its board, its score and its par; none before the axle has been handed over.
    pub fn new(attempt: &Attempt, board: &BenchView, score: &Score, par: &Par) -> Option<Self> {
        let weights = attempt.exercise().scenario().weights;
        let parts = vec![
            ("Outcome", score.outcome, weights.outcome),
            ("Process", score.process, weights.process),
            ("Understanding", score.understanding, weights.understanding),
            ("Economy", score.economy, weights.economy),
        ];
        let mut losses: Vec<LossLine> = score
            .losses
            .iter()
            .map(|loss| LossLine {
                points: loss.points,
                operation: loss.operation,
                why: loss.why.clone(),
            })
            .collect();
        losses.sort_by(|a, b| b.points.total_cmp(&a.points));
        attempt.is_finished().then(|| Self {
            total: score.total,
            parts: parts.into_iter().filter(|(_, _, full)| *full > 0.0).collect(),
            losses,
            par: (par.teardowns, par.minutes, par.money),
            ..Self::of(&attempt.outcome(), board)
        })
    }

    fn of(outcome: &Outcome, board: &BenchView) -> Self {
        let lash = outcome.lash_mm;
        let truth = |counted| match counted {
            Counted::PinionTorque => outcome.pinion_torque_nm,
            Counted::SideTorque => outcome.side_torque_nm,
            Counted::Lash => lash.map(|[low, _]| low),
            Counted::Spread => outcome.lash_spread_mm,
            Counted::Depth | Counted::Runout | Counted::Print | Counted::NutTorque => None,
        };
        let lines = board
            .wanted
            .iter()
            // Numbers with a range; the others stand below.
            .filter(|wanted| matches!(wanted.range, WantedRange::Between(..) | WantedRange::AtMost(..)))
            .filter_map(|wanted| {
                Some(DebriefLine {
                    name: wanted.name.clone(),
                    range: wanted.range,
                    truth: truth(wanted.counted?),
                    belief: wanted.written,
                })
            })
            .collect();
        let either = |value: Option<f64>, of: fn(f64, Units) -> String| {
            [Units::Metric, Units::Inch]
                .map(|units| value.map_or_else(|| "not together".to_owned(), |value| of(value, units)))
        };
        let force = |value: f64, _: Units| format!("{}\u{a0}kN", number(1.0e-3 * value, 2));
        let placement = outcome.placement;
        let hidden = vec![
            ("Pinion, out +", either(placement.map(|p| p.pinion_axial_mm), deviation)),
            (
                "Ring gear, out +",
                either(placement.map(|p| p.wheel_axial_mm), deviation),
            ),
            ("Offset, more +", either(placement.map(|p| p.offset_mm), deviation)),
            ("Pinion preload", either(outcome.pinion_preload_n, force)),
            ("Side preload", either(outcome.side_preload_n, force)),
            (
                "Face runout",
                either(Some(outcome.wheel_face_runout_mm), |v, u| Amount::FineLength.text(v, u)),
            ),
        ];
        let print = |k: usize| {
            let flank = outcome.flanks.as_ref().and_then(|flanks| flanks.get(k));
            match flank.map(|f| f.pattern) {
                None => "not together".to_owned(),
                Some(None) => "nothing is marked".to_owned(),
                Some(Some(pattern)) => format!(
                    "{}\u{a0}% of the flank, length {}, height {}",
                    number(100.0 * pattern.area_fraction, 0),
                    signed(pattern.centroid[0], 2),
                    signed(pattern.centroid[1], 2)
                ),
            }
        };
        Self {
            lines,
            hidden,
            prints: [print(0), print(1)],
            total: 0.0,
            parts: Vec::new(),
            losses: Vec::new(),
            par: (0, 0.0, 0.0),
        }
    }
}
