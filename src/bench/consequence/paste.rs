//! Marking paste.

use super::{Done, Refusal, need, refuse};
use crate::bench::operation::Brushing;
use crate::bench::state::{Bench, Paste, Rolled};

impl Bench {
    pub(super) fn brush_paste(&mut self, teeth: &[u32], film: Brushing) -> Result<Done, Refusal> {
        need(self.assembly.wheel.is_some(), "There is no ring gear to paint.")?;
        need(!teeth.is_empty(), "No tooth was named.")?;
        self.need_teeth(teeth)?;
        self.brushings = self.brushings.saturating_add(1);
        self.paste = Some(Paste {
            brushing: self.brushings,
            teeth: teeth.to_vec(),
            film,
            rolled: None,
        });
        Ok(Done::plain())
    }

    pub(super) fn roll(&mut self, drag_nm: f64, passes: u32) -> Result<Done, Refusal> {
        let Some(paste) = &self.paste else {
            return refuse("No paste is on the teeth.");
        };
        let tooth = paste.teeth.first().copied().unwrap_or(0);
        let before = paste.rolled.map_or(0, |r| r.passes);
        let Some(placement) = self.placement_at_tooth(tooth) else {
            return refuse("The gears are not in mesh.");
        };
        if let Some(scrape) = self.scrapes() {
            return refuse(scrape);
        }
        if let Some(paste) = &mut self.paste {
            paste.rolled = Some(Rolled {
                drag_nm,
                passes: before.saturating_add(passes),
                placement,
            });
        }
        let turns = f64::from(passes) * 2.0;
        self.assembly.carrier_turns += turns;
        self.assembly.pinion_turns += turns * self.setting.axle.ratio();
        Ok(Done::plain())
    }

    /// Whether the wheel has such teeth.
    pub(in crate::bench) fn need_teeth(&self, teeth: &[u32]) -> Result<(), Refusal> {
        let count = self.setting.axle.gears().wheel_teeth;
        if teeth.iter().all(|t| *t < count) {
            Ok(())
        } else {
            refuse(format!(
                "The ring gear has {count} teeth, numbered from 0 to {}.",
                count.saturating_sub(1)
            ))
        }
    }
}
