//! Cones and cups that were not pressed home.
//!
//! A press stopped short leaves a gap behind a ring, held open by the friction of its fit. What closes it later, and when,
//! decides whether depth or preload jumps:
//! - behind the head cone: the pinion stands too deep by the gap; the spacer does not notice. The clamp of the final nut
//!   (60 to 100 kN) is far above the fit's friction (9 to 18 kN) and closes it, so depth jumps between a trial without
//!   spacer and the final build.
//! - behind a cup: the cups stand too far apart, so the same spacer preloads more; behind the head cup the pinion stands too
//!   deep as well. Only the preload pushes there. Above the fit's friction it drives the cup on, and is itself relieved by
//!   that; below, the gap stays until service shocks seat the cup, and depth and preload go together.

use super::spacer::SpacerMemory;
use super::support::{Support, Tightened};
use crate::numerics::root::RootError;

/// A gap behind a ring and the force that its fit withstands.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SeatGap {
    /// How far the ring stands off its seat, mm; 0 when pressed home.
    pub gap_mm: f64,
    /// Force that moves it on, N.
    pub holding_n: f64,
}

/// The gaps of a pinion support.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Seating {
    /// Between head cone and pinion head (or head shim).
    pub head_cone: SeatGap,
    /// Behind the head cup.
    pub head_cup: SeatGap,
    /// Behind the tail cup.
    pub tail_cup: SeatGap,
}

impl Seating {
    /// How much deeper than nominal the gaps let the pinion stand, mm.
    pub fn too_deep_mm(&self) -> f64 {
        self.head_cone.gap_mm + self.head_cup.gap_mm
    }

    /// How much longer the gaps make the zero-preload length, mm.
    fn cups_apart_mm(&self) -> f64 {
        self.head_cup.gap_mm + self.tail_cup.gap_mm
    }

    /// The gaps after service has seated everything.
    #[must_use]
    pub fn settled(&self) -> Self {
        let home = |gap: SeatGap| SeatGap { gap_mm: 0.0, ..gap };
        Self {
            head_cone: home(self.head_cone),
            head_cup: home(self.head_cup),
            tail_cup: home(self.tail_cup),
        }
    }
}

impl Support {
    /// The same support with its cups standing apart by what gaps are left.
    #[must_use]
    pub fn with_seating(&self, seating: &Seating) -> Self {
        self.with_cup_shim_mm(seating.cups_apart_mm())
    }

    /// As [`Support::tightened_to`] with rings that may not be home: the state, and the gaps that are left.
    ///
    /// # Errors
    /// As [`Support::tightened_to`].
    pub fn tightened_with_gaps(
        &self,
        nut_torque_nm: f64,
        memory: SpacerMemory,
        seating: &Seating,
    ) -> Result<(Tightened, Seating), RootError> {
        let mut left = *seating;
        if self.nut.clamp_n(nut_torque_nm) > left.head_cone.holding_n {
            left.head_cone.gap_mm = 0.0;
        }
        // At most two cups can move; each is either driven home or stops where the preload has fallen to its fit's friction.
        for _ in 0..2 {
            let state = self.with_seating(&left).tightened_to(nut_torque_nm, memory)?;
            let other = |cup: &SeatGap| left.cups_apart_mm() - cup.gap_mm;
            let moves = |cup: &SeatGap| cup.gap_mm > 0.0 && state.preload_n > cup.holding_n;
            let head_first = !moves(&left.tail_cup) || left.head_cup.holding_n <= left.tail_cup.holding_n;
            let cup = if moves(&left.head_cup) && head_first {
                left.head_cup
            } else if moves(&left.tail_cup) {
                left.tail_cup
            } else {
                return Ok((state, left));
            };
            let stops = self.gap_at_preload_mm(cup.holding_n, state.clamp_n, memory) - other(&cup);
            let gap_mm = if stops > cup.gap_mm {
                cup.gap_mm
            } else if stops > 0.0 {
                stops
            } else {
                0.0
            };
            if moves(&left.head_cup) && head_first {
                left.head_cup.gap_mm = gap_mm;
            } else {
                left.tail_cup.gap_mm = gap_mm;
            }
        }
        Ok((self.with_seating(&left).tightened_to(nut_torque_nm, memory)?, left))
    }

    /// Gap behind the cups together at which this clamp leaves just that preload, mm.
    fn gap_at_preload_mm(&self, preload_n: f64, clamp_n: f64, memory: SpacerMemory) -> f64 {
        let carried = clamp_n - preload_n;
        // A sleeve that does not harden goes on giving way: the cup is driven home.
        self.spacer.shortening_mm(carried, memory).map_or(0.0, |shortening| {
            let length = self.spacer.free_length_mm - shortening;
            self.pair().closing_mm(preload_n) + length - self.zero_preload_length_mm
        })
    }
}
