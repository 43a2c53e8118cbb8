//! What a wrench feels, and what a spacer, a nut, a press and heat do to it.
//!
//! - [`TaperedBearing`]: one bearing as its catalogue row lists it. [`FrictionSeries`]: rows of constants of its friction.
//! - [`friction`]: torque of a bearing turned by hand. [`friction_other`]: other published formulas and where they end.
//! - [`stiffness`]: how far a bearing gives way. [`OpposedPair`]: two of them against each other.
//! - [`Spacer`]: solid, or a sleeve that remembers how far it was crushed.
//! - [`fastener`]: nut torque to clamp and back. [`seal`], [`oil`]: what else drags.
//! - [`UnderLoad`]: where the bearings of a loaded axle stand, and how softly.
//! - [`Support`]: all of it together, read from a file; [`Support::tightened_to`] is the heart of this floor.
//! - [`Seating`]: cones and cups that were not pressed home.
//! - [`SideBearings`]: the pair beside the wheel, and the total felt at the pinion.
//! - [`fit`], [`setting`]: press fits, heat, and what both do to end play.
//!
//! Read [`Support::tightened_to`] first, then [`friction`].

pub mod fastener;
pub mod fit;
pub mod friction;
mod friction_constants;
pub mod friction_other;
mod friction_series;
pub mod oil;
mod pair;
pub mod seal;
mod seating;
pub mod setting;
mod side;
mod spacer;
pub mod stiffness;
mod support;
mod support_file;
mod support_problem;
mod tapered;
mod under_load;

pub use friction_constants::FrictionConstants;
pub use friction_series::FrictionSeries;
pub use pair::{OpposedPair, SharedLoad};
pub use seating::{SeatGap, Seating};
pub use side::{SideBearings, SidePreload, TotalTorque, total_torque_at_pinion};
pub use spacer::{LengthFault, Spacer, SpacerKind, SpacerMemory, YOUNG_N_PER_MM2};
pub use support::{Overload, Support, Tightened, Torque};
pub use support_problem::SupportProblem;
pub use tapered::{BearingKind, RollerForces, TaperedBearing, rating_one_million_n, rating_ratio_k, roller_forces};
pub use under_load::{RadialSpring, UnderLoad};
