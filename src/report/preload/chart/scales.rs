//! The scales of the chart.

use crate::bearing::SpacerMemory;
use crate::drawing::{Axis, Frame, FrameSide, Ink, Item, Path, Picture, Point, Rect, Stroke, Tick};
use crate::numerics::root::RootError;
use crate::quantity::{self, inch_pounds, number};
use crate::report::type_size::BODY;
use crate::words::say;

use super::base::{AREA, Chart};
use super::solve::{place_of_preload, state_at};

impl Chart<'_> {
    /// All of them: spacer or nut torque and preload below, shim or turn of the nut above, torque at both sides.
    pub(super) fn scales(&self, picture: &mut Picture, x_ticks: &[Tick], y_ticks: &[Tick]) -> Result<(), RootError> {
        let frame = &self.frame;
        let mut draw = |items: Vec<Item>| items.into_iter().for_each(|item| picture.draw(item));
        draw(frame.scale(FrameSide::Left, y_ticks, BODY));
        draw(vec![frame.name(
            FrameSide::Left,
            &say!("preload-chart-axis-in-lb"),
            BODY,
            52.0,
        )]);
        let newton_metres = Axis {
            to: quantity::NM_PER_INCH_POUND * frame.y.to,
            ..frame.y
        };
        let right: Vec<Tick> = newton_metres
            .ticks(newton_metres.round_step(10))
            .into_iter()
            .map(|t| Tick {
                value: inch_pounds(t.value),
                ..t
            })
            .collect();
        draw(frame.scale(FrameSide::Right, &right, BODY));
        draw(vec![frame.name(
            FrameSide::Right,
            &say!("preload-chart-axis-nm"),
            BODY,
            60.0,
        )]);
        draw(frame.scale(FrameSide::Bottom, x_ticks, BODY));
        draw(frame.scale(FrameSide::Top, &self.upper_ticks()?, BODY));
        let (below, above) = if self.sleeve() {
            (say!("preload-chart-axis-nut"), say!("preload-chart-axis-degrees"))
        } else {
            (say!("preload-chart-axis-spacer"), say!("preload-chart-axis-shim"))
        };
        draw(vec![
            frame.name(FrameSide::Bottom, &below, BODY, 42.0),
            frame.name(FrameSide::Top, &above, BODY, 34.0),
        ]);
        // A second scale below: the preload that belongs to each place.
        let second = Frame {
            area: Rect {
                bottom: AREA.bottom + 62.0,
                ..AREA
            },
            ..frame.clone()
        };
        let base = Path::line(
            Point::new(AREA.left, second.area.bottom),
            Point::new(AREA.right, second.area.bottom),
        );
        draw(vec![Item::stroked(base, Stroke::full(Ink::Line, 1.0))]);
        draw(second.scale(FrameSide::Bottom, &self.preload_ticks()?, BODY));
        draw(vec![second.name(
            FrameSide::Bottom,
            &say!("preload-chart-axis-preload"),
            BODY,
            42.0,
        )]);
        Ok(())
    }

    fn upper_ticks(&self) -> Result<Vec<Tick>, RootError> {
        if !self.sleeve() {
            let thousandth = 1.0e-3 * quantity::MM_PER_INCH;
            let present = self.present_x();
            let relative = Axis {
                from: (self.frame.x.from - present) / thousandth,
                to: (self.frame.x.to - present) / thousandth,
                ..self.frame.x
            };
            let step = relative.round_step(12);
            let step = if step < 1.0 { 1.0 } else { step };
            return Ok(relative
                .ticks(step)
                .into_iter()
                .map(|t| Tick {
                    value: present + t.value * thousandth,
                    label: if t.value.abs() < 0.5 {
                        "0".to_owned()
                    } else {
                        quantity::signed(t.value, 0)
                    },
                })
                .collect());
        }
        let support = &self.present.support;
        let mut ticks = Vec::new();
        for degrees in (0..=360).step_by(5) {
            let seat = support.zero_preload_length_mm - support.nut.travel_mm(f64::from(degrees));
            let state = support.closed_to(seat, SpacerMemory::default())?;
            let value = support.nut_torque_nm(&state);
            if self.frame.x.holds(value) {
                ticks.push(Tick {
                    value,
                    label: number(f64::from(degrees), 0),
                });
            }
        }
        Ok(thinned(ticks, &self.frame.x))
    }

    fn preload_ticks(&self) -> Result<Vec<Tick>, RootError> {
        let largest = [self.frame.x.from, self.frame.x.to]
            .into_iter()
            .map(|x| state_at(self.present, x).map(|s| s.preload_n))
            .collect::<Result<Vec<_>, _>>()?
            .into_iter()
            .fold(0.0, |a: f64, b| if b > a { b } else { a });
        let kilonewtons = Axis {
            from: 0.0,
            to: 1.0e-3 * largest,
            from_place: 0.0,
            to_place: 1.0,
        };
        let mut ticks = Vec::new();
        for tick in kilonewtons.ticks(kilonewtons.round_step(9)) {
            let value = if tick.value > 0.0 {
                place_of_preload(self.present, 1.0e3 * tick.value)?
            } else {
                self.touch
            };
            if self.frame.x.holds(value) {
                ticks.push(Tick { value, ..tick });
            }
        }
        Ok(thinned(ticks, &self.frame.x))
    }
}

/// Leaves out ticks whose labels would touch those before them.
fn thinned(ticks: Vec<Tick>, axis: &Axis) -> Vec<Tick> {
    let mut kept: Vec<Tick> = Vec::new();
    for tick in ticks {
        let free = kept
            .last()
            .is_none_or(|last| (axis.place(tick.value) - axis.place(last.value)).abs() > 30.0);
        if free {
            kept.push(tick);
        }
    }
    kept
}
