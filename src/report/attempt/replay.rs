//! What came out when a journal was done again.

use crate::document::attempt::ReplayDocument;
use crate::quantity::number;
use crate::words::{self, say};

pub(crate) fn replay(found: &ReplayDocument) -> String {
    let (journal, exercise, seed) = (found.journal.clone(), found.scenario.clone(), found.seed.to_string());
    let mut lines = vec![if found.sealed {
        say!(
            "card-replayed-sealed",
            journal = journal,
            operations = found.operations,
            exercise = exercise,
            seed = seed
        )
    } else {
        say!(
            "card-replayed",
            journal = journal,
            operations = found.operations,
            exercise = exercise,
            seed = seed
        )
    }];
    lines.extend(found.notice.clone());
    lines.push(match (found.first_difference, found.recomputed) {
        (None, _) => say!("card-identical"),
        (Some(first), true) => say!("card-recomputed", first = first),
        (Some(first), false) => say!("card-changed", first = first),
    });
    let score = number(found.score.total, 1);
    match found.score_identical {
        Some(true) => lines.push(say!("card-score-identical", score = score)),
        Some(false) => lines.push(say!("card-score-other", score = score)),
        None => {}
    }
    lines.push(say!("card-state", hash = found.state_hash.clone()));
    lines.push(words::simulated());
    lines.join("\n")
}
