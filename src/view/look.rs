//! The look in numbers: two themes, the steel and paste of the stage, and the text sizes.
//!
//! The values are those of the project's look page, where the contrast of every pair was measured; the tests keep
//! the rules (text at least 4.5 : 1, graphics at least 3 : 1, after WCAG 2.2). Colour is never the only carrier of
//! a meaning.

use crate::words::say;

/// A colour in sRGB, 8 bits a channel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Rgb {
    /// Red.
    pub red: u8,
    /// Green.
    pub green: u8,
    /// Blue.
    pub blue: u8,
}

impl Rgb {
    /// The colour written as `0xRRGGBB`.
    pub const fn hex(value: u32) -> Self {
        let [_, red, green, blue] = value.to_be_bytes();
        Self { red, green, blue }
    }

    /// Red, green and blue, 0 to 255.
    pub const fn channels(self) -> [u8; 3] {
        [self.red, self.green, self.blue]
    }
}

/// The ground everything is drawn on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Theme {
    /// Dark ink on paper.
    #[default]
    Paper,
    /// Light chalk on slate.
    Slate,
}

/// The colours of one theme.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tokens {
    /// The sheet itself.
    pub ground: Rgb,
    /// A zone that is read.
    pub panel: Rgb,
    /// A field that is pressed or written in.
    pub inset: Rgb,
    /// Lines between table rows: ornament.
    pub hairline: Rgb,
    /// Lines between zones, frames of fields.
    pub line: Rgb,
    /// Ink.
    pub text: Rgb,
    /// Second-rank ink.
    pub muted: Rgb,
    /// The trainee's hand: what can be pressed next, what was chosen, what was believed.
    pub accent: Rgb,
    /// Text on the accent.
    pub on_accent: Rgb,
    /// Inside the band.
    pub good: Rgb,
    /// Close to the band's edge.
    pub near: Rgb,
    /// Outside the band.
    pub off: Rgb,
    /// Fill of a caution strip.
    pub caution: Rgb,
    /// Text on a caution strip.
    pub on_caution: Rgb,
    /// The drive side.
    pub drive: Rgb,
    /// The coast side.
    pub coast: Rgb,
    /// What was true.
    pub truth: Rgb,
    /// What was believed.
    pub belief: Rgb,
    /// What was before.
    pub ghost: Rgb,
    /// Stage, upper edge.
    pub stage_top: Rgb,
    /// Stage, lower edge.
    pub stage_foot: Rgb,
}

const PAPER: Tokens = Tokens {
    ground: Rgb::hex(0xE9_E2D2),
    panel: Rgb::hex(0xF7_F2E6),
    inset: Rgb::hex(0xFF_FCF4),
    hairline: Rgb::hex(0xC2_B7A2),
    line: Rgb::hex(0x6A_6458),
    text: Rgb::hex(0x24_211C),
    muted: Rgb::hex(0x5C_5547),
    accent: Rgb::hex(0x56_2B99),
    on_accent: Rgb::hex(0xFF_FCF4),
    good: Rgb::hex(0x1F_7858),
    near: Rgb::hex(0xA0_700A),
    off: Rgb::hex(0x6B_0A30),
    caution: Rgb::hex(0xF0_C245),
    on_caution: Rgb::hex(0x24_211C),
    drive: Rgb::hex(0x17_5D6C),
    coast: Rgb::hex(0x8C_4A17),
    truth: Rgb::hex(0x17_140F),
    belief: Rgb::hex(0x56_2B99),
    ghost: Rgb::hex(0x72_6A58),
    stage_top: Rgb::hex(0xD9_D2C3),
    stage_foot: Rgb::hex(0xC6_BFB0),
};

const SLATE: Tokens = Tokens {
    ground: Rgb::hex(0x23_282A),
    panel: Rgb::hex(0x2D_3335),
    inset: Rgb::hex(0x1A_1E20),
    hairline: Rgb::hex(0x4B_5355),
    line: Rgb::hex(0x83_8D86),
    text: Rgb::hex(0xEE_E8DA),
    muted: Rgb::hex(0xBB_B6A8),
    accent: Rgb::hex(0xC3_B2FB),
    on_accent: Rgb::hex(0x1A_1E20),
    good: Rgb::hex(0x7F_DABB),
    near: Rgb::hex(0xE3_A83C),
    off: Rgb::hex(0xFF_6687),
    caution: Rgb::hex(0xFF_F3AC),
    on_caution: Rgb::hex(0x1A_1E20),
    drive: Rgb::hex(0x4E_A8B8),
    coast: Rgb::hex(0xDD_8D66),
    truth: Rgb::hex(0xFF_FDF6),
    belief: Rgb::hex(0xC3_B2FB),
    ghost: Rgb::hex(0x9F_9B89),
    stage_top: Rgb::hex(0x36_3D3F),
    stage_foot: Rgb::hex(0x20_2527),
};

impl Theme {
    /// Both themes, in the order in which they are offered.
    pub const ALL: [Self; 2] = [Self::Paper, Self::Slate];

    /// The colours.
    pub const fn tokens(self) -> &'static Tokens {
        match self {
            Self::Paper => &PAPER,
            Self::Slate => &SLATE,
        }
    }

    /// The word on the switch.
    pub fn label(self) -> String {
        match self {
            Self::Paper => say!("window-theme-paper"),
            Self::Slate => say!("window-theme-slate"),
        }
    }
}

/// Colours of the teeth, the same in both themes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ToothColours {
    /// Marking paste.
    pub paste: Rgb,
    /// The ridge that the paste is pushed up to.
    pub paste_rim: Rgb,
    /// Bare ground steel.
    pub steel: Rgb,
    /// Worn steel.
    pub steel_worn: Rgb,
    /// Dash of the two-tone line of an earlier print.
    pub ghost_dark: Rgb,
    /// Gap of the two-tone line of an earlier print.
    pub ghost_light: Rgb,
}

/// Steel and paste.
pub const TOOTH: ToothColours = ToothColours {
    paste: Rgb::hex(0xEF_CF68),
    paste_rim: Rgb::hex(0xB9_8F1E),
    steel: Rgb::hex(0x69_717A),
    steel_worn: Rgb::hex(0x30_353A),
    ghost_dark: Rgb::hex(0x15_171A),
    ghost_light: Rgb::hex(0xFF_FCF4),
};

/// How large the text is, 100 to 200 percent of its design size.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct TextSize {
    percent: u16,
}

impl Default for TextSize {
    fn default() -> Self {
        Self {
            percent: Self::STEPS[0],
        }
    }
}

impl TextSize {
    /// The sizes offered, percent.
    pub const STEPS: [u16; 11] = [100, 110, 120, 130, 140, 150, 160, 170, 180, 190, 200];

    /// The offered size nearest to a wish, the smaller of two equally near.
    pub fn nearest(percent: u16) -> Self {
        let percent = Self::STEPS
            .into_iter()
            .min_by_key(|step| step.abs_diff(percent))
            .unwrap_or(Self::STEPS[0]);
        Self { percent }
    }

    /// In percent.
    pub const fn percent(self) -> u16 {
        self.percent
    }

    /// As a factor, 1 to 2.
    pub fn factor(self) -> f32 {
        f32::from(self.percent) / 100.0
    }

    /// The next larger size, if there is one.
    pub fn larger(self) -> Option<Self> {
        Self::STEPS
            .into_iter()
            .find(|step| *step > self.percent)
            .map(|percent| Self { percent })
    }

    /// The next smaller size, if there is one.
    pub fn smaller(self) -> Option<Self> {
        Self::STEPS
            .into_iter()
            .rev()
            .find(|step| *step < self.percent)
            .map(|percent| Self { percent })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::numerics::math;

    /// Relative luminance and contrast ratio after WCAG 2.2, "relative luminance" and "contrast ratio".
    fn contrast(a: Rgb, b: Rgb) -> f64 {
        let luminance = |colour: Rgb| {
            let [r, g, b] = colour.channels().map(|channel| {
                let c = f64::from(channel) / 255.0;
                if c <= 0.040_45 {
                    c / 12.92
                } else {
                    math::pow((c + 0.055) / 1.055, 2.4)
                }
            });
            0.2126 * r + 0.7152 * g + 0.0722 * b
        };
        let (x, y) = (luminance(a) + 0.05, luminance(b) + 0.05);
        if x > y { x / y } else { y / x }
    }

    #[test]
    fn text_and_graphics_stand_out() {
        for theme in Theme::ALL {
            let t = theme.tokens();
            for back in [t.ground, t.panel, t.inset] {
                for front in [t.text, t.muted] {
                    assert!(contrast(front, back) >= 4.5, "{theme:?}: text {front:?} on {back:?}");
                }
                for front in [
                    t.line, t.good, t.near, t.off, t.drive, t.coast, t.truth, t.belief, t.ghost, t.accent,
                ] {
                    assert!(contrast(front, back) >= 3.0, "{theme:?}: graphic {front:?} on {back:?}");
                }
            }
            for back in [t.panel, t.inset] {
                for front in [t.good, t.off, t.drive, t.coast, t.accent] {
                    assert!(
                        contrast(front, back) >= 4.5,
                        "{theme:?}: coloured text {front:?} on {back:?}"
                    );
                }
            }
            for back in [t.stage_top, t.stage_foot] {
                assert!(contrast(t.text, back) >= 4.5, "{theme:?}: text on the stage");
                assert!(contrast(t.line, back) >= 3.0, "{theme:?}: line on the stage");
                assert!(contrast(t.accent, back) >= 3.0, "{theme:?}: accent on the stage");
            }
            assert!(contrast(t.on_accent, t.accent) >= 4.5, "{theme:?}: text on the accent");
            assert!(contrast(t.on_caution, t.caution) >= 4.5, "{theme:?}: text on a caution");
        }
        for back in [TOOTH.steel, TOOTH.steel_worn] {
            assert!(contrast(TOOTH.paste, back) >= 3.0, "paste on {back:?}");
        }
    }

    #[test]
    fn text_sizes_step_from_100_to_200() {
        assert_eq!(TextSize::nearest(0).percent(), 100);
        assert_eq!(TextSize::nearest(u16::MAX).percent(), 200);
        let mut size = TextSize::default();
        let mut seen = vec![size.percent()];
        while let Some(larger) = size.larger() {
            assert_eq!(larger.smaller(), Some(size), "a step up and a step down");
            size = larger;
            seen.push(size.percent());
        }
        assert_eq!(seen, TextSize::STEPS);
    }
}
