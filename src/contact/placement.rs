//! How far the two gears stand from where they were designed to.

/// Deviations of the two gears from their designed places. All zero: as designed.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Placement {
    /// P, mm: the pinion along its axis, positive away from the crossing point (shallower).
    pub pinion_axial_mm: f64,
    /// G, mm: the wheel along its axis, positive away from the pinion (more lash).
    pub wheel_axial_mm: f64,
    /// E, mm: the pinion along +y, positive for more offset.
    pub offset_mm: f64,
    /// Σ, rad: the pinion's axis about +y through (0, a, 0); the shaft angle is 90° + Σ.
    pub shaft_angle_rad: f64,
}

impl Placement {
    /// As designed.
    pub const NOMINAL: Self = Self {
        pinion_axial_mm: 0.0,
        wheel_axial_mm: 0.0,
        offset_mm: 0.0,
        shaft_angle_rad: 0.0,
    };

    /// Σ in degrees.
    pub fn shaft_angle_deg(&self) -> f64 {
        self.shaft_angle_rad.to_degrees()
    }
}

/// Thickness of the marking paste: what has a smaller gap is marked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Film {
    /// µm.
    pub thickness_um: f64,
}

impl Default for Film {
    /// 8 µm, where nothing else is said.
    fn default() -> Self {
        Self { thickness_um: 8.0 }
    }
}

/// How contact is computed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Route {
    /// On the true surfaces, as good as [`super::EXACT_ACCURACY`]: what readings and scores are made of.
    #[default]
    Exact,
    /// By quadratic forms made of the true surfaces once a pair, near the designed placement, as good as
    /// [`super::FAST_ACCURACY`]: what a drag and a search ask for.
    Fast,
}
