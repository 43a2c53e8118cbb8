//! The score, what it took, and where points were lost.

use super::cell::{operation, points_of};
use super::picture::bar;
use crate::exercise::debrief::Debrief;
use crate::exercise::{Attempt, Loss, Par, Score};
use crate::quantity::number;
use crate::report::html::{Head, Page, escaped, row};
use crate::words::debrief::amount::hours;
use crate::words::say;
use crate::words::score as words;

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    let weights = attempt.exercise().scenario().weights;
    let score = &debrief.score;
    page.element("h2", &say!("pages-score-heading"));
    page.raw("<div class=\"head\">");
    page.raw(&format!(
        "<div><span class=\"big\">{}</span> {}</div>",
        number(score.total, 1),
        escaped(&say!("pages-of-hundred"))
    ));
    for (words, reached, full) in [
        (say!("pages-outcome"), score.outcome, weights.outcome),
        (say!("pages-process"), score.process, weights.process),
        (say!("pages-understanding"), score.understanding, weights.understanding),
        (say!("pages-economy"), score.economy, weights.economy),
    ] {
        let said = points_of(reached, full);
        let picture = page.picture(&bar(&words, reached, full));
        page.raw(&format!(
            "<div class=\"part\">{}<div>{}</div>{picture}</div>",
            escaped(&words),
            escaped(&said)
        ));
    }
    page.raw("</div>\n");
    used(page, &debrief.used, &debrief.par, score, &debrief.reference.score);
    page.element("h3", &say!("pages-losses-heading"));
    if score.losses.is_empty() {
        page.paragraph(&say!("pages-no-losses"));
    }
    let mut losses: Vec<&Loss> = score.losses.iter().collect();
    losses.sort_by(|a, b| b.points.total_cmp(&a.points));
    let rows: Vec<String> = losses
        .into_iter()
        .map(|loss| {
            row(
                "",
                &[
                    ("n", format!("<b>{}</b>", escaped(&lost(loss.points)))),
                    ("", escaped(&words::part(loss.part))),
                    ("n", loss.operation.map_or_else(String::new, operation)),
                    ("", escaped(&words::loss(&loss.reason))),
                ],
            )
        })
        .collect();
    let heads = [
        Head::Numbers(say!("pages-column-points")),
        Head::Words(say!("pages-column-part")),
        Head::Numbers(say!("pages-column-operation")),
        Head::Words(say!("pages-column-why")),
    ];
    page.table("", &heads, &rows);
}

/// Points as they are taken off.
fn lost(points: f64) -> String {
    if points > 0.0 && points < 0.05 {
        say!("pages-under-a-tenth")
    } else {
        number(-points, 1)
    }
}

fn used(page: &mut Page, used: &Par, par: &Par, score: &Score, reference: &Score) {
    let line = |words: &str, score: &Score, took: &Par| {
        row(
            "",
            &[
                ("", escaped(words)),
                ("n", number(score.total, 1)),
                ("n", hours(took.minutes)),
                ("n", number(took.money, 0)),
                ("n", took.teardowns.to_string()),
            ],
        )
    };
    page.table(
        "",
        &[
            Head::Empty,
            Head::Numbers(say!("pages-column-points")),
            Head::Numbers(say!("pages-column-work")),
            Head::Numbers(say!("pages-column-cost")),
            Head::Numbers(say!("pages-column-teardowns")),
        ],
        &[
            line(&say!("pages-you"), score, used),
            line(&say!("pages-reference-same-axle"), reference, par),
        ],
    );
}
