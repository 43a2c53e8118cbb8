//! What was written down and read, beside what is true.

use super::cell::{in_line, operation, value};
use super::html::{Page, escaped, row};
use crate::bench::Measurand;
use crate::exercise::debrief::{Belief, Debrief, Measure, Subject};
use crate::quantity::signed;
use crate::words::debrief::belief as words;

pub(super) fn section(page: &mut Page, debrief: &Debrief) {
    if debrief.beliefs.is_empty() {
        return;
    }
    page.element("h3", "What you wrote down and read");
    page.paragraph(
        "A value is stale when something that it depends on was changed after it. The error of a reading is that of \
         instrument and hand: it is told against what was true in the moment of reading.",
    );
    let rows: Vec<String> = told(&debrief.beliefs)
        .into_iter()
        .map(|belief| {
            let measure = belief.measure();
            let off = |v: Option<f64>| {
                v.map_or_else(
                    || "\u{2013}".to_owned(),
                    |v| match measure {
                        Measure::Torque => signed(v, 2),
                        Measure::NutTorque => signed(v, 0),
                        Measure::Length | Measure::Deviation | Measure::Tooth => signed(v, 3),
                    },
                )
            };
            let stale = |stale: bool| if stale { " <span class=\"tag\">stale</span>" } else { "" };
            let noted = belief.noted.as_ref().map_or_else(
                || "<span class=\"none\">not written down</span>".to_owned(),
                |n| {
                    let remark = if n.remark.is_empty() {
                        String::new()
                    } else {
                        format!(
                            "<br><span class=\"small\">\u{201c}{}\u{201d}</span>",
                            escaped(&n.remark)
                        )
                    };
                    let from = n
                        .read
                        .map_or_else(String::new, |read| format!(", from {}", operation(read)));
                    format!(
                        "{}{} <span class=\"small\">{}{from}</span>{remark}",
                        in_line(n.value, measure),
                        stale(n.stale),
                        operation(n.operation)
                    )
                },
            );
            let read = belief.read.as_ref().map_or_else(
                || "<span class=\"none\">not read</span>".to_owned(),
                |r| {
                    format!(
                        "{}{} <span class=\"small\">{}<br>{}</span>",
                        r.value.map_or_else(|| "nothing".to_owned(), |v| in_line(v, measure)),
                        stale(r.stale),
                        operation(r.operation),
                        escaped(&words::read_with(r))
                    )
                },
            );
            let truth = belief
                .truth
                .map_or_else(|| "not together".to_owned(), |v| value(v, measure));
            row(
                "",
                &[
                    ("", escaped(&words::subject(belief.subject))),
                    ("n truth", truth),
                    ("belief", noted),
                    ("n", off(belief.note_off())),
                    ("", read),
                    ("n", off(belief.reading_off())),
                ],
            )
        })
        .collect();
    page.table(
        "",
        &[
            "",
            "*True at hand-over",
            "Written down last",
            "*Less truth",
            "Read last",
            "*Error when read",
        ],
        &rows,
    );
    page.raw("<p class=\"small muted\">Numbers (no.) are those of the operations at the end of the page. Lash is true as the card has the stem laid.</p>\n");
}

/// Lash was read at many teeth: those with a note, and the two ends of the others.
fn told(beliefs: &[Belief]) -> Vec<&Belief> {
    const MOST_TEETH: usize = 8;
    let lash = |b: &&Belief| matches!(b.subject, Subject::Of(Measurand::Lash { .. }));
    let teeth = beliefs.iter().filter(lash).count();
    let fresh = |b: &&Belief| b.noted.is_some() || b.read.as_ref().is_some_and(|r| !r.stale);
    beliefs
        .iter()
        .filter(|b| !lash(b) || teeth <= MOST_TEETH || fresh(b))
        .collect()
}
