//! A drawn scale with a pointer below: a value between two ends.

use egui::{Align2, EventFilter, Key, Modifiers, Rect, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::theme::Ink;
use crate::words::say;

/// What a scale shows.
#[derive(Debug, Clone)]
pub(super) struct Scale {
    /// What tells it from other scales.
    pub(super) key: &'static str,
    /// What is set.
    pub(super) name: String,
    /// What is said when the pointer rests on it.
    pub(super) hint: String,
    /// The value as it is read.
    pub(super) reading: String,
    /// The value.
    pub(super) value: f64,
    /// Both ends.
    pub(super) ends: [f64; 2],
    /// Where it stands when nothing was set.
    pub(super) usual: f64,
    /// What one step of a drag or an arrow key changes.
    pub(super) step: f64,
    /// Steps between two lines of the scale.
    pub(super) steps_a_line: u32,
    /// Another value that is marked by a dashed line.
    pub(super) other: Option<f64>,
}

/// Height of a scale with its words, points at 100 %.
pub(super) const SCALE_HEIGHT: f32 = 42.0;

/// Draws a scale over the full width; returns the value that is asked for. Drag or arrow keys set it (ten steps with
/// shift), a double click or Home sets
/// the usual value.
pub(super) fn scale(ui: &mut Ui, ink: &Ink, scale: &Scale) -> Option<f64> {
    let size = vec2(ui.available_width(), ink.scaled(SCALE_HEIGHT));
    let (_, rect) = ui.allocate_space(size);
    let id = ui.id().with(scale.key);
    let response = ui.interact(rect, id, Sense::click_and_drag());
    let enabled = ui.is_enabled();
    response.widget_info(|| {
        let said = say!(
            "stage-scale-said",
            name = scale.name.as_str(),
            reading = scale.reading.as_str()
        );
        WidgetInfo::slider(enabled, scale.value, said)
    });
    let response = response.on_hover_text(&scale.hint);
    let inset = ink.space(8.0);
    let line = Rect::from_min_max(
        pos2(rect.left() + inset, rect.top() + ink.scaled(22.0)),
        pos2(rect.right() - inset, rect.bottom() - ink.scaled(10.0)),
    );
    draw(ui, ink, scale, rect, line, enabled);
    super::widget::focus_outline(ui, ink, &response, rect.shrink(2.0));
    let mut wanted = None;
    if response.double_clicked() {
        wanted = Some(scale.usual);
    } else if (response.dragged() || response.clicked())
        && let Some(pointer) = response.interact_pointer_pos()
    {
        let share = f64::from((pointer.x - line.left()) / line.width().max(1.0));
        let [low, high] = scale.ends;
        let value = low + share * (high - low);
        wanted = Some((value / scale.step).round() * scale.step);
    }
    if response.has_focus() {
        let arrows = EventFilter {
            horizontal_arrows: true,
            ..EventFilter::default()
        };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, arrows));
        let steps = ui.input_mut(|input| {
            let mut steps = 0.0;
            for (modifiers, by) in [(Modifiers::SHIFT, 10.0), (Modifiers::NONE, 1.0)] {
                if input.consume_key(modifiers, Key::ArrowRight) {
                    steps += by;
                }
                if input.consume_key(modifiers, Key::ArrowLeft) {
                    steps -= by;
                }
            }
            steps
        });
        if steps != 0.0 {
            wanted = Some(((scale.value / scale.step).round() + steps) * scale.step);
        }
        if ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Home)) {
            wanted = Some(scale.usual);
        }
    }
    let [low, high] = scale.ends;
    wanted
        .map(|value| value.clamp(low, high))
        .filter(|value| (value - scale.value).abs() > 1e-12)
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "a place on the screen, between -1 and 1 of a line"
)]
fn draw(ui: &Ui, ink: &Ink, scale: &Scale, rect: Rect, line: Rect, enabled: bool) {
    let painter = ui.painter();
    let text = ink.color(|t| if enabled { t.text } else { t.ghost });
    painter.text(rect.left_top(), Align2::LEFT_TOP, &scale.name, ink.body(), text);
    painter.text(rect.right_top(), Align2::RIGHT_TOP, &scale.reading, ink.section(), text);
    let thin = ink.line(1.0, |t| if enabled { t.line } else { t.hairline });
    let foot = line.bottom();
    painter.hline(line.x_range(), foot, thin);
    let gap = scale.step * f64::from(scale.steps_a_line);
    let [low, high] = scale.ends;
    let place = |value: f64| {
        let share = ((value - low) / (high - low)) as f32;
        line.left() + share * line.width()
    };
    let tick = |value: f64, share: f32| painter.vline(place(value), foot - share * line.height()..=foot, thin);
    let mut value = (low / gap).ceil() * gap;
    while value <= high + 0.01 * gap {
        tick(value, 0.5);
        value += gap;
    }
    for value in [low, scale.usual, high] {
        tick(value, 1.0);
    }
    if let Some(other) = scale.other {
        let x = place(other.clamp(low, high));
        let ends = [pos2(x, line.top() - 3.0), pos2(x, foot + 7.0)];
        painter.extend(Shape::dashed_line(&ends, ink.line(1.4, |t| t.text), 3.0, 2.0));
    }
    // The pointer is what the hand moved: violet, below the line.
    let tip = pos2(place(scale.value.clamp(low, high)), foot + 1.0);
    let half = ink.scaled(5.0);
    let color = ink.color(|t| if enabled { t.accent } else { t.ghost });
    painter.add(Shape::convex_polygon(
        vec![tip, tip + vec2(half, 1.7 * half), tip + vec2(-half, 1.7 * half)],
        color,
        Stroke::NONE,
    ));
}
