//! The program without the window around it, and the session that it opens with.

use bevy::prelude::*;

use super::error::AppError;
use super::order::order_plugin;
use super::session::Session;
use super::stage::Easel;
use super::{commands, drop, room, screen, stage, work};
use crate::job::gear_sets;
use crate::view::{Command, Origin, TextSize, Theme};

/// The set that is shown when nobody names one: hypoid, of middle ratio, forgiving.
const TRAINING_SET: &str = "3.73-tapered-ring-224";

/// Commands, the turning pinion, and work on other threads. Needs a [`Session`] and Bevy's time, no window and no drawing.
pub fn session_plugin(app: &mut App) {
    app.add_plugins((commands::plugin, work::plugin));
}

/// The program, without the window around it.
pub(super) fn program(app: &mut App, session: Session, easel: Easel) {
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
pub(super) fn load(gears: Option<&str>) -> Result<Session, AppError> {
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

pub(super) fn prepare(session: &mut Session, theme: Theme, text_size: TextSize) {
    for command in [Command::SetTheme(theme), Command::SetTextSize(text_size)] {
        // Neither is ever refused.
        session.apply(command).unwrap_or_default();
    }
}
