//! The chart beside the bench: rotating torque over spacer length, or over nut torque for a sleeve, with the windows that
//! are aimed at and the present point.

use std::path::Path as FilePath;

use crate::bearing::{SpacerMemory, Support, Tightened};
use crate::drawing::{
    Anchor, Axis, Fill, Frame, FrameSide, Hatch, Ink, Item, LineStyle, Mark, Path, Picture, Point, Rect, Stroke, Text,
    Theme, Tick, svg,
};
use crate::numerics::root;
use crate::quantity::{self, inch_pounds, number};
use crate::store;
use crate::words::{self, say};

use super::Failure;
use super::preload::{NEW_FRICTION_FACTOR, Preload, RUN_IN_FRICTION_FACTOR, TorqueWindow};

/// Where the curves are drawn, in a sheet of 960 × 640 points.
const AREA: Rect = Rect {
    left: 84.0,
    top: 140.0,
    right: 872.0,
    bottom: 496.0,
};
/// Straight stretches of a curve.
const STRETCHES: u32 = 240;
/// Room for the words beside the present point.
const PRESENT_LABEL: f64 = 200.0;
/// Type sizes of the look: small, body, page title.
const SMALL: f64 = 12.0;
const BODY: f64 = 13.0;
const TITLE: f64 = 18.0;

/// Draws the chart of `present` and writes it as an SVG file, whole or not at all.
///
/// # Errors
/// The file cannot be written.
pub fn write(present: &Preload, file: &FilePath) -> Result<(), Failure> {
    let text = svg::write(&picture(present)?, Theme::Paper);
    Ok(store::write_whole(file, text.as_bytes())?)
}

/// The chart of `present`.
///
/// # Errors
/// The support could not be solved somewhere on the chart.
pub fn picture(present: &Preload) -> Result<Picture, Failure> {
    let chart = Chart::of(present)?;
    let (new, run_in) = (
        TorqueWindow::new_bearings(&present.support),
        TorqueWindow::run_in_bearings(&present.support),
    );
    let mut picture = Picture::on(Ink::Panel, 960.0, 640.0, chart.title(), chart.description());
    chart.heading(&mut picture);
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

/// What the chart is drawn from.
struct Chart<'p> {
    present: &'p Preload,
    frame: Frame,
    /// Where the bearings just touch: spacer length in mm or nut torque in N m.
    touch: f64,
}

fn unsolved(error: root::RootError) -> Failure {
    Failure::went_wrong(say!("preload-unsolved-picture", why = words::error::root(error).line()))
}

impl<'p> Chart<'p> {
    fn of(present: &'p Preload) -> Result<Self, Failure> {
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

    fn sleeve(&self) -> bool {
        self.present.support.has_sleeve()
    }

    fn title(&self) -> String {
        let support = self.present.support.name.clone();
        if self.sleeve() {
            say!("preload-chart-title-nut", support = support)
        } else {
            say!("preload-chart-title-spacer", support = support)
        }
    }

    fn present_x(&self) -> f64 {
        if self.sleeve() {
            self.present.conditions.nut_torque_nm
        } else {
            self.present.conditions.spacer_mm
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

    fn present_words(&self) -> String {
        let c = &self.present.conditions;
        if self.sleeve() {
            say!("preload-chart-present-nut", nm = number(c.nut_torque_nm, 1))
        } else {
            say!("preload-chart-present-spacer", mm = number(c.spacer_mm, 3))
        }
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
        picture.draw(Item::Text(
            Text::new(Point::new(AREA.left, 626.0), say!("preload-caution"), SMALL).ink(Ink::Muted),
        ));
    }

    /// Bands, end play and curves, to be clipped to the area.
    fn inside(&self, new: TorqueWindow, run_in: TorqueWindow) -> Result<Vec<Item>, Failure> {
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
    fn curve(&self, factor: Option<f64>) -> Result<Path, Failure> {
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

    fn scales(&self, picture: &mut Picture, x_ticks: &[Tick], y_ticks: &[Tick]) -> Result<(), Failure> {
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

    fn upper_ticks(&self) -> Result<Vec<Tick>, Failure> {
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
            let state = support.closed_to(seat, SpacerMemory::default()).map_err(unsolved)?;
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

    fn preload_ticks(&self) -> Result<Vec<Tick>, Failure> {
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

    fn labels(&self, new: TorqueWindow, run_in: TorqueWindow) -> Result<Vec<Item>, Failure> {
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
    fn curve_names(&self) -> Result<Vec<Item>, Failure> {
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

    fn present_point(&self) -> Vec<Item> {
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

/// State of the support with the chart's own value at `x`.
fn state_at(present: &Preload, x: f64) -> Result<Tightened, Failure> {
    if present.support.has_sleeve() {
        present.support.tightened_to(x, SpacerMemory::default())
    } else {
        present
            .support
            .with_spacer_length_mm(x)
            .tightened_to(present.conditions.nut_torque_nm, SpacerMemory::default())
    }
    .map_err(unsolved)
}

fn torque_with(present: &Preload, factor: Option<f64>, preload_n: f64) -> f64 {
    let at = |support: &Support| support.rolling_torque(preload_n, present.running).total_nm;
    factor.map_or_else(
        || at(&present.support),
        |factor| at(&present.support.with_friction_factor(factor)),
    )
}

/// Where the bearings just touch: the spacer length, or the nut torque of a sleeve.
fn touching_place(present: &Preload) -> f64 {
    let support = &present.support;
    if support.has_sleeve() {
        let shortening = support.spacer.free_length_mm - support.zero_preload_length_mm;
        support
            .nut
            .tightening_torque_nm(support.spacer.force_n(shortening, SpacerMemory::default()))
    } else {
        place_with_spacer_force(
            present,
            support.nut.clamp_n(present.conditions.nut_torque_nm),
            support.zero_preload_length_mm,
        )
    }
}

/// Free length of a solid spacer that is `loaded_mm` long under a force, mm.
fn place_with_spacer_force(present: &Preload, force_n: f64, loaded_mm: f64) -> f64 {
    let per_length = force_n * present.support.spacer.compliance_mm_per_n() / present.support.spacer.free_length_mm;
    loaded_mm / (1.0 - per_length)
}

/// Spacer length or nut torque at which the bearings carry `preload_n` > 0.
fn place_of_preload(present: &Preload, preload_n: f64) -> Result<f64, Failure> {
    let support = &present.support;
    let loaded = support.zero_preload_length_mm - support.pair().closing_mm(preload_n);
    if support.has_sleeve() {
        let state = support.closed_to(loaded, SpacerMemory::default()).map_err(unsolved)?;
        return Ok(support.nut_torque_nm(&state));
    }
    let left_n = support.nut.clamp_n(present.conditions.nut_torque_nm) - preload_n;
    Ok(place_with_spacer_force(
        present,
        if left_n > 0.0 { left_n } else { 0.0 },
        loaded,
    ))
}

/// Preload at which bearings with a friction factor turn with `torque_nm`.
fn preload_for_torque(present: &Preload, factor: f64, torque_nm: f64) -> Result<f64, Failure> {
    let excess = |preload_n: f64| torque_with(present, Some(factor), preload_n) - torque_nm;
    let mut high = 1000.0;
    while excess(high) < 0.0 && high < 1.0e7 {
        high *= 2.0;
    }
    root::in_bracket(excess, 0.0, high, 0.1).map_err(unsolved)
}
