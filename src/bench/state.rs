//! The state of an attempt at the bench.

use std::sync::Arc;

use super::answer::Answer;
use super::aspect::{Aspect, Aspects, Change};
use super::carrier_group::{CarrierGroup, Paste};
use super::caution::Caution;
use super::choices::{Ring, ShimPlace};
use super::consequence::Done;
use super::kit::Packs;
use super::ledger::{Entry, Ledger};
use super::operation::Operation;
use super::pinion_group::PinionGroup;
use super::plate::PlateJudged;
use super::record::Record;
use super::refusal::Refusal;
use super::setting::{BenchSetUp, StartError, StartingState};
use super::sheet::{Judgement, Note, Prediction, Sheet};
use super::shop::Shop;
use crate::axle::{Assembly, AxleError, Built, Nut, Truth, settle, support_as_built};

/// An axle on the bench, with everything around it that changes. Each part owns its facts; what follows from them is
/// `built`.
#[derive(Debug, Clone)]
pub struct Bench {
    pub(super) setting: Arc<BenchSetUp>,
    pub(super) truth: Truth,
    pub(super) pinion: PinionGroup,
    pub(super) carrier: CarrierGroup,
    pub(super) sheet: Sheet,
    pub(super) shop: Shop,
    /// What follows from truth, pinion, carrier and packs.
    pub(super) built: Built,
    /// Whether the gears were tight at the placement with these bits: solved once.
    pub(super) tight_at: Option<([u64; 4], bool)>,
    pub(super) operations: u32,
    pub(super) finished: bool,
}

impl Bench {
    /// An axle on the bench.
    ///
    /// # Errors
    /// [`StartError`] for a start that cannot be.
    pub fn new(setting: Arc<BenchSetUp>, truth: Truth, start: &StartingState) -> Result<Self, StartError> {
        let mut packs = Packs::new(setting.kit.len());
        let bare = Assembly::bare();
        let (found, used) = match start {
            StartingState::Bare => (&bare, false),
            StartingState::Assembled {
                assembly,
                packs: pieces,
            } => {
                for (place, pieces) in ShimPlace::ALL.into_iter().zip(pieces) {
                    packs.fit(&setting.kit, place, pieces)?;
                }
                (&**assembly, true)
            }
        };
        let mut bench = Self {
            pinion: PinionGroup::found(found, &truth, used),
            carrier: CarrierGroup::found(found, &truth, used),
            sheet: Sheet::default(),
            shop: Shop::new(packs),
            built: settle(&setting.axle, &truth, found)?,
            tight_at: None,
            operations: 0,
            finished: false,
            setting,
            truth,
        };
        bench.settle_again()?;
        Ok(bench)
    }

    /// Does one operation. A refused one changes nothing but its number.
    pub fn apply(&mut self, operation: &Operation) -> Answer {
        self.operations = self.operations.saturating_add(1);
        let number = self.operations;
        if let Err(reason) = self.takes(operation) {
            return Answer::refused(number, reason);
        }
        let open = self.open_cautions(operation);
        let mut next = self.clone();
        let done = next.perform(operation).and_then(|done| {
            next.settle_again()?;
            Ok(done)
        });
        match done {
            Ok(done) => {
                let answer = next.account(self, operation, done, open);
                *self = next;
                answer
            }
            Err(reason) => Answer::refused(number, reason),
        }
    }

    /// Whether anything is done here any more, and whether this is an operation with numbers that one can have.
    pub(super) fn takes(&self, operation: &Operation) -> Result<(), Refusal> {
        if self.finished {
            return Err(Refusal::HandedOver);
        }
        operation.check().map_err(|error| Refusal::NotTaken { error })
    }

    /// Hazards of an operation as the state is now, whether met or not: what the card shows beforehand.
    pub fn cautions(&self, operation: &Operation) -> Vec<Caution> {
        self.hazards(operation).0
    }

    fn open_cautions(&self, operation: &Operation) -> Vec<Caution> {
        let (hazards, met) = self.hazards(operation);
        hazards.into_iter().filter(|h| !met.contains(&h.precaution())).collect()
    }

    /// Books what was done: time, money, tear-downs, what went stale.
    fn account(&mut self, before: &Self, operation: &Operation, done: Done, open: Vec<Caution>) -> Answer {
        let number = self.operations;
        let minutes = match operation {
            Operation::Wait { minutes } => *minutes,
            other => self.setting.tariff.minutes_of(other.kind()) + done.more_minutes,
        };
        // A wheel just brought to its temperature has it now.
        if !matches!(operation, Operation::HeatWheel { .. }) {
            self.carrier.cool(minutes);
        }
        let parts: f64 = done
            .bought
            .iter()
            .fold(0.0, |sum, part| sum + self.setting.tariff.price_of(*part));
        let ledger = &mut self.shop.ledger;
        ledger.minutes += minutes;
        ledger.money += parts;
        ledger.spoiled.extend(done.spoiled.iter().map(|p| (number, *p)));
        ledger.reused.extend(done.reused.iter().map(|p| (number, *p)));
        ledger.unsafe_acts.extend(open.iter().map(|c| (number, *c)));
        ledger.entries.push(Entry {
            operation: number,
            kind: operation.kind(),
            minutes,
            money: parts,
        });
        let apart = before.built.placement.is_some() && self.built.placement.is_none();
        let loosened = before.built.placement.is_none() && before.built.pinion.is_some() && self.built.pinion.is_none();
        if apart || loosened {
            ledger.tear_downs += 1;
        }
        // What was read depends on the state that was read; the record of this operation comes after the change.
        let change = before.changed_to(self);
        let stale = self.sheet.mark_stale(&change);
        let readings = done.shown.map_or_else(Vec::new, |shown| {
            let behind = shown.behind;
            self.sheet
                .record(number, shown.what, &shown.instrument, shown.values, behind)
        });
        Answer {
            operation: number,
            done: true,
            refused: None,
            minutes,
            money: parts,
            noticed: done.noticed,
            cautions: open,
            readings,
            spoiled: done.spoiled,
            stale,
        }
    }

    /// What differs in a later state, as far as readings depend on it.
    fn changed_to(&self, later: &Self) -> Change {
        let either = |play: fn(&Built) -> bool| [self, later].iter().any(|bench| play(&bench.built));
        let play = [
            either(|built| built.pinion.is_some_and(|p| p.play_mm > 0.0)),
            either(|built| built.side.is_some_and(|s| s.play_mm > 0.0)),
        ];
        let kit = &self.setting.kit;
        let [old, new] = [&self.shop.packs, &later.shop.packs];
        let differ = |a: f64, b: f64| a.to_bits() != b.to_bits();
        Change {
            axle: Aspects::changed(self.assembly(), later.assembly(), play)
                .with_if(
                    Aspect::Warmth,
                    (self.carrier.wheel_c - later.carrier.wheel_c).abs() > 1.0,
                )
                .with_if(Aspect::Paste, self.carrier.paste != later.carrier.paste),
            packs: ShimPlace::ALL
                .into_iter()
                .filter(|place| differ(old.thickness_mm(kit, *place), new.thickness_mm(kit, *place)))
                .collect(),
            pieces: (0..kit.len())
                .filter(|piece| differ(old.height_mm(kit, *piece), new.height_mm(kit, *piece)))
                .filter_map(|piece| u32::try_from(piece).ok())
                .collect(),
            rings: Ring::ALL
                .into_iter()
                .filter(|ring| self.pinion.ring(*ring) != later.pinion.ring(*ring))
                .collect(),
        }
    }

    /// What is fitted, made of the parts that own it; not yet settled.
    pub(super) fn fitted(&self) -> Assembly {
        let thickness = |place| self.shop.packs.thickness_mm(&self.setting.kit, place);
        let mut assembly = Assembly::bare();
        self.pinion
            .put_into(&mut assembly, thickness(ShimPlace::Depth), thickness(ShimPlace::Spacer));
        self.carrier.put_into(
            &mut assembly,
            [ShimPlace::ToothSide, ShimPlace::BackSide].map(thickness),
        );
        assembly
    }

    /// Settles what is fitted; the parts take over what that changes in them.
    pub(super) fn settle_again(&mut self) -> Result<(), AxleError> {
        self.built = settle(&self.setting.axle, &self.truth, &self.fitted())?;
        self.pinion.take_over(&self.built.after);
        self.carrier.take_over(&self.built.after);
        Ok(())
    }

    /// Whether a ring is on, as anybody sees.
    pub fn ring_on(&self, ring: Ring) -> bool {
        self.pinion.ring_on(ring)
    }

    /// Whether a sleeve that came off lies there to be put on again.
    pub fn has_old_sleeve(&self) -> bool {
        self.pinion.old_sleeve.is_some()
    }

    /// What does not change.
    pub fn setting(&self) -> &BenchSetUp {
        &self.setting
    }

    /// The hidden truth: for the exercise, never for a trainee.
    pub fn truth(&self) -> &Truth {
        &self.truth
    }

    /// What is fitted, settled, with true sizes: for the exercise, never for a trainee.
    pub fn assembly(&self) -> &Assembly {
        &self.built.after
    }

    /// What follows from both: for the exercise, never for a trainee.
    pub fn built(&self) -> &Built {
        &self.built
    }

    /// Torque that the pinion nut stands at: what would turn it on from here, N m. None without a nut that holds a pinion.
    /// For scoring: it is the truth.
    pub fn nut_torque_nm(&self) -> Option<f64> {
        let Nut::On { friction_times, .. } = self.pinion.nut else {
            return None;
        };
        let clamp_n = self.built.pinion?.tightened.clamp_n;
        let support = support_as_built(&self.setting.axle, &self.truth, self.assembly());
        let nut = support.nut.with_friction_times(friction_times);
        Some(nut.tightening_torque_nm(clamp_n))
    }

    /// Shim packs.
    pub fn packs(&self) -> &Packs {
        &self.shop.packs
    }

    /// Account so far.
    pub fn ledger(&self) -> &Ledger {
        &self.shop.ledger
    }

    /// All measurements.
    pub fn records(&self) -> &[Record] {
        &self.sheet.records
    }

    /// The set-up sheet.
    pub fn notes(&self) -> &[Note] {
        &self.sheet.notes
    }

    /// All predictions.
    pub fn predictions(&self) -> &[Prediction] {
        &self.sheet.predictions
    }

    /// Parts condemned.
    pub fn judgements(&self) -> &[Judgement] {
        &self.sheet.judgements
    }

    /// What was said of painted plates.
    pub fn plates_judged(&self) -> &[PlateJudged] {
        &self.sheet.plates_judged
    }

    /// Hints asked for: (operation, level).
    pub fn hints(&self) -> &[(u32, u32)] {
        &self.sheet.hints
    }

    /// Paste on the teeth.
    pub fn paste(&self) -> Option<&Paste> {
        self.carrier.paste.as_ref()
    }

    /// Whether the wheel was overheated.
    pub fn wheel_is_scrap(&self) -> bool {
        self.carrier.wheel_scrap
    }

    /// Whether the wheel's bolts were torqued cold, with locking on clean threads.
    pub fn bolts_are_sound(&self) -> bool {
        self.carrier.bolts_are_sound()
    }

    /// How many operations were asked for, refused ones included.
    pub fn operations(&self) -> u32 {
        self.operations
    }

    /// Whether the axle was handed over.
    pub fn is_finished(&self) -> bool {
        self.finished
    }
}
