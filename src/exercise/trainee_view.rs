//! What a trainee may know: the card, what lies on the bench by its label, and what was answered. It cannot hold a truth.

use super::prepared::Exercise;
use super::scenario::Scenario;
use crate::bench::{Answer, Bench, Note, Part, Record, ShimPlace};

/// Everything a trainee, a panel or the reference technician may look at.
#[derive(Debug, Clone, PartialEq)]
pub struct TraineeView {
    /// The card. It holds spreads and no numbers drawn from them.
    pub card: Scenario,
    /// Pieces of the kit by their labels.
    pub kit: Vec<SeenPiece>,
    /// Names of the gear sets on painted plates, in their order.
    pub plates: Vec<String>,
    /// Names of the instruments.
    pub tools: Vec<String>,
    /// Parts that may be used only once.
    pub single_use: Vec<Part>,
    /// Answers so far, in order.
    pub answers: Vec<Answer>,
    /// Measurements so far, each with whether it is stale.
    pub records: Vec<Record>,
    /// The set-up sheet.
    pub notes: Vec<Note>,
    /// Minutes so far.
    pub minutes: f64,
    /// Money so far.
    pub money: f64,
    /// Tear-downs so far.
    pub tear_downs: u32,
    /// Whether the axle has been handed over.
    pub finished: bool,
}

/// A piece of the kit as its label says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeenPiece {
    /// Its number in the kit.
    pub number: u32,
    /// Where it fits.
    pub place: ShimPlace,
    /// What its label says, mm.
    pub labelled_mm: f64,
    /// Where it is fitted, if it is.
    pub fitted: bool,
}

impl TraineeView {
    /// What can be seen of a bench after these answers.
    pub fn of<'a>(exercise: &Exercise, bench: &Bench, answers: impl Iterator<Item = &'a Answer>) -> Self {
        let packs = bench.packs();
        let setting = bench.setting();
        let kit = (0_u32..)
            .zip(setting.kit.iter().enumerate())
            .map(|(number, (index, piece))| SeenPiece {
                number,
                place: piece.place,
                labelled_mm: piece.labelled_mm,
                fitted: packs.at(piece.place).contains(&index),
            });
        let ledger = bench.ledger();
        Self {
            card: exercise.scenario().clone(),
            kit: kit.collect(),
            plates: setting.plates.iter().map(|p| p.gears.clone()).collect(),
            tools: setting.tools.iter().map(|t| t.name.clone()).collect(),
            single_use: setting.single_use.clone(),
            answers: answers.cloned().collect(),
            records: bench.records().to_vec(),
            notes: bench.notes().to_vec(),
            minutes: ledger.minutes,
            money: ledger.money,
            tear_downs: ledger.tear_downs,
            finished: bench.is_finished(),
        }
    }
}
