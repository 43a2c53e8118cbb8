//! The reference technician: does an exercise with what a trainee may know, by the decision rules of the trade.
//!
//! It plays through `Hands`, which give answers and never the truth, and knows the card, the drawing and the chart of
//! the set ([`Chart`]). What it takes is par. Two weak policies show that the score tells good work from bad:
//! [`Policy::Reversed`] does everything alike but turns the depth rule round, [`Policy::Random`] does anything.
//!
//! Order of work: clean, compare, seat; pinion preload; side preload; lash into its window; then the print, and no verdict
//! on a print taken otherwise. Depth by the heights of both prints first, their lengths second, with the slopes of the
//! set's own chart; a step below what can be told apart is not made.
//!
//! - `pinion`: shims, rings, spacer, nut, torque, depth by gauge. `sides`: ring gear, carrier, lash, side preload.
//! - `print`: paste and what follows from it. `small`: exercises without an axle to hand over. `random`: anything.

mod chart;
mod hands;
mod packs;
mod pinion;
mod print;
mod random;
mod sides;
mod small;

use std::sync::Arc;

pub use chart::{Chart, FlankChart};
pub(super) use print::{Middles, asks, middles};

use self::hands::Hands;
use self::packs::Drawer;
use super::attempt::Attempt;
use super::counted::Counted;
use super::prepared::{Exercise, ExerciseError};
use super::scenario::DepthFrom;
use super::scenario::Fitted;
use crate::bench::{Level, Measurand, Operation, Part, ReadingPart};

/// How an attempt is played.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Policy {
    /// By the rules of the trade.
    Reference,
    /// Alike, with the depth rule turned round.
    Reversed,
    /// Anything.
    Random,
}

impl Policy {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Reference, Self::Reversed, Self::Random];

    /// Its name on the command line.
    pub fn name(self) -> &'static str {
        match self {
            Self::Reference => "reference",
            Self::Reversed => "reversed",
            Self::Random => "random",
        }
    }
}

/// Plays a seed of an exercise to its end.
///
/// # Errors
/// [`ExerciseError`] for a seed that cannot be played.
pub fn play(exercise: &Arc<Exercise>, seed: u64, policy: Policy) -> Result<Attempt, ExerciseError> {
    let hands = Hands::new(Attempt::begin(exercise.clone(), seed)?);
    let hands = match policy {
        Policy::Random => random::play(hands, seed),
        Policy::Reference | Policy::Reversed => {
            let chart = Chart::of(exercise)?;
            let mut technician = Technician::new(hands, chart, policy == Policy::Reversed);
            technician.work();
            technician.hands
        }
    };
    Ok(hands.end())
}

/// Most times that the pinion is taken out again before what there is is handed over: by the rules, and by rules that lead
/// nowhere.
const MOST_BUILDS: u32 = 6;
const MOST_BUILDS_ASTRAY: u32 = 4;
/// Turns with which bearings are settled before they are read.
const SETTLING_TURNS: f64 = 40.0;
/// A change of depth below this is not made, mm (0.002 in; common practice, no source).
pub(super) const LEAST_STEP_MM: f64 = 0.05;
/// The same by the gauge before a print was seen, mm.
const LEAST_GAUGE_STEP_MM: f64 = 0.045;
/// Largest change of depth at once, mm (0.010 in; common practice, no source).
pub(super) const LARGEST_STEP_MM: f64 = 0.254;

/// Somebody who does this daily.
#[expect(clippy::struct_excessive_bools, reason = "each says of one part whether it is on")]
struct Technician {
    hands: Hands,
    chart: Chart,
    reversed: bool,
    drawer: Drawer,
    /// What is etched on the pinion, mm.
    mark_mm: f64,
    /// Place of the pinion by the gauge in the present build, mm.
    gauged_mm: Option<f64>,
    /// The gauge's distance when the axle came in, mm.
    found_mm: Option<f64>,
    /// Torque of the pinion alone in the present build, N m.
    pinion_nm: Option<f64>,
    /// Largest lash reading less the smallest one's tooth: where it is tightest.
    tight_tooth: u32,
    builds: u32,
    rings_on: bool,
    seal_in: bool,
    wheel_on: bool,
    carrier_in: bool,
    bolts_used: bool,
    /// Squeeze of the side stacks as it was felt out with the rings, mm.
    squeeze_mm: Option<f64>,
    /// How far the adjusters are screwed in, notches from where they stand when a carrier is set in.
    rings_in: Option<[f64; 2]>,
    /// Prints seen: record, place by shims, what they ask for.
    prints: Vec<ReadPrint>,
}

/// A print that was read, with what followed from it.
#[derive(Debug, Clone, Copy)]
struct ReadPrint {
    record: u32,
    /// Sum of the changes of depth before it, mm, deeper positive.
    deeper_mm: f64,
    /// How much deeper the print asks to go, mm.
    asks_mm: f64,
    /// How unlike it would still be at best: squares of distances over full bands.
    left: f64,
}

impl Technician {
    fn new(hands: Hands, chart: Chart, reversed: bool) -> Self {
        let drawer = Drawer::new(&hands);
        let fitted = hands.card().start.fitted;
        let carrier = matches!(fitted, Fitted::Carrier | Fitted::Everything);
        Self {
            rings_on: matches!(fitted, Fitted::Rings | Fitted::Everything),
            seal_in: fitted == Fitted::Everything,
            wheel_on: carrier,
            carrier_in: carrier,
            bolts_used: carrier,
            rings_in: None,
            squeeze_mm: None,
            hands,
            chart,
            reversed,
            drawer,
            mark_mm: 0.0,
            gauged_mm: None,
            found_mm: None,
            pinion_nm: None,
            tight_tooth: 0,
            builds: 0,
            prints: Vec::new(),
        }
    }

    fn counts(&self, counted: Counted) -> bool {
        self.hands.card().counts.contains(&counted)
    }

    fn judges_depth(&self) -> bool {
        self.counts(Counted::Depth) || self.counts(Counted::Print)
    }

    fn needs_mesh(&self) -> bool {
        [
            Counted::Lash,
            Counted::Spread,
            Counted::Runout,
            Counted::SideTorque,
            Counted::Print,
        ]
        .into_iter()
        .any(|c| self.counts(c))
    }

    /// Whether the pinion's side is judged at all.
    fn judges_pinion(&self) -> bool {
        self.judges_depth() || self.counts(Counted::PinionTorque)
    }

    /// Whether there is nothing left to try.
    fn has_had_enough(&self) -> bool {
        self.builds >= if self.reversed { MOST_BUILDS_ASTRAY } else { MOST_BUILDS }
    }

    /// Which way a change of depth is made: a reversed rule goes the other way.
    fn rule(&self, deeper_mm: f64) -> f64 {
        if self.reversed { -deeper_mm } else { deeper_mm }
    }

    fn work(&mut self) {
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
