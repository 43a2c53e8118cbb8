//! The pinion with everything on its shaft: bearings, spacer, nut, seal, cartridge.

use super::choices::Ring;
use super::part::Part;
use super::setting::BenchSetUp;
use crate::axle::{Assembly, Bearings, Nut, Push, SpacerFitted, Truth};
use crate::bearing::{SeatGap, Seating, SpacerMemory};
use crate::numerics::random::Stream;

/// Share of the scatter from one tightening to the next that is there from step to step of one. Judgement.
const STEP_SHARE: f64 = 0.2;

/// Pinion, its bearings, spacer, nut, seal and cartridge as they are fitted.
#[derive(Debug, Clone, PartialEq)]
#[expect(clippy::struct_excessive_bools, reason = "each says of one part whether it is in")]
pub(super) struct PinionGroup {
    /// Rings that are on, with the gaps behind them, by the number of the ring.
    rings: [Option<SeatGap>; 3],
    pub(super) set_up_bearings: bool,
    pub(super) spacer: Spacer,
    /// The sleeve that lies on the bench, with what it has been through.
    pub(super) old_sleeve: Option<SpacerMemory>,
    pub(super) pinion_in: bool,
    pub(super) nut: Nut,
    pub(super) nut_used: bool,
    pub(super) seal: bool,
    pub(super) cartridge_bolted: bool,
    /// Turns of the pinion since its bearings were last set.
    pub(super) turns: f64,
    pub(super) push: Push,
    tightenings: u64,
    nut_steps: u64,
    /// Friction that the present tightening of the nut meets, times nominal.
    nut_friction_times: f64,
}

/// What is on the shaft between the cones; shims beside a solid spacer are a pack of the kit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Spacer {
    None,
    Sleeve(SpacerMemory),
    Solid,
}

impl PinionGroup {
    /// As an assembly that was found has it; `used` says whether nut and bolts ran before.
    pub(super) fn found(assembly: &Assembly, truth: &Truth, used: bool) -> Self {
        let Seating {
            head_cone,
            head_cup,
            tail_cup,
        } = assembly.seating;
        Self {
            rings: match assembly.bearings {
                Bearings::Real => [Some(head_cone), Some(head_cup), Some(tail_cup)],
                Bearings::None | Bearings::SetUp => [None; 3],
            },
            set_up_bearings: assembly.bearings == Bearings::SetUp,
            spacer: match assembly.spacer {
                SpacerFitted::None => Spacer::None,
                SpacerFitted::Sleeve(memory) => Spacer::Sleeve(memory),
                SpacerFitted::Solid { .. } => Spacer::Solid,
            },
            old_sleeve: None,
            pinion_in: assembly.pinion_in,
            nut: assembly.nut,
            nut_used: used,
            seal: assembly.seal,
            cartridge_bolted: assembly.cartridge_bolted,
            turns: assembly.pinion_turns,
            push: assembly.pinion_push,
            tightenings: 0,
            nut_steps: 0,
            nut_friction_times: truth.nut.friction_times,
        }
    }

    /// Puts its share of what is fitted into an assembly whose packs are `depth_mm` and, beside a solid spacer,
    /// `spacer_shims_mm` thick.
    pub(super) fn put_into(&self, assembly: &mut Assembly, depth_mm: f64, spacer_shims_mm: f64) {
        let gap = |ring| self.ring(ring).unwrap_or_default();
        assembly.bearings = if self.set_up_bearings {
            Bearings::SetUp
        } else if self.all_rings_on() {
            Bearings::Real
        } else {
            Bearings::None
        };
        assembly.seating = Seating {
            head_cone: gap(Ring::HeadCone),
            head_cup: gap(Ring::HeadCup),
            tail_cup: gap(Ring::TailCup),
        };
        assembly.depth_shim_mm = depth_mm;
        assembly.spacer = match self.spacer {
            Spacer::None => SpacerFitted::None,
            Spacer::Sleeve(memory) => SpacerFitted::Sleeve(memory),
            Spacer::Solid => SpacerFitted::Solid {
                shims_mm: spacer_shims_mm,
            },
        };
        assembly.pinion_in = self.pinion_in;
        assembly.nut = self.nut;
        assembly.seal = self.seal;
        assembly.cartridge_bolted = self.cartridge_bolted;
        assembly.pinion_turns = self.turns;
        assembly.pinion_push = self.push;
    }

    /// Takes over what settling or the nut changed: gaps that closed, the sleeve's length, the nut's place.
    pub(super) fn take_over(&mut self, after: &Assembly) {
        let Seating {
            head_cone,
            head_cup,
            tail_cup,
        } = after.seating;
        for (ring, gap) in self.rings.iter_mut().zip([head_cone, head_cup, tail_cup]) {
            if let Some(own) = ring {
                *own = gap;
            }
        }
        if let (Spacer::Sleeve(own), SpacerFitted::Sleeve(memory)) = (&mut self.spacer, after.spacer) {
            *own = memory;
        }
        self.nut = after.nut;
    }

    /// The gap behind a ring; none while it is off.
    pub(super) fn ring(&self, ring: Ring) -> Option<SeatGap> {
        self.rings.get(ring as usize).copied().flatten()
    }

    pub(super) fn ring_on(&self, ring: Ring) -> bool {
        self.ring(ring).is_some()
    }

    pub(super) fn any_ring_on(&self) -> bool {
        self.rings.iter().any(Option::is_some)
    }

    pub(super) fn all_rings_on(&self) -> bool {
        self.rings.iter().all(Option::is_some)
    }

    pub(super) fn set_ring(&mut self, ring: Ring, gap: Option<SeatGap>) {
        if let Some(place) = self.rings.get_mut(ring as usize) {
            *place = gap;
        }
    }

    pub(super) fn nut_on(&self) -> bool {
        self.nut != Nut::Off
    }

    pub(super) fn spacer_on(&self) -> bool {
        self.spacer != Spacer::None
    }

    /// Whether a used nut would be put on again against the card.
    pub(super) fn reuses_nut(&self, setting: &BenchSetUp) -> bool {
        self.nut_used && setting.single_use.contains(&Part::Nut)
    }

    /// Friction that this tightening meets, times nominal: every tightening has its own.
    pub(super) fn draw_nut_friction(&mut self, seed: u64, truth: &Truth) -> f64 {
        self.tightenings += 1;
        let mut stream = Stream::new(seed, &format!("nut friction {}", self.tightenings));
        let scatter = 1.0 + truth.nut.scatter_share * stream.normal_within(3.0);
        self.nut_friction_times = truth.nut.friction_times * if scatter > 0.3 { scatter } else { 0.3 };
        self.nut_friction_times
    }

    /// Friction of one more step of the same tightening: nearly that of the last.
    pub(super) fn draw_nut_friction_of_step(&mut self, seed: u64, truth: &Truth) -> f64 {
        self.nut_steps += 1;
        let mut stream = Stream::new(seed, &format!("nut friction of step {}", self.nut_steps));
        let scatter = STEP_SHARE * truth.nut.scatter_share * stream.normal_within(3.0);
        self.nut_friction_times * (1.0 + scatter)
    }

    /// Hands on as bits what an assembly does not hold, in a fixed order.
    pub(super) fn bits(&self, sink: &mut dyn FnMut(u64)) {
        let Self {
            rings,
            // In the assembly, as everything from here on that is not sunk below.
            set_up_bearings: _,
            spacer: _,
            old_sleeve,
            pinion_in: _,
            nut: _,
            nut_used,
            seal: _,
            cartridge_bolted: _,
            turns: _,
            push: _,
            tightenings,
            nut_steps,
            nut_friction_times,
        } = self;
        for ring in rings {
            sink(ring.map_or(u64::MAX, |gap| gap.gap_mm.to_bits()));
        }
        sink(old_sleeve.map_or(u64::MAX, |m| m.plastic_shortening_mm.to_bits()));
        sink(u64::from(*nut_used));
        sink(*tightenings);
        sink(*nut_steps);
        sink(nut_friction_times.to_bits());
    }
}
