//! SKF General Catalogue (2005/2008 text), friction chapter.
#![expect(
    clippy::disallowed_methods,
    reason = "published formulas are computed a second time without the core's door"
)]

use lashwright::bearing::friction::{self, Running};

use super::super::guide::{Row, Source, checks};
use super::parts::{HM89449, HM803146, LM501349, LM603049, M88048, M802048};

const CATALOGUE: Source =
    Source::Published("SKF General Catalogue (2005/2008), friction chapter, worked example 22208 E");
const AGAIN: Source = Source::Second("formulas of the SKF General Catalogue, in Python");

/// The catalogue's worked example, a spherical roller bearing 22208 E. Its geometry functions are those of
/// spherical bearings and stand here; everything around them is the core's.
fn t1_worked_example_22208() -> Vec<Row> {
    let (d, outside, width, mean, n, radial, axial, nu): (f64, f64, f64, f64, f64, f64, f64, f64) =
        (40.0, 80.0, 23.0, 60.0, 3500.0, 2990.0, 100.0, 68.0);
    let running = Running {
        speed_rpm: n,
        viscosity_mm2_s: nu,
    };
    let g_rr_e = 1.6e-6 * mean.powf(1.85) * (radial + 5.84 * axial).powf(0.54);
    let g_rr_l = 2.81e-6 * mean.powf(2.3) * (radial + 5.8 * axial).powf(0.31);
    let g_sl_e = 3.62e-3 * mean.powf(0.25) * (radial.powi(4) + 508.0 * axial.powi(4)).cbrt();
    let g_sl_l = 8.8e-3 * mean.powf(0.94) * (radial.powi(3) + 117.0 * axial.powi(3)).cbrt();
    let g_rr = g_rr_e.min(g_rr_l);
    let g_sl = g_sl_e.min(g_sl_l);
    let rolling = g_rr * (nu * n).powf(0.6);
    let mu = friction::sliding_coefficient(friction::boundary_share(mean, running), 0.15, 0.05);
    let sliding = g_sl * mu;
    let shear = friction::inlet_shear_factor(mean, running);
    let starvation = friction::starvation_factor(d, outside, running, 3.0e-8, 5.5);
    // V_M = 0.00003 is what the example reads from its diagram for an oil level H of 2.5 mm; K_L of 22208 from memory.
    let drag = friction::oil_bath_drag_nmm(d, outside, width, n, 3.0e-5, 0.8, 5.5);
    let total = shear * starvation * rolling + sliding + drag;
    let mut coarse = Row::printed(
        "Worked example: G_rr.e, printed with two digits",
        CATALOGUE,
        0.01,
        0.0,
        "",
    );
    coarse.near("G_rr.e", g_rr_e, 0.26);
    let mut parts = Row::relative("Worked example: geometry, moments, factors, drag", CATALOGUE, 0.005);
    parts.near("G_rr.l", g_rr_l, 0.436);
    parts.near("G_sl.e", g_sl_e, 434.0);
    parts.near("G_sl.l", g_sl_l, 1236.6);
    parts.near("M_rr", rolling, 437.0);
    parts.near("M_sl", sliding, 21.7);
    parts.near("φ_ish", shear, 0.85);
    parts.near("φ_rs", starvation, 0.8);
    parts.near("M_drag", drag, 14.5);
    let mut whole = Row::relative("Worked example: friction moment", CATALOGUE, 0.01);
    whole.near("M", total, 334.0);
    let mut again = Row::relative("G_rr.e and M without the example's rounding", AGAIN, 0.0005);
    again.near("G_rr.e", g_rr_e, 0.2585);
    again.near("M", total, 331.1);
    vec![coarse, parts, whole, again]
}

/// M88048, 5 kN, 400 mm²/s, boundary coefficient 0.15 (recomputed values of the same formula).
fn t2_small_pinion_bearing() -> Vec<Row> {
    let mut row = Row::relative(
        "M88048 under 5 kN: factors, parts and moments at 5 to 200 r/min",
        AGAIN,
        0.001,
    );
    let bearing = M88048.bearing();
    row.near("G_rr", friction::rolling_moment_factor(&bearing, 0.0, 5000.0), 0.86201);
    row.near(
        "G_sl",
        friction::sliding_moment_factor_nmm(&bearing, 0.0, 5000.0),
        4133.2,
    );
    row.near("breakaway", friction::breakaway_nmm(&bearing, 5000.0), 620.0);
    let at = |rpm: f64| {
        friction::turning_with(
            &bearing,
            5000.0,
            Running {
                speed_rpm: rpm,
                viscosity_mm2_s: 400.0,
            },
            0.15,
        )
    };
    let (slow, hand, brisk, fast) = (at(5.0), at(20.0), at(60.0), at(200.0));
    row.near("n=5 φ_bl", slow.boundary_share, 0.9463);
    row.near("n=5 M_rr", slow.rolling_nmm, 82.4);
    row.near("n=5 M_sl", slow.sliding_nmm, 587.1);
    row.near("n=20 φ_bl", hand.boundary_share, 0.6806);
    row.near("n=20 M_rr", hand.rolling_nmm, 189.3);
    row.near("n=20 M_sl", hand.sliding_nmm, 424.6);
    row.near("n=20 M", hand.total_nmm, 613.9);
    row.near("n=60 φ_bl", brisk.boundary_share, 0.1668);
    row.near("n=60 M", brisk.total_nmm, 475.5);
    row.near("n=200 M", fast.total_nmm, 753.8);
    vec![row]
}

/// M802048 at the same point.
fn t3_larger_pinion_bearing() -> Vec<Row> {
    let mut row = Row::relative(
        "M802048 under 5 kN: factors and moments at 20 and 60 r/min",
        AGAIN,
        0.001,
    );
    let bearing = M802048.bearing();
    let at = |rpm: f64| {
        friction::turning_with(
            &bearing,
            5000.0,
            Running {
                speed_rpm: rpm,
                viscosity_mm2_s: 400.0,
            },
            0.15,
        )
    };
    row.near("G_rr", friction::rolling_moment_factor(&bearing, 0.0, 5000.0), 1.38038);
    row.near(
        "G_sl",
        friction::sliding_moment_factor_nmm(&bearing, 0.0, 5000.0),
        4861.2,
    );
    row.near("n=20 φ_bl", at(20.0).boundary_share, 0.6257);
    row.near("n=20 M", at(20.0).total_nmm, 762.9);
    row.near("n=60 M", at(60.0).total_nmm, 675.3);
    row.near("breakaway", friction::breakaway_nmm(&bearing, 5000.0), 729.2);
    vec![row]
}

/// Both at 5 kN each: the torque hardly depends on how fast the hand turns, and starting takes 9 to 23 % more.
fn t4_pair_is_flat_over_hand_speed() -> Vec<Row> {
    let mut torques = Row::relative(
        "M88048 with M802048 under 5 kN: starting torque, and turning at 5 to 60 r/min in four oils",
        AGAIN,
        0.005,
    );
    let mut flat = Row::range(
        "Greatest rotating torque over the middle, less 1, over all speeds and oils",
        AGAIN,
        ..0.07,
        "",
    );
    let mut ratio = Row::printed("Starting over rotating torque, least and most", AGAIN, 0.01, 0.0, "");
    let pair = [M88048.bearing(), M802048.bearing()];
    let rows = [
        (50.0, [1.137, 1.196, 1.243]),
        (150.0, [1.182, 1.243, 1.186]),
        (350.0, [1.224, 1.216, 1.099]),
        (500.0, [1.239, 1.171, 1.174]),
    ];
    let start_nm: f64 = pair.iter().map(|b| 1.0e-3 * friction::breakaway_nmm(b, 5000.0)).sum();
    torques.near("start", start_nm, 1.349);
    let (mut least, mut most) = (f64::INFINITY, 0.0_f64);
    for (nu, want) in rows {
        for (rpm, want) in [5.0, 20.0, 60.0].into_iter().zip(want) {
            let running = Running {
                speed_rpm: rpm,
                viscosity_mm2_s: nu,
            };
            let turning_nm: f64 = pair
                .iter()
                .map(|b| 1.0e-3 * friction::turning(b, 5000.0, running).total_nmm)
                .sum();
            torques.near(format_args!("ν={nu} n={rpm}"), turning_nm, want);
            least = least.min(turning_nm);
            most = most.max(turning_nm);
        }
    }
    let middle = 0.5 * (least + most);
    flat.found(format_args!("{least} to {most} N·m"), most / middle - 1.0);
    ratio.near("least", start_nm / most, 1.09);
    ratio.near("most", start_nm / least, 1.23);
    vec![torques, flat, ratio]
}

/// The arm of rib friction that the constants imply, about a millimetre.
fn t10_effective_rib_arm() -> Vec<Row> {
    let mut row = Row::relative("Arm of rib friction that the constants imply, six parts", AGAIN, 0.005);
    let rows = [
        (M88048, 0.827),
        (M802048, 0.972),
        (HM89449, 1.200),
        (HM803146, 1.351),
        (LM501349, 0.913),
        (LM603049, 0.909),
    ];
    for (part, want) in rows {
        row.near(part.name, friction::effective_rib_arm_mm(&part.bearing()), want);
    }
    vec![row]
}

checks![
    t1_worked_example_22208,
    t2_small_pinion_bearing,
    t3_larger_pinion_bearing,
    t4_pair_is_flat_over_hand_speed,
    t10_effective_rib_arm,
];
