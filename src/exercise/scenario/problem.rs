//! What only a scenario file can have wrong.

use super::card::Window;
use crate::axle::{DepthShim, Layout, Member};
use crate::exercise::counted::Counted;

/// What only a scenario file can have wrong.
#[derive(Debug, Clone, PartialEq)]
pub enum ScenarioProblem {
    /// The layout has no such shim.
    NoSuchShim {
        /// Layout.
        layout: Layout,
        /// Shim.
        depth_shim: DepthShim,
    },
    /// Two numbers that do not go from the smaller to the larger.
    NotAscending {
        /// Key.
        key: &'static str,
    },
    /// A window beyond which there are no marks, within that of full marks.
    ZeroInsideFull {
        /// Key.
        key: &'static str,
        /// Window of full marks.
        full: Window,
    },
    /// The layout's dimension chain has no such member.
    NoSuchMember {
        /// Member.
        member: Member,
    },
    /// Two faults have one name.
    FaultTwice {
        /// Name.
        name: String,
    },
    /// A name that ends in ` there`, which random streams of the program end in.
    FaultNamedThere {
        /// Name.
        name: String,
    },
    /// Something stands twice in `counts`.
    CountsTwice {
        /// What.
        counted: Counted,
    },
    /// Something in `counts` that cannot count.
    CountsUnknown {
        /// What was given.
        name: String,
    },
    /// Full marks end where no marks begin, or beyond.
    FullNotBelowZero,
    /// A table of texts whose name is no language.
    NoLanguage {
        /// Its name.
        name: String,
    },
    /// A table of texts whose language is written otherwise.
    LanguageWritten {
        /// Its name.
        name: String,
        /// As it is to be written.
        properly: String,
    },
    /// A table of texts in the language of the file itself.
    TextsOfFirstLanguage,
    /// Texts in another language where there are none in English.
    NoEnglishTexts {
        /// Key.
        key: &'static str,
    },
    /// Weights that do not add up to 100.
    Weights {
        /// What they add up to.
        sum: f64,
    },
}
