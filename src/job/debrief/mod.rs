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
//! `words`; headings and what tells how to read a table stand here.

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

use self::html::Page;
use super::Failure;
use crate::exercise::Attempt;
use crate::exercise::debrief::Debrief;
use crate::quantity::number;
use crate::store;
use crate::words::debrief::amount::{counted, hours};

/// Where a debrief is to be written. What else is read or written beside it must not be the same file.
///
/// # Errors
/// A file that is already needed for something else.
pub fn target_is_free(page: &Path, others: &[&Path]) -> Result<(), Failure> {
    let same = |other: &&&Path| absolute(page).is_ok_and(|page| absolute(other).is_ok_and(|other| page == other));
    match others.iter().find(same) {
        Some(other) => Err(Failure::input(format!(
            "error: the debrief would be written over `{}`. Give it another name, such as `debrief.html`.",
            other.display()
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
        Failure::input(format!(
            "error: no debrief: {}",
            crate::words::error::exercise(&error).line()
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
    page.raw("<p class=\"small muted\">Lashwright ");
    page.raw(env!("CARGO_PKG_VERSION"));
    page.raw(". Everything on this page was computed from the operations of the attempt.</p>\n");
    Ok(page.end(&format!("Debrief: {}", attempt.exercise().scenario().title)))
}

fn head(page: &mut Page, attempt: &Attempt, debrief: &Debrief, name: &str, journal: Option<&str>) {
    let card = attempt.exercise().scenario();
    page.element(
        "div class=\"muted small\"",
        &format!("Lashwright debrief \u{b7} {name}"),
    );
    page.element("h1", &card.title);
    page.paragraph(&format!(
        "Step {}, layout {}, seed {}. Handed over at operation {} after {} of work, {} for parts and {}.",
        card.step,
        card.layout.name(),
        attempt.seed(),
        debrief
            .lines
            .iter()
            .rev()
            .find(|l| l.hand_over())
            .map_or(0, |l| l.answer.operation),
        hours(debrief.used.minutes),
        number(debrief.used.money, 0),
        counted(debrief.used.teardowns, "tear-down", "tear-downs")
    ));
    if let Some(journal) = journal {
        page.paragraph(journal);
    }
    page.raw(
        "<div class=\"caution\"><b>\u{26a0}\u{fe0e} Caution</b><span>Simulated values are never a specification for a real \
         axle. The maker\u{2019}s service information, local codes and qualified practice come first.</span></div>\n",
    );
}
