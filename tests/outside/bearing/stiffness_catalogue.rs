//! Axial approach: NSK catalogue 15.1 (2), Harris/Palmgren, ISO/TS 16281, and the tables of catalogue parts: rows S1 to
//! S3, S7 to S10.
#![expect(
    clippy::disallowed_methods,
    reason = "published formulas are computed a second time without the core's door"
)]

use lashwright::bearing::stiffness::{AxialApproach, line_contact_approach_mm, roller_approach_mm};
use lashwright::bearing::{rating_one_million_n, rating_ratio_k, setting};
use lashwright::quantity::degrees;

use super::check;
use super::parts::{ALL, HM89449, HM803146, HM804846, LM501349, LM603049, M88048, M802048};

/// S1: the bearing's constant is twice that of one line contact.
#[test]
fn s1_two_line_contacts_make_the_catalogue_constant() {
    // With one roller and a contact angle of 90° the bearing is one roller between two plates.
    let mut bearing = M88048.with_rollers(1, 10.0);
    bearing.thrust_factor_y = 0.0;
    let plates = AxialApproach::of(&bearing).approach_mm(1000.0);
    check(
        "S1 NSK 7.70e-5 / Palmgren 2 × 3.84e-5",
        plates,
        2.0 * line_contact_approach_mm(1000.0, 10.0),
        0.003,
    );
}

/// S2: Palmgren inverted, two contacts, against ISO.
#[test]
fn s2_iso_is_softer() {
    let ratio = 2.0 * line_contact_approach_mm(1000.0, 10.0) / roller_approach_mm(1000.0, 10.0);
    let palmgren = (1.0 / (2.0 * 3.84e-5_f64)).powf(10.0 / 9.0);
    check("S2 Palmgren constant", palmgren, 37310.0, 1e-4);
    check("S2 ratio of constants", 35948.0 / palmgren, 0.9635, 1e-4);
    check("S2 ISO softer by", 1.0 / ratio, 1.034, 5e-4);
}

/// S3: 1000 N on 10 mm.
#[test]
fn s3_thousand_newtons_on_ten_millimetres() {
    check(
        "S3 one contact, µm",
        1e3 * line_contact_approach_mm(1000.0, 10.0),
        3.050,
        0.001,
    );
    check(
        "S3 two contacts, µm",
        2e3 * line_contact_approach_mm(1000.0, 10.0),
        6.100,
        0.001,
    );
    check("S3 ISO, µm", 1e3 * roller_approach_mm(1000.0, 10.0), 6.308, 0.001);
}

/// S7: a point read off a maker's displacement chart in a trade journal (Power Transmission Engineering, 2015):
/// HM804846, 20 kN, 27.4 µm. Roller numbers are not published, so three likely ones are tried.
#[test]
fn s7_published_chart_point() {
    for (rollers, length, want) in [(15, 23.7, 30.6), (17, 23.1, 27.9), (20, 22.5, 24.6)] {
        let got = 1e3 * AxialApproach::of(&HM804846.with_rollers(rollers, length)).approach_mm(20_000.0);
        check(&format!("S7 Z={rollers} recomputed"), got, want, 0.005);
        check(&format!("S7 Z={rollers} chart"), got, 27.4, 0.12);
    }
}

/// S8: 10 µm of radial ring growth on the same part move the setting by 27.4 µm.
#[test]
fn s8_radial_to_axial() {
    check("S8", 10.0 * setting::axial_per_radial(HM804846.k), 27.44, 0.002);
}

/// S9: Y/K = 1.028 on real parts, and the contact angle from Y is that of the catalogue.
#[test]
fn s9_thrust_factor_against_rating_ratio() {
    for part in ALL {
        let angle = part.bearing().contact_angle_rad();
        check(&format!("S9 {} Y/K", part.name), part.y / part.k, 1.028, 0.007);
        check(
            &format!("S9 {} K from Y", part.name),
            rating_ratio_k(angle),
            part.k,
            0.007,
        );
        check(
            &format!("S9 {} α from Y", part.name),
            degrees(angle),
            part.contact_angle_deg,
            0.005,
        );
    }
}

/// S10: rating for one million from that for ninety million revolutions.
#[test]
fn s10_rating_conversion() {
    check("S10 M88048 C1", rating_one_million_n(19_800.0), 76_300.0, 0.002);
}

/// Approach of seven parts at five forces, and stiffness at 5 kN (recomputed from the catalogue formula with 17
/// rollers; the derived roller lengths carry three digits).
#[test]
fn approach_table() {
    let rows = [
        (M88048, [4.70, 10.72, 16.37, 20.01, 37.34], 518.0),
        (M802048, [4.10, 9.35, 14.27, 17.44, 32.55], 594.0),
        (HM89449, [3.62, 8.26, 12.61, 15.41, 28.76], 673.0),
        (HM803146, [3.49, 7.96, 12.15, 14.85, 27.71], 698.0),
        (LM501349, [9.34, 21.31, 32.53, 39.77, 74.21], 261.0),
        (LM603049, [8.47, 19.32, 29.49, 36.05, 67.27], 288.0),
    ];
    for (part, want, stiffness) in rows {
        let approach = AxialApproach::of(&part.bearing());
        for (force, want) in [2e3, 5e3, 8e3, 10e3, 20e3].into_iter().zip(want) {
            check(
                &format!("δ_a {} {force} N", part.name),
                1e3 * approach.approach_mm(force),
                want,
                0.005,
            );
        }
        check(
            &format!("k {}", part.name),
            1e-3 * approach.stiffness_n_per_mm(5e3),
            stiffness,
            0.005,
        );
    }
}
