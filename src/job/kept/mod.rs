//! What a person keeps between runs: own attempts, choices of the window, keys.

mod attempts;
pub mod choices;
pub mod keys;

pub use attempts::{Kept, folder, list, new_journal, sentence};
