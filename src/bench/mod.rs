//! The bench: what is done to an axle, what comes of it, and what it takes. All of it without a screen.
//!
//! ```text
//! Operation (data) ── Bench::apply ──> Answer (what the trainee sees)
//!                        │
//!              Truth, Assembly ── axle::settle ──> Built
//! ```
//! - [`Operation`]: all that can be done, with ranges ([`limits`]) and a JSON Schema.
//! - [`Bench`]: the state of an attempt; the only place outside the exercise that holds the truth. An answer never does. It
//!   is made of parts that own their facts: pinion group, carrier group, sheet, shop. What is fitted
//!   ([`crate::axle::Assembly`]) is made of them, settled, and never written to.
//! - [`Answer`], [`Reading`], [`Notice`], [`Refusal`], [`Note`]: values with numbers and identifiers, never a sentence; their
//!   words are made above the core.
//! - `consequence`: one file a group of operations: what must be physically possible first, and what follows.
//! - [`instrument`]: what instruments show of a true value. [`Tool`]: one of them on this bench, by its name.
//! - [`Packs`], [`ShimPiece`]: the shim kit. [`Tariff`], [`Ledger`]: minutes, money, tear-downs, parts.
//! - [`Caution`]: hazards, tied to the state. [`Change`]: which values an operation makes stale.
//!
//! Refusals are only for what cannot be done; what is unwise is done, with its consequence.

mod answer;
mod aspect;
mod carrier_group;
mod caution;
mod choices;
mod consequence;
mod fields;
mod hazard;
pub mod instrument;
mod instrument_kind;
mod kind;
mod kit;
mod ledger;
pub mod limits;
mod measurand;
mod measure;
mod notice;
mod operation;
mod part;
mod paste_left;
mod pinion_group;
mod plate;
mod possible;
mod reading;
mod record;
mod refusal;
mod setting;
mod sheet;
mod shop;
mod shown;
mod state;
mod state_hash;
mod tariff;
mod tools;

pub use answer::Answer;
pub use aspect::{Aspect, Aspects, Change};
pub use carrier_group::{Paste, Rolled};
pub use caution::{Caution, Precaution};
pub use choices::{
    Brushing, CapTorque, CarrierSide, Cleaned, Level, Predicted, Ring, ShimPlace, SpacerChoice, Toward, Turned,
};
pub use fields::{UnknownField, WrongFields};
pub use hazard::Hazard;
pub use instrument_kind::InstrumentKind;
pub use kind::{OperationKind, WorkGroup};
pub use kit::{BURR_MM, KitMakeup, PackFault, Packs, ShimPiece};
pub use ledger::{Entry, Ledger};
pub use limits::OperationError;
pub use measurand::{Measurand, MeasurandKind};
pub use measure::TrueValue;
pub use notice::Notice;
pub use operation::Operation;
pub use part::Part;
pub use paste_left::PasteLeft;
pub use plate::{Plate, PlateJudged};
pub use reading::{NoSuchPart, PatternPart, Reading, ReadingPart, Unit};
pub use record::Record;
pub use refusal::{Item, Refusal};
pub use setting::{BenchSetUp, StartError, StartingState};
pub use sheet::{Judgement, Note, Prediction};
pub use state::Bench;
pub use tariff::Tariff;
pub use tools::{Instrument, StemChoice, Tool};
