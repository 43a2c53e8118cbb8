//! Published blanks of bevel gears without offset, as far as our definitions cover them.
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

use super::guide::{Row, Source, checks};
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

/// A row of numbers that equal printed ones to half a unit of the last digit.
struct Printed(Row);

impl Printed {
    fn new(what: &'static str, source: Source) -> Self {
        Self(Row::absolute(what, source, 0.5 * 1.000001, "of the last digit"))
    }

    fn near(&mut self, name: &str, got: f64, printed: f64, digits: i32) {
        let scale: f64 = (0..digits).fold(1.0, |s, _| s * 10.0);
        println!("{name}: {got:.6}, printed {printed} with {digits} decimals");
        self.0.near(name, got * scale, printed * scale);
    }
}

/// Gear maker's technical handbook, spiral bevel table (from memory, high; recomputed).
fn handbook_spiral_bevel() -> Vec<Row> {
    let c = cones(20, 40, 120.0, 20.0, 35.0);
    let mut row = Printed::new(
        "Spiral bevel gears 20/40, m 3: pitch angles, outer cone distance",
        Source::Memory("gear maker's technical handbook, spiral bevel table"),
    );
    row.near("delta1", c.delta1_deg, 26.56505, 5);
    row.near("delta2", c.delta2_deg, 63.43495, 5);
    row.near("R_e", c.outer, 67.08204, 5);
    vec![row.0]
}

/// Mott, Machine Elements in Mechanical Design, 4th ed., example 8-6 (read); inches.
fn mott_straight_bevel() -> Vec<Row> {
    let c = cones(16, 48, 6.0, 1.0, 0.0);
    let mut row = Printed::new(
        "Straight bevel gears 16/48: ratio, pitch angles, cone distances, diameters",
        Source::Published("Mott, Machine Elements in Mechanical Design, 4th ed., example 8-6"),
    );
    row.near(
        "ratio",
        c.pitch.wheel_mean_radius_mm / c.pitch.pinion_mean_radius_mm,
        3.000,
        3,
    );
    row.near("gamma", c.delta1_deg, 18.43, 2);
    row.near("Gamma", c.delta2_deg, 71.57, 2);
    row.near("A_o", c.outer, 3.162, 3);
    row.near("A_m", c.mean, 2.662, 3);
    row.near("A_m/A_o", c.mean / c.outer, 0.842, 3);
    row.near("d", 2.0 * c.outer * c.pitch.pinion_pitch_angle_rad.sin(), 2.000, 3);
    row.near("D", 2.0 * c.outer * c.pitch.wheel_pitch_angle_rad.sin(), 6.000, 3);
    vec![row.0]
}

/// Gear maker's web article, table 1 (read; pitch angles and R_e recomputed).
fn web_article_spiral_bevel() -> Vec<Row> {
    let c = cones(16, 27, 27.0 * 4.25, 17.0, 35.0);
    let mut row = Printed::new(
        "Spiral bevel gears 16/27, m 4.25: pitch angles, outer cone distance",
        Source::Published("gear maker's web article, table 1"),
    );
    row.near("delta1", c.delta1_deg, 30.65, 2);
    row.near("delta2", c.delta2_deg, 59.35, 2);
    row.near("R_e", c.outer, 66.6925, 4);
    vec![row.0]
}

/// NASA TP-3096 (1991), table I, Handschuh & Litvin (from memory, high): mean cone distance 81.05 mm and b 25.4 mm give
/// a diametral pitch of 5.1405, reported 5.141; the pitch angles are printed to the minute (18°26′ = 18.4333°).
fn test_set_of_tp_3096() -> Vec<Row> {
    const SOURCE: Source = Source::Memory("NASA TP-3096 (1991), table I, Handschuh & Litvin");
    let sine = (36.0_f64 / 12.0).atan().sin();
    let d_e2 = 2.0 * sine * (81.05 + 12.7);
    let c = cones(12, 36, d_e2, 25.4, 35.0);
    let mut row = Printed::new("Test set 12/36: mean cone distance, diametral pitch", SOURCE);
    row.near("mean cone distance", c.mean, 81.05, 2);
    row.near("mean cone distance, in", c.mean / 25.4, 3.191, 3);
    row.near("diametral pitch", 36.0 * 25.4 / d_e2, 5.1405, 3);
    let mut angles = Row::absolute(
        "Test set 12/36: pitch angles, printed to the minute",
        SOURCE,
        0.5,
        "arcmin",
    );
    for (name, got, minutes) in [("delta1", c.delta1_deg, 18.4333), ("delta2", c.delta2_deg, 71.5666)] {
        angles.near(name, 60.0 * got, 60.0 * minutes);
    }
    vec![row.0, angles]
}

/// Form-cut set of Litvin, Fuentes, Fan, Handschuh 2002 (from memory, medium-high; recomputed).
fn form_cut_set() -> Vec<Row> {
    let c = cones(9, 33, 33.0 * 4.8338, 27.5, 32.0);
    let mut row = Printed::new(
        "Form-cut set 9/33: pitch angles, cone distances",
        Source::Memory("Litvin, Fuentes, Fan, Handschuh 2002"),
    );
    row.near("delta1", c.delta1_deg, 15.2551, 4);
    row.near("delta2", c.delta2_deg, 74.7449, 4);
    row.near("A_o", c.outer, 82.67, 2);
    row.near("A_m", c.mean, 68.92, 2);
    vec![row.0]
}

/// Gear maker's blog on face width (read): b about R_e/3 cuts best; the shipped sets stay below that.
fn face_width_of_shipped_sets() -> Vec<Row> {
    let mut row = Row::range(
        "Face width over outer cone distance of the shipped sets",
        Source::Published("gear maker's blog on bevel face width"),
        ..1.0 / 3.0,
        "",
    );
    for design in all() {
        let cones = PitchCones::solve(&PitchInput::from(&design)).expect("shipped sets have cones");
        let outer = cones.wheel_cone_distance_mm + design.wheel_face_width_mm / 2.0;
        let share = design.wheel_face_width_mm / outer;
        row.found(&design.name, share);
    }
    vec![row]
}

checks![
    handbook_spiral_bevel,
    mott_straight_bevel,
    web_article_spiral_bevel,
    test_set_of_tp_3096,
    form_cut_set,
    face_width_of_shipped_sets,
];
