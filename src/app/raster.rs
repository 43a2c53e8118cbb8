//! A drawn picture as points.

use std::sync::Arc;

use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree, fontdb::Database};

use super::AppError;
use super::picture::png_bytes;
use crate::drawing::{self, Theme, svg};
use crate::panels::theme::FONT_FILES;

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
        .ok_or_else(|| fail("it is too large".to_owned()))?;
    let mut points = Pixmap::new(size.width(), size.height()).ok_or_else(|| fail("it is too large".to_owned()))?;
    resvg::render(&tree, Transform::from_scale(FINENESS, FINENESS), &mut points.as_mut());
    png_bytes([size.width(), size.height()], &points.take_demultiplied())
}
