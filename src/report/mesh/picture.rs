//! The picture of a meshed gear set: both flanks with what the paste shows, transmission error and lash.

use crate::contact::{self, Contact, FlankContact, Pair, Resolution};
use crate::drawing::{Fill, Hatch, Ink, Item, Path, Picture, Point, Print, Rect, Stroke, Text};
use crate::gear::Side;
use crate::report::columns::with_unit;
use crate::report::type_size::SMALL;
use crate::words::say;

use super::flank::{center_words, edge_contact_words, edge_words, flank_items};
use super::meshing::Meshing;
use super::numbers::PlacementNumbers;
use super::plot::{lash, motion};
use super::sheet::{HEADING_BOTTOM, MARGIN, foot, foot_note, heading, trimmed};
use super::tooth::{flank_name, print_of};

/// The sheet with a note of one line, points: it fits A4 and Letter.
const SHEET: [f64; 2] = [800.0, 1044.0];

/// Height of the part of one flank, with its heading and numbers.
const FLANK_HEIGHT: f64 = 282.0;

/// Plots of transmission error and lash.
const PLOTS_TOP: f64 = HEADING_BOTTOM + 2.0 * FLANK_HEIGHT + 68.0;

const PLOTS_BOTTOM: f64 = PLOTS_TOP + 142.0;
/// Where the plot of transmission error lies.
const MOTION: Rect = Rect {
    left: MARGIN + 52.0,
    top: PLOTS_TOP,
    right: 466.0,
    bottom: PLOTS_BOTTOM,
};
/// Where the plot of backlash lies.
const LASH: Rect = Rect {
    left: 606.0,
    top: PLOTS_TOP,
    right: SHEET[0] - MARGIN - 2.0,
    bottom: PLOTS_BOTTOM,
};

/// The picture of a placement.
pub(crate) fn picture(mesh: &Meshing, numbers: &PlacementNumbers) -> Picture {
    let contact = mesh.contact(numbers);
    let placement = numbers.placement();
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
        let map = contact::gap_map(&fine, placement, side, mesh.route);
        print_of(
            mesh.gears(),
            mesh.film.thickness_um,
            side,
            map.as_ref(),
            contact.flank(side),
        )
    });
    let mut picture = Picture::on(
        Ink::Panel,
        SHEET[0],
        SHEET[1] + foot_note(SHEET[0]).more(),
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
        .chain(motion(MOTION, &mesh.pair, placement, mesh.route, &contact))
        .chain(lash(LASH, &mesh.pair, placement, mesh.route))
    {
        picture.draw(item);
    }
    foot(&mut picture, mesh);
    picture
}

/// What the picture shows, for those who do not see it.
fn description(contact: &Contact, prints: &[Print; 2]) -> String {
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
        say!("mesh-legend-film", film = with_unit(&trimmed(film), "µm")),
    );
    entry(
        vec![plain(Ink::Paste)],
        Some(Stroke::full(Ink::GhostDark, 0.9)),
        say!("mesh-legend-gap"),
    );
    items
}
