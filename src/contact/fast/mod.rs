//! The fast route: what a drag and a search may ask hundreds of times a second.
//!
//! [`Tables`] hold, for 420 points of either flank, a quadratic form of the gap in the placement, the wheel's
//! rotation and the roll (`form`), made once of the exact surfaces. At a placement they shrink to one parabola over the
//! roll for each point; `ridge` makes the wheel's motion of them, `print` the pattern. Only sums and products are left:
//! no surface is asked again.
//!
//! It agrees with the exact route within [`super::FAST_ACCURACY`], as far from the designed placement as
//! [`super::FAST_REACH`]; where axles are built and at the ends of that reach, `tests/properties/fast_route.rs` holds it to
//! both. Forms and method are our own; a form of second order near a contact is an idea of M. L. Baxter, Basic Geometry and
//! Tooth Contact of Hypoid Gears, Industrial Mathematics 11 (1961).

mod form;
mod print;
mod ridge;
mod tables;

pub(super) use tables::{Tables, curve, envelope, map, solve};
