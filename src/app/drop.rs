//! Gear files that are dropped on the window.

use bevy::prelude::*;
use bevy::window::FileDragAndDrop;

use super::commands::Asked;
use super::order::AppSystems;
use super::session::Session;
use crate::view::Command;

/// Passes what is dropped to the session as a command, and shows while a file hangs over the window that it can be let go.
pub fn plugin(app: &mut App) {
    app.add_message::<FileDragAndDrop>()
        .add_systems(Update, take.before(AppSystems::Commands));
}

fn take(mut dropped: MessageReader<FileDragAndDrop>, mut session: ResMut<Session>, mut asked: MessageWriter<Asked>) {
    for message in dropped.read() {
        match message {
            FileDragAndDrop::HoveredFile { .. } => session.hold_over(true),
            FileDragAndDrop::HoveredFileCanceled { .. } => session.hold_over(false),
            FileDragAndDrop::DroppedFile { path_buf, .. } => {
                session.hold_over(false);
                asked.write(Asked(Command::OpenGears(path_buf.clone())));
            }
        }
    }
}
