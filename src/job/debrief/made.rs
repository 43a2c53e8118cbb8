//! How the parts were made: packs, marks, sizes, other numbers and faults.

use super::cell::{in_line, operation, value};
use super::html::{Page, escaped, row};
use super::picture::hidden;
use crate::exercise::debrief::{Debrief, HiddenSize, Measure, SizeUnit};
use crate::quantity::{number, signed};
use crate::words::debrief::{hidden as words, sheet};

/// Deviations below this are "as drawn", mm.
const AS_DRAWN_MM: f64 = 0.0005;

pub(super) fn packs(page: &mut Page, debrief: &Debrief) {
    if debrief.packs.is_empty() {
        return;
    }
    page.element("h3", "Shim packs as handed over");
    let rows: Vec<String> = debrief
        .packs
        .iter()
        .map(|pack| {
            let measured: Option<f64> = pack.pieces.iter().map(|p| p.read_mm).sum();
            let read = match (pack.read_mm, measured) {
                (Some(v), _) => format!(
                    "{}<br><span class=\"small\">as a pack</span>",
                    in_line(v, Measure::Length)
                ),
                (None, Some(v)) => format!(
                    "{}<br><span class=\"small\">sum of its pieces</span>",
                    in_line(v, Measure::Length)
                ),
                (None, None) => "not all measured".to_owned(),
            };
            let pieces: Vec<String> = pack.pieces.iter().map(sheet::piece).collect();
            row(
                "",
                &[
                    ("", sheet::pack(pack)),
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
            "",
            "*True, in place",
            "*By its labels",
            "*Labels are off by",
            "By micrometer",
            "Piece by piece",
        ],
        &rows,
    );
}

pub(super) fn marks(page: &mut Page, debrief: &Debrief) {
    page.element("h3", "Numbers and mark on the gears");
    page.paragraph(&sheet::marks(&debrief.marks));
}

pub(super) fn sizes(page: &mut Page, debrief: &Debrief) {
    let sizes = &debrief.hidden.sizes;
    page.element("h3", "How the parts were made");
    let limit = |s: &&HiddenSize| s.off.abs() >= AS_DRAWN_MM;
    if !sizes.iter().any(|s| limit(&s)) {
        page.paragraph("Every size of this axle is as drawn.");
        besides(page, debrief);
        return;
    }
    page.paragraph(
        "Every part of this axle was a little off its drawing, and a shim or a setting made up for it or did not. The box is \
         what inspection lets pass; the triangle is this part.",
    );
    let mut rows = Vec::new();
    for size in sizes.iter().filter(limit) {
        let off = match size.unit {
            SizeUnit::Millimeter => value(size.off, Measure::Deviation),
            SizeUnit::Degree => format!("{}\u{b0}", signed(size.off, 3)),
        };
        let beyond = size.tolerance > 0.0 && size.off.abs() > size.tolerance * (1.0 + 1.0e-9);
        let beyond = if beyond {
            " <span class=\"tag off\">outside its drawing</span>"
        } else {
            ""
        };
        let looked = match (size.looked, !size.shown_by.is_empty()) {
            (Some(o), _) => format!("You looked there: {}.", operation(o)),
            (None, true) => "You did not look there.".to_owned(),
            (None, false) => "Not to be found on this bench.".to_owned(),
        };
        let idle = if size.counts {
            String::new()
        } else {
            " It does not count in the axle as handed over.".to_owned()
        };
        let said = format!("{}; inspection lets {} pass.", off, number(size.tolerance, 3));
        let picture = page.picture(&hidden(
            size,
            said.replace("<br><span class=\"inch\">", " ").replace("</span>", ""),
        ));
        rows.push(row(
            "",
            &[
                ("", format!("{}{beyond}", escaped(&words::member(size.member)))),
                ("box", picture),
                ("n truth", off),
                ("small", escaped(&words::shifts(size))),
                (
                    "small",
                    format!("{} {looked}{}", escaped(&words::found_by(size.member)), escaped(&idle)),
                ),
            ],
        ));
    }
    page.table(
        "",
        &[
            "",
            "Against its drawing",
            "*True",
            "What it does",
            "Where it was to be found",
        ],
        &rows,
    );
    let drawn: Vec<String> = sizes
        .iter()
        .filter(|s| s.off.abs() < AS_DRAWN_MM)
        .map(|s| words::member(s.member).to_lowercase())
        .collect();
    in_one_line(page, "As drawn", &drawn);
    besides(page, debrief);
}

/// What hardly needs a row of its own.
fn in_one_line(page: &mut Page, name: &str, all: &[String]) {
    if !all.is_empty() {
        page.raw(&format!(
            "<p class=\"small\"><b>{name}:</b> {}.</p>\n",
            escaped(&all.join("; "))
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
            format!("{name}: {}", words::factor_value(n))
        })
        .collect();
    in_one_line(page, "Besides", &numbers);
    faults(page, debrief);
}

fn faults(page: &mut Page, debrief: &Debrief) {
    let faults = &debrief.hidden.faults;
    if faults.is_empty() {
        return;
    }
    page.element("h3", "What may be wrong in this exercise");
    page.raw("<ul>");
    for fault in faults {
        let there = if fault.there {
            "<b>in this axle</b>"
        } else {
            "not in this axle"
        };
        page.raw(&format!(
            "<li>{}: {there} (in {}\u{a0}% of all).</li>",
            escaped(&words::fault(&fault.kind)),
            number(100.0 * fault.share, 0)
        ));
    }
    page.raw("</ul>\n");
}
