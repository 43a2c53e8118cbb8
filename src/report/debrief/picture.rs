//! Pictures of the debrief: scales with bands, prints, the way over time.

use crate::contact::{self, Contact, Film, Pair, Placement, Route};
use crate::drawing::{
    Anchor, Axis, Fill, Hatch, Ink, Item, Mark, Path, Picture, Point, Print, Rect, Stroke, Text, ToothView, flag,
};
use crate::exercise::debrief::{Build, HiddenSize, Line, Place, Standing};
use crate::gear::Side;
use crate::words::debrief as words;
use crate::words::{say, tooth};

use super::cell::points_of;
use crate::report::columns::with_unit;
use crate::report::mesh::print_of;
use crate::report::type_size::{BODY, SMALL};

/// Width of a scale with bands.
const SCALE: [f64; 2] = [244.0, 38.0];
/// Upper and lower edge of its bar.
const BAR: [f64; 2] = [14.0, 25.0];
/// Size of a print of one flank.
const TOOTH: [f64; 2] = [188.0, 60.0];
/// Width of the line of time.
const TIME_WIDTH: f64 = 700.0;

fn plain(ink: Ink) -> Fill {
    Fill::Plain { ink, opacity: 1.0 }
}

fn rect(left: f64, top: f64, right: f64, bottom: f64) -> Rect {
    Rect {
        left,
        top,
        right,
        bottom,
    }
}

/// The mark of a place in its bands.
pub(super) fn place_mark(place: Place) -> Picture {
    let (mark, ink) = match place {
        Place::Full => (Mark::Good, Ink::Good),
        Place::Between => (Mark::Near, Ink::Near),
        Place::Off => (Mark::Off, Ink::Off),
    };
    let mut picture = Picture::on(Ink::Inset, 20.0, 20.0, words::standing::worth(place), "");
    for item in mark.items(Point::new(10.0, 10.0), 15.0, ink, Ink::Inset) {
        picture.draw(item);
    }
    picture
}

/// Where a judged quantity stands: full band plain, partial band with upright hatch, outside crossed; truth a filled
/// triangle below, note an open circle above, reading a tick.
pub(super) fn standing(standing: &Standing, description: String) -> Picture {
    let [width, height] = SCALE;
    let [top, bottom] = BAR;
    let (full, zero) = (standing.full, standing.zero);
    let one_sided = zero.low >= full.low;
    let room = 0.18 * (zero.high - zero.low);
    let axis = Axis {
        from: if one_sided { zero.low } else { zero.low - room },
        to: zero.high + room,
        from_place: 14.0,
        to_place: width - 14.0,
    };
    let mut picture = Picture::on(
        Ink::Inset,
        width,
        height,
        words::standing::name(standing.what),
        description,
    );
    let mut band = |from: f64, to: f64, fills: &[Fill]| {
        let [from, to] = [from, to].map(|v| axis.place(v));
        if to - from < 0.2 {
            return;
        }
        let path = rect(from, top, to, bottom).path();
        for fill in fills {
            picture.draw(Item::filled(path.clone(), *fill));
        }
        picture.draw(Item::stroked(path, Stroke::full(Ink::Line, 0.8)));
    };
    let hatched = |hatch, ink| Fill::Hatched { hatch, ink };
    let off = [plain(Ink::Inset), hatched(Hatch::Crossed, Ink::Off)];
    let near = [plain(Ink::Inset), hatched(Hatch::Upright, Ink::Near)];
    band(axis.from, zero.low, &off);
    band(zero.low, full.low, &near);
    band(full.low, full.high, &[plain(Ink::Good)]);
    band(full.high, zero.high, &near);
    band(zero.high, axis.to, &off);
    let at = |value: f64| {
        let place = axis.place(value);
        place.clamp(axis.from_place, axis.to_place)
    };
    if let Some(read) = standing.read {
        let x = at(read);
        let line = Path::line(Point::new(x, top - 3.0), Point::new(x, bottom + 3.0));
        picture.draw(Item::stroked(line.clone(), Stroke::full(Ink::Inset, 5.0)));
        picture.draw(Item::stroked(line, Stroke::full(Ink::Truth, 2.0)));
    }
    if let Some(noted) = standing.noted {
        let x = at(noted);
        for item in Mark::OpenCircle.items(Point::new(x, top - 7.5), 9.0, Ink::Belief, Ink::Inset) {
            picture.draw(item);
        }
    }
    if let Some(truth) = standing.truth {
        let x = at(truth);
        for item in Mark::TriangleUp.items(Point::new(x, bottom + 1.0), 11.0, Ink::Truth, Ink::Inset) {
            picture.draw(item);
        }
        // Beyond the end of the scale: an arrow says that it goes on.
        let place = axis.place(truth);
        let beyond = if place > axis.to_place {
            Some((1.0, axis.to_place))
        } else if place < axis.from_place {
            Some((-1.0, axis.from_place))
        } else {
            None
        };
        if let Some((way, end)) = beyond {
            let y = bottom + 6.0;
            let arrow = Path::open([
                Point::new(end + way * 7.0, y - 2.0),
                Point::new(end + way * 11.0, y + 2.0),
                Point::new(end + way * 7.0, y + 6.0),
            ]);
            picture.draw(Item::stroked(arrow, Stroke::full(Ink::Truth, 1.6)));
        }
    }
    picture
}

/// How far a part is from its drawing: a box as wide as inspection lets pass, a triangle where the part is.
pub(super) fn hidden(size: &HiddenSize, description: String) -> Picture {
    const WIDTH: f64 = 130.0;
    const HEIGHT: f64 = 24.0;
    let mut picture = Picture::on(
        Ink::Inset,
        WIDTH,
        HEIGHT,
        words::hidden::member(size.member),
        description,
    );
    let reach = if size.tolerance > 0.0 {
        2.2 * size.tolerance
    } else {
        1.25 * size.off.abs()
    };
    let reach = if reach > 0.0 { reach } else { 1.0 };
    let axis = Axis {
        from: -reach,
        to: reach,
        from_place: 8.0,
        to_place: WIDTH - 8.0,
    };
    let y = 9.0;
    let (left, right) = (axis.place(-size.tolerance), axis.place(size.tolerance));
    if size.tolerance > 0.0 {
        let path = rect(left, y - 4.0, right, y + 4.0).path();
        picture.draw(Item::filled(path.clone(), plain(Ink::Ground)));
        picture.draw(Item::stroked(path, Stroke::full(Ink::Line, 0.8)));
    }
    let line = Path::line(Point::new(axis.from_place, y), Point::new(axis.to_place, y));
    picture.draw(Item::stroked(line, Stroke::full(Ink::Line, 1.0)));
    let middle = axis.place(0.0);
    let tick = Path::line(Point::new(middle, y - 6.0), Point::new(middle, y + 6.0));
    picture.draw(Item::stroked(tick, Stroke::full(Ink::Line, 1.2)));
    let x = axis.place(size.off).clamp(axis.from_place, axis.to_place);
    for item in Mark::TriangleUp.items(Point::new(x, y + 2.0), 12.0, Ink::Truth, Ink::Inset) {
        picture.draw(item);
    }
    picture
}

/// Both flanks' prints of a pair at a place, for drawing.
pub(super) fn prints(pair: &Pair, placement: Placement, contact: &Contact) -> [Print; 2] {
    let film_um = Film::default().thickness_um;
    Side::BOTH.map(|side| {
        let map = contact::gap_map(pair, placement, side, Route::Exact);
        print_of(pair.gears(), film_um, side, map.as_ref(), contact.flank(side))
    })
}

/// Drive over coast, toe left, top up, with the outlines of other prints over them.
pub(super) fn teeth(prints: &[Print; 2], ghost: Option<&[Print; 2]>, title: &str, said: String) -> Picture {
    let [width, height] = TOOTH;
    let (left, gap) = (30.0, 8.0);
    let edge = 16.0;
    let total = 2.0 * height + gap + 2.0 * edge;
    let mut picture = Picture::on(Ink::Panel, left + width, total, title, said);
    for (k, print) in prints.iter().enumerate() {
        let top = edge + (height + gap) * k as f64;
        let area = rect(left, top, left + width - 2.0, top + height);
        let view = ToothView::fitted(print, area);
        for item in view.small(true) {
            picture.draw(item);
        }
        if let Some(centroid) = print.centroid {
            for item in Mark::Plus.items(view.point(centroid), 9.0, Ink::GhostLight, Ink::GhostDark) {
                picture.draw(item);
            }
        } else {
            let at = view.point([0.0, 0.0]);
            let text = Text::new(Point::new(at.x, at.y + 4.0), say!("pages-no-pattern"), SMALL)
                .bold()
                .anchored(Anchor::Middle);
            picture.draw(Item::Text(text.ink(Ink::GhostDark).with_halo(Ink::Paste)));
        }
        if let Some(ghost) = ghost.and_then(|g| g.get(k)) {
            for item in view.ghost(ghost) {
                picture.draw(item);
            }
        }
        for item in flag(print.flank, Point::new(2.0, top + 0.5 * height)) {
            picture.draw(item);
        }
    }
    let at = |x: f64, y: f64, words: String, anchor: Anchor| {
        Item::Text(
            Text::new(Point::new(x, y), words, SMALL)
                .ink(Ink::Muted)
                .anchored(anchor),
        )
    };
    let middle = left + 0.5 * width;
    picture.draw(at(left, 12.0, tooth::toe(), Anchor::Start));
    picture.draw(at(middle, 12.0, tooth::face(), Anchor::Middle));
    picture.draw(at(left + width - 2.0, 12.0, tooth::heel(), Anchor::End));
    picture.draw(at(middle, total - 4.0, tooth::flank(), Anchor::Middle));
    picture
}

/// Points of a part: a bar filled as far as it was reached.
pub(super) fn bar(words: &str, reached: f64, full: f64) -> Picture {
    let mut picture = Picture::on(Ink::Inset, 112.0, 12.0, words, points_of(reached, full));
    let share = if full > 0.0 {
        (reached / full).clamp(0.0, 1.0)
    } else {
        0.0
    };
    picture.draw(Item::filled(
        rect(1.0, 1.0, 1.0 + 110.0 * share, 11.0).path(),
        plain(Ink::Text),
    ));
    picture.draw(Item::stroked(
        rect(1.0, 1.0, 111.0, 11.0).path(),
        Stroke::full(Ink::Line, 1.0),
    ));
    picture
}

/// One row of the line of time.
#[derive(Debug, Clone)]
pub(super) struct Row<'a> {
    pub(super) name: String,
    pub(super) builds: &'a [Build],
    pub(super) lines: &'a [Line],
}

/// Rows over hours of work: a box a build, a tick an operation, a paste-coloured square a print, a bar a tear-down, a
/// warning sign an unsafe act.
pub(super) fn time(rows: &[Row<'_>]) -> Picture {
    const LEFT: f64 = 84.0;
    const ROW: f64 = 50.0;
    let end = |row: &Row<'_>| row.lines.last().map_or(0.0, |l| l.at_minutes + l.answer.minutes);
    let minutes = rows.iter().map(end).fold(1.0, f64::max);
    let height = ROW * rows.len() as f64 + 34.0;
    let mut picture = Picture::on(
        Ink::Panel,
        TIME_WIDTH,
        height,
        say!("pages-time-title"),
        say!("pages-time-said"),
    );
    let axis = Axis {
        from: 0.0,
        to: minutes / 60.0,
        from_place: LEFT,
        to_place: TIME_WIDTH - 24.0,
    };
    let x = |at_minutes: f64| axis.place(at_minutes / 60.0);
    for (k, row) in rows.iter().enumerate() {
        let top = 8.0 + ROW * k as f64;
        let bottom = top + 36.0;
        let name = Text::new(Point::new(4.0, top + 22.0), row.name.clone(), BODY).bold();
        picture.draw(Item::Text(name));
        let mut from = 0.0;
        for build in row.builds {
            let to = if build.handed_over { end(row) } else { build.minutes };
            let area = rect(x(from), top, x(to), bottom);
            picture.draw(Item::filled(area.path(), plain(Ink::Inset)));
            picture.draw(Item::stroked(area.path(), Stroke::full(Ink::Text, 1.2)));
            let names = [words::build::short_name(build), build.number.to_string()];
            let fitting = names
                .into_iter()
                .map(|w| Text::new(Point::new(area.left + 4.0, top + 13.0), w, SMALL))
                .find(|t| t.width() < area.width() - 6.0);
            if let Some(text) = fitting {
                picture.draw(Item::Text(text));
            }
            from = to;
        }
        for line in row.lines.iter().filter(|l| l.answer.refused.is_none()) {
            let at = x(line.at_minutes);
            let tick = Path::line(Point::new(at, bottom - 8.0), Point::new(at, bottom));
            picture.draw(Item::stroked(tick, Stroke::full(Ink::Line, 0.6)));
        }
        for line in row.lines {
            let at = x(line.at_minutes);
            if line.rolled() {
                let square = rect(at - 4.0, bottom - 14.0, at + 4.0, bottom - 6.0).path();
                picture.draw(Item::Shape {
                    path: square,
                    fill: Some(plain(Ink::Paste)),
                    stroke: Some(Stroke::full(Ink::Text, 1.0)),
                });
            }
            if line.tear_down {
                let thick = Path::line(Point::new(at, top - 4.0), Point::new(at, bottom + 4.0));
                picture.draw(Item::stroked(thick, Stroke::full(Ink::Text, 3.0)));
            }
            if !line.answer.cautions.is_empty() {
                for item in Mark::Off.items(Point::new(at, top + 4.0), 11.0, Ink::Off, Ink::Inset) {
                    picture.draw(item);
                }
            }
        }
    }
    let y = 8.0 + ROW * rows.len() as f64 - 4.0;
    let line = Path::line(Point::new(axis.from_place, y), Point::new(axis.to_place, y));
    picture.draw(Item::stroked(line, Stroke::full(Ink::Line, 1.0)));
    for tick in axis.ticks(axis.round_step(8)) {
        let at = axis.place(tick.value);
        let mark = Path::line(Point::new(at, y), Point::new(at, y + 5.0));
        picture.draw(Item::stroked(mark, Stroke::full(Ink::Line, 1.0)));
        let text = Text::new(Point::new(at, y + 18.0), with_unit(&tick.label, "h"), SMALL);
        picture.draw(Item::Text(text.anchored(Anchor::Middle)));
    }
    picture
}
