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
        format!("{}: {}", reading.instrument, values(reading, view))
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
    let mut second = format!("Reading {}, {}", reading.number, reading.instrument);
    if let Some(stem) = &reading.stem {
        second.push_str(", stem ");
        second.push_str(stem);
    }
    if reading.stale {
        second.push_str(", stale since a change");
    }
    widget::words(ui, &second, ink.small(), muted);
    let etched = reading.etched(view.units);
    if let Some(how) = how_to_read(reading).filter(|_| etched.is_empty()) {
        widget::words(ui, how, ink.small(), muted);
    }
    for line in etched {
        widget::words(ui, &line, ink.body(), text);
    }
    if view.desk.read_out {
        widget::words(ui, &values(reading, view), ink.section(), text);
    }
    if let Some(asks) = reading.asks().filter(|_| !board.finished) {
        ui.add_space(ink.space(2.0));
        widget::words(ui, asks, ink.body(), text);
        let mut write = false;
        ui.horizontal_wrapped(|ui| {
            let id = ui.id().with(("you read", reading.number));
            let width = ink.scaled(76.0);
            let waits = reading.written.is_none() && !reading.stale;
            let response = widget::writing_box(ui, ink, id, "Value that you read", &mut state.read, width, waits);
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
                "Write",
                "Enter",
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
        let words = format!("On your sheet: {}", reading.amount.text(written, view.units));
        widget::words(ui, &words, ink.body(), ink.color(|t| t.belief));
    }
    if reading.amount != Amount::Share {
        let id = ui.id().with("read out");
        if widget::tick(ui, ink, id, "Say the value too (for beginners)", view.desk.read_out) {
            out.push(Command::SetReadOut(!view.desk.read_out));
        }
    }
}

/// What all pointers show, in words.
fn values(reading: &Reading, view: &WindowView<'_>) -> String {
    let one = |name: &str, value: Option<f64>| {
        let value = value.map_or_else(|| "nothing".to_owned(), |v| reading.amount.text(v, view.units));
        if reading.values.len() > 1 {
            format!("{name} {value}")
        } else {
            value
        }
    };
    let all: Vec<String> = reading
        .values
        .iter()
        .map(|s| one(&reading_part(s.part), s.value))
        .collect();
    all.join(", ")
}

fn how_to_read(reading: &Reading) -> Option<&'static str> {
    Some(match reading.face {
        Face::Wrench { .. } if reading.values.len() > 1 => "Open ring: breakaway. Needle: while it turned.",
        Face::Dial { .. } => "The small hand counts whole turns.",
        Face::Micrometer | Face::DepthGauge => "Whole turns on the sleeve, the rest on the thimble.",
        Face::Feeler { .. } if reading.main_value().is_none() => "Not even the thinnest leaf goes in.",
        Face::Feeler { .. } => "The longest leaf is the thickest that goes in.",
        Face::Click => "It clicks at its setting and shows nothing.",
        Face::Eye => "The print stands with the teeth.",
        _ => return None,
    })
}
