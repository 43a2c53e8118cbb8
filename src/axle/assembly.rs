//! What is fitted at the moment, with true sizes.
//!
//! Source: our own definitions.

use crate::bearing::{Seating, SpacerMemory};

/// The state of an axle: every part that can be fitted, taken off or moved.
#[derive(Debug, Clone, PartialEq)]
#[expect(clippy::struct_excessive_bools, reason = "each says of one part whether it is in")]
pub struct Assembly {
    /// Pinion bearings.
    pub bearings: Bearings,
    /// Gaps behind rings that were not pressed home; set-up bearings have none.
    pub seating: Seating,
    /// True thickness of the depth shim pack, mm; 0 for none.
    pub depth_shim_mm: f64,
    /// Between the cones of the pinion bearings.
    pub spacer: SpacerFitted,
    /// Whether the pinion is in its housing or cartridge.
    pub pinion_in: bool,
    /// Pinion nut.
    pub nut: Nut,
    /// Whether the seal is in.
    pub seal: bool,
    /// Whether the cartridge is bolted to the case; nothing to a layout without.
    pub cartridge_bolted: bool,
    /// Turns of the pinion since its bearings were last set.
    pub pinion_turns: f64,
    /// Which way the pinion was last pushed.
    pub pinion_push: Push,
    /// The wheel on its carrier; none while it is off.
    pub wheel: Option<WheelSeat>,
    /// Whether the carrier is in the case.
    pub carrier_in: bool,
    /// Side bearings' shims or adjusters: tooth side, behind the wheel.
    pub side: [SideStack; 2],
    /// How far a spreader holds the case open, mm; 0 without.
    pub spreader_mm: f64,
    /// Bearing caps.
    pub caps: Caps,
    /// Whether each cap stands in the other's place.
    pub caps_swapped: bool,
    /// Turns of the carrier since the side bearings were last set.
    pub carrier_turns: f64,
    /// Which way the carrier was last pushed.
    pub carrier_push: Push,
    /// By how many teeth the timing marks are out; nothing to a hunting set.
    pub timing_offset: u32,
}

/// Pinion bearings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bearings {
    /// None fitted.
    None,
    /// Slip-fit set-up bearings.
    SetUp,
    /// Those that stay.
    Real,
}

/// The spacer that is fitted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SpacerFitted {
    /// None: the bearings carry the whole clamp.
    None,
    /// A sleeve with what it has been through.
    Sleeve(SpacerMemory),
    /// The ground spacer with shims of this true thickness, mm.
    Solid {
        /// mm.
        shims_mm: f64,
    },
}

/// Pinion nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Nut {
    /// Off, or so loose that it holds nothing.
    Off,
    /// Run up to where the cones' inner faces stand `seat_distance_mm` apart.
    On {
        /// mm.
        seat_distance_mm: f64,
        /// Friction that this tightening met, times nominal.
        friction_times: f64,
    },
}

/// Which way a part was last pushed; it matters while there is play.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Push {
    /// Pinion deeper, or wheel toward the pinion.
    Mesh,
    /// Left where it came to rest, in the middle.
    #[default]
    Middle,
    /// Pinion outward, or wheel away from the pinion.
    Apart,
}

impl Push {
    /// Share of the play by which a part stands farther out of mesh than as deep as it goes.
    pub(super) fn share(self) -> f64 {
        match self {
            Self::Mesh => 0.0,
            Self::Middle => 0.5,
            Self::Apart => 1.0,
        }
    }
}

/// How a wheel came to sit on its carrier.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct WheelSeat {
    /// Whether something was left between wheel and carrier.
    pub dirty: bool,
    /// Half the face runout left by drawing it on cold, mm.
    pub tilt_mm: f64,
    /// Whether its bolts are at torque.
    pub bolted: bool,
}

/// Shims or adjuster beside one side bearing.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SideStack {
    /// True thickness of the shim pack, mm; 0 for none.
    pub shim_mm: f64,
    /// Adjuster: turns inward from its nominal place, degrees.
    pub adjuster_deg: f64,
    /// Whether the ring rests on the slack side of its thread, as after backing it off.
    pub on_slack: bool,
    /// Whether its lock is in.
    pub locked: bool,
}

/// Bearing caps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Caps {
    /// Off.
    Off,
    /// On, bolts snug.
    Snug,
    /// On, bolts at full torque.
    Torqued,
}

impl Assembly {
    /// A bare case: nothing fitted.
    pub fn bare() -> Self {
        Self {
            bearings: Bearings::None,
            seating: Seating::default(),
            depth_shim_mm: 0.0,
            spacer: SpacerFitted::None,
            pinion_in: false,
            nut: Nut::Off,
            seal: false,
            cartridge_bolted: false,
            pinion_turns: 0.0,
            pinion_push: Push::Middle,
            wheel: None,
            carrier_in: false,
            side: [SideStack::default(); 2],
            spreader_mm: 0.0,
            caps: Caps::Off,
            caps_swapped: false,
            carrier_turns: 0.0,
            carrier_push: Push::Middle,
            timing_offset: 0,
        }
    }

    /// Hands every number of the state on as bits, in a fixed order: for hashes of a state.
    pub fn bits(&self, sink: &mut dyn FnMut(u64)) {
        let Self {
            bearings,
            seating,
            depth_shim_mm,
            spacer,
            pinion_in,
            nut,
            seal,
            cartridge_bolted,
            pinion_turns,
            pinion_push,
            wheel,
            carrier_in,
            side,
            spreader_mm,
            caps,
            caps_swapped,
            carrier_turns,
            carrier_push,
            timing_offset,
        } = self;
        sink(spreader_mm.to_bits());
        sink(*bearings as u64);
        for gap in [seating.head_cone, seating.head_cup, seating.tail_cup] {
            sink(gap.gap_mm.to_bits());
            sink(gap.holding_n.to_bits());
        }
        sink(depth_shim_mm.to_bits());
        let (kind, size) = match spacer {
            SpacerFitted::None => (0, 0.0),
            SpacerFitted::Sleeve(memory) => (1, memory.plastic_shortening_mm),
            SpacerFitted::Solid { shims_mm } => (2, *shims_mm),
        };
        sink(kind);
        sink(size.to_bits());
        let (on, distance, friction) = match nut {
            Nut::Off => (0, 0.0, 0.0),
            Nut::On {
                seat_distance_mm,
                friction_times,
            } => (1, *seat_distance_mm, *friction_times),
        };
        sink(on);
        sink(distance.to_bits());
        sink(friction.to_bits());
        for flag in [pinion_in, seal, cartridge_bolted, carrier_in, caps_swapped] {
            sink(u64::from(*flag));
        }
        sink(pinion_turns.to_bits());
        sink(*pinion_push as u64);
        let (seated, flags, tilt) = wheel.map_or((0, 0, 0.0), |w| {
            (1, u64::from(w.dirty) + 2 * u64::from(w.bolted), w.tilt_mm)
        });
        sink(seated);
        sink(flags);
        sink(tilt.to_bits());
        for stack in side {
            sink(stack.shim_mm.to_bits());
            sink(stack.adjuster_deg.to_bits());
            sink(u64::from(stack.on_slack) + 2 * u64::from(stack.locked));
        }
        sink(*caps as u64);
        sink(carrier_turns.to_bits());
        sink(*carrier_push as u64);
        sink(u64::from(*timing_offset));
    }
}
