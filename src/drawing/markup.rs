//! Text in files of marks: SVG and HTML.

/// Text that cannot end the element or attribute it stands in, nor turn the way of writing beyond itself. Characters that XML
/// and HTML do not allow are left out.
pub fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            '\n' | '\t' => out.push(' '),
            c if c.is_control() || is_turning(c) || matches!(c, '\u{fffe}' | '\u{ffff}') => {}
            c => out.push(c),
        }
    }
    out
}

/// Marks that turn the way of writing round and would reach beyond the text that holds them.
fn is_turning(c: char) -> bool {
    matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_people_write_stays_text() {
        assert_eq!(
            escaped("<b>&\"'\u{7}\u{202e}\nx"),
            "&lt;b&gt;&amp;&quot;&#39; x",
            "escaped"
        );
    }
}
