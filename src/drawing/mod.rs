//! Plain drawings in two dimensions: what charts, tooth views, dials and report plots are made of.
//!
//! A [`Picture`] is a list of [`Item`]s in points, x to the right, y down: paths with strokes and fills, texts, and
//! groups that are clipped to a rectangle. Colours are named by what they mean ([`Ink`]) and become values only when a
//! [`Theme`] is chosen. Colour is never the only carrier: lines differ by [`LineStyle`], areas by [`Hatch`], points by
//! [`Mark`], so that a grey print says the same.
//!
//! - [`Axis`] and [`Frame`]: scales with ticks, and the frame of a plot.
//! - [`Field`]: values on a grid, and the areas and lines of equal value in it.
//! - [`Print`] and [`ToothView`]: a flank unrolled in true proportion with what the paste shows on it.
//! - [`WallChart`]: many small prints over two placement axes.
//! - [`markup`]: text in files of marks. [`svg`]: a picture as an SVG file that needs nothing else.

mod axis;
mod field;
mod frame;
mod ink;
mod letter_width;
mod mark;
pub mod markup;
mod path;
mod picture;
pub mod svg;
mod tooth;
mod tooth_view;
mod wall_chart;

pub use axis::{Axis, Tick};
pub use field::{AreaSum, ClosedLine, Contour, Field, area_of};
pub use frame::{Frame, FrameSide};
pub use ink::{Ink, Theme};
pub use mark::Mark;
pub use path::{Path, Point, Rect, Segment};
pub use picture::{Anchor, Fill, Hatch, Item, LineStyle, Picture, Stroke, Text, Weight};
pub use tooth::{Edge, Flank, Nearest, Outline, Place, Print, ToothWords};
pub use tooth_view::{ToothView, flag};
pub use wall_chart::{Cell, CellFlank, ChartAxis, ChartLayout, ChartWords, WallChart};
