//! The gear sets that were found, and the numbers of the chosen one.

use egui::{Align2, EventFilter, Id, Key, Modifiers, ScrollArea, Ui, vec2};

use super::page::Page;
use super::theme::Ink;
use super::widget::{self, ButtonFace, Rank, Row};
use crate::quantity::{self, Units};
use crate::view::gear_list::{Family, hunting_label};
use crate::view::{Command, GearEntry, TextSize};
use crate::words::say;

/// The list of gear sets. A click or the space bar chooses; with the keyboard in the list, up and down choose the
/// neighbour.
pub(super) fn gear_list_panel(ui: &mut Ui, page: &mut Page<'_>) {
    let view = page.view;
    let ink = page.ink;
    let muted = ink.color(|t| t.muted);
    ui.horizontal(|ui| {
        ui.spacing_mut().interact_size.y = 0.0;
        // With large text the tab above says it already.
        if !ink.large() {
            widget::words(ui, &say!("gears-title"), ink.zone_title(), ink.color(|t| t.text));
        }
        widget::words(ui, &say!("gears-found", count = view.gears.len()), ink.small(), muted);
    });
    ui.add_space(ink.space(4.0));
    let height = ui.available_height() - ink.scaled(28.0) - ink.space(6.0);
    ui.allocate_ui(vec2(ui.available_width(), height), |ui| {
        ui.set_min_height(height);
        list(ui, page);
    });
    open_file(ui, page);
}

/// A gear file of one's own, by its path. Dropping it on the window does the same.
fn open_file(ui: &mut Ui, page: &mut Page<'_>) {
    let ink = page.ink;
    let typed = ui.id().with("gear-file");
    let mut path: String = ui.data(|data| data.get_temp(typed)).unwrap_or_default();
    ui.horizontal(|ui| {
        let face = ButtonFace::plain(say!("gears-open"), Rank::Plain);
        let width = ui.available_width() - face.size(ui, ink).x - ui.spacing().item_spacing.x;
        let hint = say!("gears-file-hint");
        let response = widget::writing_box(ui, ink, typed.with("box"), &say!("gears-file"), &mut path, width, false);
        if path.is_empty() && !response.has_focus() {
            let at = response.rect.left_center();
            let muted = ink.color(|t| t.muted);
            ui.painter().text(at, Align2::LEFT_CENTER, hint, ink.small(), muted);
        }
        let entered = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
        let there = !path.trim().is_empty();
        let pressed = ui
            .add_enabled_ui(there, |ui| widget::button(ui, ink, &face))
            .inner
            .clicked();
        if there && (entered || pressed) {
            page.out.push(Command::OpenGears(path.trim().into()));
            path.clear();
        }
    });
    ui.data_mut(|data| data.insert_temp(typed, path));
}

fn list(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    if view.gears.is_empty() {
        widget::words(ui, &say!("gears-none"), ink.body(), ink.color(|t| t.muted));
        return;
    }
    let list = ui.id().with("gear-sets");
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (index, entry) in view.gears.iter().enumerate() {
            row(ui, page, list, index, entry);
        }
    });
}

fn row(ui: &mut Ui, page: &mut Page<'_>, list: Id, index: usize, entry: &GearEntry) {
    let (ink, view) = (page.ink, page.view);
    let numbers = &entry.numbers;
    let second = say!(
        "gears-second",
        hunting = hunting_label(numbers.hunting),
        origin = entry.origin.label(),
    );
    let chosen = view.chosen == Some(index);
    let response = widget::list_row(
        ui,
        ink,
        list.with(index),
        &Row {
            title: &entry.name,
            second: &second,
            chosen,
        },
    );
    if response.clicked() {
        page.out.push(Command::ChooseGears(index));
    }
    if response.gained_focus() {
        response.scroll_to_me(None);
    }
    // The chosen set is in view: in the middle when the list is first shown or text grew, otherwise moved no farther
    // than needed, so that nothing jumps under the pointer.
    let seen = list.with("seen");
    let now = (index, view.text_size);
    let before = ui.data(|data| data.get_temp::<(usize, TextSize)>(seen));
    if chosen && before != Some(now) {
        ui.data_mut(|data| data.insert_temp(seen, now));
        let same_text = before.is_some_and(|(_, text_size)| text_size == view.text_size);
        response.scroll_to_me((!same_text).then_some(egui::Align::Center));
    }
    if response.has_focus() {
        let arrows = EventFilter {
            vertical_arrows: true,
            ..EventFilter::default()
        };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, arrows));
        // Taken out, because the neighbour has the keyboard within the same pass.
        let [up, down] =
            ui.input_mut(|input| [Key::ArrowUp, Key::ArrowDown].map(|key| input.consume_key(Modifiers::NONE, key)));
        let neighbour = match (up, down) {
            (true, false) => index.checked_sub(1),
            (false, true) => Some(index + 1).filter(|next| *next < view.gears.len()),
            _ => None,
        };
        if let Some(neighbour) = neighbour {
            page.out.push(Command::ChooseGears(neighbour));
            ui.memory_mut(|memory| memory.request_focus(list.with(neighbour)));
        }
    }
}

/// A length of the design, as a drawing states it: millimetres with one decimal at most, inches with three.
fn design_length(length_mm: f64, units: Units) -> String {
    match units {
        Units::Metric => {
            let whole = (length_mm - length_mm.round()).abs() < 0.05;
            say!(
                "gears-millimeters",
                length = quantity::number(length_mm, usize::from(!whole))
            )
        }
        Units::Inch => say!(
            "gears-inches",
            length = quantity::number(quantity::inches(length_mm), 3)
        ),
    }
}

/// The numbers of the chosen set.
pub(super) fn gear_numbers_panel(ui: &mut Ui, page: &Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    let Some(entry) = view.chosen_gears() else {
        widget::words(ui, &say!("gears-choose"), ink.body(), ink.color(|t| t.muted));
        return;
    };
    let numbers = &entry.numbers;
    widget::words(ui, &entry.name, ink.section(), ink.color(|t| t.text));
    ui.add_space(ink.space(2.0));
    ui.spacing_mut().item_spacing.y = 0.0;
    let teeth = say!(
        "gears-teeth-numbers",
        pinion = numbers.pinion_teeth.to_string(),
        wheel = numbers.wheel_teeth.to_string(),
        hunting = hunting_label(numbers.hunting),
    );
    let spiral = format!("{}°", quantity::number(numbers.pinion_spiral_angle_deg, 1));
    let rows = [
        (say!("gears-teeth"), teeth),
        (say!("gears-ratio"), quantity::number(numbers.ratio, 3)),
        (
            say!("gears-diameter"),
            design_length(numbers.ring_gear_diameter_mm, view.units),
        ),
        (
            say!("gears-offset"),
            if numbers.offset_mm > 0.0 {
                design_length(numbers.offset_mm, view.units)
            } else {
                say!("gears-no-offset")
            },
        ),
        (say!("gears-spiral-angle"), spiral),
        (say!("gears-tooth-depth"), numbers.depth_label()),
        (
            say!("gears-family"),
            numbers.family.map_or_else(|| "\u{2013}".to_owned(), Family::label),
        ),
    ];
    for (word, number) in rows {
        widget::number_row(ui, ink, &word, &number);
    }
    ui.add_space(ink.space(6.0));
    if let Some(family) = numbers.family {
        widget::words(ui, &family.rule(), ink.small(), ink.color(|t| t.muted));
    }
}

/// Height that [`gear_numbers_panel`] needs at 100 % to 130 %, points.
pub(super) fn numbers_height(ink: &Ink) -> f32 {
    let rows = 7.0;
    let name = 2.0 * 18.0;
    ink.scaled(24.0) * rows + ink.scaled(name) + ink.scaled(2.0 * 16.0) + ink.space(16.0)
}
