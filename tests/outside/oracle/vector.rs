//! Plain vectors of three, and the two small solvers the oracles need.

use std::ops::{Add, Mul, Neg, Sub};

/// A vector in one of the frames of the page that uses it, mm or without unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct V(pub(crate) f64, pub(crate) f64, pub(crate) f64);

pub(crate) const X: V = V(1.0, 0.0, 0.0);
pub(crate) const Y: V = V(0.0, 1.0, 0.0);
pub(crate) const Z: V = V(0.0, 0.0, 1.0);

impl Add for V {
    type Output = Self;
    fn add(self, o: Self) -> Self {
        Self(self.0 + o.0, self.1 + o.1, self.2 + o.2)
    }
}

impl Sub for V {
    type Output = Self;
    fn sub(self, o: Self) -> Self {
        Self(self.0 - o.0, self.1 - o.1, self.2 - o.2)
    }
}

impl Neg for V {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0, -self.1, -self.2)
    }
}

impl Mul<f64> for V {
    type Output = Self;
    fn mul(self, k: f64) -> Self {
        Self(self.0 * k, self.1 * k, self.2 * k)
    }
}

impl V {
    pub(crate) fn dot(self, o: Self) -> f64 {
        self.0 * o.0 + self.1 * o.1 + self.2 * o.2
    }

    pub(crate) fn cross(self, o: Self) -> Self {
        Self(
            self.1 * o.2 - self.2 * o.1,
            self.2 * o.0 - self.0 * o.2,
            self.0 * o.1 - self.1 * o.0,
        )
    }

    pub(crate) fn norm(self) -> f64 {
        self.dot(self).sqrt()
    }

    pub(crate) fn unit(self) -> Self {
        self * (1.0 / self.norm())
    }

    pub(crate) fn turned_x(self, angle: f64) -> Self {
        let (s, c) = angle.sin_cos();
        Self(self.0, c * self.1 - s * self.2, s * self.1 + c * self.2)
    }

    pub(crate) fn turned_y(self, angle: f64) -> Self {
        let (s, c) = angle.sin_cos();
        Self(c * self.0 + s * self.2, self.1, c * self.2 - s * self.0)
    }

    pub(crate) fn turned_z(self, angle: f64) -> Self {
        let (s, c) = angle.sin_cos();
        Self(c * self.0 - s * self.1, s * self.0 + c * self.1, self.2)
    }
}

/// Solves a small dense system by elimination with row exchange; `None` where it is singular.
pub(crate) fn solve_linear<const N: usize>(mut a: [[f64; N]; N], mut b: [f64; N]) -> Option<[f64; N]> {
    for k in 0..N {
        let pivot = (k..N).max_by(|&i, &j| a[i][k].abs().total_cmp(&a[j][k].abs()))?;
        if a[pivot][k].abs() < 1e-300 {
            return None;
        }
        a.swap(k, pivot);
        b.swap(k, pivot);
        for i in k + 1..N {
            let f = a[i][k] / a[k][k];
            let row = a[k];
            for (x, y) in a[i].iter_mut().zip(row).skip(k) {
                *x -= f * y;
            }
            b[i] -= f * b[k];
        }
    }
    let mut x = [0.0; N];
    for k in (0..N).rev() {
        let mut r = b[k];
        for j in k + 1..N {
            r -= a[k][j] * x[j];
        }
        x[k] = r / a[k][k];
    }
    Some(x)
}

/// Newton's method with central differences, halving a step that makes the residual worse. Returns the unknowns and
/// the largest residual left.
pub(crate) fn solve<const N: usize>(
    mut f: impl FnMut([f64; N]) -> [f64; N],
    start: [f64; N],
    step: [f64; N],
    rounds: usize,
) -> ([f64; N], f64) {
    let size = |r: &[f64; N]| r.iter().fold(0.0_f64, |m, v| m.max(v.abs()));
    let mut x = start;
    let mut r = f(x);
    for _ in 0..rounds {
        let mut jacobian = [[0.0; N]; N];
        for k in 0..N {
            let (mut above, mut below) = (x, x);
            above[k] += step[k];
            below[k] -= step[k];
            let (fa, fb) = (f(above), f(below));
            for i in 0..N {
                jacobian[i][k] = (fa[i] - fb[i]) / (2.0 * step[k]);
            }
        }
        let Some(dx) = solve_linear(jacobian, r) else { break };
        let mut fraction = 1.0;
        let mut better = false;
        for _ in 0..8 {
            let mut trial = x;
            for k in 0..N {
                trial[k] -= fraction * dx[k];
            }
            let rt = f(trial);
            if size(&rt) < size(&r) {
                (x, r, better) = (trial, rt, true);
                break;
            }
            fraction *= 0.5;
        }
        if !better {
            break;
        }
    }
    (x, size(&r))
}

/// Root of `f` between `low` and `high`, where it has different signs, by halving.
pub(crate) fn halve(mut f: impl FnMut(f64) -> f64, mut low: f64, mut high: f64) -> f64 {
    let f_low = f(low);
    assert!(f_low * f(high) <= 0.0, "no change of sign between {low} and {high}");
    for _ in 0..200 {
        let mid = 0.5 * (low + high);
        if f(mid) * f_low > 0.0 { low = mid } else { high = mid }
    }
    0.5 * (low + high)
}
