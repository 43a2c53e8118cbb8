//! A pinion support with its nut tightened: what every page about it is made of.

use crate::bearing::friction::Running;
use crate::bearing::{SpacerMemory, Support, Tightened, Torque};
use crate::quantity;

/// Friction factor of new bearings: service literature says that half the drag is lost with running in.
pub const NEW_FRICTION_FACTOR: f64 = 2.0;

/// Friction factor of seated, run-in bearings.
pub const RUN_IN_FRICTION_FACTOR: f64 = 1.0;

/// What a table runs over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Over {
    /// Free length of the spacer, mm.
    Spacer,
    /// Nut torque, N m.
    NutTorque,
}

/// Under which a support is looked at, all checked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// Free length of the spacer, mm.
    pub spacer_mm: f64,
    /// Nut torque, N m.
    pub nut_torque_nm: f64,
    /// Speed of turning, r/min.
    pub turn_rpm: f64,
    /// Temperature, °C.
    pub temperature_c: f64,
}

/// One case, computed.
#[derive(Debug, Clone, PartialEq)]
pub struct Preload {
    /// Name of the support on the command line.
    pub source: String,
    /// The support with the spacer as asked for.
    pub support: Support,
    /// Under which.
    pub conditions: Conditions,
    /// Forces and lengths.
    pub state: Tightened,
    /// Speed and viscosity.
    pub running: Running,
    /// Torque that keeps the pinion turning.
    pub rolling: Torque,
    /// Torque that starts it.
    pub breakaway: Torque,
    /// The same rotating torque were the bearings new, N m.
    pub rolling_new_nm: f64,
    /// The same rotating torque were the bearings run in, N m.
    pub rolling_run_in_nm: f64,
    /// What people should know about these numbers: one sentence each.
    pub notes: Vec<String>,
}

/// What a small change at the bench would do.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// Change of preload, N.
    pub preload_n: f64,
    /// Change of rotating torque, N m.
    pub rolling_nm: f64,
}

impl Preload {
    /// Whether the file's bearings are neither as new nor as run-in ones are taken.
    pub fn friction_is_unusual(&self) -> bool {
        let factors = [self.support.head_bearing, self.support.tail_bearing].map(|b| b.friction_factor);
        ![NEW_FRICTION_FACTOR, RUN_IN_FRICTION_FACTOR]
            .iter()
            .any(|usual| factors.iter().all(|factor| (factor - usual).abs() < 1.0e-9))
    }

    /// What 0.001 in more shim at the spacer would do, with the same nut torque.
    pub fn with_a_thousandth_more_shim(&self) -> Option<Step> {
        let longer = self
            .support
            .with_spacer_length_mm(self.conditions.spacer_mm + 1.0e-3 * quantity::MM_PER_INCH);
        let state = longer
            .tightened_to(self.conditions.nut_torque_nm, SpacerMemory::default())
            .ok()?;
        Some(self.step_to(&state))
    }

    /// What one more degree of the nut would do.
    pub fn with_a_degree_more(&self) -> Option<Step> {
        Some(self.step_to(&self.support.turned_on(&self.state, 1.0).ok()?))
    }

    fn step_to(&self, state: &Tightened) -> Step {
        let rolling = self.support.rolling_torque(state.preload_n, self.running);
        Step {
            preload_n: state.preload_n - self.state.preload_n,
            rolling_nm: rolling.total_nm - self.rolling.total_nm,
        }
    }

    /// How far the nut has turned since the bearings touched without preload, degrees; negative for end play.
    pub fn nut_past_touching_deg(&self) -> f64 {
        let closed_mm = if self.state.spacer_loose {
            self.support.pair().closing_mm(self.state.preload_n)
        } else {
            self.support.zero_preload_length_mm - self.state.spacer_loaded_length_mm
        };
        360.0 * closed_mm / self.support.nut.pitch_mm
    }
}
