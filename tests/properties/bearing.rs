//! What holds for every pinion support.

use lashwright::bearing::friction::{self, Running};
use lashwright::bearing::stiffness::AxialApproach;
use lashwright::bearing::{
    BearingKind, FrictionConstants, FrictionSeries, OpposedPair, RadialSpring, SeatGap, Seating, SideBearings,
    SpacerKind, SpacerMemory, Support, TaperedBearing, UnderLoad,
};
use lashwright::numerics::math;
use lashwright::words::problem::told;
use proptest::prelude::*;

const NEW: SpacerMemory = SpacerMemory {
    plastic_shortening_mm: 0.0,
};

/// Numbers from `low` to `high`, evenly over the logarithm, so that ranges of several decades are met everywhere.
fn spread(low: f64, high: f64) -> impl Strategy<Value = f64> {
    (0.0..=1.0_f64).prop_map(move |share| (low * math::pow(high / low, share)).clamp(low, high))
}

/// The constants of a row as a file of version 2 writes them.
fn constants(row: FrictionSeries) -> String {
    let FrictionConstants { r1, r2, s1, s2 } = row.constants();
    let steep = row.is_steep();
    format!("friction = {{ r1 = {r1:e}, r2 = {r2:?}, s1 = {s1:?}, s2 = {s2:?} }}\nsteep = {steep}\n")
}

fn bearing_text() -> impl Strategy<Value = String> {
    (
        spread(5.0, 400.0),
        1.2..3.0_f64,
        0..20_usize,
        spread(0.3, 5.0),
        4..=100_u32,
        spread(2.0, 200.0),
        spread(0.05, 20.0),
    )
        .prop_map(|(bore, ratio, series, y, rollers, length, factor)| {
            let outside = (bore * ratio).clamp(10.0, 600.0);
            format!(
                "bore_mm = {bore}\noutside_diameter_mm = {outside}\n{}thrust_factor_y = {y}\n\
                 roller_count = {rollers}\nroller_length_mm = {length}\nfriction_factor = {factor}\n",
                constants(FrictionSeries::ALL[series])
            )
        })
}

fn spacer_text() -> impl Strategy<Value = String> {
    (
        spread(2.1, 470.0),
        -0.04..0.009_f64,
        spread(20.0, 20_000.0),
        spread(5.0, 5_000.0),
        any::<bool>(),
        spread(500.0, 1.0e6),
        prop_oneof![Just(0.0), spread(1.0, 1.0e6)],
    )
        .prop_map(|(zero, excess, area, structure, sleeve, yield_force, hardening)| {
            let excess = if sleeve { excess + 0.03 } else { excess };
            let free = (zero * (1.0 + excess)).clamp(2.0, 500.0);
            let kind = if sleeve {
                format!("kind = \"collapsible\"\nyield_force_n = {yield_force}\nhardening_n_per_mm = {hardening}\n")
            } else {
                "kind = \"solid\"\n".to_owned()
            };
            format!(
                "{kind}free_length_mm = {free}\nzero_preload_length_mm = {zero}\narea_mm2 = {area}\n\
                 structure_stiffness_n_per_um = {structure}\n"
            )
        })
}

/// Files over the whole documented ranges.
fn any_file() -> impl Strategy<Value = String> {
    let nut = (spread(5.0, 200.0), 0.05..0.24_f64, 1.05..1.9_f64, spread(0.02, 0.6), spread(0.02, 0.6)).prop_map(
        |(diameter, pitch, face, thread, under)| {
            format!(
                "pitch_mm = {}\npitch_diameter_mm = {diameter}\nface_mean_diameter_mm = {}\nfriction_thread = {thread}\n\
                 friction_face = {under}\n",
                (pitch * diameter).clamp(0.3, 10.0),
                (face * diameter).clamp(5.0, 400.0)
            )
        },
    );
    let oil = (spread(5.0, 3_000.0), spread(0.02, 0.9)).prop_map(|(cool, share)| {
        format!(
            "viscosity_40_mm2_s = {cool}\nviscosity_100_mm2_s = {}\n",
            (cool * share).clamp(2.0, 200.0)
        )
    });
    (bearing_text(), bearing_text(), spacer_text(), nut, spread(5.0, 300.0), oil).prop_map(|(head, tail, spacer, nut, seal, oil)| {
        format!(
            "format = \"lashwright-support/2\"\nname = \"any\"\nnut_torque_nm = 217\n[head_bearing]\n{head}[tail_bearing]\n{tail}[spacer]\n{spacer}\
             [nut]\n{nut}[seal]\nshaft_diameter_mm = {seal}\n[oil]\n{oil}"
        )
    })
}

fn any_support() -> impl Strategy<Value = Support> {
    any_file().prop_filter_map("dimensions that cannot belong together", |text| {
        Support::from_toml(&text).ok()
    })
}

/// A pinion bearing as axles have them.
fn pinion_bearing() -> impl Strategy<Value = TaperedBearing> {
    use FrictionSeries::{InchH, InchHm, InchM, S303};
    (
        28.0..46.0_f64,
        1.95..2.2_f64,
        prop_oneof![Just(InchM), Just(InchHm), Just(InchH), Just(S303)],
        1.0..1.3_f64,
        14..22_u32,
        13.0..24.0_f64,
    )
        .prop_map(
            |(bore_mm, ratio, series, thrust_factor_y, roller_count, roller_length_mm)| TaperedBearing {
                kind: BearingKind::Tapered,
                bore_mm,
                outside_diameter_mm: bore_mm * ratio,
                friction: series.constants(),
                steep: series.is_steep(),
                thrust_factor_y,
                roller_count,
                roller_length_mm,
                friction_factor: 1.0,
            },
        )
}

fn pair() -> impl Strategy<Value = OpposedPair> {
    (
        pinion_bearing(),
        pinion_bearing(),
        prop_oneof![Just(0.0), 1e-6..1e-4_f64],
    )
        .prop_map(|(near, far, structure_mm_per_n)| OpposedPair {
            near: AxialApproach::of(&near),
            far: AxialApproach::of(&far),
            structure_mm_per_n,
        })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 600, max_global_rejects: 100_000, ..ProptestConfig::default() })]

    /// Every file inside the documented ranges is read or refused, and what is read gives numbers that satisfy the
    /// definitions, for any nut, speed and temperature that the command takes.
    #[test]
    fn any_file_gives_numbers_that_satisfy_the_definitions(
        text in any_file(),
        torque in spread(1.0, 10_000.0),
        rpm in spread(0.1, 1000.0),
        celsius in -40.0..150.0_f64,
    ) {
        let Ok(support) = Support::from_toml(&text) else { return Ok(()) };
        let state = support.tightened_to(torque, NEW).expect("a support that was read can be solved");
        // What tears or folds first still has numbers, but they need not be lengths of anything.
        let sound = support.overload(&state).is_none();
        let running = support.running(rpm, celsius);
        let rolling = support.rolling_torque(state.preload_n, running);
        let breakaway = support.breakaway_torque(state.preload_n);
        let numbers = [
            state.clamp_n, state.spacer_n, state.preload_n, state.play_mm, state.spacer_loaded_length_mm,
            state.head_deflection_mm, state.tail_deflection_mm, state.pinion_shift_mm, running.viscosity_mm2_s,
            rolling.head_bearing_nm, rolling.tail_bearing_nm, rolling.seal_nm, rolling.total_nm,
            breakaway.head_bearing_nm, breakaway.tail_bearing_nm, breakaway.total_nm,
        ];
        prop_assert!(numbers.iter().all(|x| x.is_finite()), "{state:?} {rolling:?} {breakaway:?}");
        prop_assert!(!sound || numbers.iter().all(|x| *x >= 0.0), "{state:?}");
        // F_c = F_s + F_p, and F_c is the nut's.
        let clamp = support.nut.clamp_n(torque);
        prop_assert!((state.spacer_n + state.preload_n - clamp).abs() <= 1e-9 * clamp, "{state:?}, nut {clamp}");
        // Either play or preload, never both.
        prop_assert!(state.play_mm == 0.0 || state.preload_n == 0.0, "{state:?}");
        // L = L_free − u(F_s).
        if !state.spacer_loose && let Some(u) = support.spacer.shortening_mm(state.spacer_n, NEW) {
            let kind_is_flat = matches!(support.spacer.kind, SpacerKind::Collapsible { hardening_n_per_mm, .. } if hardening_n_per_mm < 1000.0);
            let off = (support.spacer.free_length_mm - u - state.spacer_loaded_length_mm).abs();
            prop_assert!(!sound || kind_is_flat || off < 1e-7, "spacer {off} mm off: {state:?}");
        }
        // Closing takes up exactly what the spacer leaves.
        if state.preload_n > 0.0 && !state.spacer_loose {
            let closed = support.zero_preload_length_mm - state.spacer_loaded_length_mm;
            let needed = state.head_deflection_mm + state.tail_deflection_mm + state.preload_n / support.structure_stiffness_n_per_mm;
            prop_assert!((closed - needed).abs() < 1e-9 * support.zero_preload_length_mm, "{closed} against {needed}");
        }
    }

    /// A shim more, less preload; the nut tighter, more preload. Where the pair has play or the spacer is loose the
    /// preload cannot change that way, but it never goes the other way.
    #[test]
    fn shims_and_nuts_have_their_signs(
        support in any_support(),
        torque in spread(10.0, 5_000.0),
        shim in spread(1e-4, 0.1),
        more in 1.001..1.5_f64,
    ) {
        let state = support.tightened_to(torque, NEW).expect("solved");
        let thicker = support.with_spacer_length_mm(support.spacer.free_length_mm + shim).tightened_to(torque, NEW).expect("solved");
        let tighter = support.tightened_to(torque * more, NEW).expect("solved");
        // Where something tears first the springs are far outside their range.
        prop_assume!([&state, &thicker, &tighter].iter().all(|s| support.overload(s).is_none()));
        let hair = 1e-9 * state.clamp_n;
        prop_assert!(thicker.preload_n <= state.preload_n + hair, "shim: {} after {}", thicker.preload_n, state.preload_n);
        prop_assert!(tighter.preload_n >= state.preload_n - hair, "nut: {} after {}", tighter.preload_n, state.preload_n);
        if state.preload_n > 1e-3 * state.clamp_n {
            prop_assert!(tighter.preload_n > state.preload_n, "the nut must tell: {state:?}");
            if !state.spacer_loose && !thicker.spacer_loose && !support.has_sleeve() {
                prop_assert!(thicker.preload_n < state.preload_n, "the shim must tell: {state:?}");
            }
        }
        // Turning the nut on by angle works the same way, and never brings crushed length back.
        let turned = support.turned_on(&state, 3.0).expect("solved");
        prop_assert!(turned.preload_n >= state.preload_n - hair && turned.clamp_n >= state.clamp_n - hair, "{turned:?} after {state:?}");
        let back = support.turned_on(&turned, -30.0).expect("solved");
        prop_assert!(back.clamp_n <= turned.clamp_n + hair, "{back:?}");
        prop_assert!(back.memory.plastic_shortening_mm >= turned.memory.plastic_shortening_mm, "memory: {back:?}");
    }

    /// Nut off and on at the same torque: a solid spacer gives the same preload, a sleeve too where friction is the very
    /// same.
    #[test]
    fn a_retorque_comes_back(support in any_support(), torque in spread(10.0, 5_000.0)) {
        let first = support.tightened_to(torque, NEW).expect("solved");
        let again = support.tightened_to(torque, first.memory).expect("solved");
        // A sleeve that hardens by nothing keeps no force of its own to compare.
        prop_assert!((again.preload_n - first.preload_n).abs() <= 1e-6 * first.clamp_n, "{again:?} after {first:?}");
        if !support.has_sleeve() {
            prop_assert!((again.preload_n - first.preload_n).abs() <= 1e-3 * first.preload_n, "{again:?} after {first:?}");
            prop_assert!(again.memory == NEW, "a solid spacer remembers nothing");
        }
    }

    /// Work done in closing a pair is stored in it: dU = F d(closing), summed over small steps; and U is convex.
    #[test]
    fn closing_a_pair_stores_its_work(pair in pair(), preload in 500.0..20_000.0_f64) {
        let steps = 2000;
        let at = |i: i32| preload * f64::from(i) / f64::from(steps);
        let work: f64 = (0..steps)
            .map(|i| 0.5 * (at(i) + at(i + 1)) * (pair.closing_mm(at(i + 1)) - pair.closing_mm(at(i))))
            .sum();
        let stored = pair.stored_energy_nmm(preload);
        prop_assert!((work - stored).abs() < 1e-5 * stored, "work {work}, stored {stored}");
        let middle = pair.stored_energy_nmm(pair.preload_n(0.5 * pair.closing_mm(preload)).expect("number"));
        prop_assert!(middle < 0.5 * stored, "convex over closing: {middle} against half of {stored}");
        let back = pair.preload_n(pair.closing_mm(preload)).expect("number");
        prop_assert!((back - preload).abs() < 1e-8 * preload, "there and back: {back} for {preload}");
    }

    /// An outside force: equilibrium, the closing is kept, and its work is the gain of stored energy.
    #[test]
    fn an_outside_force_is_balanced(pair in pair(), preload in 500.0..20_000.0_f64, share in 0.01..3.0_f64) {
        let outside = share * preload;
        let shared = pair.share(preload, outside).expect("numbers");
        prop_assert!((shared.near_n - shared.far_n - outside).abs() < 1e-6 * outside, "{shared:?}");
        prop_assert!(shared.near_n > preload - 1e-6 && shared.far_n < preload, "{shared:?}");
        let still = pair.yielding_mm(preload, 0.0).expect("number");
        prop_assert!(still.abs() < 1e-12, "no force, no move: {still}");
        prop_assert!(pair.yielding_mm(preload, outside).expect("number") > 0.0, "toward the near bearing");
        let slack = pair.slackening_load_n(preload).expect("number");
        prop_assert!((shared.far_n > 1e-3) == (outside < slack) || (outside - slack).abs() < 1e-2 * slack, "{shared:?}, slack at {slack}");
        if outside < slack {
            let half = 0.5 * pair.structure_mm_per_n;
            let side = |approach: AxialApproach, force: f64| approach.approach_mm(force) + half * force;
            let kept = side(pair.near, shared.near_n) + side(pair.far, shared.far_n);
            prop_assert!((kept - pair.closing_mm(preload)).abs() < 1e-9, "closing kept: {kept}");
            let energy = |near: f64, far: f64| {
                pair.near.stored_energy_nmm(near) + pair.far.stored_energy_nmm(far) + 0.5 * half * (near * near + far * far)
            };
            let gain = energy(shared.near_n, shared.far_n) - energy(preload, preload);
            let steps = 400;
            let moved = |i: i32| pair.yielding_mm(preload, outside * f64::from(i) / f64::from(steps)).expect("number");
            let work: f64 = (0..steps)
                .map(|i| outside * (f64::from(i) + 0.5) / f64::from(steps) * (moved(i + 1) - moved(i)))
                .sum();
            prop_assert!((work - gain).abs() < 1e-3 * gain, "work {work}, gain {gain}");
        }
    }

    /// In the boundary term the torque is proportional to the thrust; so is the starting torque.
    #[test]
    fn boundary_torque_is_proportional_to_thrust(bearing in pinion_bearing(), thrust in 100.0..20_000.0_f64, times in 1.1..5.0_f64) {
        let running = Running { speed_rpm: 20.0, viscosity_mm2_s: 350.0 };
        let (one, more) = (friction::turning(&bearing, thrust, running), friction::turning(&bearing, times * thrust, running));
        prop_assert!((more.sliding_nmm - times * one.sliding_nmm).abs() < 1e-9 * more.sliding_nmm, "{one:?} {more:?}");
        let (one, more) = (friction::breakaway_nmm(&bearing, thrust), friction::breakaway_nmm(&bearing, times * thrust));
        prop_assert!((more - times * one).abs() < 1e-9 * more, "{one} {more}");
    }

    /// Under the preloads of a pinion, in gear oil of the shop's temperature, starting takes at least what turning takes.
    /// (Far below these preloads the oil's own resistance, which starting does not know, is all there is.)
    #[test]
    fn starting_takes_more_than_turning_at_hand_speed(
        bearing in pinion_bearing(),
        thrust in 5_000.0..20_000.0_f64,
        rpm in 1.0..20.0_f64,
        viscosity in 50.0..350.0_f64,
    ) {
        let turning = friction::turning(&bearing, thrust, Running { speed_rpm: rpm, viscosity_mm2_s: viscosity }).total_nmm;
        let start = friction::breakaway_nmm(&bearing, thrust);
        prop_assert!(start >= turning, "start {start}, turning {turning}");
    }

    /// Rings that are not home: gaps only shrink, preload never falls below that of a sound build, and no cup is left
    /// behind by a preload above its fit's friction.
    #[test]
    fn gaps_close_and_stop_where_the_fit_holds(
        support in any_support(),
        torque in spread(10.0, 5_000.0),
        gaps in (spread(1e-4, 0.3), spread(1e-4, 0.3), spread(1e-4, 0.3)),
        holding in (spread(10.0, 1e5), spread(10.0, 1e5), spread(10.0, 1e5)),
    ) {
        let seating = Seating {
            head_cone: SeatGap { gap_mm: gaps.0, holding_n: holding.0 },
            head_cup: SeatGap { gap_mm: gaps.1, holding_n: holding.1 },
            tail_cup: SeatGap { gap_mm: gaps.2, holding_n: holding.2 },
        };
        let sound = support.tightened_to(torque, NEW).expect("solved");
        let (state, left) = support.tightened_with_gaps(torque, NEW, &seating).expect("solved");
        prop_assume!(support.overload(&sound).is_none() && support.with_seating(&seating).overload(&state).is_none());
        let hair = 1e-6 * state.clamp_n;
        prop_assert!(state.preload_n >= sound.preload_n - hair, "{state:?}, sound {sound:?}");
        for (before, after) in [(seating.head_cup, left.head_cup), (seating.tail_cup, left.tail_cup), (seating.head_cone, left.head_cone)] {
            prop_assert!((0.0..=before.gap_mm).contains(&after.gap_mm), "{after:?} of {before:?}");
        }
        for cup in [left.head_cup, left.tail_cup] {
            prop_assert!(cup.gap_mm == 0.0 || state.preload_n <= cup.holding_n + hair, "{cup:?} under {}", state.preload_n);
        }
    }

    /// Side bearings: more pack, more preload, and never any under play.
    #[test]
    fn side_preload_rises_with_the_pack(bearings in (pinion_bearing(), pinion_bearing()), case in 2e3..1e5_f64, squeeze in -0.2..0.4_f64) {
        let side = SideBearings { tooth_side: bearings.0, back_side: bearings.1, case_stiffness_n_per_mm: case };
        let (state, more) = (side.squeezed_by(squeeze).expect("number"), side.squeezed_by(squeeze + 0.01).expect("number"));
        if squeeze <= 0.0 {
            prop_assert!(state.preload_n == 0.0 && (state.play_mm + squeeze).abs() < 1e-15, "{state:?}");
        } else {
            let sum = state.tooth_side_deflection_mm + state.back_side_deflection_mm + state.case_spread_mm;
            prop_assert!((sum - squeeze).abs() < 1e-9, "{state:?}");
        }
        prop_assert!(more.preload_n >= state.preload_n, "{more:?} after {state:?}");
    }
}

/// The springs of the whole axle are read in both versions of the format, and nothing else of the support depends on them.
#[test]
fn springs_under_load_are_read_in_both_versions() {
    let shipped = lashwright::catalogue::support("medium-axle-solid")
        .expect("embedded")
        .text;
    let springs = "[under_load]\nhead_mm = 127.6\ntail_mm = 206.8\nhead_n_per_um = 440.0\ntail_n_per_um = 308.0\n\
                   pinion_axial_n_per_um = 220.0\nback_mm = 88.0\nfront_mm = -70.4\nback_n_per_um = 352.0\n\
                   front_n_per_um = 351.0\nwheel_axial_n_per_um = 176.0\n";
    let pilot = "pilot_mm = 52.0\npilot_n_per_um = 150.0\n";
    let old: String = shipped
        .replace("lashwright-support/2", "lashwright-support/1")
        .lines()
        .filter(|line| !line.starts_with("nut_torque_nm"))
        .map(|line| match line.strip_prefix("friction = ") {
            Some(_) => "friction_series = \"M\"\n".to_owned(),
            None => format!("{line}\n"),
        })
        .collect();
    let at = |place_mm: f64, rate_n_per_mm: f64| RadialSpring {
        place_mm,
        rate_n_per_mm,
    };
    let wanted = UnderLoad {
        head: at(127.6, 440e3),
        tail: at(206.8, 308e3),
        pilot: None,
        pinion_axial_n_per_mm: 220e3,
        back: at(88.0, 352e3),
        front: at(-70.4, 351e3),
        wheel_axial_n_per_mm: 176e3,
    };
    let read = |text: &str| Support::from_toml(text).unwrap_or_else(|p| panic!("{:?} in {text}", p.list()));
    for text in [shipped, old.as_str()] {
        let plain = read(text);
        assert_eq!(plain.under_load, None);
        let with = read(&format!("{text}{springs}"));
        assert_eq!(with.under_load, Some(wanted));
        let third = read(&format!("{text}{springs}{pilot}"));
        let pilot = Some(at(52.0, 150e3));
        assert_eq!(third.under_load, Some(UnderLoad { pilot, ..wanted }));
        assert_eq!(
            Support {
                under_load: None,
                ..with
            },
            plain
        );
    }
    let far = format!("{shipped}{springs}pilot_mm = 128.0\npilot_n_per_um = 150.0\n");
    let problems = Support::from_toml(&far).expect_err("beyond the head bearing");
    let [problem] = problems.list() else {
        panic!("one problem: {:?}", problems.list());
    };
    assert!(
        told(problem).what.contains("not short of the head bearing at 127.6 mm"),
        "{problem:?}"
    );
    assert_eq!(far.get(problem.span.clone()), Some("128.0"));
    let meant = |text: &str| read(text).meant_nut_torque_nm;
    assert_eq!((meant(shipped), meant(&old)), (Some(217.0), None));
}
