//! The tooth room: both flanks, transmission error and wall chart, with another setting to compare with.

use egui::{Key, Rect, Sense, Ui, WidgetInfo, WidgetType, pos2, vec2};

use super::key;
use super::page::Page;
use super::paint::PictureArea;
use super::theme::Ink;
use super::widget::{self, ButtonFace, Cell, Rank};
use crate::drawing;
use crate::view::{Action, Command, Place, Setting, WindowView};
use crate::words::say;

/// The pictures of the room, made by whoever computes them, for the sizes that the panel last asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct RoomPictures {
    /// Both flanks.
    pub flanks: drawing::Picture,
    /// Transmission error.
    pub motion: drawing::Picture,
    /// Wall chart.
    pub chart: Vec<drawing::Item>,
    /// Its cells.
    pub chart_grid: drawing::Rect,
    /// P of each column, mm.
    pub across_mm: Vec<f64>,
    /// G of each row, mm.
    pub down_mm: Vec<f64>,
}

/// Sizes that the room has for its pictures: width and height in points of the picture.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct RoomSizes {
    /// Both flanks.
    pub flanks: [f64; 2],
    /// Transmission error.
    pub motion: [f64; 2],
    /// Wall chart.
    pub chart: [f64; 2],
}

/// Which picture is shown where there is room for one only.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
enum Sight {
    #[default]
    Drive,
    Coast,
    Motion,
    Chart,
}

/// Draws the room over a rectangle and answers what room there is for its pictures.
pub(super) fn room_panel(ui: &mut Ui, page: &mut Page<'_>, rect: Rect, pictures: Option<&RoomPictures>) -> RoomSizes {
    let ink = page.ink;
    ui.painter().rect_filled(rect, 0.0, ink.color(|t| t.panel));
    let inside = rect.shrink2(vec2(ink.space(12.0), ink.space(10.0)));
    if ink.large() || rect.width() < ink.scaled(860.0) {
        return one_at_a_time(ui, page, inside, pictures);
    }
    // The chart's column is as wide as its cells with their lash need.
    let chart_width = (0.37 * inside.width()).min(ink.scaled(460.0));
    let split = inside.right() - chart_width;
    let motion_height = (0.29 * inside.height()).max(ink.scaled(156.0));
    let foot = inside.bottom() - motion_height;
    let gap = ink.space(12.0);
    let flanks = Rect::from_min_max(inside.min, pos2(split - gap, foot - 0.5 * gap));
    let motion = Rect::from_min_max(
        pos2(inside.left(), foot + 0.5 * gap),
        pos2(split - gap, inside.bottom()),
    );
    let chart = Rect::from_min_max(pos2(split, inside.top()), inside.max);
    if let Some(pictures) = pictures {
        picture(
            ui,
            page,
            flanks,
            "both",
            &say!("room-both-flanks"),
            &pictures.flanks.items,
        );
        picture(
            ui,
            page,
            motion,
            "motion",
            &say!("room-transmission-error"),
            &pictures.motion.items,
        );
        chart_panel(ui, page, chart, pictures);
    } else {
        waiting(ui, page, flanks);
    }
    RoomSizes {
        flanks: size(ink, flanks),
        motion: size(ink, motion),
        chart: chart_size(ink, chart),
    }
}

fn one_at_a_time(ui: &mut Ui, page: &mut Page<'_>, inside: Rect, pictures: Option<&RoomPictures>) -> RoomSizes {
    let ink = page.ink;
    let key = ui.id().with("sight");
    let mut sight = ui.data(|data| data.get_temp::<Sight>(key)).unwrap_or_default();
    let head = Rect::from_min_size(inside.min, vec2(inside.width(), ink.scaled(28.0)));
    let builder = egui::UiBuilder::new().id_salt("sights").max_rect(head);
    ui.scope_builder(builder, |ui| {
        let cells = [
            Cell::new(say!("room-drive"), Sight::Drive),
            Cell::new(say!("room-coast"), Sight::Coast),
            Cell::new(say!("room-motion"), Sight::Motion),
            Cell::new(say!("room-chart"), Sight::Chart),
        ];
        if let Some(pressed) = widget::segments(ui, ink, "picture", &say!("room-picture"), &cells, Some(sight)) {
            sight = pressed;
            ui.data_mut(|data| data.insert_temp(key, sight));
        }
    });
    let rest = Rect::from_min_max(pos2(inside.left(), head.bottom() + ink.space(8.0)), inside.max);
    match (pictures, sight) {
        (None, _) => waiting(ui, page, rest),
        // The picture has both flanks, one below the other: the half of it that is wanted is in view.
        (Some(pictures), Sight::Drive) => picture(
            ui,
            page,
            rest,
            "drive",
            &say!("room-drive-flank"),
            &pictures.flanks.items,
        ),
        (Some(pictures), Sight::Coast) => {
            let [_, height] = size(ink, rest);
            let lower = pictures.flanks.items.iter().cloned();
            let items: Vec<drawing::Item> = lower.map(|item| item.moved(0.0, -height)).collect();
            picture(ui, page, rest, "coast", &say!("room-coast-flank"), &items);
        }
        (Some(pictures), Sight::Motion) => picture(
            ui,
            page,
            rest,
            "motion",
            &say!("room-transmission-error"),
            &pictures.motion.items,
        ),
        (Some(pictures), Sight::Chart) => chart_panel(ui, page, rest, pictures),
    }
    let [width, height] = size(ink, rest);
    RoomSizes {
        flanks: [width, 2.0 * height],
        motion: [width, height],
        chart: chart_size(ink, rest),
    }
}

/// Points of a picture that its height must hold to be read.
const LEAST_HEIGHT: f32 = 250.0;

/// How large pictures are painted in a rectangle: as large as the text of the window, but no larger than leaves them
/// room. Their own text is then smaller than the window's, never smaller than at 100 %.
fn scale(ink: &Ink, rect: Rect) -> f32 {
    ink.factor().min((rect.height() / LEAST_HEIGHT).max(1.0))
}

/// A rectangle's size in points of a picture.
fn size(ink: &Ink, rect: Rect) -> [f64; 2] {
    [rect.width(), rect.height()].map(|v| f64::from((v / scale(ink, rect)).round()))
}

/// Height of the chart's title and of what is said below it, points at 100 %.
const CHART_TITLE: f32 = 26.0;
const CHART_FOOT: f32 = 40.0;

fn chart_size(ink: &Ink, rect: Rect) -> [f64; 2] {
    let [width, height] = size(ink, rect);
    // With large text the chart needs the room more than what is said below it.
    let foot = if ink.large() { 0.0 } else { CHART_FOOT };
    [width, height - f64::from(CHART_TITLE + foot)]
}

fn picture(ui: &Ui, page: &Page<'_>, rect: Rect, key: &str, name: &str, items: &[drawing::Item]) {
    let (ink, view) = (page.ink, page.view);
    let response = ui.interact(rect, ui.id().with(key), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Image, true, name));
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    PictureArea::new(rect.min, scale(ink, rect), view.theme).paint(&painter, items);
}

fn waiting(ui: &Ui, page: &Page<'_>, rect: Rect) {
    let (ink, view) = (page.ink, page.view);
    let words = view.stage.missing.map_or_else(|| say!("room-computing"), str::to_owned);
    ui.painter().text(
        rect.center(),
        egui::Align2::CENTER_CENTER,
        words,
        ink.body(),
        ink.color(|t| t.muted),
    );
}

/// The wall chart: a press on a cell goes there.
fn chart_panel(ui: &mut Ui, page: &mut Page<'_>, rect: Rect, pictures: &RoomPictures) {
    let (ink, view) = (page.ink, page.view);
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    let text = ink.color(|t| t.text);
    painter.text(
        rect.min,
        egui::Align2::LEFT_TOP,
        say!("room-wall-chart-title"),
        ink.section(),
        text,
    );
    let scale = scale(ink, rect);
    let sheet = PictureArea::new(rect.min + vec2(0.0, scale * CHART_TITLE), scale, view.theme);
    sheet.paint(&painter, &pictures.chart);
    let grid = sheet.rect(&pictures.chart_grid);
    let foot = (!ink.large()).then(|| {
        painter.layout(
            say!("room-wall-chart-help"),
            ink.small(),
            ink.color(|t| t.muted),
            rect.width(),
        )
    });
    if let Some(foot) = foot {
        painter.galley(pos2(rect.left(), grid.bottom() + ink.space(8.0)), foot, text);
    }
    let response = ui.interact(grid, ui.id().with("wall-chart"), Sense::click());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Image, true, say!("room-wall-chart")));
    let (columns, rows) = (pictures.across_mm.len(), pictures.down_mm.len());
    if response.clicked()
        && let Some(at) = response.interact_pointer_pos()
        && let Some(&pinion_mm) = pictures.across_mm.get(cell(at.x, grid.left(), grid.width(), columns))
        && let Some(&wheel_mm) = pictures.down_mm.get(cell(at.y, grid.top(), grid.height(), rows))
    {
        page.out.push(Command::Set(Setting {
            pinion_mm,
            wheel_mm,
            ..view.stage.setting
        }));
    }
    let focused = ui.memory(egui::Memory::focused);
    if focused.is_none() || focused == Some(response.id) {
        arrows(ui, page, pictures);
    }
    widget::focus_outline(ui, ink, &response, grid);
}

/// Which of `count` equal parts a place lies in.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast saturates, and the last part is the last"
)]
fn cell(at: f32, from: f32, length: f32, count: usize) -> usize {
    let part = ((at - from) / length * count as f32).floor() as usize;
    part.min(count.saturating_sub(1))
}

/// Moves by a field of the chart.
fn arrows(ui: &Ui, page: &mut Page<'_>, pictures: &RoomPictures) {
    let view = page.view;
    let step = |values: &[f64]| match values {
        [a, b, ..] => b - a,
        _ => 0.0,
    };
    let (across, down) = (step(&pictures.across_mm), step(&pictures.down_mm));
    let mut setting = view.stage.setting;
    ui.input_mut(|input| {
        for (key, x, y) in [
            (Key::ArrowLeft, -1.0, 0.0),
            (Key::ArrowRight, 1.0, 0.0),
            (Key::ArrowUp, 0.0, -1.0),
            (Key::ArrowDown, 0.0, 1.0),
        ] {
            if input.consume_key(egui::Modifiers::SHIFT, key) {
                setting.pinion_mm += x * across;
                setting.wheel_mm += y * down;
            }
        }
    });
    if setting != view.stage.setting {
        page.out.push(Command::Set(setting.within_reach()));
    }
}

/// What can be done in the room, in the order of its work line.
pub(super) fn room_buttons(view: &WindowView<'_>) -> Vec<(ButtonFace, Action, Command, bool)> {
    let button = |label, action, rank, command, enabled| {
        let face = ButtonFace::new(label, key::cap(view.keys, action), rank);
        (face, action, command, enabled)
    };
    let there = view.stage.missing.is_none();
    let compared = view.room.other.is_some();
    vec![
        button(
            say!("room-keep-as-b"),
            Action::KeepAsOther,
            Rank::Next,
            Command::KeepAsOther,
            there,
        ),
        button(
            say!("room-swap"),
            Action::SwapWithOther,
            Rank::Plain,
            Command::SwapWithOther,
            compared,
        ),
        button(
            say!("room-drop-b"),
            Action::DropOther,
            Rank::Plain,
            Command::DropOther,
            compared,
        ),
        button(
            say!("room-save-picture"),
            Action::SavePicture,
            Rank::Plain,
            Command::SavePicture,
            there,
        ),
    ]
}

/// Rows that the room's buttons need beside each other in this width.
fn button_rows(ui: &Ui, page: &Page<'_>, width: f32) -> f32 {
    let (ink, view) = (page.ink, page.view);
    let gap = ui.spacing().item_spacing.x;
    let (mut rows, mut used) = (1.0, 0.0);
    for (face, ..) in room_buttons(view) {
        let wide = face.size(ui, ink).x;
        if used > 0.0 && used + gap + wide > width {
            rows += 1.0;
            used = wide;
        } else {
            used += if used > 0.0 { gap + wide } else { wide };
        }
    }
    rows
}

/// Height of [`room_work_panel`] where its buttons need more than one row; less than any panel where they do not.
pub(super) fn room_work_height(ui: &Ui, page: &Page<'_>, width: f32) -> f32 {
    let (ink, view) = (page.ink, page.view);
    let rows = button_rows(ui, page, width);
    let button = room_buttons(view)
        .first()
        .map_or(0.0, |(face, ..)| face.size(ui, ink).y);
    if rows > 1.0 {
        (rows * (button + ui.spacing().item_spacing.y) + ink.scaled(18.0) + 2.0 * ink.space(8.0)).ceil()
    } else {
        0.0
    }
}

/// The work line of the room, and its keys.
pub(super) fn room_work_panel(ui: &mut Ui, page: &mut Page<'_>) {
    let view = page.view;
    let ink = page.ink;
    let wrapped = ink.large() || button_rows(ui, page, ui.available_width()) > 1.0;
    let buttons = |ui: &mut Ui, page: &mut Page<'_>| {
        for (face, _, command, enabled) in room_buttons(view) {
            // A button that can be out of use does not wrap by itself.
            if wrapped && ui.available_size_before_wrap().x < face.size(ui, ink).x {
                ui.end_row();
            }
            let response = ui.add_enabled_ui(enabled, |ui| widget::button(ui, ink, &face)).inner;
            if enabled && response.clicked() {
                page.out.push(command);
            }
        }
    };
    if wrapped {
        ui.add_space(ink.space(8.0));
        ui.horizontal_wrapped(|ui| buttons(ui, page));
    } else {
        ui.horizontal_centered(|ui| {
            buttons(ui, page);
        });
    }
    if ui.memory(egui::Memory::focused).is_none() {
        keys(ui, page);
    }
}

fn keys(ui: &Ui, page: &mut Page<'_>) {
    let view = page.view;
    let actions = key::actions(ui, view);
    for (_, action, command, enabled) in room_buttons(view) {
        if enabled && actions.contains(&action) {
            page.out.push(command);
        }
    }
    if actions.contains(&Action::ToothRoom) {
        page.out.push(Command::GoTo(Place::Gears));
    }
}
