//! The bench as the trainee sees it: card, parts, work, answers, readings, set-up sheet.
//!
//! Everything is made of what may be known ([`crate::exercise::TraineeView`]) and of which parts are where ([`Laid`]); none of these
//! types can hold a truth. [`Work`] is an operation with its fields as a form, `offer` the table of them.

mod approval;
mod board;
mod debrief;
mod hazards;
mod laid;
mod offer;
mod part;
mod readings;
mod slip;
mod start;
mod work;

pub use crate::words::Amount;
pub use crate::words::bench::{
    amount as amount_of, measurand as measurand_words, outcomes, predicted, stem, tool as tool_words,
};
pub use crate::words::operation::operation as operation_words;
pub use approval::{Approval, Approved};
pub use board::{BenchView, LogEntry, ToothShape, Wanted, WantedRange};
pub use debrief::{
    BuildLine, DebriefView, LossLine, MadeLine, Section, Standing, Verdict, standing_band, standing_digits,
};
pub use laid::{CapsOn, Laid};
pub use part::AxlePart;
pub use readings::{Face, Reading, SeenFlank, SeenPrint, Shown, along_words, up_words};
pub use slip::{SLIP_ROWS, SURE, finish, hint, note, predict};
pub use start::{ExerciseLine, KeptLine, StartView};
pub use work::{Entry, Field, FieldKind, Filled, Hazard, OptionName, Piece, Work};
