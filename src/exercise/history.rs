//! What happened in an attempt, moment by moment, with the true state behind it: for scoring, never for a trainee.

use crate::axle::{Turning, resistance};
use crate::bench::{Bench, Measurand, Operation, ShimPlace, WorkGroup};
use crate::contact::Placement;

/// What an operation was, as far as a score asks.
#[derive(Debug, Clone, PartialEq)]
pub enum Deed {
    /// Nothing yet: the attempt begins.
    Begin,
    /// Something was read.
    Looked {
        /// What.
        what: Measurand,
        /// With which instrument.
        instrument: String,
    },
    /// Painted teeth were rolled.
    Rolled,
    /// The depth shim was changed.
    Depth,
    /// Bearings, spacer, seal or nut of the pinion.
    Pinion,
    /// Carrier, side shims or adjusters, caps.
    Side,
    /// The wheel on its carrier.
    Wheel,
    /// Anything else.
    Other,
}

impl Deed {
    fn of(operation: &Operation) -> Self {
        match operation.kind().group() {
            WorkGroup::Looks => match operation {
                Operation::Measure { what, instrument, .. } => Self::Looked {
                    what: *what,
                    instrument: instrument.clone(),
                },
                _ => Self::Other,
            },
            WorkGroup::Rolls => Self::Rolled,
            WorkGroup::Shims => match operation {
                Operation::FitShims { place, .. } | Operation::RemoveShims { place } => match place {
                    ShimPlace::Depth => Self::Depth,
                    ShimPlace::Spacer => Self::Pinion,
                    ShimPlace::ToothSide | ShimPlace::BackSide => Self::Side,
                },
                _ => Self::Other,
            },
            WorkGroup::Pinion => Self::Pinion,
            WorkGroup::Side => Self::Side,
            WorkGroup::Wheel => Self::Wheel,
            WorkGroup::Other => Self::Other,
        }
    }
}

/// The true state after an operation that was done.
#[derive(Debug, Clone, PartialEq)]
pub struct Moment {
    /// Number of the operation; 0 for the beginning.
    pub operation: u32,
    /// What it was.
    pub deed: Deed,
    /// Where the gears stand.
    pub placement: Option<Placement>,
    /// Where they stood when painted teeth were last rolled.
    pub rolled_at: Option<Placement>,
    /// Tear-downs so far.
    pub tear_downs: u32,
    /// Money so far.
    pub money: f64,
    /// Torque that keeps the pinion turning as it is now, with the side bearings where they are in, N m.
    pub rolling_nm: Option<f64>,
    /// Preload of the pinion's pair, N.
    pub pinion_preload_n: Option<f64>,
    /// Turns of the pinion since its bearings were last set.
    pub pinion_turns: f64,
    /// Torque that the pinion nut stands at, N m.
    pub nut_torque_nm: Option<f64>,
}

impl Moment {
    /// The beginning of an attempt.
    pub(super) fn begin(bench: &Bench) -> Self {
        Self::after(bench, Deed::Begin, None)
    }

    /// After an operation that was done.
    pub(super) fn next(bench: &Bench, operation: &Operation, before: Option<&Self>) -> Self {
        let deed = Deed::of(operation);
        let rolled_at = match deed {
            Deed::Rolled => bench.built().placement,
            Deed::Begin | Deed::Looked { .. } | Deed::Depth | Deed::Pinion | Deed::Side | Deed::Wheel | Deed::Other => {
                before.and_then(|b| b.rolled_at)
            }
        };
        Self::after(bench, deed, rolled_at)
    }

    fn after(bench: &Bench, deed: Deed, rolled_at: Option<Placement>) -> Self {
        let (axle, built) = (&bench.setting().axle, bench.built());
        Self {
            operation: bench.operations(),
            deed,
            placement: built.placement,
            rolled_at,
            tear_downs: bench.ledger().tear_downs,
            money: bench.ledger().money,
            rolling_nm: resistance(axle, bench.truth(), built, Turning::BY_HAND).map(|r| r.total_nm),
            pinion_preload_n: built.pinion.map(|p| p.tightened.preload_n),
            pinion_turns: bench.assembly().pinion_turns,
            nut_torque_nm: bench.nut_torque_nm(),
        }
    }
}
