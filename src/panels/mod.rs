//! The panels of the window: egui only, without a window, so that they are tested without a screen.
//!
//! A panel is a plain function of what is to be seen; it draws and writes down what was asked for ([`page`]). Nothing here
//! changes any state but egui's own. [`window_panel`] lays all of them out; [`theme`] holds fonts, colours and sizes,
//! `dock` what lies at the edges and can be dragged, `widget` what can be pressed.
//!
//! Panels are drawn in the order in which they are read, from left to right and down: the keyboard goes the same way.

mod bench;
mod debrief;
mod dock;
mod gears;
mod head;
mod help;
mod key;
mod note;
mod notice;
mod page;
mod paint;
mod room;
mod scale;
mod setting;
mod stage;
mod start;
pub mod theme;
mod widget;
mod window;

pub use room::{RoomPictures, RoomSizes};
pub use theme::Ink;
pub use window::{Left, window_panel};
