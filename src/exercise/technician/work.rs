//! The order of work, from the first look to the last check.

use super::person::{ReadPrint, Technician};
use super::steps::{LARGEST_STEP_MM, LEAST_STEP_MM};
use crate::bench::{Level, Measurand, Operation, Part, ReadingPart};
use crate::exercise::counted::Counted;
use crate::exercise::fitted::Fitted;
use crate::exercise::scenario::DepthFrom;

impl Technician {
    pub(super) fn work(&mut self) {
        let card = self.hands.card();
        if card.plates.is_some() {
            self.judge_plates();
        } else if card.pack.is_some() {
            self.make_pack();
        } else if card.counts.is_empty() {
            if card.start.fitted != Fitted::Everything {
                self.pinion_from_parts();
            }
            self.read_what_is_asked();
        } else {
            if self.judges_pinion() {
                self.whole();
            } else {
                self.sides_only();
            }
            self.read_what_is_asked();
        }
        self.hands.does(Operation::Finish {});
    }

    /// The pinion built in, and nothing else.
    fn pinion_from_parts(&mut self) {
        self.compare_numbers();
        self.hands.clean_shims();
        if self.rings_on {
            self.check_seats();
        }
        self.build_pinion();
    }

    /// Lash and side preload on an axle that stands together.
    fn sides_only(&mut self) {
        self.hands.settle();
        self.judge_squeeze();
        if self.counts(Counted::Runout) || self.counts(Counted::Spread) {
            let runs_out = self.runout().is_some_and(|mm| mm > 0.6 * self.runout_limit());
            if runs_out {
                self.take_apart(Level::Wheel);
            }
        }
        self.set_sides();
        self.last_check();
    }

    /// Everything, from the pinion on.
    fn whole(&mut self) {
        let fitted = self.hands.card().start.fitted;
        if fitted == Fitted::Everything {
            self.hands.settle();
            // What the axle shows as it comes in, for the bracket; no verdict yet.
            self.read_lash();
            let runs_out = self.needs_mesh() && self.runout().is_some_and(|mm| mm > 0.6 * self.runout_limit());
            if self.counts(Counted::Print) {
                self.look_at_print(0.0);
                // It was taken with whatever was wrong: no verdict from it.
                self.prints.clear();
            }
            self.take_apart(if runs_out { Level::Wheel } else { Level::Carrier });
        } else if fitted == Fitted::Carrier {
            self.take_apart(Level::Carrier);
        }
        if self.compare_numbers() {
            return;
        }
        self.hands.clean_shims();
        let mut deeper_mm = 0.0;
        if fitted == Fitted::Everything {
            self.read_pinion();
            self.found_mm = self.gauge();
            self.gauged_mm = self.found_mm.map(|mm| self.off_by_gauge(mm));
        } else {
            if fitted == Fitted::Rings {
                self.check_seats();
            }
            self.build_pinion();
        }
        loop {
            // Preload and depth of the pinion, before the carrier comes in.
            deeper_mm += self.settle_pinion();
            if !self.needs_mesh() {
                break;
            }
            self.set_sides();
            if !self.counts(Counted::Print) && !self.counts(Counted::Depth) {
                break;
            }
            if self.hands.card().depth_from == DepthFrom::Found {
                self.look_at_print(deeper_mm);
                break;
            }
            let Some(print) = self.look_at_print(deeper_mm) else {
                // No print at all: out of mesh or bound; a whole step by the gauge is all there is.
                break;
            };
            if self.says_no(print) {
                return;
            }
            let step = self.next_step(print);
            if step.abs() < LEAST_STEP_MM || self.has_had_enough() {
                break;
            }
            self.predict_print(step);
            self.take_apart(Level::Carrier);
            let made = self.change_depth(self.rule(step));
            deeper_mm += made;
            // From here on the print is believed and not the gauge.
            self.gauged_mm = None;
        }
        self.last_check();
    }

    /// Numbers and mark; whether the gears do not belong together and were refused for it.
    fn compare_numbers(&mut self) -> bool {
        let answer = self.hands.does(Operation::CompareNumbers {});
        let read = |part| answer.value(part);
        let (Some(pinion), Some(wheel), Some(mark)) = (
            read(ReadingPart::PinionNumber),
            read(ReadingPart::RingGearNumber),
            read(ReadingPart::PinionMark),
        ) else {
            return false;
        };
        self.mark_mm = mark;
        if (pinion - wheel).abs() < 0.5 {
            return false;
        }
        let record = answer.record().unwrap_or(0);
        self.hands.does(Operation::Condemn {
            part: Part::Gears,
            reason: String::new(),
            evidence: vec![record],
        });
        true
    }

    /// The print cannot be put right by depth: two prints at two depths say so, and the case is refused.
    fn says_no(&mut self, print: ReadPrint) -> bool {
        /// Distances over full bands, squared, that no shim explains.
        const INCURABLE: f64 = 9.0;
        if self.hands.card().is_solvable() || print.left < INCURABLE {
            return false;
        }
        let other = self
            .prints
            .iter()
            .find(|p| (p.deeper_mm - print.deeper_mm).abs() > LEAST_STEP_MM && p.left >= INCURABLE)
            .copied();
        let Some(other) = other else {
            return false;
        };
        self.hands.does(Operation::Condemn {
            part: Part::Case,
            reason: String::new(),
            evidence: vec![other.record, print.record],
        });
        true
    }

    /// How much deeper to go after a print: what its heights ask for, between prints that bracket by interpolation.
    fn next_step(&self, print: ReadPrint) -> f64 {
        /// A print that no shim explains is bracketed before it is believed, mm.
        const BRACKET_MM: f64 = 0.10;
        let suspicious = !self.hands.card().is_solvable() && print.left > 4.0;
        let bracketed = self
            .prints
            .iter()
            .any(|p| (p.deeper_mm - print.deeper_mm).abs() > LEAST_STEP_MM);
        if suspicious && !bracketed {
            return if print.asks_mm < 0.0 { -BRACKET_MM } else { BRACKET_MM };
        }
        let opposite = self
            .prints
            .iter()
            .filter(|p| p.asks_mm * print.asks_mm < 0.0 && (p.deeper_mm - print.deeper_mm).abs() > 0.01)
            .min_by(|a, b| a.asks_mm.abs().total_cmp(&b.asks_mm.abs()));
        let step = match opposite {
            Some(other) if !self.reversed => {
                let span = other.deeper_mm - print.deeper_mm;
                let between = span * print.asks_mm / (print.asks_mm - other.asks_mm);
                // Bracket and chart each have their errors.
                0.5 * (between + print.asks_mm)
            }
            _ => print.asks_mm,
        };
        step.clamp(-LARGEST_STEP_MM, LARGEST_STEP_MM)
    }

    /// Everything once more in the state in which it is handed over, and written down.
    fn last_check(&mut self) {
        if !self.needs_mesh() {
            return;
        }
        self.hands.settle();
        let whole = self.hands.torque(Measurand::RollingTorque {});
        if let Some(value) = whole.filter(|_| !self.judges_pinion()) {
            self.hands.does(Operation::Note {
                what: Measurand::RollingTorque {},
                value,
                record: self.hands.record_of(Measurand::RollingTorque {}),
                remark: String::new(),
            });
        }
        self.write_lash();
        if self.counts(Counted::Runout) || self.counts(Counted::Spread) {
            self.runout();
        }
    }
}
