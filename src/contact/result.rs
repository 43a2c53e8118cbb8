//! What both routes give: the numbers of contact at a placement.

use crate::gear::Side;

use super::pattern::Pattern;

/// Lash over one pitch, transverse at the wheel's outer pitch radius with the pinion held, mm. Negative: interference.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lash {
    /// Smallest.
    pub min_mm: f64,
    /// Mean over the roll.
    pub mean_mm: f64,
    /// Largest.
    pub max_mm: f64,
}

/// Shares of the roll, 0 to 1, over which the touching point lies on an edge.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EdgeContact {
    /// Within 0.02 of an edge of the wheel's flank, or at the border of what the pinion can touch regularly.
    pub wheel: f64,
    /// On the pinion's tip edge.
    pub pinion_tip: f64,
}

/// Contact of one flank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlankContact {
    /// What the paste shows; none where nothing is marked.
    pub pattern: Option<Pattern>,
    /// Peak to peak over one pitch, µrad at the wheel; none where the flank cannot touch.
    pub transmission_error_urad: Option<f64>,
    /// None where the flank cannot touch.
    pub edge_contact: Option<EdgeContact>,
}

impl FlankContact {
    /// A flank that cannot touch.
    pub const NONE: Self = Self {
        pattern: None,
        transmission_error_urad: None,
        edge_contact: None,
    };
}

/// All numbers of contact at a placement.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contact {
    /// None where a flank cannot touch.
    pub lash: Option<Lash>,
    /// Wheel's convex flank.
    pub drive: FlankContact,
    /// Wheel's concave flank.
    pub coast: FlankContact,
}

impl Contact {
    /// A flank's results.
    pub fn flank(&self, side: Side) -> &FlankContact {
        match side {
            Side::Drive => &self.drive,
            Side::Coast => &self.coast,
        }
    }
}

/// One point of a path of contact.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathPoint {
    /// Roll, rad.
    pub roll_rad: f64,
    /// Flank coordinates (x, y) of the touching point.
    pub place: [f64; 2],
    /// Rotation of the wheel toward the pinion at which the pair touches, µrad.
    pub toward_urad: f64,
    /// Its derivative to the roll, rad/rad; 0 where the instantaneous ratio is that of the teeth.
    pub slope: f64,
}
