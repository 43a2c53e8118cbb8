//! The state of an attempt at the bench.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::answer::{Answer, Record};
use super::aspect::{Aspect, Aspects};
use super::caution::{Caution, Precaution};
use super::consequence::{Done, Refusal};
use super::kit::Packs;
use super::ledger::{Entry, Ledger};
use super::measurand::Measurand;
use super::operation::{Brushing, Operation, Predicted, Ring, ShimPlace};
use super::part::Part;
use super::plate::PlateJudged;
use super::setting::{Setting, Start, StartError};
use super::shown::Usage;
use crate::axle::{Assembly, AxleError, Bearings, Built, ROOM_C, SpacerFitted, Truth, settle};
use crate::bearing::SpacerMemory;
use crate::contact::Placement;
use crate::numerics::math;

/// Minutes in which a warm wheel loses 63 % of its warmth in still air. Judgement.
const COOLING_MINUTES: f64 = 25.0;

/// An axle on the bench, with everything around it that changes.
#[derive(Debug, Clone)]
#[expect(clippy::struct_excessive_bools, reason = "each says of one part how it lies there")]
pub struct Bench {
    pub(super) setting: Arc<Setting>,
    pub(super) truth: Truth,
    pub(super) assembly: Assembly,
    pub(super) built: Built,
    pub(super) packs: Packs,
    /// Which rings are on their seats.
    pub(super) rings_on: [bool; 3],
    pub(super) set_up_bearings: bool,
    pub(super) spacer_on: bool,
    /// The sleeve that lies on the bench, with what it has been through.
    pub(super) old_sleeve: Option<SpacerMemory>,
    pub(super) nut_used: bool,
    pub(super) bolts_used: bool,
    pub(super) bolts_warm: bool,
    pub(super) bolts_locked: bool,
    pub(super) threads_clean: bool,
    pub(super) wheel_seat_clean: bool,
    pub(super) wheel_c: f64,
    pub(super) wheel_scrap: bool,
    pub(super) paste: Option<Paste>,
    pub(super) ledger: Ledger,
    pub(super) records: Vec<Record>,
    pub(super) notes: Vec<Note>,
    pub(super) predictions: Vec<Prediction>,
    pub(super) judgements: Vec<Judgement>,
    pub(super) plates_judged: Vec<PlateJudged>,
    pub(super) hints: Vec<(u32, u32)>,
    /// How often each instrument was used and set up.
    pub(super) uses: BTreeMap<String, Usage>,
    /// How often paste was brushed on.
    pub(super) brushings: u32,
    pub(super) tightenings: u64,
    pub(super) nut_steps: u64,
    /// Friction that the present tightening of the nut meets, times nominal.
    pub(super) nut_friction_times: f64,
    /// Whether the gears were tight at the placement with these bits: solved once.
    pub(super) tight_at: Option<([u64; 4], bool)>,
    pub(super) operations: u32,
    pub(super) finished: bool,
}

/// Paste on teeth of the wheel.
#[derive(Debug, Clone, PartialEq)]
pub struct Paste {
    /// Teeth painted.
    pub teeth: Vec<u32>,
    /// How.
    pub film: Brushing,
    /// Which brushing of the attempt it is, from 1.
    pub brushing: u32,
    /// How they were rolled, if they were.
    pub rolled: Option<Rolled>,
}

/// How painted teeth were rolled, and where the gears stood.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rolled {
    /// Torque that dragged the wheel, N m.
    pub drag_nm: f64,
    /// Passes each way, all together.
    pub passes: u32,
    /// Where the gears stood.
    pub placement: Placement,
}

/// A value on the set-up sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Note {
    /// The operation that wrote it.
    pub operation: u32,
    /// What of.
    pub what: Measurand,
    /// What the trainee holds true.
    pub value: f64,
    /// With what and in which state.
    pub remark: String,
    /// Whether something that it depends on was changed since.
    pub stale: bool,
    behind: Aspects,
}

/// A prediction.
#[derive(Debug, Clone, PartialEq)]
pub struct Prediction {
    /// The operation that made it.
    pub operation: u32,
    /// What about.
    pub about: Predicted,
    /// Chances of the three outcomes.
    pub chances: [f64; 3],
    /// Where the gears stood, if they were in mesh.
    pub placement: Option<Placement>,
}

/// A part condemned.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgement {
    /// The operation that said so.
    pub operation: u32,
    /// Which part.
    pub part: Part,
    /// Why.
    pub reason: String,
    /// Records that show it.
    pub evidence: Vec<u32>,
}

impl Bench {
    /// An axle on the bench.
    ///
    /// # Errors
    /// [`StartError`] for a start that cannot be.
    pub fn new(setting: Arc<Setting>, truth: Truth, start: &Start) -> Result<Self, StartError> {
        let mut packs = Packs::new(setting.kit.len());
        let mut assembly = Assembly::bare();
        let mut fitted = false;
        if let Start::Assembled {
            assembly: found,
            packs: pieces,
        } = start
        {
            assembly = (**found).clone();
            assembly.caps_swapped = truth.case.caps_found_swapped && assembly.carrier_in;
            if let Some(wheel) = &mut assembly.wheel {
                wheel.dirty |= truth.wheel_fit.found_dirty;
            }
            fitted = true;
            for (place, pieces) in ShimPlace::ALL.into_iter().zip(pieces) {
                packs.fit(&setting.kit, place, pieces)?;
            }
        }
        let real = assembly.bearings == Bearings::Real;
        let mut bench = Self {
            built: settle(&setting.axle, &truth, &assembly)?,
            rings_on: [real; 3],
            set_up_bearings: assembly.bearings == Bearings::SetUp,
            spacer_on: assembly.spacer != SpacerFitted::None,
            old_sleeve: None,
            nut_used: fitted,
            bolts_used: fitted,
            bolts_warm: false,
            bolts_locked: fitted,
            threads_clean: false,
            wheel_seat_clean: false,
            wheel_c: ROOM_C,
            wheel_scrap: false,
            paste: None,
            ledger: Ledger::default(),
            records: Vec::new(),
            notes: Vec::new(),
            predictions: Vec::new(),
            judgements: Vec::new(),
            plates_judged: Vec::new(),
            hints: Vec::new(),
            uses: BTreeMap::new(),
            brushings: 0,
            tightenings: 0,
            nut_steps: 0,
            nut_friction_times: truth.nut.friction_times,
            tight_at: None,
            operations: 0,
            finished: false,
            setting,
            truth,
            assembly,
            packs,
        };
        bench.settle_again()?;
        Ok(bench)
    }

    /// Does one operation. A refused one changes nothing but its number.
    pub fn apply(&mut self, operation: &Operation) -> Answer {
        self.operations = self.operations.saturating_add(1);
        let number = self.operations;
        if self.finished {
            return Answer::refused(number, "The axle has been handed over.".to_owned());
        }
        if let Err(error) = operation.check() {
            return Answer::refused(number, error.to_string());
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
            Err(Refusal(reason)) => Answer::refused(number, reason),
        }
    }

    /// Hazards of an operation as the state is now, whether met or not: what the card shows beforehand.
    pub fn cautions(&self, operation: &Operation) -> Vec<Caution> {
        self.hazards(operation).0
    }

    fn open_cautions(&self, operation: &Operation) -> Vec<Caution> {
        let (hazards, met): (Vec<Caution>, &[Precaution]) = self.hazards(operation);
        hazards.into_iter().filter(|h| !met.contains(&h.precaution())).collect()
    }

    /// Books what was done: time, money, tear-downs, what went stale.
    fn account(&mut self, before: &Self, operation: &Operation, done: Done, open: Vec<Caution>) -> Answer {
        let number = self.operations;
        let name = operation.name();
        let minutes = match operation {
            Operation::Wait { minutes } => *minutes,
            _ => self.setting.tariff.minutes_of(&name) + done.more_minutes,
        };
        // A wheel just brought to its temperature has it now.
        if !matches!(operation, Operation::HeatWheel { .. }) {
            self.cool(minutes);
        }
        let parts: f64 = done
            .bought
            .iter()
            .fold(0.0, |sum, part| sum + self.setting.tariff.price_of(*part));
        let ledger = &mut self.ledger;
        ledger.minutes += minutes;
        ledger.money += parts;
        ledger.spoiled.extend(done.spoiled.iter().map(|p| (number, *p)));
        ledger.reused.extend(done.reused.iter().map(|p| (number, *p)));
        ledger.unsafe_acts.extend(open.iter().map(|c| (number, *c)));
        ledger.entries.push(Entry {
            operation: number,
            name,
            minutes,
            money: parts,
        });
        let apart = before.built.placement.is_some() && self.built.placement.is_none();
        let loosened = before.built.placement.is_none() && before.built.pinion.is_some() && self.built.pinion.is_none();
        if apart || loosened {
            ledger.tear_downs += 1;
        }
        let stale = self.mark_stale(before);
        let mut readings = Vec::new();
        if let Some(record) = done.record {
            readings.clone_from(&record.readings);
            self.records.push(record);
        }
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

    /// Marks every record and note that depends on what changed; gives the numbers of the records that went stale now.
    fn mark_stale(&mut self, before: &Self) -> Vec<u32> {
        let play = [&before.built, &self.built]
            .iter()
            .any(|b| b.pinion.is_some_and(|p| p.play_mm > 0.0) || b.side.is_some_and(|s| s.play_mm > 0.0));
        let changed = Aspects::changed(&before.assembly, &self.assembly, play)
            .with_if(Aspect::Kit, before.packs != self.packs)
            .with_if(Aspect::Warmth, (before.wheel_c - self.wheel_c).abs() > 1.0)
            .with_if(Aspect::Paste, before.paste != self.paste);
        let mut stale = Vec::new();
        for record in self.records.iter_mut().filter(|r| !r.stale) {
            if record.behind.meet(changed) {
                record.stale = true;
                stale.push(record.number);
            }
        }
        for note in self.notes.iter_mut().filter(|n| !n.stale) {
            note.stale = note.behind.meet(changed);
        }
        stale
    }

    fn cool(&mut self, minutes: f64) {
        self.wheel_c = ROOM_C + (self.wheel_c - ROOM_C) * math::exp(-minutes / COOLING_MINUTES);
    }

    /// Brings the assembly up to date with rings and packs, and settles it.
    pub(super) fn settle_again(&mut self) -> Result<(), AxleError> {
        let kit = &self.setting.kit;
        let thickness = |place| self.packs.thickness_mm(kit, place);
        self.assembly.depth_shim_mm = thickness(ShimPlace::Depth);
        let spacer_shims_mm = thickness(ShimPlace::Spacer);
        if let SpacerFitted::Solid { shims_mm } = &mut self.assembly.spacer {
            *shims_mm = spacer_shims_mm;
        }
        let sides = [ShimPlace::ToothSide, ShimPlace::BackSide].map(thickness);
        for (stack, shim_mm) in self.assembly.side.iter_mut().zip(sides) {
            stack.shim_mm = shim_mm;
        }
        self.assembly.bearings = if self.set_up_bearings {
            Bearings::SetUp
        } else if self.rings_on == [true; 3] {
            Bearings::Real
        } else {
            Bearings::None
        };
        self.built = settle(&self.setting.axle, &self.truth, &self.assembly)?;
        self.assembly.clone_from(&self.built.after);
        Ok(())
    }

    pub(super) fn note(&mut self, what: Measurand, value: f64, remark: &str) {
        let behind = Aspects::behind(what, &self.setting.axle, &self.assembly);
        self.notes.push(Note {
            operation: self.operations,
            what,
            value,
            remark: remark.to_owned(),
            stale: false,
            behind,
        });
    }

    /// Whether a ring is on, as anybody sees.
    pub fn ring_on(&self, ring: Ring) -> bool {
        self.rings_on.get(ring as usize).copied().unwrap_or(false)
    }

    /// Whether a sleeve that came off lies there to be put on again.
    pub fn has_old_sleeve(&self) -> bool {
        self.old_sleeve.is_some()
    }

    pub(super) fn set_ring(&mut self, ring: Ring, on: bool) {
        if let Some(place) = self.rings_on.get_mut(ring as usize) {
            *place = on;
        }
    }

    /// What does not change.
    pub fn setting(&self) -> &Setting {
        &self.setting
    }

    /// The hidden truth: for the exercise, never for a trainee.
    pub fn truth(&self) -> &Truth {
        &self.truth
    }

    /// What is fitted, with true sizes: for the exercise, never for a trainee.
    pub fn assembly(&self) -> &Assembly {
        &self.assembly
    }

    /// What follows from both: for the exercise, never for a trainee.
    pub fn built(&self) -> &Built {
        &self.built
    }

    /// Shim packs.
    pub fn packs(&self) -> &Packs {
        &self.packs
    }

    /// Account so far.
    pub fn ledger(&self) -> &Ledger {
        &self.ledger
    }

    /// All measurements.
    pub fn records(&self) -> &[Record] {
        &self.records
    }

    /// The set-up sheet.
    pub fn notes(&self) -> &[Note] {
        &self.notes
    }

    /// All predictions.
    pub fn predictions(&self) -> &[Prediction] {
        &self.predictions
    }

    /// Parts condemned.
    pub fn judgements(&self) -> &[Judgement] {
        &self.judgements
    }

    /// What was said of painted plates.
    pub fn plates_judged(&self) -> &[PlateJudged] {
        &self.plates_judged
    }

    /// Hints asked for: (operation, level).
    pub fn hints(&self) -> &[(u32, u32)] {
        &self.hints
    }

    /// Paste on the teeth.
    pub fn paste(&self) -> Option<&Paste> {
        self.paste.as_ref()
    }

    /// Whether the wheel was overheated.
    pub fn wheel_is_scrap(&self) -> bool {
        self.wheel_scrap
    }

    /// Whether the wheel's bolts were torqued cold, with locking on clean threads.
    pub fn bolts_are_sound(&self) -> bool {
        self.assembly.wheel.is_some_and(|w| w.bolted) && !self.bolts_warm && self.bolts_locked
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
