//! All operations with their fields.

use serde_json::{Map, Value};

use crate::bench::{Operation, OperationKind};
use crate::report::operations;
use crate::words::listed;

use super::{Failure, json};

/// All of them as one JSON Schema.
///
/// # Errors
/// Only where it cannot be written as JSON, which is a fault of the program.
pub fn schema() -> Result<String, Failure> {
    json::pretty(&told())
}

/// The same as a list for people: name, what it does, fields with their kinds and limits.
pub fn text() -> String {
    operations::list(&Operation::schema())
}

/// The schema with the words of the list in it, in place of what is written for whoever works on the program.
fn told() -> Value {
    let mut schema = Operation::schema();
    for operation in schema
        .get_mut("oneOf")
        .and_then(Value::as_array_mut)
        .into_iter()
        .flatten()
    {
        let name = operation.pointer("/properties/do/const").and_then(Value::as_str);
        let Some(kind) = name.and_then(OperationKind::from_key) else {
            continue;
        };
        describe(operation, listed::operation(kind));
        let fields = operation.get_mut("properties").and_then(Value::as_object_mut);
        for (name, field) in fields.into_iter().flat_map(Map::iter_mut) {
            if let Some(words) = listed::field(kind, name) {
                describe(field, words);
            }
        }
    }
    schema
}

fn describe(what: &mut Value, words: String) {
    if let Some(object) = what.as_object_mut() {
        object.insert("description".to_owned(), Value::String(words));
    }
}
