//! Axial approach: NSK catalogue 15.1 (2), Harris/Palmgren, ISO/TS 16281, and the tables of catalogue parts.
#![expect(
    clippy::disallowed_methods,
    reason = "published formulas are computed a second time without the core's door"
)]

use lashwright::bearing::stiffness::{AxialApproach, line_contact_approach_mm, roller_approach_mm};
use lashwright::bearing::{rating_one_million_n, rating_ratio_k, setting};
use lashwright::quantity::degrees;

use super::super::guide::{Row, Source, checks};
use super::parts::{ALL, HM89449, HM803146, HM804846, LM501349, LM603049, M88048, M802048};

const FORMULA: Source = Source::Second("formula of the NSK catalogue, 15.1 (2), in Python; roller lengths derived");

/// The bearing's constant is twice that of one line contact.
fn s1_two_line_contacts_make_the_catalogue_constant() -> Vec<Row> {
    let mut row = Row::relative(
        "The catalogue's constant 7.70e-5 is that of two line contacts, 2 × 3.84e-5",
        Source::Published("NSK catalogue, 15.1 (2), against Harris/Palmgren (from memory)"),
        0.003,
    );
    // With one roller and a contact angle of 90° the bearing is one roller between two plates.
    let mut bearing = M88048.with_rollers(1, 10.0);
    bearing.thrust_factor_y = 0.0;
    let plates = AxialApproach::of(&bearing).approach_mm(1000.0);
    row.near(
        "one roller between plates",
        plates,
        2.0 * line_contact_approach_mm(1000.0, 10.0),
    );
    vec![row]
}

/// Palmgren inverted, two contacts, against ISO.
fn s2_iso_is_softer() -> Vec<Row> {
    let mut constants = Row::relative(
        "Yardstick: Palmgren's constant inverted, and ISO/TS 16281's 35 948 over it",
        Source::Second("constants of both, in Python"),
        1e-4,
    );
    let mut softer = Row::relative(
        "ISO/TS 16281 is softer than Palmgren",
        Source::Second("constants of both, in Python"),
        5e-4,
    );
    let ratio = 2.0 * line_contact_approach_mm(1000.0, 10.0) / roller_approach_mm(1000.0, 10.0);
    let palmgren = (1.0 / (2.0 * 3.84e-5_f64)).powf(10.0 / 9.0);
    constants.near("Palmgren", palmgren, 37310.0);
    constants.near("ratio", 35948.0 / palmgren, 0.9635);
    softer.near("1000 N on 10 mm", 1.0 / ratio, 1.034);
    vec![constants, softer]
}

/// 1000 N on 10 mm.
fn s3_thousand_newtons_on_ten_millimetres() -> Vec<Row> {
    let mut row = Row::relative(
        "Approach of 1000 N on 10 mm: one contact, two, ISO/TS 16281",
        Source::Second("Palmgren's formula and DIN 26281, in Python"),
        0.001,
    );
    row.near("one contact, µm", 1e3 * line_contact_approach_mm(1000.0, 10.0), 3.050);
    row.near("two contacts, µm", 2e3 * line_contact_approach_mm(1000.0, 10.0), 6.100);
    row.near("ISO, µm", 1e3 * roller_approach_mm(1000.0, 10.0), 6.308);
    vec![row]
}

/// A point read off a maker's displacement chart in a trade journal (Power Transmission Engineering, 2015):
/// HM804846, 20 kN, 27.4 µm. Roller numbers are not published, so three likely ones are tried.
fn s7_published_chart_point() -> Vec<Row> {
    let mut again = Row::relative(
        "Approach of HM804846 at 20 kN with 15, 17 and 20 rollers",
        FORMULA,
        0.005,
    );
    let mut chart = Row::relative(
        "The same against 27.4 µm of a maker's chart (roller number not published)",
        Source::Published("Power Transmission Engineering, March 2015"),
        0.12,
    );
    for (rollers, length, want) in [(15, 23.7, 30.6), (17, 23.1, 27.9), (20, 22.5, 24.6)] {
        let got = 1e3 * AxialApproach::of(&HM804846.with_rollers(rollers, length)).approach_mm(20_000.0);
        again.near(format_args!("Z={rollers}, µm"), got, want);
        chart.near(format_args!("Z={rollers}, µm"), got, 27.4);
    }
    vec![again, chart]
}

/// 10 µm of radial ring growth on the same part move the setting by 27.4 µm.
fn s8_radial_to_axial() -> Vec<Row> {
    let mut row = Row::relative(
        "Setting of HM804846 for 10 µm of radial growth",
        Source::Published("Power Transmission Engineering, March 2015"),
        0.002,
    );
    row.near("µm", 10.0 * setting::axial_per_radial(HM804846.k), 27.44);
    vec![row]
}

/// Y/K = 1.028 on real parts, and the contact angle from Y is that of the catalogue.
fn s9_thrust_factor_against_rating_ratio() -> Vec<Row> {
    let catalogue = Source::Published("Timken Tapered Roller Bearing Catalog");
    let mut ratio = Row::relative("Yardstick: Y over K of eight parts is 1.028", catalogue, 0.007);
    let mut rating = Row::relative("K from Y, eight parts", catalogue, 0.007);
    let mut angles = Row::relative(
        "Contact angle from Y against that from K, eight parts",
        catalogue,
        0.005,
    );
    for part in ALL {
        let angle = part.bearing().contact_angle_rad();
        ratio.near(part.name, part.y / part.k, 1.028);
        rating.near(part.name, rating_ratio_k(angle), part.k);
        angles.near(part.name, degrees(angle), part.contact_angle_deg);
    }
    vec![ratio, rating, angles]
}

/// Rating for one million from that for ninety million revolutions.
fn s10_rating_conversion() -> Vec<Row> {
    let mut row = Row::relative(
        "Rating for one million revolutions from that for ninety, M88048",
        Source::Published("Timken Tapered Roller Bearing Catalog"),
        0.002,
    );
    row.near("C1, N", rating_one_million_n(19_800.0), 76_300.0);
    vec![row]
}

/// Approach of seven parts at five forces, and stiffness at 5 kN (recomputed from the catalogue formula with 17
/// rollers; the derived roller lengths carry three digits).
fn approach_table() -> Vec<Row> {
    let mut row = Row::relative(
        "Axial approach of six parts at five forces, and stiffness at 5 kN",
        FORMULA,
        0.005,
    );
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
            row.near(
                format_args!("δ_a {} {force} N, µm", part.name),
                1e3 * approach.approach_mm(force),
                want,
            );
        }
        row.near(
            format_args!("k {}, N/µm", part.name),
            1e-3 * approach.stiffness_n_per_mm(5e3),
            stiffness,
        );
    }
    vec![row]
}

checks![
    s1_two_line_contacts_make_the_catalogue_constant,
    s2_iso_is_softer,
    s3_thousand_newtons_on_ten_millimetres,
    s7_published_chart_point,
    s8_radial_to_axial,
    s9_thrust_factor_against_rating_ratio,
    s10_rating_conversion,
    approach_table,
];
