//! The order of work within a frame.

use bevy::prelude::*;

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
