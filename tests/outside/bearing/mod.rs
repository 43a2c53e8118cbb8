//! The bearing floor against published numbers, one module a source.
//!
//! Rows are named as in the list that they were collected in: T torque, S stiffness, P pairs, N nuts, H fits.

mod fit_tables;
mod friction_catalogue;
mod load_zone;
mod nut_handbooks;
mod oil_and_seal;
mod pair_solution;
mod parts;
mod rib_friction;
mod road_speed;
mod setting_manual;
mod stiffness_catalogue;
mod trade;

/// Compares, prints the deviation, and fails beyond `tolerance` (relative).
#[track_caller]
fn check(row: &str, got: f64, want: f64, tolerance: f64) {
    let deviation = (got - want) / want;
    println!(
        "{row}: {got:.6} for {want} (deviation {:+.4} %, allowed {} %)",
        100.0 * deviation,
        100.0 * tolerance
    );
    assert!(deviation.abs() <= tolerance, "{row}: {got}, source {want}");
}

/// As [`check`] for a number printed with few digits: half a unit of its last place is allowed besides the tolerance.
#[track_caller]
fn check_printed(row: &str, got: f64, want: f64, last_place: f64, tolerance: f64) {
    let deviation = got - want;
    let allowed = 0.5 * last_place + tolerance * want.abs();
    println!("{row}: {got:.6} for {want} (deviation {deviation:+.2e}, allowed {allowed:.2e})");
    assert!(deviation.abs() <= allowed, "{row}: {got}, source {want}");
}
