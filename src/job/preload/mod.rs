//! What a pinion support does with its nut tightened: one case, or a table over spacer length or nut torque.

mod case;
mod request;
mod solve;
pub mod table;

pub use crate::report::preload::{Over, Preload, TorqueWindow};
pub use case::{document, picture, preload, text};
pub use request::{MOST_ROWS, Request, Sweep};
