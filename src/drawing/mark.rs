//! Small marks whose shape says what their colour says.

use super::ink::Ink;
use super::path::{Path, Point};
use super::picture::{Fill, Item, Stroke};

/// A mark at a place of a chart or scale.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// Filled dot: a point that was computed or read.
    Dot,
    /// Open circle: a belief.
    OpenCircle,
    /// Filled triangle that points up to its place: a truth, below its scale.
    TriangleUp,
    /// Upright cross.
    Plus,
    /// Slanting cross.
    Cross,
    /// Tick in a circle: inside the window.
    Good,
    /// Tilde in a square: close.
    Near,
    /// Cross in a triangle: outside.
    Off,
}

impl Mark {
    /// The mark at a place, `size` points across, in a colour; solid parts get a rim of `halo` so that they show on any
    /// ground.
    pub fn items(self, at: Point, size: f64, ink: Ink, halo: Ink) -> Vec<Item> {
        let r = 0.5 * size;
        let p = |x: f64, y: f64| Point::new(at.x + r * x, at.y + r * y);
        let solid = |path: Path| Item::Shape {
            path,
            fill: Some(Fill::Plain { ink, opacity: 1.0 }),
            stroke: Some(Stroke::full(halo, 1.5)),
        };
        let on_halo = |path: Path, width: f64| {
            vec![
                Item::stroked(path.clone(), Stroke::full(halo, width + 2.5)),
                Item::stroked(path, Stroke::full(ink, width)),
            ]
        };
        let boxed = |path: Path| Item::Shape {
            path,
            fill: Some(Fill::Plain {
                ink: halo,
                opacity: 1.0,
            }),
            stroke: Some(Stroke::full(ink, 1.4)),
        };
        let inside = |path: Path| Item::stroked(path, Stroke::full(ink, 1.6));
        match self {
            Self::Dot => vec![solid(Path::circle(at, r))],
            Self::OpenCircle => on_halo(Path::circle(at, r), 2.0),
            Self::TriangleUp => vec![solid(Path::closed([at, p(0.9, 1.7), p(-0.9, 1.7)]))],
            Self::Plus => on_halo(
                Path::line(p(-1.0, 0.0), p(1.0, 0.0)).and(Path::line(p(0.0, -1.0), p(0.0, 1.0))),
                2.0,
            ),
            Self::Cross => on_halo(
                Path::line(p(-0.8, -0.8), p(0.8, 0.8)).and(Path::line(p(-0.8, 0.8), p(0.8, -0.8))),
                2.0,
            ),
            Self::Good => {
                vec![
                    boxed(Path::circle(at, r)),
                    inside(Path::open([p(-0.45, 0.05), p(-0.1, 0.4), p(0.5, -0.4)])),
                ]
            }
            Self::Near => vec![
                boxed(Path::closed([p(-0.9, -0.9), p(0.9, -0.9), p(0.9, 0.9), p(-0.9, 0.9)])),
                inside(Path::open([
                    p(-0.55, 0.15),
                    p(-0.35, -0.15),
                    p(-0.1, -0.15),
                    p(0.1, 0.15),
                    p(0.35, 0.15),
                    p(0.55, -0.15),
                ])),
            ],
            Self::Off => vec![
                boxed(Path::closed([p(0.0, -1.0), p(1.0, 0.85), p(-1.0, 0.85)])),
                inside(Path::line(p(-0.3, 0.0), p(0.3, 0.6)).and(Path::line(p(-0.3, 0.6), p(0.3, 0.0)))),
            ],
        }
    }
}
