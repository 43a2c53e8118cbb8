//! The stage as egui sees it: who owns pointer and keys, where from, and what can be done. The gears themselves are
//! drawn by whoever draws the stage; this only says what is asked of it.

use egui::{
    Align, EventFilter, Key, Layout, PointerButton, Rect, Response, Sense, StrokeKind, Ui, UiBuilder, WidgetInfo,
    WidgetType, vec2,
};

use super::key;
use super::page::Page;
use super::theme::Ink;
use super::widget::{self, ButtonFace, Cell, Rank};
use crate::quantity::{number, radians};
use crate::view::{Action, Command, Keys, Place, Projection, Turn, Viewpoint, WindowView};
use crate::words::say;

/// Degrees of orbit for a point of drag.
const DEGREES_A_POINT: f64 = 0.35;
/// Degrees of orbit for an arrow key.
const DEGREES_A_KEY: f64 = 5.0;
/// Share of the height that an arrow key with shift moves.
const SHARE_A_KEY: f64 = 0.05;
/// Points of scrolling in a notch of the wheel.
const POINTS_A_NOTCH: f64 = 40.0;
/// Points of drag by which the gears are turned by a tooth, and teeth for a notch of the wheel.
const POINTS_A_TOOTH: f64 = 60.0;
const TEETH_A_NOTCH: f64 = 0.25;

/// Drag goes round, drag with the right or middle button or with shift shifts, the wheel zooms; with Ctrl, drag and wheel turn
/// the gears. Keys act when the
/// keyboard is on the stage or nowhere, so that they are quiet while anything else has it.
pub(super) fn stage_panel(ui: &mut Ui, page: &mut Page<'_>, rect: Rect) -> Response {
    let view = page.view;
    let ink = page.ink;
    let response = ui.interact(rect, ui.id().with("stage"), Sense::click_and_drag());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Image, true, say!("stage-name")));
    pointer(ui, page, rect, &response);
    if view.place == Place::Bench {
        point(ui, page, rect, &response);
    }
    let focused = ui.memory(egui::Memory::focused);
    if focused.is_none() || focused == Some(response.id) {
        keys(ui, page);
    }
    if response.has_focus() {
        let arrows = EventFilter {
            vertical_arrows: true,
            horizontal_arrows: true,
            ..EventFilter::default()
        };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, arrows));
        widget::focus_outline(ui, ink, &response, rect.shrink(5.0));
    }
    response
}

fn pointer(ui: &Ui, page: &mut Page<'_>, rect: Rect, response: &Response) {
    let view = page.view;
    let (shifted, turns) = ui.input(|input| (input.modifiers.shift, input.modifiers.command));
    let there = view.stage.missing.is_none();
    let delta = response.drag_delta();
    if delta != egui::Vec2::ZERO {
        let aside = response.dragged_by(PointerButton::Secondary) || response.dragged_by(PointerButton::Middle);
        if turns {
            // To the right or down is on.
            let teeth = f64::from(delta.x + delta.y) / POINTS_A_TOOTH;
            page.out.extend(there.then_some(Command::TurnBy(teeth)));
        } else if aside || shifted {
            let height = f64::from(rect.height().max(1.0));
            page.out.push(Command::Pan {
                right: f64::from(delta.x) / height,
                up: -f64::from(delta.y) / height,
            });
        } else {
            // The gears follow the hand: the eye goes the other way.
            page.out.push(Command::Orbit {
                azimuth_rad: radians(-f64::from(delta.x) * DEGREES_A_POINT),
                elevation_rad: radians(f64::from(delta.y) * DEGREES_A_POINT),
            });
        }
    }
    if response.contains_pointer() {
        let (scrolled, pinched) = ui.input(|input| (input.smooth_scroll_delta().y, input.zoom_delta()));
        let notches = f64::from(scrolled) / POINTS_A_NOTCH + (f64::from(pinched) - 1.0) * 12.0;
        if notches != 0.0 && turns {
            page.out
                .extend(there.then_some(Command::TurnBy(TEETH_A_NOTCH * notches)));
        } else if notches != 0.0 {
            page.out.push(Command::Zoom(notches));
        }
    }
}

/// Which part is pointed at: its name beside the pointer; a click shows its work.
fn point(ui: &Ui, page: &mut Page<'_>, rect: Rect, response: &Response) {
    let (ink, view) = (page.ink, page.view);
    let place = |at: egui::Pos2| {
        let from = at - rect.center();
        let height = f64::from(rect.height().max(1.0));
        [f64::from(from.x) / height, -f64::from(from.y) / height]
    };
    let at = response.hover_pos().filter(|_| !response.dragged());
    // Asked only when the pointer has gone somewhere else, so that a window at rest stays at rest.
    let key = ui.id().with("pointed");
    let before = ui.data(|data| data.get_temp::<Option<egui::Pos2>>(key)).flatten();
    if at != before {
        ui.data_mut(|data| data.insert_temp(key, at));
        page.out.push(Command::PointAt(at.map(place)));
    }
    if response.clicked()
        && let Some(at) = response.interact_pointer_pos()
    {
        page.out.push(Command::PickAt(place(at)));
    }
    if let (Some(at), Some(part), Some(board)) = (at, view.desk.pointed, view.bench) {
        let words = part.label(board.laid.layout, board.laid.depth_shim);
        let text = ink.color(|t| t.text);
        let galley = ui.painter().layout_no_wrap(words, ink.section(), text);
        let pad = vec2(ink.space(8.0), ink.space(4.0));
        let size = galley.size() + 2.0 * pad;
        // Beside the pointer, and never over the edge.
        let corner = (at + vec2(ink.scaled(16.0), ink.scaled(14.0)))
            .min(rect.max - size)
            .max(rect.min);
        let frame = Rect::from_min_size(corner, size);
        ui.painter().rect(
            frame,
            0.0,
            ink.color(|t| t.inset),
            ink.line(1.0, |t| t.line),
            StrokeKind::Inside,
        );
        ui.painter().galley(corner + pad, galley, text);
    }
}

fn keys(ui: &Ui, page: &mut Page<'_>) {
    let view = page.view;
    let shift = ui.input(|input| input.modifiers.shift);
    let pressed = key::pressed(ui, view);
    page.out
        .extend(pressed.into_iter().filter_map(|key| command_of_key(key, shift, view)));
}

/// What a key asks for at the stage.
fn command_of_key(key: Key, shift: bool, view: &WindowView<'_>) -> Option<Command> {
    let arrow = |x: f64, y: f64| {
        if shift {
            Command::Pan {
                right: x * SHARE_A_KEY,
                up: y * SHARE_A_KEY,
            }
        } else {
            Command::Orbit {
                azimuth_rad: radians(x * DEGREES_A_KEY),
                elevation_rad: radians(y * DEGREES_A_KEY),
            }
        }
    };
    Some(match key {
        Key::ArrowLeft => arrow(-1.0, 0.0),
        Key::ArrowRight => arrow(1.0, 0.0),
        Key::ArrowUp => arrow(0.0, 1.0),
        Key::ArrowDown => arrow(0.0, -1.0),
        _ => return command_of_action(key::action(key, view)?, view),
    })
}

fn command_of_action(action: Action, view: &WindowView<'_>) -> Option<Command> {
    let there = view.stage.missing.is_none();
    Some(match action {
        Action::LookFrom(viewpoint) => Command::LookFrom(viewpoint),
        Action::Flat => Command::SetProjection(other_projection(view.stage.projection)),
        Action::Nearer => Command::Zoom(1.0),
        Action::Farther => Command::Zoom(-1.0),
        Action::ToothRoom => Command::GoTo(Place::ToothRoom),
        Action::Turn if there => Command::SetTurning(!view.stage.turning),
        Action::Rock if there => Command::SetRocking(!view.stage.rocking),
        Action::ToothOn if there => Command::TurnTeeth(1),
        Action::ToothBack if there => Command::TurnTeeth(-1),
        _ => return None,
    })
}

fn other_projection(projection: Projection) -> Projection {
    match projection {
        Projection::Perspective => Projection::Flat,
        Projection::Flat => Projection::Perspective,
    }
}

/// What the stage says over the picture: where from, what is drawn, and the buttons for it.
pub(super) fn stage_captions_panel(ui: &mut Ui, page: &mut Page<'_>, rect: Rect) {
    let view = page.view;
    let ink = page.ink;
    let inside = rect.shrink2(vec2(ink.space(12.0), ink.space(10.0)));
    let gap = ui.spacing().item_spacing.x;
    let flat_width = widget::segments_width(ui, ink, &[say!("stage-flat")]);
    let together = !ink.large() && all_views_width(ui, ink) + gap + flat_width <= inside.width();
    let views = if together {
        all_views_width(ui, ink)
    } else {
        widget::segments_width(ui, ink, &[one_view_word(view.stage.viewpoint)])
    };
    // From left to right, at the right edge.
    let left = (inside.right() - views - gap - flat_width).max(inside.left());
    let builder = UiBuilder::new()
        .id_salt("views")
        .max_rect(inside.with_min_x(left))
        .layout(Layout::left_to_right(Align::Min));
    let buttons = ui
        .scope_builder(builder, |ui| {
            viewpoints(ui, page, together);
            let flat = view.stage.projection == Projection::Flat;
            let response = widget::lone_cell(
                ui,
                ink,
                "projection",
                [&say!("stage-projection"), &say!("stage-flat")],
                flat,
            );
            if response
                .on_hover_text(key::hint(say!("stage-flat-help"), view.keys, Action::Flat))
                .clicked()
            {
                page.out
                    .push(Command::SetProjection(other_projection(view.stage.projection)));
            }
        })
        .response
        .rect;
    let (title, second) = match view.stage.missing {
        Some(why) => (say!("stage-caption-nothing"), why.to_owned()),
        None => (
            view.stage
                .viewpoint
                .map_or_else(|| say!("stage-caption-by-hand"), Viewpoint::caption),
            what_is_drawn(view),
        ),
    };
    // A low stage is for the axle; how thick shims are drawn is said below all the same.
    let low = view.place == Place::Bench && rect.height() < ink.scaled(420.0);
    let foot = if view.place == Place::Bench {
        bench_cells(ui, page, inside)
    } else {
        inside.bottom()
    };
    title_block(ui, ink, inside.with_max_y(foot), buttons, [&title, &second], low);
}

fn all_views_width(ui: &Ui, ink: &Ink) -> f32 {
    widget::segments_width(ui, ink, &Viewpoint::ALL.map(Viewpoint::label))
}

/// What stands on the one cell that goes from each place to the next.
fn one_view_word(now: Option<Viewpoint>) -> String {
    now.map_or_else(|| say!("stage-view-by-hand"), Viewpoint::label)
}

/// The named places to look from, side by side; with large text or little room one cell that goes from each to the next.
fn viewpoints(ui: &mut Ui, page: &mut Page<'_>, together: bool) {
    let (ink, view) = (page.ink, page.view);
    let now = view.stage.viewpoint;
    if !together {
        let next = now.map_or(Viewpoint::default(), Viewpoint::next);
        let word = one_view_word(now);
        let hint = say!("stage-view-next", view = next.caption());
        if widget::lone_cell(ui, ink, "view", [&say!("stage-view"), &word], true)
            .on_hover_text(hint)
            .clicked()
        {
            page.out.push(Command::LookFrom(next));
        }
        return;
    }
    let hint = |of| key::hint(what_is_seen(of), view.keys, Action::LookFrom(of));
    let views = Viewpoint::ALL.map(|viewpoint| Cell {
        label: viewpoint.label(),
        value: viewpoint,
        hint: hint(viewpoint),
    });
    if let Some(viewpoint) = widget::segments(ui, ink, "view", &say!("stage-view"), &views, now) {
        page.out.push(Command::LookFrom(viewpoint));
    }
}

/// What moves on the bench, and how thick shims are drawn: cells at the foot of the stage.
///
/// They stand in as many rows as they need, as wide as their longest words, so that none moves when another is pressed.
/// Answers where they begin.
fn bench_cells(ui: &mut Ui, page: &mut Page<'_>, inside: Rect) -> f32 {
    let (ink, view) = (page.ink, page.view);
    let cells = cells_of_the_bench(view);
    let sizes: Vec<egui::Vec2> = cells
        .iter()
        .map(|cell| widget::cell_size_of(ui, ink, &cell.words, inside.width()))
        .collect();
    let widths: Vec<f32> = sizes.iter().map(|size| size.x).collect();
    let gap = ui.spacing().item_spacing.x;
    let height = sizes.iter().fold(ink.scaled(28.0), |height, size| height.max(size.y));
    let rows = widget::rows_in(inside.width(), &widths, gap);
    let step = height + ink.space(4.0);
    let top = inside.bottom() - step * rows.len() as f32 + ink.space(4.0);
    let mut rest = cells.into_iter().zip(widths);
    for (row, count) in rows.into_iter().enumerate() {
        let mut left = inside.left();
        for (cell, width) in rest.by_ref().take(count) {
            let place = egui::pos2(left, top + step * row as f32);
            let rect = Rect::from_min_size(place, vec2(width, height));
            left += width + gap;
            let word = &cell.words[usize::from(cell.on && cell.words.len() > 1)];
            let response = widget::cell_at(ui, ink, cell.key, [&cell.what, word], rect, cell.on);
            if response.on_hover_text(cell.hint).clicked() {
                page.out.push(cell.command);
            }
        }
    }
    top
}

/// A cell at the foot of the stage: what it is of, its word, and its word while it is on.
struct BenchCell {
    key: &'static str,
    what: String,
    words: Vec<String>,
    on: bool,
    hint: String,
    command: Command,
}

fn cells_of_the_bench(view: &WindowView<'_>) -> [BenchCell; 3] {
    let stage = &view.stage;
    let thick = view.desk.shims_times > 1;
    [
        BenchCell {
            key: "pinion",
            what: say!("stage-pinion"),
            words: vec![say!("stage-turn"), say!("stage-stop")],
            on: stage.turning,
            hint: key::hint(say!("stage-turn-help"), view.keys, Action::Turn),
            command: Command::SetTurning(!stage.turning),
        },
        BenchCell {
            key: "ring-gear",
            what: say!("stage-ring-gear"),
            words: vec![say!("stage-rock"), say!("stage-stop-rocking")],
            on: stage.rocking,
            hint: key::hint(say!("stage-rock-help"), view.keys, Action::Rock),
            command: Command::SetRocking(!stage.rocking),
        },
        BenchCell {
            key: "shims",
            what: say!("stage-shims"),
            words: vec![say!("stage-shims-thick")],
            on: thick,
            hint: say!("stage-shims-help"),
            command: Command::SetShimsTimes(if thick { 1 } else { 10 }),
        },
    ]
}

/// What the picture shows and what it does not.
fn what_is_drawn(view: &WindowView<'_>) -> String {
    if view.place != Place::Bench {
        return say!("stage-drawn");
    }
    if view.desk.shims_times > 1 {
        say!("stage-drawn-bench-thick")
    } else {
        say!("stage-drawn-bench")
    }
}

/// What the tooltip of a view says.
fn what_is_seen(viewpoint: Viewpoint) -> String {
    match viewpoint {
        Viewpoint::Corner => say!("stage-seen-corner"),
        Viewpoint::Pinion => say!("stage-seen-pinion"),
        Viewpoint::RingGear => say!("stage-seen-ring-gear"),
        Viewpoint::Above => say!("stage-seen-above"),
        Viewpoint::Mesh => say!("stage-seen-mesh"),
        Viewpoint::Drive => say!("stage-seen-drive"),
        Viewpoint::Coast => say!("stage-seen-coast"),
    }
}

/// What the picture is, in a frame as on a drawing, so that it can be read whatever lies behind it. With large text
/// the second rank gives way to the picture and is said when the pointer rests on the first.
///
/// It stands in the upper left corner, and below the buttons where there is no room beside them.
fn title_block(ui: &mut Ui, ink: &Ink, zone: Rect, buttons: Rect, [title, second]: [&str; 2], first_only: bool) {
    let text = ink.color(|t| t.text);
    let wrap = ink.scaled(236.0);
    let first = ui.painter().layout(title.to_owned(), ink.section(), text, wrap);
    let below = (!ink.large() && !first_only).then(|| ui.painter().layout(second.to_owned(), ink.small(), text, wrap));
    let pad = vec2(ink.space(8.0), ink.space(6.0));
    let below_size = below.as_ref().map_or(egui::Vec2::ZERO, |galley| galley.size());
    let size = vec2(first.size().x.max(below_size.x), first.size().y + below_size.y) + 2.0 * pad;
    let corner = zone.min;
    let beside = corner.x + size.x + ink.space(8.0) <= buttons.left();
    let top = if beside {
        corner.y
    } else {
        buttons.bottom() + ink.space(6.0)
    };
    let rect = Rect::from_min_size(egui::pos2(corner.x, top), size);
    // A stage that has no room for it says it by its buttons.
    if rect.bottom() > zone.bottom() || rect.right() > zone.right() + 1.0 {
        return;
    }
    let response = ui.interact(rect, ui.id().with("title-block"), Sense::hover());
    response.widget_info(|| {
        let said = say!("stage-caption-said", title = title, second = second);
        WidgetInfo::labeled(WidgetType::Label, true, said)
    });
    ui.painter().rect(
        rect,
        0.0,
        ink.color(|t| t.panel),
        ink.line(1.0, |t| t.line),
        StrokeKind::Inside,
    );
    let below_top = rect.min + pad + vec2(0.0, first.size().y);
    ui.painter().galley(rect.min + pad, first, text);
    if let Some(below) = below {
        ui.painter().galley(below_top, below, text);
    } else {
        response.on_hover_text(second);
    }
}

/// What can be done, and how far the pair has been turned.
pub(super) fn turning_panel(ui: &mut Ui, page: &mut Page<'_>) {
    let view = page.view;
    let ink = page.ink;
    let stage = &view.stage;
    ui.add_enabled_ui(stage.missing.is_none(), |ui| {
        let buttons = |ui: &mut Ui, page: &mut Page<'_>| {
            for (face, command) in work_buttons(view.keys, motion(view)) {
                if widget::button(ui, ink, &face).clicked() {
                    page.out.push(command);
                }
            }
        };
        let (_, readout_below) = work_rows(ui, ink, view.keys, ui.available_width());
        if readout_below {
            ui.add_space(ink.space(8.0));
            ui.horizontal_wrapped(|ui| buttons(ui, page));
            readout(ui, ink, &stage.turn);
        } else {
            ui.horizontal_centered(|ui| {
                buttons(ui, page);
                ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                    readout(ui, ink, &stage.turn);
                    hand_hint(ui, ink);
                });
            });
        }
    });
}

/// How the stage is turned by hand, in the room that is left; where there is none, it is left out.
fn hand_hint(ui: &mut Ui, ink: &Ink) {
    let hint = [say!("stage-hand-help"), say!("stage-hand-help-gears")].join("\n");
    let galley = ui.painter().layout_no_wrap(hint, ink.small(), ink.color(|t| t.muted));
    if galley.size().x + ink.space(24.0) <= ui.available_width() {
        ui.add_space(ink.space(12.0));
        ui.add(egui::Label::new(galley));
    }
}

/// What moves by itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Motion {
    Rest,
    Turning,
    Rocking,
}

fn motion(view: &WindowView<'_>) -> Motion {
    match (view.stage.turning, view.stage.rocking) {
        (true, _) => Motion::Turning,
        (false, true) => Motion::Rocking,
        (false, false) => Motion::Rest,
    }
}

/// What can be done at the stage, in the order of the work line.
fn work_buttons(keys: &Keys, motion: Motion) -> [(ButtonFace, Command); 4] {
    let (turning, rocking) = (motion == Motion::Turning, motion == Motion::Rocking);
    let (label, rank) = if turning {
        (say!("stage-stop"), Rank::Plain)
    } else {
        (say!("stage-turn-pinion"), Rank::Next)
    };
    let plain = |label, action| ButtonFace::new(label, key::cap(keys, action), Rank::Plain);
    [
        (
            ButtonFace {
                label,
                longest: say!("stage-turn-pinion"),
                key: key::cap(keys, Action::Turn),
                rank,
            },
            Command::SetTurning(!turning),
        ),
        (
            ButtonFace {
                label: if rocking {
                    say!("stage-stop-rocking")
                } else {
                    say!("stage-rock-ring-gear")
                },
                longest: say!("stage-rock-ring-gear"),
                key: key::cap(keys, Action::Rock),
                rank: Rank::Plain,
            },
            Command::SetRocking(!rocking),
        ),
        (
            plain(say!("stage-tooth-back"), Action::ToothBack),
            Command::TurnTeeth(-1),
        ),
        (plain(say!("stage-tooth-on"), Action::ToothOn), Command::TurnTeeth(1)),
    ]
}

/// Both gears, one line each; the lines begin at the same place, so that turns stand over turns.
fn readout(ui: &mut Ui, ink: &Ink, turn: &Turn) {
    let (pinion_turns, pinion_teeth) = turn.pinion_turns_and_teeth();
    let (wheel_turns, wheel_teeth) = turn.wheel_turns_and_teeth();
    let lines = [
        turned(say!("stage-pinion"), pinion_turns, pinion_teeth),
        turned(say!("stage-ring-gear"), wheel_turns, wheel_teeth),
    ];
    let text = ink.color(|t| t.text);
    let galleys = lines
        .clone()
        .map(|line| ui.painter().layout_no_wrap(line, ink.body(), text));
    let width = galleys
        .iter()
        .fold(ink.scaled(READOUT), |widest, galley| widest.max(galley.size().x));
    let height = galleys.iter().map(|galley| galley.size().y).sum();
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Label, true, lines.join(", ")));
    let mut top = rect.top();
    for galley in galleys {
        let below = top + galley.size().y;
        ui.painter().galley(egui::pos2(rect.left(), top), galley, text);
        top = below;
    }
}

fn turned(gear: String, turns: i64, teeth: i64) -> String {
    say!(
        "stage-turned",
        gear = gear,
        turns = say!("stage-turns", count = turns, number = number(turns as f64, 0)),
        teeth = say!("stage-teeth", count = teeth, number = number(teeth as f64, 0)),
    )
}

/// Rows of buttons in the work line at this width, and whether the readout stands below them instead of beside.
fn work_rows(ui: &Ui, ink: &Ink, keys: &Keys, width: f32) -> (f32, bool) {
    let gap = ui.spacing().item_spacing.x;
    let (mut rows, mut used) = (1.0, 0.0);
    for (face, _) in work_buttons(keys, Motion::Rest) {
        let button = face.size(ui, ink).x;
        if used > 0.0 && used + button > width {
            rows += 1.0;
            used = 0.0;
        }
        used += button + gap;
    }
    let below = ink.large() || rows > 1.0 || used + ink.scaled(READOUT) > width;
    (rows, below)
}

/// Width kept for the readout, points at 100 %.
const READOUT: f32 = 220.0;

/// Height that [`turning_panel`] needs at this width, points.
pub(super) fn turning_height(ui: &Ui, ink: &Ink, keys: &Keys, width: f32) -> f32 {
    match work_rows(ui, ink, keys, width) {
        (_, false) => ink.scaled(48.0),
        (rows, true) => {
            let button = work_buttons(keys, Motion::Rest)[0].0.size(ui, ink).y;
            let readout = 2.0 * ink.scaled(18.0);
            (rows * (button + ui.spacing().item_spacing.y) + readout + 2.0 * ink.space(8.0)).ceil()
        }
    }
}
