//! All gear sets that ship with the program, one a line.

use crate::document::gears::GearSetRow;

pub(crate) fn list(rows: &[GearSetRow]) -> String {
    let widest = rows.iter().map(|r| r.name.chars().count()).max().unwrap_or(0);
    let lines: Vec<String> = rows
        .iter()
        .map(|r| format!("{:widest$}  {}", r.name, r.title))
        .collect();
    lines.join("\n")
}
