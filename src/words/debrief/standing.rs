//! What was judged, and where it lies in its bands.

use crate::exercise::DepthFrom;
use crate::exercise::debrief::{Judged, Place, PrintAxis};
use crate::gear;
use crate::words::score::asked_for;

/// Name of what was judged.
pub fn name(what: Judged) -> String {
    match what {
        Judged::Depth(DepthFrom::Best) => "Depth, from the best place (+ too shallow)".to_owned(),
        Judged::Depth(DepthFrom::Found) => "Depth, from where it ran (+ too shallow)".to_owned(),
        Judged::Lash => "Lash, tightest place".to_owned(),
        Judged::Spread => "Lash, spread around the ring gear".to_owned(),
        Judged::Runout => "Face runout of the ring gear, at its teeth".to_owned(),
        Judged::PinionTorque => "Rotating torque, pinion alone".to_owned(),
        Judged::NutTorque => "Pinion nut stands at".to_owned(),
        Judged::SideTorque => "Side bearings add".to_owned(),
        Judged::Print(flank, axis) => {
            let print = match flank {
                gear::Side::Drive => "Drive print",
                gear::Side::Coast => "Coast print",
            };
            let way = match axis {
                PrintAxis::Along => "along the tooth (+ to the heel)",
                PrintAxis::Up => "up the tooth (+ to the top)",
            };
            format!("{print}, {way}")
        }
        Judged::Written(asked) => format!("Written down for {}", asked_for(asked)),
        Judged::Pack => "Thickness of the pack".to_owned(),
    }
}

/// A place in its bands: what the mark beside it says.
pub const fn place(place: Place) -> &'static str {
    match place {
        Place::Full => "inside",
        Place::Between => "near",
        Place::Off => "off",
    }
}

/// What a place in its bands is worth.
pub const fn worth(place: Place) -> &'static str {
    match place {
        Place::Full => "full marks",
        Place::Between => "some marks",
        Place::Off => "no marks",
    }
}
