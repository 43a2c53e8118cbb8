//! The head of the sheet: the program's name at the left, units, ground and text size at the right.

use egui::{Align, Layout, Ui};

use super::theme::Ink;
use super::widget::{self, Cell};
use crate::quantity::Units;
use crate::view::{Command, Place, Theme, WindowView};

/// Draws the head.
pub fn head_panel(ui: &mut Ui, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let ink = Ink::new(view.theme, view.text_size);
    ui.horizontal_centered(|ui| {
        widget::words(ui, "Lashwright", ink.zone_title(), ink.color(|t| t.text));
        ui.add_space(ink.space(12.0));
        let room = if ink.large() { "Teeth" } else { "Tooth room" };
        let places = [
            ("Gears", Place::Gears, "The gears in mesh. Key T"),
            (room, Place::ToothRoom, "Prints, motion and wall chart. Key T"),
        ]
        .map(|(label, value, hint)| Cell { label, value, hint });
        if let Some(place) = widget::segments(ui, &ink, "Place", &places, Some(view.place)) {
            out.push(Command::GoTo(place));
        }
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            // Right to left: what is listed first stands at the right edge.
            text_size(ui, &ink, view, out);
            ui.add_space(ink.space(12.0));
            let themes = Theme::ALL.map(|theme| Cell {
                label: theme.label(),
                value: theme,
                hint: "",
            });
            if let Some(theme) = widget::segments(ui, &ink, "Ground", &themes, Some(view.theme)) {
                out.push(Command::SetTheme(theme));
            }
            ui.add_space(ink.space(12.0));
            let units =
                [("mm", Units::Metric), ("inch", Units::Inch)].map(|(label, value)| Cell { label, value, hint: "" });
            if let Some(units) = widget::segments(ui, &ink, "Units", &units, Some(view.units)) {
                out.push(Command::SetUnits(units));
            }
        });
    });
}

/// Right to left as its surroundings: larger, the size, smaller. Both signs stay where they are at the ends of the
/// range, so that nothing jumps under the pointer.
fn text_size(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let size = view.text_size;
    for (word, sign, next) in [("larger", "+", size.larger()), ("smaller", "\u{2212}", size.smaller())] {
        let enabled = next.is_some();
        let response = ui
            .add_enabled_ui(enabled, |ui| widget::sign(ui, ink, &format!("Text {word}"), sign))
            .inner;
        if let (true, Some(next)) = (response.clicked(), next) {
            out.push(Command::SetTextSize(next));
        }
        if word == "larger" {
            widget::words(
                ui,
                &format!("Text {}\u{a0}%", size.percent()),
                ink.body(),
                ink.color(|t| t.text),
            );
        }
    }
}
