//! A pinion support: two bearings, a spacer, a nut, a seal and the oil.
//!
//! Source: our own model, of the parts whose sources stand in their files: springs in series and in parallel, nut,
//! seal, oil.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::fastener::ThreadJoint;
use super::friction::{self, Running};
use super::oil::Oil;
use super::pair::OpposedPair;
use super::seal;
use super::spacer::{Spacer, SpacerKind, SpacerMemory};
use super::stiffness::AxialApproach;
use super::tapered::TaperedBearing;
use super::under_load::UnderLoad;
use crate::numerics::newton;
use crate::numerics::root::RootError;

/// A pinion support as made, every value finite and inside the range of the file format.
#[derive(Debug, Clone, PartialEq)]
pub struct Support {
    /// Name shown to people, 1 to 60 characters.
    pub name: String,
    /// Nut torque that the support is meant for, N m. Files of the format `lashwright-support/1` do not say.
    pub meant_nut_torque_nm: Option<f64>,
    /// Bearing next to the pinion's teeth.
    pub head_bearing: TaperedBearing,
    /// Bearing next to the companion flange.
    pub tail_bearing: TaperedBearing,
    /// What keeps the cones apart.
    pub spacer: Spacer,
    /// Loaded spacer length at which the pair has neither play nor preload, mm.
    pub zero_preload_length_mm: f64,
    /// Stiffness of shaft, housing and seats in series with the bearings, N/mm.
    pub structure_stiffness_n_per_mm: f64,
    /// Pinion nut on its thread.
    pub nut: ThreadJoint,
    /// Shaft diameter under the seal's lip, mm.
    pub seal_shaft_diameter_mm: f64,
    /// Oil on the bearings.
    pub oil: Oil,
    /// Where the bearings of the whole axle stand and how softly, where the file says. Nothing here depends on it.
    pub under_load: Option<UnderLoad>,
}

/// What a support does at rest with its nut tightened.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tightened {
    /// F_c, force of the nut on the whole stack, N.
    pub clamp_n: f64,
    /// F_s, share of the spacer, N.
    pub spacer_n: f64,
    /// F_p, share of the bearings, N.
    pub preload_n: f64,
    /// End play left, mm; 0 when preloaded.
    pub play_mm: f64,
    /// L, length of the spacer under its force, mm.
    pub spacer_loaded_length_mm: f64,
    /// δ_h, cone of the head bearing into its cup, mm.
    pub head_deflection_mm: f64,
    /// δ_t, cone of the tail bearing into its cup, mm.
    pub tail_deflection_mm: f64,
    /// How far preload moves the pinion outward, mm: δ_h and half the give of the structure.
    pub pinion_shift_mm: f64,
    /// Whether the spacer carries nothing: so short that the bearings carry the whole clamp, or the nut is off.
    pub spacer_loose: bool,
    /// What the spacer will remember of this.
    pub memory: SpacerMemory,
}

/// Stress that no part of an axle stands, N/mm²: steel strained by 1 %.
const NO_STEEL_STANDS_N_PER_MM2: f64 = 2060.0;

/// Something that would give way before a state is reached; the numbers of that state mean nothing any more.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "part", rename_all = "snake_case")]
#[error("{self:?}")]
pub enum Overload {
    /// The thread tears.
    Thread {
        /// Clamp, N.
        clamp_n: f64,
        /// Tension in the thread, N/mm².
        stress_n_per_mm2: f64,
    },
    /// The spacer is crushed flat.
    Spacer {
        /// Force on the spacer, N.
        spacer_n: f64,
        /// Compression, N/mm².
        stress_n_per_mm2: f64,
    },
    /// The sleeve folds.
    Folded {
        /// Plastic shortening, mm.
        plastic_mm: f64,
    },
    /// The bearings are crushed.
    Bearings {
        /// Preload, N.
        preload_n: f64,
        /// Closing, mm.
        closing_mm: f64,
    },
}

/// Torque that turns the pinion, by what resists, N m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Torque {
    /// Head bearing.
    pub head_bearing_nm: f64,
    /// Tail bearing.
    pub tail_bearing_nm: f64,
    /// Seal.
    pub seal_nm: f64,
    /// All of them.
    pub total_nm: f64,
}

impl Support {
    /// The bearings as a pair; the near one is the head bearing.
    pub fn pair(&self) -> OpposedPair {
        OpposedPair {
            near: AxialApproach::of(&self.head_bearing),
            far: AxialApproach::of(&self.tail_bearing),
            structure_mm_per_n: 1.0 / self.structure_stiffness_n_per_mm,
        }
    }

    /// The same support with another free spacer length: shims added, ground down.
    #[must_use]
    pub fn with_spacer_length_mm(&self, free_length_mm: f64) -> Self {
        Self {
            spacer: self.spacer.with_free_length_mm(free_length_mm),
            ..self.clone()
        }
    }

    /// The same support with both bearings at another friction factor.
    #[must_use]
    pub fn with_friction_factor(&self, factor: f64) -> Self {
        Self {
            head_bearing: self.head_bearing.with_friction_factor(factor),
            tail_bearing: self.tail_bearing.with_friction_factor(factor),
            ..self.clone()
        }
    }

    /// The same support after a shim `thickness_mm` thicker was put under the cup of the head bearing: the cups come
    /// closer together, so the pair is closed at a longer spacer. A shim between head and cone, or between cartridge
    /// and case, moves the pair as a whole and does not change this length.
    #[must_use]
    pub fn with_cup_shim_mm(&self, thickness_mm: f64) -> Self {
        Self {
            zero_preload_length_mm: self.zero_preload_length_mm + thickness_mm,
            ..self.clone()
        }
    }

    /// State after the nut was tightened, from slack, to a torque.
    ///
    /// The clamp F_c that the torque gives is shared, F_c = F_s + F_p: pressing on the stack, the nut shortens the
    /// spacer until its length L leaves the pair closed by `zero_preload_length` − L.
    ///
    /// # Errors
    /// [`RootError`] for a torque or a support with values that are not numbers.
    pub fn tightened_to(&self, nut_torque_nm: f64, memory: SpacerMemory) -> Result<Tightened, RootError> {
        let clamp_n = self.nut.clamp_n(nut_torque_nm);
        let pair = self.pair();
        let start_mm = self.spacer.free_length_mm - self.zero_preload_length_mm;
        let without_preload_n = self.spacer.force_n(start_mm, memory);
        if without_preload_n >= clamp_n {
            // The spacer carries the clamp before the bearings touch: end play.
            let shortening = self.spacer.shortening_mm(clamp_n, memory).unwrap_or(start_mm);
            let length_mm = self.spacer.free_length_mm - shortening;
            return Ok(self.state(&pair, length_mm, 0.0, clamp_n, shortening, memory));
        }
        let residual = |preload_n: f64| {
            let (closing, slope) = pair.closing_and_slope(preload_n);
            let shortening = start_mm + closing;
            let excess = self.spacer.force_n(shortening, memory) + preload_n - clamp_n;
            let spacer_slope = self.spacer.stiffness_n_per_mm(shortening, memory);
            // 0 · ∞ at no preload under a loose spacer would be NaN.
            (
                excess,
                if spacer_slope > 0.0 {
                    spacer_slope * slope + 1.0
                } else {
                    1.0
                },
            )
        };
        let start_n = if clamp_n < 10_000.0 { 0.5 * clamp_n } else { 5_000.0 };
        let preload_n = newton::in_bracket(residual, 0.0, clamp_n, start_n, 1.0e-13 * clamp_n)?;
        let shortening = start_mm + pair.closing_mm(preload_n);
        let length_mm = self.zero_preload_length_mm - pair.closing_mm(preload_n);
        Ok(self.state(&pair, length_mm, preload_n, clamp_n - preload_n, shortening, memory))
    }

    /// State with the nut turned to where the spacer's seats stand `length_mm` apart. This is how a sleeve is set: the
    /// angle of the nut decides, and its torque follows.
    ///
    /// # Errors
    /// [`RootError`] for a length or a support with values that are not numbers.
    pub fn closed_to(&self, length_mm: f64, memory: SpacerMemory) -> Result<Tightened, RootError> {
        let pair = self.pair();
        let shortening = self.spacer.free_length_mm - length_mm;
        let spacer_n = self.spacer.force_n(shortening, memory);
        let preload_n = pair.preload_n(self.zero_preload_length_mm - length_mm)?;
        Ok(self.state(&pair, length_mm, preload_n, spacer_n, shortening, memory))
    }

    /// State after the nut was turned on from `from` by an angle (negative: backed off). Nothing but spacer, bearings
    /// and structure gives way, so the whole travel goes into the stack.
    ///
    /// # Errors
    /// As [`Support::closed_to`].
    pub fn turned_on(&self, from: &Tightened, nut_angle_deg: f64) -> Result<Tightened, RootError> {
        self.closed_to(
            self.seat_distance_mm(from) - self.nut.travel_mm(nut_angle_deg),
            from.memory,
        )
    }

    /// What gives way before this state is reached, if anything.
    pub fn overload(&self, state: &Tightened) -> Option<Overload> {
        let thread = self.nut.thread_stress_n_per_mm2(state.clamp_n);
        let spacer = state.spacer_n / self.spacer.area_mm2;
        let plastic_mm = state.memory.plastic_shortening_mm;
        let closing_mm = self.pair().closing_mm(state.preload_n);
        if thread > NO_STEEL_STANDS_N_PER_MM2 {
            Some(Overload::Thread {
                clamp_n: state.clamp_n,
                stress_n_per_mm2: thread,
            })
        } else if spacer > NO_STEEL_STANDS_N_PER_MM2 {
            Some(Overload::Spacer {
                spacer_n: state.spacer_n,
                stress_n_per_mm2: spacer,
            })
        } else if plastic_mm > 0.25 * self.spacer.free_length_mm {
            Some(Overload::Folded { plastic_mm })
        } else if closing_mm > 0.05 * self.zero_preload_length_mm {
            Some(Overload::Bearings {
                preload_n: state.preload_n,
                closing_mm,
            })
        } else {
            None
        }
    }

    /// Torque that brings the nut to this state while tightening, N m.
    pub fn nut_torque_nm(&self, state: &Tightened) -> f64 {
        self.nut.tightening_torque_nm(state.clamp_n)
    }

    /// Distance of the spacer's seats, mm: more than its length when it lies loose.
    fn seat_distance_mm(&self, state: &Tightened) -> f64 {
        if state.spacer_n > 0.0 {
            state.spacer_loaded_length_mm
        } else {
            self.zero_preload_length_mm + state.play_mm - self.pair().closing_mm(state.preload_n)
        }
    }

    fn state(
        &self,
        pair: &OpposedPair,
        seat_distance_mm: f64,
        preload_n: f64,
        spacer_n: f64,
        shortening_mm: f64,
        memory: SpacerMemory,
    ) -> Tightened {
        let memory = self.spacer.remember(shortening_mm, memory);
        let spacer_loose = spacer_n <= 0.0;
        let head_deflection_mm = pair.near.approach_mm(preload_n);
        let open_mm = seat_distance_mm - self.zero_preload_length_mm;
        Tightened {
            clamp_n: spacer_n + preload_n,
            spacer_n,
            preload_n,
            play_mm: if preload_n > 0.0 || open_mm < 0.0 { 0.0 } else { open_mm },
            spacer_loaded_length_mm: if spacer_loose {
                self.spacer.relaxed_length_mm(memory)
            } else {
                seat_distance_mm
            },
            head_deflection_mm,
            tail_deflection_mm: pair.far.approach_mm(preload_n),
            pinion_shift_mm: head_deflection_mm + 0.5 * pair.structure_mm_per_n * preload_n,
            spacer_loose,
            memory,
        }
    }

    /// Torque that keeps the pinion turning under a preload.
    pub fn rolling_torque(&self, preload_n: f64, running: Running) -> Torque {
        self.torque(
            friction::turning(&self.head_bearing, preload_n, running).total_nmm,
            friction::turning(&self.tail_bearing, preload_n, running).total_nmm,
        )
    }

    /// Torque that starts the pinion turning under a preload.
    pub fn breakaway_torque(&self, preload_n: f64) -> Torque {
        self.torque(
            friction::breakaway_nmm(&self.head_bearing, preload_n),
            friction::breakaway_nmm(&self.tail_bearing, preload_n),
        )
    }

    fn torque(&self, head_nmm: f64, tail_nmm: f64) -> Torque {
        let (head_bearing_nm, tail_bearing_nm) = (1.0e-3 * head_nmm, 1.0e-3 * tail_nmm);
        let seal_nm = seal::drag_nm(self.seal_shaft_diameter_mm);
        Torque {
            head_bearing_nm,
            tail_bearing_nm,
            seal_nm,
            total_nm: head_bearing_nm + tail_bearing_nm + seal_nm,
        }
    }

    /// Speed and oil of a pinion turned by hand.
    pub fn running(&self, turn_rpm: f64, temperature_c: f64) -> Running {
        Running {
            speed_rpm: turn_rpm,
            viscosity_mm2_s: self.oil.viscosity_mm2_s(temperature_c),
        }
    }

    /// Whether the spacer is a collapsible sleeve.
    pub fn has_sleeve(&self) -> bool {
        matches!(self.spacer.kind, SpacerKind::Collapsible { .. })
    }
}
