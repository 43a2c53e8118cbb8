//! Why points of the understanding were lost.

use super::shared::flank;
use crate::bench::Predicted;
use crate::exercise::score::reason::{PlateNeeds, UnderstandingReason};
use crate::gear::Side;
use crate::quantity::number;
use crate::words::bench::plate_number;
use crate::words::debrief::amount::both;
use crate::words::say;

pub(super) fn words(reason: &UnderstandingReason) -> String {
    match reason {
        UnderstandingReason::NothingToPredict {} => say!("score-nothing-to-predict"),
        UnderstandingReason::NotPredicted { operation } => say!("score-not-predicted", operation = *operation),
        UnderstandingReason::Predicted {
            operation,
            chance,
            about,
            change: by,
        } => say!(
            "score-predicted",
            operation = *operation,
            chance = number(100.0 * chance, 0),
            change = change(*about, *by)
        ),
        UnderstandingReason::Plate { plate, needs, chance } => say!(
            "score-plate",
            plate = plate_number(*plate),
            needs = match needs {
                PlateNeeds::Deeper => "deeper",
                PlateNeeds::Nothing => "nothing",
                PlateNeeds::Shallower => "shallower",
            },
            chance = number(100.0 * chance, 0)
        ),
    }
}

/// What changed, which way and by how much: a clause.
fn change(about: Predicted, by: f64) -> String {
    let way = if by < 0.0 { "down" } else { "up" };
    let length = |side: Side| {
        say!(
            "score-change-length",
            flank = flank(side),
            way = way,
            by = number(by.abs(), 2)
        )
    };
    let height = |side: Side| {
        say!(
            "score-change-height",
            flank = flank(side),
            way = way,
            by = number(by.abs(), 2)
        )
    };
    match about {
        Predicted::Lash => say!("score-change-lash", way = way, by = both(by.abs())),
        Predicted::PinionTorque => say!("score-change-torque", way = way, by = number(100.0 * by.abs(), 0)),
        Predicted::DriveLength => length(Side::Drive),
        Predicted::CoastLength => length(Side::Coast),
        Predicted::DriveHeight => height(Side::Drive),
        Predicted::CoastHeight => height(Side::Coast),
    }
}
