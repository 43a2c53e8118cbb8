//! What the bench answers, in sentences: notices, refusals, cautions, readings.

use super::bench::{part, ring};
use super::debrief::amount::{both, both_nut_torque, both_torque};
use super::{Amount, error, say};
use crate::bearing::Overload;
use crate::bench::instrument::CannotRead;
use crate::bench::{
    Caution, InstrumentKind, Item, MeasurandKind, Notice, PackFault, PatternPart, ReadingPart, Refusal,
};
use crate::gear::Side as Flank;
use crate::quantity::{Units, number, signed};

/// A hazard, what it does and what meets it: short, each time.
pub fn caution(of: Caution) -> String {
    super::hazard(of.hazard())
}

/// Something that was noticed; `hints` are those of the card.
pub fn notice(of: &Notice, hints: &[String]) -> String {
    match *of {
        Notice::RingPartWayOn => say!("answer-noticed-part-way"),
        Notice::RingHome => say!("answer-noticed-home"),
        Notice::RingStopped => say!("answer-noticed-no-rise"),
        Notice::NutWent { degrees } => say!("answer-noticed-nut-went", degrees = number(degrees, 0)),
        Notice::WrenchGaveFirst => say!("answer-noticed-wrench-first"),
        Notice::AdjustersWereIn {
            tooth_notches,
            back_notches,
        } => say!(
            "answer-noticed-adjusters",
            tooth = Amount::Notches.text(tooth_notches, Units::Metric),
            back = Amount::Notches.text(back_notches, Units::Metric),
        ),
        Notice::TeethStrawColored => say!("answer-noticed-straw"),
        Notice::RingGearDrawnOn => say!("answer-noticed-drawn-on"),
        Notice::RingGearWentHome => say!("answer-noticed-went-home"),
        Notice::NumbersEtched { pinion, ring_gear } => {
            // As text: an etched number has no thousands.
            say!(
                "answer-noticed-numbers",
                pinion = pinion.to_string(),
                ring_gear = ring_gear.to_string()
            )
        }
        Notice::MarkEtched { mark_mm } => say!("answer-noticed-mark", mark = signed(mark_mm, 2)),
        Notice::Hint { level } => {
            let place = usize::try_from(level.saturating_sub(1)).unwrap_or(usize::MAX);
            hints.get(place).cloned().unwrap_or_else(|| say!("answer-no-such-hint"))
        }
    }
}

/// Something that is fitted already.
fn already(item: Item) -> String {
    match item {
        Item::Pinion => say!("answer-already-pinion"),
        Item::Carrier => say!("answer-already-carrier"),
        Item::Lock { .. } => say!("answer-already-lock"),
        Item::Ring { ring: of } => say!("answer-already-part", part = ring(of)),
        Item::Nut => say!("answer-already-nut"),
        Item::RingGear => say!("answer-already-ring-gear"),
        Item::SetUpBearings => say!("answer-already-set-up-bearings"),
        Item::Spacer => say!("answer-already-spacer"),
        Item::Seal => say!("answer-already-seal"),
        Item::Cartridge => say!("answer-already-cartridge"),
        Item::Caps => say!("answer-already-caps"),
        Item::Spreader => say!("answer-already-spreader"),
    }
}

/// Something that is not fitted.
fn missing(item: Item) -> String {
    match item {
        Item::Pinion => say!("answer-missing-pinion"),
        Item::Carrier => say!("answer-missing-carrier"),
        Item::Lock { .. } => say!("answer-missing-lock"),
        Item::Ring { ring: of } => say!("answer-missing-part", part = ring(of)),
        Item::RingGear => say!("answer-missing-ring-gear"),
        Item::SetUpBearings => say!("answer-missing-set-up-bearings"),
        Item::Spacer => say!("answer-missing-spacer"),
        Item::Nut => say!("answer-missing-nut"),
        Item::Seal => say!("answer-missing-seal"),
        Item::Cartridge => say!("answer-missing-cartridge"),
        Item::Caps => say!("answer-missing-caps"),
        Item::Spreader => say!("answer-missing-spreader"),
    }
}

/// Why a pack cannot be made up.
fn pack_fault(fault: PackFault) -> String {
    match fault {
        PackFault::NoSuchPiece { piece } => say!("answer-no-such-shim", piece = piece),
        PackFault::OtherShape { piece } => say!("answer-other-shape", piece = piece),
        PackFault::Fitted { piece } => say!("answer-shim-fitted", piece = piece),
    }
}

/// Why a wrench shows nothing of use.
fn wrench_cannot(why: CannotRead) -> String {
    /// From here on a wrench is one for nuts, N m.
    const FOR_NUTS_NM: f64 = 30.0;
    let torque = |torque_nm: f64| {
        if torque_nm < FOR_NUTS_NM {
            both_torque(torque_nm)
        } else {
            both_nut_torque(torque_nm)
        }
    };
    match why {
        CannotRead::Clicks => say!("answer-wrench-clicks"),
        CannotRead::TooLarge { least_nm } => say!("answer-wrench-too-large", torque = torque(least_nm)),
        CannotRead::TooSmall { most_nm } => say!("answer-wrench-too-small", torque = torque(most_nm)),
    }
}

/// What would give way.
fn gives_way(overload: Overload) -> String {
    let force = |force_n: f64| Amount::Kilonewtons.text(force_n / 1000.0, Units::Metric);
    match overload {
        Overload::Thread {
            clamp_n,
            stress_n_per_mm2,
        } => say!(
            "answer-thread-tears",
            clamp = force(clamp_n),
            stress = number(stress_n_per_mm2, 0)
        ),
        Overload::Spacer {
            spacer_n,
            stress_n_per_mm2,
        } => say!(
            "answer-spacer-crushed",
            force = force(spacer_n),
            stress = number(stress_n_per_mm2, 0)
        ),
        Overload::Folded { plastic_mm } => say!("answer-crush-spacer-folds", crush = both(plastic_mm)),
        Overload::Bearings { preload_n, closing_mm } => say!(
            "answer-bearings-crushed",
            preload = force(preload_n),
            closing = both(closing_mm)
        ),
    }
}

/// What an instrument is, in the middle of a sentence.
pub fn instrument(kind: InstrumentKind) -> String {
    match kind {
        InstrumentKind::Dial => say!("answer-instrument-dial"),
        InstrumentKind::BeamWrench => say!("answer-instrument-beam-wrench"),
        InstrumentKind::DialWrench => say!("answer-instrument-dial-wrench"),
        InstrumentKind::ElectronicWrench => say!("answer-instrument-electronic-wrench"),
        InstrumentKind::CordAndScale => say!("answer-instrument-cord-and-scale"),
        InstrumentKind::ClickWrench => say!("answer-instrument-click-wrench"),
        InstrumentKind::Micrometer => say!("answer-instrument-micrometer"),
        InstrumentKind::DepthGauge => say!("answer-instrument-depth-gauge"),
        InstrumentKind::Feeler => say!("answer-instrument-feeler"),
        InstrumentKind::Thermometer => say!("answer-instrument-thermometer"),
        InstrumentKind::Eye => say!("answer-instrument-eye"),
    }
}

/// A quantity, in the middle of a sentence.
pub fn quantity(kind: MeasurandKind) -> String {
    match kind {
        MeasurandKind::Lash => say!("answer-quantity-backlash"),
        MeasurandKind::WheelFaceRunout | MeasurandKind::WheelRadialRunout | MeasurandKind::PinionRunout => {
            say!("answer-quantity-runout")
        }
        MeasurandKind::NutTorque => say!("answer-quantity-nut-torque"),
        MeasurandKind::BreakawayTorque | MeasurandKind::RollingTorque | MeasurandKind::CarrierTorque => {
            say!("answer-quantity-torque")
        }
        MeasurandKind::PinionDepth => say!("answer-quantity-pinion-depth"),
        MeasurandKind::PinionEndPlay | MeasurandKind::CarrierEndPlay => say!("answer-quantity-end-play"),
        MeasurandKind::CaseSpread => say!("answer-quantity-housing-spread"),
        MeasurandKind::ShimPiece => say!("answer-quantity-shim-piece"),
        MeasurandKind::ShimPack => say!("answer-quantity-shim-pack"),
        MeasurandKind::SeatGap => say!("answer-quantity-seat-gap"),
        MeasurandKind::WheelTemperature => say!("answer-quantity-temperature"),
        MeasurandKind::Print | MeasurandKind::Plate => say!("answer-quantity-pattern"),
        MeasurandKind::MatchNumbers => say!("answer-quantity-numbers"),
    }
}

/// One of the values of a measurement.
pub fn reading_part(of: ReadingPart) -> String {
    match of {
        ReadingPart::Lash => say!("answer-reading-backlash"),
        ReadingPart::TotalIndicatorReading => say!("answer-reading-runout"),
        ReadingPart::Travel => say!("answer-reading-travel"),
        ReadingPart::Thickness => say!("answer-reading-thickness"),
        ReadingPart::Distance => say!("answer-reading-distance"),
        ReadingPart::ThickestLeaf => say!("answer-reading-thickest-leaf"),
        ReadingPart::Breakaway => say!("answer-reading-breakaway"),
        ReadingPart::Rolling => say!("answer-reading-rotating"),
        ReadingPart::NutTorque => say!("answer-reading-nut-torque"),
        ReadingPart::Temperature => say!("answer-reading-temperature"),
        ReadingPart::PinionNumber => say!("answer-reading-pinion-number"),
        ReadingPart::RingGearNumber => say!("answer-reading-ring-gear-number"),
        ReadingPart::PinionMark => say!("answer-reading-pinion-mark"),
        ReadingPart::Clearness => say!("answer-reading-clearness"),
        ReadingPart::Pattern(Flank::Drive, part) => match part {
            PatternPart::CentroidAlong => say!("answer-reading-drive-middle-along"),
            PatternPart::CentroidUp => say!("answer-reading-drive-middle-up"),
            PatternPart::Toe => say!("answer-reading-drive-toe"),
            PatternPart::Heel => say!("answer-reading-drive-heel"),
            PatternPart::Root => say!("answer-reading-drive-root"),
            PatternPart::Top => say!("answer-reading-drive-top"),
            PatternPart::Area => say!("answer-reading-drive-area"),
        },
        ReadingPart::Pattern(Flank::Coast, part) => match part {
            PatternPart::CentroidAlong => say!("answer-reading-coast-middle-along"),
            PatternPart::CentroidUp => say!("answer-reading-coast-middle-up"),
            PatternPart::Toe => say!("answer-reading-coast-toe"),
            PatternPart::Heel => say!("answer-reading-coast-heel"),
            PatternPart::Root => say!("answer-reading-coast-root"),
            PatternPart::Top => say!("answer-reading-coast-top"),
            PatternPart::Area => say!("answer-reading-coast-area"),
        },
    }
}

/// Why something is not done.
pub fn refusal(of: &Refusal) -> String {
    match of {
        Refusal::HandedOver => say!("answer-signed-off"),
        Refusal::NotTaken { error } => error::operation(error).line(),
        Refusal::AlreadyFitted { item } => already(*item),
        Refusal::NotFitted { item } => missing(*item),
        Refusal::PinionInTheWay => say!("answer-pinion-in-the-way"),
        Refusal::SetUpBearingsInTheWay => say!("answer-set-up-bearings-in-the-way"),
        Refusal::HeadCupBehindCarrier => say!("answer-head-cup-behind-carrier"),
        Refusal::PinionBlocksSetUpBearings => say!("answer-pinion-blocks-set-up-bearings"),
        Refusal::RealBearingsInPlace => say!("answer-real-bearings-in-place"),
        Refusal::PinionHoldsSetUpBearings => say!("answer-pinion-holds-set-up-bearings"),
        Refusal::SpacerNeedsPinionOut => say!("answer-spacer-needs-pinion-out"),
        Refusal::NoUsedSleeve => say!("answer-no-used-crush-spacer"),
        Refusal::SpacerInside => say!("answer-spacer-inside"),
        Refusal::PinionNeedsBearings => say!("answer-pinion-needs-bearings"),
        Refusal::NutHoldsPinion => say!("answer-nut-holds-pinion"),
        Refusal::HeadBlockedByCartridge => say!("answer-head-blocked-by-cartridge"),
        Refusal::HeadBlockedByCarrier => say!("answer-head-blocked-by-carrier"),
        Refusal::FlangeInTheWay => say!("answer-flange-in-the-way"),
        Refusal::NoCartridge => say!("answer-no-cartridge"),
        Refusal::CartridgeNotBolted => say!("answer-cartridge-not-bolted"),
        Refusal::NoPinionForNut => say!("answer-no-pinion-for-nut"),
        Refusal::NoBarTakes => say!("answer-no-bar-takes"),
        Refusal::PinionNotHeld => say!("answer-pinion-not-held"),
        Refusal::OldNutOn => say!("answer-old-nut-on"),
        Refusal::OldBoltsIn => say!("answer-old-bolts-in"),
        Refusal::OldBearingsOn => say!("answer-old-bearings-on"),
        Refusal::LiftCarrierFirst => say!("answer-lift-carrier-first"),
        Refusal::SealComesNew => say!("answer-seal-comes-new"),
        Refusal::SleeveComesNew => say!("answer-crush-spacer-comes-new"),
        Refusal::NotOnTheShelf { part: of } => say!("answer-not-on-the-shelf", part = part(*of)),
        Refusal::ShimBehindPinion => say!("answer-shim-behind-pinion"),
        Refusal::ShimUnderHeadCone => say!("answer-shim-under-head-cone"),
        Refusal::ShimUnderHeadCup => say!("answer-shim-under-head-cup"),
        Refusal::ShimUnderCartridge => say!("answer-shim-under-cartridge"),
        Refusal::NoSpacerShims => say!("answer-no-spacer-shims"),
        Refusal::SpacerShimsInside => say!("answer-spacer-shims-inside"),
        Refusal::NoSideShims => say!("answer-no-side-shims"),
        Refusal::SideShimsBehindCarrier => say!("answer-side-shims-behind-carrier"),
        Refusal::NoPackIn => say!("answer-no-pack-in"),
        Refusal::Pack { fault } => pack_fault(*fault),
        Refusal::RingGearOnCarrier => say!("answer-ring-gear-on-carrier"),
        Refusal::NoRingGear => say!("answer-no-ring-gear"),
        Refusal::RingGearGoesOnAtBench => say!("answer-ring-gear-goes-on-at-bench"),
        Refusal::BoltsReachedAtBench => say!("answer-bolts-reached-at-bench"),
        Refusal::RingGearCoversSeat => say!("answer-ring-gear-covers-seat"),
        Refusal::BoltsAreIn => say!("answer-bolts-are-in"),
        Refusal::BearingsInside => say!("answer-bearings-inside"),
        Refusal::CapsInTheWay => say!("answer-caps-in-the-way"),
        Refusal::SideStacksTooWide => say!("answer-side-shims-too-wide"),
        Refusal::CapsHoldCarrier => say!("answer-caps-hold-carrier"),
        Refusal::NoCarrierForCaps => say!("answer-no-carrier-for-caps"),
        Refusal::CapsTighter => say!("answer-caps-tighter"),
        Refusal::CapsNotTorqued => say!("answer-caps-not-torqued"),
        Refusal::CapsTorqued => say!("answer-caps-torqued"),
        Refusal::LocksHoldCaps => say!("answer-locks-hold-caps"),
        Refusal::NoAdjusters => say!("answer-no-adjusters"),
        Refusal::AdjusterThreadOpen => say!("answer-adjuster-thread-open"),
        Refusal::AdjusterBinds => say!("answer-adjuster-binds"),
        Refusal::LockIsIn => say!("answer-lock-is-in"),
        Refusal::AdjusterStops => say!("answer-adjuster-stops"),
        Refusal::NoCapForLock => say!("answer-no-cap-for-lock"),
        Refusal::NoSlotUnderLock => say!("answer-no-slot-under-lock"),
        Refusal::CarrierNotHeld => say!("answer-carrier-not-held"),
        Refusal::GearsDoNotTurn => say!("answer-gears-do-not-turn"),
        Refusal::NothingTogether => say!("answer-nothing-together"),
        Refusal::NoRingGearToPaint => say!("answer-no-ring-gear-to-paint"),
        Refusal::NoToothNamed => say!("answer-no-tooth-named"),
        Refusal::NoSuchTooth { teeth } => {
            say!("answer-no-such-tooth", teeth = teeth, last = teeth.saturating_sub(1))
        }
        Refusal::NoPaste => say!("answer-no-compound"),
        Refusal::NotRolled => say!("answer-not-rolled"),
        Refusal::NotInMesh => say!("answer-not-in-mesh"),
        Refusal::CarrierMustTurn => say!("answer-carrier-must-turn"),
        Refusal::NutTorqueReadTurning => say!("answer-nut-torque-read-turning"),
        Refusal::PinionTurnsToo => say!("answer-pinion-turns-too"),
        Refusal::ArborBlocked => say!("answer-arbor-blocked"),
        Refusal::NoSuchPiece => say!("answer-no-such-piece"),
        Refusal::PieceFitted => say!("answer-piece-fitted"),
        Refusal::NoPieceInBox => say!("answer-no-piece-in-box"),
        Refusal::RingNotOn { ring: of } => say!("answer-part-not-on", part = ring(*of)),
        Refusal::NoSuchPlate => say!("answer-no-such-plate"),
        Refusal::NumbersAreCompared => say!("answer-numbers-are-compared"),
        Refusal::TeethDoNotTouch => say!("answer-teeth-do-not-touch"),
        Refusal::NoLash => say!("answer-no-backlash"),
        Refusal::NoSuchTool { name, there } => {
            say!("answer-no-such-tool", name = name, there = there.join(", "))
        }
        Refusal::DoesNotShow { instrument: of, what } => {
            say!(
                "answer-does-not-show",
                instrument = instrument(*of),
                what = quantity(*what)
            )
        }
        Refusal::WrenchCannot { why } => wrench_cannot(*why),
        Refusal::DoesNotTighten { instrument: of } => say!("answer-does-not-tighten", instrument = instrument(*of)),
        Refusal::DoesNotTurn { instrument: of } => say!("answer-does-not-turn", instrument = instrument(*of)),
        Refusal::CarrierCoversPinion => say!("answer-carrier-covers-pinion"),
        Refusal::NoEvidence => say!("answer-no-evidence"),
        Refusal::NoSuchRecord { record } => say!("answer-no-such-record", record = record),
        Refusal::NothingToClamp => say!("answer-nothing-to-clamp"),
        Refusal::GivesWay { overload } => gives_way(*overload),
        Refusal::CannotBe => say!("answer-cannot-be"),
    }
}

/// A last line of a journal that was not written to its end; `bytes` of it are there.
pub fn torn_line(bytes: usize) -> String {
    say!("answer-torn-line", bytes = bytes)
}
