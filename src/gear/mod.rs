//! The two members of a ring and pinion, from the numbers of their design.

mod design;

pub use design::{DepthTaper, Design, EaseOff};
