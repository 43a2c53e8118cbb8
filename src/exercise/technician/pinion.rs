//! The pinion's side: rings, shims, spacer, nut, torque, depth by gauge.

use super::person::Technician;
use super::steps::LEAST_GAUGE_STEP_MM;
use crate::axle::DepthShim;
use crate::bench::{Measurand, Operation, Precaution, Predicted, Ring, ShimPlace, SpacerChoice};
use crate::exercise::scenario::DepthFrom;

/// Force at which presses are stopped, kN: well above what such fits hold with. Common practice, no source.
const PRESS_KN: f64 = 24.0;
/// Gap behind a ring that is not let pass, mm.
const GAP_MM: f64 = 0.02;
/// Torque to which a nut on a sleeve is drawn before it is turned by steps, N m.
const SLEEVE_START_NM: f64 = 140.0;
/// Largest torque of the click wrench that is used, N m.
const CLICK_UP_TO_NM: f64 = 330.0;
/// Step of a nut while nothing is felt yet, and the largest and smallest after that, degrees.
const STEPS_DEG: [f64; 3] = [6.0, 10.0, 1.0];
/// Times that the depth is set right by the gauge before a print is seen.
const MOST_ROUNDS: u32 = 4;
/// Share of a window's upper end that readings keep away from its ends.
const MARGIN: f64 = 0.05;

impl Technician {
    /// Place of the pinion by a distance that the gauge showed, mm, positive too far out.
    pub(super) fn off_by_gauge(&self, distance_mm: f64) -> f64 {
        distance_mm - self.chart.head_distance_mm - self.mark_mm
    }

    /// Distance from the wheel's axis to the pinion's head, mean of three set-ups; the carrier has to be out.
    pub(super) fn gauge(&mut self) -> Option<f64> {
        let read: Vec<f64> = (0..3)
            .filter_map(|_| self.hands.reads(Measurand::PinionDepth {}, "depth_gauge"))
            .collect();
        (!read.is_empty()).then(|| read.iter().sum::<f64>() / read.len() as f64)
    }

    /// Torque of the pinion alone, settled and written down.
    pub(super) fn read_pinion(&mut self) {
        self.hands.settle();
        self.pinion_nm = self.hands.torque(Measurand::RollingTorque {});
        if let Some(value) = self.pinion_nm {
            self.hands.does(Operation::Note {
                what: Measurand::RollingTorque {},
                value,
                record: self.hands.record_of(Measurand::RollingTorque {}),
                remark: String::new(),
            });
        }
    }

    /// Feels behind rings that somebody pressed on; those that are not home are pressed on afresh.
    pub(super) fn check_seats(&mut self) {
        for ring in Ring::ALL {
            let gap = self.hands.reads(Measurand::SeatGap { ring }, "feeler");
            if gap.is_some_and(|mm| mm > GAP_MM) {
                self.pull(ring);
                self.press(ring);
            }
        }
        self.rings_on = true;
    }

    fn press(&mut self, ring: Ring) {
        self.hands.does(Operation::Press {
            ring,
            force_kn: PRESS_KN,
            precautions: vec![Precaution::EyeProtection, Precaution::PressGuard],
        });
    }

    fn pull(&mut self, ring: Ring) {
        self.hands.does(Operation::PullOff {
            ring,
            precautions: vec![Precaution::EyeProtection],
        });
    }

    /// The ring that the depth shim lies behind, if it lies behind one.
    fn ring_over_shim(&self) -> Option<Ring> {
        match self.hands.drawing().axle().depth_shim() {
            DepthShim::Head => Some(Ring::HeadCone),
            DepthShim::Cup => Some(Ring::HeadCup),
            DepthShim::Cartridge => None,
        }
    }

    fn has_sleeve(&self) -> bool {
        self.hands.drawing().axle().layout().has_sleeve()
    }

    /// Builds the pinion in from parts: the drawing's shims, the mark allowed for.
    pub(super) fn build_pinion(&mut self) {
        let axle = self.hands.drawing().axle();
        let usual = |member| axle.nominal_mm(member).unwrap_or(0.0);
        let depth_mm = usual(axle.depth_shim_member());
        let spacer_mm = usual(crate::axle::Member::SpacerShims);
        // A pinion that is marked to stand farther out gets a shim that lets it.
        let deeper_mm = -self.mark_mm;
        let wanted_mm = depth_mm + deeper_mm / self.chart.deeper_by_shim;
        let mut more_mm = 0.0;
        if !self.rings_on {
            if self.ring_over_shim().is_some() {
                let fitted = self.fit_pack(ShimPlace::Depth, wanted_mm);
                more_mm = fitted.map_or(0.0, |mm| mm - depth_mm);
            }
            for ring in Ring::ALL {
                self.press(ring);
            }
            self.rings_on = true;
        } else if self.ring_over_shim().is_some() {
            more_mm = self.drawer.thickness_mm(ShimPlace::Depth) - depth_mm;
        }
        if self.ring_over_shim().is_none() {
            self.fit_pack(ShimPlace::Depth, wanted_mm);
        }
        if !self.has_sleeve() {
            self.fit_pack(ShimPlace::Spacer, spacer_mm + self.chart.spacer_follows * more_mm);
        }
        self.close_pinion();
    }

    /// Spacer, pinion, seal and nut, the cartridge on its case.
    fn close_pinion(&mut self) {
        let sleeve = self.has_sleeve();
        self.hands.does(Operation::FitSpacer {
            spacer: SpacerChoice::Own,
            new: sleeve,
        });
        self.hands.does(Operation::InsertPinion {});
        if !self.seal_in {
            self.seal_in = self.hands.does(Operation::FitSeal {}).done;
        }
        self.hands.does(Operation::FitNut { new: true });
        if sleeve {
            self.crush_sleeve();
        } else {
            let torque_nm = self.hands.card().targets.nut_torque_nm;
            let wrench = if torque_nm > CLICK_UP_TO_NM {
                "multiplier_wrench"
            } else {
                "click_wrench"
            };
            self.tighten(torque_nm, wrench);
        }
        if self.hands.drawing().axle().layout().has_cartridge() {
            self.hands.does(Operation::BoltCartridge {});
        }
    }

    fn tighten(&mut self, torque_nm: f64, wrench: &str) {
        self.hands.does(Operation::TightenNut {
            torque_nm,
            wrench: wrench.to_owned(),
            precautions: vec![Precaution::HoldingBar],
        });
    }

    /// Turns the nut on in steps, each by half of what is missing, until the torque is in its window.
    fn crush_sleeve(&mut self) {
        self.tighten(SLEEVE_START_NM, "click_wrench");
        let window = self.hands.card().targets.pinion_torque_nm;
        let aim = window.low + 0.45 * (window.high - window.low);
        let enough = window.low + 0.25 * (window.high - window.low);
        let [blind, largest, least] = STEPS_DEG;
        let slope = if self.chart.torque_a_degree_nm > 0.01 {
            self.chart.torque_a_degree_nm
        } else {
            0.2
        };
        let mut felt = false;
        for _ in 0..120 {
            self.hands.settle();
            let torque = self.hands.torque(Measurand::RollingTorque {});
            let angle_deg = match torque {
                Some(torque) if torque >= enough => return,
                Some(torque) => (0.5 * (aim - torque) / slope).clamp(least, largest),
                None => blind,
            };
            // Only drag of seal and unloaded rollers is felt before the play has gone.
            if torque.is_some() && felt {
                self.predict(Predicted::PinionTorque, [0.02, 0.08, 0.90]);
            }
            felt |= torque.is_some();
            self.hands.does(Operation::TurnNut {
                angle_deg,
                wrench: None,
                precautions: vec![Precaution::HoldingBar],
            });
        }
    }

    pub(super) fn predict(&mut self, about: Predicted, chances: [f64; 3]) {
        self.hands.does(Operation::Predict { about, chances });
    }

    /// Takes the pinion out as far as a change of shims needs; the seal stays where it is.
    fn open_pinion(&mut self) {
        if self.hands.drawing().axle().layout().has_cartridge() {
            self.hands.does(Operation::UnboltCartridge {});
        }
        self.hands.does(Operation::RemoveNut {
            precautions: vec![Precaution::HoldingBar],
        });
        self.hands.does(Operation::RemovePinion {});
        self.hands.does(Operation::RemoveSpacer {});
        self.builds += 1;
    }

    /// Sets the pinion deeper by so much, and with it the spacer so that the preload stays; how much it was really, by the
    /// shims. The carrier has to be out.
    pub(super) fn change_depth(&mut self, deeper_mm: f64) -> f64 {
        self.change_pinion(deeper_mm, 0.0)
    }

    /// Another depth shim and other spacer shims in one tear-down.
    fn change_pinion(&mut self, deeper_mm: f64, spacer_more_mm: f64) -> f64 {
        let before_mm = self.drawer.thickness_mm(ShimPlace::Depth);
        let wanted_mm = before_mm + deeper_mm / self.chart.deeper_by_shim;
        let change_depth = deeper_mm.abs() > 1e-9;
        let mut after_mm = before_mm;
        if self.ring_over_shim().is_none() && spacer_more_mm.abs() < 1e-9 {
            // Only the cartridge's shim: the pinion stays as it is.
            self.hands.does(Operation::UnboltCartridge {});
            after_mm = self.fit_pack(ShimPlace::Depth, wanted_mm).unwrap_or(before_mm);
            self.hands.does(Operation::BoltCartridge {});
            self.builds += 1;
        } else {
            self.open_pinion();
            if change_depth {
                let over = self.ring_over_shim();
                if let Some(ring) = over {
                    self.pull(ring);
                }
                after_mm = self.fit_pack(ShimPlace::Depth, wanted_mm).unwrap_or(before_mm);
                if let Some(ring) = over {
                    self.press(ring);
                }
            }
            if !self.has_sleeve() {
                let follows = self.chart.spacer_follows * (after_mm - before_mm);
                let more = spacer_more_mm + follows;
                if more.abs() > 1e-9 {
                    let now = self.drawer.thickness_mm(ShimPlace::Spacer);
                    self.fit_pack(ShimPlace::Spacer, now + more);
                }
            }
            self.close_pinion();
        }
        self.pinion_nm = None;
        (after_mm - before_mm) * self.chart.deeper_by_shim
    }

    /// What the spacer's shims need, mm; 0 when the torque is in its window.
    fn spacer_needs(&mut self) -> f64 {
        let window = self.hands.card().targets.pinion_torque_nm;
        let aim = 0.5 * (window.low + window.high);
        let margin = MARGIN * window.high;
        match self.pinion_nm {
            Some(torque) if torque > window.low + margin && torque < window.high - margin => 0.0,
            Some(torque) => self.chart.shims_for(torque, aim),
            None => {
                let play = self.hands.reads(Measurand::PinionEndPlay {}, "lever_dial");
                self.chart.shims_for_play(play.unwrap_or(0.0), aim)
            }
        }
    }

    /// Brings preload and, by the gauge, depth into their bands, with the carrier out; how much deeper it got.
    pub(super) fn settle_pinion(&mut self) -> f64 {
        let mut deeper_mm = 0.0;
        for _ in 0..MOST_ROUNDS {
            self.read_pinion();
            let distance = self.gauge();
            let off_mm = match (self.hands.card().depth_from, distance, self.found_mm) {
                (DepthFrom::Found, Some(now), Some(found)) => now - found,
                (DepthFrom::Best, Some(now), _) => self.off_by_gauge(now),
                _ => 0.0,
            };
            // Once a print was seen it is believed and not the gauge.
            let by_gauge = self.judges_depth() && self.prints.is_empty();
            let deeper = if by_gauge && off_mm.abs() > LEAST_GAUGE_STEP_MM {
                self.rule(off_mm)
            } else {
                0.0
            };
            let window = self.hands.card().targets.pinion_torque_nm;
            let spacer = if self.has_sleeve() { 0.0 } else { self.spacer_needs() };
            let crushed = self.has_sleeve() && self.pinion_nm.is_some_and(|t| t > window.high);
            let enough = deeper.abs() < 1e-9 && spacer.abs() < 0.004 && !crushed;
            if enough || self.has_had_enough() {
                break;
            }
            if let Some(torque) = self.pinion_nm {
                self.predict_torque(torque, spacer);
            }
            if crushed {
                // A sleeve that went too far is spent.
                self.open_pinion();
                self.close_pinion();
            } else {
                deeper_mm += self.change_pinion(deeper, spacer);
            }
            // A reversed rule does not find out by the gauge.
            if self.reversed && deeper.abs() > 0.0 {
                self.read_pinion();
                break;
            }
        }
        deeper_mm
    }

    /// Says what a change of the spacer's shims will do to the torque.
    fn predict_torque(&mut self, torque_nm: f64, spacer_mm: f64) {
        let window = self.hands.card().targets.pinion_torque_nm;
        let aim = 0.5 * (window.low + window.high);
        let chances = if spacer_mm.abs() < 0.004 {
            return;
        } else if aim > torque_nm {
            [0.04, 0.06, 0.90]
        } else {
            [0.90, 0.06, 0.04]
        };
        self.predict(Predicted::PinionTorque, chances);
    }
}
