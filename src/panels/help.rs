//! The list of keys.

use egui::{Key, Modal, Ui, WidgetInfo, WidgetType, vec2};

use super::theme::Ink;
use super::widget::{self, ButtonFace, Rank};
use crate::view::{Command, Place, WindowView};

/// Keys that act at a place.
fn keys(place: Place) -> Vec<[&'static str; 2]> {
    let mut all = vec![
        ["F1", "this list"],
        ["Tab", "from one thing to the next; Enter or Space presses it"],
    ];
    let stage = [
        [
            "1 to 7",
            "look from the corner, along the pinion, the ring gear, from above, at the mesh, at the drive or the coast flank of the painted tooth",
        ],
        ["F", "flat or in perspective"],
        ["Arrows", "go round; with Shift, shift"],
        ["+ \u{2212}", "nearer, farther"],
        ["Space", "turn the pinion, or stop"],
        ["R", "rock the ring gear, or stop"],
        [", .", "one tooth back, one tooth on"],
    ];
    match place {
        Place::Bench => {
            all.extend([
                ["P O", "next part, part before"],
                ["W", "to the work of that part; arrows go on, Enter opens it"],
                ["Enter", "do what the form says, write what was read"],
                ["Esc", "put the form away"],
                ["I", "take the last reading in hand"],
                ["V", "say the value beside the instrument, or not"],
            ]);
            all.extend(stage);
        }
        Place::Gears => {
            all.extend(stage);
            all.push(["T", "to the tooth room"]);
        }
        Place::ToothRoom => all.extend([
            ["B X N", "keep as B, swap A and B, without B"],
            ["E", "save the picture"],
            ["Shift and arrow", "one field of the wall chart"],
            ["T", "back to the gears"],
        ]),
        Place::Start | Place::Debrief => {}
    }
    all
}

/// Shows the list while it is asked for, and asks for it on F1.
pub(super) fn help(ui: &Ui, view: &WindowView<'_>, out: &mut Vec<Command>) {
    if ui.input(|input| input.key_pressed(Key::F1)) {
        out.push(Command::ShowHelp(!view.help));
        return;
    }
    if !view.help {
        return;
    }
    let ink = Ink::new(view.theme, view.text_size);
    let window = ui.ctx().content_rect();
    let shown = Modal::new(egui::Id::new("keys")).show(ui.ctx(), |ui| {
        ui.set_max_width((0.9 * window.width()).min(ink.scaled(520.0)));
        let text = ink.color(|t| t.text);
        widget::words(ui, "Keys", ink.page_title(), text);
        egui::ScrollArea::vertical()
            .max_height(0.7 * window.height())
            .show(ui, |ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                for [key, what] in keys(view.place) {
                    let width = ui.available_width();
                    let column = ink.scaled(110.0).min(0.3 * width);
                    let words = ui.painter().layout(what.to_owned(), ink.body(), text, width - column);
                    let height = words.size().y + ink.space(6.0);
                    let (rect, response) = ui.allocate_exact_size(vec2(width, height), egui::Sense::hover());
                    response.widget_info(|| WidgetInfo::labeled(WidgetType::Label, true, format!("{key}: {what}")));
                    let painter = ui.painter();
                    let at = rect.min + vec2(0.0, ink.space(3.0));
                    painter.text(at, egui::Align2::LEFT_TOP, key, ink.section(), text);
                    painter.galley(at + vec2(column, 0.0), words, text);
                    painter.hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.hairline));
                }
            });
        ui.add_space(ink.space(8.0));
        let face = ButtonFace {
            label: "Close",
            longest: "Close",
            key: "Esc",
            rank: Rank::Next,
        };
        widget::button(ui, &ink, &face).clicked()
    });
    if shown.inner || shown.should_close() {
        out.push(Command::ShowHelp(false));
    }
}
