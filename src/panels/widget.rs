//! What can be pressed: buttons, joined choices, rows of a list. Drawn as on a workshop sheet: thin frame, 2 px
//! corners, violet outline where the keyboard is.

use core::fmt::Debug;
use core::hash::Hash;

use std::sync::Arc;

use egui::text::{CCursor, CCursorRange};
use egui::text_edit::TextEditState;
use egui::{Align2, Color32, FontId, Galley, Id, Rect, Response, Sense, Stroke, StrokeKind, Ui, Vec2, pos2, vec2};
use egui::{WidgetInfo, WidgetType};

use super::theme::Ink;
use crate::words::say;

/// What a button is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Rank {
    /// One of several things that can be done.
    Plain,
    /// The thing to do next.
    Next,
}

/// Least height of what can be pressed, points at 100 %.
const TARGET: f32 = 32.0;

/// Violet outline 2 points off, where the keyboard is.
pub(super) fn focus_outline(ui: &Ui, ink: &Ink, response: &Response, rect: Rect) {
    if response.has_focus() {
        ui.painter()
            .rect_stroke(rect.expand(2.0), 2.0, ink.line(2.0, |t| t.accent), StrokeKind::Outside);
    }
}

/// What a button shows.
#[derive(Debug, Clone)]
pub(super) struct ButtonFace {
    /// Its word, which is its name too.
    pub(super) label: String,
    /// The longest word that it ever shows, so that its neighbours stay where they are.
    pub(super) longest: String,
    /// The key that does the same; not part of its name.
    pub(super) key: String,
    /// What it is for.
    pub(super) rank: Rank,
}

impl ButtonFace {
    /// A button that always shows the same word.
    pub(super) fn new(label: String, key: String, rank: Rank) -> Self {
        Self {
            longest: label.clone(),
            label,
            key,
            rank,
        }
    }

    /// The same without a key.
    pub(super) fn plain(label: String, rank: Rank) -> Self {
        Self::new(label, String::new(), rank)
    }

    /// Size of the button, points.
    pub(super) fn size(&self, ui: &Ui, ink: &Ink) -> Vec2 {
        self.laid(ui, ink, Color32::PLACEHOLDER).size
    }

    /// How its word and its cap stand: beside each other where the row has room for both, else the word alone, on as many lines
    /// as it needs.
    fn laid(&self, ui: &Ui, ink: &Ink, color: Color32) -> LaidFace {
        let most = ui.max_rect().width();
        let pad = ink.space(12.0);
        let lay = |words: &str, width: f32| ui.painter().layout(words.to_owned(), ink.body(), color, width);
        let longest = text_size(ui, &self.longest, ink.body());
        let cap = (!self.key.is_empty()).then(|| self.cap_size(ui, ink));
        let cap = cap.filter(|cap| 2.0 * pad + longest.x + ink.space(8.0) + cap.x <= most);
        let beside = cap.map_or(0.0, |cap| ink.space(8.0) + cap.x);
        let room = (most - 2.0 * pad - beside).max(ink.scaled(40.0));
        let longest = lay(&self.longest, room).size();
        let label = lay(&self.label, room);
        let height = ink.scaled(TARGET).max(longest.y.max(label.size().y) + ink.space(8.0));
        LaidFace {
            size: vec2(2.0 * pad + longest.x.max(label.size().x) + beside, height),
            label,
            cap,
        }
    }

    fn cap_size(&self, ui: &Ui, ink: &Ink) -> Vec2 {
        let key = text_size(ui, &self.key, ink.small());
        vec2(key.x.max(ink.scaled(10.0)) + ink.space(8.0), key.y + 2.0)
    }
}

/// A button's word with its room.
struct LaidFace {
    size: Vec2,
    label: Arc<Galley>,
    /// Size of the cap, where it is shown.
    cap: Option<Vec2>,
}

/// Size of words on one line.
pub(super) fn text_size(ui: &Ui, text: &str, font: FontId) -> Vec2 {
    ui.painter()
        .layout_no_wrap(text.to_owned(), font, Color32::PLACEHOLDER)
        .size()
}

/// A button with its key beside the word.
pub(super) fn button(ui: &mut Ui, ink: &Ink, face: &ButtonFace) -> Response {
    let enabled = ui.is_enabled();
    button_if(ui, ink, face, enabled)
}

/// The same, which can be out of use and wraps with its row all the same.
pub(super) fn button_if(ui: &mut Ui, ink: &Ink, face: &ButtonFace, enabled: bool) -> Response {
    let (fill, text_color, frame) = match face.rank {
        _ if !enabled => (
            ink.color(|t| t.panel),
            ink.color(|t| t.muted),
            ink.line(1.0, |t| t.hairline),
        ),
        Rank::Plain => (ink.color(|t| t.inset), ink.color(|t| t.text), ink.line(1.0, |t| t.line)),
        Rank::Next => (
            ink.color(|t| t.accent),
            ink.color(|t| t.on_accent),
            ink.line(1.0, |t| t.accent),
        ),
    };
    let laid = face.laid(ui, ink, text_color);
    let sense = if enabled { Sense::click() } else { Sense::hover() };
    let (rect, response) = ui.allocate_exact_size(laid.size, sense);
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, enabled, &face.label));

    let frame = if response.hovered() && enabled {
        Stroke::new(2.0, frame.color)
    } else {
        frame
    };
    let painter = ui.painter();
    painter.rect(rect, 2.0, fill, frame, StrokeKind::Inside);
    let pad = ink.space(12.0);
    let label_y = rect.center().y - laid.label.size().y / 2.0;
    painter.galley(pos2(rect.left() + pad, label_y), laid.label, text_color);
    if let Some(cap) = laid.cap {
        let key_galley = painter.layout_no_wrap(face.key.clone(), ink.small(), text_color);
        let cap_rect = Rect::from_center_size(pos2(rect.right() - pad - cap.x / 2.0, rect.center().y), cap);
        painter.rect_stroke(cap_rect, 2.0, Stroke::new(1.0, text_color), StrokeKind::Inside);
        painter.galley(cap_rect.center() - key_galley.size() / 2.0, key_galley, text_color);
    }
    focus_outline(ui, ink, &response, rect);
    if response.gained_focus() {
        response.scroll_to_me(None);
    }
    response
}

/// How many things of these widths stand in each row of what is left of a panel's width.
pub(super) fn rows_of_widths(ui: &Ui, widths: &[f32], gap: f32) -> Vec<usize> {
    rows_in(ui.max_rect().width(), widths, gap)
}

/// How many things of these widths stand in each row: as many as have room.
pub(super) fn rows_in(room: f32, widths: &[f32], gap: f32) -> Vec<usize> {
    let mut rows: Vec<usize> = Vec::new();
    let mut used = f32::INFINITY;
    for width in widths {
        match rows.last_mut() {
            Some(count) if used + gap + width <= room => {
                *count += 1;
                used += gap + width;
            }
            _ => {
                rows.push(1);
                used = *width;
            }
        }
    }
    rows
}

/// One of joined cells.
#[derive(Debug, Clone)]
pub(super) struct Cell<T> {
    /// Its word.
    pub(super) label: String,
    /// What it stands for.
    pub(super) value: T,
    /// What is said when the pointer rests on it; empty says nothing.
    pub(super) hint: String,
}

impl<T> Cell<T> {
    /// A cell that says nothing more.
    pub(super) fn new(label: String, value: T) -> Self {
        Self {
            label,
            value,
            hint: String::new(),
        }
    }
}

/// A choice of one among a few, drawn as joined cells, in as many rows as they need; `key` tells it from others beside it.
/// Returns what was pressed, also when it was chosen before.
pub(super) fn segments<T: Copy + PartialEq>(
    ui: &mut Ui,
    ink: &Ink,
    key: impl Hash + Debug,
    what: &str,
    cells: &[Cell<T>],
    chosen: Option<T>,
) -> Option<T> {
    let room = ui.max_rect().width();
    let sizes: Vec<Vec2> = cells.iter().map(|of| cell_size(ui, ink, &of.label, room)).collect();
    let widths: Vec<f32> = sizes.iter().map(|size| size.x).collect();
    // Cells share their frames: each begins on the last point of the one before.
    let rows = rows_in(room, &widths, -1.0);
    let mut places: Vec<Rect> = Vec::new();
    let (mut width, mut top): (f32, f32) = (0.0, 0.0);
    let mut rest = sizes.iter();
    for count in rows {
        let row: Vec<&Vec2> = rest.by_ref().take(count).collect();
        let height = row.iter().fold(0.0_f32, |height, size| height.max(size.y));
        let mut left = 0.0;
        for size in row {
            places.push(Rect::from_min_size(pos2(left, top), vec2(size.x, height)));
            left += size.x - 1.0;
        }
        width = width.max(left + 1.0);
        top += height - 1.0;
    }
    let (_, all) = ui.allocate_space(vec2(width, top + 1.0));
    let mut pressed = None;
    let mut focused = None;
    let whole = ui.id().with(key);
    for (index, (of, place)) in cells.iter().zip(places).enumerate() {
        let rect = place.translate(all.min.to_vec2());
        let response = cell(
            ui,
            ink,
            whole.with(index),
            [what, &of.label],
            rect,
            chosen == Some(of.value),
        );
        if response.clicked() {
            pressed = Some(of.value);
        }
        if response.has_focus() {
            focused = Some(response.clone());
        }
        if !of.hint.is_empty() {
            response.on_hover_text(&of.hint);
        }
    }
    // After all cells, so that no neighbour covers it.
    if let Some(response) = focused {
        focus_outline(ui, ink, &response, response.rect);
    }
    pressed
}

/// Width that cells of these words take beside each other.
pub(super) fn segments_width(ui: &Ui, ink: &Ink, labels: &[String]) -> f32 {
    let widths = labels
        .iter()
        .map(|label| cell_size(ui, ink, label, f32::INFINITY).x - 1.0);
    widths.sum::<f32>() + 1.0
}

/// Size of a cell that shows one of these words at a time.
pub(super) fn cell_size_of(ui: &Ui, ink: &Ink, words: &[String], room: f32) -> Vec2 {
    let sizes = words.iter().map(|word| cell_size(ui, ink, word, room));
    sizes.fold(Vec2::ZERO, Vec2::max)
}

/// A cell that stands alone at this place.
pub(super) fn cell_at(
    ui: &Ui,
    ink: &Ink,
    key: impl Hash + Debug,
    words: [&str; 2],
    rect: Rect,
    is_chosen: bool,
) -> Response {
    let response = cell(ui, ink, ui.id().with(key), words, rect, is_chosen);
    focus_outline(ui, ink, &response, rect);
    response
}

/// Size of a cell; a word that is longer than the room wraps.
fn cell_size(ui: &Ui, ink: &Ink, label: &str, room: f32) -> Vec2 {
    let pad = ink.space(12.0);
    let words = ui
        .painter()
        .layout(label.to_owned(), ink.body(), Color32::PLACEHOLDER, room - 2.0 * pad);
    let height = ink.scaled(CELL).max(words.size().y + ink.space(6.0));
    vec2((words.size().x + 2.0 * pad).ceil().min(room), height)
}

/// A cell that stands alone: chosen or not, or pressed once. `key` tells it from others beside it, whatever its word is: where
/// that changes when it is pressed, the keyboard stays on it.
pub(super) fn lone_cell(
    ui: &mut Ui,
    ink: &Ink,
    key: impl Hash + Debug,
    [what, label]: [&str; 2],
    is_chosen: bool,
) -> Response {
    let id = ui.id().with(key);
    let size = cell_size(ui, ink, label, ui.max_rect().width());
    let (_, rect) = ui.allocate_space(size);
    let response = cell(ui, ink, id, [what, label], rect, is_chosen);
    focus_outline(ui, ink, &response, rect);
    response
}

/// A square button with a sign in place of a word; `name` is what it is called for those who listen.
pub(super) fn sign(ui: &mut Ui, ink: &Ink, name: &str, sign: &str) -> Response {
    let side = ink.scaled(CELL);
    let (rect, response) = ui.allocate_exact_size(vec2(side, side), Sense::click());
    let enabled = ui.is_enabled();
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, enabled, name));
    let color = ink.color(|t| if enabled { t.text } else { t.ghost });
    let line = ink.line(if response.hovered() { 2.0 } else { 1.0 }, |t| {
        if enabled { t.line } else { t.hairline }
    });
    ui.painter()
        .rect(rect, 2.0, ink.color(|t| t.panel), line, StrokeKind::Inside);
    let galley = ui.painter().layout_no_wrap(sign.to_owned(), ink.section(), color);
    ui.painter().galley(rect.center() - galley.size() / 2.0, galley, color);
    focus_outline(ui, ink, &response, rect);
    response
}

/// Height of a cell, points at 100 %.
const CELL: f32 = 28.0;

/// One cell; its name for those who listen is its word with what is chosen by it.
fn cell(ui: &Ui, ink: &Ink, id: Id, [what, label]: [&str; 2], rect: Rect, is_chosen: bool) -> Response {
    let (fill, text_color) = if is_chosen {
        (ink.color(|t| t.text), ink.color(|t| t.panel))
    } else {
        (ink.color(|t| t.panel), ink.color(|t| t.text))
    };
    let response = ui.interact(rect, id, Sense::click());
    response.widget_info(|| {
        WidgetInfo::selected(
            WidgetType::RadioButton,
            ui.is_enabled(),
            is_chosen,
            say!("window-said", what = what, value = label),
        )
    });
    let line = ink.line(if response.hovered() { 2.0 } else { 1.0 }, |t| t.line);
    let painter = ui.painter();
    painter.rect(rect, 0.0, fill, line, StrokeKind::Inside);
    let room = rect.width() - 2.0 * ink.space(12.0) + 1.0;
    let galley = painter.layout(label.to_owned(), ink.body(), text_color, room);
    painter.galley(rect.center() - galley.size() / 2.0, galley, text_color);
    if response.gained_focus() {
        response.scroll_to_me(None);
    }
    if response.has_focus() {
        painter.rect_stroke(rect.expand(1.0), 0.0, ink.line(2.0, |t| t.accent), StrokeKind::Outside);
    }
    response
}

/// A row of a list over the full width, second rank below the first. Chosen rows carry a violet
/// edge and bold text, so that colour is not the only mark.
pub(super) fn list_row(ui: &mut Ui, ink: &Ink, id: Id, row: &Row<'_>) -> Response {
    let width = ui.available_width();
    let pad = ink.space(12.0);
    let title_font = if row.chosen { ink.section() } else { ink.body() };
    let text = ink.color(|t| t.text);
    let muted = ink.color(|t| t.muted);
    let title = ui
        .painter()
        .layout(row.title.to_owned(), title_font, text, width - 2.0 * pad);
    let second = ui
        .painter()
        .layout(row.second.to_owned(), ink.small(), muted, width - 2.0 * pad);
    // As high as the bold title of a chosen row needs, so that nothing moves when it is chosen.
    let bold = ui
        .painter()
        .layout(row.title.to_owned(), ink.section(), text, width - 2.0 * pad);
    let gap = ink.space(6.0);
    let title_height = title.size().y.max(bold.size().y);
    let height = (gap + title_height + second.size().y + gap).max(ink.scaled(TARGET));
    let (_, rect) = ui.allocate_space(vec2(width, height));
    let response = ui.interact(rect, id, Sense::click());
    response.widget_info(|| WidgetInfo::selected(WidgetType::RadioButton, ui.is_enabled(), row.chosen, row.title));
    let fill = if row.chosen || response.hovered() {
        ink.color(|t| t.inset)
    } else {
        Color32::TRANSPARENT
    };
    let painter = ui.painter();
    painter.rect_filled(rect, 0.0, fill);
    painter.hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.hairline));
    if row.chosen {
        let edge = Rect::from_min_max(rect.min, pos2(rect.left() + 3.0, rect.bottom()));
        painter.rect_filled(edge, 0.0, ink.color(|t| t.accent));
    }
    painter.galley(pos2(rect.left() + pad, rect.top() + gap), title, text);
    painter.galley(pos2(rect.left() + pad, rect.top() + gap + title_height), second, muted);
    focus_outline(ui, ink, &response, rect.shrink(4.0));
    response
}

/// What a row of a list says.
#[derive(Debug, Clone, Copy)]
pub(super) struct Row<'a> {
    /// First rank.
    pub(super) title: &'a str,
    /// Second rank.
    pub(super) second: &'a str,
    /// Whether it is the chosen one.
    pub(super) chosen: bool,
}

/// How a line of a list stands there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Line {
    /// To be pressed.
    Plain,
    /// Chosen: a violet edge and bold text.
    Chosen,
    /// Nothing to be done there now: muted.
    Idle,
}

/// A line of a list: one word or a few.
pub(super) fn line_row(ui: &mut Ui, ink: &Ink, id: Id, label: &str, line: Line) -> Response {
    let (chosen, muted) = (line == Line::Chosen, line == Line::Idle);
    let width = ui.available_width();
    let pad = ink.space(10.0);
    let font = if chosen { ink.section() } else { ink.body() };
    let color = ink.color(|t| if muted { t.muted } else { t.text });
    let words = ui
        .painter()
        .layout(label.to_owned(), font, color, width - pad - ink.space(4.0));
    // Bold words are wider: the row is as high as they need, so that nothing moves when it is chosen.
    let bold = ui
        .painter()
        .layout(label.to_owned(), ink.section(), color, width - pad - ink.space(4.0));
    let height = (words.size().y.max(bold.size().y) + ink.space(6.0)).max(ink.scaled(28.0));
    let (_, rect) = ui.allocate_space(vec2(width, height));
    let response = ui.interact(rect, id, Sense::click());
    response.widget_info(|| WidgetInfo::selected(WidgetType::RadioButton, ui.is_enabled(), chosen, label));
    let painter = ui.painter();
    if chosen || response.hovered() {
        painter.rect_filled(rect, 0.0, ink.color(|t| t.inset));
    }
    painter.hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.hairline));
    if chosen {
        let edge = Rect::from_min_max(rect.min, pos2(rect.left() + 3.0, rect.bottom()));
        painter.rect_filled(edge, 0.0, ink.color(|t| t.accent));
    }
    painter.galley(
        pos2(rect.left() + pad, rect.center().y - words.size().y / 2.0),
        words,
        color,
    );
    focus_outline(ui, ink, &response, rect.shrink(4.0));
    if response.gained_focus() {
        response.scroll_to_me(None);
    }
    response
}

/// A box to tick with its words, which wrap. Returns whether it was pressed.
pub(super) fn tick(ui: &mut Ui, ink: &Ink, id: Id, label: &str, ticked: bool) -> bool {
    let side = ink.scaled(18.0);
    let gap = ink.space(8.0);
    let width = ui.available_width();
    let color = ink.color(|t| t.text);
    let words = ui
        .painter()
        .layout(label.to_owned(), ink.body(), color, (width - side - gap).max(40.0));
    // Words of several lines begin beside the top of the square.
    let height = (words.size().y + ink.scaled(28.0) - side).max(ink.scaled(28.0));
    let (_, rect) = ui.allocate_space(vec2(side + gap + words.size().x, height));
    let response = ui.interact(rect, id, Sense::click());
    response.widget_info(|| WidgetInfo::selected(WidgetType::Checkbox, ui.is_enabled(), ticked, label));
    let square = Rect::from_min_size(
        pos2(rect.left(), rect.top() + (ink.scaled(28.0) - side) / 2.0),
        vec2(side, side),
    );
    let painter = ui.painter();
    let line = ink.line(if response.hovered() { 2.0 } else { 1.0 }, |t| t.line);
    painter.rect(square, 2.0, ink.color(|t| t.inset), line, StrokeKind::Inside);
    if ticked {
        let at = |x: f32, y: f32| square.min + vec2(x, y) * side;
        painter.line(
            vec![at(0.2, 0.55), at(0.42, 0.78), at(0.82, 0.25)],
            ink.line(2.4, |t| t.accent),
        );
    }
    let top = if words.rows.len() > 1 {
        square.top()
    } else {
        square.center().y - words.size().y / 2.0
    };
    painter.galley(pos2(square.right() + gap, top), words, color);
    focus_outline(ui, ink, &response, rect);
    if response.gained_focus() {
        response.scroll_to_me(None);
    }
    response.clicked()
}

/// A box to write in, with its name for those who listen. A blank that waits for a hand is framed in violet.
pub(super) fn writing_box(
    ui: &mut Ui,
    ink: &Ink,
    id: Id,
    name: &str,
    typed: &mut String,
    width: f32,
    waits: bool,
) -> Response {
    let height = ink.scaled(28.0);
    let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    ui.painter().rect_filled(rect, 2.0, ink.color(|t| t.inset));
    let edit = egui::TextEdit::singleline(typed)
        .id(id)
        .font(ink.body())
        .frame(egui::Frame::NONE)
        .vertical_align(egui::Align::Center)
        .desired_width(width - ink.space(12.0))
        .text_color(ink.color(|t| t.text));
    let response = ui.put(rect.shrink2(vec2(ink.space(6.0), 2.0)), edit);
    response.widget_info(|| {
        let mut info = WidgetInfo::labeled(WidgetType::TextEdit, true, name);
        info.current_text_value = Some(typed.clone());
        info
    });
    select_whole(ui, &response, typed.chars().count());
    let line = if response.has_focus() || waits {
        ink.line(2.0, |t| t.accent)
    } else {
        ink.line(1.0, |t| t.line)
    };
    ui.painter().rect_stroke(rect, 2.0, line, StrokeKind::Inside);
    response
}

/// Who comes to a box, by Tab, by pointer or by a key, writes over what stands in it. A pointer that is still down would set a
/// cursor: all of it is selected when the button is up.
fn select_whole(ui: &Ui, response: &Response, characters: usize) {
    let waits = response.id.with("select-whole");
    if came_here(ui, response) {
        response.scroll_to_me(None);
        let goes_on = ui.data_mut(|data| data.remove_temp::<bool>(response.id.with("goes-on")).is_some());
        if !goes_on {
            ui.data_mut(|data| data.insert_temp(waits, true));
        }
    }
    let down = ui.input(|input| input.pointer.any_down());
    if !down && ui.data_mut(|data| data.remove_temp::<bool>(waits).is_some()) && response.has_focus() {
        select(ui, response.id, 0, characters);
    }
}

/// Whether a box has the keyboard and had it not before. A keyboard that was sent here after the box was drawn is none that egui
/// tells of.
fn came_here(ui: &Ui, response: &Response) -> bool {
    let key = Id::new("box-with-the-keyboard");
    let before = ui.data(|data| data.get_temp::<Id>(key));
    match (response.has_focus(), before == Some(response.id)) {
        (true, false) => {
            ui.data_mut(|data| data.insert_temp(key, response.id));
            true
        }
        (false, true) => {
            ui.data_mut(|data| data.remove::<Id>(key));
            false
        }
        _ => false,
    }
}

fn select(ui: &Ui, id: Id, from: usize, to: usize) {
    let mut state = TextEditState::load(ui.ctx(), id).unwrap_or_default();
    let range = CCursorRange::two(CCursor::new(from), CCursor::new(to));
    state.cursor.set_char_range(Some(range));
    state.store(ui.ctx(), id);
}

/// Gives a box the keyboard with the cursor behind what was typed before it had it.
pub(super) fn go_on_writing(ui: &Ui, id: Id, characters: usize) {
    ui.memory_mut(|memory| memory.request_focus(id));
    ui.data_mut(|data| data.insert_temp(id.with("goes-on"), true));
    select(ui, id, characters, characters);
}

/// A line of text that is painted where there is no widget, with a name for those who listen.
pub(super) fn words(ui: &mut Ui, text: &str, font: FontId, color: Color32) -> Response {
    ui.add(egui::Label::new(egui::RichText::new(text).font(font).color(color)))
}

/// A word and a number as they stand in a row of this width.
struct LaidNumber {
    word: Arc<Galley>,
    number: Arc<Galley>,
    below: bool,
    height: f32,
}

fn laid_number(ui: &Ui, ink: &Ink, word: &str, number: &str, width: f32) -> LaidNumber {
    let text = ink.color(|t| t.text);
    let number = ui.painter().layout(number.to_owned(), ink.section(), text, width);
    let beside = width - number.size().x - ink.space(12.0);
    let below = beside < text_size(ui, word, ink.body()).x.min(ink.scaled(60.0));
    let wrap = if below { width } else { beside };
    let word = ui.painter().layout(word.to_owned(), ink.body(), text, wrap);
    let words_height = if below {
        word.size().y + number.size().y
    } else {
        word.size().y.max(number.size().y)
    };
    LaidNumber {
        word,
        number,
        below,
        height: (words_height + ink.space(6.0)).max(ink.scaled(24.0)),
    }
}

/// Height of [`number_row`] in this width.
pub(super) fn number_row_height(ui: &Ui, ink: &Ink, word: &str, number: &str, width: f32) -> f32 {
    laid_number(ui, ink, word, number, width).height
}

/// A word at the left and a number at the right of one line, a hairline below. The number hangs at the right edge,
/// so that points stand under each other; where there is no room beside the word it stands below, on two lines if need be.
pub(super) fn number_row(ui: &mut Ui, ink: &Ink, word: &str, number: &str) -> Response {
    let width = ui.available_width();
    let text = ink.color(|t| t.text);
    let laid = laid_number(ui, ink, word, number, width);
    let (rect, response) = ui.allocate_exact_size(vec2(width, laid.height), Sense::hover());
    response.widget_info(|| {
        WidgetInfo::labeled(
            WidgetType::Label,
            true,
            say!("window-said", what = word, value = number),
        )
    });
    let painter = ui.painter();
    let [word_top, number_top] = if laid.below {
        let top = rect.top() + ink.space(3.0);
        [top, top + laid.word.size().y]
    } else {
        [&laid.word, &laid.number].map(|galley| rect.center().y - galley.size().y / 2.0)
    };
    painter.galley(pos2(rect.left(), word_top), laid.word, text);
    let at = pos2(rect.right() - laid.number.size().x, number_top);
    painter.galley(at, laid.number, text);
    painter.hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.hairline));
    response
}

/// Triangle with an exclamation mark, `size` points high, its upper left corner at `at`.
pub(super) fn warning_sign(ui: &Ui, ink: &Ink, at: egui::Pos2, size: f32) {
    let color = ink.color(|t| t.text);
    let painter = ui.painter();
    let corner = |x: f32, y: f32| at + vec2(x, y) * size;
    let outline = vec![corner(0.5, 0.08), corner(0.98, 0.92), corner(0.02, 0.92)];
    painter.add(egui::Shape::closed_line(
        outline,
        Stroke::new((size / 11.0).max(1.4), color),
    ));
    painter.text(
        corner(0.5, 0.62),
        Align2::CENTER_CENTER,
        "!",
        FontId::new(size * 0.56, ink.section().family),
        color,
    );
}
