//! What the bench answers.

use crate::bench::Answer;
use crate::quantity::number;
use crate::words::{self, say};

/// An answer; `hints` are those of the card.
pub(crate) fn answer(answer: &Answer, hints: &[String]) -> String {
    let done = answer.operation;
    if let Some(reason) = &answer.refused {
        return say!("card-not-done", number = done, why = words::answer::refusal(reason));
    }
    let (minutes, cost) = (number(answer.minutes, 1), number(answer.money, 1));
    let mut lines = vec![match (answer.minutes > 0.0, answer.money > 0.0) {
        (false, false) => say!("card-done", number = done),
        (true, false) => say!("card-done-minutes", number = done, minutes = minutes),
        (false, true) => say!("card-done-cost", number = done, cost = cost),
        (true, true) => say!("card-done-minutes-cost", number = done, minutes = minutes, cost = cost),
    }];
    let mut more: Vec<String> = Vec::new();
    for caution in &answer.cautions {
        more.push(say!("card-caution", what = words::answer::caution(*caution)));
    }
    for reading in &answer.readings {
        let what = words::answer::reading_part(reading.quantity);
        more.push(match reading.value {
            None => say!("card-record-nothing", record = reading.record, what = what),
            Some(value) => {
                let value = format!("{} {}", number(value, 3), reading.unit.symbol());
                say!(
                    "card-record",
                    record = reading.record,
                    what = what,
                    value = value.trim_end()
                )
            }
        });
    }
    more.extend(
        answer
            .noticed
            .iter()
            .map(|noticed| words::answer::notice(noticed, hints)),
    );
    if !answer.spoiled.is_empty() {
        let parts: Vec<String> = answer.spoiled.iter().map(|p| words::bench::part(*p)).collect();
        more.push(say!("card-spoiled", parts = parts.join(", ")));
    }
    if !answer.stale.is_empty() {
        let records: Vec<String> = answer.stale.iter().map(u32::to_string).collect();
        more.push(say!("card-stale", records = records.join(", ")));
    }
    lines.extend(more.into_iter().map(|line| format!("   {line}")));
    lines.join("\n")
}
