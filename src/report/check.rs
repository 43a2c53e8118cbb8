//! What a checked file is, in one line.

use crate::bearing::Support;
use crate::exercise::Scenario;
use crate::exercise::journal::ReadJournal;
use crate::gear::GearSet;
use crate::words::answer::torn_line;
use crate::words::{self, say};

/// A gear set; doubtful geometry adds a line a warning.
pub(crate) fn gears(source: &str, set: &GearSet) -> String {
    let design = set.design();
    let mut lines = vec![say!(
        "check-gears",
        warnings = set.warnings().len(),
        source = source,
        name = design.name.clone(),
        ring_gear = design.wheel_teeth,
        pinion = design.pinion_teeth
    )];
    lines.extend(set.warnings().iter().map(|warning| {
        format!(
            "  {}",
            say!("check-warning", what = words::error::warning(warning).line())
        )
    }));
    lines.join("\n")
}

/// A pinion support.
pub(crate) fn support(source: &str, support: &Support) -> String {
    let (source, name) = (source, support.name.clone());
    if support.has_sleeve() {
        say!("check-support-crush", source = source, name = name)
    } else {
        say!("check-support-solid", source = source, name = name)
    }
}

/// A journal, which is not done again.
pub(crate) fn journal(source: &str, read: &ReadJournal) -> String {
    let (exercise, seed) = (read.header.scenario.clone(), read.header.seed.to_string());
    let operations = read.entries.len();
    match (&read.sealed, &read.torn) {
        (Some(_), _) => say!(
            "check-journal-sealed",
            source = source,
            exercise = exercise,
            seed = seed,
            operations = operations
        ),
        (None, None) => say!(
            "check-journal-open",
            source = source,
            exercise = exercise,
            seed = seed,
            operations = operations
        ),
        (None, Some(bytes)) => say!(
            "check-journal-torn",
            source = source,
            exercise = exercise,
            seed = seed,
            operations = operations,
            torn = torn_line(*bytes)
        ),
    }
}

/// An exercise.
pub(crate) fn scenario(source: &str, scenario: &Scenario) -> String {
    say!(
        "check-exercise",
        source = source,
        title = words::card::texts(scenario).title,
        step = scenario.step,
        layout = scenario.layout.name()
    )
}
