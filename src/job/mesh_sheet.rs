//! What the pictures of a meshed gear set have in common: the sheet's heading with the placement in words, and the
//! way from the core's values to plain ones.

use crate::contact::{self, EdgeContact, GapMap};
use crate::drawing::{
    Anchor, ChartWords, Edge, Field, Fill, Flank, Ink, Item, Outline, Path, Picture, Point, Print, Rect, Stroke, Text,
    ToothWords,
};
use crate::gear::{DepthTaper, GearSet, Side};
use crate::numerics::math;
use crate::quantity::{self, Units, number};
use crate::words::{self, say, tooth};

use super::columns::with_unit;
use super::mesh::Mesh;
use super::placements::PlacementNumbers;

/// Type sizes of the look: small, body, section, page title.
pub(super) const SMALL: f64 = 12.0;
pub(super) const BODY: f64 = 13.0;
pub(super) const TITLE: f64 = 18.0;
/// Space to the left and right edge of the sheet.
pub(super) const MARGIN: f64 = 40.0;
/// Where the heading ends.
pub(super) const HEADING_BOTTOM: f64 = 168.0;

/// One axis of placement.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Axis {
    PinionAxial,
    WheelAxial,
    Offset,
    ShaftAngle,
}

impl Axis {
    pub(super) const ALL: [Self; 4] = [Self::PinionAxial, Self::WheelAxial, Self::Offset, Self::ShaftAngle];

    /// The axis that is written so: its word, or the letter that stood for it before.
    pub(super) fn named(name: &str) -> Option<Self> {
        match name {
            "pinion" | "P" | "p" => Some(Self::PinionAxial),
            "ring-gear" | "G" | "g" => Some(Self::WheelAxial),
            "offset" | "E" | "e" => Some(Self::Offset),
            "shaft-angle" | "S" | "s" | "Σ" => Some(Self::ShaftAngle),
            _ => None,
        }
    }

    pub(super) fn name(self) -> String {
        match self {
            Self::PinionAxial => say!("mesh-pinion-depth"),
            Self::WheelAxial => say!("mesh-ring-gear"),
            Self::Offset => say!("mesh-offset"),
            Self::ShaftAngle => say!("mesh-shaft-angle"),
        }
    }

    /// What negative and positive values mean, in few words.
    pub(super) fn words(self) -> [String; 2] {
        match self {
            Self::PinionAxial => [say!("mesh-short-deeper"), say!("mesh-short-shallower")],
            Self::WheelAxial => [say!("mesh-short-toward-pinion"), say!("mesh-short-from-pinion")],
            Self::Offset => [say!("mesh-less-offset"), say!("mesh-more-offset")],
            Self::ShaftAngle => [say!("mesh-angle-closed"), say!("mesh-angle-opened")],
        }
    }

    pub(super) fn is_angle(self) -> bool {
        self == Self::ShaftAngle
    }

    /// mm or degrees.
    pub(super) fn of(self, numbers: &PlacementNumbers) -> f64 {
        match self {
            Self::PinionAxial => numbers.pinion_axial_mm,
            Self::WheelAxial => numbers.wheel_axial_mm,
            Self::Offset => numbers.offset_mm,
            Self::ShaftAngle => numbers.shaft_angle_deg,
        }
    }

    pub(super) fn set(self, numbers: &mut PlacementNumbers, value: f64) {
        *match self {
            Self::PinionAxial => &mut numbers.pinion_axial_mm,
            Self::WheelAxial => &mut numbers.wheel_axial_mm,
            Self::Offset => &mut numbers.offset_mm,
            Self::ShaftAngle => &mut numbers.shaft_angle_deg,
        } = value;
    }
}

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

fn lash_lines(lash: Option<contact::Lash>) -> [String; 3] {
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
    mesh: &Mesh,
    numbers: &PlacementNumbers,
    lash: Option<contact::Lash>,
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
            with_unit(&trimmed(mesh.film_um()), "µm"),
            with_unit(&number(quantity::inches(1.0e-3 * mesh.film_um()), 5), "in"),
            match mesh.route() {
                contact::Route::Exact => say!("mesh-exact-route"),
                contact::Route::Fast => say!("mesh-fast-route"),
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

/// Warnings about the gears and the caution, upward from the foot of the sheet.
pub(super) fn foot(picture: &mut Picture, mesh: &Mesh) {
    let bottom = picture.height - 18.0;
    let caution = Text::new(Point::new(MARGIN, bottom), say!("caution-simulated"), SMALL);
    picture.draw(Item::Text(caution.ink(Ink::Muted)));
    let warnings = mesh.gears().warnings();
    if let Some(first) = warnings.first() {
        let what = words::error::warning(first).what;
        let words = say!("mesh-doubtful-gears", what = what, more = warnings.len() - 1);
        let text = Text::new(Point::new(MARGIN, bottom - 18.0), words, SMALL);
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

/// Heading of a flank.
pub(super) fn flank_name(flank: Flank) -> String {
    match flank {
        Flank::Drive => tooth::drive_side(),
        Flank::Coast => tooth::coast_side(),
    }
}

/// Its shape on the ring gear.
pub(super) fn flank_shape(flank: Flank) -> String {
    match flank {
        Flank::Drive => say!("tooth-convex"),
        Flank::Coast => say!("tooth-concave"),
    }
}

/// Name of an edge.
pub(super) fn edge_name(edge: Edge) -> String {
    match edge {
        Edge::Toe => tooth::toe(),
        Edge::Heel => tooth::heel(),
        Edge::Root => tooth::flank(),
        Edge::Top => tooth::face(),
    }
}

/// What stands on the picture of a flank.
pub(super) fn tooth_words() -> ToothWords {
    ToothWords {
        toe: tooth::toe(),
        heel: tooth::heel(),
        root: tooth::flank(),
        top: tooth::face(),
        cannot_touch: say!("tooth-cannot-touch"),
        no_print: say!("tooth-no-pattern"),
    }
}

/// What stands on a wall chart.
pub(super) fn chart_words() -> ChartWords {
    ChartWords {
        row_lash: say!("chart-row-backlash"),
        none: say!("chart-none"),
        no_lash: say!("chart-no-backlash"),
    }
}

/// The drawing's name of a flank.
pub(super) fn flank_of(side: Side) -> Flank {
    match side {
        Side::Drive => Flank::Drive,
        Side::Coast => Flank::Coast,
    }
}

/// The shape of the wheel's flank.
pub(super) fn outline(gears: &GearSet) -> Outline {
    let pitch = gears.pitch();
    let (sin_d2, cos_d2) = math::sin_cos(pitch.wheel_pitch_angle_rad);
    // Height over the pitch cone, square to its generator.
    let height = |x: f64, y: f64| {
        let (r, z) = gears.blank().place_mm(x, y);
        (r - pitch.wheel_mean_radius_mm) * cos_d2 - (z - pitch.wheel_crossing_to_mean_mm) * sin_d2
    };
    Outline {
        face_width_mm: gears.design().wheel_face_width_mm,
        lower_mm: [height(-1.0, -1.0), height(1.0, -1.0)],
        upper_mm: [height(-1.0, 1.0), height(1.0, 1.0)],
    }
}

/// What the paste shows on a flank, for drawing.
pub(super) fn print(mesh: &Mesh, side: Side, map: Option<&GapMap>, contact: &contact::FlankContact) -> Print {
    print_of(mesh.gears(), mesh.film_um(), side, map, contact)
}

/// The same of gears under a film.
pub(super) fn print_of(
    gears: &GearSet,
    film_um: f64,
    side: Side,
    map: Option<&GapMap>,
    contact: &contact::FlankContact,
) -> Print {
    Print {
        flank: flank_of(side),
        outline: outline(gears),
        gap_um: map.map_or_else(
            || Field::new(2, 2, |_, _| None),
            |map| {
                let (columns, rows) = map.size();
                Field::new(columns, rows, |i, j| map.gap_um(i, j))
            },
        ),
        film_um,
        area_fraction: contact.pattern.map(|p| p.area_fraction),
        centroid: contact.pattern.map(|p| p.centroid),
    }
}

/// Whether an edge touches over part of the roll.
pub(super) fn on_edge(edge: Option<EdgeContact>) -> bool {
    edge.is_some_and(|e| e.wheel > 0.0 || e.pinion_tip > 0.0)
}
