//! What the panels of the bench keep between frames: which form is open and what was typed. No state of the program.

use egui::{Id, Ui};

use crate::quantity::Units;
use crate::view::bench::{Entry, FieldKind, Filled, Hazard, Reading, Work};
use crate::view::{AxlePart, BenchView, WindowView};
use crate::words::say;

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
}

impl SideTab {
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
    /// Whether work that cannot be done now is listed too.
    pub(super) all_work: bool,
    /// Whether anything had the keyboard at the end of the last frame.
    pub(super) had_keyboard: bool,
    /// What was chosen when a piece of work was last done, by the words of the option: set up once, an instrument stays so.
    chosen_before: Vec<(AxlePart, String, Vec<Option<String>>)>,
    /// How many readings there were; a new one comes to hand.
    readings: usize,
    /// Which attempt this belongs to.
    attempt: Option<(String, u64)>,
}

fn key() -> Id {
    Id::new("bench-desk")
}

impl DeskState {
    /// As it was left, brought up to date with the board.
    pub(super) fn load(ui: &Ui, view: &WindowView<'_>, board: &BenchView) -> Self {
        let mut state: Self = ui.data(|data| data.get_temp(key())).unwrap_or_default();
        let attempt = Some((board.title.clone(), board.seed));
        if state.attempt != attempt || board.readings.len() < state.readings {
            state = Self {
                attempt,
                readings: board.readings.len(),
                sure: 1,
                tab: SideTab::Work,
                reading: board.readings.last().map(|r| r.number),
                ..Self::default()
            };
        }
        if board.readings.len() > state.readings {
            state.readings = board.readings.len();
            if let Some(last) = board.readings.last() {
                state.take_in_hand(last);
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
    }

    /// Opens the form of a piece of work, with the choices of the last time. Numbers, ticks and precautions begin anew.
    pub(super) fn open(&mut self, work: &Work, units: Units) {
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
