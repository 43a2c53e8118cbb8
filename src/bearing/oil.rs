//! Gear oil: viscosity over temperature, and viscosity grades.
//!
//! Source: Walther's equation as in ASTM D341; grades of SAE J306 (2019).

use crate::numerics::math;

/// 0 °C in kelvin.
const ZERO_CELSIUS_K: f64 = 273.15;

/// An oil, known by its kinematic viscosity at two temperatures.
///
/// In between and around, log log(ν + 0.7) falls on a straight line over log T (Walther; ASTM D341).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Oil {
    /// ν at 40 °C, mm²/s; above the value at 100 °C.
    pub viscosity_40_mm2_s: f64,
    /// ν at 100 °C, mm²/s; above 1.
    pub viscosity_100_mm2_s: f64,
}

impl Oil {
    /// ν at a temperature, mm²/s.
    pub fn viscosity_mm2_s(&self, temperature_c: f64) -> f64 {
        let double_log = |viscosity: f64| math::log10(math::log10(viscosity + 0.7));
        let (x40, x100) = (math::log10(40.0 + ZERO_CELSIUS_K), math::log10(100.0 + ZERO_CELSIUS_K));
        let (y40, y100) = (
            double_log(self.viscosity_40_mm2_s),
            double_log(self.viscosity_100_mm2_s),
        );
        let slope = (y40 - y100) / (x100 - x40);
        let y = y40 - slope * (math::log10(temperature_c + ZERO_CELSIUS_K) - x40);
        math::pow(10.0, math::pow(10.0, y)) - 0.7
    }

    /// The viscosity grade of gear oils that the value at 100 °C falls in; `None` below the thinnest and above the
    /// thickest.
    ///
    /// Source: SAE J306 (2019), ranges at 100 °C in mm²/s.
    pub fn grade(&self) -> Option<&'static str> {
        const GRADES: [(f64, f64, &str); 7] = [
            (6.5, 8.5, "75"),
            (8.5, 11.0, "80"),
            (11.0, 13.5, "85"),
            (13.5, 18.5, "90"),
            (18.5, 24.0, "110"),
            (24.0, 32.5, "140"),
            (32.5, 41.0, "190"),
        ];
        let v = self.viscosity_100_mm2_s;
        GRADES
            .iter()
            .find(|(low, high, _)| (*low..*high).contains(&v))
            .map(|(_, _, name)| *name)
    }
}

/// Dynamic viscosity in mPa s from the kinematic one in mm²/s and the density in g/cm³ (0.885 for gear oil).
pub fn dynamic_viscosity_mpas(kinematic_mm2_s: f64, density_g_cm3: f64) -> f64 {
    kinematic_mm2_s * density_g_cm3
}
