//! How axles of this world are put together.

/// A way of building an axle. What follows from it stands in the tables of [`super::Chain`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Layout {
    /// One-piece housing, head or cup shim, collapsible spacer, side shims.
    A,
    /// Bolt-on cartridge with a cartridge shim, solid spacer with shims, threaded side adjusters with locks.
    B,
    /// One-piece housing, cup shim, solid spacer with shims, threaded side adjusters with locks.
    C,
}

/// Where the depth shim lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum DepthShim {
    /// Between the pinion's head and the cone of the head bearing.
    Head,
    /// Under the cup of the head bearing.
    Cup,
    /// Between the cartridge and the case.
    Cartridge,
}

/// What sets the side bearings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum SideSetting {
    /// Packs of shims between bearing and case.
    Shims,
    /// Threaded rings with locks.
    Adjusters,
}

impl Layout {
    /// All layouts.
    pub const ALL: [Self; 3] = [Self::A, Self::B, Self::C];

    /// The letter.
    pub fn name(self) -> &'static str {
        match self {
            Self::A => "A",
            Self::B => "B",
            Self::C => "C",
        }
    }

    /// The layout of this letter.
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|l| l.name() == name)
    }

    /// Places in which this layout can have its depth shim; the first is the usual one.
    pub fn depth_shims(self) -> &'static [DepthShim] {
        match self {
            Self::A => &[DepthShim::Head, DepthShim::Cup],
            Self::B => &[DepthShim::Cartridge],
            Self::C => &[DepthShim::Cup],
        }
    }

    /// Whether the pinion is carried by a cartridge that is bolted to the case.
    pub fn has_cartridge(self) -> bool {
        self == Self::B
    }

    /// Whether the spacer is a collapsible sleeve.
    pub fn has_sleeve(self) -> bool {
        self == Self::A
    }

    /// What sets the side bearings.
    pub fn side_setting(self) -> SideSetting {
        match self {
            Self::A => SideSetting::Shims,
            Self::B | Self::C => SideSetting::Adjusters,
        }
    }
}

impl DepthShim {
    /// All places.
    pub const ALL: [Self; 3] = [Self::Head, Self::Cup, Self::Cartridge];

    /// Its name in files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Head => "head",
            Self::Cup => "cup",
            Self::Cartridge => "cartridge",
        }
    }

    /// The place of this name.
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|s| s.name() == name)
    }
}
