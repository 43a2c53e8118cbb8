//! How the window is divided: head, side panel, stage, note, work line.

use egui::{Rect, Vec2, pos2};

use super::theme::Ink;

/// The zones of the window, in points. They fill it without gaps; lines are drawn on their edges.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Zones {
    /// Name of the program, units, theme, text size.
    pub head: Rect,
    /// Gear sets and the numbers of the chosen one.
    pub side: Rect,
    /// What is looked at.
    pub stage: Rect,
    /// The safety note.
    pub note: Rect,
    /// What can be done at the stage.
    pub work: Rect,
}

impl Zones {
    /// Divides a window of this size. `note_height` and `work_height` are what those zones need for their text at
    /// their width, which is [`Self::stage_width`].
    pub fn divide(window: Vec2, ink: &Ink, note_height: f32, work_height: f32) -> Self {
        let head_bottom = Self::head_height(ink);
        let side_right = window.x - Self::stage_width(window, ink);
        // A very low window keeps a strip of stage; the zones below are cut off at its foot.
        let least_stage = 80.0;
        let work_top = (window.y - work_height).max(head_bottom + least_stage + note_height);
        let note_top = work_top - note_height;
        let rect =
            |left: f32, top: f32, right: f32, bottom: f32| Rect::from_min_max(pos2(left, top), pos2(right, bottom));
        Self {
            head: rect(0.0, 0.0, window.x, head_bottom),
            side: rect(0.0, head_bottom, side_right, window.y),
            stage: rect(side_right, head_bottom, window.x, note_top),
            note: rect(side_right, note_top, window.x, work_top),
            work: rect(side_right, work_top, window.x, window.y),
        }
    }

    /// Height of the head.
    pub fn head_height(ink: &Ink) -> f32 {
        ink.scaled(36.0) + ink.space(6.0)
    }

    /// Width of stage, note and work line. The side panel is 296 points wide, 320 on wide screens, and grows to 416
    /// at 200 %; a narrow window leaves the stage at least 40 % of it.
    pub fn stage_width(window: Vec2, ink: &Ink) -> f32 {
        let side_at_100 = if window.x >= 1600.0 { 320.0 } else { 296.0 };
        let side = side_at_100 + (416.0 - side_at_100) * (ink.factor() - 1.0);
        let share = if window.x >= 1600.0 { 0.4 } else { 0.6 };
        (window.x - side.min(window.x * share)).round()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::view::{TextSize, Theme};

    #[test]
    fn zones_fill_the_window_without_overlap() {
        for window in [
            Vec2::new(1280.0, 720.0),
            Vec2::new(1920.0, 1080.0),
            Vec2::new(640.0, 360.0),
        ] {
            for percent in TextSize::STEPS {
                let ink = Ink::new(Theme::Paper, TextSize::nearest(percent));
                let zones = Zones::divide(window, &ink, 32.0 * ink.factor(), 48.0 * ink.factor());
                let all = [zones.head, zones.side, zones.stage, zones.note, zones.work];
                let area: f32 = all.iter().map(Rect::area).sum();
                println!("{window:?} {percent} %: {zones:?}");
                for (i, a) in all.iter().enumerate() {
                    assert!(
                        a.width() > 0.0 && a.height() > 0.0,
                        "{window:?} {percent} %: a zone is empty"
                    );
                    for b in &all[i + 1..] {
                        assert!(
                            a.intersect(*b).area() <= 0.0 || !a.intersect(*b).is_positive(),
                            "zones overlap"
                        );
                    }
                }
                if window.y > 700.0 {
                    assert!(
                        (area - window.x * window.y).abs() < 1.0,
                        "{window:?} {percent} %: a gap"
                    );
                    assert!(
                        zones.stage.height() >= 260.0,
                        "{window:?} {percent} %: {}",
                        zones.stage.height()
                    );
                }
            }
        }
    }

    #[test]
    fn sizes_of_the_look() {
        let ink = Ink::new(Theme::Paper, TextSize::nearest(200));
        assert!(
            (1280.0 - Zones::stage_width(Vec2::new(1280.0, 720.0), &ink) - 416.0).abs() < 0.5,
            "side panel at 200 %"
        );
        let ink = Ink::new(Theme::Paper, TextSize::nearest(100));
        assert!(
            (1920.0 - Zones::stage_width(Vec2::new(1920.0, 1080.0), &ink) - 320.0).abs() < 0.5,
            "wide screen"
        );
    }
}
