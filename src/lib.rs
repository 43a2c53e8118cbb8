//! Lashwright: a teaching simulator for setting up a ring and pinion.

pub mod gear;
pub mod numerics;
pub mod quantity;
pub mod text;
