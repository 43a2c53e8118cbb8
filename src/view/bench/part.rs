//! Parts of an axle that a hand can point at.

use crate::axle::{DepthShim, Layout, SideSetting};
use crate::words::say;

/// A part of an axle, or a place at the bench. Operations are offered by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum AxlePart {
    /// Ring gear.
    RingGear,
    /// Pinion.
    Pinion,
    /// Bearing next to the pinion's teeth.
    HeadBearing,
    /// Depth shim.
    DepthShim,
    /// Collapsible or solid spacer.
    Spacer,
    /// Bearing next to the flange.
    TailBearing,
    /// Seal.
    Seal,
    /// Nut and flange.
    Nut,
    /// Bolt-on cartridge.
    Cartridge,
    /// Carrier with its bearings.
    Carrier,
    /// Shim or adjuster on the side of the teeth.
    ToothSide,
    /// Shim or adjuster behind the ring gear.
    BackSide,
    /// Bearing caps.
    Caps,
    /// Case.
    Case,
    /// Shim kit.
    Kit,
    /// Painted plates beside the bench.
    Plates,
    /// The axle as a whole.
    Axle,
}

impl AxlePart {
    /// All of them, in the order in which they are offered.
    pub const ALL: [Self; 17] = [
        Self::Axle,
        Self::RingGear,
        Self::Pinion,
        Self::HeadBearing,
        Self::DepthShim,
        Self::Spacer,
        Self::TailBearing,
        Self::Seal,
        Self::Nut,
        Self::Cartridge,
        Self::Carrier,
        Self::ToothSide,
        Self::BackSide,
        Self::Caps,
        Self::Case,
        Self::Kit,
        Self::Plates,
    ];

    /// What it is called on this layout.
    pub fn label(self, layout: Layout, depth_shim: DepthShim) -> String {
        let shims = layout.side_setting() == SideSetting::Shims;
        match self {
            Self::RingGear => say!("work-part-ring-gear"),
            Self::Pinion => say!("work-part-pinion"),
            Self::HeadBearing => say!("work-part-head-bearing"),
            Self::DepthShim => match depth_shim {
                DepthShim::Head => say!("work-part-head-shim"),
                DepthShim::Cup => say!("work-part-cup-shim"),
                DepthShim::Cartridge => say!("work-part-cartridge-shim"),
            },
            Self::Spacer if layout.has_sleeve() => say!("work-part-crush-spacer"),
            Self::Spacer => say!("work-part-solid-spacer"),
            Self::TailBearing => say!("work-part-tail-bearing"),
            Self::Seal => say!("work-part-seal"),
            Self::Nut => say!("work-part-nut"),
            Self::Cartridge => say!("work-part-cartridge"),
            Self::Carrier => say!("work-part-carrier"),
            Self::ToothSide if shims => say!("work-part-tooth-side-shim"),
            Self::BackSide if shims => say!("work-part-back-side-shim"),
            Self::ToothSide => say!("work-part-tooth-side-adjuster"),
            Self::BackSide => say!("work-part-back-side-adjuster"),
            Self::Caps => say!("work-part-caps"),
            Self::Case => say!("work-part-housing"),
            Self::Kit => say!("work-part-kit"),
            Self::Plates => say!("work-part-plates"),
            Self::Axle => say!("work-part-axle"),
        }
    }
}
