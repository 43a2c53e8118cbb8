//! The head of the sheet: the program's name and its places at the left; units, ground, text size and language at the right.

use egui::Ui;

use super::key;
use super::page::Page;
use super::theme::Ink;
use super::widget::{self, Cell};
use crate::quantity::Units;
use crate::view::{Action, Command, Place, TextSize, Theme, WindowView};
use crate::words::{Language, say};

/// How much of the head stands there at once. What has no room stands in a list below a button.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Room {
    /// Everything.
    All,
    /// The places are a list.
    Settings,
    /// Units, theme and language are a list too.
    TextSize,
    /// So is the size of text, and the program's name is left out.
    Least,
}

impl Room {
    const ALL: [Self; 4] = [Self::All, Self::Settings, Self::TextSize, Self::Least];

    /// The most that has room.
    fn of(ui: &Ui, page: &Page<'_>) -> Self {
        let room = ui.available_width();
        let fits = |of: &Self| {
            !(page.ink.large() && *of == Self::All) && left_width(ui, page, *of) + right_width(ui, page, *of) <= room
        };
        Self::ALL.into_iter().find(fits).unwrap_or(Self::Least)
    }
}

/// Draws the head, from left to right.
pub(super) fn head_panel(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    ui.horizontal_centered(|ui| {
        let room = Room::of(ui, page);
        let right = right_width(ui, page, room);
        let edge = ui.max_rect().right();
        if room < Room::Least {
            widget::words(ui, &say!("window-name"), ink.zone_title(), ink.color(|t| t.text));
            ui.add_space(ink.space(12.0));
        }
        if room == Room::All {
            let places: Vec<Cell<Place>> = places(view)
                .map(|place| Cell {
                    label: place.label(),
                    value: place,
                    hint: hint(place, view),
                })
                .collect();
            if let Some(place) = widget::segments(ui, ink, "place", &say!("window-place"), &places, Some(view.place)) {
                page.out.push(Command::GoTo(place));
            }
        } else {
            place_menu(ui, page);
        }
        ui.add_space((edge - right - ui.cursor().left()).max(0.0));
        if room <= Room::Settings {
            units(ui, page);
            ui.add_space(ink.space(8.0));
            theme(ui, page);
            ui.add_space(ink.space(8.0));
        }
        if room <= Room::TextSize {
            text_size(ui, page);
            ui.add_space(ink.space(8.0));
        }
        if room <= Room::Settings {
            language_menu(ui, page, room);
        } else {
            settings_menu(ui, page, room);
        }
        ui.add_space(ink.space(8.0));
        let help = widget::lone_cell(ui, ink, "keys", [&say!("window-keys"), HELP], view.help);
        if help.on_hover_text(say!("window-keys-help")).clicked() {
            page.out.push(Command::ShowHelp(!view.help));
        }
    });
}

const HELP: &str = "?";

/// Width of the name and the places, with a space behind them.
fn left_width(ui: &Ui, page: &Page<'_>, room: Room) -> f32 {
    let (ink, view) = (page.ink, page.view);
    let gap = ui.spacing().item_spacing.x;
    let name = if room < Room::Least {
        widget::text_size(ui, &say!("window-name"), ink.zone_title()).x + ink.space(12.0) + gap
    } else {
        0.0
    };
    let of_places = if room == Room::All {
        let labels: Vec<String> = places(view).map(Place::label).collect();
        widget::segments_width(ui, ink, &labels)
    } else {
        menu_width(ui, ink, &place_label(view.place))
    };
    name + of_places + gap + ink.space(12.0)
}

/// Width of what stands at the right.
fn right_width(ui: &Ui, page: &Page<'_>, room: Room) -> f32 {
    let ink = page.ink;
    let apart = ink.space(8.0) + ui.spacing().item_spacing.x;
    let of_text_size = || {
        let sign = ink.scaled(28.0);
        let said = widget::text_size(ui, &text_size_words(page), ink.body()).x;
        2.0 * (sign + ui.spacing().item_spacing.x) + said
    };
    let help = widget::segments_width(ui, ink, &[HELP.to_owned()]);
    let mut width = help + apart + menu_width(ui, ink, &menu_label(room));
    if room <= Room::TextSize {
        width += of_text_size() + apart;
    }
    if room <= Room::Settings {
        let theme: Vec<String> = Theme::ALL.map(Theme::label).to_vec();
        width +=
            widget::segments_width(ui, ink, &units_words()) + widget::segments_width(ui, ink, &theme) + 2.0 * apart;
    }
    width
}

fn units_words() -> [String; 2] {
    [say!("window-units-metric"), say!("window-units-inch")]
}

fn units(ui: &mut Ui, page: &mut Page<'_>) {
    let [metric, inch] = units_words();
    let units = [Cell::new(metric, Units::Metric), Cell::new(inch, Units::Inch)];
    let now = Some(page.view.units);
    if let Some(units) = widget::segments(ui, page.ink, "units", &say!("window-units"), &units, now) {
        page.out.push(Command::SetUnits(units));
    }
}

fn theme(ui: &mut Ui, page: &mut Page<'_>) {
    let themes = Theme::ALL.map(|theme| Cell::new(theme.label(), theme));
    let now = Some(page.view.theme);
    if let Some(theme) = widget::segments(ui, page.ink, "theme", &say!("window-theme"), &themes, now) {
        page.out.push(Command::SetTheme(theme));
    }
}

/// All languages by their own names.
fn languages(ui: &mut Ui, page: &mut Page<'_>) {
    for language in Language::all() {
        let name = language.own_name();
        let chosen = language == Language::spoken();
        let key = ("language", language.tag());
        if widget::lone_cell(ui, page.ink, key, [&say!("window-language"), &name], chosen).clicked() {
            page.out.push(Command::SetLanguage(language));
            ui.close();
        }
    }
}

/// What the list of languages, or that of settings, is called on its button: where there is little room, the language by its
/// code.
fn menu_label(room: Room) -> String {
    let language = Language::spoken();
    match room {
        Room::All => language.own_name(),
        Room::Settings => {
            let code = language.tag().split('-').next().unwrap_or_default();
            code.to_uppercase()
        }
        Room::TextSize | Room::Least => say!("window-settings"),
    }
}

fn language_menu(ui: &mut Ui, page: &mut Page<'_>, room: Room) {
    let said = say!(
        "window-said",
        what = say!("window-language"),
        value = Language::spoken().own_name()
    );
    menu(ui, page.ink, &menu_label(room), &said, |ui| languages(ui, page));
}

/// What has no room in the head.
fn settings_menu(ui: &mut Ui, page: &mut Page<'_>, room: Room) {
    let label = menu_label(room);
    menu(ui, page.ink, &label, &label, |ui| {
        units(ui, page);
        theme(ui, page);
        if room == Room::Least {
            ui.horizontal(|ui| text_size(ui, page));
        }
        languages(ui, page);
    });
}

/// A button that opens a list; `said` is what it is called for those who listen.
fn menu(ui: &mut Ui, ink: &Ink, label: &str, said: &str, add: impl FnOnce(&mut Ui)) {
    let face = egui::RichText::new(label).font(ink.body());
    ui.spacing_mut().button_padding.x = ink.space(12.0);
    // As high as the cells beside it.
    ui.spacing_mut().interact_size.y = ink.scaled(28.0);
    let button = egui::Button::new(face).min_size(egui::vec2(0.0, ink.scaled(28.0)));
    let (response, _) = egui::containers::menu::MenuButton::from_button(button).ui(ui, add);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::WidgetType::Button, true, said));
    widget::focus_outline(ui, ink, &response, response.rect);
}

fn menu_width(ui: &Ui, ink: &Ink, label: &str) -> f32 {
    widget::text_size(ui, label, ink.body()).x + 2.0 * ink.space(12.0) + 2.0
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

fn place_label(place: Place) -> String {
    say!("window-place-more", place = place.label())
}

/// The places below one button.
fn place_menu(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    let said = say!("window-place-others", place = view.place.label());
    menu(ui, ink, &place_label(view.place), &said, |ui| {
        for place in places(view) {
            let label = place.label();
            let chosen = place == view.place;
            if widget::lone_cell(ui, ink, place, [&say!("window-place"), &label], chosen).clicked() {
                page.out.push(Command::GoTo(place));
                ui.close();
            }
        }
    });
}

/// Large text has no room for the word.
fn text_size_words(page: &Page<'_>) -> String {
    let percent = page.view.text_size.percent();
    if page.ink.large() {
        say!("window-text-percent", percent = percent)
    } else {
        say!("window-text-size", percent = percent)
    }
}

/// Smaller, the size, larger. Both signs stay where they are at the ends of the range, so that nothing jumps under the
/// pointer.
fn text_size(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, size) = (page.ink, page.view.text_size);
    let said = text_size_words(page);
    let mut sign = |ui: &mut Ui, name: String, sign: &str, next: Option<TextSize>| {
        let enabled = next.is_some();
        let response = ui
            .add_enabled_ui(enabled, |ui| widget::sign(ui, ink, &name, sign))
            .inner;
        if let (true, Some(next)) = (response.clicked(), next) {
            page.out.push(Command::SetTextSize(next));
        }
    };
    sign(ui, say!("window-text-smaller"), "\u{2212}", size.smaller());
    widget::words(ui, &said, ink.body(), ink.color(|t| t.text));
    sign(ui, say!("window-text-larger"), "+", size.larger());
}
