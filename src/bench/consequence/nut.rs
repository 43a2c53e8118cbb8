//! The pinion nut.

use super::done::{Done, Shown};
use crate::axle::{Nut, NutMove, NutTurned, turn_nut};
use crate::bench::aspect::Aspects;
use crate::bench::measurand::Measurand;
use crate::bench::notice::Notice;
use crate::bench::part::Part;
use crate::bench::pinion_group::PinionGroup;
use crate::bench::reading::ReadingPart;
use crate::bench::refusal::{Item, Refusal, need, need_fitted, need_free};
use crate::bench::state::Bench;
use crate::numerics::math;

/// Torque of a nut run up by hand, N m.
const BY_HAND_NM: f64 = 1.0;
/// Turn of the nut after which rollers have lost their place to 1/e, degrees. Judgement.
const UNSETTLING_DEG: f64 = 20.0;
/// Greatest torque that a bar and a bench take, N m.
const NO_BAR_TAKES_NM: f64 = 2_000.0;

impl PinionGroup {
    pub(super) fn remove_nut(&mut self) -> Result<Done, Refusal> {
        need_fitted(self.nut_on(), Item::Nut)?;
        self.nut = Nut::Off;
        self.turns = 0.0;
        self.nut_used = true;
        Ok(Done::plain())
    }
}

impl Bench {
    pub(super) fn fit_nut(&mut self, new: bool) -> Result<Done, Refusal> {
        need_free(self.pinion.nut_on(), Item::Nut)?;
        need(self.pinion.pinion_in, Refusal::NoPinionForNut)?;
        let mut done = Done::plain();
        if new {
            done.bought.push(Part::Nut);
        } else if self.pinion.reuses_nut(&self.setting) {
            done.reused.push(Part::Nut);
        }
        self.pinion.nut_used = false;
        let friction = self.pinion.draw_nut_friction(self.setting.seed, &self.truth);
        self.move_nut(NutMove::ToTorque { torque_nm: BY_HAND_NM }, friction)?;
        Ok(done)
    }

    pub(super) fn tighten_nut(&mut self, torque_nm: f64, wrench: &str) -> Result<Done, Refusal> {
        need_fitted(self.pinion.nut_on(), Item::Nut)?;
        let applied_nm = self.applied_torque_nm(torque_nm, wrench)?;
        let friction = self.pinion.draw_nut_friction(self.setting.seed, &self.truth);
        let turned = self.move_nut(NutMove::ToTorque { torque_nm: applied_nm }, friction)?;
        Ok(Done::noticing(if turned.angle_deg > 0.0 {
            Notice::NutWent {
                degrees: turned.angle_deg.round(),
            }
        } else {
            Notice::WrenchGaveFirst
        }))
    }

    pub(super) fn turn_nut_by(&mut self, angle_deg: f64, wrench: Option<&str>) -> Result<Done, Refusal> {
        need_fitted(self.pinion.nut_on(), Item::Nut)?;
        let friction = self.pinion.draw_nut_friction_of_step(self.setting.seed, &self.truth);
        let turned = self.move_nut(NutMove::ByAngle { angle_deg }, friction)?;
        let Some(wrench) = wrench else {
            return Ok(Done::plain());
        };
        let shown_nm = self.shown_torque_nm(turned.peak_torque_nm, wrench)?;
        let what = Measurand::NutTorque {};
        Ok(Done::showing(Shown {
            what,
            instrument: wrench.to_owned(),
            values: vec![(ReadingPart::NutTorque, shown_nm)],
            behind: Aspects::behind(what, &self.setting.axle, self.carrier.carrier_in),
        }))
    }

    /// Turns the nut and unsettles the rollers by as much.
    fn move_nut(&mut self, nut_move: NutMove, friction_times: f64) -> Result<NutTurned, Refusal> {
        // Packs and rings first: the nut presses on what is fitted now.
        self.settle_again()?;
        let turned = turn_nut(
            &self.setting.axle,
            &self.truth,
            self.assembly(),
            nut_move,
            friction_times,
        )?;
        need(turned.peak_torque_nm <= NO_BAR_TAKES_NM, Refusal::NoBarTakes)?;
        self.pinion.take_over(&turned.after);
        self.pinion.turns *= math::exp(-turned.angle_deg.abs() / UNSETTLING_DEG);
        Ok(turned)
    }
}
