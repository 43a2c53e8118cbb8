//! Untrusted text in, checked values or the whole list of its problems out.
//!
//! All our files are read in the same four steps, none of which can panic:
//! 1. [`decode`] checks the size and the characters of the bytes.
//! 2. [`Document::parse`] reads TOML and keeps the place of everything.
//! 3. A floor of the core walks the [`Table`]s and asks each key for its kind and range; what is wrong is noted in
//!    [`Problems`] and the walk goes on, so that one run shows every problem. Keys that nobody asked for are problems
//!    as well.
//! 4. [`Problems::verdict`] gives the checked value only where nothing was noted.
//!
//! A [`Problem`] knows its place in the text and what is wrong there, as a value: a [`ProblemKind`], which holds what the
//! format alone can have wrong (`F`) beside what any text can. Its words are those of `words::problem`; it is drawn, with
//! file, line and caret, by the job floor.

mod decode;
mod document;
mod language;
mod problem;
mod range;
mod suggest;
mod unit;

pub use decode::{Limits, decode};
pub use document::{Document, Table};
pub use language::{FIRST_LANGUAGE, LanguageTag, PSEUDO_LANGUAGE, TagFault};
pub use problem::{ItemKind, Problem, ProblemKind, Problems, ValueKind, Wanted};
pub use range::NumberRange;
pub(crate) use suggest::closest;
pub use unit::{FileUnit, MixUp};
