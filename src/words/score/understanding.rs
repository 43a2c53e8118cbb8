//! Why points of the understanding were lost.

use crate::bench::Predicted;
use crate::exercise::score::reason::{PlateNeeds, UnderstandingReason};
use crate::quantity::{number, signed};
use crate::words::bench::plate_number;

pub(super) fn words(reason: &UnderstandingReason) -> String {
    match reason {
        UnderstandingReason::NothingToPredict {} => {
            "0 changes were looked at again, so nothing could be predicted: look \
                                                     before a change and after it, and say in between what will come."
                .to_owned()
        }
        UnderstandingReason::NotPredicted { operation } => format!(
            "Operation {operation} looked at a change that nobody had predicted: that counts as 1/3 for each outcome. Say \
             what will come before looking."
        ),
        UnderstandingReason::Predicted {
            operation,
            chance,
            about: what,
            change: by,
        } => format!(
            "Operation {operation} gave {} % to what came: {} changed by {}.",
            number(100.0 * chance, 0),
            about(*what),
            change(*what, *by)
        ),
        UnderstandingReason::Plate {
            plate,
            needs: what,
            chance,
        } => format!(
            "Plate {} needs {}, and {} % was given to that.",
            plate_number(*plate),
            plate_needs(*what),
            number(100.0 * chance, 0)
        ),
    }
}

/// What the pinion of a painted plate needs.
pub fn plate_needs(needs: PlateNeeds) -> &'static str {
    match needs {
        PlateNeeds::Deeper => "to come deeper",
        PlateNeeds::Nothing => "nothing",
        PlateNeeds::Shallower => "to stand shallower",
    }
}

fn about(about: Predicted) -> &'static str {
    match about {
        Predicted::Lash => "lash",
        Predicted::PinionTorque => "the torque at the nut",
        Predicted::DriveLength => "the drive print's place along the tooth",
        Predicted::DriveHeight => "the drive print's height",
        Predicted::CoastLength => "the coast print's place along the tooth",
        Predicted::CoastHeight => "the coast print's height",
    }
}

fn change(about: Predicted, by: f64) -> String {
    match about {
        Predicted::Lash => format!("{} mm", signed(by, 3)),
        Predicted::PinionTorque => format!("{} %", signed(100.0 * by, 0)),
        Predicted::DriveLength | Predicted::DriveHeight | Predicted::CoastLength | Predicted::CoastHeight => {
            format!("{} of half a tooth", signed(by, 2))
        }
    }
}
