//! ISO 23509, method 1: the pitch cones of hypoid gears.
//!
//! The formulas are from memory and confirmed by a plain vector model; the table is computed, not the standard's
//! annex (which could not be read). Three routes meet here: the iteration, the vectors, and the core.
#![expect(
    clippy::disallowed_methods,
    reason = "an oracle must not go through the core's door to sine and cosine"
)]

use super::guide::{Row, Source, checks};
use super::oracle::pitch_iteration::{Converged, Start, converge};
use super::oracle::pitch_vectors::{self, Pitch};
use super::sets::{all, numbers};
use lashwright::gear::{Design, PitchCones, PitchInput};

const MEMORY: Source = Source::Memory("ISO 23509, method 1; formulas remembered, numbers computed from them in Python");
const VECTORS: Source = Source::Second("pitch cones by plain vectors, without iteration");

/// Cases A to D of the reference table.
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
fn table_of_reference_results() -> Vec<Row> {
    type Quantity = (&'static str, fn(&Converged) -> f64, [f64; 4]);
    #[rustfmt::skip]
    let quantities: [Quantity; 25] = [
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
    let mut table = Row::absolute(
        "Yardstick: pitch cones by iteration, 25 quantities of cases A to D, against the reference table",
        MEMORY,
        1e-5,
        "° or mm",
    );
    for (k, (case, start)) in CASES.iter().enumerate() {
        let got = converge(*start);
        for (name, value, printed) in &quantities {
            table.near(format_args!("case {case} {name}"), value(&got), printed[k]);
        }
    }
    vec![table]
}

/// Where the iteration ends, the vector model finds the same cones, spiral angles, limit angle and limit radius.
fn iteration_and_vectors_agree() -> Vec<Row> {
    let mut agree = Row::absolute(
        "Yardstick: where the iteration ends, plain vectors find the same cones",
        VECTORS,
        1e-10,
        "of the value, at least of 1",
    );
    let mut slide = Row::absolute(
        "Yardstick: sliding over rolling speed at the mean point, cases A to D, against the reference table",
        MEMORY,
        1e-7,
        "",
    );
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
            let scale = b.abs().max(1.0);
            agree.near(format_args!("case {case} {name}"), a / scale, b / scale);
        }
        slide.near(format_args!("case {case}"), v.sliding, printed);
    }
    vec![agree, slide]
}

/// The identities of 1.2 on the vector model, 1e-10.
fn identities_of_the_vector_model() -> Vec<Row> {
    let mut identities = Row::absolute(
        "Yardstick: identities of hypoid cones on the vectors, cases A to D",
        Source::Law("identities of two cones with one tangent plane"),
        1e-10,
        "",
    );
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
            // Tangential forces: F_t1 cos β2 = F_t2 cos β1 gives exactly the torque ratio.
            (
                "torque ratio",
                (v.r_m2 / v.r_m1) * (b2.cos() / b1.cos()) / (start.z2 / start.z1) - 1.0,
            ),
            (
                "v_s/v_t2 = sin zeta_mp / cos beta_m1",
                v.sliding - v.zeta_mp.sin() / b1.cos(),
            ),
        ] {
            identities.near(format_args!("case {case} {name}"), miss, 0.0);
        }
    }
    vec![identities]
}

/// What the core's exact form is fed with to meet the iteration: its spiral angle and its mean radius, which it keeps
/// from the first guess.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "tooth numbers are small whole numbers"
)]
fn core_input(start: &Start, end: &Converged) -> PitchInput {
    PitchInput {
        pinion_teeth: start.z1 as u32,
        wheel_teeth: start.z2 as u32,
        offset_mm: start.a,
        wheel_outer_pitch_diameter_mm: start.d_e2,
        wheel_face_width_mm: start.b2,
        pinion_spiral_angle_rad: end.beta_m1.to_radians(),
        limit_radius_mm: start.r_c0,
    }
}

/// The core's cones, fed with the iteration's mean radius, against table 1.3 by way of the iteration.
fn core_meets_the_iteration() -> Vec<Row> {
    let mut meets = Row::absolute(
        "Pitch cones of cases A to D, 14 quantities",
        Source::Second("iteration of ISO 23509, method 1, from memory"),
        1e-8,
        "° or mm",
    );
    for (case, start) in &CASES {
        let end = converge(*start);
        let cones = PitchCones::with_wheel_mean_radius(&core_input(start, &end), end.r_mpt2).expect("cones exist");
        for (name, got, want) in [
            ("delta1", cones.pinion_pitch_angle_rad.to_degrees(), end.delta1),
            ("delta2", cones.wheel_pitch_angle_rad.to_degrees(), end.delta2),
            ("zeta_m", cones.offset_angle_axial_rad.to_degrees(), end.zeta_m),
            ("zeta_mp", cones.offset_angle_pitch_plane_rad.to_degrees(), end.zeta_mp),
            ("beta_m1", cones.pinion_spiral_angle_rad.to_degrees(), end.beta_m1),
            ("beta_m2", cones.wheel_spiral_angle_rad.to_degrees(), end.beta_m2),
            ("R_m1", cones.pinion_cone_distance_mm, end.cone_distance1),
            ("R_m2", cones.wheel_cone_distance_mm, end.cone_distance2),
            ("d_m1", 2.0 * cones.pinion_mean_radius_mm, end.d_m1),
            ("m_mn", cones.mean_normal_module_mm, end.m_mn),
            ("alpha_lim", cones.limit_pressure_angle_rad.to_degrees(), end.alpha_lim),
            ("rho_lim", cones.limit_radius_mm.unwrap_or(f64::NAN), end.rho_lim),
            ("t_zm1", cones.pinion_crossing_to_mean_mm, end.t_zm1),
            ("t_zm2", cones.wheel_crossing_to_mean_mm, end.t_zm2),
        ] {
            meets.near(format_args!("case {case} {name}"), got, want);
        }
    }
    vec![meets]
}

/// Identities 1.2 on the core's cones of every shipped set with offset, 1e-10, and the given numbers kept.
fn identities_of_the_core() -> Vec<Row> {
    let mut identities = Row::absolute(
        "Identities of hypoid cones and the numbers asked for, all shipped sets",
        Source::Law("identities of two cones with one tangent plane"),
        1e-10,
        "",
    );
    for design in all() {
        let v = PitchCones::solve(&PitchInput::from(&design)).expect("shipped sets have cones");
        let (b1, b2) = (v.pinion_spiral_angle_rad, v.wheel_spiral_angle_rad);
        let zeta = v.offset_angle_pitch_plane_rad;
        let ratio = f64::from(design.wheel_teeth) / f64::from(design.pinion_teeth);
        let m_pinion = 2.0 * v.pinion_mean_radius_mm * b1.cos() / f64::from(design.pinion_teeth);
        let r_m2 =
            (design.wheel_outer_pitch_diameter_mm - design.wheel_face_width_mm * v.wheel_pitch_angle_rad.sin()) / 2.0;
        let sin_zeta_m = 2.0 * design.offset_mm
            / (2.0 * v.wheel_mean_radius_mm
                + 2.0 * v.pinion_mean_radius_mm * v.wheel_pitch_angle_rad.cos() / v.pinion_pitch_angle_rad.cos());
        let tangents = v.pinion_pitch_angle_rad.tan() * v.wheel_pitch_angle_rad.tan();
        for (name, miss) in [
            ("cos zeta_mp = tan delta1 tan delta2", zeta.cos() - tangents),
            ("beta_m1 − beta_m2 = zeta_mp", b1 - b2 - zeta),
            ("m_mn of both members", v.mean_normal_module_mm / m_pinion - 1.0),
            (
                "torque ratio",
                v.wheel_mean_radius_mm / v.pinion_mean_radius_mm * b2.cos() / b1.cos() / ratio - 1.0,
            ),
            (
                "sin zeta_m from radii (step 26)",
                v.offset_angle_axial_rad.sin() - sin_zeta_m,
            ),
            (
                "mean radius of the final pitch angle",
                v.wheel_mean_radius_mm / r_m2 - 1.0,
            ),
            (
                "spiral angle as given",
                b1 - design.pinion_mean_spiral_angle_deg.to_radians(),
            ),
            (
                "limit radius as given",
                v.limit_radius_mm.map_or(0.0, |rho| rho / design.limit_radius_mm - 1.0),
            ),
        ] {
            identities.near(format_args!("{}: {name}", design.name), miss, 0.0);
        }
    }
    vec![identities]
}

/// a → 0: the cones go over into those of a spiral bevel set (continuity), and the mirror root (β_m2 > β_m1 at small
/// offsets) never appears.
fn small_offsets_go_over_into_none() -> Vec<Row> {
    let continuity = Source::Law("continuity in the offset");
    let mut cones = Row::absolute(
        "Without offset the cones are those of a spiral bevel set, all shipped sets",
        continuity,
        1e-12,
        "",
    );
    let mut no_limit = Row::stated("Without offset there is no limit radius", continuity, "as stated");
    let mut root = Row::stated(
        "At small offsets the pinion's spiral angle stays the larger one (never the mirror root)",
        continuity,
        "sign",
    );
    for design in all() {
        let at = |offset_mm: f64| {
            let input = PitchInput {
                offset_mm,
                ..PitchInput::from(&design)
            };
            PitchCones::solve(&input)
        };
        let bevel = at(0.0).expect("a bevel set always has cones");
        let tangents = bevel.pinion_pitch_angle_rad.tan() * bevel.wheel_pitch_angle_rad.tan();
        cones.near(format_args!("{}: tan delta1 tan delta2", design.name), tangents, 1.0);
        cones.near(
            format_args!("{}: limit pressure angle", design.name),
            bevel.limit_pressure_angle_rad,
            0.0,
        );
        no_limit.is(&design.name, bevel.limit_radius_mm.is_none());
        for offset_mm in [0.01, 0.1, 1.0, 3.0, 10.0] {
            // Some limit radii cannot be had at small offsets; that is an error then, and never the other root.
            if let Ok(cones) = at(offset_mm) {
                root.is(
                    format_args!("{} at {offset_mm} mm", design.name),
                    cones.offset_angle_pitch_plane_rad > 0.0,
                );
            }
        }
    }
    vec![cones, no_limit, root]
}

/// Random sets, far wider than anybody would cut: where both routes find cones they find the same ones, and the core
/// finds them wherever the vectors do (on the side of the true root, β_m1 > β_m2).
fn random_sets_by_vectors_and_core() -> Vec<Row> {
    let mut angles = Row::absolute(
        "Five angles of random hypoid sets, far wider than anybody would cut",
        VECTORS,
        1e-9,
        "rad",
    )
    .in_bulk();
    let mut exists = Row::stated(
        "Random sets have cones wherever the vectors find some",
        VECTORS,
        "as stated",
    )
    .in_bulk();
    let (mut both, mut only_core) = (0, 0);
    let mut state = 7_u64;
    let mut spread = || {
        // Knuth, TAOCP vol. 2, 3.3.4, line 26.
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        2.0 * ((state >> 11) as f64 / (1_u64 << 53) as f64) - 1.0
    };
    for _ in 0..40 {
        for design in all() {
            let design = Design {
                offset_mm: design.offset_mm * (1.0 + 0.5 * spread()),
                wheel_face_width_mm: design.wheel_face_width_mm * (1.0 + 0.3 * spread()),
                pinion_mean_spiral_angle_deg: design.pinion_mean_spiral_angle_deg + 6.0 * spread(),
                limit_radius_mm: design.limit_radius_mm * (1.0 + 0.3 * spread()),
                ..design
            };
            let core = PitchCones::solve(&PitchInput::from(&design)).ok();
            let vectors =
                pitch_vectors::try_pitch(&numbers(&design)).filter(|v| v.zeta_mp >= 0.0 && v.beta1 >= v.beta2);
            let place = format!(
                "offset {} mm, face {} mm, spiral angle {}°, limit radius {} mm",
                design.offset_mm,
                design.wheel_face_width_mm,
                design.pinion_mean_spiral_angle_deg,
                design.limit_radius_mm
            );
            if vectors.is_some() {
                exists.is(&place, core.is_some());
            }
            match (core, vectors) {
                (Some(core), Some(v)) => {
                    both += 1;
                    for (got, want) in [
                        (core.wheel_pitch_angle_rad, v.delta2),
                        (core.pinion_pitch_angle_rad, v.delta1),
                        (core.wheel_spiral_angle_rad, v.beta2),
                        (core.offset_angle_axial_rad, v.zeta_m),
                        (core.limit_pressure_angle_rad, v.alpha_lim),
                    ] {
                        angles.near(format_args!("{}, {place}", design.name), got, want);
                    }
                }
                (Some(_), None) => only_core += 1,
                (None, _) => {}
            }
        }
    }
    println!("random sets: {both} by both, {only_core} by the core alone");
    assert!(both > 400, "the comparison must compare: {both}");
    vec![angles, exists]
}

checks![
    table_of_reference_results,
    iteration_and_vectors_agree,
    identities_of_the_vector_model,
    core_meets_the_iteration,
    identities_of_the_core,
    small_offsets_go_over_into_none,
    random_sets_by_vectors_and_core,
];
