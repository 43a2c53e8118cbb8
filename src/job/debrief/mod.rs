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
//! All of them write with `html`, `cell` and `picture`, which know none of them. Sentences about values of the core are
//! `words`; headings and what tells how to read a table are messages `pages-…`. Markup stands here alone.

mod believed;
mod cell;
mod done;
mod html;
mod judged;
mod made;
mod picture;
mod plates;
mod points;
mod prints;
mod truth;
mod ways;
mod what_if;

use std::path::{Path, absolute};

use self::html::{Page, escaped};
use super::Failure;
use crate::exercise::Attempt;
use crate::exercise::debrief::Debrief;
use crate::quantity::number;
use crate::store;
use crate::words::debrief::amount::hours;
use crate::words::{card, say};

/// Where a debrief is to be written. What else is read or written beside it must not be the same file.
///
/// # Errors
/// A file that is already needed for something else.
pub fn target_is_free(page: &Path, others: &[&Path]) -> Result<(), Failure> {
    let same = |other: &&&Path| absolute(page).is_ok_and(|page| absolute(other).is_ok_and(|other| page == other));
    match others.iter().find(same) {
        Some(other) => Err(Failure::bad_input(say!(
            "pages-over-other-file",
            path = other.display().to_string()
        ))),
        None => Ok(()),
    }
}

/// Writes the debrief of an attempt into a file, whole or not at all. `name` is that of the exercise on the command line;
/// `journal` says how the journal came out that it was recomputed from.
///
/// # Errors
/// An attempt that is not finished, and a file that cannot be written.
pub fn write(attempt: &Attempt, name: &str, journal: Option<&str>, file: &Path) -> Result<(), Failure> {
    Ok(store::write_whole(file, page(attempt, name, journal)?.as_bytes())?)
}

/// The page.
///
/// # Errors
/// An attempt that is not finished.
pub fn page(attempt: &Attempt, name: &str, journal: Option<&str>) -> Result<String, Failure> {
    let debrief = Debrief::of(attempt).map_err(|error| {
        Failure::bad_input(say!(
            "pages-no-debrief",
            why = crate::words::error::exercise(&error).line()
        ))
    })?;
    let mut page = Page::new();
    head(&mut page, attempt, &debrief, name, journal);
    points::section(&mut page, attempt, &debrief);
    truth::section(&mut page, attempt, &debrief);
    prints::section(&mut page, attempt, &debrief);
    ways::section(&mut page, attempt, &debrief);
    what_if::section(&mut page, attempt, &debrief);
    done::section(&mut page, attempt, &debrief);
    page.element(
        "p class=\"small muted\"",
        &say!("pages-foot", version = env!("CARGO_PKG_VERSION")),
    );
    let title = card::texts(attempt.exercise().scenario()).title;
    Ok(page.end(&say!("pages-title", title = title)))
}

fn head(page: &mut Page, attempt: &Attempt, debrief: &Debrief, name: &str, journal: Option<&str>) {
    let card = attempt.exercise().scenario();
    page.element("div class=\"muted small\"", &say!("pages-kicker", exercise = name));
    page.element("h1", card::texts(card).title);
    let end = debrief.lines.iter().rev().find(|l| l.hand_over());
    page.paragraph(&say!(
        "pages-summary",
        step = card.step,
        layout = card.layout.name(),
        seed = attempt.seed().to_string(),
        operation = end.map_or(0, |l| l.answer.operation),
        hours = hours(debrief.used.minutes),
        cost = number(debrief.used.money, 0),
        teardowns = debrief.used.teardowns
    ));
    if let Some(journal) = journal {
        page.paragraph(journal);
    }
    page.raw(&format!(
        "<div class=\"caution\"><b>\u{26a0}\u{fe0e} {}</b><span>{}</span></div>\n",
        escaped(&say!("caution-heading")),
        escaped(&say!("caution-whole"))
    ));
}
