//! How wide letters are: advance widths of the project's font (B612, `assets/fonts`), so that words can be set one behind
//! the other without a font at hand.

/// Widths of the characters from space to tilde, thousandths of the size; the font's regular and bold are equally wide.
const WIDTHS: [u16; 95] = [
    350, 350, 400, 850, 550, 900, 700, 200, 450, 450, 550, 600, 250, 450, 300, 550, 650, 650, 650, 650, 650, 650, 650,
    650, 650, 650, 300, 250, 650, 500, 650, 550, 1000, 650, 650, 600, 650, 600, 550, 650, 700, 300, 450, 600, 550, 900,
    750, 800, 600, 800, 650, 550, 600, 700, 650, 950, 650, 600, 600, 450, 550, 500, 750, 550, 550, 525, 600, 500, 600,
    550, 400, 600, 600, 300, 300, 550, 350, 900, 600, 600, 600, 600, 400, 450, 400, 600, 550, 750, 550, 550, 500, 649,
    200, 600, 750,
];
/// Every other character counts as a wide letter.
const OTHER: u16 = 650;

/// Width of words at size 1.
pub(super) fn width_of(words: &str) -> f64 {
    words
        .chars()
        .map(|c| {
            let c = if c == '\u{a0}' { ' ' } else { c };
            let place = u32::from(c).checked_sub(32).and_then(|k| usize::try_from(k).ok());
            let thousandths = place.and_then(|k| WIDTHS.get(k)).copied().unwrap_or(OTHER);
            1.0e-3 * f64::from(thousandths)
        })
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn digits_are_equally_wide_and_letters_are_not() {
        let zero = width_of("0");
        for digit in ["1", "2", "3", "4", "5", "6", "7", "8", "9"] {
            assert!((width_of(digit) - zero).abs() < 1.0e-12, "{digit}");
        }
        assert!(width_of("W") > 1.5 * width_of("i"), "letters differ");
        assert!((width_of("00\u{a0}0") - 3.0 * zero - width_of(" ")).abs() < 1.0e-12);
    }
}
