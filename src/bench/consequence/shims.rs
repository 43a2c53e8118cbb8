//! Shim packs.

use super::{Done, Refusal, need, refuse};
use crate::axle::{DepthShim, Layout, SideSetting};
use crate::bench::operation::{Ring, ShimPlace};
use crate::bench::state::Bench;

impl Bench {
    pub(super) fn fit_shims(&mut self, place: ShimPlace, pieces: &[u32]) -> Result<Done, Refusal> {
        self.reach_shims(place)?;
        self.packs
            .fit(&self.setting.kit, place, pieces)
            .map_err(|fault| Refusal(format!("{fault}.")))?;
        Ok(Done::plain())
    }

    pub(super) fn remove_shims(&mut self, place: ShimPlace) -> Result<Done, Refusal> {
        self.reach_shims(place)?;
        self.packs.remove(place);
        Ok(Done::plain())
    }

    /// Whether a hand can get at the shims of a place.
    fn reach_shims(&self, place: ShimPlace) -> Result<(), Refusal> {
        let axle = &self.setting.axle;
        match place {
            ShimPlace::Depth => match axle.depth_shim() {
                DepthShim::Head => {
                    need(
                        !self.assembly.pinion_in,
                        "The depth shim lies behind the pinion's head: take the pinion out first.",
                    )?;
                    need(
                        !self.ring_on(Ring::HeadCone) && !self.set_up_bearings,
                        "The depth shim lies under the head bearing's cone: pull that off first.",
                    )
                }
                DepthShim::Cup => need(
                    !self.ring_on(Ring::HeadCup) && !self.set_up_bearings && !self.assembly.pinion_in,
                    "The depth shim lies under the head bearing's cup: pull that off first.",
                ),
                DepthShim::Cartridge => need(
                    !self.assembly.cartridge_bolted,
                    "The depth shim lies between cartridge and case: unbolt the cartridge first.",
                ),
            },
            ShimPlace::Spacer if axle.layout() == Layout::A => refuse("This axle has a sleeve and no spacer shims."),
            ShimPlace::Spacer => need(
                !self.assembly.pinion_in,
                "The spacer and its shims are on the shaft inside: take the pinion out first.",
            ),
            ShimPlace::ToothSide | ShimPlace::BackSide => {
                need(
                    axle.layout().side_setting() == SideSetting::Shims,
                    "This axle has side adjusters and no side shims.",
                )?;
                need(
                    !self.assembly.carrier_in,
                    "Side shims lie beside the carrier's bearings: lift the carrier out first.",
                )
            }
        }
    }
}
