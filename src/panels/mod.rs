//! The panels of the window: egui only, without a window, so that they are tested without a screen.
//!
//! A panel is a plain function of what is to be seen; it draws and writes down what was asked for. Nothing here
//! changes any state but egui's own. [`window_panel`] lays all of them out; [`theme`] holds fonts, colours and sizes,
//! [`Zones`] the division of the window, `widget` what can be pressed.

mod bench;
mod debrief;
mod gears;
mod head;
mod help;
mod key;
mod note;
mod notice;
mod paint;
mod room;
mod scale;
mod setting;
mod stage;
mod start;
pub mod theme;
mod widget;
mod zones;

use egui::{Rect, Ui, UiBuilder, Vec2, vec2};

pub use gears::{gear_list_panel, gear_numbers_panel};
pub use head::head_panel;
pub use note::note_panel;
pub use room::{RoomPictures, RoomSizes};
pub use setting::setting_panel;
pub use stage::{stage_captions_panel, stage_panel, turning_panel};
pub use theme::Ink;
pub use zones::Zones;

use crate::view::{Command, Place, WindowView};
use crate::words::say;

/// Which part of the side panel is shown. With usual text the list is always there, above one of the others.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
enum SideTab {
    List,
    #[default]
    Setting,
    Numbers,
}

impl SideTab {
    fn label(self) -> String {
        match self {
            Self::List => say!("window-tab-sets"),
            Self::Setting => say!("window-tab-setting"),
            Self::Numbers => say!("window-tab-numbers"),
        }
    }
}

/// What the panels leave for others.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Left {
    /// The part of the window for the gears, in points.
    pub stage: Rect,
    /// Sizes of the pictures that the tooth room has room for; none while it is not shown.
    pub room: Option<RoomSizes>,
}

/// Draws everything but the gears themselves; the tooth room with the pictures that were made for it.
pub fn window_panel(
    ui: &mut Ui,
    view: &WindowView<'_>,
    pictures: Option<&RoomPictures>,
    out: &mut Vec<Command>,
) -> Left {
    let ink = Ink::new(view.theme, view.text_size);
    let window = ui.max_rect();
    help::help(ui, view, out);
    notice::notice(ui, view, out);
    if matches!(view.place, Place::Start | Place::Bench | Place::Debrief) {
        return whole_page(ui, &ink, window, view, out);
    }
    let margin = ink.space(16.0);
    let note_margin = vec2(margin, ink.space(7.0));
    let stage_width = Zones::stage_width(window.size(), &ink);
    let note_height = note::note_height(ui, &ink, stage_width, note_margin);
    let work_height = stage::turning_height(ui, &ink, view.keys, stage_width - 2.0 * margin);
    let zones = Zones::divide(window.size(), &ink, note_height, work_height);
    let at = |zone: Rect| zone.translate(window.min.to_vec2());

    ground(ui, &ink, &zones, window.min.to_vec2());
    in_zone(ui, "head", at(zones.head), vec2(margin, 0.0), |ui| {
        head_panel(ui, view, out);
    });
    in_zone(ui, "side", at(zones.side), vec2(margin, ink.space(12.0)), |ui| {
        side(ui, &ink, view, out);
    });
    let stage = at(zones.stage);
    let room = match view.place {
        Place::Gears | Place::Start | Place::Bench | Place::Debrief => {
            stage_panel(ui, stage, view, out);
            in_zone(ui, "captions", stage, Vec2::ZERO, |ui| {
                stage_captions_panel(ui, stage, view, out);
            });
            None
        }
        Place::ToothRoom => Some(in_zone(ui, "room", stage, Vec2::ZERO, |ui| {
            room::room_panel(ui, stage, view, pictures, out)
        })),
    };
    in_zone(ui, "note", at(zones.note), note_margin, |ui| note_panel(ui, view));
    in_zone(ui, "work", at(zones.work), vec2(margin, 0.0), |ui| match view.place {
        Place::ToothRoom => room::room_work_panel(ui, view, out),
        Place::Gears | Place::Start | Place::Bench | Place::Debrief => turning_panel(ui, view, out),
    });
    lines(ui, &ink, &zones, window.min.to_vec2());
    Left { stage, room }
}

/// Pages that divide everything below the head by themselves.
fn whole_page(ui: &mut Ui, ink: &Ink, window: Rect, view: &WindowView<'_>, out: &mut Vec<Command>) -> Left {
    let split = window.top() + Zones::head_height(ink);
    let head = Rect::from_min_max(window.min, egui::pos2(window.right(), split));
    let page = Rect::from_min_max(egui::pos2(window.left(), split), window.max);
    ui.painter().rect_filled(head, 0.0, ink.color(|t| t.panel));
    in_zone(ui, "head", head, vec2(ink.space(16.0), 0.0), |ui| {
        head_panel(ui, view, out);
    });
    let nowhere = Rect::from_min_size(page.min, Vec2::ZERO);
    let stage = match view.place {
        Place::Bench => bench::bench_panel(ui, page, view, out),
        Place::Debrief => {
            debrief::debrief_panel(ui, page, view, out);
            nowhere
        }
        _ => {
            start::start_panel(ui, page, view, out);
            nowhere
        }
    };
    ui.painter()
        .hline(head.x_range(), head.bottom() - 1.0, ink.line(2.0, |t| t.text));
    Left { stage, room: None }
}

fn side(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let key = ui.id().with("tab");
    let tab = ui.data(|data| data.get_temp::<SideTab>(key)).unwrap_or_default();
    let choose = |ui: &mut Ui, tabs: &[SideTab], out: &mut Vec<Command>| {
        let cells: Vec<widget::Cell<SideTab>> = tabs
            .iter()
            .map(|value| widget::Cell::new(value.label(), *value))
            .collect();
        ui.horizontal(|ui| {
            if let Some(pressed) = widget::segments(ui, ink, "show", &say!("window-show"), &cells, Some(tab)) {
                ui.data_mut(|data| data.insert_temp(key, pressed));
            }
            if tab == SideTab::Setting && !ink.large() {
                ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                    setting::zero_cell(ui, ink, view, out);
                });
            }
        });
        ui.add_space(ink.space(8.0));
    };
    let below = |ui: &mut Ui, tab: SideTab, out: &mut Vec<Command>| {
        egui::ScrollArea::vertical()
            .id_salt(tab as u8)
            .auto_shrink([false, false])
            .show(ui, |ui| match tab {
                SideTab::Numbers => gear_numbers_panel(ui, view),
                SideTab::List | SideTab::Setting => {
                    setting_panel(ui, view, out);
                    if ink.large() {
                        ui.add_space(ink.space(8.0));
                        setting::zero_cell(ui, ink, view, out);
                    }
                }
            });
    };
    if ink.large() {
        choose(ui, &[SideTab::List, SideTab::Setting, SideTab::Numbers], out);
        if tab == SideTab::List {
            gear_list_panel(ui, view, out);
        } else {
            below(ui, tab, out);
        }
        return;
    }
    let inside = ui.max_rect();
    let needed =
        gears::numbers_height(ink).max(setting::setting_height(ink, view.place)) + ink.scaled(28.0) + ink.space(8.0);
    let split = (inside.bottom() - needed).max(inside.top() + 0.3 * inside.height());
    let list = Rect::from_min_max(inside.min, egui::pos2(inside.right(), split - ink.space(12.0)));
    let rest = Rect::from_min_max(egui::pos2(inside.left(), split), inside.max);
    in_zone(ui, "list", list, Vec2::ZERO, |ui| gear_list_panel(ui, view, out));
    ui.painter()
        .hline(inside.x_range(), split - ink.space(6.0), ink.line(1.0, |t| t.line));
    in_zone(ui, "rest", rest, Vec2::ZERO, |ui| {
        choose(ui, &[SideTab::Setting, SideTab::Numbers], out);
        below(ui, tab, out);
    });
}

fn in_zone<R>(ui: &mut Ui, name: &str, zone: Rect, margin: Vec2, add: impl FnOnce(&mut Ui) -> R) -> R {
    let builder = UiBuilder::new().id_salt(name).max_rect(zone.shrink2(margin));
    ui.scope_builder(builder, |ui| {
        ui.set_clip_rect(zone.intersect(ui.clip_rect()));
        add(ui)
    })
    .inner
}

fn ground(ui: &Ui, ink: &Ink, zones: &Zones, shift: Vec2) {
    let painter = ui.painter();
    for (zone, fill) in [
        (zones.head, ink.color(|t| t.panel)),
        (zones.side, ink.color(|t| t.panel)),
        (zones.note, ink.color(|t| t.panel)),
        (zones.work, ink.color(|t| t.ground)),
    ] {
        painter.rect_filled(zone.translate(shift), 0.0, fill);
    }
}

/// Zones are parted by lines, drawn last and on their edges.
fn lines(ui: &Ui, ink: &Ink, zones: &Zones, shift: Vec2) {
    let painter = ui.painter();
    let edge = ink.line(2.0, |t| t.text);
    let thin = ink.line(1.0, |t| t.line);
    let [head, side, note, work] = [zones.head, zones.side, zones.note, zones.work].map(|zone| zone.translate(shift));
    painter.hline(head.x_range(), head.bottom() - 1.0, edge);
    painter.vline(side.right() - 0.5, side.y_range(), thin);
    painter.hline(note.x_range(), note.top() + 1.0, edge);
    painter.hline(work.x_range(), work.top() + 0.5, thin);
}
