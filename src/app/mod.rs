//! The window: Bevy draws the gears, egui the panels.
//!
//! One resource, the [`Session`], owns what is shown. Panels ask ([`Asked`]), the session carries out, the stage
//! mirrors it. The order within a frame is that of [`AppSystems`]; the panels are drawn at its end, so that what is
//! asked there is carried out in the next frame.
//!
//! * [`run`] opens the window, [`picture`] draws the same program onto an image without one.
//! * `preflight` looks for a display and a driver before Bevy starts, so that their lack is a sentence and no panic.
//! * `session` needs no drawing at all and is tested without; [`idle`] says when a new frame is drawn.
//! * [`frames`] is the only border between the axle's frame and Bevy's.

#![expect(
    elided_lifetimes_in_paths,
    reason = "the parameters of systems are written as Bevy's own are"
)]

mod bench;
mod choices;
pub mod drop;
mod error;
pub mod frames;
pub mod idle;
mod keys;
mod picture;
pub mod preflight;
mod raster;
mod room;
mod screen;
mod session;
pub mod stage;
mod window;
mod work;

use bevy::prelude::*;

pub use error::AppError;
pub use picture::{ExerciseRequest, Picture, PictureReport, PictureRequest, TurningFrames, draw, picture};
pub use screen::StageArea;
pub use session::{Asked, Refusal, Session, plugin as session_plugin};
pub use window::{WindowRequest, run};

use self::stage::Easel;
use crate::job::gear_sets;
use crate::view::{Command, Origin, TextSize, Theme};

/// The order of work within a frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, SystemSet)]
pub enum AppSystems {
    /// What was asked for is carried out.
    Commands,
    /// The pinion turns by itself.
    Simulate,
    /// What is drawn follows the session.
    Mirror,
}

/// Declares the order of [`AppSystems`].
pub fn order_plugin(app: &mut App) {
    app.configure_sets(
        Update,
        (AppSystems::Commands, AppSystems::Simulate, AppSystems::Mirror).chain(),
    );
}

/// The set that is shown when nobody names one: hypoid, of middle ratio, forgiving.
const TRAINING_SET: &str = "3.73-tapered-ring-224";

/// The program, without the window around it.
fn program(app: &mut App, session: Session, easel: Easel) {
    app.insert_resource(session).insert_resource(easel);
    app.add_plugins((
        order_plugin,
        session_plugin,
        drop::plugin,
        room::plugin,
        screen::plugin,
        stage::plugin,
    ));
}

/// A session with all sets that ship with the program, and the named one on the stage. A file comes first in the list.
fn load(gears: Option<&str>) -> Result<Session, AppError> {
    let mut found = gear_sets::embedded()?;
    let mut own_file = false;
    let wanted = gears.unwrap_or(TRAINING_SET);
    if gears.is_some() && !found.iter().any(|set| set.source == wanted) {
        found.insert(0, gear_sets::find(wanted)?);
        own_file = true;
    }
    let chosen = found.iter().position(|set| set.source == wanted).unwrap_or(0);
    let sets = found.into_iter().enumerate().map(|(place, set)| {
        let origin = if own_file && place == 0 {
            Origin::File(set.source)
        } else {
            Origin::BuiltIn
        };
        (set.design, origin)
    });
    let mut session = Session::new(sets.collect());
    // The place was just found in the list; only an empty list refuses it, and then there is nothing to show.
    session.apply(Command::ChooseGears(chosen)).unwrap_or_default();
    // The first frame shows gears.
    session.finish();
    Ok(session)
}

fn prepare(session: &mut Session, theme: Theme, text_size: TextSize) {
    for command in [Command::SetTheme(theme), Command::SetTextSize(text_size)] {
        // Neither is ever refused.
        session.apply(command).unwrap_or_default();
    }
}
