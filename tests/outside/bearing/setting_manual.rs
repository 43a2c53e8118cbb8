//! Timken catalogue p. 28–31 and Engineering Manual p. 121: what fits and heat do to the setting; rows P17 to P19.

use lashwright::bearing::setting::{
    Mounting, Seat, lost_by_cone_fit_mm, lost_by_cup_fit_mm, lost_by_warm_shaft_mm, neutral_spread_mm,
};

use super::check;

const PINION: [Seat; 2] = [
    Seat {
        rating_ratio_k: 1.07,
        cup_raceway_diameter_mm: 75.0,
    },
    Seat {
        rating_ratio_k: 1.07,
        cup_raceway_diameter_mm: 62.0,
    },
];

/// P17: 0.001 in of interference closes the pair by 27.4 µm. US Army TM 5-4210-220-34 tells to use a spacer 0.001 in
/// longer "to offset bearing growth when pressed on".
#[test]
fn p17_cone_growth() {
    let lost = 1e3 * lost_by_cone_fit_mm(1.07, 41.275, 51.6, 0.025);
    check("P17 formula, µm", lost, 27.4, 0.005);
    check("P17 army rule, µm", lost, 25.4, 0.25);
    // A cup in a heavy housing closes it likewise.
    let cup = 1e3 * lost_by_cup_fit_mm(PINION[0], 82.55, 0.025);
    check(
        "cup in a heavy housing, µm",
        cup,
        0.5 * 1.07 / 0.39 * 75.0 / 82.55 * 25.0,
        1e-12,
    );
}

/// P18: shaft 10 K warmer than the housing.
#[test]
fn p18_warm_shaft() {
    let pinion = 1e3 * lost_by_warm_shaft_mm(PINION, Mounting::Indirect, 80.0, 10.0);
    check("P18 pinion, µm", pinion, 12.95, 0.001);
    let side = Seat {
        rating_ratio_k: 1.46,
        cup_raceway_diameter_mm: 67.0,
    };
    let carrier = 1e3 * lost_by_warm_shaft_mm([side, side], Mounting::Direct, 180.0, 10.0);
    check("P18 carrier, µm", carrier, 51.70, 0.001);
}

/// P19: the spread at which heat does nothing.
#[test]
fn p19_neutral_spread() {
    check("P19", neutral_spread_mm(PINION), 187.9, 0.001);
    let none = lost_by_warm_shaft_mm(PINION, Mounting::Indirect, neutral_spread_mm(PINION), 10.0);
    assert!(none.abs() < 1e-12, "no effect there: {none}");
}
