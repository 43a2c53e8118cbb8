//! Words of the debrief: what was judged, believed, hidden, changed, printed and done.
//!
//! - [`amount`]: values in both units, times and counts.
//! - [`shown`]: what readings showed, in short. What each operation was is told by [`crate::words::operation::did`].
//! - [`quantity`]: quantities, packs, rings and sides in the middle of a sentence.
//! - [`standing`], [`belief`], [`hidden`], [`build`], [`mod@print`], [`sheet`], [`state`]: the values of the same name in
//!   [`crate::exercise::debrief`], the axle's state, and what stands on labels, gears and plates.

pub mod amount;
pub mod belief;
pub mod build;
pub mod hidden;
pub mod print;
pub mod quantity;
pub mod sheet;
mod shown;
pub mod standing;
pub mod state;

pub use shown::shown;
pub(in crate::words) use shown::value_of;
