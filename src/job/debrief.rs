//! The debrief of a finished attempt as one page of HTML.

use std::path::{Path, absolute};

use crate::exercise::debrief::{Debrief, Place};
use crate::exercise::{Attempt, Loss, Par, Score};
use crate::quantity::number;
use crate::store;
use crate::words;

use super::Failure;
use super::debrief_page::{Page, escaped, row};
use super::debrief_picture::bar;
use super::{debrief_truth, debrief_ways};

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
    let debrief = Debrief::of(attempt).map_err(|error| Failure::input(format!("error: no debrief: {error}.")))?;
    let mut page = Page::new();
    head(&mut page, attempt, &debrief, name, journal);
    points(&mut page, attempt, &debrief);
    debrief_truth::section(&mut page, attempt, &debrief);
    debrief_ways::prints(&mut page, attempt, &debrief);
    debrief_ways::reference(&mut page, attempt, &debrief);
    debrief_ways::what_if(&mut page, attempt, &debrief);
    debrief_ways::done(&mut page, &debrief);
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
            .find(|l| l.hand_over)
            .map_or(0, |l| l.operation),
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

fn points(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    let weights = attempt.exercise().scenario().weights;
    let score = &debrief.score;
    page.element("h2", "Score and reasons");
    page.raw("<div class=\"head\">");
    page.raw(&format!(
        "<div><span class=\"big\">{}</span> of 100</div>",
        number(score.total, 1)
    ));
    for (words, reached, full) in [
        ("Outcome", score.outcome, weights.outcome),
        ("Process", score.process, weights.process),
        ("Understanding", score.understanding, weights.understanding),
        ("Economy", score.economy, weights.economy),
    ] {
        let picture = page.picture(&bar(words, reached, full));
        page.raw(&format!(
            "<div class=\"part\">{words}<div>{} of {}</div>{picture}</div>",
            number(reached, 1),
            number(full, 0)
        ));
    }
    page.raw("</div>\n");
    used(page, &debrief.used, &debrief.par, score, &debrief.reference.score);
    page.element("h3", "Where points were lost");
    if score.losses.is_empty() {
        page.paragraph("Nowhere.");
    }
    let mut losses: Vec<&Loss> = score.losses.iter().collect();
    losses.sort_by(|a, b| b.points.total_cmp(&a.points));
    let rows: Vec<String> = losses
        .into_iter()
        .map(|loss| {
            row(
                "",
                &[
                    ("n", format!("<b>{}</b>", lost(loss.points))),
                    ("", escaped(words::score::part(loss.part))),
                    ("n", loss.operation.map_or_else(String::new, operation)),
                    ("", escaped(&words::score::loss(&loss.reason))),
                ],
            )
        })
        .collect();
    page.table("", &["*Points", "Part", "*Operation", "Why, and the better way"], &rows);
}

/// Points as they are taken off.
fn lost(points: f64) -> String {
    if points > 0.0 && points < 0.05 {
        "under 0.1".to_owned()
    } else {
        number(-points, 1)
    }
}

fn used(page: &mut Page, used: &Par, par: &Par, score: &Score, reference: &Score) {
    let line = |words: &str, score: &Score, took: &Par| {
        row(
            "",
            &[
                ("", words.to_owned()),
                ("n", number(score.total, 1)),
                ("n", hours(took.minutes)),
                ("n", number(took.money, 0)),
                ("n", took.teardowns.to_string()),
            ],
        )
    };
    page.table(
        "",
        &["", "*Points", "*Work", "*Money", "*Tear-downs"],
        &[
            line("You", score, used),
            line("Reference technician, same axle and instruments", reference, par),
        ],
    );
}

/// A link to an operation in the list at the end.
pub(super) fn operation(number: u32) -> String {
    format!("<a href=\"#op{number}\">no.\u{a0}{number}</a>")
}

/// Hours and minutes.
pub(super) fn hours(minutes: f64) -> String {
    let whole = minutes.max(0.0).round();
    let hours = (whole / 60.0).floor();
    format!(
        "{}\u{a0}h\u{a0}{:0>2}\u{a0}min",
        number(hours, 0),
        number(whole - 60.0 * hours, 0)
    )
}

pub(super) fn counted(count: u32, one: &str, many: &str) -> String {
    format!("{count}\u{a0}{}", if count == 1 { one } else { many })
}

/// A place in its bands in words: what the mark beside it says.
pub(super) fn place_words(place: Place) -> &'static str {
    match place {
        Place::Full => "inside",
        Place::Between => "near",
        Place::Off => "off",
    }
}
