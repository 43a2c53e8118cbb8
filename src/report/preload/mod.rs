//! Pages about a pinion support with its nut tightened.
//!
//! - `text`: one case. `table`, `csv`: many, over spacer length or nut torque. `chart`: the chart beside the bench.
//! - [`Preload`], [`TorqueWindow`]: the values that they are made of. `conditions` are told in the same words by both texts.

mod case;
mod chart;
mod conditions;
mod csv;
mod table;
mod text;
mod window;

pub use case::{Conditions, NEW_FRICTION_FACTOR, Over, Preload, RUN_IN_FRICTION_FACTOR, Step};
pub use window::{TorqueWindow, WindowVerdict};

pub(crate) use chart::picture;
pub(crate) use csv::csv;
pub(crate) use table::table;
pub(crate) use text::text;
