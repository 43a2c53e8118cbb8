//! The reference technician's way beside the trainee's, build by build.

use super::done;
use super::picture::{Row, prints as drawn, teeth, time};
use super::prints::{approval, middles};
use crate::contact::{Contact, Pair};
use crate::drawing::Print;
use crate::exercise::Attempt;
use crate::exercise::debrief::{Build, BuildPrint, Debrief, Section};
use crate::quantity::{number, signed};
use crate::report::html::{Head, Page, escaped, row};
use crate::words::debrief::amount::{both, both_torque, deeper, hours};
use crate::words::debrief::build as words;
use crate::words::{card, say};

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    let way = &debrief.reference;
    page.element("h2", &say!("pages-ways-heading"));
    page.paragraph(&say!(
        "pages-ways-about",
        points = number(way.score.total, 1),
        hours = hours(debrief.par.minutes),
        teardowns = debrief.par.teardowns,
        cost = number(debrief.par.money, 0)
    ));
    let rows = [
        Row {
            name: say!("pages-you"),
            builds: &debrief.builds,
            lines: &debrief.lines,
        },
        Row {
            name: say!("pages-reference"),
            builds: &way.builds,
            lines: &way.lines,
        },
    ];
    let picture = page.picture(&time(&rows));
    page.raw(&format!(
        "<figure class=\"wide\">{picture}<figcaption>{}</figcaption></figure>\n",
        escaped(&say!("pages-time-caption"))
    ));
    if !debrief.has(Section::Builds) {
        page.element("h3", &say!("pages-reference-done"));
        done::table(
            page,
            &way.lines,
            card::texts(attempt.exercise().scenario()).hints,
            false,
        );
        return;
    }
    let heads = [
        Head::Empty,
        Head::Words(say!("pages-column-changed")),
        Head::Words(say!("pages-column-seen")),
        Head::Words(say!("pages-column-true-at-its-end")),
    ];
    page.element("h3", &say!("pages-reference-builds"));
    page.table("", &heads, &build_rows(&way.builds, &debrief.approval));
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
    page.element("h3", &say!("pages-your-builds"));
    page.table("", &heads, &build_rows(&debrief.builds, &debrief.approval));
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
                    let (drive, coast) = (signed(d[1] - drive[1], 2), signed(c[1] - coast[1], 2));
                    saw.push(match print.asks.seen_mm {
                        None => say!("pages-seen-height", drive = drive, coast = coast),
                        Some(mm) => say!(
                            "pages-seen-height-asks",
                            drive = drive,
                            coast = coast,
                            step = deeper(mm)
                        ),
                    });
                }
            }
            let truth = &build.truth;
            let mut is = Vec::new();
            if let Some(mm) = build.truth_deeper_mm {
                is.push(say!("pages-best-depth", step = deeper(mm)));
            }
            if let Some(mm) = build.truth_lash_mm {
                is.push(say!("pages-backlash-tightest", length = both(mm)));
            }
            if let Some(nm) = truth.pinion_torque_nm {
                is.push(say!("pages-pinion-alone", torque = both_torque(nm)));
            }
            if let Some(nm) = truth.side_torque_nm {
                is.push(say!("pages-side-bearings-add", torque = both_torque(nm)));
            }
            let span = words::span(build);
            let changed: Vec<String> = build.changed.iter().map(words::change).collect();
            row(
                "",
                &[
                    (
                        "",
                        format!(
                            "<b>{}</b><br><span class=\"small muted\">{}<br>{}</span>",
                            escaped(&words::name(build)),
                            escaped(&span),
                            escaped(&say!("pages-until", hours = hours(build.minutes)))
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
        "<figure>{picture}<figcaption><b>{}</b></figcaption></figure>\n",
        escaped(&say!("pages-reference-build", build = name))
    ));
}
