//! Faces of instruments: scale, numerals, pointer. Drawn in a circle of 100 that is put in the rectangle at hand.

use egui::{Align2, Color32, FontId, Painter, Pos2, Rect, Shape, Stroke, StrokeKind, Ui, Vec2, vec2};

use crate::panels::theme::{self, Ink};
use crate::quantity::{Units, number};
use crate::view::bench::{Amount, Face, Reading};
use crate::words::say;

/// Draws the instrument with what it shows.
pub(super) fn paint(ui: &Ui, rect: Rect, ink: &Ink, units: Units, reading: &Reading) {
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    let radius = 0.5 * rect.width().min(rect.height()) - 2.0;
    let plate = DialPlate {
        painter: &painter,
        ink,
        centre: rect.center(),
        unit: radius / 100.0,
    };
    let value = reading.main_value();
    match reading.face {
        Face::Dial {
            graduation_mm,
            turn_mm,
            range_mm,
        } => plate.dial(units, turn_mm, range_mm / turn_mm, graduation_mm, value),
        Face::Wrench {
            least_nm,
            full_nm,
            graduation_nm,
            ..
        } => {
            let start = (reading.values.len() > 1)
                .then(|| reading.values.first().and_then(|s| s.value))
                .flatten();
            plate.wrench(
                units,
                reading.amount,
                [least_nm, full_nm, graduation_nm],
                [start, value],
            );
        }
        Face::Micrometer => plate.micrometer(units, value, false),
        Face::DepthGauge => plate.micrometer(units, value, true),
        Face::Feeler { leaves_mm } => plate.feeler(units, leaves_mm, value),
        Face::Thermometer => plate.thermometer(value),
        Face::Click => plate.click(),
        Face::Eye => plate.eye(),
    }
}

/// Width of a small line of a scale, and of the needle over it.
const GRADUATION: f32 = 0.9;

struct DialPlate<'a> {
    painter: &'a Painter,
    ink: &'a Ink,
    centre: Pos2,
    /// Points of the screen for a hundredth of the radius.
    unit: f32,
}

#[expect(clippy::cast_possible_truncation, reason = "places on a screen")]
fn on_screen(value: f64) -> f32 {
    value as f32
}

impl DialPlate<'_> {
    /// A place in the circle of 100.
    fn at(&self, x: f32, y: f32) -> Pos2 {
        self.centre + self.unit * vec2(x, y)
    }

    /// A place at an angle from straight up, clockwise, degrees.
    fn polar(&self, angle_deg: f32, radius: f32) -> Pos2 {
        self.centre + self.unit * radius * direction(angle_deg)
    }

    fn text(&self) -> Color32 {
        self.ink.color(|t| t.text)
    }

    fn line(&self, width: f32) -> Stroke {
        Stroke::new((width * self.unit).max(0.6 * width), self.text())
    }

    fn font(&self, size: f32, bold: bool) -> FontId {
        let family = if bold {
            theme::bold()
        } else {
            egui::FontFamily::Proportional
        };
        FontId::new((size * self.unit).max(9.0), family)
    }

    fn numeral(&self, at: Pos2, words: impl ToString) {
        self.painter
            .text(at, Align2::CENTER_CENTER, words, self.font(14.0, true), self.text());
    }

    /// Small words on the face, no wider than this.
    fn plain(&self, at: Pos2, words: impl ToString, width: f32) {
        let words = words.to_string();
        let font = self.font(10.0, false);
        let lay = |font: FontId| self.painter.layout_no_wrap(words.clone(), font, self.text());
        let usual = lay(font.clone());
        let share = (width * self.unit / usual.size().x.max(1.0)).min(1.0);
        let galley = if share < 1.0 {
            lay(FontId::new(font.size * share, font.family))
        } else {
            usual
        };
        self.painter.galley(at - galley.size() / 2.0, galley, self.text());
    }

    fn inset(&self) -> Color32 {
        self.ink.color(|t| t.inset)
    }

    /// A needle with a tail: where it lies over the scale it is as wide as a graduation, so that the eye can tell which it
    /// covers and how far it stands between two.
    fn needle(&self, hub: Pos2, angle_deg: f32, length: f32, scale: f32, half_width: f32) {
        let (tail, along) = (22.0, direction(angle_deg));
        let across = vec2(-along.y, along.x);
        let at = |a: f32, b: f32| hub + self.unit * (a * along + b * across);
        let graduation = self.line(GRADUATION);
        let tip = 0.5 * graduation.width / self.unit;
        self.painter.add(Shape::convex_polygon(
            vec![
                at(scale, tip),
                at(0.0, half_width),
                at(0.0, -half_width),
                at(scale, -tip),
            ],
            self.text(),
            Stroke::NONE,
        ));
        self.painter
            .line_segment([at(scale - 1.0, 0.0), at(length, 0.0)], graduation);
        self.painter.line_segment(
            [hub, at(-tail, 0.0)],
            Stroke::new(1.6 * half_width * self.unit, self.text()),
        );
        self.painter.circle(hub, 4.5 * self.unit, self.inset(), self.line(2.4));
    }

    fn dial(&self, units: Units, turn_mm: f64, counted: f64, graduation_mm: f64, value: Option<f64>) {
        // A hundred divisions a turn in either system.
        let (turn, division) = match units {
            Units::Metric => (turn_mm, turn_mm / 100.0),
            Units::Inch if graduation_mm < 0.004 => (0.01 * 25.4, 0.0001),
            Units::Inch => (0.1 * 25.4, 0.001),
        };
        self.painter.circle(
            self.centre,
            99.0 * self.unit,
            self.ink.color(|t| t.panel),
            self.line(2.0),
        );
        for k in 0..60_u16 {
            let angle = 6.0 * f32::from(k);
            self.painter
                .line_segment([self.polar(angle, 94.5), self.polar(angle, 98.0)], self.line(0.9));
        }
        self.painter
            .circle(self.centre, 91.0 * self.unit, self.inset(), self.line(1.4));
        for k in 0..100_u16 {
            let angle = 3.6 * f32::from(k);
            let (inner, width) = match k {
                k if k.is_multiple_of(10) => (73.0, 2.0),
                k if k.is_multiple_of(5) => (77.0, 1.3),
                _ => (81.0, GRADUATION),
            };
            self.painter
                .line_segment([self.polar(angle, 87.0), self.polar(angle, inner)], self.line(width));
            if k.is_multiple_of(10) {
                // A fine dial in millimetres is numbered in micrometres, as its maker does; every other one in divisions.
                let micrometres = units == Units::Metric && division < 0.005;
                self.numeral(self.polar(angle, 62.0), if micrometres { 2 * k } else { k });
            }
        }
        let unit = if units == Units::Metric { "mm" } else { "in" };
        let digits = match units {
            Units::Metric if division < 0.005 => 3,
            Units::Metric => 2,
            Units::Inch if division < 0.0005 => 4,
            Units::Inch => 3,
        };
        // What a division is, and how far the small hand counts.
        self.plain(self.at(0.0, -38.0), range(0.0, counted * 100.0 * division, unit), 56.0);
        self.plain(
            self.at(0.0, -26.0),
            format!("{} {unit}", number(division, digits)),
            56.0,
        );
        let turns = value.unwrap_or(0.0) / turn;
        // Turns counter, ten marks.
        let hub = self.at(0.0, 34.0);
        self.painter.circle(hub, 16.0 * self.unit, self.inset(), self.line(0.9));
        for k in 0..10_u16 {
            let way = direction(36.0 * f32::from(k));
            self.painter.line_segment(
                [hub + 13.0 * self.unit * way, hub + 16.0 * self.unit * way],
                self.line(0.9),
            );
        }
        let small = direction(36.0 * on_screen(turns.rem_euclid(10.0)));
        self.painter
            .line_segment([hub, hub + 12.0 * self.unit * small], self.line(2.0));
        self.plain(self.at(-31.0, 32.0), say!("readings-dial-turns"), 26.0);
        self.needle(self.centre, 360.0 * on_screen(turns.rem_euclid(1.0)), 84.0, 66.0, 3.2);
    }

    fn wrench(
        &self,
        units: Units,
        amount: Amount,
        [least, full, graduation]: [f64; 3],
        [start, value]: [Option<f64>; 2],
    ) {
        let full_shown = amount.shown(full, units);
        // Numbered steps that leave five to nine numbers, and ten or five marks between them.
        let step = nice_step(full_shown);
        let marks = if units == Units::Metric && (step / graduation).round() <= 5.0 {
            5_u32
        } else {
            10
        };
        let (half, turn) = (125.0_f32, 250.0_f64);
        let angle = |shown: f64| -half + on_screen(turn * (shown / full_shown).clamp(-0.02, 1.02));
        // A round case, flat below.
        let flat: Vec<Pos2> = (0..=60_u16)
            .map(|k| self.polar(-146.0 + 292.0 * f32::from(k) / 60.0, 98.0))
            .collect();
        self.painter
            .add(Shape::convex_polygon(flat, self.ink.color(|t| t.panel), self.line(2.0)));
        let arc: Vec<Pos2> = (0..=50_u16)
            .map(|k| self.polar(-half + 5.0 * f32::from(k), 76.0))
            .collect();
        self.painter.add(Shape::line(arc, self.line(1.3)));
        let count = (full_shown / step * f64::from(marks)).floor();
        let mut k = 0_u32;
        while f64::from(k) <= count {
            let shown = step * f64::from(k) / f64::from(marks);
            let a = angle(shown);
            let (inner, width) = if k.is_multiple_of(marks) {
                (62.0, 2.0)
            } else if marks == 10 && k.is_multiple_of(5) {
                (66.0, 1.3)
            } else {
                (70.0, GRADUATION)
            };
            self.painter
                .line_segment([self.polar(a, 76.0), self.polar(a, inner)], self.line(width));
            if k.is_multiple_of(marks) {
                let decimals = usize::from((step - step.round()).abs() > 1e-9);
                self.numeral(self.polar(a, 86.0), number(shown, decimals));
            }
            k += 1;
        }
        let unit = amount.unit(units);
        let division = step / f64::from(marks);
        let digits = usize::from(division < 0.95) + usize::from(division < 0.095);
        let words = [
            range(amount.shown(least, units), full_shown, &unit),
            format!("{} {unit}", number(division, digits)),
        ];
        for (line, words) in [38.0, 50.0].into_iter().zip(words) {
            self.plain(self.at(0.0, line), words, 90.0);
        }
        if let Some(start) = start {
            let a = angle(amount.shown(start, units));
            let ends = [self.polar(a, 14.0), self.polar(a, 54.0)];
            self.painter.extend(Shape::dashed_line(
                &ends,
                self.line(1.3),
                5.0 * self.unit,
                4.0 * self.unit,
            ));
            self.painter
                .circle(self.polar(a, 58.0), 4.0 * self.unit, self.inset(), self.line(1.6));
        }
        match value {
            Some(value) => self.needle(self.centre, angle(amount.shown(value, units)), 74.0, 58.0, 3.0),
            None => self.plain(self.at(0.0, 66.0), say!("readings-shows-nothing"), 100.0),
        }
    }

    /// Sleeve and thimble; below a base bar for a depth gauge.
    fn micrometer(&self, units: Units, value: Option<f64>, base: bool) {
        let shown = match units {
            Units::Metric => value.unwrap_or(0.0),
            Units::Inch => value.unwrap_or(0.0) / 25.4,
        };
        // One turn of the thimble, its divisions, numbered every so many; turns to a long mark of the sleeve.
        let (turn, divisions, numbered, a_whole) = match units {
            Units::Metric => (0.5, 50_i32, 5, 2_i64),
            Units::Inch => (0.025, 25, 5, 4),
        };
        let edge = 0.0;
        let half = 40.0;
        let panel = self.ink.color(|t| t.panel);
        let sleeve = Rect::from_two_pos(self.at(-96.0, -26.0), self.at(edge, 26.0));
        self.painter
            .rect(sleeve, 0.0, self.inset(), self.line(1.6), StrokeKind::Middle);
        self.painter
            .line_segment([self.at(-96.0, 0.0), self.at(edge, 0.0)], self.line(1.3));
        // Marks that the thimble has passed; 14 points for a turn.
        let pitch = 14.0_f64;
        let turns = shown / turn;
        let mut mark = turns.floor();
        while mark >= 0.0 {
            let x = edge - on_screen(pitch * (turns - mark));
            if x < -92.0 {
                break;
            }
            #[expect(clippy::cast_possible_truncation, reason = "turns of a small instrument")]
            let count = mark as i64;
            if count % a_whole == 0 {
                self.painter
                    .line_segment([self.at(x, 0.0), self.at(x, -14.0)], self.line(1.6));
                // So few are seen that each carries its number.
                self.painter.text(
                    self.at(x, -19.5),
                    Align2::CENTER_CENTER,
                    count / a_whole,
                    self.font(10.0, true),
                    self.text(),
                );
            } else {
                self.painter
                    .line_segment([self.at(x, 0.0), self.at(x, 10.0)], self.line(1.0));
            }
            mark -= 1.0;
        }
        // The thimble, its marks closing toward the rims.
        let barrel = vec![
            self.at(edge, -34.0),
            self.at(edge + 14.0, -half - 4.0),
            self.at(98.0, -half - 4.0),
            self.at(98.0, half + 4.0),
            self.at(edge + 14.0, half + 4.0),
            self.at(edge, 34.0),
        ];
        self.painter.add(Shape::convex_polygon(barrel, panel, self.line(1.6)));
        let at_line = (turns - turns.floor()) * f64::from(divisions);
        for k in 0..divisions {
            // Divisions from the line, the short way round; the scale grows upward.
            let n = f64::from(divisions);
            let away = (f64::from(k) - at_line + 1.5 * n).rem_euclid(n) - 0.5 * n;
            let turned = on_screen(away / n * 360.0);
            if turned.abs() > 82.0 {
                continue;
            }
            // As it looks on a barrel: 34 points from the line to its rim.
            let y = -34.0 * direction(turned).x;
            let long = k % numbered == 0;
            let end = if long { edge + 14.0 } else { edge + 8.0 };
            self.painter.line_segment(
                [self.at(edge, y), self.at(end, y)],
                self.line(if long { 1.6 } else { 0.9 }),
            );
            if long && turned.abs() < 64.0 {
                self.painter.text(
                    self.at(edge + 18.0, y),
                    Align2::LEFT_CENTER,
                    k,
                    self.font(10.0, true),
                    self.text(),
                );
            }
        }
        for k in 0..12_u16 {
            let x = 44.0 + 4.4 * f32::from(k);
            self.painter
                .line_segment([self.at(x, -half - 4.0), self.at(x, half + 4.0)], self.line(0.7));
        }
        let words = match units {
            Units::Metric => say!("readings-micrometer-metric"),
            Units::Inch => say!("readings-micrometer-inch"),
        };
        self.plain(self.at(0.0, 60.0), words, 190.0);
        if !base {
            let words = match units {
                Units::Metric => range(0.0, 25.0, "mm"),
                Units::Inch => range(0.0, 1.0, "in"),
            };
            self.plain(self.at(0.0, 74.0), words, 190.0);
        }
        if base {
            let bar = Rect::from_two_pos(self.at(-96.0, 74.0), self.at(-26.0, 82.0));
            self.painter.rect(bar, 0.0, panel, self.line(1.4), StrokeKind::Middle);
            self.painter
                .line_segment([self.at(-60.0, 82.0), self.at(-60.0, 96.0)], self.line(2.0));
            self.plain(self.at(38.0, 84.0), say!("readings-depth-from"), 116.0);
        }
    }

    fn feeler(&self, units: Units, leaves_mm: &[f64], value: Option<f64>) {
        let hub = self.at(0.0, 76.0);
        let chosen = value.and_then(|v| leaves_mm.iter().position(|leaf| (leaf - v).abs() < 1e-6));
        // Six blades around the chosen one.
        let first = chosen
            .unwrap_or(0)
            .saturating_sub(2)
            .min(leaves_mm.len().saturating_sub(6));
        let mut order: Vec<usize> = (first..first + 6).filter(|leaf| *leaf < leaves_mm.len()).collect();
        order.sort_by_key(|leaf| Some(*leaf) == chosen);
        for leaf in order {
            let place = leaf - first;
            #[expect(clippy::cast_possible_truncation, reason = "one of six")]
            let angle = -46.0 + 92.0 * (place as f64 / 5.0) as f32;
            let mine = Some(leaf) == chosen;
            let length = if mine { 158.0 } else { 132.0 };
            let along = direction(angle);
            let across = vec2(-along.y, along.x);
            let at = |a: f32, b: f32| hub + self.unit * (a * along + b * across);
            let mut outline = vec![at(0.0, -7.0), at(length - 8.0, -9.0)];
            for k in 0..=6_u16 {
                let bend = direction(-90.0 + 30.0 * f32::from(k));
                outline.push(at(length - 8.0 - 8.0 * bend.y, 9.0 * bend.x));
            }
            outline.extend([at(length - 8.0, 9.0), at(0.0, 7.0)]);
            let stroke = if mine {
                Stroke::new(2.6, self.ink.color(|t| t.accent))
            } else {
                self.line(1.3)
            };
            self.painter.add(Shape::convex_polygon(outline, self.inset(), stroke));
            let words = match (leaves_mm.get(leaf), units) {
                (Some(mm), Units::Metric) => number(*mm, if *mm < 0.045 { 3 } else { 2 }),
                (Some(mm), Units::Inch) => number(mm / 25.4, 4),
                (None, _) => String::new(),
            };
            let galley = self.painter.layout_no_wrap(words, self.font(12.0, mine), self.text());
            let turn = (angle - 90.0).to_radians();
            let half = galley.size() / 2.0;
            let (sin, cos) = (direction(angle - 90.0).x, -direction(angle - 90.0).y);
            let corner = at(length - 34.0, 0.0) - vec2(half.x * cos - half.y * sin, half.x * sin + half.y * cos);
            self.painter
                .add(egui::epaint::TextShape::new(corner, galley, self.text()).with_angle(turn));
        }
        self.painter.circle(hub, 14.0 * self.unit, self.inset(), self.line(1.6));
        self.painter.circle_filled(hub, 4.0 * self.unit, self.text());
        if let (Some(thinnest), Some(thickest)) = (leaves_mm.first(), leaves_mm.last()) {
            let (ends, unit, digits) = match units {
                Units::Metric => ([*thinnest, *thickest], "mm", [3, 2]),
                Units::Inch => ([thinnest / 25.4, thickest / 25.4], "in", [4, 3]),
            };
            let words = between(ends, digits, unit);
            self.plain(self.at(-60.0, 90.0), words, 76.0);
        }
    }

    fn thermometer(&self, value: Option<f64>) {
        let shown = value.unwrap_or(20.0);
        let most = if shown > 115.0 { 420.0 } else { 120.0 };
        let step = if most > 200.0 { 20.0 } else { 5.0 };
        let (top, foot) = (-88.0_f32, 62.0_f32);
        let y = |c: f64| foot + (top - foot) * on_screen((c / most).clamp(0.0, 1.0));
        let tube = Rect::from_two_pos(self.at(-12.0, top - 8.0), self.at(12.0, foot + 10.0));
        self.painter
            .rect(tube, 12.0 * self.unit, self.inset(), self.line(1.6), StrokeKind::Middle);
        self.painter
            .circle_filled(self.at(0.0, 78.0), 18.0 * self.unit, self.text());
        self.painter.line_segment(
            [self.at(0.0, 78.0), self.at(0.0, y(shown))],
            Stroke::new(10.0 * self.unit, self.text()),
        );
        let mut mark = 0.0;
        let mut k = 0_u32;
        while mark <= most + 1e-9 {
            let long = k.is_multiple_of(4);
            let end = if long { 34.0 } else { 26.0 };
            self.painter.line_segment(
                [self.at(18.0, y(mark)), self.at(end, y(mark))],
                self.line(if long { 1.8 } else { 1.0 }),
            );
            if long {
                self.painter.text(
                    self.at(40.0, y(mark)),
                    Align2::LEFT_CENTER,
                    number(mark, 0),
                    self.font(12.0, true),
                    self.text(),
                );
            }
            mark += step;
            k += 1;
        }
        self.plain(self.at(60.0, 74.0), range(0.0, most, "°C"), 70.0);
        self.plain(self.at(60.0, 86.0), format!("{} °C", number(step, 0)), 70.0);
    }

    fn click(&self) {
        let body = Rect::from_two_pos(self.at(-96.0, -10.0), self.at(60.0, 10.0));
        self.painter.rect(
            body,
            4.0,
            self.ink.color(|t| t.panel),
            self.line(1.6),
            StrokeKind::Middle,
        );
        self.painter
            .circle(self.at(76.0, 0.0), 18.0 * self.unit, self.inset(), self.line(1.8));
        self.plain(self.at(0.0, 34.0), say!("readings-clicks"), 190.0);
    }

    fn eye(&self) {
        let lid = |sign: f32| -> Vec<Pos2> {
            (0..=20_u16)
                .map(|k| {
                    let x = -70.0 + 7.0 * f32::from(k);
                    let share = x / 70.0;
                    self.at(x, sign * 38.0 * (1.0 - share * share))
                })
                .collect()
        };
        for sign in [-1.0, 1.0] {
            self.painter.add(Shape::line(lid(sign), self.line(1.8)));
        }
        self.painter
            .circle(self.at(0.0, 0.0), 22.0 * self.unit, self.inset(), self.line(1.8));
        self.painter
            .circle_filled(self.at(0.0, 0.0), 9.0 * self.unit, self.text());
    }
}

/// How far an instrument reaches, as it is written on its face.
fn range(least: f64, most: f64, unit: &str) -> String {
    let digits = |value: f64| usize::from((value - value.round()).abs() > 0.05);
    between([least, most], [digits(least), digits(most)], unit)
}

fn between([least, most]: [f64; 2], [first, second]: [usize; 2], unit: &str) -> String {
    let (least, most) = (number(least, first), number(most, second));
    format!("{least}\u{2013}{most} {unit}")
}

/// The way that an angle points, from straight up, clockwise, degrees.
fn direction(angle_deg: f32) -> Vec2 {
    let turn = egui::emath::Rot2::from_angle(angle_deg.to_radians());
    turn * vec2(0.0, -1.0)
}

/// A numbered step of 1, 2 or 5 times a power of ten that leaves at most nine numbers.
fn nice_step(full: f64) -> f64 {
    let mut size = 0.1;
    loop {
        for times in [1.0, 2.0, 5.0] {
            if full / (times * size) <= 9.0 {
                return times * size;
            }
        }
        size *= 10.0;
        if size > 1e6 {
            return full;
        }
    }
}
