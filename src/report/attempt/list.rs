//! All exercises, one a line.

use crate::document::attempt::ExerciseRow;
use crate::words::say;

pub(crate) fn list(rows: &[ExerciseRow]) -> String {
    let widest = rows.iter().map(|row| row.name.chars().count()).max().unwrap_or(0);
    let lines: Vec<String> = rows
        .iter()
        .map(|row| {
            say!(
                "card-exercise",
                step = row.step,
                name = format!("{:widest$}", row.name),
                layout = row.layout.clone(),
                title = row.title.clone()
            )
        })
        .collect();
    lines.join("\n")
}
