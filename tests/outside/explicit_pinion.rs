//! An independent route through the whole contact: explicit pinion points against the cutter's cone.
//!
//! The core solves for the envelope from the wheel's side. Here the pinion's flank is a set of points, each the partner
//! of a wheel point by the closed-form roots of the equation of meshing, eased off, moved by the placement, and measured
//! against the cone. No code is shared. Bound: 0.2 µrad and 0.2 µm (design of the program).

use lashwright::contact::Placement;

use super::core::mesh;
use super::core_surfaces::{gap_map_um, geometry};
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
fn placements(seed: u64) -> Vec<Moved> {
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

const FILM_MM: f64 = 0.008;

/// Four sets: both families, with and without offset.
const RATIOS: [&str; 4] = ["3.00", "3.42", "3.73", "4.56"];

/// The numbers of the `geometry` object, all sets.
#[test]
fn geometry_of_all_sets() {
    let mut worst = 0.0_f64;
    for design in all() {
        let gears = Gears::new(&numbers(&design));
        let got = geometry(&design).expect("shipped sets have a geometry");
        let (p, b) = (&gears.pitch, &gears.blank);
        let rho = p.rho_lim;
        assert_eq!(got.limit_radius_mm.is_some(), rho.is_some(), "{}", design.name);
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
            let deviation = (got - want).abs();
            worst = if deviation > worst { deviation } else { worst };
            assert!(deviation < 1e-8, "{}: {name} {got}, independent {want}", design.name);
        }
    }
    println!("geometry of all sets: largest deviation {worst:.1e} (degrees, mm)");
}

/// Transmission error and lash at ten placements of four sets.
#[test]
fn motion_and_lash_at_random_placements() {
    let (mut worst_motion, mut worst_lash) = (0.0_f64, 0.0_f64);
    for (k, ratio) in RATIOS.iter().enumerate() {
        let design = shipped(ratio);
        let gears = Gears::new(&numbers(&design));
        for moved in placements(k as u64 + 1) {
            let got = mesh(&design, &placement(&moved), FILM_MM).expect("a shipped set meshes");
            let motions = [0, 1].map(|side| Motion::new(&gears, side, moved, 2, 12));
            for (side, motion) in motions.iter().enumerate() {
                let want = 1e6 * motion.transmission_error().expect("contact at every roll");
                let found = got.flanks[side].transmission_error_urad.expect("contact at every roll");
                let deviation = (found - want).abs();
                worst_motion = if deviation > worst_motion {
                    deviation
                } else {
                    worst_motion
                };
                assert!(
                    deviation < 0.2,
                    "{} {moved:?} side {side}: {found} µrad, independent {want}",
                    design.name
                );
            }
            let want = lash(&motions[0], &motions[1]).expect("contact on both flanks");
            for (found, want) in got.lash_mm.expect("contact on both flanks").into_iter().zip(want) {
                let deviation = 1e3 * (found - want).abs();
                worst_lash = if deviation > worst_lash { deviation } else { worst_lash };
                assert!(
                    deviation < 0.2,
                    "{} {moved:?}: lash {found} mm, independent {want}",
                    design.name
                );
            }
        }
    }
    println!(
        "four sets, ten placements: transmission error within {worst_motion:.3} µrad, lash within {worst_lash:.3} µm"
    );
}

/// Smallest gap over the roll at places of the flank, the wheel held by whichever pair touches: what the print is made
/// of. Bound 0.2 µm where the gap is under 30 µm.
#[test]
fn gaps_of_wheel_points() {
    let (mut worst, mut compared) = (0.0_f64, 0);
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
                let deviation = (found - want).abs();
                worst = if deviation > worst { deviation } else { worst };
                compared += 1;
                assert!(
                    deviation < 0.2,
                    "{} side {side} at {at:?}: {found} µm, independent {want}",
                    design.name
                );
            }
        }
    }
    println!("gaps of {compared} wheel points: within {worst:.4} µm");
    assert!(compared > 300, "the comparison must compare: {compared}");
}

/// Transmission error and lash of every shipped set as designed.
#[test]
fn motion_and_lash_of_all_sets_as_designed() {
    for design in all() {
        let gears = Gears::new(&numbers(&design));
        let got = mesh(&design, &Placement::default(), FILM_MM).expect("a shipped set meshes");
        let motions = [0, 1].map(|side| Motion::new(&gears, side, Moved::default(), 2, 12));
        let want = lash(&motions[0], &motions[1]).expect("contact on both flanks");
        let found = got.lash_mm.expect("contact on both flanks");
        for (side, motion) in motions.iter().enumerate() {
            let want = 1e6 * motion.transmission_error().expect("contact at every roll");
            let found = got.flanks[side].transmission_error_urad.expect("contact at every roll");
            println!(
                "{} side {side}: {found:.3} µrad, independent {:+.4}",
                design.name,
                want - found
            );
            assert!((found - want).abs() < 0.2, "{}: {found} {want}", design.name);
        }
        for (found, want) in found.into_iter().zip(want) {
            assert!((found - want).abs() < 2e-4, "{}: lash {found} {want}", design.name);
        }
    }
}

/// Print: area, centroid, extents, by the gap of wheel points on a grid of its own. The bounds are those of the core's
/// own convergence (0.002, extents 0.006) and as much again for the oracle's straight interpolation.
#[test]
fn prints_of_two_sets() {
    let mut worst = [0.0_f64; 3];
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
                let apart = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max);
                let found = [
                    (flank.area_fraction - want.area).abs(),
                    apart(&centroid, &want.centroid),
                    apart(&extents, &want.extents),
                ];
                println!(
                    "{} {moved:?} side {side}: area {:.4} ({:.4}), centroid {centroid:.4?} ({:.4?}), extents {extents:.4?} \
                     ({:.4?})",
                    design.name, flank.area_fraction, want.area, want.centroid, want.extents
                );
                for (w, f) in worst.iter_mut().zip(found) {
                    *w = if f > *w { f } else { *w };
                }
                assert!(
                    found[0] < 0.004 && found[1] < 0.004 && found[2] < 0.012,
                    "{}: {found:?}",
                    design.name
                );
            }
        }
    }
    println!(
        "prints: area within {:.4}, centroid {:.4}, extents {:.4}",
        worst[0], worst[1], worst[2]
    );
}

/// Mirror (`checks/gears.md` 8): a left-hand set with the offset on the other side, moved the other way along y, does
/// the same.
#[test]
fn mirrored_set_does_the_same() {
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
            println!("{} side {side}: {found:.3} µrad, mirrored {want:.3}", design.name);
            assert!((found - want).abs() < 0.2, "{found} {want}");
        }
        let want = lash(&motions[0], &motions[1]).expect("contact on both flanks");
        for (found, want) in got.lash_mm.expect("contact on both flanks").into_iter().zip(want) {
            assert!((found - want).abs() < 2e-4, "{}: lash {found} {want}", design.name);
        }
    }
}

/// Without ease-off the pinion is the wheel's exact mate: no transmission error where the flank is regular.
#[test]
fn conjugate_flanks_run_true() {
    for design in all() {
        let bare = lashwright::gear::Design {
            ease_off_drive: lashwright::gear::EaseOff::default(),
            ease_off_coast: lashwright::gear::EaseOff::default(),
            ..design
        };
        let got = mesh(&bare, &Placement::default(), FILM_MM).expect("a shipped set meshes");
        for flank in &got.flanks {
            let error = flank.transmission_error_urad.expect("contact at every roll");
            println!("{}: {error:.2e} µrad without ease-off", bare.name);
            assert!(error < 0.05, "{}: {error}", bare.name);
        }
        let [low, mean, high] = got.lash_mm.expect("contact on both flanks");
        for value in [low, mean, high] {
            assert!(
                (value - bare.lash_mm).abs() < 1e-5,
                "{}: lash {value}, designed {}",
                bare.name,
                bare.lash_mm
            );
        }
    }
}

/// Where edges decide: share of the roll on an edge of the wheel and on the pinion's tip, transmission error and lash, at
/// placements that drive the touchy sets to their edges. The curves have corners there, so that both routes sample
/// them more coarsely; bounds 1 µrad, 0.2 µm, and 3 % of the roll.
#[test]
fn edges_at_far_placements() {
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
            println!(
                "{} P {pinion_axial:+} side {side}: wheel edge {found_wheel:.3} (independent {wheel:.3}), pinion tip \
                 {found_tip:.3} ({tip:.3}), {found:.3} µrad ({want:.3})",
                design.name
            );
            assert!(
                (found_wheel - wheel).abs() <= 0.03 && (found_tip - tip).abs() <= 0.03,
                "{}",
                design.name
            );
            assert!((found - want).abs() < 1.0, "{}: {found} {want}", design.name);
        }
        let want = lash(&motions[0], &motions[1]).expect("contact on both flanks");
        for (found, want) in got.lash_mm.expect("contact on both flanks").into_iter().zip(want) {
            assert!((found - want).abs() < 2e-4, "{}: lash {found} {want}", design.name);
        }
    }
}
