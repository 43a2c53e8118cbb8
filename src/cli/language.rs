//! The language that the environment asks for.

use std::env;

use crate::words::message::{LANGUAGE_VARIABLES, Language, speak};

/// Says everything in the language of the environment from now on: the first of [`LANGUAGE_VARIABLES`] that is set. One that
/// there are no messages in leaves English.
pub fn speak_as_environment_says() {
    let set = |name: &str| env::var(name).ok().filter(|value| !value.is_empty());
    if let Some(language) = LANGUAGE_VARIABLES
        .into_iter()
        .find_map(set)
        .and_then(|name| Language::of(&name))
    {
        speak(language);
    }
}
