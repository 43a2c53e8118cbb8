//! Bits of contact by both routes.

use blake3::Hasher;
use lashwright::contact::{Contact, Film, FlankContact, PHYSICS_VERSION, Pair, Placement, Route, solve};
use lashwright::gear::GearSet;
use lashwright::job::gear_sets;
use lashwright::numerics::random::Stream;
use rayon::prelude::*;

/// The physics version that the hash below belongs to.
const VERSION: u32 = 2;
/// BLAKE3 over the bits of 12 placements × 3 sets.
const EXACT: &str = "910c6bd8adb4d570f5fb8a66a6d3e63b71f7c8931beae11e0f9edffa0f178661";
/// The same by the fast route.
const FAST: &str = "4200b2ea117efd0825a664b45a0886b2c5196a25373ba921ae5d78b0ebcd296c";

const SETS: [&str; 3] = [
    "3.73-tapered-ring-224",
    "4.56-uniform-ring-238",
    "3.00-tapered-ring-186",
];

fn add(hash: &mut Hasher, value: f64) {
    hash.update(&value.to_bits().to_le_bytes());
}

fn add_flank(hash: &mut Hasher, flank: &FlankContact) {
    // What is not there is hashed as a letter, so that it cannot be mistaken for a number.
    match &flank.pattern {
        Some(p) => [
            p.area_fraction,
            p.centroid[0],
            p.centroid[1],
            p.toe,
            p.heel,
            p.root,
            p.top,
        ]
        .into_iter()
        .for_each(|v| add(hash, v)),
        None => {
            hash.update(b"p");
        }
    }
    match flank.transmission_error_urad {
        Some(v) => add(hash, v),
        None => {
            hash.update(b"t");
        }
    }
    match flank.edge_contact {
        Some(e) => [e.wheel, e.pinion_tip].into_iter().for_each(|v| add(hash, v)),
        None => {
            hash.update(b"e");
        }
    }
}

fn add_contact(hash: &mut Hasher, contact: &Contact) {
    match contact.lash {
        Some(l) => [l.min_mm, l.mean_mm, l.max_mm].into_iter().for_each(|v| add(hash, v)),
        None => {
            hash.update(b"l");
        }
    }
    add_flank(hash, &contact.drive);
    add_flank(hash, &contact.coast);
}

/// Eleven placements inside the range that trainees meet, and one far outside.
fn placements() -> Vec<Placement> {
    let mut stream = Stream::new(1, "placements of the bits test");
    let mut list: Vec<Placement> = (0..11)
        .map(|_| Placement {
            pinion_axial_mm: stream.between(-0.2, 0.2),
            wheel_axial_mm: stream.between(-0.1, 0.1),
            offset_mm: stream.between(-0.05, 0.05),
            shaft_angle_rad: stream.between(-1e-3, 1e-3),
        })
        .collect();
    list.push(Placement {
        pinion_axial_mm: 2.0,
        wheel_axial_mm: -1.0,
        offset_mm: 1.0,
        shaft_angle_rad: 0.02,
    });
    list
}

fn hash_with(threads: usize, route: Route) -> String {
    let pairs: Vec<Pair> = SETS
        .iter()
        .map(|name| Pair::new(GearSet::new(gear_sets::find(name).expect("ships").design).expect("gears exist")))
        .collect();
    let work: Vec<(&Pair, Placement)> = pairs
        .iter()
        .flat_map(|pair| placements().into_iter().map(move |p| (pair, p)))
        .collect();
    let pool = rayon::ThreadPoolBuilder::new()
        .num_threads(threads)
        .build()
        .expect("threads");
    let contacts: Vec<Contact> = pool.install(|| {
        work.par_iter()
            .map(|(pair, placement)| solve(pair, *placement, Film::default(), route))
            .collect()
    });
    let mut hash = Hasher::new();
    for contact in &contacts {
        add_contact(&mut hash, contact);
    }
    hash.finalize().to_hex().to_string()
}

#[test]
fn contact_has_the_committed_bits_with_any_number_of_threads() {
    assert_eq!(
        PHYSICS_VERSION, VERSION,
        "the hash below belongs to another physics version"
    );
    for threads in [1, 2, 7] {
        assert_eq!(hash_with(threads, Route::Exact), EXACT, "exact, {threads} threads");
        assert_eq!(hash_with(threads, Route::Fast), FAST, "fast, {threads} threads");
    }
}
