//! The note about simulated values at the foot of a sheet.

use crate::drawing::{Ink, Item, Point, Text};
use crate::words;

use super::type_size::SMALL;

/// From one line to the next, points.
pub(super) const LINE: f64 = 16.0;

/// The note in lines that fit a width: as long as the language makes it.
#[derive(Debug)]
pub(super) struct FootNote {
    lines: Vec<String>,
}

impl FootNote {
    /// Of this width, points.
    pub(super) fn within(width: f64) -> Self {
        let fits = |line: &str| Text::new(Point::new(0.0, 0.0), line, SMALL).width() <= width;
        let mut lines: Vec<String> = Vec::new();
        for word in words::simulated().split(' ') {
            let longer = lines.last().map(|line| [line, " ", word].concat());
            match (longer, lines.last_mut()) {
                (Some(longer), Some(last)) if fits(&longer) => *last = longer,
                _ => lines.push(word.to_owned()),
            }
        }
        Self { lines }
    }

    /// How much more room it takes than one line, points.
    pub(super) fn more(&self) -> f64 {
        LINE * self.lines.len().saturating_sub(1) as f64
    }

    /// The note with its last line at a height.
    pub(super) fn items(self, left: f64, bottom: f64) -> impl Iterator<Item = Item> {
        let top = bottom - self.more();
        self.lines.into_iter().enumerate().map(move |(k, line)| {
            let at = Point::new(left, top + LINE * k as f64);
            Item::Text(Text::new(at, line, SMALL).ink(Ink::Muted))
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_broken_between_words_and_keeps_them_all() {
        for width in [1.0, 200.0, 720.0, 5000.0] {
            let note = FootNote::within(width);
            assert_eq!(note.lines.join(" "), words::simulated(), "{width}");
            let too_wide = |line: &&String| Text::new(Point::new(0.0, 0.0), line.as_str(), SMALL).width() > width;
            let wide: Vec<&String> = note.lines.iter().filter(too_wide).collect();
            assert!(wide.iter().all(|line| !line.contains(' ')), "{width}: {wide:?}");
        }
        assert!(FootNote::within(5000.0).more().abs() < 1e-9, "one line");
        assert!((FootNote::within(720.0).more() - LINE).abs() < 1e-9, "two lines");
    }
}
