//! What the sheets of a meshed gear set have in common: their heading with the placement in words, and their foot.

use crate::contact::{Lash, Route};
use crate::drawing::{Anchor, Fill, Ink, Item, Path, Picture, Point, Rect, Stroke, Text};
use crate::gear::DepthTaper;
use crate::quantity::{self, Units, number};
use crate::report::columns::with_unit;
use crate::report::foot_note::FootNote;
use crate::report::type_size::{BODY, SMALL, TITLE};
use crate::words::{self, say};

use super::axis::Axis;
use super::meshing::Meshing;
use super::numbers::PlacementNumbers;

/// Space to the left and right edge of the sheet.
pub(super) const MARGIN: f64 = 40.0;

/// Where the heading ends.
pub(super) const HEADING_BOTTOM: f64 = 168.0;

/// Value, inch value and meaning of an axis at a placement.
fn axis_lines(axis: Axis, numbers: &PlacementNumbers) -> [String; 3] {
    let value = axis.of(numbers);
    let [less, more] = axis.words();
    let said = if value > 0.0 {
        more
    } else if value < 0.0 {
        less
    } else {
        say!("mesh-as-designed")
    };
    if axis.is_angle() {
        let minutes = format!("{}′", quantity::signed(60.0 * value, 1));
        [format!("{}°", quantity::signed(value, 3)), minutes, said]
    } else {
        [
            quantity::deviation(value, Units::Metric),
            quantity::deviation(value, Units::Inch),
            said,
        ]
    }
}

fn lash_lines(lash: Option<Lash>) -> [String; 3] {
    let Some(lash) = lash else {
        return [say!("mesh-none"), String::new(), say!("mesh-flank-cannot-touch")];
    };
    let said = if lash.max_mm < 0.0 {
        say!("mesh-interferes")
    } else if lash.min_mm < 0.0 {
        say!("mesh-binds")
    } else {
        say!("mesh-over-one-pitch")
    };
    let range = |low: f64, high: f64, decimals: usize, unit: &str| {
        say!(
            "mesh-range",
            low = number(low, decimals),
            high = with_unit(&number(high, decimals), unit)
        )
    };
    [
        range(lash.min_mm, lash.max_mm, 2, "mm"),
        range(quantity::inches(lash.min_mm), quantity::inches(lash.max_mm), 4, "in"),
        said,
    ]
}

/// The heading: what is shown, of which gears, where they stand, under which film and with which lash.
pub(super) fn heading(
    picture: &mut Picture,
    what: String,
    mesh: &Meshing,
    numbers: &PlacementNumbers,
    lash: Option<Lash>,
) {
    let right = picture.width - MARGIN;
    let design = mesh.gears().design();
    let mut text = |text: Text| picture.draw(Item::Text(text));
    text(Text::new(Point::new(MARGIN, 30.0), what, SMALL).ink(Ink::Muted));
    text(Text::new(Point::new(MARGIN, 52.0), design.name.clone(), TITLE).bold());
    let depth = match design.depth {
        DepthTaper::Tapered => "tapered",
        DepthTaper::Uniform => "uniform",
    };
    let mm = |length: f64, decimals: usize| with_unit(&number(length, decimals), "mm");
    let offset = if design.offset_mm > 0.0 {
        mm(design.offset_mm, 1)
    } else {
        "none".to_owned()
    };
    let teeth = say!(
        "mesh-sheet-gears",
        ring_gear = design.wheel_teeth,
        pinion = design.pinion_teeth,
        diameter = mm(design.wheel_outer_pitch_diameter_mm, 0),
        offset = offset,
        depth = depth,
        cutter = mm(design.cutter_radius_mm, 1)
    );
    text(Text::new(Point::new(MARGIN, 72.0), teeth, BODY));
    let mut columns: Vec<(String, [String; 3])> = Axis::ALL
        .into_iter()
        .map(|axis| (axis.name(), axis_lines(axis, numbers)))
        .collect();
    columns.push((
        say!("mesh-compound"),
        [
            with_unit(&trimmed(mesh.film.thickness_um), "µm"),
            with_unit(&number(quantity::inches(1.0e-3 * mesh.film.thickness_um), 5), "in"),
            match mesh.route {
                Route::Exact => say!("mesh-exact-route"),
                Route::Fast => say!("mesh-fast-route"),
            },
        ],
    ));
    columns.push((say!("mesh-backlash"), lash_lines(lash)));
    // The last column holds a range.
    let table = Rect {
        left: MARGIN,
        top: 86.0,
        right,
        bottom: HEADING_BOTTOM - 6.0,
    };
    let width = table.width() / (columns.len() as f64 + 0.45);
    let mut items = vec![Item::Shape {
        path: table.path(),
        fill: Some(Fill::Plain {
            ink: Ink::Inset,
            opacity: 1.0,
        }),
        stroke: Some(Stroke::full(Ink::Line, 1.0)),
    }];
    for (k, (name, lines)) in columns.into_iter().enumerate() {
        let left = table.left + k as f64 * width;
        if k > 0 {
            let rule = Path::line(Point::new(left, table.top), Point::new(left, table.bottom));
            items.push(Item::stroked(rule, Stroke::full(Ink::Line, 1.0)));
        }
        let at = |line: f64| Point::new(left + 8.0, table.top + 17.0 + 18.0 * line);
        let [value, inch, said] = lines;
        items.push(Item::Text(Text::new(at(0.0), name, SMALL).ink(Ink::Muted)));
        items.push(Item::Text(Text::new(at(1.0), value, BODY).bold()));
        items.push(Item::Text(Text::new(at(1.95), inch, SMALL)));
        items.push(Item::Text(Text::new(at(2.9), said, SMALL)));
    }
    picture.items.extend(items);
}

/// Room for the maker's name beside the note.
const MAKER: f64 = 80.0;

/// The note at the foot of a sheet of this width.
pub(super) fn foot_note(width: f64) -> FootNote {
    FootNote::within(width - 2.0 * MARGIN - MAKER)
}

/// Warnings about the gears and the note, upward from the foot of the sheet.
pub(super) fn foot(picture: &mut Picture, mesh: &Meshing) {
    let bottom = picture.height - 18.0;
    let note = foot_note(picture.width);
    let above = bottom - note.more() - 18.0;
    picture.items.extend(note.items(MARGIN, bottom));
    let warnings = mesh.gears().warnings();
    if let Some(first) = warnings.first() {
        let what = words::error::warning(first).what;
        let words = say!("mesh-doubtful-gears", what = what, more = warnings.len() - 1);
        let text = Text::new(Point::new(MARGIN, above), words, SMALL);
        picture.draw(Item::Text(text.bold().ink(Ink::Off)));
    }
    let right = Point::new(picture.width - MARGIN, bottom);
    let made = Text::new(right, "Lashwright", SMALL).anchored(Anchor::End);
    picture.draw(Item::Text(made.ink(Ink::Muted)));
}

/// A number without decimals that say nothing.
pub(super) fn trimmed(value: f64) -> String {
    if (value - value.round()).abs() < 1.0e-9 {
        number(value, 0)
    } else {
        number(value, 1)
    }
}
