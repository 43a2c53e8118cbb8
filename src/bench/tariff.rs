//! Minutes and money.

use super::part::Part;

/// Minutes that operations take, by name; what is not listed takes none. Judgement: common practice, no source.
const MINUTES: &[(&str, f64)] = &[
    ("measure", 3.0),
    ("compare_numbers", 1.0),
    ("fit_shims", 2.0),
    ("remove_shims", 1.0),
    ("press", 5.0),
    ("pull_off", 8.0),
    ("fit_set_up_bearings", 2.0),
    ("remove_set_up_bearings", 1.0),
    ("fit_spacer", 1.0),
    ("remove_spacer", 1.0),
    ("insert_pinion", 3.0),
    ("remove_pinion", 4.0),
    ("fit_seal", 3.0),
    ("remove_seal", 3.0),
    ("fit_nut", 3.0),
    ("remove_nut", 4.0),
    ("tighten_nut", 3.0),
    ("turn_nut", 1.5),
    ("bolt_cartridge", 5.0),
    ("unbolt_cartridge", 5.0),
    ("heat_wheel", 20.0),
    ("fit_wheel", 6.0),
    ("remove_wheel", 10.0),
    ("tighten_ring_bolts", 8.0),
    ("set_carrier_in", 4.0),
    ("lift_carrier_out", 4.0),
    ("spread_case", 4.0),
    ("release_spreader", 2.0),
    ("fit_caps", 3.0),
    ("tighten_caps", 3.0),
    ("loosen_caps", 2.0),
    ("remove_caps", 3.0),
    ("turn_adjuster", 1.0),
    ("fit_lock", 1.0),
    ("remove_lock", 1.0),
    ("turn", 1.0),
    ("push", 0.5),
    ("clean", 5.0),
    ("brush_paste", 3.0),
    ("roll", 3.0),
    ("replace", 1.0),
    ("condemn", 5.0),
    ("judge_plate", 1.0),
];

/// Prices in a currency of this world.
const PRICES: &[(Part, f64)] = &[
    (Part::Sleeve, 9.0),
    (Part::SolidSpacer, 24.0),
    (Part::Nut, 5.0),
    (Part::Seal, 14.0),
    (Part::PinionBearings, 96.0),
    (Part::SideBearings, 88.0),
    (Part::RingBolts, 22.0),
    (Part::Gears, 480.0),
    (Part::Case, 900.0),
    (Part::Carrier, 350.0),
];

/// What things take and cost in an exercise.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Tariff {
    /// Minutes that differ from the usual, by operation.
    pub minutes: Vec<(String, f64)>,
    /// Prices that differ from the usual.
    pub prices: Vec<(Part, f64)>,
}

impl Tariff {
    /// Names of the operations that take time.
    pub fn operations() -> impl Iterator<Item = &'static str> {
        MINUTES.iter().map(|(name, _)| *name)
    }

    /// Minutes of an operation.
    pub fn minutes_of(&self, operation: &str) -> f64 {
        let own = self.minutes.iter().find(|(name, _)| name == operation);
        let usual = || MINUTES.iter().find(|(name, _)| *name == operation);
        own.map(|(_, minutes)| *minutes)
            .or_else(|| usual().map(|(_, minutes)| *minutes))
            .unwrap_or(0.0)
    }

    /// Price of a part.
    pub fn price_of(&self, part: Part) -> f64 {
        let find = |prices: &[(Part, f64)]| prices.iter().find(|(p, _)| *p == part).map(|(_, price)| *price);
        find(&self.prices).or_else(|| find(PRICES)).unwrap_or(0.0)
    }
}
