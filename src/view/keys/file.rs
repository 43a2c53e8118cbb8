//! Keys as text, to be kept between runs: only what differs from the usual keys.

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::{Action, KeyName, KeyTaken, Keys};

/// What the text calls itself.
const FORMAT: &str = "lashwright-keys/1";
/// Stands for a key that is turned off.
const OFF: &str = "off";
/// Most characters of somebody else's text that a message repeats.
const MOST_REPEATED: usize = 40;

/// Why a text is no list of keys.
#[derive(Debug, Error)]
pub enum KeysError {
    /// It is not JSON of this kind.
    #[error("line {} is no JSON of a list of keys", .0.line())]
    Json(#[source] serde_json::Error),
    /// It is of another version, or of another kind.
    #[error("it calls itself {0:?}, and only {FORMAT:?} is known")]
    Format(String),
    /// There is no such action.
    #[error("there is no action {0:?}")]
    UnknownAction(String),
    /// There is no such key, or it cannot be given to an action.
    #[error("{key:?} is no key for “{action}”")]
    UnknownKey {
        /// The action.
        action: Action,
        /// What stands there.
        key: String,
    },
    /// An action has two keys.
    #[error("“{0}” stands there twice")]
    Twice(Action),
    /// Two actions have the same key at the same place.
    #[error("{} is the key of both “{}” and “{action}”", .taken.key.word(), .taken.other)]
    Taken {
        /// The later one.
        action: Action,
        /// Its key, and the earlier one.
        taken: KeyTaken,
    },
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct KeysFile {
    format: String,
    keys: Vec<Line>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Line {
    action: String,
    key: String,
}

fn clipped(text: &str) -> String {
    text.chars().take(MOST_REPEATED).collect()
}

impl Keys {
    /// Most bytes of a text that is read.
    pub const MOST_BYTES: usize = 16 * 1024;

    /// As JSON.
    pub fn to_json(&self) -> String {
        let sheet = KeysFile {
            format: FORMAT.to_owned(),
            keys: self
                .changed()
                .map(|(action, key)| Line {
                    action: action.name(),
                    key: key.map_or(OFF, KeyName::name).to_owned(),
                })
                .collect(),
        };
        // Two fields of text are never refused.
        let mut text = serde_json::to_string_pretty(&sheet).unwrap_or_default();
        text.push('\n');
        text
    }

    /// From JSON. Actions that are not named have their usual key, or none where a named action has that one now.
    ///
    /// # Errors
    /// [`KeysError`], the first that is met.
    pub fn from_json(bytes: &[u8]) -> Result<Self, KeysError> {
        let sheet: KeysFile = serde_json::from_slice(bytes).map_err(KeysError::Json)?;
        if sheet.format != FORMAT {
            return Err(KeysError::Format(clipped(&sheet.format)));
        }
        let mut keys = Self(Action::all().map(|action| (action, None)).collect());
        let mut named: Vec<Action> = Vec::new();
        for line in sheet.keys {
            let action = Action::named(&line.action).ok_or_else(|| KeysError::UnknownAction(clipped(&line.action)))?;
            if named.contains(&action) {
                return Err(KeysError::Twice(action));
            }
            named.push(action);
            let key = match line.key.as_str() {
                OFF => None,
                name => Some(KeyName::named(name).ok_or_else(|| KeysError::UnknownKey {
                    action,
                    key: clipped(name),
                })?),
            };
            keys.set(action, key)
                .map_err(|taken| KeysError::Taken { action, taken })?;
        }
        for action in Action::all().filter(|action| !named.contains(action)) {
            let free = action.usual_key().filter(|key| keys.taken_by(action, *key).is_none());
            // What is free is not refused.
            keys.set(action, free).unwrap_or_default();
        }
        Ok(keys)
    }
}
