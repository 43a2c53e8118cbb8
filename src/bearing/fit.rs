//! Press fits: pressure, press force, stress, and what heat does to them.
//!
//! Lengths mm, pressures and stresses N/mm², forces N, temperature differences K. Interference is on the diameter.
//!
//! Source: Ball and Roller Bearings, CAT. No. 2203/E, 17.4 and 17.5 (pressures, friction); Rolling Bearings,
//! CAT. No. E1102, chapters 9 and 14 (heat); Lamé's equations as in J. E. Shigley, Mechanical Engineering Design, eq.
//! 3-56.

use super::tapered::TaperedBearing;

/// Young's modulus in the bearing makers' fit tables, N/mm² (CAT. No. 2203/E).
pub const YOUNG_BEARING_N_PER_MM2: f64 = 208_000.0;
/// Expansion of bearing steel, 1/K (CAT. No. E1102).
pub const EXPANSION_BEARING_STEEL_PER_K: f64 = 12.5e-6;
/// Expansion of a case-hardened wheel, 1/K.
pub const EXPANSION_GEAR_STEEL_PER_K: f64 = 11.5e-6;
/// Hottest a bearing may be made for fitting, °C (CAT. No. E1102, chapter 14).
pub const BEARING_HEAT_LIMIT_C: f64 = 120.0;
/// Hottest a wheel may be made for fitting, °C: 300 °F, read in a service sheet. Above, case-hardened teeth begin to
/// soften.
pub const WHEEL_HEAT_LIMIT_C: f64 = 149.0;
/// µ when a bearing is pressed on to or off a cylindrical seat (CAT. No. 2203/E, 17.5).
pub const FRICTION_PRESS_ON: f64 = 0.12;
/// µ when it is pulled off.
pub const FRICTION_PRESS_OFF: f64 = 0.18;

/// Ring and shaft of a press fit: diameters, elasticity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PressFit {
    /// d, common diameter, mm.
    pub diameter_mm: f64,
    /// Outside diameter of the outer part, mm; more than d.
    pub outer_diameter_mm: f64,
    /// Bore of the inner part, mm; 0 when solid.
    pub inner_bore_mm: f64,
    /// Length of the seat, mm.
    pub length_mm: f64,
    /// Outer part.
    pub outer: Elastic,
    /// Inner part.
    pub inner: Elastic,
}

/// An elastic material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Elastic {
    /// E, N/mm².
    pub young_n_per_mm2: f64,
    /// ν.
    pub poisson: f64,
}

impl Elastic {
    /// Bearing steel as the fit tables take it.
    pub const BEARING_STEEL: Self = Self {
        young_n_per_mm2: YOUNG_BEARING_N_PER_MM2,
        poisson: 0.3,
    };
}

impl PressFit {
    /// The cone of a tapered bearing on a solid steel shaft; `cone_width_mm` is B. The cone counts as a ring out to
    /// its mean raceway diameter (3 d + D)/4 (CAT. No. 2203/E, table 17.4.2).
    pub fn cone_on_shaft(bearing: &TaperedBearing, cone_width_mm: f64) -> Self {
        Self {
            diameter_mm: bearing.bore_mm,
            outer_diameter_mm: cone_raceway_diameter_mm(bearing),
            inner_bore_mm: 0.0,
            length_mm: cone_width_mm,
            outer: Elastic::BEARING_STEEL,
            inner: Elastic::BEARING_STEEL,
        }
    }

    /// Pressure in the seat, N/mm², after Lamé (Shigley eq. 3-56); 0 for a loose fit.
    ///
    /// p = δ/(d [(1/E_o)((d_o² + d²)/(d_o² − d²) + ν_o) + (1/E_i)((d² + d_i²)/(d² − d_i²) − ν_i)])
    pub fn pressure_n_per_mm2(&self, interference_mm: f64) -> f64 {
        if interference_mm <= 0.0 {
            return 0.0;
        }
        let squared = |x: f64| x * x;
        let (d, outer, bore) = (
            squared(self.diameter_mm),
            squared(self.outer_diameter_mm),
            squared(self.inner_bore_mm),
        );
        let give_outer = ((outer + d) / (outer - d) + self.outer.poisson) / self.outer.young_n_per_mm2;
        let give_inner = ((d + bore) / (d - bore) - self.inner.poisson) / self.inner.young_n_per_mm2;
        interference_mm / (self.diameter_mm * (give_outer + give_inner))
    }

    /// Greatest tension around the bore of the outer part, N/mm².
    pub fn hoop_stress_n_per_mm2(&self, interference_mm: f64) -> f64 {
        let ratio = self.diameter_mm / self.outer_diameter_mm;
        let ratio = ratio * ratio;
        self.pressure_n_per_mm2(interference_mm) * (1.0 + ratio) / (1.0 - ratio)
    }

    /// Force to slide the parts over the whole seat, N: µ p π d B. An approximation; more may be needed.
    pub fn press_force_n(&self, interference_mm: f64, friction: f64) -> f64 {
        friction * self.pressure_n_per_mm2(interference_mm) * std::f64::consts::PI * self.diameter_mm * self.length_mm
    }
}

/// Pressure of a cone on a solid shaft of the same steel, N/mm²: (E/2)(Δ/d)(1 − (d/D_i)²) (CAT. No. 2203/E, 17.4.1).
pub fn cone_pressure_n_per_mm2(interference_mm: f64, bore_mm: f64, raceway_diameter_mm: f64) -> f64 {
    let ratio = bore_mm / raceway_diameter_mm;
    0.5 * YOUNG_BEARING_N_PER_MM2 * interference_mm / bore_mm * (1.0 - ratio * ratio)
}

/// Pressure of a cup in a housing of the same steel, N/mm²: (E/2)(Δ/D)(1 − (D_o/D)²)(1 − (D/D_h)²)/(1 − (D_o/D_h)²)
/// (CAT. No. 2203/E, 17.4.1). `raceway_diameter_mm` is D_o, `housing_diameter_mm` D_h.
pub fn cup_pressure_n_per_mm2(
    interference_mm: f64,
    outside_diameter_mm: f64,
    raceway_diameter_mm: f64,
    housing_diameter_mm: f64,
) -> f64 {
    let gap = |a: f64, b: f64| 1.0 - (a / b) * (a / b);
    0.5 * YOUNG_BEARING_N_PER_MM2 * interference_mm / outside_diameter_mm
        * gap(raceway_diameter_mm, outside_diameter_mm)
        * gap(outside_diameter_mm, housing_diameter_mm)
        / gap(raceway_diameter_mm, housing_diameter_mm)
}

/// Mean raceway diameter of a cone, mm: (3 d + D)/4.
pub fn cone_raceway_diameter_mm(bearing: &TaperedBearing) -> f64 {
    0.25 * (3.0 * bearing.bore_mm + bearing.outside_diameter_mm)
}

/// Growth of a diameter with heat, mm.
pub fn growth_mm(diameter_mm: f64, expansion_per_k: f64, rise_k: f64) -> f64 {
    diameter_mm * expansion_per_k * rise_k
}

/// Interference lost while a bearing is warmer than its shaft, mm: 0.0015e-3 ΔT d (CAT. No. E1102, chapter 9).
pub fn interference_lost_mm(bore_mm: f64, bearing_warmer_by_k: f64) -> f64 {
    0.0015e-3 * bearing_warmer_by_k * bore_mm
}

/// A part would have to be made hotter than it can stand.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub struct TooHot {
    /// Temperature that would clear the interference, °C.
    pub needed_c: f64,
    /// Temperature the part stands, °C.
    pub limit_c: f64,
}

/// Temperature at which a part clears its interference, °C. Practice adds 20 to 30 K, since it cools on the way.
///
/// # Errors
/// [`TooHot`] when that is above `limit_c`, for example [`BEARING_HEAT_LIMIT_C`] or [`WHEEL_HEAT_LIMIT_C`].
pub fn fitting_temperature_c(
    interference_mm: f64,
    diameter_mm: f64,
    expansion_per_k: f64,
    room_c: f64,
    limit_c: f64,
) -> Result<f64, TooHot> {
    let needed_c = room_c + interference_mm / (expansion_per_k * diameter_mm);
    if needed_c <= limit_c {
        Ok(needed_c)
    } else {
        Err(TooHot { needed_c, limit_c })
    }
}
