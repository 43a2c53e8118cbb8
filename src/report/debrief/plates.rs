//! Painted plates: what they needed beside what was said, with their prints.

use super::cell::{around, operation};
use super::picture::{prints, teeth};
use crate::contact::{self, Film, Placement, Route};
use crate::exercise::Attempt;
use crate::exercise::debrief::Debrief;
use crate::report::html::{Page, escaped};
use crate::words::debrief::sheet as words;
use crate::words::say;

/// Painted plates: what they needed beside what was said, with their prints.
pub(super) fn section(page: &mut Page, attempt: &Attempt, debrief: &Debrief) {
    page.element("h3", &say!("pages-plates-heading"));
    page.raw("<div class=\"row\">");
    let setting = attempt.bench().setting();
    for (plate, seen) in setting.plates.iter().zip(&debrief.plates) {
        let solve = |placement| contact::solve(&plate.pair, placement, Film::default(), Route::Exact);
        let shown = prints(&plate.pair, plate.placement, &solve(plate.placement));
        let wanted = prints(&plate.pair, Placement::NOMINAL, &solve(Placement::NOMINAL));
        let name = words::plate(seen);
        let picture = page.picture(&teeth(&shown, Some(&wanted), &name, String::new()));
        page.raw(&format!("<figure>{picture}<figcaption><b>{}</b>", escaped(&name)));
        page.element("div", &seen.gears);
        page.element("div class=\"truth\"", &words::plate_needs(seen));
        match seen.said {
            Some((at, chances)) => page.raw(&format!(
                "<div class=\"belief\">{}</div>",
                around(&operation(at), |link| say!(
                    "pages-plate-said",
                    link = link,
                    said = words::plate_said(chances)
                ))
            )),
            None => page.element("div class=\"belief\"", &say!("pages-plate-not-judged")),
        }
        page.raw("</figcaption></figure>\n");
    }
    page.raw("</div>\n");
}
