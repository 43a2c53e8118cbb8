//! Minutes and money.

use super::kind::OperationKind;
use super::part::Part;

/// Usual price of a part, in a currency of this world.
const fn usual_price(part: Part) -> f64 {
    match part {
        Part::Sleeve => 9.0,
        Part::SolidSpacer => 24.0,
        Part::Nut => 5.0,
        Part::Seal => 14.0,
        Part::PinionBearings => 96.0,
        Part::SideBearings => 88.0,
        Part::RingBolts => 22.0,
        Part::Gears => 480.0,
        Part::Case => 900.0,
        Part::Carrier => 350.0,
    }
}

/// What things take and cost in an exercise.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Tariff {
    /// Minutes that differ from the usual, by operation.
    pub minutes: Vec<(OperationKind, f64)>,
    /// Prices that differ from the usual.
    pub prices: Vec<(Part, f64)>,
}

impl Tariff {
    /// Operations that take time of their own.
    pub fn operations() -> impl Iterator<Item = OperationKind> {
        OperationKind::ALL
            .iter()
            .copied()
            .filter(|kind| kind.usual_minutes() > 0.0)
    }

    /// Minutes of an operation.
    pub fn minutes_of(&self, kind: OperationKind) -> f64 {
        let own = self.minutes.iter().find(|(k, _)| *k == kind);
        own.map_or_else(|| kind.usual_minutes(), |(_, minutes)| *minutes)
    }

    /// Price of a part.
    pub fn price_of(&self, part: Part) -> f64 {
        let own = self.prices.iter().find(|(p, _)| *p == part);
        own.map_or_else(|| usual_price(part), |(_, price)| *price)
    }
}
