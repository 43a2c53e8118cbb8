//! What was changed for a build.

use super::period::Period;
use crate::bench::{Bench, CarrierSide, Cleaned, Operation, Part, Ring, ShimPlace};
use crate::exercise::attempt::Attempt;

/// Something that was changed since the build before.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// A pack lies where none lay.
    ShimsIn {
        /// Where.
        place: ShimPlace,
        /// Sum of its labels, mm.
        labelled_mm: f64,
    },
    /// A pack was taken out.
    ShimsOut {
        /// Where.
        place: ShimPlace,
    },
    /// A pack was made up anew.
    ShimsBy {
        /// Where.
        place: ShimPlace,
        /// By how much its labels have grown, mm; negative: thinner.
        labelled_mm: f64,
    },
    /// An adjuster stands elsewhere.
    Adjuster {
        /// Which one.
        side: CarrierSide,
        /// In sum; positive screws it in.
        notches: f64,
    },
    /// The pinion nut was brought to a torque.
    NutTightened {
        /// What the wrench was set to.
        torque_nm: f64,
    },
    /// The pinion nut was turned by angles.
    NutTurned {
        /// Their sum.
        angle_deg: f64,
        /// How many there were.
        steps: u32,
    },
    /// A new spacer.
    NewSpacer,
    /// A new pinion nut.
    NewNut,
    /// A new pinion seal.
    NewSeal,
    /// Another part from the shelf.
    NewPart {
        /// Which.
        part: Part,
    },
    /// The ring gear was drawn on.
    WheelFitted {
        /// Whether crosswise; else round the circle.
        crosswise: bool,
    },
    /// Ring gear and carrier were cleaned where they meet.
    WheelSeatCleaned,
    /// A ring was pressed on.
    Pressed {
        /// Which.
        ring: Ring,
    },
    /// The caps were put on in each other's place.
    CapsSwapped,
    /// A part was said to be beyond setting right.
    Condemned {
        /// Which.
        part: Part,
    },
}

/// All of a build, packs and adjusters first; `now` and `before` are the benches at its end and at that of the build before.
pub(super) fn changes(attempt: &Attempt, now: &Bench, before: &Bench, span: Period) -> Vec<Change> {
    let mut all: Vec<Change> = ShimPlace::ALL
        .into_iter()
        .filter_map(|place| of_pack(now, before, place))
        .collect();
    let mut plain: Vec<Change> = Vec::new();
    let [mut tooth, mut back] = [0.0; 2];
    let (mut turned_deg, mut steps) = (0.0, 0_u32);
    for step in span.done(attempt) {
        match &step.operation {
            Operation::TurnAdjuster { side, notches } => match side {
                CarrierSide::Tooth => tooth += notches,
                CarrierSide::Back => back += notches,
            },
            Operation::TurnNut { angle_deg, .. } => {
                turned_deg += angle_deg;
                steps += 1;
            }
            other => plain.extend(of_operation(other)),
        }
    }
    for (side, notches) in [(CarrierSide::Tooth, tooth), (CarrierSide::Back, back)] {
        let notches: f64 = notches;
        if notches.abs() > 1e-9 {
            all.push(Change::Adjuster { side, notches });
        }
    }
    if steps > 0 {
        plain.push(Change::NutTurned {
            angle_deg: turned_deg,
            steps,
        });
    }
    for change in plain {
        if !all.contains(&change) {
            all.push(change);
        }
    }
    all
}

fn of_pack(now: &Bench, before: &Bench, place: ShimPlace) -> Option<Change> {
    let labels = |bench: &Bench| -> f64 {
        let kit = &bench.setting().kit;
        let pieces = bench.packs().at(place).iter();
        pieces.filter_map(|&k| kit.get(k)).map(|p| p.labelled_mm).sum()
    };
    let [lay, lies] = [before, now].map(|bench| !bench.packs().at(place).is_empty());
    if lies && !lay {
        let labelled_mm = labels(now);
        Some(Change::ShimsIn { place, labelled_mm })
    } else if lay && !lies {
        Some(Change::ShimsOut { place })
    } else if now.packs().at(place) != before.packs().at(place) {
        let labelled_mm = labels(now) - labels(before);
        Some(Change::ShimsBy { place, labelled_mm })
    } else {
        None
    }
}

/// What one operation changes by itself; none for what only looks, moves things about or comes off and goes on again.
fn of_operation(operation: &Operation) -> Option<Change> {
    match operation {
        Operation::TightenNut { torque_nm, .. } => Some(Change::NutTightened { torque_nm: *torque_nm }),
        Operation::FitSpacer { new: true, .. } => Some(Change::NewSpacer),
        Operation::FitNut { new: true } => Some(Change::NewNut),
        Operation::FitSeal {} => Some(Change::NewSeal),
        Operation::Replace { part } if *part != Part::RingBolts => Some(Change::NewPart { part: *part }),
        Operation::FitWheel { crosswise, .. } => Some(Change::WheelFitted { crosswise: *crosswise }),
        Operation::Clean {
            what: Cleaned::WheelSeat,
            ..
        } => Some(Change::WheelSeatCleaned),
        Operation::Press { ring, .. } => Some(Change::Pressed { ring: *ring }),
        Operation::FitCaps { as_marked: false } => Some(Change::CapsSwapped),
        Operation::Condemn { part, .. } => Some(Change::Condemned { part: *part }),
        Operation::Measure { .. }
        | Operation::CompareNumbers {}
        | Operation::TakeApart { .. }
        | Operation::FitShims { .. }
        | Operation::RemoveShims { .. }
        | Operation::PullOff { .. }
        | Operation::FitSetUpBearings {}
        | Operation::RemoveSetUpBearings {}
        | Operation::FitSpacer { .. }
        | Operation::RemoveSpacer {}
        | Operation::InsertPinion {}
        | Operation::RemovePinion {}
        | Operation::RemoveSeal {}
        | Operation::FitNut { .. }
        | Operation::RemoveNut { .. }
        | Operation::TurnNut { .. }
        | Operation::BoltCartridge {}
        | Operation::UnboltCartridge {}
        | Operation::HeatWheel { .. }
        | Operation::Wait { .. }
        | Operation::RemoveWheel {}
        | Operation::TightenRingBolts { .. }
        | Operation::SetCarrierIn { .. }
        | Operation::LiftCarrierOut { .. }
        | Operation::SpreadCase { .. }
        | Operation::ReleaseSpreader {}
        | Operation::FitCaps { .. }
        | Operation::TightenCaps { .. }
        | Operation::LoosenCaps {}
        | Operation::RemoveCaps {}
        | Operation::TurnAdjuster { .. }
        | Operation::FitLock { .. }
        | Operation::RemoveLock { .. }
        | Operation::Turn { .. }
        | Operation::Push { .. }
        | Operation::Clean { .. }
        | Operation::BrushPaste { .. }
        | Operation::Roll { .. }
        | Operation::Replace { .. }
        | Operation::Note { .. }
        | Operation::Predict { .. }
        | Operation::JudgePlate { .. }
        | Operation::Hint { .. }
        | Operation::Finish {} => None,
    }
}
