//! How long a marked band is (`checks/gears.md` 4).
#![expect(
    clippy::disallowed_methods,
    reason = "an oracle must not go through the core's door to sine and cosine"
)]

/// Half length of a marked band along the tooth, a = √(2t/Δκ), with Δκ = cos α·|1/R1 − 1/R2| for the crown-gear pair.
/// Verified there by geometry; 1 %.
#[test]
fn half_length_of_the_band() {
    let film = 0.00635;
    let crown = 20.0_f64.to_radians().cos() * (1.0 / 76.2 - 1.0 / 78.486_f64).abs();
    println!("relative curvature {crown:.4e} per mm, printed 3.5918e-4");
    assert!((crown - 3.5918e-4).abs() < 5e-9, "{crown}");
    for (curvature, printed) in [(crown, 5.946), (1.0 / 500.0, 2.520), (1.0 / 1000.0, 3.564)] {
        let a = (2.0 * film / curvature).sqrt();
        println!("half length {a:.4} mm, printed {printed}");
        assert!((a - printed).abs() <= 0.01 * printed, "{a} {printed}");
    }
}
