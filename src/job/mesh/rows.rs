//! Meshing a gear set at every placement of a file.

use std::path::Path;

use rayon::prelude::*;

use crate::contact::Route;
use crate::job::Failure;
use crate::report::mesh::PlacementNumbers;
use crate::store;

use super::placements;
use super::request::{Mesh, MeshRequest};

/// Rows computed at once before they are handed on, and rows that one thread takes at once.
const BLOCK: usize = 256;

const PART: usize = 8;

/// The gears and the placements of a file, ready to be meshed.
pub struct Rows {
    mesh: Mesh,
    placements: Vec<PlacementNumbers>,
}

impl std::fmt::Debug for Rows {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Rows")
            .field("gears", &self.mesh.source)
            .field("placements", &self.placements.len())
            .finish_non_exhaustive()
    }
}

/// Prepares to mesh the gears at every placement of a CSV file.
///
/// # Errors
/// As [`super::text`], and a placements file that cannot be read or has a bad row; then nothing is computed.
pub fn at_placements(request: &MeshRequest, file: &Path) -> Result<Rows, Failure> {
    let bytes = store::read_within(file, placements::LIMITS.bytes)?;
    let placements = placements::read(&file.display().to_string(), &bytes)?;
    let mesh = Mesh::prepare(request)?;
    if request.route == Route::Fast {
        // Before the threads start, which would wait for each other.
        mesh.meshing.pair.prepare_fast();
    }
    Ok(Rows { mesh, placements })
}

impl Rows {
    /// Hands on one JSON document a line, in the order of the file whatever the number of threads, some hundred rows at a
    /// time, until `take` answers false: a long file needs no more memory than a short one. The next rows are computed
    /// while the last ones are taken.
    ///
    /// # Errors
    /// Only if a document cannot be written as JSON, which is a fault of the program.
    pub fn json_lines(&self, mut take: impl FnMut(&str) -> bool) -> Result<(), Failure> {
        std::thread::scope(|scope| {
            let (sender, receiver) = std::sync::mpsc::sync_channel(1);
            scope.spawn(move || {
                for rows in self.placements.chunks(BLOCK) {
                    let parts: Result<Vec<String>, serde_json::Error> =
                        rows.par_chunks(PART).map(|part| self.lines(part)).collect();
                    // Nobody may be there any more to take them.
                    if sender.send(parts).is_err() {
                        return;
                    }
                }
            });
            for parts in receiver {
                let parts = parts.map_err(Failure::of_program)?;
                if !parts.iter().all(|part| take(part)) {
                    break;
                }
            }
            Ok(())
        })
    }

    fn lines(&self, rows: &[PlacementNumbers]) -> Result<String, serde_json::Error> {
        let mut text = String::new();
        for numbers in rows {
            text.push_str(&serde_json::to_string(&self.mesh.at(numbers))?);
            text.push('\n');
        }
        Ok(text)
    }
}
