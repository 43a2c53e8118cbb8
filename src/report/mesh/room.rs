//! The pictures of the tooth room: both flanks, transmission error, and all of them on one sheet to be kept.

use crate::contact::{self, Film, Pair, Placement, Route};
use crate::drawing::{Ink, Item, Picture, Point, Print, Rect, Text, WallChart};
use crate::gear::Side;
use crate::quantity::{Units, deviation, number, signed};
use crate::report::columns::with_unit;
use crate::report::foot_note::FootNote;
use crate::words::say;

use super::axes::ChartAxes;
use super::flank::flank_items;
use super::numbers::PlacementNumbers;
use super::plot::motion as plot;
use super::tooth::print_of;

/// What the tooth room shows.
#[derive(Debug, Clone, Copy)]
pub struct Shown<'p> {
    /// The gears.
    pub pair: &'p Pair,
    /// How they stand.
    pub placement: Placement,
    /// The paste.
    pub film: Film,
    /// Fast while something is dragged, exact at rest.
    pub route: Route,
    /// Another placement to compare with.
    pub other: Option<Placement>,
}

/// Both flanks with their prints, one below the other, and the outlines of the other placement's prints over them.
pub fn flanks(shown: &Shown<'_>, [width, height]: [f64; 2]) -> Picture {
    let contact = contact::solve(shown.pair, shown.placement, shown.film, shown.route);
    let mut picture = Picture::on(
        Ink::Panel,
        width,
        height,
        say!("mesh-pattern-on-ring-gear"),
        say!("mesh-flanks-description"),
    );
    for (k, side) in Side::BOTH.into_iter().enumerate() {
        let print = print_at(shown, shown.placement, side);
        let ghost = shown.other.map(|other| print_at(shown, other, side));
        let zone = Rect {
            left: 0.5,
            top: 0.5 + 0.5 * height * k as f64,
            right: width - 0.5,
            bottom: 0.5 * height * (k as f64 + 1.0),
        };
        picture
            .items
            .extend(flank_items(&print, contact.flank(side), zone, ghost.as_ref()));
    }
    picture
}

fn print_at(shown: &Shown<'_>, placement: Placement, side: Side) -> Print {
    let contact = contact::solve(shown.pair, placement, shown.film, shown.route);
    let map = contact::gap_map(shown.pair, placement, side, shown.route);
    print_of(
        shown.pair.gears(),
        shown.film.thickness_um,
        side,
        map.as_ref(),
        contact.flank(side),
    )
}

/// Transmission error of both flanks over two pitches.
pub fn motion(shown: &Shown<'_>, [width, height]: [f64; 2]) -> Picture {
    let contact = contact::solve(shown.pair, shown.placement, shown.film, shown.route);
    let mut picture = Picture::on(
        Ink::Panel,
        width,
        height,
        say!("mesh-transmission-error"),
        say!("mesh-motion-description"),
    );
    let area = Rect {
        left: 68.0,
        top: 40.0,
        right: width - 96.0,
        bottom: height - 50.0,
    };
    picture
        .items
        .extend(plot(area, shown.pair, shown.placement, shown.route, &contact));
    picture
}

/// A wall chart laid out: its picture, the rectangle of its cells and their values.
#[derive(Debug, Clone, PartialEq)]
pub struct ChartPicture {
    /// What is drawn.
    pub items: Vec<Item>,
    /// All cells.
    pub grid: Rect,
    /// Place of the pinion in each column, mm.
    pub across_mm: Vec<f64>,
    /// Place of the ring gear in each row, mm.
    pub down_mm: Vec<f64>,
}

/// Lays a wall chart out, whose rows and columns stand at these places.
pub(crate) fn chart(chart: &WallChart, axes: &ChartAxes, [width, height]: [f64; 2]) -> ChartPicture {
    let layout = chart.fitted(Rect {
        left: 0.0,
        top: 0.0,
        right: width,
        bottom: height,
    });
    ChartPicture {
        items: layout.items(),
        grid: layout.grid(),
        across_mm: axes.across.values().to_vec(),
        down_mm: axes.down.values().to_vec(),
    }
}

/// Flanks and motion on one sheet, to be kept.
pub fn sheet(shown: &Shown<'_>) -> Picture {
    const WIDTH: f64 = 760.0;
    const FLANKS: f64 = 560.0;
    const MOTION: f64 = 220.0;
    const HEAD: f64 = 48.0;
    const FOOT: f64 = 28.0;
    let design = shown.pair.gears().design();
    let note = FootNote::within(WIDTH - 32.0);
    let mut picture = Picture::on(
        Ink::Panel,
        WIDTH,
        HEAD + FLANKS + MOTION + FOOT + note.more(),
        say!("mesh-picture-title", gears = design.name.clone()),
        say!("mesh-sheet-description"),
    );
    let numbers = PlacementNumbers::of(shown.placement);
    let title = Text::new(Point::new(16.0, 20.0), design.name.clone(), 15.0).bold();
    picture.draw(Item::Text(title));
    let words = say!(
        "mesh-sheet-placement",
        pinion = deviation(numbers.pinion_axial_mm, Units::Metric),
        ring_gear = deviation(numbers.wheel_axial_mm, Units::Metric),
        offset = deviation(numbers.offset_mm, Units::Metric),
        angle = signed(numbers.shaft_angle_deg, 3),
        compound = with_unit(&number(shown.film.thickness_um, 1), "µm"),
    );
    picture.draw(Item::Text(Text::new(Point::new(16.0, 38.0), words, 12.0)));
    let moved = |items: Vec<Item>, by: f64| items.into_iter().map(move |item| item.moved(0.0, by));
    picture.items.extend(moved(flanks(shown, [WIDTH, FLANKS]).items, HEAD));
    picture
        .items
        .extend(moved(motion(shown, [WIDTH, MOTION]).items, HEAD + FLANKS));
    let bottom = HEAD + FLANKS + MOTION + 18.0 + note.more();
    picture.items.extend(note.items(16.0, bottom));
    picture
}
