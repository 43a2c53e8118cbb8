//! The two members of a ring and pinion, from the numbers of their design.

mod design;
mod hunting;

pub use design::{DepthTaper, Design, EaseOff};
pub use hunting::{Hunting, HuntingKind};
