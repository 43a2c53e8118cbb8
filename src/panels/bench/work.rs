//! Parts, and what can be done at each.

use egui::Ui;

use super::desk::{Desk, scrolled};
use super::hand;
use crate::panels::key;
use crate::panels::widget::{self, Line};
use crate::view::bench::Work;
use crate::view::{Action, AxlePart, BenchView, Command, WindowView};
use crate::words::say;

/// Parts that this axle has, in order.
fn parts_of(board: &BenchView) -> impl Iterator<Item = AxlePart> + use<'_> {
    AxlePart::ALL
        .into_iter()
        .filter(|part| board.works.iter().any(|w| w.part == *part))
}

fn label(board: &BenchView, part: AxlePart) -> String {
    part.label(board.laid.layout, board.laid.depth_shim)
}

/// The list of parts; those at which nothing can be done now are muted.
pub(super) fn parts(ui: &mut Ui, desk: &mut Desk<'_>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let list = ui.id().with("parts");
    let seen = list.with("seen");
    let before = ui.data(|data| data.get_temp::<Option<AxlePart>>(seen)).flatten();
    ui.data_mut(|data| data.insert_temp(seen, view.desk.part));
    scrolled(ui, desk.list("parts"), |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for part in parts_of(board) {
            let line = line_of(view, board, part);
            let row = widget::line_row(ui, ink, list.with(part), &label(board, part), line);
            if row.clicked() {
                desk.out.push(Command::ChoosePart(Some(part)));
            }
            // A part that was chosen by a key or on the stage is brought into view.
            if view.desk.part == Some(part) && before != Some(part) {
                row.scroll_to_me(None);
            }
        }
    });
}

fn line_of(view: &WindowView<'_>, board: &BenchView, part: AxlePart) -> Line {
    if view.desk.part == Some(part) {
        Line::Chosen
    } else if board.works.iter().any(|w| w.part == part && w.not_now.is_none()) {
        Line::Plain
    } else {
        Line::Idle
    }
}

/// What can be done at the chosen part.
pub(super) fn works(ui: &mut Ui, desk: &mut Desk<'_>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let Some(part) = view.desk.part else {
        let rim = egui::Margin::symmetric(10, 8);
        egui::Frame::NONE.inner_margin(rim).show(ui, |ui| {
            let words = if board.finished {
                say!("board-signed-off")
            } else {
                say!("board-choose-part")
            };
            widget::words(ui, &words, ink.body(), ink.color(|t| t.muted));
        });
        return;
    };
    scrolled(ui, desk.list("works"), |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        rows(ui, desk, part);
    });
}

fn rows(ui: &mut Ui, desk: &mut Desk<'_>, part: AxlePart) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let list = ui.id().with(("works", part));
    let of_part = || board.works.iter().filter(move |w| w.part == part);
    let to_the_list =
        ui.memory(|memory| memory.focused().is_none()) && key::actions(ui, view).contains(&Action::ToWork);
    let mut first = true;
    for work in of_part().filter(|w| w.not_now.is_none()) {
        if std::mem::take(&mut first) && to_the_list {
            ui.memory_mut(|memory| memory.request_focus(list.with(&work.key)));
        }
        let open = desk
            .state
            .form
            .as_ref()
            .is_some_and(|f| f.part == part && f.key == work.key);
        let line = if open { Line::Chosen } else { Line::Plain };
        let row = widget::line_row(ui, ink, list.with(&work.key), &work.name, line);
        // What takes the place of work that was just done may be its opposite.
        if hand::pressed(ui, desk, &row, &work.key) {
            press(desk, work);
        }
    }
    let others = of_part().filter(|w| w.not_now.is_some()).count();
    if others == 0 {
        return;
    }
    let words = if desk.state.all_work {
        say!("board-not-now-because")
    } else {
        say!("board-not-now")
    };
    if widget::line_row(ui, ink, list.with("others"), &words, Line::Idle).clicked() {
        desk.state.all_work = !desk.state.all_work;
    }
    if desk.state.all_work {
        for work in of_part() {
            let Some(why) = &work.not_now else { continue };
            // As far in as the names above.
            let inside = egui::Margin::symmetric(10, 2);
            egui::Frame::NONE.inner_margin(inside).show(ui, |ui| {
                let words = say!("board-work-not-now", work = work.name.as_str(), why = why.as_str());
                widget::words(ui, &words, ink.small(), ink.color(|t| t.muted));
            });
        }
    }
}

/// Work with nothing to fill in is done at once; else its form opens.
fn press(desk: &mut Desk<'_>, work: &Work) {
    let units = desk.view.units;
    if work.fields.is_empty() && work.hazards.is_empty() {
        if let Ok(operation) = work.operation(&work.blank(units), units) {
            desk.state.form = None;
            desk.out.push(Command::Do(Box::new(operation)));
        }
    } else {
        desk.state.open(work, units, desk.board);
    }
}

/// Parts with their work below each other, in one column.
pub(super) fn all(ui: &mut Ui, desk: &mut Desk<'_>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let list = ui.id().with("parts");
    scrolled(ui, desk.list("all-work"), |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for part in parts_of(board) {
            let line = line_of(view, board, part);
            let chosen = line == Line::Chosen;
            if widget::line_row(ui, ink, list.with(part), &label(board, part), line).clicked() {
                desk.out.push(Command::ChoosePart((!chosen).then_some(part)));
            }
            if chosen {
                ui.indent(part, |ui| rows(ui, desk, part));
            }
        }
    });
}
