//! Truth beside belief.

use super::cell::value;
use super::{believed, judged, made, plates};
use crate::exercise::Attempt;
use crate::exercise::debrief::{Debrief, Measure, Section};
use crate::quantity::{N_PER_POUND_FORCE, number, signed};
use crate::report::columns::with_unit;
use crate::report::html::{Head, Page, escaped, row};
use crate::words::debrief::{print, state as words};
use crate::words::say;

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    page.element("h2", &say!("pages-truth-heading"));
    page.paragraph(&say!("pages-truth-about"));
    judged::section(page, debrief);
    believed::section(page, debrief);
    if debrief.has(Section::State) {
        state(page, debrief);
    }
    made::packs(page, debrief);
    if debrief.has(Section::Marks) {
        made::marks(page, debrief);
    }
    if !debrief.plates.is_empty() {
        plates::section(page, attempt, debrief);
    }
    if debrief.has(Section::Made) {
        made::sizes(page, debrief);
    }
}

/// What no instrument of the bench shows by itself.
fn state(page: &mut Page, debrief: &Debrief) {
    let outcome = &debrief.outcome;
    let mut rows = Vec::new();
    let mut tell = |[name, said]: [String; 2], value: Option<String>| {
        if let Some(value) = value {
            rows.push(row(
                "",
                &[("", escaped(&name)), ("n truth", value), ("", escaped(&said))],
            ));
        }
    };
    let mm = |v: f64| value(v, Measure::Deviation);
    let force = |n: f64| {
        let pounds = with_unit(&number(n / N_PER_POUND_FORCE, 0), "lbf");
        let kilonewtons = with_unit(&number(1.0e-3 * n, 2), "kN");
        format!("{kilonewtons}<br><span class=\"inch\">{pounds}</span>")
    };
    let placement = outcome.placement;
    tell(
        words::pinion_depth(),
        placement.map(|p| p.pinion_axial_mm).or(outcome.pinion_axial_mm).map(mm),
    );
    tell(words::wheel(), placement.map(|p| mm(p.wheel_axial_mm)));
    tell(words::offset(), placement.map(|p| mm(p.offset_mm)));
    tell(
        words::shaft_angle(),
        placement.map(|p| format!("{}\u{b0}", signed(p.shaft_angle_deg(), 3))),
    );
    tell(words::pinion_preload(), outcome.pinion_preload_n.map(force));
    tell(
        words::pinion_play(),
        outcome.pinion_play_mm.map(|v| value(v, Measure::Length)),
    );
    tell(words::side_preload(), outcome.side_preload_n.map(force));
    tell(words::clamp(), outcome.clamp_n.map(force));
    if rows.is_empty() {
        return;
    }
    page.element("h3", &say!("pages-state-heading"));
    let heads = [Head::Empty, Head::Numbers(say!("pages-column-true")), Head::Empty];
    page.table("", &heads, &rows);
    if let Some([drive, coast]) = &outcome.flanks {
        let approval = &debrief.approval;
        page.paragraph(&say!(
            "pages-state-patterns",
            drive = print::flank(drive, &approval.drive),
            coast = print::flank(coast, &approval.coast)
        ));
    }
}
