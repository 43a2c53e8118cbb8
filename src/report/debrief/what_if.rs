//! Each build as if it had been handed over.

use super::cell::{around, operation};
use super::prints::has_prints;
use crate::axle::Moves;
use crate::exercise::Attempt;
use crate::exercise::debrief::{Build, Debrief};
use crate::quantity::number;
use crate::report::html::{Head, Page, escaped, row};
use crate::words::debrief::amount::{HAIR_MM, deeper};
use crate::words::debrief::build as words;
use crate::words::{say, score};

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    let judged: Vec<&Build> = debrief.builds.iter().filter(|b| b.what_if.is_some()).collect();
    if judged.is_empty() || (judged.len() < 2 && !has_prints(debrief)) {
        return;
    }
    page.element("h2", &say!("pages-what-if-heading"));
    page.paragraph(&say!("pages-what-if-about"));
    let axle = &attempt.bench().setting().axle;
    let per_shim = -axle.chain().per_unit(axle.depth_shim_member(), Moves::PinionAxial);
    let [full_mm, _] = attempt.exercise().scenario().targets.depth_mm;
    let rows: Vec<String> = judged
        .into_iter()
        .filter_map(|b| what_if_row(b, per_shim, full_mm))
        .collect();
    page.table(
        "",
        &[
            Head::Empty,
            Head::Numbers(say!("pages-column-points-then")),
            Head::Words(say!("pages-column-most-lost")),
            Head::Words(say!("pages-column-rule-seen")),
            Head::Words(say!("pages-column-rule-true")),
            Head::Words(say!("pages-column-best-depth")),
        ],
        &rows,
    );
}

fn what_if_row(build: &Build, per_shim: f64, full_mm: f64) -> Option<String> {
    let what_if = build.what_if.as_ref()?;
    let score = &what_if.score;
    let mut losses: Vec<_> = score.losses.iter().filter(|l| l.points >= 0.05).collect();
    losses.sort_by(|a, b| b.points.total_cmp(&a.points));
    let lost: Vec<String> = losses
        .iter()
        .take(2)
        .map(|l| {
            escaped(&say!(
                "pages-loss",
                points = number(-l.points, 1),
                part = score::part(l.part),
                why = score::loss(&l.reason)
            ))
        })
        .collect();
    let lost = if lost.is_empty() {
        escaped(&say!("pages-nothing-lost"))
    } else {
        lost.join("<br>")
    };
    let step = |mm: Option<f64>| {
        mm.map_or_else(
            || "\u{2013}".to_owned(),
            |mm| {
                escaped(&if mm.abs() < HAIR_MM || per_shim.abs() < 1.0e-9 {
                    deeper(mm)
                } else if mm / per_shim > 0.0 {
                    say!("pages-step-thicker", step = deeper(mm))
                } else {
                    say!("pages-step-thinner", step = deeper(mm))
                })
            },
        )
    };
    let parts = [
        say!("pages-part-outcome", points = number(score.outcome, 1)),
        say!("pages-part-process", points = number(score.process, 1)),
        say!("pages-part-understanding", points = number(score.understanding, 1)),
        say!("pages-part-economy", points = number(score.economy, 1)),
    ];
    let best = match build.truth_deeper_mm {
        Some(mm) if mm.abs() <= full_mm => escaped(&say!("pages-inside-band", step = deeper(mm))),
        other => step(other),
    };
    let last = build.prints.last();
    Some(row(
        "",
        &[
            (
                "",
                format!(
                    "<b>{}</b><br><span class=\"small muted\">{}</span>",
                    escaped(&words::name(build)),
                    match build.operations[1] {
                        0 => escaped(&words::before()),
                        last => around(&operation(last), |link| say!("pages-after", link = link)),
                    }
                ),
            ),
            (
                "n",
                format!(
                    "<b>{}</b><br><span class=\"small\">{}</span>",
                    number(score.total, 1),
                    parts.map(|part| escaped(&part)).join("<br>")
                ),
            ),
            ("small", lost),
            ("small belief", step(last.and_then(|p| p.asks.seen_mm))),
            ("small", step(last.and_then(|p| p.asks.truth_mm))),
            ("small truth", best),
        ],
    ))
}
