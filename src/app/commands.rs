//! Commands on their way from the panels to the session, and what follows from them in every frame.

use bevy::prelude::*;

use super::order::AppSystems;
use super::session::Session;
use crate::view::Command;

/// A command on its way from a panel to the session.
#[derive(Debug, Clone, PartialEq, Message)]
pub struct Asked(pub Command);

/// Commands, what is kept, and the turning pinion. Needs a [`Session`] and Bevy's time, no window and no drawing.
pub(super) fn plugin(app: &mut App) {
    app.add_message::<Asked>()
        .add_systems(Update, (carry_out, keep).chain().in_set(AppSystems::Commands))
        .add_systems(Update, turn_pinion.in_set(AppSystems::Simulate));
}

/// Keeps keys and how the window is wanted, in the frame in which they were changed.
fn keep(mut session: ResMut<Session>) {
    if session.keys_changed() {
        session.keep_keys();
    }
    if session.choices_changed() {
        session.keep_choices();
    }
}

fn carry_out(mut asked: MessageReader<Asked>, mut session: ResMut<Session>) {
    for Asked(command) in asked.read() {
        if let Err(refusal) = session.apply(command.clone()) {
            warn!("{command:?} was refused: {refusal}");
        }
    }
}

/// Turns by the time since the frame before, if the pinion turned by itself then too: the wait before it was started
/// is no time of turning.
pub(super) fn turn_pinion(time: Res<Time>, mut session: ResMut<Session>, mut turned_before: Local<bool>) {
    if session.turning_or_rocked() {
        if *turned_before {
            session.run(time.delta());
        }
        *turned_before = true;
    } else {
        *turned_before = false;
    }
}
