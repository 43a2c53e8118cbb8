//! The page with its head and foot.

use crate::exercise::debrief::Debrief;
use crate::exercise::{Attempt, ExerciseError};
use crate::quantity::number;
use crate::report::html::{Page, escaped};
use crate::words::debrief::amount::hours;
use crate::words::{self, card, say};

use super::{done, points, prints, truth, ways, what_if};

/// The page. `name` is that of the exercise on the command line; `journal` says how the journal came out that it was
/// recomputed from.
///
/// # Errors
/// An attempt that is not finished.
pub(crate) fn page(attempt: &Attempt, name: &str, journal: Option<&str>) -> Result<String, ExerciseError> {
    let debrief = Debrief::of(attempt)?;
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
        escaped(&words::simulated())
    ));
}
