//! An independent route through the whole contact: explicit pinion points against the cutter's cone.
//!
//! The core solves for the envelope from the wheel's side. Here the pinion's flank is a set of points, each the partner
//! of a wheel point by the closed-form roots of the equation of meshing, eased off, moved by the placement, and measured
//! against the cone. No code is shared. Bound: 0.2 µrad and 0.2 µm (design of the program).

use lashwright::contact::Placement;

use super::core::mesh;
use super::core_surfaces::{gap_map_um, geometry};
use super::guide::{Row, Source, checks};
use super::oracle::contact::{Motion, Moved, edge_shares, lash, least_gaps, pattern};
use super::oracle::flank::Gears;
use super::sets::{all, numbers, shipped};

/// Numbers from −1 to 1, the same in every run (a linear congruential generator; Knuth, TAOCP vol. 2, 3.3.4, line 26).
struct Spread(u64);

impl Spread {
    fn next(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        2.0 * ((self.0 >> 11) as f64 / (1_u64 << 53) as f64) - 1.0
    }
}

/// Ten placements as a workshop might leave them.
pub(crate) fn placements(seed: u64) -> Vec<Moved> {
    let mut spread = Spread(seed);
    (0..10)
        .map(|_| Moved {
            pinion_axial: 0.12 * spread.next(),
            wheel_axial: 0.20 * spread.next(),
            offset: 0.08 * spread.next(),
            shaft_angle: 0.001 * spread.next(),
        })
        .collect()
}

pub(crate) fn placement(moved: &Moved) -> Placement {
    Placement {
        pinion_axial_mm: moved.pinion_axial,
        wheel_axial_mm: moved.wheel_axial,
        offset_mm: moved.offset,
        shaft_angle_rad: moved.shaft_angle,
    }
}

pub(crate) const FILM_MM: f64 = 0.008;

pub(crate) const EXPLICIT: Source = Source::Second("explicit pinion points against the cutter's cone");

/// Four sets: both families, with and without offset.
pub(crate) const RATIOS: [&str; 4] = ["3.00", "3.42", "3.73", "4.56"];

/// The numbers of the `geometry` object, all sets.
fn geometry_of_all_sets() -> Vec<Row> {
    let mut numbers_row = Row::absolute(
        "Geometry of all shipped sets, 16 numbers each",
        Source::Second("pitch cones by plain vectors, blank and slot by hand"),
        1e-8,
        "° or mm",
    )
    .in_bulk();
    let mut limit = Row::stated(
        "A limit radius where both routes have one, and nowhere else",
        EXPLICIT,
        "as stated",
    );
    for design in all() {
        let gears = Gears::new(&numbers(&design));
        let got = geometry(&design).expect("shipped sets have a geometry");
        let (p, b) = (&gears.pitch, &gears.blank);
        let rho = p.rho_lim;
        limit.is(&design.name, got.limit_radius_mm.is_some() == rho.is_some());
        for (name, got, want) in [
            ("pinion pitch angle", got.pinion_pitch_angle_deg, p.delta1.to_degrees()),
            ("wheel pitch angle", got.wheel_pitch_angle_deg, p.delta2.to_degrees()),
            ("pinion spiral angle", got.pinion_spiral_angle_deg, p.beta1.to_degrees()),
            ("wheel spiral angle", got.wheel_spiral_angle_deg, p.beta2.to_degrees()),
            ("offset angle", got.offset_angle_pitch_plane_deg, p.zeta_mp.to_degrees()),
            (
                "limit pressure angle",
                got.limit_pressure_angle_deg,
                p.alpha_lim.to_degrees(),
            ),
            ("limit radius", got.limit_radius_mm.unwrap_or(0.0), rho.unwrap_or(0.0)),
            ("module", got.mean_normal_module_mm, p.m_mn[0]),
            ("wheel mean radius", got.wheel_mean_radius_mm, p.r_m2),
            ("pinion mean radius", got.pinion_mean_radius_mm, p.r_m1),
            ("wheel face angle", got.wheel_face_angle_deg, b.face_angle2.to_degrees()),
            ("wheel root angle", got.wheel_root_angle_deg, b.root_angle2.to_degrees()),
            (
                "pinion face angle",
                got.pinion_face_angle_deg,
                b.face_angle1().to_degrees(),
            ),
            ("point width", got.point_width_mm, gears.point_width),
            (
                "blade angle, drive",
                got.blade_angle_drive_deg,
                gears.cones[0].blade.to_degrees(),
            ),
            (
                "blade angle, coast",
                got.blade_angle_coast_deg,
                gears.cones[1].blade.to_degrees(),
            ),
        ] {
            numbers_row.near(format_args!("{}: {name}", design.name), got, want);
        }
    }
    vec![numbers_row, limit]
}

/// Transmission error and lash at ten placements of four sets.
fn motion_and_lash_at_random_placements() -> Vec<Row> {
    let mut motion_row = Row::absolute(
        "Transmission error of four sets at ten random placements, both flanks",
        EXPLICIT,
        0.2,
        "µrad",
    );
    let mut lash_row = Row::absolute(
        "Least, mean and largest lash of four sets at ten random placements",
        EXPLICIT,
        0.2,
        "µm",
    );
    for (k, ratio) in RATIOS.iter().enumerate() {
        let design = shipped(ratio);
        let gears = Gears::new(&numbers(&design));
        for moved in placements(k as u64 + 1) {
            let got = mesh(&design, &placement(&moved), FILM_MM).expect("a shipped set meshes");
            let motions = [0, 1].map(|side| Motion::new(&gears, side, moved, 2, 12));
            for (side, motion) in motions.iter().enumerate() {
                let want = 1e6 * motion.transmission_error().expect("contact at every roll");
                let found = got.flanks[side].transmission_error_urad.expect("contact at every roll");
                motion_row.near(format_args!("{} {moved:?} side {side}", design.name), found, want);
            }
            let want = lash(&motions[0], &motions[1]).expect("contact on both flanks");
            for (found, want) in got.lash_mm.expect("contact on both flanks").into_iter().zip(want) {
                lash_row.near(format_args!("{} {moved:?}", design.name), 1e3 * found, 1e3 * want);
            }
        }
    }
    vec![motion_row, lash_row]
}

/// Smallest gap over the roll at places of the flank, the wheel held by whichever pair touches: what the print is made
/// of. Bound 0.2 µm where the gap is under 30 µm.
fn gaps_of_wheel_points() -> Vec<Row> {
    let mut row = Row::absolute(
        "Least gap over the roll at places of the flank, where under 30 µm, four sets, both flanks",
        EXPLICIT,
        0.2,
        "µm",
    )
    .in_bulk();
    let mut compared = 0;
    for (k, ratio) in RATIOS.iter().enumerate() {
        let design = shipped(ratio);
        let gears = Gears::new(&numbers(&design));
        let moved = placements(k as u64 + 31)[0];
        for side in 0..2 {
            let map = gap_map_um(&design, &placement(&moved), side).expect("a shipped set meshes");
            let chosen: Vec<([f64; 2], f64)> = map
                .into_iter()
                .enumerate()
                .filter(|(k, (_, gap))| k % 7 == 0 && *gap < 30.0)
                .map(|(_, p)| p)
                .collect();
            let places: Vec<[f64; 2]> = chosen.iter().map(|(at, _)| *at).collect();
            let motion = Motion::new(&gears, side, moved, 2, 12);
            for ((at, found), want) in chosen.iter().zip(least_gaps(&motion, &places)) {
                let want = 1e3 * want.expect("a partner where the core finds one");
                compared += 1;
                row.near(format_args!("{} side {side} at {at:?}", design.name), *found, want);
            }
        }
    }
    assert!(compared > 300, "the comparison must compare: {compared}");
    vec![row]
}

/// Transmission error and lash of every shipped set as designed.
fn motion_and_lash_of_all_sets_as_designed() -> Vec<Row> {
    let mut motion_row = Row::absolute(
        "Transmission error of all shipped sets as designed, both flanks",
        EXPLICIT,
        0.2,
        "µrad",
    );
    let mut lash_row = Row::absolute(
        "Least, mean and largest lash of all shipped sets as designed",
        EXPLICIT,
        2e-4,
        "mm",
    );
    for design in all() {
        let gears = Gears::new(&numbers(&design));
        let got = mesh(&design, &Placement::default(), FILM_MM).expect("a shipped set meshes");
        let motions = [0, 1].map(|side| Motion::new(&gears, side, Moved::default(), 2, 12));
        let want = lash(&motions[0], &motions[1]).expect("contact on both flanks");
        let found = got.lash_mm.expect("contact on both flanks");
        for (side, motion) in motions.iter().enumerate() {
            let want = 1e6 * motion.transmission_error().expect("contact at every roll");
            let found = got.flanks[side].transmission_error_urad.expect("contact at every roll");
            motion_row.near(format_args!("{} side {side}", design.name), found, want);
        }
        for (found, want) in found.into_iter().zip(want) {
            lash_row.near(&design.name, found, want);
        }
    }
    vec![motion_row, lash_row]
}

/// Print: area, centroid, extents, by the gap of wheel points on a grid of its own. The bounds are those of the
/// oracle's straight interpolation between the points of its grid, a fifth of a cell: 0.004, and 0.012 for the ends.
fn prints_of_two_sets() -> Vec<Row> {
    let mut area = Row::absolute(
        "Area of the print over that of the flank, two sets, two placements, both flanks",
        EXPLICIT,
        0.004,
        "",
    );
    let mut centroids = Row::absolute(
        "Centroid of these prints, in half the face width and half the depth",
        EXPLICIT,
        0.004,
        "",
    );
    let mut ends = Row::absolute(
        "Toe, heel, root and top ends of these prints, likewise",
        EXPLICIT,
        0.012,
        "",
    );
    for (k, ratio) in ["3.73", "4.56"].into_iter().enumerate() {
        let design = shipped(ratio);
        let gears = Gears::new(&numbers(&design));
        for moved in [Moved::default(), placements(k as u64 + 11)[0]] {
            let got = mesh(&design, &placement(&moved), FILM_MM).expect("a shipped set meshes");
            for side in 0..2 {
                let want = pattern(&Motion::new(&gears, side, moved, 2, 12), FILM_MM, 64).expect("a print");
                let flank = &got.flanks[side];
                let centroid = flank.centroid.expect("a print");
                let extents = [flank.toe, flank.heel, flank.root, flank.top].map(|e| e.expect("a print"));
                let place = format!("{} {moved:?} side {side}", design.name);
                area.near(&place, flank.area_fraction, want.area);
                for (got, want) in centroid.into_iter().zip(want.centroid) {
                    centroids.near(&place, got, want);
                }
                for (got, want) in extents.into_iter().zip(want.extents) {
                    ends.near(&place, got, want);
                }
            }
        }
    }
    vec![area, centroids, ends]
}

/// Mirror: a left-hand set with the offset on the other side, moved the other way along y, does
/// the same.
fn mirrored_set_does_the_same() -> Vec<Row> {
    const MIRROR: Source = Source::Second("explicit pinion points of the mirrored set, moved the other way along y");
    let mut motion_row = Row::absolute(
        "Transmission error of four sets and of their mirror images, both flanks",
        MIRROR,
        0.2,
        "µrad",
    );
    let mut lash_row = Row::absolute("Lash of four sets and of their mirror images", MIRROR, 2e-4, "mm");
    for (k, ratio) in RATIOS.iter().enumerate() {
        let design = shipped(ratio);
        let mirrored = Gears::new(&numbers(&design)).mirrored();
        let moved = placements(k as u64 + 21)[0];
        let got = mesh(&design, &placement(&moved), FILM_MM).expect("a shipped set meshes");
        let turned = Moved {
            offset: -moved.offset,
            ..moved
        };
        let motions = [0, 1].map(|side| Motion::new(&mirrored, side, turned, 2, 12));
        for (side, motion) in motions.iter().enumerate() {
            let want = 1e6 * motion.transmission_error().expect("contact at every roll");
            let found = got.flanks[side].transmission_error_urad.expect("contact at every roll");
            motion_row.near(format_args!("{} side {side}", design.name), found, want);
        }
        let want = lash(&motions[0], &motions[1]).expect("contact on both flanks");
        for (found, want) in got.lash_mm.expect("contact on both flanks").into_iter().zip(want) {
            lash_row.near(&design.name, found, want);
        }
    }
    vec![motion_row, lash_row]
}

/// Without ease-off the pinion is the wheel's exact mate: no transmission error where the flank is regular.
fn conjugate_flanks_run_true() -> Vec<Row> {
    const MATE: Source = Source::Law("the pinion is then the wheel's exact mate");
    let mut motion_row = Row::absolute(
        "Without ease-off there is no transmission error, all shipped sets, both flanks",
        MATE,
        0.05,
        "µrad",
    );
    let mut lash_row = Row::absolute(
        "Without ease-off the lash is the designed one everywhere",
        MATE,
        1e-5,
        "mm",
    );
    for design in all() {
        let bare = lashwright::gear::Design {
            ease_off_drive: lashwright::gear::EaseOff::default(),
            ease_off_coast: lashwright::gear::EaseOff::default(),
            ..design
        };
        let got = mesh(&bare, &Placement::default(), FILM_MM).expect("a shipped set meshes");
        for flank in &got.flanks {
            let error = flank.transmission_error_urad.expect("contact at every roll");
            motion_row.near(&bare.name, error, 0.0);
        }
        let [low, mean, high] = got.lash_mm.expect("contact on both flanks");
        for value in [low, mean, high] {
            lash_row.near(&bare.name, value, bare.lash_mm);
        }
    }
    vec![motion_row, lash_row]
}

/// Where edges decide: share of the roll on an edge of the wheel and on the pinion's tip, transmission error and lash, at
/// placements that drive the touchy sets to their edges. The curves have corners there, so that both routes sample
/// them more coarsely; bounds 1 µrad, 0.2 µm, and 3 % of the roll.
fn edges_at_far_placements() -> Vec<Row> {
    let mut shares = Row::absolute(
        "Share of the roll on an edge of the wheel and on the pinion's tip, touchy sets far from their place",
        EXPLICIT,
        0.03,
        "of the roll",
    );
    let mut motion_row = Row::absolute("Transmission error there", EXPLICIT, 1.0, "µrad");
    let mut lash_row = Row::absolute("Lash there", EXPLICIT, 2e-4, "mm");
    for (ratio, pinion_axial) in [("4.11", 0.15), ("4.11", -0.15), ("4.88", 0.3), ("4.88", -0.3)] {
        let design = shipped(ratio);
        let gears = Gears::new(&numbers(&design));
        let moved = Moved {
            pinion_axial,
            ..Moved::default()
        };
        let got = mesh(&design, &placement(&moved), FILM_MM).expect("a shipped set meshes");
        let motions = [0, 1].map(|side| Motion::new(&gears, side, moved, 2, 48));
        for (side, motion) in motions.iter().enumerate() {
            let [wheel, tip] = edge_shares(motion, 100).expect("contact at every roll");
            let flank = &got.flanks[side];
            let (found_wheel, found_tip) = (
                flank.edge_wheel.expect("a share"),
                flank.edge_pinion_tip.expect("a share"),
            );
            let want = 1e6 * motion.transmission_error().expect("contact at every roll");
            let found = flank.transmission_error_urad.expect("contact at every roll");
            let place = format!("{} P {pinion_axial:+} side {side}", design.name);
            shares.near(format_args!("{place}, wheel's edge"), found_wheel, wheel);
            shares.near(format_args!("{place}, pinion's tip"), found_tip, tip);
            motion_row.near(place, found, want);
        }
        let want = lash(&motions[0], &motions[1]).expect("contact on both flanks");
        for (found, want) in got.lash_mm.expect("contact on both flanks").into_iter().zip(want) {
            lash_row.near(format_args!("{} P {pinion_axial:+}", design.name), found, want);
        }
    }
    vec![shares, motion_row, lash_row]
}

checks![
    geometry_of_all_sets,
    motion_and_lash_at_random_placements,
    gaps_of_wheel_points,
    motion_and_lash_of_all_sets_as_designed,
    prints_of_two_sets,
    mirrored_set_does_the_same,
    conjugate_flanks_run_true,
    edges_at_far_placements,
];
