//! The head of the sheet: the program's name at the left, units, ground and text size at the right.

use egui::{Align, Layout, Ui};

use super::key;
use super::theme::Ink;
use super::widget::{self, Cell};
use crate::quantity::Units;
use crate::view::{Action, Command, Place, Theme, WindowView};
use crate::words::say;

/// Draws the head.
pub fn head_panel(ui: &mut Ui, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let ink = Ink::new(view.theme, view.text_size);
    ui.horizontal_centered(|ui| {
        widget::words(ui, &say!("window-name"), ink.zone_title(), ink.color(|t| t.text));
        ui.add_space(ink.space(12.0));
        if compact(ui, &ink) {
            place_menu(ui, &ink, view, out);
        } else {
            let places: Vec<Cell<Place>> = places(view)
                .map(|place| Cell {
                    label: place.label(),
                    value: place,
                    hint: hint(place, view),
                })
                .collect();
            if let Some(place) = widget::segments(ui, &ink, "place", &say!("window-place"), &places, Some(view.place)) {
                out.push(Command::GoTo(place));
            }
        }
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            // Right to left: what is listed first stands at the right edge.
            let help = widget::lone_cell(ui, &ink, "keys", [&say!("window-keys"), "?"], view.help);
            if help.on_hover_text(say!("window-keys-help")).clicked() {
                out.push(Command::ShowHelp(!view.help));
            }
            ui.add_space(ink.space(8.0));
            text_size(ui, &ink, view, out);
            ui.add_space(ink.space(8.0));
            let themes = Theme::ALL.map(|theme| Cell::new(theme.label(), theme));
            if let Some(theme) = widget::segments(ui, &ink, "theme", &say!("window-theme"), &themes, Some(view.theme)) {
                out.push(Command::SetTheme(theme));
            }
            ui.add_space(ink.space(8.0));
            let units = [
                Cell::new(say!("window-units-metric"), Units::Metric),
                Cell::new(say!("window-units-inch"), Units::Inch),
            ];
            if let Some(units) = widget::segments(ui, &ink, "units", &say!("window-units"), &units, Some(view.units)) {
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
        Place::Start => say!("window-start-help"),
        Place::Bench => say!("window-bench-help"),
        Place::Debrief => say!("window-debrief-help"),
        Place::Gears => say!("window-gears-help"),
        Place::ToothRoom => say!("window-tooth-room-help"),
    };
    // The key goes from the tooth room to the gears, and to the tooth room from where the gears are seen.
    match place {
        Place::Gears | Place::ToothRoom => key::hint(what, view.keys, Action::ToothRoom),
        _ => what,
    }
}

/// Whether the places do not all stand side by side.
fn compact(ui: &Ui, ink: &Ink) -> bool {
    ink.large() || ui.max_rect().width() < ink.scaled(1060.0)
}

/// The places below one button.
fn place_menu(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let face = egui::RichText::new(say!("window-place-more", place = view.place.label())).font(ink.section());
    ui.spacing_mut().button_padding.x = ink.space(12.0);
    let button = egui::Button::new(face).min_size(egui::vec2(0.0, ink.scaled(28.0)));
    let (response, _) = egui::containers::menu::MenuButton::from_button(button).ui(ui, |ui| {
        for place in places(view) {
            if widget::lone_cell(
                ui,
                ink,
                place,
                [&say!("window-place"), &place.label()],
                place == view.place,
            )
            .clicked()
            {
                out.push(Command::GoTo(place));
                ui.close();
            }
        }
    });
    response.widget_info(|| {
        egui::WidgetInfo::labeled(
            egui::WidgetType::Button,
            true,
            say!("window-place-others", place = view.place.label()),
        )
    });
}

/// Right to left as its surroundings: larger, the size, smaller. Both signs stay where they are at the ends of the
/// range, so that nothing jumps under the pointer.
fn text_size(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let size = view.text_size;
    for (name, sign, next) in [
        (say!("window-text-larger"), "+", size.larger()),
        (say!("window-text-smaller"), "\u{2212}", size.smaller()),
    ] {
        let enabled = next.is_some();
        let response = ui
            .add_enabled_ui(enabled, |ui| widget::sign(ui, ink, &name, sign))
            .inner;
        if let (true, Some(next)) = (response.clicked(), next) {
            out.push(Command::SetTextSize(next));
        }
        if sign == "+" {
            // Large text has no room for the word.
            let said = if ink.large() {
                say!("window-text-percent", percent = size.percent())
            } else {
                say!("window-text-size", percent = size.percent())
            };
            widget::words(ui, &said, ink.body(), ink.color(|t| t.text));
        }
    }
}
