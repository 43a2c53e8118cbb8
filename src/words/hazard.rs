//! Hazards in words: what it is, what it does, what to wear or do.

use crate::bench::Hazard;
use crate::words::say;

/// The warning that stands beside the work.
pub fn hazard(of: Hazard) -> String {
    match of {
        Hazard::TurningGears => say!("hazard-turning-gears"),
        Hazard::Solvent => say!("hazard-solvent"),
        Hazard::Puller => say!("hazard-puller"),
        Hazard::RingUnderPress => say!("hazard-ring-under-press"),
        Hazard::Splinters => say!("hazard-splinters"),
        Hazard::AirSpunBearing => say!("hazard-air-spun-bearing"),
        Hazard::HeavyPart => say!("hazard-heavy-part"),
        Hazard::SpreadHousing => say!("hazard-spread-housing"),
        Hazard::NutReaction => say!("hazard-nut-reaction"),
        Hazard::MultiplierArm => say!("hazard-multiplier-arm"),
        Hazard::BoltTorque => say!("hazard-bolt-torque"),
        Hazard::HotRingGear => say!("hazard-hot-ring-gear"),
        Hazard::Grinding => say!("hazard-grinding"),
        Hazard::MarkingCompound => say!("hazard-marking-compound"),
        Hazard::SharpShims => say!("hazard-sharp-shims"),
        Hazard::SharpEdges => say!("hazard-sharp-edges"),
    }
}
