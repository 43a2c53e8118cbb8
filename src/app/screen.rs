//! The panels on the screen: an adapter between egui's pass and the session.

use bevy::prelude::*;
use bevy::window::RequestRedraw;
use bevy_egui::{
    EguiContext, EguiContexts, EguiGlobalSettings, EguiInput, EguiPlugin, EguiPreUpdateSet, EguiPrimaryContextPass,
    PrimaryEguiContext, egui,
};

use super::commands::Asked;
use super::room::Room;
use super::session::Session;
use super::stage::Easel;
use crate::panels;
use crate::view::{TextSize, Theme};

/// The part of the window that the panels leave for the gears, and the window itself, in physical pixels.
#[derive(Debug, Clone, Copy, PartialEq, Default, Resource)]
pub struct StageArea {
    /// Left, top, width and height of the stage; `None` before the panels were laid out.
    pub stage_px: Option<[f32; 4]>,
    /// Width and height of the window.
    pub window_px: [f32; 2],
}

/// Draws the panels onto the camera that carries [`panel_context`].
pub(super) fn plugin(app: &mut App) {
    app.add_plugins(EguiPlugin::default())
        .init_resource::<StageArea>()
        .add_systems(
            PreUpdate,
            drop_repeated_modifiers
                .after(EguiPreUpdateSet::ProcessInput)
                .before(EguiPreUpdateSet::BeginPass),
        )
        .add_systems(
            EguiPrimaryContextPass,
            draw_panels.run_if(|easel: Res<Easel>| easel.panels),
        );
    // The eye brings its own context, with the fonts in it.
    app.world_mut()
        .resource_mut::<EguiGlobalSettings>()
        .auto_create_primary_context = false;
}

/// bevy_egui tells egui in every frame which of shift, control and so on are held, as an event; and egui asks for
/// another frame after every event, so that a window at rest would never stop drawing. Only a change is passed on.
fn drop_repeated_modifiers(mut contexts: Query<(&mut EguiContext, &mut EguiInput)>) {
    for (mut context, mut input) in &mut contexts {
        let mut held = context.get_mut().input(|input| input.modifiers);
        input.events.retain(|event| match event {
            egui::Event::ModifiersChanged(now) => core::mem::replace(&mut held, *now) != *now,
            _ => true,
        });
    }
}

/// What makes a camera the one that the panels are drawn on, with fonts and colours from the first pass on.
pub(super) fn panel_context(session: &Session) -> (EguiContext, PrimaryEguiContext) {
    let mut context = EguiContext::default();
    panels::theme::install_fonts(context.get_mut());
    panels::theme::apply(context.get_mut(), session.theme(), session.text_size());
    (context, PrimaryEguiContext)
}

fn draw_panels(
    mut contexts: EguiContexts,
    session: Res<Session>,
    mut area: ResMut<StageArea>,
    mut asked: MessageWriter<Asked>,
    mut redraw: MessageWriter<RequestRedraw>,
    mut room: ResMut<Room>,
    mut styled: Local<Option<(Theme, TextSize)>>,
) -> Result {
    let ctx = contexts.ctx_mut()?;
    let style = (session.theme(), session.text_size());
    if *styled != Some(style) {
        panels::theme::apply(ctx, style.0, style.1);
        *styled = Some(style);
    }
    let window = ctx.content_rect();
    let mut out = Vec::new();
    let background = egui::UiBuilder::new()
        .layer_id(egui::LayerId::background())
        .max_rect(window);
    let mut ui = egui::Ui::new(ctx.clone(), egui::Id::new("window"), background);
    let left_over = panels::window_panel(&mut ui, &session.view(), room.pictures(), &mut out);
    let stage = left_over.stage;
    if let Some(sizes) = left_over.room
        && room.ask(sizes)
    {
        redraw.write(RequestRedraw);
    }

    let scale = ctx.pixels_per_point();
    let [left, top, width, height] = [
        stage.left() - window.left(),
        stage.top() - window.top(),
        stage.width(),
        stage.height(),
    ]
    .map(|v| v * scale);
    let seen = StageArea {
        stage_px: (width >= 1.0 && height >= 1.0).then_some([left, top, width, height]),
        window_px: [window.width() * scale, window.height() * scale],
    };
    // What was asked for is carried out in the next frame, and a stage of new size is drawn there.
    if *area != seen || !out.is_empty() {
        redraw.write(RequestRedraw);
    }
    area.set_if_neq(seen);
    asked.write_batch(out.into_iter().map(Asked));
    Ok(())
}
