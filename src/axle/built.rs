//! What an axle is once its parts have settled: places, preloads, play, torques.
//!
//! Source: our own definitions; swings that happen once a turn add as arrows do.

use super::assembly::Assembly;
use crate::bearing::Tightened;
use crate::contact::Placement;
use crate::numerics::math;

/// Everything that follows from truth and assembly.
#[derive(Debug, Clone, PartialEq)]
pub struct Built {
    /// The pinion in its bearings with the nut on; none without.
    pub pinion: Option<PinionBuilt>,
    /// The carrier between its bearings with caps on; none without.
    pub side: Option<SideBuilt>,
    /// Mean placement; none while pinion, wheel or carrier are not in place.
    pub placement: Option<Placement>,
    /// Swings once a turn of the wheel and of the pinion.
    pub runout: Runout,
    /// Lash that wrongly matched timing marks add, by class of wheel tooth, mm; empty for a hunting set.
    pub class_lash_mm: Vec<f64>,
    /// The assembly after everything moved that had to: seats driven home, adjusters pressed on to their threads. It
    /// replaces the one that was asked about.
    pub after: Assembly,
}

/// The pinion's side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PinionBuilt {
    /// Clamp, spacer and bearings.
    pub tightened: Tightened,
    /// P, mm; none while the cartridge is not bolted to its case.
    pub axial_mm: Option<f64>,
    /// From the wheel's axis to the end of the pinion's head, mm: what a depth gauge is after.
    pub head_distance_mm: Option<f64>,
    /// How far the pinion can be pushed along its axis, mm.
    pub play_mm: f64,
}

/// The carrier's side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SideBuilt {
    /// Axial force in both bearings, N.
    pub preload_n: f64,
    /// How much wider than their room both stacks are, mm; negative leaves play.
    pub squeeze_mm: f64,
    /// End play, mm.
    pub play_mm: f64,
    /// How far the case is spread, mm.
    pub case_spread_mm: f64,
    /// G, mm, without the wheel's swing.
    pub axial_mm: f64,
}

/// Torque at the pinion nut, N m, with its parts.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Resistance {
    /// Head bearing.
    pub head_bearing_nm: f64,
    /// Tail bearing.
    pub tail_bearing_nm: f64,
    /// Seal.
    pub seal_nm: f64,
    /// Side bearings, through the gears.
    pub side_bearings_nm: f64,
    /// All of them.
    pub total_nm: f64,
}

/// Swings once a turn: cosine and sine part of each, mm.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Runout {
    /// Wheel's teeth along its axis, over the wheel's angle.
    pub wheel_face_mm: [f64; 2],
    /// Wheel's teeth across its axis, over the wheel's angle.
    pub wheel_radial_mm: [f64; 2],
    /// Pinion across its axis, over the pinion's angle.
    pub pinion_radial_mm: [f64; 2],
}

impl Runout {
    /// Half the face runout at the teeth, mm.
    pub fn wheel_face_amplitude_mm(&self) -> f64 {
        amplitude(self.wheel_face_mm)
    }

    /// Half the radial runout of the wheel, mm.
    pub fn wheel_radial_amplitude_mm(&self) -> f64 {
        amplitude(self.wheel_radial_mm)
    }

    /// Half the radial runout of the pinion, mm.
    pub fn pinion_radial_amplitude_mm(&self) -> f64 {
        amplitude(self.pinion_radial_mm)
    }
}

fn amplitude([cosine, sine]: [f64; 2]) -> f64 {
    (cosine * cosine + sine * sine).sqrt()
}

impl Built {
    /// Placement with the wheel turned by `wheel_rad` from its mark and the pinion by `pinion_rad` from its own.
    ///
    /// The wheel's face swing is felt at the mesh as G. Its centre goes round with it: at angle 0 the radial swing points
    /// along +x, toward the pinion's head, where it is as if the pinion stood that much deeper; a quarter turn on it
    /// points along +y, which takes offset away. The pinion's swing goes round in y and z.
    pub fn placement_at(&self, wheel_rad: f64, pinion_rad: f64) -> Option<Placement> {
        let mean = self.placement?;
        let along = |[cosine, sine]: [f64; 2], angle: f64| {
            let (s, c) = math::sin_cos(angle);
            // Size of the swing at this angle, and a quarter turn behind it.
            [cosine * c + sine * s, cosine * s - sine * c]
        };
        let [face, _] = along(self.runout.wheel_face_mm, wheel_rad);
        let [toward_x, toward_y] = along(self.runout.wheel_radial_mm, wheel_rad);
        let [pinion_y, pinion_z] = along(self.runout.pinion_radial_mm, pinion_rad);
        Some(Placement {
            pinion_axial_mm: mean.pinion_axial_mm - toward_x,
            wheel_axial_mm: mean.wheel_axial_mm + face - pinion_z,
            offset_mm: mean.offset_mm - toward_y + pinion_y,
            shaft_angle_rad: mean.shaft_angle_rad,
        })
    }

    /// Lash that timing adds where this wheel tooth is in mesh, mm.
    pub fn timing_lash_mm(&self, wheel_tooth: usize) -> f64 {
        let classes = self.class_lash_mm.len();
        wheel_tooth
            .checked_rem(classes)
            .and_then(|class| self.class_lash_mm.get(class))
            .copied()
            .unwrap_or(0.0)
    }
}
