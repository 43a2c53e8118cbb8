//! Which operation it is, without its fields: what tariffs, hazards, accounts and words are listed by.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::hazard::Hazard;
use super::operation::Operation;

/// What of the axle an operation works on, as far as an account of the attempt asks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WorkGroup {
    /// An instrument is read.
    Looks,
    /// Painted teeth are rolled.
    Rolls,
    /// Shims: what is worked on depends on their place.
    Shims,
    /// Bearings, spacer, seal or nut of the pinion are built up.
    Pinion,
    /// Carrier, side adjusters, caps are built up.
    Side,
    /// The wheel is put on its carrier.
    Wheel,
    /// Anything else: taking apart, turning, writing.
    Other,
}

macro_rules! kinds {
    ($($(#[doc = $doc:literal])+ $name:ident = $key:literal, $minutes:literal, $group:ident, [$($hazard:ident),*] => $pattern:pat,)+) => {
        /// An operation without its fields.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
        pub enum OperationKind {
            $($(#[doc = $doc])+ #[serde(rename = $key)] $name,)+
        }

        impl OperationKind {
            /// All of them, in the order in which operations are listed.
            pub const ALL: &'static [Self] = &[$(Self::$name),+];

            /// Its name in files: the value of `do`.
            pub const fn key(self) -> &'static str {
                match self {
                    $(Self::$name => $key,)+
                }
            }

            /// Minutes that it usually takes. Judgement: common practice, no source. `take_apart` takes those of its steps,
            /// `wait` what it says; what is only written or said takes none.
            pub const fn usual_minutes(self) -> f64 {
                match self {
                    $(Self::$name => $minutes,)+
                }
            }

            /// What can hurt whoever does an operation of this kind, whatever its fields are.
            pub const fn hazards(self) -> &'static [Hazard] {
                match self {
                    $(Self::$name => &[$(Hazard::$hazard),*],)+
                }
            }

            /// What of the axle is worked on.
            pub const fn group(self) -> WorkGroup {
                match self {
                    $(Self::$name => WorkGroup::$group,)+
                }
            }
        }

        impl Operation {
            /// Which operation it is.
            pub const fn kind(&self) -> OperationKind {
                match self {
                    $($pattern => OperationKind::$name,)+
                }
            }
        }
    };
}

// A row an operation: name, key in files, usual minutes, what is worked on, what can hurt, pattern.
kinds! {
    /// An instrument is read.
    Measure = "measure", 3.0, Looks, [TurningGears, SharpShims] => Operation::Measure { .. },
    /// Numbers and mark are read.
    CompareNumbers = "compare_numbers", 1.0, Other, [] => Operation::CompareNumbers {},
    /// Parts are taken off down to a level.
    TakeApart = "take_apart", 0.0, Other, [HeavyPart, NutReaction, Puller, Splinters, BoltTorque] => Operation::TakeApart { .. },
    /// A pack is laid in its place.
    FitShims = "fit_shims", 2.0, Shims, [SharpShims] => Operation::FitShims { .. },
    /// A pack is taken out.
    RemoveShims = "remove_shims", 1.0, Shims, [SharpShims] => Operation::RemoveShims { .. },
    /// A ring is pressed on.
    Press = "press", 5.0, Pinion, [RingUnderPress, Splinters] => Operation::Press { .. },
    /// A ring is pulled off.
    PullOff = "pull_off", 8.0, Other, [Puller, Splinters] => Operation::PullOff { .. },
    /// Set-up bearings go in.
    FitSetUpBearings = "fit_set_up_bearings", 2.0, Pinion, [] => Operation::FitSetUpBearings {},
    /// Set-up bearings come out.
    RemoveSetUpBearings = "remove_set_up_bearings", 1.0, Other, [] => Operation::RemoveSetUpBearings {},
    /// A spacer goes on the shaft.
    FitSpacer = "fit_spacer", 1.0, Pinion, [] => Operation::FitSpacer { .. },
    /// The spacer comes off.
    RemoveSpacer = "remove_spacer", 1.0, Other, [] => Operation::RemoveSpacer {},
    /// The pinion goes in.
    InsertPinion = "insert_pinion", 3.0, Pinion, [SharpEdges] => Operation::InsertPinion {},
    /// The pinion comes out.
    RemovePinion = "remove_pinion", 4.0, Other, [SharpEdges] => Operation::RemovePinion {},
    /// A seal is driven in.
    FitSeal = "fit_seal", 3.0, Pinion, [Splinters] => Operation::FitSeal {},
    /// The seal is pulled out.
    RemoveSeal = "remove_seal", 3.0, Pinion, [Splinters] => Operation::RemoveSeal {},
    /// Flange and nut go on.
    FitNut = "fit_nut", 3.0, Pinion, [] => Operation::FitNut { .. },
    /// Nut and flange come off.
    RemoveNut = "remove_nut", 4.0, Other, [NutReaction, MultiplierArm] => Operation::RemoveNut { .. },
    /// The nut is tightened to a torque.
    TightenNut = "tighten_nut", 3.0, Pinion, [NutReaction, MultiplierArm] => Operation::TightenNut { .. },
    /// The nut is turned by an angle.
    TurnNut = "turn_nut", 1.5, Pinion, [NutReaction, MultiplierArm] => Operation::TurnNut { .. },
    /// The cartridge is bolted on.
    BoltCartridge = "bolt_cartridge", 5.0, Other, [HeavyPart, BoltTorque] => Operation::BoltCartridge {},
    /// The cartridge is unbolted.
    UnboltCartridge = "unbolt_cartridge", 5.0, Other, [HeavyPart, BoltTorque] => Operation::UnboltCartridge {},
    /// The wheel is heated.
    HeatWheel = "heat_wheel", 20.0, Wheel, [HotRingGear, HeavyPart, SharpEdges] => Operation::HeatWheel { .. },
    /// Time passes.
    Wait = "wait", 0.0, Other, [] => Operation::Wait { .. },
    /// The wheel is drawn on.
    FitWheel = "fit_wheel", 6.0, Wheel, [HotRingGear, HeavyPart, SharpEdges] => Operation::FitWheel { .. },
    /// The wheel comes off.
    RemoveWheel = "remove_wheel", 10.0, Other, [HeavyPart, Puller, SharpEdges] => Operation::RemoveWheel {},
    /// The wheel's bolts are torqued.
    TightenRingBolts = "tighten_ring_bolts", 8.0, Wheel, [BoltTorque] => Operation::TightenRingBolts { .. },
    /// The carrier goes in.
    SetCarrierIn = "set_carrier_in", 4.0, Side, [HeavyPart, SharpEdges] => Operation::SetCarrierIn { .. },
    /// The carrier comes out.
    LiftCarrierOut = "lift_carrier_out", 4.0, Other, [HeavyPart, SharpEdges] => Operation::LiftCarrierOut { .. },
    /// The case is spread.
    SpreadCase = "spread_case", 4.0, Side, [SpreadHousing] => Operation::SpreadCase { .. },
    /// The spreader comes off.
    ReleaseSpreader = "release_spreader", 2.0, Side, [SpreadHousing] => Operation::ReleaseSpreader {},
    /// The caps go on.
    FitCaps = "fit_caps", 3.0, Side, [] => Operation::FitCaps { .. },
    /// The caps' bolts are tightened.
    TightenCaps = "tighten_caps", 3.0, Side, [BoltTorque] => Operation::TightenCaps { .. },
    /// The caps' bolts are slackened.
    LoosenCaps = "loosen_caps", 2.0, Side, [BoltTorque] => Operation::LoosenCaps {},
    /// The caps come off.
    RemoveCaps = "remove_caps", 3.0, Other, [BoltTorque] => Operation::RemoveCaps {},
    /// A side adjuster is turned.
    TurnAdjuster = "turn_adjuster", 1.0, Side, [] => Operation::TurnAdjuster { .. },
    /// An adjuster's lock goes in.
    FitLock = "fit_lock", 1.0, Side, [] => Operation::FitLock { .. },
    /// An adjuster's lock comes out.
    RemoveLock = "remove_lock", 1.0, Side, [] => Operation::RemoveLock { .. },
    /// Pinion or carrier are turned.
    Turn = "turn", 1.0, Other, [TurningGears] => Operation::Turn { .. },
    /// Pinion or carrier are pushed along their axis.
    Push = "push", 0.5, Other, [TurningGears] => Operation::Push { .. },
    /// Something is cleaned.
    Clean = "clean", 5.0, Other, [TurningGears, Solvent, Splinters, AirSpunBearing, Grinding, SharpShims, SharpEdges] => Operation::Clean { .. },
    /// Paste is brushed on.
    BrushPaste = "brush_paste", 3.0, Other, [MarkingCompound] => Operation::BrushPaste { .. },
    /// Painted teeth are rolled.
    Roll = "roll", 3.0, Rolls, [TurningGears] => Operation::Roll { .. },
    /// A new part is got from the shelf.
    Replace = "replace", 1.0, Other, [] => Operation::Replace { .. },
    /// A value is written on the sheet.
    Note = "note", 0.0, Other, [] => Operation::Note { .. },
    /// Something is predicted.
    Predict = "predict", 0.0, Other, [] => Operation::Predict { .. },
    /// A painted plate is judged.
    JudgePlate = "judge_plate", 1.0, Other, [] => Operation::JudgePlate { .. },
    /// A hint is asked for.
    Hint = "hint", 0.0, Other, [] => Operation::Hint { .. },
    /// A part is condemned.
    Condemn = "condemn", 5.0, Other, [] => Operation::Condemn { .. },
    /// The axle is handed over.
    Finish = "finish", 0.0, Other, [] => Operation::Finish {},
}

impl OperationKind {
    /// The kind of this name.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.key() == key)
    }
}
