//! The window: its head, and below it the place that is shown.

use egui::{Id, Rect, Ui, Vec2, vec2};

use super::dock::{Dock, Edge, inside};
use super::page::Page;
use super::room::{self, RoomPictures, RoomSizes};
use super::theme::Ink;
use super::{bench, debrief, gears, head, help, note, notice, setting, stage, start, widget};
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
    let mut page = Page { ink: &ink, view, out };
    help::help(ui, &mut page);
    notice::notice(ui, &mut page);
    let height = ink.scaled(36.0) + ink.space(6.0);
    let head = Dock::fixed("head", Edge::Top, height)
        .margin(vec2(ink.space(16.0), 0.0))
        .fill(|t| t.panel)
        .place(ui, &mut page);
    head.show(ui, |ui| head::head_panel(ui, &mut page));
    let below = ui.available_rect_before_wrap();
    let left = match view.place {
        Place::Start => {
            start::start_panel(ui, &mut page);
            Left::nothing(below)
        }
        Place::Debrief => {
            debrief::debrief_panel(ui, &mut page);
            Left::nothing(below)
        }
        Place::Bench => Left {
            stage: bench::bench_panel(ui, &mut page),
            room: None,
        },
        Place::Gears | Place::ToothRoom => gears_and_room(ui, &mut page, pictures),
    };
    // Lines are drawn last, on the edges of what they part.
    let edge = head.rect;
    ui.painter()
        .hline(edge.x_range(), edge.bottom() - 1.0, ink.line(2.0, |t| t.text));
    left
}

/// Gear sets and settings at the left, the stage or the tooth room beside them.
fn gears_and_room(ui: &mut Ui, page: &mut Page<'_>, pictures: Option<&RoomPictures>) -> Left {
    let (ink, view) = (page.ink, page.view);
    let below = ui.available_rect_before_wrap();
    let margin = ink.space(16.0);
    // 296 points wide, 320 on wide screens, 416 at 200 %; a narrow window leaves the stage at least 40 % of it.
    let wide = below.width() >= 1600.0;
    let at_100 = if wide { 320.0 } else { 296.0 };
    let usual = at_100 + (416.0 - at_100) * (ink.factor() - 1.0);
    let most = below.width() * if wide { 0.5 } else { 0.6 };
    let side_dock = Dock::new("gear-sets", Edge::Left, usual, [ink.space(260.0).min(most), most])
        .margin(vec2(margin, ink.space(12.0)))
        .fill(|t| t.panel)
        .place(ui, page);
    side_dock.show(ui, |ui| side(ui, page));
    let width = below.right() - side_dock.rect.right();
    let turning = stage::turning_height(ui, ink, view.keys, width - 2.0 * margin);
    let in_room = view.place == Place::ToothRoom;
    let work_height = if in_room {
        room::room_work_height(ui, page, width - 2.0 * margin).max(turning)
    } else {
        turning
    };
    let work = Dock::fixed("work", Edge::Bottom, work_height)
        .margin(vec2(margin, 0.0))
        .fill(|t| t.ground)
        .place(ui, page);
    let note_margin = vec2(margin, ink.space(7.0));
    let note = Dock::fixed("note", Edge::Bottom, note::note_height(ui, ink, width, note_margin))
        .margin(note_margin)
        .fill(|t| t.panel)
        .place(ui, page);
    let stage = ui.available_rect_before_wrap();
    let room = if in_room {
        Some(inside(ui, "room", stage, Vec2::ZERO, |ui| {
            room::room_panel(ui, page, stage, pictures)
        }))
    } else {
        stage::stage_panel(ui, page, stage);
        inside(ui, "captions", stage, Vec2::ZERO, |ui| {
            stage::stage_captions_panel(ui, page, stage);
        });
        None
    };
    note.show(ui, |ui| note::note_panel(ui, page));
    work.show(ui, |ui| {
        if in_room {
            room::room_work_panel(ui, page);
        } else {
            stage::turning_panel(ui, page);
        }
    });
    let thin = ink.line(1.0, |t| t.line);
    let painter = ui.painter();
    painter.vline(side_dock.rect.right() - 0.5, side_dock.rect.y_range(), thin);
    painter.hline(note.rect.x_range(), note.rect.top() + 1.0, ink.line(2.0, |t| t.text));
    painter.hline(work.rect.x_range(), work.rect.top() + 0.5, thin);
    Left { stage, room }
}

fn side(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    let key = ui.id().with("tab");
    let tab = ui.data(|data| data.get_temp::<SideTab>(key)).unwrap_or_default();
    if ink.large() {
        side_tabs(ui, page, tab, &[SideTab::List, SideTab::Setting, SideTab::Numbers], key);
        if tab == SideTab::List {
            gears::gear_list_panel(ui, page);
        } else {
            below_tabs(ui, page, tab);
        }
        return;
    }
    let height = ui.available_height();
    let needed =
        gears::numbers_height(ink).max(setting::setting_height(ink, view.place)) + ink.scaled(34.0) + ink.space(8.0);
    let range = [0.3 * height, 0.8 * height];
    let below = Dock::new("setting-and-numbers", Edge::Bottom, needed.min(0.7 * height), range)
        .margin(vec2(0.0, ink.space(6.0)))
        .place(ui, page);
    let list = ui.available_rect_before_wrap();
    let list = list.with_max_y(list.bottom() - ink.space(8.0));
    inside(ui, "list", list, Vec2::ZERO, |ui| gears::gear_list_panel(ui, page));
    below.show(ui, |ui| {
        side_tabs(ui, page, tab, &[SideTab::Setting, SideTab::Numbers], key);
        below_tabs(ui, page, tab);
    });
    ui.painter()
        .hline(below.rect.x_range(), below.rect.top() + 0.5, ink.line(1.0, |t| t.line));
}

fn side_tabs(ui: &mut Ui, page: &mut Page<'_>, tab: SideTab, tabs: &[SideTab], key: Id) {
    let ink = page.ink;
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
                setting::zero_cell(ui, page);
            });
        }
    });
    ui.add_space(ink.space(8.0));
}

fn below_tabs(ui: &mut Ui, page: &mut Page<'_>, tab: SideTab) {
    egui::ScrollArea::vertical()
        .id_salt(tab as u8)
        .auto_shrink([false, false])
        .show(ui, |ui| match tab {
            SideTab::Numbers => gears::gear_numbers_panel(ui, page),
            SideTab::List | SideTab::Setting => {
                setting::setting_panel(ui, page);
                if page.ink.large() {
                    ui.add_space(page.ink.space(8.0));
                    setting::zero_cell(ui, page);
                }
            }
        });
}
