//! What the chart is drawn from.

use crate::drawing::{Frame, Rect};
use crate::numerics::root::RootError;
use crate::quantity::{inch_pounds, number};
use crate::report::preload::case::{NEW_FRICTION_FACTOR, Preload};
use crate::report::preload::window::TorqueWindow;
use crate::words::say;

use super::solve::{place_of_preload, preload_for_torque, touching_place};

/// Where the curves are drawn, in a sheet 960 points wide.
pub(super) const AREA: Rect = Rect {
    left: 84.0,
    top: 140.0,
    right: 872.0,
    bottom: 496.0,
};

/// A case with the frame that it is drawn in.
pub(super) struct Chart<'p> {
    pub(super) present: &'p Preload,
    pub(super) frame: Frame,
    /// Where the bearings just touch: spacer length in mm or nut torque in N m.
    pub(super) touch: f64,
}

impl<'p> Chart<'p> {
    /// The chart of a case.
    pub(super) fn of(present: &'p Preload) -> Result<Self, RootError> {
        let support = &present.support;
        let sleeve = support.has_sleeve();
        let present_x = if sleeve {
            present.conditions.nut_torque_nm
        } else {
            present.conditions.spacer_mm
        };
        let highest = [
            1.3 * TorqueWindow::new_bearings(support).high_nm,
            1.12 * present.rolling.total_nm,
        ]
        .into_iter()
        .fold(0.0, |a: f64, b| if b > a { b } else { a });
        let touch = touching_place(present);
        let preload_at_top = preload_for_torque(present, NEW_FRICTION_FACTOR, highest)?;
        let far = place_of_preload(present, preload_at_top)?;
        let margin = 0.24 * (far - touch);
        let (mut from, mut to) = if far < touch {
            (far, touch - margin)
        } else {
            (touch - margin, far)
        };
        let room = 0.06 * (to - from);
        if present_x < from + room {
            from = present_x - room;
        }
        if present_x > to - room {
            to = present_x + room;
        }
        let frame = Frame::new(AREA, (from, to), (0.0, inch_pounds(highest)));
        Ok(Self { present, frame, touch })
    }

    pub(super) fn sleeve(&self) -> bool {
        self.present.support.has_sleeve()
    }

    pub(super) fn present_x(&self) -> f64 {
        if self.sleeve() {
            self.present.conditions.nut_torque_nm
        } else {
            self.present.conditions.spacer_mm
        }
    }

    pub(super) fn present_words(&self) -> String {
        let c = &self.present.conditions;
        if self.sleeve() {
            say!("preload-chart-present-nut", nm = number(c.nut_torque_nm, 1))
        } else {
            say!("preload-chart-present-spacer", mm = number(c.spacer_mm, 3))
        }
    }
}
