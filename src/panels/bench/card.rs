//! The job card: what is told, what is wanted, what was written down, what it took so far.

use egui::{Rect, Ui, WidgetInfo, WidgetType, pos2, vec2};

use super::desk::{Desk, scrolled};
use super::hand;
use crate::panels::dock::inside;
use crate::panels::key;
use crate::panels::theme::Ink;
use crate::panels::widget::{self, ButtonFace, Rank};
use crate::quantity::number;
use crate::view::bench::{Approved, Wanted, WantedRange, amount_of, measurand_words};
use crate::view::{Action, Command, Place, safety_note};
use crate::words::say;

/// Draws the card.
pub(super) fn card(ui: &mut Ui, desk: &mut Desk<'_>) {
    let ink = desk.ink;
    let zone = ui.available_rect_before_wrap();
    let text = ink.color(|t| t.text);
    let note = ui.painter().layout(safety_note(), ink.small(), text, zone.width());
    // The foot is whole where there is room; what is told scrolls.
    let foot_height = foot_height(ui, desk, zone.width()) + ink.space(16.0) + note.size().y;
    if foot_height > 0.55 * zone.height() {
        scrolled(ui, desk.list("card"), |ui| {
            upper(ui, desk);
            ui.add_space(ink.space(8.0));
            foot(ui, desk);
            ui.add_space(ink.space(6.0));
            widget::words(ui, &safety_note(), ink.small(), text);
        });
        return;
    }
    let split = zone.bottom() - foot_height;
    let above = Rect::from_min_max(zone.min, pos2(zone.right(), split - ink.space(8.0)));
    inside(ui, "above", above, egui::Vec2::ZERO, |ui| {
        scrolled(ui, desk.list("card"), |ui| upper(ui, desk));
    });
    ui.painter().hline(zone.x_range(), split, ink.line(1.0, |t| t.line));
    let below = Rect::from_min_max(pos2(zone.left(), split + ink.space(4.0)), zone.max);
    // The outline of the keyboard lies outside of what has it.
    let shown = below.expand2(vec2(4.0, 0.0));
    inside(ui, "foot", shown, vec2(4.0, 0.0), |ui| {
        foot(ui, desk);
        let at = pos2(zone.left(), zone.bottom() - note.size().y);
        let rect = Rect::from_min_size(at, note.size());
        let response = ui.interact(rect, ui.id().with("safety"), egui::Sense::hover());
        response.widget_info(|| {
            let said = say!("window-safety", note = safety_note());
            WidgetInfo::labeled(WidgetType::Label, true, said)
        });
        ui.painter().galley(at, note, text);
    });
}

fn upper(ui: &mut Ui, desk: &Desk<'_>) {
    let (ink, board) = (desk.ink, desk.board);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    ui.spacing_mut().item_spacing.y = ink.space(3.0);
    widget::words(
        ui,
        &say!("board-step-and-axle", step = board.step, seed = board.seed.to_string()),
        ink.small(),
        muted,
    );
    widget::words(ui, &board.title, ink.page_title(), text);
    widget::words(ui, &board.layout, ink.small(), muted);
    ui.add_space(ink.space(6.0));
    heading(ui, ink, &say!("board-targets"), &say!("board-targets-sheet"));
    for wanted in &board.wanted {
        wanted_row(ui, desk, wanted);
    }
    if board.reads_lash {
        let words = say!("board-stem", stem = board.stem.as_str());
        widget::words(ui, &words, ink.small(), muted);
    }
    approvals(ui, desk);
    for (title, paragraphs) in [
        (say!("board-job"), &board.told),
        (say!("board-safety"), &board.cautions),
    ] {
        if paragraphs.is_empty() {
            continue;
        }
        ui.add_space(ink.space(6.0));
        heading(ui, ink, &title, "");
        for paragraph in paragraphs {
            widget::words(ui, paragraph, ink.body(), text);
            ui.add_space(ink.space(4.0));
        }
    }
}

/// What the gears' maker approved, to judge prints by.
fn approvals(ui: &mut Ui, desk: &Desk<'_>) {
    let (ink, board) = (desk.ink, desk.board);
    if board.approvals.is_empty() {
        return;
    }
    ui.add_space(ink.space(6.0));
    heading(ui, ink, &say!("board-set-pattern"), &say!("board-set-pattern-of"));
    for approval in &board.approvals {
        if board.approvals.len() > 1 {
            widget::words(ui, &approval.gears, ink.body(), ink.color(|t| t.text));
        }
        for (name, flank) in [say!("board-drive"), say!("board-coast")]
            .into_iter()
            .zip(&approval.flanks)
        {
            let words = flank.as_ref().map_or_else(|| say!("board-no-marks"), Approved::text);
            let line = say!("board-set-pattern-line", side = name, pattern = words);
            widget::words(ui, &line, ink.small(), ink.color(|t| t.muted));
        }
    }
}

/// The set-up sheet, newest first.
pub(super) fn sheet(ui: &mut Ui, desk: &Desk<'_>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    if board.notes.is_empty() {
        widget::words(ui, &say!("board-sheet-empty"), ink.body(), ink.color(|t| t.muted));
        return;
    }
    scrolled(ui, desk.list("sheet"), |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for note in board.notes.iter().rev() {
            let mut value = amount_of(note.what).text(note.value, view.units);
            if note.stale {
                value = say!("board-value-stale", value = value);
            }
            let response = widget::number_row(ui, ink, &measurand_words(note.what), &value);
            if note.stale {
                struck(ui, ink, response.rect);
            }
        }
    });
}

/// A line through what does not hold any more.
fn struck(ui: &Ui, ink: &Ink, rect: Rect) {
    let y = rect.center().y;
    ui.painter()
        .hline(rect.left()..=rect.right(), y, ink.line(1.0, |t| t.muted));
}

fn heading(ui: &mut Ui, ink: &Ink, left: &str, right: &str) {
    let width = ui.available_width();
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    let first = ui.painter().layout_no_wrap(left.to_owned(), ink.section(), text);
    let second = ui.painter().layout_no_wrap(right.to_owned(), ink.small(), muted);
    // Below each other where there is no room side by side.
    let below = first.size().x + second.size().x + ink.space(8.0) > width;
    let height = ink.scaled(22.0) + if below { second.size().y } else { 0.0 };
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), egui::Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Label, true, left));
    let painter = ui.painter();
    let middle = rect.top() + ink.scaled(11.0);
    let at = pos2(rect.left(), middle - first.size().y / 2.0);
    let beside = pos2(rect.right() - second.size().x, middle - second.size().y / 2.0);
    let under = pos2(rect.left(), rect.top() + ink.scaled(20.0));
    painter.galley(at, first, text);
    painter.galley(if below { under } else { beside }, second, muted);
    painter.hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.line));
}

/// What is wanted at the left, what the trainee wrote in a box at the right; a violet frame waits to be filled.
fn wanted_row(ui: &mut Ui, desk: &Desk<'_>, wanted: &Wanted) {
    let (ink, view) = (desk.ink, desk.view);
    let width = ui.available_width();
    let box_width = ink.scaled(86.0).min(0.4 * width);
    let text = ink.color(|t| t.text);
    let muted = ink.color(|t| t.muted);
    let wrap = width - box_width - ink.space(8.0);
    let name = ui.painter().layout(wanted.name.clone(), ink.body(), text, wrap);
    let range = ui
        .painter()
        .layout(wanted.range.text(view.units), ink.small(), muted, wrap);
    // A stale value has the word for it below.
    let stale = if wanted.stale && wanted.written.is_some() {
        ink.scaled(18.0 + 16.0) + ink.space(4.0) + 10.0
    } else {
        0.0
    };
    let height = (name.size().y + range.size().y + ink.space(6.0)).max(stale);
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), egui::Sense::hover());
    let value = wanted
        .written
        .map(|value| wanted.range.amount().text(value, view.units));
    let said = match (&value, wanted.stale) {
        (None, _) => say!("board-blank"),
        (Some(value), false) => value.clone(),
        (Some(value), true) => say!("board-value-stale", value = value.as_str()),
    };
    response.widget_info(|| {
        let words = say!(
            "board-target-said",
            name = wanted.name.as_str(),
            range = wanted.range.text(view.units),
            written = said.as_str(),
        );
        WidgetInfo::labeled(WidgetType::Label, true, words)
    });
    let has_box = !matches!(wanted.range, WantedRange::Words(..)) || wanted.written.is_some();
    let field = Rect::from_min_max(
        pos2(rect.right() - box_width, rect.top() + 2.0),
        pos2(rect.right(), rect.bottom() - ink.space(4.0)),
    );
    let painter = ui.painter();
    painter.galley(rect.min + vec2(0.0, 1.0), name.clone(), text);
    painter.galley(rect.min + vec2(0.0, 1.0 + name.size().y), range, muted);
    if has_box {
        let line = ink.line(1.0, |t| t.line);
        painter.rect(field, 2.0, ink.color(|t| t.inset), line, egui::StrokeKind::Inside);
    }
    let Some(value) = value else { return };
    let color = ink.color(|t| if wanted.stale { t.muted } else { t.belief });
    let inside = field.shrink(4.0);
    if wanted.stale {
        let galley = painter.layout_no_wrap(value, ink.body(), color);
        let at = pos2(inside.right() - galley.size().x, inside.top());
        let line = at.y + galley.size().y / 2.0;
        painter.galley(at, galley.clone(), color);
        painter.hline(at.x..=at.x + galley.size().x, line, ink.line(1.4, |t| t.muted));
        painter.text(
            inside.right_bottom(),
            egui::Align2::RIGHT_BOTTOM,
            say!("board-stale"),
            ink.small(),
            color,
        );
    } else {
        painter.text(
            inside.right_center(),
            egui::Align2::RIGHT_CENTER,
            value,
            ink.section(),
            color,
        );
    }
}

/// What it took so far.
fn took(desk: &Desk<'_>) -> [[String; 2]; 3] {
    let board = desk.board;
    [
        [say!("board-time"), time(board.minutes)],
        [say!("board-parts-cost"), number(board.money, 0)],
        [say!("board-teardowns"), board.tear_downs.to_string()],
    ]
}

/// What can be pressed at the foot of the card.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Press {
    Debrief,
    Hint,
    SignOff,
    SignOffNow,
    KeepWorking,
}

/// The buttons at the foot. Those that ask once more take the place of the others: the one that does no harm stands where the
/// question was pressed.
fn presses(desk: &Desk<'_>) -> Vec<(Press, ButtonFace)> {
    let (board, keys) = (desk.board, desk.view.keys);
    let face = ButtonFace::plain;
    if board.finished {
        return vec![(Press::Debrief, face(say!("board-show-debrief"), Rank::Next))];
    }
    if desk.state.handing_over {
        return vec![
            (Press::SignOffNow, face(say!("board-sign-off-yes"), Rank::Next)),
            (Press::KeepWorking, face(say!("board-sign-off-no"), Rank::Plain)),
        ];
    }
    let hint = if board.hints_given < board.hints.len() {
        say!("board-hint")
    } else {
        say!("board-no-hint")
    };
    let sign_off = ButtonFace::new(say!("board-sign-off"), key::cap(keys, Action::SignOff), Rank::Plain);
    vec![(Press::Hint, face(hint, Rank::Plain)), (Press::SignOff, sign_off)]
}

/// Height of the foot: always that of the buttons that need the most room, so that nothing moves when it is asked once more.
fn foot_height(ui: &Ui, desk: &Desk<'_>, width: f32) -> f32 {
    let ink = desk.ink;
    let rows: f32 = took(desk)
        .iter()
        .map(|[word, number]| widget::number_row_height(ui, ink, word, number, width))
        .sum();
    rows + ink.space(6.0) + buttons_height(ui, desk, width)
}

fn buttons_height(ui: &Ui, desk: &Desk<'_>, width: f32) -> f32 {
    let ink = desk.ink;
    let gap = ui.spacing().item_spacing.x;
    let longest = [say!("board-sign-off-no"), say!("board-sign-off-yes")];
    let asked: Vec<f32> = longest
        .into_iter()
        .map(|label| ButtonFace::plain(label, Rank::Plain).size(ui, ink).x)
        .collect();
    let now: Vec<f32> = presses(desk).iter().map(|(_, face)| face.size(ui, ink).x).collect();
    let rows = |widths: &[f32]| widget::rows_in(width, widths, gap).len();
    let rows = rows(&asked).max(rows(&now)) as f32;
    rows * (ink.scaled(32.0) + ink.space(4.0))
}

fn foot(ui: &mut Ui, desk: &mut Desk<'_>) {
    let (ink, board) = (desk.ink, desk.board);
    ui.spacing_mut().item_spacing.y = 0.0;
    for [word, number] in took(desk) {
        widget::number_row(ui, ink, &word, &number);
    }
    ui.add_space(ink.space(6.0));
    ui.spacing_mut().item_spacing.y = ink.space(4.0);
    let more = board.hints_given < board.hints.len();
    let ask = std::mem::take(&mut desk.state.asked_now);
    ui.horizontal_wrapped(|ui| {
        for (press, face) in presses(desk) {
            let enabled = press != Press::Hint || more;
            let response = widget::button_if(ui, ink, &face, enabled);
            let response = match press {
                Press::Hint => response.on_hover_text(say!("board-hint-cost")),
                Press::SignOff => {
                    response.on_hover_text(key::hint(say!("board-sign-off-help"), desk.view.keys, Action::SignOff))
                }
                _ => response,
            };
            // The button that asked is gone; the keyboard goes on at the answer that does no harm.
            if press == Press::KeepWorking && ask {
                response.request_focus();
                response.scroll_to_me(None);
            }
            if enabled && hand::pressed(ui, desk, &response, &face.label) {
                do_press(desk, press);
            }
        }
    });
}

fn do_press(desk: &mut Desk<'_>, press: Press) {
    match press {
        Press::Debrief => desk.out.push(Command::GoTo(Place::Debrief)),
        Press::Hint => {
            let level = u32::try_from(desk.board.hints_given + 1).unwrap_or(1);
            desk.out.push(Command::Do(Box::new(crate::view::bench::hint(level))));
        }
        Press::SignOff => desk.state.ask_to_sign_off(),
        Press::SignOffNow => {
            desk.state.handing_over = false;
            desk.out.push(Command::Do(Box::new(crate::view::bench::finish())));
        }
        Press::KeepWorking => desk.state.handing_over = false,
    }
}

/// Minutes as hours and minutes.
pub(in crate::panels) fn time(minutes: f64) -> String {
    let whole = minutes.round();
    let hours = (whole / 60.0).floor();
    let rest = number(whole - 60.0 * hours, 0);
    if hours > 0.0 {
        say!("board-hours-and-minutes", hours = number(hours, 0), minutes = rest)
    } else {
        say!("board-minutes", minutes = rest)
    }
}
