//! Pitch cones from plain vectors: two skew axes, one plane through P whose normal meets both axes, and the sliding
//! velocity. No formula of the iteration is used.
//!
//! The geometric meaning of the quantities of ISO 23509:2006, method 1, in place of its iteration: the limit normal n
//! is square to the tooth trace t and n·(ω1 × v2 − ω2 × v1) = 0; the limit curvature is n·(ω12 × t)/|v12|; t is
//! parallel to v12.

use super::numbers::Numbers;
use super::vector::{V, X, Y, Z, solve};

/// The pitch point and what follows from it. Lengths in mm, angles in radians.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Pitch {
    pub(crate) p: V,
    /// Unit tooth trace, heelward.
    pub(crate) trace: V,
    /// Radial direction of the wheel at P.
    pub(crate) e_r: V,
    /// Heelward generator of the wheel's pitch cone.
    pub(crate) g2: V,
    /// Outward normal of the wheel's pitch cone at P.
    pub(crate) n2: V,
    pub(crate) zeta_m: f64,
    pub(crate) delta1: f64,
    pub(crate) delta2: f64,
    pub(crate) beta1: f64,
    pub(crate) beta2: f64,
    pub(crate) zeta_mp: f64,
    pub(crate) alpha_lim: f64,
    /// `None` for offset 0.
    pub(crate) rho_lim: Option<f64>,
    pub(crate) r_m1: f64,
    pub(crate) r_m2: f64,
    /// From the wheel and from the pinion: equal where all is well.
    pub(crate) m_mn: [f64; 2],
    /// Sliding speed over the wheel's speed at P.
    pub(crate) sliding: f64,
}

fn angle(a: V, b: V) -> f64 {
    a.cross(b).norm().atan2(a.dot(b))
}

/// Everything at the pitch point, for a wheel pitch angle and the angle ζ_m of P round the wheel's axis.
pub(crate) fn at(z1: f64, z2: f64, a: f64, r_m2: f64, beta_m1_if_bevel: f64, delta2: f64, zeta: f64) -> Pitch {
    let e_r = V(zeta.cos(), zeta.sin(), 0.0);
    let n2 = e_r * delta2.cos() - Z * delta2.sin();
    let g2 = e_r * delta2.sin() + Z * delta2.cos();
    // The normal through P meets the wheel's axis anyway; where it crosses z = 0 it must have y = a.
    let z_p = if a == 0.0 {
        r_m2 / delta2.tan()
    } else {
        (a / zeta.sin() - r_m2) * delta2.tan()
    };
    let p = e_r * r_m2 + Z * z_p;
    let arm1 = p - Y * a;
    let radial1 = arm1 - X * arm1.dot(X);
    let r_m1 = radial1.norm();
    let e_r1 = radial1.unit();
    // The pinion's generator lies in the pitch plane and in its own axial plane.
    let g1 = n2.cross(e_r1.cross(X)).unit();
    let g1 = if g1.dot(X) < 0.0 { -g1 } else { g1 };
    let delta1 = angle(g1, X);
    let m = -z1 / z2;
    let (w1, w2) = (X, Z * m);
    let (v1, v2) = (w1.cross(arm1), w2.cross(p));
    let v12 = v1 - v2;
    let trace = if a == 0.0 {
        g2 * beta_m1_if_bevel.cos() + Z.cross(e_r) * beta_m1_if_bevel.sin()
    } else if v12.dot(g2) > 0.0 {
        v12.unit()
    } else {
        -v12.unit()
    };
    let beta2 = trace.dot(Z.cross(e_r)).atan2(trace.dot(g2));
    let side1 = n2.cross(g1);
    let side1 = if side1.dot(Z.cross(e_r)) < 0.0 { -side1 } else { side1 };
    let beta1 = trace.dot(side1).atan2(trace.dot(g1));
    let (alpha_lim, rho_lim) = if a == 0.0 {
        (0.0, None)
    } else {
        let n = trace.cross(w1.cross(v2) - w2.cross(v1)).unit();
        // The limit normal near the direction of the wheel's convex flank: square to the trace, along n2 × trace.
        let along = n2.cross(trace);
        let n = if n.dot(along) < 0.0 { -n } else { n };
        let alpha = n.dot(n2).atan2(n.dot(along));
        // The same normal seen from the concave side, so that a limit radius is positive.
        let curvature = (-n).dot((w1 - w2).cross(v12.unit())) / v12.norm();
        (alpha, Some(1.0 / curvature))
    };
    Pitch {
        p,
        trace,
        e_r,
        g2,
        n2,
        zeta_m: zeta,
        delta1,
        delta2,
        beta1,
        beta2,
        zeta_mp: angle(g1, g2),
        alpha_lim,
        rho_lim,
        r_m1,
        r_m2,
        m_mn: [2.0 * r_m2 * beta2.cos() / z2, 2.0 * r_m1 * beta1.cos() / z1],
        sliding: v12.norm() / v2.norm(),
    }
}

/// The pitch cones of a design as `lashwright::gear::PitchCones` defines them: mean radius of the final pitch angle,
/// spiral angle and limit radius as given. Newton's method from the iteration's start values; `None` where it does
/// not arrive.
pub(crate) fn try_pitch(n: &Numbers) -> Option<Pitch> {
    let beta = n.beta_m1_deg.to_radians();
    if n.offset == 0.0 {
        let delta2 = (n.z2 / n.z1).atan();
        return Some(at(
            n.z1,
            n.z2,
            0.0,
            (n.d_e2 - n.b2 * delta2.sin()) / 2.0,
            beta,
            delta2,
            0.0,
        ));
    }
    let found = |x: [f64; 2]| {
        at(
            n.z1,
            n.z2,
            n.offset,
            (n.d_e2 - n.b2 * x[0].sin()) / 2.0,
            beta,
            x[0],
            x[1],
        )
    };
    let (delta2, r_m2, r_m1) = first_guess(n);
    let zeta = 2.0 * n.offset / (2.0 * r_m2 + 2.0 * r_m1 * delta2.cos());
    // The spiral angle alone first: at this pitch angle, which ζ_m gives it.
    let ([zeta], _) = solve(
        |x: [f64; 1]| [found([delta2, x[0]]).beta1 - beta],
        [zeta.asin()],
        [1e-6],
        40,
    );
    let (x, residual) = solve(
        |x| {
            let p = found(x);
            [p.beta1 - beta, n.limit_radius / p.rho_lim.unwrap_or(f64::NAN) - 1.0]
        },
        [delta2, zeta],
        [1e-6, 1e-6],
        60,
    );
    (residual < 1e-11).then(|| found(x))
}

/// Steps 1 to 5 of the iteration.
fn first_guess(n: &Numbers) -> (f64, f64, f64) {
    let u = n.z2 / n.z1;
    let delta2 = (u / 1.2).atan();
    let r_m2 = (n.d_e2 - n.b2 * delta2.sin()) / 2.0;
    let eps = (n.offset * delta2.sin() / r_m2).asin();
    let k1 = n.beta_m1_deg.to_radians().tan() * eps.sin() + eps.cos();
    (delta2, r_m2, r_m2 * k1 / u)
}

/// As [`try_pitch`], for sets that are known to have cones.
pub(crate) fn pitch(n: &Numbers) -> Pitch {
    try_pitch(n).expect("the oracle finds the pitch cones")
}
