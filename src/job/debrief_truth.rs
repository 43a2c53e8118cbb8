//! Truth beside belief.

use crate::axle::Moves;
use crate::bench::{Measurand, ShimPlace, StemChoice};
use crate::drawing::{Fill, Hatch, Ink, Item, Mark, Picture, Point, Rect, Stroke};
use crate::exercise::Attempt;
use crate::exercise::debrief::{Belief, Debrief, HiddenSize, Measure, Read, Standing, Subject};
use crate::quantity::{
    Units, deviation, fine_length, foot_pounds, inch_pounds, inches, number, nut_torque, signed, torque,
};

use super::debrief::{operation, place_words};
use super::debrief_page::{Page, escaped, row};
use super::debrief_picture::{hidden, place_mark, standing};
use super::debrief_ways::{flank_words, plates};

/// Deviations below this are "as drawn", mm.
const AS_DRAWN_MM: f64 = 0.0005;

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    page.element("h2", "Truth beside belief");
    page.paragraph(
        "What is true was hidden until now. What you believed is what you wrote on the sheet; beside it stands what your \
         instruments showed last. They are three different things: the axle, the reading, and what was made of the reading.",
    );
    standings(page, debrief);
    beliefs(page, debrief);
    state(page, debrief);
    packs(page, debrief);
    marks(page, debrief);
    if !debrief.plates.is_empty() {
        plates(page, attempt, debrief);
    }
    sizes(page, debrief);
}

/// A value with its unit in both systems: the shop's inches in small type behind.
fn value(value: f64, measure: Measure) -> String {
    let inch = |words: String| format!("<br><span class=\"inch\">{}</span>", escaped(&words));
    match measure {
        Measure::Length => escaped(&fine_length(value, Units::Metric)) + &inch(fine_length(value, Units::Inch)),
        Measure::Deviation => escaped(&deviation(value, Units::Metric)) + &inch(deviation(value, Units::Inch)),
        Measure::Torque => escaped(&torque(value, Units::Metric)) + &inch(torque(value, Units::Inch)),
        Measure::NutTorque => escaped(&nut_torque(value, Units::Metric)) + &inch(nut_torque(value, Units::Inch)),
        Measure::Tooth => signed(value, 2),
    }
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

fn standings(page: &mut Page, debrief: &Debrief) {
    if debrief.standings.is_empty() {
        return;
    }
    page.element("h3", "What was judged");
    let mut rows = Vec::new();
    for one in &debrief.standings {
        let bands = bands(one);
        let place = one.place();
        let said = format!("{bands} The judged value is {}.", place_words(place));
        let scale = page.picture(&standing(one, said));
        let mark = page.picture(&place_mark(place));
        let or_none = |v: Option<f64>| {
            v.map_or_else(
                || "<span class=\"none\">\u{2013}</span>".to_owned(),
                |v| value(v, one.measure),
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
                ("", format!("{}{edge}", escaped(&one.name))),
                (
                    "scale",
                    format!("{scale}<span class=\"small muted\">{}</span>", escaped(&bands)),
                ),
                ("n truth", or_none(one.truth)),
                ("n belief", or_none(one.noted)),
                ("n", or_none(one.read)),
                (
                    "m",
                    format!("{mark}<span class=\"small\">{}</span>", place_words(place)),
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

fn bands(one: &Standing) -> String {
    if one.zero.low >= one.full.low {
        let words = |v: f64| format!("{} ({})", fine_length(v, Units::Metric), fine_length(v, Units::Inch));
        return format!(
            "Full marks: up to {}. None from {}.",
            words(one.full.high),
            words(one.zero.high)
        );
    }
    let full = range(one.full.low, one.full.high, one.measure);
    let zero = range(one.zero.low, one.zero.high, one.measure);
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
                crate::drawing::Path::line(Point::new(12.0, 1.0), Point::new(12.0, 15.0)),
                Stroke::full(Ink::Truth, 2.0),
            )],
            "read, still valid",
        ),
    ];
    format!("<dl class=\"key\">{}</dl>\n", parts.join(""))
}

/// What a belief is about, for people.
fn subject_words(subject: Subject) -> String {
    match subject {
        Subject::PinionTorque => "Rolling torque, pinion alone".to_owned(),
        Subject::TotalTorque => "Rolling torque, gears in mesh".to_owned(),
        Subject::Of(what) => match what {
            Measurand::Lash { tooth } => format!("Lash at tooth {tooth}"),
            Measurand::WheelFaceRunout {} => "Face runout, back of the ring gear".to_owned(),
            Measurand::WheelRadialRunout {} => "Radial runout of the ring gear".to_owned(),
            Measurand::PinionRunout {} => "Runout of the pinion".to_owned(),
            Measurand::NutTorque {} => "Torque on the pinion nut".to_owned(),
            Measurand::BreakawayTorque {} => "Breakaway torque".to_owned(),
            Measurand::CarrierTorque {} => "Torque of the carrier alone".to_owned(),
            Measurand::PinionDepth {} => "Axis to pinion head, by arbor and block".to_owned(),
            Measurand::PinionEndPlay {} => "End play of the pinion".to_owned(),
            Measurand::CarrierEndPlay {} => "End play of the carrier".to_owned(),
            Measurand::CaseSpread {} => "Spread of the case".to_owned(),
            Measurand::SeatGap { ring } => format!("Gap behind the {}", ring_words(ring)),
            other => crate::words::answer::quantity(other.kind()).to_owned(),
        },
    }
}

fn ring_words(ring: crate::bench::Ring) -> &'static str {
    match ring {
        crate::bench::Ring::HeadCone => "head cone",
        crate::bench::Ring::HeadCup => "head cup",
        crate::bench::Ring::TailCup => "tail cup",
    }
}

/// Lash was read at many teeth: those with a note, and the two ends of the others.
fn told(beliefs: &[Belief]) -> Vec<&Belief> {
    const MOST_TEETH: usize = 8;
    let lash = |b: &&Belief| matches!(b.subject, Subject::Of(Measurand::Lash { .. }));
    let teeth = beliefs.iter().filter(lash).count();
    let fresh = |b: &&Belief| b.noted.is_some() || b.read.as_ref().is_some_and(|r| !r.stale);
    beliefs
        .iter()
        .filter(|b| !lash(b) || teeth <= MOST_TEETH || fresh(b))
        .collect()
}

fn beliefs(page: &mut Page, debrief: &Debrief) {
    if debrief.beliefs.is_empty() {
        return;
    }
    page.element("h3", "What you wrote down and read");
    page.paragraph(
        "A value is stale when something that it depends on was changed after it. The error of a reading is that of \
         instrument and hand: it is told against what was true in the moment of reading.",
    );
    let rows: Vec<String> = told(&debrief.beliefs)
        .into_iter()
        .map(|belief| {
            let measure = match (belief.unit, belief.subject) {
                ("mm", _) => Measure::Length,
                (_, Subject::Of(Measurand::NutTorque {})) => Measure::NutTorque,
                _ => Measure::Torque,
            };
            let off = |v: Option<f64>| {
                v.map_or_else(
                    || "\u{2013}".to_owned(),
                    |v| match measure {
                        Measure::Torque => signed(v, 2),
                        Measure::NutTorque => signed(v, 0),
                        _ => signed(v, 3),
                    },
                )
            };
            let stale = |stale: bool| if stale { " <span class=\"tag\">stale</span>" } else { "" };
            let noted = belief.noted.as_ref().map_or_else(
                || "<span class=\"none\">not written down</span>".to_owned(),
                |n| {
                    let remark = if n.remark.is_empty() {
                        String::new()
                    } else {
                        format!(
                            "<br><span class=\"small\">\u{201c}{}\u{201d}</span>",
                            escaped(&n.remark)
                        )
                    };
                    format!(
                        "{}{} <span class=\"small\">{}</span>{remark}",
                        in_line(n.value, measure),
                        stale(n.stale),
                        operation(n.operation)
                    )
                },
            );
            let read = belief.read.as_ref().map_or_else(
                || "<span class=\"none\">not read</span>".to_owned(),
                |r| {
                    format!(
                        "{}{} <span class=\"small\">{}<br>{}</span>",
                        r.value.map_or_else(|| "nothing".to_owned(), |v| in_line(v, measure)),
                        stale(r.stale),
                        operation(r.operation),
                        escaped(&instrument(r))
                    )
                },
            );
            let truth = belief
                .truth
                .map_or_else(|| "not together".to_owned(), |v| value(v, measure));
            row(
                "",
                &[
                    ("", escaped(&subject_words(belief.subject))),
                    ("n truth", truth),
                    ("belief", noted),
                    ("n", off(belief.note_off())),
                    ("", read),
                    ("n", off(belief.reading_off())),
                ],
            )
        })
        .collect();
    page.table(
        "",
        &[
            "",
            "*True at hand-over",
            "Written down last",
            "*Less truth",
            "Read last",
            "*Error when read",
        ],
        &rows,
    );
    page.raw("<p class=\"small muted\">Numbers (no.) are those of the operations at the end of the page. Lash is true as the card has the stem laid.</p>\n");
}

fn instrument(read: &Read) -> String {
    let stem = match read.stem {
        Some(StemChoice::SquareToTrace) => ", stem square to the tooth",
        Some(StemChoice::AlongMotion) => ", stem along the motion",
        Some(StemChoice::AlongNormal) => ", stem square to the flank",
        None => "",
    };
    format!("{}{stem}", read.instrument.replace('_', " "))
}

fn in_line(v: f64, measure: Measure) -> String {
    let (metric, inch) = match measure {
        Measure::Torque => (torque(v, Units::Metric), torque(v, Units::Inch)),
        Measure::NutTorque => (nut_torque(v, Units::Metric), nut_torque(v, Units::Inch)),
        _ => (fine_length(v, Units::Metric), fine_length(v, Units::Inch)),
    };
    format!("{} <span class=\"inch\">({})</span>", escaped(&metric), escaped(&inch))
}

/// What no instrument of the bench shows by itself.
fn state(page: &mut Page, debrief: &Debrief) {
    let outcome = &debrief.outcome;
    let mut rows = Vec::new();
    let mut tell = |words: &str, value: Option<String>, said: &str| {
        if let Some(value) = value {
            rows.push(row(
                "",
                &[("", escaped(words)), ("n truth", value), ("", escaped(said))],
            ));
        }
    };
    let mm = |v: f64| value(v, Measure::Deviation);
    let force = |n: f64| {
        let pounds = number(n / crate::quantity::N_PER_POUND_FORCE, 0);
        format!(
            "{}\u{a0}kN<br><span class=\"inch\">{pounds}\u{a0}lbf</span>",
            number(1.0e-3 * n, 2)
        )
    };
    let placement = outcome.placement;
    tell(
        "Pinion depth P",
        placement.map(|p| p.pinion_axial_mm).or(outcome.pinion_axial_mm).map(mm),
        "from the designed place, + stands shallower",
    );
    tell(
        "Ring gear G",
        placement.map(|p| mm(p.wheel_axial_mm)),
        "from the designed place, + stands away from the pinion",
    );
    tell(
        "Offset E",
        placement.map(|p| mm(p.offset_mm)),
        "+ is more offset; no shim changes it",
    );
    tell(
        "Shaft angle \u{3a3}",
        placement.map(|p| format!("{}\u{b0}", signed(p.shaft_angle_deg(), 3))),
        "+ is opened; no shim changes it",
    );
    tell(
        "Pinion preload",
        outcome.pinion_preload_n.map(force),
        "felt only as rolling torque",
    );
    tell(
        "Pinion end play",
        outcome.pinion_play_mm.map(|v| value(v, Measure::Length)),
        "0 when there is preload",
    );
    tell(
        "Side preload",
        outcome.side_preload_n.map(force),
        "felt only as torque that is added",
    );
    tell(
        "Clamp of the pinion nut",
        outcome.clamp_n.map(force),
        "what the nut\u{2019}s torque leaves after friction",
    );
    if rows.is_empty() {
        return;
    }
    page.element("h3", "How the axle really stands");
    page.table("", &["", "*True", ""], &rows);
    if let Some([drive, coast]) = &outcome.flanks {
        let approval = &debrief.approval;
        page.paragraph(&format!(
            "Drive print: {}. Coast print: {}.",
            flank_words(drive, &approval.drive),
            flank_words(coast, &approval.coast)
        ));
    }
}

fn packs(page: &mut Page, debrief: &Debrief) {
    if debrief.packs.is_empty() {
        return;
    }
    page.element("h3", "Shim packs as handed over");
    let rows: Vec<String> = debrief
        .packs
        .iter()
        .map(|pack| {
            let name = match pack.place {
                ShimPlace::Depth => "Depth",
                ShimPlace::Spacer => "Spacer",
                ShimPlace::ToothSide => "Tooth side",
                ShimPlace::BackSide => "Behind the ring gear",
            };
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
            let wrong: Vec<String> = pack
                .pieces
                .iter()
                .map(|p| {
                    format!(
                        "piece {}: label {}, true {}\u{a0}mm",
                        p.number,
                        number(p.labelled_mm, 3),
                        number(p.truth_mm, 3)
                    )
                })
                .collect();
            row(
                "",
                &[
                    ("", name.to_owned()),
                    ("n truth", value(pack.truth_mm, Measure::Length)),
                    ("n", value(pack.labelled_mm, Measure::Length)),
                    ("n", signed(pack.truth_mm - pack.labelled_mm, 3)),
                    ("", read),
                    ("small", escaped(&wrong.join("; "))),
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

fn marks(page: &mut Page, debrief: &Debrief) {
    let marks = &debrief.marks;
    let [pinion, wheel] = marks.numbers;
    page.element("h3", "Numbers and mark on the gears");
    let compared = marks.compared.map_or_else(
        || "You did not compare them.".to_owned(),
        |o| format!("You compared them in operation {o}."),
    );
    let matched = if pinion == wheel {
        format!("Pinion and ring gear are both etched {pinion}: they belong together.")
    } else {
        format!("The pinion is etched {pinion} and the ring gear {wheel}: they do not belong together.")
    };
    page.paragraph(&format!(
        "{matched} {compared} The mark on the pinion\u{2019}s head says {} ({}); true is {} ({}): the mark is off by {}.",
        deviation(marks.mark_etched_mm, Units::Metric),
        deviation(marks.mark_etched_mm, Units::Inch),
        deviation(marks.mark_truth_mm, Units::Metric),
        deviation(marks.mark_truth_mm, Units::Inch),
        deviation(marks.mark_etched_mm - marks.mark_truth_mm, Units::Metric)
    ));
}

/// What a size does to the axle.
fn shift_words(size: &HiddenSize) -> String {
    let parts: Vec<String> = size
        .shifts
        .iter()
        .filter(|shift| shift.by.abs() > 1.0e-9)
        .map(|shift| {
            let mm = |v: f64| format!("{}\u{a0}mm", number(v.abs(), 3));
            let way = |less: &str, more: &str| {
                if shift.by < 0.0 {
                    less.to_owned()
                } else {
                    more.to_owned()
                }
            };
            match shift.moves {
                Moves::PinionAxial => format!("pinion {} {}", mm(shift.by), way("deeper", "shallower")),
                Moves::WheelAxial => format!("ring gear {} {}", mm(shift.by), way("toward the pinion", "away")),
                Moves::Offset => format!("offset {} {}", mm(shift.by), way("less", "more")),
                Moves::ShaftAngle => format!(
                    "shaft angle {}\u{b0} {}",
                    number(crate::quantity::degrees(shift.by.abs()), 3),
                    way("closed", "opened")
                ),
                Moves::ZeroPreloadLength => format!("spacer may be {} {}", mm(shift.by), way("shorter", "longer")),
                Moves::SpacerLength => format!("spacer {} {}", mm(shift.by), way("shorter", "longer")),
                Moves::ToothStack => format!("tooth-side stack {} {}", mm(shift.by), way("shorter", "longer")),
                Moves::BackStack => format!("stack behind {} {}", mm(shift.by), way("shorter", "longer")),
                Moves::WheelAcross => format!("ring gear {} along the pinion", mm(shift.by)),
                Moves::WheelFace | Moves::WheelRadial | Moves::PinionRadial => "lash varies around the turn".to_owned(),
            }
        })
        .collect();
    parts.join(", ")
}

fn sizes(page: &mut Page, debrief: &Debrief) {
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
        let words = if size.unit == "mm" {
            value(size.off, Measure::Deviation)
        } else {
            format!("{}{}", signed(size.off, 3), size.unit)
        };
        let beyond = size.tolerance > 0.0 && size.off.abs() > size.tolerance * (1.0 + 1.0e-9);
        let beyond = if beyond {
            " <span class=\"tag off\">outside its drawing</span>"
        } else {
            ""
        };
        let looked = match (size.looked, size.findable) {
            (Some(o), _) => format!("You looked there: {}.", operation(o)),
            (None, true) => "You did not look there.".to_owned(),
            (None, false) => "Not to be found on this bench.".to_owned(),
        };
        let idle = if size.counts {
            String::new()
        } else {
            " It does not count in the axle as handed over.".to_owned()
        };
        let said = format!("{}; inspection lets {} pass.", words, number(size.tolerance, 3));
        let picture = page.picture(&hidden(
            size,
            said.replace("<br><span class=\"inch\">", " ").replace("</span>", ""),
        ));
        rows.push(row(
            "",
            &[
                ("", format!("{}{beyond}", escaped(size.words))),
                ("box", picture),
                ("n truth", words),
                ("small", escaped(&shift_words(size))),
                (
                    "small",
                    format!("{} {looked}{}", escaped(size.found_by), escaped(&idle)),
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
        .map(|s| s.words.to_lowercase())
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
            let value = match n.unit {
                "\u{d7}" => format!("{}\u{a0}times the drawing\u{2019}s", number(n.value, 2)),
                "mm" => format!("{}\u{a0}mm", number(n.value, 3)),
                unit => format!("{}\u{a0}{unit}", number(n.value, 1)),
            };
            format!("{}: {value}", n.words.to_lowercase())
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
            escaped(fault.words),
            number(100.0 * fault.share, 0)
        ));
    }
    page.raw("</ul>\n");
}
