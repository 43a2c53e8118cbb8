//! The fast route of contact against outside sources, not only against the exact one: the same checks as far as its promise
//! reaches ([`FAST_ACCURACY`] within [`FAST_REACH`], where the print keeps off the edges of the flank).
//!
//! What rests on edges (far placements of touchy sets, prints from root to top, flanks without ease-off) is not promised
//! and not asked here.

use lashwright::contact::{FAST_ACCURACY, FAST_REACH, Pattern, Placement, Route};
use lashwright::gear::Design;

use super::core::{Flank, Mesh, mesh_by};
use super::crown_gear_core;
use super::explicit_pinion::{EXPLICIT, FILM_MM, RATIOS, placement, placements};
use super::guide::{Row, Source, checks};
use super::lash_slopes::{SHOPS, TABLE, TABLE_224, TABLE_224_WITHIN, square_to_the_tooth};
use super::oracle::contact::{Motion, Moved, lash, pattern};
use super::oracle::flank::Gears;
use super::sets::{all, numbers, shipped};

fn fast(design: &Design, at: &Placement) -> Mesh {
    assert!(FAST_REACH.holds(at), "{at:?} is farther than is promised");
    mesh_by(Route::Fast, design, at, FILM_MM).expect("a shipped set meshes")
}

/// Whether there is a print that keeps off the edges.
fn is_promised(flank: &Flank) -> bool {
    let print = || {
        Some(Pattern {
            area_fraction: flank.area_fraction,
            centroid: flank.centroid?,
            toe: flank.toe?,
            heel: flank.heel?,
            root: flank.root?,
            top: flank.top?,
        })
    };
    print().is_some_and(|print| FAST_ACCURACY.holds_for(&print))
}

/// Takes transmission error and lash of a placement, as far as they are promised.
fn motion_and_lash(rows: &mut [Row; 2], design: &Design, gears: &Gears, moved: Moved) {
    let got = fast(design, &placement(&moved));
    let motions = [0, 1].map(|side| Motion::new(gears, side, moved, 2, 12));
    for (side, motion) in motions.iter().enumerate() {
        if is_promised(&got.flanks[side]) {
            let want = 1e6 * motion.transmission_error().expect("contact at every roll");
            let found = got.flanks[side].transmission_error_urad.expect("contact at every roll");
            rows[0].near(format_args!("{} {moved:?} side {side}", design.name), found, want);
        }
    }
    if got.flanks.iter().all(is_promised) {
        let want = lash(&motions[0], &motions[1]).expect("contact on both flanks");
        for (found, want) in got.lash_mm.expect("contact on both flanks").into_iter().zip(want) {
            rows[1].near(format_args!("{} {moved:?}", design.name), 1e3 * found, 1e3 * want);
        }
    }
}

fn of_random_placements() -> Vec<Row> {
    let mut rows = [
        Row::absolute(
            "Transmission error of four sets at ten random placements, where it is promised",
            EXPLICIT,
            FAST_ACCURACY.transmission_error_urad,
            "µrad",
        ),
        Row::absolute(
            "Least, mean and largest lash of four sets at ten random placements, where it is promised",
            EXPLICIT,
            FAST_ACCURACY.lash_um,
            "µm",
        ),
    ];
    for (k, ratio) in RATIOS.iter().enumerate() {
        let design = shipped(ratio);
        let gears = Gears::new(&numbers(&design));
        for moved in placements(k as u64 + 1) {
            motion_and_lash(&mut rows, &design, &gears, moved);
        }
    }
    assert!(rows[0].numbers > 20, "too few prints keep off the edges");
    rows.into()
}

fn of_all_sets_as_designed() -> Vec<Row> {
    let mut rows = [
        Row::absolute(
            "Transmission error of the shipped sets as designed, where it is promised",
            EXPLICIT,
            FAST_ACCURACY.transmission_error_urad,
            "µrad",
        ),
        Row::absolute(
            "Least, mean and largest lash of the shipped sets as designed, where it is promised",
            EXPLICIT,
            FAST_ACCURACY.lash_um,
            "µm",
        ),
    ];
    for design in all() {
        motion_and_lash(&mut rows, &design, &Gears::new(&numbers(&design)), Moved::default());
    }
    assert!(rows[0].numbers > 14, "too few prints keep off the edges");
    rows.into()
}

fn prints_of_two_sets() -> Vec<Row> {
    let mut area = Row::absolute(
        "Area of the print over that of the flank, two sets, two placements, both flanks",
        EXPLICIT,
        FAST_ACCURACY.area_fraction,
        "",
    );
    let mut centroids = [
        Row::absolute(
            "Centroid of these prints along the tooth, in half the face width",
            EXPLICIT,
            FAST_ACCURACY.centroid[0],
            "",
        ),
        Row::absolute(
            "Centroid of these prints up the tooth, in half the depth",
            EXPLICIT,
            FAST_ACCURACY.centroid[1],
            "",
        ),
    ];
    for (k, ratio) in ["3.73", "4.56"].into_iter().enumerate() {
        let design = shipped(ratio);
        let gears = Gears::new(&numbers(&design));
        for moved in [Moved::default(), placements(k as u64 + 11)[0]] {
            let got = fast(&design, &placement(&moved));
            for (side, flank) in got.flanks.iter().enumerate() {
                if !is_promised(flank) {
                    continue;
                }
                let want = pattern(&Motion::new(&gears, side, moved, 2, 12), FILM_MM, 64).expect("a print");
                let place = format!("{} {moved:?} side {side}", design.name);
                area.near(&place, flank.area_fraction, want.area);
                let centroid = flank.centroid.expect("a print");
                for (row, (got, want)) in centroids.iter_mut().zip(centroid.into_iter().zip(want.centroid)) {
                    row.near(&place, got, want);
                }
            }
        }
    }
    let [along, up] = centroids;
    vec![area, along, up]
}

/// The crown gear's pair, as the exact route is asked, with teeth half as deep: on full ones the pinion is undercut, and
/// the fast route promises nothing at such a border.
fn contact_moves_like_the_benchmark() -> Vec<Row> {
    vec![crown_gear_core::movement(Route::Fast, 1.0)]
}

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
        let square = square_to_the_tooth(&design, Route::Fast);
        shops.found(&design.name, square);
        if design.name.contains("224 mm") {
            table.near(&design.name, square, TABLE_224);
        }
    }
    vec![shops, table]
}

/// A left-hand set with the offset on the other side, moved the other way along y, does the same.
fn mirrored_set_does_the_same() -> Vec<Row> {
    const MIRROR: Source = Source::Second("explicit pinion points of the mirrored set, moved the other way along y");
    let mut row = Row::absolute(
        "Transmission error of four sets and of their mirror images, where it is promised",
        MIRROR,
        FAST_ACCURACY.transmission_error_urad,
        "µrad",
    );
    for (k, ratio) in RATIOS.iter().enumerate() {
        let design = shipped(ratio);
        let mirrored = Gears::new(&numbers(&design)).mirrored();
        for moved in placements(k as u64 + 21).into_iter().take(3) {
            let got = fast(&design, &placement(&moved));
            let turned = Moved {
                offset: -moved.offset,
                ..moved
            };
            for (side, flank) in got.flanks.iter().enumerate() {
                if is_promised(flank) {
                    let motion = Motion::new(&mirrored, side, turned, 2, 12);
                    let want = 1e6 * motion.transmission_error().expect("contact at every roll");
                    let found = flank.transmission_error_urad.expect("contact at every roll");
                    row.near(format_args!("{} {moved:?} side {side}", design.name), found, want);
                }
            }
        }
    }
    vec![row]
}

checks![
    of_random_placements,
    of_all_sets_as_designed,
    prints_of_two_sets,
    mirrored_set_does_the_same,
    contact_moves_like_the_benchmark,
    shipped_sets_read_as_the_shops_say,
];
