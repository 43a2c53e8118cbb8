//! Shim packs.

use super::done::Done;
use crate::axle::{DepthShim, Layout, SideSetting};
use crate::bench::choices::{Ring, ShimPlace};
use crate::bench::refusal::{Refusal, need};
use crate::bench::state::Bench;

impl Bench {
    pub(super) fn fit_shims(&mut self, place: ShimPlace, pieces: &[u32]) -> Result<Done, Refusal> {
        self.reach_shims(place)?;
        self.shop.packs.fit(&self.setting.kit, place, pieces)?;
        Ok(Done::plain())
    }

    pub(super) fn remove_shims(&mut self, place: ShimPlace) -> Result<Done, Refusal> {
        self.reach_shims(place)?;
        self.shop.packs.remove(place);
        Ok(Done::plain())
    }

    /// Whether a hand can get at the shims of a place.
    fn reach_shims(&self, place: ShimPlace) -> Result<(), Refusal> {
        let (axle, pinion) = (&self.setting.axle, &self.pinion);
        match place {
            ShimPlace::Depth => match axle.depth_shim() {
                DepthShim::Head => {
                    need(!pinion.pinion_in, Refusal::ShimBehindPinion)?;
                    need(
                        !pinion.ring_on(Ring::HeadCone) && !pinion.set_up_bearings,
                        Refusal::ShimUnderHeadCone,
                    )
                }
                DepthShim::Cup => need(
                    !pinion.ring_on(Ring::HeadCup) && !pinion.set_up_bearings && !pinion.pinion_in,
                    Refusal::ShimUnderHeadCup,
                ),
                DepthShim::Cartridge => need(!pinion.cartridge_bolted, Refusal::ShimUnderCartridge),
            },
            ShimPlace::Spacer if axle.layout() == Layout::A => Err(Refusal::NoSpacerShims),
            ShimPlace::Spacer => need(!pinion.pinion_in, Refusal::SpacerShimsInside),
            ShimPlace::ToothSide | ShimPlace::BackSide => {
                need(axle.layout().side_setting() == SideSetting::Shims, Refusal::NoSideShims)?;
                need(!self.carrier.carrier_in, Refusal::SideShimsBehindCarrier)
            }
        }
    }
}
