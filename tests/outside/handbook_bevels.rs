//! Published blanks of bevel gears without offset (`checks/gears.md` 1.4), as far as our definitions cover them.
//!
//! Covered: pitch angles, outer and mean cone distance, diameters, of every row that prints them.
//! Not covered, because the program's blank is defined otherwise (design of the file format, not these handbooks):
//! - addendum, dedendum, and their angles of the two long-and-short-addendum tables: theirs are laid down at the outer
//!   end in parts of the outer transverse module (Σh_a = 1.700 m or 2.000 m, h = 1.888 m or 2.188 m) and taper to the
//!   apex; ours at the mean point in parts of the mean normal module, with the taper of a slot of constant width;
//! - from those, face and root angles, tip diameters, and crown-to-apex distances (d_a, X, X_b, d_i);
//! - the straight bevel tables' tooth numbers otherwise fall under the same remark (their pitch angles are the first
//!   row's);
//! - the face cone of the 16/27 example and the addendum and dedendum angles of the 12/36 test set, likewise;
//! - F_nom and F_max of the straight bevel example: recommendations for a face width, which is an input here.
#![expect(
    clippy::disallowed_methods,
    reason = "an oracle must not go through the core's door to sine and cosine"
)]

use lashwright::gear::{PitchCones, PitchInput};

use super::sets::all;

struct Cones {
    delta1_deg: f64,
    delta2_deg: f64,
    outer: f64,
    mean: f64,
    pitch: PitchCones,
}

fn cones(z1: u32, z2: u32, d_e2: f64, b: f64, spiral_deg: f64) -> Cones {
    let cones = PitchCones::solve(&PitchInput {
        pinion_teeth: z1,
        wheel_teeth: z2,
        offset_mm: 0.0,
        wheel_outer_pitch_diameter_mm: d_e2,
        wheel_face_width_mm: b,
        pinion_spiral_angle_rad: spiral_deg.to_radians(),
        limit_radius_mm: 100.0,
    })
    .expect("bevel gears have cones");
    Cones {
        delta1_deg: cones.pinion_pitch_angle_rad.to_degrees(),
        delta2_deg: cones.wheel_pitch_angle_rad.to_degrees(),
        outer: cones.wheel_cone_distance_mm + b / 2.0,
        mean: cones.wheel_cone_distance_mm,
        pitch: cones,
    }
}

/// `got` equals `printed` to half a unit of its last digit.
fn printed(name: &str, got: f64, printed: f64, digits: i32) {
    println!("{name}: {got:.6}, printed {printed} (deviation {:+.1e})", got - printed);
    let half: f64 = (0..digits).fold(0.5, |h, _| h / 10.0);
    assert!(
        (got - printed).abs() <= half * 1.000001,
        "{name}: {got}, printed {printed}"
    );
}

/// Gear maker's technical handbook, spiral bevel table (from memory, high; recomputed).
#[test]
fn handbook_spiral_bevel() {
    let c = cones(20, 40, 120.0, 20.0, 35.0);
    printed("delta1", c.delta1_deg, 26.56505, 5);
    printed("delta2", c.delta2_deg, 63.43495, 5);
    printed("R_e", c.outer, 67.08204, 5);
}

/// Mott, Machine Elements in Mechanical Design, 4th ed., example 8-6 [13] (read); inches.
#[test]
fn mott_straight_bevel() {
    let c = cones(16, 48, 6.0, 1.0, 0.0);
    printed(
        "ratio",
        c.pitch.wheel_mean_radius_mm / c.pitch.pinion_mean_radius_mm,
        3.000,
        3,
    );
    printed("gamma", c.delta1_deg, 18.43, 2);
    printed("Gamma", c.delta2_deg, 71.57, 2);
    printed("A_o", c.outer, 3.162, 3);
    printed("A_m", c.mean, 2.662, 3);
    printed("A_m/A_o", c.mean / c.outer, 0.842, 3);
    printed("d", 2.0 * c.outer * c.pitch.pinion_pitch_angle_rad.sin(), 2.000, 3);
    printed("D", 2.0 * c.outer * c.pitch.wheel_pitch_angle_rad.sin(), 6.000, 3);
}

/// Gear maker's web article, table 1 [14] (read; pitch angles and R_e recomputed).
#[test]
fn web_article_spiral_bevel() {
    let c = cones(16, 27, 27.0 * 4.25, 17.0, 35.0);
    printed("delta1", c.delta1_deg, 30.65, 2);
    printed("delta2", c.delta2_deg, 59.35, 2);
    printed("R_e", c.outer, 66.6925, 4);
}

/// NASA TP-3096 (1991), table I, Handschuh & Litvin (from memory, high): mean cone distance 81.05 mm and b 25.4 mm give
/// a diametral pitch of 5.1405, reported 5.141; the pitch angles are printed to the minute (18°26′ = 18.4333°).
#[test]
fn test_set_of_tp_3096() {
    let sine = (36.0_f64 / 12.0).atan().sin();
    let d_e2 = 2.0 * sine * (81.05 + 12.7);
    let c = cones(12, 36, d_e2, 25.4, 35.0);
    printed("mean cone distance", c.mean, 81.05, 2);
    printed("mean cone distance, in", c.mean / 25.4, 3.191, 3);
    printed("diametral pitch", 36.0 * 25.4 / d_e2, 5.1405, 3);
    for (name, got, minutes) in [("delta1", c.delta1_deg, 18.4333), ("delta2", c.delta2_deg, 71.5666)] {
        println!("{name}: {got:.5}, printed {minutes}");
        assert!((got - minutes).abs() <= 0.5 / 60.0, "{name}: {got}, printed {minutes}");
    }
}

/// Form-cut set of Litvin, Fuentes, Fan, Handschuh 2002 (from memory, medium-high; recomputed).
#[test]
fn form_cut_set() {
    let c = cones(9, 33, 33.0 * 4.8338, 27.5, 32.0);
    printed("delta1", c.delta1_deg, 15.2551, 4);
    printed("delta2", c.delta2_deg, 74.7449, 4);
    printed("A_o", c.outer, 82.67, 2);
    printed("A_m", c.mean, 68.92, 2);
}

/// Gear maker's blog on face width [15] (read): b about R_e/3 cuts best; the shipped sets stay below that.
#[test]
fn face_width_of_shipped_sets() {
    for design in all() {
        let cones = PitchCones::solve(&PitchInput::from(&design)).expect("shipped sets have cones");
        let outer = cones.wheel_cone_distance_mm + design.wheel_face_width_mm / 2.0;
        let share = design.wheel_face_width_mm / outer;
        println!("{}: b/R_e {share:.3}", design.name);
        assert!(share < 1.0 / 3.0, "{}: {share}", design.name);
    }
}
