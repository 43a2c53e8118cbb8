//! The stage: the two gears in mesh, the ground behind, the eye.
//!
//! Everything here follows the session; nothing here changes it. `solid` hands the core's solids to Bevy, `gears` puts
//! them where their placement says, `axle` the parts around them, `paste` what is painted on them; `eye` places the camera,
//! `steel` holds the finishes and their shader, `drawing` says what is drawn on and how.

mod axle;
mod drawing;
mod eye;
mod gears;
mod paste;
pub mod solid;
mod steel;

pub use drawing::{Drawing, Easel, Gear, Part, part_color};
pub use gears::{pinion_stand, plugin, wheel_stand};
