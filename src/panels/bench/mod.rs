//! The bench: job card, stage, work, instrument, teeth, readings and slip on one sheet.
//!
//! With usual text all of it stands side by side; with large text or in a narrow window one column of tabs takes the card,
//! the teeth and the rest, and the other one keeps stage, caution, answer and what is in hand.

mod answer;
mod card;
mod desk_state;
mod face;
mod form;
mod instrument;
mod keys;
mod lists;
mod slip;
mod teeth;
mod work;

use egui::{Event, Key, Modifiers, Rect, ScrollArea, Ui, Vec2, pos2, vec2};

pub(super) use self::card::time;
use self::desk_state::{DeskState, SideTab};
pub(super) use self::teeth::small as small_print;
use super::theme::Ink;
use super::widget::{self, Cell};
use super::{in_zone, stage};
use crate::view::{BenchView, Command, WindowView, safety_note};
use crate::words::say;

/// Draws the bench over `area` and answers what is left for the gears.
pub(super) fn bench_panel(ui: &mut Ui, area: Rect, view: &WindowView<'_>, out: &mut Vec<Command>) -> Rect {
    let ink = Ink::new(view.theme, view.text_size);
    let Some(board) = view.bench else {
        ui.painter().rect_filled(area, 0.0, ink.color(|t| t.panel));
        return Rect::from_min_size(area.min, Vec2::ZERO);
    };
    let mut state = DeskState::load(ui, view, board);
    enter_key(ui, view, &mut state);
    let stage = if compact(area, &ink) {
        two_columns(ui, area, &ink, view, board, &mut state, out)
    } else {
        three_columns(ui, area, &ink, view, board, &mut state, out)
    };
    keys::keys(ui, view, &mut state, out);
    state.store(ui);
    stage
}

/// Enter that is held down does nothing again. With Ctrl it is the open form's, wherever the keyboard is: taken before anything
/// that has the keyboard could take it for a press.
fn enter_key(ui: &Ui, view: &WindowView<'_>, state: &mut DeskState) {
    let held = |event: &Event| {
        matches!(
            event,
            Event::Key {
                key: Key::Enter,
                repeat: true,
                ..
            }
        )
    };
    ui.input_mut(|input| input.events.retain(|event| !held(event)));
    state.do_form = state.form.is_some()
        && !view.covered()
        && !egui::Popup::is_any_open(ui.ctx())
        && ui.input_mut(|input| input.consume_key(Modifiers::COMMAND, Key::Enter));
}

/// Whether the three columns have no room beside each other.
fn compact(area: Rect, ink: &Ink) -> bool {
    ink.large() || area.width() - 2.0 * side_width(ink) < ink.scaled(620.0)
}

/// Width of the columns at the sides.
fn side_width(ink: &Ink) -> f32 {
    ink.space(272.0)
}

/// Height of the answer with its rims.
fn answer_height(ui: &Ui, ink: &Ink, width: f32, view: &WindowView<'_>, board: &BenchView) -> f32 {
    (answer::answer_height(ui, ink, width, view, board) + ink.space(12.0)).ceil()
}

fn three_columns(
    ui: &mut Ui,
    area: Rect,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) -> Rect {
    let wide = area.width() >= 1600.0;
    let side = side_width(ink);
    let (left, right) = if wide { (1.18 * side, 1.45 * side) } else { (side, side) };
    let margin = ink.space(12.0);
    let x1 = (area.left() + left).round();
    let x2 = (area.right() - right).round();
    let tray_height = (ink.scaled(250.0))
        .min(0.42 * area.height())
        .max(if wide { 300.0 } else { 0.0 });
    let tray_top = (area.bottom() - tray_height).round();
    // What is too long for its usual room takes it from the stage.
    let caution_height =
        (ink.scaled(20.0) + ink.space(12.0)).max(answer::caution_height(ui, ink, x2 - x1, board, state));
    let answer_top = tray_top - answer_height(ui, ink, x2 - x1 - 2.0 * margin, view, board);
    let caution_top = answer_top - caution_height;
    let rect = |l: f32, t: f32, r: f32, b: f32| Rect::from_min_max(pos2(l, t), pos2(r, b));
    let card = rect(area.left(), area.top(), x1, area.bottom());
    let stage = rect(x1, area.top(), x2, caution_top);
    let caution = rect(x1, caution_top, x2, answer_top);
    let answer = rect(x1, answer_top, x2, tray_top);
    let tray = rect(x1, tray_top, x2, area.bottom());
    let teeth_bottom =
        (area.top() + ink.scaled(if wide { 380.0 } else { 290.0 })).min(area.top() + 0.5 * area.height());
    let teeth = rect(x2, area.top(), area.right(), teeth_bottom);
    let lists = rect(x2, teeth_bottom, area.right(), area.bottom());
    for zone in [card, teeth, lists, answer] {
        ui.painter().rect_filled(zone, 0.0, ink.color(|t| t.panel));
    }
    ui.painter().rect_filled(tray, 0.0, ink.color(|t| t.ground));

    stage_zone(ui, stage, view, out);
    in_zone(ui, "card", card, vec2(margin, ink.space(10.0)), |ui| {
        card::card(ui, ink, view, board, state, out);
    });
    answer::caution(ui, caution, ink, board, state);
    in_zone(ui, "answer", answer, vec2(margin, ink.space(6.0)), |ui| {
        answer::answer(ui, ink, view, board);
    });
    let parts_width = ink.space(158.0);
    let works_width = ink.space(212.0);
    let (p, w) = (x1 + parts_width, x1 + parts_width + works_width);
    in_zone(ui, "parts", rect(x1, tray_top, p, area.bottom()), Vec2::ZERO, |ui| {
        work::parts(ui, ink, view, board, out);
    });
    in_zone(ui, "works", rect(p, tray_top, w, area.bottom()), Vec2::ZERO, |ui| {
        work::works(ui, ink, view, board, state, out);
    });
    in_zone(
        ui,
        "hand",
        rect(w, tray_top, x2, area.bottom()),
        vec2(margin, ink.space(8.0)),
        |ui| in_hand(ui, ink, view, board, state, out),
    );
    in_zone(ui, "teeth", teeth, vec2(margin, ink.space(8.0)), |ui| {
        teeth::teeth(ui, ink, view, board, state);
    });
    in_zone(ui, "lists", lists, vec2(margin, ink.space(8.0)), |ui| {
        let tabs = [SideTab::Readings, SideTab::Sheet, SideTab::Log, SideTab::Slip];
        if !tabs.contains(&state.tab) {
            state.tab = SideTab::Readings;
        }
        tab_cells(ui, ink, 0, &tabs, state);
        tab(ui, ink, view, board, state, out);
    });
    let edge = ink.line(2.0, |t| t.text);
    let thin = ink.line(1.0, |t| t.line);
    let painter = ui.painter();
    painter.vline(x1 - 0.5, area.y_range(), thin);
    painter.vline(x2 + 0.5, area.y_range(), thin);
    painter.hline(x1..=x2, answer_top + 0.5, thin);
    painter.hline(x1..=x2, tray_top + 0.5, thin);
    painter.vline(p, tray_top..=area.bottom(), thin);
    painter.vline(w, tray_top..=area.bottom(), thin);
    painter.hline(x1..=x2, caution_top, edge);
    painter.hline(x2..=area.right(), teeth_bottom, edge);
    stage
}

fn two_columns(
    ui: &mut Ui,
    area: Rect,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) -> Rect {
    let margin = ink.space(12.0);
    let side = (ink.scaled(208.0)).max(300.0).min(0.44 * area.width());
    let x1 = (area.left() + side).round();
    let hand_height = (0.44 * area.height()).round();
    let caution_height = if state.hazards(board).is_empty() {
        0.0
    } else {
        answer::caution_height(ui, ink, area.right() - x1, board, state)
    };
    let hand_top = area.bottom() - hand_height;
    let answer_top = hand_top - answer_height(ui, ink, area.right() - x1 - 2.0 * margin, view, board);
    let caution_top = answer_top - caution_height;
    let rect = |l: f32, t: f32, r: f32, b: f32| Rect::from_min_max(pos2(l, t), pos2(r, b));
    let column = rect(area.left(), area.top(), x1, area.bottom());
    let stage = rect(x1, area.top(), area.right(), caution_top);
    let caution = rect(x1, caution_top, area.right(), answer_top);
    let answer = rect(x1, answer_top, area.right(), hand_top);
    let hand = rect(x1, hand_top, area.right(), area.bottom());
    for zone in [column, answer] {
        ui.painter().rect_filled(zone, 0.0, ink.color(|t| t.panel));
    }
    ui.painter().rect_filled(hand, 0.0, ink.color(|t| t.ground));
    stage_zone(ui, stage, view, out);
    if caution_height > 0.0 {
        answer::caution(ui, caution, ink, board, state);
    }
    in_zone(ui, "answer", answer, vec2(margin, ink.space(6.0)), |ui| {
        answer::answer(ui, ink, view, board);
    });
    in_zone(ui, "hand", hand, vec2(margin, ink.space(6.0)), |ui| {
        in_hand(ui, ink, view, board, state, out);
    });
    let note_height = ink.scaled(20.0) + ink.space(6.0);
    let note = rect(
        column.left(),
        column.bottom() - note_height,
        column.right(),
        column.bottom(),
    );
    in_zone(ui, "note", note, vec2(margin, 0.0), |ui| {
        // One line at all times; the whole of it on the card and when the pointer rests on it.
        let words = egui::RichText::new(say!("board-not-a-specification"))
            .font(ink.small())
            .color(ink.color(|t| t.text));
        ui.add(egui::Label::new(words).truncate()).on_hover_text(safety_note());
    });
    let column_above = column.with_max_y(note.top());
    in_zone(ui, "column", column_above, vec2(margin, ink.space(6.0)), |ui| {
        let tabs = [
            SideTab::Work,
            SideTab::Card,
            SideTab::Teeth,
            SideTab::Slip,
            SideTab::Readings,
            SideTab::Sheet,
            SideTab::Log,
        ];
        let rows = 4;
        for (number, row) in tabs.chunks(rows).enumerate() {
            tab_cells(ui, ink, number, row, state);
        }
        tab(ui, ink, view, board, state, out);
    });
    let edge = ink.line(2.0, |t| t.text);
    let thin = ink.line(1.0, |t| t.line);
    let painter = ui.painter();
    painter.vline(x1 - 0.5, area.y_range(), thin);
    painter.hline(x1..=area.right(), answer_top + 0.5, thin);
    painter.hline(x1..=area.right(), hand_top + 0.5, thin);
    painter.hline(x1..=area.right(), caution_top, edge);
    stage
}

/// A row of tabs, the first of them number 0.
fn tab_cells(ui: &mut Ui, ink: &Ink, row: usize, tabs: &[SideTab], state: &mut DeskState) {
    let cells: Vec<Cell<SideTab>> = tabs.iter().map(|tab| Cell::new(tab.label(), *tab)).collect();
    let key = ("tabs", row);
    if let Some(pressed) = widget::segments(ui, ink, key, &say!("board-show"), &cells, Some(state.tab)) {
        state.tab = pressed;
    }
    ui.add_space(ink.space(2.0));
}

fn tab(
    ui: &mut Ui,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) {
    match state.tab {
        SideTab::Readings => lists::readings(ui, ink, view, board, state),
        SideTab::Sheet => card::sheet(ui, ink, view, board),
        SideTab::Log => lists::log(ui, ink, view, board),
        SideTab::Slip => slip::slip(ui, ink, board, state, out),
        SideTab::Card => card::card(ui, ink, view, board, state, out),
        SideTab::Teeth => {
            scrolled(ui, "teeth", |ui| teeth::teeth(ui, ink, view, board, state));
        }
        SideTab::Work => work::all(ui, ink, view, board, state, out),
    }
}

/// What is in hand: the form of the chosen work, or the instrument that was read.
fn in_hand(
    ui: &mut Ui,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) {
    if state.form.is_some() {
        form::form(ui, ink, view, board, state, out);
    } else if state.reading.is_some() {
        instrument::instrument(ui, ink, view, board, state, out);
    } else {
        widget::words(ui, &say!("board-nothing-in-hand"), ink.section(), ink.color(|t| t.text));
        widget::words(
            ui,
            &say!("board-nothing-in-hand-help"),
            ink.body(),
            ink.color(|t| t.muted),
        );
    }
}

fn stage_zone(ui: &mut Ui, zone: Rect, view: &WindowView<'_>, out: &mut Vec<Command>) {
    stage::stage_panel(ui, zone, view, out);
    in_zone(ui, "captions", zone, Vec2::ZERO, |ui| {
        stage::stage_captions_panel(ui, zone, view, out);
    });
}

/// A list that scrolls down, never sideways.
fn scrolled<R>(ui: &mut Ui, name: &str, add: impl FnOnce(&mut Ui) -> R) -> R {
    ScrollArea::vertical()
        .id_salt(name)
        .auto_shrink([false, false])
        .show(ui, add)
        .inner
}
