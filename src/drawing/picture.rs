//! A picture: a list of things to draw, one over the other.

use super::ink::Ink;
use super::path::{Path, Point, Rect, Segment};

/// How a line is broken up.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum LineStyle {
    /// Unbroken.
    #[default]
    Full,
    /// 9 on, 4 off.
    Dashed,
    /// 4 on, 3 off: for small frames.
    FineDashed,
    /// Long, short.
    DashDot,
    /// Fine points.
    Dotted,
}

/// A line's colour, width and breaks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stroke {
    /// Colour.
    pub ink: Ink,
    /// Width, points.
    pub width: f64,
    /// Breaks.
    pub style: LineStyle,
}

impl Stroke {
    /// An unbroken line.
    pub const fn full(ink: Ink, width: f64) -> Self {
        Self {
            ink,
            width,
            style: LineStyle::Full,
        }
    }

    /// The same line with other breaks.
    #[must_use]
    pub const fn styled(self, style: LineStyle) -> Self {
        Self { style, ..self }
    }
}

/// Lines or dots that fill an area.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hatch {
    /// Lines from lower left to upper right.
    Rising,
    /// Lines from upper left to lower right.
    Falling,
    /// Upright lines.
    Upright,
    /// Level lines.
    Level,
    /// Both slopes.
    Crossed,
    /// Dots.
    Stipple,
}

/// What an area is filled with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fill {
    /// One colour; `opacity` 0 to 1.
    Plain {
        /// Colour.
        ink: Ink,
        /// 1 hides what lies below.
        opacity: f64,
    },
    /// A hatch of thin lines; what lies below stays visible between them.
    Hatched {
        /// Pattern.
        hatch: Hatch,
        /// Colour of the lines.
        ink: Ink,
    },
}

/// Which point of a text stands at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Anchor {
    /// The left end.
    #[default]
    Start,
    /// The middle.
    Middle,
    /// The right end.
    End,
}

/// Regular or bold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Weight {
    /// Regular.
    #[default]
    Regular,
    /// Bold.
    Bold,
}

/// A line of text.
#[derive(Debug, Clone, PartialEq)]
pub struct Text {
    /// Where the anchor of its base line stands.
    pub at: Point,
    /// What it says.
    pub words: String,
    /// Size, points; nothing under 12 outside an instrument.
    pub size: f64,
    /// Colour.
    pub ink: Ink,
    /// Regular or bold.
    pub weight: Weight,
    /// Which end stands at the place.
    pub anchor: Anchor,
    /// Turned to read upward instead of to the right.
    pub upward: bool,
    /// A rim of this colour keeps it readable over lines.
    pub halo: Option<Ink>,
}

impl Text {
    /// Regular text in the text colour.
    pub fn new(at: Point, words: impl Into<String>, size: f64) -> Self {
        Self {
            at,
            words: words.into(),
            size,
            ink: Ink::Text,
            weight: Weight::Regular,
            anchor: Anchor::Start,
            upward: false,
            halo: None,
        }
    }

    /// In another colour.
    #[must_use]
    pub fn ink(self, ink: Ink) -> Self {
        Self { ink, ..self }
    }

    /// Bold.
    #[must_use]
    pub fn bold(self) -> Self {
        Self {
            weight: Weight::Bold,
            ..self
        }
    }

    /// With another end at its place.
    #[must_use]
    pub fn anchored(self, anchor: Anchor) -> Self {
        Self { anchor, ..self }
    }

    /// With a rim.
    #[must_use]
    pub fn with_halo(self, halo: Ink) -> Self {
        Self {
            halo: Some(halo),
            ..self
        }
    }

    /// How long it is in the project's font, points.
    pub fn width(&self) -> f64 {
        self.size * super::letter_width::width_of(&self.words)
    }

    /// Reading upward.
    #[must_use]
    pub fn turned_upward(self) -> Self {
        Self { upward: true, ..self }
    }
}

/// One thing to draw.
#[derive(Debug, Clone, PartialEq)]
pub enum Item {
    /// A path, filled, stroked or both.
    Shape {
        /// Its outline.
        path: Path,
        /// What is inside.
        fill: Option<Fill>,
        /// Its line.
        stroke: Option<Stroke>,
    },
    /// A line of text.
    Text(Text),
    /// Items of which only what lies in the rectangle shows.
    Clipped {
        /// The rectangle.
        to: Rect,
        /// The items.
        items: Vec<Self>,
    },
}

impl Item {
    /// A stroked path.
    pub fn stroked(path: Path, stroke: Stroke) -> Self {
        Self::Shape {
            path,
            fill: None,
            stroke: Some(stroke),
        }
    }

    /// A filled path without an outline.
    pub fn filled(path: Path, fill: Fill) -> Self {
        Self::Shape {
            path,
            fill: Some(fill),
            stroke: None,
        }
    }
}

impl Item {
    /// The same, shifted.
    #[must_use]
    pub fn moved(self, right: f64, down: f64) -> Self {
        let point = |p: Point| Point::new(p.x + right, p.y + down);
        match self {
            Self::Shape { path, fill, stroke } => Self::Shape {
                path: Path {
                    segments: path
                        .segments
                        .into_iter()
                        .map(|segment| match segment {
                            Segment::Move(a) => Segment::Move(point(a)),
                            Segment::Line(a) => Segment::Line(point(a)),
                            Segment::Curve(a, b, c) => Segment::Curve(point(a), point(b), point(c)),
                            Segment::Close => Segment::Close,
                        })
                        .collect(),
                },
                fill,
                stroke,
            },
            Self::Text(text) => Self::Text(Text {
                at: point(text.at),
                ..text
            }),
            Self::Clipped { to, items } => Self::Clipped {
                to: Rect {
                    left: to.left + right,
                    top: to.top + down,
                    right: to.right + right,
                    bottom: to.bottom + down,
                },
                items: items.into_iter().map(|item| item.moved(right, down)).collect(),
            },
        }
    }
}

/// A picture with its size and what it says to those who do not see it.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    /// Width, points.
    pub width: f64,
    /// Height, points.
    pub height: f64,
    /// Short name.
    pub title: String,
    /// What it shows, in a sentence or two.
    pub description: String,
    /// What is drawn, from below to above.
    pub items: Vec<Item>,
}

impl Picture {
    /// An empty picture on a ground of `ink`.
    pub fn on(ink: Ink, width: f64, height: f64, title: impl Into<String>, description: impl Into<String>) -> Self {
        let sheet = Rect {
            left: 0.0,
            top: 0.0,
            right: width,
            bottom: height,
        };
        Self {
            width,
            height,
            title: title.into(),
            description: description.into(),
            items: vec![Item::filled(sheet.path(), Fill::Plain { ink, opacity: 1.0 })],
        }
    }

    /// Draws one more thing over the others.
    pub fn draw(&mut self, item: Item) {
        self.items.push(item);
    }
}
