//! Why something cannot be done: what makes it physically impossible, or what no operation takes.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::choices::{CarrierSide, Ring};
use super::instrument::CannotRead;
use super::instrument_kind::InstrumentKind;
use super::kit::PackFault;
use super::limits::OperationError;
use super::measurand::MeasurandKind;
use super::part::Part;
use crate::axle::AxleError;

/// Something that is fitted or not.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "item", rename_all = "snake_case")]
pub enum Item {
    /// The pinion in its housing or cartridge.
    Pinion,
    /// A ring of a pinion bearing.
    Ring {
        /// Which.
        ring: Ring,
    },
    /// Set-up bearings.
    SetUpBearings,
    /// Spacer on the shaft.
    Spacer,
    /// Pinion nut and flange.
    Nut,
    /// Pinion seal.
    Seal,
    /// Cartridge on its case.
    Cartridge,
    /// Wheel on its carrier.
    RingGear,
    /// Carrier in its case.
    Carrier,
    /// Bearing caps.
    Caps,
    /// Lock of an adjuster.
    Lock {
        /// On which side.
        side: CarrierSide,
    },
    /// Spreader on the case.
    Spreader,
}

/// Why something is not done.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "refusal", rename_all = "snake_case")]
pub enum Refusal {
    /// The axle has been handed over.
    HandedOver,
    /// No operation takes these numbers.
    NotTaken {
        /// Which.
        error: OperationError,
    },
    /// It is fitted already.
    AlreadyFitted {
        /// What.
        #[serde(flatten)]
        item: Item,
    },
    /// It is not fitted.
    NotFitted {
        /// What.
        #[serde(flatten)]
        item: Item,
    },

    // Pinion, its bearings, spacer, seal and cartridge.
    /// The pinion is in the way of press or puller.
    PinionInTheWay,
    /// Set-up bearings stand where a ring goes.
    SetUpBearingsInTheWay,
    /// The head cup is reached from inside the case, and the carrier is in.
    HeadCupBehindCarrier,
    /// Set-up bearings go on with the pinion out.
    PinionBlocksSetUpBearings,
    /// Real rings stand where set-up bearings go.
    RealBearingsInPlace,
    /// The pinion holds the set-up bearings.
    PinionHoldsSetUpBearings,
    /// The spacer goes on the shaft with the pinion out.
    SpacerNeedsPinionOut,
    /// No used sleeve lies on the bench.
    NoUsedSleeve,
    /// The spacer is on the shaft inside.
    SpacerInside,
    /// The pinion lacks bearings to run in.
    PinionNeedsBearings,
    /// The nut holds the pinion.
    NutHoldsPinion,
    /// The pinion's head does not pass through the case with the cartridge bolted on.
    HeadBlockedByCartridge,
    /// The pinion passes through the inside of the case, and the carrier is in.
    HeadBlockedByCarrier,
    /// The flange is in the way of the seal.
    FlangeInTheWay,
    /// The axle has no cartridge.
    NoCartridge,
    /// The cartridge is not bolted to its case.
    CartridgeNotBolted,
    /// There is no pinion to put a nut on.
    NoPinionForNut,
    /// No bar takes the torque that the nut would need.
    NoBarTakes,
    /// There is no pinion held in its bearings.
    PinionNotHeld,

    // New parts.
    /// The old nut is on.
    OldNutOn,
    /// The wheel is bolted on with the old bolts.
    OldBoltsIn,
    /// Rings of the old bearings are on.
    OldBearingsOn,
    /// The carrier has to come out first.
    LiftCarrierFirst,
    /// A seal comes new whenever one is fitted.
    SealComesNew,
    /// A sleeve comes new when that is asked for on fitting it.
    SleeveComesNew,
    /// There is no other one on the shelf.
    NotOnTheShelf {
        /// Of which part.
        part: Part,
    },

    // Shims.
    /// The depth shim lies behind the pinion's head.
    ShimBehindPinion,
    /// The depth shim lies under the head bearing's cone.
    ShimUnderHeadCone,
    /// The depth shim lies under the head bearing's cup.
    ShimUnderHeadCup,
    /// The depth shim lies between cartridge and case.
    ShimUnderCartridge,
    /// The axle has a sleeve and no spacer shims.
    NoSpacerShims,
    /// Spacer shims are on the shaft inside.
    SpacerShimsInside,
    /// The axle has adjusters and no side shims.
    NoSideShims,
    /// Side shims lie beside the carrier's bearings.
    SideShimsBehindCarrier,
    /// No pack is in that place.
    NoPackIn,
    /// The pack cannot be made up.
    Pack {
        /// Why not.
        #[serde(flatten)]
        fault: PackFault,
    },

    // Wheel and carrier.
    /// A wheel on its carrier would heat that as well.
    RingGearOnCarrier,
    /// There is no wheel on the carrier.
    NoRingGear,
    /// The wheel goes on at the bench, and the carrier is in.
    RingGearGoesOnAtBench,
    /// The wheel's bolts are reached at the bench, and the carrier is in.
    BoltsReachedAtBench,
    /// The wheel covers its seat.
    RingGearCoversSeat,
    /// The wheel's bolts are in.
    BoltsAreIn,
    /// Bearings are washed with the pinion out.
    BearingsInside,
    /// The caps are in the way of the carrier.
    CapsInTheWay,
    /// The carrier with its side shims is too wide to go in.
    SideStacksTooWide,
    /// The caps hold the carrier.
    CapsHoldCarrier,
    /// There is no carrier for the caps to hold.
    NoCarrierForCaps,
    /// The caps are tighter than that.
    CapsTighter,
    /// The caps are not at full torque.
    CapsNotTorqued,
    /// The caps are at full torque already.
    CapsTorqued,
    /// The adjusters' locks are bolted to the caps.
    LocksHoldCaps,
    /// The axle has no adjusters.
    NoAdjusters,
    /// Half of an adjuster's thread is in its cap.
    AdjusterThreadOpen,
    /// With the caps at full torque an adjuster binds.
    AdjusterBinds,
    /// The lock of the adjuster is in.
    LockIsIn,
    /// The adjuster stops before it has gone that far.
    AdjusterStops,
    /// A lock is bolted to its cap.
    NoCapForLock,
    /// No slot stands under the lock.
    NoSlotUnderLock,
    /// There is no carrier held in its bearings.
    CarrierNotHeld,
    /// The gears do not turn: no lash, or teeth that do not meet as gears.
    GearsDoNotTurn,
    /// There is nothing together.
    NothingTogether,

    // Paste.
    /// There is no wheel to paint.
    NoRingGearToPaint,
    /// No tooth was named.
    NoToothNamed,
    /// The wheel has no such tooth.
    NoSuchTooth {
        /// How many it has.
        teeth: u32,
    },
    /// No paste is on the teeth.
    NoPaste,
    /// The painted teeth have not been rolled.
    NotRolled,
    /// The gears are not in mesh.
    NotInMesh,

    // Measuring.
    /// The carrier has to turn in its bearings for that.
    CarrierMustTurn,
    /// A nut's torque is read while the wrench turns it.
    NutTorqueReadTurning,
    /// The pinion turns with the carrier.
    PinionTurnsToo,
    /// The arbor lies in the carrier's bores.
    ArborBlocked,
    /// The kit has no such piece.
    NoSuchPiece,
    /// That piece is fitted.
    PieceFitted,
    /// No piece is in the box.
    NoPieceInBox,
    /// That ring is not on.
    RingNotOn {
        /// Which.
        ring: Ring,
    },
    /// There is no such plate beside the bench.
    NoSuchPlate,
    /// Numbers and marks are read by comparing them.
    NumbersAreCompared,
    /// The teeth do not touch at all.
    TeethDoNotTouch,
    /// There is no lash to be read.
    NoLash,
    /// There is no such instrument on the bench.
    NoSuchTool {
        /// What was asked for.
        name: String,
        /// What there is.
        there: Vec<String>,
    },
    /// The instrument does not show that quantity.
    DoesNotShow {
        /// Which instrument.
        instrument: InstrumentKind,
        /// Which quantity.
        what: MeasurandKind,
    },
    /// The wrench does not show that torque.
    WrenchCannot {
        /// Why not.
        #[serde(flatten)]
        why: CannotRead,
    },
    /// The instrument does not tighten a nut.
    DoesNotTighten {
        /// Which instrument.
        instrument: InstrumentKind,
    },
    /// The instrument does not turn a nut.
    DoesNotTurn {
        /// Which instrument.
        instrument: InstrumentKind,
    },

    // Sheet.
    /// The carrier covers the pinion's head.
    CarrierCoversPinion,
    /// A part is condemned with evidence.
    NoEvidence,
    /// There is no such record.
    NoSuchRecord {
        /// Its number.
        record: u32,
    },

    // What the solver says.
    /// The nut has nothing to press on.
    NothingToClamp,
    /// Something would give way.
    GivesWay {
        /// Of which kind.
        #[serde(flatten)]
        overload: crate::bearing::Overload,
    },
    /// The parts cannot be put together so.
    CannotBe,
}

impl Refusal {
    /// Whether anybody sees the reason who stands at the bench before the thing is tried. What is not plain to see comes
    /// from hidden sizes: telling it beforehand would tell those.
    pub const fn plain_to_see(&self) -> bool {
        match self {
            Self::SideStacksTooWide
            | Self::AdjusterStops
            | Self::GearsDoNotTurn
            | Self::NoBarTakes
            | Self::TeethDoNotTouch
            | Self::NoLash
            | Self::WrenchCannot { .. }
            | Self::GivesWay { .. }
            | Self::CannotBe => false,
            Self::HandedOver
            | Self::NotTaken { .. }
            | Self::AlreadyFitted { .. }
            | Self::NotFitted { .. }
            | Self::PinionInTheWay
            | Self::SetUpBearingsInTheWay
            | Self::HeadCupBehindCarrier
            | Self::PinionBlocksSetUpBearings
            | Self::RealBearingsInPlace
            | Self::PinionHoldsSetUpBearings
            | Self::SpacerNeedsPinionOut
            | Self::NoUsedSleeve
            | Self::SpacerInside
            | Self::PinionNeedsBearings
            | Self::NutHoldsPinion
            | Self::HeadBlockedByCartridge
            | Self::HeadBlockedByCarrier
            | Self::FlangeInTheWay
            | Self::NoCartridge
            | Self::CartridgeNotBolted
            | Self::NoPinionForNut
            | Self::PinionNotHeld
            | Self::OldNutOn
            | Self::OldBoltsIn
            | Self::OldBearingsOn
            | Self::LiftCarrierFirst
            | Self::SealComesNew
            | Self::SleeveComesNew
            | Self::NotOnTheShelf { .. }
            | Self::ShimBehindPinion
            | Self::ShimUnderHeadCone
            | Self::ShimUnderHeadCup
            | Self::ShimUnderCartridge
            | Self::NoSpacerShims
            | Self::SpacerShimsInside
            | Self::NoSideShims
            | Self::SideShimsBehindCarrier
            | Self::NoPackIn
            | Self::Pack { .. }
            | Self::RingGearOnCarrier
            | Self::NoRingGear
            | Self::RingGearGoesOnAtBench
            | Self::BoltsReachedAtBench
            | Self::RingGearCoversSeat
            | Self::BoltsAreIn
            | Self::BearingsInside
            | Self::CapsInTheWay
            | Self::CapsHoldCarrier
            | Self::NoCarrierForCaps
            | Self::CapsTighter
            | Self::CapsNotTorqued
            | Self::CapsTorqued
            | Self::LocksHoldCaps
            | Self::NoAdjusters
            | Self::AdjusterThreadOpen
            | Self::AdjusterBinds
            | Self::LockIsIn
            | Self::NoCapForLock
            | Self::NoSlotUnderLock
            | Self::CarrierNotHeld
            | Self::NothingTogether
            | Self::NoRingGearToPaint
            | Self::NoToothNamed
            | Self::NoSuchTooth { .. }
            | Self::NoPaste
            | Self::NotRolled
            | Self::NotInMesh
            | Self::CarrierMustTurn
            | Self::NutTorqueReadTurning
            | Self::PinionTurnsToo
            | Self::ArborBlocked
            | Self::NoSuchPiece
            | Self::PieceFitted
            | Self::NoPieceInBox
            | Self::RingNotOn { .. }
            | Self::NoSuchPlate
            | Self::NumbersAreCompared
            | Self::NoSuchTool { .. }
            | Self::DoesNotShow { .. }
            | Self::DoesNotTighten { .. }
            | Self::DoesNotTurn { .. }
            | Self::CarrierCoversPinion
            | Self::NoEvidence
            | Self::NoSuchRecord { .. }
            | Self::NothingToClamp => true,
        }
    }
}

impl From<AxleError> for Refusal {
    fn from(error: AxleError) -> Self {
        match error {
            AxleError::NothingToClamp => Self::NothingToClamp,
            AxleError::Overload(overload) => Self::GivesWay { overload },
            // An axle that is on the bench has its layout, its spacer and its targets; numbers that are none come from an
            // assembly that no hands could make.
            AxleError::NoSuchShim { .. } | AxleError::OtherSpacer { .. } | AxleError::Target | AxleError::Root(_) => {
                Self::CannotBe
            }
        }
    }
}

impl From<PackFault> for Refusal {
    fn from(fault: PackFault) -> Self {
        Self::Pack { fault }
    }
}

impl From<CannotRead> for Refusal {
    fn from(why: CannotRead) -> Self {
        Self::WrenchCannot { why }
    }
}

/// Refuses unless something holds.
pub(super) fn need(holds: bool, otherwise: Refusal) -> Result<(), Refusal> {
    if holds { Ok(()) } else { Err(otherwise) }
}

/// Refuses unless something is fitted.
pub(super) fn need_fitted(fitted: bool, item: Item) -> Result<(), Refusal> {
    need(fitted, Refusal::NotFitted { item })
}

/// Refuses where something is fitted.
pub(super) fn need_free(fitted: bool, item: Item) -> Result<(), Refusal> {
    need(!fitted, Refusal::AlreadyFitted { item })
}
