//! Everything that was done.

use crate::exercise::Attempt;
use crate::exercise::debrief::{Debrief, Line};
use crate::quantity::number;
use crate::report::html::{Head, Page, escaped, row};
use crate::words::answer;
use crate::words::card;
use crate::words::debrief;
use crate::words::debrief::amount::clock;
use crate::words::operation as words;
use crate::words::say;

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    let hints = card::texts(attempt.exercise().scenario()).hints;
    page.element("h2", &say!("pages-done-heading"));
    page.paragraph(&say!("pages-done-about"));
    table(page, &debrief.lines, hints, true);
}

/// Lines as a table; `linked` where others refer to them by their operation.
pub(super) fn table(page: &mut Page, mut lines: &[Line], hints: &[String], linked: bool) {
    let mut rows = Vec::new();
    while let Some(first) = lines.first() {
        let alike = |l: &&Line| first.kind.is_some() && l.kind == first.kind && l.answer.refused.is_none();
        let count = lines.iter().take_while(alike).count().max(1);
        let (group, rest) = lines.split_at(count);
        rows.push(line_row(group, hints, linked));
        lines = rest;
    }
    page.table(
        "long",
        &[
            Head::Numbers(say!("pages-column-number")),
            Head::Numbers(say!("pages-column-at")),
            Head::Numbers(say!("pages-column-minutes")),
            Head::Numbers(say!("pages-column-cost")),
            Head::Words(say!("pages-column-done")),
        ],
        &rows,
    );
}

fn line_row(group: &[Line], hints: &[String], linked: bool) -> String {
    let (Some(first), Some(last)) = (group.first(), group.last()) else {
        return String::new();
    };
    let mut numbers = String::new();
    for line in group.iter().filter(|_| linked) {
        numbers.extend([format!("<a id=\"op{}\"></a>", line.answer.operation)]);
    }
    numbers.push_str(&first.answer.operation.to_string());
    if last.answer.operation != first.answer.operation {
        numbers.extend([format!("\u{2013}{}", last.answer.operation)]);
    }
    let mut said = String::new();
    if first.tear_down {
        let words = escaped(&say!("pages-teardown"));
        said.extend([format!("<span class=\"tag\">{words}</span> ")]);
    }
    for caution in group.iter().flat_map(|l| &l.answer.cautions) {
        said.extend([format!(
            "<span class=\"tag off\">{}</span> <span class=\"off\">{}</span> ",
            escaped(&say!("pages-unsafe")),
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
        let words = say!("pages-not-done", why = answer::refusal(reason));
        said.extend([format!(" <i>{}</i>", escaped(&words))]);
    }
    for line in group {
        for noticed in &line.answer.noticed {
            said.extend([format!(" {}", escaped(&answer::notice(noticed, hints)))]);
        }
        if !line.answer.spoiled.is_empty() {
            said.extend([format!(" <b>{}</b>", escaped(&words::spoiled(&line.answer.spoiled)))]);
        }
        if let Some(by_mm) = line.truth_moved_mm {
            said.extend([format!(
                " <span class=\"muted\">{}</span>",
                escaped(&words::moved(by_mm))
            )]);
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
