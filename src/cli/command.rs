//! A command that needs no screen.

use super::attempt::AttemptArguments;
use super::mesh::MeshArguments;
use super::preload::PreloadArguments;

/// A command that needs no screen.
#[derive(Debug, Clone, PartialEq)]
pub enum Command {
    /// Check files.
    Check {
        /// Names of embedded files, or paths.
        files: Vec<String>,
    },
    /// List the gear sets that ship with the program.
    Gears {
        /// As one JSON document.
        json: bool,
    },
    /// What a pinion support does with its nut tightened.
    Preload(PreloadArguments),
    /// Play an attempt.
    Attempt(AttemptArguments),
    /// Do a journal again.
    Replay {
        /// The journal.
        file: std::path::PathBuf,
        /// Where the debrief is to be written.
        debrief: Option<std::path::PathBuf>,
        /// As one JSON document.
        json: bool,
    },
    /// List all operations.
    Operations {
        /// As a JSON Schema.
        json: bool,
    },
    /// Mesh a gear set.
    Mesh(MeshArguments),
    /// Print the schema of a JSON document.
    Schema {
        /// Name of the document.
        name: String,
    },
}
