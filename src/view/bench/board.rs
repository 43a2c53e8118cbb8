//! The bench in one value, made anew after each operation.

use super::readings::{Reading, SeenPrint};
use super::start::layout_words;
use super::{Amount, Approval, Laid, Work, offer};
use crate::bench::{Answer, Bench, Measurand, Note, Operation};
use crate::contact::Pair;
use crate::exercise::{AskedFor, Attempt, Counted, Scenario, Step, TraineeView, Window, lean};
use crate::gear::Side;
use crate::numerics::math;
use crate::quantity::Units;
use crate::words::{self, say};

/// What the bench shows.
#[derive(Debug, Clone, PartialEq)]
pub struct BenchView {
    /// Title on the card.
    pub title: String,
    /// 1 to 4.
    pub step: u32,
    /// Which axle of the exercise.
    pub seed: u64,
    /// The layout in words.
    pub layout: String,
    /// What is told.
    pub told: Vec<String>,
    /// What to mind in this exercise.
    pub cautions: Vec<String>,
    /// What is wanted.
    pub wanted: Vec<Wanted>,
    /// How the card has the dial's stem laid.
    pub stem: String,
    /// Whether lash is wanted or asked for, so that the stem matters.
    pub reads_lash: bool,
    /// Which parts are where.
    pub laid: Laid,
    /// All work.
    pub works: Vec<Work>,
    /// What was done and answered, in order.
    pub told_back: Vec<LogEntry>,
    /// Measurements, in order.
    pub readings: Vec<Reading>,
    /// The set-up sheet.
    pub notes: Vec<Note>,
    /// All prints that were looked at, in order.
    pub prints: Vec<SeenPrint>,
    /// Approval prints of the sets on the bench; empty where the card has none.
    pub approvals: Vec<Approval>,
    /// Shape of a tooth's flank.
    pub tooth: ToothShape,
    /// Minutes so far.
    pub minutes: f64,
    /// Money so far.
    pub money: f64,
    /// Tear-downs so far.
    pub tear_downs: u32,
    /// Hints of the card.
    pub hints: Vec<String>,
    /// How many of them were given.
    pub hints_given: usize,
    /// Whether the axle has been handed over.
    pub finished: bool,
}

/// The working flank unrolled, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ToothShape {
    /// Length.
    pub face_width_mm: f64,
    /// Height of the lower edge at toe and heel.
    pub lower_mm: [f64; 2],
    /// Height of the upper edge at toe and heel.
    pub upper_mm: [f64; 2],
    /// How prints of such gears lean as designed, drive and coast: positive rises toward the heel. An eye reads the ends of a
    /// print and not its lean, which hardly depends on where the gears stand.
    pub lean: [f64; 2],
}

impl ToothShape {
    /// Of a pair of gears as designed.
    pub fn of(pair: &Pair) -> Self {
        let gears = pair.gears();
        let pitch = gears.pitch();
        let (sin, cos) = math::sin_cos(pitch.wheel_pitch_angle_rad);
        let height = |x: f64, y: f64| {
            let (r, z) = gears.blank().place_mm(x, y);
            (r - pitch.wheel_mean_radius_mm) * cos - (z - pitch.wheel_crossing_to_mean_mm) * sin
        };
        Self {
            face_width_mm: gears.design().wheel_face_width_mm,
            lower_mm: [height(-1.0, -1.0), height(1.0, -1.0)],
            upper_mm: [height(-1.0, 1.0), height(1.0, 1.0)],
            lean: Side::BOTH.map(|side| lean(pair, side)),
        }
    }
}

/// A row of what is wanted.
#[derive(Debug, Clone, PartialEq)]
pub struct Wanted {
    /// What of.
    pub name: String,
    /// What of the axle is judged by it; none for a means or a value that is asked for.
    pub counted: Option<Counted>,
    /// Which range.
    pub range: WantedRange,
    /// What stands on the set-up sheet for it.
    pub written: Option<f64>,
    /// Whether what stands there is stale.
    pub stale: bool,
}

/// A wanted range.
#[derive(Debug, Clone, PartialEq)]
pub enum WantedRange {
    /// From, to.
    Between(Amount, f64, f64),
    /// No more than this.
    AtMost(Amount, f64),
    /// This, and never more than that.
    Never(Amount, f64, f64),
    /// A value that is asked for, to so much.
    Within(Amount, f64),
    /// Just this.
    Just(Amount, f64),
    /// No number is wanted; what is written is of this kind.
    Words(String, Amount),
}

impl WantedRange {
    /// As the card says it.
    pub fn text(&self, units: Units) -> String {
        match self {
            Self::Between(amount, low, high) => say!(
                "board-range-between",
                low = amount.digits(*low, units),
                high = amount.text(*high, units),
            ),
            Self::AtMost(amount, most) => say!("board-range-most", most = amount.text(*most, units)),
            Self::Never(amount, wanted, most) => say!(
                "board-range-never",
                target = amount.digits(*wanted, units),
                most = amount.text(*most, units),
            ),
            Self::Within(amount, share) => say!("board-range-within", size = amount.text(*share, units)),
            Self::Just(amount, size) => amount.text(*size, units),
            Self::Words(words, _) => words.clone(),
        }
    }

    /// The kind of its numbers.
    pub const fn amount(&self) -> Amount {
        match self {
            Self::Between(amount, ..)
            | Self::AtMost(amount, _)
            | Self::Never(amount, ..)
            | Self::Within(amount, _)
            | Self::Just(amount, _)
            | Self::Words(_, amount) => *amount,
        }
    }
}

/// One thing that was done, and what came back.
#[derive(Debug, Clone, PartialEq)]
pub struct LogEntry {
    /// What was done.
    pub operation: Operation,
    /// What came back.
    pub answer: Answer,
    /// The same, sentence by sentence.
    pub sentences: Vec<String>,
}

impl LogEntry {
    /// What was done, in words.
    pub fn title(&self, units: Units) -> String {
        words::operation::operation(&self.operation, units)
    }

    /// Whether it was a prediction.
    pub fn is_prediction(&self) -> bool {
        matches!(self.operation, Operation::Predict { .. })
    }

    /// Whether an instrument was taken in hand by it, or what it showed was written down.
    pub fn is_reading(&self) -> bool {
        matches!(self.operation, Operation::Measure { .. } | Operation::Note { .. })
    }

    /// Whether whoever does this need not put an instrument down for it.
    pub fn leaves_in_hand(&self) -> bool {
        self.is_reading() || self.is_prediction() || matches!(self.operation, Operation::Hint { .. })
    }

    /// Numbers of the operation: what it took.
    pub fn took(&self) -> String {
        let mut parts = Vec::new();
        if self.answer.minutes > 0.0 {
            parts.push(Amount::Minutes.text(self.answer.minutes, Units::Metric));
        }
        if self.answer.money > 0.0 {
            parts.push(say!(
                "board-parts-cost-of",
                cost = crate::quantity::number(self.answer.money, 0)
            ));
        }
        parts.join(", ")
    }

    /// An operation with its answer; `hints` are those of the card.
    pub(super) fn new(operation: &Operation, answer: &Answer, hints: &[String]) -> Self {
        let mut all = Vec::new();
        all.extend(
            answer
                .refused
                .as_ref()
                .map(|why| say!("board-refused", why = words::answer::refusal(why))),
        );
        all.extend(
            answer
                .cautions
                .iter()
                .map(|caution| say!("board-unsafe", caution = words::answer::caution(*caution))),
        );
        all.extend(answer.noticed.iter().map(|said| words::answer::notice(said, hints)));
        if !answer.spoiled.is_empty() {
            let parts: Vec<String> = answer.spoiled.iter().map(|p| words::bench::part(*p)).collect();
            all.push(say!("board-spoiled", parts = parts.join(", ")));
        }
        if !answer.stale.is_empty() {
            let records: Vec<String> = answer.stale.iter().map(u32::to_string).collect();
            all.push(say!(
                "board-no-longer-true",
                count = records.len(),
                readings = records.join(", "),
            ));
        }
        Self {
            operation: operation.clone(),
            answer: answer.clone(),
            sentences: all,
        }
    }
}

impl BenchView {
    /// Of an attempt.
    pub fn new(attempt: &Attempt, tooth: ToothShape) -> Self {
        let seen = attempt.seen();
        let approvals = Approval::all(attempt.exercise(), &seen.plates);
        Self {
            approvals,
            wanted: wanted(&seen, &|operation| attempt.in_mesh_after(operation)),
            ..Self::of(&seen, attempt.bench(), attempt.seed(), attempt.steps(), tooth)
        }
    }

    /// The approval print that a print is judged by: that of its plate's set, or of the set in the axle.
    pub fn approval_of(&self, print: Option<&SeenPrint>) -> Option<&Approval> {
        match print.and_then(|p| p.plate) {
            Some(plate) => self.approvals.iter().find(|a| a.plates.contains(&plate)),
            None => self.approvals.first(),
        }
    }

    fn of(seen: &TraineeView, bench: &Bench, seed: u64, steps: &[Step], tooth: ToothShape) -> Self {
        let laid = Laid::of(bench);
        let tools = &bench.setting().tools;
        let texts = words::card::texts(&seen.card);
        let given = steps
            .iter()
            .filter(|s| matches!(s.operation, Operation::Hint { .. }))
            .count();
        Self {
            title: texts.title.to_owned(),
            step: seen.card.step,
            seed,
            layout: layout_words(seen.card.layout, seen.card.depth_shim),
            told: texts.told.to_vec(),
            cautions: texts.cautions.to_vec(),
            wanted: Vec::new(),
            stem: words::bench::stem(seen.card.targets.stem),
            reads_lash: reads_lash(&seen.card),
            works: if seen.finished {
                Vec::new()
            } else {
                offer::works(bench, seen, &laid)
            },
            told_back: steps
                .iter()
                .map(|step| LogEntry::new(&step.operation, &step.answer, texts.hints))
                .collect(),
            readings: seen
                .records
                .iter()
                .map(|record| {
                    let took = steps.iter().find(|s| s.answer.operation == record.operation);
                    Reading::of(record, tools, &seen.notes, took.map(|s| &s.operation))
                })
                .collect(),
            notes: seen.notes.clone(),
            prints: seen
                .records
                .iter()
                .filter_map(|record| SeenPrint::of(record, &seen.plates))
                .collect(),
            approvals: Vec::new(),
            tooth,
            minutes: seen.minutes,
            money: seen.money,
            tear_downs: seen.tear_downs,
            hints: texts.hints.to_vec(),
            hints_given: given,
            finished: seen.finished,
            laid,
        }
    }
}

/// Whether a card wants lash or asks for it.
fn reads_lash(card: &Scenario) -> bool {
    let counts = |counted| card.counts.contains(&counted);
    counts(Counted::Lash) || counts(Counted::Spread) || card.asked.iter().any(|asked| asked.what == AskedFor::Lash)
}

/// What is on the sheet for a quantity: value, and whether it is stale.
type Written = (Option<f64>, bool);

/// The rows of the card. A torque that was written down counts as the whole axle's where the gears were in mesh, and else as
/// the pinion's alone.
fn wanted(seen: &TraineeView, in_mesh: &dyn Fn(u32) -> bool) -> Vec<Wanted> {
    let targets = &seen.card.targets;
    let between = |amount, window: Window| WantedRange::Between(amount, window.low, window.high);
    let last = |fits: &dyn Fn(Measurand) -> bool| -> Written {
        let note = seen.notes.iter().rev().find(|n| fits(n.what));
        (note.map(|n| n.value), note.is_some_and(|n| n.stale))
    };
    let torque = |meshed: bool| -> Written {
        let rolling = |n: &&Note| matches!(n.what, Measurand::RollingTorque {}) && in_mesh(n.operation) == meshed;
        let note = seen.notes.iter().rev().find(rolling);
        (note.map(|n| n.value), note.is_some_and(|n| n.stale))
    };
    let blank: Written = (None, false);
    let row = |name: String, counted, range, (written, stale): Written| Wanted {
        name,
        counted,
        range,
        written,
        stale,
    };
    let mut rows = Vec::new();
    for counted in seen.card.counts.iter().copied() {
        let some = Some(counted);
        rows.push(match counted {
            Counted::Depth => row(
                say!("board-target-depth"),
                some,
                WantedRange::Words(say!("board-target-depth-range"), Amount::Length),
                blank,
            ),
            Counted::Print => row(
                say!("board-target-pattern"),
                some,
                WantedRange::Words(say!("board-target-pattern-range"), Amount::Share),
                last(&|what| what == Measurand::Print {}),
            ),
            Counted::Lash => row(
                say!("board-target-backlash"),
                some,
                between(Amount::Length, targets.lash_mm),
                lash(seen),
            ),
            Counted::Spread => row(
                say!("board-target-variation"),
                some,
                WantedRange::AtMost(Amount::Length, targets.lash_spread_mm),
                (spread(seen), false),
            ),
            Counted::Runout => row(
                say!("board-target-runout"),
                some,
                WantedRange::Words(say!("board-target-runout-range"), Amount::Length),
                last(&|what| matches!(what, Measurand::WheelFaceRunout {})),
            ),
            // It stands first, below.
            Counted::NutTorque => continue,
            Counted::PinionTorque => row(
                say!("board-target-pinion-torque"),
                some,
                between(Amount::HandTorque, targets.pinion_torque_nm),
                torque(false),
            ),
            Counted::SideTorque => row(
                say!("board-target-side-torque"),
                some,
                between(Amount::HandTorque, targets.side_torque_nm),
                sides_add(torque(false), torque(true)),
            ),
        });
    }
    let counts = |counted| seen.card.counts.contains(&counted);
    if counts(Counted::PinionTorque) || counts(Counted::NutTorque) {
        rows.insert(
            0,
            row(
                say!("board-target-nut"),
                counts(Counted::NutTorque).then_some(Counted::NutTorque),
                WantedRange::Never(Amount::NutTorque, targets.nut_torque_nm, targets.most_nut_torque_nm),
                last(&|what| matches!(what, Measurand::NutTorque {})),
            ),
        );
    }
    for asked in &seen.card.asked {
        let (name, amount) = asked_words(asked.what);
        let written = last(&|what| asked.what.is(what));
        rows.push(row(name, None, WantedRange::Within(amount, asked.full), written));
    }
    if let Some(pack) = &seen.card.pack {
        let name = say!(
            "board-target-pack",
            place = words::bench::place(pack.place),
            pieces = pack.pieces,
        );
        rows.push(row(
            name,
            None,
            WantedRange::Just(Amount::FineLength, pack.size_mm),
            last(&|what| what == Measurand::ShimPack { place: pack.place }),
        ));
    }
    if seen.card.plates.is_some() {
        rows.push(row(
            say!("board-target-plates"),
            None,
            WantedRange::Words(say!("board-target-plates-range"), Amount::Share),
            blank,
        ));
    }
    rows
}

fn asked_words(what: AskedFor) -> (String, Amount) {
    match what {
        AskedFor::Lash => (say!("board-asked-backlash"), Amount::FineLength),
        AskedFor::RollingTorque => (say!("board-asked-rotating-torque"), Amount::HandTorque),
        AskedFor::PinionDepth => (say!("board-asked-depth"), Amount::FineLength),
        AskedFor::PinionEndPlay => (say!("board-asked-end-play"), Amount::FineLength),
        AskedFor::WheelFaceRunout => (say!("board-target-runout"), Amount::FineLength),
    }
}

/// The last value of each tooth on the sheet, as long as it stands.
fn teeth(seen: &TraineeView) -> Vec<(u32, f64)> {
    let mut teeth: Vec<(u32, f64)> = Vec::new();
    for note in seen.notes.iter().rev() {
        if let Measurand::Lash { tooth } = note.what
            && !note.stale
            && !teeth.iter().any(|(t, _)| *t == tooth)
        {
            teeth.push((tooth, note.value));
        }
    }
    teeth
}

/// What the side bearings add, from the torques of the pinion alone and of the whole; stale as soon as either is.
fn sides_add((alone, old): Written, (whole, stale): Written) -> Written {
    (whole.zip(alone).map(|(whole, alone)| whole - alone), stale || old)
}

fn lash(seen: &TraineeView) -> Written {
    let tightest = teeth(seen)
        .iter()
        .map(|(_, value)| *value)
        .reduce(|a, b| if b < a { b } else { a });
    if tightest.is_some() {
        return (tightest, false);
    }
    let note = seen
        .notes
        .iter()
        .rev()
        .find(|n| matches!(n.what, Measurand::Lash { .. }));
    (note.map(|n| n.value), note.is_some())
}

fn spread(seen: &TraineeView) -> Option<f64> {
    let teeth = teeth(seen);
    let values = || teeth.iter().map(|(_, value)| *value);
    let low = values().reduce(|a, b| if b < a { b } else { a })?;
    let high = values().reduce(|a, b| if b > a { b } else { a })?;
    (teeth.len() > 1).then_some(high - low)
}
