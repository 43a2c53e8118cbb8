//! From sections to a closed surface: everything is a grid of points with rows from the start of the outline to its end
//! and columns around the axis, so that neighbours share their points.
//!
//! Source: our own construction, for drawing.

use nalgebra::Vector3;

use crate::gear::Side;
use crate::numerics::math;

use super::body::Body;
use super::section::{FlankSample, Place, Section, Teeth, index};
use super::{FlankMark, Part, Solid, Triangle, Vertex};

/// Axis of a member in its own frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Axis {
    /// Angles count from x to y.
    Z,
    /// Angles count from y to z.
    X,
}

impl Axis {
    /// A vector from its parts in two directions across the axis and along it.
    fn vector(self, first: f64, second: f64, along: f64) -> Vector3<f64> {
        match self {
            Self::Z => Vector3::new(first, second, along),
            Self::X => Vector3::new(along, first, second),
        }
    }

    fn position(self, place: &Place) -> Vector3<f64> {
        let (sin, cos) = math::sin_cos(place.angle);
        self.vector(place.r * cos, place.r * sin, place.axial)
    }

    fn direction(self, [outward, around, along]: [f64; 3], angle: f64) -> Vector3<f64> {
        let (sin, cos) = math::sin_cos(angle);
        self.vector(outward * cos - around * sin, outward * sin + around * cos, along)
    }
}

/// Vertex data that is known beforehand.
#[derive(Clone, Copy)]
struct Surface {
    normal: Vector3<f64>,
    mark: Option<FlankMark>,
}

struct Corner {
    point: u32,
    surface: Option<Surface>,
}

struct Builder {
    axis: Axis,
    solid: Solid,
}

impl Builder {
    fn point(&mut self, place: &Place) -> u32 {
        self.solid.points_mm.push(self.axis.position(place));
        u32::try_from(self.solid.points_mm.len() - 1).unwrap_or(u32::MAX)
    }

    fn at(&self, point: u32) -> Vector3<f64> {
        self.solid.points_mm.get(index(point)).copied().unwrap_or_default()
    }

    /// A smooth patch: `rows` of the same length. Rows run along the outline, columns around the axis.
    fn patch(&mut self, rows: &[Vec<Corner>], part: Part, tooth: Option<u32>) {
        let first_vertex = self.solid.vertices.len();
        let first_triangle = self.solid.triangles.len();
        let columns = rows.first().map_or(0, Vec::len);
        let known = rows.iter().flatten().all(|corner| corner.surface.is_some());
        for corner in rows.iter().flatten() {
            self.solid.vertices.push(Vertex {
                point: corner.point,
                normal: corner.surface.map(|s| s.normal).unwrap_or_default(),
                flank: corner.surface.and_then(|s| s.mark),
            });
        }
        let vertex =
            |row: usize, column: usize| u32::try_from(first_vertex + row * columns + column).unwrap_or(u32::MAX);
        for row in 1..rows.len() {
            for column in 1..columns {
                let quad = [
                    vertex(row - 1, column - 1),
                    vertex(row - 1, column),
                    vertex(row, column),
                    vertex(row, column - 1),
                ];
                self.quad(quad, part, tooth);
            }
        }
        if !known {
            self.smooth(first_vertex, first_triangle);
        }
    }

    /// Two triangles, along the shorter diagonal; one where two corners are the same point.
    fn quad(&mut self, quad: [u32; 4], part: Part, tooth: Option<u32>) {
        let point = |i: usize| {
            quad.get(i)
                .and_then(|&v| self.solid.vertices.get(index(v)))
                .map_or(0, |v| v.point)
        };
        let [p, q, r, s] = [point(0), point(1), point(2), point(3)];
        let [a, b, c, d] = quad;
        let split = (self.at(p) - self.at(r)).norm_squared() <= (self.at(q) - self.at(s)).norm_squared();
        let mut push = |vertices| {
            self.solid.triangles.push(Triangle { vertices, part, tooth });
        };
        if p == q {
            push([a, c, d]);
        } else if r == s {
            push([a, b, c]);
        } else if split {
            push([a, b, c]);
            push([a, c, d]);
        } else {
            push([a, b, d]);
            push([b, c, d]);
        }
    }

    /// Normals of the vertices from `first_vertex` on: the sum of the area vectors of their triangles. Vertices of the
    /// same point share it, so that a ring that was cut open shows no seam.
    fn smooth(&mut self, first_vertex: usize, first_triangle: usize) {
        let mut sums: Vec<(u32, Vector3<f64>)> = Vec::new();
        for triangle in self.solid.triangles.iter().skip(first_triangle) {
            let points = triangle
                .vertices
                .map(|v| self.solid.vertices.get(index(v)).map_or(0, |v| v.point));
            let [a, b, c] = points.map(|p| self.at(p));
            let area = (b - a).cross(&(c - a));
            sums.extend(points.map(|p| (p, area)));
        }
        // Stable, so that the order of addition is that of the triangles.
        sums.sort_by_key(|(point, _)| *point);
        let mut merged: Vec<(u32, Vector3<f64>)> = Vec::new();
        for (point, area) in sums {
            match merged.last_mut() {
                Some((last, sum)) if *last == point => *sum += area,
                _ => merged.push((point, area)),
            }
        }
        for vertex in self.solid.vertices.iter_mut().skip(first_vertex) {
            if let Ok(i) = merged.binary_search_by_key(&vertex.point, |(point, _)| *point)
                && let Some((_, sum)) = merged.get(i)
                && sum.norm() > 0.0
            {
                vertex.normal = sum / sum.norm();
            }
        }
    }

    /// The band between two closed rings of the same number of points.
    fn band(&mut self, from: &[u32], to: &[u32], part: Part) {
        let rows = [from, to].map(|ring| {
            let closed = ring.iter().chain(ring.first());
            closed.map(|&point| Corner { point, surface: None }).collect::<Vec<_>>()
        });
        self.patch(&rows, part, None);
    }
}

/// Points of a closed sequence of places of every pitch, with the numbers of columns that belong to a pitch.
struct Lattice {
    points: Vec<u32>,
    columns: usize,
    count: usize,
}

impl Lattice {
    /// Point `column` of pitch `pitch`; columns beyond the last go on into the next pitch.
    fn get(&self, row: usize, pitch: usize, column: usize) -> u32 {
        let around = (pitch * self.columns + column) % (self.count * self.columns);
        self.points
            .get(row * self.count * self.columns + around)
            .copied()
            .unwrap_or(0)
    }
}

/// Places of one pitch in order: flank down, bottom, flank up, land without its ends.
fn profile(section: &Section, pitch_rad: f64, land_fields: usize) -> Vec<Place> {
    let mut places: Vec<Place> = section.low.iter().map(|s| s.place).collect();
    places.extend(&section.bottom);
    places.extend(section.high.iter().map(|s| s.place));
    if let (Some(from), Some(to)) = (section.high.last(), section.low.first()) {
        places.extend(across(&from.place, &to.place.turned(pitch_rad), land_fields));
    }
    places
}

/// Places between two, without them.
fn across(from: &Place, to: &Place, fields: usize) -> Vec<Place> {
    (1..fields).map(|i| from.toward(to, i as f64 / fields as f64)).collect()
}

/// The closed surface of a member.
pub(super) fn build(teeth: &Teeth, body: &Body, axis: Axis) -> Solid {
    let mut builder = Builder {
        axis,
        solid: Solid {
            points_mm: Vec::new(),
            vertices: Vec::new(),
            triangles: Vec::new(),
        },
    };
    let lattice = lattice(&mut builder, teeth);
    for tooth in 0..teeth.count {
        tooth_space(&mut builder, teeth, &lattice, tooth);
    }
    let rings = [0, teeth.sections.len().saturating_sub(1)].map(|row| end_face(&mut builder, teeth, &lattice, row));
    bodies(&mut builder, body, &rings);
    builder.solid
}

fn lattice(builder: &mut Builder, teeth: &Teeth) -> Lattice {
    let pitch = teeth.pitch_rad();
    let mut points = Vec::new();
    let mut columns = 0;
    for section in &teeth.sections {
        let places = profile(section, pitch, teeth.land_fields);
        columns = places.len();
        for k in 0..teeth.count {
            for place in &places {
                points.push(builder.point(&place.turned(f64::from(k) * pitch)));
            }
        }
    }
    Lattice {
        points,
        columns,
        count: index(teeth.count),
    }
}

/// Flanks and root of a space and the land that follows it.
fn tooth_space(builder: &mut Builder, teeth: &Teeth, lattice: &Lattice, tooth: u32) {
    let turn = f64::from(tooth) * teeth.pitch_rad();
    let k = index(tooth);
    let up = teeth.sections.first().map_or(0, |s| s.low.len().saturating_sub(1));
    let bottom = teeth.sections.first().map_or(0, |s| s.bottom.len());
    let high_start = up + 1 + bottom;
    let high_side = match teeth.low_side {
        Side::Drive => Side::Coast,
        Side::Coast => Side::Drive,
    };
    let before = teeth.tooth_number(tooth + teeth.count - 1);
    let rows = |range: std::ops::RangeInclusive<usize>| -> Vec<Vec<Corner>> {
        (0..teeth.sections.len())
            .map(|row| {
                range
                    .clone()
                    .map(|column| Corner {
                        point: lattice.get(row, k, column),
                        surface: None,
                    })
                    .collect()
            })
            .collect()
    };
    let axis = builder.axis;
    let mut flank = |start: usize, side: Side, number: u32, tooth: u32, of: fn(&Section) -> &Vec<FlankSample>| {
        let mut rows = rows(start..=start + up);
        for (row, section) in rows.iter_mut().zip(&teeth.sections) {
            for (corner, sample) in row.iter_mut().zip(of(section)) {
                let [x, y] = sample.coordinates;
                let exists = x.is_finite();
                corner.surface = exists.then(|| Surface {
                    normal: axis.direction(sample.normal, sample.place.angle + turn),
                    mark: Some(FlankMark { side, x, y, number }),
                });
            }
        }
        builder.patch(&rows, Part::Flank(side), Some(tooth));
    };
    let [low_number, high_number] = teeth.flank_numbers(tooth);
    let number = teeth.tooth_number(tooth);
    flank(0, teeth.low_side, low_number, before, |s| &s.low);
    flank(high_start, high_side, high_number, number, |s| &s.high);
    builder.patch(&rows(up..=high_start), Part::Root, Some(number));
    builder.patch(&rows(high_start + up..=lattice.columns), Part::TipLand, Some(number));
}

/// End faces of the teeth in a row of the lattice; the closed ring below them.
fn end_face(builder: &mut Builder, teeth: &Teeth, lattice: &Lattice, row: usize) -> Vec<(u32, f64)> {
    let pitch = teeth.pitch_rad();
    let heel = row > 0;
    let part = if heel { Part::HeelFace } else { Part::ToeFace };
    let mut ring = Vec::new();
    let Some(section) = teeth.sections.get(row) else {
        return ring;
    };
    let up = section.low.len().saturating_sub(1);
    let high_start = up + 1 + section.bottom.len();
    for tooth in 0..teeth.count {
        let turn = f64::from(tooth) * pitch;
        let k = index(tooth);
        let mut rows: Vec<Vec<Corner>> = Vec::new();
        let mut foot = Vec::new();
        for (j, (high, low)) in section.high.iter().zip(section.low.iter().rev()).enumerate() {
            let mut points = vec![lattice.get(row, k, high_start + j)];
            if j < up {
                let inside = across(
                    &high.place.turned(turn),
                    &low.place.turned(turn + pitch),
                    teeth.land_fields,
                );
                for place in &inside {
                    points.push(builder.point(place));
                    if j == 0 {
                        foot.push((builder.point_of_last(), place.angle));
                    }
                }
            } else {
                points.extend((1..teeth.land_fields).map(|c| lattice.get(row, k, high_start + up + c)));
            }
            points.push(lattice.get(row, k, lattice.columns + up - j));
            rows.push(
                points
                    .into_iter()
                    .map(|point| Corner { point, surface: None })
                    .collect(),
            );
        }
        if heel {
            rows.reverse();
        }
        builder.patch(&rows, part, Some(teeth.tooth_number(tooth)));
        let bottom = section
            .low
            .last()
            .map(|s| s.place)
            .into_iter()
            .chain(section.bottom.iter().copied())
            .chain(section.high.first().map(|s| s.place));
        for (c, place) in bottom.enumerate() {
            ring.push((lattice.get(row, k, up + c), place.angle + turn));
        }
        ring.extend(foot);
    }
    ring
}

impl Builder {
    fn point_of_last(&self) -> u32 {
        u32::try_from(self.solid.points_mm.len().saturating_sub(1)).unwrap_or(u32::MAX)
    }
}

/// Circles of the body, joined to the rings below the end faces.
fn bodies(builder: &mut Builder, body: &Body, rings: &[Vec<(u32, f64)>; 2]) {
    let [toe, heel] = rings;
    let step = 2.0 * std::f64::consts::PI / toe.len() as f64;
    // How far a ring is turned against even spacing.
    let lead = |ring: &[(u32, f64)]| {
        let sum: f64 = ring
            .iter()
            .enumerate()
            .map(|(i, (_, angle))| angle - i as f64 * step)
            .sum();
        sum / ring.len() as f64
    };
    let start = lead(toe);
    let mut circle = |[axial, r]: [f64; 2]| -> Vec<u32> {
        (0..toe.len())
            .map(|i| {
                let angle = start + i as f64 * step;
                builder.point(&Place { r, angle, axial })
            })
            .collect()
    };
    let to_toe: Vec<_> = body.to_toe.iter().map(|&corner| circle(corner)).collect();
    let from_heel: Vec<_> = body.from_heel.iter().map(|&corner| circle(corner)).collect();
    let only_points = |ring: &[(u32, f64)]| ring.iter().map(|(point, _)| *point).collect::<Vec<_>>();
    for pair in to_toe.windows(2) {
        if let [from, to] = pair {
            builder.band(from, to, Part::Body);
        }
    }
    if let Some(last) = to_toe.last() {
        builder.band(last, &only_points(toe), Part::ToeFace);
    }
    if let Some(first) = from_heel.first() {
        // The heel ring leads the circles by whole steps, which are taken out, and less than half a step more.
        let steps = ((lead(heel) - start) / step).round();
        let count = i64::try_from(heel.len()).unwrap_or(1).max(1);
        #[expect(clippy::cast_possible_truncation, reason = "a few turns at most")]
        let back = usize::try_from((-(steps as i64)).rem_euclid(count)).unwrap_or(0);
        let mut ring = only_points(heel);
        ring.rotate_left(back);
        builder.band(&ring, first, Part::HeelFace);
    }
    for pair in from_heel.windows(2) {
        if let [from, to] = pair {
            builder.band(from, to, Part::Body);
        }
    }
    if let (Some(first), Some(last)) = (to_toe.first(), from_heel.last()) {
        match body.poles {
            None => builder.band(last, first, Part::Body),
            Some([start, end]) => {
                let mut pole = |axial| {
                    let point = builder.point(&Place {
                        r: 0.0,
                        angle: 0.0,
                        axial,
                    });
                    vec![point; first.len()]
                };
                let (start, end) = (pole(start), pole(end));
                builder.band(&start, first, Part::Body);
                builder.band(last, &end, Part::Body);
            }
        }
    }
}
