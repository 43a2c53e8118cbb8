//! Timken Engineering Manual, p. 180–182 (running torque and the speed below which its formula must not be used), and
//! the other makers' formulas at hand speed: rows T5, T6, T7, T12.

use lashwright::bearing::friction::{self, Running};
use lashwright::bearing::friction_other::{
    SpeedFactors, constant_coefficient_torque_nmm, minimum_speed_rpm, rib_starting_torque_nmm, road_speed_torque_nm,
    two_part_torque_nmm,
};
use lashwright::bearing::oil::dynamic_viscosity_mpas;

use super::parts::{HM89449, HM803146, LM501349, M88048, M802048, Part};
use super::{check, check_printed};

fn factors(part: Part) -> SpeedFactors {
    SpeedFactors {
        g1: part.g1,
        g2: part.g2,
    }
}

/// T5: at hand speed the formula is out of its range and would say a quarter of the truth: it is refused.
#[test]
fn t5_hand_speed_is_refused() {
    let refusal = road_speed_torque_nm(factors(M88048), 5000.0, 20.0, 354.0).expect_err("below n_min");
    check("T5 n_min", refusal.minimum_rpm, 51.6, 0.005);
    check("T5 formula at 20 r/min", refusal.formula_would_say_nm, 0.1559, 0.005);
    let running = Running {
        speed_rpm: 20.0,
        viscosity_mm2_s: 400.0,
    };
    let hand_nm = 1.0e-3 * friction::turning_with(&M88048.bearing(), 5000.0, running, 0.15).total_nmm;
    check("T5 SKF at 20 r/min", hand_nm, 0.61, 0.01);
    assert!(refusal.to_string().contains("does not hold at 20.0 r/min"), "{refusal}");
    let just_above = road_speed_torque_nm(factors(M88048), 5000.0, 1.001 * refusal.minimum_rpm, 354.0);
    assert!(just_above.is_ok(), "allowed from n_min: {just_above:?}");
}

/// T6: four more parts, 5 kN, 354 mPa s.
#[test]
fn t6_limits_of_four_parts() {
    let rows = [
        (M802048, 43.4, 0.248, 0.401),
        (HM89449, 52.1, 0.232, 0.421),
        (HM803146, 48.7, 0.315, 0.547),
        (LM501349, 38.8, 0.187, 0.282),
    ];
    for (part, n_min, at_20, at_n_min) in rows {
        let name = part.name;
        let minimum = minimum_speed_rpm(factors(part), 5000.0, 354.0);
        check(&format!("T6 {name} n_min"), minimum, n_min, 0.005);
        let refusal = road_speed_torque_nm(factors(part), 5000.0, 20.0, 354.0).expect_err("below n_min");
        check(
            &format!("T6 {name} M(20), refused"),
            refusal.formula_would_say_nm,
            at_20,
            0.005,
        );
        let allowed = road_speed_torque_nm(factors(part), 5000.0, minimum, 354.0).expect("at n_min");
        check(&format!("T6 {name} M(n_min)"), allowed, at_n_min, 0.005);
    }
}

/// T7: at road speed in a full film both makers agree.
#[test]
fn t7_full_film_agrees_with_the_friction_catalogue() {
    let viscosity_mpas = dynamic_viscosity_mpas(22.6, 0.885);
    check("T7 dynamic viscosity", viscosity_mpas, 20.0, 0.0005);
    let road = road_speed_torque_nm(factors(HM803146), 5000.0, 1500.0, 20.0).expect("above n_min");
    check("T7 Timken", road, 0.771, 0.005);
    check(
        "T7 n_min",
        minimum_speed_rpm(factors(HM803146), 5000.0, 20.0),
        862.0,
        0.005,
    );
    let running = Running {
        speed_rpm: 1500.0,
        viscosity_mm2_s: 22.6,
    };
    let film = friction::turning(&HM803146.bearing(), 5000.0, running);
    check("T7 SKF rolling", 1.0e-3 * film.rolling_nmm, 0.825, 0.005);
    check_printed("T7 SKF sliding", 1.0e-3 * film.sliding_nmm, 0.033, 0.001, 0.0);
    check("T7 SKF total", 1.0e-3 * film.total_nmm, 0.857, 0.005);
    check("T7 both makers", 1.0e-3 * film.total_nmm, road, 0.15);
}

/// T12: what the other formulas say at hand speed, all but the starting torque far too little.
#[test]
fn t12_wrong_models_at_hand_speed() {
    let bearing = M802048.bearing();
    let running = Running {
        speed_rpm: 20.0,
        viscosity_mm2_s: 350.0,
    };
    let right_nm = 1.0e-3 * friction::turning(&bearing, 5000.0, running).total_nmm;
    let two_part_nm = 1.0e-3 * two_part_torque_nmm(&bearing, 5000.0, 20.0, 350.0, 3.0);
    check("T12 Palmgren", two_part_nm, 0.298, 0.005);
    let equivalent = bearing.thrust_factor_y * 5000.0;
    check(
        "T12 0.5 µ P d, SKF",
        1.0e-3 * constant_coefficient_torque_nmm(0.0018, equivalent, 41.275),
        0.204,
        0.005,
    );
    check(
        "T12 0.5 µ P d, NSK",
        1.0e-3 * constant_coefficient_torque_nmm(0.0022, equivalent, 41.275),
        0.250,
        0.005,
    );
    let refusal = road_speed_torque_nm(factors(M802048), 5000.0, 20.0, dynamic_viscosity_mpas(350.0, 0.885));
    let refusal = refusal.expect_err("below n_min");
    println!(
        "T12 Timken: {refusal}; it would say {:.3} N·m",
        refusal.formula_would_say_nm
    );
    assert!(
        (0.2..0.26).contains(&refusal.formula_would_say_nm),
        "about 0.25: {refusal:?}"
    );
    let arm = friction::effective_rib_arm_mm(&bearing);
    check(
        "T12 NSK breakaway",
        1.0e-3 * rib_starting_torque_nmm(arm, 5000.0, 0.0),
        0.97,
        0.005,
    );
    println!("T12 SKF turning: {right_nm:.3} N·m");
    assert!((0.65..=0.76).contains(&right_nm), "source 0.65 to 0.76: {right_nm}");
    for (name, wrong) in [("Palmgren", two_part_nm), ("Timken", refusal.formula_would_say_nm)] {
        assert!(
            (2.0..5.0).contains(&(right_nm / wrong)),
            "{name} is 2 to 5 times too low: {wrong}"
        );
    }
}

/// The lower branch of Palmgren's viscous part joins the upper one at ν n = 2000 to 1 %.
#[test]
fn two_part_torque_joins_its_branches() {
    let bearing = M802048.bearing();
    let below = two_part_torque_nmm(&bearing, 0.0, 1999.99, 1.0, 3.0);
    let above = two_part_torque_nmm(&bearing, 0.0, 2000.0, 1.0, 3.0);
    check("F11 branches", above, below, 0.01);
}
