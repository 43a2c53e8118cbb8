//! An attempt in words for people: the card, each answer, the end; the list of exercises, and a journal done again.

mod answer;
mod card;
mod end;
mod list;
mod replay;
mod truth;

pub(crate) use answer::answer;
pub(crate) use card::card;
pub(crate) use end::end;
pub(crate) use list::list;
pub(crate) use replay::replay;
