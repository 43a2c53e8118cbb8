//! Values for the window, and what a person can ask for there. No window, no drawing: only what is to be seen.
//!
//! Panels and the stage read [`WindowView`] and write [`Command`]s; one place, the window's session, carries them
//! out. [`look`] holds the colours and text sizes, [`keys`] which single key asks for what, [`gear_list`] the gear sets
//! with their numbers as the trade reads them, [`StagePair`] what is drawn of a set and computed with it, [`turn`] how far
//! it has been turned, [`orbit`] the eye that looks at it.

pub mod axle_parts;
pub mod bench;
pub mod choices;
mod command;
pub mod gear_list;
pub mod keys;
pub mod look;
pub mod orbit;
mod pair;
mod place;
mod saved;
pub mod turn;
mod window;

pub use axle_parts::AxleParts;
pub use bench::{AxlePart, BenchView, DebriefView, StartView};
pub use choices::Choices;
pub use command::Command;
pub use gear_list::{GearEntry, GearNumbers, Origin};
pub use keys::{Action, KeyName, KeyTaken, Keys};
pub use look::{Rgb, TextSize, Theme};
pub use orbit::{Orbit, Projection, Viewpoint};
pub use pair::{Done, Job, Play, Print, Scene, Setting, SettingContact, StagePair};
pub use place::Place;
pub use saved::Saved;
pub use turn::Turn;
pub use window::{DeskView, FILM_UM, RoomView, StageView, WindowView, safety_note};
