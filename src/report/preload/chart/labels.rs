//! What is said beside bands, curves and the present point.

use crate::drawing::{Anchor, Ink, Item, LineStyle, Mark, Path, Point, Stroke, Text};
use crate::numerics::root::RootError;
use crate::quantity::{self, inch_pounds, number};
use crate::report::preload::case::{NEW_FRICTION_FACTOR, RUN_IN_FRICTION_FACTOR};
use crate::report::preload::window::TorqueWindow;
use crate::report::type_size::BODY;
use crate::words::say;

use super::base::{AREA, Chart};
use super::solve::{place_of_preload, preload_for_torque, state_at, torque_with};

/// Room for the words beside the present point.
const PRESENT_LABEL: f64 = 200.0;

impl Chart<'_> {
    /// Of bands and curves.
    pub(super) fn labels(&self, new: TorqueWindow, run_in: TorqueWindow) -> Result<Vec<Item>, RootError> {
        let mut items = Vec::new();
        let y = |torque: f64| self.frame.y.place(inch_pounds(torque));
        // Everything about bands is said at the side of end play, where no curve runs.
        let (x, anchor) = if self.sleeve() {
            (AREA.left + 8.0, Anchor::Start)
        } else {
            (AREA.right - 8.0, Anchor::End)
        };
        let mut two_lines = |top: f64, ink: Ink, words: [String; 2]| {
            for (line, words) in words.into_iter().enumerate() {
                let text = Text::new(Point::new(x, top + 17.0 * line as f64), words, BODY);
                items.push(Item::Text(text.ink(ink).anchored(anchor).with_halo(Ink::Inset)));
            }
        };
        two_lines(
            AREA.top + 20.0,
            Ink::Muted,
            [say!("preload-chart-end-play"), say!("preload-chart-seal-only")],
        );
        for (words, window) in [
            (say!("preload-chart-window-new"), new),
            (say!("preload-chart-window-run-in"), run_in),
        ] {
            let (low, high) = (inch_pounds(window.low_nm), inch_pounds(window.high_nm));
            let numbers = say!("preload-chart-range", low = number(low, 0), high = number(high, 0));
            // The lower half of the upper band may be covered by the other one.
            two_lines(y(window.high_nm) + 17.0, Ink::Good, [words, numbers]);
        }
        items.extend(self.curve_names()?);
        Ok(items)
    }

    /// Names above the curves, on the side where they leave room, where the steepest is about to leave the chart.
    fn curve_names(&self) -> Result<Vec<Item>, RootError> {
        let nearly_top_nm = 0.93 * quantity::NM_PER_INCH_POUND * self.frame.y.to;
        let place = place_of_preload(
            self.present,
            preload_for_torque(self.present, NEW_FRICTION_FACTOR, nearly_top_nm)?,
        )?;
        let preload_n = state_at(self.present, place)?.preload_n;
        let mut names = vec![
            (say!("preload-chart-new"), Some(NEW_FRICTION_FACTOR), Ink::Text),
            (say!("preload-chart-run-in"), Some(RUN_IN_FRICTION_FACTOR), Ink::Text),
        ];
        if self.present.friction_is_unusual() {
            names.push((say!("preload-chart-as-filed"), None, Ink::Accent));
        }
        let (dx, anchor) = if self.sleeve() {
            (-8.0, Anchor::End)
        } else {
            (8.0, Anchor::Start)
        };
        Ok(names
            .into_iter()
            .map(|(words, factor, ink)| {
                let torque = torque_with(self.present, factor, preload_n);
                let point = self.frame.point(place, inch_pounds(torque));
                let at = Point::new(point.x + dx, point.y - 8.0);
                let text = Text::new(at, words, BODY).bold().ink(ink);
                Item::Text(text.anchored(anchor).with_halo(Ink::Inset))
            })
            .collect())
    }

    /// The present point with its numbers.
    pub(super) fn present_point(&self) -> Vec<Item> {
        let p = self.present;
        let at = self.frame.point(self.present_x(), inch_pounds(p.rolling.total_nm));
        let drop_line = Path::line(Point::new(at.x, AREA.bottom), at);
        let mut items = vec![Item::stroked(
            drop_line,
            Stroke::full(Ink::Accent, 1.4).styled(LineStyle::Dotted),
        )];
        items.extend(Mark::Dot.items(at, 12.0, Ink::Accent, Ink::Inset));
        let words = [
            self.present_words(),
            say!(
                "preload-chart-torque",
                in_lb = number(inch_pounds(p.rolling.total_nm), 1),
                nm = number(p.rolling.total_nm, 2)
            ),
            if p.state.preload_n > 0.0 {
                say!("preload-chart-preload", kn = number(1.0e-3 * p.state.preload_n, 2))
            } else {
                say!("preload-chart-play", mm = number(p.state.play_mm, 3))
            },
        ];
        // On the upper side of the curve, away from it, unless the sheet ends there.
        let leftward = if self.sleeve() {
            at.x - PRESENT_LABEL > AREA.left
        } else {
            at.x + PRESENT_LABEL > AREA.right
        };
        let (dx, anchor) = if leftward {
            (-14.0, Anchor::End)
        } else {
            (14.0, Anchor::Start)
        };
        // With end play both curves run at the point's own height.
        let lift = if p.state.preload_n > 0.0 { 40.0 } else { 58.0 };
        let top = if at.y - lift < AREA.top + 14.0 {
            AREA.top + 14.0
        } else {
            at.y - lift
        };
        for (line, words) in words.into_iter().enumerate() {
            let text = Text::new(Point::new(at.x + dx, top + 17.0 * line as f64), words, BODY);
            let text = text.ink(Ink::Accent).anchored(anchor).with_halo(Ink::Inset);
            items.push(Item::Text(if line == 0 { text.bold() } else { text }));
        }
        items
    }
}
