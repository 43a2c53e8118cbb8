//! Pictures of `drawing` on the screen: the same items that are written as SVG, painted by egui.
//!
//! egui fills only convex shapes, and prints have holes and bays: areas are cut into level strips between all their corners,
//! in each of which they are trapezoids. Hatches are laid over the same strips.

use egui::epaint::{Mesh, TextShape, Vertex, WHITE_UV};
use egui::{Color32, FontFamily, FontId, Painter, Pos2, Shape, Stroke, pos2, vec2};

use super::theme;
use crate::drawing::{self, Anchor, Fill, Hatch, Item, LineStyle, Path, Segment, Weight};
use crate::view::Theme;

/// Straight pieces of a curve.
const PIECES: u32 = 8;
/// Distance of the lines of a hatch, points.
const TILE: f32 = 8.0;
/// Rim around text over lines, points.
const HALO: f32 = 1.6;

/// Where and how large a picture is painted.
#[derive(Debug, Clone, Copy)]
pub(super) struct PictureArea {
    /// Where its upper left corner stands.
    pub(super) corner: Pos2,
    /// Points of the screen for a point of the picture.
    pub(super) scale: f32,
    theme: drawing::Theme,
}

impl PictureArea {
    /// At a corner, in the colours of the window.
    pub(super) fn new(corner: Pos2, scale: f32, theme: Theme) -> Self {
        Self {
            corner,
            scale,
            theme: match theme {
                Theme::Paper => drawing::Theme::Paper,
                Theme::Slate => drawing::Theme::Slate,
            },
        }
    }

    #[expect(clippy::cast_possible_truncation, reason = "places on a screen")]
    fn at(&self, point: drawing::Point) -> Pos2 {
        self.corner + self.scale * vec2(point.x as f32, point.y as f32)
    }

    #[expect(clippy::cast_possible_truncation, reason = "sizes on a screen")]
    fn size(&self, points: f64) -> f32 {
        self.scale * points as f32
    }

    fn color(&self, ink: drawing::Ink) -> Color32 {
        let [r, g, b] = ink.rgb(self.theme);
        Color32::from_rgb(r, g, b)
    }

    /// A rectangle of the picture on the screen.
    pub(super) fn rect(&self, rect: &drawing::Rect) -> egui::Rect {
        egui::Rect::from_two_pos(
            self.at(drawing::Point::new(rect.left, rect.top)),
            self.at(drawing::Point::new(rect.right, rect.bottom)),
        )
    }

    /// Paints items, one over the other.
    pub(super) fn paint(&self, painter: &Painter, items: &[Item]) {
        for item in items {
            match item {
                Item::Shape { path, fill, stroke } => {
                    let lines = self.lines(path);
                    if let Some(fill) = fill {
                        self.fill(painter, &lines, fill);
                    }
                    if let Some(stroke) = stroke {
                        self.stroke(painter, &lines, stroke);
                    }
                }
                Item::Text(text) => self.text(painter, text),
                Item::Clipped { to, items } => {
                    let inside = painter.with_clip_rect(painter.clip_rect().intersect(self.rect(to)));
                    self.paint(&inside, items);
                }
            }
        }
    }

    /// A path as lines of points, each with whether it returns to its start.
    fn lines(&self, path: &Path) -> Vec<(Vec<Pos2>, bool)> {
        let mut lines: Vec<(Vec<Pos2>, bool)> = Vec::new();
        for segment in &path.segments {
            match *segment {
                Segment::Move(point) => lines.push((vec![self.at(point)], false)),
                Segment::Line(point) => {
                    if let Some((points, _)) = lines.last_mut() {
                        points.push(self.at(point));
                    }
                }
                Segment::Curve(a, b, end) => {
                    if let Some((points, _)) = lines.last_mut()
                        && let Some(&start) = points.last()
                    {
                        let (a, b, end) = (self.at(a), self.at(b), self.at(end));
                        for k in 1..=PIECES {
                            let t = k as f32 / PIECES as f32;
                            let s = 1.0 - t;
                            let mixed = s * s * s * start.to_vec2()
                                + 3.0 * s * s * t * a.to_vec2()
                                + 3.0 * s * t * t * b.to_vec2()
                                + t * t * t * end.to_vec2();
                            points.push(mixed.to_pos2());
                        }
                    }
                }
                Segment::Close => {
                    if let Some((_, closed)) = lines.last_mut() {
                        *closed = true;
                    }
                }
            }
        }
        lines
    }

    fn fill(&self, painter: &Painter, lines: &[(Vec<Pos2>, bool)], fill: &Fill) {
        let strips = strips(lines);
        match *fill {
            Fill::Plain { ink, opacity } => {
                #[expect(clippy::cast_possible_truncation, reason = "a share")]
                let color = self.color(ink).gamma_multiply(opacity as f32);
                let mut mesh = Mesh::default();
                for strip in &strips {
                    let first = u32::try_from(mesh.vertices.len()).unwrap_or(u32::MAX);
                    for pos in strip.corners() {
                        mesh.vertices.push(Vertex {
                            pos,
                            uv: WHITE_UV,
                            color,
                        });
                    }
                    mesh.add_triangle(first, first + 1, first + 2);
                    mesh.add_triangle(first, first + 2, first + 3);
                }
                painter.add(Shape::mesh(mesh));
            }
            Fill::Hatched { hatch, ink } => {
                let stroke = Stroke::new(self.scale, self.color(ink));
                for (a, b) in hatch_lines(hatch, &strips, self.scale * TILE) {
                    painter.line_segment([a, b], stroke);
                }
                if hatch == Hatch::Stipple {
                    for dot in dots(&strips, self.scale * TILE) {
                        painter.circle_filled(dot, 0.9 * self.scale, stroke.color);
                    }
                }
            }
        }
    }

    fn stroke(&self, painter: &Painter, lines: &[(Vec<Pos2>, bool)], stroke: &drawing::Stroke) {
        let line = Stroke::new(self.size(stroke.width), self.color(stroke.ink));
        let breaks: &[f32] = match stroke.style {
            LineStyle::Full => &[],
            LineStyle::Dashed => &[9.0, 4.0],
            LineStyle::FineDashed => &[4.0, 3.0],
            LineStyle::DashDot => &[10.0, 4.0, 2.0, 4.0],
            LineStyle::Dotted => &[1.5, 3.5],
        };
        for (points, closed) in lines {
            let mut points = points.clone();
            if breaks.is_empty() {
                painter.add(if *closed {
                    Shape::closed_line(points, line)
                } else {
                    Shape::line(points, line)
                });
                continue;
            }
            if *closed && let Some(&first) = points.first() {
                points.push(first);
            }
            for dash in dashes(&points, breaks, self.scale) {
                painter.add(Shape::line(dash, line));
            }
        }
    }

    fn text(&self, painter: &Painter, text: &drawing::Text) {
        let family = match text.weight {
            Weight::Regular => FontFamily::Proportional,
            Weight::Bold => theme::bold(),
        };
        let font = FontId::new(self.size(text.size), family);
        let color = self.color(text.ink);
        let galley = painter.layout_no_wrap(text.words.clone(), font, color);
        // The base line of its one row.
        let base = galley
            .rows
            .first()
            .and_then(|row| row.glyphs.first().map(|glyph| row.pos.y + glyph.pos.y))
            .unwrap_or(0.8 * galley.size().y);
        let back = match text.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => 0.5 * galley.size().x,
            Anchor::End => galley.size().x,
        };
        let at = self.at(text.at);
        let (corner, angle) = if text.upward {
            (at + vec2(-base, back), -std::f32::consts::FRAC_PI_2)
        } else {
            (at - vec2(back, base), 0.0)
        };
        if let Some(halo) = text.halo {
            let rim = self.color(halo);
            for k in 0..8_u8 {
                let turn = f32::from(k) * std::f32::consts::FRAC_PI_4;
                let away = self.scale * HALO * egui::Vec2::angled(turn);
                let mut shape = TextShape::new(corner + away, galley.clone(), rim).with_override_text_color(rim);
                shape.angle = angle;
                painter.add(shape);
            }
        }
        let mut shape = TextShape::new(corner, galley, color);
        shape.angle = angle;
        painter.add(shape);
    }
}

/// A trapezoid with level sides above and below.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Strip {
    top: f32,
    bottom: f32,
    /// Left and right end above, then below.
    above: [f32; 2],
    below: [f32; 2],
}

impl Strip {
    fn corners(&self) -> [Pos2; 4] {
        [
            pos2(self.above[0], self.top),
            pos2(self.above[1], self.top),
            pos2(self.below[1], self.bottom),
            pos2(self.below[0], self.bottom),
        ]
    }

    /// Its ends at a height inside.
    fn ends_at(&self, y: f32) -> [f32; 2] {
        let t = (y - self.top) / (self.bottom - self.top);
        [0, 1].map(|k| self.above[k] + t * (self.below[k] - self.above[k]))
    }
}

/// The inside of closed lines (those that do not close are taken to) by the non-zero rule, as SVG has it.
fn strips(lines: &[(Vec<Pos2>, bool)]) -> Vec<Strip> {
    let mut edges: Vec<(Pos2, Pos2, i32)> = Vec::new();
    let mut heights: Vec<f32> = Vec::new();
    for (points, _) in lines {
        let following = points.iter().cycle().skip(1);
        for (&a, &b) in points.iter().zip(following) {
            if a.y < b.y {
                edges.push((a, b, 1));
            } else if b.y < a.y {
                edges.push((b, a, -1));
            }
            heights.push(a.y);
        }
    }
    heights.sort_by(f32::total_cmp);
    heights.dedup_by(|a, b| *a - *b < 1e-3);
    edges.sort_by(|a, b| a.0.y.total_cmp(&b.0.y));
    let mut strips = Vec::new();
    let mut crossing: Vec<(f32, f32, i32)> = Vec::new();
    for pair in heights.windows(2) {
        let &[top, bottom] = pair else { continue };
        let middle = 0.5 * (top + bottom);
        crossing.clear();
        for (a, b, sense) in edges.iter().take_while(|(a, ..)| a.y < middle) {
            if b.y > middle {
                let x_at = |y: f32| a.x + (b.x - a.x) * ((y - a.y) / (b.y - a.y)).clamp(0.0, 1.0);
                crossing.push((x_at(top), x_at(bottom), *sense));
            }
        }
        crossing.sort_by(|a, b| (a.0 + a.1).total_cmp(&(b.0 + b.1)));
        let mut winding = 0;
        let mut left = None;
        for &(above, below, sense) in &crossing {
            let before = winding;
            winding += sense;
            if before == 0 {
                left = Some((above, below));
            } else if winding == 0
                && let Some((left_above, left_below)) = left.take()
            {
                strips.push(Strip {
                    top,
                    bottom,
                    above: [left_above, above],
                    below: [left_below, below],
                });
            }
        }
    }
    strips
}

/// The lines of a hatch inside of strips.
fn hatch_lines(hatch: Hatch, strips: &[Strip], tile: f32) -> Vec<(Pos2, Pos2)> {
    let mut lines = Vec::new();
    let slopes: &[f32] = match hatch {
        Hatch::Rising => &[-1.0],
        Hatch::Falling => &[1.0],
        Hatch::Crossed => &[-1.0, 1.0],
        Hatch::Upright => &[0.0],
        Hatch::Level => {
            for strip in strips {
                let mut y = ((strip.top / tile - 0.5).ceil() + 0.5) * tile;
                while y < strip.bottom {
                    let [left, right] = strip.ends_at(y);
                    lines.push((pos2(left, y), pos2(right, y)));
                    y += tile;
                }
            }
            return lines;
        }
        Hatch::Stipple => &[],
    };
    // A line x = c + slope · y meets a trapezoid between two heights.
    for &slope in slopes {
        for strip in strips {
            let along = |x: f32, y: f32| x - slope * y;
            let corners = strip.corners().map(|p| along(p.x, p.y));
            let low = corners.iter().copied().fold(f32::INFINITY, f32::min);
            let high = corners.iter().copied().fold(f32::NEG_INFINITY, f32::max);
            let mut c = (low / tile).ceil() * tile;
            while c <= high {
                if let Some([from, to]) = inside(strip, c, slope) {
                    lines.push((pos2(c + slope * from, from), pos2(c + slope * to, to)));
                }
                c += tile;
            }
        }
    }
    lines
}

/// Heights between which the line x = c + slope · y runs inside a strip.
fn inside(strip: &Strip, c: f32, slope: f32) -> Option<[f32; 2]> {
    let (mut from, mut to) = (strip.top, strip.bottom);
    let height = strip.bottom - strip.top;
    for (k, sense) in [(0, 1.0), (1, -1.0)] {
        // Positive where the line is on the inner side of this end.
        let room = |y: f32, end: f32| sense * (c + slope * y - end);
        let (above, below) = (room(strip.top, strip.above[k]), room(strip.bottom, strip.below[k]));
        match (above >= 0.0, below >= 0.0) {
            (true, true) => {}
            (false, false) => return None,
            (true, false) => to = to.min(strip.top + height * above / (above - below)),
            (false, true) => from = from.max(strip.top + height * above / (above - below)),
        }
    }
    (to > from).then_some([from, to])
}

/// Two dots a tile, at a quarter and three quarters both ways.
fn dots(strips: &[Strip], tile: f32) -> Vec<Pos2> {
    let mut dots = Vec::new();
    for strip in strips {
        for share in [0.25, 0.75] {
            let mut y = ((strip.top / tile - share).ceil() + share) * tile;
            while y < strip.bottom {
                let [left, right] = strip.ends_at(y);
                let mut x = ((left / tile - share).ceil() + share) * tile;
                while x < right {
                    dots.push(pos2(x, y));
                    x += tile;
                }
                y += tile;
            }
        }
    }
    dots
}

/// A line broken up: on, off, on, off …
fn dashes(points: &[Pos2], breaks: &[f32], scale: f32) -> Vec<Vec<Pos2>> {
    let mut dashes: Vec<Vec<Pos2>> = Vec::new();
    let mut place = 0;
    let mut left = breaks.first().map_or(f32::INFINITY, |b| b * scale);
    let mut open: Option<Vec<Pos2>> = points.first().map(|p| vec![*p]);
    for pair in points.windows(2) {
        let &[a, b] = pair else { continue };
        let length = a.distance(b);
        let mut gone = 0.0;
        while length - gone > left {
            gone += left;
            let at = a + (b - a) * (gone / length);
            if let Some(mut dash) = open.take() {
                dash.push(at);
                dashes.push(dash);
            } else {
                open = Some(vec![at]);
            }
            place = (place + 1) % breaks.len().max(1);
            left = breaks.get(place).map_or(f32::INFINITY, |b| b * scale);
        }
        left -= length - gone;
        if let Some(dash) = &mut open {
            dash.push(b);
        }
    }
    dashes.extend(open);
    dashes
}

#[cfg(test)]
mod tests {
    use super::*;

    fn area(strips: &[Strip]) -> f32 {
        strips
            .iter()
            .map(|s| 0.5 * (s.bottom - s.top) * (s.above[1] - s.above[0] + s.below[1] - s.below[0]))
            .sum()
    }

    fn ring(points: &[(f32, f32)]) -> (Vec<Pos2>, bool) {
        (points.iter().map(|&(x, y)| pos2(x, y)).collect(), true)
    }

    #[test]
    fn strips_hold_the_area_of_bays_and_holes() {
        let bay = ring(&[(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (5.0, 4.0), (0.0, 10.0)]);
        assert!(
            (area(&strips(&[bay])) - 70.0).abs() < 1e-3,
            "a square less a triangle of 30"
        );
        let outer = ring(&[(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)]);
        let hole = ring(&[(2.0, 2.0), (2.0, 6.0), (6.0, 6.0), (6.0, 2.0)]);
        assert!(
            (area(&strips(&[outer.clone(), hole])) - 84.0).abs() < 1e-3,
            "a hole of 16 turns the other way"
        );
        let island = ring(&[(2.0, 2.0), (6.0, 2.0), (6.0, 6.0), (2.0, 6.0)]);
        assert!(
            (area(&strips(&[outer, island])) - 100.0).abs() < 1e-3,
            "the same way it is no hole"
        );
    }

    #[test]
    fn hatches_stay_inside() {
        let triangle = strips(&[ring(&[(0.0, 0.0), (40.0, 0.0), (20.0, 40.0)])]);
        let within = |p: Pos2| {
            let half = 20.0 * (1.0 - p.y / 40.0);
            p.y > -0.01 && p.y < 40.01 && (p.x - 20.0).abs() < half + 0.01
        };
        for hatch in [
            Hatch::Rising,
            Hatch::Falling,
            Hatch::Upright,
            Hatch::Level,
            Hatch::Crossed,
        ] {
            let lines = hatch_lines(hatch, &triangle, 8.0);
            assert!(lines.len() > 3, "{hatch:?}: {}", lines.len());
            assert!(
                lines.iter().all(|(a, b)| within(*a) && within(*b)),
                "{hatch:?}: {lines:?}"
            );
        }
        let stipple = dots(&triangle, 8.0);
        assert!(stipple.len() > 15 && stipple.iter().all(|p| within(*p)), "{stipple:?}");
    }

    #[test]
    fn dashes_cover_their_share_of_a_line() {
        let points = [pos2(0.0, 0.0), pos2(50.0, 0.0), pos2(50.0, 80.0)];
        let drawn: f32 = dashes(&points, &[9.0, 4.0], 1.0)
            .iter()
            .flat_map(|dash| dash.windows(2))
            .map(|p| p[0].distance(p[1]))
            .sum();
        assert!((drawn - 90.0).abs() < 1e-3, "ten dashes of 9 on 130: {drawn}");
    }
}
