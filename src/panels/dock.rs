//! Panels at the edges of a page: egui's own, that can be dragged, filled and parted by lines as the look wants them. Their
//! sizes are remembered, for each size of text its own.

use egui::{Frame, Id, Panel, Rangef, Rect, Ui, UiBuilder, Vec2};

use super::page::Page;
use crate::view::{Command, Rgb, WindowView, look::Tokens};

/// The edge that a panel lies at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Edge {
    Left,
    Right,
    Top,
    Bottom,
}

/// A panel at an edge of what is left of the page.
#[derive(Debug, Clone, Copy)]
pub(super) struct Dock {
    name: &'static str,
    edge: Edge,
    usual: f32,
    range: Rangef,
    dragged: bool,
    margin: Vec2,
    fill: Option<fn(&Tokens) -> Rgb>,
}

impl Dock {
    /// A panel that is as wide, or as high, as this until somebody drags its edge, and then within this range.
    pub(super) fn new(name: &'static str, edge: Edge, usual: f32, range: [f32; 2]) -> Self {
        let [least, most] = range;
        let most = most.max(least);
        Self {
            name,
            edge,
            usual: usual.clamp(least, most).round(),
            range: Rangef::new(least, most),
            dragged: true,
            margin: Vec2::ZERO,
            fill: None,
        }
    }

    /// A panel that is just as wide, or as high, as what stands in it needs.
    pub(super) fn fixed(name: &'static str, edge: Edge, size: f32) -> Self {
        Self {
            dragged: false,
            ..Self::new(name, edge, size, [size.round(), size.round()])
        }
    }

    /// With a rim round what stands in it.
    pub(super) fn margin(self, margin: Vec2) -> Self {
        Self { margin, ..self }
    }

    /// Filled with a color of the look.
    pub(super) fn fill(self, fill: fn(&Tokens) -> Rgb) -> Self {
        Self {
            fill: Some(fill),
            ..self
        }
    }

    /// Name under which its size is remembered, of this text size.
    fn key(&self, view: &WindowView<'_>) -> String {
        panel_key(self.name, view)
    }

    /// Lays it out and fills it, and answers where it lies. What stands in it is drawn by [`Placed::show`], in the order in
    /// which the keyboard is to go from one to the next.
    pub(super) fn place(self, ui: &mut Ui, page: &mut Page<'_>) -> Placed {
        let view = page.view;
        // Large text and small text need different sizes: each has its own panel in egui's memory.
        let id = Id::new((self.name, view.text_size.percent()));
        let kept = view.panels.get(&self.key(view)).copied();
        let size = kept
            .filter(|_| self.dragged)
            .unwrap_or(self.usual)
            .clamp(self.range.min, self.range.max);
        let panel = match self.edge {
            Edge::Left => Panel::left(id),
            Edge::Right => Panel::right(id),
            Edge::Top => Panel::top(id),
            Edge::Bottom => Panel::bottom(id),
        };
        let panel = if self.dragged {
            panel.resizable(true).default_size(size).size_range(self.range)
        } else {
            panel.resizable(false).exact_size(size)
        };
        let shown = panel.show_separator_line(false).frame(Frame::NONE).show(ui, |ui| {
            let rect = ui.max_rect();
            // The panel is as large as it is, whatever stands in it.
            ui.set_min_size(rect.size());
            if let Some(fill) = self.fill {
                ui.painter().rect_filled(rect, 0.0, page.ink.color(fill));
            }
        });
        let rect = shown.response.rect;
        let handle = ui.ctx().read_response(id.with("__resize"));
        if self.dragged && handle.is_some_and(|handle| handle.drag_stopped()) {
            let points = match self.edge {
                Edge::Left | Edge::Right => rect.width(),
                Edge::Top | Edge::Bottom => rect.height(),
            };
            page.out.push(Command::KeepPanel(self.key(view), points));
        }
        Placed {
            name: self.name,
            rect,
            margin: self.margin,
        }
    }
}

/// A panel that has its place.
#[derive(Debug, Clone, Copy)]
pub(super) struct Placed {
    name: &'static str,
    /// Where it lies.
    pub(super) rect: Rect,
    margin: Vec2,
}

impl Placed {
    /// Draws what stands in it.
    pub(super) fn show<R>(&self, ui: &mut Ui, add: impl FnOnce(&mut Ui) -> R) -> R {
        inside(ui, self.name, self.rect, self.margin, add)
    }
}

/// Name under which the size of a panel is remembered.
pub(super) fn panel_key(name: &str, view: &WindowView<'_>) -> String {
    format!("{name} {}", view.text_size.percent())
}

/// Draws within a part of the page, cut off at its edges, without making the page larger.
pub(super) fn inside<R>(ui: &mut Ui, name: &str, zone: Rect, margin: Vec2, add: impl FnOnce(&mut Ui) -> R) -> R {
    let mut child = ui.new_child(UiBuilder::new().id_salt(name).max_rect(zone.shrink2(margin)));
    child.set_clip_rect(zone.intersect(ui.clip_rect()));
    add(&mut child)
}
