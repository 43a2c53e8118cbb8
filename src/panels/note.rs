//! The safety note: always there, plain, on paper and not on the yellow of a caution, which is kept for hazards.

use egui::text::{LayoutJob, TextFormat};
use egui::{Galley, Sense, Ui, WidgetInfo, WidgetType, vec2};
use std::sync::Arc;

use super::page::Page;
use super::theme::Ink;
use super::widget;
use crate::view::safety_note;
use crate::words::say;

/// Draws the note over the width that it has.
pub(super) fn note_panel(ui: &mut Ui, page: &Page<'_>) {
    let ink = page.ink;
    let sign = sign_size(ink);
    let galley = words(ui, ink, ui.available_width() - sign - ink.space(8.0));
    let size = vec2(ui.available_width(), galley.size().y);
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Label, true, say!("window-safety", note = safety_note())));
    let first_row = galley.rows.first().map_or(sign, |row| row.height());
    widget::warning_sign(ui, ink, rect.min + vec2(0.0, (first_row - sign) / 2.0), sign);
    let text = ink.color(|t| t.text);
    ui.painter()
        .galley(rect.min + vec2(sign + ink.space(8.0), 0.0), galley, text);
}

/// Height that the note needs in a zone of this width with this margin, points.
pub(super) fn note_height(ui: &Ui, ink: &Ink, width: f32, margin: egui::Vec2) -> f32 {
    let text_width = width - 2.0 * margin.x - sign_size(ink) - ink.space(8.0);
    (words(ui, ink, text_width).size().y + 2.0 * margin.y).ceil()
}

fn sign_size(ink: &Ink) -> f32 {
    ink.scaled(18.0)
}

fn words(ui: &Ui, ink: &Ink, width: f32) -> Arc<Galley> {
    let mut job = LayoutJob::default();
    job.wrap.max_width = width.max(40.0);
    let color = ink.color(|t| t.text);
    job.append(
        &say!("window-safety-word"),
        0.0,
        TextFormat::simple(ink.section(), color),
    );
    job.append(" ", 0.0, TextFormat::simple(ink.body(), color));
    job.append(&safety_note(), 0.0, TextFormat::simple(ink.body(), color));
    ui.painter().layout_job(job)
}
