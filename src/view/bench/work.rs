//! A piece of work that is offered, with the fields that are filled in before it is done.

use serde_json::Value;

use super::{Amount, AxlePart};
use crate::bench::Operation;
use crate::quantity::Units;
use crate::words::{self, say};

/// Something that can be done at a part.
#[derive(Debug, Clone, PartialEq)]
pub struct Work {
    /// Where it is offered.
    pub part: AxlePart,
    /// What tells it from the other work at its part, whatever it is called.
    pub key: String,
    /// What it is called.
    pub name: String,
    /// Fields to fill in.
    pub fields: Vec<Field>,
    /// Hazards that may come with it as things stand, each with what meets it.
    pub hazards: Vec<Hazard>,
    /// What else can hurt, in sentences.
    pub told: Vec<String>,
    /// Minutes that it takes at least.
    pub minutes: f64,
    /// Why it cannot be done as things stand; none where it can.
    pub not_now: Option<String>,
    /// Whether it is work with an instrument.
    pub reads: bool,
    /// The operation, its fields as they stand before anybody has filled them in.
    pub(super) template: Value,
}

/// A field of a piece of work.
#[derive(Debug, Clone, PartialEq)]
pub struct Field {
    /// What is asked.
    pub name: String,
    /// What is filled in.
    pub kind: FieldKind,
    /// Where it stands in the operation: a JSON pointer.
    pub(super) at: &'static str,
    /// What people call the first of what the core counts from 0; a number is less by it in the operation.
    pub(super) first: u32,
    /// What the options of a choice stand for.
    pub(super) options: Vec<Value>,
}

/// What a field takes.
#[derive(Debug, Clone, PartialEq)]
pub enum FieldKind {
    /// A number; what stands there at first, if anything does.
    Number {
        /// Its kind.
        amount: Amount,
        /// Value at first.
        start: Option<f64>,
    },
    /// One of several.
    Choice {
        /// What is offered.
        options: Vec<OptionName>,
        /// What is chosen at first.
        start: usize,
    },
    /// Yes or no.
    Tick {
        /// At first.
        start: bool,
    },
    /// Any of several pieces.
    Pieces {
        /// All of them.
        pieces: Vec<Piece>,
        /// Whether lengths add up to something.
        sum: bool,
    },
    /// Words.
    Text,
}

/// What an option is called.
#[derive(Debug, Clone, PartialEq)]
pub enum OptionName {
    /// Always the same.
    Words(String),
    /// A piece of the kit, with the length on its label in the units at hand.
    Piece {
        /// Its number.
        number: u32,
        /// Where it belongs, in words.
        place: String,
        /// What its label says, mm.
        labelled_mm: f64,
    },
}

impl OptionName {
    /// As the list shows it.
    pub fn text(&self, units: Units) -> String {
        match self {
            Self::Words(words) => words.clone(),
            Self::Piece {
                number,
                place,
                labelled_mm,
            } => say!(
                "work-piece",
                number = *number,
                place = place.as_str(),
                size = Amount::FineLength.text(*labelled_mm, units),
            ),
        }
    }
}

/// A piece of the kit, or a record that is named.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// Its number.
    pub number: u32,
    /// What it is, for one that has no length.
    pub words: String,
    /// What its label says, mm.
    pub labelled_mm: Option<f64>,
    /// Whether it lies in its place now.
    pub fitted: bool,
}

/// A hazard with what meets it.
#[derive(Debug, Clone, PartialEq)]
pub struct Hazard {
    /// What is said.
    pub text: String,
    /// What is ticked.
    pub precaution: String,
    /// As the operation names it.
    pub(super) value: Value,
}

/// What a field is filled with.
#[derive(Debug, Clone, PartialEq)]
pub enum Entry {
    /// As it was typed.
    Typed(String),
    /// Which option.
    Chosen(usize),
    /// Yes or no.
    Ticked(bool),
    /// Which pieces.
    Pieces(Vec<bool>),
}

/// A form as it is being filled in.
#[derive(Debug, Clone, PartialEq)]
pub struct Filled {
    /// One entry for each field.
    pub entries: Vec<Entry>,
    /// One tick for each hazard.
    pub precautions: Vec<bool>,
}

impl Work {
    /// The painted plate that it is about, if it is about one.
    pub fn plate(&self) -> Option<u32> {
        let plate = self
            .template
            .pointer("/plate")
            .or_else(|| self.template.pointer("/what/plate"))?;
        u32::try_from(plate.as_u64()?).ok()
    }

    /// The form before anybody has touched it, numbers in these units.
    pub fn blank(&self, units: Units) -> Filled {
        Filled {
            entries: self
                .fields
                .iter()
                .map(|field| match &field.kind {
                    FieldKind::Number { amount, start } => {
                        Entry::Typed(start.map_or_else(String::new, |value| amount.digits(value, units)))
                    }
                    FieldKind::Choice { start, .. } => Entry::Chosen(*start),
                    FieldKind::Tick { start } => Entry::Ticked(*start),
                    FieldKind::Pieces { pieces, .. } => Entry::Pieces(pieces.iter().map(|p| p.fitted).collect()),
                    FieldKind::Text => Entry::Typed(String::new()),
                })
                .collect(),
            precautions: vec![false; self.hazards.len()],
        }
    }

    /// The form with its typed numbers in other units; what cannot be read stays as it was typed.
    #[must_use]
    pub fn in_units(&self, filled: &Filled, from: Units, to: Units) -> Filled {
        let mut moved = filled.clone();
        for (field, entry) in self.fields.iter().zip(&mut moved.entries) {
            if let (FieldKind::Number { amount, .. }, Entry::Typed(typed)) = (&field.kind, entry)
                && amount.unit(from) != amount.unit(to)
                && let Ok(value) = amount.read(typed, from)
            {
                *typed = amount.digits(value, to);
            }
        }
        moved
    }

    /// The operation with these entries.
    ///
    /// # Errors
    /// What is missing or cannot be, in a sentence that names the field.
    pub fn operation(&self, filled: &Filled, units: Units) -> Result<Operation, String> {
        let mut operation = self.template.clone();
        for (field, entry) in self.fields.iter().zip(&filled.entries) {
            let named = |problem: String| say!("work-field-problem", field = field.name.as_str(), problem = problem);
            let value = field.value(entry, units).map_err(named)?;
            if let (Some(value), Some(place)) = (value, operation.pointer_mut(field.at)) {
                *place = value;
            }
        }
        if let Some(place) = operation.pointer_mut("/precautions") {
            let met = self.hazards.iter().zip(&filled.precautions);
            let mut all: Vec<Value> = Vec::new();
            for (hazard, _) in met.filter(|(_, ticked)| **ticked) {
                if !all.contains(&hazard.value) {
                    all.push(hazard.value.clone());
                }
            }
            *place = Value::Array(all);
        }
        let operation: Operation =
            serde_json::from_value(operation).map_err(|error| say!("work-not-possible", error = error.to_string()))?;
        operation
            .check()
            .map_err(|error| capital(&words::error::operation(&error).line()))?;
        Ok(operation)
    }
}

impl Field {
    fn value(&self, entry: &Entry, units: Units) -> Result<Option<Value>, String> {
        Ok(match (&self.kind, entry) {
            (FieldKind::Number { amount, .. }, Entry::Typed(typed)) => {
                let value = amount.read(typed, units)?;
                if value < f64::from(self.first) {
                    return Err(say!("work-counted-from-one"));
                }
                Some(if *amount == Amount::Count {
                    whole(value - f64::from(self.first))
                } else {
                    Value::from(value)
                })
            }
            (FieldKind::Choice { .. }, Entry::Chosen(index)) => self.options.get(*index).cloned(),
            (FieldKind::Tick { .. }, Entry::Ticked(ticked)) => Some(Value::from(*ticked)),
            (FieldKind::Pieces { pieces, .. }, Entry::Pieces(ticked)) => Some(
                pieces
                    .iter()
                    .zip(ticked)
                    .filter(|(_, ticked)| **ticked)
                    .map(|(piece, _)| Value::from(piece.number))
                    .collect(),
            ),
            (FieldKind::Text, Entry::Typed(typed)) => Some(Value::from(typed.trim())),
            _ => None,
        })
    }
}

/// A number that is known to be whole.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "checked to be whole and not negative; a cast saturates"
)]
pub(super) fn whole(value: f64) -> Value {
    Value::from(value.round() as u64)
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let first: String = letters.next().map(char::to_uppercase).into_iter().flatten().collect();
    format!("{first}{}.", letters.as_str().trim_end_matches('.'))
}
