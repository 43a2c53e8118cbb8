//! What the program does for people, one use case a file, shared by the command line and the window.
//!
//! A job takes plain requests, reads files through `store` and `catalogue`, calls the core, hands what came out to `report`,
//! and answers with finished text, with values for the window, or with a [`Failure`]: a finished text for people and whether
//! their input was at fault.
//!
//! - `check`, `gears`, `mesh`, `preload`, `attempt`, `operations`, `schema`: the commands. `debrief`: the page.
//! - `gear_sets`, `supports`, `scenarios`: finding and reading what a command names. `text_file`: lines given to one.
//! - `tooth_room`, `kept`, `picture_file`: for the window.

pub mod attempt;
pub mod check;
pub mod debrief;
mod failure;
pub mod gear_sets;
pub mod gears;
mod json;
pub mod kept;
pub mod mesh;
pub mod operations;
pub mod picture_file;
pub mod preload;
pub mod saved_files;
pub mod scenarios;
pub mod schema;
mod store_error;
pub mod supports;
pub mod text_file;
pub mod tooth_room;

pub use crate::report::problem::problem_text;
pub use failure::{AtFault, Failure};
pub use store_error::store_error;
