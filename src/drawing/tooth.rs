//! A flank unrolled in true proportion, and what the paste shows on it: plain values, and the lengths read from them.

use super::field::{ClosedLine, Field};
use super::ink::Ink;
use super::picture::LineStyle;

/// Which flank of the ring gear's tooth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Flank {
    /// Convex, in drive.
    Drive,
    /// Concave, in coast.
    Coast,
}

impl Flank {
    /// Its colour.
    pub fn ink(self) -> Ink {
        match self {
            Self::Drive => Ink::Drive,
            Self::Coast => Ink::Coast,
        }
    }

    /// Its line, which says the same without colour.
    pub fn line(self) -> LineStyle {
        match self {
            Self::Drive => LineStyle::Full,
            Self::Coast => LineStyle::Dashed,
        }
    }

    /// The letter on its flag.
    pub fn letter(self) -> &'static str {
        match self {
            Self::Drive => "D",
            Self::Coast => "C",
        }
    }
}

/// An edge of the flank.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Edge {
    /// Inner end.
    Toe,
    /// Outer end.
    Heel,
    /// Bottom.
    Root,
    /// Tip edge.
    Top,
}

impl Edge {
    /// All four.
    pub const ALL: [Self; 4] = [Self::Toe, Self::Heel, Self::Root, Self::Top];
}

/// Words that stand on the picture of a flank.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ToothWords {
    /// The inner end.
    pub toe: String,
    /// The outer end.
    pub heel: String,
    /// The lower edge.
    pub root: String,
    /// The upper edge.
    pub top: String,
    /// Why there is no print on a flank that the pinion does not reach.
    pub cannot_touch: String,
    /// Why there is no print on a flank that it does reach.
    pub no_print: String,
}

/// The working flank unrolled: length along the pitch cone's generator, height square to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outline {
    /// Length, mm.
    pub face_width_mm: f64,
    /// Height of the lower edge (root line raised by the clearance) over the pitch cone at toe and heel, mm.
    pub lower_mm: [f64; 2],
    /// Height of the upper edge (face line) at toe and heel, mm.
    pub upper_mm: [f64; 2],
}

/// A place on the unrolled flank, mm: along the tooth from its middle toward the heel, and above the pitch cone.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// Toward the heel.
    pub along_mm: f64,
    /// Toward the top.
    pub up_mm: f64,
}

impl Outline {
    /// Where flank coordinates lie: x from −1 toe to 1 heel, y from −1 root to 1 top.
    pub fn place(&self, [x, y]: [f64; 2]) -> Place {
        let [low, high] = self.span(x);
        Place {
            along_mm: 0.5 * self.face_width_mm * x,
            up_mm: low + 0.5 * (y + 1.0) * (high - low),
        }
    }

    /// Heights of the lower and the upper edge at x, mm.
    pub fn span(&self, x: f64) -> [f64; 2] {
        let at = |ends: [f64; 2]| ends[0] + 0.5 * (x + 1.0) * (ends[1] - ends[0]);
        [at(self.lower_mm), at(self.upper_mm)]
    }

    /// Least and largest height, mm.
    pub fn reach(&self) -> [f64; 2] {
        let [a, b] = self.lower_mm;
        let [c, d] = self.upper_mm;
        [if a < b { a } else { b }, if c > d { c } else { d }]
    }

    /// Straight distance from flank coordinates to an edge, mm.
    pub fn distance_mm(&self, edge: Edge, [x, y]: [f64; 2]) -> f64 {
        let place = self.place([x, y]);
        let [low, high] = self.span(x);
        // An edge that rises by `slope` is nearer than its height says.
        let square = |ends: [f64; 2], height: f64| {
            let slope = (ends[1] - ends[0]) / self.face_width_mm;
            height / (1.0 + slope * slope).sqrt()
        };
        match edge {
            Edge::Toe => 0.5 * self.face_width_mm + place.along_mm,
            Edge::Heel => 0.5 * self.face_width_mm - place.along_mm,
            Edge::Root => square(self.lower_mm, place.up_mm - low),
            Edge::Top => square(self.upper_mm, high - place.up_mm),
        }
    }

    /// How far from the middle of the tooth a place lies, mm: toward the heel and toward the top.
    pub fn from_middle_mm(&self, at: [f64; 2]) -> [f64; 2] {
        let (place, middle) = (self.place(at), self.place([at[0], 0.0]));
        [place.along_mm, place.up_mm - middle.up_mm]
    }
}

/// What the paste shows on a flank.
#[derive(Debug, Clone, PartialEq)]
pub struct Print {
    /// Which flank.
    pub flank: Flank,
    /// Its shape.
    pub outline: Outline,
    /// Smallest gap to the mate at each grid point, µm; a hole where the pinion has nothing to meet it.
    pub gap_um: Field,
    /// Thickness of the paste, µm: what has a smaller gap is marked.
    pub film_um: f64,
    /// Marked share of the flank, 0 to 1; none where nothing is marked.
    pub area_fraction: Option<f64>,
    /// Middle of the marked area in flank coordinates.
    pub centroid: Option<[f64; 2]>,
}

/// How near the marked area comes to an edge, and where.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nearest {
    /// The edge.
    pub edge: Edge,
    /// Distance, mm.
    pub distance_mm: f64,
    /// Place of the marked area that is nearest, flank coordinates.
    pub at: [f64; 2],
    /// Middle of all places of its outline that are as near, flank coordinates.
    pub middle: [f64; 2],
}

/// A print that comes nearer than this to an edge runs off it, mm: finer than anybody can see.
const OFF_THE_EDGE_MM: f64 = 0.05;

impl Nearest {
    /// Whether the print runs off the flank there.
    pub fn runs_off(&self) -> bool {
        self.distance_mm < OFF_THE_EDGE_MM
    }
}

impl Print {
    /// Outlines of the marked area.
    pub fn marked(&self) -> Vec<ClosedLine> {
        self.gap_um.below(self.film_um)
    }

    /// How near the marked area comes to each edge, in the order of [`Edge::ALL`]; empty where nothing is marked.
    pub fn distances(&self) -> Vec<Nearest> {
        let rings = self.marked();
        Edge::ALL
            .into_iter()
            .filter_map(|edge| {
                let corners = || rings.iter().flat_map(|ring| &ring.points).copied();
                let mut nearest: Option<([f64; 2], f64)> = None;
                for at in corners() {
                    let distance = self.outline.distance_mm(edge, at);
                    if nearest.is_none_or(|(_, least)| distance < least) {
                        nearest = Some((at, distance));
                    }
                }
                let (at, distance_mm) = nearest?;
                // Between the first and the last corner that lie as near.
                let (mut low, mut high) = (at, at);
                for corner in corners() {
                    if self.outline.distance_mm(edge, corner) < distance_mm + 0.1 * OFF_THE_EDGE_MM {
                        for k in 0..2 {
                            if corner[k] < low[k] {
                                low[k] = corner[k];
                            }
                            if corner[k] > high[k] {
                                high[k] = corner[k];
                            }
                        }
                    }
                }
                let middle = [0.5 * (low[0] + high[0]), 0.5 * (low[1] + high[1])];
                Some(Nearest {
                    edge,
                    distance_mm,
                    at,
                    middle,
                })
            })
            .collect()
    }

    /// The edge that the marked area comes nearest to.
    pub fn nearest(&self) -> Option<Nearest> {
        let mut nearest: Option<Nearest> = None;
        for one in self.distances() {
            if nearest.is_none_or(|n| one.distance_mm < n.distance_mm) {
                nearest = Some(one);
            }
        }
        nearest
    }
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;

    /// A tapered tooth 30 mm long with a round print.
    pub(in crate::drawing) fn sample(flank: Flank, x0: f64, y0: f64) -> Print {
        let count = 41;
        let at = |k: usize| 2.0 * k as f64 / (count - 1) as f64 - 1.0;
        Print {
            flank,
            outline: Outline {
                face_width_mm: 30.0,
                lower_mm: [-3.0, -5.0],
                upper_mm: [2.0, 3.0],
            },
            gap_um: Field::new(count, count, |i, j| {
                let (dx, dy) = (at(i) - x0, at(j) - y0);
                Some(40.0 * (dx * dx + dy * dy))
            }),
            film_um: 8.0,
            area_fraction: Some(0.157),
            centroid: Some([x0, y0]),
        }
    }

    #[test]
    fn places_are_those_of_a_tapered_tooth() {
        let outline = sample(Flank::Drive, 0.0, 0.0).outline;
        let at = |x, y| {
            let p = outline.place([x, y]);
            [p.along_mm, p.up_mm].map(f64::to_bits)
        };
        let bits = |values: [f64; 2]| values.map(f64::to_bits);
        assert_eq!(at(-1.0, -1.0), bits([-15.0, -3.0]), "toe root");
        assert_eq!(at(1.0, 1.0), bits([15.0, 3.0]), "heel top");
        assert_eq!(at(0.0, 0.0), bits([0.0, -0.75]), "middle");
        assert_eq!(bits(outline.reach()), bits([-5.0, 3.0]));
        let [heelward, topward] = outline.from_middle_mm([0.5, 0.5]);
        assert!(
            (heelward - 7.5).abs() < 1e-12 && (topward - 0.25 * 7.25).abs() < 1e-12,
            "{topward}"
        );
    }

    #[test]
    fn distances_to_edges_are_straight() {
        let outline = sample(Flank::Drive, 0.0, 0.0).outline;
        let near = |edge, at, wanted: f64| {
            let got = outline.distance_mm(edge, at);
            assert!((got - wanted).abs() < 1e-12, "{edge:?}: {got}, wanted {wanted}");
        };
        near(Edge::Toe, [-0.5, 0.0], 7.5);
        near(Edge::Heel, [-0.5, 0.0], 22.5);
        // The root falls 2 mm over 30 mm, the top rises 1 mm.
        near(Edge::Root, [0.0, 0.0], 3.25 / (1.0_f64 + 4.0 / 900.0).sqrt());
        near(Edge::Top, [0.0, 0.0], 3.25 / (1.0_f64 + 1.0 / 900.0).sqrt());
        near(Edge::Top, [1.0, 1.0], 0.0);
    }

    #[test]
    fn the_nearest_edge_is_found_where_the_print_is_nearest() {
        let radius = (8.0_f64 / 40.0).sqrt();
        let high = sample(Flank::Drive, 0.0, 0.4).nearest().expect("a print");
        assert_eq!(high.edge, Edge::Top);
        assert!((high.at[1] - (0.4 + radius)).abs() < 0.01, "{high:?}");
        assert!(!high.runs_off());
        let off = sample(Flank::Coast, 0.8, 0.0).nearest().expect("a print");
        assert_eq!(off.edge, Edge::Heel);
        assert!(off.runs_off() && off.distance_mm.abs() < 1e-9, "{off:?}");
        let none = Print {
            film_um: 0.0,
            ..sample(Flank::Drive, 0.013, 0.0)
        };
        assert_eq!(none.nearest(), None, "no print");
    }
}
