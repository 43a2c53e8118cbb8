//! Everything that people read, made of values: sentences of answers, refusals, cautions, losses and debriefs.
//!
//! The core below speaks in values: enums and structs with numbers and identifiers. Nothing there holds a sentence, so a
//! rewording never touches a journal, a score or a rule that plays. Here each value gets its words, one file a subject,
//! matched exhaustively: a new operation, fault or notice does not compile before it has words.
//!
//! - [`mod@bench`]: parts, places, quantities, instruments. [`operation`]: what is done; [`listed`]: what can be. [`answer`]: what the bench answers.
//! - [`approval`]: the maker's approval prints. [`score`]: what counts, and why points were lost.
//! - [`card`]: the texts of an exercise in the language that is spoken. [`debrief`]: what is told after an attempt.
//! - [`problem`]: what is wrong in a file. [`error`]: what else can go wrong, and doubtful gears.
//! - [`tooth`]: flanks and their edges.
//! - [`simulated()`]: the note that goes with everything that is computed.
//! - [`Amount`]: numbers that people type and read, each in the unit of its kind.

mod amount;
pub mod answer;
pub mod approval;
pub mod bench;
pub mod card;
pub mod debrief;
pub mod error;
mod hazard;
pub mod listed;
pub mod message;
pub mod operation;
pub mod problem;
pub mod score;
mod simulated;
pub mod tooth;

pub use crate::__say as say;
pub use amount::Amount;
pub use hazard::hazard;
pub use message::{Language, speak, speaking};
pub use simulated::simulated;
