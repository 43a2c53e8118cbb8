//! A scenario: everything about an exercise that does not depend on the seed.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::wanted::{Asked, DepthFrom, PackWanted, PlatesWanted, ToolOff, Weights};
use crate::axle::{DepthShim, Layout, Member, Target};
use crate::bench::{KitMakeup, OperationKind, Part, StemChoice};
use crate::exercise::card_texts::{CardTexts, TranslatedTexts};
use crate::exercise::counted::Counted;
use crate::exercise::fitted::Fitted;
use crate::exercise::spread::Spread;
use crate::text::{FIRST_LANGUAGE, LanguageTag};

/// A checked scenario.
#[derive(Debug, Clone, PartialEq)]
pub struct Scenario {
    /// What it is called on the card. This and all other texts of the card are in English; [`Scenario::texts_in`] gives those
    /// of another language.
    pub title: String,
    /// How far along it comes: 1 to 4.
    pub step: u32,
    /// Where it stands among those of its step, from small to large; those without come last, by name.
    pub order: Option<u32>,
    /// How the axle is put together.
    pub layout: Layout,
    /// Where its depth shim lies.
    pub depth_shim: DepthShim,
    /// Name of its gear set.
    pub gears: String,
    /// Name of its pinion support.
    pub support: String,
    /// Whether all bands of a whole build are wanted.
    pub whole_build: bool,
    /// What the trainee is told, paragraph by paragraph.
    pub told: Vec<String>,
    /// What it teaches.
    pub aims: Vec<String>,
    /// Hints, from a question to nearly the answer.
    pub hints: Vec<String>,
    /// What the axle was designed for.
    pub target: Target,
    /// What is wanted.
    pub targets: Targets,
    /// Which of it wins points.
    pub counts: Vec<Counted>,
    /// What lies on the bench.
    pub start: Start,
    /// How parts were made: deviation from the drawing, mm (rad for squareness).
    pub made: Vec<(Member, Spread)>,
    /// Other hidden numbers.
    pub factors: Vec<(Factor, Spread)>,
    /// What may be wrong besides.
    pub faults: Vec<Fault>,
    /// From where depth is judged.
    pub depth_from: DepthFrom,
    /// Values that are asked for.
    pub asked: Vec<Asked>,
    /// A pack that is asked for.
    pub pack: Option<PackWanted>,
    /// Painted plates to be judged.
    pub plates: Option<PlatesWanted>,
    /// How good the labels of the shim kit are.
    pub kit: KitMakeup,
    /// Instruments that are not as good as their certificates.
    pub tools: Vec<ToolOff>,
    /// Shares of the score.
    pub weights: Weights,
    /// Minutes of operations that differ from the usual.
    pub minutes: Vec<(OperationKind, f64)>,
    /// Prices of parts that differ from the usual.
    pub prices: Vec<(Part, f64)>,
    /// Cautions of its own.
    pub cautions: Vec<String>,
    /// Texts of the card in other languages.
    pub translated: Vec<(LanguageTag, TranslatedTexts)>,
}

impl Scenario {
    /// The texts of its card in the language of this tag: those of the file's nearest language, the first of those that are
    /// equally near, and English for what that one lacks or where there is none.
    pub fn texts_in(&self, tag: &str) -> CardTexts<'_> {
        let english = CardTexts {
            title: &self.title,
            told: &self.told,
            aims: &self.aims,
            hints: &self.hints,
            cautions: &self.cautions,
        };
        // English itself is one of the file's languages.
        let mut nearest = LanguageTag::read(FIRST_LANGUAGE).map_or(0, |first| first.nearness(tag));
        let mut chosen = None;
        for (language, texts) in &self.translated {
            let nearness = language.nearness(tag);
            if nearness > nearest {
                (nearest, chosen) = (nearness, Some(texts));
            }
        }
        chosen.map_or(english, |texts: &TranslatedTexts| texts.over(english))
    }

    /// Whether every seed leaves an axle that can be handed over; else saying no may be the answer.
    pub fn is_solvable(&self) -> bool {
        !self.faults.iter().any(|fault| fault.kind.may_be_incurable())
    }
}

/// A wanted range of a reading, its ends included.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Window {
    /// Smallest.
    pub low: f64,
    /// Largest.
    pub high: f64,
}

impl Window {
    /// Whether a reading lies inside.
    pub fn holds(&self, value: f64) -> bool {
        value >= self.low && value <= self.high
    }

    /// How far a reading lies outside, positive on either side; 0 inside.
    pub fn outside(&self, value: f64) -> f64 {
        if value < self.low {
            self.low - value
        } else if value > self.high {
            value - self.high
        } else {
            0.0
        }
    }
}

/// What the card asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Targets {
    /// Torque of the pinion nut: final with a solid spacer, least with a sleeve, N m.
    pub nut_torque_nm: f64,
    /// Most torque of the nut, N m; beyond it thread or spacer are spoiled.
    pub most_nut_torque_nm: f64,
    /// How the card has the dial's stem laid to a tooth: lash is wanted in that reading.
    pub stem: StemChoice,
    /// Lash at the tightest place, in the card's reading, mm.
    pub lash_mm: Window,
    /// Difference between the tightest and the loosest place, mm, at most.
    pub lash_spread_mm: f64,
    /// Rotating torque of the pinion alone, bearings turned, seal as on the card, N m.
    pub pinion_torque_nm: Window,
    /// What the side bearings add to it, felt at the pinion, N m.
    pub side_torque_nm: Window,
    /// Rotating torque of the pinion alone at whose ends there are no marks left, N m.
    pub pinion_torque_zero_nm: Window,
    /// What the side bearings add at whose ends there are no marks left, N m.
    pub side_torque_zero_nm: Window,
    /// Face runout of the wheel at its teeth, total, mm, at most.
    pub face_runout_mm: f64,
    /// Depth, mm from the best that this axle can be set to: full marks within, none beyond.
    pub depth_mm: [f64; 2],
}

/// What lies on the bench at the start.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Start {
    /// What is fitted.
    pub fitted: Fitted,
    /// Whether the bearings are new.
    pub new_bearings: bool,
    /// Depth shim that came out of the axle or is in it, mm.
    pub old_depth_shim_mm: f64,
    /// How far the wheel stands away from where careful hands had it, both sides equal and opposite, mm.
    pub wheel_off_mm: Spread,
    /// How much wider both side stacks together are than careful hands had them, mm.
    pub squeeze_off_mm: Spread,
}

/// A hidden number that is no size of the chain.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Factor {
    /// What the etched mark of the pinion is off from the true one, mm.
    MarkErrorMm,
    /// Force at which the sleeve yields, times nominal.
    SleeveYield,
    /// Rise of that force with crushing, times nominal.
    SleeveHardening,
    /// Friction of the nut, times nominal.
    NutFriction,
    /// Standard deviation of that friction from one tightening to the next, as a share.
    NutScatter,
    /// Friction of the head bearing, times what the support says.
    HeadFriction,
    /// Friction of the tail bearing, times what the support says.
    TailFriction,
    /// Friction of the side bearings, times nominal.
    SideFriction,
    /// Drag of the seal, times the formula for a run-in one.
    SealDrag,
    /// Stiffness of the case, times nominal.
    CaseStiffness,
    /// Slack of the adjusters' threads, mm.
    ThreadSlackMm,
    /// Interference of the wheel on its register, mm on the diameter.
    WheelInterferenceMm,
    /// Force that moves the head bearing's cone on, N.
    HeadConePressN,
    /// Force that moves the head bearing's cup on, N.
    HeadCupPressN,
    /// Force that moves the tail bearing's cup on, N.
    TailCupPressN,
}

impl Factor {
    /// All of them.
    pub const ALL: [Self; 15] = [
        Self::MarkErrorMm,
        Self::SleeveYield,
        Self::SleeveHardening,
        Self::NutFriction,
        Self::NutScatter,
        Self::HeadFriction,
        Self::TailFriction,
        Self::SideFriction,
        Self::SealDrag,
        Self::CaseStiffness,
        Self::ThreadSlackMm,
        Self::WheelInterferenceMm,
        Self::HeadConePressN,
        Self::HeadCupPressN,
        Self::TailCupPressN,
    ];

    /// Its name in files, and the range that a file may give.
    pub fn name_and_range(self) -> (&'static str, [f64; 2]) {
        match self {
            Self::MarkErrorMm => ("mark_error_mm", [-0.5, 0.5]),
            Self::SleeveYield => ("sleeve_yield_times", [0.3, 3.0]),
            Self::SleeveHardening => ("sleeve_hardening_times", [0.2, 5.0]),
            Self::NutFriction => ("nut_friction_times", [0.3, 3.0]),
            Self::NutScatter => ("nut_scatter_share", [0.0, 0.3]),
            Self::HeadFriction => ("head_friction_times", [0.2, 5.0]),
            Self::TailFriction => ("tail_friction_times", [0.2, 5.0]),
            Self::SideFriction => ("side_friction_times", [0.2, 5.0]),
            Self::SealDrag => ("seal_drag_times", [0.0, 10.0]),
            Self::CaseStiffness => ("case_stiffness_times", [0.2, 5.0]),
            Self::ThreadSlackMm => ("thread_slack_mm", [0.0, 0.5]),
            Self::WheelInterferenceMm => ("wheel_interference_mm", [-0.1, 0.3]),
            Self::HeadConePressN => ("head_cone_press_n", [0.0, 60_000.0]),
            Self::HeadCupPressN => ("head_cup_press_n", [0.0, 60_000.0]),
            Self::TailCupPressN => ("tail_cup_press_n", [0.0, 60_000.0]),
        }
    }
}

/// Something that may be wrong with the axle.
#[derive(Debug, Clone, PartialEq)]
pub struct Fault {
    /// What it is called in the scenario, 1 to 40 characters, unlike the others there. It keys the fault's random stream, so
    /// that a fault more or less leaves the draws of the others as they are. Without one in the file: its place there, from 0.
    pub name: String,
    /// What.
    pub kind: FaultKind,
    /// Share of the seeds in which it is there, 0 to 1.
    pub share: f64,
    /// Of all faults with the same number at most one is there. They share one draw, along which their shares follow each
    /// other as in the file: one that joins them goes behind the others.
    pub one_of: Option<u32>,
}

/// Kinds of faults: all are entries of the chain or of other hidden numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FaultKind {
    /// A size far from its drawing, mm (rad).
    Size(Member, Spread),
    /// Pinion and wheel that do not belong together: match numbers differ, and so do the flanks by this many µm of slope
    /// and crown.
    MismatchedGears {
        /// Largest deviation of each term of the ease-off, µm.
        flank_um: f64,
    },
    /// Caps that stood in each other's place when the axle came in.
    SwappedCaps,
    /// Something left between wheel and carrier when the axle was built.
    ChipUnderWheel,
    /// Gears that belong together and have run until their flanks wore.
    WornFlanks {
        /// How far crown and slopes have gone, µm at most.
        flank_um: f64,
    },
}
