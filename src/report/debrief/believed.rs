//! What was written down and read, beside what is true.

use super::cell::{around, in_line, operation, value};
use crate::bench::Measurand;
use crate::exercise::debrief::{Belief, Debrief, Measure, Subject};
use crate::quantity::signed;
use crate::report::html::{Head, Page, escaped, row};
use crate::words::debrief::belief as words;
use crate::words::say;

/// Where the link to a reading comes to stand: a letter that no message holds.
const READING: &str = "\u{e001}";

pub(super) fn section(page: &mut Page, debrief: &Debrief) {
    if debrief.beliefs.is_empty() {
        return;
    }
    page.element("h3", &say!("pages-believed-heading"));
    page.paragraph(&say!("pages-believed-about"));
    let tag = format!(" <span class=\"tag\">{}</span>", escaped(&say!("pages-stale")));
    let none = |words: String| format!("<span class=\"none\">{}</span>", escaped(&words));
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
            let stale = |stale: bool| if stale { tag.as_str() } else { "" };
            let noted = belief.noted.as_ref().map_or_else(
                || none(say!("pages-not-written")),
                |n| {
                    let remark = if n.remark.is_empty() {
                        String::new()
                    } else {
                        let remark = say!("pages-remark", remark = n.remark.clone());
                        format!("<br><span class=\"small\">{}</span>", escaped(&remark))
                    };
                    let note = operation(n.operation);
                    let from = n.read.map_or_else(
                        || note.clone(),
                        |read| {
                            let of_note = |reading: &str| {
                                around(&note, |note| say!("pages-written-from", note = note, reading = reading))
                            };
                            // Two links in one sentence: the reading's is put in after the note's.
                            of_note(READING).replace(READING, &operation(read))
                        },
                    );
                    format!(
                        "{}{} <span class=\"small\">{from}</span>{remark}",
                        in_line(n.value, measure),
                        stale(n.stale),
                    )
                },
            );
            let read = belief.read.as_ref().map_or_else(
                || none(say!("pages-not-read")),
                |r| {
                    format!(
                        "{}{} <span class=\"small\">{}<br>{}</span>",
                        r.value
                            .map_or_else(|| escaped(&say!("pages-nothing")), |v| in_line(v, measure)),
                        stale(r.stale),
                        operation(r.operation),
                        escaped(&words::read_with(r))
                    )
                },
            );
            let truth = belief
                .truth
                .map_or_else(|| escaped(&say!("pages-not-assembled")), |v| value(v, measure));
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
            Head::Empty,
            Head::Numbers(say!("pages-column-true-at-end")),
            Head::Words(say!("pages-column-written-last")),
            Head::Numbers(say!("pages-column-note-off")),
            Head::Words(say!("pages-column-read-last")),
            Head::Numbers(say!("pages-column-reading-off")),
        ],
        &rows,
    );
    page.element("p class=\"small muted\"", &say!("pages-believed-foot"));
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
