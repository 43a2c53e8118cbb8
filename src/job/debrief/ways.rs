//! The reference technician's way beside the trainee's, build by build.

use super::html::{Page, escaped, row};
use super::picture::{Row, prints as drawn, teeth, time};
use super::prints::{approval, middles};
use crate::contact::{Contact, Pair};
use crate::drawing::Print;
use crate::exercise::Attempt;
use crate::exercise::debrief::{Build, BuildPrint, Debrief};
use crate::quantity::{Units, number, signed, torque};
use crate::words::debrief::amount::{both, counted, deeper, hours};
use crate::words::debrief::build as words;

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    let way = &debrief.reference;
    page.element("h2", "The reference technician\u{2019}s way");
    page.paragraph(&format!(
        "The same axle, the same instruments, the card and the chart of the set; the truth stayed hidden. {} points in {}, \
         {} and {} for parts.",
        number(way.score.total, 1),
        hours(debrief.par.minutes),
        counted(debrief.par.teardowns, "tear-down", "tear-downs"),
        number(debrief.par.money, 0)
    ));
    let rows = [
        Row {
            name: "You",
            builds: &debrief.builds,
            lines: &debrief.lines,
        },
        Row {
            name: "Reference",
            builds: &way.builds,
            lines: &way.lines,
        },
    ];
    let picture = page.picture(&time(&rows));
    page.raw(&format!(
        "<figure class=\"wide\">{picture}<figcaption>Boxes are builds, ticks operations, squares rolled prints; a thick bar \
         is a tear-down, a crossed triangle an unsafe act.</figcaption></figure>\n"
    ));
    const HEADS: [&str; 4] = ["", "Changed", "Seen", "True at its end"];
    page.element("h3", "The reference, build by build");
    page.table("", &HEADS, &build_rows(&way.builds, &debrief.approval));
    if way.builds.iter().any(|b| !b.prints.is_empty()) {
        let wanted = approval(debrief);
        let pair = attempt.bench().setting().pair.clone();
        page.raw("<div class=\"row\">");
        for build in &way.builds {
            for print in &build.prints {
                small_figure(page, build, print, &pair, &wanted);
            }
        }
        page.raw("</div>\n");
    }
    page.element("h3", "You, build by build");
    page.table("", &HEADS, &build_rows(&debrief.builds, &debrief.approval));
}

/// Rows of a table of builds.
fn build_rows(builds: &[Build], approval: &Contact) -> Vec<String> {
    let approved = middles(approval);
    builds
        .iter()
        .map(|build| {
            let list = |parts: &[String]| {
                if parts.is_empty() {
                    "\u{2013}".to_owned()
                } else {
                    let parts: Vec<String> = parts.iter().map(|p| escaped(p)).collect();
                    parts.join("<br>")
                }
            };
            let told = build.saw.told().into_iter();
            let mut saw: Vec<String> = told.map(|(kind, value)| words::saw_in_both(kind, value)).collect();
            for print in &build.prints {
                if let (Some([d, c]), [Some(drive), Some(coast)]) = (print.seen, approved) {
                    let asks = print
                        .asks
                        .seen_mm
                        .map_or_else(String::new, |mm| format!("; that asks for {}", deeper(mm)));
                    saw.push(format!(
                        "height from the approved print: drive {}, coast {}{asks}",
                        signed(d[1] - drive[1], 2),
                        signed(c[1] - coast[1], 2)
                    ));
                }
            }
            let truth = &build.truth;
            let mut is = Vec::new();
            if let Some(mm) = build.truth_deeper_mm {
                is.push(format!("best depth: {} from here", deeper(mm)));
            }
            if let Some(mm) = build.truth_lash_mm {
                is.push(format!("lash, tightest {}", both(mm)));
            }
            if let Some(nm) = truth.pinion_torque_nm {
                is.push(format!("pinion alone {}", torque(nm, Units::Metric)));
            }
            if let Some(nm) = truth.side_torque_nm {
                is.push(format!("side bearings add {}", torque(nm, Units::Metric)));
            }
            let span = words::span(build);
            let changed: Vec<String> = build.changed.iter().map(words::change).collect();
            row(
                "",
                &[
                    (
                        "",
                        format!(
                            "<b>{}</b><br><span class=\"small muted\">{span}<br>until {}</span>",
                            escaped(&words::name(build)),
                            hours(build.minutes)
                        ),
                    ),
                    ("small", list(&changed)),
                    ("small", list(&saw)),
                    ("small", list(&is)),
                ],
            )
        })
        .collect()
}

fn small_figure(page: &mut Page, build: &Build, print: &BuildPrint, pair: &Pair, wanted: &[Print; 2]) {
    let shown = drawn(pair, print.placement, &print.truth);
    let name = words::name(build);
    let picture = page.picture(&teeth(&shown, Some(wanted), &name, String::new()));
    page.raw(&format!(
        "<figure>{picture}<figcaption><b>Reference: {}</b></figcaption></figure>\n",
        escaped(&name)
    ));
}
