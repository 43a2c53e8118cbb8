//! Ranges of the numbers in operations, by the name of the field.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::fields::{WrongFields, wrong_fields};
use super::operation::Operation;

/// Range of a field; a name means the same in every operation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FieldRange {
    /// Field.
    pub field: &'static str,
    /// Least value taken.
    pub least: f64,
    /// Greatest value taken.
    pub greatest: f64,
}

/// Most pieces in one pack, teeth painted at once, records named as evidence.
pub const MOST_LISTED: usize = 120;
/// Most characters in a text.
pub const LONGEST_TEXT: usize = 400;

const fn range(field: &'static str, least: f64, greatest: f64) -> FieldRange {
    FieldRange { field, least, greatest }
}

/// All ranges.
pub const RANGES: &[FieldRange] = &[
    range("angle_deg", -1080.0, 1080.0),
    range("by_mm", 0.0, 1.0),
    range("chances", 0.0, 1.0),
    range("drag_nm", 0.0, 60.0),
    range("evidence", 0.0, 100_000.0),
    range("force_kn", 0.5, 200.0),
    range("level", 1.0, 3.0),
    range("marks_out_teeth", 0.0, 120.0),
    range("minutes", 0.0, 600.0),
    range("notches", -80.0, 80.0),
    range("passes", 1.0, 40.0),
    range("piece", 0.0, 999.0),
    range("pieces", 0.0, 999.0),
    range("plate", 0.0, 99.0),
    range("record", 1.0, 100_000.0),
    range("teeth", 0.0, 119.0),
    range("to_c", 20.0, 400.0),
    range("tooth", 0.0, 119.0),
    range("torque_nm", 0.0, 1500.0),
    range("turns", 0.0, 200.0),
    range("value", -10_000.0, 10_000.0),
];

/// The range of a field.
pub fn range_of(field: &str) -> Option<&'static FieldRange> {
    RANGES.iter().find(|r| r.field == field)
}

/// A number or text that no operation takes.
#[derive(Debug, Clone, PartialEq, thiserror::Error, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "error", rename_all = "snake_case")]
#[error("{self:?}")]
pub enum OperationError {
    /// Not an operation at all.
    Unreadable {
        /// What the reader says.
        reason: String,
    },
    /// Fields that there are not, and fields that are missing.
    WrongFields {
        /// Every object with such fields.
        places: Vec<WrongFields>,
    },
    /// Null where a number belongs, as one that is not finite is written.
    NotANumber {
        /// Field.
        field: String,
    },
    /// Out of range.
    OutOfRange {
        /// Field.
        field: String,
        /// Value.
        value: f64,
        /// Least value taken.
        least: f64,
        /// Greatest value taken.
        greatest: f64,
    },
    /// A list or text too long.
    TooLong {
        /// Field.
        field: String,
        /// Most entries or characters.
        most: usize,
    },
    /// Chances that do not add up.
    Chances {
        /// Their sum.
        sum: f64,
    },
}

impl Operation {
    /// Reads an operation and checks its ranges.
    ///
    /// # Errors
    /// [`OperationError`] with all fields that are not known or not there, or else with the first thing that is wrong.
    pub fn from_json(text: &str) -> Result<Self, OperationError> {
        // The reader stops at the first field that it does not know; whoever wrote the line wants to hear of all.
        let operation: Self = serde_json::from_str(text).map_err(|error| {
            let given = serde_json::from_str(text).ok();
            let wrong = given.and_then(|given| wrong_fields(&Self::schema(), &given));
            wrong.map_or_else(
                || OperationError::Unreadable {
                    reason: error.to_string(),
                },
                |places| OperationError::WrongFields { places },
            )
        })?;
        operation.check()?;
        Ok(operation)
    }

    /// Checks the ranges of all its numbers, lists and texts.
    ///
    /// # Errors
    /// [`OperationError`] with the first thing that is wrong.
    pub fn check(&self) -> Result<(), OperationError> {
        let value = self.to_value()?;
        check_value("", &value)?;
        if let Self::Predict { chances, .. } | Self::JudgePlate { chances, .. } = self {
            let sum: f64 = chances.iter().sum();
            if (sum - 1.0).abs() > 1.0e-6 {
                return Err(OperationError::Chances { sum });
            }
        }
        Ok(())
    }

    fn to_value(&self) -> Result<Value, OperationError> {
        serde_json::to_value(self).map_err(|e| OperationError::Unreadable { reason: e.to_string() })
    }

    /// JSON Schema of all operations, with the ranges of their numbers.
    pub fn schema() -> Value {
        let mut schema = schemars::schema_for!(Self).to_value();
        put_ranges_in(&mut schema);
        schema
    }
}

fn check_value(field: &str, value: &Value) -> Result<(), OperationError> {
    match value {
        // A number that is not finite is written as null; where null is allowed the field is no number.
        Value::Number(number) => {
            let value = number.as_f64().unwrap_or(f64::NAN);
            match range_of(field) {
                Some(r) if !(value >= r.least && value <= r.greatest) => Err(OperationError::OutOfRange {
                    field: field.to_owned(),
                    value,
                    least: r.least,
                    greatest: r.greatest,
                }),
                _ => Ok(()),
            }
        }
        Value::Null if range_of(field).is_some() => Err(OperationError::NotANumber {
            field: field.to_owned(),
        }),
        Value::String(text) if text.chars().count() > LONGEST_TEXT => Err(OperationError::TooLong {
            field: field.to_owned(),
            most: LONGEST_TEXT,
        }),
        Value::Array(entries) if entries.len() > MOST_LISTED => Err(OperationError::TooLong {
            field: field.to_owned(),
            most: MOST_LISTED,
        }),
        Value::Array(entries) => entries.iter().try_for_each(|entry| check_value(field, entry)),
        Value::Object(fields) => fields.iter().try_for_each(|(name, value)| check_value(name, value)),
        Value::Null | Value::Bool(_) | Value::String(_) => Ok(()),
    }
}

/// Writes minimum and maximum beside every numeric property that has a range.
fn put_ranges_in(schema: &mut Value) {
    match schema {
        Value::Object(map) => {
            if let Some(Value::Object(properties)) = map.get_mut("properties") {
                for (name, property) in properties.iter_mut() {
                    if let Some(range) = range_of(name) {
                        let numbers = match property.get("type").and_then(Value::as_str) {
                            Some("array") => property.get_mut("items"),
                            _ => Some(property),
                        };
                        if let Some(Value::Object(numbers)) = numbers {
                            numbers.insert("minimum".to_owned(), Value::from(range.least));
                            numbers.insert("maximum".to_owned(), Value::from(range.greatest));
                        }
                    }
                }
            }
            map.values_mut().for_each(put_ranges_in);
        }
        Value::Array(entries) => entries.iter_mut().for_each(put_ranges_in),
        _ => {}
    }
}
