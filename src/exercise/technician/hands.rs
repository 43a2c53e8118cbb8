//! Hands that work on an attempt and eyes that see what a trainee sees. The truth cannot be reached through them.

use crate::bench::{Answer, Cleaned, Measurand, Operation, StemChoice, Turned};
use crate::exercise::attempt::Attempt;
use crate::exercise::prepared::Exercise;
use crate::exercise::scenario::Scenario;
use crate::exercise::trainee_view::TraineeView;

/// Turns with which bearings are settled before they are read.
const SETTLING_TURNS: f64 = 40.0;

/// An attempt that can only be worked on and looked at.
pub(super) struct Hands {
    attempt: Attempt,
}

impl Hands {
    pub(super) fn new(attempt: Attempt) -> Self {
        Self { attempt }
    }

    /// The attempt as it came out.
    pub(super) fn end(self) -> Attempt {
        self.attempt
    }

    /// Does an operation.
    pub(super) fn does(&mut self, operation: Operation) -> Answer {
        self.attempt.apply(&operation)
    }

    /// The card.
    pub(super) fn card(&self) -> &Scenario {
        self.attempt.exercise().scenario()
    }

    /// The exercise as its card and drawings show it.
    pub(super) fn drawing(&self) -> &Exercise {
        self.attempt.exercise()
    }

    /// What can be seen.
    pub(super) fn sees(&self) -> TraineeView {
        self.attempt.seen()
    }

    /// Takes a reading, with the instrument set up afresh; none where it shows nothing.
    pub(super) fn reads(&mut self, what: Measurand, instrument: &str) -> Option<f64> {
        self.reads_with(what, instrument, StemChoice::default())
    }

    /// The same with the dial's stem laid so.
    pub(super) fn reads_with(&mut self, what: Measurand, instrument: &str, stem: StemChoice) -> Option<f64> {
        let answer = self.does(Operation::Measure {
            what,
            instrument: instrument.to_owned(),
            set_up_again: true,
            stem,
        });
        answer.value(what.main_part()?)
    }

    /// The last record of a quantity, as it stands on the list of readings.
    pub(super) fn record_of(&self, what: Measurand) -> Option<u32> {
        let records = self.attempt.bench().records();
        records.iter().rev().find(|r| r.what == what).map(|r| r.number)
    }

    /// A torque at the pinion nut, by the first wrench whose pointer shows it: mean of three pulls.
    pub(super) fn torque(&mut self, what: Measurand) -> Option<f64> {
        const WRENCHES: [&str; 3] = ["small_dial_wrench", "cord_and_scale", "small_beam_wrench"];
        for wrench in WRENCHES {
            if let Some(first) = self.reads(what, wrench) {
                let more: Vec<f64> = (0..2).filter_map(|_| self.reads(what, wrench)).collect();
                return Some((first + more.iter().sum::<f64>()) / (1.0 + more.len() as f64));
            }
        }
        None
    }

    /// Turns the pinion until its bearings have settled.
    pub(super) fn settle(&mut self) -> bool {
        self.does(Operation::Turn {
            what: Turned::Pinion,
            turns: SETTLING_TURNS,
        })
        .done
    }

    /// Wipes and deburrs the kit.
    pub(super) fn clean_shims(&mut self) {
        self.does(Operation::Clean {
            what: Cleaned::Shims,
            precautions: Vec::new(),
        });
    }
}
