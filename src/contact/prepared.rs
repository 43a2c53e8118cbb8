//! What contact needs of a gear set and does not depend on the placement, computed once.
//!
//! Source: our own method.

use nalgebra::Vector3;

use crate::gear::{GearSet, PinionFlank, Side};

use super::gap::PlacedPair;
use super::placement::Placement;
use super::resolution::{Resolution, coordinate};

/// A point of the wheel's flank with what its designed meeting says.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Node {
    pub(crate) w: Vector3<f64>,
    pub(crate) n: Vector3<f64>,
    pub(crate) w_x: Vector3<f64>,
    pub(crate) w_y: Vector3<f64>,
    /// Roll at which the designed pair meets here.
    pub(crate) roll: f64,
    /// Second derivative of the gap along the roll there, mm/rad².
    pub(crate) curvature: f64,
}

impl Node {
    /// The node at flank coordinates (x, y), `designed` being the two gears as designed. None where there is no regular
    /// meeting.
    pub(crate) fn at(pinion: &PinionFlank, designed: &PlacedPair, x: f64, y: f64) -> Option<Self> {
        let patch = pinion.wheel().patch(x, y)?;
        let meeting = pinion.meeting(x, y)?;
        let mut node = Self {
            w: patch.w,
            n: patch.n,
            w_x: patch.w_x,
            w_y: patch.w_y,
            roll: meeting.roll_rad,
            curvature: meeting.second_derivative_mm,
        };
        // Curvature of the gap along the roll by difference of its slope on both sides of the meeting.
        let h = 1e-3;
        let slope = |roll: f64| {
            let roll = designed.roll(roll);
            let gap = designed.gap(pinion, node.w, node.n, &roll, 0.0, designed.start(&roll))?;
            Some(gap.slope(0.0))
        };
        if let (Some(low), Some(high)) = (slope(node.roll - h), slope(node.roll + h)) {
            let curvature = (high - low) / (2.0 * h);
            if curvature > 0.0 {
                node.curvature = curvature;
            }
        }
        Some(node)
    }
}

/// A flank made ready.
#[derive(Debug, Clone)]
pub(crate) struct PreparedFlank {
    pub(crate) pinion: PinionFlank,
    /// ψ of this flank: sense of wheel rotation that brings it toward the pinion.
    pub(crate) toward: f64,
    /// Grid over the square, x outer: index i (heightwise + 1) + j. None where no regular meeting exists.
    pub(crate) grid: Vec<Option<Node>>,
    /// The grid for choosing where a search starts.
    pub(crate) coarse: Vec<CoarseNode>,
    /// Rolls between which a pair can be in contact, in samples from roll 0.
    pub(crate) first_sample: i64,
    pub(crate) last_sample: i64,
}

/// Where a search for the first touch may start.
#[derive(Debug, Clone, Copy)]
pub(crate) struct CoarseNode {
    pub(crate) x: f64,
    pub(crate) y: f64,
    pub(crate) node: Node,
}

/// Cells of the coarse grid.
const COARSE: (usize, usize) = (10, 8);

/// A gear set with both flanks made ready: what both routes are made of.
#[derive(Debug, Clone)]
pub(crate) struct Prepared {
    pub(crate) gears: GearSet,
    pub(crate) resolution: Resolution,
    flanks: [PreparedFlank; 2],
}

impl Prepared {
    pub(crate) fn new(gears: GearSet, resolution: Resolution) -> Self {
        let resolution = resolution.sane();
        let flanks = Side::BOTH.map(|side| PreparedFlank::new(&gears, side, resolution));
        Self {
            gears,
            resolution,
            flanks,
        }
    }

    pub(crate) fn flank(&self, side: Side) -> &PreparedFlank {
        let [drive, coast] = &self.flanks;
        match side {
            Side::Drive => drive,
            Side::Coast => coast,
        }
    }
}

impl PreparedFlank {
    fn new(gears: &GearSet, side: Side, resolution: Resolution) -> Self {
        let pinion = *gears.pinion_flank(side);
        let stand = PlacedPair::new(gears, Placement::NOMINAL);
        let toward = pinion.wheel().point(0.0, 0.0).map_or(1.0, |p| {
            if p.position_mm.x * p.normal.y - p.position_mm.y * p.normal.x >= 0.0 {
                1.0
            } else {
                -1.0
            }
        });
        let node = |x, y| Node::at(&pinion, &stand, x, y);
        let (nx, ny) = (resolution.lengthwise, resolution.heightwise);
        let mut grid = Vec::with_capacity((nx + 1) * (ny + 1));
        for i in 0..=nx {
            for j in 0..=ny {
                grid.push(node(coordinate(i, nx), coordinate(j, ny)));
            }
        }
        let mut coarse = Vec::new();
        let (mut lowest, mut highest) = (f64::INFINITY, f64::NEG_INFINITY);
        for i in 0..=COARSE.0 {
            for j in 0..=COARSE.1 {
                let (x, y) = (coordinate(i, COARSE.0), coordinate(j, COARSE.1));
                if let Some(node) = node(x, y) {
                    coarse.push(CoarseNode { x, y, node });
                    if node.roll < lowest {
                        lowest = node.roll;
                    }
                    if node.roll > highest {
                        highest = node.roll;
                    }
                }
            }
        }
        let step = gears.wheel_pitch_rad() / resolution.rolls as f64;
        let half = resolution.rolls as f64 / 2.0;
        let (first, last) = if lowest <= highest {
            (lowest / step - half, highest / step + half)
        } else {
            (0.0, 0.0)
        };
        Self {
            pinion,
            toward,
            grid,
            coarse,
            first_sample: whole(first.floor()),
            last_sample: whole(last.ceil()),
        }
    }
}

/// A whole number that came out of a computation with rolls: a few thousand at most.
#[expect(
    clippy::cast_possible_truncation,
    reason = "rolls lie within a turn, samples within a few thousand"
)]
fn whole(x: f64) -> i64 {
    x as i64
}
