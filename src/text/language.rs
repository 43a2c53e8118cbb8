//! Names of languages in files: tags as `de` and `pt-BR` (Unicode language identifiers, Unicode Technical Standard 35).

use unic_langid::LanguageIdentifier;

/// The language that all texts are written in first.
pub const FIRST_LANGUAGE: &str = "en-US";

/// The language that only tests the room for words.
pub const PSEUDO_LANGUAGE: &str = "pseudo";

/// Most letters of a language's code: those of ISO 639 have two or three. The form of a tag allows more, but no language has
/// any such code, so that it is somebody's word for a language.
const MOST_LETTERS: usize = 3;

/// A language by its tag.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LanguageTag(LanguageIdentifier);

/// Why a text is no tag.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum TagFault {
    /// It is no name of a language.
    NoTag,
    /// It is one, but is written otherwise: `de-AT`, not `DE_at`.
    Written {
        /// As it is to be written.
        properly: String,
    },
}

impl LanguageTag {
    /// A tag as it is properly written.
    ///
    /// # Errors
    /// [`TagFault`].
    pub fn read(text: &str) -> Result<Self, TagFault> {
        let Ok(tag) = text.parse::<LanguageIdentifier>() else {
            return Err(TagFault::NoTag);
        };
        let properly = tag.to_string();
        let letters = tag.language.as_str().len();
        if tag.language.is_empty() || (letters > MOST_LETTERS && properly != PSEUDO_LANGUAGE) {
            return Err(TagFault::NoTag);
        }
        if properly == text {
            Ok(Self(tag))
        } else {
            Err(TagFault::Written { properly })
        }
    }

    /// How near it is to a wanted language: 2 for the same, 1 for the same language of another region or script, 0 for
    /// another language, and for what is no tag.
    pub fn nearness(&self, wanted: &str) -> u32 {
        match wanted.parse::<LanguageIdentifier>() {
            Ok(wanted) if wanted == self.0 => 2,
            Ok(wanted) if wanted.language == self.0.language => 1,
            _ => 0,
        }
    }
}
