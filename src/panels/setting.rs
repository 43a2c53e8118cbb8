//! How the gears stand, and what comes of it: four scales, then lash and prints.

use egui::Ui;

use super::page::Page;
use super::scale::{SCALE_HEIGHT, Scale, scale};
use super::theme::Ink;
use super::widget;
use crate::quantity::{self, Units};
use crate::view::bench::{along_words, up_words};
use crate::view::{Command, FILM_UM, Place, Print, Setting, SettingContact};
use crate::words::say;

/// The four scales and what the teeth say.
pub(super) fn setting_panel(ui: &mut Ui, page: &mut Page<'_>) {
    let view = page.view;
    let ink = page.ink;
    let setting = view.stage.setting;
    let in_room = view.place == Place::ToothRoom;
    ui.spacing_mut().item_spacing.y = 0.0;
    ui.add_enabled_ui(view.stage.missing.is_none(), |ui| {
        for of in Set::ALL {
            let (field, most) = of.field();
            let mut wanted = setting;
            let value = *field(&mut wanted);
            let (step, steps_a_line) = match (of, view.units) {
                (Set::ShaftAngle, _) => (0.005, 5),
                (_, Units::Metric) => (0.005, 10),
                (_, Units::Inch) => (quantity::millimetres(0.0005), 4),
            };
            let shown = Scale {
                key: of.key(),
                name: of.name(),
                hint: of.hint(),
                reading: of.reading(value, view.units),
                value,
                ends: [-most, most],
                usual: 0.0,
                step,
                steps_a_line,
                other: view.room.other.filter(|_| in_room).map(|mut other| *field(&mut other)),
            };
            if let Some(value) = scale(ui, ink, &shown) {
                *field(&mut wanted) = value;
                page.out.push(Command::Set(wanted));
            }
        }
        if in_room {
            film(ui, page);
        }
        ui.add_space(ink.space(6.0));
        results(ui, ink, view.stage.contact.as_ref(), view.units);
    });
}

/// Puts all four back to zero; there only where one of them is not.
pub(super) fn zero_cell(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    if view.stage.setting != Setting::default() {
        let response = widget::lone_cell(
            ui,
            ink,
            "zero",
            [&say!("stage-setting"), &say!("stage-setting-zero")],
            false,
        );
        if response.on_hover_text(say!("stage-setting-zero-help")).clicked() {
            page.out.push(Command::Set(Setting::default()));
        }
    }
}

type Field = fn(&mut Setting) -> &mut f64;

/// What a scale sets.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Set {
    Pinion,
    RingGear,
    Offset,
    ShaftAngle,
}

impl Set {
    const ALL: [Self; 4] = [Self::Pinion, Self::RingGear, Self::Offset, Self::ShaftAngle];

    /// Its number, and how far it reaches.
    fn field(self) -> (Field, f64) {
        let most = Setting::MOST;
        match self {
            Self::Pinion => (|s| &mut s.pinion_mm, most.pinion_mm),
            Self::RingGear => (|s| &mut s.wheel_mm, most.wheel_mm),
            Self::Offset => (|s| &mut s.offset_mm, most.offset_mm),
            Self::ShaftAngle => (|s| &mut s.shaft_angle_deg, most.shaft_angle_deg),
        }
    }

    const fn key(self) -> &'static str {
        match self {
            Self::Pinion => "pinion",
            Self::RingGear => "ring-gear",
            Self::Offset => "offset",
            Self::ShaftAngle => "shaft-angle",
        }
    }

    fn name(self) -> String {
        match self {
            Self::Pinion => say!("stage-set-pinion"),
            Self::RingGear => say!("stage-set-ring-gear"),
            Self::Offset => say!("stage-set-offset"),
            Self::ShaftAngle => say!("stage-set-shaft-angle"),
        }
    }

    fn hint(self) -> String {
        match self {
            Self::Pinion => say!("stage-set-pinion-help"),
            Self::RingGear => say!("stage-set-ring-gear-help"),
            Self::Offset => say!("stage-set-offset-help"),
            Self::ShaftAngle => say!("stage-set-shaft-angle-help"),
        }
    }

    /// How far it stands from its designed place, and which way.
    fn reading(self, value: f64, units: Units) -> String {
        let size = match self {
            Self::Pinion | Self::RingGear | Self::Offset => quantity::fine_length(value.abs(), units),
            Self::ShaftAngle => format!("{}°", quantity::number(value.abs(), 3)),
        };
        // Nearer than its digits show.
        if value.abs() < 0.000_5 {
            return size;
        }
        match (self, value > 0.0) {
            (Self::Pinion | Self::RingGear, true) => say!("stage-set-away", size = size),
            (Self::Pinion | Self::RingGear, false) => say!("stage-set-toward", size = size),
            (Self::Offset, true) => say!("stage-set-more", size = size),
            (Self::Offset, false) => say!("stage-set-less", size = size),
            (Self::ShaftAngle, true) => say!("stage-set-wider", size = size),
            (Self::ShaftAngle, false) => say!("stage-set-narrower", size = size),
        }
    }
}

/// Thickness of the paste.
fn film(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    let [thinnest, usual, thickest] = FILM_UM;
    let shown = Scale {
        key: "film",
        name: say!("stage-set-film"),
        hint: say!("stage-set-film-help"),
        reading: say!("stage-micrometers", size = quantity::number(view.room.film_um, 1)),
        value: view.room.film_um,
        ends: [thinnest, thickest],
        usual,
        step: 0.5,
        steps_a_line: 4,
        other: None,
    };
    if let Some(film_um) = scale(ui, ink, &shown) {
        page.out.push(Command::SetFilm(film_um));
    }
}

fn results(ui: &mut Ui, ink: &Ink, contact: Option<&SettingContact>, units: Units) {
    let wait = || "\u{2013}".to_owned();
    let lash = contact.map_or_else(wait, |contact| {
        contact
            .lash_mm
            .map_or_else(|| say!("stage-no-contact"), |lash| lash_words(lash, units))
    });
    widget::number_row(ui, ink, &say!("stage-backlash"), &lash).on_hover_text(say!("stage-backlash-help"));
    let names = [say!("stage-drive"), say!("stage-coast")];
    for (k, name) in names.into_iter().enumerate() {
        let print = contact.map_or_else(wait, |contact| {
            contact
                .prints
                .get(k)
                .copied()
                .flatten()
                .map_or_else(|| say!("stage-no-pattern"), |print| print_words(&print))
        });
        widget::number_row(ui, ink, &name, &print).on_hover_text(say!("stage-pattern-help"));
    }
}

fn lash_words([low, high]: [f64; 2], units: Units) -> String {
    let digits = match units {
        Units::Metric => quantity::number(low, 3),
        Units::Inch => quantity::number(quantity::inches(low), 4),
    };
    say!(
        "stage-backlash-range",
        low = digits,
        high = quantity::fine_length(high, units)
    )
}

fn print_words(print: &Print) -> String {
    let [x, y] = print.centre;
    say!(
        "stage-pattern",
        share = quantity::number(100.0 * print.area, 0),
        along = along_words(x),
        up = up_words(y),
    )
}

/// Height that [`setting_panel`] needs at 100 % to 130 %, points.
pub(super) fn setting_height(ink: &Ink, place: Place) -> f32 {
    let scales = if place == Place::ToothRoom { 5.0 } else { 4.0 };
    scales * ink.scaled(SCALE_HEIGHT) + 3.0 * ink.scaled(24.0) + ink.space(14.0)
}
