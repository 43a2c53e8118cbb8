//! The texts of a scenario's card, in one language.

/// All of them in one language, where some may be missing from the file and are then in English.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CardTexts<'a> {
    /// What it is called.
    pub title: &'a str,
    /// What the trainee is told, paragraph by paragraph.
    pub told: &'a [String],
    /// What it teaches.
    pub aims: &'a [String],
    /// Hints, from a question to nearly the answer.
    pub hints: &'a [String],
    /// Cautions of its own.
    pub cautions: &'a [String],
}

/// What a file gives of them in a language other than English. Lists are as long as the English ones.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct TranslatedTexts {
    /// What it is called.
    pub title: Option<String>,
    /// What the trainee is told, paragraph by paragraph.
    pub told: Option<Vec<String>>,
    /// What it teaches.
    pub aims: Option<Vec<String>>,
    /// Hints, from a question to nearly the answer.
    pub hints: Option<Vec<String>>,
    /// Cautions of its own.
    pub cautions: Option<Vec<String>>,
}

impl TranslatedTexts {
    /// With the English ones where there are none.
    pub fn over<'a>(&'a self, english: CardTexts<'a>) -> CardTexts<'a> {
        CardTexts {
            title: self.title.as_deref().unwrap_or(english.title),
            told: self.told.as_deref().unwrap_or(english.told),
            aims: self.aims.as_deref().unwrap_or(english.aims),
            hints: self.hints.as_deref().unwrap_or(english.hints),
            cautions: self.cautions.as_deref().unwrap_or(english.cautions),
        }
    }
}
