//! Gear oil over temperature (ASTM D341, recomputed) and SAE J306 grades; seal drag (ISO 14179-2, read second hand).

use lashwright::bearing::oil::Oil;
use lashwright::bearing::seal::{drag_from_lip_load_nm, drag_nm};

use super::super::guide::{Row, Source, checks};

const OIL_80W90: Oil = Oil {
    viscosity_40_mm2_s: 140.0,
    viscosity_100_mm2_s: 14.5,
};
const OIL_75W90: Oil = Oil {
    viscosity_40_mm2_s: 105.0,
    viscosity_100_mm2_s: 15.5,
};

/// Both oils at the temperatures of a shop and an axle.
fn walther_between_and_around_two_points() -> Vec<Row> {
    let mut row = Row::printed(
        "Viscosity of two gear oils at 20 to 80 °C",
        Source::Second("ASTM D341 (Walther), in Python"),
        1.0,
        0.001,
        "mm²/s",
    );
    let mut given = Row::relative(
        "The two given points come back",
        Source::Law("two points fix Walther's line"),
        1e-12,
    );
    for (t, want) in [(20.0, 489.0), (25.0, 346.0), (30.0, 250.0), (60.0, 54.0), (80.0, 26.0)] {
        row.near(format_args!("80W-90 at {t} °C"), OIL_80W90.viscosity_mm2_s(t), want);
    }
    for (t, want) in [(20.0, 286.0), (25.0, 217.0), (40.0, 105.0), (80.0, 26.0)] {
        row.near(format_args!("75W-90 at {t} °C"), OIL_75W90.viscosity_mm2_s(t), want);
    }
    given.near("40 °C", OIL_80W90.viscosity_mm2_s(40.0), 140.0);
    given.near("100 °C", OIL_80W90.viscosity_mm2_s(100.0), 14.5);
    vec![row, given]
}

/// SAE J306 (2019): limits at 100 °C belong to the thicker grade.
fn grades_of_j306() -> Vec<Row> {
    let mut row = Row::stated(
        "Grades at their limits at 100 °C",
        Source::Published("SAE J306 (2019), charts"),
        "equal",
    );
    let grade = |at_100: f64| {
        Oil {
            viscosity_40_mm2_s: 500.0,
            viscosity_100_mm2_s: at_100,
        }
        .grade()
    };
    for (at_100, want) in [
        (6.4, None),
        (6.5, Some("75")),
        (8.49, Some("75")),
        (8.5, Some("80")),
        (11.0, Some("85")),
        (13.5, Some("90")),
        (14.5, Some("90")),
        (18.5, Some("110")),
        (24.0, Some("140")),
        (32.5, Some("190")),
        (41.0, None),
    ] {
        row.is(format_args!("{at_100} mm²/s: {want:?}"), grade(at_100) == want);
    }
    vec![row]
}

/// Drag of a seal at four diameters, and from the load of its lip (values from memory).
fn seal_drag() -> Vec<Row> {
    let mut drags = Row::printed(
        "Drag of a seal on 35 to 50 mm",
        Source::Second("ISO 14179-2's form, read second hand, in Python"),
        0.001,
        0.0007,
        "N·m",
    );
    let mut power = Row::relative(
        "The same from the loss of power",
        Source::Published("ISO 14179-2, read second hand"),
        0.001,
    );
    let mut lip = Row::relative(
        "Drag of a seal on 45 mm from the load of its lip",
        Source::Memory("lip load and friction of rotary seals"),
        0.01,
    );
    for (d, want) in [(35.0, 0.090), (40.0, 0.117), (45.0, 0.149), (50.0, 0.184)] {
        // The constant 7.34e-5 itself is printed with three digits.
        drags.near(format_args!("d={d}"), drag_nm(d), want);
    }
    // The printed loss formula P = 7.69e-6 d² n gives the same torque to the three digits of its constant.
    power.near(
        "d=45",
        drag_nm(45.0),
        7.69e-6 * 45.0 * 45.0 * 60.0 / std::f64::consts::TAU,
    );
    lip.near("d=45", drag_from_lip_load_nm(45.0, 0.1, 0.3), 0.095);
    vec![drags, power, lip]
}

checks![walther_between_and_around_two_points, grades_of_j306, seal_drag,];
