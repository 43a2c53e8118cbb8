//! Steel, paste, and the ground behind.

use bevy::asset::{RenderAssetUsages, uuid_handle};
use bevy::camera::visibility::NoFrustumCulling;
use bevy::mesh::{Indices, PrimitiveTopology};
use bevy::prelude::*;
use bevy::render::render_resource::AsBindGroup;
use bevy::shader::ShaderRef;

use super::drawing::{Drawing, Easel, Part, part_color};
use crate::app::frames::bevy_length;
use crate::app::session::Session;
use crate::view::axle_parts::Look;
use crate::view::look::TOOTH;
use crate::view::{Rgb, Theme};

/// A colour of the look for Bevy.
fn color(rgb: Rgb) -> Color {
    let [red, green, blue] = rgb.channels();
    Color::srgb_u8(red, green, blue)
}

/// The shader of [`Finish`].
const FINISH_SHADER: Handle<Shader> = uuid_handle!("5c0a3a0e-3f0e-4a55-9a55-1f6b1c2e7d41");

/// The finish of a surface: a colour, lit or flat, and how much of the shop it mirrors.
#[derive(Debug, Clone, Asset, TypePath, AsBindGroup)]
pub(super) struct Finish {
    #[uniform(0)]
    color: LinearRgba,
    /// Lit (1) or flat (0), share of the shop that is mirrored, sharpness of the lamp's reflection, and how clearly paste
    /// was pressed away: below 0 there is none.
    #[uniform(0)]
    nature: Vec4,
    /// Of paste, and of the ridge round a print.
    #[uniform(0)]
    paste: LinearRgba,
    #[uniform(0)]
    ridge: LinearRgba,
    /// What is left of the paste, as the shader reads it.
    #[texture(1)]
    #[sampler(2)]
    left: Option<Handle<Image>>,
}

impl Finish {
    fn flat(color: Color) -> Self {
        Self {
            color: color.into(),
            nature: Vec4::new(0.0, 0.0, 0.0, -1.0),
            paste: LinearRgba::BLACK,
            ridge: LinearRgba::BLACK,
            left: None,
        }
    }

    fn lit(color: Color, mirrored: f32, sharpness: f32) -> Self {
        Self {
            nature: Vec4::new(1.0, mirrored, sharpness, -1.0),
            ..Self::flat(color)
        }
    }

    /// The same under paste.
    fn under_paste(self, paste: Color, ridge: Color) -> Self {
        Self {
            nature: self.nature.with_w(0.0),
            paste: paste.into(),
            ridge: ridge.into(),
            ..self
        }
    }

    /// What is left of the paste, and how clearly the print stands out, 0 to 1.
    pub(super) fn set_paste(&mut self, left: Handle<Image>, clearness: f64) {
        self.left = Some(left);
        self.nature.w = bevy_length(clearness.clamp(0.0, 1.0));
    }
}

impl Material for Finish {
    fn fragment_shader() -> ShaderRef {
        FINISH_SHADER.into()
    }

    fn enable_prepass() -> bool {
        false
    }

    fn enable_shadows() -> bool {
        false
    }
}

/// Brings the finish and its shader, which is there before the first frame.
pub(super) fn plugin(app: &mut App) {
    let shader = Shader::from_wgsl(include_str!("finish.wgsl"), "lashwright/finish.wgsl");
    let mut shaders = app.world_mut().resource_mut::<Assets<Shader>>();
    if let Err(error) = shaders.insert(FINISH_SHADER.id(), shader) {
        error!("the shader of the stage could not be kept: {error}");
    }
    app.add_plugins(MaterialPlugin::<Finish>::default());
}

/// How a part is touched: not at all, by the pointer, or chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Touch {
    None,
    Pointed,
    Chosen,
}

/// The finishes of the parts.
#[derive(Debug, Resource)]
pub(super) struct Finishes {
    looks: Vec<(Look, [Handle<Finish>; 3])>,
    body: [Handle<Finish>; 2],
    flanks: Handle<Finish>,
    mark: Handle<Finish>,
    /// Drive and coast flanks under paste.
    pub(super) paste: [Handle<Finish>; 2],
}

impl Finishes {
    /// The finish of a part around the gears.
    pub(super) fn of_look(&self, look: Look, touch: Touch) -> Handle<Finish> {
        let found = self.looks.iter().find(|(of, _)| *of == look);
        let number = match touch {
            Touch::None => 0,
            Touch::Pointed => 1,
            Touch::Chosen => 2,
        };
        found
            .and_then(|(_, finishes)| finishes.get(number))
            .cloned()
            .unwrap_or_default()
    }

    /// The finish of a part.
    pub(super) fn of(&self, part: Part) -> Handle<Finish> {
        match part {
            Part::Wheel => self.body[0].clone(),
            Part::Pinion => self.body[1].clone(),
            Part::Flanks => self.flanks.clone(),
            Part::Mark => self.mark.clone(),
            Part::Paste | Part::Print => self.paste[0].clone(),
        }
    }
}

/// Makes the finishes.
pub(super) fn prepare(mut commands: Commands, easel: Res<Easel>, mut finishes: ResMut<Assets<Finish>>) {
    let flat = |part: Part| {
        let [red, green, blue] = part_color(part);
        Color::srgb_u8(red, green, blue)
    };
    let mut finish = |part: Part| {
        finishes.add(match easel.drawing {
            Drawing::Parts if part == Part::Paste => {
                Finish::flat(flat(Part::Print)).under_paste(flat(Part::Paste), flat(Part::Paste))
            }
            Drawing::Parts => Finish::flat(flat(part)),
            Drawing::Shaded => match part {
                // The two are told apart where they mesh by the shade of their turned faces.
                Part::Wheel => Finish::lit(color(TOOTH.steel).darker(0.05), 0.26, 26.0),
                Part::Pinion => Finish::lit(color(TOOTH.steel).lighter(0.05), 0.34, 26.0),
                Part::Flanks => Finish::lit(color(TOOTH.steel).lighter(0.06), 0.42, 30.0),
                Part::Mark => Finish::lit(color(TOOTH.paste).darker(0.16), 0.0, 1.0),
                // Darker than the flanks around, so that the print is told from the paste without colour too.
                Part::Paste | Part::Print => Finish::lit(color(TOOTH.steel).darker(0.16), 0.10, 30.0)
                    .under_paste(color(TOOTH.paste), color(TOOTH.paste_rim)),
            },
        })
    };
    let body = [finish(Part::Wheel), finish(Part::Pinion)];
    let (flanks, mark) = (finish(Part::Flanks), finish(Part::Mark));
    let paste = [finish(Part::Paste), finish(Part::Paste)];
    let looks = LOOKS
        .into_iter()
        .map(|look| {
            (
                look,
                [0.0, 0.10, 1.0].map(|touched| finishes.add(finish_of(look, touched))),
            )
        })
        .collect();
    let prepared = Finishes {
        looks,
        body,
        flanks,
        mark,
        paste,
    };
    commands.insert_resource(prepared);
}

const LOOKS: [Look; 6] = [
    Look::Cast,
    Look::Steel,
    Look::Ring,
    Look::Roller,
    Look::Shim,
    Look::Section,
];

/// The finish of a part around the gears: a little lighter under the pointer, violet when it is chosen.
fn finish_of(look: Look, touched: f32) -> Finish {
    let steel = color(TOOTH.steel);
    let (base, mirrored, sharpness) = match look {
        Look::Cast => (steel.darker(0.07), 0.10, 8.0),
        Look::Steel => (steel.darker(0.02), 0.30, 26.0),
        Look::Ring => (steel.lighter(0.10), 0.40, 30.0),
        Look::Roller => (steel.lighter(0.16), 0.55, 40.0),
        Look::Shim => (color(TOOTH.paste_rim).lighter(0.04), 0.10, 12.0),
        Look::Section => (color(TOOTH.ghost_light).darker(0.10), 0.0, 1.0),
    };
    if touched >= 1.0 {
        let accent = color(Theme::Paper.tokens().accent).lighter(0.12);
        return Finish::lit(accent.mix(&base, 0.25), mirrored, sharpness);
    }
    let shown = base.lighter(touched);
    if look == Look::Section {
        Finish::flat(shown)
    } else {
        Finish::lit(shown, mirrored, sharpness)
    }
}

/// The ground of the stage, drawn behind everything.
#[derive(Debug, Component)]
pub(super) struct Backdrop {
    grounds: Vec<(Theme, Handle<Mesh>)>,
}

/// Hangs the ground up behind the stage; the eye gives it its size.
pub(super) fn backdrop(
    eye: &mut ChildSpawnerCommands<'_>,
    theme: Theme,
    meshes: &mut Assets<Mesh>,
    finishes: &mut Assets<Finish>,
) {
    let grounds: Vec<(Theme, Handle<Mesh>)> = Theme::ALL
        .into_iter()
        .map(|theme| (theme, meshes.add(gradient(theme))))
        .collect();
    let mesh = grounds
        .iter()
        .find(|(of, _)| *of == theme)
        .map(|(_, mesh)| mesh.clone())
        .unwrap_or_default();
    eye.spawn((
        Name::new("ground"),
        Backdrop { grounds },
        Mesh3d(mesh),
        MeshMaterial3d(finishes.add(Finish::flat(Color::WHITE))),
        NoFrustumCulling,
    ));
}

/// A unit square that faces the eye, in the stage's colours from top to foot, in bands fine enough that the mixing of
/// light and not of sRGB numbers in between is not seen.
fn gradient(theme: Theme) -> Mesh {
    const BANDS: u16 = 16;
    let tokens = theme.tokens();
    let (top, foot) = (color(tokens.stage_top).to_srgba(), color(tokens.stage_foot).to_srgba());
    let mut positions = Vec::new();
    let mut colors = Vec::new();
    for row in 0..=BANDS {
        let share = f32::from(row) / f32::from(BANDS);
        let mixed = LinearRgba::from(foot * (1.0 - share) + top * share).to_f32_array();
        for x in [-0.5, 0.5] {
            positions.push([x, share - 0.5, 0.0]);
            colors.push(mixed);
        }
    }
    let indices = (0..BANDS)
        .flat_map(|row| [0, 1, 3, 0, 3, 2].map(|corner| 2 * row + corner))
        .collect();
    Mesh::new(PrimitiveTopology::TriangleList, RenderAssetUsages::default())
        .with_inserted_attribute(Mesh::ATTRIBUTE_NORMAL, vec![[0.0, 0.0, 1.0]; positions.len()])
        .with_inserted_attribute(Mesh::ATTRIBUTE_POSITION, positions)
        .with_inserted_attribute(Mesh::ATTRIBUTE_COLOR, colors)
        .with_inserted_indices(Indices::U16(indices))
}

/// Changes the ground with the theme.
pub(super) fn follow_theme(
    session: Res<Session>,
    easel: Res<Easel>,
    mut clear: ResMut<ClearColor>,
    backdrop: Option<Single<(&Backdrop, &mut Mesh3d)>>,
    mut shown: Local<Option<Theme>>,
) {
    if *shown == Some(session.theme()) {
        return;
    }
    *shown = Some(session.theme());
    clear.0 = match easel.drawing {
        Drawing::Shaded => color(session.theme().tokens().stage_foot),
        Drawing::Parts => Color::BLACK,
    };
    if let Some(backdrop) = backdrop {
        let (Backdrop { grounds }, mut mesh) = backdrop.into_inner();
        if let Some((_, ground)) = grounds.iter().find(|(theme, _)| *theme == session.theme()) {
            mesh.0 = ground.clone();
        }
    }
}
