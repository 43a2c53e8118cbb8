//! Opposed pairs: closed forms and an independent solution with SciPy; and the pair example
//! of the SKF General Catalogue, p. 209–211.
#![expect(
    clippy::disallowed_methods,
    reason = "published formulas are computed a second time without the core's door"
)]

use lashwright::bearing::fastener::ThreadJoint;
use lashwright::bearing::friction::effective_rib_arm_mm;
use lashwright::bearing::setting::housing_outgrows_mm;
use lashwright::bearing::stiffness::AxialApproach;
use lashwright::bearing::{OpposedPair, SideBearings, total_torque_at_pinion};
use lashwright::quantity::{MM_PER_INCH, NM_PER_INCH_POUND};

use super::super::guide::{Row, Source, checks};
use super::parts::{LM501349, M88048, M802048};

const SCIPY: Source = Source::Second("equilibrium of the springs, solved with SciPy");

fn pair(structure_n_per_um: f64) -> OpposedPair {
    OpposedPair {
        near: AxialApproach::of(&M88048.bearing()),
        far: AxialApproach::of(&M802048.bearing()),
        structure_mm_per_n: 1e-3 / structure_n_per_um,
    }
}

fn equal_pair() -> OpposedPair {
    let one = AxialApproach::of(&M88048.bearing());
    OpposedPair {
        near: one,
        far: one,
        structure_mm_per_n: 0.0,
    }
}

/// Equal line contacts fall slack at 2^(10/9) times the preload.
fn p11_slackening_load() -> Vec<Row> {
    const LAW: Source = Source::Law("two equal springs F ∝ δ^(10/9)");
    let mut row = Row::relative("Equal bearings fall slack at 2.1601 times the preload", LAW, 1e-4);
    let mut exact = Row::relative("The same against 2^(10/9)", LAW, 1e-11);
    let slack = equal_pair().slackening_load_n(5000.0).expect("numbers");
    row.near("5 kN", slack / 5000.0, 2.1601);
    exact.near("5 kN", slack / 5000.0, 2.0_f64.powf(10.0 / 9.0));
    vec![row, exact]
}

/// Load sharing of an equal pair.
fn p12_load_sharing() -> Vec<Row> {
    let mut row = Row::relative("Shares of an equal pair under five loads", SCIPY, 1e-3);
    let rows = [
        (0.25, 1.1258, 0.8758),
        (0.5, 1.2532, 0.7532),
        (1.0, 1.5130, 0.5130),
        (1.5, 1.7809, 0.2809),
        (2.0, 2.0620, 0.0620),
    ];
    for (outside, near, far) in rows {
        let shared = equal_pair().share(5000.0, 5000.0 * outside).expect("numbers");
        row.near(format_args!("Ka={outside} near"), shared.near_n / 5000.0, near);
        row.near(format_args!("Ka={outside} far"), shared.far_n / 5000.0, far);
    }
    vec![row]
}

/// Unequal pair, both ways.
fn p13_unequal_pair() -> Vec<Row> {
    let mut row = Row::relative("Load that slackens either bearing of an unequal pair", SCIPY, 0.005);
    let rigid = OpposedPair {
        structure_mm_per_n: 0.0,
        ..pair(1.0)
    };
    let turned = OpposedPair {
        near: rigid.far,
        far: rigid.near,
        ..rigid
    };
    // Toward M802048 the far bearing is M88048.
    row.near(
        "slackens M88048",
        turned.slackening_load_n(5000.0).expect("numbers") / 5000.0,
        2.337,
    );
    row.near(
        "slackens M802048",
        rigid.slackening_load_n(5000.0).expect("numbers") / 5000.0,
        2.007,
    );
    vec![row]
}

/// Stiffness of the pair, alone and with a structure; kN per 0.001 in.
fn p14_p15_stiffness_of_the_pair() -> Vec<Row> {
    let mut bare = Row::relative("Stiffness of the pair alone at three preloads", SCIPY, 0.10);
    let mut with_structure = Row::relative("Stiffness of the pair with four structures at 5 kN", SCIPY, 0.01);
    let rigid = OpposedPair {
        structure_mm_per_n: 0.0,
        ..pair(1.0)
    };
    for (force, want, per_thou) in [(3e3, 263.0, 6.7), (5e3, 277.0, 7.0), (8e3, 290.0, 7.4)] {
        let k = 1e-3 * rigid.stiffness_n_per_mm(force);
        bare.near(format_args!("{force} N, N/µm"), k, want);
        bare.near(format_args!("{force} N, kN/0.001 in"), k * 0.0254, per_thou);
    }
    for (structure, want, per_thou) in [
        (400.0, 164.0, 4.16),
        (250.0, 131.0, 3.34),
        (150.0, 97.0, 2.47),
        (100.0, 73.0, 1.87),
    ] {
        let k = 1e-3 * pair(structure).stiffness_n_per_mm(5e3);
        with_structure.near(format_args!("structure {structure}, N/µm"), k, want);
        with_structure.near(format_args!("structure {structure}, kN/0.001 in"), k * 0.0254, per_thou);
    }
    vec![bare, with_structure]
}

/// Torque per 0.001 in of shim at 110 N/µm, three rib coefficients.
fn p16_torque_per_thousandth() -> Vec<Row> {
    let by_hand = Source::Second("coefficient × arm × force, by hand");
    let mut arms_row = Row::relative("Sum of both rib arms", by_hand, 0.005);
    let mut torques = Row::relative(
        "Torque for 0.001 in of shim at 110 N/µm, three coefficients",
        by_hand,
        0.02,
    );
    let mut record = Row::range(
        "The same within a factor 2 of a shop's record, 7 in·lb",
        Source::Practice(""),
        3.5..14.0,
        "in·lb",
    );
    let arms: f64 = [M88048, M802048]
        .iter()
        .map(|p| effective_rib_arm_mm(&p.bearing()))
        .sum();
    arms_row.near("mm", arms, 1.80);
    for (mu, want) in [(0.10, 4.4), (0.15, 6.7), (0.20, 8.9)] {
        let in_lb = 1e-3 * mu * arms * 110e3 * 1e-3 * MM_PER_INCH / NM_PER_INCH_POUND;
        torques.near(format_args!("µ={mu}, in·lb"), in_lb, want);
        record.found(format_args!("µ={mu}"), in_lb);
    }
    vec![arms_row, torques, record]
}

/// Aluminium carrier housing of 180 mm, 60 K warmer.
fn p20_aluminium_housing() -> Vec<Row> {
    let mut row = Row::relative(
        "Growth of an aluminium housing of 180 mm over steel, 60 K warmer",
        Source::Second("length × difference of coefficients × rise, by hand"),
        0.003,
    );
    row.near("mm", housing_outgrows_mm(23e-6, 180.0, 60.0), 0.119);
    vec![row]
}

/// Degrees of nut per kilonewton while a sleeve yields.
fn p21_nut_angle() -> Vec<Row> {
    let by_hand = Source::Second("pitch over stiffness, by hand");
    let mut pitch = Row::relative("Travel of a nut a degree", by_hand, 1e-4);
    let mut given = Row::relative("Degrees of nut a kilonewton at three stiffnesses", by_hand, 0.003);
    let mut springs = Row::relative("The same from the springs of pair and structure", by_hand, 0.02);
    let nut = ThreadJoint {
        pitch_mm: 1.5,
        pitch_diameter_mm: 21.0,
        face_mean_diameter_mm: 28.0,
        friction_thread: 0.12,
        friction_face: 0.12,
    };
    pitch.near("µm", 1e3 * nut.travel_mm(1.0), 4.167);
    for (stiffness, want) in [(72.0, 3.33), (97.0, 2.47), (131.0, 1.83)] {
        given.near(
            format_args!("{stiffness} N/µm"),
            1.0 / stiffness / nut.travel_mm(1.0),
            want,
        );
    }
    // The same from the springs themselves; the structure above of 100 N/µm makes 73, not 72.
    for (structure, want) in [(100.0, 3.33), (150.0, 2.47), (250.0, 1.83)] {
        let degrees_per_kn = 1e3 / pair(structure).stiffness_n_per_mm(5e3) / nut.travel_mm(1.0);
        springs.near(format_args!("structure {structure}"), degrees_per_kn, want);
    }
    vec![pitch, given, springs]
}

/// Linear springs, pair of the catalogue's pinion example: the relation F0 = Ka c_B/(c_A + c_B). With the bearings
/// made far stiffer than the structure our pair has two equal linear springs, so Ka at slackening is 2 F0.
fn p1_linear_springs() -> Vec<Row> {
    let mut row = Row::relative(
        "Two equal linear springs fall slack at twice the preload",
        Source::Published("SKF General Catalogue, p. 209–211"),
        1e-5,
    );
    let stiff = AxialApproach { coefficient: 1e-12 };
    let linear = OpposedPair {
        near: stiff,
        far: stiff,
        structure_mm_per_n: 1e-5,
    };
    row.near("5 kN", linear.slackening_load_n(5000.0).expect("numbers") / 5000.0, 2.0);
    vec![row]
}

/// Side bearings: common practice, read on public service pages. A pack of 0.25 mm in an aluminium unit lets the
/// carrier alone turn at 0.6 to 0.7 N m; that was taken to mean 1.8 to 3 kN and a case of 7 to 12 N/µm.
fn side_bearings_of_an_aluminium_unit() -> Vec<Row> {
    let mut forces = Row::range(
        "Side preload of an aluminium unit from 0.25 mm of packs, case 7 to 12 N/µm",
        Source::Practice("the force was worked out from the torque"),
        1600.0..3000.0,
        "N",
    );
    let mut shared = Row::relative(
        "The squeeze is shared by both bearings and the case",
        Source::Law("sum of the deflections"),
        1e-9,
    );
    let mut at_pinion = Row::relative(
        "Side bearings' torque felt at the pinion",
        Source::Law("torque over the ratio"),
        1e-12,
    );
    let mut torques = Row::stated(
        "The carrier of an aluminium unit alone turns at 0.6 to 0.7 N·m, within what both cases give",
        Source::Practice(""),
        "order",
    );
    let running = lashwright::bearing::friction::Running {
        speed_rpm: 5.0,
        viscosity_mm2_s: 350.0,
    };
    let range = [7.0, 12.0].map(|case_n_per_um| {
        let side = SideBearings {
            tooth_side: LM501349.bearing(),
            back_side: LM501349.bearing(),
            case_stiffness_n_per_mm: 1e3 * case_n_per_um,
        };
        let state = side.squeezed_by(0.25).expect("numbers");
        let torque = side.rolling_torque_nm(state.preload_n, running);
        let place = format!("case {case_n_per_um} N/µm");
        forces.found(&place, state.preload_n);
        let closing = state.tooth_side_deflection_mm + state.back_side_deflection_mm + state.case_spread_mm;
        shared.near(&place, closing, 0.25);
        let pinion = lashwright::bearing::Torque {
            head_bearing_nm: 0.9,
            tail_bearing_nm: 0.7,
            seal_nm: 0.15,
            total_nm: 1.75,
        };
        let total = total_torque_at_pinion(&pinion, torque, 41.0 / 11.0);
        at_pinion.near(place, total.total_nm, 1.75 + torque * 11.0 / 41.0);
        torque
    });
    torques.is(
        format_args!("{} to {} N·m", range[0], range[1]),
        range[0] < 0.65 && 0.6 < range[1],
    );
    vec![forces, shared, at_pinion, torques]
}

checks![
    p11_slackening_load,
    p12_load_sharing,
    p13_unequal_pair,
    p14_p15_stiffness_of_the_pair,
    p16_torque_per_thousandth,
    p20_aluminium_housing,
    p21_nut_angle,
    p1_linear_springs,
    side_bearings_of_an_aluminium_unit,
];
