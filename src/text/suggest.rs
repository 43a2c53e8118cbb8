//! "Did you mean …?"

/// The word of `known` that is closest to `word`, if it is close enough to be a slip of the pen: at most a third of
/// its letters differ (Levenshtein distance: V. I. Levenshtein, Soviet Physics Doklady 10, 1966).
pub(crate) fn closest<'a>(word: &str, known: &[&'a str]) -> Option<&'a str> {
    known
        .iter()
        .map(|k| (distance(word, k), *k))
        .filter(|(d, k)| 3 * d <= k.chars().count())
        .min_by_key(|(d, _)| *d)
        .map(|(_, k)| k)
}

/// How many letters must be put in, taken out or changed to get from `a` to `b`. Words over 80 letters are not
/// compared: a distance that no suggestion accepts.
fn distance(a: &str, b: &str) -> usize {
    let a: Vec<char> = a.chars().take(81).collect();
    let b: Vec<char> = b.chars().take(81).collect();
    if a.len() > 80 || b.len() > 80 {
        return usize::MAX / 4;
    }
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, x) in a.iter().enumerate() {
        let mut diagonal = i;
        let mut left = i + 1;
        for (cell, y) in row.iter_mut().skip(1).zip(&b) {
            let above = *cell;
            let best = (diagonal + usize::from(x != y)).min(above + 1).min(left + 1);
            diagonal = above;
            left = best;
            *cell = best;
        }
        if let Some(first) = row.first_mut() {
            *first = i + 1;
        }
    }
    row.last().copied().unwrap_or(a.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn distances_of_known_pairs() {
        // The usual textbook pairs of the Levenshtein distance.
        assert_eq!(distance("kitten", "sitting"), 3, "kitten");
        assert_eq!(distance("saturday", "sunday"), 3, "saturday");
        assert_eq!(distance("", "abc"), 3, "empty");
        assert_eq!(distance("abc", ""), 3, "to empty");
        assert_eq!(distance("same", "same"), 0, "same");
    }

    #[test]
    fn a_slip_is_found_and_a_stranger_is_not() {
        let known = ["pinion_teeth", "wheel_teeth", "offset_mm"];
        assert_eq!(closest("pinion_teath", &known), Some("pinion_teeth"), "slip");
        assert_eq!(closest("offset", &known), Some("offset_mm"), "unit forgotten");
        assert_eq!(closest("colour", &known), None, "stranger");
        assert_eq!(closest(&"x".repeat(100_000), &known), None, "endless");
    }
}
