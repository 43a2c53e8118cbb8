//! What `lashwright preload --json` prints.

use schemars::JsonSchema;
use serde::Serialize;

use crate::bearing::Torque;

/// A pinion support with its nut tightened.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct PreloadDocument {
    /// Name of the support on the command line: embedded name or file.
    pub support: String,
    /// Free length of the spacer, mm.
    pub spacer_length_mm: f64,
    /// Nut torque, N m.
    pub nut_torque_nm: f64,
    /// Speed of turning, r/min.
    pub turn_rpm: f64,
    /// Temperature of oil and bearings, °C.
    pub temperature_c: f64,
    /// F_c, force of the nut, N.
    pub clamp_n: f64,
    /// F_s, share of the spacer, N.
    pub spacer_n: f64,
    /// F_p, share of the bearings, N.
    pub preload_n: f64,
    /// End play, µm; 0 when preloaded.
    pub play_um: f64,
    /// L, length of the spacer under its force, mm.
    pub spacer_loaded_length_mm: f64,
    /// δ_h, µm.
    pub head_deflection_um: f64,
    /// δ_t, µm.
    pub tail_deflection_um: f64,
    /// How far preload moves the pinion outward (P > 0), µm.
    pub pinion_shift_um: f64,
    /// ν at the temperature, mm²/s.
    pub oil_viscosity_mm2_s: f64,
    /// Torque that keeps the pinion turning.
    pub rolling_torque_nm: TorqueParts,
    /// Torque that starts it.
    pub breakaway_nm: TorqueParts,
    /// What simulated values are not: no specification for a real axle.
    pub note: String,
}

/// A torque with its parts, N m.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct TorqueParts {
    /// Bearing next to the pinion's teeth.
    pub head_bearing: f64,
    /// Bearing next to the companion flange.
    pub tail_bearing: f64,
    /// Seal.
    pub seal: f64,
    /// All of them.
    pub total: f64,
}

impl From<&Torque> for TorqueParts {
    fn from(torque: &Torque) -> Self {
        Self {
            head_bearing: torque.head_bearing_nm,
            tail_bearing: torque.tail_bearing_nm,
            seal: torque.seal_nm,
            total: torque.total_nm,
        }
    }
}
