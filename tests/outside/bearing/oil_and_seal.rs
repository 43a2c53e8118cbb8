//! Gear oil over temperature (ASTM D341, recomputed) and SAE J306 grades; seal drag (ISO 14179-2, read second hand).

use lashwright::bearing::oil::Oil;
use lashwright::bearing::seal::{drag_from_lip_load_nm, drag_nm};

use super::{check, check_printed};

const OIL_80W90: Oil = Oil {
    viscosity_40_mm2_s: 140.0,
    viscosity_100_mm2_s: 14.5,
};
const OIL_75W90: Oil = Oil {
    viscosity_40_mm2_s: 105.0,
    viscosity_100_mm2_s: 15.5,
};

/// Both oils at the temperatures of a shop and an axle.
#[test]
fn walther_between_and_around_two_points() {
    for (t, want) in [(20.0, 489.0), (25.0, 346.0), (30.0, 250.0), (60.0, 54.0), (80.0, 26.0)] {
        check_printed(
            &format!("80W-90 at {t} °C"),
            OIL_80W90.viscosity_mm2_s(t),
            want,
            1.0,
            0.001,
        );
    }
    for (t, want) in [(20.0, 286.0), (25.0, 217.0), (40.0, 105.0), (80.0, 26.0)] {
        check_printed(
            &format!("75W-90 at {t} °C"),
            OIL_75W90.viscosity_mm2_s(t),
            want,
            1.0,
            0.001,
        );
    }
    check(
        "the given point at 40 °C",
        OIL_80W90.viscosity_mm2_s(40.0),
        140.0,
        1e-12,
    );
    check(
        "the given point at 100 °C",
        OIL_80W90.viscosity_mm2_s(100.0),
        14.5,
        1e-12,
    );
}

/// SAE J306 (2019): limits at 100 °C belong to the thicker grade.
#[test]
fn grades_of_j306() {
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
        assert_eq!(grade(at_100), want, "{at_100} mm²/s at 100 °C");
    }
}

/// F16 at four diameters, and F17 (values from memory).
#[test]
fn seal_drag() {
    for (d, want) in [(35.0, 0.090), (40.0, 0.117), (45.0, 0.149), (50.0, 0.184)] {
        // The constant 7.34e-5 itself is printed with three digits.
        check_printed(&format!("F16 d={d}"), drag_nm(d), want, 0.001, 0.0007);
    }
    // The printed loss formula P = 7.69e-6 d² n gives the same torque to the three digits of its constant.
    check(
        "F16 from the power",
        drag_nm(45.0),
        7.69e-6 * 45.0 * 45.0 * 60.0 / std::f64::consts::TAU,
        0.001,
    );
    check("F17 d=45", drag_from_lip_load_nm(45.0, 0.1, 0.3), 0.095, 0.01);
}
