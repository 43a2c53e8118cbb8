//! The debrief: what was wanted, what is true, what the trainee wrote down; what was hidden; what was done.

use std::sync::Arc;

use egui::{Align2, Galley, Rect, ScrollArea, Sense, Shape, Stroke, Ui, WidgetInfo, WidgetType, pos2, vec2};

use super::dock::{Dock, Edge, inside};
use super::page::Page;
use super::theme::Ink;
use super::widget::{self, ButtonFace, Rank};
use crate::quantity::{Units, fine_length, number, signed};
use crate::view::bench::{BuildLine, LogEntry, Section, Standing, Verdict, standing_band, standing_digits};
use crate::view::{BenchView, Command, DebriefView, Place, WindowView, safety_note};
use crate::words::{debrief as words, say};

/// What the page is made of.
struct Told<'a> {
    ink: &'a Ink,
    view: &'a WindowView<'a>,
    board: &'a BenchView,
    debrief: &'a DebriefView,
    out: &'a mut Vec<Command>,
}

/// Draws the page.
pub(super) fn debrief_panel(ui: &mut Ui, page: &mut Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    let area = ui.available_rect_before_wrap();
    ui.painter().rect_filled(area, 0.0, ink.color(|t| t.panel));
    let (Some(board), Some(debrief)) = (view.bench, view.debrief) else {
        return;
    };
    let margin = vec2(ink.space(16.0), ink.space(10.0));
    let thin = ink.line(1.0, |t| t.line);
    // Another attempt is read from its top.
    let of_attempt = (&board.title, board.seed);
    let narrow = ink.large() || area.width() < ink.scaled(1000.0);
    if narrow {
        let told = &mut told_of(page, board, debrief);
        inside(ui, "all", area, margin, |ui| {
            let scroll = ScrollArea::vertical().id_salt(of_attempt).auto_shrink([false, false]);
            scroll.show(ui, |ui| {
                narrow_verdict(ui, told);
                ui.add_space(ink.space(10.0));
                truth(ui, told);
                ui.add_space(ink.space(10.0));
                losses(ui, told);
                prints(ui, told);
                took(ui, told);
                ways(ui, told);
                hidden(ui, told);
                log(ui, told);
                widget::words(ui, &safety_note(), ink.small(), ink.color(|t| t.muted));
            });
        });
        return;
    }
    let plan = Head::of(ui, &told_of(page, board, debrief), area.width() - 2.0 * margin.x);
    let head = Dock::fixed("verdict", Edge::Top, plan.height + 2.0 * margin.y)
        .margin(margin)
        .place(ui, page);
    let width = area.width();
    let left = Dock::new("truth", Edge::Left, 0.56 * width, [0.35 * width, 0.7 * width])
        .margin(margin)
        .place(ui, page);
    let right = ui.available_rect_before_wrap();
    let told = &mut told_of(page, board, debrief);
    head.show(ui, |ui| verdict(ui, told, &plan));
    left.show(ui, |ui| {
        let scroll = ScrollArea::vertical().id_salt(of_attempt).auto_shrink([false, false]);
        scroll.show(ui, |ui| {
            truth(ui, told);
            prints(ui, told);
            took(ui, told);
            hidden(ui, told);
            widget::words(ui, &safety_note(), ink.small(), ink.color(|t| t.muted));
        });
    });
    inside(ui, "log", right, margin, |ui| {
        let scroll = ScrollArea::vertical().id_salt(of_attempt).auto_shrink([false, false]);
        scroll.show(ui, |ui| {
            losses(ui, told);
            ways(ui, told);
            log(ui, told);
        });
    });
    ui.painter().vline(left.rect.right(), left.rect.y_range(), thin);
    ui.painter().hline(area.x_range(), head.rect.bottom(), thin);
}

fn told_of<'a>(page: &'a mut Page<'_>, board: &'a BenchView, debrief: &'a DebriefView) -> Told<'a> {
    Told {
        ink: page.ink,
        view: page.view,
        board,
        debrief,
        out: page.out,
    }
}

/// What can be done from here, from left to right.
fn ways_on() -> [(ButtonFace, Command); 3] {
    let face = ButtonFace::plain;
    [
        (face(say!("verdict-save"), Rank::Plain), Command::SaveDebrief),
        (face(say!("verdict-bench"), Rank::Plain), Command::GoTo(Place::Bench)),
        (face(say!("verdict-another"), Rank::Next), Command::GoTo(Place::Start)),
    ]
}

fn buttons(ui: &mut Ui, told: &mut Told<'_>) {
    for (face, command) in ways_on() {
        if widget::button(ui, told.ink, &face).clicked() {
            told.out.push(command);
        }
    }
}

/// How the head is laid out where the page has two columns.
struct Head {
    /// Width of what can be pressed.
    buttons: f32,
    /// Width of a part's bar.
    part: f32,
    /// Whether the points stand below the title.
    below: bool,
    height: f32,
}

impl Head {
    fn of(ui: &Ui, told: &Told<'_>, width: f32) -> Self {
        let ink = told.ink;
        let gap = ui.spacing().item_spacing.x;
        let buttons: f32 = ways_on().iter().map(|(face, _)| face.size(ui, ink).x + gap).sum();
        let part = part_width(ui, told);
        let parts = (part + gap) * told.debrief.parts.len() as f32;
        let score = score_size(ui, told);
        let painter = ui.painter();
        let title = painter.layout_no_wrap(told.board.title.clone(), ink.page_title(), ink.color(|t| t.text));
        let points = score.x + parts + ink.space(40.0);
        let below = title.size().x.max(ink.scaled(160.0)) + points + buttons > width;
        let wrapped = painter.layout(
            told.board.title.clone(),
            ink.page_title(),
            ink.color(|t| t.text),
            (width - buttons).max(60.0),
        );
        let words = ink.scaled(if told.view.desk.problem.is_some() { 36.0 } else { 18.0 });
        let first = (words + wrapped.size().y).max(ink.scaled(34.0));
        let height = if below {
            first + ink.space(6.0) + score.y
        } else {
            first.max(score.y)
        };
        Self {
            buttons,
            part,
            below,
            height,
        }
    }
}

/// Title, points and what can be done from here, side by side; the points below where there is no room.
fn verdict(ui: &mut Ui, told: &mut Told<'_>, plan: &Head) {
    let ink = told.ink;
    let row = |ui: &mut Ui, told: &mut Told<'_>| {
        ui.horizontal_top(|ui| {
            let left = ui.available_width() - plan.buttons;
            ui.allocate_ui_with_layout(vec2(left, 0.0), egui::Layout::left_to_right(egui::Align::Min), |ui| {
                ui.set_min_width(left);
                if plan.below {
                    ui.vertical(|ui| title(ui, told));
                } else {
                    let width = left - score_size(ui, told).x - plan.part * told.debrief.parts.len() as f32;
                    let gaps = ui.spacing().item_spacing.x * told.debrief.parts.len() as f32 + ink.space(40.0);
                    ui.allocate_ui(vec2((width - gaps).max(60.0), 0.0), |ui| {
                        ui.vertical(|ui| title(ui, told))
                    });
                    ui.add_space(ink.space(16.0));
                    points(ui, told, plan.part);
                }
            });
            buttons(ui, told);
        });
    };
    row(ui, told);
    if plan.below {
        ui.add_space(ink.space(2.0));
        ui.horizontal(|ui| points(ui, told, plan.part));
    }
}

/// The same where everything stands below each other and scrolls.
fn narrow_verdict(ui: &mut Ui, told: &mut Told<'_>) {
    title(ui, told);
    ui.horizontal_wrapped(|ui| buttons(ui, told));
    let part = part_width(ui, told).min(ui.available_width());
    ui.horizontal_wrapped(|ui| points(ui, told, part));
}

fn title(ui: &mut Ui, told: &Told<'_>) {
    let (ink, board) = (told.ink, told.board);
    ui.spacing_mut().item_spacing.y = 0.0;
    let words = say!("verdict-head", step = board.step, seed = board.seed.to_string());
    widget::words(ui, &words, ink.small(), ink.color(|t| t.muted));
    widget::words(ui, &board.title, ink.page_title(), ink.color(|t| t.text));
    if let Some(said) = told.view.desk.problem {
        widget::words(ui, said, ink.small(), ink.color(|t| t.text));
    }
}

/// The total and what it is out of.
fn score_words(ui: &Ui, told: &Told<'_>) -> [Arc<Galley>; 2] {
    let ink = told.ink;
    let font = egui::FontId::new(40.0 * ink.factor().min(1.4), super::theme::bold());
    let total = number(told.debrief.total, 0);
    let painter = ui.painter();
    [
        painter.layout_no_wrap(total, font, ink.color(|t| t.text)),
        painter.layout_no_wrap(say!("verdict-of-100"), ink.body(), ink.color(|t| t.muted)),
    ]
}

fn score_size(ui: &Ui, told: &Told<'_>) -> egui::Vec2 {
    let [total, of] = score_words(ui, told);
    vec2(total.size().x + told.ink.space(6.0) + of.size().x, total.size().y)
}

fn part_points(points: f64, full: f64) -> String {
    say!(
        "verdict-part-points",
        points = number(points, 0),
        full = number(full, 0)
    )
}

/// As wide as the longest name with its points: all bars are as wide.
fn part_width(ui: &Ui, told: &Told<'_>) -> f32 {
    let ink = told.ink;
    let lay = |words: String| {
        ui.painter()
            .layout_no_wrap(words, ink.small(), ink.color(|t| t.text))
            .size()
            .x
    };
    let parts = told.debrief.parts.iter();
    let needed =
        parts.map(|(name, points, full)| lay(name.clone()) + ink.space(10.0) + lay(part_points(*points, *full)));
    needed.fold(ink.scaled(110.0), f32::max).ceil()
}

/// The score: the total large, its parts as bars beside it.
fn points(ui: &mut Ui, told: &Told<'_>, width: f32) {
    let (ink, debrief) = (told.ink, told.debrief);
    let text = ink.color(|t| t.text);
    let [galley, small] = score_words(ui, told);
    let (rect, response) = ui.allocate_exact_size(score_size(ui, told), Sense::hover());
    let total = number(debrief.total, 0);
    response
        .widget_info(|| WidgetInfo::labeled(WidgetType::Label, true, say!("verdict-score", total = total.as_str())));
    let after = galley.size().x + ink.space(6.0);
    ui.painter().galley(rect.min, galley, text);
    let at = pos2(rect.left() + after, rect.bottom() - small.size().y - ink.scaled(6.0));
    ui.painter().galley(at, small, text);
    ui.add_space(ink.space(8.0));
    for (name, points, full) in &debrief.parts {
        let (rect, response) = ui.allocate_exact_size(vec2(width, ink.scaled(40.0)), Sense::hover());
        let words = part_points(*points, *full);
        response.widget_info(|| {
            let said = say!("verdict-part-said", name = name.as_str(), points = words.as_str());
            WidgetInfo::labeled(WidgetType::Label, true, said)
        });
        let painter = ui.painter();
        painter.text(rect.min, Align2::LEFT_TOP, name, ink.small(), text);
        painter.text(rect.right_top(), Align2::RIGHT_TOP, &words, ink.small(), text);
        let bar = Rect::from_min_max(
            pos2(rect.left(), rect.top() + ink.scaled(20.0)),
            rect.max - vec2(0.0, ink.scaled(8.0)),
        );
        #[expect(clippy::cast_possible_truncation, reason = "a share")]
        let share = (points / full).clamp(0.0, 1.0) as f32;
        let mut filled = bar;
        filled.set_width(share * bar.width());
        painter.rect_filled(filled, 0.0, text);
        painter.rect_stroke(bar, 0.0, ink.line(1.0, |t| t.line), egui::StrokeKind::Inside);
    }
}

/// Where the points went, the most first.
fn losses(ui: &mut Ui, told: &Told<'_>) {
    let (ink, debrief) = (told.ink, told.debrief);
    let text = ink.color(|t| t.text);
    widget::words(ui, &say!("verdict-losses"), ink.zone_title(), text);
    ui.spacing_mut().item_spacing.y = 0.0;
    if debrief.losses.iter().all(|loss| loss.points < 0.05) {
        widget::words(ui, &say!("verdict-no-losses"), ink.body(), text);
    }
    // As wide as the longest number of an operation, the same in every row.
    let last = debrief.losses.iter().filter_map(|loss| loss.operation).max();
    let widest = say!("verdict-operation", operation = last.unwrap_or(0));
    let widest = ui.painter().layout_no_wrap(widest, ink.small(), text);
    let column = widest.size().x + ink.space(10.0);
    // What cost nothing is no loss.
    for loss in debrief.losses.iter().filter(|loss| loss.points >= 0.05) {
        let width = ui.available_width();
        let said = loss
            .operation
            .map(|operation| say!("verdict-operation", operation = operation));
        let where_lost = said.map(|said| {
            let muted = ink.color(|t| t.muted);
            ui.painter().layout_no_wrap(said, ink.small(), muted)
        });
        let words = ui.painter().layout(loss.why.clone(), ink.body(), text, width - column);
        let height = words.size().y.max(ink.scaled(34.0)) + ink.space(8.0);
        let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
        let points = signed(-loss.points, 1);
        response.widget_info(|| {
            let (points, why) = (points.as_str(), loss.why.as_str());
            let said = match loss.operation {
                None => say!("verdict-loss", points = points, why = why),
                Some(operation) => say!("verdict-loss-at", points = points, operation = operation, why = why),
            };
            WidgetInfo::labeled(WidgetType::Label, true, said)
        });
        let painter = ui.painter();
        let at = rect.min + vec2(0.0, ink.space(4.0));
        painter.text(at, Align2::LEFT_TOP, &points, ink.section(), text);
        if let Some(galley) = where_lost {
            painter.galley(at + vec2(0.0, ink.scaled(18.0)), galley, text);
        }
        painter.galley(at + vec2(column, 0.0), words, text);
        painter.hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.hairline));
    }
    ui.add_space(ink.space(10.0));
}

fn truth(ui: &mut Ui, told: &Told<'_>) {
    let (ink, view, debrief) = (told.ink, told.view, told.debrief);
    ui.spacing_mut().item_spacing.y = 0.0;
    let width = ui.available_width();
    let (rect, response) = ui.allocate_exact_size(vec2(width, ink.scaled(26.0)), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Label, true, say!("verdict-truth-and-belief")));
    let painter = ui.painter();
    let text = ink.color(|t| t.text);
    painter.text(
        rect.left_center(),
        Align2::LEFT_CENTER,
        say!("verdict-truth-and-belief"),
        ink.zone_title(),
        text,
    );
    let columns = Columns::of(rect, ink);
    painter.text(
        pos2(columns.truth, rect.center().y),
        Align2::RIGHT_CENTER,
        say!("verdict-truth"),
        ink.section(),
        text,
    );
    painter.text(
        pos2(columns.belief, rect.center().y),
        Align2::RIGHT_CENTER,
        say!("verdict-belief"),
        ink.section(),
        ink.color(|t| t.belief),
    );
    painter.hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.line));
    for standing in &debrief.standings {
        truth_row(ui, ink, view.units, standing);
    }
}

/// Width of names in the table of what was judged, points.
const NAME_WIDTH: f32 = 236.0;

struct Columns {
    band: [f32; 2],
    truth: f32,
    belief: f32,
    mark: f32,
}

impl Columns {
    fn of(rect: Rect, ink: &Ink) -> Self {
        let mark = rect.right() - ink.scaled(12.0);
        let belief = mark - ink.scaled(26.0);
        let truth = belief - ink.scaled(92.0);
        Self {
            band: [rect.left() + ink.scaled(NAME_WIDTH), truth - ink.scaled(92.0)],
            truth,
            belief,
            mark,
        }
    }
}

fn truth_row(ui: &mut Ui, ink: &Ink, units: Units, standing: &Standing) {
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    let digits = |value: f64| standing_digits(standing.measure(), value, units);
    let truth = standing.truth.map_or_else(|| say!("verdict-not-together"), digits);
    let belief = standing.noted.map_or_else(|| say!("verdict-not-written"), digits);
    let name = words::standing::name(standing.what);
    let verdict = words::standing::worth(standing.place());
    let mut range = standing_band(standing, units);
    if standing.on_edge {
        range = say!("verdict-on-edge", range = range);
    }
    let name_width = ink.scaled(NAME_WIDTH) - ink.space(8.0);
    let lay = |words: &str, color| ui.painter().layout(words.to_owned(), ink.small(), color, name_width);
    let (name_laid, range_laid) = (lay(&name, text), lay(&range, muted));
    let height = (name_laid.size().y + range_laid.size().y + ink.scaled(8.0)).max(ink.scaled(46.0));
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), height), Sense::hover());
    response.widget_info(|| {
        let words = say!(
            "verdict-standing-said",
            name = name.as_str(),
            range = range.as_str(),
            truth = truth.as_str(),
            belief = belief.as_str(),
            worth = verdict.clone(),
        );
        WidgetInfo::labeled(WidgetType::Label, true, words)
    });
    let painter = ui.painter();
    let columns = Columns::of(rect, ink);
    let below = rect.top() + ink.scaled(3.0) + name_laid.size().y;
    painter.galley(rect.min + vec2(0.0, ink.scaled(3.0)), name_laid, text);
    painter.galley(pos2(rect.left(), below), range_laid, muted);
    let y = rect.center().y;
    painter.text(pos2(columns.truth, y), Align2::RIGHT_CENTER, truth, ink.section(), text);
    painter.text(
        pos2(columns.belief, y),
        Align2::RIGHT_CENTER,
        belief,
        ink.body(),
        ink.color(|t| t.belief),
    );
    mark(ui, ink, pos2(columns.mark, y), standing.place());
    band(ui, ink, columns.band, y, standing);
    ui.painter()
        .hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.hairline));
}

/// Tick in a circle, bar in a square, or cross in a triangle.
fn mark(ui: &Ui, ink: &Ink, at: egui::Pos2, verdict: Verdict) {
    let size = ink.scaled(9.0);
    let place = |x: f32, y: f32| at + size * vec2(x, y);
    let painter = ui.painter();
    match verdict {
        Verdict::Full => {
            let stroke = Stroke::new(2.0, ink.color(|t| t.good));
            painter.circle_stroke(at, size, stroke);
            painter.line(vec![place(-0.45, 0.0), place(-0.1, 0.4), place(0.5, -0.4)], stroke);
        }
        Verdict::Between => {
            let stroke = Stroke::new(2.0, ink.color(|t| t.text));
            let square = Rect::from_center_size(at, egui::Vec2::splat(1.7 * size));
            painter.rect_stroke(square, 0.0, stroke, egui::StrokeKind::Middle);
            painter.line_segment([place(-0.45, 0.0), place(0.45, 0.0)], stroke);
        }
        Verdict::Off => {
            let stroke = Stroke::new(2.0, ink.color(|t| t.off));
            painter.add(Shape::closed_line(
                vec![place(0.0, -1.0), place(1.0, 0.8), place(-1.0, 0.8)],
                stroke,
            ));
            painter.line_segment([place(-0.3, -0.05), place(0.3, 0.5)], stroke);
            painter.line_segment([place(0.3, -0.05), place(-0.3, 0.5)], stroke);
        }
    }
}

/// Full marks as a solid bar, some marks as a bar with cross lines, none crossed out; truth as a triangle below, belief as
/// an open circle above.
#[expect(clippy::cast_possible_truncation, reason = "places on a screen")]
fn band(ui: &Ui, ink: &Ink, [left, right]: [f32; 2], y: f32, standing: &Standing) {
    if right - left < 40.0 {
        return;
    }
    let (full, zero) = (standing.full, standing.zero);
    let beyond = (0.2 * (zero.high - zero.low)).max(1e-9);
    let (from, to) = (zero.low - beyond, zero.high + beyond);
    let place = |value: f64| {
        let share = ((value - from) / (to - from)).clamp(0.0, 1.0) as f32;
        left + share * (right - left)
    };
    let painter = ui.painter();
    let half = ink.scaled(5.0);
    let bar = |from: f32, to: f32| Rect::from_min_max(pos2(from, y - half), pos2(to, y + half));
    let whole = bar(left, right);
    let off = ink.line(1.0, |t| t.off);
    let clipped = painter.with_clip_rect(whole);
    let mut x = left - 2.0 * half;
    while x < right {
        clipped.line_segment([pos2(x, y - half), pos2(x + 2.0 * half, y + half)], off);
        clipped.line_segment([pos2(x, y + half), pos2(x + 2.0 * half, y - half)], off);
        x += half;
    }
    painter.rect_stroke(whole, 0.0, off, egui::StrokeKind::Inside);
    let some = bar(place(zero.low), place(zero.high));
    painter.rect_filled(some, 0.0, ink.color(|t| t.panel));
    let line = ink.line(1.0, |t| t.text);
    let mut x = some.left();
    while x < some.right() {
        painter.vline(x, some.y_range(), line);
        x += half;
    }
    painter.rect_stroke(some, 0.0, line, egui::StrokeKind::Inside);
    painter.rect_filled(bar(place(full.low), place(full.high)), 0.0, ink.color(|t| t.good));
    if let Some(truth) = standing.truth {
        let tip = pos2(place(truth), y + half + 1.0);
        painter.add(Shape::convex_polygon(
            vec![tip, tip + vec2(half, 1.8 * half), tip + vec2(-half, 1.8 * half)],
            ink.color(|t| t.truth),
            Stroke::NONE,
        ));
    }
    if let Some(belief) = standing.noted {
        let x = place(belief);
        let stroke = ink.line(2.0, |t| t.belief);
        painter.circle_stroke(pos2(x, y - 2.2 * half), 0.8 * half, stroke);
        painter.line_segment([pos2(x, y - 1.4 * half), pos2(x, y + half)], stroke);
    }
}

/// All prints that were looked at, in order.
fn prints(ui: &mut Ui, told: &Told<'_>) {
    let (ink, view, board) = (told.ink, told.view, told.board);
    if board.prints.is_empty() {
        return;
    }
    ui.add_space(ink.space(10.0));
    let text = ink.color(|t| t.text);
    ui.horizontal(|ui| {
        widget::words(ui, &say!("verdict-patterns"), ink.zone_title(), text);
        widget::words(ui, &say!("verdict-patterns-help"), ink.small(), ink.color(|t| t.muted));
    });
    let size = vec2(ink.scaled(104.0), ink.scaled(84.0));
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = vec2(ink.space(10.0), ink.space(6.0));
        for print in &board.prints {
            let whole = size + vec2(0.0, ink.scaled(18.0));
            let (rect, response) = ui.allocate_exact_size(whole, Sense::hover());
            let name = say!(
                "verdict-pattern-name",
                what = print.title.as_str(),
                number = print.number,
            );
            response.widget_info(|| WidgetInfo::labeled(WidgetType::Image, true, &name));
            super::bench::small_print(ui, Rect::from_min_size(rect.min, size), view.theme, board, print);
            ui.painter().text(
                rect.left_bottom(),
                Align2::LEFT_BOTTOM,
                say!("verdict-pattern-number", number = print.number),
                ink.small(),
                text,
            );
            response.on_hover_text(name);
        }
    });
}

/// What it took, beside what the reference technician takes for this axle.
fn took(ui: &mut Ui, told: &Told<'_>) {
    let (ink, board, debrief) = (told.ink, told.board, told.debrief);
    ui.add_space(ink.space(10.0));
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    widget::words(ui, &say!("verdict-took"), ink.zone_title(), text);
    widget::words(ui, &say!("verdict-par-help"), ink.small(), muted);
    ui.spacing_mut().item_spacing.y = 0.0;
    let (tear_downs, minutes, money) = debrief.par;
    let of = |own: String, par: String| say!("verdict-and-par", own = own, par = par);
    widget::number_row(
        ui,
        ink,
        &say!("verdict-time"),
        &of(super::bench::time(board.minutes), super::bench::time(minutes)),
    );
    widget::number_row(
        ui,
        ink,
        &say!("verdict-parts-cost"),
        &of(number(board.money, 0), number(money, 0)),
    );
    widget::number_row(
        ui,
        ink,
        &say!("verdict-teardowns"),
        &of(board.tear_downs.to_string(), tear_downs.to_string()),
    );
}

fn hidden(ui: &mut Ui, told: &Told<'_>) {
    let (ink, view, debrief) = (told.ink, told.view, told.debrief);
    ui.spacing_mut().item_spacing.y = 0.0;
    if debrief.has(Section::State) {
        state(ui, ink, view, debrief);
    }
    if debrief.has(Section::Made) {
        made(ui, ink, view, debrief);
    }
    ui.add_space(ink.space(8.0));
}

/// How the axle really stands.
fn state(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, debrief: &DebriefView) {
    ui.add_space(ink.space(10.0));
    widget::words(ui, &say!("verdict-hidden"), ink.zone_title(), ink.color(|t| t.text));
    for (name, [metric, inch]) in &debrief.hidden {
        let value = match view.units {
            Units::Metric => metric,
            Units::Inch => inch,
        };
        widget::number_row(ui, ink, name, value);
    }
    if let Some([drive, coast]) = &debrief.prints {
        widget::number_row(ui, ink, &say!("verdict-drive-pattern"), drive);
        widget::number_row(ui, ink, &say!("verdict-coast-pattern"), coast);
    }
}

/// What was not made as drawn.
fn made(ui: &mut Ui, ink: &Ink, view: &WindowView<'_>, debrief: &DebriefView) {
    ui.add_space(ink.space(10.0));
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    widget::words(ui, &say!("verdict-not-as-drawn"), ink.zone_title(), text);
    if debrief.made.is_empty() && debrief.faults.is_empty() {
        widget::words(ui, &say!("verdict-all-as-drawn"), ink.body(), text);
    }
    for fault in &debrief.faults {
        widget::words(ui, fault, ink.section(), text);
    }
    for made in &debrief.made {
        let [metric, inch] = &made.off;
        let off = match view.units {
            Units::Metric => metric,
            Units::Inch => inch,
        };
        widget::number_row(ui, ink, &made.name, off);
        widget::words(ui, &made.found_by, ink.small(), muted);
    }
}

/// The builds of the reference technician, then the trainee's own, each with what was changed and how it came out; where there
/// are none, what the reference technician did.
fn ways(ui: &mut Ui, told: &Told<'_>) {
    let (ink, view, debrief) = (told.ink, told.view, told.debrief);
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    ui.add_space(ink.space(10.0));
    widget::words(ui, &say!("verdict-reference"), ink.zone_title(), text);
    ui.spacing_mut().item_spacing.y = ink.space(1.0);
    let words = say!("verdict-reference-points", points = number(debrief.reference_total, 0));
    widget::words(ui, &words, ink.small(), muted);
    for build in &debrief.reference {
        build_words(ui, ink, view.units, build);
    }
    for entry in &debrief.reference_log {
        log_entry(ui, ink, view.units, entry);
    }
    ui.add_space(ink.space(10.0));
    if !debrief.has(Section::Builds) {
        return;
    }
    widget::words(ui, &say!("verdict-own-builds"), ink.zone_title(), text);
    for build in &debrief.builds {
        build_words(ui, ink, view.units, build);
    }
    ui.add_space(ink.space(10.0));
}

fn build_words(ui: &mut Ui, ink: &Ink, units: Units, build: &BuildLine) {
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    let title = build.worth.map_or_else(
        || build.name.clone(),
        |worth| {
            say!(
                "verdict-build-points",
                build = build.name.as_str(),
                points = number(worth, 0),
            )
        },
    );
    ui.add_space(ink.space(4.0));
    widget::words(ui, &title, ink.section(), text);
    if !build.changed.is_empty() {
        let words = say!("verdict-changed", changes = build.changed.join(", "));
        widget::words(ui, &words, ink.body(), text);
    }
    let [metric, inch] = &build.saw;
    let saw = match units {
        Units::Metric => metric,
        Units::Inch => inch,
    };
    if !saw.is_empty() {
        let words = say!("verdict-read", readings = saw.join(", "));
        widget::words(ui, &words, ink.small(), muted);
    }
    if let Some(deeper) = build.deeper_mm {
        let size = fine_length(deeper.abs(), units);
        let words = if deeper > 0.0 {
            say!("verdict-best-deeper", size = size)
        } else {
            say!("verdict-best-shallower", size = size)
        };
        widget::words(ui, &words, ink.small(), muted);
    }
}

fn log(ui: &mut Ui, told: &Told<'_>) {
    let (ink, view, board) = (told.ink, told.view, told.board);
    widget::words(ui, &say!("verdict-done"), ink.zone_title(), ink.color(|t| t.text));
    ui.spacing_mut().item_spacing.y = ink.space(1.0);
    for told in &board.told_back {
        log_entry(ui, ink, view.units, told);
    }
}

/// An operation with what came back.
fn log_entry(ui: &mut Ui, ink: &Ink, units: Units, told: &LogEntry) {
    let (text, muted) = (ink.color(|t| t.text), ink.color(|t| t.muted));
    let title = say!(
        "verdict-done-title",
        number = told.answer.operation,
        what = told.title(units),
    );
    widget::words(ui, &title, ink.body(), text);
    for sentence in &told.sentences {
        widget::words(ui, sentence, ink.small(), muted);
    }
}
