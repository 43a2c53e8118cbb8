//! Words of the debrief: what was judged, believed, hidden, changed, printed and done.
//!
//! - [`amount`]: values in both units, times and counts.
//! - [`line`]: what each operation was and what it showed, told in the past.
//! - [`quantity`]: quantities, packs, rings and sides in the middle of a sentence.
//! - [`standing`], [`belief`], [`hidden`], [`build`], [`print`], [`sheet`], [`state`]: the values of the same name in
//!   [`crate::exercise::debrief`], the axle's state, and what stands on labels, gears and plates.

pub mod amount;
pub mod belief;
pub mod build;
pub mod hidden;
pub mod line;
pub mod print;
pub mod quantity;
pub mod sheet;
mod shown;
pub mod standing;
pub mod state;
