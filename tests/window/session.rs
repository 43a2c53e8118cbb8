//! The session in a Bevy app without drawing: commands change it, turning keeps the ratio, rest is rest.

use core::f64::consts::TAU;
use std::time::Duration;

use bevy::ecs::schedule::{LogLevel, ScheduleBuildSettings};
use bevy::prelude::*;
use bevy::time::TimeUpdateStrategy;
use bevy::window::{FileDragAndDrop, RequestRedraw, WindowResized, WindowScaleFactorChanged};
use bevy::winit::{UpdateMode, WinitSettings};
use lashwright::app::frames::bevy_from_axle;
use lashwright::app::stage::{pinion_stand, wheel_stand};
use lashwright::app::{Asked, Refusal, Session, idle, order_plugin, session_plugin};
use lashwright::contact::Placement;
use lashwright::gear::{GearSet, Side};
use lashwright::job::gear_sets;
use lashwright::store;
use lashwright::view::{Command, Origin, Projection, Setting, SettingContact, TextSize, Theme, Viewpoint};
use nalgebra::Vector3;

use super::folder::Folder;

const FRAME: Duration = Duration::from_millis(16);

fn session() -> Session {
    let sets = gear_sets::embedded().expect("embedded sets are read");
    let mut session = Session::new(sets.into_iter().map(|set| (set.design, Origin::BuiltIn)).collect());
    session.finish();
    session
}

fn app() -> App {
    let mut app = App::new();
    app.add_plugins((MinimalPlugins, order_plugin, session_plugin, idle::plugin))
        .add_message::<RequestRedraw>()
        .add_message::<WindowResized>()
        .add_message::<WindowScaleFactorChanged>()
        .insert_resource(TimeUpdateStrategy::ManualDuration(FRAME))
        .insert_resource(session());
    app.edit_schedule(Update, |schedule| {
        schedule.set_build_settings(ScheduleBuildSettings {
            ambiguity_detection: LogLevel::Error,
            ..default()
        });
    });
    // Bevy's clock stands still in the first frame.
    app.update();
    app
}

pub(crate) fn ask(app: &mut App, command: Command) {
    app.world_mut().write_message(Asked(command));
    app.update();
}

pub(crate) fn of(app: &App) -> &Session {
    app.world().resource::<Session>()
}

#[test]
fn commands_change_the_session_in_the_frame_that_reads_them() {
    let mut app = app();
    assert_eq!(of(&app).chosen(), Some(0));
    ask(&mut app, Command::ChooseGears(5));
    assert_eq!(of(&app).chosen(), Some(5));
    assert_eq!(
        of(&app).view().chosen_gears().map(|gears| gears.numbers.wheel_teeth),
        Some(41)
    );
    ask(&mut app, Command::SetTheme(Theme::Slate));
    ask(&mut app, Command::SetTextSize(TextSize::nearest(150)));
    ask(&mut app, Command::LookFrom(Viewpoint::Above));
    ask(&mut app, Command::SetProjection(Projection::Flat));
    let view = of(&app).view();
    assert_eq!((view.theme, view.text_size.percent()), (Theme::Slate, 150));
    assert_eq!(
        (view.stage.viewpoint, view.stage.projection),
        (Some(Viewpoint::Above), Projection::Flat)
    );
    ask(
        &mut app,
        Command::Orbit {
            azimuth_rad: 0.1,
            elevation_rad: 0.0,
        },
    );
    assert_eq!(of(&app).view().stage.viewpoint, None, "turned by hand");
}

/// What comes of an earlier wish after another one was made is put aside, gears and contact alike.
#[test]
fn results_of_earlier_wishes_are_put_aside() {
    let mut session = session();
    session.apply(Command::ChooseGears(13)).expect("a set of the list");
    let late = session.next_job().expect("gears are to be made");
    session.apply(Command::ChooseGears(5)).expect("a set of the list");
    let before = session.stage_pair().1;
    session.take(late.run());
    assert_eq!(
        session.stage_pair().1,
        before,
        "the gears of the first wish do not come"
    );
    session.finish();
    assert_ne!(session.stage_pair().1, before, "those of the second do");

    let at = |pinion_mm| {
        Command::Set(Setting {
            pinion_mm,
            ..Setting::default()
        })
    };
    session.apply(at(0.1)).expect("it can be set");
    let late = session.next_job().expect("contact is to be solved");
    session.apply(at(-0.1)).expect("it can be set");
    let fast = session.contact();
    session.take(late.run());
    assert_eq!(
        session.contact(),
        fast,
        "the contact of the first setting does not come"
    );
    session.finish();
    assert!(
        session.contact().is_some_and(|contact| contact.exact),
        "that of the second does"
    );
}

/// By hand as by itself: the ring gear turns by as many teeth as the pinion.
#[test]
fn gears_turned_by_hand_keep_their_ratio() {
    let mut session = session();
    for teeth in [0.3, 2.45, -0.75, f64::NAN] {
        session.apply(Command::TurnBy(teeth)).expect("there are gears");
    }
    let turn = session.turn();
    assert_eq!(turn.steps(), 2 * 5040, "two teeth in all");
    let design = session.stage_pair().0.expect("gears").design().clone();
    let pinion = TAU * 2.0 / f64::from(design.pinion_teeth);
    let wheel = TAU - TAU * 2.0 / f64::from(design.wheel_teeth);
    assert!((turn.pinion_angle_rad() - pinion).abs() < 1e-12, "pinion");
    assert!(
        (turn.wheel_angle_rad() - wheel).abs() < 1e-12,
        "ring gear, the other way"
    );
}

/// A look at a flank of the painted tooth brings that tooth up, clear of the pinion, and stops what turned.
#[test]
fn the_painted_tooth_is_turned_up_to_be_looked_at() {
    let mut session = session();
    session.apply(Command::SetTurning(true)).expect("there are gears");
    session.run(Duration::from_secs(3));
    session
        .apply(Command::LookFrom(Viewpoint::Coast))
        .expect("a place to look from");
    assert!(!session.turning(), "it stands still to be looked at");
    let pair = session.stage_pair().0.expect("gears").clone();
    let step = TAU / f64::from(pair.design().wheel_teeth) / 5040.0;
    let paste = session.paste().expect("teeth are painted").clone();
    let [_, middle, _] = paste.teeth[..] else {
        panic!("three teeth: {:?}", paste.teeth);
    };
    let off = (session.turn().wheel_angle_rad() - pair.topmost_rad(middle)).rem_euclid(TAU);
    assert!(
        off.min(TAU - off) <= step,
        "the painted tooth is the topmost: {off} rad off"
    );
    assert_eq!(session.view().stage.viewpoint, Some(Viewpoint::Coast));
    // Before anything was turned it was near the top already.
    let at_first = pair.topmost_rad(middle).rem_euclid(TAU);
    assert!(at_first.min(TAU - at_first) <= 0.51 * 5040.0 * step, "{at_first} rad");
    // What is left of the paste follows the setting.
    let moved = Setting {
        pinion_mm: 0.1,
        ..Setting::default()
    };
    session.apply(Command::Set(moved)).expect("it can be set");
    assert_ne!(**session.paste().expect("painted"), *paste, "another print");
}

/// A gear file dropped on the window comes on the stage; one that is no gear file says why and changes nothing else.
#[test]
fn gear_files_are_dropped_on_the_window() {
    let folder = Folder::new("dropped");
    let mut app = app();
    app.add_plugins(lashwright::app::drop::plugin);
    let window = app.world_mut().spawn_empty().id();
    let good = folder.path().join("own.toml");
    let text = gear_sets::embedded().expect("sets")[0]
        .text
        .replace("name = \"", "name = \"Own ");
    store::write_whole(&good, text.as_bytes()).expect("written");
    let over = |path: &std::path::Path| FileDragAndDrop::HoveredFile {
        window,
        path_buf: path.to_owned(),
    };
    let let_go = |path: &std::path::Path| FileDragAndDrop::DroppedFile {
        window,
        path_buf: path.to_owned(),
    };
    app.world_mut().write_message(over(&good));
    app.update();
    assert!(of(&app).view().file_over, "it is said that it can be let go");
    app.world_mut().write_message(let_go(&good));
    app.update();
    app.update();
    let view = of(&app).view();
    assert!(!view.file_over, "it was let go");
    assert_eq!((view.chosen, view.notice), (Some(0), None));
    assert_eq!(view.place, lashwright::view::Place::Gears);
    let count = view.gears.len();
    assert!(view.gears[0].name.starts_with("Own "), "{:?}", view.gears[0]);
    // The same file again is read again, not listed twice.
    app.world_mut().write_message(let_go(&good));
    app.update();
    app.update();
    assert_eq!(of(&app).view().gears.len(), count);

    let bad = folder.path().join("bad.toml");
    store::write_whole(&bad, b"format = 1\nnonsense = 2\n").expect("written");
    for path in [bad, folder.path().join("none.toml")] {
        app.world_mut().write_message(let_go(&path));
        app.update();
        app.update();
        let said = of(&app).view().notice.map(str::to_owned);
        assert!(
            said.as_ref()
                .is_some_and(|said| said.contains("bad.toml") || said.contains("none.toml")),
            "{said:?}"
        );
        assert_eq!(of(&app).view().gears.len(), count, "nothing new is listed");
        ask(&mut app, Command::PutNoticeAway);
        assert_eq!(of(&app).view().notice, None);
    }
}

#[test]
fn refused_commands_change_nothing() {
    let mut session = session();
    let before = format!("{session:?}");
    assert_eq!(session.apply(Command::ChooseGears(99)), Err(Refusal::NoSuchGears(99)));
    assert_eq!(format!("{session:?}"), before, "nothing has changed");
    let mut empty = Session::new(Vec::new());
    assert_eq!(empty.apply(Command::SetTurning(true)), Err(Refusal::NothingToTurn));
    assert_eq!(empty.apply(Command::TurnTeeth(1)), Err(Refusal::NothingToTurn));
    assert!(!empty.turning(), "nothing turns");
}

/// A million frames at the exact tooth ratio, for every set that ships: both angles follow from the teeth that have
/// passed the mesh, so that the ring gear's turns are z1/z2 of the pinion's to the last digit that a f64 holds.
#[test]
fn turning_keeps_the_ratio_for_a_million_frames() {
    let mut session = session();
    for index in [0, 5, 13] {
        session.apply(Command::ChooseGears(index)).expect("a set of the list");
        session.finish();
        session.apply(Command::SetTurning(true)).expect("there are gears");
        let numbers = session.view().chosen_gears().expect("a set is chosen").numbers;
        for _ in 0..1_000_000 {
            session.run(FRAME);
        }
        let turn = session.turn();
        let (pinion_turns, _) = turn.pinion_turns_and_teeth();
        let (wheel_turns, _) = turn.wheel_turns_and_teeth();
        let pinion = pinion_turns as f64 + turn.pinion_angle_rad() / TAU;
        let back = TAU - turn.wheel_angle_rad();
        let wheel = wheel_turns as f64 + back.rem_euclid(TAU) / TAU;
        let ratio = pinion / wheel;
        println!(
            "{} to {}: {pinion} and {wheel} turns",
            numbers.pinion_teeth, numbers.wheel_teeth
        );
        assert!(
            (pinion - 16e6 / 60e3 * 10.0).abs() < 1e-3,
            "10 turns a minute for 16 000 s: {pinion}"
        );
        assert!(
            (ratio / numbers.ratio - 1.0).abs() < 1e-14,
            "{ratio} instead of {}",
            numbers.ratio
        );
    }
}

#[test]
fn the_wait_before_turning_is_no_time_of_turning() {
    let mut app = app();
    app.insert_resource(TimeUpdateStrategy::ManualDuration(Duration::from_hours(1)));
    ask(&mut app, Command::SetTurning(true));
    assert_eq!(of(&app).turn().steps(), 0, "an hour of rest before");
    app.insert_resource(TimeUpdateStrategy::ManualDuration(FRAME));
    app.update();
    let steps = of(&app).turn().steps();
    assert!(steps > 0, "now it turns");
    ask(&mut app, Command::SetTurning(false));
    for _ in 0..10 {
        app.update();
    }
    assert_eq!(of(&app).turn().steps(), steps, "and stops at once");
}

/// At rest the window system is told to wait for events of the window alone, and no system asks for a frame; while
/// the pinion turns, frames follow each other.
#[test]
fn a_window_at_rest_sleeps() {
    let mut app = app();
    let mode = |app: &App| {
        let settings = app.world().resource::<WinitSettings>();
        (settings.focused_mode, settings.unfocused_mode)
    };
    let asleep = |mode: UpdateMode| matches!(mode, UpdateMode::Reactive { wait, react_to_device_events: false, .. } if wait >= Duration::from_hours(1));
    let (focused, unfocused) = mode(&app);
    assert!(asleep(focused) && asleep(unfocused), "{focused:?} {unfocused:?}");
    for _ in 0..100 {
        app.update();
    }
    let requests = app.world().resource::<Messages<RequestRedraw>>().len();
    assert_eq!(requests, 0, "nobody asked for a frame");
    ask(&mut app, Command::SetTurning(true));
    assert_eq!(mode(&app), (UpdateMode::Continuous, UpdateMode::Continuous), "turning");
    ask(&mut app, Command::SetTurning(false));
    assert!(asleep(mode(&app).0), "at rest again");
}

#[test]
fn a_window_of_new_size_is_drawn_twice() {
    let mut app = app();
    let window = app.world_mut().spawn_empty().id();
    app.world_mut().write_message(WindowResized {
        window,
        width: 960.0,
        height: 540.0,
    });
    app.update();
    let requests = app.world().resource::<Messages<RequestRedraw>>().len();
    assert_eq!(requests, 1, "the frame that lays it out is asked for");
}

/// Frames until nothing is under way, at most a minute's worth.
fn settle(app: &mut App) {
    for _ in 0..6000 {
        if !of(app).waiting() {
            return;
        }
        std::thread::sleep(Duration::from_millis(10));
        app.update();
    }
    panic!("the work does not end");
}

#[test]
fn new_gears_come_from_another_thread_and_the_old_ones_stay_until_then() {
    let mut app = app();
    settle(&mut app);
    let teeth = |app: &App| of(app).stage_pair().0.map(|pair| pair.design().wheel_teeth);
    let before = teeth(&app);
    let count = of(&app).stage_pair().1;
    // Two wishes in a row: only the last one counts.
    app.world_mut().write_message(Asked(Command::ChooseGears(13)));
    ask(&mut app, Command::ChooseGears(5));
    assert!(of(&app).waiting(), "under way");
    assert_eq!(teeth(&app), before, "the old gears stay");
    assert!(of(&app).moving(), "frames follow each other until the gears are there");
    settle(&mut app);
    assert_eq!(teeth(&app), Some(41), "the gears of the last wish");
    assert_eq!(of(&app).stage_pair().1, count + 1, "nobody saw the others");
    assert!(!of(&app).moving(), "and rest");
}

#[test]
fn a_setting_is_answered_at_once_and_exactly_soon_after() {
    let mut app = app();
    settle(&mut app);
    let designed = of(&app).contact().expect("gears are there");
    let setting = Setting {
        wheel_mm: -0.1,
        ..Setting::default()
    };
    ask(&mut app, Command::Set(setting));
    let first = of(&app).contact().expect("at once");
    let low = |contact: &SettingContact| contact.lash_mm.expect("the flanks touch")[0];
    assert!(low(&first) < low(&designed) - 0.07, "less lash: {first:?}");
    settle(&mut app);
    let then = of(&app).contact().expect("still there");
    assert!(then.exact, "the exact route has answered");
    assert!(
        (low(&then) - low(&first)).abs() < 1e-3,
        "and says the same: {first:?} {then:?}"
    );
    // Nonsense is put within reach.
    ask(
        &mut app,
        Command::Set(Setting {
            pinion_mm: f64::NAN,
            wheel_mm: 9.0,
            ..Setting::default()
        }),
    );
    assert_eq!(
        of(&app).setting(),
        Setting {
            wheel_mm: Setting::MOST.wheel_mm,
            ..Setting::default()
        }
    );
}

/// Held by the pinion, the ring gear goes over to the coast side by the lash, and back.
#[test]
fn rocking_moves_the_ring_gear_by_the_lash_and_nothing_else() {
    let mut app = app();
    settle(&mut app);
    ask(&mut app, Command::SetTurning(true));
    ask(&mut app, Command::SetRocking(true));
    assert!(!of(&app).turning(), "the pinion is held");
    let pinion = of(&app).turn().pinion_angle_rad();
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for _ in 0..200 {
        app.update();
        let angle = of(&app).wheel_angle_rad();
        low = low.min(angle);
        high = high.max(angle);
    }
    assert!(
        (of(&app).turn().pinion_angle_rad() - pinion).abs() < 1e-15,
        "the pinion stands"
    );
    let pair = of(&app).stage_pair().0.expect("gears").clone();
    let travel_mm = (high - low) * 0.5 * pair.design().wheel_outer_pitch_diameter_mm;
    let [least, most] = of(&app).contact().expect("gears").lash_mm.expect("they touch");
    println!("rocked by {travel_mm:.4} mm, lash {least:.4} to {most:.4} mm");
    assert!(travel_mm > least - 1e-3 && travel_mm < most + 1e-3, "{travel_mm}");
    ask(&mut app, Command::SetRocking(false));
    assert!(!of(&app).moving(), "at rest again");
}

/// Where a point of a gear comes to stand, in the frame of the axle.
fn placed(stand: Transform, point_mm: Vector3<f64>) -> Vector3<f64> {
    let bevy = stand.transform_point(bevy_from_axle(point_mm));
    Vector3::new(f64::from(bevy.x), -f64::from(bevy.y), -f64::from(bevy.z))
}

/// The stage puts points that meet onto each other: the mean point, where nothing is eased off, of either flank.
#[test]
fn points_that_meet_meet_on_the_stage() {
    for found in gear_sets::embedded().expect("embedded sets are read") {
        let gears = GearSet::new(found.design).expect("gears exist");
        for side in Side::BOTH {
            let flank = gears.pinion_flank(side);
            let meeting = flank.meeting(0.0, 0.0).expect("the mean point meets");
            let wheel_point = flank.wheel().point(0.0, 0.0).expect("on the flank").position_mm;
            let wheel = placed(wheel_stand(Placement::NOMINAL, meeting.roll_rad), wheel_point);
            let turned = meeting.roll_rad / gears.ratio();
            let stand = pinion_stand(Placement::NOMINAL, gears.design().offset_mm, turned);
            let pinion = placed(stand, meeting.point_mm);
            let apart_um = 1e3 * (wheel - pinion).norm();
            // Bevy counts in single precision: 112 mm to 4 nm, some of them in a row.
            assert!(apart_um < 0.1, "{} {side:?}: {apart_um} µm apart", found.source);
        }
    }
}

#[test]
fn moves_go_the_way_that_their_signs_say() {
    let origin = Vector3::zeros();
    let with = |p: f64, g: f64, e: f64, s: f64| Placement {
        pinion_axial_mm: p,
        wheel_axial_mm: g,
        offset_mm: e,
        shaft_angle_rad: s,
    };
    let near = |got: Vector3<f64>, want: [f64; 3]| {
        assert!((got - Vector3::from(want)).norm() < 1e-5, "{got:?} instead of {want:?}");
    };
    near(
        placed(wheel_stand(with(0.0, 0.2, 0.0, 0.0), 0.4), origin),
        [0.0, 0.0, 0.2],
    );
    near(
        placed(pinion_stand(with(0.3, 0.0, 0.1, 0.0), 30.0, 0.4), origin),
        [0.3, 30.1, 0.0],
    );
    // A turn about +y takes the pinion's axis from +x toward -z.
    let end = Vector3::new(100.0, 0.0, 0.0);
    let tilted = placed(pinion_stand(with(0.0, 0.0, 0.0, 1e-3), 30.0, 0.4), end);
    near(tilted, [100.0 * (1.0 - 0.5e-6), 30.0, -0.1]);
}
