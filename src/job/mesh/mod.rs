//! Meshing a gear set: at one placement, at every placement of a file, as a picture, as a wall chart.

pub mod chart;
mod one;
pub mod picture;
pub mod placements;
mod request;
mod rows;

pub use crate::contact::Route;
pub use crate::report::mesh::{ChartAxes, PlacementNumbers};
pub use one::{document, text};
pub use request::MeshRequest;
pub use rows::{Rows, at_placements};
