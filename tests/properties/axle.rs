//! What holds for every axle, however it was made and whatever is fitted.

use lashwright::axle::{
    Assembly, Axle, Bearings, Caps, Layout, Member, Moves, Nut, NutMove, PerMember, Push, SideStack, SpacerFitted,
    Truth, Turning, WheelFitting, WheelSeat, deviations, resistance, seat_wheel, settle, side_resistance_nm, sums,
    turn_nut,
};
use lashwright::bearing::{SeatGap, Seating, SpacerMemory};
use proptest::prelude::*;
use std::sync::LazyLock;

use super::axles::axle_with;

static AXLES: LazyLock<Vec<Axle>> = LazyLock::new(|| {
    Layout::ALL
        .into_iter()
        .flat_map(|layout| layout.depth_shims().iter().map(move |shim| axle_with(layout, *shim)))
        .collect()
});

fn any_axle() -> impl Strategy<Value = &'static Axle> {
    (0..AXLES.len()).prop_map(|i| &AXLES[i])
}

fn any_members(size: f64) -> impl Strategy<Value = PerMember> {
    proptest::collection::vec(-size..=size, Member::ALL.len()).prop_map(|values| {
        let mut all = PerMember::default();
        for (member, value) in Member::ALL.into_iter().zip(values) {
            all.set(member, value);
        }
        all
    })
}

fn any_truth() -> impl Strategy<Value = Truth> {
    (
        any_members(0.5),
        any_members(6.3),
        (0.5..2.0_f64, 0.2..3.0_f64, 0.3..2.5_f64),
        (0.2..3.0_f64, 0.2..3.0_f64, 0.0..1.0_f64, 0.0..20.0_f64),
        (0.3..3.0_f64, 0.05..1.0_f64, 0.0..=1.0_f64, 0.0..0.2_f64),
        (-0.05..0.2_f64, 0.0..0.2_f64),
        proptest::collection::vec(-10.0..10.0_f64, 0..8),
    )
        .prop_map(|(deviations, phases_rad, sleeve, friction, case, fit, classes)| {
            let mut truth = Truth {
                deviations,
                phases_rad,
                ..Truth::default()
            };
            (
                truth.sleeve.yield_times,
                truth.sleeve.hardening_times,
                truth.nut.friction_times,
            ) = sleeve;
            (
                truth.friction.head_times,
                truth.friction.side_times,
                truth.friction.unturned_share,
                truth.friction.turns_to_settle,
            ) = friction;
            truth.case.stiffness_times = case.0;
            truth.case.snug_share = case.1;
            truth.case.tooth_side_share = case.2;
            truth.case.thread_slack_mm = [case.3, 0.5 * case.3];
            (truth.wheel_fit.interference_mm, truth.wheel_fit.cold_tilt_mm) = fit;
            truth.pair.class_errors_um = classes;
            truth
        })
}

fn any_push() -> impl Strategy<Value = Push> {
    prop_oneof![Just(Push::Mesh), Just(Push::Middle), Just(Push::Apart)]
}

fn any_gap() -> impl Strategy<Value = SeatGap> {
    (prop_oneof![Just(0.0), 0.0..0.3_f64], 0.0..30_000.0_f64)
        .prop_map(|(gap_mm, holding_n)| SeatGap { gap_mm, holding_n })
}

fn any_stack() -> impl Strategy<Value = SideStack> {
    (0.0..9.0_f64, -400.0..400.0_f64, any::<bool>(), any::<bool>()).prop_map(
        |(shim_mm, adjuster_deg, on_slack, locked)| SideStack {
            shim_mm,
            adjuster_deg,
            on_slack,
            locked,
        },
    )
}

/// Any assembly, the nut left off.
fn any_assembly() -> impl Strategy<Value = Assembly> {
    let flags = || {
        (
            any::<bool>(),
            any::<bool>(),
            any::<bool>(),
            any::<bool>(),
            any::<bool>(),
        )
    };
    (
        prop_oneof![1 => Just(Bearings::None), 1 => Just(Bearings::SetUp), 3 => Just(Bearings::Real)],
        (any_gap(), any_gap(), any_gap()),
        0.0..2.0_f64,
        prop_oneof![
            Just(SpacerFitted::None),
            (0.0..3.0_f64)
                .prop_map(|plastic_shortening_mm| SpacerFitted::Sleeve(SpacerMemory { plastic_shortening_mm })),
            (0.0..1.5_f64).prop_map(|shims_mm| SpacerFitted::Solid { shims_mm }),
        ],
        flags(),
        (0.0..40.0_f64, 0.0..40.0_f64, 0..20_u32),
        (any_push(), any_push()),
        proptest::option::weighted(0.8, (any::<bool>(), 0.0..0.2_f64, any::<bool>())),
        (any_stack(), any_stack()),
        prop_oneof![Just(Caps::Off), Just(Caps::Snug), Just(Caps::Torqued)],
    )
        .prop_map(
            |(bearings, gaps, shim, spacer, flags, turns, pushes, wheel, stacks, caps)| Assembly {
                bearings,
                seating: Seating {
                    head_cone: gaps.0,
                    head_cup: gaps.1,
                    tail_cup: gaps.2,
                },
                depth_shim_mm: shim,
                spacer,
                pinion_in: flags.0,
                nut: Nut::Off,
                seal: flags.1,
                cartridge_bolted: flags.2,
                pinion_turns: turns.0,
                pinion_push: pushes.0,
                wheel: wheel.map(|(dirty, tilt_mm, bolted)| WheelSeat { dirty, tilt_mm, bolted }),
                carrier_in: flags.3,
                side: [stacks.0, stacks.1],
                spreader_mm: 0.0,
                caps,
                caps_swapped: flags.4,
                carrier_turns: turns.1,
                carrier_push: pushes.1,
                timing_offset: turns.2,
            },
        )
}

fn any_nut_move() -> impl Strategy<Value = NutMove> {
    prop_oneof![
        (0.0..1500.0_f64).prop_map(|torque_nm| NutMove::ToTorque { torque_nm }),
        (-400.0..400.0_f64).prop_map(|angle_deg| NutMove::ByAngle { angle_deg }),
    ]
}

/// Everything of a state that can be asked for is a number.
fn check(axle: &Axle, truth: &Truth, assembly: &Assembly) -> Result<(), TestCaseError> {
    let Ok(built) = settle(axle, truth, assembly) else {
        return Ok(());
    };
    if let Some(p) = built.pinion {
        let t = p.tightened;
        for x in [
            t.clamp_n,
            t.spacer_n,
            t.preload_n,
            t.play_mm,
            p.play_mm,
            p.axial_mm.unwrap_or(0.0),
        ] {
            prop_assert!(x.is_finite(), "{p:?}");
        }
        prop_assert!(t.preload_n >= 0.0 && t.play_mm >= 0.0, "{t:?}");
        prop_assert!(
            t.preload_n == 0.0 || t.play_mm == 0.0,
            "preload and play at once: {t:?}"
        );
    }
    if let Some(s) = built.side {
        prop_assert!(
            s.axial_mm.is_finite() && s.preload_n >= 0.0 && s.play_mm >= 0.0,
            "{s:?}"
        );
        prop_assert!(
            s.preload_n == 0.0 || s.play_mm == 0.0,
            "preload and play at once: {s:?}"
        );
        prop_assert!(
            side_resistance_nm(axle, truth, &built, Turning::BY_HAND) >= 0.0,
            "side torque"
        );
    }
    for turning in [Turning::BY_HAND, Turning::STARTED] {
        if let Some(r) = resistance(axle, truth, &built, turning) {
            prop_assert!(r.total_nm.is_finite() && r.total_nm >= 0.0, "{r:?}");
        }
    }
    for eighth in 0..8 {
        if let Some(p) = built.placement_at(f64::from(eighth), 3.0) {
            for x in [p.pinion_axial_mm, p.wheel_axial_mm, p.offset_mm, p.shaft_angle_rad] {
                prop_assert!(x.is_finite(), "{p:?}");
            }
        }
    }
    prop_assert!((0..9).all(|tooth| built.timing_lash_mm(tooth).is_finite()), "timing");
    // What settled stays: asking again changes nothing.
    let again = settle(axle, truth, &built.after).expect("a settled state settles");
    prop_assert_eq!(&again.after, &built.after, "settled twice");
    let (mut first, mut second) = (Vec::new(), Vec::new());
    built.after.bits(&mut |b| first.push(b));
    again.after.bits(&mut |b| second.push(b));
    prop_assert_eq!(first, second, "bits of the state");
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn any_axle_in_any_state_has_numbers(
        axle in any_axle(),
        truth in any_truth(),
        assembly in any_assembly(),
        nut_moves in proptest::collection::vec((any_nut_move(), 0.7..1.4_f64), 0..5),
    ) {
        check(axle, &truth, &assembly)?;
        let mut state = assembly;
        for (nut_move, friction) in nut_moves {
            if let Ok(turned) = turn_nut(axle, &truth, &state, nut_move, friction) {
                prop_assert!(turned.torque_nm.is_finite() && turned.angle_deg.is_finite(), "{turned:?}");
                state = turned.after;
                check(axle, &truth, &state)?;
            }
        }
    }

    /// A sleeve never grows again, and no gap behind a ring opens, whatever the nut does.
    #[test]
    fn what_gave_way_stays(
        truth in any_truth(),
        gaps in (any_gap(), any_gap(), any_gap()),
        nut_moves in proptest::collection::vec(any_nut_move(), 1..8),
    ) {
        let axle = &AXLES[0];
        let mut state = Assembly {
            nut: Nut::Off,
            spacer: SpacerFitted::Sleeve(SpacerMemory::default()),
            seating: Seating { head_cone: gaps.0, head_cup: gaps.1, tail_cup: gaps.2 },
            ..Assembly::nominal(axle).expect("numbers")
        };
        for nut_move in nut_moves {
            let Ok(turned) = turn_nut(axle, &truth, &state, nut_move, 1.0) else { continue };
            let Ok(built) = settle(axle, &truth, &turned.after) else { continue };
            let (SpacerFitted::Sleeve(before), SpacerFitted::Sleeve(after)) = (state.spacer, built.after.spacer) else {
                panic!("a sleeve stays a sleeve")
            };
            prop_assert!(after.plastic_shortening_mm >= before.plastic_shortening_mm, "{before:?} {after:?}");
            let (old, new) = (state.seating, built.after.seating);
            prop_assert!(new.head_cone.gap_mm <= old.head_cone.gap_mm, "head cone");
            prop_assert!(new.head_cup.gap_mm <= old.head_cup.gap_mm, "head cup");
            prop_assert!(new.tail_cup.gap_mm <= old.tail_cup.gap_mm, "tail cup");
            state = built.after;
        }
    }

    /// The chain adds up: sums of the sum of two deviations are the sums of both, and each member moves what its row says.
    #[test]
    fn the_chain_is_linear(axle in any_axle(), a in any_members(0.3), b in any_members(0.3), assembly in any_assembly()) {
        let chain = axle.chain();
        let mut both = PerMember::default();
        for member in Member::ALL {
            both.set(member, a.get(member) + b.get(member));
        }
        let (of_a, of_b, of_both) = (chain.sums(&a, &assembly), chain.sums(&b, &assembly), chain.sums(&both, &assembly));
        for moves in [
            Moves::PinionAxial, Moves::WheelAxial, Moves::Offset, Moves::ShaftAngle, Moves::ZeroPreloadLength,
            Moves::SpacerLength, Moves::ToothStack, Moves::BackStack, Moves::WheelAcross,
        ] {
            prop_assert!((of_a.get(moves) + of_b.get(moves) - of_both.get(moves)).abs() < 1e-12, "{moves:?}");
            let by_hand: f64 = chain
                .links()
                .filter(|l| l.when.holds(&assembly))
                .map(|l| chain.per_unit(l.member, moves) * a.get(l.member))
                .sum();
            prop_assert!((by_hand - of_a.get(moves)).abs() < 1e-12, "{moves:?} by rows");
        }
    }

    /// Placement follows the chain exactly while no spring changes: a deviation that only moves P or G moves them by itself.
    #[test]
    fn placement_follows_the_chain(axle in any_axle(), depth in -0.4..0.4_f64, thick in -0.4..0.4_f64, square in -0.01..0.01_f64) {
        let assembly = Assembly::nominal(axle).expect("numbers");
        let housing = if axle.layout().has_cartridge() { Member::CartridgeFace } else { Member::HousingDepth };
        let truth = Truth {
            deviations: PerMember::default()
                .with(housing, depth)
                .with(Member::WheelThickness, thick)
                .with(Member::Squareness, square),
            ..Truth::default()
        };
        let placement = settle(axle, &truth, &assembly).expect("settles").placement.expect("in place");
        prop_assert!((placement.pinion_axial_mm - depth).abs() < 1e-12, "{placement:?}");
        prop_assert!((placement.wheel_axial_mm + thick).abs() < 1e-12, "{placement:?}");
        prop_assert_eq!(placement.shaft_angle_rad.to_bits(), square.to_bits());
    }

    /// Equal and opposite side moves keep the preload and carry the wheel by themselves, for every case and bearing.
    #[test]
    fn opposite_side_moves_keep_the_preload(axle in any_axle(), truth in any_truth(), by in -0.2..0.2_f64) {
        let assembly = Assembly::nominal(axle).expect("numbers");
        let mut moved = assembly.clone();
        let degrees = 360.0 * by / axle.adjuster().pitch_mm;
        for (stack, sign) in moved.side.iter_mut().zip([1.0, -1.0]) {
            match axle.layout().side_setting() {
                lashwright::axle::SideSetting::Shims => stack.shim_mm += sign * by,
                lashwright::axle::SideSetting::Adjusters => stack.adjuster_deg += sign * degrees,
            }
        }
        let before = settle(axle, &truth, &assembly).expect("settles").side.expect("held");
        let after = settle(axle, &truth, &moved).expect("settles").side.expect("held");
        prop_assert!((after.preload_n - before.preload_n).abs() <= 1e-6 * (1.0 + before.preload_n), "{before:?} {after:?}");
        prop_assert!((after.axial_mm - before.axial_mm - by).abs() < 1e-9, "{before:?} {after:?}");
    }

    /// A hotter wheel never sits worse, and fitted members never come from the truth.
    #[test]
    fn heat_helps_and_fitted_parts_are_no_truth(axle in any_axle(), truth in any_truth(), assembly in any_assembly(), warm in 20.0..150.0_f64) {
        let at = |wheel_c| seat_wheel(axle, &truth, WheelFitting { wheel_c, clean: true, crosswise: false }).tilt_mm;
        prop_assert!(at(warm) <= at(20.0), "{} {}", at(warm), at(20.0));
        let mut other = truth.clone();
        for member in Member::ALL.into_iter().filter(|m| m.is_fitted()) {
            other.deviations.set(member, 9.0);
        }
        prop_assert_eq!(deviations(axle, &truth, &assembly), deviations(axle, &other, &assembly));
        prop_assert_eq!(sums(axle, &truth, &assembly), sums(axle, &other, &assembly));
    }
}
