//! When a new picture is drawn: all the time while a gear moves or something is computed,
//! otherwise only when something was pressed, moved
//! or changed. A window that is only looked at costs nothing.

use core::time::Duration;

use bevy::prelude::*;
use bevy::window::{RequestRedraw, WindowResized, WindowScaleFactorChanged};
use bevy::winit::{UpdateMode, WinitSettings};

use super::order::AppSystems;
use super::room::{self, Room};
use super::session::Session;

/// The longest pause between frames. The window system wants a time at which to look again and spins without one
/// (it cannot add `Duration::MAX` to a clock), so it gets a day.
const LONGEST_PAUSE: Duration = Duration::from_hours(24);

/// When the window system should ask for the next frame.
pub fn update_mode(moving: bool) -> UpdateMode {
    if moving {
        UpdateMode::Continuous
    } else {
        // Events of the window only: the pointer somewhere else on the screen is nobody's business.
        UpdateMode::reactive_low_power(LONGEST_PAUSE)
    }
}

/// Keeps the mode in step with the session, and the layout in step with the window.
pub fn plugin(app: &mut App) {
    let mode = update_mode(false);
    app.insert_resource(WinitSettings {
        focused_mode: mode,
        unfocused_mode: mode,
    })
    .add_systems(
        Update,
        (follow_moving.after(room::make), draw_again_when_resized).in_set(AppSystems::Mirror),
    );
}

/// A window of new size is laid out one frame after the one that learns of it, because egui is told the size of the
/// frame before; at rest that frame must be asked for.
fn draw_again_when_resized(
    mut resized: MessageReader<WindowResized>,
    mut scaled: MessageReader<WindowScaleFactorChanged>,
    mut redraw: MessageWriter<RequestRedraw>,
) {
    if resized.read().count() + scaled.read().count() > 0 {
        redraw.write(RequestRedraw);
    }
}

fn follow_moving(session: Res<Session>, room: Option<Res<Room>>, mut settings: ResMut<WinitSettings>) {
    let mode = update_mode(session.moving() || room.is_some_and(|room| room.busy()));
    if settings.focused_mode != mode || settings.unfocused_mode != mode {
        *settings = WinitSettings {
            focused_mode: mode,
            unfocused_mode: mode,
        };
    }
}
