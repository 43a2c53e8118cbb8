//! First touch of one pair at one roll: the smallest rotation of the wheel toward the pinion, over the whole flank.
//!
//! The rotation D(x, y) that brings the wheel point (x, y) onto the pinion is smooth, and its gradient is known. It is
//! minimised over the part of the square whose partner lies on the pinion's tooth: sequential quadratic programming with
//! two unknowns, where every step minimises a quadratic on a convex polygon exactly. Start points come from a coarse grid
//! whose D is extrapolated along the roll, and from the neighbouring roll.
//!
//! Source: sequential quadratic programming as in J. Nocedal and S. J. Wright, Numerical Optimization, 2nd ed., 2006,
//! chapter 18; that edges may decide the first touch, in T. J. Krenzer, SAE paper 810688 (1981). The function that is
//! minimised is our own.

use crate::gear::Roll;

use super::gap::{PlacedPair, Touch};
use super::prepared::{CoarseNode, PreparedFlank};

/// Step of the differences that give second derivatives.
const DIFFERENCE: f64 = 1e-3;
/// A step shorter than this ends the search: its square no longer counts.
const SHORT_STEP: f64 = 1e-5;
const MOST_STEPS: u32 = 40;
/// How far outside the pinion's tip a point may lie for rounding's sake, mm.
const TIP_TOLERANCE_MM: f64 = 1e-8;
/// How near to the tip a point lies on the edge, mm.
const ON_TIP_MM: f64 = 1e-6;
/// Most starts from the coarse grid for one roll.
const MOST_STARTS: usize = 3;

/// Where a pair touches first at a roll.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct FirstTouch {
    pub(crate) x: f64,
    pub(crate) y: f64,
    /// D, rad: rotation of the wheel toward the pinion.
    pub(crate) toward: f64,
    /// dD/dφ.
    pub(crate) slope: f64,
    /// On the pinion's tip edge.
    pub(crate) on_tip: bool,
    /// At the border of the regular region.
    pub(crate) on_border: bool,
}

/// Start values from another touch.
#[derive(Debug, Clone, Copy)]
pub(crate) struct TouchStart {
    pub(crate) x: f64,
    pub(crate) y: f64,
    turn: f64,
    /// Roll of the designed pair's touch, as a step from the roll.
    near_step: f64,
}

/// A coarse node at a placement: how its D runs along the roll.
#[derive(Debug, Clone, Copy)]
pub(crate) struct NodeAtPlacement {
    start: TouchStart,
    roll: f64,
    toward: f64,
    slope: f64,
    half_curvature: f64,
}

/// D and the distance from the pinion's tip at one wheel point, with gradients.
#[derive(Debug, Clone, Copy)]
struct GapSample {
    x: f64,
    y: f64,
    d: f64,
    grad: [f64; 2],
    tip: f64,
    tip_grad: [f64; 2],
    angle: f64,
    touch: Touch,
}

/// Search for first touches of one flank at one placement.
#[derive(Debug, Clone, Copy)]
pub(crate) struct TouchSearch<'a> {
    pub(crate) stand: &'a PlacedPair,
    pub(crate) flank: &'a PreparedFlank,
}

impl TouchSearch<'_> {
    /// D of the coarse nodes with its run along the roll.
    pub(crate) fn nodes(&self) -> Vec<NodeAtPlacement> {
        self.flank.coarse.iter().filter_map(|node| self.node_at(node)).collect()
    }

    fn node_at(&self, coarse: &CoarseNode) -> Option<NodeAtPlacement> {
        let node = &coarse.node;
        let roll = self.stand.roll(node.roll);
        let touch = self.stand.touch(&self.flank.pinion, node.w, &roll, 0.0, roll)?;
        if self.flank.pinion.depth_under_tip_mm(touch.p) < -TIP_TOLERANCE_MM {
            return None;
        }
        let lever = (node.n.y * node.w.x - node.n.x * node.w.y) * self.flank.toward;
        Some(NodeAtPlacement {
            start: TouchStart {
                x: coarse.x,
                y: coarse.y,
                turn: touch.turn,
                near_step: touch.near.angle - node.roll,
            },
            roll: node.roll,
            toward: touch.turn * self.flank.toward,
            slope: self.stand.touch_along_roll(&touch) * self.flank.toward,
            half_curvature: 0.5 * node.curvature / lever,
        })
    }

    /// First touch at a roll. None where nothing of the pair can touch.
    pub(crate) fn first(
        &self,
        roll_angle: f64,
        nodes: &[NodeAtPlacement],
        neighbour: Option<TouchStart>,
    ) -> Option<(FirstTouch, TouchStart)> {
        let roll = self.stand.roll(roll_angle);
        let mut best: Option<(FirstTouch, TouchStart)> = None;
        let mut keep = |found: Option<(FirstTouch, TouchStart)>| {
            if let Some((touch, start)) = found
                && best.is_none_or(|(b, _)| touch.toward < b.toward)
            {
                best = Some((touch, start));
            }
        };
        if let Some(start) = neighbour {
            keep(self.descend(&roll, start));
        }
        for start in best_nodes(nodes, roll_angle).into_iter().flatten() {
            keep(self.descend(&roll, start));
        }
        best
    }

    fn look(&self, roll: &Roll, x: f64, y: f64, start_angle: Option<f64>, start: &TouchStart) -> Option<GapSample> {
        let wheel = self.flank.pinion.wheel();
        let patch = match start_angle {
            Some(angle) => wheel.patch_near(x, y, angle)?,
            None => wheel.patch(x, y)?,
        };
        let near = self.stand.advanced(roll, start.near_step);
        let touch = self.stand.touch(&self.flank.pinion, patch.w, roll, start.turn, near)?;
        let face = &self.flank.pinion.wheel().blank().pinion_face;
        let radius = (touch.p.y * touch.p.y + touch.p.z * touch.p.z).sqrt();
        let tip = face.radius_mm(touch.p.x) - radius;
        let along = |moved| {
            let (turn, p) = self.stand.touch_along(&touch, moved);
            (
                turn * self.flank.toward,
                face.slope * p.x - (touch.p.y * p.y + touch.p.z * p.z) / radius,
            )
        };
        let ((d_x, tip_x), (d_y, tip_y)) = (along(patch.w_x), along(patch.w_y));
        Some(GapSample {
            x,
            y,
            d: touch.turn * self.flank.toward,
            grad: [d_x, d_y],
            tip,
            tip_grad: [tip_x, tip_y],
            angle: patch.angle,
            touch,
        })
    }

    fn descend(&self, roll: &Roll, start: TouchStart) -> Option<(FirstTouch, TouchStart)> {
        let mut from = start;
        let follow = |look: &GapSample| TouchStart {
            x: look.x,
            y: look.y,
            turn: look.touch.turn,
            near_step: look.touch.near.angle - roll.angle,
        };
        let mut here = self.look(roll, start.x, start.y, None, &from)?;
        if here.tip < -TIP_TOLERANCE_MM {
            here = self.back_inside(roll, here, &from)?;
        }
        let mut reach = 0.5;
        let mut on_border = false;
        for _ in 0..MOST_STEPS {
            from = follow(&here);
            let Some((hessian, tip_hessian)) = self.curvatures(roll, &here, &from) else {
                on_border = true;
                break;
            };
            // Curvature of the Lagrangian: the tip edge is curved.
            let norm = here.tip_grad[0] * here.tip_grad[0] + here.tip_grad[1] * here.tip_grad[1];
            let force = (here.grad[0] * here.tip_grad[0] + here.grad[1] * here.tip_grad[1]) / norm;
            let force = if here.tip < 0.05 && force > 0.0 { force } else { 0.0 };
            let h = [0, 1, 2].map(|i| hessian[i] - force * tip_hessian[i]);
            let [dx, dy] = step_in_polygon(&here, h, reach);
            let size = (dx * dx + dy * dy).sqrt();
            if size < SHORT_STEP {
                break;
            }
            let (x, y) = (clamped(here.x + dx), clamped(here.y + dy));
            let mut next = self.look(roll, x, y, Some(here.angle), &from);
            if let Some(look) = next
                && look.tip < -TIP_TOLERANCE_MM
            {
                next = self.back_inside(roll, look, &from);
            }
            match next {
                Some(look) if look.d < here.d + 1e-13 => {
                    here = look;
                    if size > 0.9 * reach {
                        reach *= 2.0;
                    }
                    on_border = false;
                }
                other => {
                    on_border = other.is_none();
                    reach = 0.25 * size;
                    if reach < SHORT_STEP {
                        break;
                    }
                }
            }
        }
        Some((
            FirstTouch {
                x: here.x,
                y: here.y,
                toward: here.d,
                slope: self.stand.touch_along_roll(&here.touch) * self.flank.toward,
                on_tip: here.tip < ON_TIP_MM,
                on_border,
            },
            follow(&here),
        ))
    }

    /// Second derivatives (xx, xy, yy) of D and of the distance from the tip, by differences of the gradients.
    fn curvatures(&self, roll: &Roll, here: &GapSample, from: &TouchStart) -> Option<([f64; 3], [f64; 3])> {
        let hx = if here.x > 0.0 { -DIFFERENCE } else { DIFFERENCE };
        let hy = if here.y > 0.0 { -DIFFERENCE } else { DIFFERENCE };
        let a = self.look(roll, here.x + hx, here.y, Some(here.angle), from)?;
        let b = self.look(roll, here.x, here.y + hy, Some(here.angle), from)?;
        let second = |g: [f64; 2], ga: [f64; 2], gb: [f64; 2]| {
            [
                (ga[0] - g[0]) / hx,
                0.5 * ((ga[1] - g[1]) / hx + (gb[0] - g[0]) / hy),
                (gb[1] - g[1]) / hy,
            ]
        };
        Some((
            second(here.grad, a.grad, b.grad),
            second(here.tip_grad, a.tip_grad, b.tip_grad),
        ))
    }

    /// Moves a point that lies beyond the pinion's tip to the tip edge, along the gradient inside the square.
    fn back_inside(&self, roll: &Roll, beyond: GapSample, from: &TouchStart) -> Option<GapSample> {
        let mut look = beyond;
        for _ in 0..8 {
            if look.tip >= -TIP_TOLERANCE_MM {
                return Some(look);
            }
            let lacking = 0.5 * TIP_TOLERANCE_MM - look.tip;
            let mut free = look.tip_grad;
            for (g, place) in free.iter_mut().zip([look.x, look.y]) {
                if (place >= 1.0 && *g > 0.0) || (place <= -1.0 && *g < 0.0) {
                    *g = 0.0;
                }
            }
            let norm = free[0] * free[0] + free[1] * free[1];
            if norm <= 0.0 {
                return None;
            }
            let (x, y) = (
                clamped(look.x + free[0] * lacking / norm),
                clamped(look.y + free[1] * lacking / norm),
            );
            look = self.look(roll, x, y, Some(look.angle), from)?;
        }
        (look.tip >= -TIP_TOLERANCE_MM).then_some(look)
    }
}

fn clamped(x: f64) -> f64 {
    x.clamp(-1.0, 1.0)
}

/// The coarse nodes with the smallest extrapolated D, no two of them neighbours.
fn best_nodes(nodes: &[NodeAtPlacement], roll: f64) -> [Option<TouchStart>; MOST_STARTS] {
    let value = |s: &NodeAtPlacement| {
        let step = roll - s.roll;
        s.toward + step * (s.slope + step * s.half_curvature)
    };
    let mut chosen: [Option<TouchStart>; MOST_STARTS] = [None; MOST_STARTS];
    for place in 0..MOST_STARTS {
        let mut best: Option<(f64, &NodeAtPlacement)> = None;
        for node in nodes {
            let taken = chosen.iter().flatten().any(|c| {
                let (dx, dy) = (c.x - node.start.x, c.y - node.start.y);
                dx * dx + dy * dy < 0.64
            });
            let v = value(node);
            if !taken && best.is_none_or(|(b, _)| v < b) {
                best = Some((v, node));
            }
        }
        if let (Some((_, node)), Some(slot)) = (best, chosen.get_mut(place)) {
            // Along the roll the touch of the designed pair moves about as far back as the roll goes on.
            *slot = Some(TouchStart {
                turn: node.start.turn,
                ..node.start
            });
        }
    }
    chosen
}

/// The step of least quadratic model inside the square, the reach and the tip's tangent.
fn step_in_polygon(here: &GapSample, h: [f64; 3], reach: f64) -> [f64; 2] {
    let low = |place: f64| if -1.0 - place > -reach { -1.0 - place } else { -reach };
    let high = |place: f64| if 1.0 - place < reach { 1.0 - place } else { reach };
    let (x0, x1, y0, y1) = (low(here.x), high(here.x), low(here.y), high(here.y));
    let square = [[x0, y0], [x1, y0], [x1, y1], [x0, y1]];
    // Clip by tip + tip_grad · δ ≥ 0.
    let inside = |p: &[f64; 2]| here.tip + here.tip_grad[0] * p[0] + here.tip_grad[1] * p[1];
    let mut corners: [[f64; 2]; 8] = [[0.0; 2]; 8];
    let mut count = 0;
    let mut push = |p: [f64; 2]| {
        if let Some(slot) = corners.get_mut(count) {
            *slot = p;
            count += 1;
        }
    };
    for i in 0..4 {
        let (a, b) = (square[i], square[(i + 1) % 4]);
        let (va, vb) = (inside(&a), inside(&b));
        if va >= 0.0 {
            push(a);
        }
        if (va >= 0.0) != (vb >= 0.0) {
            let t = va / (va - vb);
            push([a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]);
        }
    }
    let corners = corners.get(..count).unwrap_or(&[]);
    let [g0, g1] = here.grad;
    let [hxx, hxy, hyy] = h;
    let model = |p: [f64; 2]| p[0] * (g0 + 0.5 * hxx * p[0] + hxy * p[1]) + p[1] * (g1 + 0.5 * hyy * p[1]);
    let mut best = ([0.0, 0.0], 0.0);
    let mut offer = |p: [f64; 2]| {
        let value = model(p);
        if value < best.1 {
            best = (p, value);
        }
    };
    let determinant = hxx * hyy - hxy * hxy;
    if determinant > 0.0 && hxx > 0.0 {
        let p = [(hxy * g1 - hyy * g0) / determinant, (hxy * g0 - hxx * g1) / determinant];
        if p[0] >= x0 && p[0] <= x1 && p[1] >= y0 && p[1] <= y1 && inside(&p) >= 0.0 {
            offer(p);
        }
    }
    for (i, &a) in corners.iter().enumerate() {
        offer(a);
        let Some(&b) = corners.get((i + 1) % corners.len()) else {
            continue;
        };
        let e = [b[0] - a[0], b[1] - a[1]];
        let slope = e[0] * (g0 + hxx * a[0] + hxy * a[1]) + e[1] * (g1 + hxy * a[0] + hyy * a[1]);
        let bend = e[0] * (hxx * e[0] + 2.0 * hxy * e[1]) + hyy * e[1] * e[1];
        if bend > 0.0 {
            let t = -slope / bend;
            if t > 0.0 && t < 1.0 {
                offer([a[0] + t * e[0], a[1] + t * e[1]]);
            }
        }
    }
    best.0
}
