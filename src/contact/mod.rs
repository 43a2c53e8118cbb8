//! Contact of the two gears: pattern, lash, transmission error and edge contact at a placement.
//!
//! ```text
//! GearSet ── Pair::new ──> Pair ── solve(&Pair, Placement, Film, Route) ──> Contact
//! ```
//! A [`Pair`] is a gear set made ready: immutable, and the same for all placements and threads. [`solve`] gives all
//! numbers of both flanks, [`gap_map`] the smallest gap on a grid for drawing, [`first_touch_urad`] and [`lash_mm`] curves
//! over one pitch.
//!
//! Everything is asked of the true surfaces. `Stand` (gap) brings a wheel point to the pinion's eased flank along its
//! normal (gap) or by turning the wheel (touch). `Toucher` (touch) finds the smallest rotation toward the pinion over the
//! whole flank; `Curve` and `Envelope` (motion) make the motion of the wheel of it, and `Gapper` (gap map) the smallest
//! gap at each grid point while the wheel is held by whichever pair touches. Nothing distinguishes tapered from uniform
//! depth, or offset 0 from any other.
//!
//! Accuracy at the shipped resolution, by halving every step: centroid and area within 0.001, ends of a print within
//! 0.001 (flank coordinates), transmission error within 0.001 µrad, lash within 0.001 µm (`tests/properties`). Where
//! regular contact ends inside the flank (an undercut pinion, which warns), the first touch at that border is good to
//! about 10 µrad only.
//!
//! Signs: D and all rotations "toward" are positive where there is room between the flanks, so negative lash is
//! interference. Where a flank cannot touch at all its results are `None`.

mod exact;
mod fast;
mod film_left;
mod gap;
mod gap_map;
mod motion;
mod outline;
mod pair;
mod pattern;
mod placement;
mod touch;

pub use film_left::FilmLeft;
pub use gap_map::GapMap;
pub use pair::{Pair, Resolution};
pub use pattern::Pattern;
pub use placement::{FAST_REACH, Film, Placement, Reach, Route};

use crate::gear::Side;

/// Version of the physics: raised whenever a change of the code changes results on purpose, so that stored results can
/// be told from damaged ones.
pub const PHYSICS_VERSION: u32 = 1;

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

/// Contact of a pair at a placement. Never fails: what cannot touch is `None`, overlap is negative lash. A placement with
/// a number that is not finite gives no contact.
pub fn solve(pair: &Pair, placement: Placement, film: Film, route: Route) -> Contact {
    if !is_finite(&placement) {
        return Contact {
            lash: None,
            drive: FlankContact::NONE,
            coast: FlankContact::NONE,
        };
    }
    match route {
        Route::Exact => exact::solve(pair, placement, film),
        Route::Fast => fast::solve(pair, placement, film),
    }
}

/// Motion of one flank at a placement. None where no pair can touch at some roll.
fn envelope(pair: &Pair, placement: Placement, side: Side, route: Route) -> Option<motion::Envelope> {
    match route {
        Route::Exact => exact::envelope(pair, &gap::Stand::new(pair.gears(), placement), side),
        Route::Fast => fast::envelope(pair, placement, side),
    }
}

/// Smallest gap over the roll on a grid over the flank: by the exact route with the resolution of the pair. None where
/// the flank cannot touch. [`Pattern::of`] makes the pattern of it for any film.
pub fn gap_map(pair: &Pair, placement: Placement, side: Side, route: Route) -> Option<GapMap> {
    if !is_finite(&placement) {
        return None;
    }
    match route {
        Route::Exact => {
            let stand = gap::Stand::new(pair.gears(), placement);
            let envelope = exact::envelope(pair, &stand, side)?;
            Some(exact::map(pair, &stand, side, &envelope))
        }
        Route::Fast => fast::map(pair, placement, side),
    }
}

/// The wheel's motion on one flank over one pitch: (roll in rad from 0, rotation toward the pinion at which the first of
/// all pairs touches in µrad), `count` + 1 values. None where the flank cannot touch.
pub fn first_touch_urad(
    pair: &Pair,
    placement: Placement,
    side: Side,
    route: Route,
    count: usize,
) -> Option<Vec<(f64, f64)>> {
    if !is_finite(&placement) || count == 0 {
        return None;
    }
    let values = envelope(pair, placement, side, route)?.values(count);
    Some(values.into_iter().map(|(roll, toward)| (roll, 1e6 * toward)).collect())
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

/// The path of contact: where one pair touches over the rolls at which it holds the wheel, by rising roll. None where
/// the flank cannot touch.
pub fn path_of_contact(pair: &Pair, placement: Placement, side: Side) -> Option<Vec<PathPoint>> {
    if !is_finite(&placement) {
        return None;
    }
    exact::path(pair, &gap::Stand::new(pair.gears(), placement), side)
}

/// Lash over one pitch: (roll in rad from 0, lash in mm), `count` + 1 values. None where a flank cannot touch.
pub fn lash_mm(pair: &Pair, placement: Placement, route: Route, count: usize) -> Option<Vec<(f64, f64)>> {
    if !is_finite(&placement) || count == 0 {
        return None;
    }
    let drive = envelope(pair, placement, Side::Drive, route)?;
    let coast = envelope(pair, placement, Side::Coast, route)?;
    let lead = exact::lash_lead(pair);
    let design = pair.gears().design();
    let radius = 0.5 * design.wheel_outer_pitch_diameter_mm;
    Some(
        drive
            .values(count)
            .into_iter()
            .map(|(roll, toward)| {
                let other = coast.at(roll + lead).0;
                (roll, design.lash_mm + radius * (toward + other))
            })
            .collect(),
    )
}

fn is_finite(placement: &Placement) -> bool {
    [
        placement.pinion_axial_mm,
        placement.wheel_axial_mm,
        placement.offset_mm,
        placement.shaft_angle_rad,
    ]
    .iter()
    .all(|v| v.is_finite())
}
