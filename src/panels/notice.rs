//! What stands over everything for a moment: why a file was not opened, that a file can be let go, and what became of a page
//! or a picture that was saved.

use egui::{Align2, FontId, Modal, RichText, ScrollArea, Ui};

use super::page::Page;
use super::widget::{self, ButtonFace, Rank};
use crate::view::{Command, Saved};
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
    saved(ui, page);
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

/// Says at the window's foot what became of a page or a picture; it lies over the page and pushes nothing away.
fn saved(ui: &Ui, page: &mut Page<'_>) {
    let ink = page.ink;
    let Some(saved) = page.view.saved else { return };
    let (head, lines) = match saved {
        Saved::UnderWay => (say!("notices-saved-under-way"), Vec::new()),
        Saved::There(files) => (say!("notices-saved-there"), files.clone()),
        Saved::Not(why) => (say!("notices-saved-not"), vec![why.clone()]),
    };
    let window = ui.ctx().content_rect();
    let frame = egui::Frame::new()
        .fill(ink.color(|t| t.panel))
        .stroke(ink.line(2.0, |t| t.text))
        .inner_margin(egui::Margin::same(12));
    // Another text is another area, whose size is measured before it is shown.
    egui::Area::new(egui::Id::new("saved").with(saved))
        .order(egui::Order::Foreground)
        .anchor(Align2::CENTER_BOTTOM, egui::vec2(0.0, -ink.space(16.0)))
        .show(ui.ctx(), |ui| {
            frame.show(ui, |ui| {
                ui.set_max_width((0.8 * window.width()).min(ink.scaled(720.0)));
                widget::words(ui, &head, ink.section(), ink.color(|t| t.text));
                for line in &lines {
                    widget::words(ui, line, ink.body(), ink.color(|t| t.text));
                }
                let close = ButtonFace::plain(say!("notices-saved-close"), Rank::Plain);
                if *saved != Saved::UnderWay && widget::button(ui, ink, &close).clicked() {
                    page.out.push(Command::PutSavedAway);
                }
            });
        });
}
