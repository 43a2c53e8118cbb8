//! An axle: from how its parts were made and what is fitted to where the gears stand and what turning them takes.
//!
//! ```text
//! Axle (as designed) + Truth (as made) + Assembly (what is fitted) ── settle ──> Built
//! ```
//! - [`Layout`]: how axles are put together. [`Axle`]: one of them as designed, with gears, support, side bearings.
//! - [`Member`], [`Chain`]: the sizes that decide, and what each of them moves by how much, as one table a layout.
//! - [`Truth`]: hidden numbers of one axle. [`Assembly`]: the state that operations change.
//! - [`settle`]: the solver: adds the chain up, closes the bearings' springs, gives [`Built`]: placement, preloads, play,
//!   runout. [`resistance`]: torque at the pinion nut.
//! - [`Assembly::nominal`], [`Assembly::set_up`]: whole axles.
//! - [`turn_nut`], [`seat_wheel`]: the two operations whose outcome depends on the way they are done.
//!
//! Nothing here knows operations, money or what a trainee sees. Read [`Chain`] first, then [`settle`].

mod assembly;
mod built;
mod chain;
mod design;
mod error;
mod layout;
mod member;
mod set_up;
mod settle;
mod tighten;
mod truth;
mod wheel_fit;

pub use assembly::{Assembly, Bearings, Caps, Nut, Push, SideStack, SpacerFitted, WheelSeat};
pub use built::{Built, PinionBuilt, Resistance, Runout, SideBuilt};
pub use chain::{Chain, Effect, Link, Moves, Nominal, Sums, When};
pub use design::{Adjuster, Axle, GearNumbers, Register, Target, usual_side_bearings};
pub use error::AxleError;
pub use layout::{DepthShim, Layout, SideSetting};
pub use member::{Member, PerMember};
pub use set_up::FittedShims;
pub use settle::{
    Turning, deviations, resistance, settle, side_as_built, side_resistance_nm, sums, support_as_built, unturned_times,
};
pub use tighten::{NutMove, NutTurned, turn_nut};
pub use truth::{CaseTruth, FrictionTruth, NutTruth, PairTruth, PressTruth, SleeveTruth, Truth, WheelFitTruth};
pub use wheel_fit::{ROOM_C, WheelFitting, overheated, seat_wheel};
