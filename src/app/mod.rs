//! The window: Bevy draws the gears, egui the panels.
//!
//! One resource, the [`Session`], owns what is shown. Panels ask ([`Asked`]), the session carries out, the stage
//! mirrors it. The order within a frame is that of [`AppSystems`]; the panels are drawn at its end, so that what is
//! asked there is carried out in the next frame.
//!
//! * [`run`] opens the window, [`picture`] draws the same program onto an image without one.
//! * `preflight` looks for a display and a driver before Bevy starts, so that their lack is a sentence and no panic.
//! * `session` needs no drawing at all and is tested without; [`idle`] says when a new frame is drawn.
//! * [`frames`] is the only border between the axle's frame and Bevy's.

#![expect(
    elided_lifetimes_in_paths,
    reason = "the parameters of systems are written as Bevy's own are"
)]

mod bench;
mod choices;
mod commands;
pub mod drop;
mod error;
pub mod frames;
pub mod idle;
mod keys;
mod order;
mod picture;
mod png_file;
pub mod preflight;
mod program;
mod raster;
mod room;
mod screen;
mod session;
pub mod stage;
mod window;
mod work;

pub use commands::Asked;
pub use error::AppError;
pub use order::{AppSystems, order_plugin};
pub use picture::{ExerciseRequest, Picture, PictureReport, PictureRequest, TurningFrames, draw, picture};
pub use program::session_plugin;
pub use screen::StageArea;
pub use session::{Refusal, Session};
pub use window::{WindowRequest, run};
