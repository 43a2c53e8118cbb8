//! The marked area: where the smallest gap fell under the film.
//!
//! Between grid points the gap is a bicubic from values and slopes; cells on the edge of the area are cut into smaller
//! ones, and the edge runs straight through each of those, where the gap between its corners passes the film.
//!
//! Source: words of prints from ANSI/AGMA 2008; a print as the places whose gap falls under the film is in H. J.
//! Stadtfeld, Handbook of Bevel and Hypoid Gears, 1993. Area and centroid in flank coordinates are our own definition;
//! areas of polygons and bicubic interpolation are textbook geometry.

use super::gap_map::{GapMap, SmallestGap};
use super::resolution::coordinate;

/// What the paste shows on one flank. All coordinates are flank coordinates x (toe −1, heel 1) and y (root −1, top 1).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pattern {
    /// Marked share of the x–y square, 0 to 1.
    pub area_fraction: f64,
    /// Centroid (x, y).
    pub centroid: [f64; 2],
    /// Smallest x.
    pub toe: f64,
    /// Largest x.
    pub heel: f64,
    /// Smallest y.
    pub root: f64,
    /// Largest y.
    pub top: f64,
}

/// Parts into which a cell on the edge of the area is cut, each way.
const PARTS: usize = 6;
/// A gap that stands for "nothing there", mm.
const NOTHING_MM: f64 = 1.0;

/// A marked area that is being added up.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Marked {
    area: f64,
    moment: [f64; 2],
    /// The points with the smallest and the largest x, then y.
    extremes: [[[f64; 2]; 2]; 2],
}

impl Marked {
    pub(crate) fn new() -> Self {
        Self {
            area: 0.0,
            moment: [0.0; 2],
            extremes: [[[f64::INFINITY; 2], [f64::NEG_INFINITY; 2]]; 2],
        }
    }

    /// Adds a convex polygon by its corners.
    fn add(&mut self, corners: &[[f64; 2]]) {
        let [first, rest @ ..] = corners else { return };
        for pair in rest.windows(2) {
            let [a, b] = pair else { continue };
            let area = 0.5 * ((a[0] - first[0]) * (b[1] - first[1]) - (b[0] - first[0]) * (a[1] - first[1]));
            self.area += area;
            for (k, moment) in self.moment.iter_mut().enumerate() {
                *moment += area * (first[k] + a[k] + b[k]) / 3.0;
            }
        }
        for corner in corners {
            for (k, [low, high]) in self.extremes.iter_mut().enumerate() {
                if corner[k] < low[k] {
                    *low = *corner;
                }
                if corner[k] > high[k] {
                    *high = *corner;
                }
            }
        }
    }
}

impl Pattern {
    /// The pattern of a map under a film, to the accuracy of the map's grid. None where nothing is marked.
    pub fn of(map: &GapMap, film_um: f64) -> Option<Self> {
        Self::with_extremes(map, film_um).map(|(pattern, _)| pattern)
    }

    /// The pattern, and the marked points with the smallest and the largest x, then y.
    pub(crate) fn with_extremes(map: &GapMap, film_um: f64) -> Option<(Self, [[[f64; 2]; 2]; 2])> {
        let film = 1e-3 * film_um;
        let mut sum = Marked::new();
        for i in 0..map.nx {
            for j in 0..map.ny {
                let corners = [
                    map.least(i, j),
                    map.least(i + 1, j),
                    map.least(i + 1, j + 1),
                    map.least(i, j + 1),
                ];
                let x = [coordinate(i, map.nx), coordinate(i + 1, map.nx)];
                let y = [coordinate(j, map.ny), coordinate(j + 1, map.ny)];
                add_cell(&mut sum, corners, x, y, film);
            }
        }
        sum.pattern().map(|pattern| (pattern, sum.extremes))
    }
}

impl Marked {
    /// What has been added up. None where that is nothing.
    pub(crate) fn pattern(&self) -> Option<Pattern> {
        let [[toe, heel], [root, top]] = self.extremes;
        (self.area > 1e-9).then(|| Pattern {
            area_fraction: self.area / 4.0,
            centroid: self.moment.map(|m| m / self.area),
            toe: toe[0],
            heel: heel[0],
            root: root[1],
            top: top[1],
        })
    }

    /// Adds a rectangle that is marked all over.
    pub(crate) fn add_whole(&mut self, x: [f64; 2], y: [f64; 2]) {
        self.add(&[[x[0], y[0]], [x[1], y[0]], [x[1], y[1]], [x[0], y[1]]]);
    }

    /// Adds what is marked of a rectangle at the border of what the pinion covers: straight lines between the gaps that
    /// are there.
    pub(crate) fn add_ragged(&mut self, corners: [Option<f64>; 4], x: [f64; 2], y: [f64; 2], film: f64) {
        if corners.iter().flatten().any(|&gap| gap < film) {
            self.add_square(corners.map(|gap| gap.unwrap_or(NOTHING_MM)), x, y, film);
        }
    }

    /// Adds the part of a small rectangle where the gap is under the film: corners (x0, y0), (x1, y0), (x1, y1), (x0, y1).
    pub(crate) fn add_square(&mut self, values: [f64; 4], x: [f64; 2], y: [f64; 2], film: f64) {
        add_square(self, values, x, y, film);
    }
}

fn add_cell(sum: &mut Marked, corners: [Option<SmallestGap>; 4], x: [f64; 2], y: [f64; 2], film: f64) {
    let inside = corners.iter().flatten().filter(|c| c.gap < film).count();
    let (dx, dy) = (x[1] - x[0], y[1] - y[0]);
    let [Some(a), Some(b), Some(c), Some(d)] = corners else {
        sum.add_ragged(corners.map(|c| c.map(|c| c.gap)), x, y, film);
        return;
    };
    // Whether the area's edge can reach into the cell: no corner inside and none near the film by its slopes.
    if inside == 4 {
        sum.add_whole(x, y);
        return;
    }
    if inside == 0 {
        let reach = [a, b, c, d]
            .iter()
            .any(|k| k.gap - k.slope[0].abs() * dx - k.slope[1].abs() * dy < film);
        if !reach {
            return;
        }
    }
    let mut row_before = [0.0; PARTS + 1];
    for q in 0..=PARTS {
        let v = q as f64 / PARTS as f64;
        let mut row = [0.0; PARTS + 1];
        for (p, value) in row.iter_mut().enumerate() {
            *value = bicubic(&[a, b, c, d], p as f64 / PARTS as f64, v, dx, dy);
        }
        if q > 0 {
            let low = y[0] + dy * (q - 1) as f64 / PARTS as f64;
            let high = y[0] + dy * v;
            for p in 0..PARTS {
                let values = [row_before[p], row_before[p + 1], row[p + 1], row[p]];
                let left = x[0] + dx * p as f64 / PARTS as f64;
                let right = x[0] + dx * (p + 1) as f64 / PARTS as f64;
                add_square(sum, values, [left, right], [low, high], film);
            }
        }
        row_before = row;
    }
}

/// Hermite interpolation in both directions; the twist at the corners is that of the bilinear patch of slopes.
pub(crate) fn bicubic(corners: &[SmallestGap; 4], u: f64, v: f64, dx: f64, dy: f64) -> f64 {
    let [a, b, c, d] = corners;
    let twist_x = (c.slope[1] - d.slope[1] + b.slope[1] - a.slope[1]) * 0.5 * dy;
    let twist_y = (d.slope[0] - a.slope[0] + c.slope[0] - b.slope[0]) * 0.5 * dx;
    let twist = 0.5 * (twist_x + twist_y);
    let base = |t: f64| {
        let (t2, t3) = (t * t, t * t * t);
        [
            2.0 * t3 - 3.0 * t2 + 1.0,
            3.0 * t2 - 2.0 * t3,
            t3 - 2.0 * t2 + t,
            t3 - t2,
        ]
    };
    let (f, g) = (base(u), base(v));
    let values = f[0] * (g[0] * a.gap + g[1] * d.gap) + f[1] * (g[0] * b.gap + g[1] * c.gap);
    let along = dx * (f[2] * (g[0] * a.slope[0] + g[1] * d.slope[0]) + f[3] * (g[0] * b.slope[0] + g[1] * c.slope[0]));
    let up = dy * (f[0] * (g[2] * a.slope[1] + g[3] * d.slope[1]) + f[1] * (g[2] * b.slope[1] + g[3] * c.slope[1]));
    values + along + up + twist * (f[2] + f[3]) * (g[2] + g[3])
}

/// The part of a small rectangle where the gap is under the film: corners a (x0, y0), b (x1, y0), c (x1, y1), d (x0, y1).
fn add_square(sum: &mut Marked, values: [f64; 4], x: [f64; 2], y: [f64; 2], film: f64) {
    if values.iter().all(|&v| v >= film) {
        return;
    }
    let corners = [[x[0], y[0]], [x[1], y[0]], [x[1], y[1]], [x[0], y[1]]];
    let mut polygon = [[0.0; 2]; 8];
    let mut count = 0;
    let mut push = |p: [f64; 2]| {
        if let Some(slot) = polygon.get_mut(count) {
            *slot = p;
            count += 1;
        }
    };
    for k in 0..4 {
        let (from, to) = (k, (k + 1) % 4);
        let (a, b) = (values[from] - film, values[to] - film);
        if a < 0.0 {
            push(corners[from]);
        }
        if (a < 0.0) != (b < 0.0) {
            let t = a / (a - b);
            push([0, 1].map(|i| corners[from][i] + t * (corners[to][i] - corners[from][i])));
        }
    }
    if let Some(polygon) = polygon.get(..count) {
        sum.add(polygon);
    }
}
