//! What stands at the end.

use crate::document::attempt::{AttemptDocument, LossDocument};
use crate::exercise::{ScorePart, Weights};
use crate::quantity::number;
use crate::report::columns::in_columns;
use crate::words::{self, say};

use super::truth::truth_lines;

/// What stands at the end; `weights` are those of the exercise.
pub(crate) fn end(document: &AttemptDocument, weights: Weights) -> String {
    let used = &document.used;
    let (exercise, minutes, cost) = (
        document.scenario.clone(),
        number(used.minutes, 0),
        number(used.money, 0),
    );
    let mut lines = vec![if document.finished {
        say!(
            "card-signed-off",
            exercise = exercise,
            minutes = minutes,
            cost = cost,
            teardowns = used.teardowns
        )
    } else {
        say!(
            "card-not-signed-off",
            exercise = exercise,
            minutes = minutes,
            cost = cost,
            teardowns = used.teardowns
        )
    }];
    if document.finished {
        let score = &document.score;
        lines.push(say!(
            "card-score",
            total = number(score.total, 1),
            outcome = number(score.outcome, 1),
            outcome_most = number(weights.outcome, 0),
            process = number(score.process, 1),
            process_most = number(weights.process, 0),
            understanding = number(score.understanding, 1),
            understanding_most = number(weights.understanding, 0),
            economy = number(score.economy, 1),
            economy_most = number(weights.economy, 0)
        ));
        lines.push(say!(
            "card-par",
            minutes = number(document.par.minutes, 0),
            cost = number(document.par.money, 0),
            teardowns = document.par.teardowns
        ));
        // What is lost in rounding is not worth a line; a cap is, even where it takes nothing more.
        let told = |loss: &&LossDocument| loss.points >= 0.05 || loss.part == ScorePart::Cap.name();
        lines.extend(document.losses.iter().filter(told).map(loss_line));
    }
    if let Some(truth) = &document.truth {
        lines.push(say!("card-truth"));
        lines.extend(in_columns(&truth_lines(truth)));
    }
    lines.push(say!("card-state", hash = document.state_hash.clone()));
    lines.join("\n")
}

fn loss_line(loss: &LossDocument) -> String {
    let points = format!("  {:>5}", number(-loss.points, 1));
    let parts = [
        ScorePart::Outcome,
        ScorePart::Process,
        ScorePart::Understanding,
        ScorePart::Economy,
        ScorePart::Cap,
    ];
    let part = parts
        .into_iter()
        .find(|part| part.name() == loss.part)
        .map_or_else(|| loss.part.clone(), words::score::part);
    match loss.operation {
        None => say!("card-loss", points = points, part = part, why = loss.why.clone()),
        Some(operation) => say!(
            "card-loss-at",
            points = points,
            part = part,
            operation = operation,
            why = loss.why.clone()
        ),
    }
}
