//! The look as egui reads it: fonts, colours, sizes.

use std::sync::Arc;

use egui::{
    Color32, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Margin, Shadow, Stroke, TextStyle, vec2,
};

use crate::view::look::{Tokens, ToothColours};
use crate::view::{Rgb, TextSize, Theme, look};

/// Name of the bold family; the regular one is egui's proportional family.
const BOLD: &str = "bold";

/// A colour of the look for egui.
pub const fn color(rgb: Rgb) -> Color32 {
    let [red, green, blue] = rgb.channels();
    Color32::from_rgb(red, green, blue)
}

/// What a panel needs to know to draw itself: the theme's colours and the size of text.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ink {
    tokens: &'static Tokens,
    factor: f32,
}

impl Ink {
    /// For a theme and a text size.
    pub fn new(theme: Theme, text_size: TextSize) -> Self {
        Self {
            tokens: theme.tokens(),
            factor: text_size.factor(),
        }
    }

    /// A colour of the theme.
    pub fn color(&self, choose: impl FnOnce(&Tokens) -> Rgb) -> Color32 {
        color(choose(self.tokens))
    }

    /// A colour of teeth and paste, the same in both themes.
    pub fn tooth(&self, choose: impl FnOnce(&ToothColours) -> Rgb) -> Color32 {
        color(choose(&look::TOOTH))
    }

    /// A line of the look: width in points, at 100 % and at 200 % the same.
    pub fn line(&self, width: f32, choose: impl FnOnce(&Tokens) -> Rgb) -> Stroke {
        Stroke::new(width, self.color(choose))
    }

    /// A length that grows with the text.
    pub fn scaled(&self, points: f32) -> f32 {
        (points * self.factor).round()
    }

    /// A space that grows slower than the text: large text needs the room itself.
    pub fn space(&self, points: f32) -> f32 {
        (points * (1.0 + 0.4 * (self.factor - 1.0))).round()
    }

    /// Size of text as a factor, 1 to 2.
    pub fn factor(&self) -> f32 {
        self.factor
    }

    /// Whether text is so large that the window is laid out in two columns.
    pub fn large(&self) -> bool {
        self.factor >= 1.5
    }

    /// Small text, 12/16.
    pub fn small(&self) -> FontId {
        FontId::new(12.0 * self.factor, FontFamily::Proportional)
    }

    /// Plain text, 13/18.
    pub fn body(&self) -> FontId {
        FontId::new(13.0 * self.factor, FontFamily::Proportional)
    }

    /// Heading of a section, 13/18 bold.
    pub fn section(&self) -> FontId {
        FontId::new(13.0 * self.factor, bold())
    }

    /// Title of a zone, 15/20 bold.
    pub fn zone_title(&self) -> FontId {
        FontId::new(15.0 * self.factor, bold())
    }

    /// Title of the sheet, 18/24 bold.
    pub fn page_title(&self) -> FontId {
        FontId::new(18.0 * self.factor, bold())
    }
}

pub(super) fn bold() -> FontFamily {
    FontFamily::Name(BOLD.into())
}

/// The files of the font: regular and bold.
pub const FONT_FILES: [&[u8]; 2] = [
    include_bytes!("../../assets/fonts/B612-Regular.otf"),
    include_bytes!("../../assets/fonts/B612-Bold.otf"),
];

/// The fonts: B612 first, whose digits are all equally wide, egui's own behind it for what it lacks.
pub fn fonts() -> FontDefinitions {
    let [regular, bold_file] = FONT_FILES;
    let mut fonts = FontDefinitions::default();
    fonts
        .font_data
        .insert("B612".to_owned(), Arc::new(FontData::from_static(regular)));
    fonts
        .font_data
        .insert("B612 bold".to_owned(), Arc::new(FontData::from_static(bold_file)));
    let fallback = fonts
        .families
        .get(&FontFamily::Proportional)
        .cloned()
        .unwrap_or_default();
    let behind = |first: &str| {
        std::iter::once(first.to_owned())
            .chain(fallback.iter().cloned())
            .collect()
    };
    fonts.families.insert(bold(), behind("B612 bold"));
    fonts.families.insert(FontFamily::Proportional, behind("B612"));
    fonts
}

/// Gives a context the fonts, once, before its first pass.
pub fn install_fonts(ctx: &egui::Context) {
    ctx.set_fonts(fonts());
}

/// Sets colours and sizes of everything egui draws by itself: labels, tooltips, scroll bars.
pub fn apply(ctx: &egui::Context, theme: Theme, text_size: TextSize) {
    let ink = Ink::new(theme, text_size);
    let egui_theme = match theme {
        Theme::Paper => egui::Theme::Light,
        Theme::Slate => egui::Theme::Dark,
    };
    ctx.set_theme(egui_theme);
    ctx.all_styles_mut(|style| {
        style.animation_time = 0.0;
        style.text_styles = [
            (TextStyle::Small, ink.small()),
            (TextStyle::Body, ink.body()),
            (TextStyle::Button, ink.body()),
            (TextStyle::Heading, ink.zone_title()),
            (TextStyle::Monospace, ink.body()),
        ]
        .into();
        style.spacing.item_spacing = vec2(ink.space(8.0), ink.space(4.0));
        style.spacing.interact_size.y = ink.scaled(32.0);
        style.spacing.tooltip_width = ink.scaled(260.0);
        style.spacing.menu_margin = Margin::same(8);
        // A list that goes on below shows that it does.
        style.spacing.scroll = egui::style::ScrollStyle {
            bar_width: 8.0,
            floating_allocated_width: 9.0,
            ..egui::style::ScrollStyle::thin()
        };
        style.interaction.selectable_labels = false;

        let visuals = &mut style.visuals;
        visuals.dark_mode = theme == Theme::Slate;
        visuals.override_text_color = Some(ink.color(|t| t.text));
        visuals.weak_text_color = Some(ink.color(|t| t.muted));
        visuals.panel_fill = ink.color(|t| t.panel);
        visuals.window_fill = ink.color(|t| t.inset);
        visuals.extreme_bg_color = ink.color(|t| t.inset);
        visuals.faint_bg_color = ink.color(|t| t.ground);
        visuals.window_stroke = ink.line(1.0, |t| t.line);
        visuals.window_corner_radius = CornerRadius::ZERO;
        visuals.menu_corner_radius = CornerRadius::ZERO;
        visuals.window_shadow = Shadow::NONE;
        visuals.popup_shadow = Shadow::NONE;
        visuals.selection.bg_fill = ink.color(|t| t.accent);
        visuals.selection.stroke = ink.line(1.0, |t| t.on_accent);
        visuals.hyperlink_color = ink.color(|t| t.accent);
        let all = [
            &mut visuals.widgets.noninteractive,
            &mut visuals.widgets.inactive,
            &mut visuals.widgets.hovered,
            &mut visuals.widgets.active,
            &mut visuals.widgets.open,
        ];
        for widget in all {
            widget.bg_fill = ink.color(|t| t.line);
            widget.weak_bg_fill = ink.color(|t| t.inset);
            widget.bg_stroke = ink.line(1.0, |t| t.line);
            widget.fg_stroke = ink.line(1.0, |t| t.text);
            widget.corner_radius = CornerRadius::same(2);
            widget.expansion = 0.0;
        }
    });
}
