//! What the panels of the bench keep between frames: which form is open and what was typed. No state of the program.

use egui::{Id, Pos2, Ui};

use crate::quantity::Units;
use crate::view::bench::{Entry, FieldKind, Filled, Hazard, LogEntry, OptionName, Reading, Work};
use crate::view::{AxlePart, BenchView, WindowView};
use crate::words::{Language, say};

/// What is shown where there is room for one thing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum SideTab {
    Work,
    Card,
    Teeth,
    #[default]
    Readings,
    Sheet,
    Log,
    Slip,
    Hand,
    Stage,
}

impl SideTab {
    /// Where everything is a tab.
    pub(super) const ALL: [Self; 9] = [
        Self::Work,
        Self::Hand,
        Self::Card,
        Self::Teeth,
        Self::Slip,
        Self::Readings,
        Self::Sheet,
        Self::Log,
        Self::Stage,
    ];

    /// Those of the column beside the stage and what is in hand.
    pub(super) const BESIDE_THE_STAGE: [Self; 7] = [
        Self::Work,
        Self::Card,
        Self::Teeth,
        Self::Slip,
        Self::Readings,
        Self::Sheet,
        Self::Log,
    ];

    /// The word on its cell.
    pub(super) fn label(self) -> String {
        match self {
            Self::Work => say!("board-tab-work"),
            Self::Card => say!("board-tab-card"),
            Self::Teeth => say!("board-tab-teeth"),
            Self::Readings => say!("board-tab-readings"),
            Self::Sheet => say!("board-tab-sheet"),
            Self::Log => say!("board-tab-log"),
            Self::Slip => say!("board-tab-prediction"),
            Self::Hand => say!("board-tab-hand"),
            Self::Stage => say!("board-tab-stage"),
        }
    }
}

/// A form being filled in.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Form {
    pub(super) part: AxlePart,
    /// Which of the work at its part.
    pub(super) key: String,
    pub(super) filled: Filled,
    units: Units,
    /// What was wrong with it when it was last to be done.
    pub(super) problem: Option<String>,
    /// Whether it was opened just now: the keyboard goes to its first box.
    pub(super) fresh: bool,
}

/// The prediction slip as it is being filled in: for each row the outcome, if one is chosen.
pub(super) type Slip = [Option<usize>; 6];

/// All of it.
#[derive(Debug, Clone, PartialEq, Default)]
#[expect(clippy::struct_excessive_bools, reason = "each says of one thing whether it is so")]
pub(super) struct DeskState {
    pub(super) tab: SideTab,
    pub(super) form: Option<Form>,
    /// Number of the reading in hand.
    pub(super) reading: Option<u32>,
    /// What was typed as its value.
    pub(super) read: String,
    /// Whether it was taken in hand just now: the keyboard goes to its box.
    pub(super) fresh_reading: bool,
    /// The units it was typed in.
    read_units: Units,
    /// Whether the open form is to be done now, wherever the keyboard is.
    pub(super) do_form: bool,
    /// Why it could not be written down.
    pub(super) read_problem: Option<String>,
    pub(super) slip: Slip,
    pub(super) sure: usize,
    /// Whether the axle is really to be handed over.
    pub(super) handing_over: bool,
    /// Whether that was asked for just now: the keyboard goes to the answer.
    pub(super) asked_now: bool,
    /// Whether work that cannot be done now is listed too.
    pub(super) all_work: bool,
    /// Whether anything had the keyboard at the end of the last frame.
    pub(super) had_keyboard: bool,
    /// What was chosen when a piece of work was last done, by the words of the option: set up once, an instrument stays so.
    chosen_before: Vec<(AxlePart, String, Vec<Option<OptionName>>)>,
    /// How many readings there were; a new one comes to hand.
    readings: usize,
    /// How many operations there were.
    told: usize,
    /// Which attempt this belongs to.
    attempt: Option<(String, u64)>,
    /// How many attempts there were before.
    pub(super) attempts: u32,
    /// Whether everything is a tab, so that what comes to hand has to be turned to.
    pub(super) single: bool,
    /// Whether the card is a tab.
    pub(super) card_is_tab: bool,
    /// Whether what is in hand is held up over the stage.
    pub(super) large: bool,
    /// What the pointer did last, and where: until it moves, it does nothing else there.
    pub(super) acted: Option<Acted>,
    /// The box that a number goes to which is typed while nothing has the keyboard.
    pub(super) number_box: Option<NumberBox>,
    /// The language in which it was said what is wrong.
    language: Option<Language>,
}

/// Something that was done with the pointer.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Acted {
    /// What was pressed, by its word.
    pub(super) what: String,
    /// Where.
    pub(super) at: Pos2,
}

/// A box for a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct NumberBox {
    /// Its name for egui.
    pub(super) id: Id,
    /// Which entry of the open form it writes; none for the value of the reading in hand.
    pub(super) entry: Option<usize>,
}

fn key() -> Id {
    Id::new("bench-desk")
}

impl DeskState {
    /// As it was left, brought up to date with the board.
    pub(super) fn load(ui: &Ui, view: &WindowView<'_>, board: &BenchView) -> Self {
        let mut state: Self = ui.data(|data| data.get_temp(key())).unwrap_or_default();
        let attempt = Some((board.title.clone(), board.seed));
        let gone_back = board.readings.len() < state.readings || board.told_back.len() < state.told;
        if state.attempt != attempt || gone_back {
            let just_read = board.told_back.last().is_some_and(LogEntry::is_reading);
            state = Self {
                attempt,
                attempts: state.attempts.wrapping_add(1),
                readings: board.readings.len(),
                told: board.told_back.len(),
                sure: 1,
                tab: SideTab::Work,
                ..Self::default()
            };
            if let Some(last) = board.readings.last().filter(|_| just_read) {
                state.reading = Some(last.number);
                // Where it is no tab of its own, the usual one is shown.
                state.tab = SideTab::Hand;
                state.large = last.plate().is_some();
            }
        }
        let new = board.told_back.get(state.told..).unwrap_or_default();
        // Whoever works at something else has put the instrument down.
        if new.iter().any(|told| told.answer.done && !told.leaves_in_hand()) {
            state.reading = None;
            state.large = false;
        }
        state.told = board.told_back.len();
        if board.readings.len() > state.readings {
            state.readings = board.readings.len();
            if let Some(last) = board.readings.last() {
                state.take_in_hand(last);
            }
        }
        // What was wrong was said in the language of that time.
        if state.language.replace(Language::spoken()) != Some(Language::spoken()) {
            state.read_problem = None;
            if let Some(form) = &mut state.form {
                form.problem = None;
            }
        }
        // Work that is not offered any more takes its form along.
        if let Some(form) = &state.form
            && state.work(board).is_none_or(|work| {
                work.not_now.is_some() || work.fields.len() != form.filled.entries.len() || !same_pieces(work, form)
            })
        {
            state.form = None;
        }
        // A number that was typed in other units is another number.
        if state.read_units != view.units {
            state.read_units = view.units;
            state.read.clear();
            state.read_problem = None;
        }
        if let Some(mut form) = state.form.take() {
            if form.units != view.units
                && let Some(work) = find(board, form.part, &form.key)
            {
                form.filled = work.in_units(&form.filled, form.units, view.units);
                form.units = view.units;
            }
            if let Some(work) = find(board, form.part, &form.key) {
                form.filled.precautions.resize(work.hazards.len(), false);
            }
            state.form = Some(form);
        }
        state
    }

    pub(super) fn store(self, ui: &Ui) {
        ui.data_mut(|data| data.insert_temp(key(), self));
    }

    /// Takes a reading in hand, in place of a form.
    pub(super) fn take_in_hand(&mut self, reading: &Reading) {
        self.reading = Some(reading.number);
        self.fresh_reading = true;
        self.form = None;
        self.read.clear();
        self.read_problem = None;
        // A plate is held up to be judged; of an instrument that was held up the next reading is too.
        self.large |= reading.plate().is_some();
        self.turn_to(SideTab::Hand);
    }

    /// Where the card is a tab, shows it.
    pub(super) fn show_card(&mut self) {
        if self.card_is_tab {
            self.tab = SideTab::Card;
        }
    }

    /// Where everything is a tab, shows this one.
    fn turn_to(&mut self, tab: SideTab) {
        if self.single {
            self.tab = tab;
        }
    }

    /// Opens the form of a piece of work, with the choices of the last time. Numbers, ticks and precautions begin anew.
    /// What was in hand before is put down, but for the plate that is judged.
    pub(super) fn open(&mut self, work: &Work, units: Units, board: &BenchView) {
        let plate = work
            .plate()
            .and_then(|plate| board.readings.iter().rev().find(|r| r.plate() == Some(plate)));
        self.reading = plate.map(|reading| reading.number);
        self.large = plate.is_some();
        self.turn_to(SideTab::Hand);
        let mut filled = work.blank(units);
        let before = self.chosen_before.iter().find(|(part, key, _)| is(work, *part, key));
        if let Some((.., before)) = before {
            for ((field, entry), words) in work.fields.iter().zip(&mut filled.entries).zip(before) {
                if let (FieldKind::Choice { options, .. }, Entry::Chosen(chosen), Some(words)) =
                    (&field.kind, entry, words)
                    && let Some(again) = options.iter().position(|option| option == words)
                {
                    *chosen = again;
                }
            }
        }
        self.form = Some(Form {
            part: work.part,
            key: work.key.clone(),
            filled,
            units,
            problem: None,
            fresh: true,
        });
    }

    /// Asks whether the axle is really to be handed over.
    pub(super) fn ask_to_sign_off(&mut self) {
        self.handing_over = true;
        self.asked_now = true;
    }

    /// Keeps what was chosen for a piece of work that is being done.
    pub(super) fn remember(&mut self, work: &Work, filled: &Filled) {
        let words = work
            .fields
            .iter()
            .zip(&filled.entries)
            .map(|pair| match (&pair.0.kind, pair.1) {
                (FieldKind::Choice { options, .. }, Entry::Chosen(chosen)) => options.get(*chosen).cloned(),
                _ => None,
            });
        let words = words.collect();
        self.chosen_before.retain(|(part, key, _)| !is(work, *part, key));
        self.chosen_before.push((work.part, work.key.clone(), words));
    }

    /// The work whose form is open.
    pub(super) fn work<'b>(&self, board: &'b BenchView) -> Option<&'b Work> {
        let form = self.form.as_ref()?;
        find(board, form.part, &form.key)
    }

    /// The reading in hand.
    pub(super) fn reading<'b>(&self, board: &'b BenchView) -> Option<&'b Reading> {
        let number = self.reading?;
        board.readings.iter().find(|r| r.number == number)
    }

    /// Hazards of the work whose form is open.
    pub(super) fn hazards<'b>(&self, board: &'b BenchView) -> &'b [Hazard] {
        self.work(board).map_or(&[], |work| &work.hazards)
    }

    /// What can hurt with the work in hand, in sentences: first what is to be met.
    pub(super) fn warnings<'b>(&self, board: &'b BenchView) -> Vec<&'b str> {
        let told = self.work(board).map_or(&[][..], |work| &work.told);
        let met = self.hazards(board).iter().map(|hazard| hazard.text.as_str());
        met.chain(told.iter().map(String::as_str)).collect()
    }
}

fn is(work: &Work, part: AxlePart, key: &str) -> bool {
    work.part == part && work.key == key
}

fn find<'b>(board: &'b BenchView, part: AxlePart, key: &str) -> Option<&'b Work> {
    board.works.iter().find(|work| is(work, part, key))
}

/// Whether the pieces that a form names are those that there are.
fn same_pieces(work: &Work, form: &Form) -> bool {
    work.fields
        .iter()
        .zip(&form.filled.entries)
        .all(|pair| match (&pair.0.kind, pair.1) {
            (FieldKind::Pieces { pieces, .. }, Entry::Pieces(ticked)) => pieces.len() == ticked.len(),
            (FieldKind::Choice { options, .. }, Entry::Chosen(index)) => *index < options.len(),
            _ => true,
        })
}
