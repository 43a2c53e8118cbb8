//! The bench: what is done to an axle, what comes of it, and what it takes. All of it without a screen.
//!
//! ```text
//! Operation (data) ── Bench::apply ──> Answer (what the trainee sees)
//!                        │
//!              Truth, Assembly ── axle::settle ──> Built
//! ```
//! - [`Operation`]: all that can be done, with ranges ([`limits`]) and a JSON Schema.
//! - [`Bench`]: the state of an attempt; the only place outside the exercise that holds the truth. An answer never does.
//! - `consequence`: one file a group of operations: what must be physically possible first, and what follows.
//! - [`instrument`]: what instruments show of a true value. [`Tool`]: one of them on this bench, by its name.
//! - [`Packs`], [`ShimPiece`]: the shim kit. [`Tariff`], [`Ledger`]: minutes, money, tear-downs, parts.
//! - [`Caution`]: hazards, tied to the state. [`Aspects`]: which values a change makes stale.
//!
//! Refusals are only for what cannot be done; what is unwise is done, with its consequence.

mod answer;
mod aspect;
mod caution;
mod consequence;
mod fields;
pub mod instrument;
mod kit;
mod ledger;
pub mod limits;
mod measurand;
mod measure;
mod operation;
mod part;
mod paste_left;
mod plate;
mod setting;
mod shown;
mod state;
mod state_hash;
mod tariff;
mod tools;

pub use answer::{Answer, Reading, Record};
pub use aspect::{Aspect, Aspects};
pub use caution::{Caution, Precaution};
pub use kit::{BURR_MM, KitMakeup, PackFault, Packs, ShimPiece};
pub use ledger::{Entry, Ledger};
pub use limits::OperationError;
pub use measurand::{Measurand, MeasurandKind};
pub use measure::TrueValue;
pub use operation::{
    Brushing, CapTorque, Cleaned, Level, Operation, Predicted, Ring, ShimPlace, Side, SpacerChoice, Toward, Turned,
};
pub use part::Part;
pub use paste_left::PasteLeft;
pub use plate::{Plate, PlateJudged};
pub use setting::{Setting, Start, StartError};
pub use state::{Bench, Judgement, Note, Paste, Prediction, Rolled};
pub use tariff::Tariff;
pub use tools::{Instrument, StemChoice, Tool};
