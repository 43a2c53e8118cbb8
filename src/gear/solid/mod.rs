//! Closed, oriented triangle meshes of both members with their true flanks.
//!
//! [`Solid::wheel`] and [`Solid::pinion`] make them from a [`GearSet`]. Each lies in the frame of its own member (see
//! [`crate::gear`]), so that the pair stands in mesh when the pinion is turned by φ1 and moved to its axis and the wheel
//! turned by φ2.
//!
//! Points are stored once ([`Solid::points_mm`]): on them the surface is watertight. For drawing there are vertices
//! ([`Solid::vertices`]), each with a point and a normal; along an edge that the eye should see as sharp a point has
//! several vertices. Triangles ([`Solid::triangles`]) name vertices, anticlockwise from outside, and the [`Part`] of the
//! surface they belong to. Vertices of flanks know their flank coordinates ([`FlankMark`]).
//!
//! How a member is put together (`mesh`): sections of one tooth space (`section`), one behind the other from toe to
//! heel and repeated around the axis, then end faces, then a body turned about the axis. What is exact and what is only
//! for the eye:
//!
//! - `wheel`: flanks, face cone and the flat bottom of the slot are what the cutter leaves, with sharp blade tips. A
//!   second cut, if the set warns of one, is not shown.
//! - `pinion`: flanks are the eased envelope, as deep as it is regular, at most to 0.6 of the clearance over the root cone;
//!   the tooth ends at its face cone. The coast flank stands back by the designed lash. Where there is no regular envelope at
//!   all from root to tip, a flank goes on from its neighbourhood for the eye, without flank coordinates. The fillet below
//!   the flanks is a smooth curve for the eye: nothing is computed from it.
//! - Bodies (`body`) are plausible, no more: a design says nothing of them.

mod body;
mod measure;
mod mesh;
mod pinion;
mod section;
mod wheel;

use nalgebra::Vector3;
use thiserror::Error;

use super::{GearSet, Side};

pub use measure::Topology;

/// How fine a mesh is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Detail {
    along: u32,
    up: u32,
}

impl Detail {
    /// For the window: with 11 and 41 teeth both members together have fewer than 60,000 triangles.
    pub const WINDOW: Self = Self { along: 12, up: 6 };

    /// Fields along a wheel flank (1 to 256) and up it (2 to 128); values outside are taken to the nearest. A pinion
    /// flank, which is longer and winds around its axis, has twice as many along and half as many again up. Lands, roots
    /// and end faces follow.
    pub fn new(along: u32, up: u32) -> Self {
        Self {
            along: along.clamp(1, 256),
            up: up.clamp(2, 128),
        }
    }

    /// Fields along a wheel flank.
    pub fn along(self) -> u32 {
        self.along
    }

    /// Fields up a wheel flank.
    pub fn up(self) -> u32 {
        self.up
    }
}

impl Default for Detail {
    fn default() -> Self {
        Self::WINDOW
    }
}

/// Part of the surface of a member.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// A flank: on the wheel this side of it, on the pinion the flank that meets this side of the wheel.
    Flank(Side),
    /// Tip of a tooth, on the face cone.
    TipLand,
    /// Bottom of a tooth space, with the fillets of the pinion.
    Root,
    /// End face at the toe.
    ToeFace,
    /// End face at the heel.
    HeelFace,
    /// Everything else: back and bore of the wheel, shaft and front of the pinion.
    Body,
}

/// Place on a flank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlankMark {
    /// Flank side.
    pub side: Side,
    /// Flank coordinate x of the wheel point, −1 toe to 1 heel; on the pinion that of the wheel point it meets in the
    /// designed pair, which may lie beyond the square.
    pub x: f64,
    /// Flank coordinate y, −1 root to 1 top of the wheel.
    pub y: f64,
    /// Which one, 0 to teeth − 1. On the wheel both flanks of one slot have the number of the slot: 0 holds P at roll 0,
    /// and the count goes on in the positive sense about the axis. On the pinion both flanks of one tooth have its number:
    /// tooth k fills slot k at roll 0, so that the count goes against the positive sense.
    pub number: u32,
}

/// A corner for drawing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Vertex {
    /// Index into [`Solid::points_mm`].
    pub point: u32,
    /// Unit normal, out of the body.
    pub normal: Vector3<f64>,
    /// Flank coordinates, for the vertices of flanks; none also where a pinion flank has no regular envelope.
    pub flank: Option<FlankMark>,
}

/// A triangle, anticlockwise from outside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Triangle {
    /// Indices into [`Solid::vertices`].
    pub vertices: [u32; 3],
    /// Where it belongs.
    pub part: Part,
    /// Number of the tooth, 0 to teeth − 1, for flanks, lands and end faces of teeth: on the pinion that of
    /// [`FlankMark::number`]; tooth k of the wheel follows slot k in the positive sense about the axis. A root has the number
    /// of the tooth that follows it in the positive sense. None for the body.
    pub tooth: Option<u32>,
}

/// A member of the pair.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ToothedPart {
    /// The wheel.
    Wheel,
    /// The pinion.
    Pinion,
}

/// Why a mesh cannot be made although the gear set exists.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
#[error("{self:?}")]
pub enum SolidError {
    /// The cutter does not reach part of a wheel flank.
    WheelFlank {
        /// Flank.
        side: Side,
        /// Flank coordinate x.
        x: f64,
    },
    /// No regular envelope at all across part of a pinion flank.
    PinionFlank {
        /// Flank.
        side: Side,
        /// Where, from 0 (toe) to 100 (heel).
        along: f64,
    },
    /// Flanks of one tooth, or of one tooth space, overlap over the whole height.
    NoTooth {
        /// Which of them.
        member: ToothedPart,
    },
}

/// The closed surface of a member.
#[derive(Debug, Clone, PartialEq)]
pub struct Solid {
    points_mm: Vec<Vector3<f64>>,
    vertices: Vec<Vertex>,
    triangles: Vec<Triangle>,
}

impl Solid {
    /// The wheel, in its own frame: axis z, teeth toward −z, roll 0.
    ///
    /// # Errors
    /// [`SolidError::WheelFlank`], [`SolidError::NoTooth`].
    pub fn wheel(set: &GearSet, detail: Detail) -> Result<Self, SolidError> {
        let teeth = wheel::teeth(set, detail)?;
        Ok(mesh::build(&teeth, &body::wheel(set, &teeth), mesh::Axis::Z))
    }

    /// The pinion, in its own frame: axis x, shaft toward +x, roll 0.
    ///
    /// # Errors
    /// [`SolidError::PinionFlank`], [`SolidError::NoTooth`].
    pub fn pinion(set: &GearSet, detail: Detail) -> Result<Self, SolidError> {
        let teeth = pinion::teeth(set, detail)?;
        Ok(mesh::build(&teeth, &body::pinion(set, &teeth), mesh::Axis::X))
    }

    /// Points of the surface, each once, mm.
    pub fn points_mm(&self) -> &[Vector3<f64>] {
        &self.points_mm
    }

    /// Corners for drawing.
    pub fn vertices(&self) -> &[Vertex] {
        &self.vertices
    }

    /// Triangles.
    pub fn triangles(&self) -> &[Triangle] {
        &self.triangles
    }

    /// Position of a vertex, mm.
    pub fn position_mm(&self, vertex: &Vertex) -> Vector3<f64> {
        // Every vertex of a solid names one of its points.
        self.points_mm.get(vertex.point as usize).copied().unwrap_or_default()
    }

    /// Corners of every triangle, mm.
    pub fn corners_mm(&self) -> impl Iterator<Item = [Vector3<f64>; 3]> + '_ {
        self.triangles.iter().map(|triangle| {
            triangle.vertices.map(|vertex| {
                let vertex = self.vertices.get(vertex as usize);
                vertex.map(|vertex| self.position_mm(vertex)).unwrap_or_default()
            })
        })
    }
}
