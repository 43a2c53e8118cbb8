//! A drawn picture as points.

use std::sync::Arc;

use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree, fontdb::Database};

use super::error::AppError;
use super::png_file::png_bytes;
use crate::drawing::{self, Theme, svg};
use crate::panels::theme::FONT_FILES;
use crate::words::say;

/// Points of the file for a point of the picture: as fine as a printer shows.
const FINENESS: f32 = 2.0;

/// The same picture as the SVG file, with the font of the panels, as a PNG file.
///
/// # Errors
/// [`AppError::NoPicture`]: a picture that is empty or too large to be held.
pub(super) fn png(picture: &drawing::Picture, theme: Theme) -> Result<Vec<u8>, AppError> {
    let fail = |reason: String| AppError::NoPicture { reason };
    let mut fonts = Database::new();
    for file in FONT_FILES {
        fonts.load_font_data(file.to_vec());
    }
    let options = Options {
        fontdb: Arc::new(fonts),
        ..Options::default()
    };
    let tree = Tree::from_str(&svg::write(picture, theme), &options).map_err(|error| fail(error.to_string()))?;
    let size = tree
        .size()
        .to_int_size()
        .scale_by(FINENESS)
        .ok_or_else(|| fail(say!("display-too-large")))?;
    let mut points = Pixmap::new(size.width(), size.height()).ok_or_else(|| fail(say!("display-too-large")))?;
    resvg::render(&tree, Transform::from_scale(FINENESS, FINENESS), &mut points.as_mut());
    png_bytes([size.width(), size.height()], &points.take_demultiplied())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::{Fill, Ink, Item, Path, Point, Text};

    /// The file has twice as many points as the picture, a surface where it was drawn, in its colour, and letters.
    #[test]
    fn the_file_shows_what_was_drawn() {
        let mut picture = drawing::Picture::on(Ink::Panel, 60.0, 40.0, "Test", "A square and a word.");
        let square = [[10.0, 10.0], [20.0, 10.0], [20.0, 20.0], [10.0, 20.0]].map(|[x, y]| Point::new(x, y));
        let plain = Fill::Plain {
            ink: Ink::Steel,
            opacity: 1.0,
        };
        picture.draw(Item::filled(Path::closed(square), plain));
        picture.draw(Item::Text(Text::new(Point::new(30.0, 30.0), "toe".to_owned(), 12.0)));
        let file = png(&picture, Theme::Paper).expect("a picture");
        let mut reader = png::Decoder::new(std::io::Cursor::new(&file))
            .read_info()
            .expect("a PNG file");
        let mut rgba = vec![0; reader.output_buffer_size().expect("small")];
        let frame = reader.next_frame(&mut rgba).expect("one picture");
        assert_eq!((frame.width, frame.height), (120, 80));
        let at = |x: usize, y: usize| {
            rgba.get(4 * (120 * y + x)..)
                .and_then(<[u8]>::first_chunk::<3>)
                .copied()
        };
        assert_eq!(at(30, 30), Some(Ink::Steel.rgb(Theme::Paper)), "the square");
        assert_eq!(at(2, 2), Some(Ink::Panel.rgb(Theme::Paper)), "the sheet");
        let inked = (40..66).flat_map(|y| (58..110).map(move |x| (x, y)));
        let dark = inked.filter(|(x, y)| at(*x, *y).is_some_and(|[r, ..]| r < 100)).count();
        assert!(dark > 40, "the word is written: {dark} points");
    }
}
