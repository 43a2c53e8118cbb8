//! ISO 23509 method 1 for a shaft angle of 90°, as an iteration: the steps in the
//! standard's order, numbered from 1 to 28. From memory, and confirmed by the plain vector model of `pitch_vectors`.

use super::vector::halve;

/// What the iteration starts from. Lengths in mm, angles in degrees.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Start {
    pub(crate) z1: f64,
    pub(crate) z2: f64,
    pub(crate) a: f64,
    pub(crate) d_e2: f64,
    pub(crate) b2: f64,
    pub(crate) beta_1_deg: f64,
    pub(crate) r_c0: f64,
}

/// What it ends with. Lengths in mm, angles in degrees.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Converged {
    pub(crate) start_delta2: f64,
    pub(crate) start_k1: f64,
    pub(crate) start_r_mn1: f64,
    pub(crate) start_eta: f64,
    pub(crate) r_mpt2: f64,
    pub(crate) eta: f64,
    pub(crate) delta1: f64,
    pub(crate) delta2: f64,
    pub(crate) zeta_m: f64,
    pub(crate) zeta_mp: f64,
    pub(crate) beta_m1: f64,
    pub(crate) beta_m2: f64,
    pub(crate) cone_distance1: f64,
    pub(crate) cone_distance2: f64,
    pub(crate) d_m1: f64,
    pub(crate) d_m2: f64,
    pub(crate) m_mn: f64,
    pub(crate) alpha_lim: f64,
    pub(crate) rho_lim: f64,
    pub(crate) t_zm1: f64,
    pub(crate) t_zm2: f64,
    pub(crate) t_z1: f64,
    pub(crate) t_z2: f64,
    pub(crate) r_e2: f64,
    pub(crate) c_be2: f64,
}

/// Steps 7 to 28 for one value of η, in radians.
fn from_eta(s: Start, start_delta2: f64, r_mpt2: f64, k1: f64, r_mn1: f64, start_eta: f64, eta: f64) -> Converged {
    let u = s.z2 / s.z1;
    let beta_wanted = s.beta_1_deg.to_radians();
    let eps2 = ((s.a - r_mn1 * eta.sin()) / r_mpt2).asin();
    let delta_int1 = (eta.sin() / eps2.tan()).atan();
    let eps2p = (eps2.sin() / delta_int1.cos()).asin();
    let tan_beta_int = (k1 - eps2p.cos()) / eps2p.sin();
    let dk = eps2p.sin() * (beta_wanted.tan() - tan_beta_int);
    let dr = r_mpt2 * dk / u;
    let eps1 = (eps2.sin() - dr / r_mpt2 * eta.sin()).asin();
    let delta1 = (eta.sin() / eps1.tan()).atan();
    let eps1p = (eps1.sin() / delta1.cos()).asin();
    let beta1 = ((k1 + dk - eps1p.cos()) / eps1p.sin()).atan();
    let beta2 = beta1 - eps1p;
    let delta2 = (eps1.sin() / eta.tan()).atan();
    let r_mpt1 = r_mn1 + dr;
    let (rm1, rm2) = (r_mpt1 / delta1.sin(), r_mpt2 / delta2.sin());
    let tan_lim = -(delta1.tan() * delta2.tan() / eps1p.cos()) * (rm1 * beta1.sin() - rm2 * beta2.sin())
        / (rm1 * delta1.tan() + rm2 * delta2.tan());
    let alpha_lim = tan_lim.atan();
    let rho_lim = (beta1.tan() - beta2.tan())
        / alpha_lim.cos()
        / (-tan_lim * (beta1.tan() / (rm1 * delta1.tan()) + beta2.tan() / (rm2 * delta2.tan()))
            + 1.0 / (rm1 * beta1.cos())
            - 1.0 / (rm2 * beta2.cos()));
    let t_zm2 = r_mpt1 * delta2.sin() / delta1.cos();
    let t_zm1 = r_mpt2 * eps1.cos();
    let r_e2 = s.d_e2 / (2.0 * delta2.sin());
    Converged {
        start_delta2: start_delta2.to_degrees(),
        start_k1: k1,
        start_r_mn1: r_mn1,
        start_eta: start_eta.to_degrees(),
        r_mpt2,
        eta: eta.to_degrees(),
        delta1: delta1.to_degrees(),
        delta2: delta2.to_degrees(),
        zeta_m: eps1.to_degrees(),
        zeta_mp: eps1p.to_degrees(),
        beta_m1: beta1.to_degrees(),
        beta_m2: beta2.to_degrees(),
        cone_distance1: rm1,
        cone_distance2: rm2,
        d_m1: 2.0 * r_mpt1,
        d_m2: 2.0 * r_mpt2,
        m_mn: 2.0 * r_mpt2 * beta2.cos() / s.z2,
        alpha_lim: alpha_lim.to_degrees(),
        rho_lim,
        t_zm1,
        t_zm2,
        t_z1: rm1 * delta1.cos() - t_zm1,
        t_z2: rm2 * delta2.cos() - t_zm2,
        r_e2,
        c_be2: (r_e2 - rm2) / s.b2,
    }
}

/// The iteration with η driven until the limit radius equals the cutter radius to machine precision (the standard
/// stops at 1 %).
pub(crate) fn converge(s: Start) -> Converged {
    let u = s.z2 / s.z1;
    let delta_int2 = (u / 1.2).atan();
    let r_mpt2 = (s.d_e2 - s.b2 * delta_int2.sin()) / 2.0;
    let eps_i = (s.a * delta_int2.sin() / r_mpt2).asin();
    let k1 = s.beta_1_deg.to_radians().tan() * eps_i.sin() + eps_i.cos();
    let r_mn1 = r_mpt2 * k1 / u;
    let start_eta = (s.a / (r_mpt2 * delta_int2.tan() + r_mn1)).atan();
    let miss = |eta: f64| s.r_c0 / from_eta(s, delta_int2, r_mpt2, k1, r_mn1, start_eta, eta).rho_lim - 1.0;
    // The first change of sign outward from the start value.
    let mut width = 0.01;
    let (low, high) = loop {
        let (below, above) = (start_eta * (1.0 - width), start_eta * (1.0 + width));
        if miss(below) * miss(start_eta) <= 0.0 {
            break (below, start_eta);
        }
        if miss(start_eta) * miss(above) <= 0.0 {
            break (start_eta, above);
        }
        width += 0.01;
        assert!(width < 0.6, "the iteration of ISO 23509 method 1 found no bracket");
    };
    let eta = halve(miss, low, high);
    from_eta(s, delta_int2, r_mpt2, k1, r_mn1, start_eta, eta)
}
