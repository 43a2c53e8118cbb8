//! Checking files of any of our kinds.

use std::path::Path;

use crate::catalogue;
use crate::store;
use crate::text::{Document, Limits, Problems, decode};

use super::{Failure, gear_sets, supports};

/// Checks a file, or an embedded one by its name, and says in one line what it is; doubtful geometry adds
/// a line a warning.
///
/// # Errors
/// Everything that is wrong with it, gears that cannot exist included.
pub fn check(source: &str) -> Result<String, Failure> {
    if catalogue::support(source).is_some() {
        return supports::find(source).map(|found| support_line(&found));
    }
    let path = Path::new(source);
    if catalogue::gear_set(source).is_none() && path.is_file() {
        let bytes = store::read_within(path, Limits::HAND_WRITTEN.bytes)?;
        if says_support(&bytes) {
            return supports::read(source, &bytes).map(|found| support_line(&found));
        }
    }
    let found = gear_sets::find(source)?;
    let set = found.prepare()?;
    let design = &found.design;
    let verdict = match set.warnings().len() {
        0 => "no problem found".to_owned(),
        1 => "usable, with 1 warning".to_owned(),
        more => format!("usable, with {more} warnings"),
    };
    let mut lines = vec![format!(
        "{}: gear set \"{}\", {} to {} teeth: {verdict}",
        found.source, design.name, design.wheel_teeth, design.pinion_teeth
    )];
    lines.extend(set.warnings().iter().map(|warning| format!("  Warning: {warning}.")));
    Ok(lines.join("\n"))
}

fn support_line(found: &supports::FoundSupport) -> String {
    let kind = if found.support.has_sleeve() {
        "collapsible"
    } else {
        "solid"
    };
    format!(
        "{}: pinion support \"{}\", {kind} spacer: no problem found",
        found.source, found.support.name
    )
}

/// Whether a text calls itself a pinion support, of whatever version. A text that is no TOML says nothing.
fn says_support(bytes: &[u8]) -> bool {
    let Ok(text) = decode(bytes, Limits::HAND_WRITTEN) else {
        return false;
    };
    let Ok(document) = Document::parse(text) else {
        return false;
    };
    let format = document.root().text("format", 1..=60, &mut Problems::new());
    format.is_some_and(|format| format.starts_with("lashwright-support/"))
}
