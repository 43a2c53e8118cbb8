//! Why points of the process were lost.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::shared::{Missing, NutStands};
use crate::bench::{Caution, Part};
use crate::exercise::scenario::AskedFor;

/// How the axle was checked, written down and put together.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "reason", rename_all = "snake_case")]
pub enum ProcessReason {
    /// Gears were condemned before their numbers had been compared.
    NumbersNotCompared {},
    /// A part was condemned without prints at different depths.
    NotBracketed {},
    /// Nothing could be verified on an axle that is not together.
    NothingToVerify {
        /// Number of the operation that handed the axle over.
        operation: u32,
        /// What is missing.
        missing: Missing,
    },
    /// Lash was not verified.
    LashUnverified {
        /// Places at which it was read with a dial that can tell.
        places: usize,
        /// Places that are wanted.
        wanted: usize,
        /// Whether there were enough, but all on one side of the wheel.
        one_side: bool,
        /// Readings of dials that cannot tell.
        coarse: usize,
        /// Largest share of the window that a dial's scatter may fill.
        acceptable_share: f64,
        /// Readings that a later change has overtaken.
        overtaken: usize,
    },
    /// No print of both flanks shows the axle as handed over.
    PrintUnverified {
        /// Prints that were too faint.
        faint: usize,
        /// Prints that a later change has overtaken.
        overtaken: usize,
    },
    /// A print that was seen to be wrong was handed over.
    PrintKnownWrong {
        /// Number of the operation that saw it.
        operation: u32,
        /// How far from the approved one on the drive flank, along and up the tooth.
        off: [f64; 2],
    },
    /// Rotating torque was not verified.
    TorqueUnverified {
        /// Readings that a later change has overtaken.
        overtaken: usize,
    },
    /// Rotating torque was read before the rollers had found their place.
    TorqueReadEarly {
        /// Turns of the pinion before.
        turns: f64,
        /// Turns that are wanted.
        wanted_turns: f64,
    },
    /// The sheet holds no note of a check that still holds.
    NoteMissing {
        /// Of which check.
        of: Checked,
        /// How many notes there are of it.
        notes: usize,
    },
    /// The sheet's notes of a check are borne out by no reading.
    NoteUnfounded {
        /// Of which check.
        of: Checked,
        /// How many notes there are of it that nothing has overtaken.
        notes: usize,
    },
    /// Hazards were not met.
    Hazards {
        /// Each of them, in order.
        acts: Vec<UnsafeAct>,
    },
    /// Parts of single use were used again.
    Reused {
        /// Each of them, in order.
        parts: Vec<ReusedPart>,
    },
    /// Torque of the pinion nut, where it is no part of the outcome.
    NutNotToCard(NutStands),
    /// The pinion's seal is missing.
    NoSeal {
        /// Number of the operation that handed the axle over.
        operation: u32,
    },
    /// Side adjusters without their lock.
    LocksOut {
        /// How many have theirs in, of two.
        locked: usize,
    },
    /// The caps stand in each other's place.
    CapsSwapped {},
    /// The caps were not at full torque.
    CapsLoose {
        /// Number of the operation that handed the axle over.
        operation: u32,
    },
    /// The bolts of the wheel were not sound.
    BoltsUnsound {
        /// Number of the operation that handed the axle over.
        operation: u32,
    },
    /// Too few readings stood behind a value that was asked for.
    FewReadings {
        /// Which value.
        asked: AskedFor,
        /// How many.
        read: usize,
        /// How many are wanted.
        wanted: usize,
    },
    /// The pinion was turned too little for a torque that was asked for.
    FewTurns {
        /// How many times.
        turned: f64,
        /// How many are wanted.
        wanted_turns: f64,
    },
    /// A pack that was asked for was not measured as it lies there.
    PackNotMeasured {},
    /// Painted plates were not looked at before they were judged.
    PlatesNotLookedAt {
        /// How many were.
        looked: usize,
        /// Of how many.
        all: usize,
    },
}

/// What a final verification checks and the sheet notes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Checked {
    /// Lash.
    Lash,
    /// The print.
    Print,
    /// Rotating torque.
    RollingTorque,
}

/// Something that was done without its precaution.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct UnsafeAct {
    /// Number of the operation.
    pub operation: u32,
    /// The hazard.
    pub caution: Caution,
}

/// A part of single use that was used again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct ReusedPart {
    /// Number of the operation.
    pub operation: u32,
    /// Which part.
    pub part: Part,
}
