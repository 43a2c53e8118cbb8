//! One flank with what the paste shows, its heading and its numbers.

use crate::contact::FlankContact;
use crate::drawing::{Edge, Fill, Ink, Item, Nearest, Point, Print, Rect, Stroke, Text, ToothView, flag};
use crate::quantity::{inches, number};
use crate::report::columns::with_unit;
use crate::report::type_size::{BODY, SMALL};
use crate::words::say;

use super::tooth::{edge_name, flank_name, flank_shape, on_edge, tooth_words};

/// Nearer to the middle than this, a print is "mid-length" or "mid-height", mm.
const MIDDLE_MM: f64 = 0.05;

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
pub(super) fn center_words(print: &Print, both_units: bool) -> String {
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
pub(super) fn edge_words(print: &Print, both_units: bool) -> String {
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

pub(super) fn edge_contact_words(flank: &FlankContact) -> String {
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
