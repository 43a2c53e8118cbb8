//! The house keeps its order: floors, dependencies, embedded files.

#![expect(clippy::disallowed_methods, reason = "these tests read the sources themselves")]

mod circles;
mod citations;
mod dependencies;
mod embedded;
mod floors;
mod licences;
mod words;
