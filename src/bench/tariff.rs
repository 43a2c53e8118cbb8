//! Minutes and money.

use super::kind::OperationKind;
use super::part::Part;

/// Minutes that an operation usually takes. Judgement: common practice, no source. `take_apart` takes those of its steps, `wait`
/// what it says; what is only written or said takes none.
const fn usual_minutes(kind: OperationKind) -> f64 {
    use OperationKind as K;
    match kind {
        K::TakeApart | K::Wait | K::Note | K::Predict | K::Hint | K::Finish => 0.0,
        K::Push => 0.5,
        K::CompareNumbers
        | K::RemoveShims
        | K::RemoveSetUpBearings
        | K::FitSpacer
        | K::RemoveSpacer
        | K::TurnAdjuster
        | K::FitLock
        | K::RemoveLock
        | K::Turn
        | K::Replace
        | K::JudgePlate => 1.0,
        K::TurnNut => 1.5,
        K::FitShims | K::FitSetUpBearings | K::ReleaseSpreader | K::LoosenCaps => 2.0,
        K::Measure
        | K::InsertPinion
        | K::FitSeal
        | K::RemoveSeal
        | K::FitNut
        | K::TightenNut
        | K::FitCaps
        | K::TightenCaps
        | K::RemoveCaps
        | K::BrushPaste
        | K::Roll => 3.0,
        K::RemovePinion | K::RemoveNut | K::SetCarrierIn | K::LiftCarrierOut | K::SpreadCase => 4.0,
        K::Press | K::BoltCartridge | K::UnboltCartridge | K::Clean | K::Condemn => 5.0,
        K::FitWheel => 6.0,
        K::PullOff | K::TightenRingBolts => 8.0,
        K::RemoveWheel => 10.0,
        K::HeatWheel => 20.0,
    }
}

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
            .filter(|kind| usual_minutes(*kind) > 0.0)
    }

    /// Minutes of an operation.
    pub fn minutes_of(&self, kind: OperationKind) -> f64 {
        let own = self.minutes.iter().find(|(k, _)| *k == kind);
        own.map_or_else(|| usual_minutes(kind), |(_, minutes)| *minutes)
    }

    /// Price of a part.
    pub fn price_of(&self, part: Part) -> f64 {
        let own = self.prices.iter().find(|(p, _)| *p == part);
        own.map_or_else(|| usual_price(part), |(_, price)| *price)
    }
}
