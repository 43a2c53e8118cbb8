//! The reference technician: does an exercise with what a trainee may know, by the decision rules of the trade.
//!
//! It plays through `Hands`, which give answers and never the truth, and knows the card, the drawing and the chart of
//! the set ([`Chart`]). What it takes is par. Two weak policies show that the score tells good work from bad:
//! [`Policy::Reversed`] does everything alike but turns the depth rule round, [`Policy::Random`] does anything.
//!
//! Order of work: clean, compare, seat; pinion preload; side preload; lash into its window; then the print, and no verdict
//! on a print taken otherwise. Depth by the heights of both prints first, their lengths second, with the slopes of the
//! set's own chart; a step below what can be told apart is not made.
//!
//! - `play`: a whole attempt by a [`Policy`]. `person`: who works, and what is known meanwhile. `work`: the order of work.
//! - `pinion`: shims, rings, spacer, nut, torque, depth by gauge. `sides`: ring gear, carrier, lash, side preload.
//! - `print`: paste and what follows from it. `small`: exercises without an axle to hand over. `random`: anything.

mod chart;
mod drawer;
mod hands;
mod packs;
mod person;
mod pinion;
mod play;
mod policy;
mod print;
mod random;
mod sides;
mod small;
mod steps;
mod work;

pub use chart::{Chart, FlankChart};
pub use play::play;
pub use policy::Policy;
pub(super) use print::{Middles, asks, middles};
pub(super) use steps::{LARGEST_STEP_MM, LEAST_STEP_MM};
