//! The chart on its sheet.

use crate::drawing::{FrameSide, Ink, Item, Picture, Point, Text};
use crate::numerics::root::RootError;
use crate::quantity::{self, inch_pounds, number};
use crate::report::foot_note::{FootNote, LINE};
use crate::report::preload::case::Preload;
use crate::report::preload::window::TorqueWindow;
use crate::report::type_size::{BODY, SMALL, TITLE};
use crate::words::say;

use super::base::{AREA, Chart};

/// Width of the sheet, points.
const WIDTH: f64 = 960.0;
/// Where its foot begins: what the windows are made of, and the note.
const FOOT: f64 = 626.0;

/// The chart of `present`.
///
/// # Errors
/// The support could not be solved somewhere on the chart.
pub(crate) fn picture(present: &Preload) -> Result<Picture, RootError> {
    let chart = Chart::of(present)?;
    let note = FootNote::within(AREA.right - AREA.left);
    let (new, run_in) = (
        TorqueWindow::new_bearings(&present.support),
        TorqueWindow::run_in_bearings(&present.support),
    );
    let mut picture = Picture::on(
        Ink::Panel,
        WIDTH,
        FOOT + LINE + note.more() + 14.0,
        chart.title(),
        chart.description(),
    );
    chart.heading(&mut picture);
    let source = Text::new(Point::new(AREA.left, FOOT), say!("preload-windows-source"), SMALL);
    picture.draw(Item::Text(source.ink(Ink::Muted)));
    let bottom = FOOT + LINE + note.more();
    picture.items.extend(note.items(AREA.left, bottom));
    let frame = &chart.frame;
    picture.draw(frame.ground());
    let y_ticks = frame.y.ticks(frame.y.round_step(10));
    let x_ticks = frame.x.ticks(frame.x.round_step(9));
    for item in frame
        .grid(FrameSide::Left, &y_ticks)
        .into_iter()
        .chain(frame.grid(FrameSide::Bottom, &x_ticks))
    {
        picture.draw(item);
    }
    picture.draw(Item::Clipped {
        to: AREA,
        items: chart.inside(new, run_in)?,
    });
    picture.draw(frame.outline());
    chart.scales(&mut picture, &x_ticks, &y_ticks)?;
    for item in chart.labels(new, run_in)?.into_iter().chain(chart.present_point()) {
        picture.draw(item);
    }
    Ok(picture)
}

impl Chart<'_> {
    fn title(&self) -> String {
        let support = self.present.support.name.clone();
        if self.sleeve() {
            say!("preload-chart-title-nut", support = support)
        } else {
            say!("preload-chart-title-spacer", support = support)
        }
    }

    fn description(&self) -> String {
        let p = self.present;
        say!(
            "preload-chart-description",
            present = self.present_words(),
            preload = number(1.0e-3 * p.state.preload_n, 2),
            in_lb = number(inch_pounds(p.rolling.total_nm), 1),
            nm = number(p.rolling.total_nm, 2)
        )
    }

    fn heading(&self, picture: &mut Picture) {
        let p = self.present;
        let c = &p.conditions;
        picture.draw(Item::Text(
            Text::new(Point::new(AREA.left, 36.0), p.support.name.clone(), TITLE).bold(),
        ));
        let fixed = if self.sleeve() {
            say!("preload-chart-heading-nut", mm = number(c.spacer_mm, 3))
        } else {
            say!(
                "preload-chart-heading-spacer",
                nm = number(c.nut_torque_nm, 1),
                ft_lb = number(quantity::foot_pounds(c.nut_torque_nm), 0)
            )
        };
        let turned = say!(
            "preload-chart-conditions",
            rpm = number(c.turn_rpm, 0),
            celsius = number(c.temperature_c, 0)
        );
        for (line, words) in [fixed, turned].into_iter().enumerate() {
            let at = Point::new(AREA.left, 56.0 + 18.0 * line as f64);
            picture.draw(Item::Text(Text::new(at, words, BODY)));
        }
    }
}
