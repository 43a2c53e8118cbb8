//! Both flanks unrolled with what the eye read of the last print, and the print before as a ghost.

use std::sync::Arc;

use egui::{Galley, Rect, Sense, Ui, Vec2, WidgetInfo, WidgetType, pos2, vec2};

use super::desk::Desk;
use crate::drawing::{Fill, Flank, Hatch, Ink as DrawingInk, Item, LineStyle, Path, Point, Stroke, flag};
use crate::panels::dock::inside;
use crate::panels::paint::PictureArea;
use crate::panels::theme::Ink;
use crate::panels::widget;
use crate::view::bench::{Approved, SeenFlank, SeenPrint, ToothShape};
use crate::view::{BenchView, Theme};
use crate::words::say;

/// Draws both flanks over the room that there is.
pub(super) fn teeth(ui: &mut Ui, desk: &Desk<'_>) {
    let (ink, board) = (desk.ink, desk.board);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    ui.spacing_mut().item_spacing.y = 0.0;
    // The print in hand, or the last one.
    let in_hand = desk
        .state
        .reading
        .and_then(|number| board.prints.iter().position(|p| p.number == number));
    let at = in_hand.or(board.prints.len().checked_sub(1));
    let last = at.and_then(|at| board.prints.get(at));
    let approval = board.approval_of(last);
    let said = match last {
        None => say!("board-teeth-no-pattern"),
        Some(print) if print.stale => say!(
            "board-teeth-pattern-stale",
            what = print.title.as_str(),
            number = print.number,
        ),
        Some(print) => say!(
            "board-teeth-pattern",
            what = print.title.as_str(),
            number = print.number,
        ),
    };
    widget::words(ui, &said, ink.section(), text);
    if let Some(gears) = last.and_then(|print| print.gears.as_deref()) {
        widget::words(ui, gears, ink.small(), text);
    }
    let words = foot(board, at, approval.is_some());
    // Where the list scrolls it is as high as it likes.
    let clip = ui.clip_rect().bottom() - ui.cursor().top();
    let room = ui.available_height().min(clip).max(ink.scaled(200.0));
    let width = ui.available_width();
    let foot = ui.painter().layout(words.clone(), ink.small(), muted, width).size().y + ink.scaled(2.0);
    for (k, flank) in [Flank::Drive, Flank::Coast].into_iter().enumerate() {
        let shown = Shown::of(board, at, k);
        let words = FlankWords::of(ui, ink, width, flank, &shown);
        let most = words.natural(&shown.shape, width).max(words.least(ink));
        let each = (0.5 * (room - foot)).clamp(words.least(ink), most);
        one(ui, desk, each, flank, &shown);
    }
    widget::words(ui, &words, ink.small(), muted);
}

/// What the lines on the teeth are.
fn foot(board: &BenchView, at: Option<usize>, approved: bool) -> String {
    let words = match (at, before(board, at)) {
        (Some(_), Some(before)) => say!("board-teeth-before", number = before.number),
        (Some(_), None) => say!("board-teeth-as-read"),
        (None, _) => say!("board-teeth-help"),
    };
    if approved {
        say!("board-teeth-set-pattern", words = words)
    } else {
        words
    }
}

/// The print that is the ghost of the one at this place: the one looked at before it on the same gears. A plate is of other
/// gears than the plate before it.
fn before(board: &BenchView, at: Option<usize>) -> Option<&SeenPrint> {
    let print = board.prints.get(at?)?;
    let before = board.prints.get(at?.checked_sub(1)?)?;
    (print.plate.is_none() && before.plate.is_none()).then_some(before)
}

/// The print at this place as large as there is room for: both flanks side by side or below each other.
/// Says whether there was room for it.
pub(super) fn pattern(ui: &mut Ui, desk: &Desk<'_>, rect: Rect, at: usize) -> bool {
    let (ink, board) = (desk.ink, desk.board);
    let print = board.prints.get(at);
    inside(ui, "pattern", rect, Vec2::ZERO, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
        let lay = |words: String, font, color| ui.painter().layout(words, font, color, rect.width());
        let gears = print.and_then(|print| print.gears.clone());
        let gears = gears.map(|gears| lay(gears, ink.body(), text));
        let words = foot(board, Some(at), board.approval_of(print).is_some());
        let foot = lay(words, ink.small(), muted);
        let above = gears.as_ref().map_or(0.0, |gears| gears.size().y);
        let zone = Rect::from_min_max(
            rect.min + vec2(0.0, above),
            rect.max - vec2(0.0, foot.size().y + ink.space(2.0)),
        );
        let flanks = [Flank::Drive, Flank::Coast];
        let gap = ink.space(12.0);
        let beside = vec2((0.5 * (zone.width() - gap)).max(1.0), zone.height());
        let below = vec2(zone.width(), 0.5 * zone.height());
        let shown: [Shown; 2] = [0, 1].map(|k| Shown::of(board, Some(at), k));
        // As large as it becomes one way or the other; none where not even its words have room.
        let scale = |size: Vec2| -> Option<f64> {
            let words = flanks.into_iter().zip(&shown);
            let words = words.map(|(flank, shown)| FlankWords::of(ui, ink, size.x, flank, shown));
            let most = words.fold([0.0_f32; 3], |[head, foot, least], words| {
                [head.max(words.head), foot.max(words.foot), least.max(words.least(ink))]
            });
            let [head, foot] = [most[0], most[1]].map(f64::from);
            (most[2] <= size.y).then(|| Map::within(&board.tooth, size, head, foot).scale)
        };
        let (by_side, by_stack) = (scale(beside), scale(below));
        let side_by_side = by_side > by_stack;
        if by_side.is_none() && by_stack.is_none() {
            return false;
        }
        let size = if side_by_side { beside } else { below };
        // No higher than the flanks are, and in the middle of the room.
        let natural = flanks.into_iter().zip(&shown).fold(0.0_f32, |height, (flank, shown)| {
            height.max(FlankWords::of(ui, ink, size.x, flank, shown).natural(&shown.shape, size.x))
        });
        let size = vec2(size.x, size.y.min(natural));
        let used = if side_by_side { size.y } else { 2.0 * size.y };
        let zone = zone.translate(vec2(0.0, (0.5 * (zone.height() - used)).max(0.0)));
        let zone = zone.with_max_y(zone.top() + used);
        let step = if side_by_side {
            vec2(size.x + gap, 0.0)
        } else {
            vec2(0.0, size.y)
        };
        if let Some(gears) = gears {
            ui.painter().galley(zone.min - vec2(0.0, above), gears, text);
        }
        for (k, (flank, shown)) in flanks.into_iter().zip(&shown).enumerate() {
            let own = Rect::from_min_size(zone.min + k as f32 * step, size);
            inside(ui, if k == 0 { "drive" } else { "coast" }, own, Vec2::ZERO, |ui| {
                one(ui, desk, size.y, flank, shown);
            });
        }
        ui.painter()
            .galley(pos2(zone.left(), zone.bottom() + ink.space(2.0)), foot, muted);
        true
    })
}

/// One print with both flanks one below the other, small, without words: for a row of them.
pub(in crate::panels) fn small(ui: &Ui, rect: Rect, theme: Theme, board: &BenchView, print: &SeenPrint) {
    let half = rect.height() / 2.0;
    for (k, flank) in [Flank::Drive, Flank::Coast].into_iter().enumerate() {
        let top = rect.top() + half * k as f32;
        let own = Rect::from_min_size(pos2(rect.left(), top), vec2(rect.width(), half - 4.0));
        let map = Map::within(&board.tooth, own.size(), 1.0, 1.0);
        let shown = Shown {
            shape: board.tooth,
            lean: board.tooth.lean.get(k).copied().unwrap_or(0.0),
            print: print.flanks.get(k).copied().flatten(),
            ghost: None,
            approved: None,
            clearness: Some(print.clearness),
            painted: true,
        };
        PictureArea::new(own.min, 1.0, theme).paint(ui.painter(), &map.items(flank, &shown));
    }
}

struct Shown {
    shape: ToothShape,
    lean: f64,
    print: Option<SeenFlank>,
    ghost: Option<SeenFlank>,
    approved: Option<Approved>,
    /// None where nobody has looked.
    clearness: Option<f64>,
    painted: bool,
}

impl Shown {
    /// One flank of the print at this place, or of teeth that nobody has looked at.
    fn of(board: &BenchView, at: Option<usize>, flank: usize) -> Self {
        let print = at.and_then(|at| board.prints.get(at));
        let of = |print: Option<&SeenPrint>| print.and_then(|p| p.flanks.get(flank).copied().flatten());
        let approval = board.approval_of(print);
        Self {
            shape: board.tooth,
            lean: board.tooth.lean.get(flank).copied().unwrap_or(0.0),
            print: of(print),
            ghost: of(before(board, at)),
            approved: approval.and_then(|a| a.flanks.get(flank).copied().flatten()),
            clearness: print.map(|p| p.clearness),
            painted: !board.laid.painted.is_empty(),
        }
    }
}

/// Height of a flank that is as long as this width allows.
#[expect(clippy::cast_possible_truncation, reason = "points of a screen")]
fn flank_height(shape: &ToothShape, width: f32) -> f32 {
    let all = [shape.lower_mm, shape.upper_mm].concat();
    let ends = all.iter().fold([f64::INFINITY, f64::NEG_INFINITY], |[low, high], y| {
        [low.min(*y), high.max(*y)]
    });
    (width - 4.0) * ((ends[1] - ends[0]) / shape.face_width_mm) as f32
}

/// Heading of a flank.
fn name(flank: Flank) -> String {
    match flank {
        Flank::Drive => crate::words::tooth::drive_side(),
        Flank::Coast => crate::words::tooth::coast_side(),
    }
}

fn one(ui: &mut Ui, desk: &Desk<'_>, height: f32, flank: Flank, shown: &Shown) {
    let (ink, view) = (desk.ink, desk.view);
    let width = ui.available_width();
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let [numbers, _] = words_of(shown);
    let side = name(flank);
    response.widget_info(|| {
        let (side, pattern) = (side.as_str(), numbers.as_str());
        let said = match &shown.approved {
            None => say!("board-teeth-said", side = side, pattern = pattern),
            Some(own) => say!(
                "board-teeth-said-both",
                side = side,
                pattern = pattern,
                own = own.text(),
            ),
        };
        WidgetInfo::labeled(WidgetType::Image, true, said)
    });
    // In points of the picture at 100 %.
    let scale = ink.factor();
    let words = FlankWords::of(ui, ink, width, flank, shown);
    let [head, foot] = [words.head, words.foot].map(|points| f64::from(points / scale));
    let map = Map::within(&shown.shape, rect.size() / scale, head, foot);
    let mut items = flag(flank, Point::new(0.0, 10.0));
    items.extend(map.items(flank, shown));
    PictureArea::new(rect.min, scale, view.theme).paint(ui.painter(), &items);
    words.paint(ui, ink, rect);
}

/// The words round a flank, as they have room.
struct FlankWords {
    name: Arc<Galley>,
    face: Arc<Galley>,
    face_below: bool,
    /// Toe, root, heel.
    edges: [Arc<Galley>; 3],
    root_below: bool,
    numbers: Arc<Galley>,
    /// What they take above and below the flank.
    head: f32,
    foot: f32,
}

impl FlankWords {
    fn of(ui: &Ui, ink: &Ink, width: f32, flank: Flank, shown: &Shown) -> Self {
        let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
        let painter = ui.painter();
        let small = |words: String| painter.layout(words, ink.small(), muted, width);
        let flag = ink.scaled(26.0);
        let name = painter.layout(name(flank), ink.body(), text, width - flag);
        let face = small(say!("board-face"));
        let gap = ink.space(10.0);
        let face_below = flag + name.size().x + gap + face.size().x > width;
        let edges = [say!("board-toe"), say!("board-flank"), say!("board-heel")].map(small);
        let longest = edges[0].size().x.max(edges[2].size().x);
        let root_below = 2.0 * longest + edges[1].size().x + 2.0 * gap > width;
        // Shorter where there is no room; whoever listens hears all of it.
        let [whole, short] = words_of(shown);
        let whole = painter.layout(whole, ink.small(), text, width);
        let numbers = if whole.rows.len() > 1 {
            painter.layout(short, ink.small(), text, width)
        } else {
            whole
        };
        let second = if face_below { face.size().y } else { 0.0 };
        let root = if root_below { edges[1].size().y } else { 0.0 };
        let below = numbers.size().y.max(ink.scaled(16.0));
        Self {
            head: ink.scaled(3.0) + name.size().y + second,
            foot: ink.scaled(1.0) + edges[0].size().y + root + below,
            name,
            face,
            face_below,
            edges,
            root_below,
            numbers,
        }
    }

    /// Height that they need with the least flank between them.
    fn least(&self, ink: &Ink) -> f32 {
        self.head + self.foot + ink.scaled(34.0)
    }

    /// Height that they take with a flank as wide as this.
    fn natural(&self, shape: &ToothShape, width: f32) -> f32 {
        self.head + self.foot + flank_height(shape, width)
    }

    fn paint(self, ui: &Ui, ink: &Ink, rect: Rect) {
        let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
        let painter = ui.painter();
        let top = rect.top() + ink.scaled(2.0);
        let under = top + self.name.size().y;
        painter.galley(pos2(rect.left() + ink.scaled(26.0), top), self.name, text);
        let face_top = if self.face_below { under } else { top };
        let face_left = rect.right() - self.face.size().x;
        painter.galley(pos2(face_left, face_top), self.face, muted);
        let foot = rect.bottom() - self.foot + ink.scaled(1.0);
        let [toe, root, heel] = self.edges;
        let below = foot + toe.size().y;
        painter.galley(pos2(rect.left(), foot), toe, muted);
        painter.galley(pos2(rect.right() - heel.size().x, foot), heel, muted);
        let root_top = if self.root_below { below } else { foot };
        let numbers_top = root_top + root.size().y;
        painter.galley(pos2(rect.center().x - 0.5 * root.size().x, root_top), root, muted);
        painter.galley(pos2(rect.left(), numbers_top), self.numbers, text);
    }
}

/// What is to be said of a pattern: whole, and where there is little room.
fn words_of(shown: &Shown) -> [String; 2] {
    match (&shown.print, shown.clearness) {
        (Some(print), _) => [print.text(), print.short_text()],
        (None, Some(_)) => [say!("board-teeth-too-faint"), say!("board-teeth-too-faint-short")],
        (None, None) => [String::new(), String::new()],
    }
}

/// Where flank coordinates stand.
struct Map {
    shape: ToothShape,
    scale: f64,
    origin: Point,
}

impl Map {
    /// With so much room above and below.
    fn within(shape: &ToothShape, size: Vec2, head: f64, foot: f64) -> Self {
        let [a, b] = shape.lower_mm;
        let [c, d] = shape.upper_mm;
        let (low, high) = (if a < b { a } else { b }, if c > d { c } else { d });
        let (width, height) = (f64::from(size.x) - 4.0, f64::from(size.y) - head - foot);
        let (by_width, by_height) = (width / shape.face_width_mm, height / (high - low));
        let scale = if by_width < by_height { by_width } else { by_height };
        Self {
            shape: *shape,
            scale,
            origin: Point::new(0.5 * width + 2.0, head + 0.5 * height + 0.5 * scale * (low + high)),
        }
    }

    fn point(&self, [x, y]: [f64; 2]) -> Point {
        let at = |ends: [f64; 2]| ends[0] + 0.5 * (x + 1.0) * (ends[1] - ends[0]);
        let (low, high) = (at(self.shape.lower_mm), at(self.shape.upper_mm));
        Point::new(
            self.origin.x + self.scale * 0.5 * self.shape.face_width_mm * x,
            self.origin.y - self.scale * (low + 0.5 * (y + 1.0) * (high - low)),
        )
    }

    fn items(&self, flank: Flank, shown: &Shown) -> Vec<Item> {
        let outline = Path::closed([[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]].map(|at| self.point(at)));
        let plain = |ink| Fill::Plain { ink, opacity: 1.0 };
        let mut items = Vec::new();
        if shown.clearness.is_some() || shown.painted {
            items.push(Item::filled(outline.clone(), plain(DrawingInk::Paste)));
            items.push(Item::filled(
                outline.clone(),
                Fill::Hatched {
                    hatch: Hatch::Stipple,
                    ink: DrawingInk::PasteRim,
                },
            ));
        } else {
            items.push(Item::filled(outline.clone(), plain(DrawingInk::Inset)));
        }
        for third in [-1.0 / 3.0, 1.0 / 3.0] {
            for ends in [[[third, -1.0], [third, 1.0]], [[-1.0, third], [1.0, third]]] {
                items.push(Item::stroked(
                    Path::line(self.point(ends[0]), self.point(ends[1])),
                    Stroke::full(DrawingInk::Line, 0.8),
                ));
            }
        }
        if let Some(print) = &shown.print {
            let area = self.area(print, shown.lean);
            let opacity = 0.45 + 0.55 * shown.clearness.unwrap_or(1.0).clamp(0.0, 1.0);
            items.push(Item::filled(
                area.clone(),
                Fill::Plain {
                    ink: DrawingInk::Steel,
                    opacity,
                },
            ));
            items.push(Item::filled(
                area.clone(),
                Fill::Hatched {
                    hatch: Hatch::Level,
                    ink: DrawingInk::SteelWorn,
                },
            ));
            items.push(Item::stroked(area, Stroke::full(DrawingInk::GhostDark, 1.4)));
            let middle = self.point(print.centre);
            // As large as the tooth has room for.
            let arm = (0.1 * self.scale * self.shape.face_width_mm).min(6.0) * 0.8;
            for (dx, dy) in [(arm, 0.0), (0.0, arm)] {
                let line = Path::line(
                    Point::new(middle.x - dx, middle.y - dy),
                    Point::new(middle.x + dx, middle.y + dy),
                );
                items.push(Item::stroked(line.clone(), Stroke::full(DrawingInk::GhostLight, 3.4)));
                items.push(Item::stroked(line, Stroke::full(DrawingInk::GhostDark, 1.4)));
            }
        }
        if let Some(approved) = &shown.approved {
            let line = self.area(&approved.print, approved.lean);
            items.push(Item::stroked(line.clone(), Stroke::full(DrawingInk::GhostLight, 2.4)));
            items.push(Item::stroked(
                line,
                Stroke::full(DrawingInk::GhostDark, 1.2).styled(LineStyle::FineDashed),
            ));
        }
        if let Some(ghost) = &shown.ghost {
            let line = self.area(ghost, shown.lean);
            items.push(Item::stroked(line.clone(), Stroke::full(DrawingInk::GhostLight, 3.0)));
            items.push(Item::stroked(
                line,
                Stroke::full(DrawingInk::GhostDark, 1.8).styled(LineStyle::DashDot),
            ));
        }
        let style = match flank {
            Flank::Drive => LineStyle::Full,
            Flank::Coast => LineStyle::FineDashed,
        };
        items.push(Item::stroked(outline, Stroke::full(flank.ink(), 2.0).styled(style)));
        // What the eye read can reach over the edge by its error; the tooth does not.
        vec![Item::Clipped {
            to: crate::drawing::Rect {
                left: 0.0,
                top: self.point([1.0, 1.0]).y.min(self.point([-1.0, 1.0]).y) - 2.0,
                right: self.point([1.0, 0.0]).x + 2.0,
                bottom: self.point([1.0, -1.0]).y.max(self.point([-1.0, -1.0]).y) + 2.0,
            },
            items,
        }]
    }

    fn area(&self, print: &SeenFlank, lean: f64) -> Path {
        Path::closed(print.outline(lean).into_iter().map(|at| self.point(at)))
    }
}
