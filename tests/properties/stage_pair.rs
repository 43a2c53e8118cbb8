//! The pair that the stage shows.

use lashwright::catalogue::GEAR_SETS;
use lashwright::contact::{self, Placement, Route};
use lashwright::gear::{Design, Side};
use lashwright::view::{Play, StagePair};

fn pair(name: &str) -> StagePair {
    let entry = GEAR_SETS.iter().find(|e| e.name == name).expect("ships");
    StagePair::new(&Design::from_toml(entry.text).expect("reads")).expect("exists")
}

/// From one side to the other the wheel moves by the lash that contact says, at every roll.
#[test]
fn rocking_from_side_to_side_is_the_lash() {
    for name in [
        "3.73-tapered-ring-224",
        "4.56-uniform-ring-238",
        "3.00-tapered-ring-186",
    ] {
        let pair = pair(name);
        let placement = Placement {
            pinion_axial_mm: 0.04,
            wheel_axial_mm: -0.03,
            ..Placement::NOMINAL
        };
        let play = Play::new(&pair.pair, placement, Route::Exact).expect("touches");
        let lash = contact::lash_mm(&pair.pair, placement, Route::Exact, 48).expect("touches");
        let radius_mm = 0.5 * pair.design().wheel_outer_pitch_diameter_mm;
        for (roll, lash_mm) in lash {
            let travel = play.rotation_rad(roll, 0.0) - play.rotation_rad(roll, 1.0);
            let drawn_mm = pair.pair.toward(Side::Drive) * travel * radius_mm;
            assert!(
                (drawn_mm - lash_mm).abs() < 2e-4,
                "{name}: {drawn_mm} mm drawn, {lash_mm} mm computed at {roll}"
            );
        }
    }
}

#[test]
fn impossible_designs_say_why_in_a_sentence() {
    let mut design = pair("3.73-tapered-ring-224").design().clone();
    design.offset_mm = 200.0;
    let why = StagePair::new(&design).expect_err("an offset beyond the ring gear");
    assert!(why.ends_with('.') && why.contains("offset"), "{why}");
}

#[test]
fn both_members_keep_to_sixty_thousand_triangles() {
    for entry in GEAR_SETS.iter() {
        let design = Design::from_toml(entry.text).expect("reads");
        let pair = StagePair::new(&design).expect("exists");
        let triangles = pair.wheel.triangles().len() + pair.pinion.triangles().len();
        assert!(triangles <= 60_000, "{}: {triangles}", entry.name);
    }
}
