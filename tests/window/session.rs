//! The session in a Bevy app without drawing: commands change it, turning keeps the ratio, rest is rest.

use core::f64::consts::TAU;
use std::time::Duration;

use bevy::ecs::schedule::{LogLevel, ScheduleBuildSettings};
use bevy::prelude::*;
use bevy::time::TimeUpdateStrategy;
use bevy::window::{RequestRedraw, WindowResized, WindowScaleFactorChanged};
use bevy::winit::{UpdateMode, WinitSettings};
use lashwright::app::{Asked, Refusal, Session, idle, order_plugin, session_plugin};
use lashwright::job::gear_sets;
use lashwright::view::{Command, Origin, Projection, TextSize, Theme, Viewpoint};

const FRAME: Duration = Duration::from_millis(16);

fn session() -> Session {
    let sets = gear_sets::embedded().expect("embedded sets are read");
    Session::new(sets.into_iter().map(|set| (set.design, Origin::BuiltIn)).collect())
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

fn ask(app: &mut App, command: Command) {
    app.world_mut().write_message(Asked(command));
    app.update();
}

fn of(app: &App) -> &Session {
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
        session.apply(Command::SetTurning(true)).expect("there are blanks");
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
