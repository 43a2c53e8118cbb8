//! Plots over the roll: transmission error of both flanks, backlash.

use crate::contact::{self, Contact, Pair, Placement, Route};
use crate::drawing::{Anchor, Flank, Frame, FrameSide, Ink, Item, Path, Point, Rect, Stroke, Text, flag};
use crate::gear::Side;
use crate::quantity::number;
use crate::report::type_size::{BODY, SMALL};
use crate::words::say;

use super::tooth::flank_of;

/// Rolls in a pitch of a curve.
const ROLLS: usize = 96;

/// How far the ring gear lags behind even motion on each flank over two pitches, in an area; it takes 52 points at the left, 24 above, 38 below and 84 at the right besides.
pub(super) fn motion(area: Rect, pair: &Pair, placement: Placement, route: Route, contact: &Contact) -> Vec<Item> {
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
    items.extend(scales(&frame, &say!("mesh-plot-roll")));
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

/// Backlash over one pitch, in an area; it takes 48 points at the left, 24 above and 38 below besides.
pub(super) fn lash(area: Rect, pair: &Pair, placement: Placement, route: Route) -> Vec<Item> {
    let title = Text::new(
        Point::new(area.left - 48.0, area.top - 24.0),
        say!("mesh-plot-backlash"),
        BODY,
    );
    let mut items = vec![Item::Text(title.bold())];
    let pitch = pair.gears().wheel_pitch_rad();
    let curve = contact::lash_mm(pair, placement, route, ROLLS).unwrap_or_default();
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
    items.extend(scales(&frame, &say!("mesh-plot-every-tooth")));
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

/// Ground, grid, outline and both scales of a frame whose foot counts pitches or turns, with the foot's name.
fn scales(frame: &Frame, foot: &str) -> Vec<Item> {
    let ticks_y = frame.y.ticks(frame.y.round_step(5));
    let ticks_x = frame.x.ticks(0.5);
    let mut items = vec![frame.ground()];
    items.extend(frame.grid(FrameSide::Left, &ticks_y));
    items.extend(frame.grid(FrameSide::Bottom, &ticks_x));
    items.push(frame.outline());
    items.extend(frame.scale(FrameSide::Left, &ticks_y, SMALL));
    items.extend(frame.scale(FrameSide::Bottom, &ticks_x, SMALL));
    items.push(frame.name(FrameSide::Bottom, foot, SMALL, 38.0));
    items
}
