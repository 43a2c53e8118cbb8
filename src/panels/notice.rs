//! What stands over everything for a moment: why a file was not opened, and that a file can be let go.

use egui::{Align2, FontId, Modal, RichText, ScrollArea, Ui};

use super::page::Page;
use super::widget::{self, ButtonFace, Rank};
use crate::view::Command;
use crate::words::say;

/// Shows what there is to say; a notice stays until it is put away.
pub(super) fn notice(ui: &Ui, page: &mut Page<'_>) {
    let view = page.view;
    let ink = page.ink;
    if view.file_over {
        let window = ui.ctx().content_rect();
        let layer = egui::LayerId::new(egui::Order::Foreground, egui::Id::new("file-over"));
        let painter = ui.ctx().layer_painter(layer);
        let words = painter.layout_no_wrap(say!("gears-drop"), ink.zone_title(), ink.color(|t| t.text));
        let frame = Align2::CENTER_CENTER.anchor_size(window.center(), words.size() + egui::vec2(48.0, 32.0));
        painter.rect(
            frame,
            0.0,
            ink.color(|t| t.panel),
            ink.line(2.0, |t| t.accent),
            egui::StrokeKind::Inside,
        );
        let at = frame.center() - words.size() / 2.0;
        painter.galley(at, words, ink.color(|t| t.text));
    }
    let Some(text) = view.notice else { return };
    let window = ui.ctx().content_rect();
    let shown = Modal::new(egui::Id::new("notice")).show(ui.ctx(), |ui| {
        ui.set_max_width((0.9 * window.width()).min(ink.scaled(760.0)));
        widget::words(ui, &say!("gears-not-opened"), ink.page_title(), ink.color(|t| t.text));
        ui.add_space(ink.space(8.0));
        ScrollArea::both().max_height(0.6 * window.height()).show(ui, |ui| {
            // Marks below a line of the file stand under what they mark.
            let font = FontId::monospace(ink.body().size);
            let words = RichText::new(text).font(font).color(ink.color(|t| t.text));
            ui.add(egui::Label::new(words).wrap_mode(egui::TextWrapMode::Extend));
        });
        ui.add_space(ink.space(8.0));
        let face = ButtonFace::new(say!("window-close"), say!("window-cap-escape"), Rank::Next);
        let close = widget::button(ui, ink, &face);
        close.clicked() || ui.input(|input| input.key_pressed(egui::Key::Enter))
    });
    if shown.inner || shown.should_close() {
        page.out.push(Command::PutNoticeAway);
    }
}
