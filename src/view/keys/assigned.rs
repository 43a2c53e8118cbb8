//! The keys of all actions, and why one cannot have a key.

use core::fmt;

use thiserror::Error;

use super::action::Action;
use super::name::KeyName;
use crate::view::place::Place;
use crate::words::say;

/// The keys of all actions. No two actions that act at the same place share one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Keys(pub(super) Vec<(Action, Option<KeyName>)>);

/// Another action has this key at the same place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub struct KeyTaken {
    /// The key.
    pub key: KeyName,
    /// What has it.
    pub other: Action,
}

impl fmt::Display for KeyTaken {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&say!(
            "keys-taken",
            key = self.key.word(),
            action = self.other.to_string()
        ))
    }
}

impl Default for Keys {
    fn default() -> Self {
        Self(Action::all().map(|action| (action, action.usual_key())).collect())
    }
}

impl Keys {
    /// The key of an action; none where it is turned off.
    pub fn key(&self, action: Action) -> Option<KeyName> {
        self.0.iter().find(|(of, _)| *of == action).and_then(|(_, key)| *key)
    }

    /// What a key asks for at a place.
    pub fn action_at(&self, place: Place, key: KeyName) -> Option<Action> {
        let has = |(action, of): &(Action, Option<KeyName>)| *of == Some(key) && action.acts_at(place);
        self.0.iter().find(|pair| has(pair)).map(|(action, _)| *action)
    }

    /// The action that keeps this one from having the key, if one does.
    pub fn taken_by(&self, action: Action, key: KeyName) -> Option<Action> {
        self.0
            .iter()
            .find(|(other, of)| *other != action && *of == Some(key) && action.meets(*other))
            .map(|(other, _)| *other)
    }

    /// Gives an action a key, or turns its key off.
    ///
    /// # Errors
    /// [`KeyTaken`]; nothing has changed then.
    pub fn set(&mut self, action: Action, key: Option<KeyName>) -> Result<(), KeyTaken> {
        if let Some(key) = key
            && let Some(other) = self.taken_by(action, key)
        {
            return Err(KeyTaken { key, other });
        }
        if let Some((_, of)) = self.0.iter_mut().find(|(of, _)| *of == action) {
            *of = key;
        }
        Ok(())
    }

    /// Actions that do not have their usual key, with what they have.
    pub fn changed(&self) -> impl Iterator<Item = (Action, Option<KeyName>)> + use<'_> {
        self.0
            .iter()
            .copied()
            .filter(|(action, key)| *key != action.usual_key())
    }
}
