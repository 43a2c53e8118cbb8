//! How a person wants the window: what is kept between runs beside the keys.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::{TextSize, Theme};
use crate::quantity::Units;

/// What the text calls itself.
const FORMAT: &str = "lashwright-choices/1";
/// Most sizes of panels that are kept.
const MOST_PANELS: usize = 128;
/// Sizes of panels that a screen can have, points.
const PANEL_POINTS: [f32; 2] = [20.0, 8000.0];

/// How a person wants the window.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Choices {
    /// Light or dark.
    pub theme: Theme,
    /// Size of text.
    pub text_size: TextSize,
    /// Millimeters or inches.
    pub units: Units,
    /// Tag of the language, as `en-US`; none for that of the environment.
    pub language: Option<String>,
    /// Whether what instruments show is written beside them.
    pub read_out: bool,
    /// Widths and heights that panels were dragged to, by the panel's name, points.
    pub panels: BTreeMap<String, f32>,
}

/// Why a text holds no choices.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ChoicesError {
    /// It is not JSON of this kind.
    Json {
        /// The line, from 1.
        line: usize,
    },
    /// It is of another version, or of another kind.
    Format(String),
    /// A word that is none of those that can stand there.
    Word {
        /// The key.
        key: &'static str,
        /// What stands there.
        word: String,
    },
    /// More panels than there are, or a size that no screen has.
    Panels,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Document {
    format: String,
    theme: String,
    text_percent: u16,
    units: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    language: Option<String>,
    #[serde(default)]
    read_out: bool,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    panels: BTreeMap<String, f32>,
}

/// Themes and units with their words in the file.
const THEMES: [(&str, Theme); 2] = [("paper", Theme::Paper), ("slate", Theme::Slate)];
const UNITS: [(&str, Units); 2] = [("mm", Units::Metric), ("inch", Units::Inch)];

fn word_of<T: PartialEq + Copy>(words: &[(&'static str, T)], value: T) -> String {
    let found = words.iter().find(|(_, known)| *known == value);
    found.map_or("", |(word, _)| word).to_owned()
}

fn value_of<T: Copy>(words: &[(&'static str, T)], key: &'static str, word: &str) -> Result<T, ChoicesError> {
    let found = words.iter().find(|(known, _)| *known == word);
    found.map(|(_, value)| *value).ok_or_else(|| ChoicesError::Word {
        key,
        word: word.chars().take(40).collect(),
    })
}

impl Choices {
    /// Most bytes of a text that is read.
    pub const MOST_BYTES: usize = 16 * 1024;

    /// As JSON.
    pub fn to_json(&self) -> String {
        let document = Document {
            format: FORMAT.to_owned(),
            theme: word_of(&THEMES, self.theme),
            text_percent: self.text_size.percent(),
            units: word_of(&UNITS, self.units),
            language: self.language.clone(),
            read_out: self.read_out,
            panels: self.panels.clone(),
        };
        // Strings, numbers and a map of names: there is nothing that JSON could not hold.
        let mut text = serde_json::to_string_pretty(&document).unwrap_or_default();
        text.push('\n');
        text
    }

    /// Out of JSON.
    ///
    /// # Errors
    /// What is no list of choices of this version, or a choice that cannot be made.
    pub fn from_json(bytes: &[u8]) -> Result<Self, ChoicesError> {
        let document: Document =
            serde_json::from_slice(bytes).map_err(|error| ChoicesError::Json { line: error.line() })?;
        if document.format != FORMAT {
            return Err(ChoicesError::Format(document.format.chars().take(40).collect()));
        }
        let fits = |points: &f32| (PANEL_POINTS[0]..=PANEL_POINTS[1]).contains(points);
        if document.panels.len() > MOST_PANELS || !document.panels.values().all(fits) {
            return Err(ChoicesError::Panels);
        }
        Ok(Self {
            theme: value_of(&THEMES, "theme", &document.theme)?,
            text_size: TextSize::nearest(document.text_percent),
            units: value_of(&UNITS, "units", &document.units)?,
            language: document.language,
            read_out: document.read_out,
            panels: document.panels,
        })
    }

    /// Remembers a panel's size.
    pub fn keep_panel(&mut self, name: &str, points: f32) {
        let known = self.panels.contains_key(name) || self.panels.len() < MOST_PANELS;
        if known && (PANEL_POINTS[0]..=PANEL_POINTS[1]).contains(&points) {
            self.panels.insert(name.to_owned(), points.round());
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_kept_comes_back() {
        let mut choices = Choices {
            theme: Theme::Slate,
            text_size: TextSize::nearest(150),
            units: Units::Inch,
            language: Some("en-US".to_owned()),
            read_out: true,
            ..Choices::default()
        };
        choices.keep_panel("card", 301.4);
        for nothing in [f32::NAN, 0.0, f32::INFINITY, -5.0] {
            choices.keep_panel("none", nothing);
        }
        assert_eq!(choices.panels.len(), 1);
        for each in [choices, Choices::default()] {
            assert_eq!(Choices::from_json(each.to_json().as_bytes()), Ok(each));
        }
    }

    #[test]
    fn what_is_no_list_of_choices_is_told() {
        let good = Choices::default().to_json();
        let read = |from: &str, to: &str| Choices::from_json(good.replace(from, to).as_bytes());
        assert_eq!(read("{", "["), Err(ChoicesError::Json { line: 2 }));
        assert!(matches!(read("choices/1", "choices/9"), Err(ChoicesError::Format(_))));
        assert!(matches!(
            read("paper", "pink"),
            Err(ChoicesError::Word { key: "theme", .. })
        ));
        assert!(matches!(
            read("mm", "ell"),
            Err(ChoicesError::Word { key: "units", .. })
        ));
        let panels = |size: &str| {
            read(
                "\"read_out\"",
                &format!("\"panels\": {{\"card\": {size}}}, \"read_out\""),
            )
        };
        assert!(panels("300").is_ok());
        for size in ["1", "1e9", "-3"] {
            assert_eq!(panels(size), Err(ChoicesError::Panels), "{size}");
        }
        for bytes in [&b""[..], b"{}", b"null", &[0xff, 0xfe]] {
            assert!(Choices::from_json(bytes).is_err());
        }
    }
}
