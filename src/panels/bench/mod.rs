//! The bench: job card, stage, work, instrument, teeth, readings and slip on one sheet.
//!
//! With usual text all of it stands side by side; with large text or in a narrow window one column of tabs takes the card,
//! the teeth and the rest, and the other one keeps stage, caution, answer and what is in hand. Where there is no room for that
//! either, everything is a tab. `layout` says what stands where, `desk` what all of its panels are given.

mod answer;
mod card;
mod desk;
mod desk_state;
mod face;
mod form;
mod hand;
mod instrument;
mod keys;
mod layout;
mod lists;
mod slip;
mod teeth;
mod work;

pub(super) use self::card::time;
pub(super) use self::layout::bench_panel;
pub(super) use self::teeth::small as small_print;
