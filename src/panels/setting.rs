//! How the gears stand, and what comes of it: four scales, then lash and prints.

use egui::Ui;

use super::scale::{SCALE_HEIGHT, Scale, scale};
use super::theme::Ink;
use super::widget;
use crate::quantity::{self, Units};
use crate::view::{Command, FILM_UM, Place, Print, Setting, SettingContact, WindowView};

/// The four scales and what the teeth say.
pub fn setting_panel(ui: &mut Ui, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let ink = Ink::new(view.theme, view.text_size);
    let setting = view.stage.setting;
    let in_room = view.place == Place::ToothRoom;
    ui.spacing_mut().item_spacing.y = 0.0;
    ui.add_enabled_ui(view.stage.missing.is_none(), |ui| {
        for (name, field, most) in fields() {
            let mut wanted = setting;
            let value = *field(&mut wanted);
            let angle = name == SHAFT_ANGLE;
            let (step, steps_a_line) = match (angle, view.units) {
                (true, _) => (0.005, 5),
                (false, Units::Metric) => (0.005, 10),
                (false, Units::Inch) => (quantity::millimetres(0.0005), 4),
            };
            let reading = if angle {
                format!("{}°", quantity::signed(value, 3))
            } else {
                quantity::deviation(value, view.units)
            };
            let shown = Scale {
                name,
                reading,
                value,
                ends: [-most, most],
                usual: 0.0,
                step,
                steps_a_line,
                other: view.room.other.filter(|_| in_room).map(|mut other| *field(&mut other)),
            };
            if let Some(value) = scale(ui, &ink, &shown) {
                *field(&mut wanted) = value;
                out.push(Command::Set(wanted));
            }
        }
        if in_room {
            film(ui, &ink, view, out);
        }
        ui.add_space(ink.space(6.0));
        results(ui, &ink, view.stage.contact.as_ref(), view.units);
    });
}

/// Puts all four back to zero; there only where one of them is not.
pub(super) fn zero_cell(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, out: &mut Vec<Command>) {
    if view.stage.setting != Setting::default() {
        let response = widget::lone_cell(ui, ink, "Setting", "All to zero", false);
        if response
            .on_hover_text("Stands both gears where they were designed to")
            .clicked()
        {
            out.push(Command::Set(Setting::default()));
        }
    }
}

const SHAFT_ANGLE: &str = "Shaft angle, wider +";

type Field = fn(&mut Setting) -> &mut f64;

/// Name, number and reach of each scale.
fn fields() -> [(&'static str, Field, f64); 4] {
    let most = Setting::MOST;
    [
        ("Pinion, out +", |s| &mut s.pinion_mm, most.pinion_mm),
        ("Ring gear, out +", |s| &mut s.wheel_mm, most.wheel_mm),
        ("Offset, more +", |s| &mut s.offset_mm, most.offset_mm),
        (SHAFT_ANGLE, |s| &mut s.shaft_angle_deg, most.shaft_angle_deg),
    ]
}

/// Thickness of the paste.
fn film(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let [thinnest, usual, thickest] = FILM_UM;
    let shown = Scale {
        name: "Paste film",
        reading: format!("{}\u{a0}µm", quantity::number(view.room.film_um, 1)),
        value: view.room.film_um,
        ends: [thinnest, thickest],
        usual,
        step: 0.5,
        steps_a_line: 4,
        other: None,
    };
    if let Some(film_um) = scale(ui, ink, &shown) {
        out.push(Command::SetFilm(film_um));
    }
}

fn results(ui: &mut Ui, ink: &Ink, contact: Option<&SettingContact>, units: Units) {
    let wait = || "\u{2013}".to_owned();
    let lash = contact.map_or_else(wait, |contact| {
        contact
            .lash_mm
            .map_or_else(|| "no contact".to_owned(), |lash| lash_words(lash, units))
    });
    let hint = "Play of the ring gear at its outer pitch radius, pinion held, over one tooth";
    widget::number_row(ui, ink, "Lash", &lash).on_hover_text(hint);
    let names = ["Drive", "Coast"];
    for (k, name) in names.into_iter().enumerate() {
        let print = contact.map_or_else(wait, |contact| {
            contact
                .prints
                .get(k)
                .copied()
                .flatten()
                .map_or_else(|| "none".to_owned(), |print| print_words(&print))
        });
        let hint = "Share of the flank that the paste marks, and its middle: length from toe −1 to heel +1, height from \
                    root −1 to top +1";
        widget::number_row(ui, ink, name, &print).on_hover_text(hint);
    }
}

fn lash_words([low, high]: [f64; 2], units: Units) -> String {
    let (low, high, decimals, unit) = match units {
        Units::Metric => (low, high, 3, "mm"),
        Units::Inch => (quantity::inches(low), quantity::inches(high), 4, "in"),
    };
    format!(
        "{} to {}\u{a0}{unit}",
        quantity::number(low, decimals),
        quantity::number(high, decimals)
    )
}

fn print_words(print: &Print) -> String {
    let [x, y] = print.centre;
    format!(
        "{}\u{a0}%, length {}, height {}",
        quantity::number(100.0 * print.area, 0),
        quantity::signed(x, 2),
        quantity::signed(y, 2)
    )
}

/// Height that [`setting_panel`] needs at 100 % to 130 %, points.
pub(super) fn setting_height(ink: &Ink, place: Place) -> f32 {
    let scales = if place == Place::ToothRoom { 5.0 } else { 4.0 };
    scales * ink.scaled(SCALE_HEIGHT) + 3.0 * ink.scaled(24.0) + ink.space(14.0)
}
