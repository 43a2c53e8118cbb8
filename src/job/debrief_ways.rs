//! Prints in a row, the reference technician's way, what if, and everything that was done.

use crate::axle::Moves;
use crate::contact::{self, Contact, Film, FlankContact, Pair, Placement, Route};
use crate::drawing::Print;
use crate::exercise::Attempt;
use crate::exercise::debrief::{Build, BuildPrint, Debrief, Line};
use crate::quantity::{Units, fine_length, length, number, signed, torque};
use crate::words::answer;

use super::debrief::{counted, hours, operation};
use super::debrief_page::{Page, escaped, row};
use super::debrief_picture::{Row, prints as drawn, teeth, time};

/// The rule asks for nothing below this, mm.
const HAIR_MM: f64 = 0.0005;

/// A length in both units, in one line.
fn both(mm: f64) -> String {
    format!("{} ({})", fine_length(mm, Units::Metric), fine_length(mm, Units::Inch))
}

/// How a print lies against the approval print.
pub(super) fn flank_words(flank: &FlankContact, approved: &FlankContact) -> String {
    let Some(print) = flank.pattern else {
        return "none".to_owned();
    };
    let area = format!("{}\u{a0}% of the flank", number(100.0 * print.area_fraction, 0));
    let Some(wanted) = approved.pattern else {
        return area;
    };
    let off = off_words(print.centroid, wanted.centroid);
    let edge = flank.edge_contact.map_or(0.0, |e| e.wheel + e.pinion_tip);
    let edge = if edge > 0.005 {
        format!(", an edge touches over {}\u{a0}% of the roll", number(100.0 * edge, 0))
    } else {
        String::new()
    };
    format!("{off}; {area}{edge}")
}

/// Where the middle of a print lies from that of the approval print: height first.
fn off_words(is: [f64; 2], wanted: [f64; 2]) -> String {
    let part = |off: f64, less: &str, more: &str| {
        if off.abs() < 0.005 {
            return "0.00".to_owned();
        }
        format!(
            "{} to the {}",
            number(off.abs(), 2),
            if off < 0.0 { less } else { more }
        )
    };
    let [x, y] = [0, 1].map(|k: usize| is[k] - wanted[k]);
    format!("height {}, length {}", part(y, "root", "top"), part(x, "toe", "heel"))
}

fn deeper_words(mm: f64) -> String {
    if mm.abs() < HAIR_MM {
        "no change".to_owned()
    } else {
        format!("{} {}", both(mm.abs()), if mm > 0.0 { "deeper" } else { "shallower" })
    }
}

fn approval(debrief: &Debrief) -> [Print; 2] {
    drawn(&debrief.designed, Placement::NOMINAL, &debrief.approval)
}

/// Middles of both prints.
fn middles(contact: &Contact) -> [Option<[f64; 2]>; 2] {
    [&contact.drive, &contact.coast].map(|flank| flank.pattern.map(|p| p.centroid))
}

/// Whether the exercise has prints at all.
fn has_prints(debrief: &Debrief) -> bool {
    debrief.builds.iter().any(|b| !b.prints.is_empty())
}

pub(super) fn prints(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    if !has_prints(debrief) {
        return;
    }
    page.element("h2", "Prints in a row");
    page.element(
        "p class=\"lead\"",
        "The true print of every build under a usual film of paste, drive (D) over coast (C), seen on the ring gear: toe \
         left, heel right, top up. The broken outline is the approval print of the set, the cross the middle of the print. \
         Distances are from the approval print, in parts of half a tooth. Height first, on both flanks: both high asks for deeper, both low for \
         shallower. Length is the second witness.",
    );
    let wanted = approval(debrief);
    page.raw("<div class=\"row\">");
    let picture = page.picture(&teeth(&wanted, None, "Approval print", "Of both flanks.".to_owned()));
    page.raw(&format!(
        "<figure>{picture}<figcaption><b>Approval print</b><div>both gears at their designed places</div></figcaption></figure>"
    ));
    let pair = attempt.bench().setting().pair.clone();
    for build in &debrief.builds {
        for print in &build.prints {
            figure(page, build, print, &pair, &wanted, debrief);
        }
    }
    page.raw("</div>\n");
    let unseen = debrief.builds.iter().filter(|b| b.prints.is_empty()).count();
    if unseen > 0 {
        page.paragraph(&format!(
            "{} never painted and rolled.",
            if unseen == 1 {
                "1 build was".to_owned()
            } else {
                format!("{unseen} builds were")
            }
        ));
    }
}

fn build_name(build: &Build) -> String {
    if build.as_found {
        "As it came in".to_owned()
    } else if build.handed_over {
        format!("Build {}, handed over", build.number)
    } else {
        format!("Build {}", build.number)
    }
}

fn figure(page: &mut Page, build: &Build, print: &BuildPrint, pair: &Pair, wanted: &[Print; 2], debrief: &Debrief) {
    let shown = drawn(pair, print.placement, &print.truth);
    let name = build_name(build);
    let words = [
        flank_words(&print.truth.drive, &debrief.approval.drive),
        flank_words(&print.truth.coast, &debrief.approval.coast),
    ];
    let [drive, coast] = &words;
    let picture = page.picture(&teeth(
        &shown,
        Some(wanted),
        &name,
        format!("Drive: {drive}. Coast: {coast}."),
    ));
    page.raw(&format!("<figure>{picture}<figcaption><b>{}</b>", escaped(&name)));
    page.raw(&match (print.rolled, print.moved_since) {
        (None, _) => " <span class=\"tag\">never looked at</span>".to_owned(),
        (Some(o), false) => format!(" <span class=\"muted\">rolled at {}</span>", operation(o)),
        (Some(o), true) => format!(
            " <span class=\"muted\">rolled at {}</span> <span class=\"tag\">moved afterwards</span>",
            operation(o)
        ),
    });
    page.element("div", &format!("D: {drive}"));
    page.element("div", &format!("C: {coast}"));
    if let (Some([d, c]), [Some(drive), Some(coast)]) = (print.seen, middles(&debrief.approval)) {
        page.element(
            "div class=\"belief\"",
            &format!(
                "You saw ({}): D {}; C {}",
                counted(print.looks, "look", "looks"),
                off_words(d, drive),
                off_words(c, coast)
            ),
        );
    }
    let at = print.placement;
    let contact = print
        .truth
        .lash
        .map_or_else(String::new, |l| format!(", lash {}", both(l.mean_mm)));
    page.element(
        "div",
        &format!(
            "P {}\u{a0}mm, G {}\u{a0}mm{contact}",
            signed(at.pinion_axial_mm, 3),
            signed(at.wheel_axial_mm, 3)
        ),
    );
    page.raw("</figcaption></figure>\n");
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
            let mut saw: Vec<String> = build
                .saw
                .told()
                .into_iter()
                .map(|(name, value, is_torque)| {
                    let value = if is_torque {
                        format!("{} ({})", torque(value, Units::Metric), torque(value, Units::Inch))
                    } else {
                        both(value)
                    };
                    format!("{name} {value}")
                })
                .collect();
            for print in &build.prints {
                if let (Some([d, c]), [Some(drive), Some(coast)]) = (print.seen, approved) {
                    let asks = print
                        .asks
                        .seen_mm
                        .map_or_else(String::new, |mm| format!("; that asks for {}", deeper_words(mm)));
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
                is.push(format!("best depth: {} from here", deeper_words(mm)));
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
            let [first, last] = build.operations;
            let span = if last < first {
                "before the first operation".to_owned()
            } else {
                format!("operations {first} to {last}")
            };
            row(
                "",
                &[
                    (
                        "",
                        format!(
                            "<b>{}</b><br><span class=\"small muted\">{span}<br>until {}</span>",
                            escaped(&build_name(build)),
                            hours(build.minutes)
                        ),
                    ),
                    ("small", list(&build.changed)),
                    ("small", list(&saw)),
                    ("small", list(&is)),
                ],
            )
        })
        .collect()
}

pub(super) fn reference(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
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

fn small_figure(page: &mut Page, build: &Build, print: &BuildPrint, pair: &Pair, wanted: &[Print; 2]) {
    let shown = drawn(pair, print.placement, &print.truth);
    let name = build_name(build);
    let picture = page.picture(&teeth(&shown, Some(wanted), &name, String::new()));
    page.raw(&format!(
        "<figure>{picture}<figcaption><b>Reference: {}</b></figcaption></figure>\n",
        escaped(&name)
    ));
}

pub(super) fn what_if(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    let judged: Vec<&Build> = debrief.builds.iter().filter(|b| b.what_if.is_some()).collect();
    if judged.is_empty() || (judged.len() < 2 && !has_prints(debrief)) {
        return;
    }
    page.element("h2", "What if");
    page.paragraph(
        "Each build as if it had been handed over after its last operation, and the step of depth that the rule asks for \
         from its print: the heights of both prints over the slopes of the set\u{2019}s chart, drive counted double; at most \
         0.254\u{a0}mm (0.010\u{a0}in) at once, and nothing below 0.05\u{a0}mm (0.002\u{a0}in).",
    );
    let axle = &attempt.bench().setting().axle;
    let per_shim = -axle.chain().per_unit(axle.depth_shim_member(), Moves::PinionAxial);
    let [full_mm, _] = attempt.exercise().scenario().targets.depth_mm;
    let rows: Vec<String> = judged
        .into_iter()
        .filter_map(|b| what_if_row(b, per_shim, full_mm))
        .collect();
    page.table(
        "",
        &[
            "",
            "*Points then",
            "Most of what was lost",
            "The rule, by what you saw",
            "The rule, by the true print",
            "Best depth",
        ],
        &rows,
    );
}

fn what_if_row(build: &Build, per_shim: f64, full_mm: f64) -> Option<String> {
    let what_if = build.what_if.as_ref()?;
    let score = &what_if.score;
    let mut losses: Vec<_> = score.losses.iter().filter(|l| l.points >= 0.05).collect();
    losses.sort_by(|a, b| b.points.total_cmp(&a.points));
    let lost: Vec<String> = losses
        .iter()
        .take(2)
        .map(|l| format!("{} {}: {}", number(-l.points, 1), l.part.name(), escaped(&l.why)))
        .collect();
    let lost = if lost.is_empty() {
        "Nothing.".to_owned()
    } else {
        lost.join("<br>")
    };
    let step = |mm: Option<f64>| {
        mm.map_or_else(
            || "\u{2013}".to_owned(),
            |mm| {
                let shim = if mm.abs() < HAIR_MM || per_shim.abs() < 1.0e-9 {
                    String::new()
                } else {
                    let thicker = mm / per_shim > 0.0;
                    format!(": depth shim {}", if thicker { "thicker" } else { "thinner" })
                };
                escaped(&format!("{}{shim}", deeper_words(mm)))
            },
        )
    };
    let best = match build.truth_deeper_mm {
        Some(mm) if mm.abs() <= full_mm => format!("{}: inside the band, leave it", escaped(&deeper_words(mm))),
        other => step(other),
    };
    let last = build.prints.last();
    Some(row(
        "",
        &[
            (
                "",
                format!(
                    "<b>{}</b><br><span class=\"small muted\">{}</span>",
                    escaped(&build_name(build)),
                    match build.operations[1] {
                        0 => "before the first operation".to_owned(),
                        last => format!("after {}", operation(last)),
                    }
                ),
            ),
            (
                "n",
                format!(
                    "<b>{}</b><br><span class=\"small\">outcome {}<br>process {}<br>understanding {}<br>economy {}</span>",
                    number(score.total, 1),
                    number(score.outcome, 1),
                    number(score.process, 1),
                    number(score.understanding, 1),
                    number(score.economy, 1)
                ),
            ),
            ("small", lost),
            ("small belief", step(last.and_then(|p| p.asks.seen_mm))),
            ("small", step(last.and_then(|p| p.asks.truth_mm))),
            ("small truth", best),
        ],
    ))
}

/// Painted plates: what they needed beside what was said, with their prints.
pub(super) fn plates(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    page.element("h3", "The painted plates");
    page.raw("<div class=\"row\">");
    let setting = attempt.bench().setting();
    for (plate, seen) in setting.plates.iter().zip(&debrief.plates) {
        let solve = |placement| contact::solve(&plate.pair, placement, Film::default(), Route::Exact);
        let shown = drawn(&plate.pair, plate.placement, &solve(plate.placement));
        let wanted = drawn(&plate.pair, Placement::NOMINAL, &solve(Placement::NOMINAL));
        let needs = ["to come deeper", "nothing", "to stand shallower"];
        let name = format!("Plate {}", seen.plate);
        let picture = page.picture(&teeth(&shown, Some(&wanted), &name, String::new()));
        page.raw(&format!("<figure>{picture}<figcaption><b>{name}</b>"));
        page.element("div", &seen.gears);
        page.element(
            "div class=\"truth\"",
            &format!(
                "Needs {}: {} from its place",
                needs.get(seen.needs).unwrap_or(&"nothing"),
                length(seen.deeper_truth_mm.abs(), Units::Metric)
            ),
        );
        match seen.said {
            Some((at, [deeper, right, shallower])) => page.raw(&format!(
                "<div class=\"belief\">You said ({}): deeper {}\u{a0}%, right {}\u{a0}%, shallower {}\u{a0}%</div>",
                operation(at),
                number(100.0 * deeper, 0),
                number(100.0 * right, 0),
                number(100.0 * shallower, 0)
            )),
            None => page.element("div class=\"belief\"", "You did not judge it."),
        }
        page.raw("</figcaption></figure>\n");
    }
    page.raw("</div>\n");
}

pub(super) fn done(page: &mut Page, debrief: &Debrief) {
    page.element("h2", "Everything that was done");
    page.paragraph(
        "Equal measurements behind each other stand in one row. \u{201c}Moved\u{201d} is the true change of where the gears \
         stand since they last stood in mesh; you could not see it.",
    );
    let mut rows = Vec::new();
    let mut lines = debrief.lines.as_slice();
    while let Some(first) = lines.first() {
        let alike = |l: &&Line| !first.kind.is_empty() && l.kind == first.kind && l.refused.is_none();
        let count = lines.iter().take_while(alike).count().max(1);
        let (group, rest) = lines.split_at(count);
        rows.push(line_row(group));
        lines = rest;
    }
    page.table(
        "long",
        &["*No.", "*At", "*min", "*Money", "Done, and what it showed"],
        &rows,
    );
}

fn line_row(group: &[Line]) -> String {
    let (Some(first), Some(last)) = (group.first(), group.last()) else {
        return String::new();
    };
    let mut numbers = String::new();
    for line in group {
        numbers.extend([format!("<a id=\"op{}\"></a>", line.operation)]);
    }
    numbers.push_str(&first.operation.to_string());
    if last.operation != first.operation {
        numbers.extend([format!("\u{2013}{}", last.operation)]);
    }
    let mut said = String::new();
    if first.tear_down {
        said.push_str("<span class=\"tag\">TEAR-DOWN</span> ");
    }
    for caution in group.iter().flat_map(|l| &l.cautions) {
        said.extend([format!(
            "<span class=\"tag off\">UNSAFE</span> <span class=\"off\">{}</span> ",
            escaped(answer::caution(*caution))
        )]);
    }
    said.push_str(&escaped(&first.words));
    let mut shown: Vec<String> = Vec::new();
    let mut values = group.iter().filter_map(|l| l.shown.as_deref()).peekable();
    while let Some(value) = values.next() {
        let mut times = 1;
        while values.next_if_eq(&value).is_some() {
            times += 1;
        }
        let again = if times > 1 {
            format!(" \u{d7}\u{a0}{times}")
        } else {
            String::new()
        };
        shown.push(escaped(value) + &again);
    }
    if !shown.is_empty() {
        said.extend([format!(": <b>{}</b>", shown.join("; "))]);
    }
    said.push('.');
    if let Some(reason) = &first.refused {
        said.extend([format!(" <i>Not done: {}</i>", escaped(&answer::refusal(reason)))]);
    }
    for line in group {
        for noticed in &line.noticed {
            said.extend([format!(" {}", escaped(&answer::notice(noticed, &[])))]);
        }
        if !line.spoiled.is_empty() {
            let parts: Vec<&str> = line.spoiled.iter().map(|p| crate::words::bench::part(*p)).collect();
            said.extend([format!(" <b>Spoiled: {}.</b>", parts.join(", "))]);
        }
        if let Some([pinion, wheel]) = line.truth_moved_mm {
            said.extend([format!(
                " <span class=\"muted\">Moved: pinion {}, ring gear {}.</span>",
                moved(pinion, "deeper", "shallower"),
                moved(wheel, "toward the pinion", "away")
            )]);
        }
    }
    let sum = |of: fn(&Line) -> f64| group.iter().map(of).sum::<f64>();
    let money = sum(|l| l.money);
    row(
        if first.tear_down { "class=\"tear\"" } else { "" },
        &[
            ("n", numbers),
            ("n", clock(first.at_minutes)),
            ("n", number(sum(|l| l.minutes), 1)),
            ("n", if money > 0.0 { number(money, 0) } else { String::new() }),
            ("", said),
        ],
    )
}

fn moved(mm: f64, less: &str, more: &str) -> String {
    if mm.abs() < HAIR_MM {
        return "as it was".to_owned();
    }
    format!("{}\u{a0}mm {}", number(mm.abs(), 3), if mm < 0.0 { less } else { more })
}

/// Hours and minutes since the beginning.
fn clock(minutes: f64) -> String {
    let whole = minutes.max(0.0).floor();
    let hours = (whole / 60.0).floor();
    format!("{}:{:0>2}", number(hours, 0), number(whole - 60.0 * hours, 0))
}
