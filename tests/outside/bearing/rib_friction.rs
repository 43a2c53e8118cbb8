//! Rib friction: NSK catalogue 15.4 and Technical Report E728g 7.2, NTN 10.3, and a measured rib reaction (J. R. Karna,
//! ASLE Transactions 17, 1974, 14–21).
#![expect(
    clippy::disallowed_methods,
    reason = "published formulas are computed a second time without the core's door"
)]

use lashwright::bearing::friction::effective_rib_arm_mm;
use lashwright::bearing::friction_other::{rib_power_torque_nmm, rib_starting_torque_nmm};
use lashwright::bearing::roller_forces;
use lashwright::quantity::{N_PER_POUND_FORCE, radians};

use super::super::guide::{Row, Source, checks};
use super::parts::ALL;

/// The power lost at the rib over the shaft's speed gives M = µ e F_a exactly; NSK's cos β differs by 0.06 %.
fn t8_power_balance() -> Vec<Row> {
    let mut balance = Row::relative(
        "Torque from the power lost at the rib, M = µ e F_a, three geometries",
        Source::Law("power balance of roller and rib"),
        1.0e-6,
    );
    let mut catalogue = Row::relative(
        "Starting torque with cos β, against that",
        Source::Published("NSK catalogue, 15.4"),
        0.0007,
    );
    for (alpha_deg, beta_deg) in [(20.0, 1.5), (15.0, 2.0), (12.0, 1.2)] {
        let (alpha, beta) = (radians(alpha_deg), radians(beta_deg));
        let place = format!("α={alpha_deg} β={beta_deg}");
        let power = rib_power_torque_nmm(0.20, 1.1, 5000.0, alpha, beta);
        balance.near(&place, power, 0.20 * 1.1 * 5000.0);
        catalogue.near(place, rib_starting_torque_nmm(1.1, 5000.0, beta), power);
    }
    vec![balance, catalogue]
}

/// 3000 lbf of thrust gave a rib reaction of about 24 lbf a roller; geometries of normal bearings bracket it.
fn t9_measured_rib_reaction() -> Vec<Row> {
    let mut bracket = Row::stated(
        "Rib reactions of usual geometries bracket 24 lbf measured at 3000 lbf of thrust",
        Source::Published("Karna, ASLE Transactions 17 (1974) 14–21"),
        "order",
    );
    let mut forces_row = Row::relative(
        "Cone and rib carry together what the cup gives",
        Source::Law("equilibrium of the roller"),
        1e-12,
    );
    let thrust = 3000.0 * N_PER_POUND_FORCE;
    let rib_lbf = |rollers: u32, alpha_deg: f64, beta_deg: f64| {
        roller_forces(thrust, rollers, radians(alpha_deg), radians(beta_deg)).rib_n / N_PER_POUND_FORCE
    };
    let least = rib_lbf(20, 20.0, 0.9);
    let most = rib_lbf(17, 13.0, 1.6);
    bracket.is(format_args!("{least} to {most} lbf"), least < 24.0 && 24.0 < most);
    let forces = roller_forces(thrust, 17, radians(20.0), radians(1.5));
    forces_row.near("α=20 β=1.5", forces.cone_n.hypot(forces.rib_n), forces.cup_n);
    vec![bracket, forces_row]
}

/// The starting torque charts of NSK (fig. 15.10) and NTN (fig. 10.2) end at 5000 N mm for 15 000 N.
fn t11_charts_bound_the_starting_torque() -> Vec<Row> {
    let mut row = Row::range(
        "Starting torque over axial force of parts under 45 mm bore",
        Source::Published("ends of the charts of NSK, fig. 15.10, and NTN, fig. 10.2"),
        0.16..0.33,
        "mm",
    );
    for part in ALL.iter().filter(|p| p.bore < 45.0) {
        let per_force = rib_starting_torque_nmm(effective_rib_arm_mm(&part.bearing()), 1.0, 0.0);
        row.found(part.name, per_force);
    }
    vec![row]
}

checks![
    t8_power_balance,
    t9_measured_rib_reaction,
    t11_charts_bound_the_starting_torque,
];
