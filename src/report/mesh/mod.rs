//! Pages about a meshed gear set.
//!
//! - `text`: what the teeth do, for a technician.
//! - `picture`, `chart`: the sheets that are kept as files; `sheet` is what they have in common.
//! - `room`: the pictures of the tooth room.
//! - `flank`, `plot`, `cell`: parts of them. `tooth`: the way from the core's flanks to those of drawings.
//! - [`Meshing`], [`PlacementNumbers`], [`ChartAxes`]: the values that they are made of.

mod axes;
mod axis;
mod cell;
mod chart;
mod flank;
mod meshing;
mod numbers;
mod picture;
mod plot;
mod room;
mod sheet;
mod text;
mod tooth;

pub use axes::{ChartAxes, Range};
pub use axis::Axis;
pub use meshing::Meshing;
pub use numbers::PlacementNumbers;
pub use room::{ChartPicture, Shown, flanks, motion, sheet};

pub(crate) use cell::cell_of;
pub(crate) use chart::{chart_words, picture as chart};
pub(crate) use picture::picture;
pub(crate) use room::chart as room_chart;
pub(crate) use text::text;
pub(crate) use tooth::{outline, print_of};
