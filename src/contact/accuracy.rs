//! What the routes promise: how good their numbers are, and how far from the designed placement.
//!
//! Source: the bounds are our own: the deviations that were found, rounded up. The tests hold the routes to these
//! constants, and every text that speaks of accuracy means them: `tests/properties/convergence.rs` and
//! `tests/properties/fast_route.rs` compare the routes with themselves and with each other, `tests/outside` compares
//! both with outside sources.

use super::pattern::Pattern;
use super::placement::Placement;

/// Largest deviations of the numbers of contact.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Accuracy {
    /// Of the centroid along and up the tooth, in flank coordinates.
    pub centroid: [f64; 2],
    /// Of the marked share of the flank.
    pub area_fraction: f64,
    /// Of toe, heel, root and top end, in flank coordinates; none where nothing is promised of them.
    pub ends: Option<f64>,
    /// Of the transmission error, µrad.
    pub transmission_error_urad: f64,
    /// Of least, mean and largest lash, µm.
    pub lash_um: f64,
    /// Holds for prints none of whose ends lies farther from the middle than this, in flank coordinates: 1 for all.
    pub ends_within: f64,
}

impl Accuracy {
    /// Whether it is promised for a print.
    pub fn holds_for(&self, print: &Pattern) -> bool {
        [print.toe, print.heel, print.root, print.top]
            .iter()
            .all(|end| end.abs() <= self.ends_within)
    }
}

/// Of the exact route at the shipped resolution, against one with every step halved.
pub const EXACT_ACCURACY: Accuracy = Accuracy {
    centroid: [0.001, 0.001],
    area_fraction: 0.001,
    ends: Some(0.001),
    transmission_error_urad: 0.001,
    lash_um: 0.001,
    ends_within: 1.0,
};

/// Of the fast route against the exact one within [`FAST_REACH`], where the print keeps off the edges of the flank.
pub const FAST_ACCURACY: Accuracy = Accuracy {
    centroid: [0.001, 0.002],
    area_fraction: 0.004,
    ends: None,
    transmission_error_urad: 1.5,
    lash_um: 0.2,
    ends_within: 0.97,
};

/// How far from the designed placement something holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reach {
    /// P and G, mm either way.
    pub axial_mm: f64,
    /// E, mm either way.
    pub offset_mm: f64,
    /// Σ, rad either way.
    pub shaft_angle_rad: f64,
}

/// How far the fast route agrees with the exact one within [`FAST_ACCURACY`].
pub const FAST_REACH: Reach = Reach {
    axial_mm: 0.3,
    offset_mm: 0.1,
    // 0.1 degrees.
    shaft_angle_rad: 0.1 * std::f64::consts::PI / 180.0,
};

impl Reach {
    /// Whether a placement lies within, its bounds included.
    pub fn holds(&self, placement: &Placement) -> bool {
        // A hair more for the rounding of degrees.
        let within = |value: f64, most: f64| value.abs() <= most * (1.0 + 1e-12);
        within(placement.pinion_axial_mm, self.axial_mm)
            && within(placement.wheel_axial_mm, self.axial_mm)
            && within(placement.offset_mm, self.offset_mm)
            && within(placement.shaft_angle_rad, self.shaft_angle_rad)
    }
}
