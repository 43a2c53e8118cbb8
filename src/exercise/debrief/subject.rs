//! What a value is of and in what it is measured: notes and records by the quantity that they speak of.

use crate::bench::{Measurand, Note, Operation, Record, StemChoice};
use crate::exercise::attempt::Attempt;

/// What a value is measured in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measure {
    /// mm.
    Length,
    /// mm, with its sign: a deviation.
    Deviation,
    /// Felt by hand, N m.
    Torque,
    /// Of a nut, N m.
    NutTorque,
    /// Halves of a tooth's length or height.
    Tooth,
}

/// What a belief is about: a quantity of the axle, rotating torque told apart by what was turned.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Subject {
    /// Rotating torque with the pinion alone.
    PinionTorque,
    /// Rotating torque with the gears in mesh.
    TotalTorque,
    /// Anything else.
    Of(Measurand),
}

impl Subject {
    pub(super) fn new(attempt: &Attempt, what: Measurand, operation: u32) -> Self {
        if matches!(what, Measurand::RollingTorque {}) {
            if attempt.in_mesh_after(operation) {
                Self::TotalTorque
            } else {
                Self::PinionTorque
            }
        } else {
            Self::Of(what)
        }
    }

    /// What was measured.
    pub fn what(self) -> Measurand {
        match self {
            Self::PinionTorque | Self::TotalTorque => Measurand::RollingTorque {},
            Self::Of(what) => what,
        }
    }

    /// What its values are measured in.
    pub fn measure(self) -> Measure {
        match self.what() {
            Measurand::NutTorque {} => Measure::NutTorque,
            Measurand::BreakawayTorque {} | Measurand::RollingTorque {} | Measurand::CarrierTorque {} => {
                Measure::Torque
            }
            Measurand::Lash { .. }
            | Measurand::WheelFaceRunout {}
            | Measurand::WheelRadialRunout {}
            | Measurand::PinionRunout {}
            | Measurand::PinionDepth {}
            | Measurand::PinionEndPlay {}
            | Measurand::CarrierEndPlay {}
            | Measurand::CaseSpread {}
            | Measurand::ShimPiece { .. }
            | Measurand::ShimPack { .. }
            | Measurand::SeatGap { .. } => Measure::Length,
            // None of these is a row: they are told elsewhere.
            Measurand::WheelTemperature {}
            | Measurand::Print {}
            | Measurand::Plate { .. }
            | Measurand::MatchNumbers {} => Measure::Tooth,
        }
    }
}

/// How the stem lay in the operation that took a record.
pub(super) fn stem_of(attempt: &Attempt, operation: u32) -> Option<StemChoice> {
    let place = usize::try_from(operation).ok()?.checked_sub(1)?;
    match &attempt.steps().get(place)?.operation {
        Operation::Measure { stem, .. } => Some(*stem),
        _ => None,
    }
}

/// Whether beliefs of this kind are a row; prints, plates, pieces, packs and numbers are told elsewhere.
fn is_row(what: Measurand) -> bool {
    !matches!(
        what,
        Measurand::Print {}
            | Measurand::Plate { .. }
            | Measurand::MatchNumbers {}
            | Measurand::ShimPiece { .. }
            | Measurand::ShimPack { .. }
            | Measurand::WheelTemperature {}
    )
}

/// Notes that are a row, with their subjects, in the order in which they were written.
pub(super) fn notes_of(attempt: &Attempt) -> Vec<(Subject, &Note)> {
    let notes = attempt.bench().notes().iter().filter(|n| is_row(n.what));
    notes.map(|n| (Subject::new(attempt, n.what, n.operation), n)).collect()
}

/// Records that are a row, with their subjects, in the order in which they were taken.
pub(super) fn reads_of(attempt: &Attempt) -> Vec<(Subject, &Record)> {
    let records = attempt.bench().records().iter().filter(|r| is_row(r.what));
    records
        .map(|r| (Subject::new(attempt, r.what, r.operation), r))
        .collect()
}
