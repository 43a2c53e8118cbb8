//! The pinion nut.

use super::{Done, Refusal, need};
use crate::axle::{Nut, NutMove, NutTurned, support_as_built, turn_nut};
use crate::bench::measurand::Measurand;
use crate::bench::part::Part;
use crate::bench::state::Bench;
use crate::numerics::math;
use crate::numerics::random::Stream;

/// Torque of a nut run up by hand, N m.
const BY_HAND_NM: f64 = 1.0;
/// Turn of the nut after which rollers have lost their place to 1/e, degrees. Judgement.
const UNSETTLING_DEG: f64 = 20.0;
/// Share of the scatter from one tightening to the next that is there from step to step of one. Judgement.
const STEP_SHARE: f64 = 0.2;
/// Greatest torque that a bar and a bench take, N m.
const NO_BAR_TAKES_NM: f64 = 2_000.0;

impl Bench {
    pub(super) fn fit_nut(&mut self, new: bool) -> Result<Done, Refusal> {
        need(self.assembly.nut == Nut::Off, "It is on already.")?;
        need(self.assembly.pinion_in, "There is no pinion to put it on.")?;
        let mut done = Done::plain();
        if new {
            done.bought.push(Part::Nut);
        } else if self.nut_used && self.setting.single_use.contains(&Part::Nut) {
            done.reused.push(Part::Nut);
        }
        self.nut_used = false;
        let friction = self.draw_nut_friction();
        self.move_nut(NutMove::ToTorque { torque_nm: BY_HAND_NM }, friction)?;
        Ok(done)
    }

    pub(super) fn remove_nut(&mut self) -> Result<Done, Refusal> {
        need(self.assembly.nut != Nut::Off, "It is not on.")?;
        self.assembly.nut = Nut::Off;
        self.assembly.pinion_turns = 0.0;
        self.nut_used = true;
        Ok(Done::plain())
    }

    pub(super) fn tighten_nut(&mut self, torque_nm: f64, wrench: &str) -> Result<Done, Refusal> {
        need(self.assembly.nut != Nut::Off, "The nut is not on.")?;
        let applied_nm = self.applied_torque_nm(torque_nm, wrench)?;
        let friction = self.draw_nut_friction();
        let turned = self.move_nut(NutMove::ToTorque { torque_nm: applied_nm }, friction)?;
        Ok(Done::noticing(if turned.angle_deg > 0.0 {
            format!("The nut went {:.0} degrees.", turned.angle_deg)
        } else {
            "The wrench gave before the nut moved.".to_owned()
        }))
    }

    pub(super) fn turn_nut_by(&mut self, angle_deg: f64, wrench: Option<&str>) -> Result<Done, Refusal> {
        need(self.assembly.nut != Nut::Off, "The nut is not on.")?;
        let friction = self.draw_nut_friction_of_step();
        let turned = self.move_nut(NutMove::ByAngle { angle_deg }, friction)?;
        let Some(wrench) = wrench else {
            return Ok(Done::plain());
        };
        let shown_nm = self.shown_torque_nm(turned.peak_torque_nm, wrench)?;
        let shown = vec![("torque".to_owned(), shown_nm)];
        Ok(Done {
            record: Some(self.record(Measurand::NutTorque {}, wrench, shown)),
            ..Done::default()
        })
    }

    /// Turns the nut and unsettles the rollers by as much.
    fn move_nut(&mut self, nut_move: NutMove, friction_times: f64) -> Result<NutTurned, Refusal> {
        // Packs and rings first: the nut presses on what is fitted now.
        self.settle_again()?;
        let turned = turn_nut(
            &self.setting.axle,
            &self.truth,
            &self.assembly,
            nut_move,
            friction_times,
        )?;
        need(
            turned.peak_torque_nm <= NO_BAR_TAKES_NM,
            "The nut does not go that far: no bar takes the torque.",
        )?;
        self.assembly = turned.after.clone();
        self.assembly.pinion_turns *= math::exp(-turned.angle_deg.abs() / UNSETTLING_DEG);
        Ok(turned)
    }

    /// Friction that this tightening meets, times nominal: every tightening has its own.
    fn draw_nut_friction(&mut self) -> f64 {
        self.tightenings += 1;
        let mut stream = Stream::new(self.setting.seed, &format!("nut friction {}", self.tightenings));
        let scatter = 1.0 + self.truth.nut.scatter_share * stream.normal_within(3.0);
        self.nut_friction_times = self.truth.nut.friction_times * if scatter > 0.3 { scatter } else { 0.3 };
        self.nut_friction_times
    }

    /// Friction of one more step of the same tightening: nearly that of the last.
    fn draw_nut_friction_of_step(&mut self) -> f64 {
        self.nut_steps += 1;
        let mut stream = Stream::new(self.setting.seed, &format!("nut friction of step {}", self.nut_steps));
        let scatter = STEP_SHARE * self.truth.nut.scatter_share * stream.normal_within(3.0);
        self.nut_friction_times * (1.0 + scatter)
    }

    /// Torque that the nut stands at, N m.
    pub(super) fn nut_torque_nm(&self) -> Option<f64> {
        let Nut::On { friction_times, .. } = self.assembly.nut else {
            return None;
        };
        let pinion = self.built.pinion?;
        let support = support_as_built(&self.setting.axle, &self.truth, &self.assembly);
        let nut = support.nut.with_friction_times(friction_times);
        Some(nut.tightening_torque_nm(pinion.tightened.clamp_n))
    }
}
