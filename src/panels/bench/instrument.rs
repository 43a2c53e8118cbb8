//! The instrument in hand, drawn to be read by eye, and the box for what was read.

use egui::{Rect, Sense, Ui, WidgetInfo, WidgetType, pos2, vec2};

use super::desk_state::DeskState;
use super::form::line_ended;
use super::{face, widget};
use crate::panels::theme::Ink;
use crate::panels::widget::{ButtonFace, Rank};
use crate::view::bench::{Amount, Face, Reading, note};
use crate::view::{BenchView, Command, WindowView};
use crate::words::answer::reading_part;
use crate::words::say;

/// Draws the reading in hand.
pub(super) fn instrument(
    ui: &mut Ui,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) {
    let Some(reading) = state.reading(board) else {
        return;
    };
    let inside = ui.max_rect();
    let side = inside.height().min(0.5 * inside.width());
    let picture = Rect::from_min_size(inside.min, vec2(side, inside.height()));
    let response = ui.interact(picture, ui.id().with("face"), Sense::hover());
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
    face::paint(ui, picture, ink, view.units, reading);
    let words = Rect::from_min_max(pos2(picture.right() + ink.space(10.0), inside.top()), inside.max);
    super::inside(ui, "read", words, egui::Vec2::ZERO, |ui| {
        egui::ScrollArea::vertical()
            .id_salt("read")
            .auto_shrink([false, false])
            .show(ui, |ui| beside(ui, ink, view, board, reading, state, out));
    });
}

fn beside(
    ui: &mut Ui,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    reading: &Reading,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) {
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    ui.spacing_mut().item_spacing.y = ink.space(3.0);
    widget::words(ui, &reading.title, ink.section(), text);
    widget::words(ui, &taken_with(reading), ink.small(), muted);
    let etched = reading.etched(view.units);
    if let Some(how) = how_to_read(reading).filter(|_| etched.is_empty()) {
        widget::words(ui, &how, ink.small(), muted);
    }
    for line in etched {
        widget::words(ui, &line, ink.body(), text);
    }
    if view.desk.read_out {
        widget::words(ui, &values(reading, view), ink.section(), text);
    }
    if let Some(asks) = reading.asks().filter(|_| !board.finished) {
        ui.add_space(ink.space(2.0));
        widget::words(ui, &asks, ink.body(), text);
        let mut write = false;
        ui.horizontal_wrapped(|ui| {
            let id = ui.id().with(("you-read", reading.number));
            let width = ink.scaled(76.0);
            let waits = reading.written.is_none() && !reading.stale;
            let name = say!("readings-value");
            let response = widget::writing_box(ui, ink, id, &name, &mut state.read, width, waits);
            if std::mem::take(&mut state.fresh_reading) {
                response.request_focus();
            }
            write |= line_ended(ui, &response);
            let unit = reading.amount.unit(view.units);
            // An empty word would stand on the box.
            if !unit.is_empty() {
                widget::words(ui, &unit, ink.body(), text);
            }
            let face = ButtonFace::new(
                say!("readings-write"),
                say!("window-cap-enter"),
                if reading.written.is_none() && !reading.stale {
                    Rank::Next
                } else {
                    Rank::Plain
                },
            );
            write |= widget::button(ui, ink, &face).clicked();
        });
        if write {
            match reading.amount.read(&state.read, view.units) {
                Ok(value) => {
                    state.read_problem = None;
                    // Written: the keys are free again.
                    if let Some(id) = ui.memory(egui::Memory::focused) {
                        ui.memory_mut(|memory| memory.surrender_focus(id));
                    }
                    out.push(Command::Do(Box::new(note(reading, value))));
                }
                Err(problem) => state.read_problem = Some(problem),
            }
        }
    }
    if let Some(problem) = &state.read_problem {
        widget::words(ui, problem, ink.small(), ink.color(|t| t.off));
    }
    if let Some(written) = reading.written {
        let words = say!("readings-on-sheet", value = reading.amount.text(written, view.units));
        widget::words(ui, &words, ink.body(), ink.color(|t| t.belief));
    }
    if reading.amount != Amount::Share {
        let id = ui.id().with("read-out");
        if widget::tick(ui, ink, id, &say!("readings-read-out"), view.desk.read_out) {
            out.push(Command::SetReadOut(!view.desk.read_out));
        }
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
        Face::Eye => say!("readings-how-eye"),
        _ => return None,
    })
}
