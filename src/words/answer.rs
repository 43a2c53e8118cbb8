//! What the bench answers, in sentences: notices, refusals, cautions, readings.

use super::bench::{part, ring};
use super::error;
use crate::bench::instrument::CannotRead;
use crate::bench::{Caution, InstrumentKind, Item, MeasurandKind, Notice, PatternPart, ReadingPart, Refusal};
use crate::gear::Side as Flank;
use crate::quantity::{number, signed};

/// A hazard and what meets it: short, each time.
pub const fn caution(of: Caution) -> &'static str {
    match of {
        Caution::RingUnderPress => "A hardened ring under a press can burst: guard closed.",
        Caution::Splinters => "Steel on hardened steel throws splinters: eye protection on.",
        Caution::HotWheel => "The ring gear burns skin: hot gloves on.",
        Caution::HeavyCarrier => "The carrier is heavy and the teeth are sharp: use the hoist.",
        Caution::NutReaction => "The flange reacts with the nut's whole torque: rest the holding bar on the bench.",
        Caution::AirSpunBearing => "A bearing spun by air can fly apart: hold it still.",
    }
}

/// Something that was noticed; `hints` are those of the card.
pub fn notice(of: &Notice, hints: &[String]) -> String {
    match *of {
        Notice::RingPartWayOn => {
            "The press stopped with the ring only part of the way on. It came off again.".to_owned()
        }
        Notice::RingHome => "The force rose steeply at the end and the sound changed.".to_owned(),
        Notice::RingStopped => "The press stopped; no clear rise was felt.".to_owned(),
        Notice::NutWent { degrees } => format!("The nut went {} degrees.", number(degrees, 0)),
        Notice::WrenchGaveFirst => "The wrench gave before the nut moved.".to_owned(),
        Notice::AdjustersWereIn {
            tooth_notches,
            back_notches,
        } => format!(
            "The rings were in by {} notches on the tooth side and {} behind the wheel, counted from where they stand when a \
             carrier is set in.",
            number(tooth_notches, 1),
            number(back_notches, 1)
        ),
        Notice::TeethStrawColored => "The teeth have run straw-coloured.".to_owned(),
        Notice::RingGearDrawnOn => "The ring gear had to be drawn on by its bolts.".to_owned(),
        Notice::RingGearWentHome => "The ring gear went home by hand.".to_owned(),
        Notice::NumbersEtched { pinion, ring_gear } => {
            format!("The pinion is etched {pinion}, the ring gear {ring_gear}.")
        }
        Notice::MarkEtched { mark_mm } => {
            format!(
                "The mark on the pinion's head says {} mm; + stands farther from the wheel axis.",
                signed(mark_mm, 2)
            )
        }
        Notice::Hint { level } => {
            let place = usize::try_from(level.saturating_sub(1)).unwrap_or(usize::MAX);
            hints
                .get(place)
                .cloned()
                .unwrap_or_else(|| "The card has no such hint.".to_owned())
        }
    }
}

/// Something that is fitted already.
fn already(item: Item) -> &'static str {
    match item {
        Item::Pinion | Item::Carrier | Item::Lock { .. } => "It is in already.",
        Item::Ring { .. } | Item::Nut | Item::RingGear => "It is on already.",
        Item::SetUpBearings => "They are in already.",
        Item::Spacer => "There is one on the shaft.",
        Item::Seal => "There is one in already.",
        Item::Cartridge => "It is bolted on already.",
        Item::Caps => "They are on already.",
        Item::Spreader => "There is a spreader on the case already.",
    }
}

/// Something that is not fitted.
fn missing(item: Item) -> &'static str {
    match item {
        Item::Pinion | Item::Carrier | Item::Lock { .. } => "It is not in.",
        Item::Ring { .. } | Item::RingGear => "It is not on.",
        Item::SetUpBearings => "They are not in.",
        Item::Spacer => "There is no spacer on the shaft.",
        Item::Nut => "The nut is not on.",
        Item::Seal => "There is none in.",
        Item::Cartridge => "It is not bolted on.",
        Item::Caps => "They are not on.",
        Item::Spreader => "There is no spreader on the case.",
    }
}

/// As a sentence: large at the start, a stop at the end.
fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(|c| c.to_uppercase().to_string()).unwrap_or_default();
    format!("{first}{}.", letters.as_str().trim_end_matches('.'))
}

fn wrench_cannot(why: CannotRead) -> String {
    sentence(&error::wrench(why).line())
}

/// What an instrument is.
pub const fn instrument(kind: InstrumentKind) -> &'static str {
    match kind {
        InstrumentKind::Dial => "dial indicator",
        InstrumentKind::BeamWrench => "beam wrench",
        InstrumentKind::DialWrench => "dial wrench",
        InstrumentKind::ElectronicWrench => "electronic wrench",
        InstrumentKind::CordAndScale => "cord and scale",
        InstrumentKind::ClickWrench => "click wrench",
        InstrumentKind::Micrometer => "micrometer",
        InstrumentKind::DepthGauge => "depth gauge",
        InstrumentKind::Feeler => "feeler",
        InstrumentKind::Thermometer => "thermometer",
        InstrumentKind::Eye => "eye",
    }
}

/// A quantity, in the middle of a sentence.
pub const fn quantity(kind: MeasurandKind) -> &'static str {
    match kind {
        MeasurandKind::Lash => "lash",
        MeasurandKind::WheelFaceRunout | MeasurandKind::WheelRadialRunout | MeasurandKind::PinionRunout => "runout",
        MeasurandKind::NutTorque => "torque on a nut",
        MeasurandKind::BreakawayTorque | MeasurandKind::RollingTorque | MeasurandKind::CarrierTorque => "torque",
        MeasurandKind::PinionDepth => "the pinion's depth",
        MeasurandKind::PinionEndPlay | MeasurandKind::CarrierEndPlay => "end play",
        MeasurandKind::CaseSpread => "the spread of a case",
        MeasurandKind::ShimPiece => "the thickness of a shim",
        MeasurandKind::ShimPack => "the thickness of a pack",
        MeasurandKind::SeatGap => "the gap behind a ring",
        MeasurandKind::WheelTemperature => "temperature",
        MeasurandKind::Print | MeasurandKind::Plate => "a print",
        MeasurandKind::MatchNumbers => "what is etched",
    }
}

/// One of the values of a measurement.
pub const fn reading_part(of: ReadingPart) -> &'static str {
    match of {
        ReadingPart::Lash => "lash",
        ReadingPart::TotalIndicatorReading => "total indicator reading",
        ReadingPart::Travel => "travel",
        ReadingPart::Thickness => "thickness",
        ReadingPart::Distance => "distance",
        ReadingPart::ThickestLeaf => "thickest leaf that goes in",
        ReadingPart::Breakaway => "breakaway torque",
        ReadingPart::Rolling => "rotating torque",
        ReadingPart::NutTorque => "torque",
        ReadingPart::Temperature => "temperature",
        ReadingPart::PinionNumber => "number on the pinion",
        ReadingPart::RingGearNumber => "number on the ring gear",
        ReadingPart::PinionMark => "mark on the pinion",
        ReadingPart::Clearness => "clearness",
        ReadingPart::Pattern(Flank::Drive, part) => match part {
            PatternPart::CentroidAlong => "drive centroid along the tooth",
            PatternPart::CentroidUp => "drive centroid up the tooth",
            PatternPart::Toe => "drive toe end",
            PatternPart::Heel => "drive heel end",
            PatternPart::Root => "drive root end",
            PatternPart::Top => "drive top end",
            PatternPart::Area => "drive area",
        },
        ReadingPart::Pattern(Flank::Coast, part) => match part {
            PatternPart::CentroidAlong => "coast centroid along the tooth",
            PatternPart::CentroidUp => "coast centroid up the tooth",
            PatternPart::Toe => "coast toe end",
            PatternPart::Heel => "coast heel end",
            PatternPart::Root => "coast root end",
            PatternPart::Top => "coast top end",
            PatternPart::Area => "coast area",
        },
    }
}

/// Why something is not done.
#[expect(clippy::too_many_lines, reason = "a line a refusal")]
pub fn refusal(of: &Refusal) -> String {
    let said = match of {
        Refusal::HandedOver => "The axle has been handed over.",
        Refusal::NotTaken { error } => return sentence(&error::operation(error).line()),
        Refusal::AlreadyFitted { item } => already(*item),
        Refusal::NotFitted { item } => missing(*item),
        Refusal::PinionInTheWay => "The pinion is in the way: take it out first.",
        Refusal::SetUpBearingsInTheWay => "The set-up bearings are in its place: take them out first.",
        Refusal::HeadCupBehindCarrier => {
            "The head bearing's cup is reached from inside the case: lift the carrier out first."
        }
        Refusal::PinionBlocksSetUpBearings => "The pinion has to be out for the set-up bearings to go on.",
        Refusal::RealBearingsInPlace => "The set-up bearings take the place of the real ones: pull those off first.",
        Refusal::PinionHoldsSetUpBearings => "Take the pinion out first.",
        Refusal::SpacerNeedsPinionOut => "The spacer goes on the shaft with the pinion out.",
        Refusal::NoUsedSleeve => "There is no used sleeve on the bench: take a new one.",
        Refusal::SpacerInside => "The spacer is on the shaft inside: take the pinion out first.",
        Refusal::PinionNeedsBearings => {
            "The pinion needs its bearings: head cone, head cup and tail cup, or the set-up bearings."
        }
        Refusal::NutHoldsPinion => "The nut holds it: take the nut off first.",
        Refusal::HeadBlockedByCartridge => {
            "The pinion's head does not pass through the case: unbolt the cartridge first."
        }
        Refusal::HeadBlockedByCarrier => {
            "The pinion passes through the inside of the case: lift the carrier out first."
        }
        Refusal::FlangeInTheWay => "The flange is in the way: take nut and flange off first.",
        Refusal::NoCartridge => "This axle has no cartridge.",
        Refusal::CartridgeNotBolted => "The cartridge is not bolted to the case.",
        Refusal::NoPinionForNut => "There is no pinion to put it on.",
        Refusal::NoBarTakes => "The nut does not go that far: no bar takes the torque.",
        Refusal::PinionNotHeld => "There is no pinion held in its bearings.",
        Refusal::OldNutOn => "Take the old one off first.",
        Refusal::OldBoltsIn => "The ring gear is bolted on with the old ones: take it off first.",
        Refusal::OldBearingsOn => "Pull all rings of the old ones off first.",
        Refusal::LiftCarrierFirst => "Lift the carrier out first.",
        Refusal::SealComesNew => "A seal comes new whenever one is fitted.",
        Refusal::SleeveComesNew => "A sleeve comes new when it is asked for on fitting it.",
        Refusal::NotOnTheShelf { part: of } => {
            return format!(
                "There is no other {} on the shelf: condemn it, with evidence.",
                part(*of)
            );
        }
        Refusal::ShimBehindPinion => "The depth shim lies behind the pinion's head: take the pinion out first.",
        Refusal::ShimUnderHeadCone => "The depth shim lies under the head bearing's cone: pull that off first.",
        Refusal::ShimUnderHeadCup => "The depth shim lies under the head bearing's cup: pull that off first.",
        Refusal::ShimUnderCartridge => "The depth shim lies between cartridge and case: unbolt the cartridge first.",
        Refusal::NoSpacerShims => "This axle has a sleeve and no spacer shims.",
        Refusal::SpacerShimsInside => "The spacer and its shims are on the shaft inside: take the pinion out first.",
        Refusal::NoSideShims => "This axle has side adjusters and no side shims.",
        Refusal::SideShimsBehindCarrier => "Side shims lie beside the carrier's bearings: lift the carrier out first.",
        Refusal::NoPackIn => "There is no pack in.",
        Refusal::Pack { fault } => return sentence(&error::pack(*fault).line()),
        Refusal::RingGearOnCarrier => "The ring gear is on its carrier and would heat that as well: take it off first.",
        Refusal::NoRingGear => "There is no ring gear on the carrier.",
        Refusal::RingGearGoesOnAtBench => "Lift the carrier out first: the ring gear goes on at the bench.",
        Refusal::BoltsReachedAtBench => "The bolts are reached at the bench: lift the carrier out first.",
        Refusal::RingGearCoversSeat => "The ring gear covers its seat: take it off first.",
        Refusal::BoltsAreIn => "The bolts are in: take the ring gear off first.",
        Refusal::BearingsInside => "The bearings are washed at the bench: take the pinion out first.",
        Refusal::CapsInTheWay => "The caps are in the way: take them off first.",
        Refusal::SideStacksTooWide => {
            "The carrier with its side shims is too wide to go in. Spread the case, or thin the packs."
        }
        Refusal::CapsHoldCarrier => "The caps hold it: take them off first.",
        Refusal::NoCarrierForCaps => "There is no carrier for them to hold.",
        Refusal::CapsTighter => "They are tighter than that already: loosen them.",
        Refusal::CapsNotTorqued => "They are not at full torque.",
        Refusal::CapsTorqued => "They are at full torque.",
        Refusal::LocksHoldCaps => "The locks are bolted to the caps: take them out first.",
        Refusal::NoAdjusters => "This axle has side shims and no adjusters.",
        Refusal::AdjusterThreadOpen => "Half its thread is in the cap: carrier in and caps on first.",
        Refusal::AdjusterBinds => "With the caps at full torque the ring binds: loosen them until they are snug.",
        Refusal::LockIsIn => "Its lock is in: take that out first.",
        Refusal::AdjusterStops => "The ring stops before it has gone that far.",
        Refusal::NoCapForLock => "The lock is bolted to the cap: caps on first.",
        Refusal::NoSlotUnderLock => "The lock does not fit: no slot stands under it.",
        Refusal::CarrierNotHeld => "There is no carrier held in its bearings.",
        Refusal::GearsDoNotTurn => "The gears do not turn: there is no lash, or the teeth do not meet as gears.",
        Refusal::NothingTogether => "There is nothing together.",
        Refusal::NoRingGearToPaint => "There is no ring gear to paint.",
        Refusal::NoToothNamed => "No tooth was named.",
        Refusal::NoSuchTooth { teeth } => {
            return format!(
                "The ring gear has {teeth} teeth, numbered from 0 to {}.",
                teeth.saturating_sub(1)
            );
        }
        Refusal::NoPaste => "No paste is on the teeth.",
        Refusal::NotRolled => "The painted teeth have not been rolled through the mesh.",
        Refusal::NotInMesh => "The gears are not in mesh.",
        Refusal::CarrierMustTurn => "The carrier has to turn in its bearings for that.",
        Refusal::NutTorqueReadTurning => "The nut's torque is read while the wrench turns it.",
        Refusal::PinionTurnsToo => "The pinion turns with it: that torque is felt at the pinion nut.",
        Refusal::ArborBlocked => "The arbor lies in the carrier's bores: lift the carrier out first.",
        Refusal::NoSuchPiece => "The kit has no such piece.",
        Refusal::PieceFitted => "That piece is fitted.",
        Refusal::NoPieceInBox => "No piece is in the box.",
        Refusal::RingNotOn { ring: of } => return format!("The {} is not on.", ring(*of)),
        Refusal::NoSuchPlate => "There is no such plate beside the bench.",
        Refusal::NumbersAreCompared => "Numbers and marks are read by comparing them.",
        Refusal::TeethDoNotTouch => "The teeth do not touch at all.",
        Refusal::NoLash => "The gears are tight: there is no lash, and they do not turn.",
        Refusal::NoSuchTool { name, there } => {
            return format!("There is no `{name}` on the bench. There are: {}.", there.join(", "));
        }
        Refusal::DoesNotShow { instrument: of, what } => {
            return format!("A {} does not show {}.", instrument(*of), quantity(*what));
        }
        Refusal::WrenchCannot { why } => return wrench_cannot(*why),
        Refusal::DoesNotTighten { instrument: of } => {
            return format!("A {} does not tighten a nut.", instrument(*of));
        }
        Refusal::DoesNotTurn { instrument: of } => return format!("A {} does not turn a nut.", instrument(*of)),
        Refusal::CarrierCoversPinion => "The carrier covers the pinion's head: lift it out first.",
        Refusal::NoEvidence => "A part is condemned with evidence: name the records that show it.",
        Refusal::NoSuchRecord { record } => return format!("There is no record {record}."),
        Refusal::NothingToClamp => "The nut has nothing to press on.",
        Refusal::GivesWay { overload } => return sentence(&error::overload(*overload)),
        Refusal::CannotBe => "The parts cannot be put together so.",
    };
    said.to_owned()
}

/// A last line of a journal that was not written to its end; `bytes` of it are there.
pub fn torn_line(bytes: usize) -> String {
    format!(
        "The last line was not written to its end ({bytes} bytes); it was left out. At most the operation in flight is missing."
    )
}
