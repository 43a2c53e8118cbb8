//! What a trainee can do, as data: `{"do": "…", …}`.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::caution::Precaution;
use super::choices::{
    Brushing, CapTorque, CarrierSide, Cleaned, Level, Predicted, Ring, ShimPlace, SpacerChoice, Toward, Turned,
};
use super::measurand::Measurand;
use super::part::Part;
use super::tools::StemChoice;

/// One thing done at the bench.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "do", rename_all = "snake_case", deny_unknown_fields)]
pub enum Operation {
    /// Read an instrument.
    Measure {
        /// What is measured.
        what: Measurand,
        /// Name of the instrument on the bench.
        instrument: String,
        /// Whether the instrument is set up afresh; else it stands where it stood for the last reading of this kind.
        #[serde(default)]
        set_up_again: bool,
        /// How a dial's stem is laid to a tooth, for lash.
        #[serde(default)]
        stem: StemChoice,
    },
    /// Read the numbers etched on both gears and the mark on the pinion's head.
    CompareNumbers {},
    /// Take parts off, one after the other, down to a level.
    TakeApart {
        /// How far.
        to: Level,
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Make up a pack of pieces from the kit and lay it in its place.
    FitShims {
        /// Where.
        place: ShimPlace,
        /// Numbers of the pieces in the kit.
        pieces: Vec<u32>,
    },
    /// Take a pack out; its pieces go back to the kit.
    RemoveShims {
        /// Where.
        place: ShimPlace,
    },
    /// Press a ring on with a press.
    Press {
        /// Which ring.
        ring: Ring,
        /// Force at which the press is stopped.
        force_kn: f64,
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Pull a ring off.
    PullOff {
        /// Which ring.
        ring: Ring,
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Slip the set-up bearings into place for a trial build.
    FitSetUpBearings {},
    /// Take the set-up bearings out.
    RemoveSetUpBearings {},
    /// Put a spacer on the pinion's shaft.
    FitSpacer {
        /// Which kind.
        spacer: SpacerChoice,
        /// Whether it comes new from the shelf; else the one that came off.
        #[serde(default)]
        new: bool,
    },
    /// Take the spacer off the shaft.
    RemoveSpacer {},
    /// Put the pinion in its housing or cartridge.
    InsertPinion {},
    /// Take the pinion out.
    RemovePinion {},
    /// Drive a new seal in.
    FitSeal {},
    /// Pull the seal out; it is spoiled by that.
    RemoveSeal {},
    /// Put flange and nut on, run up by hand.
    FitNut {
        /// Whether the nut comes new from the shelf.
        #[serde(default)]
        new: bool,
    },
    /// Take nut and flange off.
    RemoveNut {
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Tighten the pinion nut until the wrench says so.
    TightenNut {
        /// What the wrench is set to.
        torque_nm: f64,
        /// Name of the torque wrench on the bench.
        wrench: String,
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Turn the pinion nut by an angle.
    TurnNut {
        /// Positive tightens, negative backs off.
        angle_deg: f64,
        /// Name of the torque wrench that is read meanwhile, if any.
        #[serde(default)]
        wrench: Option<String>,
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Bolt the cartridge to the case.
    BoltCartridge {},
    /// Unbolt the cartridge.
    UnboltCartridge {},
    /// Heat the wheel.
    HeatWheel {
        /// Temperature it is brought to.
        to_c: f64,
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Wait; a warm wheel cools.
    Wait {
        /// How long.
        minutes: f64,
    },
    /// Put the wheel on its carrier and draw it on with its bolts.
    FitWheel {
        /// Whether the bolts are drawn up crosswise; else one after the other round the circle.
        crosswise: bool,
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Take the wheel off its carrier.
    RemoveWheel {},
    /// Bring the bolts of the wheel to torque.
    TightenRingBolts {
        /// Whether with thread-locking on new or cleaned threads.
        thread_lock: bool,
    },
    /// Set the carrier with its bearings in the case.
    SetCarrierIn {
        /// By how many teeth the timing marks are out; 0 for matched or for none.
        #[serde(default)]
        marks_out_teeth: u32,
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Lift the carrier out.
    LiftCarrierOut {
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Spread the case with a spreader.
    SpreadCase {
        /// Reading of the dial on the case.
        by_mm: f64,
    },
    /// Take the spreader off.
    ReleaseSpreader {},
    /// Put the bearing caps on, bolts by hand.
    FitCaps {
        /// Whether each goes back to its own side, as its marks say.
        as_marked: bool,
    },
    /// Tighten the caps' bolts.
    TightenCaps {
        /// How far.
        to: CapTorque,
    },
    /// Slacken the caps' bolts until they are snug.
    LoosenCaps {},
    /// Take the caps off.
    RemoveCaps {},
    /// Turn a side adjuster.
    TurnAdjuster {
        /// Which one.
        side: CarrierSide,
        /// Positive screws it in, toward the bearing.
        notches: f64,
    },
    /// Put an adjuster's lock in.
    FitLock {
        /// Which one.
        side: CarrierSide,
    },
    /// Take an adjuster's lock out.
    RemoveLock {
        /// Which one.
        side: CarrierSide,
    },
    /// Turn the axle over, so that rollers find their place.
    Turn {
        /// What is turned.
        what: Turned,
        /// How many turns.
        turns: f64,
    },
    /// Push the pinion or the carrier along its axis, so that play lies on one side.
    Push {
        /// What is pushed.
        what: Turned,
        /// Which way.
        toward: Toward,
    },
    /// Clean something.
    Clean {
        /// What.
        what: Cleaned,
        /// What is put on or used for safety.
        #[serde(default)]
        precautions: Vec<Precaution>,
    },
    /// Brush marking paste on teeth of the wheel.
    BrushPaste {
        /// Numbers of the teeth, from 0.
        teeth: Vec<u32>,
        /// How it is brushed.
        film: Brushing,
    },
    /// Roll the painted teeth through the mesh, both ways.
    Roll {
        /// Torque that drags the wheel meanwhile.
        drag_nm: f64,
        /// Passes each way.
        passes: u32,
    },
    /// Get a new part from the shelf in place of the old one.
    Replace {
        /// Which.
        part: Part,
    },
    /// Write a value on the set-up sheet: what the trainee holds true.
    Note {
        /// What it is of.
        what: Measurand,
        /// The value, in the unit of its quantity.
        value: f64,
        /// Number of the record that it was read from, where it was read from one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        record: Option<u32>,
        /// What is written beside it, in words of one's own.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        remark: String,
    },
    /// Say what a change will do, before looking.
    Predict {
        /// What it is about.
        about: Predicted,
        /// Chances that it goes down, stays and goes up, in the order that `about` names for it; they add up to 1.
        chances: [f64; 3],
    },
    /// Say of a painted plate what its pinion needs.
    JudgePlate {
        /// Number of the plate, from 0.
        plate: u32,
        /// Chances that it has to come deeper, is right, has to stand shallower; they add up to 1.
        chances: [f64; 3],
    },
    /// Ask for a hint.
    Hint {
        /// 1 points somewhere, 2 says what, 3 does the sum.
        level: u32,
    },
    /// Say that a part cannot be set right, and why.
    Condemn {
        /// Which.
        part: Part,
        /// Why, in words of one's own.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        reason: String,
        /// Numbers of the records that show it.
        evidence: Vec<u32>,
    },
    /// Hand the axle over as done.
    Finish {},
}
