//! The texts of an exercise's card, in the language that is spoken.

use super::message::Language;
use crate::exercise::{CardTexts, Scenario};

/// The texts of a card in the language that is spoken, in English where the exercise has none in it.
pub fn texts(card: &Scenario) -> CardTexts<'_> {
    card.texts_in(Language::spoken().tag())
}
