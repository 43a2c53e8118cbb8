//! Load zones: NSK Technical Report E728g 5.1, Harris's table, and the routine `fcylrolbear` of the Python package
//! `tribology` 0.4.5 (DIN 26281): rows S4 to S6.

use lashwright::bearing::stiffness::{greatest_roller_share, load_zone};

use super::check;

/// S4: half the circumference loaded; three exponents.
#[test]
fn s4_half_the_circumference() {
    let rows = [
        (1.1, [0.2453, 0.3090, 1.2595, 4.0766]),
        (10.0 / 9.0, [0.2448, 0.3080, 1.2580, 4.0850]),
        (1.5, [0.2288, 0.2782, 1.2158, 4.3701]),
    ];
    for (exponent, [radial, axial, thrust, greatest]) in rows {
        let zone = load_zone(0.5, exponent);
        let row = |what: &str| format!("S4 t={exponent:.4} {what}");
        check(&row("J_r"), zone.radial, radial, 0.0005);
        check(&row("J_a"), zone.axial, axial, 0.0005);
        check(&row("F_a/(F_r tan α)"), zone.axial / zone.radial, thrust, 0.0005);
        check(&row("Q_max Z cos α/F_r"), 1.0 / zone.radial, greatest, 0.0005);
    }
    let line = load_zone(0.5, 1.1);
    check("S4 NSK line contact 1.260", line.axial / line.radial, 1.260, 0.003);
    check("S4 NSK line contact 4.08", 1.0 / line.radial, 4.08, 0.003);
    let point = load_zone(0.5, 1.5);
    check("S4 NSK point contact 1.216", point.axial / point.radial, 1.216, 0.003);
    check("S4 NSK point contact 4.37", 1.0 / point.radial, 4.37, 0.003);
}

/// S5: discrete rollers, no clearance.
#[test]
fn s5_discrete_rollers() {
    for (rollers, want) in [(17, 4.088), (40, 4.085), (100, 4.085)] {
        check(
            &format!("S5 tribology 0.4.5, Z={rollers}"),
            greatest_roller_share(rollers),
            want,
            0.002,
        );
    }
}

/// S6: other zones, line contact with t = 1.1 (same as Harris's table, from memory): J_r, J_a, F_r tan α/F_a.
#[test]
fn s6_other_zones() {
    let rows = [
        (0.2, [0.1736, 0.1885, 0.9212]),
        (1.0, [0.2523, 0.4817, 0.5238]),
        (1.67, [0.1586, 0.6796, 0.2333]),
        (5.0, [0.0544, 0.8909, 0.0611]),
    ];
    for (share, [radial, axial, slope]) in rows {
        let zone = load_zone(share, 1.1);
        check(&format!("S6 ε={share} J_r"), zone.radial, radial, 0.005);
        check(&format!("S6 ε={share} J_a"), zone.axial, axial, 0.005);
        check(
            &format!("S6 ε={share} F_r tan α/F_a"),
            zone.radial / zone.axial,
            slope,
            0.005,
        );
    }
}
