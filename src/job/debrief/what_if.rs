//! Each build as if it had been handed over.

use super::cell::operation;
use super::html::{Page, escaped, row};
use super::prints::has_prints;
use crate::axle::Moves;
use crate::exercise::Attempt;
use crate::exercise::debrief::{Build, Debrief};
use crate::quantity::number;
use crate::words::debrief::amount::{HAIR_MM, deeper};
use crate::words::debrief::build as words;
use crate::words::score;

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    let judged: Vec<&Build> = debrief.builds.iter().filter(|b| b.what_if.is_some()).collect();
    if judged.is_empty() || (judged.len() < 2 && !has_prints(debrief)) {
        return;
    }
    page.element("h2", "What if");
    page.paragraph(
        "Each build as if it had been handed over after its last operation, and the step of depth that the rule asks for \
         from its print: the heights of both prints over the slopes of the set\u{2019}s chart, drive counted double; at most \
         0.254\u{a0}mm (0.010\u{a0}in) at once, and nothing below 0.05\u{a0}mm (0.002\u{a0}in).",
    );
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
            "",
            "*Points then",
            "Most of what was lost",
            "The rule, by what you saw",
            "The rule, by the true print",
            "Best depth",
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
            format!(
                "{} {}: {}",
                number(-l.points, 1),
                score::part(l.part),
                escaped(&score::loss(&l.reason))
            )
        })
        .collect();
    let lost = if lost.is_empty() {
        "Nothing.".to_owned()
    } else {
        lost.join("<br>")
    };
    let step = |mm: Option<f64>| {
        mm.map_or_else(
            || "\u{2013}".to_owned(),
            |mm| {
                let shim = if mm.abs() < HAIR_MM || per_shim.abs() < 1.0e-9 {
                    String::new()
                } else {
                    let thicker = mm / per_shim > 0.0;
                    format!(": depth shim {}", if thicker { "thicker" } else { "thinner" })
                };
                escaped(&format!("{}{shim}", deeper(mm)))
            },
        )
    };
    let best = match build.truth_deeper_mm {
        Some(mm) if mm.abs() <= full_mm => format!("{}: inside the band, leave it", escaped(&deeper(mm))),
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
                        0 => words::before(),
                        last => format!("after {}", operation(last)),
                    }
                ),
            ),
            (
                "n",
                format!(
                    "<b>{}</b><br><span class=\"small\">outcome {}<br>process {}<br>understanding {}<br>economy {}</span>",
                    number(score.total, 1),
                    number(score.outcome, 1),
                    number(score.process, 1),
                    number(score.understanding, 1),
                    number(score.economy, 1)
                ),
            ),
            ("small", lost),
            ("small belief", step(last.and_then(|p| p.asks.seen_mm))),
            ("small", step(last.and_then(|p| p.asks.truth_mm))),
            ("small truth", best),
        ],
    ))
}
