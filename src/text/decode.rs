//! From bytes to text, within limits.

use super::{ProblemKind, Problems};

/// How large a text may be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Limits {
    /// Most bytes.
    pub bytes: usize,
}

impl Limits {
    /// Hand-written files: gear sets, pinion supports, scenarios. 64 KiB.
    pub const HAND_WRITTEN: Self = Self { bytes: 64 * 1024 };
}

/// The text in `bytes`: UTF-8 (a byte order mark at the start is passed over), not longer than `limits` say.
///
/// # Errors
/// A text that is too large, is not UTF-8, or holds a NUL character, with the place where it goes wrong. For a text
/// that is not UTF-8 the place counts in bytes of the text as shown by [`String::from_utf8_lossy`].
pub fn decode<F>(bytes: &[u8], limits: Limits) -> Result<&str, Problems<F>> {
    let mut problems = Problems::new();
    if bytes.len() > limits.bytes {
        problems.note(
            0..0,
            ProblemKind::TooLarge {
                bytes: bytes.len(),
                most: limits.bytes,
            },
        );
        return Err(problems);
    }
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    match std::str::from_utf8(bytes) {
        Ok(text) => match text.find('\0') {
            None => Ok(text),
            Some(at) => {
                problems.note(at..at + 1, ProblemKind::Nul);
                Err(problems)
            }
        },
        Err(error) => {
            // Up to here the lossy text is the text itself; the damaged place is shown as one replacement character.
            let at = error.valid_up_to();
            problems.note(at..at + '\u{fffd}'.len_utf8(), ProblemKind::NotUtf8);
            Err(problems)
        }
    }
}

#[cfg(test)]
mod tests {
    use std::convert::Infallible;

    use super::*;

    #[test]
    fn text_passes_and_its_mark_is_dropped() {
        assert_eq!(
            decode::<Infallible>(b"a = 1", Limits::HAND_WRITTEN),
            Ok("a = 1"),
            "plain"
        );
        assert_eq!(
            decode::<Infallible>(b"\xef\xbb\xbfa = 1", Limits::HAND_WRITTEN),
            Ok("a = 1"),
            "byte order mark"
        );
    }

    #[test]
    fn what_is_no_text_is_refused_with_its_place() {
        let place = |bytes: &[u8]| {
            decode::<Infallible>(bytes, Limits { bytes: 16 })
                .expect_err("refused")
                .list()[0]
                .span
                .clone()
        };
        assert_eq!(place(b"ab\xff"), 2..5, "not UTF-8");
        assert_eq!(place(b"ab\0"), 2..3, "NUL");
        assert_eq!(place(&[b'a'; 17]), 0..0, "too large");
    }
}
