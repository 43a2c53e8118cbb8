//! Reading what an exercise is judged by, and the other optional tables of `lashwright-scenario/1`.

use super::problem::ScenarioProblem;
use super::wanted::{Asked, AskedFor, DepthFrom, PackWanted, PlatesWanted, ToolOff, Weights};
use crate::bench::{KitMakeup, OperationKind, Part, ShimPlace, Tariff, Tool};
use crate::exercise::counted::Counted;
use crate::text::{NumberRange, Problems, Table};

/// What the optional tables of a scenario say.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Options {
    pub(super) asked: Vec<Asked>,
    pub(super) pack: Option<PackWanted>,
    pub(super) plates: Option<PlatesWanted>,
    pub(super) kit: KitMakeup,
    pub(super) tools: Vec<ToolOff>,
    pub(super) weights: Weights,
    pub(super) minutes: Vec<(OperationKind, f64)>,
    pub(super) prices: Vec<(Part, f64)>,
}

impl Options {
    /// Whether something else than an axle is asked for.
    pub(super) fn asks_otherwise(&self) -> bool {
        !self.asked.is_empty() || self.pack.is_some() || self.plates.is_some()
    }
}

/// Reads them all.
pub(super) fn read_options(root: &mut Table<'_>, p: &mut Problems<ScenarioProblem>) -> Options {
    Options {
        asked: root
            .tables("asked", 6, p)
            .into_iter()
            .filter_map(|t| read_asked(t, p))
            .collect(),
        pack: root.optional_table("pack", p).and_then(|t| read_pack(t, p)),
        plates: root.optional_table("prints", p).and_then(|t| read_plates(t, p)),
        kit: root
            .optional_table("kit", p)
            .and_then(|t| read_kit(t, p))
            .unwrap_or_default(),
        tools: root
            .tables("tool", 12, p)
            .into_iter()
            .filter_map(|t| read_tool(t, p))
            .collect(),
        weights: root
            .optional_table("weights", p)
            .and_then(|t| read_weights(t, p))
            .unwrap_or_default(),
        minutes: root
            .optional_table("minutes", p)
            .map(|t| read_minutes(t, p))
            .unwrap_or_default(),
        prices: root
            .optional_table("prices", p)
            .map(|t| read_prices(t, p))
            .unwrap_or_default(),
    }
}

/// `counts` and `depth_from` of the table `[wanted]`.
pub(super) fn read_counts(
    table: &mut Table<'_>,
    p: &mut Problems<ScenarioProblem>,
) -> (Option<Vec<Counted>>, DepthFrom) {
    let place = table.place_of("counts");
    let counts = if table.has("counts") {
        table.texts("counts", &(1..=Counted::ALL.len()), &(1..=40), p)
    } else {
        None
    };
    let counts = counts.map(|names| {
        let mut counts = Vec::new();
        for name in names {
            match Counted::ALL.into_iter().find(|c| c.name() == name) {
                Some(counted) if !counts.contains(&counted) => counts.push(counted),
                Some(counted) => p.note_own(place.clone(), ScenarioProblem::CountsTwice { counted }),
                None => p.note_own(place.clone(), ScenarioProblem::CountsUnknown { name }),
            }
        }
        counts.sort_unstable();
        counts
    });
    let from = if table.has("depth_from") {
        table
            .choice(
                "depth_from",
                &[("best", DepthFrom::Best), ("found", DepthFrom::Found)],
                p,
            )
            .unwrap_or_default()
    } else {
        DepthFrom::default()
    };
    (counts, from)
}

fn read_asked(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Option<Asked> {
    let names: Vec<(&str, AskedFor)> = AskedFor::ALL.into_iter().map(|a| (a.name(), a)).collect();
    let what = table.choice("quantity", &names, p);
    let range = NumberRange::closed(0.0, 10.0);
    let full = table.number("full", range, p);
    let zero = table.number("zero", NumberRange::above(0.0, 10.0), p);
    let place = table.place();
    table.finish(p);
    let asked = Asked {
        what: what?,
        full: full?,
        zero: zero?,
    };
    if asked.full >= asked.zero {
        p.note_own(place, ScenarioProblem::FullNotBelowZero);
        return None;
    }
    Some(asked)
}

fn read_pack(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Option<PackWanted> {
    let places = [
        ("depth", ShimPlace::Depth),
        ("spacer", ShimPlace::Spacer),
        ("tooth_side", ShimPlace::ToothSide),
        ("back_side", ShimPlace::BackSide),
    ];
    let place = table.choice("place", &places, p);
    let size_mm = table.number("size_mm", NumberRange::closed(0.1, 10.0), p);
    let pieces = table.integer("pieces", 1..=12, p);
    table.finish(p);
    Some(PackWanted {
        place: place?,
        size_mm: size_mm?,
        pieces: pieces?,
    })
}

fn read_plates(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Option<PlatesWanted> {
    let count = table.integer("count", 3..=40, p);
    let other_gears = table.text("other_gears", 1..=60, p);
    let depth_mm = table.number("depth_mm", NumberRange::closed(0.05, 0.4), p);
    table.finish(p);
    Some(PlatesWanted {
        count: count?,
        other_gears: other_gears?,
        depth_mm: depth_mm?,
    })
}

fn read_kit(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Option<KitMakeup> {
    let usual = KitMakeup::default();
    let label = table.optional_number("label_error_mm", NumberRange::closed(0.0, 0.1), p);
    let share = table.optional_number("mislabelled_share", NumberRange::closed(0.0, 0.5), p);
    let mislabelled_mm = if table.has("mislabelled_mm") {
        let ends = table.numbers("mislabelled_mm", &(2..=2), NumberRange::closed(0.0, 0.3), p)?;
        <[f64; 2]>::try_from(ends.as_slice()).ok()?
    } else {
        usual.mislabelled_mm
    };
    table.finish(p);
    Some(KitMakeup {
        label_error_mm: label.unwrap_or(usual.label_error_mm),
        mislabelled_share: share.unwrap_or(usual.mislabelled_share),
        mislabelled_mm,
    })
}

fn read_tool(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Option<ToolOff> {
    let tools = Tool::usual();
    let names: Vec<(&str, usize)> = tools.iter().enumerate().map(|(i, t)| (t.name.as_str(), i)).collect();
    let which = table.choice("name", &names, p);
    let error_times = table.number("error_times", NumberRange::closed(0.0, 20.0), p);
    table.finish(p);
    Some(ToolOff {
        name: tools.get(which?)?.name.clone(),
        error_times: error_times?,
    })
}

fn read_weights(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Option<Weights> {
    let range = NumberRange::closed(0.0, 100.0);
    let outcome = table.number("outcome", range, p);
    let process = table.number("process", range, p);
    let understanding = table.number("understanding", range, p);
    let economy = table.number("economy", range, p);
    let place = table.place();
    table.finish(p);
    let weights = Weights {
        outcome: outcome?,
        process: process?,
        understanding: understanding?,
        economy: economy?,
    };
    let sum = weights.outcome + weights.process + weights.understanding + weights.economy;
    if (sum - 100.0).abs() > 1e-6 {
        p.note_own(place, ScenarioProblem::Weights { sum });
        return None;
    }
    Some(weights)
}

fn read_minutes(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Vec<(OperationKind, f64)> {
    let mut minutes = Vec::new();
    for kind in Tariff::operations() {
        if let Some(value) = table.optional_number(kind.key(), NumberRange::closed(0.0, 600.0), p) {
            minutes.push((kind, value));
        }
    }
    table.finish(p);
    minutes
}

fn read_prices(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Vec<(Part, f64)> {
    let mut prices = Vec::new();
    for part in Part::ALL {
        if let Some(value) = table.optional_number(part.key(), NumberRange::closed(0.0, 100_000.0), p) {
            prices.push((part, value));
        }
    }
    table.finish(p);
    prices
}
