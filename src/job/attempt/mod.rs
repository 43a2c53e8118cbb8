//! An attempt without a screen: begun, gone on with, done again from its journal.

mod axle;
mod journal;
mod line;
pub mod list;
mod open;
mod played;
pub mod replay;
mod resume;

pub use journal::Journal;
pub use line::{LONGEST_LINE, operation_of};
pub use open::OpenAttempt;
pub use played::played;
pub use replay::{replay, replay_debrief};

pub(super) use axle::journal_failure;
