//! What was judged, with its bands.

use super::cell::value;
use super::picture::{place_mark, standing};
use crate::drawing::{Fill, Hatch, Ink, Item, Mark, Path, Picture, Point, Rect, Stroke};
use crate::exercise::debrief::{Debrief, Measure, Standing};
use crate::quantity::{foot_pounds, inch_pounds, inches, number};
use crate::report::html::{Head, Page, escaped, row};
use crate::words::debrief::amount::both;
use crate::words::debrief::standing as words;
use crate::words::say;

pub(super) fn section(page: &mut Page, debrief: &Debrief) {
    if debrief.standings.is_empty() {
        return;
    }
    page.element("h3", &say!("pages-judged-heading"));
    let mut rows = Vec::new();
    for one in &debrief.standings {
        let bands = bands(one);
        let place = one.place();
        let said = say!("pages-judged-scale", bands = bands.clone(), place = words::place(place));
        let scale = page.picture(&standing(one, said));
        let mark = page.picture(&place_mark(place));
        let or_none = |v: Option<f64>| {
            v.map_or_else(
                || "<span class=\"none\">\u{2013}</span>".to_owned(),
                |v| value(v, one.measure()),
            )
        };
        let edge = if one.on_edge {
            format!(
                " <span class=\"tag off\">{}</span>",
                escaped(&say!("pages-edge-touches"))
            )
        } else {
            String::new()
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
                    format!("{mark}<span class=\"small\">{}</span>", escaped(&words::place(place))),
                ),
            ],
        ));
    }
    page.table(
        "",
        &[
            Head::Empty,
            Head::Words(say!("pages-column-scale")),
            Head::Numbers(say!("pages-column-true")),
            Head::Numbers(say!("pages-column-written")),
            Head::Numbers(say!("pages-column-read")),
            Head::Empty,
        ],
        &rows,
    );
    let key = key(page);
    page.raw(&key);
}

/// A range in one line.
fn range(low: f64, high: f64, measure: Measure) -> String {
    match measure {
        Measure::Length => say!(
            "pages-range-length",
            low = number(low, 3),
            high = number(high, 3),
            low_in = number(inches(low), 4),
            high_in = number(inches(high), 4)
        ),
        Measure::Deviation => say!(
            "pages-range-deviation",
            mm = number(high, 3),
            inches = number(inches(high), 4)
        ),
        Measure::Torque => say!(
            "pages-range-torque",
            low = number(low, 2),
            high = number(high, 2),
            low_in_lb = number(inch_pounds(low), 1),
            high_in_lb = number(inch_pounds(high), 1)
        ),
        Measure::NutTorque => say!(
            "pages-range-nut-torque",
            low = number(low, 0),
            high = number(high, 0),
            low_ft_lb = number(foot_pounds(low), 0),
            high_ft_lb = number(foot_pounds(high), 0)
        ),
        Measure::Tooth => say!("pages-range-tooth", high = number(high, 2)),
    }
}

fn bands(one: &Standing) -> String {
    if one.zero.low >= one.full.low {
        return say!(
            "pages-bands-up-to",
            full = both(one.full.high),
            zero = both(one.zero.high)
        );
    }
    let full = range(one.full.low, one.full.high, one.measure());
    let zero = range(one.zero.low, one.zero.high, one.measure());
    say!("pages-bands", full = full, zero = zero)
}

/// What the marks on the scales mean.
fn key(page: &mut Page) -> String {
    let mut sample = |items: Vec<Item>, words: String| {
        let mut picture = Picture::on(Ink::Inset, 24.0, 16.0, words.clone(), "");
        for item in items {
            picture.draw(item);
        }
        let picture = page.picture(&picture);
        format!("<div><dt>{picture}</dt><dd>{}</dd></div>", escaped(&words))
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
            say!("pages-key-full"),
        ),
        sample(
            band(Fill::Hatched {
                hatch: Hatch::Upright,
                ink: Ink::Near,
            }),
            say!("pages-key-some"),
        ),
        sample(
            band(Fill::Hatched {
                hatch: Hatch::Crossed,
                ink: Ink::Off,
            }),
            say!("pages-key-none"),
        ),
        sample(
            Mark::TriangleUp.items(Point::new(12.0, 3.0), 11.0, Ink::Truth, Ink::Inset),
            say!("pages-key-true"),
        ),
        sample(
            Mark::OpenCircle.items(at, 9.0, Ink::Belief, Ink::Inset),
            say!("pages-key-written"),
        ),
        sample(
            vec![Item::stroked(
                Path::line(Point::new(12.0, 1.0), Point::new(12.0, 15.0)),
                Stroke::full(Ink::Truth, 2.0),
            )],
            say!("pages-key-read"),
        ),
    ];
    format!("<dl class=\"key\">{}</dl>\n", parts.join(""))
}
