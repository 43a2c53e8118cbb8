//! Points, rectangles and paths.

/// A place in a picture, points; x to the right, y down.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

impl Point {
    /// (x, y).
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }
}

/// An upright rectangle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rect {
    /// Left edge.
    pub left: f64,
    /// Upper edge.
    pub top: f64,
    /// Right edge, not left of `left`.
    pub right: f64,
    /// Lower edge, not above `top`.
    pub bottom: f64,
}

impl Rect {
    /// Its outline.
    pub fn path(&self) -> Path {
        Path::closed([
            Point::new(self.left, self.top),
            Point::new(self.right, self.top),
            Point::new(self.right, self.bottom),
            Point::new(self.left, self.bottom),
        ])
    }

    /// Width.
    pub fn width(&self) -> f64 {
        self.right - self.left
    }

    /// Height.
    pub fn height(&self) -> f64 {
        self.bottom - self.top
    }
}

/// One stretch of a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Segment {
    /// Lift the pen and set it down here.
    Move(Point),
    /// Straight to here.
    Line(Point),
    /// Cubic Bézier curve over two handles to the last point.
    Curve(Point, Point, Point),
    /// Straight back to the last point where the pen was set down.
    Close,
}

/// Lines and curves, drawn and filled together.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Path {
    /// Its stretches; the first one sets the pen down.
    pub segments: Vec<Segment>,
}

impl Path {
    /// Straight lines through points.
    pub fn open(points: impl IntoIterator<Item = Point>) -> Self {
        let mut segments = Vec::new();
        for point in points {
            segments.push(if segments.is_empty() {
                Segment::Move(point)
            } else {
                Segment::Line(point)
            });
        }
        Self { segments }
    }

    /// As [`Path::open`], then back to the first point.
    pub fn closed(points: impl IntoIterator<Item = Point>) -> Self {
        let mut path = Self::open(points);
        if !path.segments.is_empty() {
            path.segments.push(Segment::Close);
        }
        path
    }

    /// One straight line.
    pub fn line(from: Point, to: Point) -> Self {
        Self::open([from, to])
    }

    /// A circle of four curves; off a true one by 0.03 % of its radius at most.
    pub fn circle(center: Point, radius: f64) -> Self {
        // 4/3 (√2 − 1), the handle that makes a quarter pass through its middle.
        let handle = 0.552_284_749_830_793_6 * radius;
        let at = |x: f64, y: f64| Point::new(center.x + x, center.y + y);
        let (r, h) = (radius, handle);
        Self {
            segments: vec![
                Segment::Move(at(r, 0.0)),
                Segment::Curve(at(r, h), at(h, r), at(0.0, r)),
                Segment::Curve(at(-h, r), at(-r, h), at(-r, 0.0)),
                Segment::Curve(at(-r, -h), at(-h, -r), at(0.0, -r)),
                Segment::Curve(at(h, -r), at(r, -h), at(r, 0.0)),
                Segment::Close,
            ],
        }
    }

    /// This path and another as one.
    #[must_use]
    pub fn and(mut self, other: Self) -> Self {
        self.segments.extend(other.segments);
        self
    }
}
