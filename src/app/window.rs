//! The window on the screen.

use std::panic::{self, AssertUnwindSafe};

use bevy::log::{Level, LogPlugin};
use bevy::prelude::*;
use bevy::render::RenderPlugin;
use bevy::window::{PresentMode, WindowResizeConstraints, WindowResolution};

use super::error::AppError;
use super::picture::PictureRequest;
use super::program::{load, program};
use super::stage::{Drawing, Easel};
use super::{idle, preflight};
use crate::job::kept::{self, keys as kept_keys};
use crate::job::saved_files;
use crate::words::message::LANGUAGE_VARIABLE;
use crate::words::say;

/// What to open the window with.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct WindowRequest {
    /// Gear set to show first: an embedded name or a file. Without it, the training set.
    pub gears: Option<String>,
}

/// Opens the window and returns when it has been closed.
///
/// # Errors
/// No display, no graphics driver, or a gear set that cannot be read; nothing was opened then.
pub fn run(request: &WindowRequest) -> Result<(), AppError> {
    let mut session = load(request.gears.as_deref())?;
    session = session
        .with_attempts_in(kept::folder())
        .with_pages_in(saved_files::folder())
        .with_keys_in(kept_keys::folder())
        .with_choices_in(kept_keys::folder(), std::env::var_os(LANGUAGE_VARIABLE).is_some());
    preflight::display()?;
    let adapter = preflight::adapter()?;
    // A processor that draws has better things to do than to smooth every edge four times.
    let smoothing = if adapter.software { Msaa::Off } else { Msaa::Sample4 };

    let window = Window {
        title: say!("window-name"),
        name: Some("lashwright".to_owned()),
        resolution: WindowResolution::new(1280, 720),
        resize_constraints: WindowResizeConstraints {
            min_width: PictureRequest::LEAST_WINDOW_PX[0] as f32,
            min_height: PictureRequest::LEAST_WINDOW_PX[1] as f32,
            ..default()
        },
        present_mode: PresentMode::AutoVsync,
        ..default()
    };
    let plugins = DefaultPlugins
        .set(WindowPlugin {
            primary_window: Some(window),
            ..default()
        })
        .set(RenderPlugin {
            synchronous_pipeline_compilation: adapter.software,
            ..default()
        })
        .set(quiet_log());
    let mut app = App::new();
    // The window system is opened here; where a library of it is missing, Bevy says so by a panic.
    without_panic(|| {
        app.add_plugins(plugins);
    })?;
    let easel = Easel {
        target: None,
        smoothing,
        drawing: Drawing::Shaded,
        panels: true,
    };
    program(&mut app, session, easel);
    app.add_plugins(idle::plugin);
    match app.run() {
        AppExit::Success => Ok(()),
        AppExit::Error(code) => Err(AppError::Start {
            reason: say!("display-ended", code = code.get()),
        }),
    }
}

/// Runs what may panic in code of others before anything is shown, and makes a sentence of the panic.
fn without_panic(start: impl FnOnce()) -> Result<(), AppError> {
    let before = panic::take_hook();
    panic::set_hook(Box::new(|_| {}));
    let done = panic::catch_unwind(AssertUnwindSafe(start));
    panic::set_hook(before);
    done.map_err(|payload| {
        let said = payload.downcast_ref::<String>().map(String::as_str);
        let said = said
            .or_else(|| payload.downcast_ref::<&str>().copied())
            .map_or_else(|| say!("display-says-nothing"), |said| said.replace('\n', " "));
        AppError::Start {
            reason: say!("display-window-system", said = said),
        }
    })
}

/// Nothing but errors, unless `RUST_LOG` asks for more.
fn quiet_log() -> LogPlugin {
    LogPlugin {
        filter: String::new(),
        level: Level::ERROR,
        ..default()
    }
}
