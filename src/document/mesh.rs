//! What the teeth of a placed gear set do, as `lashwright mesh --json` prints it.
//!
//! A number that does not exist is `null`: the limit radius of a set without offset, and whatever asks for contact
//! where there is none.

use schemars::JsonSchema;
use serde::Serialize;

use crate::gear::{GearSet, Side};
use crate::quantity::degrees;

/// One placement of a gear set.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct MeshDocument {
    /// Name of the gear set as given on the command line.
    pub gears: String,
    /// How the contact was found: "exact" or "fast".
    pub route: String,
    /// Thickness of the marking paste, µm.
    pub paste_um: f64,
    /// What is doubtful about the set's geometry, one sentence each; empty where nothing is.
    pub warnings: Vec<String>,
    /// How far the gears stand from where they were designed to.
    pub placement: PlacementDocument,
    /// Numbers of the set as designed; left out where many placements are asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub geometry: Option<GeometryDocument>,
    /// Play at the wheel's outer pitch radius over one tooth pitch, pinion held, mm; negative is interference.
    pub lash_mm: LashDocument,
    /// Contact of the wheel's convex flank.
    pub drive: FlankDocument,
    /// Contact of the wheel's concave flank.
    pub coast: FlankDocument,
    /// What simulated values are not: no specification for a real axle.
    pub note: String,
}

/// How far the gears stand from where they were designed to.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct PlacementDocument {
    /// P: pinion away from the crossing point, mm.
    pub pinion_axial_mm: f64,
    /// G: wheel away from the pinion, mm.
    pub wheel_axial_mm: f64,
    /// E: pinion along +y, mm.
    pub offset_mm: f64,
    /// Σ: shaft angle beyond 90°, degrees.
    pub shaft_angle_deg: f64,
}

/// Numbers of the set as designed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct GeometryDocument {
    /// δ1.
    pub pinion_pitch_angle_deg: f64,
    /// δ2.
    pub wheel_pitch_angle_deg: f64,
    /// β_m1.
    pub pinion_spiral_angle_deg: f64,
    /// β_m2.
    pub wheel_spiral_angle_deg: f64,
    /// ζ_mp.
    pub offset_angle_pitch_plane_deg: f64,
    /// α_lim, with its sign.
    pub limit_pressure_angle_deg: f64,
    /// Limit radius of lengthwise curvature; null without offset.
    pub limit_radius_mm: Option<f64>,
    /// m_mn.
    pub mean_normal_module_mm: f64,
    /// r_m2.
    pub wheel_mean_radius_mm: f64,
    /// r_m1.
    pub pinion_mean_radius_mm: f64,
    /// δ_a2.
    pub wheel_face_angle_deg: f64,
    /// δ_f2.
    pub wheel_root_angle_deg: f64,
    /// Angle of the pinion's face cone.
    pub pinion_face_angle_deg: f64,
    /// Width of the cutter's slot at the blade tips.
    pub point_width_mm: f64,
    /// Blade angle that cuts the wheel's convex flank.
    pub blade_angle_drive_deg: f64,
    /// Blade angle that cuts the wheel's concave flank.
    pub blade_angle_coast_deg: f64,
}

impl GeometryDocument {
    /// The numbers of a gear set.
    pub fn new(set: &GearSet) -> Self {
        let (pitch, blank, cutter) = (set.pitch(), set.blank(), set.cutter());
        let blade_deg = |side: Side| {
            let [drive, coast] = cutter.blade_angles_rad;
            degrees(match side {
                Side::Drive => drive,
                Side::Coast => coast,
            })
        };
        Self {
            pinion_pitch_angle_deg: degrees(pitch.pinion_pitch_angle_rad),
            wheel_pitch_angle_deg: degrees(pitch.wheel_pitch_angle_rad),
            pinion_spiral_angle_deg: degrees(pitch.pinion_spiral_angle_rad),
            wheel_spiral_angle_deg: degrees(pitch.wheel_spiral_angle_rad),
            offset_angle_pitch_plane_deg: degrees(pitch.offset_angle_pitch_plane_rad),
            limit_pressure_angle_deg: degrees(pitch.limit_pressure_angle_rad),
            limit_radius_mm: pitch.limit_radius_mm,
            mean_normal_module_mm: pitch.mean_normal_module_mm,
            wheel_mean_radius_mm: pitch.wheel_mean_radius_mm,
            pinion_mean_radius_mm: pitch.pinion_mean_radius_mm,
            wheel_face_angle_deg: degrees(blank.wheel_face_angle_rad),
            wheel_root_angle_deg: degrees(blank.wheel_root_angle_rad),
            pinion_face_angle_deg: degrees(blank.pinion_face.angle_rad),
            point_width_mm: cutter.point_width_mm,
            blade_angle_drive_deg: blade_deg(Side::Drive),
            blade_angle_coast_deg: blade_deg(Side::Coast),
        }
    }
}

/// Play over one tooth pitch, mm; null where one of the flanks finds no contact.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct LashDocument {
    /// Tightest.
    pub min: Option<f64>,
    /// Mean over the pitch.
    pub mean: Option<f64>,
    /// Loosest.
    pub max: Option<f64>,
}

/// Contact of one flank.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct FlankDocument {
    /// The marked area.
    pub pattern: PatternDocument,
    /// Peak to peak of the wheel's motion over one tooth pitch, µrad at the wheel.
    pub transmission_error_urad: Option<f64>,
    /// How much of the roll touches an edge.
    pub edge_contact: EdgeContactDocument,
}

/// The marked area on the wheel's flank: x from −1 toe to +1 heel, y from −1 root to +1 top.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct PatternDocument {
    /// Share of the flank's x–y square; 0 where nothing is marked.
    pub area_fraction: f64,
    /// Centroid (x, y).
    pub centroid: Option<[f64; 2]>,
    /// Least x.
    pub toe: Option<f64>,
    /// Largest x.
    pub heel: Option<f64>,
    /// Least y.
    pub root: Option<f64>,
    /// Largest y.
    pub top: Option<f64>,
}

/// Shares of the roll, 0 to 1, over which the touching point lies on an edge.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct EdgeContactDocument {
    /// Within 0.02 of an edge of the wheel's flank.
    pub wheel: Option<f64>,
    /// On the pinion's tip edge.
    pub pinion_tip: Option<f64>,
}
