//! Sections of one tooth space, in cylinder coordinates about the member's axis.
//!
//! Source: our own construction, for drawing.

use crate::gear::Side;

/// A place in cylinder coordinates.
#[derive(Debug, Clone, Copy)]
pub(super) struct Place {
    /// Away from the axis, mm.
    pub(super) r: f64,
    /// About the axis, rad, not wrapped.
    pub(super) angle: f64,
    /// Along the axis, mm.
    pub(super) axial: f64,
}

impl Place {
    /// The place `part` of the way to another.
    pub(super) fn toward(&self, other: &Self, part: f64) -> Self {
        Self {
            r: self.r + part * (other.r - self.r),
            angle: self.angle + part * (other.angle - self.angle),
            axial: self.axial + part * (other.axial - self.axial),
        }
    }

    pub(super) fn turned(&self, by: f64) -> Self {
        Self {
            angle: self.angle + by,
            ..*self
        }
    }
}

/// A place on a flank.
#[derive(Debug, Clone, Copy)]
pub(super) struct FlankSample {
    pub(super) place: Place,
    /// Unit normal out of the body: outward, around, along the axis.
    pub(super) normal: [f64; 3],
    /// (x, y).
    pub(super) coordinates: [f64; 2],
}

/// What one tooth space looks like at one station along the tooth.
#[derive(Debug, Clone)]
pub(super) struct Section {
    /// The flank at the smaller angle, from tip to bottom.
    pub(super) low: Vec<FlankSample>,
    /// Between the flanks.
    pub(super) bottom: Vec<Place>,
    /// The flank at the larger angle, from bottom to tip.
    pub(super) high: Vec<FlankSample>,
}

/// Teeth of a member: sections from toe to heel, all with the same number of samples.
#[derive(Debug, Clone)]
pub(super) struct Teeth {
    pub(super) count: u32,
    /// Side of the flank at the smaller angle of a space.
    pub(super) low_side: Side,
    /// Whose number a flank has.
    pub(super) numbering: Numbering,
    /// Sections of space 0.
    pub(super) sections: Vec<Section>,
    /// Fields across a land.
    pub(super) land_fields: usize,
}

/// How flanks are numbered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Numbering {
    /// Wheel: both flanks of a slot alike, in the positive sense.
    Slots,
    /// Pinion: both flanks of a tooth alike, against the positive sense.
    Teeth,
}

impl Teeth {
    /// Number of the tooth that follows space `k`, counted in the positive sense.
    pub(super) fn tooth_number(&self, k: u32) -> u32 {
        match self.numbering {
            Numbering::Slots => k % self.count,
            Numbering::Teeth => (self.count - k % self.count) % self.count,
        }
    }

    /// Numbers of the flanks of space `k`: at the smaller and at the larger angle.
    pub(super) fn flank_numbers(&self, k: u32) -> [u32; 2] {
        let of = |tooth| self.tooth_number(tooth);
        match self.numbering {
            Numbering::Slots => [of(k); 2],
            Numbering::Teeth => [of(k + self.count - 1), of(k)],
        }
    }

    pub(super) fn pitch_rad(&self) -> f64 {
        2.0 * std::f64::consts::PI / f64::from(self.count)
    }
}

/// Angle brought into 0 to one turn.
pub(super) fn turn_of(angle: f64) -> f64 {
    let turn = 2.0 * std::f64::consts::PI;
    angle - turn * (angle / turn).floor()
}

/// A count as an index.
pub(super) fn index(count: u32) -> usize {
    usize::try_from(count).unwrap_or(usize::MAX)
}
