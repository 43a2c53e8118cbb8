//! The debrief of a finished attempt as one page of HTML.
//!
//! ```text
//! page ─┬─ points     the score, and where points were lost
//!       ├─ truth ─┬─ judged    what was judged, with its bands
//!       │         ├─ believed  notes and readings beside the truth
//!       │         ├─ made      packs, marks, sizes, faults
//!       │         └─ plates    painted plates
//!       ├─ prints     the print of every build, in a row
//!       ├─ ways       the reference technician's builds and one's own
//!       ├─ what_if    each build as if it had been handed over
//!       └─ done       everything that was done
//! ```
//! All of them write with [`html`](super::html), `cell` and `picture`, which know none of them. Sentences about values of the core are
//! `words`; headings and what tells how to read a table are messages `pages-…`. Markup stands here and in `html` alone.

mod believed;
mod cell;
mod done;
mod judged;
mod made;
mod page;
mod picture;
mod plates;
mod points;
mod prints;
mod truth;
mod ways;
mod what_if;

pub(crate) use page::page;
