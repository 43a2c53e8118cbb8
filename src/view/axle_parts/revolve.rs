//! Turned bodies: a closed outline of (along, radius) carried round an axis, whole or cut open.

use std::f64::consts::PI;

use nalgebra::Vector3;

use crate::numerics::math;

/// An axis with the two directions from which angles about it are counted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Axis {
    /// A point of it.
    pub(super) origin: Vector3<f64>,
    /// Along it.
    pub(super) along: Vector3<f64>,
    /// Where the angle is 0.
    pub(super) zero: Vector3<f64>,
    /// Where it is a quarter turn.
    pub(super) quarter: Vector3<f64>,
}

impl Axis {
    pub(super) fn outward(&self, angle: f64) -> Vector3<f64> {
        let (sin, cos) = math::sin_cos(angle);
        self.zero * cos + self.quarter * sin
    }

    pub(super) fn place(&self, [along, radius]: [f64; 2], angle: f64) -> Vector3<f64> {
        self.origin + self.along * along + self.outward(angle) * radius
    }
}

/// Triangles with a normal at each corner, in the frame of the axle, mm.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Mesh {
    /// Corners.
    pub points: Vec<Vector3<f64>>,
    /// Their normals.
    pub normals: Vec<Vector3<f64>>,
    /// Corners of each triangle.
    pub triangles: Vec<[u32; 3]>,
}

impl Mesh {
    fn corner(&mut self, point: Vector3<f64>, normal: Vector3<f64>) -> u32 {
        let number = u32::try_from(self.points.len()).unwrap_or(u32::MAX);
        self.points.push(point);
        self.normals.push(normal);
        number
    }

    /// A quadrilateral, turned so that it faces along its normals.
    fn quad(&mut self, points: [Vector3<f64>; 4], normals: [Vector3<f64>; 4]) {
        let mut corners = [0; 4];
        for ((corner, point), normal) in corners.iter_mut().zip(points).zip(normals) {
            *corner = self.corner(point, normal);
        }
        let [a, b, c, d] = corners;
        let facing = (points[1] - points[0]).cross(&(points[2] - points[0]))
            + (points[2] - points[0]).cross(&(points[3] - points[0]));
        if facing.dot(&normals[0]) >= 0.0 {
            self.triangles.extend([[a, b, c], [a, c, d]]);
        } else {
            self.triangles.extend([[a, c, b], [a, d, c]]);
        }
    }

    /// Both, as one.
    pub(super) fn join(&mut self, other: &Self) {
        let first = u32::try_from(self.points.len()).unwrap_or(u32::MAX);
        self.points.extend_from_slice(&other.points);
        self.normals.extend_from_slice(&other.normals);
        self.triangles
            .extend(other.triangles.iter().map(|t| t.map(|corner| corner + first)));
    }

    /// Corners of every triangle.
    pub fn corners(&self) -> impl Iterator<Item = [Vector3<f64>; 3]> + '_ {
        let point = |corner: u32| {
            usize::try_from(corner)
                .ok()
                .and_then(|i| self.points.get(i))
                .copied()
                .unwrap_or_default()
        };
        self.triangles.iter().map(move |t| t.map(point))
    }
}

/// From where to where a body goes round, radians.
pub(super) type Sector = [f64; 2];

/// Carries an outline round; `facets` on a whole turn. Gives the turned faces and the cut ones.
pub(super) fn revolve(axis: &Axis, outline: &[[f64; 2]], sector: Option<Sector>, facets: u32) -> (Mesh, Mesh) {
    let [from, to] = sector.unwrap_or([0.0, 2.0 * PI]);
    let share = (to - from) / (2.0 * PI);
    let mut steps = 1_u32;
    while f64::from(steps) < share * f64::from(facets) {
        steps += 1;
    }
    let angle = |k: u32| from + (to - from) * f64::from(k) / f64::from(steps);
    let mut skin = Mesh::default();
    // Outside lies to the right of the way round when the outline goes round in the positive sense.
    let sense = if area(outline) >= 0.0 { 1.0 } else { -1.0 };
    for (a, b) in edges(outline) {
        let (dx, dr) = (b[0] - a[0], b[1] - a[1]);
        let length = (dx * dx + dr * dr).sqrt();
        if length < 1e-9 || (a[1] < 1e-9 && b[1] < 1e-9) {
            continue;
        }
        let (nx, nr) = (sense * dr / length, -sense * dx / length);
        let normal = |k: u32| axis.along * nx + axis.outward(angle(k)) * nr;
        for k in 0..steps {
            // A body with few facets shows them.
            let flat = axis.along * nx + axis.outward(0.5 * (angle(k) + angle(k + 1))) * nr;
            let (n0, n1) = if facets < 12 {
                (flat, flat)
            } else {
                (normal(k), normal(k + 1))
            };
            skin.quad(
                [
                    axis.place(a, angle(k)),
                    axis.place(b, angle(k)),
                    axis.place(b, angle(k + 1)),
                    axis.place(a, angle(k + 1)),
                ],
                [n0, n0, n1, n1],
            );
        }
    }
    let mut cut = Mesh::default();
    if sector.is_some() {
        for (at, way) in [(from, -1.0), (to, 1.0)] {
            // A quarter turn on from outward, the way out of the body.
            let normal = axis.outward(at + 0.5 * PI) * way;
            for triangle in triangulated(outline) {
                let points = triangle.map(|at_outline| axis.place(at_outline, at));
                let facing = (points[1] - points[0]).cross(&(points[2] - points[0]));
                let mut corners = points.map(|p| cut.corner(p, normal));
                if facing.dot(&normal) < 0.0 {
                    corners.swap(1, 2);
                }
                cut.triangles.push(corners);
            }
        }
    }
    (skin, cut)
}

fn edges(outline: &[[f64; 2]]) -> impl Iterator<Item = ([f64; 2], [f64; 2])> + '_ {
    let next = outline.iter().skip(1).chain(outline.first());
    outline.iter().copied().zip(next.copied())
}

/// Twice the area of an outline; positive for the positive sense.
fn area(outline: &[[f64; 2]]) -> f64 {
    edges(outline).map(|(a, b)| a[0] * b[1] - b[0] * a[1]).sum()
}

/// An outline in triangles, ear by ear.
fn triangulated(outline: &[[f64; 2]]) -> Vec<[[f64; 2]; 3]> {
    let mut left: Vec<[f64; 2]> = outline.to_vec();
    if area(&left) < 0.0 {
        left.reverse();
    }
    let turn = |a: [f64; 2], b: [f64; 2], c: [f64; 2]| (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
    let mut triangles = Vec::new();
    while left.len() > 2 {
        let count = left.len();
        let ear = (0..count).find(|&i| {
            let corner = |k: usize| left.get(k % count).copied().unwrap_or_default();
            let (a, b, c) = (corner(i + count - 1), corner(i), corner(i + 1));
            let inside = |p: &[f64; 2]| turn(a, b, *p) > 1e-12 && turn(b, c, *p) > 1e-12 && turn(c, a, *p) > 1e-12;
            turn(a, b, c) > 0.0 && !left.iter().any(inside)
        });
        // Corners in a row have no ear and no area: any of them can go.
        let i = ear.unwrap_or(0);
        let corner = |k: usize| left.get(k % count).copied().unwrap_or_default();
        if ear.is_some() {
            triangles.push([corner(i + count - 1), corner(i), corner(i + 1)]);
        }
        left.remove(i);
    }
    triangles
}

#[cfg(test)]
mod tests {
    use super::*;

    fn axis() -> Axis {
        Axis {
            origin: Vector3::zeros(),
            along: Vector3::x(),
            zero: Vector3::y(),
            quarter: Vector3::z(),
        }
    }

    /// Volume of a closed surface by the divergence theorem.
    fn volume(meshes: [&Mesh; 2]) -> f64 {
        let corners = meshes.into_iter().flat_map(Mesh::corners);
        corners.map(|[a, b, c]| a.dot(&b.cross(&c)) / 6.0).sum()
    }

    /// A ring cut open is closed, faces outward and holds Pappus's volume: area times the way of its middle.
    #[test]
    fn a_cut_ring_holds_its_volume() {
        let outline = [
            [0.0, 20.0],
            [10.0, 20.0],
            [10.0, 30.0],
            [5.0, 30.0],
            [5.0, 25.0],
            [0.0, 25.0],
        ];
        for sector in [None, Some([0.5, 5.0])] {
            let (skin, cut) = revolve(&axis(), &outline, sector, 720);
            let share = sector.map_or(1.0, |[a, b]| (b - a) / (2.0 * PI));
            let wanted = share * PI * (10.0 * (25.0 * 25.0 - 20.0 * 20.0) + 5.0 * (30.0 * 30.0 - 25.0 * 25.0));
            let got = volume([&skin, &cut]);
            println!("{got:.1} mm³, by Pappus {wanted:.1}");
            assert!((got / wanted - 1.0).abs() < 1e-3, "{got} instead of {wanted}");
        }
    }
}
