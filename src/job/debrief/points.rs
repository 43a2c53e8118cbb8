//! The score, what it took, and where points were lost.

use super::cell::operation;
use super::html::{Page, escaped, row};
use super::picture::bar;
use crate::exercise::debrief::Debrief;
use crate::exercise::{Attempt, Loss, Par, Score};
use crate::quantity::number;
use crate::words::debrief::amount::hours;
use crate::words::score as words;

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
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
                    ("", escaped(&words::part(loss.part))),
                    ("n", loss.operation.map_or_else(String::new, operation)),
                    ("", escaped(&words::loss(&loss.reason))),
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
