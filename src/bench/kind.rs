//! Which operation it is, without its fields: what tariffs, hazards, accounts and words are listed by.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::operation::Operation;

macro_rules! kinds {
    ($($(#[doc = $doc:literal])+ $name:ident = $key:literal => $pattern:pat,)+) => {
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

kinds! {
    /// An instrument is read.
    Measure = "measure" => Operation::Measure { .. },
    /// Numbers and mark are read.
    CompareNumbers = "compare_numbers" => Operation::CompareNumbers {},
    /// Parts are taken off down to a level.
    TakeApart = "take_apart" => Operation::TakeApart { .. },
    /// A pack is laid in its place.
    FitShims = "fit_shims" => Operation::FitShims { .. },
    /// A pack is taken out.
    RemoveShims = "remove_shims" => Operation::RemoveShims { .. },
    /// A ring is pressed on.
    Press = "press" => Operation::Press { .. },
    /// A ring is pulled off.
    PullOff = "pull_off" => Operation::PullOff { .. },
    /// Set-up bearings go in.
    FitSetUpBearings = "fit_set_up_bearings" => Operation::FitSetUpBearings {},
    /// Set-up bearings come out.
    RemoveSetUpBearings = "remove_set_up_bearings" => Operation::RemoveSetUpBearings {},
    /// A spacer goes on the shaft.
    FitSpacer = "fit_spacer" => Operation::FitSpacer { .. },
    /// The spacer comes off.
    RemoveSpacer = "remove_spacer" => Operation::RemoveSpacer {},
    /// The pinion goes in.
    InsertPinion = "insert_pinion" => Operation::InsertPinion {},
    /// The pinion comes out.
    RemovePinion = "remove_pinion" => Operation::RemovePinion {},
    /// A seal is driven in.
    FitSeal = "fit_seal" => Operation::FitSeal {},
    /// The seal is pulled out.
    RemoveSeal = "remove_seal" => Operation::RemoveSeal {},
    /// Flange and nut go on.
    FitNut = "fit_nut" => Operation::FitNut { .. },
    /// Nut and flange come off.
    RemoveNut = "remove_nut" => Operation::RemoveNut { .. },
    /// The nut is tightened to a torque.
    TightenNut = "tighten_nut" => Operation::TightenNut { .. },
    /// The nut is turned by an angle.
    TurnNut = "turn_nut" => Operation::TurnNut { .. },
    /// The cartridge is bolted on.
    BoltCartridge = "bolt_cartridge" => Operation::BoltCartridge {},
    /// The cartridge is unbolted.
    UnboltCartridge = "unbolt_cartridge" => Operation::UnboltCartridge {},
    /// The wheel is heated.
    HeatWheel = "heat_wheel" => Operation::HeatWheel { .. },
    /// Time passes.
    Wait = "wait" => Operation::Wait { .. },
    /// The wheel is drawn on.
    FitWheel = "fit_wheel" => Operation::FitWheel { .. },
    /// The wheel comes off.
    RemoveWheel = "remove_wheel" => Operation::RemoveWheel {},
    /// The wheel's bolts are torqued.
    TightenRingBolts = "tighten_ring_bolts" => Operation::TightenRingBolts { .. },
    /// The carrier goes in.
    SetCarrierIn = "set_carrier_in" => Operation::SetCarrierIn { .. },
    /// The carrier comes out.
    LiftCarrierOut = "lift_carrier_out" => Operation::LiftCarrierOut { .. },
    /// The case is spread.
    SpreadCase = "spread_case" => Operation::SpreadCase { .. },
    /// The spreader comes off.
    ReleaseSpreader = "release_spreader" => Operation::ReleaseSpreader {},
    /// The caps go on.
    FitCaps = "fit_caps" => Operation::FitCaps { .. },
    /// The caps' bolts are tightened.
    TightenCaps = "tighten_caps" => Operation::TightenCaps { .. },
    /// The caps' bolts are slackened.
    LoosenCaps = "loosen_caps" => Operation::LoosenCaps {},
    /// The caps come off.
    RemoveCaps = "remove_caps" => Operation::RemoveCaps {},
    /// A side adjuster is turned.
    TurnAdjuster = "turn_adjuster" => Operation::TurnAdjuster { .. },
    /// An adjuster's lock goes in.
    FitLock = "fit_lock" => Operation::FitLock { .. },
    /// An adjuster's lock comes out.
    RemoveLock = "remove_lock" => Operation::RemoveLock { .. },
    /// Pinion or carrier are turned.
    Turn = "turn" => Operation::Turn { .. },
    /// Pinion or carrier are pushed along their axis.
    Push = "push" => Operation::Push { .. },
    /// Something is cleaned.
    Clean = "clean" => Operation::Clean { .. },
    /// Paste is brushed on.
    BrushPaste = "brush_paste" => Operation::BrushPaste { .. },
    /// Painted teeth are rolled.
    Roll = "roll" => Operation::Roll { .. },
    /// A new part is got from the shelf.
    Replace = "replace" => Operation::Replace { .. },
    /// A value is written on the sheet.
    Note = "note" => Operation::Note { .. },
    /// Something is predicted.
    Predict = "predict" => Operation::Predict { .. },
    /// A painted plate is judged.
    JudgePlate = "judge_plate" => Operation::JudgePlate { .. },
    /// A hint is asked for.
    Hint = "hint" => Operation::Hint { .. },
    /// A part is condemned.
    Condemn = "condemn" => Operation::Condemn { .. },
    /// The axle is handed over.
    Finish = "finish" => Operation::Finish {},
}

impl OperationKind {
    /// The kind of this name.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.key() == key)
    }
}
