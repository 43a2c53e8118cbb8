//! The shipped resolution of contact: halving every step must not change what people read by more than
//! [`EXACT_ACCURACY`].

use lashwright::contact::{Contact, EXACT_ACCURACY, Film, Pair, Placement, Resolution, Route, gap_map, solve};
use lashwright::gear::{GearSet, Side};
use lashwright::job::gear_sets;

/// As designed, four moves of both gears, and two that a badly bored housing makes.
const PLACEMENTS: [[f64; 4]; 7] = [
    [0.0, 0.0, 0.0, 0.0],
    [0.1, 0.05, 0.0, 0.0],
    [-0.1, 0.1, 0.0, 0.0],
    [0.05, -0.15, 0.0, 0.0],
    [-0.05, -0.05, 0.0, 0.0],
    [0.03, 0.02, 0.04, 0.0],
    [-0.02, 0.03, -0.02, 0.0006],
];

/// Largest deviations: centroid along and up the tooth, area, ends, transmission error (µrad), lash (µm).
fn deviations(coarse: &Contact, fine: &Contact) -> [f64; 6] {
    let mut largest = [0.0_f64; 6];
    let mut note = |k: usize, a: f64, b: f64| {
        let d = (a - b).abs();
        if d > largest[k] {
            largest[k] = d;
        }
    };
    for side in Side::BOTH {
        let (a, b) = (coarse.flank(side), fine.flank(side));
        assert_eq!(
            a.pattern.is_some(),
            b.pattern.is_some(),
            "a print at one resolution only"
        );
        if let (Some(p), Some(q)) = (&a.pattern, &b.pattern) {
            note(0, p.centroid[0], q.centroid[0]);
            note(1, p.centroid[1], q.centroid[1]);
            note(2, p.area_fraction, q.area_fraction);
            for (x, y) in [(p.toe, q.toe), (p.heel, q.heel), (p.root, q.root), (p.top, q.top)] {
                note(3, x, y);
            }
        }
        if let (Some(x), Some(y)) = (a.transmission_error_urad, b.transmission_error_urad) {
            note(4, x, y);
        }
    }
    if let (Some(a), Some(b)) = (coarse.lash, fine.lash) {
        for (x, y) in [(a.min_mm, b.min_mm), (a.mean_mm, b.mean_mm), (a.max_mm, b.max_mm)] {
            note(5, 1e3 * x, 1e3 * y);
        }
    }
    largest
}

#[test]
fn halving_every_step_changes_nothing_that_people_read() {
    let ends = EXACT_ACCURACY.ends.expect("the exact route promises ends");
    let limits = [
        EXACT_ACCURACY.centroid[0],
        EXACT_ACCURACY.centroid[1],
        EXACT_ACCURACY.area_fraction,
        ends,
        EXACT_ACCURACY.transmission_error_urad,
        EXACT_ACCURACY.lash_um,
    ];
    let mut broken = Vec::new();
    for found in gear_sets::embedded().unwrap_or_else(|failure| panic!("{failure}")) {
        let gears = GearSet::new(found.design).unwrap_or_else(|error| panic!("{error}"));
        let coarse = Pair::new(gears.clone());
        let fine = Pair::with_resolution(gears, Resolution::SHIPPED.halved());
        let mut largest = [0.0_f64; 6];
        for [p, g, e, s] in PLACEMENTS {
            let placement = Placement {
                pinion_axial_mm: p,
                wheel_axial_mm: g,
                offset_mm: e,
                shaft_angle_rad: s,
            };
            let of = |pair: &Pair| solve(pair, placement, Film::default(), Route::Exact);
            let found_here = deviations(&of(&coarse), &of(&fine));
            for (k, (l, d)) in largest.iter_mut().zip(found_here).enumerate() {
                if d > *l {
                    *l = d;
                }
                if d > limits[k] {
                    broken.push(format!("{} at {:?}: {found_here:?}", found.source, [p, g, e, s]));
                }
            }
        }
        println!(
            "{:24} centroid {:.5}, {:.5} area {:.5} ends {:.5} transmission error {:.5} µrad lash {:.5} µm",
            found.source, largest[0], largest[1], largest[2], largest[3], largest[4], largest[5]
        );
    }
    assert!(broken.is_empty(), "limits {limits:?}:\n{}", broken.join("\n"));
}

/// What the pinion's tip leaves free is one strip along the root: above it the smallest gap is found everywhere, also
/// where a badly bored housing turns the pinion by a third of a degree.
#[test]
fn the_map_of_gaps_has_no_holes() {
    for name in ["4.11-tapered-ring-178", "3.73-tapered-ring-224"] {
        let found = gear_sets::find(name).unwrap_or_else(|failure| panic!("{failure}"));
        let pair = Pair::new(GearSet::new(found.design).unwrap_or_else(|error| panic!("{error}")));
        for [p, s] in [[0.0, 0.0], [-0.2, 0.001], [0.3, 0.0017], [0.3, 0.0052]] {
            let placement = Placement {
                pinion_axial_mm: p,
                shaft_angle_rad: s,
                ..Placement::NOMINAL
            };
            for side in Side::BOTH {
                let map = gap_map(&pair, placement, side, Route::Exact).expect("the flanks touch");
                let (columns, rows) = map.size();
                for i in 0..columns {
                    let from = (0..rows)
                        .find(|&j| map.gap_um(i, j).is_some())
                        .expect("something is covered");
                    let holes: Vec<usize> = (from..rows).filter(|&j| map.gap_um(i, j).is_none()).collect();
                    assert!(
                        holes.is_empty(),
                        "{name} {side:?} at {p}, {s}: column {i}, rows {holes:?}"
                    );
                }
            }
        }
    }
}
