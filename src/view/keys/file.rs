//! Keys as text, to be kept between runs: only what differs from the usual keys.

use core::fmt;

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::action::Action;
use super::assigned::{KeyTaken, Keys};
use super::name::KeyName;
use crate::words::say;

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
    Json(#[source] serde_json::Error),
    /// It is of another version, or of another kind.
    Format(String),
    /// There is no such action.
    UnknownAction(String),
    /// There is no such key, or it cannot be given to an action.
    UnknownKey {
        /// The action.
        action: Action,
        /// What stands there.
        key: String,
    },
    /// An action has two keys.
    Twice(Action),
    /// Two actions have the same key at the same place.
    Taken {
        /// The later one.
        action: Action,
        /// Its key, and the earlier one.
        taken: KeyTaken,
    },
}

impl fmt::Display for KeysError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        // Somebody else's text is shown with its signs that cannot be seen written out.
        f.write_str(&match self {
            Self::Json(error) => say!("keys-file-json", line = error.line()),
            Self::Format(found) => say!(
                "keys-file-format",
                found = format!("{found:?}"),
                known = format!("{FORMAT:?}"),
            ),
            Self::UnknownAction(name) => say!("keys-file-unknown-action", name = format!("{name:?}")),
            Self::UnknownKey { action, key } => {
                say!(
                    "keys-file-unknown-key",
                    key = format!("{key:?}"),
                    action = action.to_string()
                )
            }
            Self::Twice(action) => say!("keys-file-twice", action = action.to_string()),
            Self::Taken { action, taken } => say!(
                "keys-file-taken",
                key = taken.key.word(),
                first = taken.other.to_string(),
                second = action.to_string(),
            ),
        })
    }
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
