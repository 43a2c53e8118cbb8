//! The card: the job, the targets, what lies on the bench.

use crate::bench::{ShimPlace, StemChoice};
use crate::exercise::{ApprovalPrint, Attempt, DepthFrom, Window};
use crate::quantity::{Units, fine_length, length, number, signed, torque};
use crate::report::columns::in_columns;
use crate::words::debrief::amount::{both, both_nut_torque};
use crate::words::{self, say};

/// The card: the job, the targets, what lies on the bench.
pub(crate) fn card(attempt: &Attempt) -> String {
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
    lines.push(words::simulated());
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
