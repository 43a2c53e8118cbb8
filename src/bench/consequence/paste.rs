//! Marking paste.

use super::done::Done;
use crate::bench::carrier_group::{Paste, Rolled};
use crate::bench::choices::Brushing;
use crate::bench::refusal::{Refusal, need};
use crate::bench::state::Bench;
use crate::contact::Placement;

impl Bench {
    pub(super) fn brush_paste(&mut self, teeth: &[u32], film: Brushing) -> Result<Done, Refusal> {
        need(self.carrier.wheel.is_some(), Refusal::NoRingGearToPaint)?;
        need(!teeth.is_empty(), Refusal::NoToothNamed)?;
        self.need_teeth(teeth)?;
        let carrier = &mut self.carrier;
        carrier.brushings = carrier.brushings.saturating_add(1);
        carrier.paste = Some(Paste {
            brushing: carrier.brushings,
            teeth: teeth.to_vec(),
            film,
            rolled: None,
        });
        Ok(Done::plain())
    }

    /// Passes that the paste has seen and where the gears stand while it is rolled.
    pub(in crate::bench) fn rollable(&self) -> Result<(u32, Placement), Refusal> {
        let paste = self.carrier.paste.as_ref().ok_or(Refusal::NoPaste)?;
        let tooth = paste.teeth.first().copied().unwrap_or(0);
        let placement = self.placement_at_tooth(tooth).ok_or(Refusal::NotInMesh)?;
        Ok((paste.rolled.map_or(0, |r| r.passes), placement))
    }

    pub(super) fn roll(&mut self, drag_nm: f64, passes: u32) -> Result<Done, Refusal> {
        let (before, placement) = self.rollable()?;
        need(!self.scrapes(), Refusal::GearsDoNotTurn)?;
        if let Some(paste) = &mut self.carrier.paste {
            paste.rolled = Some(Rolled {
                drag_nm,
                passes: before.saturating_add(passes),
                placement,
            });
        }
        let turns = f64::from(passes) * 2.0;
        self.carrier.turns += turns;
        self.pinion.turns += turns * self.setting.axle.ratio();
        Ok(Done::plain())
    }

    /// Whether the wheel has such teeth.
    pub(in crate::bench) fn need_teeth(&self, teeth: &[u32]) -> Result<(), Refusal> {
        let count = self.setting.axle.gears().wheel_teeth;
        need(teeth.iter().all(|t| *t < count), Refusal::NoSuchTooth { teeth: count })
    }
}
