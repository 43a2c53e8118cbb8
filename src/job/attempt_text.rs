//! An attempt in words for people.

use crate::bench::{Answer, ShimPlace, StemChoice};
use crate::document::attempt::{AttemptDocument, LossDocument, PrintDocument, TruthDocument};
use crate::exercise::{ApprovalPrint, Attempt, DepthFrom, ScorePart, Weights, Window};
use crate::quantity::{Units, fine_length, length, number, signed, torque};
use crate::words::debrief::amount::{both, both_nut_torque, both_torque};
use crate::words::{self, say};

use super::columns::{in_columns, with_unit};

/// The card: the job, the targets, what lies on the bench.
pub fn card_text(attempt: &Attempt) -> String {
    let seen = attempt.seen();
    let card = &seen.card;
    let texts = words::card::texts(card);
    let mut lines = vec![
        say!(
            "card-title",
            title = texts.title,
            step = card.step,
            layout = card.layout.name()
        ),
        String::new(),
    ];
    for paragraph in texts.told {
        lines.push(paragraph.clone());
        lines.push(String::new());
    }
    if !texts.cautions.is_empty() {
        lines.push(say!("card-safety"));
        lines.extend(texts.cautions.iter().map(|caution| format!("  {caution}")));
        lines.push(String::new());
    }
    lines.push(say!("card-targets"));
    let wanted = &card.targets;
    let most = |length_mm: f64| say!("card-at-most", most = both(length_mm));
    let [depth_mm, _] = wanted.depth_mm;
    let targets = [
        (
            say!("card-nut"),
            say!(
                "card-nut-value",
                torque = both_nut_torque(wanted.nut_torque_nm),
                most = both_nut_torque(wanted.most_nut_torque_nm)
            ),
        ),
        (say!("card-pinion-torque"), range(wanted.pinion_torque_nm, torque)),
        (say!("card-side-torque"), range(wanted.side_torque_nm, torque)),
        (
            say!("card-backlash"),
            with_stem(range(wanted.lash_mm, fine_length), wanted.stem),
        ),
        (say!("card-variation"), most(wanted.lash_spread_mm)),
        (say!("card-face-runout"), most(wanted.face_runout_mm)),
        (
            say!("card-depth"),
            match card.depth_from {
                DepthFrom::Best => say!("card-depth-from-best", most = both(depth_mm)),
                DepthFrom::Found => say!("card-depth-from-found", most = both(depth_mm)),
            },
        ),
    ];
    lines.extend(in_columns(&targets));
    let counts: Vec<String> = card.counts.iter().map(|c| words::score::counted(*c)).collect();
    lines.push(say!("card-counts", counts = counts.join(", ")));
    lines.push(String::new());
    lines.extend(approval_lines(attempt.exercise().approval_prints()));
    lines.push(say!("card-instruments", names = seen.tools.join(", ")));
    let mut kit: Vec<String> = Vec::new();
    for piece in &seen.kit {
        let place = place_words(piece.place);
        let label = length(piece.labelled_mm, Units::Metric);
        let fitted = if piece.fitted {
            format!(" {}", say!("card-fitted"))
        } else {
            String::new()
        };
        kit.push(format!("  {:>3}  {place:<12}{label}{fitted}", piece.number));
    }
    if !kit.is_empty() {
        lines.push(say!("card-kit"));
        lines.extend(kit);
    }
    lines.push(String::new());
    lines.push(say!(
        "card-how",
        example = r#"{"do":"turn","what":"pinion","turns":10}"#,
        finish = r#"{"do":"finish"}"#
    ));
    lines.push(say!("caution-whole"));
    lines.join("\n")
}

/// From and to in both systems of units.
fn range(window: Window, of: fn(f64, Units) -> String) -> String {
    let [metric, inch] = [Units::Metric, Units::Inch]
        .map(|units| say!("card-range", low = of(window.low, units), high = of(window.high, units)));
    say!("card-both", metric = metric, inch = inch)
}

/// What a maker's sheet tells of the gears: without it nobody can say how high a print should lie.
fn approval_lines(approvals: &[ApprovalPrint]) -> Vec<String> {
    let mut lines = Vec::new();
    for approval in approvals {
        lines.push(if approvals.len() > 1 {
            say!("card-own-pattern-of", gears = approval.gears.clone())
        } else {
            say!("card-own-pattern")
        });
        let flanks: Vec<(String, String)> = [say!("card-drive"), say!("card-coast")]
            .into_iter()
            .zip(&approval.flanks)
            .map(|(name, flank)| {
                let words = flank.map_or_else(
                    || say!("card-pattern-none"),
                    |flank| {
                        let [along, up] = flank.pattern.centroid;
                        say!(
                            "card-pattern",
                            along = signed(along, 2),
                            up = signed(up, 2),
                            area = number(100.0 * flank.pattern.area_fraction, 0),
                            lean = words::approval::lean(flank.leans())
                        )
                    },
                );
                (name, words)
            })
            .collect();
        lines.extend(in_columns(&flanks));
    }
    if !lines.is_empty() {
        lines.push(format!("  {}", say!("card-pattern-scale")));
        lines.push(String::new());
    }
    lines
}

/// An answer; `hints` are those of the card.
pub(super) fn answer_text(answer: &Answer, hints: &[String]) -> String {
    let done = answer.operation;
    if let Some(reason) = &answer.refused {
        return say!("card-not-done", number = done, why = words::answer::refusal(reason));
    }
    let (minutes, cost) = (number(answer.minutes, 1), number(answer.money, 1));
    let mut lines = vec![match (answer.minutes > 0.0, answer.money > 0.0) {
        (false, false) => say!("card-done", number = done),
        (true, false) => say!("card-done-minutes", number = done, minutes = minutes),
        (false, true) => say!("card-done-cost", number = done, cost = cost),
        (true, true) => say!("card-done-minutes-cost", number = done, minutes = minutes, cost = cost),
    }];
    let mut more: Vec<String> = Vec::new();
    for caution in &answer.cautions {
        more.push(say!("card-caution", what = words::answer::caution(*caution)));
    }
    for reading in &answer.readings {
        let what = words::answer::reading_part(reading.quantity);
        more.push(match reading.value {
            None => say!("card-record-nothing", record = reading.record, what = what),
            Some(value) => {
                let value = format!("{} {}", number(value, 3), reading.unit.symbol());
                say!(
                    "card-record",
                    record = reading.record,
                    what = what,
                    value = value.trim_end()
                )
            }
        });
    }
    more.extend(
        answer
            .noticed
            .iter()
            .map(|noticed| words::answer::notice(noticed, hints)),
    );
    if !answer.spoiled.is_empty() {
        let parts: Vec<String> = answer.spoiled.iter().map(|p| words::bench::part(*p)).collect();
        more.push(say!("card-spoiled", parts = parts.join(", ")));
    }
    if !answer.stale.is_empty() {
        let records: Vec<String> = answer.stale.iter().map(u32::to_string).collect();
        more.push(say!("card-stale", records = records.join(", ")));
    }
    lines.extend(more.into_iter().map(|line| format!("   {line}")));
    lines.join("\n")
}

fn with_stem(range: String, stem: StemChoice) -> String {
    match stem {
        StemChoice::SquareToTrace => say!("card-backlash-square", range = range),
        StemChoice::AlongMotion => say!("card-backlash-along-motion", range = range),
        StemChoice::AlongNormal => say!("card-backlash-along-normal", range = range),
    }
}

fn place_words(place: ShimPlace) -> String {
    match place {
        ShimPlace::Depth => say!("card-place-depth"),
        ShimPlace::Spacer => say!("card-place-spacer"),
        ShimPlace::ToothSide => say!("card-place-tooth-side"),
        ShimPlace::BackSide => say!("card-place-back-side"),
    }
}

/// What stands at the end; `weights` are those of the exercise.
pub fn final_text(document: &AttemptDocument, weights: Weights) -> String {
    let used = &document.used;
    let (exercise, minutes, cost) = (
        document.scenario.clone(),
        number(used.minutes, 0),
        number(used.money, 0),
    );
    let mut lines = vec![if document.finished {
        say!(
            "card-signed-off",
            exercise = exercise,
            minutes = minutes,
            cost = cost,
            teardowns = used.teardowns
        )
    } else {
        say!(
            "card-not-signed-off",
            exercise = exercise,
            minutes = minutes,
            cost = cost,
            teardowns = used.teardowns
        )
    }];
    if document.finished {
        let score = &document.score;
        lines.push(say!(
            "card-score",
            total = number(score.total, 1),
            outcome = number(score.outcome, 1),
            outcome_most = number(weights.outcome, 0),
            process = number(score.process, 1),
            process_most = number(weights.process, 0),
            understanding = number(score.understanding, 1),
            understanding_most = number(weights.understanding, 0),
            economy = number(score.economy, 1),
            economy_most = number(weights.economy, 0)
        ));
        lines.push(say!(
            "card-par",
            minutes = number(document.par.minutes, 0),
            cost = number(document.par.money, 0),
            teardowns = document.par.teardowns
        ));
        // What is lost in rounding is not worth a line; a cap is, even where it takes nothing more.
        let told = |loss: &&LossDocument| loss.points >= 0.05 || loss.part == ScorePart::Cap.name();
        lines.extend(document.losses.iter().filter(told).map(loss_line));
    }
    if let Some(truth) = &document.truth {
        lines.push(say!("card-truth"));
        lines.extend(in_columns(&truth_lines(truth)));
    }
    lines.push(say!("card-state", hash = document.state_hash.clone()));
    lines.join("\n")
}

fn loss_line(loss: &LossDocument) -> String {
    let points = format!("  {:>5}", number(-loss.points, 1));
    let parts = [
        ScorePart::Outcome,
        ScorePart::Process,
        ScorePart::Understanding,
        ScorePart::Economy,
        ScorePart::Cap,
    ];
    let part = parts
        .into_iter()
        .find(|part| part.name() == loss.part)
        .map_or_else(|| loss.part.clone(), words::score::part);
    match loss.operation {
        None => say!("card-loss", points = points, part = part, why = loss.why.clone()),
        Some(operation) => say!(
            "card-loss-at",
            points = points,
            part = part,
            operation = operation,
            why = loss.why.clone()
        ),
    }
}

/// Which way something lies off: below 0, at 0 as far as it is shown, above.
fn off(value: f64, below: fn(String) -> String, above: fn(String) -> String) -> String {
    let length = both(value.abs());
    if length == both(0.0) {
        say!("card-as-designed")
    } else if value < 0.0 {
        below(length)
    } else {
        above(length)
    }
}

fn truth_lines(truth: &TruthDocument) -> Vec<(String, String)> {
    let or_none = |value: Option<String>| value.unwrap_or_else(|| say!("card-not-assembled"));
    let nm = |value: Option<f64>| or_none(value.map(both_torque));
    let kn = |value: Option<f64>| or_none(value.map(|v| with_unit(&number(1e-3 * v, 2), "kN")));
    let print = |print: &PrintDocument| {
        or_none(print.centroid.map(|[x, y]| {
            let area = number(100.0 * print.area_fraction.unwrap_or(0.0), 0);
            let (along, up) = (signed(x, 2), signed(y, 2));
            if print.edge_contact == Some(true) {
                say!("card-truth-pattern-edge", area = area, along = along, up = up)
            } else {
                say!("card-truth-pattern", area = area, along = along, up = up)
            }
        }))
    };
    let pinion = |v| {
        off(
            v,
            |length| say!("card-toward-ring-gear", length = length),
            |length| say!("card-from-ring-gear", length = length),
        )
    };
    let ring_gear = |v| {
        off(
            v,
            |length| say!("card-toward-pinion", length = length),
            |length| say!("card-from-pinion", length = length),
        )
    };
    let offset = |v| {
        off(
            v,
            |length| say!("card-less-offset", length = length),
            |length| say!("card-more-offset", length = length),
        )
    };
    let lash = truth.lash_tightest_mm.zip(truth.lash_loosest_mm).map(|(low, high)| {
        say!(
            "card-truth-backlash-value",
            low = fine_length(low, Units::Metric),
            high = fine_length(high, Units::Metric)
        )
    });
    vec![
        (say!("card-truth-pinion"), or_none(truth.pinion_axial_mm.map(pinion))),
        (
            say!("card-truth-ring-gear"),
            or_none(truth.wheel_axial_mm.map(ring_gear)),
        ),
        (say!("card-truth-offset"), or_none(truth.offset_mm.map(offset))),
        (say!("card-truth-backlash"), or_none(lash)),
        (say!("card-truth-pinion-torque"), nm(truth.pinion_torque_nm)),
        (say!("card-side-torque"), nm(truth.side_torque_nm)),
        (say!("card-truth-pinion-preload"), kn(truth.pinion_preload_n)),
        (say!("card-truth-side-preload"), kn(truth.side_preload_n)),
        (say!("card-truth-drive"), print(&truth.drive)),
        (say!("card-truth-coast"), print(&truth.coast)),
    ]
}
