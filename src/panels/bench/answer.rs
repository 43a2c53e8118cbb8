//! The caution for the work in hand, and what was answered last.

use std::sync::Arc;

use egui::text::{LayoutJob, TextFormat};
use egui::{FontFamily, FontId, Galley, Rect, Sense, Stroke, Ui, WidgetInfo, WidgetType, vec2};

use super::desk::{Desk, scrolled};
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
    caution_above(ui, desk);
}

/// The caution, where there is one, above what follows it.
pub(super) fn caution_above(ui: &mut Ui, desk: &Desk<'_>) {
    if desk.state.warnings(desk.board).is_empty() {
        return;
    }
    let size = vec2(ui.available_width(), caution_height(ui, desk, ui.available_width()));
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    caution(ui, desk, rect);
    ui.add_space(desk.ink.space(4.0));
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

/// Most lines of what came back that are seen at once; the rest is scrolled to.
const MOST_LINES: f32 = 3.0;
/// The same where the window is low.
const FEW_LINES: f32 = 2.0;
/// Height below which a window is low, points at 100 %.
const LOW: f32 = 480.0;

fn came_back(ui: &Ui, ink: &Ink, width: f32, said: &LastAnswer) -> Arc<Galley> {
    let mut job = LayoutJob::default();
    let color = ink.color(|t| if said.refused { t.off } else { t.text });
    job.append(&said.sentences.join(" "), 0.0, TextFormat::simple(ink.body(), color));
    job.wrap.max_width = width;
    ui.painter().layout_job(job)
}

/// What was done, and what it took.
fn what_was_done(ui: &Ui, desk: &Desk<'_>, width: f32, said: &LastAnswer) -> Arc<Galley> {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    let took = board
        .told_back
        .last()
        .filter(|_| view.desk.problem.is_none())
        .map(crate::view::bench::LogEntry::took)
        .unwrap_or_default();
    let mut first = LayoutJob::default();
    first.append(&said.title, 0.0, TextFormat::simple(ink.section(), text));
    if view.desk.busy {
        first.append("  ", 0.0, TextFormat::simple(ink.body(), muted));
        first.append(&say!("board-working"), 0.0, TextFormat::simple(ink.body(), muted));
    } else if !took.is_empty() {
        first.append(&format!("  {took}"), 0.0, TextFormat::simple(ink.small(), muted));
    }
    first.wrap.max_width = width;
    ui.painter().layout_job(first)
}

/// Height of the answer in a zone of this width, without its rims: a title and at least one line.
pub(super) fn answer_height(ui: &Ui, desk: &Desk<'_>, width: f32) -> f32 {
    let ink = desk.ink;
    let all = said(desk.view, desk.board);
    let title = what_was_done(ui, desk, width, &all).size().y;
    let words = came_back(ui, ink, width, &all).size().y;
    let line = ink.scaled(18.0);
    let low = ui.ctx().content_rect().height() < ink.scaled(LOW);
    let lines = if low { FEW_LINES } else { MOST_LINES };
    // A title of several lines takes them from what came back.
    let whole = title + 2.0 + words.max(line);
    whole.min(line * (lines + 1.0) + 2.0)
}

/// What was done last and what came back.
pub(super) fn answer(ui: &mut Ui, desk: &Desk<'_>) {
    let text = desk.ink.color(|t| t.text);
    ui.spacing_mut().item_spacing.y = 0.0;
    let all = said(desk.view, desk.board);
    let LastAnswer { title, sentences, .. } = &all;
    // The next answer is read from its top.
    let name = desk.list("answer").with(desk.board.told_back.len());
    scrolled(ui, name, |ui| {
        let width = ui.available_width();
        let first = what_was_done(ui, desk, width, &all);
        let words = came_back(ui, desk.ink, width, &all);
        let height = first.size().y + 2.0 + words.size().y;
        let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
        let below = rect.left_top() + vec2(0.0, first.size().y + 2.0);
        ui.painter().galley(rect.left_top(), first, text);
        ui.painter().galley(below, words, text);
        let said = sentences.join(" ");
        response.widget_info(|| {
            let whole = say!("board-answer", what = title.as_str(), result = said.as_str());
            WidgetInfo::labeled(WidgetType::Label, true, whole)
        });
    });
}
