//! An attempt in words for people.

use crate::bench::{Answer, ShimPlace, StemChoice};
use crate::document::attempt::{AttemptDocument, LossDocument, PrintDocument, TruthDocument};
use crate::exercise::{ApprovalPrint, Attempt, DepthFrom, Weights, Window};
use crate::quantity::{Units, length, number, nut_torque, signed, torque};
use crate::words;

/// The card: what is told, what is wanted, what lies on the bench.
pub fn card_text(attempt: &Attempt) -> String {
    let seen = attempt.seen();
    let card = &seen.card;
    let mut lines = vec![
        format!("{} (step {}, layout {})", card.title, card.step, card.layout.name()),
        String::new(),
    ];
    for paragraph in &card.told {
        lines.push(paragraph.clone());
        lines.push(String::new());
    }
    if !card.cautions.is_empty() {
        lines.push("Mind".to_owned());
        lines.extend(card.cautions.iter().map(|caution| format!("  {caution}")));
        lines.push(String::new());
    }
    lines.push("Wanted".to_owned());
    let wanted = &card.targets;
    let range = |window: Window, of: fn(f64, Units) -> String| {
        format!(
            "{} to {}",
            of(window.low, Units::Metric),
            of(window.high, Units::Metric)
        )
    };
    for (what, words) in [
        (
            "Pinion nut",
            format!(
                "{}, at most {}",
                nut_torque(wanted.nut_torque_nm, Units::Metric),
                nut_torque(wanted.most_nut_torque_nm, Units::Metric)
            ),
        ),
        ("Rotating torque, pinion", range(wanted.pinion_torque_nm, torque)),
        ("Side bearings add", range(wanted.side_torque_nm, torque)),
        (
            "Lash, tightest",
            format!("{}, {}", range(wanted.lash_mm, length), stem_words(wanted.stem)),
        ),
        (
            "Lash, spread",
            format!("at most {}", length(wanted.lash_spread_mm, Units::Metric)),
        ),
        (
            "Face runout",
            format!("at most {}", length(wanted.face_runout_mm, Units::Metric)),
        ),
        (
            "Depth",
            format!(
                "within {} of {}",
                length(wanted.depth_mm[0], Units::Metric),
                match card.depth_from {
                    DepthFrom::Best => "the best that this axle can be set to",
                    DepthFrom::Found => "where it ran before",
                }
            ),
        ),
    ] {
        lines.push(format!("  {what:<24}{words}"));
    }
    let counts: Vec<String> = card.counts.iter().map(|c| words::score::counted(*c)).collect();
    lines.push(format!("What wins points: {}", counts.join(", ")));
    lines.push(String::new());
    lines.extend(approval_lines(attempt.exercise().approval_prints()));
    lines.push(format!("Instruments: {}", seen.tools.join(", ")));
    let mut kit: Vec<String> = Vec::new();
    for piece in &seen.kit {
        let place = place_words(piece.place);
        let fitted = if piece.fitted { " (fitted)" } else { "" };
        kit.push(format!(
            "  {:>3}  {:<12}{}{fitted}",
            piece.number,
            place,
            length(piece.labelled_mm, Units::Metric)
        ));
    }
    if !kit.is_empty() {
        lines.push("Shim kit, by label:".to_owned());
        lines.extend(kit);
    }
    lines.push(String::new());
    lines.push("Write one operation a line, as in {\"do\":\"turn\",\"what\":\"pinion\",\"turns\":10};".to_owned());
    lines.push("`lashwright operations` lists them all. {\"do\":\"finish\"} hands the axle over.".to_owned());
    lines.push(
        "Simulated values are never a specification for a real axle. The maker's service information, local codes and \
         qualified practice come first."
            .to_owned(),
    );
    lines.join("\n")
}

/// What a maker's sheet tells of the gears: without it nobody can say how high a print should lie.
fn approval_lines(approvals: &[ApprovalPrint]) -> Vec<String> {
    let mut lines = Vec::new();
    for approval in approvals {
        let whose = if approvals.len() > 1 {
            format!(" of {}", approval.gears)
        } else {
            String::new()
        };
        lines.push(format!("Approval print{whose}"));
        for (name, flank) in ["Drive", "Coast"].into_iter().zip(&approval.flanks) {
            let words = flank.map_or_else(
                || "nothing is marked".to_owned(),
                |flank| {
                    format!(
                        "middle {} long, {} high, {} % of the flank, {}",
                        signed(flank.pattern.centroid[0], 2),
                        signed(flank.pattern.centroid[1], 2),
                        number(100.0 * flank.pattern.area_fraction, 0),
                        words::approval::lean(flank.leans())
                    )
                },
            );
            lines.push(format!("  {name:<24}{words}"));
        }
    }
    if !lines.is_empty() {
        lines.push("  Length from toe \u{2212}1 to heel +1, height from root \u{2212}1 to top +1.".to_owned());
        lines.push(String::new());
    }
    lines
}

/// An answer; `hints` are those of the card.
pub(super) fn answer_text(answer: &Answer, hints: &[String]) -> String {
    if let Some(reason) = &answer.refused {
        return format!("{}. Not done: {}", answer.operation, words::answer::refusal(reason));
    }
    let mut first = format!("{}. Done", answer.operation);
    if answer.minutes > 0.0 {
        first.push_str(&format_args_text(answer.minutes, "min"));
    }
    if answer.money > 0.0 {
        first.push_str(&format_args_text(answer.money, "money"));
    }
    let mut lines = vec![first];
    for caution in &answer.cautions {
        lines.push(format!("   CAUTION: {}", words::answer::caution(*caution)));
    }
    for reading in &answer.readings {
        let value = reading.value.map_or_else(
            || "nothing".to_owned(),
            |v| format!("{} {}", number(v, 3), reading.unit.symbol()),
        );
        lines.push(format!(
            "   record {}: {} {}",
            reading.record,
            words::answer::reading_part(reading.quantity),
            value.trim_end()
        ));
    }
    let noticed = |noticed| format!("   {}", words::answer::notice(noticed, hints));
    lines.extend(answer.noticed.iter().map(noticed));
    if !answer.spoiled.is_empty() {
        let parts: Vec<String> = answer.spoiled.iter().map(|p| words::bench::part(*p)).collect();
        lines.push(format!("   Spoiled: {}", parts.join(", ")));
    }
    if !answer.stale.is_empty() {
        let records: Vec<String> = answer.stale.iter().map(u32::to_string).collect();
        lines.push(format!("   No longer true: record {}", records.join(", ")));
    }
    lines.join("\n")
}

fn stem_words(stem: StemChoice) -> &'static str {
    match stem {
        StemChoice::SquareToTrace => "stem square to the tooth's trace",
        StemChoice::AlongMotion => "stem along the tooth's motion",
        StemChoice::AlongNormal => "stem along the flank's normal",
    }
}

fn place_words(place: ShimPlace) -> &'static str {
    match place {
        ShimPlace::Depth => "depth",
        ShimPlace::Spacer => "spacer",
        ShimPlace::ToothSide => "tooth side",
        ShimPlace::BackSide => "back side",
    }
}

fn format_args_text(value: f64, unit: &str) -> String {
    format!(", {} {unit}", number(value, 1))
}

/// What stands at the end; `weights` are those of the exercise.
pub fn final_text(document: &AttemptDocument, weights: Weights) -> String {
    let mut lines = vec![format!(
        "{}: {}, {} min, {} money, {} tear-downs",
        document.scenario,
        if document.finished {
            "handed over"
        } else {
            "not finished"
        },
        number(document.used.minutes, 0),
        number(document.used.money, 0),
        document.used.teardowns
    )];
    if document.finished {
        lines.push(format!(
            "Score {} of 100: outcome {} of {}, process {} of {}, understanding {} of {}, economy {} of {}",
            number(document.score.total, 1),
            number(document.score.outcome, 1),
            number(weights.outcome, 0),
            number(document.score.process, 1),
            number(weights.process, 0),
            number(document.score.understanding, 1),
            number(weights.understanding, 0),
            number(document.score.economy, 1),
            number(weights.economy, 0)
        ));
        lines.push(format!(
            "Par: {} min, {} money, {} tear-downs",
            number(document.par.minutes, 0),
            number(document.par.money, 0),
            document.par.teardowns
        ));
        // What is lost in rounding is not worth a line; a cap is, even where it takes nothing more.
        let told = |loss: &&LossDocument| loss.points >= 0.05 || loss.part == "cap";
        lines.extend(document.losses.iter().filter(told).map(loss_line));
    }
    if let Some(truth) = &document.truth {
        lines.push("What is true of the axle".to_owned());
        lines.extend(truth_lines(truth));
    }
    lines.push(format!("State {}", document.state_hash));
    lines.join("\n")
}

fn loss_line(loss: &LossDocument) -> String {
    let operation = loss.operation.map_or_else(String::new, |o| format!(", operation {o}"));
    format!(
        "  {:>5} {}{operation}: {}",
        number(-loss.points, 1),
        loss.part,
        loss.why
    )
}

fn truth_lines(truth: &TruthDocument) -> Vec<String> {
    let or_none = |value: Option<String>| value.unwrap_or_else(|| "not together".to_owned());
    let mm = |value: Option<f64>| or_none(value.map(|v| format!("{} mm", signed(v, 3))));
    let nm = |value: Option<f64>| or_none(value.map(|v| torque(v, Units::Metric)));
    let kn = |value: Option<f64>| or_none(value.map(|v| format!("{} kN", number(1e-3 * v, 2))));
    let print = |print: &PrintDocument| {
        or_none(print.centroid.map(|[x, y]| {
            let edge = if print.edge_contact == Some(true) {
                ", an edge touches"
            } else {
                ""
            };
            format!(
                "{} % at length {}, height {}{edge}",
                number(100.0 * print.area_fraction.unwrap_or(0.0), 0),
                signed(x, 2),
                signed(y, 2)
            )
        }))
    };
    let lash = truth
        .lash_tightest_mm
        .zip(truth.lash_loosest_mm)
        .map(|(low, high)| format!("{} to {} mm around the ring gear", number(low, 3), number(high, 3)));
    [
        ("Pinion, out +", mm(truth.pinion_axial_mm)),
        ("Ring gear, out +", mm(truth.wheel_axial_mm)),
        ("Offset, more +", mm(truth.offset_mm)),
        ("Lash", or_none(lash)),
        ("Pinion turns with", nm(truth.pinion_torque_nm)),
        ("Side bearings add", nm(truth.side_torque_nm)),
        ("Pinion preload", kn(truth.pinion_preload_n)),
        ("Side preload", kn(truth.side_preload_n)),
        ("Drive print", print(&truth.drive)),
        ("Coast print", print(&truth.coast)),
    ]
    .into_iter()
    .map(|(name, words)| format!("  {name:<18}{words}"))
    .collect()
}
