//! Timken Engineering Manual, p. 180–182 (running torque and the speed below which its formula must not be used), and
//! the other makers' formulas at hand speed.

use lashwright::bearing::friction::{self, Running};
use lashwright::bearing::friction_other::{
    SpeedFactors, constant_coefficient_torque_nmm, minimum_speed_rpm, rib_starting_torque_nmm, road_speed_torque_nm,
    two_part_torque_nmm,
};
use lashwright::bearing::oil::dynamic_viscosity_mpas;

use super::super::guide::{Row, Source, checks};
use super::parts::{HM89449, HM803146, LM501349, M88048, M802048, Part};

const MANUAL: Source = Source::Second("formulas and factors of the Timken Engineering Manual, p. 180–182, in Python");
const CATALOGUE: Source = Source::Second("formulas of the SKF General Catalogue, in Python");

fn factors(part: Part) -> SpeedFactors {
    SpeedFactors {
        g1: part.g1,
        g2: part.g2,
    }
}

/// At hand speed the formula is out of its range and would say a quarter of the truth: it is refused.
fn t5_hand_speed_is_refused() -> Vec<Row> {
    let mut limit = Row::relative(
        "M88048 at 5 kN: least speed of the road-speed formula, and what it would say at 20 r/min",
        MANUAL,
        0.005,
    );
    let mut hand = Row::relative("The friction catalogue's torque of M88048 there", CATALOGUE, 0.01);
    let mut refused = Row::stated(
        "Refused below its least speed, allowed just above",
        Source::Published("Timken Engineering Manual, p. 180–182"),
        "as stated",
    );
    let refusal = road_speed_torque_nm(factors(M88048), 5000.0, 20.0, 354.0).expect_err("below n_min");
    limit.near("n_min", refusal.minimum_rpm, 51.6);
    limit.near("formula at 20 r/min", refusal.formula_would_say_nm, 0.1559);
    let running = Running {
        speed_rpm: 20.0,
        viscosity_mm2_s: 400.0,
    };
    let hand_nm = 1.0e-3 * friction::turning_with(&M88048.bearing(), 5000.0, running, 0.15).total_nmm;
    hand.near("20 r/min", hand_nm, 0.61);
    refused.is(
        format_args!("{refusal:?}"),
        refusal.speed_rpm.to_bits() == 20.0_f64.to_bits() && refusal.speed_rpm < refusal.minimum_rpm,
    );
    let just_above = road_speed_torque_nm(factors(M88048), 5000.0, 1.001 * refusal.minimum_rpm, 354.0);
    refused.is(format_args!("just above: {just_above:?}"), just_above.is_ok());
    vec![limit, hand, refused]
}

/// Four more parts, 5 kN, 354 mPa s.
fn t6_limits_of_four_parts() -> Vec<Row> {
    let mut row = Row::relative(
        "Four more parts: least speed, torque there, and what the formula would say at 20 r/min",
        MANUAL,
        0.005,
    );
    let rows = [
        (M802048, 43.4, 0.248, 0.401),
        (HM89449, 52.1, 0.232, 0.421),
        (HM803146, 48.7, 0.315, 0.547),
        (LM501349, 38.8, 0.187, 0.282),
    ];
    for (part, n_min, at_20, at_n_min) in rows {
        let name = part.name;
        let minimum = minimum_speed_rpm(factors(part), 5000.0, 354.0);
        row.near(format_args!("{name} n_min"), minimum, n_min);
        let refusal = road_speed_torque_nm(factors(part), 5000.0, 20.0, 354.0).expect_err("below n_min");
        row.near(
            format_args!("{name} M(20), refused"),
            refusal.formula_would_say_nm,
            at_20,
        );
        let allowed = road_speed_torque_nm(factors(part), 5000.0, minimum, 354.0).expect("at n_min");
        row.near(format_args!("{name} M(n_min)"), allowed, at_n_min);
    }
    vec![row]
}

/// At road speed in a full film both makers agree.
fn t7_full_film_agrees_with_the_friction_catalogue() -> Vec<Row> {
    let mut viscosity = Row::relative(
        "Dynamic viscosity from kinematic, 0.885 g/cm³",
        Source::Second("product by hand"),
        0.0005,
    );
    let mut road_row = Row::relative("HM803146 at 1500 r/min: torque and least speed", MANUAL, 0.005);
    let mut film_row = Row::relative("The friction catalogue's rolling part and total", CATALOGUE, 0.005);
    let mut sliding = Row::printed("Its sliding part", CATALOGUE, 0.001, 0.0, "N·m");
    let mut makers = Row::relative(
        "In a full film two makers' formulas agree",
        Source::Second("formula of the Timken Engineering Manual against that of the SKF General Catalogue"),
        0.15,
    );
    let viscosity_mpas = dynamic_viscosity_mpas(22.6, 0.885);
    viscosity.near("22.6 mm²/s", viscosity_mpas, 20.0);
    let road = road_speed_torque_nm(factors(HM803146), 5000.0, 1500.0, 20.0).expect("above n_min");
    road_row.near("torque", road, 0.771);
    road_row.near("n_min", minimum_speed_rpm(factors(HM803146), 5000.0, 20.0), 862.0);
    let running = Running {
        speed_rpm: 1500.0,
        viscosity_mm2_s: 22.6,
    };
    let film = friction::turning(&HM803146.bearing(), 5000.0, running);
    film_row.near("rolling", 1.0e-3 * film.rolling_nmm, 0.825);
    sliding.near("sliding", 1.0e-3 * film.sliding_nmm, 0.033);
    film_row.near("total", 1.0e-3 * film.total_nmm, 0.857);
    makers.near("HM803146", 1.0e-3 * film.total_nmm, road);
    vec![viscosity, road_row, film_row, sliding, makers]
}

/// What the other formulas say at hand speed, all but the starting torque far too little.
fn t12_wrong_models_at_hand_speed() -> Vec<Row> {
    let mut models = Row::relative(
        "M802048 at 20 r/min: what Palmgren's, the constant coefficients' and NSK's breakaway formula say",
        Source::Second("formulas of the Schaeffler, SKF and NSK catalogues, in Python"),
        0.005,
    );
    let mut road = Row::range(
        "What the road-speed formula would say, about 0.25",
        MANUAL,
        0.2..0.26,
        "N·m",
    );
    let mut right = Row::range(
        "The friction catalogue's torque of M802048 at 20 r/min",
        CATALOGUE,
        0.65..=0.76,
        "N·m",
    );
    let mut too_low = Row::range("That over what Palmgren and road speed say", CATALOGUE, 2.0..5.0, "");
    let bearing = M802048.bearing();
    let running = Running {
        speed_rpm: 20.0,
        viscosity_mm2_s: 350.0,
    };
    let right_nm = 1.0e-3 * friction::turning(&bearing, 5000.0, running).total_nmm;
    let two_part_nm = 1.0e-3 * two_part_torque_nmm(&bearing, 5000.0, 20.0, 350.0, 3.0);
    models.near("Palmgren", two_part_nm, 0.298);
    let equivalent = bearing.thrust_factor_y * 5000.0;
    for (maker, coefficient, want) in [("SKF", 0.0018, 0.204), ("NSK", 0.0022, 0.250)] {
        models.near(
            format_args!("0.5 µ P d, {maker}"),
            1.0e-3 * constant_coefficient_torque_nmm(coefficient, equivalent, 41.275),
            want,
        );
    }
    let refusal = road_speed_torque_nm(factors(M802048), 5000.0, 20.0, dynamic_viscosity_mpas(350.0, 0.885));
    let refusal = refusal.expect_err("below n_min");
    road.found(format_args!("\"{refusal}\""), refusal.formula_would_say_nm);
    let arm = friction::effective_rib_arm_mm(&bearing);
    models.near(
        "NSK breakaway",
        1.0e-3 * rib_starting_torque_nmm(arm, 5000.0, 0.0),
        0.97,
    );
    right.found("20 r/min", right_nm);
    for (name, wrong) in [("Palmgren", two_part_nm), ("Timken", refusal.formula_would_say_nm)] {
        too_low.found(name, right_nm / wrong);
    }
    vec![models, road, right, too_low]
}

/// The lower branch of Palmgren's viscous part joins the upper one at ν n = 2000 to 1 %.
fn two_part_torque_joins_its_branches() -> Vec<Row> {
    let mut row = Row::relative(
        "Palmgren's viscous part joins at ν n = 2000",
        Source::Law("both branches belong to one formula (Schaeffler HR1, 2006, p. 55–60)"),
        0.01,
    );
    let bearing = M802048.bearing();
    let below = two_part_torque_nmm(&bearing, 0.0, 1999.99, 1.0, 3.0);
    let above = two_part_torque_nmm(&bearing, 0.0, 2000.0, 1.0, 3.0);
    row.near("both branches", above, below);
    vec![row]
}

checks![
    t5_hand_speed_is_refused,
    t6_limits_of_four_parts,
    t7_full_film_agrees_with_the_friction_catalogue,
    t12_wrong_models_at_hand_speed,
    two_part_torque_joins_its_branches,
];
