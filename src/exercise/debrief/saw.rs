//! What was read of a build.

use super::period::Period;
use crate::bench::Measurand;
use crate::exercise::attempt::Attempt;

/// The last readings of a build.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Saw {
    /// Rotating torque of the pinion alone, N m.
    pub pinion_torque_nm: Option<f64>,
    /// Rotating torque with the gears in mesh, N m.
    pub total_torque_nm: Option<f64>,
    /// Smallest of the last lash readings at each tooth, mm, as the stem lay.
    pub lash_mm: Option<f64>,
    /// Distance from the wheel's axis to the pinion's head, mm.
    pub pinion_depth_mm: Option<f64>,
    /// End play of the pinion, mm.
    pub end_play_mm: Option<f64>,
    /// Face runout of the ring gear's back, mm.
    pub face_runout_mm: Option<f64>,
}

/// Which of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SawKind {
    /// Rotating torque of the pinion alone.
    PinionTorque,
    /// Rotating torque with the gears in mesh.
    TotalTorque,
    /// Lash.
    Lash,
    /// Distance from the wheel's axis to the pinion's head.
    PinionDepth,
    /// End play of the pinion.
    EndPlay,
    /// Face runout of the ring gear's back.
    FaceRunout,
}

impl SawKind {
    /// Whether it is felt by hand, in N m; else it is a length in mm.
    pub fn is_torque(self) -> bool {
        match self {
            Self::PinionTorque | Self::TotalTorque => true,
            Self::Lash | Self::PinionDepth | Self::EndPlay | Self::FaceRunout => false,
        }
    }
}

impl Saw {
    /// What was read; lengths in mm and torques in N m.
    pub fn told(&self) -> Vec<(SawKind, f64)> {
        [
            (SawKind::PinionTorque, self.pinion_torque_nm),
            (SawKind::TotalTorque, self.total_torque_nm),
            (SawKind::Lash, self.lash_mm),
            (SawKind::PinionDepth, self.pinion_depth_mm),
            (SawKind::EndPlay, self.end_play_mm),
            (SawKind::FaceRunout, self.face_runout_mm),
        ]
        .into_iter()
        .filter_map(|(kind, value)| Some((kind, value?)))
        .collect()
    }
}

pub(super) fn saw(attempt: &Attempt, state: &Attempt, span: Period) -> Saw {
    let mut saw = Saw::default();
    let mut lash: Vec<(u32, f64)> = Vec::new();
    // What was read before the last change is no reading of this build.
    let records = state.bench().records().iter();
    for record in records.filter(|r| !r.stale && span.holds(r.operation)) {
        let Some(value) = record.main_value() else {
            continue;
        };
        match record.what {
            Measurand::RollingTorque {} => {
                if attempt.in_mesh_after(record.operation) {
                    saw.total_torque_nm = Some(value);
                } else {
                    saw.pinion_torque_nm = Some(value);
                }
            }
            Measurand::Lash { tooth } => {
                lash.retain(|(other, _)| *other != tooth);
                lash.push((tooth, value));
            }
            Measurand::PinionDepth {} => saw.pinion_depth_mm = Some(value),
            Measurand::PinionEndPlay {} => saw.end_play_mm = Some(value),
            Measurand::WheelFaceRunout {} => saw.face_runout_mm = Some(value),
            // Not told as what was seen of a build.
            Measurand::BreakawayTorque {}
            | Measurand::CarrierTorque {}
            | Measurand::CarrierEndPlay {}
            | Measurand::CaseSpread {}
            | Measurand::WheelRadialRunout {}
            | Measurand::PinionRunout {}
            | Measurand::ShimPiece { .. }
            | Measurand::ShimPack { .. }
            | Measurand::SeatGap { .. }
            | Measurand::WheelTemperature {}
            | Measurand::NutTorque {}
            | Measurand::Print {}
            | Measurand::Plate { .. }
            | Measurand::MatchNumbers {} => {}
        }
    }
    saw.lash_mm = lash.into_iter().map(|(_, mm)| mm).reduce(f64::min);
    saw
}
