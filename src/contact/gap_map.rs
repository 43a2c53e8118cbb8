//! Smallest gap over the roll, on the grid of the flank.
//!
//! At a wheel point the gap runs along the roll nearly as a parabola, less the wheel's own motion, whose change-overs
//! give it sharp minima. All breaks of the motion bend the gap upward, so that its slope rises through every minimum:
//! the minimum is found by Newton's method on the slope, stopped at the breaks.
//!
//! Source: separations over the whole flank as what contact is made of, as in V. Simon, Load Distribution in Hypoid
//! Gears, Journal of Mechanical Design 122 (2000); their least over the roll, with the wheel held by whichever pair
//! touches, is our own definition of a rolled print.

use crate::gear::Roll;

use super::gap::{Gap, PlacedPair};
use super::motion::Envelope;
use super::prepared::{Node, PreparedFlank};
use super::resolution::{Resolution, coordinate};

/// When what is left of the minimum is below this, it is left out, mm.
const MINIMUM_ACCURACY_MM: f64 = 1e-9;
const MOST_STEPS: u32 = 25;
const LARGEST_STEP: f64 = 0.1;
/// Step of the walk to a change of sign, rad, and halvings of it: to 1e-10 rad.
const WALK: f64 = 0.04;
const HALVINGS: u32 = 29;
/// How far from its designed meeting a point is followed, rad.
const FARTHEST: f64 = 1.5;

/// Smallest gap at a grid point with its derivatives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct SmallestGap {
    /// mm.
    pub(crate) gap: f64,
    /// mm a unit of x and y.
    pub(crate) slope: [f64; 2],
}

/// Smallest gap over the roll at the points of a grid over the flank, x from toe to heel, y from root to top.
#[derive(Debug, Clone, PartialEq)]
pub struct GapMap {
    pub(crate) nx: usize,
    pub(crate) ny: usize,
    pub(crate) nodes: Vec<Option<SmallestGap>>,
}

impl GapMap {
    /// Points along the tooth and up the tooth.
    pub fn size(&self) -> (usize, usize) {
        (self.nx + 1, self.ny + 1)
    }

    /// Flank coordinates of the grid point (i, j).
    pub fn place(&self, i: usize, j: usize) -> (f64, f64) {
        (coordinate(i, self.nx), coordinate(j, self.ny))
    }

    /// Smallest gap at the grid point (i, j), µm. None where the pinion has nothing to meet it.
    pub fn gap_um(&self, i: usize, j: usize) -> Option<f64> {
        self.least(i, j).map(|least| 1e3 * least.gap)
    }

    pub(crate) fn least(&self, i: usize, j: usize) -> Option<SmallestGap> {
        if j > self.ny {
            return None;
        }
        self.nodes.get(i * (self.ny + 1) + j).copied().flatten()
    }
}

/// Search for smallest gaps of one flank at one placement.
#[derive(Debug, Clone, Copy)]
pub(crate) struct GapSearch<'a> {
    pub(crate) stand: &'a PlacedPair,
    pub(crate) flank: &'a PreparedFlank,
    pub(crate) envelope: &'a Envelope,
    pub(crate) kinks: &'a [f64],
}

/// What a neighbour found, relative to its designed meeting.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct NeighbourStart {
    /// From the designed meeting to the roll of the smallest gap.
    roll: f64,
    /// From that roll to the designed pair's touch at the pinion point.
    near: f64,
}

/// One evaluation along the roll.
struct RollSample {
    roll: Roll,
    turn: f64,
    turn_slope: f64,
    gap: Gap,
}

impl GapSearch<'_> {
    pub(crate) fn map(&self, resolution: Resolution) -> GapMap {
        let (nx, ny) = (resolution.lengthwise, resolution.heightwise);
        let mut nodes = Vec::with_capacity((nx + 1) * (ny + 1));
        let mut column_lead = NeighbourStart::default();
        for i in 0..=nx {
            let mut lead = column_lead;
            for j in 0..=ny {
                let node = self.flank.grid.get(i * (ny + 1) + j).copied().flatten();
                let least = node.and_then(|node| self.least(&node, &mut lead));
                if j == 0 {
                    column_lead = lead;
                }
                nodes.push(least);
            }
        }
        GapMap { nx, ny, nodes }
    }

    fn look(&self, node: &Node, angle: f64, near: f64) -> Option<RollSample> {
        let roll = self.stand.roll(angle);
        let (toward, slope) = self.envelope.at(angle);
        let (turn, turn_slope) = (toward * self.flank.toward, slope * self.flank.toward);
        let start = self.stand.advanced(&roll, near);
        let gap = self.stand.gap(&self.flank.pinion, node.w, node.n, &roll, turn, start)?;
        Some(RollSample {
            roll,
            turn,
            turn_slope,
            gap,
        })
    }

    /// The nearest breaks of the motion on both sides of a roll.
    fn between_kinks(&self, roll: f64) -> (f64, f64) {
        let pitch = self.envelope.pitch();
        let (mut low, mut high) = (f64::NEG_INFINITY, f64::INFINITY);
        for &kink in self.kinks {
            let turns = ((roll - kink) / pitch).floor();
            let below = kink + turns * pitch;
            let above = below + pitch;
            if below > low {
                low = below;
            }
            if above < high {
                high = above;
            }
        }
        (low, high)
    }

    /// Smallest gap of one wheel point over the roll, among the rolls at which its partner lies on the pinion's tooth.
    pub(crate) fn least(&self, node: &Node, lead: &mut NeighbourStart) -> Option<SmallestGap> {
        let (look, rest) = self.minimum(node, lead)?;
        let pinion = &self.flank.pinion;
        let mut gap = look.gap.mm - rest;
        let mut at = look;
        if pinion.depth_under_tip_mm(at.gap.p) < 0.0 {
            at = self.at_tip(node, at)?;
            gap = at.gap.mm;
        }
        let along = |moved| self.stand.gap_along(&at.gap, moved, &at.roll, at.turn);
        Some(SmallestGap {
            gap,
            slope: [along(node.w_x), along(node.w_y)],
        })
    }

    /// The roll of the smallest gap, and what the gap there is still above the minimum.
    fn minimum(&self, node: &Node, lead: &mut NeighbourStart) -> Option<(RollSample, f64)> {
        self.minimum_by_newton(node, lead)
            .or_else(|| self.minimum_by_halving(node, lead))
    }

    /// The same where Newton's method runs between breaks of the motion without an end: the slope rises with the roll, so
    /// that its change of sign can be closed in. Slower, and asked for only far from the designed placement.
    fn minimum_by_halving(&self, node: &Node, lead: &mut NeighbourStart) -> Option<(RollSample, f64)> {
        let slope_at = |angle: f64| {
            let look = self.look(node, angle, 0.0)?;
            let slope = look.gap.slope(look.turn_slope);
            Some((look, slope))
        };
        let start = node.roll;
        let (_, first) = slope_at(start)?;
        let onward = if first < 0.0 { WALK } else { -WALK };
        let (mut near_end, mut far_end) = (start, start);
        loop {
            far_end += onward;
            if (far_end - start).abs() > FARTHEST {
                return None;
            }
            let (_, slope) = slope_at(far_end)?;
            if (slope < 0.0) != (first < 0.0) {
                break;
            }
            near_end = far_end;
        }
        for _ in 0..HALVINGS {
            let middle = 0.5 * (near_end + far_end);
            let (_, slope) = slope_at(middle)?;
            if (slope < 0.0) == (first < 0.0) {
                near_end = middle;
            } else {
                far_end = middle;
            }
        }
        let angle = 0.5 * (near_end + far_end);
        let (look, _) = slope_at(angle)?;
        *lead = NeighbourStart {
            roll: angle - node.roll,
            near: look.gap.near.angle - angle,
        };
        Some((look, 0.0))
    }

    fn minimum_by_newton(&self, node: &Node, lead: &mut NeighbourStart) -> Option<(RollSample, f64)> {
        let mut angle = node.roll + lead.roll;
        let mut near = lead.near;
        let (mut low, mut high) = self.between_kinks(angle);
        let mut curvature = node.curvature;
        let mut last: Option<(f64, f64)> = None;
        for _ in 0..MOST_STEPS {
            let look = self.look(node, angle, near)?;
            near = look.gap.near.angle - angle;
            let slope = look.gap.slope(look.turn_slope);
            if let Some((a, s)) = last {
                let secant = (slope - s) / (angle - a);
                if secant > 0.3 * node.curvature && secant < 3.0 * node.curvature {
                    curvature = secant;
                }
            }
            let step = -slope / curvature;
            if step.is_nan() {
                return None;
            }
            let rest = 0.5 * slope * slope / curvature;
            if rest < MINIMUM_ACCURACY_MM && angle + step >= low && angle + step <= high {
                *lead = NeighbourStart {
                    roll: angle + step - node.roll,
                    near,
                };
                return Some((look, rest));
            }
            last = Some((angle, slope));
            let step = step.clamp(-LARGEST_STEP, LARGEST_STEP);
            let target = angle + step;
            let kink = if target > high {
                high
            } else if target < low {
                low
            } else {
                angle = target;
                if (angle - node.roll).abs() > FARTHEST {
                    return None;
                }
                continue;
            };
            // At a break of the motion: the slope on both sides decides.
            let look = self.look(node, kink, near)?;
            near = look.gap.near.angle - kink;
            let tiny = 1e-9 * self.envelope.pitch();
            let side = |angle: f64| {
                let slope = self.envelope.at(angle).1 * self.flank.toward;
                look.gap.slope(slope)
            };
            let (left, right) = (side(kink - tiny), side(kink + tiny));
            if left <= 0.0 && right >= 0.0 {
                *lead = NeighbourStart {
                    roll: kink - node.roll,
                    near,
                };
                return Some((look, 0.0));
            }
            let onward = if right < 0.0 { tiny } else { -tiny };
            (low, high) = self.between_kinks(kink + onward);
            let slope = if right < 0.0 { right } else { left };
            last = None;
            curvature = node.curvature;
            let step = -slope / curvature;
            angle = kink
                + onward
                + if step.abs() > LARGEST_STEP {
                    LARGEST_STEP * onward.signum()
                } else {
                    step
                };
            angle = if angle < low {
                low + tiny
            } else if angle > high {
                high - tiny
            } else {
                angle
            };
        }
        None
    }

    /// The gap at the roll where the partner of the point comes onto the pinion's tip edge.
    fn at_tip(&self, node: &Node, from: RollSample) -> Option<RollSample> {
        let pinion = &self.flank.pinion;
        let face = &pinion.wheel().blank().pinion_face;
        let mut look = from;
        for _ in 0..12 {
            let p = look.gap.p;
            let radius = (p.y * p.y + p.z * p.z).sqrt();
            let depth = pinion.depth_under_tip_mm(p);
            let moved = look.gap.movement(look.turn_slope);
            let slope = face.slope * moved.x - (p.y * moved.y + p.z * moved.z) / radius;
            let step = -depth / slope;
            if step.is_nan() {
                return None;
            }
            if depth.abs() < 1e-7 {
                return Some(look);
            }
            let step = step.clamp(-LARGEST_STEP, LARGEST_STEP);
            let angle = look.roll.angle + step;
            if (angle - node.roll).abs() > FARTHEST {
                return None;
            }
            let near = look.gap.near.angle - look.roll.angle;
            look = self.look(node, angle, near)?;
        }
        None
    }
}
