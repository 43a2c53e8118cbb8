//! What was judged, with its bands.

use super::cell::value;
use super::html::{Page, escaped, row};
use super::picture::{place_mark, standing};
use crate::drawing::{Fill, Hatch, Ink, Item, Mark, Path, Picture, Point, Rect, Stroke};
use crate::exercise::debrief::{Debrief, Measure, Standing};
use crate::quantity::{Units, foot_pounds, inch_pounds, inches, number, nut_torque};
use crate::words::debrief::amount::both;
use crate::words::debrief::standing as words;

pub(super) fn section(page: &mut Page, debrief: &Debrief) {
    if debrief.standings.is_empty() {
        return;
    }
    page.element("h3", "What was judged");
    let mut rows = Vec::new();
    for one in &debrief.standings {
        let bands = bands(one);
        let place = one.place();
        let said = format!("{bands} The judged value is {}.", words::place(place));
        let scale = page.picture(&standing(one, said));
        let mark = page.picture(&place_mark(place));
        let or_none = |v: Option<f64>| {
            v.map_or_else(
                || "<span class=\"none\">\u{2013}</span>".to_owned(),
                |v| value(v, one.measure()),
            )
        };
        let edge = if one.on_edge {
            " <span class=\"tag off\">an edge touches</span>"
        } else {
            ""
        };
        rows.push(row(
            "",
            &[
                ("", format!("{}{edge}", escaped(&words::name(one.what)))),
                (
                    "scale",
                    format!("{scale}<span class=\"small muted\">{}</span>", escaped(&bands)),
                ),
                ("n truth", or_none(one.truth)),
                ("n belief", or_none(one.noted)),
                ("n", or_none(one.read)),
                (
                    "m",
                    format!("{mark}<span class=\"small\">{}</span>", words::place(place)),
                ),
            ],
        ));
    }
    page.table(
        "",
        &["", "Where it stands", "*True", "*Written down", "*Read", ""],
        &rows,
    );
    let key = key(page);
    page.raw(&key);
}

/// A range in one line.
fn range(low: f64, high: f64, measure: Measure) -> String {
    match measure {
        Measure::Length => format!(
            "{} to {}\u{a0}mm ({} to {}\u{a0}in)",
            number(low, 3),
            number(high, 3),
            number(inches(low), 4),
            number(inches(high), 4)
        ),
        Measure::Deviation => format!(
            "\u{b1}{}\u{a0}mm (\u{b1}{}\u{a0}in)",
            number(high, 3),
            number(inches(high), 4)
        ),
        Measure::Torque => format!(
            "{} to {}\u{a0}N\u{b7}m ({} to {}\u{a0}in\u{b7}lb)",
            number(low, 2),
            number(high, 2),
            number(inch_pounds(low), 1),
            number(inch_pounds(high), 1)
        ),
        Measure::NutTorque => format!(
            "{} to {} ({} to {})",
            number(low, 0),
            nut_torque(high, Units::Metric),
            number(foot_pounds(low), 0),
            nut_torque(high, Units::Inch)
        ),
        Measure::Tooth => format!("\u{b1}{} of half a tooth", number(high, 2)),
    }
}

fn bands(one: &Standing) -> String {
    if one.zero.low >= one.full.low {
        return format!(
            "Full marks: up to {}. None from {}.",
            both(one.full.high),
            both(one.zero.high)
        );
    }
    let full = range(one.full.low, one.full.high, one.measure());
    let zero = range(one.zero.low, one.zero.high, one.measure());
    format!("Full marks: {full}. None outside {zero}.")
}

/// What the marks on the scales mean.
fn key(page: &mut Page) -> String {
    let mut sample = |items: Vec<Item>, words: &str| {
        let mut picture = Picture::on(Ink::Inset, 24.0, 16.0, words, "");
        for item in items {
            picture.draw(item);
        }
        let picture = page.picture(&picture);
        format!("<div><dt>{picture}</dt><dd>{words}</dd></div>")
    };
    let band = |fill| {
        let area = Rect {
            left: 1.0,
            top: 3.0,
            right: 23.0,
            bottom: 13.0,
        };
        vec![Item::Shape {
            path: area.path(),
            fill: Some(fill),
            stroke: Some(Stroke::full(Ink::Line, 0.8)),
        }]
    };
    let at = Point::new(12.0, 8.0);
    let parts = [
        sample(
            band(Fill::Plain {
                ink: Ink::Good,
                opacity: 1.0,
            }),
            "full marks",
        ),
        sample(
            band(Fill::Hatched {
                hatch: Hatch::Upright,
                ink: Ink::Near,
            }),
            "some marks",
        ),
        sample(
            band(Fill::Hatched {
                hatch: Hatch::Crossed,
                ink: Ink::Off,
            }),
            "no marks",
        ),
        sample(
            Mark::TriangleUp.items(Point::new(12.0, 3.0), 11.0, Ink::Truth, Ink::Inset),
            "true",
        ),
        sample(
            Mark::OpenCircle.items(at, 9.0, Ink::Belief, Ink::Inset),
            "written down, still valid",
        ),
        sample(
            vec![Item::stroked(
                Path::line(Point::new(12.0, 1.0), Point::new(12.0, 15.0)),
                Stroke::full(Ink::Truth, 2.0),
            )],
            "read, still valid",
        ),
    ];
    format!("<dl class=\"key\">{}</dl>\n", parts.join(""))
}
