//! The carrier with the wheel on it, its side bearings, caps and the paste on its teeth.

use super::choices::{Brushing, CarrierSide};
use super::part::Part;
use super::setting::BenchSetUp;
use crate::axle::{Assembly, Caps, Push, ROOM_C, SideStack, Truth, WheelSeat};
use crate::contact::Placement;
use crate::numerics::math;

/// Minutes in which a warm wheel loses 63 % of its warmth in still air. Judgement.
const COOLING_MINUTES: f64 = 25.0;
/// Warmer than this a wheel is no longer held in bare hands, °C.
const HOT_C: f64 = 50.0;

/// Wheel, carrier, side adjusters or shims, caps and spreader as they are fitted.
#[derive(Debug, Clone, PartialEq)]
#[expect(clippy::struct_excessive_bools, reason = "each says of one part how it lies there")]
pub(super) struct CarrierGroup {
    pub(super) wheel: Option<WheelSeat>,
    pub(super) wheel_c: f64,
    pub(super) wheel_scrap: bool,
    pub(super) wheel_seat_clean: bool,
    pub(super) threads_clean: bool,
    pub(super) bolts: Bolts,
    pub(super) carrier_in: bool,
    /// On the side of the wheel's teeth, behind the wheel.
    pub(super) adjusters: [Adjuster; 2],
    pub(super) spreader_mm: f64,
    pub(super) caps: Caps,
    pub(super) caps_swapped: bool,
    /// Turns of the carrier since the side bearings were last set.
    pub(super) turns: f64,
    pub(super) push: Push,
    pub(super) timing_offset: u32,
    pub(super) paste: Option<Paste>,
    /// How often paste was brushed on.
    pub(super) brushings: u32,
}

/// Bolts of the wheel, beside whether they are in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Bolts {
    pub(super) used: bool,
    /// Torqued on a warm wheel: they lose clamp as it shrinks.
    pub(super) warm: bool,
    /// With thread-locking that has set.
    pub(super) locked: bool,
}

/// A side adjuster; to an axle with side shims it stays where it is.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Adjuster {
    /// Turns inward from its nominal place, degrees.
    pub(super) deg: f64,
    /// Whether the ring rests on the slack side of its thread, as after backing it off.
    pub(super) on_slack: bool,
    pub(super) locked: bool,
}

/// Paste on teeth of the wheel.
#[derive(Debug, Clone, PartialEq)]
pub struct Paste {
    /// Teeth painted.
    pub teeth: Vec<u32>,
    /// How.
    pub film: Brushing,
    /// Which brushing of the attempt it is, from 1.
    pub brushing: u32,
    /// How they were rolled, if they were.
    pub rolled: Option<Rolled>,
}

/// How painted teeth were rolled, and where the gears stood.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rolled {
    /// Torque that dragged the wheel, N m.
    pub drag_nm: f64,
    /// Passes each way, all together.
    pub passes: u32,
    /// Where the gears stood.
    pub placement: Placement,
}

impl CarrierGroup {
    /// As an assembly that was found has it; `used` says whether the bolts ran before.
    pub(super) fn found(assembly: &Assembly, truth: &Truth, used: bool) -> Self {
        let mut wheel = assembly.wheel;
        if let Some(seat) = &mut wheel
            && used
        {
            seat.dirty |= truth.wheel_fit.found_dirty;
        }
        Self {
            wheel,
            wheel_c: ROOM_C,
            wheel_scrap: false,
            wheel_seat_clean: false,
            threads_clean: false,
            bolts: Bolts {
                used,
                warm: false,
                locked: used,
            },
            carrier_in: assembly.carrier_in,
            adjusters: assembly.side.map(|stack| Adjuster {
                deg: stack.adjuster_deg,
                on_slack: stack.on_slack,
                locked: stack.locked,
            }),
            spreader_mm: assembly.spreader_mm,
            caps: assembly.caps,
            caps_swapped: if used {
                truth.case.caps_found_swapped && assembly.carrier_in
            } else {
                assembly.caps_swapped
            },
            turns: assembly.carrier_turns,
            push: assembly.carrier_push,
            timing_offset: assembly.timing_offset,
            paste: None,
            brushings: 0,
        }
    }

    /// Puts its share of what is fitted into an assembly whose side packs are so thick.
    pub(super) fn put_into(&self, assembly: &mut Assembly, side_shims_mm: [f64; 2]) {
        assembly.wheel = self.wheel;
        assembly.carrier_in = self.carrier_in;
        for ((stack, adjuster), shim_mm) in assembly.side.iter_mut().zip(self.adjusters).zip(side_shims_mm) {
            *stack = SideStack {
                shim_mm,
                adjuster_deg: adjuster.deg,
                on_slack: adjuster.on_slack,
                locked: adjuster.locked,
            };
        }
        assembly.spreader_mm = self.spreader_mm;
        assembly.caps = self.caps;
        assembly.caps_swapped = self.caps_swapped;
        assembly.carrier_turns = self.turns;
        assembly.carrier_push = self.push;
        assembly.timing_offset = self.timing_offset;
    }

    /// Takes over what settling changed: rings that were pressed on to their threads.
    pub(super) fn take_over(&mut self, after: &Assembly) {
        for (adjuster, stack) in self.adjusters.iter_mut().zip(&after.side) {
            adjuster.on_slack = stack.on_slack;
        }
    }

    pub(super) fn adjuster(&self, side: CarrierSide) -> Adjuster {
        let [tooth, back] = self.adjusters;
        match side {
            CarrierSide::Tooth => tooth,
            CarrierSide::Back => back,
        }
    }

    pub(super) fn adjuster_mut(&mut self, side: CarrierSide) -> &mut Adjuster {
        let [tooth, back] = &mut self.adjusters;
        match side {
            CarrierSide::Tooth => tooth,
            CarrierSide::Back => back,
        }
    }

    pub(super) fn is_hot(&self) -> bool {
        self.wheel_c > HOT_C
    }

    pub(super) fn cool(&mut self, minutes: f64) {
        self.wheel_c = ROOM_C + (self.wheel_c - ROOM_C) * math::exp(-minutes / COOLING_MINUTES);
    }

    /// Whether used bolts would be drawn up again against the card.
    pub(super) fn reuses_bolts(&self, setting: &BenchSetUp) -> bool {
        self.bolts.used && setting.single_use.contains(&Part::RingBolts)
    }

    /// Whether the wheel's bolts were torqued cold, with locking on clean threads.
    pub(super) fn bolts_are_sound(&self) -> bool {
        self.wheel.is_some_and(|w| w.bolted) && !self.bolts.warm && self.bolts.locked
    }

    /// Hands on as bits what an assembly does not hold, in a fixed order.
    pub(super) fn bits(&self, sink: &mut dyn FnMut(u64)) {
        let Self {
            // In the assembly, as everything from here on that is not sunk below.
            wheel: _,
            wheel_c,
            wheel_scrap,
            wheel_seat_clean,
            threads_clean,
            bolts: Bolts { used, warm, locked },
            carrier_in: _,
            adjusters: _,
            spreader_mm: _,
            caps: _,
            caps_swapped: _,
            turns: _,
            push: _,
            timing_offset: _,
            paste,
            brushings,
        } = self;
        sink(wheel_c.to_bits());
        for flag in [wheel_scrap, wheel_seat_clean, threads_clean, used, warm, locked] {
            sink(u64::from(*flag));
        }
        sink(u64::from(paste.is_some()));
        if let Some(paste) = paste {
            paste.bits(sink);
        }
        sink(u64::from(*brushings));
    }
}

impl Paste {
    fn bits(&self, sink: &mut dyn FnMut(u64)) {
        sink(self.teeth.len() as u64);
        for tooth in &self.teeth {
            sink(u64::from(*tooth));
        }
        sink(self.film as u64);
        sink(u64::from(self.brushing));
        sink(u64::from(self.rolled.is_some()));
        if let Some(rolled) = self.rolled {
            sink(rolled.drag_nm.to_bits());
            sink(u64::from(rolled.passes));
            for n in [
                rolled.placement.pinion_axial_mm,
                rolled.placement.wheel_axial_mm,
                rolled.placement.offset_mm,
                rolled.placement.shaft_angle_rad,
            ] {
                sink(n.to_bits());
            }
        }
    }
}
