//! The prediction slip: what the next print and readings will be, said before they are looked at.

use egui::Ui;

use super::desk::{Desk, scrolled};
use super::hand;
use crate::panels::widget::{self, ButtonFace, Cell, Rank};
use crate::view::Command;
use crate::view::bench::{SLIP_ROWS, SURE, outcomes, predict, predicted};
use crate::words::say;

/// Draws the slip.
pub(super) fn slip(ui: &mut Ui, desk: &mut Desk<'_>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    scrolled(ui, desk.list("slip"), |ui| {
        ui.spacing_mut().item_spacing.y = ink.space(3.0);
        widget::words(ui, &say!("board-prediction-help"), ink.small(), muted);
        // As wide as the longest name, so that the choices stand below each other.
        let name = |about| ui.painter().layout_no_wrap(predicted(about), ink.body(), text);
        let names = SLIP_ROWS.map(name);
        let column = names
            .iter()
            .fold(ink.scaled(76.0), |widest, name| widest.max(name.size().x));
        for (row, (about, galley)) in SLIP_ROWS.into_iter().zip(names).enumerate() {
            let Some(chosen) = desk.state.slip.get_mut(row) else {
                continue;
            };
            let cells: Vec<Cell<Option<usize>>> = outcomes(about)
                .into_iter()
                .enumerate()
                .map(|(outcome, label)| Cell::new(label, Some(outcome)))
                .collect();
            let name = predicted(about);
            ui.horizontal_wrapped(|ui| {
                let (rect, _) = ui.allocate_exact_size(egui::vec2(column, ink.scaled(28.0)), egui::Sense::hover());
                let at = egui::pos2(rect.left(), rect.center().y - galley.size().y / 2.0);
                ui.painter().galley(at, galley, text);
                let now = chosen.map(Some);
                if let Some(pressed) = widget::segments(ui, ink, row, &name, &cells, now) {
                    *chosen = if *chosen == pressed { None } else { pressed };
                }
            });
        }
        ui.horizontal_wrapped(|ui| {
            widget::words(ui, &say!("board-sure"), ink.body(), text);
            let cells: Vec<Cell<usize>> = SURE
                .iter()
                .enumerate()
                .map(|(value, (label, _))| Cell::new((*label).to_owned(), value))
                .collect();
            if let Some(pressed) = widget::segments(ui, ink, "sure", &say!("board-sure"), &cells, Some(desk.state.sure))
            {
                desk.state.sure = pressed;
            }
        });
        let any = desk.state.slip.iter().any(Option::is_some) && !board.finished;
        let face = ButtonFace::plain(say!("board-sign"), if any { Rank::Next } else { Rank::Plain });
        let sign = widget::button_if(ui, ink, &face, any);
        widget::words(ui, &say!("board-sign-help"), ink.small(), muted);
        if hand::pressed(ui, desk, &sign, &face.label) && any {
            for (about, chosen) in SLIP_ROWS.into_iter().zip(&mut desk.state.slip) {
                if let Some(outcome) = chosen.take() {
                    desk.out
                        .push(Command::Do(Box::new(predict(about, outcome, desk.state.sure))));
                }
            }
        }
        let signed = board.told_back.iter().rev().filter(|t| t.is_prediction());
        for told in signed.take(6) {
            widget::words(ui, &told.title(view.units), ink.small(), muted);
        }
    });
}
