//! The stage as egui sees it: who owns pointer and keys, where from, and what can be done. The gears themselves are
//! drawn by whoever draws the stage; this only says what is asked of it.

use egui::{
    Align, EventFilter, Key, Layout, PointerButton, Rect, Response, Sense, Ui, UiBuilder, WidgetInfo, WidgetType, vec2,
};

use super::theme::Ink;
use super::widget::{self, Rank};
use crate::quantity::radians;
use crate::view::{Command, Projection, Turn, Viewpoint, WindowView};

/// Degrees of orbit for a point of drag.
const DEGREES_A_POINT: f64 = 0.35;
/// Degrees of orbit for an arrow key.
const DEGREES_A_KEY: f64 = 5.0;
/// Share of the height that an arrow key with shift moves.
const SHARE_A_KEY: f64 = 0.05;
/// Points of scrolling in a notch of the wheel.
const POINTS_A_NOTCH: f64 = 40.0;

/// Drag goes round, drag with the right or middle button or with shift shifts, the wheel zooms. Keys act when the
/// keyboard is on the stage or nowhere, so that they are quiet while anything else has it.
pub fn stage_panel(ui: &mut Ui, rect: Rect, view: &WindowView<'_>, out: &mut Vec<Command>) -> Response {
    let ink = Ink::new(view.theme, view.text_size);
    let response = ui.interact(rect, ui.id().with("stage"), Sense::click_and_drag());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Image, true, "Stage"));
    pointer(ui, rect, &response, out);
    let focused = ui.memory(egui::Memory::focused);
    if focused.is_none() || focused == Some(response.id) {
        keys(ui, view, out);
    }
    if response.has_focus() {
        let arrows = EventFilter {
            vertical_arrows: true,
            horizontal_arrows: true,
            ..EventFilter::default()
        };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, arrows));
        widget::focus_outline(ui, &ink, &response, rect.shrink(5.0));
    }
    response
}

fn pointer(ui: &Ui, rect: Rect, response: &Response, out: &mut Vec<Command>) {
    let shifted = ui.input(|input| input.modifiers.shift);
    let delta = response.drag_delta();
    if delta != egui::Vec2::ZERO {
        let aside = response.dragged_by(PointerButton::Secondary) || response.dragged_by(PointerButton::Middle);
        if aside || shifted {
            let height = f64::from(rect.height().max(1.0));
            out.push(Command::Pan {
                right: f64::from(delta.x) / height,
                up: -f64::from(delta.y) / height,
            });
        } else {
            // The gears follow the hand: the eye goes the other way.
            out.push(Command::Orbit {
                azimuth_rad: radians(-f64::from(delta.x) * DEGREES_A_POINT),
                elevation_rad: radians(f64::from(delta.y) * DEGREES_A_POINT),
            });
        }
    }
    if response.contains_pointer() {
        let (scrolled, pinched) = ui.input(|input| (input.smooth_scroll_delta().y, input.zoom_delta()));
        let notches = f64::from(scrolled) / POINTS_A_NOTCH + (f64::from(pinched) - 1.0) * 12.0;
        if notches != 0.0 {
            out.push(Command::Zoom(notches));
        }
    }
}

fn keys(ui: &Ui, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let (pressed, shift, plain) = ui.input(|input| {
        let pressed: Vec<Key> = input
            .events
            .iter()
            .filter_map(|event| match event {
                egui::Event::Key { key, pressed: true, .. } => Some(*key),
                _ => None,
            })
            .collect();
        (
            pressed,
            input.modifiers.shift,
            !input.modifiers.ctrl && !input.modifiers.alt && !input.modifiers.command,
        )
    });
    if plain {
        out.extend(pressed.into_iter().filter_map(|key| command_of_key(key, shift, view)));
    }
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
        Key::Plus | Key::Equals => Command::Zoom(1.0),
        Key::Minus => Command::Zoom(-1.0),
        Key::Num1 => Command::LookFrom(Viewpoint::Corner),
        Key::Num2 => Command::LookFrom(Viewpoint::Pinion),
        Key::Num3 => Command::LookFrom(Viewpoint::RingGear),
        Key::Num4 => Command::LookFrom(Viewpoint::Above),
        Key::F => Command::SetProjection(other_projection(view.stage.projection)),
        Key::Space if view.stage.missing.is_none() => Command::SetTurning(!view.stage.turning),
        Key::Period if view.stage.missing.is_none() => Command::TurnTeeth(1),
        Key::Comma if view.stage.missing.is_none() => Command::TurnTeeth(-1),
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
pub fn stage_captions_panel(ui: &mut Ui, rect: Rect, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let ink = Ink::new(view.theme, view.text_size);
    let inside = rect.shrink2(vec2(ink.space(12.0), ink.space(10.0)));
    let buttons = UiBuilder::new()
        .id_salt("views")
        .max_rect(inside)
        .layout(Layout::right_to_left(Align::Min));
    let buttons_bottom = ui
        .scope_builder(buttons, |ui| {
            let flat = view.stage.projection == Projection::Flat;
            let response = widget::lone_cell(ui, &ink, "Projection", "Flat", flat);
            if response.on_hover_text("Parallel lines stay parallel. Key F").clicked() {
                out.push(Command::SetProjection(other_projection(view.stage.projection)));
            }
            let views = Viewpoint::ALL.map(|viewpoint| (viewpoint.label(), viewpoint));
            if let Some(viewpoint) = widget::segments(ui, &ink, "View", &views, view.stage.viewpoint) {
                out.push(Command::LookFrom(viewpoint));
            }
        })
        .response
        .rect
        .bottom();
    let top = if ink.large() {
        buttons_bottom + ink.space(6.0)
    } else {
        inside.top()
    };
    let words = Rect::from_min_max(egui::pos2(inside.left(), top), inside.max);
    ui.scope_builder(
        UiBuilder::new()
            .id_salt("caption")
            .max_rect(words)
            .layout(Layout::top_down(Align::Min)),
        |ui| {
            ui.set_max_width(ink.scaled(250.0));
            ui.spacing_mut().item_spacing.y = 0.0;
            let text = ink.color(|t| t.text);
            if let Some(why) = view.stage.missing {
                widget::words(ui, "Nothing on the stage", ink.section(), text);
                widget::words(ui, why, ink.small(), text);
                return;
            }
            widget::words(
                ui,
                view.stage.viewpoint.map_or("Turned by hand", Viewpoint::caption),
                ink.section(),
                text,
            );
            widget::words(
                ui,
                "Pitch cones, one line a tooth; teeth are not drawn. Yellow: one tooth of each gear is marked.",
                ink.small(),
                text,
            );
        },
    );
}

/// What can be done, and how far the pair has been turned.
pub fn turning_panel(ui: &mut Ui, view: &WindowView<'_>, out: &mut Vec<Command>) {
    let ink = Ink::new(view.theme, view.text_size);
    let stage = &view.stage;
    ui.add_enabled_ui(stage.missing.is_none(), |ui| {
        let buttons = |ui: &mut Ui, out: &mut Vec<Command>| {
            let (label, rank) = if stage.turning {
                ("Stop", Rank::Plain)
            } else {
                ("Turn pinion", Rank::Next)
            };
            if widget::button(ui, &ink, label, "Space", rank).clicked() {
                out.push(Command::SetTurning(!stage.turning));
            }
            if widget::button(ui, &ink, "One tooth back", ",", Rank::Plain).clicked() {
                out.push(Command::TurnTeeth(-1));
            }
            if widget::button(ui, &ink, "One tooth on", ".", Rank::Plain).clicked() {
                out.push(Command::TurnTeeth(1));
            }
        };
        if ink.large() {
            ui.horizontal_wrapped(|ui| buttons(ui, out));
            readout(ui, &ink, &stage.turn);
        } else {
            ui.horizontal_centered(|ui| {
                buttons(ui, out);
                ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                    readout(ui, &ink, &stage.turn);
                });
            });
        }
    });
}

/// Both gears, one line each; the lines begin at the same place, so that turns stand over turns.
fn readout(ui: &mut Ui, ink: &Ink, turn: &Turn) {
    let (pinion_turns, pinion_teeth) = turn.pinion_turns_and_teeth();
    let (wheel_turns, wheel_teeth) = turn.wheel_turns_and_teeth();
    let lines = [
        turned("Pinion", pinion_turns, pinion_teeth),
        turned("Ring gear", wheel_turns, wheel_teeth),
    ];
    let text = ink.color(|t| t.text);
    let galleys = lines
        .clone()
        .map(|line| ui.painter().layout_no_wrap(line, ink.body(), text));
    let width = galleys
        .iter()
        .fold(ink.scaled(210.0), |widest, galley| widest.max(galley.size().x));
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

fn turned(gear: &str, turns: i64, teeth: i64) -> String {
    let count = |n: i64, one: &str, more: &str| format!("{n}\u{a0}{}", if n == 1 { one } else { more });
    format!(
        "{gear} {} and {}",
        count(turns, "turn", "turns"),
        count(teeth, "tooth", "teeth")
    )
}

/// Height that [`turning_panel`] needs, points.
pub(super) fn turning_height(ink: &Ink, width: f32) -> f32 {
    if ink.large() {
        // Three buttons need about 440 points at 100 %; below that they wrap.
        let rows = if width < 480.0 * ink.factor() { 2.0 } else { 1.0 };
        rows * (ink.scaled(32.0) + 8.0) + ink.scaled(40.0) + 2.0 * ink.space(8.0)
    } else {
        ink.scaled(48.0)
    }
}
