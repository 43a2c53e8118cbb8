//! The picture of a meshed gear set: both flanks with what the paste shows, transmission error and lash.

use std::path::Path as FilePath;

use crate::contact::{self, FlankContact, Pair, Resolution};
use crate::drawing::{
    Anchor, Edge, Fill, Flank, Frame, FrameSide, Hatch, Ink, Item, Nearest, Path, Picture, Point, Print, Rect, Stroke,
    Text, Theme, ToothView, flag, svg,
};
use crate::gear::Side;
use crate::quantity::{inches, number};
use crate::store;
use crate::words::say;

use super::Failure;
use super::columns::with_unit;
use super::mesh::{Mesh, MeshRequest};
use super::mesh_sheet::{
    BODY, HEADING_BOTTOM, MARGIN, SMALL, edge_name, flank_name, flank_of, flank_shape, foot, heading, on_edge, print,
    tooth_words,
};
use super::placements::PlacementNumbers;

/// The sheet, points: it fits A4 and Letter.
const SHEET: [f64; 2] = [800.0, 1044.0];
/// Height of the part of one flank, with its heading and numbers.
const FLANK_HEIGHT: f64 = 282.0;
/// Plots of transmission error and lash.
const PLOTS_TOP: f64 = HEADING_BOTTOM + 2.0 * FLANK_HEIGHT + 68.0;
const PLOTS_BOTTOM: f64 = PLOTS_TOP + 142.0;
/// Rolls in a pitch of a curve.
const ROLLS: usize = 96;
/// Nearer to the middle than this, a print is "mid-length" or "mid-height", mm.
const MIDDLE_MM: f64 = 0.05;

/// Draws what `lashwright mesh` computes and writes it as an SVG file, whole or not at all.
///
/// # Errors
/// As [`super::mesh::at`], and a file that cannot be written.
pub fn write(request: &MeshRequest, numbers: PlacementNumbers, file: &FilePath) -> Result<(), Failure> {
    let numbers = numbers.checked()?;
    let mesh = Mesh::prepare(request)?;
    let text = svg::write(&picture(&mesh, &numbers), Theme::Paper);
    Ok(store::write_whole(file, text.as_bytes())?)
}

/// The picture of a placement.
pub(super) fn picture(mesh: &Mesh, numbers: &PlacementNumbers) -> Picture {
    let contact = mesh.contact(numbers);
    // The lines of equal gap run straight between grid points, so that the pointed ends of a print want a finer grid
    // than its area does: with this one they are right to a tenth of a millimetre.
    let fine = Pair::with_resolution(
        mesh.gears().clone(),
        Resolution {
            lengthwise: 2 * Resolution::SHIPPED.lengthwise,
            heightwise: 2 * Resolution::SHIPPED.heightwise,
            ..Resolution::SHIPPED
        },
    );
    let prints = Side::BOTH.map(|side| {
        let map = contact::gap_map(&fine, numbers.placement(), side, mesh.route());
        print(mesh, side, map.as_ref(), contact.flank(side))
    });
    let mut picture = Picture::on(
        Ink::Panel,
        SHEET[0],
        SHEET[1],
        say!("mesh-picture-title", gears = mesh.gears().design().name.clone()),
        description(&contact, &prints),
    );
    heading(
        &mut picture,
        say!("mesh-pattern-on-ring-gear"),
        mesh,
        numbers,
        contact.lash,
    );
    for (k, print) in prints.iter().enumerate() {
        let side = if k == 0 { Side::Drive } else { Side::Coast };
        let top = HEADING_BOTTOM + FLANK_HEIGHT * k as f64;
        let zone = Rect {
            left: MARGIN,
            top,
            right: SHEET[0] - MARGIN,
            bottom: top + FLANK_HEIGHT - 8.0,
        };
        for item in flank_items(print, contact.flank(side), zone, None) {
            picture.draw(item);
        }
    }
    for item in legend(&prints)
        .into_iter()
        .chain(motion(mesh, numbers, &contact))
        .chain(lash(mesh, numbers))
    {
        picture.draw(item);
    }
    foot(&mut picture, mesh);
    picture
}

/// What the picture shows, for those who do not see it.
fn description(contact: &contact::Contact, prints: &[Print; 2]) -> String {
    let flank = |print: &Print, contact: &FlankContact| {
        say!(
            "mesh-picture-flank",
            side = flank_name(print.flank),
            center = center_words(print, true),
            edge = edge_words(print, true),
            contact = edge_contact_words(contact)
        )
    };
    let [drive, coast] = prints;
    [flank(drive, &contact.drive), flank(coast, &contact.coast)].join(" ")
}

/// A length on the tooth in inches: hundredths, as a tenth of a millimetre is all that a print shows.
fn inch(length_mm: f64) -> String {
    with_unit(&number(inches(length_mm), 2), "in")
}

/// A length on the tooth: millimetres, with inches where there is room.
fn tooth_length(length_mm: f64, both_units: bool) -> String {
    let mm = with_unit(&number(length_mm, 1), "mm");
    if both_units {
        format!("{mm} ({})", inch(length_mm))
    } else {
        mm
    }
}

/// Where the middle of the print lies from the middle of the tooth.
fn center_words(print: &Print, both_units: bool) -> String {
    let Some(centroid) = print.centroid else {
        return say!("mesh-no-pattern");
    };
    let [heelward, topward] = print.outline.from_middle_mm(centroid);
    let part = |value: f64, [less, more]: [Edge; 2], middle: String| {
        if value.abs() < MIDDLE_MM {
            return middle;
        }
        to_edge(if value < 0.0 { less } else { more }, value.abs(), both_units)
    };
    [
        part(heelward, [Edge::Toe, Edge::Heel], say!("mesh-mid-length")),
        part(topward, [Edge::Root, Edge::Top], say!("mesh-mid-height")),
    ]
    .join(", ")
}

/// A way toward an edge.
fn to_edge(edge: Edge, length_mm: f64, both_units: bool) -> String {
    let length = tooth_length(length_mm, both_units);
    match edge {
        Edge::Toe => say!("mesh-to-toe", length = length),
        Edge::Heel => say!("mesh-to-heel", length = length),
        Edge::Root => say!("mesh-to-flank", length = length),
        Edge::Top => say!("mesh-to-face", length = length),
    }
}

/// How near the print comes to an edge, or where it runs off.
fn edge_words(print: &Print, both_units: bool) -> String {
    let off: Vec<String> = print
        .distances()
        .into_iter()
        .filter(Nearest::runs_off)
        .map(|n| edge_name(n.edge))
        .collect();
    if !off.is_empty() {
        return say!("mesh-runs-off", edges = off.join(", "));
    }
    print.nearest().map_or_else(
        || say!("mesh-none"),
        |nearest| to_edge(nearest.edge, nearest.distance_mm, both_units),
    )
}

fn edge_contact_words(flank: &FlankContact) -> String {
    let Some(edge) = flank.edge_contact else {
        return say!("mesh-cannot-touch");
    };
    let share = |part: f64| number(100.0 * part, 0);
    match (edge.wheel > 0.0, edge.pinion_tip > 0.0) {
        (false, false) => say!("mesh-none"),
        (true, false) => say!("mesh-edge-ring-gear", ring_gear = share(edge.wheel)),
        (false, true) => say!("mesh-edge-pinion", pinion = share(edge.pinion_tip)),
        (true, true) => say!(
            "mesh-edge-both",
            ring_gear = share(edge.wheel),
            pinion = share(edge.pinion_tip)
        ),
    }
}

/// A muted name with its bold value; answers where the next one may begin.
fn said(items: &mut Vec<Item>, at: Point, name: String, value: String, ink: Ink) -> f64 {
    let name = Text::new(at, name, BODY).ink(Ink::Muted);
    let x = at.x + name.width() + 7.0;
    items.push(Item::Text(name));
    let value = Text::new(Point::new(x, at.y), value, BODY).bold().ink(ink);
    let end = x + value.width() + 22.0;
    items.push(Item::Text(value));
    end
}

/// One flank in its zone: heading, tooth, numbers; over it the outline of another print.
pub(super) fn flank_items(print: &Print, contact: &FlankContact, zone: Rect, ghost: Option<&Print>) -> Vec<Item> {
    let top = zone.top;
    let mut items = vec![Item::Shape {
        path: zone.path(),
        fill: Some(Fill::Plain {
            ink: Ink::Inset,
            opacity: 1.0,
        }),
        stroke: Some(Stroke::full(Ink::Line, 1.0)),
    }];
    let line = top + 22.0;
    items.extend(flag(print.flank, Point::new(zone.left + 12.0, line - 4.5)));
    let name = Text::new(Point::new(zone.left + 42.0, line), flank_name(print.flank), 15.0).bold();
    items.push(Item::Text(name));
    let narrow = zone.width() < 660.0;
    if !narrow {
        let shape = Text::new(Point::new(zone.left + 132.0, line), flank_shape(print.flank), SMALL);
        items.push(Item::Text(shape.ink(Ink::Muted)));
    }
    let area = print
        .area_fraction
        .map_or_else(|| "0\u{a0}%".to_owned(), |a| with_unit(&number(100.0 * a, 0), "%"));
    let first = zone.left + if narrow { 142.0 } else { 232.0 };
    let mut x = said(&mut items, Point::new(first, line), say!("mesh-area"), area, Ink::Text);
    said(
        &mut items,
        Point::new(x, line),
        say!("mesh-center"),
        center_words(print, !narrow),
        Ink::Text,
    );
    let tooth = Rect {
        left: zone.left + 62.0,
        right: zone.right - 62.0,
        top: top + if narrow { 58.0 } else { 62.0 },
        bottom: zone.bottom - if narrow { 56.0 } else { 58.0 },
    };
    let view = ToothView::fitted(print, tooth);
    items.extend(view.large(&tooth_words()));
    if let Some(ghost) = ghost {
        items.extend(view.ghost(ghost));
    }
    let line = zone.bottom - 10.0;
    let off = print.nearest().is_some_and(|n| n.runs_off());
    let ink = |bad: bool| if bad { Ink::Off } else { Ink::Text };
    x = said(
        &mut items,
        Point::new(zone.left + 12.0, line),
        say!("mesh-pattern-to-edge"),
        edge_words(print, !narrow),
        ink(off),
    );
    let error = contact
        .transmission_error_urad
        .map_or_else(|| say!("mesh-none"), |e| with_unit(&number(e, 0), "µrad"));
    x = said(
        &mut items,
        Point::new(x, line),
        say!("mesh-transmission-error"),
        error,
        Ink::Text,
    );
    let touches = on_edge(contact.edge_contact);
    said(
        &mut items,
        Point::new(x, line),
        say!("mesh-edge-contact"),
        edge_contact_words(contact),
        ink(touches),
    );
    items
}

/// What lines and fills on the teeth mean.
fn legend(prints: &[Print; 2]) -> Vec<Item> {
    let y = HEADING_BOTTOM + 2.0 * FLANK_HEIGHT + 10.0;
    let mut items = Vec::new();
    let mut x = MARGIN;
    let film = prints.first().map_or(0.0, |p| p.film_um);
    let mut entry = |fills: Vec<Fill>, stroke: Option<Stroke>, words: String| {
        let swatch = Rect {
            left: x,
            top: y - 11.0,
            right: x + 24.0,
            bottom: y + 1.0,
        };
        for fill in fills {
            items.push(Item::filled(swatch.path(), fill));
        }
        match stroke {
            Some(stroke) => {
                let line = Path::line(Point::new(x, y - 5.0), Point::new(x + 24.0, y - 5.0));
                items.push(Item::stroked(line, stroke));
            }
            None => items.push(Item::stroked(swatch.path(), Stroke::full(Ink::Line, 0.8))),
        }
        let text = Text::new(Point::new(x + 30.0, y), words, SMALL);
        x += 30.0 + text.width() + 16.0;
        items.push(Item::Text(text));
    };
    let plain = |ink| Fill::Plain { ink, opacity: 1.0 };
    let hatched = |hatch, ink| Fill::Hatched { hatch, ink };
    entry(
        vec![plain(Ink::Steel), hatched(Hatch::Level, Ink::SteelWorn)],
        None,
        say!("mesh-legend-pattern"),
    );
    entry(
        vec![plain(Ink::Paste), hatched(Hatch::Stipple, Ink::PasteRim)],
        None,
        say!("mesh-legend-compound"),
    );
    entry(
        vec![plain(Ink::Inset), hatched(Hatch::Crossed, Ink::Line)],
        None,
        say!("mesh-legend-no-reach"),
    );
    entry(
        vec![plain(Ink::Paste)],
        Some(Stroke::full(Ink::GhostDark, 2.0)),
        say!(
            "mesh-legend-film",
            film = with_unit(&super::mesh_sheet::trimmed(film), "µm")
        ),
    );
    entry(
        vec![plain(Ink::Paste)],
        Some(Stroke::full(Ink::GhostDark, 0.9)),
        say!("mesh-legend-gap"),
    );
    items
}

/// How far the ring gear lags behind even motion on each flank over two pitches.
fn motion(mesh: &Mesh, numbers: &PlacementNumbers, contact: &contact::Contact) -> Vec<Item> {
    let area = Rect {
        left: MARGIN + 52.0,
        top: PLOTS_TOP,
        right: 466.0,
        bottom: PLOTS_BOTTOM,
    };
    motion_in(area, mesh.pair(), numbers.placement(), mesh.route(), contact)
}

/// The same in an area of its own; it takes 52 points at the left, 24 above, 38 below and 84 at the right besides.
pub(super) fn motion_in(
    area: Rect,
    pair: &Pair,
    placement: contact::Placement,
    route: contact::Route,
    contact: &contact::Contact,
) -> Vec<Item> {
    let pitch = pair.gears().wheel_pitch_rad();
    let curves: Vec<(Flank, Vec<(f64, f64)>)> = Side::BOTH
        .into_iter()
        .filter_map(|side| {
            let curve = contact::first_touch_urad(pair, placement, side, route, ROLLS)?;
            let least = curve.iter().fold(f64::INFINITY, |a, &(_, d)| if d < a { d } else { a });
            let lag = |shift: f64| {
                curve
                    .iter()
                    .map(move |&(roll, d)| (roll / pitch + shift, least - d))
                    .collect::<Vec<_>>()
            };
            Some((flank_of(side), [lag(0.0), lag(1.0)].concat()))
        })
        .collect();
    let mut items = vec![Item::Text(
        Text::new(
            Point::new(area.left - 52.0, area.top - 24.0),
            say!("mesh-plot-transmission-error"),
            BODY,
        )
        .bold(),
    )];
    let lowest = curves.iter().flat_map(|(_, curve)| curve).fold(
        if curves.is_empty() { -100.0 } else { -1.0 },
        |a: f64, &(_, d)| if d < a { d } else { a },
    );
    let frame = Frame::new(area, (0.0, 2.0), (1.06 * lowest, -0.06 * lowest));
    let ticks_y = frame.y.ticks(frame.y.round_step(5));
    let ticks_x = frame.x.ticks(0.5);
    items.push(frame.ground());
    items.extend(frame.grid(FrameSide::Left, &ticks_y));
    items.extend(frame.grid(FrameSide::Bottom, &ticks_x));
    items.push(frame.outline());
    items.extend(frame.scale(FrameSide::Left, &ticks_y, SMALL));
    items.extend(frame.scale(FrameSide::Bottom, &ticks_x, SMALL));
    items.push(frame.name(FrameSide::Bottom, &say!("mesh-plot-roll"), SMALL, 38.0));
    for (flank, curve) in &curves {
        let path = Path::open(curve.iter().map(|&(x, y)| frame.point(x, y)));
        items.push(Item::stroked(path, Stroke::full(flank.ink(), 2.4).styled(flank.line())));
    }
    for (k, (flank, _)) in curves.iter().enumerate() {
        let side = if *flank == Flank::Drive {
            Side::Drive
        } else {
            Side::Coast
        };
        let Some(error) = contact.flank(side).transmission_error_urad else {
            continue;
        };
        let x = area.right + 9.0 + 8.0 * k as f64;
        let (top, bottom) = (frame.y.place(0.0), frame.y.place(-error));
        let bar = |y: f64| Path::line(Point::new(x - 4.0, y), Point::new(x + 4.0, y));
        let path = Path::line(Point::new(x, top), Point::new(x, bottom))
            .and(bar(top))
            .and(bar(bottom));
        items.push(Item::stroked(path, Stroke::full(flank.ink(), 1.4)));
        let y = area.top + 40.0 + 42.0 * k as f64;
        items.extend(flag(*flank, Point::new(area.right + 26.0, y)));
        let at = Point::new(area.right + 51.0, y + 4.7);
        items.push(Item::Text(Text::new(at, number(error, 0), BODY).bold()));
    }
    if curves.len() < 2 {
        let lost = if curves.is_empty() {
            say!("mesh-no-flank-touches")
        } else {
            say!("mesh-one-flank-cannot-touch")
        };
        let at = Point::new(0.5 * (area.left + area.right), area.bottom - 10.0);
        items.push(Item::Text(
            Text::new(at, lost, BODY)
                .bold()
                .anchored(Anchor::Middle)
                .with_halo(Ink::Inset),
        ));
    }
    items
}

/// Lash over one pitch.
fn lash(mesh: &Mesh, numbers: &PlacementNumbers) -> Vec<Item> {
    let area = Rect {
        left: 606.0,
        top: PLOTS_TOP,
        right: SHEET[0] - MARGIN - 2.0,
        bottom: PLOTS_BOTTOM,
    };
    let title = Text::new(
        Point::new(area.left - 48.0, area.top - 24.0),
        say!("mesh-plot-backlash"),
        BODY,
    );
    let mut items = vec![Item::Text(title.bold())];
    let pitch = mesh.gears().wheel_pitch_rad();
    let curve = contact::lash_mm(mesh.pair(), numbers.placement(), mesh.route(), ROLLS).unwrap_or_default();
    let (low, high) = curve
        .iter()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), &(_, l)| {
            (if l < a { l } else { a }, if l > b { l } else { b })
        });
    let (low, high) = if low <= high { (low, high) } else { (0.1, 0.1) };
    // At least a tenth of a millimetre is shown, so that a hair of ripple does not look like a mountain.
    let middle = 0.5 * (low + high);
    let half = if high - low > 0.08 { 0.62 * (high - low) } else { 0.05 };
    let frame = Frame::new(area, (0.0, 1.0), (middle - half, middle + half));
    let ticks_y = frame.y.ticks(frame.y.round_step(5));
    let ticks_x = frame.x.ticks(0.5);
    items.push(frame.ground());
    items.extend(frame.grid(FrameSide::Left, &ticks_y));
    items.extend(frame.grid(FrameSide::Bottom, &ticks_x));
    items.push(frame.outline());
    items.extend(frame.scale(FrameSide::Left, &ticks_y, SMALL));
    items.extend(frame.scale(FrameSide::Bottom, &ticks_x, SMALL));
    items.push(frame.name(FrameSide::Bottom, &say!("mesh-plot-every-tooth"), SMALL, 38.0));
    if curve.is_empty() {
        let at = Point::new(0.5 * (area.left + area.right), 0.5 * (area.top + area.bottom));
        items.push(Item::Text(
            Text::new(at, say!("mesh-flank-cannot-touch"), BODY)
                .bold()
                .anchored(Anchor::Middle),
        ));
    } else {
        if frame.y.holds(0.0) {
            let y = frame.y.place(0.0);
            let zero = Path::line(Point::new(area.left, y), Point::new(area.right, y));
            items.push(Item::stroked(zero, Stroke::full(Ink::Off, 1.4)));
        }
        let path = Path::open(curve.iter().map(|&(roll, l)| frame.point(roll / pitch, l)));
        items.push(Item::stroked(path, Stroke::full(Ink::Truth, 2.4)));
    }
    items
}
