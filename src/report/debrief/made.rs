//! How the parts were made: packs, marks, sizes, other numbers and faults.

use super::cell::{around, in_line, operation, value};
use super::picture::hidden;
use crate::exercise::debrief::{Debrief, HiddenSize, Measure, SizeUnit};
use crate::quantity::{Units, deviation, number, signed};
use crate::report::html::{Head, Page, escaped, row};
use crate::words::debrief::{hidden as words, sheet};
use crate::words::say;

/// Deviations below this are "as drawn", mm.
const AS_DRAWN_MM: f64 = 0.0005;

pub(super) fn packs(page: &mut Page, debrief: &Debrief) {
    if debrief.packs.is_empty() {
        return;
    }
    page.element("h3", &say!("pages-packs-heading"));
    let rows: Vec<String> = debrief
        .packs
        .iter()
        .map(|pack| {
            let measured: Option<f64> = pack.pieces.iter().map(|p| p.read_mm).sum();
            let measured_as = |v: f64, how: String| {
                format!(
                    "{}<br><span class=\"small\">{}</span>",
                    in_line(v, Measure::Length),
                    escaped(&how)
                )
            };
            let read = match (pack.read_mm, measured) {
                (Some(v), _) => measured_as(v, say!("pages-as-a-pack")),
                (None, Some(v)) => measured_as(v, say!("pages-sum-of-pieces")),
                (None, None) => escaped(&say!("pages-not-all-measured")),
            };
            let pieces: Vec<String> = pack.pieces.iter().map(sheet::piece).collect();
            row(
                "",
                &[
                    ("", escaped(&sheet::pack(pack))),
                    ("n truth", value(pack.truth_mm, Measure::Length)),
                    ("n", value(pack.labelled_mm, Measure::Length)),
                    ("n", signed(pack.truth_mm - pack.labelled_mm, 3)),
                    ("", read),
                    ("small", escaped(&pieces.join("; "))),
                ],
            )
        })
        .collect();
    page.table(
        "",
        &[
            Head::Empty,
            Head::Numbers(say!("pages-column-true-in-place")),
            Head::Numbers(say!("pages-column-by-labels")),
            Head::Numbers(say!("pages-column-labels-off")),
            Head::Words(say!("pages-column-by-micrometer")),
            Head::Words(say!("pages-column-pieces")),
        ],
        &rows,
    );
}

pub(super) fn marks(page: &mut Page, debrief: &Debrief) {
    page.element("h3", &say!("pages-marks-heading"));
    page.paragraph(&sheet::marks(&debrief.marks));
}

pub(super) fn sizes(page: &mut Page, debrief: &Debrief) {
    let sizes = &debrief.hidden.sizes;
    page.element("h3", &say!("pages-made-heading"));
    let limit = |s: &&HiddenSize| s.off.abs() >= AS_DRAWN_MM;
    if !sizes.iter().any(|s| limit(&s)) {
        page.paragraph(&say!("pages-made-as-drawn"));
        besides(page, debrief);
        return;
    }
    page.paragraph(&say!("pages-made-about"));
    let mut rows = Vec::new();
    for size in sizes.iter().filter(limit) {
        let off = match size.unit {
            SizeUnit::Millimeter => value(size.off, Measure::Deviation),
            SizeUnit::Degree => format!("{}\u{b0}", signed(size.off, 3)),
        };
        let beyond = size.tolerance > 0.0 && size.off.abs() > size.tolerance * (1.0 + 1.0e-9);
        let beyond = if beyond {
            format!(
                " <span class=\"tag off\">{}</span>",
                escaped(&say!("pages-outside-drawing"))
            )
        } else {
            String::new()
        };
        let looked = match (size.looked, !size.shown_by.is_empty()) {
            (Some(o), _) => around(&operation(o), |link| say!("pages-looked", link = link)),
            (None, true) => escaped(&say!("pages-not-looked")),
            (None, false) => escaped(&say!("pages-not-to-be-found")),
        };
        let mut found = vec![escaped(&words::found_by(size.member)), looked];
        if !size.counts {
            found.push(escaped(&say!("pages-idle")));
        }
        let plain_off = match size.unit {
            SizeUnit::Millimeter => deviation_in_both(size.off),
            SizeUnit::Degree => off.clone(),
        };
        let said = say!(
            "pages-size-said",
            off = plain_off,
            tolerance = number(size.tolerance, 3)
        );
        let picture = page.picture(&hidden(size, said));
        rows.push(row(
            "",
            &[
                ("", format!("{}{beyond}", escaped(&words::member(size.member)))),
                ("box", picture),
                ("n truth", off),
                ("small", escaped(&words::shifts(size))),
                ("small", found.join(" ")),
            ],
        ));
    }
    page.table(
        "",
        &[
            Head::Empty,
            Head::Words(say!("pages-column-against-drawing")),
            Head::Numbers(say!("pages-column-true")),
            Head::Words(say!("pages-column-does")),
            Head::Words(say!("pages-column-found")),
        ],
        &rows,
    );
    let drawn: Vec<String> = sizes
        .iter()
        .filter(|s| s.off.abs() < AS_DRAWN_MM)
        .map(|s| words::member(s.member).to_lowercase())
        .collect();
    in_one_line(page, &say!("pages-as-drawn"), &drawn);
    besides(page, debrief);
}

/// How far something is off, in both systems of units.
fn deviation_in_both(off_mm: f64) -> String {
    let [metric, inch] = [Units::Metric, Units::Inch].map(|units| deviation(off_mm, units));
    format!("{metric} ({inch})")
}

/// What hardly needs a row of its own.
fn in_one_line(page: &mut Page, name: &str, all: &[String]) {
    if !all.is_empty() {
        page.raw(&format!(
            "<p class=\"small\"><b>{}:</b> {}</p>\n",
            escaped(name),
            escaped(&say!("pages-in-one-line", names = all.join("; ")))
        ));
    }
}

/// Hidden numbers that are no sizes, and faults.
fn besides(page: &mut Page, debrief: &Debrief) {
    let numbers: Vec<String> = debrief
        .hidden
        .numbers
        .iter()
        .map(|n| {
            let name = words::factor(n.factor).to_lowercase();
            say!("pages-number", name = name, value = words::factor_value(n))
        })
        .collect();
    in_one_line(page, &say!("pages-besides"), &numbers);
    faults(page, debrief);
}

fn faults(page: &mut Page, debrief: &Debrief) {
    let faults = &debrief.hidden.faults;
    if faults.is_empty() {
        return;
    }
    page.element("h3", &say!("pages-faults-heading"));
    page.raw("<ul>");
    for fault in faults {
        let there = if fault.there {
            format!("<b>{}</b>", escaped(&say!("pages-fault-there")))
        } else {
            escaped(&say!("pages-fault-not-there"))
        };
        let share = say!("pages-fault-share", percent = number(100.0 * fault.share, 0));
        page.raw(&format!(
            "<li>{}: {there} {}</li>",
            escaped(&words::fault(&fault.kind)),
            escaped(&share)
        ));
    }
    page.raw("</ul>\n");
}
