//! The pictures of the tooth room: both flanks, transmission error, wall chart, fast enough to follow a drag.

use rayon::prelude::*;

use crate::contact::{self, Film, Pair, Placement, Route};
use crate::drawing::{Ink, Item, Picture, Point, Print, Rect, Text, WallChart};
use crate::gear::Side;
use crate::quantity::{Units, degrees, deviation, number, signed};
use crate::words::say;

use super::columns::with_unit;
use super::mesh_chart::{ChartRequest, cell_of};
use super::mesh_picture::{flank_items, motion_in};
use super::mesh_sheet::{chart_words, outline, print_of};
use super::placements::PlacementNumbers;

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
        .extend(motion_in(area, shown.pair, shown.placement, shown.route, &contact));
    picture
}

/// Prints over depth and ring gear position.
#[derive(Debug, Clone, PartialEq)]
pub struct Chart {
    chart: WallChart,
    request: ChartRequest,
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

/// The axes of the room's chart.
const AXES: &str = "pinion=-0.2:0.2:0.1,ring-gear=-0.1:0.1:0.05";

impl Chart {
    /// Computes all cells by the fast route, at the offset and shaft angle of a placement.
    pub fn new(pair: &Pair, placement: Placement, film: Film) -> Option<Self> {
        let request = ChartRequest::read(AXES).ok()?;
        let numbers = numbers_of(placement);
        let places: Vec<Placement> = request
            .down
            .values
            .iter()
            .flat_map(|&down| request.across.values.iter().map(move |&across| (across, down)))
            .map(|(across, down)| Placement {
                pinion_axial_mm: across,
                wheel_axial_mm: down,
                ..placement
            })
            .collect();
        pair.prepare_fast();
        let chart = WallChart {
            across: request.across.chart_axis(&numbers),
            down: request.down.chart_axis(&numbers),
            cells: places
                .par_iter()
                .map(|at| cell_of(pair, *at, film, Route::Fast))
                .collect(),
            outline: outline(pair.gears()),
            words: chart_words(),
        };
        Some(Self { chart, request })
    }

    /// Lays it out with the present placement marked.
    pub fn picture(&self, present: Placement, [width, height]: [f64; 2]) -> ChartPicture {
        let numbers = numbers_of(present);
        let chart = WallChart {
            across: self.request.across.chart_axis(&numbers),
            down: self.request.down.chart_axis(&numbers),
            words: chart_words(),
            ..self.chart.clone()
        };
        let layout = chart.fitted(Rect {
            left: 0.0,
            top: 0.0,
            right: width,
            bottom: height,
        });
        ChartPicture {
            items: layout.items(),
            grid: layout.grid(),
            across_mm: self.request.across.values.clone(),
            down_mm: self.request.down.values.clone(),
        }
    }
}

fn numbers_of(placement: Placement) -> PlacementNumbers {
    PlacementNumbers {
        pinion_axial_mm: placement.pinion_axial_mm,
        wheel_axial_mm: placement.wheel_axial_mm,
        offset_mm: placement.offset_mm,
        shaft_angle_deg: degrees(placement.shaft_angle_rad),
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
    let mut picture = Picture::on(
        Ink::Panel,
        WIDTH,
        HEAD + FLANKS + MOTION + FOOT,
        say!("mesh-picture-title", gears = design.name.clone()),
        say!("mesh-sheet-description"),
    );
    let numbers = numbers_of(shown.placement);
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
    let at = Point::new(16.0, HEAD + FLANKS + MOTION + 18.0);
    picture.draw(Item::Text(
        Text::new(at, say!("caution-simulated"), 12.0).ink(Ink::Muted),
    ));
    picture
}
