//! Pictures are looked at by what they mean: which part covers which pixels, against the projected geometry.

use lashwright::app::stage::{Drawing, Part, part_color};
use lashwright::app::{AppError, ExerciseRequest, Picture, PictureRequest, draw};
use lashwright::bench::Operation;
use lashwright::contact::{self, Film, Route};
use lashwright::gear;
use lashwright::numerics::math;
use lashwright::view::{Place, Projection, Setting, Theme, Viewpoint};
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
    as_many_teeth_are_drawn_as_the_ring_gear_has();
    marks_turn_with_the_teeth();
    moved_gears_are_drawn_where_they_were_moved();
    the_print_is_drawn_where_the_gap_is_under_the_film();
    the_whole_window_wears_the_look();
    parts_are_drawn_as_the_axle_lies();
}

/// Smallest and largest pixel place of a gear's corners, from the left and from the top.
fn projected(picture: &Picture, corners: impl Iterator<Item = Vector3<f64>>) -> [f64; 4] {
    corners.fold(
        [f64::INFINITY, f64::INFINITY, f64::NEG_INFINITY, f64::NEG_INFINITY],
        |[l, t, r, b], corner| {
            let [x, y] = picture.report.pixel_of(corner).expect("flat");
            [l.min(x), t.min(y), r.max(x), b.max(y)]
        },
    )
}

/// A point of the ring gear turned about its axis.
fn turned(point: Vector3<f64>, angle_rad: f64) -> Vector3<f64> {
    let (sin, cos) = math::sin_cos(angle_rad);
    Vector3::new(point.x * cos - point.y * sin, point.x * sin + point.y * cos, point.z)
}

fn ring_gear_stands_where_it_is_projected() {
    let Some(picture) = drawn(&parts(Viewpoint::RingGear, 0)) else {
        return;
    };
    let [left, top, _, bottom] = projected(&picture, picture.report.pair.wheel.points_mm().iter().copied());
    // Teeth reach to the rim, so that body, flanks and mark together are the gear; the pinion lies inside of it on
    // three sides.
    let parts = [Part::Wheel, Part::Flanks, Part::Mark, Part::Paste, Part::Print].map(|part| extent(&picture, part));
    let seen = parts
        .into_iter()
        .flatten()
        .reduce(|a, b| [a[0].min(b[0]), a[1].min(b[1]), a[2].max(b[2]), a[3].max(b[3])])
        .expect("the ring gear is in the picture");
    assert_near("left edge of the ring gear", seen[0], left);
    assert_near("upper edge of the ring gear", seen[1], top);
    assert_near("lower edge of the ring gear", seen[3], bottom);
}

fn pinion_lies_below_the_middle_and_to_the_right() {
    let Some(picture) = drawn(&parts(Viewpoint::RingGear, 0)) else {
        return;
    };
    let pair = &picture.report.pair;
    let offset = Vector3::new(0.0, pair.design().offset_mm, 0.0);
    let shaft = |p: &&Vector3<f64>| p.x > 150.0;
    let [_, top, right, bottom] = projected(
        &picture,
        pair.pinion.points_mm().iter().filter(shaft).map(|p| p + offset),
    );
    let [width, _] = picture.size_px;
    let first = pixel_column(&picture, Vector3::new(150.0, 0.0, 0.0));
    let (mut upper, mut lower, mut end) = (f64::INFINITY, 0.0_f64, 0.0_f64);
    for (i, pixel) in picture.rgba.chunks_exact(4).enumerate() {
        let i = u32::try_from(i).expect("a small picture");
        let (x, y) = (f64::from(i % width), f64::from(i / width));
        if x > first + 1.0 && pixel[..3] == part_color(Part::Pinion) {
            (upper, lower, end) = (upper.min(y), lower.max(y + 1.0), end.max(x + 1.0));
        }
    }
    assert_near("shaft end", end, right);
    assert_near("upper edge of the shaft", upper, top);
    assert_near("lower edge of the shaft", lower, bottom);
    let middle = picture.report.pixel_of(Vector3::zeros()).expect("flat");
    assert!(upper + lower > 2.0 * middle[1], "the pinion lies below the centre");
}

fn pixel_column(picture: &Picture, point: Vector3<f64>) -> f64 {
    picture.report.pixel_of(point).expect("flat")[0]
}

/// Along a circle over the teeth flanks and lands follow each other as often as the ring gear has teeth: of all whole
/// numbers that is the one with the strongest wave.
fn as_many_teeth_are_drawn_as_the_ring_gear_has() {
    let request = PictureRequest {
        size_px: [1200, 800],
        ..parts(Viewpoint::RingGear, 3)
    };
    let Some(picture) = drawn(&request) else { return };
    let design = picture.report.pair.design();
    let radius = 0.5 * (design.wheel_outer_pitch_diameter_mm - design.wheel_face_width_mm);
    const PLACES: u32 = 4000;
    let flanks: Vec<(f64, f64)> = (0..PLACES)
        .filter_map(|k| {
            let angle = std::f64::consts::TAU * f64::from(k) / f64::from(PLACES);
            // The pinion covers the right-hand side.
            if math::cos(angle) > -0.2 {
                return None;
            }
            let at = Vector3::new(radius * math::cos(angle), radius * math::sin(angle), 0.0);
            let [x, y] = picture.report.pixel_of(at).expect("flat");
            let i = usize::try_from(4 * (whole(y) * picture.size_px[0] + whole(x))).expect("a small picture");
            let flank = [Part::Flanks, Part::Paste, Part::Print]
                .iter()
                .any(|part| picture.rgba[i..i + 3] == part_color(*part));
            Some((angle, f64::from(u8::from(flank))))
        })
        .collect();
    let mean = flanks.iter().map(|(_, f)| f).sum::<f64>() / flanks.len() as f64;
    assert!((0.2..0.95).contains(&mean), "flanks and lands are seen: {mean}");
    let wave = |teeth: u32| {
        let (mut sine, mut cosine) = (0.0, 0.0);
        for (angle, flank) in &flanks {
            sine += (flank - mean) * math::sin(f64::from(teeth) * angle);
            cosine += (flank - mean) * math::cos(f64::from(teeth) * angle);
        }
        (sine * sine + cosine * cosine).sqrt()
    };
    let strongest = (20..60).max_by(|a, b| wave(*a).total_cmp(&wave(*b)));
    println!("strongest wave: {strongest:?}");
    assert_eq!(strongest, Some(design.wheel_teeth), "one tooth for one wave");
}

/// A place in whole pixels.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "pixels of a small picture"
)]
fn whole(place: f64) -> u32 {
    place as u32
}

/// Pixels of a colour around a place, and their middle.
fn middle_near(picture: &Picture, part: Part, place: [f64; 2], reach: f64) -> ([f64; 2], f64) {
    let [width, _] = picture.size_px;
    let (mut sum, mut pixels) = ([0.0, 0.0], 0.0);
    for (i, pixel) in picture.rgba.chunks_exact(4).enumerate() {
        let i = u32::try_from(i).expect("a small picture");
        let at = [f64::from(i % width) + 0.5, f64::from(i / width) + 0.5];
        let near = (at[0] - place[0]).abs() < reach && (at[1] - place[1]).abs() < reach;
        if near && pixel[..3] == part_color(part) {
            sum = [sum[0] + at[0], sum[1] + at[1]];
            pixels += 1.0;
        }
    }
    ([sum[0] / pixels, sum[1] / pixels], pixels)
}

/// The marked tooth of the ring gear stands where its count says; a drawing that turned the wrong way, or by another
/// ratio, would not show it there.
fn marks_turn_with_the_teeth() {
    // 17 teeth on, the pinion's own mark is on its far side and the ring gear's well away from the pinion.
    let Some(picture) = drawn(&parts(Viewpoint::RingGear, 17)) else {
        return;
    };
    let wheel = &picture.report.pair.wheel;
    let angle = -std::f64::consts::TAU * 17.0 / f64::from(picture.report.pair.design().wheel_teeth);
    let land: Vec<Vector3<f64>> = wheel
        .triangles()
        .iter()
        .zip(wheel.corners_mm())
        .filter(|(triangle, _)| triangle.tooth == Some(0) && triangle.part == gear::Part::TipLand)
        .flat_map(|(_, corners)| corners)
        .map(|corner| turned(corner, angle))
        .collect();
    let [left, top, right, bottom] = projected(&picture, land.into_iter());
    let wanted = [f64::midpoint(left, right), f64::midpoint(top, bottom)];
    let (got, pixels) = middle_near(&picture, Part::Mark, wanted, 40.0);
    assert!(pixels > 20.0, "the mark is seen near {wanted:?}: {pixels} px");
    // The land is curved, and the end of the tooth is marked too: its middle lies a little off that of its frame.
    let (dx, dy) = (got[0] - wanted[0], got[1] - wanted[1]);
    let off = (dx * dx + dy * dy).sqrt();
    println!("mark at {got:?}, projected {wanted:?}: {off:.1} px apart");
    assert!(off < 6.0, "a tooth is {:.0} px", 0.5 * (right - left + bottom - top));
}

/// A pinion moved out is drawn further out.
fn moved_gears_are_drawn_where_they_were_moved() {
    let close = |pinion_mm: f64| {
        let request = PictureRequest {
            size_px: [3200, 2000],
            setting: Setting {
                pinion_mm,
                ..Setting::default()
            },
            ..parts(Viewpoint::RingGear, 0)
        };
        drawn(&request)
    };
    let (Some(designed), Some(moved)) = (close(0.0), close(0.3)) else {
        return;
    };
    let end = |picture: &Picture| extent(picture, Part::Pinion).expect("the pinion is in the picture")[2];
    let scale = pixel_column(&designed, Vector3::x()) - pixel_column(&designed, Vector3::zeros());
    let shift = end(&moved) - end(&designed);
    println!("0.3 mm is {:.2} px; the shaft's end moved by {shift} px", 0.3 * scale);
    assert!(0.3 * scale > 1.5, "more than the error of a pixel that is allowed");
    assert!((shift - 0.3 * scale).abs() <= 1.0 && shift >= 0.0, "{shift}");
    let changed = designed.rgba.iter().zip(&moved.rgba).filter(|(a, b)| a != b).count();
    assert!(changed > 500, "the picture has changed: {changed}");
}

/// On the painted tooth, looked at closely: paste where the core's gap is over the film, the print where it is under. Drawn from
/// either flank, as designed and with the pinion moved.
fn the_print_is_drawn_where_the_gap_is_under_the_film() {
    for (viewpoint, side, pinion_mm) in [
        (Viewpoint::Drive, gear::Side::Drive, 0.0),
        (Viewpoint::Drive, gear::Side::Drive, 0.15),
        (Viewpoint::Coast, gear::Side::Coast, -0.15),
    ] {
        let request = PictureRequest {
            size_px: [900, 700],
            setting: Setting {
                pinion_mm,
                ..Setting::default()
            },
            ..parts(viewpoint, 0)
        };
        let Some(picture) = drawn(&request) else { return };
        let pair = &picture.report.pair;
        let placement = request.setting.placement();
        let film = Film::default();
        let map = contact::gap_map(&pair.pair, placement, side, Route::Fast).expect("in contact");
        let flank = pair.pair.gears().pinion_flank(side).wheel();
        let tooth = pair.paste_of(placement, film).teeth[1];
        let angle = pair.topmost_rad(tooth) + pair.flank_angle_rad(tooth, side);
        let (columns, rows) = map.size();
        let (mut right, mut wrong, mut hidden, mut prints) = (0.0, 0.0, 0.0, 0.0);
        for (i, j) in (1..columns - 1).flat_map(|i| (1..rows - 1).map(move |j| (i, j))) {
            let share = map.gap_um(i, j).map_or(9.0, |gap_um| gap_um / film.thickness_um);
            // Close to the film's edge a pixel may show either.
            if (0.85..1.15).contains(&share) {
                continue;
            }
            let (x, y) = map.place(i, j);
            let point = turned(flank.point(x, y).expect("on the flank").position_mm, angle);
            let [across, down] = picture.report.pixel_of(point).expect("flat");
            let at = usize::try_from(4 * (whole(down) * picture.size_px[0] + whole(across))).expect("small");
            let [here, other] = if share < 1.0 {
                [Part::Print, Part::Paste]
            } else {
                [Part::Paste, Part::Print]
            };
            let shown = &picture.rgba[at..at + 3];
            if shown == part_color(here) {
                right += 1.0;
                prints += f64::from(u8::from(share < 1.0));
            } else if shown == part_color(other) {
                wrong += 1.0;
            } else {
                // The tooth before it hides a little of the root.
                hidden += 1.0;
            }
        }
        println!("{viewpoint:?} at {pinion_mm}: {right} right, {prints} of them print, {wrong} wrong, {hidden} hidden");
        assert!(prints > 20.0 && right > 100.0, "the flank is seen, and a print on it");
        assert!(wrong <= 0.01 * right, "{wrong} of {right} places are drawn otherwise");
        assert!(hidden <= 0.1 * right, "{hidden} places are hidden");
    }
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

/// The axle of an exercise: each part that is there covers pixels where its middle is projected; with the nut off there is
/// ground where the flange was.
fn parts_are_drawn_as_the_axle_lies() {
    let bench = |operations: &[&str]| PictureRequest {
        size_px: [480, 320],
        viewpoint: Viewpoint::Pinion,
        projection: Projection::Flat,
        place: Place::Bench,
        panels: false,
        exercise: Some(ExerciseRequest {
            scenario: "oat-barn-tractor".to_owned(),
            seed: 1,
            operations: operations
                .iter()
                .map(|line| Operation::from_json(line).expect("an operation"))
                .collect(),
            part: None,
        }),
        ..PictureRequest::default()
    };
    let Some(complete) = drawn(&bench(&[])) else { return };
    let Some(open) = drawn(&bench(&[r#"{"do":"remove_nut","precautions":["holding_bar"]}"#])) else {
        return;
    };
    let at = |picture: &Picture, point: Vector3<f64>| -> [u8; 3] {
        let [x, y] = picture.report.pixel_of(point).expect("flat");
        let i = usize::try_from(4 * (whole(y) * picture.size_px[0] + whole(x))).expect("a small picture");
        [picture.rgba[i], picture.rgba[i + 1], picture.rgba[i + 2]]
    };
    // Below and before the pinion's axis, just inside the rim of the flange: behind it there is nothing.
    let offset = complete.report.pair.design().offset_mm;
    let rim = Vector3::new(250.0, offset + 43.5, -30.0);
    let (with, without) = (at(&complete, rim), at(&open, rim));
    println!("flange {with:?}, without it {without:?}");
    let grey = |[r, _, b]: [u8; 3]| i16::from(r) - i16::from(b);
    assert!(grey(with) < 5, "steel: {with:?}");
    assert!(grey(without) > 8, "the warm ground of the stage: {without:?}");
}
