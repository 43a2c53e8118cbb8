//! Triangles of bodies of revolution and of the lines drawn on them. Pure geometry in the frame of the axle; the last
//! step turns it into a Bevy mesh.

use bevy::asset::RenderAssetUsages;
use bevy::mesh::{Indices, Mesh, PrimitiveTopology};
use nalgebra::Vector3;

use crate::app::frames::bevy_from_axle;
use crate::numerics::math;
use crate::view::blanks::{Outline, PitchCone, TracePoint};

/// The axis that a gear turns about, with the directions its angle counts from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GearAxis {
    /// A point on it, mm.
    pub origin_mm: Vector3<f64>,
    /// Along it.
    pub along: Vector3<f64>,
    /// Where the angle is 0.
    pub zero: Vector3<f64>,
    /// Where the angle is a quarter turn.
    pub quarter: Vector3<f64>,
}

impl GearAxis {
    /// The ring gear's: +z through the origin, angle from x to y.
    pub fn wheel() -> Self {
        Self {
            origin_mm: Vector3::zeros(),
            along: Vector3::z(),
            zero: Vector3::x(),
            quarter: Vector3::y(),
        }
    }

    /// The pinion's: +x through (0, a, 0), angle from y to z.
    pub fn pinion(offset_mm: f64) -> Self {
        Self {
            origin_mm: Vector3::new(0.0, offset_mm, 0.0),
            along: Vector3::x(),
            zero: Vector3::y(),
            quarter: Vector3::z(),
        }
    }

    /// Away from the axis at an angle.
    fn outward(&self, angle_rad: f64) -> Vector3<f64> {
        let (sin, cos) = math::sin_cos(angle_rad);
        self.zero * cos + self.quarter * sin
    }

    /// The point, from the axis's origin, mm.
    fn place_mm(&self, point: TracePoint) -> Vector3<f64> {
        self.along * point.axial_mm + self.outward(point.angle_rad) * point.radius_mm
    }
}

/// Triangles with a normal at each corner, mm from the axis's origin.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Solid {
    /// Corners.
    pub points_mm: Vec<Vector3<f64>>,
    /// Unit normals at the corners.
    pub normals: Vec<Vector3<f64>>,
    /// Three corners a triangle, counted from 0, seen anticlockwise from outside.
    pub triangles: Vec<[u32; 3]>,
}

impl Solid {
    /// Adds four corners in order round a face that looks along `normals`.
    fn quad(&mut self, corners_mm: [Vector3<f64>; 4], normals: [Vector3<f64>; 4]) {
        let first = u32::try_from(self.points_mm.len()).unwrap_or(u32::MAX);
        let [a, b, c, _] = corners_mm;
        let turned = (b - a).cross(&(c - a)).dot(&normals[0]) < 0.0;
        self.points_mm.extend(corners_mm);
        self.normals.extend(normals);
        let order = if turned {
            [[0, 2, 1], [0, 3, 2]]
        } else {
            [[0, 1, 2], [0, 2, 3]]
        };
        self.triangles
            .extend(order.map(|triangle| triangle.map(|corner| first.saturating_add(corner))));
    }

    /// The solid that an outline sweeps when it goes round the axis in `facets` steps. Every edge of the outline is
    /// smooth round the axis and sharp to the next edge, as turned steel is.
    pub fn revolved(axis: &GearAxis, outline: &Outline, facets: u32) -> Self {
        let mut solid = Self::default();
        for [from, to] in outline.edges_mm() {
            let (axial, radial) = (to[0] - from[0], to[1] - from[1]);
            let length = (axial * axial + radial * radial).sqrt();
            // The body lies to the left of the edge, the outside to the right.
            let (out_axial, out_radial) = (radial / length, -axial / length);
            let normal = |angle_rad: f64| axis.along * out_axial + axis.outward(angle_rad) * out_radial;
            for facet in 0..facets {
                let angle = |step: u32| core::f64::consts::TAU * (f64::from(step) / f64::from(facets));
                let (a, b) = (angle(facet), angle(facet + 1));
                let place = |corner: [f64; 2], angle_rad: f64| {
                    axis.place_mm(TracePoint {
                        axial_mm: corner[0],
                        radius_mm: corner[1],
                        angle_rad,
                    })
                };
                if from[1] > 0.0 && to[1] > 0.0 {
                    solid.quad(
                        [place(from, a), place(to, a), place(to, b), place(from, b)],
                        [normal(a), normal(a), normal(b), normal(b)],
                    );
                } else {
                    let (rim, hub) = if from[1] > 0.0 { (from, to) } else { (to, from) };
                    solid.triangle(
                        [place(hub, a), place(rim, a), place(rim, b)],
                        normal(f64::midpoint(a, b)),
                    );
                }
            }
        }
        solid
    }

    fn triangle(&mut self, corners_mm: [Vector3<f64>; 3], normal: Vector3<f64>) {
        let first = u32::try_from(self.points_mm.len()).unwrap_or(u32::MAX);
        let [a, b, c] = corners_mm;
        let turned = (b - a).cross(&(c - a)).dot(&normal) < 0.0;
        self.points_mm.extend(corners_mm);
        self.normals.extend([normal; 3]);
        let order = if turned { [0, 2, 1] } else { [0, 1, 2] };
        self.triangles.push(order.map(|corner| first.saturating_add(corner)));
    }

    /// Flat bands of `width_mm` along the traces of some teeth, `raised_mm` over the pitch cone.
    pub fn traces(
        axis: &GearAxis,
        cone: &PitchCone,
        teeth: impl IntoIterator<Item = u32>,
        width_mm: f64,
        raised_mm: f64,
    ) -> Self {
        const PIECES: u32 = 16;
        let mut solid = Self::default();
        let (sin, cos) = math::sin_cos(cone.angle_rad);
        for tooth in teeth {
            let station = |piece: u32| {
                let [toe_mm, heel_mm] = cone.face_mm;
                let s_mm = toe_mm + (heel_mm - toe_mm) * (f64::from(piece) / f64::from(PIECES));
                let at = cone.trace(tooth, s_mm);
                let outward = axis.outward(at.angle_rad);
                let around = axis.along.cross(&outward);
                let heelward = axis.along * cos + outward * sin;
                let normal = outward * cos - axis.along * sin;
                // Across the trace, in the tangent plane of the cone.
                let across = around * math::cos(cone.spiral_rad) - heelward * math::sin(cone.spiral_rad);
                let middle = axis.place_mm(at) + normal * raised_mm;
                (
                    middle - across * (width_mm / 2.0),
                    middle + across * (width_mm / 2.0),
                    normal,
                )
            };
            for piece in 0..PIECES {
                let ((a, b, n), (c, d, m)) = (station(piece), station(piece + 1));
                solid.quad([a, b, d, c], [n, n, m, m]);
            }
        }
        solid
    }

    /// A flat band of `width_mm` from radius to radius across an end face at `axial_mm`, looking along the axis or
    /// against it, `raised_mm` over the face.
    pub fn radial_mark(
        axis: &GearAxis,
        angle_rad: f64,
        radii_mm: [f64; 2],
        axial_mm: f64,
        width_mm: f64,
        raised_mm: f64,
        looks_along: bool,
    ) -> Self {
        let mut solid = Self::default();
        let normal = if looks_along { axis.along } else { -axis.along };
        let outward = axis.outward(angle_rad);
        let across = axis.along.cross(&outward) * (width_mm / 2.0);
        let at = |radius_mm: f64| axis.along * axial_mm + outward * radius_mm + normal * raised_mm;
        let [inner, outer] = radii_mm.map(at);
        solid.quad(
            [inner - across, outer - across, outer + across, inner + across],
            [normal; 4],
        );
        solid
    }

    /// Both together.
    #[must_use]
    pub fn and(mut self, other: Self) -> Self {
        let first = u32::try_from(self.points_mm.len()).unwrap_or(u32::MAX);
        self.points_mm.extend(other.points_mm);
        self.normals.extend(other.normals);
        let moved = other
            .triangles
            .into_iter()
            .map(|t| t.map(|corner| corner.saturating_add(first)));
        self.triangles.extend(moved);
        self
    }

    /// As Bevy draws it, about the axis's origin.
    pub fn mesh(&self) -> Mesh {
        let points: Vec<[f32; 3]> = self.points_mm.iter().map(|p| bevy_from_axle(*p).to_array()).collect();
        let normals: Vec<[f32; 3]> = self.normals.iter().map(|n| bevy_from_axle(*n).to_array()).collect();
        let indices = self.triangles.iter().flatten().copied().collect();
        Mesh::new(PrimitiveTopology::TriangleList, RenderAssetUsages::default())
            .with_inserted_attribute(Mesh::ATTRIBUTE_POSITION, points)
            .with_inserted_attribute(Mesh::ATTRIBUTE_NORMAL, normals)
            .with_inserted_indices(Indices::U32(indices))
    }
}

#[cfg(test)]
mod tests {
    use core::f64::consts::PI;

    use super::*;

    /// Volume of a closed solid by the divergence theorem: the sum of a · (b × c)/6 over its triangles.
    fn volume_mm3(solid: &Solid) -> f64 {
        let corner = |i: u32| solid.points_mm[usize::try_from(i).expect("a small number")];
        solid
            .triangles
            .iter()
            .map(|[a, b, c]| corner(*a).dot(&corner(*b).cross(&corner(*c))) / 6.0)
            .sum()
    }

    /// A cylinder with a bore and a cone: volumes known from school. A polygon of 720 sides lacks 1.3e-5 of a circle.
    #[test]
    fn turned_bodies_hold_their_volume() {
        let ring = Outline {
            corners_mm: vec![[0.0, 5.0], [4.0, 5.0], [4.0, 10.0], [0.0, 10.0]],
        };
        let cone = Outline {
            corners_mm: vec![[0.0, 0.0], [9.0, 0.0], [9.0, 6.0]],
        };
        for (outline, wanted) in [(&ring, PI * 75.0 * 4.0), (&cone, PI * 36.0 * 9.0 / 3.0)] {
            assert!(outline.signed_area_mm2() > 0.0, "the body lies to the left");
            for axis in [GearAxis::wheel(), GearAxis::pinion(30.0)] {
                let solid = Solid::revolved(&axis, outline, 720);
                let volume = volume_mm3(&solid);
                println!(
                    "volume {volume:.4}, by formula {wanted:.4}, relative {:+.1e}",
                    volume / wanted - 1.0
                );
                assert!((volume / wanted - 1.0).abs() < 2e-5, "{volume} instead of {wanted}");
            }
        }
    }

    #[test]
    fn triangles_look_the_way_of_their_normals() {
        let outline = Outline {
            corners_mm: vec![[0.0, 5.0], [4.0, 5.0], [3.0, 10.0], [1.0, 9.0]],
        };
        let cone = PitchCone {
            angle_rad: 1.2,
            mean_radius_mm: 90.0,
            mean_axial_mm: 30.0,
            face_mm: [-15.0, 15.0],
            spiral_rad: -0.6,
            mean_angle_rad: 0.3,
            teeth: 41,
        };
        let axis = GearAxis::pinion(20.0);
        for solid in [
            Solid::revolved(&axis, &outline, 48),
            Solid::traces(&axis, &cone, 0..41, 1.4, 0.1),
            Solid::radial_mark(&axis, 0.4, [3.0, 9.0], 4.0, 1.0, 0.1, true),
            Solid::radial_mark(&axis, 0.4, [3.0, 9.0], 4.0, 1.0, 0.1, false),
        ] {
            for triangle in &solid.triangles {
                let [a, b, c] = triangle.map(|i| solid.points_mm[usize::try_from(i).expect("a small number")]);
                let normal = solid.normals[usize::try_from(triangle[0]).expect("a small number")];
                let face = (b - a).cross(&(c - a));
                assert!(face.norm() > 0.0, "no empty triangle");
                assert!(
                    face.normalize().dot(&normal) > 0.9,
                    "a face looks the way of its normal"
                );
            }
        }
    }
}
