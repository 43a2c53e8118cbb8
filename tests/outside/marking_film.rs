//! How long a marked band is: the parabola of the gap, by hand.
#![expect(
    clippy::disallowed_methods,
    reason = "an oracle must not go through the core's door to sine and cosine"
)]

use lashwright::contact::Placement;
use lashwright::gear::{Design, EaseOff};

use super::core::mesh;
use super::guide::{Row, Source, checks};
use super::oracle::flank::Gears;
use super::sets::{numbers, shipped};

/// Half length of a marked band along the tooth, a = √(2t/Δκ), with Δκ = cos α·|1/R1 − 1/R2| for the crown-gear pair.
/// Verified there by geometry; 1 %.
fn half_length_of_the_band() -> Vec<Row> {
    const GEOMETRY: Source = Source::Second("a = √(2t/Δκ), by hand");
    let mut curvature_row = Row::absolute(
        "Yardstick: relative curvature of the crown-gear pair along the tooth",
        GEOMETRY,
        5e-9,
        "1/mm",
    );
    let mut lengths = Row::relative(
        "Yardstick: half length of the marked band, three curvatures, film 6.35 µm",
        GEOMETRY,
        0.01,
    );
    let film = 0.00635;
    let crown = 20.0_f64.to_radians().cos() * (1.0 / 76.2 - 1.0 / 78.486_f64).abs();
    curvature_row.near("R 76.2 against 78.486 mm", crown, 3.5918e-4);
    for (curvature, printed) in [(crown, 5.946), (1.0 / 500.0, 2.520), (1.0 / 1000.0, 3.564)] {
        let a = (2.0 * film / curvature).sqrt();
        lengths.near(format_args!("{curvature:.4e} per mm"), a, printed);
    }
    vec![curvature_row, lengths]
}

/// A core set relieved only along the tooth: where the pairs follow one another at x = 0 without a break (here: the rolls
/// at which the middle of the tooth meets the pinion last longer than a pitch), the motion is exact as for the crown-gear
/// pair without blade relief, and the print is the band |x| < √(film / crown), which is the same formula with
/// Δκ = 2 CL/(b2/2)².
fn band_of_a_set_crowned_along_the_tooth() -> Vec<Row> {
    let mut band = Row::relative(
        "Half length of the print of three sets crowned along the tooth only, three films, both flanks",
        Source::Second("|x| = √(film / crown), the formula a = √(2t/Δκ)"),
        0.01,
    );
    let mut motion = Row::absolute(
        "Crowning along the tooth alone leaves the motion exact",
        Source::Law("contact stays on one section of the exact mate"),
        0.05,
        "µrad",
    );
    let mut root_two = Row::relative(
        "Twice the film, a print √2 times as long",
        Source::Law("the gap is a parabola"),
        0.01,
    );
    for ratio in ["3.00", "3.23", "3.42"] {
        let design = shipped(ratio);
        // Light crowning: the print of strong crowning is a little longer, because the gap's smallest place along the roll
        // moves away from the meeting where the relief is steep.
        let crown_um = 100.0;
        let crown = EaseOff {
            lengthwise_crown_um: crown_um,
            ..EaseOff::default()
        };
        let design = Design {
            ease_off_drive: crown,
            ease_off_coast: crown,
            ..design
        };
        let gears = Gears::new(&numbers(&design));
        for side in 0..2 {
            let rolls: Vec<f64> = (0..=400)
                .filter_map(|k| gears.pinion_point(side, 0.0, f64::from(k) / 200.0 - 1.0))
                .filter(|p| p.inside >= 0.0 && p.second > 0.0)
                .map(|p| p.roll)
                .collect();
            let (low, high) = rolls
                .iter()
                .fold((f64::MAX, f64::MIN), |(l, h), r| (l.min(*r), h.max(*r)));
            let lasts = (high - low) * f64::from(design.wheel_teeth) / std::f64::consts::TAU;
            println!(
                "{}: side {side}, the middle of the tooth lasts {lasts:.3} pitches",
                design.name
            );
            assert!(lasts > 1.03, "the set does not suit this check: {lasts}");
        }
        let mut halves = Vec::new();
        for film_um in [1.0, 2.0, 4.0] {
            let mesh = mesh(&design, &Placement::default(), film_um * 1e-3).expect("the set meshes");
            let want = (film_um / crown_um).sqrt();
            for flank in &mesh.flanks {
                let (toe, heel) = (flank.toe.expect("a print"), flank.heel.expect("a print"));
                let error = flank.transmission_error_urad.expect("motion");
                let place = format!("{}, film {film_um} µm", design.name);
                band.near(format_args!("{place}, heel"), heel, want);
                band.near(format_args!("{place}, toe"), toe, -want);
                motion.near(place, error, 0.0);
            }
            halves.push(mesh.flanks[0].heel.expect("a print"));
        }
        // Doubling the film lengthens the band by √2.
        for pair in halves.windows(2) {
            root_two.near(&design.name, pair[1] / pair[0], std::f64::consts::SQRT_2);
        }
    }
    vec![band, motion, root_two]
}

checks![half_length_of_the_band, band_of_a_set_crowned_along_the_tooth,];
