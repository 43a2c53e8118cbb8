//! The picture of a flank: toe left, heel right, top up; paste, print, lines of equal gap.

use super::field::{ClosedLine, Contour};
use super::ink::Ink;
use super::mark::Mark;
use super::path::{Path, Point, Rect};
use super::picture::{Anchor, Fill, Hatch, Item, LineStyle, Stroke, Text};
use super::tooth::{Edge, Flank, Print, ToothWords};
use crate::quantity::number;

/// Levels of the contour lines as multiples of the film.
const LEVELS: [f64; 5] = [0.25, 0.5, 1.0, 2.0, 4.0];
/// Where the lines of the nine fields run.
const THIRDS: [f64; 2] = [-1.0 / 3.0, 1.0 / 3.0];
/// Small type.
const SMALL: f64 = 12.0;
/// Body type.
const BODY: f64 = 13.0;
/// Free space that a label on a contour line wants around its middle, points.
const LABEL_ROOM: f64 = 15.0;
/// A way to the edge that is shorter than this leaves no room for its words, points.
const SHORTEST_WITH_WORDS: f64 = 18.0;
/// Length of the scale bar, mm.
const BAR_MM: f64 = 5.0;

/// A print at a place of a picture.
#[derive(Debug, Clone, Copy)]
pub struct ToothView<'p> {
    print: &'p Print,
    /// Points a millimetre, both ways.
    scale: f64,
    /// Where the middle of the length at pitch-cone height stands.
    origin: Point,
}

impl<'p> ToothView<'p> {
    /// As large as an area allows, in its middle.
    pub fn fitted(print: &'p Print, area: Rect) -> Self {
        let [low, high] = print.outline.reach();
        let (wide, tall) = (print.outline.face_width_mm, high - low);
        let (by_width, by_height) = (area.width() / wide, area.height() / tall);
        let scale = if by_width < by_height { by_width } else { by_height };
        Self {
            print,
            scale,
            origin: Point::new(
                0.5 * (area.left + area.right),
                0.5 * (area.top + area.bottom) + 0.5 * scale * (low + high),
            ),
        }
    }

    /// Points a millimetre.
    pub fn scale(&self) -> f64 {
        self.scale
    }

    /// Where flank coordinates stand in the picture.
    pub fn point(&self, at: [f64; 2]) -> Point {
        let place = self.print.outline.place(at);
        Point::new(
            self.origin.x + self.scale * place.along_mm,
            self.origin.y - self.scale * place.up_mm,
        )
    }

    /// The rectangle that the tooth fills.
    pub fn extent(&self) -> Rect {
        let [low, high] = self.print.outline.reach();
        Rect {
            left: self.point([-1.0, 0.0]).x,
            right: self.point([1.0, 0.0]).x,
            top: self.origin.y - self.scale * high,
            bottom: self.origin.y - self.scale * low,
        }
    }

    /// The tooth's outline in the picture.
    pub fn outline(&self) -> Path {
        Path::closed([[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]].map(|at| self.point(at)))
    }

    /// Rings in the picture.
    pub fn area(&self, rings: &[ClosedLine]) -> Path {
        rings.iter().fold(Path::default(), |path, ring| {
            path.and(Path::closed(ring.points.iter().map(|&at| self.point(at))))
        })
    }

    fn line(&self, contour: &Contour) -> Path {
        let points = contour.points.iter().map(|&at| self.point(at));
        if contour.closed {
            Path::closed(points)
        } else {
            Path::open(points)
        }
    }

    /// Paste and print without any writing, for small pictures; with the flank's own line around it, or a thin plain one.
    pub fn small(&self, flank_line: bool) -> Vec<Item> {
        let plain = |ink| Fill::Plain { ink, opacity: 1.0 };
        let mut items = vec![Item::filled(self.outline(), plain(Ink::Hairline))];
        items.push(Item::filled(self.area(&self.print.gap_um.present()), plain(Ink::Paste)));
        let marked = self.print.marked();
        if !marked.is_empty() {
            items.push(Item::filled(self.area(&marked), plain(Ink::Steel)));
            for contour in self.print.gap_um.contours(self.print.film_um) {
                items.push(Item::stroked(self.line(&contour), Stroke::full(Ink::GhostDark, 0.6)));
            }
        }
        let flank = self.print.flank;
        let style = match flank {
            Flank::Drive => LineStyle::Full,
            Flank::Coast => LineStyle::FineDashed,
        };
        items.push(Item::stroked(
            self.outline(),
            if flank_line {
                Stroke::full(flank.ink(), 1.2).styled(style)
            } else {
                Stroke::full(Ink::Line, 0.8)
            },
        ));
        items
    }

    /// The whole picture: paste, print, nine fields, lines of equal gap with their levels, middle, way to the nearest
    /// edge, and the words of the four edges around it with a scale bar.
    pub fn large(&self, words: &ToothWords) -> Vec<Item> {
        let mut items = self.surface();
        let contours = self.contours();
        items.extend(self.contour_lines(&contours));
        let flank = self.print.flank;
        items.push(Item::stroked(
            self.outline(),
            Stroke::full(flank.ink(), 2.0).styled(flank.line()),
        ));
        let mut taken = Vec::new();
        if let Some(centroid) = self.print.centroid {
            let at = self.point(centroid);
            taken.push(at);
            items.extend(Mark::Plus.items(at, 13.0, Ink::GhostLight, Ink::GhostDark));
        }
        items.extend(self.way_to_edge(&mut taken));
        items.extend(self.labels(&contours, &mut taken));
        if self.print.marked().is_empty() {
            let extent = self.extent();
            let at = Point::new(0.5 * (extent.left + extent.right), self.point([0.0, 0.0]).y + 5.0);
            let (why, halo) = if self.print.gap_um.present().is_empty() {
                (&words.cannot_touch, Ink::Inset)
            } else {
                (&words.no_print, Ink::Paste)
            };
            let text = Text::new(at, why.clone(), BODY).bold().anchored(Anchor::Middle);
            let text = if halo == Ink::Paste {
                text.ink(Ink::GhostDark)
            } else {
                text
            };
            items.push(Item::Text(text.with_halo(halo)));
        }
        items.extend(self.words(words));
        items
    }

    /// The outline of another print of the same flank: dashes on a light line, so that it shows on paste and on steel.
    pub fn ghost(&self, other: &Print) -> Vec<Item> {
        let mut items = Vec::new();
        for contour in other.gap_um.contours(other.film_um) {
            let line = self.line(&contour);
            items.push(Item::stroked(line.clone(), Stroke::full(Ink::GhostLight, 3.0)));
            items.push(Item::stroked(
                line,
                Stroke::full(Ink::GhostDark, 1.8).styled(LineStyle::DashDot),
            ));
        }
        items
    }

    /// Where the word "root" stands: in the middle, or aside where the length of the way to the root is written.
    fn root_word_at(&self) -> f64 {
        let middle = self.point([0.0, -1.0]).x;
        let near = self.print.nearest().filter(|n| n.edge == Edge::Root && !n.runs_off());
        match near.map(|n| self.point(n.at).x) {
            Some(x) if (x - middle).abs() < 64.0 => x - 64.0,
            _ => middle,
        }
    }

    fn surface(&self) -> Vec<Item> {
        let plain = |ink| Fill::Plain { ink, opacity: 1.0 };
        let hatched = |hatch, ink| Fill::Hatched { hatch, ink };
        let present = self.area(&self.print.gap_um.present());
        let marked = self.print.marked();
        let mut items = vec![
            Item::filled(self.outline(), plain(Ink::Inset)),
            Item::filled(self.outline(), hatched(Hatch::Crossed, Ink::Line)),
            Item::filled(present.clone(), plain(Ink::Paste)),
            Item::filled(present, hatched(Hatch::Stipple, Ink::PasteRim)),
        ];
        if !marked.is_empty() {
            let area = self.area(&marked);
            items.push(Item::filled(area.clone(), plain(Ink::Steel)));
            items.push(Item::filled(area, hatched(Hatch::Level, Ink::SteelWorn)));
        }
        for third in THIRDS {
            for (from, to) in [([third, -1.0], [third, 1.0]), ([-1.0, third], [1.0, third])] {
                items.push(Item::stroked(
                    Path::line(self.point(from), self.point(to)),
                    Stroke::full(Ink::SteelWorn, 0.8),
                ));
            }
        }
        items
    }

    /// Contour lines with their levels, µm.
    fn contours(&self) -> Vec<(f64, Vec<Contour>)> {
        LEVELS
            .iter()
            .map(|factor| factor * self.print.film_um)
            .map(|level| (level, self.print.gap_um.contours(level)))
            .collect()
    }

    fn contour_lines(&self, contours: &[(f64, Vec<Contour>)]) -> Vec<Item> {
        let film = self.print.film_um;
        let strokes = |level: f64| -> Vec<Stroke> {
            if level < film {
                vec![Stroke::full(Ink::GhostLight, 1.0)]
            } else if level > film {
                vec![Stroke::full(Ink::GhostDark, 0.9)]
            } else {
                // The ridge of paste that the print leaves around itself, and the film's own line.
                vec![Stroke::full(Ink::PasteRim, 5.0), Stroke::full(Ink::GhostDark, 2.0)]
            }
        };
        let mut items = Vec::new();
        for (level, lines) in contours {
            for line in lines {
                for stroke in strokes(*level) {
                    items.push(Item::stroked(self.line(line), stroke));
                }
            }
        }
        items
    }

    /// From the print to the edge that it comes nearest to, with the distance; a warning mark where it runs off.
    fn way_to_edge(&self, taken: &mut Vec<Point>) -> Vec<Item> {
        let outline = &self.print.outline;
        let mut items = Vec::new();
        for off in self.print.distances().iter().filter(|n| n.runs_off()) {
            let p = self.point(off.middle);
            let (dx, dy) = match off.edge {
                Edge::Toe => (-12.0, 0.0),
                Edge::Heel => (12.0, 0.0),
                Edge::Root => (0.0, 12.0),
                Edge::Top => (0.0, -12.0),
            };
            items.extend(Mark::Off.items(Point::new(p.x + dx, p.y + dy), 17.0, Ink::Off, Ink::Inset));
        }
        let Some(nearest) = self.print.nearest().filter(|n| !n.runs_off()) else {
            return items;
        };
        let [x, y] = nearest.at;
        let from = self.point(nearest.at);
        let to = match nearest.edge {
            Edge::Toe => Point::new(self.point([-1.0, y]).x, from.y),
            Edge::Heel => Point::new(self.point([1.0, y]).x, from.y),
            Edge::Root => self.point([x, -1.0]),
            Edge::Top => self.point([x, 1.0]),
        };
        let upright = matches!(nearest.edge, Edge::Root | Edge::Top);
        let (tx, ty) = if upright { (5.0, 0.0) } else { (0.0, 5.0) };
        let bar = |at: Point| Path::line(Point::new(at.x - tx, at.y - ty), Point::new(at.x + tx, at.y + ty));
        let path = Path::line(from, to).and(bar(from)).and(bar(to));
        items.push(Item::stroked(path.clone(), Stroke::full(Ink::Paste, 5.0)));
        items.push(Item::stroked(path, Stroke::full(Ink::GhostDark, 1.4)));
        let middle = Point::new(0.5 * (from.x + to.x), 0.5 * (from.y + to.y));
        let words = in_mm(outline.distance_mm(nearest.edge, nearest.at), 1);
        let short = (to.y - from.y).abs() < SHORTEST_WITH_WORDS;
        let text = if upright && short {
            // No room inside: the words stand outside, beyond the edge.
            let y = if nearest.edge == Edge::Top {
                to.y - 7.0
            } else {
                to.y + 16.0
            };
            let text = Text::new(Point::new(to.x, y), words, SMALL).anchored(Anchor::Middle);
            items.push(Item::Text(text.bold()));
            taken.push(middle);
            return items;
        } else if upright {
            Text::new(Point::new(middle.x + 9.0, middle.y + 4.5), words, SMALL)
        } else {
            Text::new(Point::new(middle.x, middle.y - 8.0), words, SMALL).anchored(Anchor::Middle)
        };
        for step in 0..4 {
            let beside = if upright { 16.0 * f64::from(step) } else { 0.0 };
            taken.push(Point::new(middle.x + beside, middle.y));
        }
        items.push(Item::Text(text.bold().ink(Ink::GhostDark).with_halo(Ink::Paste)));
        items
    }

    /// Levels written on the contour lines, each where it has most room.
    fn labels(&self, contours: &[(f64, Vec<Contour>)], taken: &mut Vec<Point>) -> Vec<Item> {
        let distance = |a: Point, b: Point| ((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y)).sqrt();
        let least = |a: f64, b: f64| if b < a { b } else { a };
        let lines: Vec<(f64, Vec<Point>)> = contours
            .iter()
            .map(|(level, lines)| {
                let points = lines.iter().flat_map(|line| &line.points).map(|&at| self.point(at));
                (*level, points.collect())
            })
            .collect();
        let outline: Vec<Point> = (0..=40)
            .flat_map(|k| {
                let t = f64::from(k) / 20.0 - 1.0;
                [[t, -1.0], [t, 1.0], [-1.0, t], [1.0, t]].map(|at| self.point(at))
            })
            .collect();
        let mut items = Vec::new();
        for (k, (level, points)) in lines.iter().enumerate() {
            let others: Vec<Point> = lines
                .iter()
                .enumerate()
                .filter(|(other, _)| *other != k)
                .flat_map(|(_, (_, points))| points.iter().copied().step_by(2))
                .chain(outline.iter().copied())
                .collect();
            let mut best: Option<(Point, f64)> = None;
            for &p in points.iter().step_by(2) {
                let to_lines = others.iter().fold(f64::INFINITY, |d, &o| least(d, distance(p, o)));
                let to_marks = taken.iter().fold(f64::INFINITY, |d, &o| least(d, 0.6 * distance(p, o)));
                let room = least(to_lines, to_marks);
                if best.is_none_or(|(_, most)| room > most) {
                    best = Some((p, room));
                }
            }
            let Some((at, _)) = best.filter(|(_, room)| *room > LABEL_ROOM) else {
                continue;
            };
            taken.push(at);
            let decimals = usize::from((level - level.round()).abs() > 1.0e-6);
            let place = Point::new(at.x, at.y + 0.36 * SMALL);
            let text = Text::new(place, number(*level, decimals), SMALL).anchored(Anchor::Middle);
            items.push(Item::Text(if *level < self.print.film_um {
                text.ink(Ink::GhostLight).with_halo(Ink::Steel)
            } else if *level > self.print.film_um {
                text.ink(Ink::GhostDark).with_halo(Ink::Paste)
            } else {
                text.bold().ink(Ink::GhostDark).with_halo(Ink::Paste)
            }));
        }
        items
    }

    fn words(&self, words: &ToothWords) -> Vec<Item> {
        let extent = self.extent();
        let (toe, heel) = (self.point([-1.0, 0.0]), self.point([1.0, 0.0]));
        let top = self.point([0.0, 1.0]);
        let root = Point::new(
            0.0,
            self.origin.y - self.scale * self.print.outline.place([0.0, -1.0]).up_mm,
        );
        let root_at = self.root_word_at();
        let at = |x: f64, y: f64, word: &String| Text::new(Point::new(x, y), word.clone(), BODY).bold();
        let mut items = vec![
            Item::Text(at(toe.x - 26.0, toe.y + 4.5, &words.toe).anchored(Anchor::End)),
            Item::Text(at(heel.x + 26.0, heel.y + 4.5, &words.heel)),
            Item::Text(at(top.x, top.y - 24.0, &words.top).anchored(Anchor::Middle)),
            Item::Text(at(root_at, root.y + 24.0, &words.root).anchored(Anchor::Middle)),
        ];
        // The scale bar stands under the heel end.
        let (right, y) = (extent.right, extent.bottom + 20.0);
        let left = right - BAR_MM * self.scale;
        let bar = Path::line(Point::new(left, y), Point::new(right, y))
            .and(Path::line(Point::new(left, y - 4.0), Point::new(left, y + 4.0)))
            .and(Path::line(Point::new(right, y - 4.0), Point::new(right, y + 4.0)));
        items.push(Item::stroked(bar, Stroke::full(Ink::Text, 1.2)));
        let length = in_mm(BAR_MM, 0);
        items.push(Item::Text(
            Text::new(Point::new(left - 8.0, y + 4.5), length, SMALL).anchored(Anchor::End),
        ));
        items
    }
}

/// A length with its unit.
fn in_mm(length_mm: f64, decimals: usize) -> String {
    [&number(length_mm, decimals), "\u{a0}mm"].concat()
}

/// The flag of a flank, its left edge at a place: D in a full frame, C in a dashed one.
pub fn flag(flank: Flank, at: Point) -> Vec<Item> {
    let frame = Rect {
        left: at.x,
        top: at.y - 8.0,
        right: at.x + 20.0,
        bottom: at.y + 8.0,
    };
    let style = match flank {
        Flank::Drive => LineStyle::Full,
        // Dashes of a large line would not show the corners of so small a frame.
        Flank::Coast => LineStyle::FineDashed,
    };
    vec![
        Item::Shape {
            path: frame.path(),
            fill: Some(Fill::Plain {
                ink: Ink::Inset,
                opacity: 1.0,
            }),
            stroke: Some(Stroke::full(flank.ink(), 1.6).styled(style)),
        },
        Item::Text(
            Text::new(Point::new(at.x + 10.0, at.y + 4.7), flank.letter(), BODY)
                .bold()
                .ink(flank.ink())
                .anchored(Anchor::Middle),
        ),
    ]
}
