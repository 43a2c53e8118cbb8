//! What only a scenario file can have wrong, and scenarios that cannot be played.

use super::{Own, Told};
use crate::exercise::{Counted, ExerciseError, ScenarioProblem};
use crate::text::FIRST_LANGUAGE;
use crate::words::{error, say};

impl Own for ScenarioProblem {
    fn file() -> String {
        say!("problem-file-scenario")
    }

    fn told(&self) -> Told {
        match self {
            Self::NoSuchShim { layout, depth_shim } => {
                let can: Vec<String> = layout
                    .depth_shims()
                    .iter()
                    .map(|shim| format!("\"{}\"", shim.name()))
                    .collect();
                Told::new(
                    say!(
                        "problem-scenario-shim",
                        layout = layout.name(),
                        shim = depth_shim.name()
                    ),
                    say!("problem-scenario-shim-cure", count = can.len(), words = can.join(", ")),
                )
            }
            Self::NotAscending { key } => Told::new(
                say!("problem-scenario-ascending", key = *key),
                say!("problem-scenario-ascending-cure", key = *key),
            ),
            Self::ZeroInsideFull { key, full } => Told::new(
                say!(
                    "problem-scenario-zero-window",
                    key = *key,
                    low = full.low.to_string(),
                    high = full.high.to_string()
                ),
                say!("problem-scenario-zero-window-cure"),
            ),
            Self::NoSuchMember { member } => Told::new(
                say!("problem-scenario-member", name = member.name()),
                say!("problem-scenario-member-cure"),
            ),
            Self::FaultTwice { name } => Told::new(
                say!("problem-scenario-fault-twice", name = name.as_str()),
                say!("problem-scenario-fault-twice-cure"),
            ),
            Self::FaultNamedThere { name } => Told::new(
                say!("problem-scenario-fault-there", name = name.as_str()),
                say!("problem-scenario-fault-there-cure"),
            ),
            Self::CountsTwice { counted } => Told::new(
                say!("problem-scenario-counts-twice", name = counted.name()),
                say!("problem-scenario-counts-twice-cure"),
            ),
            Self::CountsUnknown { name } => {
                let known: Vec<&str> = Counted::ALL.into_iter().map(Counted::name).collect();
                Told::new(
                    say!("problem-scenario-counts-unknown", name = name.as_str()),
                    say!("problem-scenario-counts-unknown-cure", known = known.join(", ")),
                )
            }
            Self::FullNotBelowZero => Told::new(say!("problem-scenario-marks"), say!("problem-scenario-marks-cure")),
            Self::NoLanguage { name } => Told::new(
                say!("problem-scenario-language", name = name.as_str()),
                say!("problem-scenario-language-cure"),
            ),
            Self::LanguageWritten { name, properly } => Told::new(
                say!("problem-scenario-language-written", name = name.as_str()),
                say!("problem-scenario-language-written-cure", properly = properly.as_str()),
            ),
            Self::TextsOfFirstLanguage => Told::new(
                say!("problem-scenario-first-language", tag = FIRST_LANGUAGE),
                say!("problem-scenario-first-language-cure"),
            ),
            Self::NoEnglishTexts { key } => Told::new(
                say!("problem-scenario-no-english", key = *key),
                say!("problem-scenario-no-english-cure", key = *key),
            ),
            Self::Weights { sum } => Told::labeled(
                say!("problem-scenario-weights"),
                say!("problem-scenario-weights-label", sum = sum.to_string()),
                say!("problem-scenario-weights-cure"),
            ),
        }
    }
}

impl Own for ExerciseError {
    fn file() -> String {
        say!("problem-file-scenario")
    }

    fn told(&self) -> Told {
        let cure = match self {
            Self::NotThere { .. } => say!("problem-scenario-not-there-cure"),
            Self::Unreadable { name, .. } => say!("problem-scenario-unreadable-cure", name = name.as_str()),
            Self::Gears { name, .. } => say!("problem-scenario-gears-cure", name = name.as_str()),
            Self::Axle(_) | Self::Start(_) | Self::NotFinished => say!("problem-scenario-axle-cure"),
        };
        Told::new(error::exercise(self).what, cure)
    }
}
