//! Colours by what they mean, and the two themes that give them values.

/// What a colour stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ink {
    /// The sheet.
    Ground,
    /// A zone on the sheet.
    Panel,
    /// Where values and plots stand.
    Inset,
    /// Ornament: table rows, grid.
    Hairline,
    /// Thin rule, axis.
    Line,
    /// Text.
    Text,
    /// Text of less weight.
    Muted,
    /// The trainee's hand: what can be pressed, what was chosen.
    Accent,
    /// Inside the window.
    Good,
    /// Close to it; never for text.
    Near,
    /// Outside.
    Off,
    /// Drive flank.
    Drive,
    /// Coast flank.
    Coast,
    /// The hidden number.
    Truth,
    /// What the trainee believed.
    Belief,
    /// What was before, or would be.
    Ghost,
    /// Fill of a caution.
    Caution,
    /// Text on a caution.
    OnCaution,
    /// Marking paste on a tooth.
    Paste,
    /// Ridge of the paste.
    PasteRim,
    /// Bare steel of a tooth.
    Steel,
    /// Worn steel.
    SteelWorn,
    /// Dashes of a line over paste and steel alike.
    GhostDark,
    /// What lies between them.
    GhostLight,
}

/// Light or dark sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Theme {
    /// Paper.
    #[default]
    Paper,
    /// Slate.
    Slate,
}

impl Ink {
    /// Every ink.
    pub const ALL: [Self; 24] = [
        Self::Ground,
        Self::Panel,
        Self::Inset,
        Self::Hairline,
        Self::Line,
        Self::Text,
        Self::Muted,
        Self::Accent,
        Self::Good,
        Self::Near,
        Self::Off,
        Self::Drive,
        Self::Coast,
        Self::Truth,
        Self::Belief,
        Self::Ghost,
        Self::Caution,
        Self::OnCaution,
        Self::Paste,
        Self::PasteRim,
        Self::Steel,
        Self::SteelWorn,
        Self::GhostDark,
        Self::GhostLight,
    ];

    /// The token's name in the project's table of colours; those of a tooth are the same in both themes.
    pub fn token(self) -> &'static str {
        match self {
            Self::Ground => "ground",
            Self::Panel => "panel",
            Self::Inset => "inset",
            Self::Hairline => "hairline",
            Self::Line => "line",
            Self::Text => "text",
            Self::Muted => "muted",
            Self::Accent => "accent",
            Self::Good => "good",
            Self::Near => "near",
            Self::Off => "off",
            Self::Drive => "drive",
            Self::Coast => "coast",
            Self::Truth => "truth",
            Self::Belief => "belief",
            Self::Ghost => "ghost",
            Self::Caution => "caution",
            Self::OnCaution => "on_caution",
            Self::Paste => "tooth.paste",
            Self::PasteRim => "tooth.paste_rim",
            Self::Steel => "tooth.steel",
            Self::SteelWorn => "tooth.steel_worn",
            Self::GhostDark => "tooth.ghost_dark",
            Self::GhostLight => "tooth.ghost_light",
        }
    }

    /// Red, green, blue in a theme.
    pub fn rgb(self, theme: Theme) -> [u8; 3] {
        let (paper, slate) = match self {
            Self::Ground => (0xE9E2D2, 0x23282A),
            Self::Panel => (0xF7F2E6, 0x2D3335),
            Self::Inset => (0xFFFCF4, 0x1A1E20),
            Self::Hairline => (0xC2B7A2, 0x4B5355),
            Self::Line => (0x6A6458, 0x838D86),
            Self::Text => (0x24211C, 0xEEE8DA),
            Self::Muted => (0x5C5547, 0xBBB6A8),
            Self::Accent | Self::Belief => (0x562B99, 0xC3B2FB),
            Self::Good => (0x1F7858, 0x7FDABB),
            Self::Near => (0xA0700A, 0xE3A83C),
            Self::Off => (0x6B0A30, 0xFF6687),
            Self::Drive => (0x175D6C, 0x4EA8B8),
            Self::Coast => (0x8C4A17, 0xDD8D66),
            Self::Truth => (0x17140F, 0xFFFDF6),
            Self::Ghost => (0x726A58, 0x9F9B89),
            Self::Caution => (0xF0C245, 0xFFF3AC),
            Self::OnCaution => (0x24211C, 0x1A1E20),
            Self::Paste => (0xEFCF68, 0xEFCF68),
            Self::PasteRim => (0xB98F1E, 0xB98F1E),
            Self::Steel => (0x69717A, 0x69717A),
            Self::SteelWorn => (0x30353A, 0x30353A),
            Self::GhostDark => (0x15171A, 0x15171A),
            Self::GhostLight => (0xFFFCF4, 0xFFFCF4),
        };
        let value: u32 = match theme {
            Theme::Paper => paper,
            Theme::Slate => slate,
        };
        let [_, red, green, blue] = value.to_be_bytes();
        [red, green, blue]
    }
}
