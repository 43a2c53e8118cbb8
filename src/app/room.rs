//! The tooth room's pictures: made anew when something that they show has changed.

use std::path::Path;
use std::sync::Arc;

use bevy::prelude::*;

use super::{AppSystems, Session, raster};
use crate::contact::{Film, Route};
use crate::drawing::{self, Theme as InkTheme, svg};
use crate::job::tooth_room::{self, Chart, Shown};
use crate::job::{self, Failure, kept};
use crate::panels::{RoomPictures, RoomSizes};
use crate::view::{Place, Setting, StagePair};
use crate::words::{Language, say};

/// Everything that the pictures of flanks and motion depend on.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Key {
    pair: u64,
    setting: Setting,
    other: Option<Setting>,
    film: Film,
    sizes: RoomSizes,
    /// There are words on them.
    language: Language,
}

/// What the wall chart's cells depend on.
#[derive(Debug, Clone, Copy, PartialEq)]
struct ChartKey {
    pair: u64,
    offset_mm: f64,
    shaft_angle_deg: f64,
    film: Film,
}

/// The pictures and what they were made for.
#[derive(Debug, Default, Resource)]
pub(super) struct Room {
    wanted: RoomSizes,
    made: Option<(Key, RoomPictures)>,
    chart: Option<(ChartKey, Chart)>,
}

impl Room {
    /// What there is to be seen.
    pub(super) fn pictures(&self) -> Option<&RoomPictures> {
        self.made.as_ref().map(|(_, pictures)| pictures)
    }

    /// Asks for pictures of these sizes; says whether that is news.
    pub(super) fn ask(&mut self, sizes: RoomSizes) -> bool {
        let news = self.wanted != sizes;
        self.wanted = sizes;
        news
    }
}

/// Makes pictures while the room is shown, and saves one when that was asked for.
pub(super) fn plugin(app: &mut App) {
    app.init_resource::<Room>()
        .add_systems(Update, make.in_set(AppSystems::Mirror))
        .add_systems(
            Update,
            save.in_set(AppSystems::Simulate)
                .after(super::session::turn_pinion)
                .before(super::work::work),
        );
}

fn make(session: Res<Session>, mut room: ResMut<Room>) {
    if session.place() != Place::ToothRoom {
        return;
    }
    let (Some(pair), count) = session.stage_pair() else {
        room.made = None;
        return;
    };
    let key = Key {
        pair: count,
        setting: session.setting(),
        other: session.other(),
        film: session.film(),
        sizes: room.wanted,
        language: Language::spoken(),
    };
    if key.sizes == RoomSizes::default() || room.made.as_ref().is_some_and(|(made, _)| *made == key) {
        return;
    }
    let chart_key = ChartKey {
        pair: count,
        offset_mm: key.setting.offset_mm,
        shaft_angle_deg: key.setting.shaft_angle_deg,
        film: key.film,
    };
    if room.chart.as_ref().is_none_or(|(made, _)| *made != chart_key) {
        room.chart = Chart::new(&pair.pair, key.setting.placement(), key.film).map(|chart| (chart_key, chart));
    }
    let Some(pictures) = pictures(pair, &key, room.chart.as_ref().map(|(_, chart)| chart)) else {
        return;
    };
    room.made = Some((key, pictures));
}

fn pictures(pair: &Arc<StagePair>, key: &Key, chart: Option<&Chart>) -> Option<RoomPictures> {
    let shown = Shown {
        pair: &pair.pair,
        placement: key.setting.placement(),
        film: key.film,
        // The lines of a print come from a grid: the fast one is as good for the eye, and numbers beside it are exact.
        route: Route::Fast,
        other: key.other.map(|other| other.placement()),
    };
    let chart = chart?.picture(shown.placement, key.sizes.chart);
    Some(RoomPictures {
        flanks: tooth_room::flanks(&shown, key.sizes.flanks),
        motion: tooth_room::motion(&shown, key.sizes.motion),
        chart: chart.items,
        chart_grid: chart.grid,
        across_mm: chart.across_mm,
        down_mm: chart.down_mm,
    })
}

/// Writes both flanks and the motion of the present setting, by the exact route, as an SVG file and as a PNG file into the
/// folder that the program was started in.
fn save(mut session: ResMut<Session>) {
    if !session.bypass_change_detection().take_saving() {
        return;
    }
    let Some(pair) = session.stage_pair().0.cloned() else {
        return;
    };
    let shown = Shown {
        pair: &pair.pair,
        placement: session.setting().placement(),
        film: session.film(),
        route: Route::Exact,
        other: session.other().map(|other| other.placement()),
    };
    let picture = tooth_room::sheet(&shown);
    session.saved(match save_both(&picture) {
        Ok(name) => say!(
            "notices-saved-picture",
            svg = format!("{name}.svg"),
            png = format!("{name}.png"),
        ),
        Err(error) => say!("notices-not-saved", why = kept::sentence(&error)),
    });
}

/// Under a name that neither has yet.
fn save_both(picture: &drawing::Picture) -> Result<String, Failure> {
    let name = (1..1000)
        .map(|number| format!("tooth-room-{number}"))
        .find(|name| {
            ["svg", "png"]
                .iter()
                .all(|ending| !Path::new(&format!("{name}.{ending}")).exists())
        })
        .ok_or_else(|| Failure::other(say!("notices-too-many-pictures")))?;
    let points = raster::png(picture, InkTheme::Paper)?;
    let text = svg::write(picture, InkTheme::Paper);
    job::picture_file::save(Path::new(&format!("{name}.svg")), text.as_bytes())?;
    job::picture_file::save(Path::new(&format!("{name}.png")), &points)?;
    Ok(name)
}
