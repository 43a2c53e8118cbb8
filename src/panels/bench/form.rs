//! The form of a piece of work: its fields, its precautions, and the button that does it.

use egui::{ComboBox, Key, Ui};

use super::desk_state::DeskState;
use super::{scrolled, widget};
use crate::panels::theme::Ink;
use crate::panels::widget::{ButtonFace, Rank};
use crate::quantity::Units;
use crate::view::bench::{Amount, Entry, Field, FieldKind, Work};
use crate::view::{BenchView, Command, WindowView};
use crate::words::say;

/// Draws the form that is open.
pub(super) fn form(
    ui: &mut Ui,
    ink: &Ink,
    view: &WindowView<'_>,
    board: &BenchView,
    state: &mut DeskState,
    out: &mut Vec<Command>,
) {
    let Some(work) = state.work(board) else { return };
    let Some(mut form) = state.form.take() else { return };
    // Asked before the list that is open has taken the key that closes it.
    let choosing = egui::Popup::is_any_open(ui.ctx());
    let text = ink.color(|t| t.text);
    let part = work.part.label(board.laid.layout, board.laid.depth_shim);
    let mut close = false;
    let mut done = false;
    let fresh = std::mem::take(&mut form.fresh);
    let mut first = None;
    ui.spacing_mut().item_spacing.y = ink.space(4.0);
    widget::words(
        ui,
        &say!("board-form-title", part = part, work = work.name.as_str()),
        ink.section(),
        text,
    );
    let foot = ink.scaled(32.0) + ink.space(6.0) + if form.problem.is_some() { ink.scaled(36.0) } else { 0.0 };
    let height = (ui.available_height() - foot).max(40.0);
    let wide = ui.available_width();
    ui.allocate_ui(egui::vec2(wide, height), |ui| {
        ui.set_min_height(height);
        scrolled(ui, "form", |ui| {
            let id = ui.id().with((work.part, &work.key));
            // Room for the outline of the keyboard.
            ui.add_space(4.0);
            first = where_to_begin(work, id);
            for (index, (field, entry)) in work.fields.iter().zip(&mut form.filled.entries).enumerate() {
                done |= field_row(ui, ink, view.units, id.with(index), field, entry);
            }
            for (index, (hazard, ticked)) in work.hazards.iter().zip(&mut form.filled.precautions).enumerate() {
                // A precaution that meets two hazards is ticked once.
                let first = work.hazards.iter().position(|h| h.precaution == hazard.precaution) == Some(index);
                if first && widget::tick(ui, ink, id.with(("met", index)), &hazard.precaution, *ticked) {
                    *ticked = !*ticked;
                }
            }
        });
    });
    // Only now: the key that opened the form must not press the first piece of it too.
    if let Some(first) = first.filter(|_| fresh) {
        ui.memory_mut(|memory| memory.request_focus(first));
    }
    if let Some(problem) = &form.problem {
        widget::words(ui, problem, ink.body(), ink.color(|t| t.off));
    }
    ui.horizontal(|ui| {
        let does = ButtonFace::new(verb(work), say!("window-cap-enter"), Rank::Next);
        let button = widget::button(ui, ink, &does);
        if fresh && first.is_none() {
            button.request_focus();
        }
        done |= button.clicked();
        let cancels = ButtonFace::new(say!("board-cancel"), say!("window-cap-escape"), Rank::Plain);
        close |= widget::button(ui, ink, &cancels).clicked();
        // How long it takes depends on the form where nothing is said.
        if work.minutes > 0.0 {
            let time = Amount::Minutes.text(work.minutes, view.units);
            widget::words(ui, &time, ink.small(), ink.color(|t| t.muted));
        }
    });
    let (enter, escape) = ui.input(|input| (input.key_pressed(Key::Enter), input.key_pressed(Key::Escape)));
    // Enter on a button or a box to tick is a press of that, and on what stands over the page that one's.
    let free = !choosing && !view.covered();
    done |= state.do_form || enter && free && ui.memory(|memory| memory.focused().is_none());
    if escape && free {
        close = true;
        // The key has done its work: the part stays chosen.
        ui.input_mut(|input| input.consume_key(egui::Modifiers::NONE, Key::Escape));
    }
    if done {
        match work.operation(&form.filled, view.units) {
            Ok(operation) => {
                form.problem = None;
                state.remember(work, &form.filled);
                out.push(Command::Do(Box::new(operation)));
            }
            Err(problem) => form.problem = Some(problem),
        }
    }
    state.form = (!close).then_some(form);
}

/// Where the keyboard stands when the form opens: what is typed, pieces to be chosen, or precautions; none is the button.
fn where_to_begin(work: &Work, id: egui::Id) -> Option<egui::Id> {
    let fields = || work.fields.iter().enumerate();
    let typed = fields().find(|(_, f)| matches!(f.kind, FieldKind::Number { .. } | FieldKind::Text));
    let piece = || {
        fields().find_map(|(index, field)| match &field.kind {
            FieldKind::Pieces { pieces, .. } => Some(id.with(index).with(pieces.first()?.number)),
            _ => None,
        })
    };
    let precaution = || (!work.hazards.is_empty()).then(|| id.with(("met", 0_usize)));
    typed
        .map(|(index, _)| id.with(index))
        .or_else(piece)
        .or_else(precaution)
}

fn verb(work: &Work) -> String {
    if work.reads {
        say!("board-take-reading")
    } else {
        say!("board-do")
    }
}

/// Draws one field; says whether the enter key was pressed in it.
fn field_row(ui: &mut Ui, ink: &Ink, units: Units, id: egui::Id, field: &Field, entry: &mut Entry) -> bool {
    let mut ended = false;
    let text = ink.color(|t| t.text);
    match (&field.kind, entry) {
        (FieldKind::Number { amount, .. }, Entry::Typed(typed)) => {
            ui.horizontal(|ui| {
                name(ui, ink, &field.name);
                let width = ink.scaled(76.0);
                let waits = typed.trim().is_empty();
                let response = widget::writing_box(ui, ink, id, &field.name, typed, width, waits);
                ended = line_ended(ui, &response);
                widget::words(ui, &amount.unit(units), ink.body(), text);
            });
        }
        (FieldKind::Choice { options, .. }, Entry::Chosen(chosen)) => {
            ui.horizontal(|ui| {
                name(ui, ink, &field.name);
                let shown = options.get(*chosen).cloned().unwrap_or_default();
                let width = ui.available_width() - ink.space(4.0);
                if let [only] = options.as_slice() {
                    widget::words(ui, only, ink.body(), text);
                    return;
                }
                let mut chosen_by_key = false;
                let response = ComboBox::from_id_salt(id)
                    .width(width)
                    .truncate()
                    .selected_text(shown.clone())
                    .show_ui(ui, |ui| chosen_by_key = choices(ui, ink, options, chosen))
                    .response;
                // Arrows choose while the list is open; else they would lead away from it.
                if response.has_focus() && egui::Popup::is_any_open(ui.ctx()) {
                    let kept = egui::EventFilter {
                        vertical_arrows: true,
                        ..egui::EventFilter::default()
                    };
                    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, kept));
                }
                response.widget_info(|| {
                    let said = say!("board-choice", field = field.name.as_str(), chosen = shown.as_str());
                    egui::WidgetInfo::labeled(egui::WidgetType::ComboBox, true, said)
                });
                if chosen_by_key {
                    // The list closes; the keyboard goes on from where it was opened.
                    response.request_focus();
                }
                widget::focus_outline(ui, ink, &response, response.rect);
            });
        }
        (FieldKind::Tick { .. }, Entry::Ticked(ticked)) => {
            *ticked ^= widget::tick(ui, ink, id, &field.name, *ticked);
        }
        (FieldKind::Text, Entry::Typed(typed)) => {
            ui.horizontal(|ui| {
                name(ui, ink, &field.name);
                let width = ui.available_width() - ink.space(4.0);
                let response = widget::writing_box(ui, ink, id, &field.name, typed, width, false);
                ended = line_ended(ui, &response);
            });
        }
        (FieldKind::Pieces { pieces, sum }, Entry::Pieces(ticked)) => {
            let chosen = || pieces.iter().zip(ticked.iter()).filter(|(_, t)| **t).map(|(p, _)| p);
            let mut words = field.name.clone();
            if *sum {
                let total: f64 = chosen().filter_map(|p| p.labelled_mm).sum();
                let count = chosen().count();
                words = say!(
                    "board-pieces-sum",
                    field = words,
                    count = count,
                    size = Amount::FineLength.text(total, units),
                );
            }
            widget::words(ui, &words, ink.body(), text);
            ui.horizontal_wrapped(|ui| {
                ui.spacing_mut().item_spacing = egui::vec2(ink.space(6.0), ink.space(2.0));
                for (piece, ticked) in pieces.iter().zip(ticked.iter_mut()) {
                    let label = piece.labelled_mm.map_or_else(
                        || piece.words.clone(),
                        |mm| {
                            say!(
                                "board-piece",
                                number = piece.number,
                                size = Amount::FineLength.digits(mm, units),
                            )
                        },
                    );
                    if chip(ui, ink, id.with(piece.number), &label, *ticked) {
                        *ticked = !*ticked;
                    }
                }
            });
        }
        _ => {}
    }
    ended
}

/// A piece that is taken or left: taken ones are framed in violet with a tick.
fn chip(ui: &mut Ui, ink: &Ink, id: egui::Id, label: &str, ticked: bool) -> bool {
    let color = ink.color(|t| t.text);
    let galley = ui.painter().layout_no_wrap(label.to_owned(), ink.body(), color);
    let mark = ink.scaled(14.0);
    let size = egui::vec2(galley.size().x + mark + ink.space(14.0), ink.scaled(28.0));
    let (_, rect) = ui.allocate_space(size);
    let response = ui.interact(rect, id, egui::Sense::click());
    response.widget_info(|| {
        egui::WidgetInfo::selected(
            egui::WidgetType::Checkbox,
            ui.is_enabled(),
            ticked,
            say!("board-piece-said", piece = label),
        )
    });
    let line = if ticked {
        ink.line(2.0, |t| t.accent)
    } else {
        ink.line(if response.hovered() { 2.0 } else { 1.0 }, |t| t.line)
    };
    let painter = ui.painter();
    painter.rect(rect, 2.0, ink.color(|t| t.inset), line, egui::StrokeKind::Inside);
    if ticked {
        let corner = egui::pos2(rect.left() + ink.space(5.0), rect.center().y - mark / 2.0);
        let at = |x: f32, y: f32| corner + egui::vec2(x, y) * mark;
        painter.line(
            vec![at(0.1, 0.55), at(0.4, 0.85), at(0.9, 0.15)],
            ink.line(2.0, |t| t.accent),
        );
    }
    let left = rect.left() + ink.space(8.0) + mark;
    painter.galley(egui::pos2(left, rect.center().y - galley.size().y / 2.0), galley, color);
    widget::focus_outline(ui, ink, &response, rect);
    if response.gained_focus() {
        response.scroll_to_me(None);
    }
    response.clicked()
}

/// The list of a choice: pressed with the pointer, or gone through with the arrows and closed with Enter. Says whether a
/// line was pressed with the keyboard on it.
fn choices(ui: &mut Ui, ink: &Ink, options: &[String], chosen: &mut usize) -> bool {
    let mut keyboard_on_line = false;
    let mut chosen_by_key = false;
    for (index, option) in options.iter().enumerate() {
        let color = if index == *chosen {
            ink.color(|t| t.on_accent)
        } else {
            ink.color(|t| t.text)
        };
        let line = ui.selectable_value(chosen, index, egui::RichText::new(option).color(color));
        keyboard_on_line |= line.has_focus();
        chosen_by_key |= line.clicked() && line.has_focus();
    }
    // Tab leads on to the lines, where egui has arrows and Enter for itself.
    if keyboard_on_line {
        return chosen_by_key;
    }
    // With the keyboard on it the box opens and closes its list by itself.
    let on_box = ui.memory(|memory| memory.focused().is_some());
    let (down, up, enter) = ui.input_mut(|input| {
        let mut pressed = |key| input.consume_key(egui::Modifiers::NONE, key);
        let moved = (pressed(Key::ArrowDown), pressed(Key::ArrowUp));
        (moved.0, moved.1, !on_box && pressed(Key::Enter))
    });
    if down {
        *chosen = (*chosen + 1).min(options.len().saturating_sub(1));
    }
    if up {
        *chosen = chosen.saturating_sub(1);
    }
    if enter {
        ui.close();
    }
    chosen_by_key
}

/// Whether the enter key was pressed in a box. The keyboard stays in the box for the next time.
pub(super) fn line_ended(ui: &Ui, response: &egui::Response) -> bool {
    let ended = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    if ended {
        response.request_focus();
    }
    ended
}

fn name(ui: &mut Ui, ink: &Ink, words: &str) {
    let width = ink.scaled(116.0).min(0.45 * ui.available_width());
    let galley = ui
        .painter()
        .layout(words.to_owned(), ink.body(), ink.color(|t| t.text), width);
    let height = galley.size().y.max(ink.scaled(28.0));
    let (rect, _) = ui.allocate_exact_size(egui::vec2(width, height), egui::Sense::hover());
    let at = egui::pos2(rect.left(), rect.center().y - galley.size().y / 2.0);
    ui.painter().galley(at, galley, ink.color(|t| t.text));
}
