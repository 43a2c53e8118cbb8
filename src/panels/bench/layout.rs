//! What stands where on the bench.

use egui::{Event, Key, Modifiers, Rect, Ui, Vec2, vec2};

use super::desk::{Desk, Flow, scrolled};
use super::desk_state::{DeskState, SideTab};
use super::{answer, card, form, hand, instrument, keys, lists, slip, teeth, work};
use crate::panels::dock::{Dock, Edge, inside};
use crate::panels::page::Page;
use crate::panels::stage;
use crate::panels::theme::Ink;
use crate::panels::widget::{self, Cell};
use crate::view::safety_note;
use crate::words::say;

/// Draws the bench and answers what is left for the gears.
pub(in crate::panels) fn bench_panel(ui: &mut Ui, page: &mut Page<'_>) -> Rect {
    let (ink, view) = (page.ink, page.view);
    let area = ui.available_rect_before_wrap();
    let Some(board) = view.bench else {
        ui.painter().rect_filled(area, 0.0, ink.color(|t| t.panel));
        return Rect::from_min_size(area.min, Vec2::ZERO);
    };
    let mut desk = Desk {
        ink,
        view,
        board,
        state: DeskState::load(ui, view, board),
        out: page.out,
    };
    enter_key(ui, &mut desk);
    hand::pointer_moves(ui, &mut desk);
    form::take_digits(ui, &mut desk);
    let columns = Columns::of(area, ink);
    desk.state.single = columns == Columns::One;
    desk.state.card_is_tab = columns != Columns::Three;
    let stage = match columns {
        Columns::One => one_column(ui, &mut desk),
        Columns::Two => two_columns(ui, &mut desk),
        Columns::Three => three_columns(ui, &mut desk),
    };
    keys::keys(ui, &mut desk);
    desk.state.store(ui);
    stage
}

/// Enter that is held down does nothing again. With Ctrl it is the open form's, wherever the keyboard is: taken before anything
/// that has the keyboard could take it for a press.
fn enter_key(ui: &Ui, desk: &mut Desk<'_>) {
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
    desk.state.do_form = desk.state.form.is_some()
        && !desk.view.covered()
        && !egui::Popup::is_any_open(ui.ctx())
        && ui.input_mut(|input| input.consume_key(Modifiers::COMMAND, Key::Enter));
}

/// How many columns there are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Columns {
    One,
    Two,
    Three,
}

impl Columns {
    fn of(area: Rect, ink: &Ink) -> Self {
        if area.height() < ink.scaled(315.0) || area.width() < ink.scaled(500.0) {
            Self::One
        } else if ink.large() || area.width() - 2.0 * side_width(ink) < ink.scaled(690.0) {
            Self::Two
        } else {
            Self::Three
        }
    }
}

/// Width of the columns at the sides.
fn side_width(ink: &Ink) -> f32 {
    ink.space(256.0)
}

/// Height of the answer with its rims.
fn answer_height(ui: &Ui, desk: &Desk<'_>, width: f32) -> f32 {
    (answer::answer_height(ui, desk, width) + desk.ink.space(12.0)).ceil()
}

/// Card, stage with the work below it, teeth with the lists below them.
fn three_columns(ui: &mut Ui, desk: &mut Desk<'_>) -> Rect {
    let ink = desk.ink;
    let area = ui.available_rect_before_wrap();
    let wide = area.width() >= 1600.0;
    let side = side_width(ink);
    let (left, right) = if wide {
        (1.25 * side, 1.55 * side)
    } else {
        (side, 1.135 * side)
    };
    let margin = ink.space(12.0);
    let reach = [0.75 * side, 0.36 * area.width()];
    let card = Dock::new("card", Edge::Left, left, reach)
        .margin(vec2(margin, ink.space(10.0)))
        .fill(|t| t.panel)
        .place(ui, &mut desk.page());
    let read = Dock::new("read", Edge::Right, right, reach)
        .fill(|t| t.panel)
        .place(ui, &mut desk.page());
    let rim = vec2(ink.space(10.0), ink.space(8.0));
    let tray_height = ink.scaled(250.0).min(0.42 * area.height()).max(if wide {
        320.0
    } else {
        instrument::INSTRUMENT + 2.0 * rim.y + 2.0
    });
    let range = [0.2 * area.height(), 0.7 * area.height()];
    let tray = Dock::new("tray", Edge::Bottom, tray_height, range)
        .fill(|t| t.ground)
        .place(ui, &mut desk.page());
    // What is too long for its usual room takes it from the stage.
    let width = read.rect.left() - card.rect.right();
    let height = answer_height(ui, desk, width - 2.0 * margin);
    let answer = Dock::fixed("answer", Edge::Bottom, height)
        .margin(vec2(margin, ink.space(6.0)))
        .fill(|t| t.panel)
        .place(ui, &mut desk.page());
    let height = (ink.scaled(20.0) + ink.space(12.0)).max(answer::caution_height(ui, desk, width));
    let caution = Dock::fixed("caution", Edge::Bottom, height).place(ui, &mut desk.page());
    let stage = ui.available_rect_before_wrap();

    card.show(ui, |ui| card::card(ui, desk));
    stage_zone(ui, desk, stage);
    answer::caution(ui, desk, caution.rect);
    answer.show(ui, |ui| answer::answer(ui, desk));
    let (mut parts, mut works) = (Rect::NOTHING, Rect::NOTHING);
    tray.show(ui, |ui| {
        let width = ui.available_width();
        let of_parts = Dock::new("parts", Edge::Left, ink.space(146.0), [ink.space(110.0), 0.35 * width])
            .place(ui, &mut desk.page());
        let of_works = Dock::new("works", Edge::Left, ink.space(180.0), [ink.space(140.0), 0.45 * width])
            .place(ui, &mut desk.page());
        let hand = ui.available_rect_before_wrap();
        of_parts.show(ui, |ui| work::parts(ui, desk));
        of_works.show(ui, |ui| work::works(ui, desk));
        inside(ui, "hand", hand, rim, |ui| in_hand(ui, desk, Flow::Own));
        (parts, works) = (of_parts.rect, of_works.rect);
    });
    let mut upper = Rect::NOTHING;
    read.show(ui, |ui| {
        let usual = ink.scaled(if wide { 380.0 } else { 290.0 }).min(0.5 * area.height());
        let range = [0.25 * area.height(), 0.75 * area.height()];
        let of_teeth = Dock::new("teeth", Edge::Top, usual, range)
            .margin(vec2(margin, ink.space(8.0)))
            .place(ui, &mut desk.page());
        let lists = ui.available_rect_before_wrap();
        of_teeth.show(ui, |ui| {
            scrolled(ui, desk.list("teeth"), |ui| teeth::teeth(ui, desk));
        });
        inside(ui, "lists", lists, vec2(ink.space(8.0), ink.space(8.0)), |ui| {
            tabs(
                ui,
                desk,
                &[SideTab::Readings, SideTab::Sheet, SideTab::Log, SideTab::Slip],
                SideTab::Readings,
            );
        });
        upper = of_teeth.rect;
    });

    let edge = ink.line(2.0, |t| t.text);
    let thin = ink.line(1.0, |t| t.line);
    let painter = ui.painter();
    painter.vline(card.rect.right() - 0.5, card.rect.y_range(), thin);
    painter.vline(read.rect.left() + 0.5, read.rect.y_range(), thin);
    painter.hline(answer.rect.x_range(), answer.rect.top() + 0.5, thin);
    painter.hline(tray.rect.x_range(), tray.rect.top() + 0.5, thin);
    painter.vline(parts.right(), parts.y_range(), thin);
    painter.vline(works.right(), works.y_range(), thin);
    painter.hline(caution.rect.x_range(), caution.rect.top(), edge);
    painter.hline(upper.x_range(), upper.bottom(), edge);
    stage
}

/// A column of tabs for the card, the teeth and the rest; stage, caution, answer and what is in hand beside it.
fn two_columns(ui: &mut Ui, desk: &mut Desk<'_>) -> Rect {
    let ink = desk.ink;
    let area = ui.available_rect_before_wrap();
    let margin = ink.space(12.0);
    let usual = (ink.scaled(208.0)).max(300.0).min(0.44 * area.width());
    let column = Dock::new("column", Edge::Left, usual, [0.25 * area.width(), 0.6 * area.width()])
        .fill(|t| t.panel)
        .place(ui, &mut desk.page());
    let width = area.right() - column.rect.right();
    let answer_height = answer_height(ui, desk, width - 2.0 * margin);
    let warned = !desk.state.warnings(desk.board).is_empty();
    let caution_height = answer::caution_height(ui, desk, width).ceil();
    // A strip that would leave the stage too little stands at the top of the form.
    let strip = warned && caution_height < 0.16 * area.height();
    let caution_height = if strip { caution_height } else { 0.0 };
    // The stage keeps what its buttons need.
    let most = area.height() - answer_height - caution_height - ink.scaled(118.0);
    let least = 0.25 * area.height();
    let most = (0.7 * area.height()).min(most).max(least);
    let hand = Dock::new("hand", Edge::Bottom, (0.44 * area.height()).round(), [least, most])
        .margin(vec2(margin, ink.space(6.0)))
        .fill(|t| t.ground)
        .place(ui, &mut desk.page());
    let answer = Dock::fixed("answer", Edge::Bottom, answer_height)
        .margin(vec2(margin, ink.space(6.0)))
        .fill(|t| t.panel)
        .place(ui, &mut desk.page());
    let mut above = answer.rect;
    let caution = strip.then(|| Dock::fixed("caution", Edge::Bottom, caution_height).place(ui, &mut desk.page()));
    let stage = ui.available_rect_before_wrap();

    column.show(ui, |ui| {
        let muted = ink.color(|t| t.muted);
        let words = say!("board-not-a-specification");
        let note = ui
            .painter()
            .layout(words, ink.small(), muted, ui.available_width() - 2.0 * margin);
        // The whole of it stands on the card and is said when the pointer rests on it.
        let of_note = Dock::fixed("column-note", Edge::Bottom, note.size().y + ink.space(6.0))
            .margin(vec2(margin, 0.0))
            .place(ui, &mut desk.page());
        let above = ui.available_rect_before_wrap();
        inside(ui, "column-tabs", above, vec2(margin, ink.space(6.0)), |ui| {
            tabs(ui, desk, &SideTab::BESIDE_THE_STAGE, SideTab::Work);
        });
        of_note.show(ui, |ui| {
            ui.add(egui::Label::new(note)).on_hover_text(safety_note());
        });
    });
    stage_zone(ui, desk, stage);
    if let Some(caution) = &caution {
        answer::caution(ui, desk, caution.rect);
        above = caution.rect;
    }
    answer.show(ui, |ui| answer::answer(ui, desk));
    hand.show(ui, |ui| {
        if strip || !warned {
            in_hand(ui, desk, Flow::Own);
        } else {
            scrolled(ui, desk.list("hand"), |ui| {
                answer::caution_above(ui, desk);
                in_hand(ui, desk, Flow::Along);
            });
        }
    });

    let edge = ink.line(2.0, |t| t.text);
    let thin = ink.line(1.0, |t| t.line);
    let painter = ui.painter();
    painter.vline(column.rect.right() - 0.5, column.rect.y_range(), thin);
    painter.hline(answer.rect.x_range(), answer.rect.top() + 0.5, thin);
    painter.hline(hand.rect.x_range(), hand.rect.top() + 0.5, thin);
    painter.hline(above.x_range(), above.top(), edge);
    stage
}

/// Everything below one row of tabs.
fn one_column(ui: &mut Ui, desk: &mut Desk<'_>) -> Rect {
    let ink = desk.ink;
    let area = ui.available_rect_before_wrap();
    ui.painter().rect_filled(area, 0.0, ink.color(|t| t.panel));
    let margin = vec2(ink.space(12.0), ink.space(6.0));
    inside(ui, "tabs", area, margin, |ui| {
        tabs(ui, desk, &SideTab::ALL, SideTab::Work)
    })
}

/// Tabs in as many rows as they need, and what the chosen one shows. Answers what is left for the gears.
fn tabs(ui: &mut Ui, desk: &mut Desk<'_>, all: &[SideTab], usual: SideTab) -> Rect {
    if !all.contains(&desk.state.tab) {
        desk.state.tab = usual;
    }
    let cells: Vec<Cell<SideTab>> = all.iter().map(|tab| Cell::new(tab.label(), *tab)).collect();
    let chosen = Some(desk.state.tab);
    if let Some(pressed) = widget::segments(ui, desk.ink, "tabs", &say!("board-show"), &cells, chosen) {
        desk.state.tab = pressed;
    }
    ui.add_space(desk.ink.space(2.0));
    let below = ui.available_rect_before_wrap();
    match desk.state.tab {
        SideTab::Readings => lists::readings(ui, desk),
        SideTab::Sheet => card::sheet(ui, desk),
        SideTab::Log => lists::log(ui, desk),
        SideTab::Slip => slip::slip(ui, desk),
        SideTab::Card => card::card(ui, desk),
        SideTab::Teeth => scrolled(ui, desk.list("teeth"), |ui| teeth::teeth(ui, desk)),
        SideTab::Work => work::all(ui, desk),
        SideTab::Hand => scrolled(ui, desk.list("hand"), |ui| {
            answer::both(ui, desk);
            in_hand(ui, desk, Flow::Along);
        }),
        SideTab::Stage => {
            stage_zone(ui, desk, below);
            return below;
        }
    }
    Rect::from_min_size(below.min, Vec2::ZERO)
}

/// What is in hand: the form of the chosen work, or the instrument that was read.
fn in_hand(ui: &mut Ui, desk: &mut Desk<'_>, flow: Flow) {
    if desk.state.form.is_some() {
        form::form(ui, desk, flow);
    } else if desk.state.reading.is_some() {
        instrument::instrument(ui, desk, flow);
    } else if flow == Flow::Along {
        nothing_in_hand(ui, desk);
    } else {
        scrolled(ui, desk.list("nothing"), |ui| nothing_in_hand(ui, desk));
    }
}

fn nothing_in_hand(ui: &mut Ui, desk: &Desk<'_>) {
    let ink = desk.ink;
    if desk.board.finished {
        let words = say!("board-signed-off");
        widget::words(ui, &words, ink.section(), ink.color(|t| t.text));
        return;
    }
    widget::words(ui, &say!("board-nothing-in-hand"), ink.section(), ink.color(|t| t.text));
    let help = say!("board-nothing-in-hand-help");
    widget::words(ui, &help, ink.body(), ink.color(|t| t.muted));
}

/// The gears, or over them what is held up before the eyes.
fn stage_zone(ui: &mut Ui, desk: &mut Desk<'_>, zone: Rect) {
    if desk.state.large && instrument::held(desk).is_some() {
        inside(ui, "held-up", zone, Vec2::ZERO, |ui| instrument::held_up(ui, desk));
        return;
    }
    desk.state.large = false;
    stage::stage_panel(ui, &mut desk.page(), zone);
    inside(ui, "captions", zone, Vec2::ZERO, |ui| {
        stage::stage_captions_panel(ui, &mut desk.page(), zone);
    });
}
