//! Lash against axial movement: the formula of bevel gear handbooks, and the shim rules of service manuals.
//!
//! Reading direction: transverse, along the circumference. The formulas hold where contact is held at the pitch cones;
//! lash is stated at the outer pitch radius, so they are scaled by (d_e2/2)/r. Contact is held near the mean point of
//! each flank by strong crowning round it, and asked at the roll where that point meets its partner.
//!
//! 1. Exactly: a move's part along the flank's normal over the lever of the wheel's rotation, both flanks summed.
//! 2. The formula j_t = 2 ΔG tan α_n sin δ2 / cos β_m2, with each flank's own pressure and spiral angle where it
//!    touches, so that 2 tan α_n becomes a sum of two tangents. What is left over is the move's part along the
//!    generator, (tan β_drive − tan β_coast) cos δ: zero in the formula, where both flanks have one spiral angle, and
//!    small here.
//! 3. The formula with the nominal angles of the mean point P. P stands in the middle of the slot; the flanks stand half
//!    a slot beside it, and the cutter's straight blades lean a little less to the pitch cone there. The difference is
//!    printed and must stay within 6 %: with offset both with the angles α ± α_lim to the pitch plane, and with the
//!    effective ones (from memory).
#![expect(
    clippy::disallowed_methods,
    reason = "an oracle must not go through the core's door to sine and cosine"
)]

use lashwright::contact::{Placement, Route};
use lashwright::gear::{Design, EaseOff};

use super::core::mesh_by;
use super::guide::{Row, Source, checks};
use super::oracle::blank::Blank;
use super::oracle::contact::{Moved, Side};
use super::oracle::flank::Gears;
use super::oracle::vector::{V, X, Z};
use super::sets::{all, numbers};

/// The design with both flanks crowned strongly round the mean point, where h = 0.
fn crowned_at_mean_point(design: &Design) -> Design {
    let blank = Gears::new(&numbers(design)).blank;
    let y = height_of_pitch_cone(&blank);
    let crown = EaseOff {
        lengthwise_crown_um: 400.0,
        profile_crown_um: 400.0,
        profile_slope_um: -800.0 * y,
        ..EaseOff::default()
    };
    Design {
        ease_off_drive: crown,
        ease_off_coast: crown,
        ..design.clone()
    }
}

/// Flank coordinate y of the mean point.
fn height_of_pitch_cone(blank: &Blank) -> f64 {
    blank.coordinates_of(blank.r_m2, blank.z_p)[1]
}

/// Play at the outer pitch radius per mm of wheel and pinion travel, three ways.
struct Slopes {
    normals: [f64; 2],
    own_angles: [f64; 2],
    nominal_angles: f64,
    effective_angles: f64,
}

fn slopes(gears: &Gears) -> Slopes {
    let (n, p) = (&gears.numbers, &gears.pitch);
    let half = n.d_e2 / 2.0;
    let (mut normals, mut own_angles) = ([0.0; 2], [0.0; 2]);
    for side in 0..2 {
        let roll = roll_of_mean_point(gears, side);
        let now = Side::new(gears, side, Moved::default());
        let touch = now.touch(roll).expect("contact near the mean point");
        let q = gears
            .wheel_point(side, touch.at[0], touch.at[1])
            .expect("the touching point is on the flank");
        let stand = roll + now.sense * touch.rotation;
        let (q, n) = (q.turned_z(stand), gears.cones[side].distance(q).1.turned_z(stand));
        let lever = q.cross(n).dot(Z).abs();
        // The wheel moves along z, away from its flank's normal; the pinion along x, along with it.
        normals[0] -= n.dot(Z) / lever * half;
        normals[1] += n.dot(X) / lever * half;
        // Angles to the wheel's pitch cone at this point.
        let r = (q.0 * q.0 + q.1 * q.1).sqrt();
        let e_r = V(q.0 / r, q.1 / r, 0.0);
        let cone_normal = e_r * p.delta2.cos() - Z * p.delta2.sin();
        let generator = e_r * p.delta2.sin() + Z * p.delta2.cos();
        let alpha = n.dot(cone_normal).asin();
        let beta = (-n.dot(generator) / n.dot(Z.cross(e_r))).atan();
        own_angles[0] += alpha.tan() * p.delta2.sin() / beta.cos() * half / r;
        own_angles[1] += alpha.tan() * p.delta1.sin() / beta.cos() * half / r;
    }
    let (drive, coast) = (n.alpha_drive_deg.to_radians(), n.alpha_coast_deg.to_radians());
    let wheel = |sum: f64| sum * p.delta2.sin() / p.beta2.cos() * half / p.r_m2;
    Slopes {
        normals,
        own_angles,
        nominal_angles: wheel((drive + p.alpha_lim).tan() + (coast - p.alpha_lim).tan()),
        effective_angles: wheel(drive.tan() + coast.tan()),
    }
}

/// Where the mean point of a side meets its partner in the designed mesh.
fn roll_of_mean_point(gears: &Gears, side: usize) -> f64 {
    let y = height_of_pitch_cone(&gears.blank);
    gears.pinion_point(side, 0.0, y).expect("the mean point meets").roll
}

/// First touch at the rolls of the mean point, as play at the outer pitch radius, both flanks.
fn play(gears: &Gears, moved: Moved) -> f64 {
    (0..2)
        .map(|side| {
            let touch = Side::new(gears, side, moved).touch(roll_of_mean_point(gears, side));
            touch.expect("contact near the mean point").rotation * gears.numbers.d_e2 / 2.0
        })
        .sum()
}

const STEP: f64 = 0.005;

fn slope(of: impl Fn(f64) -> f64) -> f64 {
    (of(STEP) - of(-STEP)) / (2.0 * STEP)
}

fn explicit_route_has_the_slopes_of_the_formulas() -> Vec<Row> {
    const FORMULA: Source = Source::Memory("j_t = ΔG (tan α_drive + tan α_coast) sin δ2 / cos β_m2");
    let normals_of = Source::Law("a move's part along the flank's normal over the lever of the rotation");
    let mut wheels = Row::absolute(
        "Yardstick: play per axial travel of the wheel, all shipped sets",
        normals_of,
        1e-5,
        "mm/mm",
    );
    let mut pinions = Row::absolute(
        "Yardstick: play per axial travel of the pinion, all shipped sets",
        normals_of,
        1e-5,
        "mm/mm",
    );
    let mut own = Row::relative(
        "Yardstick: the wheel's, by the formula with each flank's own angles",
        FORMULA,
        0.01,
    );
    let mut nominal = Row::relative(
        "Yardstick: the wheel's, by the formula with the nominal angles of the mean point",
        FORMULA,
        0.06,
    );
    for design in all() {
        let gears = Gears::new(&numbers(&crowned_at_mean_point(&design)));
        let want = slopes(&gears);
        let wheel = slope(|g| {
            play(
                &gears,
                Moved {
                    wheel_axial: g,
                    ..Moved::default()
                },
            )
        });
        let pinion = slope(|p| {
            play(
                &gears,
                Moved {
                    pinion_axial: p,
                    ..Moved::default()
                },
            )
        });
        let percent = |got: f64, want: f64| 100.0 * (got / want - 1.0);
        println!(
            "{}: wheel {wheel:.6} (normals {:+.1e}, own angles {:+.2} %, nominal {:+.2} %, effective {:+.2} %), pinion \
             {pinion:.6} (normals {:+.1e}, own angles {:+.2} %)",
            design.name,
            wheel - want.normals[0],
            percent(wheel, want.own_angles[0]),
            percent(wheel, want.nominal_angles),
            percent(wheel, want.effective_angles),
            pinion - want.normals[1],
            percent(pinion, want.own_angles[1]),
        );
        wheels.near(&design.name, wheel, want.normals[0]);
        pinions.near(&design.name, pinion, want.normals[1]);
        own.near(&design.name, wheel, want.own_angles[0]);
        nominal.near(&design.name, wheel, want.nominal_angles);
    }
    vec![wheels, pinions, own, nominal]
}

/// Mean lash of the core per axial travel of the wheel, read square to the tooth trace at the heel of the drive flank, at
/// the pitch cone.
pub(crate) fn square_to_the_tooth(design: &Design, route: Route) -> f64 {
    let gears = Gears::new(&numbers(design));
    let mean = |by: f64| {
        let placement = Placement {
            wheel_axial_mm: by,
            ..Placement::default()
        };
        mesh_by(route, design, &placement, 0.008)
            .expect("a shipped set meshes")
            .lash_mm
            .expect("lash")[1]
    };
    let transverse = (mean(0.05) - mean(-0.05)) / 0.1;
    let y = height_of_pitch_cone(&gears.blank);
    let q = gears.wheel_point(0, 1.0, y).expect("the flank has a heel");
    let n = gears.cones[0].distance(q).1;
    let r = (q.0 * q.0 + q.1 * q.1).sqrt();
    let e_r = V(q.0 / r, q.1 / r, 0.0);
    let generator = e_r * gears.pitch.delta2.sin() + Z * gears.pitch.delta2.cos();
    let spiral = (-n.dot(generator) / n.dot(Z.cross(e_r))).atan();
    let square = transverse * spiral.cos();
    println!(
        "{}: {transverse:.3} along the circumference, {square:.3} square to the tooth ({:.1}° at the heel)",
        design.name,
        spiral.to_degrees()
    );
    square
}

/// Lash per axial travel, and how far off, of the set with a 224 mm ring, by the shim table of [`TABLE`].
pub(crate) const TABLE_224: f64 = 0.75;
pub(crate) const TABLE_224_WITHIN: f64 = 0.05;
pub(crate) const TABLE: Source = Source::Published("shim table of a service manual (2014)");
/// Shim rules of the shops.
pub(crate) const SHOPS: Source =
    Source::Published("shim rules of service manuals (1996, 1998, 2005, 2014); reading direction common practice");

/// The core's mean lash of the shipped sets. Square to the tooth trace, the reading of the shops, every set lands
/// between 0.50 and 0.85 per unit of wheel travel, and the 224 mm ring at 0.75 ± 0.05 (from published
/// shim tables; their reading direction is common practice).
fn shipped_sets_read_as_the_shops_say() -> Vec<Row> {
    let mut shops = Row::range(
        "Lash per axial travel of the wheel, read square to the tooth, all shipped sets",
        SHOPS,
        0.50..0.85,
        "mm/mm",
    );
    let mut table = Row::absolute(
        "The same of the set with a 224 mm ring, against a published shim table",
        TABLE,
        TABLE_224_WITHIN,
        "mm/mm",
    );
    for design in all() {
        let square = square_to_the_tooth(&design, Route::Exact);
        shops.found(&design.name, square);
        if design.name.contains("224 mm") {
            table.near(&design.name, square, TABLE_224);
        }
    }
    vec![shops, table]
}

checks![
    explicit_route_has_the_slopes_of_the_formulas,
    shipped_sets_read_as_the_shops_say,
];
