//! Ring gear, carrier, lash and side preload.

use super::person::Technician;
use crate::axle::{Member, SideSetting};
use crate::bench::{
    CapTorque, CarrierSide, Cleaned, Measurand, Notice, Operation, Part, Precaution, Predicted, ShimPlace, Turned,
};

/// Temperature to which a ring gear is heated, °C, and the minutes until it is cold. Common practice, no source.
const WARM_C: f64 = 130.0;
const COLD_AFTER_MIN: f64 = 120.0;
/// How far the case is spread for side shims, mm.
const SPREAD_MM: f64 = 0.4;
/// Notches by which rings are turned in when nobody knows where they were: short of closing.
const FIRST_NOTCHES: f64 = 14.0;
/// Times that sides are set before what there is is taken.
const MOST_ROUNDS: u32 = 8;
/// Share of half a window within which a reading is left alone.
const GOOD: f64 = 0.75;
/// Notches either way that are thought of at once.
const REACH: i32 = 6;
/// Play that a dial tells from none, mm.
const PLAY_MM: f64 = 0.006;

/// What the sides show.
#[derive(Debug, Clone, Copy)]
struct SidesRead {
    /// Tightest lash in the card's reading, mm.
    lash_mm: Option<f64>,
    /// Squeeze of both stacks, mm; negative for play.
    squeeze_mm: f64,
}

impl Technician {
    /// Runout that the card lets pass, mm.
    pub(super) fn runout_limit(&self) -> f64 {
        self.hands.card().targets.face_runout_mm
    }

    /// Face runout of the ring gear, mm.
    pub(super) fn runout(&mut self) -> Option<f64> {
        self.hands.reads(Measurand::WheelFaceRunout {}, "lever_dial")
    }

    fn by_adjusters(&self) -> bool {
        self.hands.drawing().axle().layout().side_setting() == SideSetting::Adjusters
    }

    fn notch_mm(&self) -> f64 {
        let adjuster = self.hands.drawing().axle().adjuster();
        adjuster.travel_mm(adjuster.notch_deg())
    }

    /// Takes the axle apart to a level and remembers where its rings stood.
    pub(super) fn take_apart(&mut self, to: crate::bench::Level) {
        let answer = self.hands.does(Operation::TakeApart {
            to,
            precautions: vec![Precaution::Hoist, Precaution::HoldingBar, Precaution::EyeProtection],
        });
        for noticed in &answer.noticed {
            if let Notice::AdjustersWereIn {
                tooth_notches,
                back_notches,
            } = *noticed
            {
                self.rings_in = Some([tooth_notches, back_notches].map(f64::round));
            }
        }
        self.carrier_in = false;
        if to >= crate::bench::Level::Wheel {
            self.wheel_on = false;
        }
    }

    /// Puts the ring gear on clean, warm and crosswise, and its bolts in cold.
    fn fit_wheel(&mut self) {
        if self.bolts_used {
            self.hands.does(Operation::Replace { part: Part::RingBolts });
        }
        for what in [Cleaned::WheelSeat, Cleaned::Threads] {
            self.hands.does(Operation::Clean {
                what,
                precautions: Vec::new(),
            });
        }
        let gloves = || vec![Precaution::HotGloves];
        self.hands.does(Operation::HeatWheel {
            to_c: WARM_C,
            precautions: gloves(),
        });
        self.hands.does(Operation::FitWheel {
            crosswise: true,
            precautions: gloves(),
        });
        self.hands.does(Operation::Wait {
            minutes: COLD_AFTER_MIN,
        });
        self.hands.does(Operation::TightenRingBolts { thread_lock: true });
        self.wheel_on = true;
        self.bolts_used = true;
    }

    /// Sets the carrier in where it was before, or short of closing.
    fn set_carrier_in(&mut self) {
        if !self.by_adjusters() {
            let axle = self.hands.drawing().axle();
            let sides = [
                (ShimPlace::ToothSide, Member::ToothSideShim),
                (ShimPlace::BackSide, Member::BackSideShim),
            ]
            .map(|(place, member)| (place, axle.nominal_mm(member).unwrap_or(0.0)));
            for (place, usual_mm) in sides {
                if !self.drawer.is_fitted(place) {
                    self.fit_pack(place, usual_mm);
                }
            }
            self.hands.does(Operation::SpreadCase { by_mm: SPREAD_MM });
        }
        for _ in 0..4 {
            let answer = self.hands.does(Operation::SetCarrierIn {
                marks_out_teeth: 0,
                precautions: vec![Precaution::Hoist],
            });
            if answer.done || self.by_adjusters() {
                break;
            }
            // Too wide to go in: both packs thinner.
            self.change_packs([-0.1, -0.1]);
        }
        if !self.by_adjusters() {
            self.hands.does(Operation::ReleaseSpreader {});
        }
        self.hands.does(Operation::FitCaps { as_marked: true });
        if self.by_adjusters() {
            let [tooth, back] = self.rings_in.unwrap_or([FIRST_NOTCHES; 2]);
            self.rings_in = Some([tooth, back]);
            self.turn_ring(CarrierSide::Tooth, tooth);
            self.turn_ring(CarrierSide::Back, back);
        }
        self.carrier_in = true;
    }

    fn turn_ring(&mut self, side: CarrierSide, notches: f64) -> bool {
        self.hands.does(Operation::TurnAdjuster { side, notches }).done
    }

    fn change_packs(&mut self, by_mm: [f64; 2]) {
        for (place, by) in [ShimPlace::ToothSide, ShimPlace::BackSide].into_iter().zip(by_mm) {
            let now = self.drawer.thickness_mm(place);
            self.fit_pack(place, now + by);
        }
    }

    /// Feels out how tight the side bearings are on an axle that nobody has taken apart: the ring behind the wheel goes out
    /// until there is play, and what it took is the squeeze that was there.
    pub(super) fn judge_squeeze(&mut self) {
        /// Notches that surely leave play.
        const OUT: f64 = 8.0;
        if !self.by_adjusters() {
            return;
        }
        for side in [CarrierSide::Tooth, CarrierSide::Back] {
            self.hands.does(Operation::RemoveLock { side });
        }
        self.hands.does(Operation::LoosenCaps {});
        self.turn_ring(CarrierSide::Back, -OUT);
        self.hands.does(Operation::TightenCaps { to: CapTorque::Full });
        let play = self.hands.reads(Measurand::CarrierEndPlay {}, "lever_dial");
        self.hands.does(Operation::LoosenCaps {});
        self.turn_ring(CarrierSide::Back, OUT);
        self.squeeze_mm = play.map(|play| OUT * self.notch_mm() - play);
    }

    /// Turns rings by whole notches: out first, and a ring that goes out ends turning in.
    fn turn_rings(&mut self, by: [i32; 2]) {
        for side in [CarrierSide::Tooth, CarrierSide::Back] {
            self.hands.does(Operation::RemoveLock { side });
        }
        self.hands.does(Operation::LoosenCaps {});
        let mut moves = [(CarrierSide::Tooth, by[0]), (CarrierSide::Back, by[1])];
        moves.sort_by_key(|(_, notches)| *notches);
        for (side, notches) in moves {
            let notches = f64::from(notches);
            if notches < 0.0 {
                self.turn_ring(side, notches - 1.0);
                self.turn_ring(side, 1.0);
            } else if notches > 0.0 {
                self.turn_ring(side, notches);
            }
        }
        let closer_mm = self.notch_mm() * f64::from(by[0] + by[1]);
        if let Some(squeeze_mm) = &mut self.squeeze_mm {
            *squeeze_mm += closer_mm;
        }
        if let Some([tooth, back]) = &mut self.rings_in {
            *tooth += f64::from(by[0]);
            *back += f64::from(by[1]);
        }
    }

    /// Caps at torque, rollers turned in, then lash and side preload.
    fn read_sides(&mut self) -> SidesRead {
        self.hands.does(Operation::TightenCaps { to: CapTorque::Full });
        self.hands.does(Operation::Turn {
            what: Turned::Carrier,
            turns: 3.0,
        });
        let play = self
            .hands
            .reads(Measurand::CarrierEndPlay {}, "lever_dial")
            .unwrap_or(0.0);
        let lash_mm = self.read_lash();
        if play > PLAY_MM {
            return SidesRead {
                lash_mm,
                squeeze_mm: -play,
            };
        }
        self.hands.settle();
        let window = self.hands.card().targets.side_torque_nm;
        let middle = 0.5 * (window.low + window.high);
        let whole = self.hands.torque(Measurand::RollingTorque {});
        let squeeze_mm = match (self.squeeze_mm, whole, self.pinion_nm) {
            (Some(felt_out), ..) => felt_out,
            (None, Some(whole), Some(alone)) => self.chart.squeeze_for(whole - alone),
            // Nobody felt the pinion alone: what is there is believed.
            (None, ..) => self.chart.squeeze_for(middle),
        };
        SidesRead { lash_mm, squeeze_mm }
    }

    /// Lash in the card's reading at four places; the tightest, mm. None where the gears do not turn.
    pub(super) fn read_lash(&mut self) -> Option<f64> {
        let teeth = self.hands.drawing().axle().gears().wheel_teeth;
        let stem = self.hands.card().targets.stem;
        let mut tightest: Option<(f64, u32)> = None;
        for quarter in 0..4 {
            let tooth = quarter * teeth / 4;
            let Some(lash) = self.hands.reads_with(Measurand::Lash { tooth }, "lever_dial", stem) else {
                continue;
            };
            if tightest.is_none_or(|(least, _)| lash < least) {
                tightest = Some((lash, tooth));
            }
        }
        if let Some((_, tooth)) = tightest {
            self.tight_tooth = tooth;
        }
        tightest.map(|(lash, _)| lash)
    }

    /// Reads lash once more and writes the tightest down.
    pub(super) fn write_lash(&mut self) {
        if let Some(value) = self.read_lash() {
            let what = Measurand::Lash {
                tooth: self.tight_tooth,
            };
            self.hands.does(Operation::Note {
                what,
                value,
                record: self.hands.record_of(what),
                remark: String::new(),
            });
        }
    }

    /// Lash in the card's reading for a millimetre of wheel travel.
    fn lash_slope(&self) -> f64 {
        let axle = self.hands.drawing().axle();
        self.hands.card().targets.stem.stem().share(axle.gears()) * self.chart.lash_over_wheel
    }

    /// How bad lash and squeeze would be: squares of distances from the middle over half windows.
    fn badness(&self, lash_mm: f64, squeeze_mm: f64) -> [f64; 2] {
        let targets = self.hands.card().targets;
        let of = |value: f64, window: crate::exercise::scenario::Window| {
            let half = 0.5 * (window.high - window.low);
            (value - 0.5 * (window.low + window.high)) / half
        };
        let side = if squeeze_mm < 0.0 {
            // Play is worse the more there is of it.
            -2.0 + 10.0 * squeeze_mm
        } else {
            of(self.chart.side_at(squeeze_mm), targets.side_torque_nm)
        };
        [of(lash_mm, targets.lash_mm), side]
    }

    /// Lash and side preload into their windows, equal and opposite; then the locks.
    pub(super) fn set_sides(&mut self) {
        for _ in 0..MOST_ROUNDS {
            if !self.wheel_on {
                self.fit_wheel();
            }
            if !self.carrier_in {
                self.set_carrier_in();
            }
            let read = self.read_sides();
            let slope = self.lash_slope();
            let Some(lash_mm) = read.lash_mm else {
                // Bound: away with the wheel, and look again.
                if self.by_adjusters() {
                    self.turn_rings([2, -2]);
                } else {
                    self.take_apart(crate::bench::Level::Carrier);
                    self.change_packs([0.15, -0.15]);
                }
                continue;
            };
            let now = self.badness(lash_mm, read.squeeze_mm);
            if now.iter().all(|b| b.abs() < GOOD) {
                break;
            }
            let better = if self.by_adjusters() {
                self.move_by_notches(lash_mm, read.squeeze_mm, slope)
            } else {
                self.move_by_shims(lash_mm, read.squeeze_mm, slope)
            };
            if !better {
                break;
            }
        }
        if self.by_adjusters() {
            for side in [CarrierSide::Tooth, CarrierSide::Back] {
                self.hands.does(Operation::FitLock { side });
            }
        }
    }

    fn predict_lash(&mut self, change_mm: f64) {
        let chances = if change_mm > 0.02 {
            [0.03, 0.05, 0.92]
        } else if change_mm < -0.02 {
            [0.92, 0.05, 0.03]
        } else {
            [0.15, 0.70, 0.15]
        };
        self.predict(Predicted::Lash, chances);
    }

    /// The whole notches that leave both in the best place; whether there are better ones than none.
    fn move_by_notches(&mut self, lash_mm: f64, squeeze_mm: f64, slope: f64) -> bool {
        let notch = self.notch_mm();
        let cost = |tooth: i32, back: i32| {
            let away = 0.5 * notch * f64::from(tooth - back);
            let closer = notch * f64::from(tooth + back);
            let [a, b] = self.badness(lash_mm + slope * away, squeeze_mm + closer);
            a * a + b * b
        };
        let mut best = (cost(0, 0) - 0.05, [0, 0]);
        // From far out both rings may have a long way.
        let closing = if squeeze_mm < 0.0 {
            #[expect(clippy::cast_possible_truncation, reason = "a few notches")]
            let notches = (-0.5 * squeeze_mm / notch).round() as i32;
            notches.clamp(0, 20)
        } else {
            0
        };
        for tooth in -REACH..=REACH {
            for back in -REACH..=REACH {
                let by = [tooth + closing, back + closing];
                let cost = cost(by[0], by[1]);
                if cost < best.0 {
                    best = (cost, by);
                }
            }
        }
        let (_, by) = best;
        if by == [0, 0] {
            return false;
        }
        self.predict_lash(0.5 * slope * notch * f64::from(by[0] - by[1]));
        self.turn_rings(by);
        true
    }

    /// Other packs: as much out of one side as into the other for lash, both alike for preload.
    fn move_by_shims(&mut self, lash_mm: f64, squeeze_mm: f64, slope: f64) -> bool {
        let targets = self.hands.card().targets;
        let middle = |w: crate::exercise::scenario::Window| 0.5 * (w.low + w.high);
        let away = (middle(targets.lash_mm) - lash_mm) / slope;
        let closer = self.chart.squeeze_for(middle(targets.side_torque_nm)) - squeeze_mm;
        self.predict_lash(slope * away);
        self.take_apart(crate::bench::Level::Carrier);
        if self.pinion_nm.is_none() {
            // With the carrier out the pinion is felt alone: then what the sides add is known.
            self.read_pinion();
        }
        self.change_packs([0.5 * closer + away, 0.5 * closer - away]);
        true
    }
}
