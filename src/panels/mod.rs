//! The panels of the window: egui only, without a window, so that they are tested without a screen.
//!
//! A panel is a plain function of what is to be seen; it draws and writes down what was asked for. Nothing here
//! changes any state but egui's own. [`window_panel`] lays all of them out; [`theme`] holds fonts, colours and sizes,
//! `dock` what lies at the edges and can be dragged, `widget` what can be pressed.

mod bench;
mod debrief;
mod dock;
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

use egui::{Rect, Ui, Vec2, vec2};

use self::dock::{Dock, Edge, inside};

pub use gears::{gear_list_panel, gear_numbers_panel};
pub use head::head_panel;
pub use note::note_panel;
pub use room::{RoomPictures, RoomSizes};
pub use setting::setting_panel;
pub use stage::{stage_captions_panel, stage_panel, turning_panel};
pub use theme::Ink;

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

impl Left {
    /// On a page without gears.
    fn nothing(page: Rect) -> Self {
        Self {
            stage: Rect::from_min_size(page.min, Vec2::ZERO),
            room: None,
        }
    }
}

/// Draws everything but the gears themselves; the tooth room with the pictures that were made for it.
pub fn window_panel(
    ui: &mut Ui,
    view: &WindowView<'_>,
    pictures: Option<&RoomPictures>,
    out: &mut Vec<Command>,
) -> Left {
    let ink = Ink::new(view.theme, view.text_size);
    help::help(ui, view, out);
    notice::notice(ui, view, out);
    let head = ink.scaled(36.0) + ink.space(6.0);
    let head = Dock::fixed("head", Edge::Top, head)
        .margin(vec2(ink.space(16.0), 0.0))
        .fill(|t| t.panel)
        .show(ui, &ink, view, out, |ui, out| head_panel(ui, view, out))
        .response
        .rect;
    let page = ui.available_rect_before_wrap();
    let left = match view.place {
        Place::Start => {
            start::start_panel(ui, view, out);
            Left::nothing(page)
        }
        Place::Debrief => {
            debrief::debrief_panel(ui, view, out);
            Left::nothing(page)
        }
        Place::Bench => Left {
            stage: bench::bench_panel(ui, view, out),
            room: None,
        },
        Place::Gears | Place::ToothRoom => gears_and_room(ui, &ink, view, pictures, out),
    };
    // Lines are drawn last, on the edges of what they part.
    ui.painter()
        .hline(head.x_range(), head.bottom() - 1.0, ink.line(2.0, |t| t.text));
    left
}

/// Gear sets and settings at the left, the stage or the tooth room beside them.
fn gears_and_room(
    ui: &mut Ui,
    ink: &Ink,
    view: &WindowView<'_>,
    pictures: Option<&RoomPictures>,
    out: &mut Vec<Command>,
) -> Left {
    let page = ui.available_rect_before_wrap();
    let margin = ink.space(16.0);
    // 296 points wide, 320 on wide screens, 416 at 200 %; a narrow window leaves the stage at least 40 % of it.
    let wide = page.width() >= 1600.0;
    let at_100 = if wide { 320.0 } else { 296.0 };
    let usual = at_100 + (416.0 - at_100) * (ink.factor() - 1.0);
    let most = page.width() * if wide { 0.5 } else { 0.6 };
    let side = Dock::new("gear-sets", Edge::Left, usual, [ink.space(260.0).min(most), most])
        .margin(vec2(margin, ink.space(12.0)))
        .fill(|t| t.panel)
        .show(ui, ink, view, out, |ui, out| side(ui, ink, view, out))
        .response
        .rect;
    let width = page.right() - side.right();
    let turning = stage::turning_height(ui, ink, view.keys, width - 2.0 * margin);
    let work_height = match view.place {
        Place::ToothRoom => room::room_work_height(ui, ink, view, width - 2.0 * margin).max(turning),
        Place::Gears | Place::Start | Place::Bench | Place::Debrief => turning,
    };
    let work = Dock::fixed("work", Edge::Bottom, work_height)
        .margin(vec2(margin, 0.0))
        .fill(|t| t.ground)
        .show(ui, ink, view, out, |ui, out| match view.place {
            Place::ToothRoom => room::room_work_panel(ui, view, out),
            Place::Gears | Place::Start | Place::Bench | Place::Debrief => turning_panel(ui, view, out),
        })
        .response
        .rect;
    let note_margin = vec2(margin, ink.space(7.0));
    let note = Dock::fixed("note", Edge::Bottom, note::note_height(ui, ink, width, note_margin))
        .margin(note_margin)
        .fill(|t| t.panel)
        .show(ui, ink, view, out, |ui, _| note_panel(ui, view))
        .response
        .rect;
    let stage = ui.available_rect_before_wrap();
    let room = match view.place {
        Place::Gears | Place::Start | Place::Bench | Place::Debrief => {
            stage_panel(ui, stage, view, out);
            inside(ui, "captions", stage, Vec2::ZERO, |ui| {
                stage_captions_panel(ui, stage, view, out);
            });
            None
        }
        Place::ToothRoom => Some(inside(ui, "room", stage, Vec2::ZERO, |ui| {
            room::room_panel(ui, stage, view, pictures, out)
        })),
    };
    let thin = ink.line(1.0, |t| t.line);
    let painter = ui.painter();
    painter.vline(side.right() - 0.5, side.y_range(), thin);
    painter.hline(note.x_range(), note.top() + 1.0, ink.line(2.0, |t| t.text));
    painter.hline(work.x_range(), work.top() + 0.5, thin);
    Left { stage, room }
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
    let height = ui.available_height();
    let needed =
        gears::numbers_height(ink).max(setting::setting_height(ink, view.place)) + ink.scaled(34.0) + ink.space(8.0);
    let range = [0.3 * height, 0.8 * height];
    let below_list = Dock::new("setting-and-numbers", Edge::Bottom, needed.min(0.7 * height), range)
        .margin(vec2(0.0, ink.space(6.0)));
    let below_list = below_list.show(ui, ink, view, out, |ui, out| {
        choose(ui, &[SideTab::Setting, SideTab::Numbers], out);
        below(ui, tab, out);
    });
    let edge = below_list.response.rect;
    ui.painter()
        .hline(edge.x_range(), edge.top() + 0.5, ink.line(1.0, |t| t.line));
    let list = ui.available_rect_before_wrap();
    let list = list.with_max_y(list.bottom() - ink.space(8.0));
    inside(ui, "list", list, Vec2::ZERO, |ui| gear_list_panel(ui, view, out));
}
