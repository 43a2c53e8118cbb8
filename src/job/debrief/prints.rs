//! The true print of every build, in a row.

use super::cell::operation;
use super::html::{Page, escaped};
use super::picture::{prints as drawn, teeth};
use crate::contact::{Contact, Pair, Placement};
use crate::drawing::Print;
use crate::exercise::Attempt;
use crate::exercise::debrief::{Build, BuildPrint, Debrief};
use crate::quantity::signed;
use crate::words::debrief::amount::{both, counted};
use crate::words::debrief::{build as words, print as where_};

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
    page.element("h2", "Prints in a row");
    page.element(
        "p class=\"lead\"",
        "The true print of every build under a usual film of paste, drive (D) over coast (C), seen on the ring gear: toe \
         left, heel right, top up. The broken outline is the approval print of the set, the cross the middle of the print. \
         Distances are from the approval print, in parts of half a tooth. Height first, on both flanks: both high asks for deeper, both low for \
         shallower. Length is the second witness.",
    );
    let wanted = approval(debrief);
    page.raw("<div class=\"row\">");
    let picture = page.picture(&teeth(&wanted, None, "Approval print", "Of both flanks.".to_owned()));
    page.raw(&format!(
        "<figure>{picture}<figcaption><b>Approval print</b><div>both gears at their designed places</div></figcaption></figure>"
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
        page.paragraph(&format!(
            "{} never painted and rolled.",
            if unseen == 1 {
                "1 build was".to_owned()
            } else {
                format!("{unseen} builds were")
            }
        ));
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
        format!("Drive: {drive}. Coast: {coast}."),
    ));
    page.raw(&format!("<figure>{picture}<figcaption><b>{}</b>", escaped(&name)));
    page.raw(&match (print.rolled, print.moved_since) {
        (None, _) => " <span class=\"tag\">never looked at</span>".to_owned(),
        (Some(o), false) => format!(" <span class=\"muted\">rolled at {}</span>", operation(o)),
        (Some(o), true) => format!(
            " <span class=\"muted\">rolled at {}</span> <span class=\"tag\">moved afterwards</span>",
            operation(o)
        ),
    });
    page.element("div", &format!("D: {drive}"));
    page.element("div", &format!("C: {coast}"));
    if let (Some([d, c]), [Some(drive), Some(coast)]) = (print.seen, middles(&debrief.approval)) {
        page.element(
            "div class=\"belief\"",
            &format!(
                "You saw ({}): D {}; C {}",
                counted(print.looks, "look", "looks"),
                where_::off(d, drive),
                where_::off(c, coast)
            ),
        );
    }
    let at = print.placement;
    let contact = print
        .truth
        .lash
        .map_or_else(String::new, |l| format!(", lash {}", both(l.mean_mm)));
    page.element(
        "div",
        &format!(
            "P {}\u{a0}mm, G {}\u{a0}mm{contact}",
            signed(at.pinion_axial_mm, 3),
            signed(at.wheel_axial_mm, 3)
        ),
    );
    page.raw("</figcaption></figure>\n");
}
