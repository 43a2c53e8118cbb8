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

use egui::{Event, Key, Modifiers, Rect, ScrollArea, Ui, Vec2, vec2};

pub(super) use self::card::time;
use self::desk_state::{DeskState, SideTab};
pub(super) use self::teeth::small as small_print;
use super::dock::{Dock, Edge, inside};
use super::stage;
use super::theme::Ink;
use super::widget::{self, Cell};
use crate::view::{BenchView, Command, WindowView, safety_note};
use crate::words::say;

/// Draws the bench and answers what is left for the gears.
pub(super) fn bench_panel(ui: &mut Ui, view: &WindowView<'_>, out: &mut Vec<Command>) -> Rect {
    let ink = Ink::new(view.theme, view.text_size);
    let area = ui.available_rect_before_wrap();
    let Some(board) = view.bench else {
        ui.painter().rect_filled(area, 0.0, ink.color(|t| t.panel));
        return Rect::from_min_size(area.min, Vec2::ZERO);
    };
    let mut state = DeskState::load(ui, view, board);
    enter_key(ui, view, &mut state);
    let stage = if compact(area, &ink) {
        two_columns(ui, &ink, view, board, &mut state, out)
    } else {
        three_columns(ui, &ink, view, board, &mut state, out)
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

/// Card, stage with the work below it, teeth with the lists below them.
fn three_columns(
    ui: &mut Ui,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) -> Rect {
    let area = ui.available_rect_before_wrap();
    let wide = area.width() >= 1600.0;
    let side = side_width(ink);
    let (left, right) = if wide {
        (1.18 * side, 1.45 * side)
    } else {
        (side, 1.1 * side)
    };
    let margin = ink.space(12.0);
    let reach = [0.75 * side, 0.36 * area.width()];
    let card = Dock::new("card", Edge::Left, left, reach)
        .margin(vec2(margin, ink.space(10.0)))
        .fill(|t| t.panel)
        .show(ui, ink, view, out, |ui, out| {
            card::card(ui, ink, view, board, state, out);
        })
        .response
        .rect;
    let mut teeth = Rect::NOTHING;
    let read = Dock::new("read", Edge::Right, right, reach)
        .fill(|t| t.panel)
        .show(ui, ink, view, out, |ui, out| {
            let usual = ink.scaled(if wide { 380.0 } else { 290.0 }).min(0.5 * area.height());
            let range = [0.25 * area.height(), 0.75 * area.height()];
            teeth = Dock::new("teeth", Edge::Top, usual, range)
                .margin(vec2(margin, ink.space(8.0)))
                .show(ui, ink, view, out, |ui, _| teeth::teeth(ui, ink, view, board, state))
                .response
                .rect;
            let lists = ui.available_rect_before_wrap();
            inside(ui, "lists", lists, vec2(margin, ink.space(8.0)), |ui| {
                let tabs = [SideTab::Readings, SideTab::Sheet, SideTab::Log, SideTab::Slip];
                if !tabs.contains(&state.tab) {
                    state.tab = SideTab::Readings;
                }
                tab_cells(ui, ink, &tabs, state);
                tab(ui, ink, view, board, state, out);
            });
        })
        .response
        .rect;
    let tray_height = ink
        .scaled(250.0)
        .min(0.42 * area.height())
        .max(if wide { 300.0 } else { 0.0 });
    let (mut parts, mut works) = (Rect::NOTHING, Rect::NOTHING);
    let tray = Dock::new(
        "tray",
        Edge::Bottom,
        tray_height,
        [0.2 * area.height(), 0.7 * area.height()],
    )
    .fill(|t| t.ground)
    .show(ui, ink, view, out, |ui, out| {
        let width = ui.available_width();
        parts = Dock::new("parts", Edge::Left, ink.space(158.0), [ink.space(110.0), 0.35 * width])
            .show(ui, ink, view, out, |ui, out| work::parts(ui, ink, view, board, out))
            .response
            .rect;
        works = Dock::new("works", Edge::Left, ink.space(212.0), [ink.space(140.0), 0.45 * width])
            .show(ui, ink, view, out, |ui, out| {
                work::works(ui, ink, view, board, state, out);
            })
            .response
            .rect;
        let hand = ui.available_rect_before_wrap();
        inside(ui, "hand", hand, vec2(margin, ink.space(8.0)), |ui| {
            in_hand(ui, ink, view, board, state, out);
        });
    })
    .response
    .rect;
    // What is too long for its usual room takes it from the stage.
    let width = read.left() - card.right();
    let answer_height = answer_height(ui, ink, width - 2.0 * margin, view, board);
    let answer = Dock::fixed("answer", Edge::Bottom, answer_height)
        .margin(vec2(margin, ink.space(6.0)))
        .fill(|t| t.panel)
        .show(ui, ink, view, out, |ui, _| answer::answer(ui, ink, view, board))
        .response
        .rect;
    let caution_height = (ink.scaled(20.0) + ink.space(12.0)).max(answer::caution_height(ui, ink, width, board, state));
    let caution = Dock::fixed("caution", Edge::Bottom, caution_height)
        .show(ui, ink, view, out, |ui, _| {
            let zone = ui.max_rect();
            answer::caution(ui, zone, ink, board, state);
        })
        .response
        .rect;
    let stage = ui.available_rect_before_wrap();
    stage_zone(ui, stage, view, out);
    let edge = ink.line(2.0, |t| t.text);
    let thin = ink.line(1.0, |t| t.line);
    let painter = ui.painter();
    painter.vline(card.right() - 0.5, card.y_range(), thin);
    painter.vline(read.left() + 0.5, read.y_range(), thin);
    painter.hline(answer.x_range(), answer.top() + 0.5, thin);
    painter.hline(tray.x_range(), tray.top() + 0.5, thin);
    painter.vline(parts.right(), parts.y_range(), thin);
    painter.vline(works.right(), works.y_range(), thin);
    painter.hline(caution.x_range(), caution.top(), edge);
    painter.hline(teeth.x_range(), teeth.bottom(), edge);
    stage
}

/// A column of tabs for the card, the teeth and the rest; stage, caution, answer and what is in hand beside it.
fn two_columns(
    ui: &mut Ui,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) -> Rect {
    let area = ui.available_rect_before_wrap();
    let margin = ink.space(12.0);
    let usual = (ink.scaled(208.0)).max(300.0).min(0.44 * area.width());
    let column = Dock::new("column", Edge::Left, usual, [0.25 * area.width(), 0.6 * area.width()])
        .fill(|t| t.panel)
        .show(ui, ink, view, out, |ui, out| {
            Dock::fixed("column-note", Edge::Bottom, ink.scaled(20.0) + ink.space(6.0))
                .margin(vec2(margin, 0.0))
                .show(ui, ink, view, out, |ui, _| {
                    // One line at all times; the whole of it on the card and when the pointer rests on it.
                    let words = egui::RichText::new(say!("board-not-a-specification"))
                        .font(ink.small())
                        .color(ink.color(|t| t.text));
                    ui.add(egui::Label::new(words).truncate()).on_hover_text(safety_note());
                });
            let above = ui.available_rect_before_wrap();
            inside(ui, "column-tabs", above, vec2(margin, ink.space(6.0)), |ui| {
                let tabs = [
                    SideTab::Work,
                    SideTab::Card,
                    SideTab::Teeth,
                    SideTab::Slip,
                    SideTab::Readings,
                    SideTab::Sheet,
                    SideTab::Log,
                ];
                tab_cells(ui, ink, &tabs, state);
                tab(ui, ink, view, board, state, out);
            });
        })
        .response
        .rect;
    let hand_height = (0.44 * area.height()).round();
    let hand = Dock::new(
        "hand",
        Edge::Bottom,
        hand_height,
        [0.25 * area.height(), 0.7 * area.height()],
    )
    .margin(vec2(margin, ink.space(6.0)))
    .fill(|t| t.ground)
    .show(ui, ink, view, out, |ui, out| in_hand(ui, ink, view, board, state, out))
    .response
    .rect;
    let width = area.right() - column.right();
    let answer_height = answer_height(ui, ink, width - 2.0 * margin, view, board);
    let answer = Dock::fixed("answer", Edge::Bottom, answer_height)
        .margin(vec2(margin, ink.space(6.0)))
        .fill(|t| t.panel)
        .show(ui, ink, view, out, |ui, _| answer::answer(ui, ink, view, board))
        .response
        .rect;
    let mut above = answer;
    if !state.warnings(board).is_empty() {
        let caution_height = answer::caution_height(ui, ink, width, board, state);
        above = Dock::fixed("caution", Edge::Bottom, caution_height)
            .show(ui, ink, view, out, |ui, _| {
                let zone = ui.max_rect();
                answer::caution(ui, zone, ink, board, state);
            })
            .response
            .rect;
    }
    let stage = ui.available_rect_before_wrap();
    stage_zone(ui, stage, view, out);
    let edge = ink.line(2.0, |t| t.text);
    let thin = ink.line(1.0, |t| t.line);
    let painter = ui.painter();
    painter.vline(column.right() - 0.5, column.y_range(), thin);
    painter.hline(answer.x_range(), answer.top() + 0.5, thin);
    painter.hline(hand.x_range(), hand.top() + 0.5, thin);
    painter.hline(above.x_range(), above.top(), edge);
    stage
}

/// Tabs in as many rows as they need.
fn tab_cells(ui: &mut Ui, ink: &Ink, tabs: &[SideTab], state: &mut DeskState) {
    let labels: Vec<String> = tabs.iter().map(|tab| tab.label()).collect();
    let mut rest = tabs.iter();
    for (number, count) in widget::rows_of_cells(ui, ink, &labels).into_iter().enumerate() {
        let row = rest.by_ref().take(count);
        let cells: Vec<Cell<SideTab>> = row.map(|tab| Cell::new(tab.label(), *tab)).collect();
        let key = ("tabs", number);
        if let Some(pressed) = widget::segments(ui, ink, key, &say!("board-show"), &cells, Some(state.tab)) {
            state.tab = pressed;
        }
        ui.add_space(ink.space(2.0));
    }
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
        SideTab::Slip => scrolled(ui, "slip", |ui| slip::slip(ui, ink, board, state, out)),
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
    inside(ui, "captions", zone, Vec2::ZERO, |ui| {
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
