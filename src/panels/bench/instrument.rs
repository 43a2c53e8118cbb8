//! The instrument in hand, drawn to be read by eye, and the box for what was read.

use egui::{Id, Rect, Sense, Ui, WidgetInfo, WidgetType, pos2, vec2};

use super::desk::{Desk, Flow, scrolled};
use super::desk_state::NumberBox;
use super::form::line_ended;
use super::{face, hand, teeth};
use crate::panels::dock::inside;
use crate::panels::key;
use crate::panels::widget::{self, ButtonFace, Rank};
use crate::view::bench::{Amount, Face, Reading, note};
use crate::view::{Action, Command, WindowView};
use crate::words::answer::reading_part;
use crate::words::say;

/// Points that an instrument takes at least where there is room: what a graduation needs to be read.
pub(super) const INSTRUMENT: f32 = 242.0;

/// The reading in hand.
pub(super) fn held<'b>(desk: &Desk<'b>) -> Option<&'b Reading> {
    desk.state.reading(desk.board)
}

/// Draws the reading in hand: the instrument, and beside it the box for what was read.
pub(super) fn instrument(ui: &mut Ui, desk: &mut Desk<'_>, flow: Flow) {
    let Some(reading) = held(desk) else {
        return;
    };
    let ink = desk.ink;
    let zone = ui.available_rect_before_wrap();
    if flow == Flow::Along {
        // One below the other, in a list that scrolls.
        let side = zone.width().min(ink.space(300.0));
        let (rect, _) = ui.allocate_exact_size(vec2(zone.width(), side), Sense::hover());
        picture(ui, desk, rect, reading);
        beside(ui, desk, reading);
        return;
    }
    if desk.state.large {
        scrolled(ui, desk.list("read"), |ui| beside(ui, desk, reading));
        return;
    }
    // A pattern is long, an instrument round.
    let side = if reading.face == Face::Eye {
        0.62 * zone.width()
    } else {
        zone.height()
            .min((0.62 * zone.width()).max(INSTRUMENT.min(0.7 * zone.width())))
    };
    let face = Rect::from_min_size(zone.min, vec2(side, zone.height()));
    picture(ui, desk, face, reading);
    let words = Rect::from_min_max(pos2(face.right() + ink.space(10.0), zone.top()), zone.max);
    inside(ui, "read", words, egui::Vec2::ZERO, |ui| {
        scrolled(ui, desk.list("read"), |ui| beside(ui, desk, reading));
    });
}

/// The reading in hand, held up before the eyes over the whole stage.
pub(super) fn held_up(ui: &mut Ui, desk: &mut Desk<'_>) {
    let Some(reading) = held(desk) else {
        return;
    };
    let ink = desk.ink;
    let zone = ui.max_rect();
    ui.painter().rect_filled(zone, 0.0, ink.color(|t| t.panel));
    let rim = vec2(ink.space(12.0), ink.space(8.0));
    inside(ui, "held", zone, rim, |ui| {
        let words = say!("readings-held", what = reading.title.as_str(), number = reading.number);
        let face = ButtonFace::new(
            say!("readings-put-down"),
            key::cap(desk.view.keys, Action::Enlarge),
            Rank::Plain,
        );
        ui.horizontal_top(|ui| {
            let left = ui.available_width() - face.size(ui, ink).x - ui.spacing().item_spacing.x;
            ui.allocate_ui(vec2(left, 0.0), |ui| {
                ui.set_min_width(left);
                ui.vertical(|ui| widget::words(ui, &words, ink.zone_title(), ink.color(|t| t.text)));
            });
            let put_down = widget::button(ui, ink, &face);
            if hand::pressed(ui, desk, &put_down, &face.label) {
                desk.state.large = false;
            }
        });
        let rest = ui.available_rect_before_wrap();
        picture(ui, desk, rest, reading);
    });
}

/// The instrument, or the pattern that the eye saw. A press holds it up, or puts it down.
fn picture(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect, reading: &Reading) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let response = ui.interact(
        rect,
        Id::new(("face", reading.number, desk.state.large)),
        Sense::click(),
    );
    let said = if view.desk.read_out {
        say!(
            "readings-face-said",
            instrument = reading.instrument.as_str(),
            values = values(reading, view),
        )
    } else {
        reading.instrument.clone()
    };
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Image, true, &said));
    widget::focus_outline(ui, ink, &response, rect.shrink(4.0));
    if hand::pressed(ui, desk, &response, "face") {
        desk.state.large = !desk.state.large;
    }
    let print = board.prints.iter().position(|print| print.number == reading.number);
    if !print.is_some_and(|at| teeth::pattern(ui, desk, rect, at)) {
        face::paint(ui, rect, ink, view.units, reading);
    }
    response.on_hover_text(key::hint(say!("readings-enlarge"), view.keys, Action::Enlarge));
}

fn beside(ui: &mut Ui, desk: &mut Desk<'_>, reading: &Reading) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    ui.spacing_mut().item_spacing.y = ink.space(3.0);
    widget::words(ui, &reading.title, ink.section(), text);
    let etched = reading.etched(view.units);
    for line in &etched {
        widget::words(ui, line, ink.body(), text);
    }
    if view.desk.read_out {
        widget::words(ui, &values(reading, view), ink.section(), text);
    }
    if let Some(asks) = reading.asks().filter(|_| !board.finished) {
        value_box(ui, desk, reading, &asks);
    }
    if let Some(problem) = &desk.state.read_problem {
        widget::words(ui, problem, ink.small(), ink.color(|t| t.off));
    }
    if let Some(written) = reading.written {
        let words = say!("readings-on-sheet", value = reading.amount.text(written, view.units));
        widget::words(ui, &words, ink.body(), ink.color(|t| t.belief));
    }
    widget::words(ui, &taken_with(reading), ink.small(), muted);
    if let Some(how) = how_to_read(reading).filter(|_| etched.is_empty()) {
        widget::words(ui, &how, ink.small(), muted);
    }
    if reading.amount != Amount::Share {
        let id = ui.id().with("read-out");
        if widget::tick(ui, ink, id, &say!("readings-read-out"), view.desk.read_out) {
            desk.out.push(Command::SetReadOut(!view.desk.read_out));
        }
    }
}

/// The box for what was read.
fn value_box(ui: &mut Ui, desk: &mut Desk<'_>, reading: &Reading, asks: &str) {
    let (ink, view) = (desk.ink, desk.view);
    let text = ink.color(|t| t.text);
    ui.add_space(ink.space(2.0));
    widget::words(ui, asks, ink.body(), text);
    let waits = reading.written.is_none() && !reading.stale;
    let id = Id::new(("you-read", reading.number));
    let mut write = false;
    ui.horizontal_wrapped(|ui| {
        let width = ink.scaled(76.0);
        let name = say!("readings-value");
        let response = widget::writing_box(ui, ink, id, &name, &mut desk.state.read, width, waits);
        if std::mem::take(&mut desk.state.fresh_reading) {
            response.request_focus();
        }
        write |= line_ended(ui, &response);
        let unit = reading.amount.unit(view.units);
        // An empty word would stand on the box.
        if !unit.is_empty() {
            widget::words(ui, &unit, ink.body(), text);
        }
        let rank = if waits { Rank::Next } else { Rank::Plain };
        let face = ButtonFace::new(say!("readings-write"), say!("window-cap-enter"), rank);
        let button = widget::button(ui, ink, &face);
        write |= hand::pressed(ui, desk, &button, &face.label);
    });
    // What is written down already leaves the digits to the stage.
    desk.state.number_box = waits.then_some(NumberBox { id, entry: None });
    if !write {
        return;
    }
    match reading.amount.read(&desk.state.read, view.units) {
        Ok(value) => {
            desk.state.read_problem = None;
            // Written: the keys are free again.
            if let Some(id) = ui.memory(egui::Memory::focused) {
                ui.memory_mut(|memory| memory.surrender_focus(id));
            }
            desk.out.push(Command::Do(Box::new(note(reading, value))));
        }
        Err(problem) => desk.state.read_problem = Some(problem),
    }
}

/// Number and instrument of a reading, how a dial's stem lay, and whether it still holds.
fn taken_with(reading: &Reading) -> String {
    let (number, instrument) = (reading.number, reading.instrument.as_str());
    match (reading.stem.as_deref(), reading.stale) {
        (None, false) => say!("readings-from", number = number, instrument = instrument),
        (None, true) => say!("readings-from-stale", number = number, instrument = instrument),
        (Some(stem), false) => say!(
            "readings-from-stem",
            number = number,
            instrument = instrument,
            stem = stem,
        ),
        (Some(stem), true) => say!(
            "readings-from-stem-stale",
            number = number,
            instrument = instrument,
            stem = stem,
        ),
    }
}

/// What all pointers show, in words.
fn values(reading: &Reading, view: &WindowView<'_>) -> String {
    let one = |name: String, value: Option<f64>| {
        let value = value.map_or_else(|| say!("readings-nothing"), |v| reading.amount.text(v, view.units));
        if reading.values.len() > 1 {
            say!("readings-named-value", name = name, value = value)
        } else {
            value
        }
    };
    let all: Vec<String> = reading
        .values
        .iter()
        .map(|s| one(reading_part(s.part), s.value))
        .collect();
    all.join(", ")
}

fn how_to_read(reading: &Reading) -> Option<String> {
    Some(match reading.face {
        Face::Wrench { .. } if reading.values.len() > 1 => say!("readings-how-wrench"),
        Face::Dial { .. } => say!("readings-how-dial"),
        Face::Micrometer | Face::DepthGauge => say!("readings-how-micrometer"),
        Face::Feeler { .. } if reading.main_value().is_none() => say!("readings-how-feeler-none"),
        Face::Feeler { .. } => say!("readings-how-feeler"),
        Face::Click => say!("readings-how-click"),
        _ => return None,
    })
}
