//! Fields of an operation that there are not, and fields that are missing: all of them at once.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use crate::text::closest;

/// Most characters of a name that somebody wrote.
const LONGEST_NAME: usize = 40;

/// What is wrong with the fields of an object.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct WrongFields {
    /// The operation, or what was chosen in a field of it.
    pub operation: String,
    /// That field.
    pub within: Option<String>,
    /// Fields that there are not.
    pub unknown: Vec<UnknownField>,
    /// Fields that are missing.
    pub missing: Vec<String>,
}

/// A field that there is not.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct UnknownField {
    /// Its first letters.
    pub name: String,
    /// The field that was meant, if one is close.
    pub near: Option<String>,
}

/// What is wrong with the fields that are `given`; none where the schema of all operations finds nothing, or where it cannot
/// be told which operation is meant.
pub(super) fn wrong_fields(schema: &Value, given: &Value) -> Option<Vec<WrongFields>> {
    let mut found = Vec::new();
    look(schema, schema, given, None, &mut found);
    (!found.is_empty()).then_some(found)
}

fn look(schema: &Value, of: &Value, given: &Value, within: Option<&str>, found: &mut Vec<WrongFields>) {
    let (Some(of), Some(given)) = (object_for(schema, of, given), given.as_object()) else {
        return;
    };
    let Some(known) = of.get("properties").and_then(Value::as_object) else {
        return;
    };
    let names: Vec<&str> = known.keys().map(String::as_str).collect();
    let unknown = given.keys().filter(|name| !known.contains_key(*name));
    let unknown: Vec<UnknownField> = unknown.map(|name| unknown_field(name, &names)).collect();
    let required = of.get("required").and_then(Value::as_array);
    let missing: Vec<String> = required
        .into_iter()
        .flatten()
        .filter_map(Value::as_str)
        .filter(|name| !given.contains_key(*name))
        .map(str::to_owned)
        .collect();
    if !unknown.is_empty() || !missing.is_empty() {
        found.push(WrongFields {
            operation: tag(known, given).to_owned(),
            within: within.map(str::to_owned),
            unknown,
            missing,
        });
    }
    for (name, value) in given {
        if let Some(of) = known.get(name) {
            look(schema, of, value, Some(name), found);
        }
    }
}

/// The object that a place of the schema asks for; of several, that whose tag was given.
fn object_for<'a>(schema: &'a Value, of: &'a Value, given: &Value) -> Option<&'a Value> {
    if let Some(reference) = of.get("$ref").and_then(Value::as_str) {
        return object_for(schema, schema.pointer(reference.trim_start_matches('#'))?, given);
    }
    let Some(choices) = of.get("oneOf").and_then(Value::as_array) else {
        return of.get("properties").map(|_| of);
    };
    choices.iter().find(|choice| {
        let fields = choice.get("properties").and_then(Value::as_object);
        fields.into_iter().flatten().any(|(name, of)| {
            let tag = of.get("const");
            tag.is_some() && tag == given.get(name)
        })
    })
}

/// The name by which an object was chosen.
fn tag<'a>(known: &Map<String, Value>, given: &'a Map<String, Value>) -> &'a str {
    let mut fields = known.iter();
    let (name, _) = fields.find(|(_, of)| of.get("const").is_some()).unzip();
    name.and_then(|name| given.get(name)?.as_str()).unwrap_or_default()
}

/// A name that is not known, and the one that was meant if it is close.
fn unknown_field(name: &str, names: &[&str]) -> UnknownField {
    let shown: String = name.chars().take(LONGEST_NAME).flat_map(char::escape_debug).collect();
    let more = if name.chars().count() > LONGEST_NAME { "…" } else { "" };
    UnknownField {
        name: shown + more,
        near: closest(name, names).map(str::to_owned),
    }
}
