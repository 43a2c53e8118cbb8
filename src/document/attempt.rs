//! What `lashwright attempt` and `lashwright replay` print as JSON.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::bench::{Answer, Ledger};
use crate::contact::FlankContact;
use crate::exercise::{ApprovalPrint, ApprovedFlank, Loss, LossReason, Outcome, Par, Scenario, Score};
use crate::words;

/// A row of the list of exercises.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct ExerciseRow {
    /// Name on the command line.
    pub name: String,
    /// Title on the card.
    pub title: String,
    /// 1 to 4.
    pub step: u32,
    /// A, B or C.
    pub layout: String,
    /// Whether all bands of a whole build are wanted.
    pub whole_build: bool,
    /// Whether there is always an axle to hand over; else saying no may be the answer.
    pub solvable: bool,
    /// What simulated values are not: no specification for a real axle.
    pub note: String,
}

impl ExerciseRow {
    /// Of a scenario.
    pub fn new(name: &str, scenario: &Scenario) -> Self {
        Self {
            name: name.to_owned(),
            title: words::card::texts(scenario).title.to_owned(),
            step: scenario.step,
            layout: scenario.layout.name().to_owned(),
            whole_build: scenario.whole_build,
            solvable: scenario.is_solvable(),
            note: words::simulated(),
        }
    }
}

/// The answer to one operation: what the journal keeps, with its words beside what is typed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AnswerDocument {
    /// The answer.
    #[serde(flatten)]
    pub answer: Answer,
    /// `refused` in a sentence.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub refused_text: Option<String>,
    /// `noticed` in sentences, one for each.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub noticed_text: Vec<String>,
    /// `cautions` in sentences, one for each.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub cautions_text: Vec<String>,
    /// What simulated values are not: no specification for a real axle.
    pub note: String,
}

impl AnswerDocument {
    /// Of an answer; `hints` are those of the card.
    pub fn new(answer: Answer, hints: &[String]) -> Self {
        Self {
            refused_text: answer.refused.as_ref().map(words::answer::refusal),
            noticed_text: answer.noticed.iter().map(|n| words::answer::notice(n, hints)).collect(),
            cautions_text: answer.cautions.iter().map(|c| words::answer::caution(*c)).collect(),
            answer,
            note: words::simulated(),
        }
    }
}

/// The last line of an attempt.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AttemptDocument {
    /// Name of the scenario, or of its file.
    pub scenario: String,
    /// Seed.
    pub seed: u64,
    /// Whether the axle was handed over.
    pub finished: bool,
    /// Approval prints that the card shows: of its set, and of the other one on painted plates.
    pub approval_prints: Vec<ApprovalDocument>,
    /// Points; none at all before the axle is handed over.
    pub score: ScoreDocument,
    /// What it should take.
    pub par: UsedDocument,
    /// What it took.
    pub used: UsedDocument,
    /// Where the points that are missing to 100 went.
    pub losses: Vec<LossDocument>,
    /// What is true of the axle; none before it is handed over.
    pub truth: Option<TruthDocument>,
    /// BLAKE3 of the whole state.
    pub state_hash: String,
    /// What simulated values are not: no specification for a real axle.
    pub note: String,
}

/// The approval print of a set: what both flanks of the designed gears show at their designed place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ApprovalDocument {
    /// Name of the set.
    pub gears: String,
    /// On the drive flank; none where nothing is marked.
    pub drive: Option<ApprovedFlankDocument>,
    /// On the coast flank; none where nothing is marked.
    pub coast: Option<ApprovedFlankDocument>,
}

impl ApprovalDocument {
    /// Of an approval print.
    pub fn new(print: &ApprovalPrint) -> Self {
        let [drive, coast] = &print.flanks;
        let of = |flank: &Option<ApprovedFlank>| flank.as_ref().map(ApprovedFlankDocument::new);
        Self {
            gears: print.gears.clone(),
            drive: of(drive),
            coast: of(coast),
        }
    }
}

/// The approval print on a flank, in flank coordinates: length from toe −1 to heel 1, height from root −1 to top 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ApprovedFlankDocument {
    /// Marked share of the flank.
    pub area_fraction: f64,
    /// Middle: length, height.
    pub centroid: [f64; 2],
    /// Ends along the tooth: toward the toe, toward the heel.
    pub along: [f64; 2],
    /// Ends up the tooth: toward the root, toward the top.
    pub up: [f64; 2],
    /// Which way it leans: rising to the heel, rising to the toe, or level.
    pub lean: String,
}

impl ApprovedFlankDocument {
    fn new(flank: &ApprovedFlank) -> Self {
        let pattern = flank.pattern;
        Self {
            area_fraction: pattern.area_fraction,
            centroid: pattern.centroid,
            along: [pattern.toe, pattern.heel],
            up: [pattern.root, pattern.top],
            lean: words::approval::lean(flank.leans()),
        }
    }
}

/// What an attempt took, or should take.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct UsedDocument {
    /// How often something built was taken apart again.
    pub teardowns: u32,
    /// Minutes.
    pub minutes: f64,
    /// Money for parts.
    pub money: f64,
}

impl UsedDocument {
    /// Of an account.
    pub fn new(ledger: &Ledger) -> Self {
        Self {
            teardowns: ledger.tear_downs,
            minutes: ledger.minutes,
            money: ledger.money,
        }
    }

    /// Of a par.
    pub fn of_par(par: &Par) -> Self {
        Self {
            teardowns: par.teardowns,
            minutes: par.minutes,
            money: par.money,
        }
    }
}

/// Points of an attempt.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ScoreDocument {
    /// 0 to 100: the sum of the parts, unless a cap takes some of it.
    pub total: f64,
    /// 0 to 50: the truth against the bands of the card.
    pub outcome: f64,
    /// 0 to 25: verification, sheet, safety, closing up.
    pub process: f64,
    /// 0 to 10: tear-downs and parts beyond par and one more.
    pub economy: f64,
    /// 0 to 15: predictions.
    pub understanding: f64,
}

impl ScoreDocument {
    /// Of a score.
    pub fn new(score: &Score) -> Self {
        Self {
            total: score.total,
            outcome: score.outcome,
            process: score.process,
            economy: score.economy,
            understanding: score.understanding,
        }
    }
}

/// Points lost.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LossDocument {
    /// outcome, process, understanding, economy, or cap for what a cap takes from the sum of the parts.
    pub part: String,
    /// How many.
    pub points: f64,
    /// Number of the operation that it comes from, where there is one.
    pub operation: Option<u32>,
    /// Why, and the way to do it better, for people.
    pub why: String,
    /// What was judged, with its numbers.
    pub reason: LossReason,
}

impl LossDocument {
    /// Of a loss.
    pub fn new(loss: &Loss) -> Self {
        Self {
            part: loss.part.name().to_owned(),
            points: loss.points,
            operation: loss.operation,
            why: words::score::loss(&loss.reason),
            reason: loss.reason.clone(),
        }
    }
}

/// True numbers of an axle; null where what they speak of is not together.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TruthDocument {
    /// P, mm: positive is too shallow for the designed place.
    pub pinion_axial_mm: Option<f64>,
    /// G, mm.
    pub wheel_axial_mm: Option<f64>,
    /// E, mm.
    pub offset_mm: Option<f64>,
    /// Σ, degrees.
    pub shaft_angle_deg: Option<f64>,
    /// Tightest lash around the wheel, transverse at the outer pitch radius, mm.
    pub lash_tightest_mm: Option<f64>,
    /// Loosest lash, mm.
    pub lash_loosest_mm: Option<f64>,
    /// Rotating torque of the pinion alone, N m.
    pub pinion_torque_nm: Option<f64>,
    /// What the side bearings add at the pinion, N m.
    pub side_torque_nm: Option<f64>,
    /// Preload of the pinion's pair, N.
    pub pinion_preload_n: Option<f64>,
    /// End play of the pinion, mm.
    pub pinion_play_mm: Option<f64>,
    /// Preload of the side bearings, N.
    pub side_preload_n: Option<f64>,
    /// Clamp of the pinion nut, N.
    pub clamp_n: Option<f64>,
    /// Face runout of the ring gear at its teeth, total, mm.
    pub wheel_face_runout_mm: f64,
    /// Print on the drive flank.
    pub drive: PrintDocument,
    /// Print on the coast flank.
    pub coast: PrintDocument,
}

/// A print of an axle.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
pub struct PrintDocument {
    /// Marked share of the flank.
    pub area_fraction: Option<f64>,
    /// Middle, in flank coordinates.
    pub centroid: Option<[f64; 2]>,
    /// Whether an edge touches over part of the roll.
    pub edge_contact: Option<bool>,
}

impl PrintDocument {
    fn new(flank: Option<&FlankContact>) -> Self {
        let pattern = flank.and_then(|f| f.pattern);
        Self {
            area_fraction: pattern.map(|p| p.area_fraction),
            centroid: pattern.map(|p| p.centroid),
            edge_contact: flank
                .and_then(|f| f.edge_contact)
                .map(|e| e.wheel > 0.0 || e.pinion_tip > 0.0),
        }
    }
}

impl TruthDocument {
    /// Of an outcome.
    pub fn new(outcome: &Outcome) -> Self {
        let placement = outcome.placement;
        let [drive, coast] = outcome
            .flanks
            .as_ref()
            .map_or([None, None], |[d, c]| [Some(d), Some(c)]);
        Self {
            pinion_axial_mm: placement.map(|p| p.pinion_axial_mm),
            wheel_axial_mm: placement.map(|p| p.wheel_axial_mm),
            offset_mm: placement.map(|p| p.offset_mm),
            shaft_angle_deg: placement.map(|p| p.shaft_angle_deg()),
            lash_tightest_mm: outcome.lash_mm.map(|[low, _]| low),
            lash_loosest_mm: outcome.lash_mm.map(|[_, high]| high),
            pinion_torque_nm: outcome.pinion_torque_nm,
            side_torque_nm: outcome.side_torque_nm,
            pinion_preload_n: outcome.pinion_preload_n,
            pinion_play_mm: outcome.pinion_play_mm,
            side_preload_n: outcome.side_preload_n,
            clamp_n: outcome.clamp_n,
            wheel_face_runout_mm: outcome.wheel_face_runout_mm,
            drive: PrintDocument::new(drive),
            coast: PrintDocument::new(coast),
        }
    }
}

/// What `replay` found.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ReplayDocument {
    /// The journal.
    pub journal: String,
    /// Its scenario.
    pub scenario: String,
    /// The number of its format. Answers of format 1 are compared by their numbers, later ones by all their values.
    pub format: u32,
    /// Its seed.
    pub seed: u64,
    /// Operations in it.
    pub operations: usize,
    /// Whether every answer came out again bit for bit, and the score where there is one.
    pub identical: bool,
    /// The first operation whose answer differs, counted from 1.
    pub first_difference: Option<usize>,
    /// Whether it was written by another version of the physics, so that answers may differ.
    pub recomputed: bool,
    /// Whether it was finished and sealed.
    pub sealed: bool,
    /// Points as computed now.
    pub score: ScoreDocument,
    /// Whether they are those that it was sealed with; none where it holds no score.
    pub score_identical: Option<bool>,
    /// What was dropped at its end.
    pub notice: Option<String>,
    /// BLAKE3 of the whole state at its end.
    pub state_hash: String,
    /// What simulated values are not: no specification for a real axle.
    pub note: String,
}
