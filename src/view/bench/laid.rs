//! How the axle lies on the bench: which parts are where, as anybody sees who stands there. It cannot hold a size.

use crate::axle::{Caps, DepthShim, Layout, Nut, SpacerFitted};
use crate::bench::{Bench, Ring, ShimPlace};

/// How far the caps are tightened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CapsOn {
    /// Off.
    Off,
    /// On, bolts snug.
    Snug,
    /// On, bolts at torque.
    Torqued,
}

/// Which parts are where.
#[derive(Debug, Clone, PartialEq, Eq)]
#[expect(clippy::struct_excessive_bools, reason = "each says of one part whether it is in")]
pub struct Laid {
    /// How the axle is put together.
    pub layout: Layout,
    /// Where its depth shim lies.
    pub depth_shim: DepthShim,
    /// Which rings are on: head cone, head cup, tail cup.
    pub rings_on: [bool; 3],
    /// Whether set-up bearings are in their place.
    pub set_up_bearings: bool,
    /// Whether a spacer is on the shaft.
    pub spacer_on: bool,
    /// Whether a spent sleeve lies on the bench.
    pub old_sleeve: bool,
    /// Whether the pinion is in its housing or cartridge.
    pub pinion_in: bool,
    /// Whether nut and flange are on.
    pub nut_on: bool,
    /// Whether the seal is in.
    pub seal_in: bool,
    /// Whether the cartridge is bolted to the case.
    pub cartridge_bolted: bool,
    /// Whether the ring gear is on its carrier.
    pub wheel_on: bool,
    /// Whether its bolts are at torque.
    pub wheel_bolted: bool,
    /// Whether the carrier is in the case.
    pub carrier_in: bool,
    /// Caps.
    pub caps: CapsOn,
    /// Locks of the adjusters: tooth side, behind the wheel.
    pub locks_in: [bool; 2],
    /// Whether a spreader is on the case.
    pub spreader_on: bool,
    /// Which packs are in: depth, spacer, tooth side, behind the wheel.
    pub packs_in: [bool; 4],
    /// Teeth with paste on them.
    pub painted: Vec<u32>,
    /// Whether they were rolled.
    pub rolled: bool,
    /// Whether the pinion is held in its bearings.
    pub pinion_held: bool,
    /// Whether the carrier is held in its bearings.
    pub carrier_held: bool,
    /// Whether the gears are in mesh.
    pub in_mesh: bool,
}

impl Laid {
    /// What there is to be seen of a bench.
    pub fn of(bench: &Bench) -> Self {
        let axle = &bench.setting().axle;
        let (assembly, built) = (bench.assembly(), bench.built());
        let paste = bench.paste();
        Self {
            layout: axle.layout(),
            depth_shim: axle.depth_shim(),
            rings_on: Ring::ALL.map(|ring| bench.ring_on(ring)),
            set_up_bearings: assembly.bearings == crate::axle::Bearings::SetUp,
            spacer_on: assembly.spacer != SpacerFitted::None,
            old_sleeve: axle.layout().has_sleeve() && bench.has_old_sleeve(),
            pinion_in: assembly.pinion_in,
            nut_on: assembly.nut != Nut::Off,
            seal_in: assembly.seal,
            cartridge_bolted: assembly.cartridge_bolted,
            wheel_on: assembly.wheel.is_some(),
            wheel_bolted: assembly.wheel.is_some_and(|w| w.bolted),
            carrier_in: assembly.carrier_in,
            caps: match assembly.caps {
                Caps::Off => CapsOn::Off,
                Caps::Snug => CapsOn::Snug,
                Caps::Torqued => CapsOn::Torqued,
            },
            locks_in: assembly.side.map(|s| s.locked),
            spreader_on: assembly.spreader_mm > 0.0,
            packs_in: ShimPlace::ALL.map(|place| !bench.packs().at(place).is_empty()),
            painted: paste.map(|p| p.teeth.clone()).unwrap_or_default(),
            rolled: paste.is_some_and(|p| p.rolled.is_some()),
            pinion_held: built.pinion.is_some(),
            carrier_held: built.side.is_some(),
            in_mesh: built.placement.is_some(),
        }
    }
}
