//! What the core can answer of the crown-gear benchmark.
//!
//! The core's wheel is form cut: its flanks are cones, straight in profile, where the benchmark's wheel is generated and
//! hollow in profile. So the movement table is *not* the core's, number for number; `crown_gear` reproduces it
//! with a solver of its own. A core set with the same teeth, cone distance, spiral angle, cutter radius and the same
//! relief at the mean point (lengthwise from the two cutter radii, in profile from the blade's relief) must move its
//! contact the same way and by about as much wherever the profile's own curvature does not decide: height under a pinion
//! move, both directions under an offset move, drive length under a wheel move. The rest (length under a pinion move,
//! height under a wheel move, coast length under a wheel move) is printed only.

use lashwright::contact::{Pair, Placement, Resolution, Route, path_of_contact};
use lashwright::gear::{DepthTaper, Design, EaseOff, GearSet, Side};

use super::crown_gear::{benchmark, slope};
use super::guide::{Row, Source, checks};

/// Teeth, A, spiral angle, cutter radius.
const SETS: [(u32, u32, f64, f64, f64); 2] = [(12, 36, 81.05, 35.0, 76.2), (11, 41, 110.0, 30.0, 95.25)];
const FACE_MM: f64 = 25.4;

/// The core's set, and its half working depth. The benchmark says nothing of depth; a full one is 2 modules.
fn design(set: usize, depth_factor: f64) -> (Design, f64) {
    let (z1, z2, cone, spiral_deg, cutter) = SETS[set];
    let sine = f64::from(z2) / (f64::from(z1 * z1 + z2 * z2)).sqrt();
    let cos_spiral = [0.819_152_044_288_991_8, 0.866_025_403_784_438_6][set];
    let cos_alpha = 0.939_692_620_785_908_4;
    let half_depth = depth_factor * cone * sine * cos_spiral / f64::from(z2);
    let along = |factor: f64| {
        let curvature = cos_alpha * (1.0 / (factor * cutter) - 1.0 / cutter).abs();
        500.0 * curvature * (FACE_MM / 2.0) * (FACE_MM / 2.0) / (cos_spiral * cos_spiral)
    };
    let ease = |factor: f64| EaseOff {
        lengthwise_crown_um: along(factor),
        profile_crown_um: 1e3 * half_depth * half_depth / (cos_alpha * cos_alpha * 1600.0),
        ..EaseOff::default()
    };
    let design = Design {
        name: format!("crown-gear benchmark {z1}/{z2}"),
        pinion_teeth: z1,
        wheel_teeth: z2,
        offset_mm: 0.0,
        wheel_outer_pitch_diameter_mm: 2.0 * sine * (cone + FACE_MM / 2.0),
        wheel_face_width_mm: FACE_MM,
        pinion_mean_spiral_angle_deg: spiral_deg,
        limit_radius_mm: cutter,
        cutter_radius_mm: cutter,
        pressure_angle_drive_deg: 20.0,
        pressure_angle_coast_deg: 20.0,
        depth: DepthTaper::Uniform,
        depth_factor,
        clearance_factor: 0.125,
        wheel_addendum_factor: 0.5,
        thickness_factor: 0.0,
        lash_mm: 0.1,
        ease_off_drive: ease(1.03),
        ease_off_coast: ease(0.97),
    };
    (design, half_depth)
}

fn moved(kind: usize, by: f64) -> Placement {
    match kind {
        0 => Placement {
            pinion_axial_mm: by,
            ..Placement::default()
        },
        1 => Placement {
            wheel_axial_mm: by,
            ..Placement::default()
        },
        _ => Placement {
            offset_mm: by,
            ..Placement::default()
        },
    }
}

/// Steeper than any smooth rise of the slope of these sets' motion, per rad.
const STEEPEST: f64 = 0.5;

/// The benchmark's contact centre: the touching point where the instantaneous ratio is that of the teeth.
fn contact_centre(pair: &Pair, placement: Placement, side: Side, route: Route) -> [f64; 2] {
    let path = path_of_contact(pair, placement, side, route).expect("the flanks touch");
    path.windows(2)
        .filter_map(|w| {
            let [a, b] = w else { return None };
            // The wheel lags least there: the slope rises through 0, without a jump. (Jumps are where this set's pinion is
            // undercut, at the wheel's top.) Where another pair takes over just before, the path is gone on with for a step.
            let rise = b.slope - a.slope;
            let smooth = rise > 0.0 && rise < STEEPEST * (b.roll_rad - a.roll_rad);
            let t = -a.slope / rise;
            (smooth && (-1.0..=2.0).contains(&t))
                .then(|| (t, [0, 1].map(|k| a.place[k] + t * (b.place[k] - a.place[k]))))
        })
        .min_by(|(t, _), (u, _)| (t - 0.5).abs().total_cmp(&(u - 0.5).abs()))
        .expect("the path passes the ratio of the teeth")
        .1
}

/// Which movements (0 along the tooth, 1 up the tooth) the profile's curvature does not decide.
fn compared(kind: usize, side: usize) -> &'static [usize] {
    match (kind, side) {
        (0, _) => &[1],
        (1, 0) => &[0],
        (1, _) => &[],
        _ => &[0, 1],
    }
}

/// Movement of the contact of both sets by a route.
pub(crate) fn movement(route: Route, depth_factor: f64) -> Row {
    let mut row = Row::range(
        "Movement of the contact over that of the benchmark, where the profile's curvature does not decide",
        Source::Second("contact equations of one crown gear's pair"),
        0.6..1.6,
        "",
    );
    for set in 0..2 {
        let (design, half_depth) = design(set, depth_factor);
        let pair = Pair::with_resolution(
            GearSet::new(design.clone()).expect("the set exists"),
            Resolution {
                rolls: 64,
                ..Resolution::SHIPPED
            },
        );
        for side in 0..2 {
            for kind in 0..3 {
                let centre = |by: f64| contact_centre(&pair, moved(kind, by), Side::BOTH[side], route);
                let (a, b) = (centre(-0.02), centre(0.02));
                let got = [(b[0] - a[0]) * 2.5 * FACE_MM / 2.0, (b[1] - a[1]) * 2.5 * half_depth];
                let want = slope(&benchmark(set, side), kind);
                let place = format!("{} {} {}", design.name, ["drive", "coast"][side], ["P", "G", "E"][kind]);
                println!(
                    "{place}: L {:+.3} (benchmark {:+.3}), H {:+.3} (benchmark {:+.3}) mm per 0.1 mm",
                    got[0], want[0], got[1], want[1]
                );
                for &k in compared(kind, side) {
                    row.found(format_args!("{place} {}", ["L", "H"][k]), got[k] / want[k]);
                }
            }
        }
    }
    row
}

fn core_moves_contact_like_the_benchmark() -> Vec<Row> {
    vec![movement(Route::Exact, 2.0)]
}

checks![core_moves_contact_like_the_benchmark,];
