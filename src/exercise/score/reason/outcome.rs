//! Why points of the outcome were lost.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::shared::{Missing, NutStands};
use crate::exercise::counted::Counted;
use crate::exercise::scenario::Window;
use crate::exercise::scenario::{AskedFor, DepthFrom};
use crate::gear::Side;

/// What the axle, or what was asked for besides it, has become.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "reason", rename_all = "snake_case")]
pub enum OutcomeReason {
    /// So many sound parts were condemned that the verdict says nothing.
    BlanketVerdict {
        /// How many.
        sound_parts: usize,
    },
    /// Something that counts cannot be judged on an axle that is not together.
    NotTogether {
        /// Number of the operation that handed the axle over.
        operation: u32,
        /// What is missing.
        missing: Missing,
        /// What cannot be judged.
        counted: Vec<Counted>,
    },
    /// The teeth did not meet as gears.
    TeethApart {
        /// Number of the operation that handed the axle over.
        operation: u32,
    },
    /// The pinion stands too shallow or too deep.
    Depth {
        /// From its best place, mm: positive is too shallow.
        off_mm: f64,
        /// From where that is judged.
        from: DepthFrom,
        /// Full marks within, mm.
        full_mm: f64,
        /// No marks from here on, mm.
        zero_mm: f64,
        /// What would cure it, mm on the depth shim: positive is thicker.
        shim_mm: f64,
    },
    /// No depth leaves a print on the drive flank.
    NoDepthPrints {
        /// How far the wheel stands from its place, mm.
        wheel_axial_mm: f64,
    },
    /// Lash at the tightest place.
    Lash {
        /// In the card's reading, mm.
        reads_mm: f64,
        /// Full marks within, mm.
        full_mm: Window,
        /// No marks from this much outside on, mm.
        zero_mm: f64,
        /// What would cure it, mm on the wheel: positive is away from the pinion.
        away_mm: f64,
    },
    /// Lash differs around the wheel.
    LashSpread {
        /// By how much, in the card's reading, mm.
        spread_mm: f64,
        /// Full marks up to, mm.
        full_mm: f64,
        /// No marks from here on, mm.
        zero_mm: f64,
    },
    /// The wheel's face runs out.
    FaceRunout {
        /// Total, mm.
        runout_mm: f64,
        /// Full marks up to, mm.
        full_mm: f64,
        /// No marks from here on, mm.
        zero_mm: f64,
    },
    /// Rotating torque of the pinion alone.
    PinionTorque {
        /// Settled, N m.
        felt_nm: f64,
        /// Full marks within, N m.
        full_nm: Window,
        /// No marks from its ends on, N m.
        zero_nm: Window,
        /// What would cure it.
        way: PinionTorqueWay,
    },
    /// What the side bearings add.
    SideTorque {
        /// Settled, N m.
        felt_nm: f64,
        /// Full marks within, N m.
        full_nm: Window,
        /// No marks from its ends on, N m.
        zero_nm: Window,
    },
    /// Torque of the pinion nut.
    NutTorque(NutStands),
    /// Neither flank has a print, because the gears are not in mesh.
    NoPrints {
        /// Number of the operation that handed the axle over.
        operation: u32,
    },
    /// A flank has no print.
    NoPrintOnFlank {
        /// Which.
        flank: Side,
    },
    /// An edge touches.
    EdgeContact {
        /// On which flank.
        flank: Side,
        /// Over which share of the roll, beyond what the approval print has.
        share: f64,
    },
    /// A print lies elsewhere than its approval print.
    PrintOff {
        /// On which flank.
        flank: Side,
        /// By how much, along and up the tooth.
        off: [f64; 2],
        /// Full marks within, along and up the tooth.
        full: [f64; 2],
        /// No marks from here on, either way.
        zero: f64,
    },
    /// A value that was asked for was not written down.
    ValueNotWritten {
        /// Which.
        asked: AskedFor,
    },
    /// A value was written down of something that is not together.
    ValueOfNothing {
        /// Number of the operation that wrote it down.
        operation: u32,
        /// What was written down.
        noted: f64,
    },
    /// A value that was written down is not what is true.
    ValueOff {
        /// Which.
        asked: AskedFor,
        /// What was written down, in its unit.
        noted: f64,
        /// What is true.
        truth: f64,
        /// Full marks within.
        full: f64,
        /// No marks from here on.
        zero: f64,
    },
    /// A pack is not what was asked for.
    Pack {
        /// How thick it is, mm.
        size_mm: f64,
        /// Of how many pieces.
        pieces: usize,
        /// How thick it was to be, mm.
        wanted_mm: f64,
        /// Full marks within, mm.
        full_mm: f64,
        /// No marks from here on, mm.
        zero_mm: f64,
        /// Of how many pieces at most.
        most_pieces: usize,
    },
    /// Painted plates were judged wrong or not at all.
    Plates {
        /// How many were judged right.
        right: usize,
        /// Of how many.
        all: usize,
        /// Full marks from this many on; a whole number.
        full_from: f64,
    },
}

/// What brings the rotating torque of the pinion into its window.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "way", rename_all = "snake_case")]
pub enum PinionTorqueWay {
    /// The nut is turned on.
    TurnNutOn {},
    /// A new sleeve is fitted and stopped earlier.
    NewSleeve {},
    /// The spacer's shims are changed.
    SpacerShims {
        /// By about this, mm: positive is thicker.
        thicker_mm: f64,
    },
}
