//! ISO 23509, method 1: the pitch cones of hypoid gears (`checks/gears.md` 1.1 to 1.3).
//!
//! The formulas are from memory there and confirmed by a plain vector model; the table is computed, not the standard's
//! annex (which could not be read). Three routes meet here: the iteration, the vectors, and the core.

use super::oracle::pitch_iteration::{Converged, Start, converge};
use super::oracle::pitch_vectors::{self, Pitch};

/// Cases A to D of table 1.3.
pub(crate) const CASES: [(&str, Start); 4] = [
    (
        "A",
        Start {
            z1: 13.0,
            z2: 42.0,
            a: 15.0,
            d_e2: 170.0,
            b2: 30.0,
            beta_1_deg: 50.0,
            r_c0: 63.5,
        },
    ),
    (
        "B",
        Start {
            z1: 11.0,
            z2: 41.0,
            a: 38.1,
            d_e2: 223.5,
            b2: 33.0,
            beta_1_deg: 50.0,
            r_c0: 95.25,
        },
    ),
    (
        "C",
        Start {
            z1: 9.0,
            z2: 37.0,
            a: 25.4,
            d_e2: 177.8,
            b2: 25.4,
            beta_1_deg: 48.0,
            r_c0: 76.2,
        },
    ),
    (
        "D",
        Start {
            z1: 10.0,
            z2: 41.0,
            a: 38.1,
            d_e2: 209.55,
            b2: 31.75,
            beta_1_deg: 50.0,
            r_c0: 114.3,
        },
    ),
];

/// The vector model at the angles where the iteration ended.
pub(crate) fn by_vectors(start: &Start, end: &Converged) -> Pitch {
    let (delta2, zeta) = (end.delta2.to_radians(), end.zeta_m.to_radians());
    pitch_vectors::at(start.z1, start.z2, start.a, end.r_mpt2, f64::NAN, delta2, zeta)
}

/// Table 1.3, row by row; degrees and mm, tolerance 1e-5 (v_s/v_t2 and module: as printed, half a last digit).
#[test]
fn table_of_reference_results() {
    type Row = (&'static str, fn(&Converged) -> f64, [f64; 4]);
    #[rustfmt::skip]
    let rows: [Row; 25] = [
        ("start delta_int2", |c| c.start_delta2, [69.623565, 72.153974, 73.727903, 73.686148]),
        ("start K1", |c| c.start_k1, [1.21638591, 1.37597968, 1.30115578, 1.39950026]),
        ("start r_mn1", |c| c.start_r_mn1, [26.708419, 35.456081, 24.278113, 30.563437]),
        ("start eta", |c| c.start_eta, [3.941627, 6.512069, 5.056257, 6.459979]),
        ("eta", |c| c.eta, [4.182909, 7.313173, 5.408626, 6.036594]),
        ("delta1", |c| c.delta1, [21.287747, 18.817967, 16.606914, 13.954642]),
        ("delta2", |c| c.delta2, [68.323930, 69.859014, 72.558139, 74.819468]),
        ("zeta_m", |c| c.zeta_m, [10.603132, 20.482455, 17.538803, 22.938824]),
        ("zeta_mp", |c| c.zeta_mp, [11.389595, 21.695924, 18.328744, 23.678273]),
        ("beta_m1", |c| c.beta_m1, [49.998143, 49.989626, 47.996289, 49.994345]),
        ("beta_m2", |c| c.beta_m2, [38.608548, 28.293702, 29.667545, 26.316072]),
        ("R_m1", |c| c.cone_distance1, [73.521162, 109.407598, 84.771719, 126.270010]),
        ("R_m2", |c| c.cone_distance2, [76.336618, 102.299737, 80.405663, 92.776558]),
        ("d_m1", |c| c.d_m1, [53.384005, 70.581585, 48.456193, 60.900956]),
        ("d_m2", |c| c.d_m2, [141.877242, 192.087844, 153.417477, 179.078337]),
        ("m_mn", |c| c.m_mn, [2.63968482, 4.12534161, 3.60287273, 3.91509844]),
        ("alpha_lim", |c| c.alpha_lim, [-2.253537, -6.371411, -4.715554, -8.469809]),
        ("rho_lim", |c| c.rho_lim, [63.5, 95.25, 76.2, 114.3]),
        ("t_zm1", |c| c.t_zm1, [69.727365, 89.971966, 73.142785, 82.458547]),
        ("t_zm2", |c| c.t_zm2, [26.620903, 35.003709, 24.120228, 30.281628]),
        ("t_z1", |c| c.t_z1, [-1.222633, 13.587594, 8.092943, 40.084848]),
        ("t_z2", |c| c.t_z2, [1.574689, 0.221301, -0.019604, -5.987040]),
        ("R_e2", |c| c.r_e2, [91.467983, 119.028830, 93.184474, 108.563258]),
        ("c_be2", |c| c.c_be2, [0.504379, 0.506942, 0.503103, 0.497219]),
        ("r_mpt2", |c| c.r_mpt2, [141.877242 / 2.0, 192.087844 / 2.0, 153.417477 / 2.0, 179.078337 / 2.0]),
    ];
    for (k, (case, start)) in CASES.iter().enumerate() {
        let got = converge(*start);
        for (name, value, printed) in &rows {
            let (value, printed) = (value(&got), printed[k]);
            println!(
                "case {case} {name}: {value:.8}, printed {printed}, deviation {:+.1e}",
                value - printed
            );
            assert!(
                (value - printed).abs() < 1e-5,
                "case {case} {name}: {value}, printed {printed}"
            );
        }
    }
}

/// Where the iteration ends, the vector model finds the same cones, spiral angles, limit angle and limit radius.
#[test]
fn iteration_and_vectors_agree() {
    let sliding = [0.3072114, 0.5749969, 0.4699323, 0.6247060];
    for ((case, start), printed) in CASES.iter().zip(sliding) {
        let end = converge(*start);
        let v = by_vectors(start, &end);
        let rho = v.rho_lim.unwrap_or(f64::NAN);
        for (name, a, b) in [
            ("delta1", v.delta1.to_degrees(), end.delta1),
            ("beta_m1", v.beta1.to_degrees(), end.beta_m1),
            ("beta_m2", v.beta2.to_degrees(), end.beta_m2),
            ("zeta_mp", v.zeta_mp.to_degrees(), end.zeta_mp),
            ("alpha_lim", v.alpha_lim.to_degrees(), end.alpha_lim),
            ("rho_lim", rho, end.rho_lim),
            ("d_m1", 2.0 * v.r_m1, end.d_m1),
            ("m_mn of the wheel", v.m_mn[0], end.m_mn),
            ("m_mn of the pinion", v.m_mn[1], end.m_mn),
            ("t_zm1", v.p.0, end.t_zm1),
            ("t_zm2", v.p.2, end.t_zm2),
        ] {
            println!("case {case} {name}: vectors − iteration {:+.1e}", a - b);
            assert!((a - b).abs() <= 1e-10 * b.abs().max(1.0), "case {case} {name}: {a} {b}");
        }
        println!("case {case} v_s/v_t2: {:.7}, printed {printed}", v.sliding);
        assert!((v.sliding - printed).abs() < 1e-7, "case {case}: {}", v.sliding);
    }
}

/// The identities of 1.2 on the vector model, 1e-10.
#[test]
fn identities_of_the_vector_model() {
    for (case, start) in &CASES {
        let v = by_vectors(start, &converge(*start));
        let (b1, b2) = (v.beta1, v.beta2);
        for (name, miss) in [
            (
                "cos zeta_mp = tan delta1 tan delta2",
                v.zeta_mp.cos() - v.delta1.tan() * v.delta2.tan(),
            ),
            ("beta_m1 − beta_m2 = zeta_mp", b1 - b2 - v.zeta_mp),
            ("m_mn of both members", v.m_mn[0] / v.m_mn[1] - 1.0),
            // Tangential forces of 6.1: F_t1 cos β2 = F_t2 cos β1 gives exactly the torque ratio.
            (
                "torque ratio",
                (v.r_m2 / v.r_m1) * (b2.cos() / b1.cos()) / (start.z2 / start.z1) - 1.0,
            ),
            (
                "v_s/v_t2 = sin zeta_mp / cos beta_m1",
                v.sliding - v.zeta_mp.sin() / b1.cos(),
            ),
        ] {
            println!("case {case} {name}: {miss:+.1e}");
            assert!(miss.abs() < 1e-10, "case {case} {name}: {miss}");
        }
    }
}
