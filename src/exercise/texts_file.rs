//! The texts of a scenario file: those in English at its top, those in other languages in `[texts.LANGUAGE]`.

use super::card_texts::TranslatedTexts;
use super::scenario::ScenarioProblem;
use crate::text::{FIRST_LANGUAGE, LanguageTag, Problems, Table, TagFault};

/// Most characters of a title.
const TITLE: usize = 60;
/// Most paragraphs of what is told, and most characters of each.
const TOLD: [usize; 2] = [12, 600];
/// Most aims, and most characters of each.
const AIMS: [usize; 2] = [6, 200];
/// As many hints as there are levels to ask for, and most characters of each.
const HINTS: [usize; 2] = [3, 300];
/// Most cautions, and most characters of each.
const CAUTIONS: [usize; 2] = [6, 300];
/// Most languages beside English.
const LANGUAGES: usize = 40;

/// Texts in English.
pub(super) struct EnglishTexts {
    pub(super) title: Option<String>,
    pub(super) told: Option<Vec<String>>,
    pub(super) aims: Option<Vec<String>>,
    pub(super) hints: Option<Vec<String>>,
    pub(super) cautions: Option<Vec<String>>,
}

/// Reads those in English.
pub(super) fn read_english(root: &mut Table<'_>, p: &mut Problems<ScenarioProblem>) -> EnglishTexts {
    EnglishTexts {
        title: root.text("title", 1..=TITLE, p),
        told: root.texts("told", &(1..=TOLD[0]), &(1..=TOLD[1]), p),
        aims: root.texts("aims", &(1..=AIMS[0]), &(1..=AIMS[1]), p),
        hints: root.texts("hints", &(HINTS[0]..=HINTS[0]), &(1..=HINTS[1]), p),
        cautions: root.texts("cautions", &(0..=CAUTIONS[0]), &(1..=CAUTIONS[1]), p),
    }
}

/// Reads those in other languages. Every key may be left out.
pub(super) fn read_translated(
    root: &mut Table<'_>,
    english: &EnglishTexts,
    p: &mut Problems<ScenarioProblem>,
) -> Vec<(LanguageTag, TranslatedTexts)> {
    let mut read = Vec::new();
    for (name, mut table) in root.named_tables("texts", LANGUAGES, p) {
        let tag = match LanguageTag::read(&name) {
            Ok(_) if name == FIRST_LANGUAGE => {
                p.note_own(table.place(), ScenarioProblem::TextsOfFirstLanguage);
                None
            }
            Ok(tag) => Some(tag),
            Err(TagFault::NoTag) => {
                p.note_own(table.place(), ScenarioProblem::NoLanguage { name });
                None
            }
            Err(TagFault::Written { properly }) => {
                p.note_own(table.place(), ScenarioProblem::LanguageWritten { name, properly });
                None
            }
        };
        let title = table.optional_text("title", 1..=longer(TITLE), p);
        let mut list = |key, english: &Option<Vec<String>>, [_, characters]: [usize; 2]| {
            let characters = 1..=longer(characters);
            match english.as_ref().map(Vec::len) {
                Some(0) if table.has(key) => {
                    table.refuse(key, ScenarioProblem::NoEnglishTexts { key }, p);
                    None
                }
                Some(count) => table.optional_texts(key, &(count..=count), &characters, p),
                // The English ones are damaged, so that their number is not known.
                None => table.optional_texts(key, &(0..=usize::MAX), &characters, p),
            }
        };
        let texts = TranslatedTexts {
            title,
            told: list("told", &english.told, TOLD),
            aims: list("aims", &english.aims, AIMS),
            hints: list("hints", &english.hints, HINTS),
            cautions: list("cautions", &english.cautions, CAUTIONS),
        };
        table.finish(p);
        read.extend(tag.map(|tag| (tag, texts)));
    }
    read
}

/// Characters that a text in another language may have: two fifths more than in English, which is what the window has room
/// for.
const fn longer(characters: usize) -> usize {
    characters + 2 * characters / 5
}
