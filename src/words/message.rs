//! Messages: every text that people read stands in a message file of its language, `assets/words/LANGUAGE/*.ftl`, in the
//! Fluent format (projectfluent.org), and is asked for by its identifier and its variables: `say!("bench-no-nut")`,
//! `say!("bench-pieces", count = 3)`.
//!
//! A message that a language lacks is shown in English, the language that everything is written in first. A house test
//! compares the files with what the program asks for: missing and unused messages, other variables than a message names, and
//! texts that stand in the program itself.
//!
//! There is one language for the whole program, chosen once by whoever runs it ([`speak`]), and one for a single thread while
//! something is made in another one ([`speaking`]). The core below holds no text and knows of no language.

use std::borrow::Cow;
use std::cell::Cell;
use std::sync::LazyLock;
use std::sync::atomic::{AtomicUsize, Ordering};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use unic_langid::LanguageIdentifier;

include!(concat!(env!("OUT_DIR"), "/messages.rs"));

/// The language that everything is written in first.
const FIRST: &str = crate::text::FIRST_LANGUAGE;

/// Variable of the environment that names the language of this program alone.
pub const LANGUAGE_VARIABLE: &str = "LASHWRIGHT_LANG";

/// Variables of the environment that name a language, the first that is set and not empty counts: that of this program, then
/// those of POSIX for messages.
pub const LANGUAGE_VARIABLES: [&str; 4] = [LANGUAGE_VARIABLE, "LC_ALL", "LC_MESSAGES", "LANG"];

/// What [`Language::pseudo`] is called.
const PSEUDO: &str = crate::text::PSEUDO_LANGUAGE;

/// How much longer a text of [`Language::pseudo`] is, as a share: what other languages need more than English.
const LONGER: f64 = 0.4;

/// Variables of a message.
pub type Arguments<'a> = FluentArgs<'a>;

/// A language that there are messages in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Language(usize);

/// Messages of one language.
struct Messages {
    tag: &'static str,
    bundle: FluentBundle<FluentResource>,
}

/// English first, the other languages by name, last the one that only tests the room for words.
static MESSAGES: LazyLock<Vec<Messages>> = LazyLock::new(|| {
    let mut all: Vec<Messages> = Vec::new();
    for (tag, files) in LANGUAGES {
        let messages = Messages::new(tag, tag, files, None);
        if *tag == FIRST {
            all.insert(0, messages);
        } else {
            all.push(messages);
        }
    }
    let first = LANGUAGES.iter().find(|(tag, _)| *tag == FIRST);
    all.extend(first.map(|(tag, files)| Messages::new(PSEUDO, tag, files, Some(stretched))));
    all
});

/// The language of the program: its place among [`MESSAGES`].
static SPOKEN: AtomicUsize = AtomicUsize::new(0);

thread_local! {
    /// The language of this thread alone.
    static SPOKEN_HERE: Cell<Option<Language>> = const { Cell::new(None) };
}

impl Messages {
    fn new(
        tag: &'static str,
        language: &str,
        files: &[&'static str],
        transform: Option<fn(&str) -> Cow<'_, str>>,
    ) -> Self {
        // A folder whose name is no language is met by a test; its plurals are then those of no language.
        let language: LanguageIdentifier = language.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        // The marks that Fluent puts around variables for mixed directions of writing would show as boxes in some fonts.
        bundle.set_use_isolating(false);
        bundle.set_transform(transform);
        for text in files {
            // What can be read of a damaged file is taken; a test reads all of them and lets no damage pass.
            let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(readable, _)| readable);
            bundle.add_resource_overriding(resource);
        }
        Self { tag, bundle }
    }

    fn text(&self, id: &str, arguments: Option<&Arguments<'_>>) -> Option<String> {
        let pattern = self.bundle.get_message(id)?.value()?;
        // A variable that is missing is shown by its name; a test compares variables.
        let mut missing = Vec::new();
        Some(
            self.bundle
                .format_pattern(pattern, arguments, &mut missing)
                .into_owned(),
        )
    }
}

impl Language {
    /// English with accents and longer words, by which it is seen whether there is room for other languages.
    pub fn pseudo() -> Self {
        Self(MESSAGES.len().saturating_sub(1))
    }

    /// The languages that people choose from, English first.
    pub fn all() -> impl Iterator<Item = Self> {
        (0..MESSAGES.len().saturating_sub(1)).map(Self)
    }

    /// Its tag, as `en-US`.
    pub fn tag(self) -> &'static str {
        MESSAGES.get(self.0).map_or(FIRST, |messages| messages.tag)
    }

    /// The language of a tag or of a locale's name as an environment gives it (`en_US.UTF-8`, `de`): the same language and
    /// region, or else the same language, or none.
    pub fn of(name: &str) -> Option<Self> {
        if name == PSEUDO {
            return Some(Self::pseudo());
        }
        let name = name.split(['.', '@']).next()?.replace('_', "-");
        let wanted: LanguageIdentifier = name.parse().ok()?;
        let parsed = |language: &Self| language.tag().parse::<LanguageIdentifier>().ok();
        Self::all()
            .find(|language| parsed(language).is_some_and(|it| it == wanted))
            .or_else(|| Self::all().find(|language| parsed(language).is_some_and(|it| it.language == wanted.language)))
    }

    /// The language that is spoken now.
    pub fn spoken() -> Self {
        SPOKEN_HERE
            .get()
            .unwrap_or_else(|| Self(SPOKEN.load(Ordering::Relaxed)))
    }

    /// Its own name in itself.
    pub fn own_name(self) -> String {
        speaking(self, || crate::words::say!("language-name"))
    }
}

/// From now on everything is said in this language.
pub fn speak(language: Language) {
    SPOKEN.store(language.0, Ordering::Relaxed);
}

/// What is said meanwhile, on this thread, is said in this language.
pub fn speaking<R>(language: Language, say: impl FnOnce() -> R) -> R {
    let before = SPOKEN_HERE.replace(Some(language));
    let said = say();
    SPOKEN_HERE.set(before);
    said
}

/// The text of a message in the language that is spoken, or in English where that has none. Use [`say!`](crate::words::say).
pub fn text(id: &str, arguments: Option<&Arguments<'_>>) -> String {
    let spoken = MESSAGES.get(Language::spoken().0).and_then(|m| m.text(id, arguments));
    spoken
        .or_else(|| MESSAGES.first()?.text(id, arguments))
        // A test finds identifiers without a message.
        .unwrap_or_else(|| id.to_owned())
}

/// The text of a message by its identifier, with its variables: `say!("bench-pieces", count = 3, place = name)`.
/// Numbers choose plurals; what is shown with decimals or a unit comes in as finished text.
#[macro_export]
#[doc(hidden)]
macro_rules! __say {
    ($id:literal $(,)?) => {
        $crate::words::message::text($id, None)
    };
    ($id:literal, $($name:ident = $value:expr),+ $(,)?) => {{
        let mut arguments = $crate::words::message::Arguments::new();
        $(arguments.set(stringify!($name), $value);)+
        $crate::words::message::text($id, Some(&arguments))
    }};
}

/// A text with accents on its letters, longer by [`LONGER`]: what is due is added to the end of each word.
fn stretched(text: &str) -> Cow<'_, str> {
    let mut all = String::with_capacity(2 * text.len());
    let mut due = 0.0;
    let mut last: Option<char> = None;
    for letter in text.chars() {
        due += LONGER;
        if letter.is_alphabetic() {
            let accented = accented(letter);
            all.push(accented);
            last = Some(accented);
            continue;
        }
        lengthen(&mut all, last.take(), &mut due);
        all.push(letter);
    }
    lengthen(&mut all, last, &mut due);
    Cow::Owned(all)
}

/// Repeats the last letter of a word as often as is due.
fn lengthen(text: &mut String, last: Option<char>, due: &mut f64) {
    if let Some(letter) = last {
        while *due >= 1.0 {
            text.push(letter);
            *due -= 1.0;
        }
    }
}

/// A letter that can be read as this one and is none of English; letters that have none stay.
const fn accented(letter: char) -> char {
    match letter {
        'a' => 'á',
        'c' => 'ç',
        'e' => 'é',
        'i' => 'í',
        'n' => 'ñ',
        'o' => 'ó',
        's' => 'š',
        'u' => 'ú',
        'y' => 'ý',
        'z' => 'ž',
        'A' => 'Á',
        'C' => 'Ç',
        'E' => 'É',
        'I' => 'Í',
        'N' => 'Ñ',
        'O' => 'Ó',
        'S' => 'Š',
        'U' => 'Ú',
        'Y' => 'Ý',
        'Z' => 'Ž',
        other => other,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_locale_finds_its_language() {
        let english = Language::all().next();
        for name in ["en-US", "en_US.UTF-8", "en", "en_AU@shop", "en-GB"] {
            assert_eq!(Language::of(name), english, "{name}");
        }
        for name in ["", "C", "xx_YY", "tlh"] {
            assert_eq!(Language::of(name), None, "{name}");
        }
        assert_eq!(Language::of("pseudo"), Some(Language::pseudo()));
    }

    #[test]
    fn every_language_is_a_language() {
        for language in Language::all() {
            assert!(
                language.tag().parse::<LanguageIdentifier>().is_ok(),
                "{}",
                language.tag()
            );
            assert!(!language.own_name().is_empty());
        }
    }

    #[test]
    fn what_tests_the_room_is_longer_and_english_shows_where_a_message_is_missing() {
        let english = text("language-name", None);
        let long = speaking(Language::pseudo(), || text("language-name", None));
        let [short, long] = [english.chars().count(), long.chars().count()];
        println!("{short} and {long} letters");
        assert!(long * 100 >= short * 135 && long * 100 <= short * 145);
        assert_eq!(text("language-name", None), english, "only meanwhile");
        assert_eq!(stretched("ten of them"), "téññ óff thémmm", "11 and 4 letters");
    }
}
