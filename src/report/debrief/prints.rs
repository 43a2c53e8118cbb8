//! The true print of every build, in a row.

use super::cell::{around, operation};
use super::picture::{prints as drawn, teeth};
use crate::contact::{Contact, Pair, Placement};
use crate::drawing::Print;
use crate::exercise::Attempt;
use crate::exercise::debrief::{Build, BuildPrint, Debrief};
use crate::report::html::{Page, escaped};
use crate::words::debrief::amount::both;
use crate::words::debrief::{build as words, print as where_};
use crate::words::say;

pub(super) fn approval(debrief: &Debrief) -> [Print; 2] {
    drawn(&debrief.designed, Placement::NOMINAL, &debrief.approval)
}

/// Middles of both prints.
pub(super) fn middles(contact: &Contact) -> [Option<[f64; 2]>; 2] {
    [&contact.drive, &contact.coast].map(|flank| flank.pattern.map(|p| p.centroid))
}

/// Whether the exercise has prints at all.
pub(super) fn has_prints(debrief: &Debrief) -> bool {
    debrief.builds.iter().any(|b| !b.prints.is_empty())
}

pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    if !has_prints(debrief) {
        return;
    }
    page.element("h2", &say!("pages-patterns-heading"));
    page.element("p class=\"lead\"", &say!("pages-patterns-about"));
    let wanted = approval(debrief);
    page.raw("<div class=\"row\">");
    let name = say!("pages-own-pattern");
    let picture = page.picture(&teeth(&wanted, None, &name, say!("pages-own-pattern-said")));
    page.raw(&format!(
        "<figure>{picture}<figcaption><b>{}</b><div>{}</div></figcaption></figure>",
        escaped(&name),
        escaped(&say!("pages-own-pattern-where"))
    ));
    let pair = attempt.bench().setting().pair.clone();
    for build in &debrief.builds {
        for print in &build.prints {
            figure(page, build, print, &pair, &wanted, debrief);
        }
    }
    page.raw("</div>\n");
    let unseen = debrief.builds.iter().filter(|b| b.prints.is_empty()).count();
    if unseen > 0 {
        page.paragraph(&say!("pages-patterns-unseen", count = unseen));
    }
}

fn figure(page: &mut Page, build: &Build, print: &BuildPrint, pair: &Pair, wanted: &[Print; 2], debrief: &Debrief) {
    let shown = drawn(pair, print.placement, &print.truth);
    let name = words::name(build);
    let words = [
        where_::flank(&print.truth.drive, &debrief.approval.drive),
        where_::flank(&print.truth.coast, &debrief.approval.coast),
    ];
    let [drive, coast] = &words;
    let picture = page.picture(&teeth(
        &shown,
        Some(wanted),
        &name,
        say!("pages-pattern-said", drive = drive.clone(), coast = coast.clone()),
    ));
    page.raw(&format!("<figure>{picture}<figcaption><b>{}</b>", escaped(&name)));
    let tag = |words: String| format!(" <span class=\"tag\">{}</span>", escaped(&words));
    match print.rolled {
        None => page.raw(&tag(say!("pages-never-looked"))),
        Some(at) => {
            let rolled = around(&operation(at), |link| say!("pages-rolled-at", link = link));
            page.raw(&format!(" <span class=\"muted\">{rolled}</span>"));
            if print.moved_since {
                page.raw(&tag(say!("pages-moved-afterward")));
            }
        }
    }
    page.element("div", &say!("pages-drive", pattern = drive.clone()));
    page.element("div", &say!("pages-coast", pattern = coast.clone()));
    if let (Some([d, c]), [Some(drive), Some(coast)]) = (print.seen, middles(&debrief.approval)) {
        page.element(
            "div class=\"belief\"",
            &say!(
                "pages-you-saw",
                looks = print.looks,
                drive = where_::off(d, drive),
                coast = where_::off(c, coast)
            ),
        );
    }
    let at = print.placement;
    let pinion = off(
        at.pinion_axial_mm,
        |length| say!("pages-toward-ring-gear", length = length),
        |length| say!("pages-from-ring-gear", length = length),
    );
    let ring_gear = off(
        at.wheel_axial_mm,
        |length| say!("pages-toward-pinion", length = length),
        |length| say!("pages-from-pinion", length = length),
    );
    let placed = match print.truth.lash {
        None => say!("pages-placement", pinion = pinion, ring_gear = ring_gear),
        Some(lash) => say!(
            "pages-placement-backlash",
            pinion = pinion,
            ring_gear = ring_gear,
            backlash = both(lash.mean_mm)
        ),
    };
    page.element("div", &placed);
    page.raw("</figcaption></figure>\n");
}

/// Which way a gear stands off its designed place: below 0, at 0 as far as it is shown, above.
fn off(mm: f64, below: fn(String) -> String, above: fn(String) -> String) -> String {
    let length = both(mm.abs());
    if length == both(0.0) {
        say!("pages-as-designed")
    } else if mm < 0.0 {
        below(length)
    } else {
        above(length)
    }
}
