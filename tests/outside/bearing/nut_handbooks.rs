//! Threads: VDI 2230 table (class 8.8, as printed in a distributor's catalogue), Machinery's Handbook 31 p. 1665,
//! Shigley example 8-3, and patent US 9,039,287 B2 on sleeves.
#![expect(
    clippy::disallowed_methods,
    reason = "published formulas are computed a second time without the core's door"
)]

use std::ops::Bound;

use lashwright::bearing::fastener::{MetricThread, ThreadJoint, rounded_arm_mm, screw_arm, short_form_arm};
use lashwright::bearing::{Spacer, SpacerKind, SpacerMemory};
use lashwright::quantity::radians;

use super::super::guide::{Row, Source, checks};

fn joint(thread: MetricThread, face_mean_diameter_mm: f64, friction: f64) -> ThreadJoint {
    ThreadJoint {
        pitch_mm: thread.pitch_mm,
        pitch_diameter_mm: thread.pitch_diameter_mm(),
        face_mean_diameter_mm,
        friction_thread: friction,
        friction_face: friction,
    }
}

/// Four threads at three frictions. The face diameters are not in the table; they were fitted within the sizes of
/// normal hexagons.
fn n5_vdi_table() -> Vec<Row> {
    const VDI: Source =
        Source::Published("VDI 2230 table, class 8.8, in a distributor's catalogue; face diameters fitted");
    let mut rounded = Row::relative("Torque over clamp of four threads, rounded form", VDI, 0.005);
    // The exact form differs from the rounded one by the rounding of its constants.
    let mut exact = Row::relative("The same, exact form", VDI, 0.008);
    let mut clamp = Row::relative("Assembly clamp of four threads", VDI, 0.005);
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
            let place = format!("M{nominal}x{pitch} µ={mu}");
            let wanted = torque_nm / clamp_kn;
            rounded.near(&place, rounded_arm_mm(&joint), wanted);
            exact.near(&place, joint.tightening_arm_mm(), wanted);
            clamp.near(place, 1e-3 * thread.assembly_clamp_n(yield_strength, mu), clamp_kn);
        }
    }
    vec![rounded, exact, clamp]
}

/// 1/2-13 grade 8 at 55 % of 150 000 psi, 0.1419 in², µ 0.15 everywhere; lbf and in.
fn n6_machinerys_handbook() -> Vec<Row> {
    const HANDBOOK: Source = Source::Published("Machinery's Handbook, 31st ed., p. 1665");
    let mut force = Row::relative("Yardstick: force of 1/2-13 grade 8 at 55 %", HANDBOOK, 0.001);
    let mut torque = Row::relative("Its torque, short form", HANDBOOK, 0.001);
    let force_lbf = 0.55 * 150_000.0 * 0.1419;
    force.near("lbf", force_lbf, 11_707.0);
    torque.near("lb·in", force_lbf * short_form_arm(1.0 / 13.0, 0.15, 0.5), 1158.0);
    torque.near("ft·lb", force_lbf * short_form_arm(1.0 / 13.0, 0.15, 0.5) / 12.0, 96.5);
    vec![force, torque]
}

/// Shigley example 8-3, 3/4-16 UNF, 25 000 lbf, f = 0.15 (numbers from memory, sure).
fn n7_shigley_example() -> Vec<Row> {
    const SHIGLEY: Source = Source::Memory("Shigley, example 8-3");
    let mut screw = Row::relative("Torque of 3/4-16 UNF at 25 000 lbf, full screw form", SHIGLEY, 0.001);
    let mut everyday = Row::relative("The same, everyday form", SHIGLEY, 0.005);
    let mut coefficient = Row::relative("Yardstick: the same with K = 0.2", SHIGLEY, 1e-12);
    let arm_in = screw_arm(0.7094, radians(1.6066), radians(30.0), 0.15, 0.15, 0.625 * 0.75);
    screw.near("lbf·in", 25_000.0 * arm_in, 3551.0);
    // The everyday form leaves out a product of small terms.
    let plain = ThreadJoint {
        pitch_mm: std::f64::consts::PI * 0.7094 * radians(1.6066).tan(),
        pitch_diameter_mm: 0.7094,
        face_mean_diameter_mm: 1.25 * 0.75,
        friction_thread: 0.15,
        friction_face: 0.15,
    };
    everyday.near("lbf·in", 25_000.0 * plain.tightening_arm_mm(), 3551.0);
    coefficient.near("lbf·in", 0.2 * 25_000.0 * 0.75, 3750.0);
    vec![screw, everyday, coefficient]
}

/// Torque per clamp of pinion nuts at four frictions (recomputed), and K.
fn n8_pinion_nuts() -> Vec<Row> {
    let again = Source::Second("everyday torque formula, in Python");
    let mut arms = Row::relative("Torque over clamp of four pinion nuts, four frictions", again, 0.001);
    let mut shares = Row::range("Share of the pitch in that torque, 4 to 10 %", again, 0.04..0.105, "");
    let mut coefficient = Row::printed("K of 3/4-20 at µ 0.12", again, 0.001, 0.001, "");
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
            let place = format!("{name} µ={mu}");
            arms.near(&place, joint.tightening_arm_mm(), want);
            shares.found(place, pitch / std::f64::consts::TAU / joint.tightening_arm_mm());
        }
    }
    let thread = MetricThread {
        nominal_diameter_mm: 19.05,
        pitch_mm: 1.27,
    };
    coefficient.near("3/4-20", joint(thread, 24.0, 0.12).nut_factor(19.05), 0.152);
    vec![arms, shares, coefficient]
}

/// Loosening takes less than tightening by twice the pitch term, T_on − T_off = F p/π (follows from the torque formula; VDI 2230 gives
/// the same pitch term 0.16 P for both ways): a pinion nut at µ 0.12 starts back at about 85 % of its torque.
fn loosening_takes_less_than_tightening() -> Vec<Row> {
    let mut difference = Row::relative(
        "Loosening takes less by twice the pitch term, and the clamp comes back from the torque",
        Source::Law("T_on − T_off = F p/π"),
        1e-12,
    );
    let mut ratio = Row::range(
        "Loosening over tightening torque of a pinion nut at µ 0.12, about 85 %",
        Source::Second("everyday torque formula, by hand"),
        0.8..0.9,
        "",
    );
    let mut slips = Row::stated(
        "At µ 0.006 a nut spins off by itself",
        Source::Law("friction angle under lead angle"),
        "sign",
    );
    let nut = joint(
        MetricThread {
            nominal_diameter_mm: 22.0,
            pitch_mm: 1.5,
        },
        27.675,
        0.12,
    );
    let (on, off) = (nut.tightening_torque_nm(64e3), nut.loosening_torque_nm(64e3));
    difference.near("T_on − T_off", on - off, 64.0 * 1.5 / std::f64::consts::PI);
    difference.near("clamp and back", nut.clamp_n(on), 64e3);
    ratio.found("M22x1.5", off / on);
    let slippery = nut.with_friction_times(0.05);
    slips.is("M22x1.5", slippery.loosening_arm_mm() < 0.0);
    vec![difference, ratio, slips]
}

/// 100 kN, the most a sleeve of the patent's kind reaches, takes 290 to 340 N m: inside the range of service pages
/// (190 to 475 N m for a first pull, common practice).
fn n9_torque_to_crush() -> Vec<Row> {
    let mut row = Row::range(
        "Torque that crushes a sleeve of 100 kN, two threads",
        Source::Practice("100 kN from US patent 9,039,287 B2; service pages say 190 to 475 N·m"),
        285.0..345.0,
        "N·m",
    );
    for (name, nominal, face) in [("3/4-20 like M20", 20.0, 24.0), ("M22x1.5", 22.0, 27.675)] {
        let thread = MetricThread {
            nominal_diameter_mm: nominal,
            pitch_mm: 1.5,
        };
        let torque = joint(thread, face, 0.12).tightening_torque_nm(100e3);
        row.found(name, torque);
    }
    vec![row]
}

/// A sleeve of 44 mm outside, wall 2.0, 45 mm long, 320 N/mm²; a factor 1.5 was allowed, it is exact.
/// Let go, it springs back by several times the travel of the bearings, so it cannot be set again by backing off.
fn n10_n11_sleeve() -> Vec<Row> {
    let tube = Source::Second("straight tube, by hand");
    let mut area_row = Row::relative("Yardstick: area of a sleeve 44 × 2.0 mm", tube, 0.005);
    let mut force_row = Row::relative("Yardstick: force at its yield", tube, 0.01);
    let mut stiffness = Row::relative("Its stiffness, and its shortening at yield", tube, 0.01);
    let mut elastic = Row::relative(
        "Let go, it springs back by force times compliance",
        Source::Law("unloading is elastic"),
        1e-9,
    );
    let mut more = Row::range(
        "It springs back by more than the bearings' preload travel, 0.02 to 0.05 mm",
        tube,
        (Bound::Excluded(0.05), Bound::Unbounded),
        "mm",
    );
    let area = std::f64::consts::PI / 4.0 * (44.0_f64 * 44.0 - 40.0 * 40.0);
    area_row.near("mm²", area, 264.0);
    let sleeve = Spacer {
        kind: SpacerKind::Collapsible {
            yield_force_n: 320.0 * area,
            hardening_n_per_mm: 20e3,
        },
        free_length_mm: 45.0,
        area_mm2: area,
    };
    force_row.near("kN", 1e-3 * 320.0 * area, 84.0);
    stiffness.near("N/µm", 1e-3 / sleeve.compliance_mm_per_n(), 1200.0);
    let at_yield = sleeve
        .shortening_mm(320.0 * area, SpacerMemory::default())
        .expect("carries it");
    stiffness.near("shortening, µm", 1e3 * at_yield, 70.0);
    // Crushed by 0.3 mm, then let go.
    let crushed = sleeve.remember(0.3, SpacerMemory::default());
    let force = sleeve.force_n(0.3, crushed);
    let spring_back = 0.3 - crushed.plastic_shortening_mm;
    let place = format!("from {:.1} kN", 1e-3 * force);
    elastic.near(&place, spring_back, force * sleeve.compliance_mm_per_n());
    more.found(place, spring_back);
    vec![area_row, force_row, stiffness, elastic, more]
}

checks![
    n5_vdi_table,
    n6_machinerys_handbook,
    n7_shigley_example,
    n8_pinion_nuts,
    loosening_takes_less_than_tightening,
    n9_torque_to_crush,
    n10_n11_sleeve,
];
