//! The frame of a plot: axes with ticks, labels and grid around a rectangle.

use super::axis::{Axis, Tick};
use super::ink::Ink;
use super::path::{Path, Point, Rect};
use super::picture::{Anchor, Fill, Item, Stroke, Text};

/// A side of the frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FrameSide {
    /// Lower.
    Bottom,
    /// Upper.
    Top,
    /// Left.
    Left,
    /// Right.
    Right,
}

/// A rectangle with scales along its sides.
#[derive(Debug, Clone, PartialEq)]
pub struct Frame {
    /// Where curves are drawn.
    pub area: Rect,
    /// Scale to the right.
    pub x: Axis,
    /// Scale upward.
    pub y: Axis,
}

impl Frame {
    /// A frame whose x scale fills the area's width and whose y scale its height, upward.
    pub fn new(area: Rect, x: (f64, f64), y: (f64, f64)) -> Self {
        Self {
            area,
            x: Axis {
                from: x.0,
                to: x.1,
                from_place: area.left,
                to_place: area.right,
            },
            y: Axis {
                from: y.0,
                to: y.1,
                from_place: area.bottom,
                to_place: area.top,
            },
        }
    }

    /// Where a pair of values stands.
    pub fn point(&self, x: f64, y: f64) -> Point {
        Point::new(self.x.place(x), self.y.place(y))
    }

    /// The area's ground.
    pub fn ground(&self) -> Item {
        Item::filled(
            self.area.path(),
            Fill::Plain {
                ink: Ink::Inset,
                opacity: 1.0,
            },
        )
    }

    /// The area's outline.
    pub fn outline(&self) -> Item {
        Item::stroked(self.area.path(), Stroke::full(Ink::Line, 1.0))
    }

    /// Grid lines across the area at the ticks of a side.
    pub fn grid(&self, side: FrameSide, ticks: &[Tick]) -> Vec<Item> {
        ticks
            .iter()
            .map(|tick| {
                let (from, to) = match side {
                    FrameSide::Bottom | FrameSide::Top => {
                        let x = self.x.place(tick.value);
                        (Point::new(x, self.area.top), Point::new(x, self.area.bottom))
                    }
                    FrameSide::Left | FrameSide::Right => {
                        let y = self.y.place(tick.value);
                        (Point::new(self.area.left, y), Point::new(self.area.right, y))
                    }
                };
                Item::stroked(Path::line(from, to), Stroke::full(Ink::Hairline, 0.6))
            })
            .collect()
    }

    /// Ticks outside a side with their labels. Values are those of the frame's own scale along that side; a second
    /// scale (another unit) gives its ticks converted.
    pub fn scale(&self, side: FrameSide, ticks: &[Tick], size: f64) -> Vec<Item> {
        let mut items = Vec::new();
        for tick in ticks {
            let (foot, tip, text, anchor) = match side {
                FrameSide::Bottom => {
                    let x = self.x.place(tick.value);
                    let y = self.area.bottom;
                    (
                        Point::new(x, y),
                        Point::new(x, y + 6.0),
                        Point::new(x, y + 8.0 + size),
                        Anchor::Middle,
                    )
                }
                FrameSide::Top => {
                    let x = self.x.place(tick.value);
                    let y = self.area.top;
                    (
                        Point::new(x, y),
                        Point::new(x, y - 6.0),
                        Point::new(x, y - 10.0),
                        Anchor::Middle,
                    )
                }
                FrameSide::Left => {
                    let y = self.y.place(tick.value);
                    let x = self.area.left;
                    (
                        Point::new(x, y),
                        Point::new(x - 6.0, y),
                        Point::new(x - 10.0, y + 0.36 * size),
                        Anchor::End,
                    )
                }
                FrameSide::Right => {
                    let y = self.y.place(tick.value);
                    let x = self.area.right;
                    (
                        Point::new(x, y),
                        Point::new(x + 6.0, y),
                        Point::new(x + 10.0, y + 0.36 * size),
                        Anchor::Start,
                    )
                }
            };
            items.push(Item::stroked(Path::line(foot, tip), Stroke::full(Ink::Line, 1.0)));
            if !tick.label.is_empty() {
                items.push(Item::Text(Text::new(text, tick.label.clone(), size).anchored(anchor)));
            }
        }
        items
    }

    /// What a side's scale measures, beside the middle of that side, `distance` points out.
    pub fn name(&self, side: FrameSide, words: &str, size: f64, distance: f64) -> Item {
        let (x, y) = (
            0.5 * (self.area.left + self.area.right),
            0.5 * (self.area.top + self.area.bottom),
        );
        let text = match side {
            FrameSide::Bottom => Text::new(Point::new(x, self.area.bottom + distance), words, size),
            FrameSide::Top => Text::new(Point::new(x, self.area.top - distance), words, size),
            FrameSide::Left => Text::new(Point::new(self.area.left - distance, y), words, size).turned_upward(),
            FrameSide::Right => Text::new(Point::new(self.area.right + distance, y), words, size).turned_upward(),
        };
        Item::Text(text.anchored(Anchor::Middle))
    }
}
