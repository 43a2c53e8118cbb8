//! Pixels as a PNG file.

use super::error::AppError;
use crate::words::say;

/// A PNG file of so many pixels across and down: red, green, blue and opacity of each, row by row from the top.
pub(super) fn png_bytes([width, height]: [u32; 2], rgba: &[u8]) -> Result<Vec<u8>, AppError> {
    let fail = |error: png::EncodingError| AppError::NoPicture {
        reason: say!("display-no-png", error = error.to_string()),
    };
    let mut bytes = Vec::new();
    let mut encoder = png::Encoder::new(&mut bytes, width, height);
    encoder.set_color(png::ColorType::Rgba);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.set_source_srgb(png::SrgbRenderingIntent::Perceptual);
    let mut writer = encoder.write_header().map_err(fail)?;
    writer.write_image_data(rgba).map_err(fail)?;
    writer.finish().map_err(fail)?;
    Ok(bytes)
}
