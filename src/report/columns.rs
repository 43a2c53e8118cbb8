//! Numbers with their units, and names with their values below each other.

/// A number with its unit behind it.
pub(super) fn with_unit(number: &str, unit: &str) -> String {
    [number, "\u{a0}", unit].concat()
}

/// Names and values below each other, the values in one column.
pub(super) fn in_columns(rows: &[(String, String)]) -> impl Iterator<Item = String> {
    let widest = rows.iter().map(|(name, _)| name.chars().count()).max().unwrap_or(0);
    rows.iter()
        .map(move |(name, value)| format!("  {name:widest$}  {value}"))
}
