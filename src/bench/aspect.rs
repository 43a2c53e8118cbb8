//! What a state consists of, and what each reading depends on: so that a value is known to be stale after a change.

use super::choices::{Ring, ShimPlace};
use super::measurand::Measurand;
use crate::axle::{Assembly, Axle, Moves, Nut};

/// A part of the state of the axle that readings depend on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u32)]
pub enum Aspect {
    /// Depth shim.
    DepthShim = 1,
    /// Spacer with its shims.
    Spacer = 1 << 1,
    /// Pinion bearings and the pinion in them.
    Bearings = 1 << 2,
    /// Gaps behind the rings.
    Seats = 1 << 3,
    /// Place of the pinion nut.
    Nut = 1 << 4,
    /// Seal.
    Seal = 1 << 5,
    /// Cartridge on its case.
    Cartridge = 1 << 6,
    /// Wheel on its carrier.
    Wheel = 1 << 7,
    /// Carrier in the case, timing marks.
    Carrier = 1 << 8,
    /// Side shims, adjusters.
    Sides = 1 << 9,
    /// Caps.
    Caps = 1 << 10,
    /// Which way a pinion with play was pushed.
    PinionPush = 1 << 11,
    /// Which way a carrier with play was pushed.
    CarrierPush = 1 << 12,
    /// Warmth of the wheel.
    Warmth = 1 << 13,
    /// Paste on the teeth.
    Paste = 1 << 14,
    /// Spreader.
    Spreader = 1 << 15,
    /// Friction that the last tightening of the nut met.
    NutFriction = 1 << 16,
}

/// A set of aspects.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Aspects(u32);

impl Aspects {
    /// These.
    pub fn of(aspects: &[Aspect]) -> Self {
        Self(aspects.iter().fold(0, |all, a| all | *a as u32))
    }

    /// With one more, if so.
    #[must_use]
    pub fn with_if(self, aspect: Aspect, so: bool) -> Self {
        if so { Self(self.0 | aspect as u32) } else { self }
    }

    /// All of both.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self(self.0 | other.0)
    }

    /// Whether they share one.
    pub fn meet(self, other: Self) -> bool {
        self.0 & other.0 != 0
    }

    /// As a number, for hashes.
    pub fn number(self) -> u32 {
        self.0
    }

    /// What two assemblies differ in. Which of pinion and carrier had play is said as well, because only then pushing them
    /// counts.
    pub fn changed(before: &Assembly, after: &Assembly, [pinion_play, carrier_play]: [bool; 2]) -> Self {
        let differ = |a: f64, b: f64| a.to_bits() != b.to_bits();
        // A wrench that gave before the nut went leaves everything but the nut's own torque as it was.
        let nut = |assembly: &Assembly| match assembly.nut {
            Nut::Off => (None, None),
            Nut::On {
                seat_distance_mm,
                friction_times,
            } => (Some(seat_distance_mm.to_bits()), Some(friction_times.to_bits())),
        };
        Self::default()
            .with_if(Aspect::DepthShim, differ(before.depth_shim_mm, after.depth_shim_mm))
            .with_if(Aspect::Spacer, before.spacer != after.spacer)
            .with_if(
                Aspect::Bearings,
                before.bearings != after.bearings || before.pinion_in != after.pinion_in,
            )
            .with_if(Aspect::Seats, before.seating != after.seating)
            .with_if(Aspect::Nut, nut(before).0 != nut(after).0)
            .with_if(Aspect::NutFriction, nut(before).1 != nut(after).1)
            .with_if(Aspect::Seal, before.seal != after.seal)
            .with_if(Aspect::Cartridge, before.cartridge_bolted != after.cartridge_bolted)
            .with_if(Aspect::Wheel, before.wheel != after.wheel)
            .with_if(
                Aspect::Carrier,
                before.carrier_in != after.carrier_in || before.timing_offset != after.timing_offset,
            )
            .with_if(
                Aspect::Sides,
                before.side.iter().zip(&after.side).any(|(b, a)| {
                    differ(b.shim_mm, a.shim_mm) || differ(b.adjuster_deg, a.adjuster_deg) || b.on_slack != a.on_slack
                }),
            )
            .with_if(Aspect::Spreader, differ(before.spreader_mm, after.spreader_mm))
            .with_if(
                Aspect::Caps,
                before.caps != after.caps || before.caps_swapped != after.caps_swapped,
            )
            .with_if(
                Aspect::PinionPush,
                pinion_play && before.pinion_push != after.pinion_push,
            )
            .with_if(
                Aspect::CarrierPush,
                carrier_play && before.carrier_push != after.carrier_push,
            )
    }

    /// What of the axle a reading of this quantity depends on, taken with the carrier in its case or out. What it depends on
    /// besides is the thing itself that was measured: [`Change::touches`].
    pub fn behind(what: Measurand, axle: &Axle, carrier_in: bool) -> Self {
        use Aspect as A;
        let depth = Self::of(&[A::DepthShim, A::Spacer, A::Bearings, A::Seats, A::Nut, A::Cartridge]);
        let preload = Self::of(&[A::Spacer, A::Bearings, A::Seats, A::Nut]).with_if(
            A::DepthShim,
            axle.chain()
                .per_unit(axle.depth_shim_member(), Moves::ZeroPreloadLength)
                != 0.0,
        );
        let sides = Self::of(&[A::Carrier, A::Sides, A::Spreader, A::Caps]);
        match what {
            Measurand::Lash { .. } => depth
                .and(sides)
                .and(Self::of(&[A::Wheel, A::PinionPush, A::CarrierPush])),
            Measurand::Print {} => depth
                .and(sides)
                .and(Self::of(&[A::Wheel, A::PinionPush, A::CarrierPush, A::Paste])),
            Measurand::WheelFaceRunout {} | Measurand::WheelRadialRunout {} => Self::of(&[A::Wheel]),
            Measurand::PinionRunout {} => Self::of(&[A::Bearings]),
            Measurand::BreakawayTorque {} | Measurand::RollingTorque {} => {
                // The torque of the pinion alone stays what it is when a carrier comes in.
                let pinion = preload.with_if(A::Seal, true);
                if carrier_in { pinion.and(sides) } else { pinion }
            }
            Measurand::CarrierTorque {} | Measurand::CarrierEndPlay {} => sides,
            // Packs that lie beside an empty case do not spread it.
            Measurand::CaseSpread {} => {
                if carrier_in {
                    sides
                } else {
                    Self::of(&[A::Carrier, A::Spreader])
                }
            }
            Measurand::PinionDepth {} => depth.with_if(A::PinionPush, true),
            Measurand::PinionEndPlay {} => preload,
            Measurand::NutTorque {} => preload.with_if(A::NutFriction, true),
            Measurand::WheelTemperature {} => Self::of(&[A::Warmth]),
            Measurand::ShimPiece { .. }
            | Measurand::ShimPack { .. }
            | Measurand::SeatGap { .. }
            | Measurand::Plate { .. }
            | Measurand::MatchNumbers {} => Self::default(),
        }
    }
}

/// What an operation changed, as far as readings depend on it.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Change {
    /// Of the axle as it is fitted.
    pub axle: Aspects,
    /// Packs whose thickness is another one now.
    pub packs: Vec<ShimPlace>,
    /// Pieces of the kit that are as thick as they were no more.
    pub pieces: Vec<u32>,
    /// Rings that came on or off, or moved on their seats.
    pub rings: Vec<Ring>,
}

impl Change {
    /// Whether a reading of this quantity that depends on these parts of the axle does not hold any more.
    pub fn touches(&self, what: Measurand, behind: Aspects) -> bool {
        let itself = match what {
            Measurand::ShimPack { place } => self.packs.contains(&place),
            Measurand::ShimPiece { piece } => self.pieces.contains(&piece),
            Measurand::SeatGap { ring } => self.rings.contains(&ring),
            _ => false,
        };
        itself || behind.meet(self.axle)
    }
}
