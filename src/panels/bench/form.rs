//! The form of a piece of work: its fields, its precautions, and the button that does it.

use egui::{ComboBox, Event, Key, Ui};

use super::desk::{Desk, Flow, scrolled};
use super::desk_state::{Form, NumberBox};
use super::hand;
use crate::panels::key;
use crate::panels::theme::Ink;
use crate::panels::widget::{self, ButtonFace, Rank};
use crate::quantity::Units;
use crate::view::Command;
use crate::view::bench::{Amount, Entry, Field, FieldKind, OptionName, Work};
use crate::words::say;

/// A number that is typed while nothing that is written in has the keyboard goes to the form that is open, or else to the value
/// of the reading in hand: it must not be lost, and must not be taken for a key of the stage.
pub(super) fn take_digits(ui: &Ui, desk: &mut Desk<'_>) {
    let Some(target) = desk.state.number_box.take() else {
        return;
    };
    let taken = desk.view.covered() || egui::Popup::is_any_open(ui.ctx()) || ui.ctx().text_edit_focused();
    if taken {
        desk.state.number_box = Some(target);
        return;
    }
    let of_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '\u{2212}');
    let mut typed = String::new();
    ui.input_mut(|input| {
        if !key::plain(input) {
            return;
        }
        input.events.retain(|event| match event {
            Event::Text(text) if text.chars().all(of_number) => {
                typed.push_str(text);
                false
            }
            Event::Key { key, pressed: true, .. } => !is_of_number(*key),
            _ => true,
        });
    });
    if typed.is_empty() {
        desk.state.number_box = Some(target);
        return;
    }
    let wanted = match target.entry {
        None => Some(&mut desk.state.read),
        Some(index) => desk
            .state
            .form
            .as_mut()
            .and_then(|form| match form.filled.entries.get_mut(index) {
                Some(Entry::Typed(wanted)) => Some(wanted),
                _ => None,
            }),
    };
    if let Some(wanted) = wanted {
        wanted.clone_from(&typed);
        widget::go_on_writing(ui, target.id, typed.chars().count());
    }
    desk.state.number_box = Some(target);
}

fn is_of_number(key: Key) -> bool {
    let digit = key.name().chars().all(|c| c.is_ascii_digit());
    digit || matches!(key, Key::Minus | Key::Period | Key::Comma)
}

/// Least height of what scrolls in a form, points at 100 %: where there is less, all of the form scrolls.
const LEAST: f32 = 90.0;

/// Draws the form that is open.
pub(super) fn form(ui: &mut Ui, desk: &mut Desk<'_>, flow: Flow) {
    let foot = desk.ink.scaled(32.0 + 36.0) + desk.ink.space(6.0);
    let height = ui.available_height();
    if flow == Flow::Along {
        sheet(ui, desk, None);
    } else if height < foot + desk.ink.scaled(18.0 + LEAST) {
        scrolled(ui, desk.list("low-form"), |ui| sheet(ui, desk, None));
    } else {
        sheet(ui, desk, Some(height));
    }
}

/// The form in this height, its fields scrolling, or as high as it needs.
fn sheet(ui: &mut Ui, desk: &mut Desk<'_>, height: Option<f32>) {
    let (ink, view, board) = (desk.ink, desk.view, desk.board);
    let Some(work) = desk.state.work(board) else { return };
    let Some(mut form) = desk.state.form.take() else { return };
    // Asked before the list that is open has taken the key that closes it.
    let choosing = egui::Popup::is_any_open(ui.ctx());
    let text = ink.color(|t| t.text);
    let part = work.part.label(board.laid.layout, board.laid.depth_shim);
    let fresh = std::mem::take(&mut form.fresh);
    let top = ui.cursor().top();
    ui.spacing_mut().item_spacing.y = ink.space(4.0);
    widget::words(
        ui,
        &say!("board-form-title", part = part, work = work.name.as_str()),
        ink.section(),
        text,
    );
    let problem = form.problem.as_ref().map(|problem| {
        ui.painter()
            .layout(problem.clone(), ink.body(), text, ui.available_width())
    });
    let problem_height = problem.map_or(0.0, |galley| galley.size().y + ink.space(4.0));
    let row = ink.scaled(32.0) + ink.space(4.0);
    let foot = foot_rows(ui, ink, work, view.units) * row + ink.space(4.0) + problem_height;
    // Where the keyboard begins.
    let id = ui.id().with((work.part, &work.key));
    let (first, mut done) = match height {
        None => fields(ui, ink, view.units, id, work, &mut form),
        Some(height) => {
            let room = (height - (ui.cursor().top() - top) - foot).max(ink.scaled(40.0));
            let wide = ui.available_width();
            let inner = ui.allocate_ui(egui::vec2(wide, room), |ui| {
                ui.set_min_height(room);
                scrolled(ui, desk.list("form"), |ui| {
                    fields(ui, ink, view.units, id, work, &mut form)
                })
            });
            inner.inner
        }
    };
    desk.state.number_box = number_field(work).map(|entry| NumberBox {
        id: id.with(entry),
        entry: Some(entry),
    });
    // Only now: the key that opened the form must not press the first piece of it too.
    if let Some(first) = first.filter(|_| fresh) {
        ui.memory_mut(|memory| memory.request_focus(first));
    }
    if let Some(problem) = &form.problem {
        widget::words(ui, problem, ink.body(), ink.color(|t| t.off));
    }
    let mut close = false;
    ui.horizontal_wrapped(|ui| {
        let [does, cancels] = faces(work);
        let button = widget::button(ui, ink, &does);
        if fresh && first.is_none() {
            button.request_focus();
        }
        done |= hand::pressed(ui, desk, &button, &does.label);
        let cancel = widget::button(ui, ink, &cancels);
        close |= hand::pressed(ui, desk, &cancel, &cancels.label);
        // How long it takes depends on the form where nothing is said.
        if work.minutes > 0.0 {
            let time = Amount::Minutes.text(work.minutes, view.units);
            widget::words(ui, &time, ink.small(), ink.color(|t| t.muted));
        }
    });
    let (enter, escape) = ui.input(|input| (input.key_pressed(Key::Enter), input.key_pressed(Key::Escape)));
    // Enter on a button or a box to tick is a press of that, and on what stands over the page that one's.
    let free = !choosing && !view.covered();
    done |= desk.state.do_form || enter && free && ui.memory(|memory| memory.focused().is_none());
    if escape && free {
        close = true;
        // The key has done its work: the part stays chosen.
        ui.input_mut(|input| input.consume_key(egui::Modifiers::NONE, Key::Escape));
    }
    if done {
        match work.operation(&form.filled, view.units) {
            Ok(operation) => {
                form.problem = None;
                desk.state.remember(work, &form.filled);
                desk.out.push(Command::Do(Box::new(operation)));
            }
            Err(problem) => form.problem = Some(problem),
        }
    }
    if close {
        desk.state.number_box = None;
    }
    desk.state.form = (!close).then_some(form);
}

/// The buttons of a form.
fn faces(work: &Work) -> [ButtonFace; 2] {
    [
        ButtonFace::new(verb(work), say!("window-cap-enter"), Rank::Next),
        ButtonFace::new(say!("board-cancel"), say!("window-cap-escape"), Rank::Plain),
    ]
}

/// Rows that buttons and time take at the foot of a form.
fn foot_rows(ui: &Ui, ink: &Ink, work: &Work, units: Units) -> f32 {
    let time = Amount::Minutes.text(work.minutes, units);
    let time = ui.painter().layout_no_wrap(time, ink.small(), ink.color(|t| t.text));
    let mut widths: Vec<f32> = faces(work).iter().map(|face| face.size(ui, ink).x).collect();
    widths.extend((work.minutes > 0.0).then_some(time.size().x));
    widget::rows_of_widths(ui, &widths, ui.spacing().item_spacing.x).len() as f32
}

/// The fields and what is ticked before the work is done; where the keyboard begins, and whether Enter ended a line.
fn fields(
    ui: &mut Ui,
    ink: &Ink,
    units: Units,
    id: egui::Id,
    work: &Work,
    form: &mut Form,
) -> (Option<egui::Id>, bool) {
    let mut done = false;
    // Room for the outline of the keyboard.
    ui.add_space(4.0);
    for (index, (field, entry)) in work.fields.iter().zip(&mut form.filled.entries).enumerate() {
        done |= field_row(ui, ink, units, id.with(index), field, entry);
    }
    for (index, (hazard, ticked)) in work.hazards.iter().zip(&mut form.filled.precautions).enumerate() {
        // A precaution that meets two hazards is ticked once.
        let first = work.hazards.iter().position(|h| h.precaution == hazard.precaution) == Some(index);
        if first && widget::tick(ui, ink, id.with(("met", index)), &hazard.precaution, *ticked) {
            *ticked = !*ticked;
        }
    }
    (where_to_begin(work, id), done)
}

/// The first field that takes a number.
fn number_field(work: &Work) -> Option<usize> {
    work.fields
        .iter()
        .position(|field| matches!(field.kind, FieldKind::Number { .. }))
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
            let shown = options
                .get(*chosen)
                .map(|option| option.text(units))
                .unwrap_or_default();
            // A long choice has a line of its own.
            let room = widget::text_size(ui, &shown, ink.body()).x + ink.scaled(40.0);
            let layout = if room > ui.available_width() - name_width(ui, ink) - ink.space(12.0) {
                egui::Layout::top_down(egui::Align::Min)
            } else {
                egui::Layout::left_to_right(egui::Align::Center)
            };
            ui.allocate_ui_with_layout(egui::vec2(ui.available_width(), 0.0), layout, |ui| {
                name(ui, ink, &field.name);
                let width = ui.available_width() - ink.space(4.0);
                if let [only] = options.as_slice() {
                    widget::words(ui, &only.text(units), ink.body(), text);
                    return;
                }
                let mut chosen_by_key = false;
                let response = ComboBox::from_id_salt(id)
                    .width(width)
                    .wrap()
                    .selected_text(shown.clone())
                    .show_ui(ui, |ui| chosen_by_key = choices(ui, ink, units, options, chosen))
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
fn choices(ui: &mut Ui, ink: &Ink, units: Units, options: &[OptionName], chosen: &mut usize) -> bool {
    let mut keyboard_on_line = false;
    let mut chosen_by_key = false;
    for (index, option) in options.iter().enumerate() {
        let color = if index == *chosen {
            ink.color(|t| t.on_accent)
        } else {
            ink.color(|t| t.text)
        };
        let line = ui.selectable_value(chosen, index, egui::RichText::new(option.text(units)).color(color));
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

/// Width of the names of fields.
fn name_width(ui: &Ui, ink: &Ink) -> f32 {
    ink.scaled(116.0).min(0.45 * ui.max_rect().width())
}

fn name(ui: &mut Ui, ink: &Ink, words: &str) {
    let width = name_width(ui, ink);
    let galley = ui
        .painter()
        .layout(words.to_owned(), ink.body(), ink.color(|t| t.text), width);
    let height = galley.size().y.max(ink.scaled(28.0));
    let (rect, _) = ui.allocate_exact_size(egui::vec2(width, height), egui::Sense::hover());
    let at = egui::pos2(rect.left(), rect.center().y - galley.size().y / 2.0);
    ui.painter().galley(at, galley, ink.color(|t| t.text));
}
