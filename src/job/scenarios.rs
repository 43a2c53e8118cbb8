//! Finding and reading scenarios: a file, or one that ships with the program.

use std::convert::Infallible;
use std::path::{Path, PathBuf};

use crate::catalogue::{self, Shelf};
use crate::exercise::{Exercise, ExerciseError, Scenario, ScenarioProblem, Source, Sources, Unread};
use crate::report::problem::problem_text;
use crate::store;
use crate::text::{Document, Limits, Problems, decode};
use crate::words::say;

use super::Failure;
use super::gear_sets::listed;

/// A scenario with the name under which it was found.
#[derive(Debug, Clone)]
pub struct FoundScenario {
    /// File name, or the name of the embedded scenario.
    pub source: String,
    /// The text it was read from.
    pub text: String,
    /// Texts of its gear set and of its support.
    pub parts: [String; 2],
    /// Ready for any seed.
    pub exercise: Exercise,
}

/// What ships with the program, and files in the folder of a scenario that is a file itself.
struct Beside(Option<PathBuf>);

impl Sources for Beside {
    fn text(&self, kind: Source, name: &str) -> Option<String> {
        Shelf.text(kind, name).or_else(|| {
            // A name and no path: what a scenario names lies beside it.
            let plain = Path::new(name).components().count() == 1;
            let file = self.0.as_ref().filter(|_| plain)?.join(name);
            let bytes = store::read_within(&file, Limits::HAND_WRITTEN.bytes).ok()?;
            decode::<Infallible>(&bytes, Limits::HAND_WRITTEN)
                .ok()
                .map(str::to_owned)
        })
    }
}

/// The scenario `source`: the name of an embedded one, or a file. Gear set and support are those of the program, or files
/// in the same folder.
///
/// # Errors
/// No such scenario and no such file, everything that is wrong with the file, and parts that are not there or do not
/// belong together.
pub fn find(source: &str) -> Result<FoundScenario, Failure> {
    if let Some(embedded) = catalogue::scenario(source) {
        return read(source, embedded.text.as_bytes(), None);
    }
    let path = Path::new(source);
    if !path.exists() && path.extension().is_none_or(|e| e != "toml") {
        let names: Vec<&str> = catalogue::SCENARIOS.iter().map(|e| e.name).collect();
        return Err(Failure::bad_input(say!(
            "files-no-exercise",
            name = source,
            names = listed(&names)
        )));
    }
    let folder = path.parent().map(Path::to_path_buf);
    read(source, &store::read_within(path, Limits::HAND_WRITTEN.bytes)?, folder)
}

/// All embedded scenarios, in the order of the catalogue.
///
/// # Errors
/// As for a file; a test reads them all, so that this does not happen to people.
pub fn embedded() -> Result<Vec<FoundScenario>, Failure> {
    catalogue::SCENARIOS
        .iter()
        .map(|e| read(e.name, e.text.as_bytes(), None))
        .collect()
}

/// Reads a scenario from the bytes of a file shown to people as `source`; what it names may lie in `folder`.
///
/// # Errors
/// Everything that is wrong with the text or with what it names.
pub fn read(source: &str, bytes: &[u8], folder: Option<PathBuf>) -> Result<FoundScenario, Failure> {
    let text = decode::<ScenarioProblem>(bytes, Limits::HAND_WRITTEN)
        .map_err(|problems| Failure::input(problem_text(source, &String::from_utf8_lossy(bytes), &problems)))?;
    let scenario =
        Scenario::from_toml(text).map_err(|problems| Failure::input(problem_text(source, text, &problems)))?;
    let sources = Beside(folder);
    let named = [
        (Source::Gears, scenario.gears.clone()),
        (Source::Support, scenario.support.clone()),
    ];
    let exercise = Exercise::prepare(scenario, &sources).map_err(|error| unprepared(source, text, error))?;
    // Both were there when the exercise was prepared.
    let parts = named.map(|(kind, name)| sources.text(kind, &name).unwrap_or_default());
    Ok(FoundScenario {
        source: source.to_owned(),
        text: text.to_owned(),
        parts,
        exercise,
    })
}

/// Why an exercise cannot be prepared, shown at the line that names it.
fn unprepared(source: &str, text: &str, error: ExerciseError) -> Failure {
    let key = match &error {
        ExerciseError::NotThere { what, .. } => match what {
            Source::Gears => "gears",
            Source::Support => "support",
        },
        ExerciseError::Unreadable { problems, .. } => match problems {
            Unread::Gears(_) => "gears",
            Unread::Support(_) => "support",
        },
        ExerciseError::Gears { .. } => "gears",
        ExerciseError::Axle(_) | ExerciseError::Start(_) | ExerciseError::NotFinished => "layout",
    };
    let mut problems = Problems::new();
    let document = Document::parse::<ExerciseError>(text);
    let place = document.map_or(0..0, |document| document.place_of(key));
    problems.note_own(place, error);
    Failure::input(problem_text(source, text, &problems))
}
