//! What no setting cures: the one place that says which true numbers condemn a part.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::scenario::FaultKind;
use crate::axle::{Axle, Member, Truth};
use crate::bench::{Bench, Part};

/// Something that no setting cures, with its numbers.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "fault", rename_all = "snake_case")]
pub enum Incurable {
    /// Pinion and wheel were never lapped together.
    NumbersDiffer {
        /// Etched on the pinion.
        pinion_number: u32,
        /// Etched on the wheel.
        wheel_number: u32,
    },
    /// The axes lie off their offset.
    OffsetOff {
        /// By how much, mm.
        off_mm: f64,
        /// What may pass, mm.
        most_mm: f64,
    },
    /// The axes stand out of square.
    OutOfSquare {
        /// By how much, rad.
        off_rad: f64,
        /// What may pass, rad.
        most_rad: f64,
    },
    /// The wheel was overheated on the bench.
    RingGearOverheated {
        /// Number of the operation.
        operation: u32,
    },
}

impl Incurable {
    /// The part that has to be condemned for it.
    pub fn part(&self) -> Part {
        match self {
            Self::NumbersDiffer { .. } | Self::RingGearOverheated { .. } => Part::Gears,
            Self::OffsetOff { .. } | Self::OutOfSquare { .. } => Part::Case,
        }
    }

    /// Whether it came with the axle; else it was done on the bench.
    pub fn came_with_axle(&self) -> bool {
        match self {
            Self::NumbersDiffer { .. } | Self::OffsetOff { .. } | Self::OutOfSquare { .. } => true,
            Self::RingGearOverheated { .. } => false,
        }
    }
}

/// What came with an axle and no setting cures.
pub fn incurable(truth: &Truth, axle: &Axle) -> Vec<Incurable> {
    let mut found = Vec::new();
    if !truth.numbers_match() {
        found.push(Incurable::NumbersDiffer {
            pinion_number: truth.pair.pinion_number,
            wheel_number: truth.pair.wheel_number,
        });
    }
    // A size of the case that nothing is fitted to, beyond what its drawing lets pass.
    let beyond = |member: Member| {
        let off = truth.deviations.get(member);
        let most = axle.chain().link(member).map_or(0.0, |l| l.tolerance);
        (off.abs() > most).then_some((off, most))
    };
    found.extend(beyond(Member::Offset).map(|(off_mm, most_mm)| Incurable::OffsetOff { off_mm, most_mm }));
    found.extend(beyond(Member::Squareness).map(|(off_rad, most_rad)| Incurable::OutOfSquare { off_rad, most_rad }));
    found
}

/// The same, and what was done on the bench.
pub(super) fn incurable_now(bench: &Bench) -> Vec<Incurable> {
    let mut found = incurable(bench.truth(), &bench.setting().axle);
    if bench.wheel_is_scrap() {
        let heated = bench.ledger().spoiled.iter().find(|(_, part)| *part == Part::Gears);
        found.push(Incurable::RingGearOverheated {
            operation: heated.map_or(0, |(operation, _)| *operation),
        });
    }
    found
}

impl FaultKind {
    /// Whether a seed that has it may be one that no setting cures.
    pub fn may_be_incurable(&self) -> bool {
        match self {
            Self::MismatchedGears { .. } | Self::Size(Member::Offset | Member::Squareness, _) => true,
            Self::Size(..) | Self::SwappedCaps | Self::ChipUnderWheel | Self::WornFlanks { .. } => false,
        }
    }
}
