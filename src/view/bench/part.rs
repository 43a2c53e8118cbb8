//! Parts of an axle that a hand can point at.

use crate::axle::{DepthShim, Layout, SideSetting};

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
    pub fn label(self, layout: Layout, depth_shim: DepthShim) -> &'static str {
        let shims = layout.side_setting() == SideSetting::Shims;
        match self {
            Self::RingGear => "Ring gear",
            Self::Pinion => "Pinion",
            Self::HeadBearing => "Head bearing",
            Self::DepthShim => match depth_shim {
                DepthShim::Head => "Head shim",
                DepthShim::Cup => "Cup shim",
                DepthShim::Cartridge => "Cartridge shim",
            },
            Self::Spacer if layout.has_sleeve() => "Collapsible spacer",
            Self::Spacer => "Solid spacer",
            Self::TailBearing => "Tail bearing",
            Self::Seal => "Seal",
            Self::Nut => "Nut and flange",
            Self::Cartridge => "Cartridge",
            Self::Carrier => "Carrier",
            Self::ToothSide if shims => "Side shim, teeth",
            Self::BackSide if shims => "Side shim, back",
            Self::ToothSide => "Adjuster, teeth",
            Self::BackSide => "Adjuster, back",
            Self::Caps => "Caps",
            Self::Case => "Case",
            Self::Kit => "Shim kit",
            Self::Plates => "Painted plates",
            Self::Axle => "Whole axle",
        }
    }
}
