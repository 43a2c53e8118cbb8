//! Contact of the two gears: pattern, lash, transmission error and edge contact at a placement.
//!
//! ```text
//! GearSet ── Pair::new ──> Pair ── solve(&Pair, Placement, Film, Route) ──> Contact
//! ```
//! A [`Pair`] is a gear set made ready: immutable, and the same for all placements and threads. [`solve`] gives all
//! numbers of both flanks, [`gap_map`] the smallest gap on a grid for drawing, [`first_touch_urad`] and [`lash_mm`] curves
//! over one pitch.
//!
//! Everything is asked of the true surfaces. `PlacedPair` (gap) brings a wheel point to the pinion's eased flank along its
//! normal (gap) or by turning the wheel (touch). `TouchSearch` (touch) finds the smallest rotation toward the pinion over the
//! whole flank; `Curve` and `Envelope` (motion) make the motion of the wheel of it, and `GapSearch` (gap map) the smallest
//! gap at each grid point while the wheel is held by whichever pair touches. Nothing distinguishes tapered from uniform
//! depth, or offset 0 from any other.
//!
//! Accuracy: [`EXACT_ACCURACY`] at the shipped resolution, [`FAST_ACCURACY`] for the fast route within [`FAST_REACH`]. Where
//! regular contact ends inside the flank (an undercut pinion, which warns), nothing is promised of a first touch at that
//! border.
//!
//! What it stands on:
//! - F. L. Litvin and A. Fuentes, Gear Geometry and Applied Theory, 2nd ed., 2004: tooth contact analysis of flanks that
//!   touch in points, transmission error as the wheel's lag behind the ratio of the teeth, and its change-over from pair
//!   to pair.
//! - M. L. Baxter, Effect of Misalignment on Tooth Action of Bevel and Hypoid Gears, ASME paper 61-MD-20 (1961): contact
//!   followed under moves of both gears along their axes, of the offset and of the shaft angle (our P, G, E, Σ).
//! - M. L. Baxter, Basic Geometry and Tooth Contact of Hypoid Gears, Industrial Mathematics 11 (1961): flanks of second
//!   order near a contact, a relative of the fast route's forms.
//! - T. J. Krenzer, Tooth Contact Analysis of Spiral Bevel and Hypoid Gears under Load, SAE paper 810688 (1981): every
//!   pair that can be in mesh is looked at, and contact of edges counts.
//! - V. Simon, Load Distribution in Hypoid Gears, Journal of Mechanical Design 122 (2000): separations over the whole
//!   flank, wheel by wheel point, as what contact is made of.
//! - H. J. Stadtfeld, Handbook of Bevel and Hypoid Gears, 1993: ease-off as the departure from the exact mate, and print
//!   and motion read of it.
//! - ISO 23509:2006 for members and angles; ANSI/AGMA 2008 for the words of prints: toe, heel, root, top.
//!
//! Our own are: the envelope over all pairs as a function of roll with the motion taken through it, the smallest gap
//! over the roll as what paste shows, a print's ends followed on the surfaces, and the fast route's tables. They are
//! unloaded: neither teeth nor shafts give way.
//!
//! Signs: D and all rotations "toward" are positive where there is room between the flanks, so negative lash is
//! interference. Where a flank cannot touch at all its results are `None`.

mod accuracy;
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

pub use accuracy::{Accuracy, EXACT_ACCURACY, FAST_ACCURACY, FAST_REACH, Reach};
pub use ask::{first_touch_urad, gap_map, lash_mm, path_of_contact, solve};
pub use film_left::FilmLeft;
pub use gap_map::GapMap;
pub use pair::Pair;
pub use pattern::Pattern;
pub use placement::{Film, Placement, Route};
pub use resolution::Resolution;
pub use result::{Contact, EdgeContact, FlankContact, Lash, PathPoint};

/// Version of the physics: raised whenever a change of the code changes results on purpose, so that stored results can
/// be told from damaged ones.
pub const PHYSICS_VERSION: u32 = 2;
