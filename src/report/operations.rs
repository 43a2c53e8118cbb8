//! All operations with their fields, for people.

use serde_json::Value;

use crate::bench::OperationKind;
use crate::words::{self, say};

/// All of them: name, what it does, fields with their kinds and limits.
pub(crate) fn list(schema: &Value) -> String {
    let mut lines = Vec::new();
    for operation in schema.get("oneOf").and_then(Value::as_array).into_iter().flatten() {
        let properties = operation.get("properties").and_then(Value::as_object);
        let name = properties
            .and_then(|p| p.get("do"))
            .and_then(|d| d.get("const"))
            .and_then(Value::as_str)
            .unwrap_or_default();
        let Some(kind) = OperationKind::from_key(name) else {
            continue;
        };
        lines.push(format!("{name}: {}", words::listed::operation(kind)));
        for hazard in kind.hazards() {
            let text = words::hazard(*hazard);
            // The word for it in the list of precautions, where there is one.
            let word = hazard.precaution().and_then(|one| serde_json::to_value(one).ok());
            let told = if let Some(Value::String(word)) = word {
                say!("card-hazard-met", text = text, precaution = word)
            } else {
                say!("card-hazard", text = text)
            };
            lines.push(format!("    {told}"));
        }
        let required: Vec<&str> = operation
            .get("required")
            .and_then(Value::as_array)
            .into_iter()
            .flatten()
            .filter_map(Value::as_str)
            .collect();
        for (field, of) in properties.into_iter().flatten().filter(|(field, _)| *field != "do") {
            let about = words::listed::field(kind, field).unwrap_or_default();
            let kind = kind_of(schema, of);
            let told = if required.contains(&field.as_str()) {
                say!("card-field", field = field.clone(), kind = kind, about = about)
            } else {
                say!("card-field-optional", field = field.clone(), kind = kind, about = about)
            };
            lines.push(format!("    {told}"));
        }
    }
    lines.join("\n")
}

/// What a field takes, in words.
fn kind_of(schema: &Value, of: &Value) -> String {
    if let Some(reference) = of.get("$ref").and_then(Value::as_str) {
        let path = reference.trim_start_matches('#');
        return schema
            .pointer(path)
            .map_or_else(|| reference.to_owned(), |target| kind_of(schema, target));
    }
    if let Some(all) = of.get("anyOf").or_else(|| of.get("allOf")).and_then(Value::as_array) {
        let kinds: Vec<String> = all
            .iter()
            .map(|one| kind_of(schema, one))
            .filter(|k| k != "null")
            .collect();
        return kinds
            .into_iter()
            .reduce(|first, second| say!("card-or", first = first, second = second))
            .unwrap_or_default();
    }
    if let Some(one_of) = of.get("oneOf").and_then(Value::as_array) {
        let words: Vec<String> = one_of.iter().map(|one| choice(schema, one)).collect();
        return say!("card-one-of", names = words.join(", "));
    }
    if let Some(words) = of.get("enum").and_then(Value::as_array) {
        let words: Vec<&str> = words.iter().filter_map(Value::as_str).collect();
        return say!("card-one-of", names = words.join(", "));
    }
    let limits = of.get("minimum").zip(of.get("maximum"));
    let kinds: Vec<&str> = match of.get("type") {
        Some(Value::String(one)) => vec![one.as_str()],
        Some(Value::Array(many)) => many.iter().filter_map(Value::as_str).collect(),
        _ => Vec::new(),
    };
    let named = kinds.iter().find(|k| **k != "null").copied();
    match named {
        Some("array") => {
            let items = of
                .get("items")
                .map_or_else(|| say!("card-values"), |items| kind_of(schema, items));
            say!("card-list-of", kind = items)
        }
        Some("boolean") => say!("card-true-or-false"),
        Some("integer") => limits.map_or_else(
            || say!("card-whole-number"),
            |(low, high)| say!("card-whole-number-within", low = plain(low), high = plain(high)),
        ),
        Some("number") => limits.map_or_else(
            || say!("card-number"),
            |(low, high)| say!("card-number-within", low = plain(low), high = plain(high)),
        ),
        Some("string") => say!("card-text"),
        Some(other) => other.to_owned(),
        None => say!("card-value"),
    }
}

/// A number without decimals that say nothing.
fn plain(of: &Value) -> String {
    of.as_f64().map_or_else(|| of.to_string(), |value| value.to_string())
}

/// One alternative: a word, or an object named by its tag with its fields.
fn choice(schema: &Value, one: &Value) -> String {
    if let Some(word) = one.get("const").and_then(Value::as_str) {
        return word.to_owned();
    }
    let Some(properties) = one.get("properties").and_then(Value::as_object) else {
        return kind_of(schema, one);
    };
    let parts: Vec<String> = properties
        .iter()
        .map(|(name, of)| {
            of.get("const").and_then(Value::as_str).map_or_else(
                || format!("\"{name}\": {}", kind_of(schema, of)),
                |word| format!("\"{name}\": \"{word}\""),
            )
        })
        .collect();
    format!("{{{}}}", parts.join(", "))
}
