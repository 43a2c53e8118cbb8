//! Values on a grid over the flank square, with holes, and the areas and lines of equal value in it (marching squares).
//!
//! Between grid points a value runs straight. A hole and the outside count as higher than every level, and an area ends
//! at the last grid point that has a value. So every area below a level is bounded by closed rings; the stretches of a
//! ring that follow the rim of the grid or of a hole are marked, because no contour line runs there.

/// Values on a grid of `columns` × `rows` points, x from −1 to 1 over the columns, y from −1 to 1 over the rows.
#[derive(Debug, Clone, PartialEq)]
pub struct Field {
    columns: usize,
    rows: usize,
    values: Vec<Option<f64>>,
}

/// The closed outline of a part of an area: counter-clockwise with y up, holes the other way round.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ClosedLine {
    /// Corners (x, y); the last one joins the first.
    pub points: Vec<[f64; 2]>,
    /// For each corner, whether the stretch from it to the next follows the rim of the grid or of a hole.
    pub on_rim: Vec<bool>,
}

/// A contour line.
#[derive(Debug, Clone, PartialEq)]
pub struct Contour {
    /// Corners (x, y).
    pub points: Vec<[f64; 2]>,
    /// Whether the last corner joins the first.
    pub closed: bool,
}

/// How much an area is and where its middle lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AreaSum {
    /// Area; the whole square has 4.
    pub area: f64,
    /// Centroid (x, y).
    pub centroid: [f64; 2],
}

impl Field {
    /// Takes the value of every grid point (column, row); what is not finite is a hole.
    pub fn new(columns: usize, rows: usize, value: impl Fn(usize, usize) -> Option<f64>) -> Self {
        let values = (0..columns)
            .flat_map(|i| (0..rows).map(move |j| (i, j)))
            .map(|(i, j)| value(i, j).filter(|v| v.is_finite()))
            .collect();
        Self { columns, rows, values }
    }

    /// Value at a grid point; none in a hole and outside.
    pub fn value(&self, column: usize, row: usize) -> Option<f64> {
        if row >= self.rows {
            return None;
        }
        self.values.get(column * self.rows + row).copied().flatten()
    }

    /// Outlines of the area where there are values, whatever they are.
    pub fn present(&self) -> Vec<ClosedLine> {
        self.below(f64::INFINITY)
    }

    /// Contour lines of a level.
    pub fn contours(&self, level: f64) -> Vec<Contour> {
        self.below(level).iter().flat_map(ClosedLine::contours).collect()
    }

    /// Outlines of the area where the value is below a level.
    pub fn below(&self, level: f64) -> Vec<ClosedLine> {
        let grid = Padded { field: self, level };
        let count = 2 * (self.columns + 2) * (self.rows + 2);
        // For each crossed edge of the grid, the edge to which the outline goes on, and whether along the rim.
        let mut next: Vec<Option<(usize, bool)>> = vec![None; count];
        for i in 0..=self.columns {
            for j in 0..=self.rows {
                for (from, to, rim) in grid.stretches(i, j).into_iter().flatten() {
                    if let Some(slot) = next.get_mut(from) {
                        *slot = Some((to, rim));
                    }
                }
            }
        }
        let mut rings = Vec::new();
        for start in 0..count {
            let mut ring = ClosedLine::default();
            let mut edge = start;
            while let Some((to, rim)) = next.get_mut(edge).and_then(Option::take) {
                ring.push(grid.crossing(edge), rim);
                edge = to;
            }
            ring.close();
            if ring.points.len() > 2 {
                rings.push(ring);
            }
        }
        rings
    }
}

/// The grid with one more row of points on every side, in the same places as the points beside them and higher than
/// everything: so the outside needs no rules of its own.
struct Padded<'f> {
    field: &'f Field,
    level: f64,
}

/// Parts of an outline in one cell: from edge, to edge, along the rim.
type Stretches = [Option<(usize, usize, bool)>; 2];

impl Padded<'_> {
    fn value(&self, i: usize, j: usize) -> f64 {
        match (i.checked_sub(1), j.checked_sub(1)) {
            (Some(column), Some(row)) => self.field.value(column, row).unwrap_or(f64::INFINITY),
            _ => f64::INFINITY,
        }
    }

    fn place(&self, i: usize, j: usize) -> [f64; 2] {
        let along = |k: usize, count: usize| {
            let last = count.saturating_sub(1);
            let k = k.saturating_sub(1).min(last);
            2.0 * k as f64 / last.max(1) as f64 - 1.0
        };
        [along(i, self.field.columns), along(j, self.field.rows)]
    }

    /// Number of the edge from point (i, j) to the right (0) or up (1).
    fn edge(&self, i: usize, j: usize, up: usize) -> usize {
        2 * (i * (self.field.rows + 2) + j) + up
    }

    /// Where the level is crossed on an edge.
    fn crossing(&self, edge: usize) -> [f64; 2] {
        let (point, up) = (edge / 2, edge % 2);
        let (i, j) = (point / (self.field.rows + 2), point % (self.field.rows + 2));
        let (k, l) = (i + 1 - up, j + up);
        let (mut inside, mut outside) = ((i, j), (k, l));
        if self.value(i, j) >= self.level {
            (inside, outside) = (outside, inside);
        }
        let (low, high) = (self.value(inside.0, inside.1), self.value(outside.0, outside.1));
        let from = self.place(inside.0, inside.1);
        if !high.is_finite() {
            return from;
        }
        let to = self.place(outside.0, outside.1);
        let part = (self.level - low) / (high - low);
        [from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])]
    }

    /// Outline in the cell whose lower left point is (i, j), with the area on its left.
    fn stretches(&self, i: usize, j: usize) -> Stretches {
        let values = [
            self.value(i, j),
            self.value(i + 1, j),
            self.value(i + 1, j + 1),
            self.value(i, j + 1),
        ];
        let inside = values.map(|v| v < self.level);
        // Edges counter-clockwise; edge k runs from corner k to corner k + 1.
        let edges = [
            self.edge(i, j, 0),
            self.edge(i + 1, j, 1),
            self.edge(i, j + 1, 0),
            self.edge(i, j, 1),
        ];
        let rim = values.iter().any(|v| !v.is_finite());
        // Where two opposite corners are inside, the mean of all decides whether they hang together.
        let joined = values.iter().sum::<f64>() < 4.0 * self.level;
        let leaves = |k: usize| inside[k % 4] && !inside[(k + 1) % 4];
        let enters = |k: usize| !inside[k % 4] && inside[(k + 1) % 4];
        let mut found: Stretches = [None; 2];
        for k in (0..4).filter(|&k| leaves(k)) {
            // The outline leaves the cell's rim at edge k and comes back to it: around the outside corner that follows,
            // or around the inside corner that lies behind.
            let back = if joined { [1, 2, 3] } else { [3, 2, 1] };
            let to = back.into_iter().map(|step| k + step).find(|&e| enters(e));
            if let Some(slot) = found.iter_mut().find(|slot| slot.is_none()) {
                *slot = to.map(|to| (edges[k], edges[to % 4], rim));
            }
        }
        found
    }
}

impl ClosedLine {
    /// Adds a corner unless it stands where the last one does.
    fn push(&mut self, point: [f64; 2], rim: bool) {
        if self.points.last() == Some(&point) {
            if let Some(last) = self.on_rim.last_mut() {
                *last = rim;
            }
        } else {
            self.points.push(point);
            self.on_rim.push(rim);
        }
    }

    /// Drops a last corner that stands where the first one does.
    fn close(&mut self) {
        if self.points.len() > 1 && self.points.first() == self.points.last() {
            self.points.pop();
            self.on_rim.pop();
        }
    }

    /// The stretches that are true contour lines.
    pub fn contours(&self) -> Vec<Contour> {
        let count = self.points.len();
        let Some(start) = self.on_rim.iter().position(|rim| *rim) else {
            return vec![Contour {
                points: self.points.clone(),
                closed: true,
            }];
        };
        let mut lines = Vec::new();
        let mut line: Vec<[f64; 2]> = Vec::new();
        for step in 1..=count {
            let k = (start + step) % count;
            let (Some(point), Some(rim)) = (self.points.get(k), self.on_rim.get(k)) else {
                continue;
            };
            line.push(*point);
            if *rim {
                let points = std::mem::take(&mut line);
                if points.len() > 1 {
                    lines.push(Contour { points, closed: false });
                }
            }
        }
        lines
    }
}

/// Area and centroid of what rings enclose together; none without area.
pub fn area_of(rings: &[ClosedLine]) -> Option<AreaSum> {
    let (mut area, mut moment) = (0.0, [0.0; 2]);
    for ring in rings {
        let following = ring.points.iter().cycle().skip(1);
        for (a, b) in ring.points.iter().zip(following) {
            let cross = a[0] * b[1] - b[0] * a[1];
            area += 0.5 * cross;
            moment[0] += cross * (a[0] + b[0]) / 6.0;
            moment[1] += cross * (a[1] + b[1]) / 6.0;
        }
    }
    (area > 0.0).then(|| AreaSum {
        area,
        centroid: moment.map(|m| m / area),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(k: usize, count: usize) -> f64 {
        2.0 * k as f64 / (count - 1) as f64 - 1.0
    }

    fn of(count: usize, value: impl Fn(f64, f64) -> Option<f64>) -> Field {
        Field::new(count, count, |i, j| value(at(i, count), at(j, count)))
    }

    #[test]
    fn a_circle_has_its_area_and_middle() {
        let (x0, y0, radius) = (0.2, -0.1, 0.55);
        let distance = |x: f64, y: f64| ((x - x0) * (x - x0) + (y - y0) * (y - y0)).sqrt();
        let field = of(41, |x, y| Some(distance(x, y)));
        let rings = field.below(radius);
        assert_eq!(rings.len(), 1, "one piece");
        let sum = area_of(&rings).expect("an area");
        let wanted = std::f64::consts::PI * radius * radius;
        println!("area {} for {wanted}", sum.area);
        assert!((sum.area / wanted - 1.0).abs() < 2.0e-3, "{}", sum.area);
        assert!((sum.centroid[0] - x0).abs() < 1.0e-3 && (sum.centroid[1] - y0).abs() < 1.0e-3);
        let lines = field.contours(radius);
        assert!(lines.len() == 1 && lines[0].closed, "one closed line");
        for p in &lines[0].points {
            assert!(
                (distance(p[0], p[1]) - radius).abs() < 2.0e-3,
                "{p:?} lies on the circle"
            );
        }
    }

    /// A half plane: exact in straight interpolation, closed along the rim of the square.
    #[test]
    fn an_area_that_leaves_the_square_ends_at_its_rim() {
        let field = of(5, |x, y| Some(x + 0.5 * y));
        let rings = field.below(0.3);
        let sum = area_of(&rings).expect("an area");
        // At height y the area reaches from −1 to 0.3 − y/2: mean width 1.3, height 2.
        assert!((sum.area - 2.6).abs() < 1.0e-12, "{}", sum.area);
        let lines = field.contours(0.3);
        assert_eq!(lines.len(), 1, "{lines:?}");
        assert!(!lines[0].closed, "ends at the rim");
        for p in &lines[0].points {
            assert!((p[0] + 0.5 * p[1] - 0.3).abs() < 1.0e-12, "{p:?}");
        }
        let heights: Vec<f64> = lines[0].points.iter().map(|p| p[1]).collect();
        assert!(heights.contains(&-1.0) && heights.contains(&1.0), "{heights:?}");
    }

    #[test]
    fn everything_below_is_the_whole_square_without_a_line() {
        let field = of(6, |_, _| Some(1.0));
        assert!((area_of(&field.below(2.0)).expect("all").area - 4.0).abs() < 1.0e-12);
        assert!(field.contours(2.0).is_empty(), "no line along the rim");
        assert!(field.below(1.0).is_empty(), "the level itself is not below it");
    }

    /// Two opposite corners of one cell: joined through the middle or parted, by the mean.
    #[test]
    fn saddles_join_where_their_middle_is_inside() {
        let saddle = |high: f64| Field::new(2, 2, move |i, j| Some(if i == j { 0.0 } else { high }));
        let parted = saddle(3.0).below(1.0);
        assert_eq!(parted.len(), 2, "the mean 1.5 is above: two corners");
        let corner = 0.5 * (2.0 / 3.0) * (2.0 / 3.0);
        assert!((area_of(&parted).expect("area").area - 2.0 * corner).abs() < 1.0e-12);
        let joined = saddle(1.5).below(1.0);
        assert_eq!(joined.len(), 1, "the mean 0.75 is below: one piece");
        let cut = 0.5 * (2.0 / 3.0) * (2.0 / 3.0);
        assert!((area_of(&joined).expect("area").area - (4.0 - 2.0 * cut)).abs() < 1.0e-12);
    }

    #[test]
    fn holes_bound_areas_but_carry_no_line() {
        // A hole of one point in the middle of 5 × 5: it takes away the four cells' corners around it.
        let field = Field::new(5, 5, |i, j| (i != 2 || j != 2).then_some(0.0));
        let rings = field.below(1.0);
        assert_eq!(rings.len(), 2, "outline and hole");
        let diamond = 2.0 * 0.5 * 0.5;
        assert!((area_of(&rings).expect("area").area - (4.0 - diamond)).abs() < 1.0e-12);
        assert!(field.contours(1.0).is_empty());
        assert_eq!(field.present(), rings, "what is there");
        let not_finite = Field::new(2, 2, |i, j| Some(if i == j { f64::NAN } else { 0.0 }));
        assert_eq!(not_finite.value(0, 0), None, "no number is a hole");
        let empty = Field::new(3, 3, |_, _| None);
        assert!(empty.present().is_empty() && area_of(&empty.present()).is_none());
    }
}
