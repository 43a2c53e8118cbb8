//! The head of the sheet: the program's name at the left, units, ground and text size at the right.

use egui::{Align, Layout, Ui};

use super::key;
use super::theme::Ink;
use super::widget::{self, Cell};
use crate::quantity::Units;
use crate::view::{Action, Command, Place, Theme, WindowView};

/// Draws the head.
pub fn head_panel(ui: &mut Ui, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let ink = Ink::new(view.theme, view.text_size);
    ui.horizontal_centered(|ui| {
        widget::words(ui, "Lashwright", ink.zone_title(), ink.color(|t| t.text));
        ui.add_space(ink.space(12.0));
        if compact(ui, &ink) {
            place_menu(ui, &ink, view, out);
        } else {
            let hints: Vec<(Place, String)> = places(view).map(|place| (place, hint(place, view))).collect();
            let places: Vec<Cell<'_, Place>> = hints
                .iter()
                .map(|(place, hint)| Cell {
                    label: place.label(),
                    value: *place,
                    hint,
                })
                .collect();
            if let Some(place) = widget::segments(ui, &ink, "Place", &places, Some(view.place)) {
                out.push(Command::GoTo(place));
            }
        }
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            // Right to left: what is listed first stands at the right edge.
            let help = widget::lone_cell(ui, &ink, "Keys", "?", view.help);
            if help.on_hover_text("Lists the keys. Key F1").clicked() {
                out.push(Command::ShowHelp(!view.help));
            }
            ui.add_space(ink.space(8.0));
            text_size(ui, &ink, view, out);
            ui.add_space(ink.space(8.0));
            let themes = Theme::ALL.map(|theme| Cell {
                label: theme.label(),
                value: theme,
                hint: "",
            });
            if let Some(theme) = widget::segments(ui, &ink, "Ground", &themes, Some(view.theme)) {
                out.push(Command::SetTheme(theme));
            }
            ui.add_space(ink.space(8.0));
            let units =
                [("mm", Units::Metric), ("inch", Units::Inch)].map(|(label, value)| Cell { label, value, hint: "" });
            if let Some(units) = widget::segments(ui, &ink, "Units", &units, Some(view.units)) {
                out.push(Command::SetUnits(units));
            }
        });
    });
}

/// Places that there is something to see at.
fn places<'a>(view: &'a WindowView<'_>) -> impl Iterator<Item = Place> + use<'a> {
    let (bench, debrief) = (view.bench.is_some(), view.debrief.is_some());
    Place::ALL.into_iter().filter(move |place| match place {
        Place::Bench => bench,
        Place::Debrief => debrief,
        _ => true,
    })
}

fn hint(place: Place, view: &WindowView<'_>) -> String {
    let what = match place {
        Place::Start => "Exercises and own attempts",
        Place::Bench => "The axle at hand",
        Place::Debrief => "What was true of the axle",
        Place::Gears => "Any gear set on the stage",
        Place::ToothRoom => "Prints, motion and wall chart of any gear set",
    };
    // The key goes from the tooth room to the gears, and to the tooth room from where the gears are seen.
    match place {
        Place::Gears | Place::ToothRoom => key::hint(what, view.keys, Action::ToothRoom),
        _ => what.to_owned(),
    }
}

/// Whether the places do not all stand side by side.
fn compact(ui: &Ui, ink: &Ink) -> bool {
    ink.large() || ui.max_rect().width() < ink.scaled(1060.0)
}

/// The places below one button.
fn place_menu(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let face = egui::RichText::new(format!("{} ...", view.place.label())).font(ink.section());
    ui.spacing_mut().button_padding.x = ink.space(12.0);
    let button = egui::Button::new(face).min_size(egui::vec2(0.0, ink.scaled(28.0)));
    let (response, _) = egui::containers::menu::MenuButton::from_button(button).ui(ui, |ui| {
        for place in places(view) {
            if widget::lone_cell(ui, ink, "Place", place.label(), place == view.place).clicked() {
                out.push(Command::GoTo(place));
                ui.close();
            }
        }
    });
    response.widget_info(|| {
        egui::WidgetInfo::labeled(
            egui::WidgetType::Button,
            true,
            format!("Place: {}, others", view.place.label()),
        )
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
