//! What was judged, and where it lies in its bands.

use crate::exercise::DepthFrom;
use crate::exercise::debrief::{Judged, Place, PrintAxis};
use crate::gear::Side;
use crate::words::say;
use crate::words::score::asked_for;

/// Name of what was judged.
pub fn name(what: Judged) -> String {
    match what {
        Judged::Depth(DepthFrom::Best) => say!("debrief-judged-depth-best"),
        Judged::Depth(DepthFrom::Found) => say!("debrief-judged-depth-found"),
        Judged::Lash => say!("debrief-judged-lash"),
        Judged::Spread => say!("debrief-judged-spread"),
        Judged::Runout => say!("debrief-judged-runout"),
        Judged::PinionTorque => say!("debrief-judged-pinion-torque"),
        Judged::NutTorque => say!("debrief-judged-nut-torque"),
        Judged::SideTorque => say!("debrief-judged-side-torque"),
        Judged::Print(Side::Drive, PrintAxis::Along) => say!("debrief-judged-drive-length"),
        Judged::Print(Side::Drive, PrintAxis::Up) => say!("debrief-judged-drive-height"),
        Judged::Print(Side::Coast, PrintAxis::Along) => say!("debrief-judged-coast-length"),
        Judged::Print(Side::Coast, PrintAxis::Up) => say!("debrief-judged-coast-height"),
        Judged::Written(asked) => say!("debrief-judged-written", quantity = asked_for(asked)),
        Judged::Pack => say!("debrief-judged-pack"),
    }
}

/// A place in its bands: what the mark beside it says.
pub fn place(place: Place) -> String {
    match place {
        Place::Full => say!("debrief-place-full"),
        Place::Between => say!("debrief-place-between"),
        Place::Off => say!("debrief-place-off"),
    }
}

/// What a place in its bands is worth.
pub fn worth(place: Place) -> String {
    match place {
        Place::Full => say!("debrief-worth-full"),
        Place::Between => say!("debrief-worth-between"),
        Place::Off => say!("debrief-worth-off"),
    }
}
