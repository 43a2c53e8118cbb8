//! SKF General Catalogue (2005/2008 text), friction chapter: rows T1 to T4 and T10.
#![expect(
    clippy::disallowed_methods,
    reason = "published formulas are computed a second time without the core's door"
)]

use lashwright::bearing::friction::{self, Running};

use super::parts::{HM89449, HM803146, LM501349, LM603049, M88048, M802048};
use super::{check, check_printed};

const SOURCE: &str = "SKF General Catalogue";

/// T1: the catalogue's worked example, a spherical roller bearing 22208 E. Its geometry functions are those of
/// spherical bearings and stand here; everything around them is the core's.
#[test]
fn t1_worked_example_22208() {
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
    let row = |part: &str| format!("T1 {SOURCE}: {part}");
    check_printed(&row("G_rr.e"), g_rr_e, 0.26, 0.01, 0.0);
    check(&row("G_rr.l"), g_rr_l, 0.436, 0.005);
    check(&row("G_sl.e"), g_sl_e, 434.0, 0.005);
    check(&row("G_sl.l"), g_sl_l, 1236.6, 0.005);
    check(&row("M_rr"), rolling, 437.0, 0.005);
    check(&row("M_sl"), sliding, 21.7, 0.005);
    check(&row("φ_ish"), shear, 0.85, 0.005);
    check(&row("φ_rs"), starvation, 0.8, 0.005);
    check("T1 recomputed G_rr.e", g_rr_e, 0.2585, 0.0005);
    check(&row("M_drag"), drag, 14.5, 0.005);
    check(&row("M"), total, 334.0, 0.01);
    check("T1 recomputed M", total, 331.1, 0.0005);
}

/// T2: M88048, 5 kN, 400 mm²/s, boundary coefficient 0.15 (recomputed values of the same formula).
#[test]
fn t2_small_pinion_bearing() {
    let bearing = M88048.bearing();
    check(
        "T2 G_rr",
        friction::rolling_moment_factor(&bearing, 0.0, 5000.0),
        0.86201,
        0.001,
    );
    check(
        "T2 G_sl",
        friction::sliding_moment_factor_nmm(&bearing, 0.0, 5000.0),
        4133.2,
        0.001,
    );
    check("T2 breakaway", friction::breakaway_nmm(&bearing, 5000.0), 620.0, 0.001);
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
    check("T2 n=5 φ_bl", slow.boundary_share, 0.9463, 0.001);
    check("T2 n=5 M_rr", slow.rolling_nmm, 82.4, 0.001);
    check("T2 n=5 M_sl", slow.sliding_nmm, 587.1, 0.001);
    check("T2 n=20 φ_bl", hand.boundary_share, 0.6806, 0.001);
    check("T2 n=20 M_rr", hand.rolling_nmm, 189.3, 0.001);
    check("T2 n=20 M_sl", hand.sliding_nmm, 424.6, 0.001);
    check("T2 n=20 M", hand.total_nmm, 613.9, 0.001);
    check("T2 n=60 φ_bl", brisk.boundary_share, 0.1668, 0.001);
    check("T2 n=60 M", brisk.total_nmm, 475.5, 0.001);
    check("T2 n=200 M", fast.total_nmm, 753.8, 0.001);
}

/// T3: M802048 at the same point.
#[test]
fn t3_larger_pinion_bearing() {
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
    check(
        "T3 G_rr",
        friction::rolling_moment_factor(&bearing, 0.0, 5000.0),
        1.38038,
        0.001,
    );
    check(
        "T3 G_sl",
        friction::sliding_moment_factor_nmm(&bearing, 0.0, 5000.0),
        4861.2,
        0.001,
    );
    check("T3 n=20 φ_bl", at(20.0).boundary_share, 0.6257, 0.001);
    check("T3 n=20 M", at(20.0).total_nmm, 762.9, 0.001);
    check("T3 n=60 M", at(60.0).total_nmm, 675.3, 0.001);
    check("T3 breakaway", friction::breakaway_nmm(&bearing, 5000.0), 729.2, 0.001);
}

/// T4: both at 5 kN each: the torque hardly depends on how fast the hand turns, and starting takes 9 to 23 % more.
#[test]
fn t4_pair_is_flat_over_hand_speed() {
    let pair = [M88048.bearing(), M802048.bearing()];
    let rows = [
        (50.0, [1.137, 1.196, 1.243]),
        (150.0, [1.182, 1.243, 1.186]),
        (350.0, [1.224, 1.216, 1.099]),
        (500.0, [1.239, 1.171, 1.174]),
    ];
    let start_nm: f64 = pair.iter().map(|b| 1.0e-3 * friction::breakaway_nmm(b, 5000.0)).sum();
    check("T4 start", start_nm, 1.349, 0.005);
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
            check(&format!("T4 ν={nu} n={rpm}"), turning_nm, want, 0.005);
            least = least.min(turning_nm);
            most = most.max(turning_nm);
        }
    }
    let middle = 0.5 * (least + most);
    println!(
        "T4 spread over all: ±{:.1} %; start/run {:.3} to {:.3}",
        100.0 * (most / middle - 1.0),
        start_nm / most,
        start_nm / least
    );
    assert!(most / middle - 1.0 < 0.07, "flat to ±7 %: {least} to {most} N·m");
    check_printed("T4 start/run, least", start_nm / most, 1.09, 0.01, 0.0);
    check_printed("T4 start/run, most", start_nm / least, 1.23, 0.01, 0.0);
}

/// T10: the arm of rib friction that the constants imply, about a millimetre.
#[test]
fn t10_effective_rib_arm() {
    let rows = [
        (M88048, 0.827),
        (M802048, 0.972),
        (HM89449, 1.200),
        (HM803146, 1.351),
        (LM501349, 0.913),
        (LM603049, 0.909),
    ];
    for (part, want) in rows {
        check(
            &format!("T10 {}", part.name),
            friction::effective_rib_arm_mm(&part.bearing()),
            want,
            0.005,
        );
    }
}
