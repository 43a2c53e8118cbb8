//! The caution for the work in hand, and what was answered last.

use std::sync::Arc;

use egui::text::{LayoutJob, TextFormat};
use egui::{FontFamily, FontId, Galley, Rect, Sense, Stroke, Ui, WidgetInfo, WidgetType, vec2};

use super::desk::Desk;
use crate::panels::theme::Ink;
use crate::panels::widget;
use crate::view::bench::Face;
use crate::view::{BenchView, WindowView};
use crate::words::say;

/// The strip between part and button. Its place is kept when there is nothing to say, so that nothing jumps.
pub(super) fn caution(ui: &Ui, desk: &Desk<'_>, rect: Rect) {
    let (ink, board) = (desk.ink, desk.board);
    let said = desk.state.warnings(board);
    if said.is_empty() {
        let (painter, muted) = (ui.painter(), ink.color(|t| t.muted));
        painter.rect_filled(rect, 0.0, ink.color(|t| t.panel));
        // The strip keeps its room, so that nothing jumps when there is something to mind.
        let at = rect.left_center() + vec2(ink.space(12.0), 0.0);
        let words = say!("board-caution-none");
        painter.text(at, egui::Align2::LEFT_CENTER, words, ink.small(), muted);
        return;
    }
    let painter = ui.painter();
    painter.rect_filled(rect, 0.0, ink.color(|t| t.caution));
    let color = ink.color(|t| t.on_caution);
    let galley = caution_words(ui, desk, rect.width());
    let response = ui.interact(rect, ui.id().with("caution"), Sense::hover());
    response
        .widget_info(|| WidgetInfo::labeled(WidgetType::Label, true, say!("board-caution", caution = said.join(" "))));
    let sign = ink.scaled(18.0);
    let at = rect.min + vec2(ink.space(12.0), (rect.height() - sign) / 2.0);
    sign_in(ui, at, sign, color);
    let top = rect.center().y - galley.size().y / 2.0;
    let left = rect.left() + ink.space(20.0) + sign;
    ui.painter()
        .with_clip_rect(rect)
        .galley(egui::pos2(left, top), galley, color);
    response.on_hover_text(said.join("\n"));
}

/// Height that the strip needs where its text wraps.
pub(super) fn caution_height(ui: &Ui, desk: &Desk<'_>, width: f32) -> f32 {
    caution_words(ui, desk, width).size().y + desk.ink.space(10.0)
}

fn caution_words(ui: &Ui, desk: &Desk<'_>, width: f32) -> Arc<Galley> {
    let (ink, board) = (desk.ink, desk.board);
    let color = ink.color(|t| t.on_caution);
    let mut job = LayoutJob::default();
    job.wrap.max_width = width - ink.space(32.0) - ink.scaled(18.0);
    job.append(
        &say!("board-caution-word"),
        0.0,
        TextFormat::simple(ink.section(), color),
    );
    for warning in desk.state.warnings(board) {
        job.append(" ", 0.0, TextFormat::simple(ink.body(), color));
        job.append(warning, 0.0, TextFormat::simple(ink.body(), color));
    }
    ui.painter().layout_job(job)
}

fn sign_in(ui: &Ui, at: egui::Pos2, size: f32, color: egui::Color32) {
    let corner = |x: f32, y: f32| at + vec2(x, y) * size;
    let painter = ui.painter();
    painter.add(egui::Shape::closed_line(
        vec![corner(0.5, 0.08), corner(0.98, 0.92), corner(0.02, 0.92)],
        Stroke::new((size / 11.0).max(1.4), color),
    ));
    painter.text(
        corner(0.5, 0.62),
        egui::Align2::CENTER_CENTER,
        "!",
        FontId::new(size * 0.56, FontFamily::Proportional),
        color,
    );
}

/// Answer and caution below each other, as high as they are, where everything scrolls.
pub(super) fn both(ui: &mut Ui, desk: &Desk<'_>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let text = ink.color(|t| t.text);
    let all = said(view, board);
    widget::words(ui, &all.title, ink.section(), text);
    let color = ink.color(|t| if all.refused { t.off } else { t.text });
    widget::words(ui, &all.sentences.join(" "), ink.body(), color);
    ui.add_space(ink.space(4.0));
    if !desk.state.warnings(board).is_empty() {
        let size = vec2(ui.available_width(), caution_height(ui, desk, ui.available_width()));
        let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
        caution(ui, desk, rect);
        ui.add_space(ink.space(4.0));
    }
}

/// What was done last and what came back.
struct LastAnswer {
    title: String,
    sentences: Vec<String>,
    refused: bool,
}

fn said(view: &WindowView<'_>, board: &BenchView) -> LastAnswer {
    let (title, sentences, refused) = match (view.desk.problem, board.told_back.last()) {
        (Some(problem), _) => (say!("board-not-saved"), vec![problem.to_owned()], true),
        (None, Some(last)) => {
            let mut sentences = last.sentences.clone();
            if sentences.is_empty() && !last.answer.readings.is_empty() {
                let by_eye = board.readings.last().is_some_and(|r| r.face == Face::Eye);
                let words = if by_eye {
                    say!("board-pattern-seen")
                } else {
                    say!("board-read-instrument")
                };
                sentences.push(words);
            }
            (last.title(view.units), sentences, !last.answer.done)
        }
        (None, None) => (say!("board-begin-title"), vec![say!("board-begin")], false),
    };
    LastAnswer {
        title,
        sentences,
        refused,
    }
}

/// Most lines of what came back; the rest stands in the log and is said when the pointer rests on it.
const MOST_LINES: usize = 3;

fn came_back(ui: &Ui, ink: &Ink, width: f32, said: &LastAnswer) -> Arc<Galley> {
    let mut job = LayoutJob::default();
    let color = ink.color(|t| if said.refused { t.off } else { t.text });
    job.append(&said.sentences.join(" "), 0.0, TextFormat::simple(ink.body(), color));
    job.wrap.max_width = width;
    job.wrap.max_rows = MOST_LINES;
    ui.painter().layout_job(job)
}

/// Height of the answer in a zone of this width, without its rims: a title and at least one line.
pub(super) fn answer_height(ui: &Ui, desk: &Desk<'_>, width: f32) -> f32 {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let words = came_back(ui, ink, width, &said(view, board)).size().y;
    ink.scaled(18.0) + 2.0 + words.max(ink.scaled(18.0))
}

/// What was done last and what came back.
pub(super) fn answer(ui: &mut Ui, desk: &Desk<'_>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    ui.spacing_mut().item_spacing.y = 0.0;
    let rect = ui.max_rect();
    let line = ink.scaled(18.0);
    let all = said(view, board);
    let LastAnswer { title, sentences, .. } = &all;
    let took = board
        .told_back
        .last()
        .filter(|_| view.desk.problem.is_none())
        .map(crate::view::bench::LogEntry::took)
        .unwrap_or_default();
    let mut first = LayoutJob::default();
    first.append(title, 0.0, TextFormat::simple(ink.section(), text));
    if view.desk.busy {
        first.append("  ", 0.0, TextFormat::simple(ink.body(), muted));
        first.append(&say!("board-working"), 0.0, TextFormat::simple(ink.body(), muted));
    } else if !took.is_empty() {
        first.append(&format!("  {took}"), 0.0, TextFormat::simple(ink.small(), muted));
    }
    first.wrap = egui::text::TextWrapping::truncate_at_width(rect.width());
    let first = ui.painter().layout_job(first);
    ui.painter().galley(rect.left_top(), first, text);
    let below = rect.left_top() + vec2(0.0, line + 2.0);
    ui.painter().galley(below, came_back(ui, ink, rect.width(), &all), text);
    let said = sentences.join(" ");
    let response = ui.interact(rect, ui.id().with("answer"), Sense::hover());
    response.widget_info(|| {
        let whole = say!("board-answer", what = title.as_str(), result = said.as_str());
        WidgetInfo::labeled(WidgetType::Label, true, whole)
    });
    if !sentences.is_empty() {
        response.on_hover_text(format!("{title}\n{}", sentences.join("\n")));
    }
}
