//! `lashwright gears`

use crate::document::gears::GearSetRow;
use crate::job::Failure;
use crate::job::gear_sets::embedded;

use super::Answer;

/// Lists the embedded gear sets.
pub(super) fn run(json: bool) -> Answer {
    let rows: Vec<GearSetRow> = embedded()?
        .iter()
        .map(|found| GearSetRow::new(&found.source, &found.design))
        .collect();
    if json {
        return serde_json::to_string_pretty(&rows).map_err(Failure::of_program);
    }
    let widest = rows.iter().map(|r| r.name.chars().count()).max().unwrap_or(0);
    let lines: Vec<String> = rows
        .iter()
        .map(|r| format!("{:widest$}  {}", r.name, r.title))
        .collect();
    Ok(lines.join("\n"))
}
