//! Pictures are looked at by what they mean: which part covers which pixels, against the projected geometry.

use lashwright::app::stage::{Drawing, Part, part_color};
use lashwright::app::{AppError, Picture, PictureRequest, draw};
use lashwright::numerics::math;
use lashwright::view::{Projection, Theme, Viewpoint};
use nalgebra::Vector3;

/// Left, top, right and bottom of the pixels of one colour (the first pixel, and one past the last).
fn extent(picture: &Picture, part: Part) -> Option<[f64; 4]> {
    let [width, _] = picture.size_px;
    let mut found: Option<[f64; 4]> = None;
    for (i, pixel) in picture.rgba.chunks_exact(4).enumerate() {
        if pixel[..3] == part_color(part) {
            let i = u32::try_from(i).expect("a small picture");
            let (x, y) = (f64::from(i % width), f64::from(i / width));
            let [l, t, r, b] = found.unwrap_or([x, y, x + 1.0, y + 1.0]);
            found = Some([l.min(x), t.min(y), r.max(x + 1.0), b.max(y + 1.0)]);
        }
    }
    found
}

fn count(picture: &Picture, part: Part) -> usize {
    picture
        .rgba
        .chunks_exact(4)
        .filter(|pixel| pixel[..3] == part_color(part))
        .count()
}

fn parts(viewpoint: Viewpoint, turned_teeth: i32) -> PictureRequest {
    PictureRequest {
        size_px: [480, 320],
        viewpoint,
        projection: Projection::Flat,
        turned_teeth,
        panels: false,
        drawing: Drawing::Parts,
        ..PictureRequest::default()
    }
}

/// Draws, or says that there is no driver on this machine.
fn drawn(request: &PictureRequest) -> Option<Picture> {
    match draw(request) {
        Ok(picture) => {
            println!("{}", picture.report);
            Some(picture)
        }
        Err(AppError::NoAdapter) => {
            println!("SKIPPED: this machine has no graphics driver, not even a software one");
            None
        }
        Err(error) => panic!("{error}"),
    }
}

#[track_caller]
fn assert_near(what: &str, got: f64, wanted: f64) {
    println!("{what}: {got:.1} px, projected {wanted:.1} px");
    assert!((got - wanted).abs() <= 1.5, "{what}: {got} instead of {wanted}");
}

/// One test, because what costs time is prepared once a process.
#[test]
fn pictures_show_the_projected_geometry() {
    ring_gear_stands_where_it_is_projected();
    pinion_lies_below_the_middle_and_to_the_right();
    marks_turn_with_the_teeth();
    the_whole_window_wears_the_look();
}

fn ring_gear_stands_where_it_is_projected() {
    let Some(picture) = drawn(&parts(Viewpoint::RingGear, 0)) else {
        return;
    };
    let report = &picture.report;
    let radius = report.blanks.wheel.outline.outer_radius_mm();
    let pixel = |x: f64, y: f64| report.pixel_of(Vector3::new(x, y, 0.0)).expect("flat");
    let [left, top, _, bottom] = extent(&picture, Part::Wheel).expect("the ring gear is in the picture");
    assert_near("left edge of the ring gear", left, pixel(-radius, 0.0)[0]);
    assert_near("upper edge of the ring gear", top, pixel(0.0, -radius)[1]);
    assert_near("lower edge of the ring gear", bottom, pixel(0.0, radius)[1]);
    let wheel = count(&picture, Part::Wheel);
    let traces = count(&picture, Part::Traces);
    println!(
        "ring gear {wheel} px, traces {traces} px, pinion {} px",
        count(&picture, Part::Pinion)
    );
    assert!(traces > 300 && traces < wheel, "traces are drawn on it");
}

fn pinion_lies_below_the_middle_and_to_the_right() {
    let Some(picture) = drawn(&parts(Viewpoint::RingGear, 0)) else {
        return;
    };
    let report = &picture.report;
    let outline = &report.blanks.pinion.outline;
    let [front_mm, end_mm] = outline.axial_extent_mm();
    let pixel = |x: f64, y: f64| report.pixel_of(Vector3::new(x, y, 0.0)).expect("flat");
    let [left, top, right, bottom] = extent(&picture, Part::Pinion).expect("the pinion is in the picture");
    let offset = report.blanks.offset_mm;
    assert_near("shaft end", right, pixel(end_mm, offset)[0]);
    assert_near("toe of the pinion", left, pixel(front_mm, offset)[0]);
    let radius = outline.outer_radius_mm();
    assert_near("upper edge of the head", top, pixel(0.0, offset - radius)[1]);
    assert_near("lower edge of the head", bottom, pixel(0.0, offset + radius)[1]);
}

/// The marked tooth of the ring gear stands where its count says; a drawing that turned the wrong way, or by another
/// ratio, would not show it there.
fn marks_turn_with_the_teeth() {
    // 17 teeth on, the pinion's own mark is on its far side and the ring gear's well away from the pinion.
    let Some(picture) = drawn(&parts(Viewpoint::RingGear, 17)) else {
        return;
    };
    let report = &picture.report;
    let cone = &report.blanks.wheel.cone;
    let turned = -std::f64::consts::TAU * 17.0 / f64::from(cone.teeth);
    let angle = cone.mean_angle_rad + turned;
    let wanted = report
        .pixel_of(Vector3::new(
            cone.mean_radius_mm * math::cos(angle),
            cone.mean_radius_mm * math::sin(angle),
            cone.mean_axial_mm,
        ))
        .expect("flat");
    let [width, _] = picture.size_px;
    let (mut sum, mut pixels) = ([0.0, 0.0], 0.0);
    for (i, pixel) in picture.rgba.chunks_exact(4).enumerate() {
        let i = u32::try_from(i).expect("a small picture");
        let at = [f64::from(i % width) + 0.5, f64::from(i / width) + 0.5];
        let near = (at[0] - wanted[0]).abs() < 40.0 && (at[1] - wanted[1]).abs() < 40.0;
        if near && pixel[..3] == part_color(Part::Mark) {
            sum = [sum[0] + at[0], sum[1] + at[1]];
            pixels += 1.0;
        }
    }
    assert!(pixels > 20.0, "the mark is seen near {wanted:?}: {pixels} px");
    assert_near("mark, from the left", sum[0] / pixels, wanted[0]);
    assert_near("mark, from the top", sum[1] / pixels, wanted[1]);
}

/// A place in whole pixels.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "pixels of a small picture"
)]
fn px(place: f32) -> u32 {
    place as u32
}

/// With panels: the colours of the look arrive as they are, text is drawn, the stage is where the panels say.
fn the_whole_window_wears_the_look() {
    for theme in Theme::ALL {
        let request = PictureRequest {
            size_px: [1280, 720],
            theme,
            ..PictureRequest::default()
        };
        let Some(picture) = drawn(&request) else { return };
        assert_eq!(
            picture.report.redraws_asked, 0,
            "{theme:?}: a window at rest asks for no frame"
        );
        let at = |x: u32, y: u32| -> [u8; 3] {
            let i = usize::try_from(4 * (y * picture.size_px[0] + x)).expect("a small picture");
            [picture.rgba[i], picture.rgba[i + 1], picture.rgba[i + 2]]
        };
        let near = |got: [u8; 3], want: [u8; 3]| got.iter().zip(want).all(|(a, b)| a.abs_diff(b) <= 2);
        let tokens = theme.tokens();
        let [left, top, width, height] = picture.report.stage_px;
        assert!(
            left > 250.0 && top > 30.0 && width > 900.0 && height > 500.0,
            "{:?}",
            picture.report.stage_px
        );
        let panel = at(8, 300);
        assert!(near(panel, tokens.panel.channels()), "{theme:?}: panel {panel:?}");
        let (stage_left, stage_top) = (px(left), px(top));
        let upper = at(stage_left + 3, stage_top + 3);
        assert!(
            near(upper, tokens.stage_top.channels()),
            "{theme:?}: upper edge of the stage {upper:?}"
        );
        let foot = at(stage_left + 3, px(top + height) - 5);
        assert!(
            near(foot, tokens.stage_foot.channels()),
            "{theme:?}: foot of the stage {foot:?}"
        );
        let text = tokens.text.channels();
        let ink = (0..40)
            .flat_map(|y| (16..120).map(move |x| (x, y)))
            .filter(|(x, y)| near(at(*x, *y), text))
            .count();
        assert!(ink > 60, "{theme:?}: the program's name is written: {ink} px of ink");
        // Steel: neither ground nor paper, bluish grey, in the middle of the stage's width.
        let steel = (0..720).filter(|y| {
            let [r, _, b] = at(stage_left + px(width * 0.5), *y);
            b >= r && (60..250).contains(&r)
        });
        assert!(steel.count() > 60, "{theme:?}: steel is seen");
    }
}
