//! Timken catalogue p. 28–31 and Engineering Manual p. 121: what fits and heat do to the setting.

use lashwright::bearing::setting::{
    Mounting, Seat, lost_by_cone_fit_mm, lost_by_cup_fit_mm, lost_by_warm_shaft_mm, neutral_spread_mm,
};

use super::super::guide::{Row, Source, checks};

const MANUAL: Source = Source::Second("formulas of the Timken catalogue, p. 28–31, and manual, p. 121, in Python");

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

/// 0.001 in of interference closes the pair by 27.4 µm. US Army TM 5-4210-220-34 tells to use a spacer 0.001 in
/// longer "to offset bearing growth when pressed on".
fn p17_cone_growth() -> Vec<Row> {
    let mut formula = Row::relative("Setting lost by 0.025 mm of cone interference", MANUAL, 0.005);
    let mut rule = Row::relative(
        "The same against a spacer 0.001 in longer \"to offset bearing growth\"",
        Source::Published("US Army TM 5-4210-220-34"),
        0.25,
    );
    let mut cup_row = Row::relative(
        "The same of a cup in a heavy housing",
        Source::Second("the catalogue's cup formula, written out"),
        1e-12,
    );
    let lost = 1e3 * lost_by_cone_fit_mm(1.07, 41.275, 51.6, 0.025);
    formula.near("µm", lost, 27.4);
    rule.near("µm", lost, 25.4);
    // A cup in a heavy housing closes it likewise.
    let cup = 1e3 * lost_by_cup_fit_mm(PINION[0], 82.55, 0.025);
    cup_row.near("µm", cup, 0.5 * 1.07 / 0.39 * 75.0 / 82.55 * 25.0);
    vec![formula, rule, cup_row]
}

/// Shaft 10 K warmer than the housing.
fn p18_warm_shaft() -> Vec<Row> {
    let mut row = Row::relative("Setting lost by a shaft 10 K warmer, pinion and carrier", MANUAL, 0.001);
    let pinion = 1e3 * lost_by_warm_shaft_mm(PINION, Mounting::Indirect, 80.0, 10.0);
    row.near("pinion, µm", pinion, 12.95);
    let side = Seat {
        rating_ratio_k: 1.46,
        cup_raceway_diameter_mm: 67.0,
    };
    let carrier = 1e3 * lost_by_warm_shaft_mm([side, side], Mounting::Direct, 180.0, 10.0);
    row.near("carrier, µm", carrier, 51.70);
    vec![row]
}

/// The spread at which heat does nothing.
fn p19_neutral_spread() -> Vec<Row> {
    let mut row = Row::relative("Spread at which heat does nothing", MANUAL, 0.001);
    let mut nothing = Row::absolute(
        "What heat does at that spread",
        Source::Law("the definition of the neutral spread"),
        1e-12,
        "mm",
    );
    row.near("mm", neutral_spread_mm(PINION), 187.9);
    let none = lost_by_warm_shaft_mm(PINION, Mounting::Indirect, neutral_spread_mm(PINION), 10.0);
    nothing.near("10 K", none, 0.0);
    vec![row, nothing]
}

checks![p17_cone_growth, p18_warm_shaft, p19_neutral_spread,];
