//! What is to be seen of a window: every text with what it is cut off by, and whether it can be brought into view.

use egui::{Event, Modifiers, MouseWheelUnit, Pos2, Rect, Shape, TouchPhase, Vec2};
use egui_kittest::Harness;

use super::Desk;

/// A text as it is painted.
#[derive(Debug, Clone)]
struct Text {
    words: String,
    /// What its letters cover.
    ink: Rect,
    /// What it is cut off by.
    clip: Rect,
    /// Whether words were left out.
    elided: bool,
}

impl Text {
    fn seen(&self) -> Rect {
        self.ink.intersect(self.clip)
    }
}

/// Letters of a rim or of the next list may touch by so much, points.
const TOUCH: f32 = 1.5;

fn texts(harness: &Harness<'_, Desk>) -> Vec<Text> {
    fn of(shape: &Shape, clip: Rect, found: &mut Vec<Text>) {
        match shape {
            Shape::Text(text) if text.angle.abs() < 1e-6 => {
                let ink = text.visual_bounding_rect();
                if ink.is_positive() {
                    found.push(Text {
                        words: text.galley.text().to_owned(),
                        ink,
                        clip,
                        elided: text.galley.elided,
                    });
                }
            }
            Shape::Vec(shapes) => shapes.iter().for_each(|shape| of(shape, clip, found)),
            _ => {}
        }
    }
    let mut found = Vec::new();
    for clipped in &harness.output().shapes {
        of(&clipped.shape, clipped.clip_rect, &mut found);
    }
    found
}

/// What is wrong with what is painted now, but for what is cut off above or below.
fn faults(texts: &[Text], window: Rect) -> Vec<String> {
    let mut faults = Vec::new();
    for text in texts.iter().filter(|text| text.seen().is_positive()) {
        let Text { words, ink, clip, .. } = text;
        if text.elided {
            faults.push(format!("“{words}” lacks words"));
        }
        let clip = clip.intersect(window);
        if ink.left() < clip.left() - TOUCH || ink.right() > clip.right() + TOUCH {
            faults.push(format!("“{words}” {ink:?} is cut off at the side by {clip:?}"));
        }
    }
    for (index, text) in texts.iter().enumerate() {
        let seen = text.seen().intersect(window).shrink(TOUCH);
        if !seen.is_positive() {
            continue;
        }
        for other in &texts[index + 1..] {
            let beside = other.seen().intersect(window).shrink(TOUCH);
            // A halo is the same words a little aside.
            let halo = text.words == other.words && text.ink.center().distance(other.ink.center()) < 4.0;
            if !halo && beside.is_positive() && seen.intersect(beside).is_positive() {
                faults.push(format!(
                    "“{}” {seen:?} lies on “{}” {beside:?}",
                    text.words, other.words
                ));
            }
        }
    }
    faults
}

/// The places where something is cut off above or below.
fn cut(texts: &[Text], window: Rect) -> Vec<Rect> {
    let mut clips: Vec<Rect> = Vec::new();
    for text in texts {
        let clip = text.clip.intersect(window);
        let cut = text.ink.top() < clip.top() - TOUCH || text.ink.bottom() > clip.bottom() + TOUCH;
        let near = |other: &Rect| other.min.distance(clip.min) < 2.0 && other.max.distance(clip.max) < 2.0;
        if cut && !clips.iter().any(near) {
            clips.push(clip);
        }
    }
    clips
}

fn wheel(harness: &mut Harness<'_, Desk>, at: Pos2, down: f32) {
    harness.hover_at(at);
    harness.step();
    harness.event(Event::MouseWheel {
        unit: MouseWheelUnit::Point,
        delta: Vec2::new(0.0, -down),
        phase: TouchPhase::Move,
        modifiers: Modifiers::NONE,
    });
    // A wheel turns smoothly.
    harness.run_steps(6);
}

/// What is wrong with the window as it stands: words cut off or left out, words on words, and what cannot be reached by
/// scrolling.
pub(super) fn wrong(harness: &mut Harness<'_, Desk>, size: Vec2) -> Vec<String> {
    let window = Rect::from_min_size(Pos2::ZERO, size);
    let before = texts(harness);
    assert!(before.len() > 10, "only {} texts", before.len());
    let mut found = faults(&before, window);
    for clip in cut(&before, window) {
        if !clip.is_positive() {
            found.push(format!("nothing is left of {clip:?}"));
            continue;
        }
        let within = |texts: &[Text]| -> [f32; 2] {
            let near = |text: &&Text| {
                let other = text.clip.intersect(window);
                other.min.distance(clip.min) < 2.0 && other.max.distance(clip.max) < 2.0
            };
            let ends = texts.iter().filter(near);
            ends.fold([f32::INFINITY, f32::NEG_INFINITY], |[top, bottom], text| {
                [top.min(text.ink.top()), bottom.max(text.ink.bottom())]
            })
        };
        let words = || -> Vec<&str> {
            let near = |text: &&Text| text.clip.intersect(window).min.distance(clip.min) < 2.0;
            before
                .iter()
                .filter(near)
                .map(|text| text.words.as_str())
                .take(4)
                .collect()
        };
        for (down, end) in [(1e6, 1), (-1e6, 0)] {
            wheel(harness, clip.center(), down);
            let reached = within(&texts(harness))[end];
            let out = if end == 1 {
                reached - clip.bottom()
            } else {
                clip.top() - reached
            };
            // No hint hangs over what is looked at next.
            harness.remove_cursor();
            harness.run_steps(2);
            if out > TOUCH {
                found.push(format!(
                    "{out} points beyond {clip:?} of {:?} cannot be reached",
                    words()
                ));
            }
        }
    }
    found
}
