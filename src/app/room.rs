//! The tooth room's pictures: made anew on another thread when something that they show has changed, and saved there.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use bevy::prelude::*;
use bevy::tasks::{AsyncComputeTaskPool, Task, futures::check_ready};

use super::bench::saved;
use super::order::AppSystems;
use super::session::Session;
use super::{commands, raster, work};
use crate::contact::{Film, Route};
use crate::drawing::{Theme as InkTheme, svg};
use crate::job::tooth_room::{self, Chart, Shown};
use crate::job::{Failure, picture_file, saved_files};
use crate::panels::{RoomPictures, RoomSizes};
use crate::view::{Place, Saved, Setting, StagePair};
use crate::words::{Language, speaking};

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

impl Key {
    fn of_chart(&self) -> ChartKey {
        ChartKey {
            pair: self.pair,
            offset_mm: self.setting.offset_mm,
            shaft_angle_deg: self.setting.shaft_angle_deg,
            film: self.film,
        }
    }
}

/// Pictures that were made, with what they were made of.
#[derive(Debug)]
struct Made {
    key: Key,
    pictures: Option<RoomPictures>,
    chart: Option<(ChartKey, Arc<Chart>)>,
}

/// The pictures and what they were made for.
#[derive(Debug, Default, Resource)]
pub(super) struct Room {
    wanted: RoomSizes,
    made: Option<Made>,
    /// Pictures being made; one at a time, so that a drag does not pile up work.
    making: Option<Task<Made>>,
    /// A picture being saved.
    saving: Option<Task<Saved>>,
}

impl Room {
    /// What there is to be seen.
    pub(super) fn pictures(&self) -> Option<&RoomPictures> {
        self.made.as_ref()?.pictures.as_ref()
    }

    /// Asks for pictures of these sizes; says whether that is news.
    pub(super) fn ask(&mut self, sizes: RoomSizes) -> bool {
        let news = self.wanted != sizes;
        self.wanted = sizes;
        news
    }

    /// Whether something is being made or saved.
    pub(super) fn busy(&self) -> bool {
        self.making.is_some() || self.saving.is_some()
    }
}

/// Makes pictures while the room is shown, and saves one when that was asked for.
pub(super) fn plugin(app: &mut App) {
    app.init_resource::<Room>()
        .add_systems(Update, make.in_set(AppSystems::Mirror))
        .add_systems(
            Update,
            save.in_set(AppSystems::Simulate)
                .after(commands::turn_pinion)
                .before(work::work),
        );
}

pub(super) fn make(session: Res<Session>, mut room: ResMut<Room>) {
    if let Some(task) = &mut room.bypass_change_detection().making {
        let Some(made) = check_ready(task) else { return };
        room.making = None;
        room.made = Some(made);
    }
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
    if key.sizes == RoomSizes::default() || room.made.as_ref().is_some_and(|made| made.key == key) {
        return;
    }
    let chart = room.made.as_ref().and_then(|made| made.chart.clone());
    let pair = Arc::clone(pair);
    room.making = Some(AsyncComputeTaskPool::get().spawn(async move { made(&pair, key, chart) }));
}

/// All pictures; the wall chart's cells are computed again only where they are others than before.
fn made(pair: &StagePair, key: Key, before: Option<(ChartKey, Arc<Chart>)>) -> Made {
    let of_chart = key.of_chart();
    let chart = before.filter(|(made, _)| *made == of_chart).or_else(|| {
        let chart = Chart::new(&pair.pair, key.setting.placement(), key.film)?;
        Some((of_chart, Arc::new(chart)))
    });
    Made {
        key,
        pictures: chart
            .as_ref()
            .map(|(_, chart)| speaking(key.language, || pictures(pair, &key, chart))),
        chart,
    }
}

fn pictures(pair: &StagePair, key: &Key, chart: &Chart) -> RoomPictures {
    let shown = Shown {
        pair: &pair.pair,
        placement: key.setting.placement(),
        film: key.film,
        // The lines of a print come from a grid: the fast one is as good for the eye, and numbers beside it are exact.
        route: Route::Fast,
        other: key.other.map(|other| other.placement()),
    };
    let chart = chart.picture(shown.placement, key.sizes.chart);
    RoomPictures {
        flanks: tooth_room::flanks(&shown, key.sizes.flanks),
        motion: tooth_room::motion(&shown, key.sizes.motion),
        chart: chart.items,
        chart_grid: chart.grid,
        across_mm: chart.across_mm,
        down_mm: chart.down_mm,
    }
}

/// Has both flanks and the motion of the present setting written, by the exact route, as an SVG file and as a PNG file.
fn save(mut session: ResMut<Session>, mut room: ResMut<Room>) {
    if let Some(task) = &mut room.bypass_change_detection().saving {
        let Some(saved) = check_ready(task) else { return };
        room.saving = None;
        session.saved(saved);
    }
    if !session.bypass_change_detection().take_saving() {
        return;
    }
    let Some(pair) = session.stage_pair().0.cloned() else {
        return;
    };
    let (setting, other, film, folder) = (session.setting(), session.other(), session.film(), session.pages());
    room.saving = Some(AsyncComputeTaskPool::get().spawn(async move {
        let shown = Shown {
            pair: &pair.pair,
            placement: setting.placement(),
            film,
            route: Route::Exact,
            other: other.map(|other| other.placement()),
        };
        saved(save_both(&shown, &folder))
    }));
}

/// Under a name that neither has yet.
fn save_both(shown: &Shown<'_>, folder: &Path) -> Result<Vec<PathBuf>, Failure> {
    let picture = tooth_room::sheet(shown);
    let points = raster::png(&picture, InkTheme::Paper)?;
    let text = svg::write(&picture, InkTheme::Paper);
    let files = saved_files::new_files(folder, "tooth-room", &["svg", "png"])?;
    for (file, bytes) in files.iter().zip([text.as_bytes(), points.as_slice()]) {
        picture_file::save(file, bytes)?;
    }
    Ok(files)
}
