//! The two members of a ring and pinion, from the numbers of their design.
//!
//! [`Design`] is what a `lashwright-gears/1` file says, read by [`Design::from_toml`]. [`GearSet::new`] makes the gears
//! of it, in this order:
//!
//! 1. [`PitchCones`]: the two cones that touch at the mean point P ([`PitchCones::solve`], or
//!    [`PitchCones::with_wheel_mean_radius`] where r_m2 is given).
//! 2. [`Blank`]: depth, face and root cones, and the flank coordinates: x from −1 (toe) to 1 (heel), y from −1 (root line
//!    raised by the clearance) to 1 (face line). [`Blank::place_mm`] and [`Blank::coordinates`] go both ways.
//! 3. [`Cutter`] and [`WheelFlank`]: a form-cut flank is a cone of its cutter. [`WheelFlank::point`] gives position and
//!    unit normal (into the slot) of (x, y), [`WheelFlank::distance_mm`] the distance of any point from it.
//! 4. [`PinionFlank`]: the envelope of the wheel's flank, eased off. [`PinionFlank::meeting`] gives the pinion point
//!    that the wheel point (x, y) meets, with its roll; [`PinionFlank::partner`] goes the other way.
//! 5. [`Solid`]: closed triangle meshes of both, for drawing.
//! 6. [`Warning`]s: undercut, pointed tips, a second cut; [`GeometryError`] where no gears exist.
//!
//! Frame of the wheel: its axis is z, teeth face −z, and roll 0 has the slot that holds P in its designed place. Frame
//! of the pinion: its axis is x, origin on the common perpendicular, roll 0 likewise. All lengths mm.

mod blank;
mod design;
mod design_file;
mod error;
mod flank;
mod hunting;
mod pinion;
mod pitch;
mod set;
mod side;
mod solid;
mod warning;

pub use blank::{Blank, ConeLine};
pub use design::{DepthTaper, Design, EaseOff};
pub use design_file::GearSetProblem;
pub use error::{BlankFault, GeometryError};
pub use flank::{Cutter, FlankPoint, WheelFlank};
pub use hunting::{Hunting, HuntingKind};
pub(crate) use pinion::{Level, Roll, sin_cos_near};
pub use pinion::{Meeting, PinionFlank};
pub use pitch::{PitchCones, PitchInput};
pub use set::GearSet;
pub use side::Side;
pub use solid::{Detail, FlankMark, Part, Solid, SolidError, ToothedPart, Topology, Triangle, Vertex};
pub use warning::{Along, FlankPlace, Up, Warning};
