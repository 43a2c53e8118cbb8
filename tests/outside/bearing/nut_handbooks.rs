//! Threads: VDI 2230 table (class 8.8, as printed in a distributor's catalogue), Machinery's Handbook 31 p. 1665,
//! Shigley example 8-3, and patent US 9,039,287 B2 on sleeves: rows N5 to N11.
#![expect(
    clippy::disallowed_methods,
    reason = "published formulas are computed a second time without the core's door"
)]

use lashwright::bearing::fastener::{MetricThread, ThreadJoint, rounded_arm_mm, screw_arm, short_form_arm};
use lashwright::bearing::{Spacer, SpacerKind, SpacerMemory};
use lashwright::quantity::radians;

use super::{check, check_printed};

fn joint(thread: MetricThread, face_mean_diameter_mm: f64, friction: f64) -> ThreadJoint {
    ThreadJoint {
        pitch_mm: thread.pitch_mm,
        pitch_diameter_mm: thread.pitch_diameter_mm(),
        face_mean_diameter_mm,
        friction_thread: friction,
        friction_face: friction,
    }
}

/// N5: four threads at three frictions. The face diameters are not in the table; they were fitted within the sizes of
/// normal hexagons.
#[test]
fn n5_vdi_table() {
    let rows = [
        (
            16.0,
            1.5,
            (22.5, 17.5),
            640.0,
            [89.6, 87.6, 85.5],
            [189.0, 218.0, 244.0],
        ),
        (
            20.0,
            1.5,
            (28.1, 22.0),
            660.0,
            [151.0, 148.0, 144.0],
            [392.0, 454.0, 511.0],
        ),
        (
            22.0,
            1.5,
            (31.35, 24.0),
            660.0,
            [186.0, 182.0, 178.0],
            [529.0, 613.0, 692.0],
        ),
        (
            24.0,
            2.0,
            (33.25, 26.0),
            660.0,
            [213.0, 209.0, 204.0],
            [666.0, 769.0, 865.0],
        ),
    ];
    for (nominal, pitch, (outer, inner), yield_strength, clamps, torques) in rows {
        let thread = MetricThread {
            nominal_diameter_mm: nominal,
            pitch_mm: pitch,
        };
        for ((mu, clamp_kn), torque_nm) in [0.10, 0.12, 0.14].into_iter().zip(clamps).zip(torques) {
            let joint = joint(thread, 0.5 * (outer + inner), mu);
            let row = |what: &str| format!("N5 VDI 2230 M{nominal}x{pitch} µ={mu} {what}");
            let wanted = torque_nm / clamp_kn;
            check(&row("M_A/F_M, rounded form"), rounded_arm_mm(&joint), wanted, 0.005);
            // The exact form differs from the rounded one by the rounding of its constants.
            check(&row("M_A/F_M, exact form"), joint.tightening_arm_mm(), wanted, 0.008);
            check(
                &row("F_M"),
                1e-3 * thread.assembly_clamp_n(yield_strength, mu),
                clamp_kn,
                0.005,
            );
        }
    }
}

/// N6: 1/2-13 grade 8 at 55 % of 150 000 psi, 0.1419 in², µ 0.15 everywhere; lbf and in.
#[test]
fn n6_machinerys_handbook() {
    let force_lbf = 0.55 * 150_000.0 * 0.1419;
    check("N6 force, lbf", force_lbf, 11_707.0, 0.001);
    check(
        "N6 torque, lb·in",
        force_lbf * short_form_arm(1.0 / 13.0, 0.15, 0.5),
        1158.0,
        0.001,
    );
    check(
        "N6 torque, lb·ft",
        force_lbf * short_form_arm(1.0 / 13.0, 0.15, 0.5) / 12.0,
        96.5,
        0.001,
    );
}

/// N7: Shigley example 8-3, 3/4-16 UNF, 25 000 lbf, f = 0.15 (numbers from memory, sure).
#[test]
fn n7_shigley_example() {
    let arm_in = screw_arm(0.7094, radians(1.6066), radians(30.0), 0.15, 0.15, 0.625 * 0.75);
    check("N7 torque, lbf·in", 25_000.0 * arm_in, 3551.0, 0.001);
    // The everyday form leaves out a product of small terms.
    let plain = ThreadJoint {
        pitch_mm: std::f64::consts::PI * 0.7094 * radians(1.6066).tan(),
        pitch_diameter_mm: 0.7094,
        face_mean_diameter_mm: 1.25 * 0.75,
        friction_thread: 0.15,
        friction_face: 0.15,
    };
    check("N7 everyday form", 25_000.0 * plain.tightening_arm_mm(), 3551.0, 0.005);
    check("N7 K = 0.2 for comparison", 0.2 * 25_000.0 * 0.75, 3750.0, 1e-12);
}

/// N8: torque per clamp of pinion nuts at four frictions (recomputed), and K.
#[test]
fn n8_pinion_nuts() {
    let rows = [
        ("3/4-20", 19.05, 1.27, 24.0, [2.454, 2.905, 3.580, 4.707]),
        ("M20x1.5", 20.0, 1.5, 25.0, [2.587, 3.057, 3.761, 4.936]),
        ("M22x1.5", 22.0, 1.5, 27.675, [2.836, 3.356, 4.135, 5.434]),
        ("M24x1.5", 24.0, 1.5, 29.5, [3.043, 3.604, 4.445, 5.848]),
    ];
    for (name, nominal, pitch, face, want) in rows {
        let thread = MetricThread {
            nominal_diameter_mm: nominal,
            pitch_mm: pitch,
        };
        for (mu, want) in [0.10, 0.12, 0.15, 0.20].into_iter().zip(want) {
            let joint = joint(thread, face, mu);
            check(
                &format!("N8 {name} µ={mu} T/F, mm"),
                joint.tightening_arm_mm(),
                want,
                0.001,
            );
            let pitch_share = pitch / std::f64::consts::TAU / joint.tightening_arm_mm();
            assert!(
                (0.04..0.105).contains(&pitch_share),
                "4 to 10 % of the torque is pitch: {pitch_share}"
            );
        }
    }
    let thread = MetricThread {
        nominal_diameter_mm: 19.05,
        pitch_mm: 1.27,
    };
    check_printed(
        "N8 3/4-20 K",
        joint(thread, 24.0, 0.12).nut_factor(19.05),
        0.152,
        0.001,
        0.001,
    );
}

/// Loosening takes less than tightening by twice the pitch term, T_on − T_off = F p/π (follows from N1; VDI 2230 gives
/// the same pitch term 0.16 P for both ways): a pinion nut at µ 0.12 starts back at about 85 % of its torque.
#[test]
fn loosening_takes_less_than_tightening() {
    let nut = joint(
        MetricThread {
            nominal_diameter_mm: 22.0,
            pitch_mm: 1.5,
        },
        27.675,
        0.12,
    );
    let (on, off) = (nut.tightening_torque_nm(64e3), nut.loosening_torque_nm(64e3));
    check("T_on − T_off", on - off, 64.0 * 1.5 / std::f64::consts::PI, 1e-12);
    check("clamp and back", nut.clamp_n(on), 64e3, 1e-12);
    println!("loosening at {:.0} % of tightening", 100.0 * off / on);
    assert!((0.8..0.9).contains(&(off / on)), "{off} of {on}");
    let slippery = nut.with_friction_times(0.05);
    assert!(
        slippery.loosening_arm_mm() < 0.0,
        "with µ 0.006 it would spin off by itself"
    );
}

/// N9: 100 kN, the most a sleeve of the patent's kind reaches, takes 290 to 340 N m: inside the range of service pages
/// (190 to 475 N m for a first pull, common practice).
#[test]
fn n9_torque_to_crush() {
    for (name, nominal, face) in [("3/4-20 like M20", 20.0, 24.0), ("M22x1.5", 22.0, 27.675)] {
        let thread = MetricThread {
            nominal_diameter_mm: nominal,
            pitch_mm: 1.5,
        };
        let torque = joint(thread, face, 0.12).tightening_torque_nm(100e3);
        println!("N9 {name}: {torque:.0} N·m for 100 kN (290 to 340 expected)");
        assert!((285.0..345.0).contains(&torque), "{name}: {torque}");
    }
}

/// N10, N11: a sleeve of 44 mm outside, wall 2.0, 45 mm long, 320 N/mm²; a factor 1.5 was allowed, it is exact.
/// Let go, it springs back by several times the travel of the bearings, so it cannot be set again by backing off.
#[test]
fn n10_n11_sleeve() {
    let area = std::f64::consts::PI / 4.0 * (44.0_f64 * 44.0 - 40.0 * 40.0);
    check("N10 area, mm²", area, 264.0, 0.005);
    let sleeve = Spacer {
        kind: SpacerKind::Collapsible {
            yield_force_n: 320.0 * area,
            hardening_n_per_mm: 20e3,
        },
        free_length_mm: 45.0,
        area_mm2: area,
    };
    check("N10 yield force, kN", 1e-3 * 320.0 * area, 84.0, 0.01);
    check("N10 stiffness, N/µm", 1e-3 / sleeve.compliance_mm_per_n(), 1200.0, 0.01);
    let at_yield = sleeve
        .shortening_mm(320.0 * area, SpacerMemory::default())
        .expect("carries it");
    check("N10 shortening at yield, µm", 1e3 * at_yield, 70.0, 0.01);
    // N11: crushed by 0.3 mm, then let go.
    let crushed = sleeve.remember(0.3, SpacerMemory::default());
    let force = sleeve.force_n(0.3, crushed);
    let spring_back = 0.3 - crushed.plastic_shortening_mm;
    println!(
        "N11 at {:.1} kN the sleeve springs back by {:.3} mm",
        1e-3 * force,
        spring_back
    );
    check(
        "N11 springback dF/k",
        spring_back,
        force * sleeve.compliance_mm_per_n(),
        1e-9,
    );
    assert!(spring_back > 0.05, "more than the preload travel of 0.02 to 0.05 mm");
}
