//! Bands, end play and curves.

use crate::drawing::{Fill, Hatch, Ink, Item, LineStyle, Path, Point, Rect, Stroke};
use crate::numerics::root::RootError;
use crate::quantity::inch_pounds;
use crate::report::preload::case::{NEW_FRICTION_FACTOR, RUN_IN_FRICTION_FACTOR};
use crate::report::preload::window::TorqueWindow;

use super::base::{AREA, Chart};
use super::solve::{state_at, torque_with};

/// Straight stretches of a curve.
const STRETCHES: u32 = 240;

impl Chart<'_> {
    /// Bands, end play and curves, to be clipped to the area.
    pub(super) fn inside(&self, new: TorqueWindow, run_in: TorqueWindow) -> Result<Vec<Item>, RootError> {
        let mut items = Vec::new();
        items.extend(self.band(
            new,
            Fill::Plain {
                ink: Ink::Good,
                opacity: 0.16,
            },
            LineStyle::Full,
        ));
        items.extend(self.band(
            run_in,
            Fill::Hatched {
                hatch: Hatch::Rising,
                ink: Ink::Good,
            },
            LineStyle::Dashed,
        ));
        let touch = self.frame.x.place(self.touch);
        let play = if self.sleeve() {
            Rect { right: touch, ..AREA }
        } else {
            Rect { left: touch, ..AREA }
        };
        if play.width() > 0.0 {
            items.push(Item::filled(
                play.path(),
                Fill::Plain {
                    ink: Ink::Inset,
                    opacity: 0.85,
                },
            ));
            items.push(Item::filled(
                play.path(),
                Fill::Hatched {
                    hatch: Hatch::Stipple,
                    ink: Ink::Hairline,
                },
            ));
        }
        let curve = Stroke::full(Ink::Truth, 2.4);
        items.push(Item::stroked(self.curve(Some(NEW_FRICTION_FACTOR))?, curve));
        items.push(Item::stroked(
            self.curve(Some(RUN_IN_FRICTION_FACTOR))?,
            curve.styled(LineStyle::Dashed),
        ));
        if self.present.friction_is_unusual() {
            let own = Stroke::full(Ink::Accent, 2.0).styled(LineStyle::DashDot);
            items.push(Item::stroked(self.curve(None)?, own));
        }
        Ok(items)
    }

    fn band(&self, window: TorqueWindow, fill: Fill, style: LineStyle) -> Vec<Item> {
        let (top, bottom) = (
            self.frame.y.place(inch_pounds(window.high_nm)),
            self.frame.y.place(inch_pounds(window.low_nm)),
        );
        let rect = Rect { top, bottom, ..AREA };
        let edge = |y: f64| {
            Item::stroked(
                Path::line(Point::new(AREA.left, y), Point::new(AREA.right, y)),
                Stroke::full(Ink::Good, 1.2).styled(style),
            )
        };
        vec![Item::filled(rect.path(), fill), edge(top), edge(bottom)]
    }

    /// Rotating torque over the whole chart with a friction factor, or with the file's own.
    fn curve(&self, factor: Option<f64>) -> Result<Path, RootError> {
        let mut points = Vec::new();
        for i in 0..=STRETCHES {
            let share = f64::from(i) / f64::from(STRETCHES);
            let x = self.frame.x.from + share * (self.frame.x.to - self.frame.x.from);
            let state = state_at(self.present, x)?;
            let torque = torque_with(self.present, factor, state.preload_n);
            points.push(self.frame.point(x, inch_pounds(torque)));
        }
        Ok(Path::open(points))
    }
}
