//! Fields of an operation that there are not, and fields that are missing: all of them at once.

use serde_json::{Map, Value};

use crate::text::closest;

/// Most fields that are told; a longer list helps nobody.
const MOST_TOLD: usize = 12;
/// Most characters of a name that somebody wrote.
const LONGEST_NAME: usize = 40;

/// What is wrong with the fields that are `given`, in sentences without their last stop; none where the schema of all
/// operations finds nothing, or where it cannot be told which operation is meant.
pub(super) fn wrong_fields(schema: &Value, given: &Value) -> Option<String> {
    let mut found = Vec::new();
    look(schema, schema, given, None, &mut found);
    (!found.is_empty()).then(|| found.join("; "))
}

fn look(schema: &Value, of: &Value, given: &Value, within: Option<&str>, found: &mut Vec<String>) {
    let (Some(of), Some(given)) = (object_for(schema, of, given), given.as_object()) else {
        return;
    };
    let Some(known) = of.get("properties").and_then(Value::as_object) else {
        return;
    };
    let names: Vec<&str> = known.keys().map(String::as_str).collect();
    let unknown = given.keys().filter(|name| !known.contains_key(*name));
    let not_taken: Vec<String> = unknown.map(|name| told(name, &names)).collect();
    let required = of.get("required").and_then(Value::as_array);
    let missing: Vec<String> = required
        .into_iter()
        .flatten()
        .filter_map(Value::as_str)
        .filter(|name| !given.contains_key(*name))
        .map(|name| format!("`{name}`"))
        .collect();
    let mut parts = Vec::new();
    if !not_taken.is_empty() {
        parts.push(format!("does not take {}", list(not_taken, "or")));
    }
    if !missing.is_empty() {
        parts.push(format!("lacks {}", list(missing, "and")));
    }
    if !parts.is_empty() {
        let place = within.map_or_else(String::new, |field| format!(" in `{field}`"));
        found.push(format!("`{}`{place} {}", tag(known, given), parts.join(", and ")));
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
fn told(name: &str, names: &[&str]) -> String {
    let shown: String = name.chars().take(LONGEST_NAME).flat_map(char::escape_debug).collect();
    let more = if name.chars().count() > LONGEST_NAME { "…" } else { "" };
    let meant = closest(name, names).map_or_else(String::new, |meant| format!(" (did you mean `{meant}`?)"));
    format!("`{shown}{more}`{meant}")
}

/// With a word before the last one.
fn list(mut all: Vec<String>, word: &str) -> String {
    if all.len() > MOST_TOLD {
        let more = all.len() - MOST_TOLD;
        all.truncate(MOST_TOLD);
        all.push(format!("{more} more"));
    }
    match all.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, others)) => format!("{} {word} {last}", others.join(", ")),
        None => String::new(),
    }
}
