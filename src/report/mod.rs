//! Everything that is laid out for people: sheets in SVG, pages in HTML, texts in columns.
//!
//! A page is made of values and answers its whole text or its picture; it reads no file and writes none. Jobs call the core,
//! hand what came out to a page, and keep or print it. Sentences about values are [`words`](crate::words); what stands here is
//! where they go.
//!
//! - `mesh`, `preload`, `attempt`, `debrief`: pages of those commands, one page a file.
//! - `check`, `gears`, `operations`: lists. `problem`: what is wrong in a file, with its lines.
//! - `html`: a page of HTML with its escaping. `columns`: text below each other. `type_size`: type on sheets; `foot_note`:
//!   the note at their foot.

pub(crate) mod attempt;
pub(crate) mod check;
mod columns;
pub(crate) mod debrief;
mod foot_note;
pub(crate) mod gears;
mod html;
pub mod mesh;
pub(crate) mod operations;
pub mod preload;
pub mod problem;
mod type_size;
