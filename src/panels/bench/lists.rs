//! Readings and log.

use egui::{Ui, WidgetInfo, WidgetType, pos2, vec2};

use super::desk::{Desk, scrolled};
use crate::panels::widget;
use crate::view::bench::{Amount, Reading};
use crate::words::say;

/// All readings, newest first; a press takes one in hand. Stale ones are struck through and say so.
pub(super) fn readings(ui: &mut Ui, desk: &mut Desk<'_>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    if board.readings.is_empty() {
        widget::words(ui, &say!("board-readings-empty"), ink.body(), ink.color(|t| t.muted));
        return;
    }
    let list = ui.id().with("readings");
    scrolled(ui, desk.list("readings"), |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for reading in board.readings.iter().rev() {
            let value = match (reading.written, view.desk.read_out, reading.main_value()) {
                (Some(written), ..) => reading.amount.text(written, view.units),
                (None, true, Some(value)) if reading.amount != Amount::Share => reading.amount.text(value, view.units),
                (None, ..) => String::new(),
            };
            let width = ui.available_width();
            let color = ink.color(|t| if reading.stale { t.muted } else { t.text });
            let chosen = desk.state.reading == Some(reading.number) && desk.state.form.is_none();
            let words = ui.painter().layout_no_wrap(value.clone(), ink.section(), color);
            let title = say!(
                "board-reading-title",
                number = reading.number,
                what = reading.title.as_str(),
            );
            let room = width - words.size().x - ink.space(16.0);
            let title = ui.painter().layout(title, ink.body(), color, room);
            let note = ui.painter().layout(
                if reading.stale {
                    say!("board-reading-stale", instrument = reading.instrument.as_str())
                } else {
                    reading.instrument.clone()
                },
                ink.small(),
                ink.color(|t| t.muted),
                room,
            );
            let height = title.size().y + note.size().y + ink.space(6.0);
            let (_, rect) = ui.allocate_space(vec2(width, height));
            let response = ui.interact(rect, list.with(reading.number), egui::Sense::click());
            let said = reading_said(reading, &value);
            response.widget_info(|| WidgetInfo::selected(WidgetType::RadioButton, ui.is_enabled(), chosen, &said));
            let painter = ui.painter();
            if chosen || response.hovered() {
                painter.rect_filled(rect, 0.0, ink.color(|t| t.inset));
            }
            let at = rect.min + vec2(ink.space(6.0), ink.space(3.0));
            let (line, below) = (at.y + title.size().y / 2.0, at.y + title.size().y);
            let end = at.x + title.size().x;
            painter.galley(at, title, color);
            painter.galley(pos2(at.x, below), note, color);
            let right = pos2(rect.right() - words.size().x - 2.0, at.y);
            painter.galley(right, words, color);
            if reading.stale {
                painter.hline(at.x..=end, line, ink.line(1.2, |t| t.muted));
            }
            painter.hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.hairline));
            if chosen {
                let edge = egui::Rect::from_min_max(rect.min, pos2(rect.left() + 3.0, rect.bottom()));
                painter.rect_filled(edge, 0.0, ink.color(|t| t.accent));
            }
            widget::focus_outline(ui, ink, &response, rect.shrink(4.0));
            if response.gained_focus() {
                response.scroll_to_me(None);
            }
            if response.clicked() {
                desk.state.take_in_hand(reading);
            }
        }
    });
}

/// A reading for those who listen; the value is empty where nothing is said of it.
fn reading_said(reading: &Reading, value: &str) -> String {
    let (number, what) = (reading.number, reading.title.as_str());
    match (value.is_empty(), reading.stale) {
        (true, false) => say!("board-reading-said", number = number, what = what),
        (true, true) => say!("board-reading-said-stale", number = number, what = what),
        (false, false) => say!("board-reading-said-value", number = number, what = what, value = value),
        (false, true) => say!(
            "board-reading-said-value-stale",
            number = number,
            what = what,
            value = value,
        ),
    }
}

/// What was done and what came back, newest first.
pub(super) fn log(ui: &mut Ui, desk: &Desk<'_>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    if board.told_back.is_empty() {
        widget::words(ui, &say!("board-log-empty"), ink.body(), muted);
        return;
    }
    scrolled(ui, desk.list("log"), |ui| {
        ui.spacing_mut().item_spacing.y = ink.space(1.0);
        for told in board.told_back.iter().rev() {
            let title = say!(
                "board-log-title",
                number = told.answer.operation,
                what = told.title(view.units),
            );
            widget::words(ui, &title, ink.section(), text);
            let took = told.took();
            if !took.is_empty() {
                widget::words(ui, &took, ink.small(), muted);
            }
            for sentence in &told.sentences {
                let color = if told.answer.done { text } else { ink.color(|t| t.off) };
                widget::words(ui, sentence, ink.body(), color);
            }
            ui.separator();
        }
    });
}
