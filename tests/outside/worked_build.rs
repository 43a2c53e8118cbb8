//! One build worked through by hand: layout C, the 3.73 set, the medium support with its solid spacer.
//!
//! All numbers below were computed with a table calculator from the formulas named beside them and from the parts' own
//! files, not by the code under test; what the code says is compared. Sources of the formulas: VDI 2230 (nut), NSK catalogue
//! E1102, 15.1 (approach of rollers), SKF General Catalogue (2005/2008), friction chapter, ISO 14179-2 (seal), Walther's
//! equation as in ASTM D341 (oil).
//!
//! The parts (files of `assets`): nut pitch 1.5, d2 21.03, face 27.8 mm, friction 0.12 and 0.12; spacer with shims 52.342 mm
//! free, 390 mm², zero-preload length 52.35 mm; structure 230 N/µm; head bearing Y 1.12, 18 rollers of 17.5 mm, 41.3 × 83 mm;
//! tail bearing Y 1.10, 17 rollers of 16.5 mm, 35 × 76 mm; series M, friction factor 2 (new); seal on 45 mm; oil 140 and 14.5
//! mm²/s; adjusters 1.5 mm a turn with 18 slots. Designed for 5500 N of preload.
//!
//! What is off the drawing (our choice): housing 0.05 mm short, head bearing stands 0.08 mm high, this pinion runs best 0.03
//! mm farther out than nominal, the ring gear 0.04 mm thick.

use lashwright::axle::{
    Assembly, Axle, DepthShim, Layout, Member, Nut, NutMove, SpacerFitted, Target, Truth, Turning, resistance, settle,
    turn_nut, usual_side_bearings,
};
use lashwright::axle::{Built, SideStack};
use lashwright::catalogue;
use lashwright::contact::{Film, Pair, Route, solve};
use lashwright::gear::{Design, GearSet};
use lashwright::job::supports;

use super::guide::{Row, Source, checks};

const NUT_TORQUE_NM: f64 = 217.0;

fn parts() -> (Axle, Pair) {
    let file = catalogue::gear_set("3.73-tapered-ring-224").expect("ships");
    let gears = GearSet::new(Design::from_toml(file.text).expect("reads")).expect("exists");
    let support = supports::find("medium-axle-solid").expect("ships").support;
    let side = usual_side_bearings(gears.design().wheel_outer_pitch_diameter_mm);
    let target = Target {
        pinion_preload_n: 5500.0,
        side_squeeze_mm: 0.20,
    };
    let axle = Axle::new(Layout::C, DepthShim::Cup, &gears, support, side, target).expect("they belong together");
    (axle, Pair::new(gears))
}

fn off_the_drawing() -> Truth {
    let mut truth = Truth::default();
    for (member, deviation) in [
        (Member::HousingDepth, -0.05),
        (Member::HeadBearingStand, 0.08),
        (Member::PinionMark, 0.03),
        (Member::WheelThickness, 0.04),
    ] {
        truth.deviations.set(member, deviation);
    }
    // The seal of this build has run in: its drag is that of the formula.
    truth.friction.seal_times = 1.0;
    truth
}

/// The axle with these shims, its nut drawn up afresh, turned until it has settled.
fn built(axle: &Axle, truth: &Truth, cup_shim_mm: f64, spacer_shims_mm: f64, notches: [f64; 2]) -> Built {
    let notch = axle.adjuster().notch_deg();
    let side = notches.map(|n| SideStack {
        adjuster_deg: n * notch,
        locked: true,
        ..SideStack::default()
    });
    let loose = Assembly {
        depth_shim_mm: cup_shim_mm,
        spacer: SpacerFitted::Solid {
            shims_mm: spacer_shims_mm,
        },
        nut: Nut::Off,
        side,
        ..Assembly::nominal(axle).expect("an axle")
    };
    let to = NutMove::ToTorque {
        torque_nm: NUT_TORQUE_NM,
    };
    let mut tight = turn_nut(axle, truth, &loose, to, 1.0)
        .expect("it can be tightened")
        .after;
    tight.pinion_turns = 100.0;
    settle(axle, truth, &tight).expect("settles")
}

/// A row of one number.
fn one(what: &'static str, unit: &'static str, got: f64, by_hand: f64, tolerance: f64) -> Row {
    let source = Source::Second("worked by hand from the formulas and the parts' files");
    let mut row = Row::absolute(what, source, tolerance, unit);
    row.near("layout C, 3.73 set", got, by_hand);
    row
}

fn a_build_worked_through_by_hand() -> Vec<Row> {
    let mut rows = Vec::new();
    let mut near = |what, unit, got, by_hand, tolerance| rows.push(one(what, unit, got, by_hand, tolerance));
    let (axle, pair) = parts();
    let truth = off_the_drawing();

    // 1. As it comes: cup shim 1.00, spacer shims 0.80, both rings at their nominal places.
    //    Clamp: F = T/(p/2π + µ d2/(2 cos 30°) + µ D/2) = 217000/(0.23873 + 1.45700 + 1.66800) = 64 512 N.
    //    The head bearing stands 0.08 high: the pair closes at 52.43 mm. By the NSK catalogue's form (α = atan(0.4/Y): 19.654° and 19.983°) a
    //    bearing gives C F^0.9, C = 4.5156e-6 (head) and 4.9174e-6 mm/N^0.9 (tail); the spacer gives F L/(E A); both closings
    //    are equal at F = 15 071 N (by bisection).
    //    P: chain −0.05 (housing) − 0.08 (stand) − 0.03 (mark) = −0.160 mm; springs C_h F^0.9 + F/2k = 0.05917 mm outward, less
    //    0.02262 mm that the drawing allows for at 5500 N: P = −0.1234 mm.
    let first = built(&axle, &truth, 1.00, 0.80, [0.0, 0.0]);
    let pinion = first.pinion.expect("held");
    near("Clamp of the nut", "N", pinion.tightened.clamp_n, 64_511.6, 1.0);
    near("Preload as it comes", "N", pinion.tightened.preload_n, 15_071.0, 5.0);
    let placement = first.placement.expect("in mesh");
    near("P as it comes", "mm", placement.pinion_axial_mm, -0.123_44, 2e-5);
    //    G: the wheel is 0.04 thick toward the pinion.
    near("G as it comes", "mm", placement.wheel_axial_mm, -0.04, 1e-9);
    //    Rotating torque (friction chapter of the SKF General Catalogue, seal by ISO 14179-2; oil at 20 °C by Walther
    //    489.45 mm²/s; 20 r/min): head 2.9288, tail 2.6063, seal 0.1486 N·m: 5.684 N·m, half as much again as any window allows.
    let felt = |built: &Built| resistance(&axle, &truth, built, Turning::BY_HAND).expect("held");
    let torque = felt(&first);
    near(
        "Rotating torque of the head bearing as it comes",
        "N·m",
        torque.head_bearing_nm,
        2.928_82,
        1e-3,
    );
    near(
        "Rotating torque of the tail bearing as it comes",
        "N·m",
        torque.tail_bearing_nm,
        2.606_28,
        1e-3,
    );
    near("Drag of the seal", "N·m", torque.seal_nm, 0.148_635, 1e-6);

    // 2. The shims: depth is to be 0. The chain lacks 0.16, so the cup shim becomes 0.84. That takes 0.16 off the zero-preload
    //    length; the high stand has put 0.08 on it. Spacer shims 0.80 + 0.08 − 0.16 = 0.72 keep the designed closing.
    //    Free length 52.262, closing at 52.27: F = 5546.6 N; springs 0.02280, so P = +0.0002 mm; torque 1.4351 + 1.2306 +
    //    0.1486 = 2.814 N·m, inside 14 to 36 in·lb (1.58 to 4.07 N·m).
    let second = built(&axle, &truth, 0.84, 0.72, [0.0, 0.0]);
    let pinion = second.pinion.expect("held");
    near("Preload with new shims", "N", pinion.tightened.preload_n, 5_546.63, 2.0);
    let placement = second.placement.expect("in mesh");
    near("P with new shims", "mm", placement.pinion_axial_mm, 0.000_18, 2e-5);
    let torque = felt(&second);
    let alone = torque.total_nm - torque.side_bearings_nm;
    near(
        "Rotating torque of the pinion with new shims",
        "N·m",
        alone,
        2.814_31,
        1e-3,
    );
    //    Had the spacer shims stayed at 0.80, the pair would not have been closed at all: play 52.342 − 52.27 less what the
    //    clamp shortens the spacer by, 64 512 · 52.342/(206 000 · 390) = 0.04203 mm: 0.02997 mm. But the nut then presses on
    //    the spacer alone.
    let forgotten = built(&axle, &truth, 0.84, 0.80, [0.0, 0.0]);
    let loose = forgotten.pinion.expect("held").tightened;
    near(
        "Play when the spacer shims are forgotten",
        "mm",
        loose.play_mm,
        0.029_97,
        2e-5,
    );

    // 3. Lash: the wheel stands 0.04 too near. Rings one notch against each other, tooth side in: 1.5/18 = 0.08333 mm away,
    //    G = +0.04333, at the same side preload. Lash (3.2, hypoid form, at the mean radius 96.883): ΔG (tan 13.776° + tan
    //    26.224°) sin 70.878°/cos 29.675° = 0.8023 ΔG, and at the outer radius 112/96.883 of it: 0.9275 · 0.08333 = 0.0773 mm.
    //    The formula takes the angles of the mean point between the flanks; it is good to 6 % (see lash_slopes.rs).
    let third = built(&axle, &truth, 0.84, 0.72, [1.0, -1.0]);
    let moved = third.placement.expect("in mesh");
    near(
        "G after one notch of both rings",
        "mm",
        moved.wheel_axial_mm,
        0.043_333,
        1e-6,
    );
    let sides = [&second, &third].map(|b| b.side.expect("held").preload_n);
    near(
        "Side preload after equal and opposite notches, against that before",
        "N",
        sides[1],
        sides[0],
        1e-6,
    );
    let lash = [placement, moved].map(|at| {
        let contact = solve(&pair, at, Film::default(), Route::Exact);
        contact.lash.expect("both flanks touch").mean_mm
    });
    near(
        "Lash gained by them (formula of the mean point, good to 6 %)",
        "mm",
        lash[1] - lash[0],
        0.0773,
        0.06 * 0.0773,
    );

    // 4. Both rings one notch in: 0.16667 mm more squeeze, all of it preload, and G stays.
    let fourth = built(&axle, &truth, 0.84, 0.72, [2.0, 0.0]);
    let side = fourth.side.expect("held");
    near(
        "Squeeze with both rings one notch in",
        "mm",
        side.squeeze_mm,
        0.20 + 2.0 * 1.5 / 18.0,
        1e-9,
    );
    near("G with both rings one notch in", "mm", side.axial_mm, 0.043_333, 1e-6);
    rows
}

checks![a_build_worked_through_by_hand,];
