//! Rib friction: NSK catalogue 15.4 and Technical Report E728g 7.2, NTN 10.3, and a measured rib reaction (J. R. Karna,
//! ASLE Transactions 17, 1974, 14–21): rows T8, T9, T11.
#![expect(
    clippy::disallowed_methods,
    reason = "published formulas are computed a second time without the core's door"
)]

use lashwright::bearing::friction::effective_rib_arm_mm;
use lashwright::bearing::friction_other::{rib_power_torque_nmm, rib_starting_torque_nmm};
use lashwright::bearing::roller_forces;
use lashwright::quantity::{N_PER_POUND_FORCE, radians};

use super::check;
use super::parts::ALL;

/// T8: the power lost at the rib over the shaft's speed gives M = µ e F_a exactly; NSK's cos β differs by 0.06 %.
#[test]
fn t8_power_balance() {
    for (alpha_deg, beta_deg) in [(20.0, 1.5), (15.0, 2.0), (12.0, 1.2)] {
        let (alpha, beta) = (radians(alpha_deg), radians(beta_deg));
        let row = format!("T8 α={alpha_deg} β={beta_deg}");
        let power = rib_power_torque_nmm(0.20, 1.1, 5000.0, alpha, beta);
        check(&format!("{row} without cos β"), power, 0.20 * 1.1 * 5000.0, 1.0e-6);
        check(
            &format!("{row} NSK"),
            rib_starting_torque_nmm(1.1, 5000.0, beta),
            power,
            0.0007,
        );
    }
}

/// T9: 3000 lbf of thrust gave a rib reaction of about 24 lbf a roller; geometries of normal bearings bracket it.
#[test]
fn t9_measured_rib_reaction() {
    let thrust = 3000.0 * N_PER_POUND_FORCE;
    let rib_lbf = |rollers: u32, alpha_deg: f64, beta_deg: f64| {
        roller_forces(thrust, rollers, radians(alpha_deg), radians(beta_deg)).rib_n / N_PER_POUND_FORCE
    };
    let least = rib_lbf(20, 20.0, 0.9);
    let most = rib_lbf(17, 13.0, 1.6);
    println!("T9 Karna 1974: 24 lbf measured, {least:.1} to {most:.1} lbf computed");
    assert!(least < 24.0 && 24.0 < most, "{least} to {most} lbf");
    let forces = roller_forces(thrust, 17, radians(20.0), radians(1.5));
    check(
        "cone and rib carry what the cup gives",
        forces.cone_n.hypot(forces.rib_n),
        forces.cup_n,
        1e-12,
    );
}

/// T11: the starting torque charts of NSK (fig. 15.10) and NTN (fig. 10.2) end at 5000 N mm for 15 000 N.
#[test]
fn t11_charts_bound_the_starting_torque() {
    for part in ALL.iter().filter(|p| p.bore < 45.0) {
        let per_force = rib_starting_torque_nmm(effective_rib_arm_mm(&part.bearing()), 1.0, 0.0);
        println!("T11 {}: M/F = {per_force:.3} mm, at most 0.33", part.name);
        assert!((0.16..0.33).contains(&per_force), "{}: {per_force}", part.name);
    }
}
