//! Which single key asks for what: [`Keys`] gives each [`Action`] a [`KeyName`] or none. A trainee can give actions other
//! keys or turn keys off, so that a letter spoken or struck by mistake does nothing that was not wanted.
//!
//! Enter, Tab, Escape, F1 and the arrows are no part of it: they mean the same in every program and are no letters.
//!
//! A key that another action has at the same place is refused, and the sentence names the other. It is not taken away
//! from it: nobody who gives one action a key expects that another one has silently lost its own.

mod action;
mod assigned;
mod file;
mod name;

pub use action::Action;
pub use assigned::{KeyTaken, Keys};
pub use file::KeysError;
pub use name::KeyName;
