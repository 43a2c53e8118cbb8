//! Load zones: NSK Technical Report E728g 5.1, Harris's table, and the routine `fcylrolbear` of the Python package
//! `tribology` 0.4.5 (DIN 26281).

use lashwright::bearing::stiffness::{greatest_roller_share, load_zone};

use super::super::guide::{Row, Source, checks};

const QUADRATURE: Source = Source::Second("quadrature with SciPy");

/// Half the circumference loaded; three exponents.
fn s4_half_the_circumference() -> Vec<Row> {
    let mut integrals = Row::relative(
        "Load zone integrals with half the circumference loaded, three exponents",
        QUADRATURE,
        0.0005,
    );
    let mut report = Row::relative(
        "Thrust and greatest roller load, line and point contact",
        Source::Published("NSK Technical Report E728g, 5.1"),
        0.003,
    );
    let rows = [
        (1.1, [0.2453, 0.3090, 1.2595, 4.0766]),
        (10.0 / 9.0, [0.2448, 0.3080, 1.2580, 4.0850]),
        (1.5, [0.2288, 0.2782, 1.2158, 4.3701]),
    ];
    for (exponent, [radial, axial, thrust, greatest]) in rows {
        let zone = load_zone(0.5, exponent);
        let place = |what: &str| format!("t={exponent:.4} {what}");
        integrals.near(place("J_r"), zone.radial, radial);
        integrals.near(place("J_a"), zone.axial, axial);
        integrals.near(place("F_a/(F_r tan α)"), zone.axial / zone.radial, thrust);
        integrals.near(place("Q_max Z cos α/F_r"), 1.0 / zone.radial, greatest);
    }
    let line = load_zone(0.5, 1.1);
    report.near("line contact 1.260", line.axial / line.radial, 1.260);
    report.near("line contact 4.08", 1.0 / line.radial, 4.08);
    let point = load_zone(0.5, 1.5);
    report.near("point contact 1.216", point.axial / point.radial, 1.216);
    report.near("point contact 4.37", 1.0 / point.radial, 4.37);
    vec![integrals, report]
}

/// Discrete rollers, no clearance.
fn s5_discrete_rollers() -> Vec<Row> {
    let mut row = Row::relative(
        "Greatest roller load with 17, 40 and 100 rollers, no clearance",
        Source::Second("routine fcylrolbear of the Python package tribology 0.4.5 (DIN 26281)"),
        0.002,
    );
    for (rollers, want) in [(17, 4.088), (40, 4.085), (100, 4.085)] {
        row.near(format_args!("Z={rollers}"), greatest_roller_share(rollers), want);
    }
    vec![row]
}

/// Other zones, line contact with t = 1.1 (same as Harris's table, from memory): J_r, J_a, F_r tan α/F_a.
fn s6_other_zones() -> Vec<Row> {
    let mut row = Row::relative(
        "Load zone integrals of four other zones (as in Harris's table, from memory)",
        QUADRATURE,
        0.005,
    );
    let rows = [
        (0.2, [0.1736, 0.1885, 0.9212]),
        (1.0, [0.2523, 0.4817, 0.5238]),
        (1.67, [0.1586, 0.6796, 0.2333]),
        (5.0, [0.0544, 0.8909, 0.0611]),
    ];
    for (share, [radial, axial, slope]) in rows {
        let zone = load_zone(share, 1.1);
        row.near(format_args!("ε={share} J_r"), zone.radial, radial);
        row.near(format_args!("ε={share} J_a"), zone.axial, axial);
        row.near(format_args!("ε={share} F_r tan α/F_a"), zone.radial / zone.axial, slope);
    }
    vec![row]
}

checks![s4_half_the_circumference, s5_discrete_rollers, s6_other_zones,];
