//! A scenario with its gears and its axle.

use std::sync::OnceLock;

use thiserror::Error;

use super::approval::ApprovalPrint;
use super::incurable::{Incurable, incurable};
use super::scenario::Scenario;
use super::variant;
use crate::axle::{Axle, AxleError, Truth, usual_side_bearings};
use crate::bearing::{Support, SupportProblem};
use crate::bench::StartError;
use crate::contact::Pair;
use crate::gear::{Design, GearSet, GearSetProblem, GeometryError};
use crate::text::Problems;

/// Kinds of texts that an exercise names.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Source {
    /// A gear set, `lashwright-gears/1`.
    Gears,
    /// A pinion support, `lashwright-support/1`.
    Support,
}

/// Where named texts come from. The one door of this floor to the outside.
pub trait Sources {
    /// The text of that kind and name; none where there is none.
    fn text(&self, kind: Source, name: &str) -> Option<String>;
}

/// What is wrong with a text that an exercise names.
#[derive(Debug, Clone, PartialEq)]
pub enum Unread {
    /// With a gear set.
    Gears(Problems<GearSetProblem>),
    /// With a pinion support.
    Support(Problems<SupportProblem>),
}

/// Why a scenario cannot be played.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{self:?}")]
pub enum ExerciseError {
    /// It names something that is not there.
    NotThere {
        /// Of which kind.
        what: Source,
        /// Its name.
        name: String,
    },
    /// Something that it names cannot be read.
    Unreadable {
        /// Its name.
        name: String,
        /// What is wrong with it.
        problems: Unread,
    },
    /// Its gears cannot exist.
    Gears {
        /// Name of the set.
        name: String,
        /// Why not.
        error: GeometryError,
    },
    /// Its parts do not belong together.
    Axle(#[from] AxleError),
    /// What lies on the bench at the start cannot be.
    Start(#[from] StartError),
    /// The truth of an attempt is asked for before its axle was handed over.
    NotFinished,
}

/// An exercise ready for any seed.
#[derive(Debug, Clone)]
pub struct Exercise {
    scenario: Scenario,
    axle: Axle,
    design: Design,
    other_design: Option<Design>,
    approvals: OnceLock<Vec<ApprovalPrint>>,
}

impl Exercise {
    /// Brings a scenario together with what it names.
    ///
    /// # Errors
    /// [`ExerciseError`].
    pub fn prepare(scenario: Scenario, sources: &dyn Sources) -> Result<Self, ExerciseError> {
        let text = |what, name: &str| {
            sources.text(what, name).ok_or_else(|| ExerciseError::NotThere {
                what,
                name: name.to_owned(),
            })
        };
        let unreadable = |name: &str, problems| ExerciseError::Unreadable {
            name: name.to_owned(),
            problems,
        };
        let gears_text = text(Source::Gears, &scenario.gears)?;
        let design = Design::from_toml(&gears_text).map_err(|p| unreadable(&scenario.gears, Unread::Gears(p)))?;
        let support_text = text(Source::Support, &scenario.support)?;
        let support =
            Support::from_toml(&support_text).map_err(|p| unreadable(&scenario.support, Unread::Support(p)))?;
        let set = GearSet::new(design.clone()).map_err(|error| ExerciseError::Gears {
            name: scenario.gears.clone(),
            error,
        })?;
        let other_design = scenario
            .plates
            .as_ref()
            .map(|plates| {
                let name = plates.other_gears.as_str();
                let text = text(Source::Gears, name)?;
                Design::from_toml(&text).map_err(|p| unreadable(name, Unread::Gears(p)))
            })
            .transpose()?;
        let side = usual_side_bearings(design.wheel_outer_pitch_diameter_mm);
        let axle = Axle::new(
            scenario.layout,
            scenario.depth_shim,
            &set,
            support,
            side,
            scenario.target,
        )?;
        Ok(Self {
            scenario,
            axle,
            design,
            other_design,
            approvals: OnceLock::new(),
        })
    }

    /// The scenario.
    pub fn scenario(&self) -> &Scenario {
        &self.scenario
    }

    /// The axle as designed.
    pub fn axle(&self) -> &Axle {
        &self.axle
    }

    /// The gears as designed.
    pub fn design(&self) -> &Design {
        &self.design
    }

    /// The other gears of painted plates, as designed.
    pub fn other_design(&self) -> Option<&Design> {
        self.other_design.as_ref()
    }

    /// The approval prints that belong to the card: of its set, and of the other one on painted plates. Worked out once.
    pub fn approval_prints(&self) -> &[ApprovalPrint] {
        self.approvals.get_or_init(|| {
            if !self.scenario.shows_approval() {
                return Vec::new();
            }
            // An exercise whose other set cannot be made has no attempt either, which says why.
            [Some(&self.design), self.other_design.as_ref()]
                .into_iter()
                .flatten()
                .filter_map(|design| Some(ApprovalPrint::of(&self.pair_of(design).ok()?)))
                .collect()
        })
    }

    /// What no setting cures in a seed: the right answer is to say so.
    pub fn incurable(&self, seed: u64) -> Vec<Incurable> {
        incurable(&self.truth(seed), &self.axle)
    }

    /// Hidden truth of a seed.
    pub fn truth(&self, seed: u64) -> Truth {
        let teeth = [self.design.pinion_teeth, self.design.wheel_teeth];
        variant::truth(&self.scenario, teeth, seed)
    }

    /// The gears that are really there, ready for contact. A flank deviation that leaves no gears at all leaves the
    /// designed ones.
    ///
    /// # Errors
    /// [`ExerciseError::Gears`].
    pub fn pair(&self, truth: &Truth) -> Result<Pair, ExerciseError> {
        self.pair_of(&truth.design_of(&self.design))
    }

    /// Gears of a design, ready for contact.
    pub(super) fn pair_of(&self, design: &Design) -> Result<Pair, ExerciseError> {
        GearSet::new(design.clone())
            .map(Pair::new)
            .map_err(|error| ExerciseError::Gears {
                name: self.scenario.gears.clone(),
                error,
            })
    }
}
