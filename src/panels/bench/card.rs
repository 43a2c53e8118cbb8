//! The job card: what is told, what is wanted, what was written down, what it took so far.

use egui::{Rect, Ui, WidgetInfo, WidgetType, pos2, vec2};

use super::desk_state::DeskState;
use super::{scrolled, widget};
use crate::panels::theme::Ink;
use crate::panels::widget::{ButtonFace, Rank};
use crate::quantity::number;
use crate::view::bench::{Approved, Wanted, WantedRange, amount_of, measurand_words};
use crate::view::{BenchView, Command, Place, WindowView, safety_note};
use crate::words::say;

/// Draws the card.
pub(super) fn card(
    ui: &mut Ui,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) {
    let inside = ui.max_rect();
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    if ink.large() {
        scrolled(ui, "card", |ui| {
            upper(ui, ink, view, board);
            foot(ui, ink, board, state, out);
            widget::words(ui, &safety_note(), ink.small(), muted);
        });
        return;
    }
    // The foot is always whole; what is told scrolls.
    let note = ui.painter().layout(safety_note(), ink.small(), muted, inside.width());
    let foot_height = 3.0 * ink.scaled(24.0)
        + foot_rows(state) * (ink.scaled(32.0) + ink.space(4.0))
        + ink.space(20.0)
        + note.size().y;
    let split = inside.bottom() - foot_height;
    let above = Rect::from_min_max(inside.min, pos2(inside.right(), split - ink.space(8.0)));
    super::inside(ui, "above", above, egui::Vec2::ZERO, |ui| {
        scrolled(ui, "card", |ui| upper(ui, ink, view, board));
    });
    ui.painter().hline(inside.x_range(), split, ink.line(1.0, |t| t.line));
    let below = Rect::from_min_max(pos2(inside.left(), split + ink.space(4.0)), inside.max);
    super::inside(ui, "foot", below, egui::Vec2::ZERO, |ui| {
        foot(ui, ink, board, state, out);
        let at = pos2(inside.left(), inside.bottom() - note.size().y);
        let rect = Rect::from_min_size(at, note.size());
        let response = ui.interact(rect, ui.id().with("safety"), egui::Sense::hover());
        response.widget_info(|| {
            let said = say!("window-safety", note = safety_note());
            WidgetInfo::labeled(WidgetType::Label, true, said)
        });
        ui.painter().galley(at, note, text);
    });
}

/// Rows of buttons at the foot.
fn foot_rows(state: &DeskState) -> f32 {
    if state.handing_over { 2.0 } else { 1.0 }
}

fn upper(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, board: &BenchView) {
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
        wanted_row(ui, ink, view, wanted);
    }
    if board.reads_lash {
        let words = say!("board-stem", stem = board.stem.as_str());
        widget::words(ui, &words, ink.small(), muted);
    }
    approvals(ui, ink, board);
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
fn approvals(ui: &mut Ui, ink: &Ink, board: &BenchView) {
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
pub(super) fn sheet(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, board: &BenchView) {
    if board.notes.is_empty() {
        widget::words(ui, &say!("board-sheet-empty"), ink.body(), ink.color(|t| t.muted));
        return;
    }
    scrolled(ui, "sheet", |ui| {
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
fn wanted_row(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, wanted: &Wanted) {
    let width = ui.available_width();
    let box_width = ink.scaled(86.0).min(0.4 * width);
    let text = ink.color(|t| t.text);
    let muted = ink.color(|t| t.muted);
    let wrap = width - box_width - ink.space(8.0);
    let name = ui.painter().layout(wanted.name.clone(), ink.body(), text, wrap);
    let range = ui
        .painter()
        .layout(wanted.range.text(view.units), ink.small(), muted, wrap);
    let height = name.size().y + range.size().y + ink.space(6.0);
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

fn foot(ui: &mut Ui, ink: &Ink, board: &BenchView, state: &mut DeskState, out: &mut Vec<Command>) {
    ui.spacing_mut().item_spacing.y = 0.0;
    widget::number_row(ui, ink, &say!("board-time"), &time(board.minutes));
    widget::number_row(ui, ink, &say!("board-parts-cost"), &number(board.money, 0));
    widget::number_row(ui, ink, &say!("board-teardowns"), &board.tear_downs.to_string());
    ui.add_space(ink.space(6.0));
    ui.spacing_mut().item_spacing.y = ink.space(4.0);
    let face = ButtonFace::plain;
    let mut asked_now = false;
    ui.horizontal_wrapped(|ui| {
        if board.finished {
            if widget::button(ui, ink, &face(say!("board-show-debrief"), Rank::Next)).clicked() {
                out.push(Command::GoTo(Place::Debrief));
            }
            return;
        }
        let (there, given) = (board.hints.len(), board.hints_given);
        let more = given < there;
        let label = if more {
            say!("board-hint")
        } else {
            say!("board-no-hint")
        };
        let hint = ui.add_enabled_ui(more, |ui| widget::button(ui, ink, &face(label, Rank::Plain)));
        if hint.inner.on_hover_text(say!("board-hint-cost")).clicked() && more {
            let level = u32::try_from(given + 1).unwrap_or(1);
            out.push(Command::Do(Box::new(crate::view::bench::hint(level))));
        }
        if !state.handing_over && widget::button(ui, ink, &face(say!("board-sign-off"), Rank::Plain)).clicked() {
            state.handing_over = true;
            asked_now = true;
        }
    });
    if state.handing_over && !board.finished {
        ui.horizontal_wrapped(|ui| {
            if widget::button(ui, ink, &face(say!("board-sign-off-yes"), Rank::Next)).clicked() {
                state.handing_over = false;
                out.push(Command::Do(Box::new(crate::view::bench::finish())));
            }
            let not_yet = widget::button(ui, ink, &face(say!("board-sign-off-no"), Rank::Plain));
            // The button that asked is gone; the keyboard goes on at the answer that does no harm.
            if asked_now {
                not_yet.request_focus();
            }
            if not_yet.clicked() {
                state.handing_over = false;
            }
        });
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
