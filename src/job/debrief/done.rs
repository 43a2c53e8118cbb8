//! Everything that was done.

use super::html::{Page, escaped, row};
use crate::exercise::Attempt;
use crate::exercise::debrief::{Debrief, Line};
use crate::quantity::number;
use crate::words::answer;
use crate::words::debrief;
use crate::words::debrief::amount::clock;
use crate::words::operation as words;

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    let hints = &attempt.exercise().scenario().hints;
    page.element("h2", "Everything that was done");
    page.paragraph(
        "Equal measurements behind each other stand in one row. \u{201c}Moved\u{201d} is the true change of where the gears \
         stand since they last stood in mesh; you could not see it.",
    );
    let mut rows = Vec::new();
    let mut lines = debrief.lines.as_slice();
    while let Some(first) = lines.first() {
        let alike = |l: &&Line| first.kind.is_some() && l.kind == first.kind && l.answer.refused.is_none();
        let count = lines.iter().take_while(alike).count().max(1);
        let (group, rest) = lines.split_at(count);
        rows.push(line_row(group, hints));
        lines = rest;
    }
    page.table(
        "long",
        &["*No.", "*At", "*min", "*Money", "Done, and what it showed"],
        &rows,
    );
}

fn line_row(group: &[Line], hints: &[String]) -> String {
    let (Some(first), Some(last)) = (group.first(), group.last()) else {
        return String::new();
    };
    let mut numbers = String::new();
    for line in group {
        numbers.extend([format!("<a id=\"op{}\"></a>", line.answer.operation)]);
    }
    numbers.push_str(&first.answer.operation.to_string());
    if last.answer.operation != first.answer.operation {
        numbers.extend([format!("\u{2013}{}", last.answer.operation)]);
    }
    let mut said = String::new();
    if first.tear_down {
        said.push_str("<span class=\"tag\">TEAR-DOWN</span> ");
    }
    for caution in group.iter().flat_map(|l| &l.answer.cautions) {
        said.extend([format!(
            "<span class=\"tag off\">UNSAFE</span> <span class=\"off\">{}</span> ",
            escaped(&answer::caution(*caution))
        )]);
    }
    said.push_str(&escaped(&words::did(first)));
    let mut shown: Vec<String> = Vec::new();
    let mut values = group.iter().filter_map(debrief::shown).peekable();
    while let Some(value) = values.next() {
        let mut times = 1;
        while values.next_if_eq(&value).is_some() {
            times += 1;
        }
        let again = if times > 1 {
            format!(" \u{d7}\u{a0}{times}")
        } else {
            String::new()
        };
        shown.push(escaped(&value) + &again);
    }
    if !shown.is_empty() {
        said.extend([format!(": <b>{}</b>", shown.join("; "))]);
    }
    said.push('.');
    if let Some(reason) = &first.answer.refused {
        said.extend([format!(" <i>Not done: {}</i>", escaped(&answer::refusal(reason)))]);
    }
    for line in group {
        for noticed in &line.answer.noticed {
            said.extend([format!(" {}", escaped(&answer::notice(noticed, hints)))]);
        }
        if !line.answer.spoiled.is_empty() {
            said.extend([format!(" <b>{}</b>", escaped(&words::spoiled(&line.answer.spoiled)))]);
        }
        if let Some(by_mm) = line.truth_moved_mm {
            said.extend([format!(" <span class=\"muted\">{}</span>", words::moved(by_mm))]);
        }
    }
    let sum = |of: fn(&Line) -> f64| group.iter().map(of).sum::<f64>();
    let money = sum(|l| l.answer.money);
    row(
        if first.tear_down { "class=\"tear\"" } else { "" },
        &[
            ("n", numbers),
            ("n", clock(first.at_minutes)),
            ("n", number(sum(|l| l.answer.minutes), 1)),
            ("n", if money > 0.0 { number(money, 0) } else { String::new() }),
            ("", said),
        ],
    )
}
