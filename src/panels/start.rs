//! The start page: own unfinished attempts at the left, exercises by step in the middle, the chosen one at the right.

use egui::{Id, ScrollArea, Ui, Vec2, vec2};

use super::dock::{Dock, Edge, inside};
use super::page::Page;
use super::theme::Ink;
use super::widget::{self, ButtonFace, Rank, Row};
use crate::quantity::number;
use crate::view::bench::{ExerciseLine, KeptLine};
use crate::view::{Command, Place, safety_note};
use crate::words::say;

/// Draws the page.
pub(super) fn start_panel(ui: &mut Ui, page: &mut Page<'_>) {
    let view = page.view;
    let ink = page.ink;
    let area = ui.available_rect_before_wrap();
    ui.painter().rect_filled(area, 0.0, ink.color(|t| t.panel));
    let margin = vec2(ink.space(16.0), ink.space(12.0));
    let thin = ink.line(1.0, |t| t.line);
    let width = area.width();
    // Another exercise is read from its top.
    let of_chosen = ("chosen", view.start.chosen);
    if ink.large() || width < ink.scaled(1000.0) {
        // The list beside everything else, which scrolls.
        let list = Dock::new("exercises", Edge::Left, 0.48 * width, [0.3 * width, 0.7 * width])
            .margin(margin)
            .place(ui, page);
        list.show(ui, |ui| exercises(ui, page));
        let rest = ui.available_rect_before_wrap();
        inside(ui, "rest", rest, margin, |ui| {
            ScrollArea::vertical()
                .id_salt(of_chosen)
                .auto_shrink([false, false])
                .show(ui, |ui| {
                    chosen(ui, page);
                    ui.add_space(ink.space(12.0));
                    own(ui, page);
                });
        });
        ui.painter().vline(list.rect.right(), list.rect.y_range(), thin);
        return;
    }
    let (left, right) = (ink.space(264.0), (0.3 * width).max(ink.space(360.0)));
    let left = Dock::new("own-attempts", Edge::Left, left, [ink.space(200.0), 0.3 * width])
        .margin(margin)
        .place(ui, page);
    let right = Dock::new("chosen-exercise", Edge::Right, right, [ink.space(280.0), 0.45 * width])
        .margin(margin)
        .place(ui, page);
    let middle = ui.available_rect_before_wrap();
    left.show(ui, |ui| own(ui, page));
    inside(ui, "exercises", middle, margin, |ui| exercises(ui, page));
    right.show(ui, |ui| {
        ScrollArea::vertical()
            .id_salt(of_chosen)
            .auto_shrink([false, false])
            .show(ui, |ui| chosen(ui, page));
    });
    ui.painter().vline(left.rect.right(), left.rect.y_range(), thin);
    ui.painter().vline(right.rect.left(), right.rect.y_range(), thin);
}

fn face(label: String, rank: Rank) -> ButtonFace {
    ButtonFace::plain(label, rank)
}

/// Own attempts and the other places.
fn own(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    let start = &view.start;
    ui.spacing_mut().item_spacing.y = ink.space(4.0);
    widget::words(ui, &say!("start-attempts"), ink.zone_title(), text);
    if view.bench.is_some_and(|board| !board.finished)
        && widget::button(ui, ink, &face(say!("start-back-to-bench"), Rank::Next)).clicked()
    {
        page.out.push(Command::GoTo(Place::Bench));
    }
    let mut go = Vec::new();
    if start.kept.is_empty() {
        widget::words(ui, &say!("start-none-kept"), ink.body(), muted);
    }
    let height = (ui.available_height() - ink.scaled(190.0)).max(ink.scaled(160.0));
    let lists = ui.id();
    ScrollArea::vertical()
        .id_salt("kept")
        .max_height(height)
        .auto_shrink([false, true])
        .show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            if !start.kept.is_empty() {
                widget::words(ui, &say!("start-go-on"), ink.body(), text);
                let second = |kept: &KeptLine| say!("start-kept-operations", count = kept.operations);
                if let Some(index) = attempts(ui, ink, lists.with("kept"), start.kept, second) {
                    go.push(Command::GoOn(index));
                }
            }
            if !start.finished.is_empty() {
                ui.add_space(ink.space(8.0));
                widget::words(ui, &say!("start-finished"), ink.body(), text);
                let second = |kept: &KeptLine| {
                    kept.points.map_or_else(
                        || say!("start-finished-no-points"),
                        |points| say!("start-finished-points", points = number(points, 0)),
                    )
                };
                if let Some(index) = attempts(ui, ink, lists.with("finished"), start.finished, second) {
                    go.push(Command::OpenFinished(index));
                }
            }
        });
    if !start.busy {
        page.out.append(&mut go);
    }
    ui.add_space(ink.space(8.0));
    widget::words(ui, &say!("start-look-around"), ink.section(), text);
    ui.horizontal_wrapped(|ui| {
        let places = [
            (say!("start-open-gears"), Place::Gears),
            (say!("start-open-tooth-room"), Place::ToothRoom),
        ];
        for (label, place) in places {
            if widget::button(ui, ink, &face(label, Rank::Plain)).clicked() {
                page.out.push(Command::GoTo(place));
            }
        }
    });
    ui.add_space(ink.space(8.0));
    widget::words(ui, start.kept_in, ink.small(), muted);
    if !start.saved_in.is_empty() {
        widget::words(ui, start.saved_in, ink.small(), muted);
    }
    widget::words(ui, &safety_note(), ink.small(), text);
}

/// The attempts of a list, the newest first; answers which was pressed.
fn attempts(
    ui: &mut Ui,
    ink: &Ink,
    list: Id,
    attempts: &[KeptLine],
    second: impl Fn(&KeptLine) -> String,
) -> Option<usize> {
    let mut pressed = None;
    // The newest stand last.
    for (index, kept) in attempts.iter().enumerate().rev() {
        let title = say!(
            "start-kept-title",
            title = kept.title.as_str(),
            seed = kept.seed.to_string()
        );
        let row = Row {
            title: &title,
            second: &second(kept),
            chosen: false,
        };
        if widget::list_row(ui, ink, list.with(index), &row).clicked() {
            pressed = Some(index);
        }
    }
    pressed
}

/// All exercises, by step.
fn exercises(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    let start = &view.start;
    widget::words(ui, &say!("start-exercises"), ink.zone_title(), text);
    if start.exercises.is_empty() {
        widget::words(ui, &say!("start-no-exercise"), ink.body(), muted);
        return;
    }
    let list = ui.id().with("exercises");
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        let mut step = 0;
        for (index, exercise) in start.exercises.iter().enumerate() {
            if exercise.step != step {
                step = exercise.step;
                ui.add_space(ink.space(8.0));
                widget::words(ui, &step_words(step), ink.section(), text);
            }
            let second = say!(
                "start-exercise-second",
                aim = exercise.aims.first().map_or("", |aim| aim.trim_end_matches('.')),
                best = own_best(exercise),
            );
            let row = Row {
                title: &exercise.title,
                second: &second,
                chosen: start.chosen == index,
            };
            let response = widget::list_row(ui, ink, list.with(index), &row);
            if response.double_clicked() && !start.busy {
                page.out.extend([Command::ChooseExercise(index), Command::Begin]);
            } else if response.clicked() {
                page.out.push(Command::ChooseExercise(index));
            }
            if response.gained_focus() {
                response.scroll_to_me(None);
            }
        }
    });
}

fn step_words(step: u32) -> String {
    match step {
        1 => say!("start-step-1"),
        2 => say!("start-step-2"),
        3 => say!("start-step-3"),
        _ => say!("start-step-4"),
    }
}

fn own_best(exercise: &ExerciseLine) -> String {
    exercise.best.map_or_else(
        || say!("start-done", count = exercise.finished),
        |best| say!("start-best", points = number(best, 0)),
    )
}

/// The chosen exercise with its button.
fn chosen(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    let start = &view.start;
    let Some(exercise) = start.exercises.get(start.chosen) else {
        return;
    };
    ui.spacing_mut().item_spacing.y = ink.space(4.0);
    widget::words(ui, &exercise.title, ink.page_title(), text);
    widget::words(ui, &exercise.layout_words(), ink.body(), muted);
    ui.add_space(ink.space(6.0));
    ui.horizontal_wrapped(|ui| {
        widget::words(ui, &say!("start-axle"), ink.body(), text);
        let fewer = ui.add_enabled_ui(start.seed > 1, |ui| {
            widget::sign(ui, ink, &say!("start-axle-lower"), "\u{2212}")
        });
        if fewer.inner.clicked() {
            page.out.push(Command::ChooseSeed(start.seed - 1));
        }
        widget::words(ui, &start.seed.to_string(), ink.section(), text);
        if widget::sign(ui, ink, &say!("start-axle-higher"), "+").clicked() {
            page.out.push(Command::ChooseSeed(start.seed + 1));
        }
    });
    widget::words(ui, &say!("start-axle-help"), ink.small(), muted);
    ui.add_space(ink.space(4.0));
    let label = if start.busy {
        say!("start-loading")
    } else {
        say!("start-begin")
    };
    let begin = ui.add_enabled_ui(!start.busy, |ui| widget::button(ui, ink, &face(label, Rank::Next)));
    if begin.inner.clicked() && !start.busy {
        page.out.push(Command::Begin);
    }
    if let Some(said) = start.said {
        widget::words(ui, said, ink.body(), ink.color(|t| t.off));
    }
    ui.add_space(ink.space(8.0));
    section(ui, ink, &say!("start-learn"));
    for aim in &exercise.aims {
        bullet(ui, ink, aim);
    }
    ui.add_space(ink.space(8.0));
    section(ui, ink, &say!("start-job"));
    widget::words(ui, &exercise.told, ink.body(), text);
    ui.add_space(ink.space(8.0));
    widget::words(ui, &own_best(exercise), ink.body(), muted);
}

fn section(ui: &mut Ui, ink: &Ink, title: &str) {
    let response = widget::words(ui, title, ink.section(), ink.color(|t| t.text));
    let rect = response.rect;
    let right = ui.max_rect().right();
    ui.painter()
        .hline(rect.left()..=right, rect.bottom() + 2.0, ink.line(1.0, |t| t.line));
    ui.add_space(ink.space(2.0));
}

/// A dash with its sentence, which hangs.
fn bullet(ui: &mut Ui, ink: &Ink, sentence: &str) {
    let text = ink.color(|t| t.text);
    let indent = ink.space(14.0);
    let galley = ui
        .painter()
        .layout(sentence.to_owned(), ink.body(), text, ui.available_width() - indent);
    let size = Vec2::new(ui.available_width(), galley.size().y);
    let (rect, response) = ui.allocate_exact_size(size, egui::Sense::hover());
    response.widget_info(|| egui::WidgetInfo::labeled(egui::WidgetType::Label, true, sentence));
    let first = galley.rows.first().map_or(ink.scaled(18.0), |row| row.height());
    ui.painter().hline(
        rect.left()..=rect.left() + 0.55 * indent,
        rect.top() + 0.5 * first,
        ink.line(1.4, |t| t.text),
    );
    ui.painter().galley(rect.min + vec2(indent, 0.0), galley, text);
}
