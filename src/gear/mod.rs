//! The two members of a ring and pinion, from the numbers of their design.
//!
//! [`Design`] is what a `lashwright-gears/1` file says, read by [`Design::from_toml`].

mod design;
mod design_file;
mod hunting;

pub use design::{DepthTaper, Design, EaseOff};
pub use hunting::{Hunting, HuntingKind};
