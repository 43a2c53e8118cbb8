//! Measures of a surface: is it closed, what does it enclose.
//!
//! Source: volume by the divergence theorem, closedness by edges that are met twice; textbook geometry.

use super::Solid;

/// How the points of a surface hang together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Topology {
    /// Points used by triangles.
    pub points: usize,
    /// Edges between points.
    pub edges: usize,
    /// Triangles.
    pub triangles: usize,
    /// Edges that are not shared by exactly two triangles that run along it in opposite directions: 0 for a closed,
    /// oriented surface.
    pub open_edges: usize,
}

impl Topology {
    /// Points − edges + triangles: 2 for a body without a hole, 0 for one with a bore.
    pub fn euler_characteristic(&self) -> i64 {
        let signed = |n: usize| i64::try_from(n).unwrap_or(i64::MAX);
        signed(self.points) - signed(self.edges) + signed(self.triangles)
    }
}

impl Solid {
    /// Corners of every triangle as indices of points.
    pub fn corner_points(&self) -> impl Iterator<Item = [u32; 3]> + '_ {
        self.triangles().iter().map(|triangle| {
            triangle
                .vertices
                .map(|v| self.vertices().get(v as usize).map_or(u32::MAX, |vertex| vertex.point))
        })
    }

    /// Counts points, edges and triangles.
    pub fn topology(&self) -> Topology {
        let mut halves: Vec<(u32, u32, bool)> = Vec::new();
        let mut used: Vec<u32> = Vec::new();
        for [a, b, c] in self.corner_points() {
            used.extend([a, b, c]);
            for (from, to) in [(a, b), (b, c), (c, a)] {
                halves.push(if from < to { (from, to, true) } else { (to, from, false) });
            }
        }
        used.sort_unstable();
        used.dedup();
        halves.sort_unstable();
        let same = |x: &(u32, u32, bool), y: &(u32, u32, bool)| x.0 == y.0 && x.1 == y.1;
        let (mut edges, mut open_edges) = (0, 0);
        for edge in halves.chunk_by(same) {
            edges += 1;
            // Sorted, so the one against the order of the points comes first.
            let closed = matches!(edge, [(from, to, false), (_, _, true)] if from != to);
            open_edges += usize::from(!closed);
        }
        Topology {
            points: used.len(),
            edges,
            triangles: self.triangles().len(),
            open_edges,
        }
    }

    /// Enclosed volume, mm³; positive when the triangles face outward. Meaningful for closed surfaces only.
    pub fn volume_mm3(&self) -> f64 {
        self.corners_mm().map(|[a, b, c]| a.dot(&b.cross(&c))).sum::<f64>() / 6.0
    }

    /// Area of the smallest triangle, mm².
    pub fn smallest_area_mm2(&self) -> f64 {
        self.corners_mm()
            .map(|[a, b, c]| 0.5 * (b - a).cross(&(c - a)).norm())
            .fold(f64::INFINITY, |least, area| if area < least { area } else { least })
    }
}
