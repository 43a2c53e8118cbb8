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

mod ask;
mod exact;
mod fast;
mod film_left;
mod gap;
mod gap_map;
mod lash;
mod motion;
mod outline;
mod pair;
mod pattern;
mod placement;
mod prepared;
mod resolution;
mod result;
mod touch;

pub use ask::{first_touch_urad, gap_map, lash_mm, path_of_contact, solve};
pub use film_left::FilmLeft;
pub use gap_map::GapMap;
pub use pair::Pair;
pub use pattern::Pattern;
pub use placement::{FAST_REACH, Film, Placement, Reach, Route};
pub use resolution::Resolution;
pub use result::{Contact, EdgeContact, FlankContact, Lash, PathPoint};

/// Version of the physics: raised whenever a change of the code changes results on purpose, so that stored results can
/// be told from damaged ones.
pub const PHYSICS_VERSION: u32 = 1;
