//! A picture as an SVG 1.1 file: complete in itself, the same bytes for the same picture.

use super::ink::{Ink, Theme};
use super::markup::escaped;
use super::path::{Path, Point, Segment};
use super::picture::{Anchor, Fill, Hatch, Item, LineStyle, Picture, Stroke, Text, Weight};

/// Fonts in the order in which they are tried; all have digits of equal width.
const FONTS: &str = "B612, 'DejaVu Sans', sans-serif";

/// The file's text.
pub fn write(picture: &Picture, theme: Theme) -> String {
    element(picture, theme, " xmlns=\"http://www.w3.org/2000/svg\"", "")
}

/// The picture as an element of an HTML page. `prefix` stands before every name in it, so that several pictures of one page
/// do not meet in their names.
pub fn inline(picture: &Picture, theme: Theme, prefix: &str) -> String {
    element(picture, theme, "", prefix)
}

fn element(picture: &Picture, theme: Theme, namespace: &str, prefix: &str) -> String {
    let mut writer = Writer {
        out: String::new(),
        theme,
        prefix: prefix.to_owned(),
        hatches: Vec::new(),
        clips: 0,
    };
    writer.collect_hatches(&picture.items);
    let (w, h) = (number(picture.width), number(picture.height));
    writer.push(&format!(
        "<svg{namespace} width=\"{w}\" height=\"{h}\" viewBox=\"0 0 {w} {h}\" role=\"img\" \
         font-family=\"{FONTS}\">\n<title>{}</title>\n<desc>{}</desc>\n",
        escaped(&picture.title),
        escaped(&picture.description)
    ));
    writer.hatch_patterns();
    for item in &picture.items {
        writer.item(item);
    }
    writer.push("</svg>\n");
    writer.out
}

struct Writer {
    out: String,
    theme: Theme,
    prefix: String,
    hatches: Vec<(Hatch, Ink)>,
    clips: u32,
}

impl Writer {
    fn push(&mut self, text: &str) {
        self.out.push_str(text);
    }

    fn colour(&self, ink: Ink) -> String {
        let [r, g, b] = ink.rgb(self.theme);
        format!("#{r:02x}{g:02x}{b:02x}")
    }

    fn collect_hatches(&mut self, items: &[Item]) {
        for item in items {
            match item {
                Item::Shape {
                    fill: Some(Fill::Hatched { hatch, ink }),
                    ..
                } if !self.hatches.contains(&(*hatch, *ink)) => {
                    self.hatches.push((*hatch, *ink));
                }
                Item::Clipped { items, .. } => self.collect_hatches(items),
                Item::Shape { .. } | Item::Text(_) => {}
            }
        }
    }

    fn hatch_patterns(&mut self) {
        if self.hatches.is_empty() {
            return;
        }
        self.push("<defs>\n");
        for (hatch, ink) in self.hatches.clone() {
            let colour = self.colour(ink);
            // Slanting lines run beyond the tile so that they join at its edges.
            let lines = match hatch {
                Hatch::Rising => "M-2 2 2-2M0 8 8 0M6 10 10 6",
                Hatch::Falling => "M-2 6 2 10M0 0 8 8M6-2 10 2",
                Hatch::Upright => "M4 0V8",
                Hatch::Level => "M0 4H8",
                Hatch::Crossed => "M0 8 8 0M0 0 8 8",
                Hatch::Stipple => "",
            };
            let tile = if hatch == Hatch::Stipple {
                format!(
                    "<circle cx=\"2\" cy=\"2\" r=\"0.9\" fill=\"{colour}\"/><circle cx=\"6\" cy=\"6\" r=\"0.9\" fill=\"{colour}\"/>"
                )
            } else {
                format!("<path d=\"{lines}\" stroke=\"{colour}\" stroke-width=\"1\" fill=\"none\"/>")
            };
            let id = self.hatch_id(hatch, ink);
            self.push(&format!(
                "<pattern id=\"{id}\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\">{tile}</pattern>\n"
            ));
        }
        self.push("</defs>\n");
    }

    fn hatch_id(&self, hatch: Hatch, ink: Ink) -> String {
        let pattern = match hatch {
            Hatch::Rising => "rising",
            Hatch::Falling => "falling",
            Hatch::Upright => "upright",
            Hatch::Level => "level",
            Hatch::Crossed => "crossed",
            Hatch::Stipple => "stipple",
        };
        format!("{}{pattern}-{}", self.prefix, ink.token().replace('.', "-"))
    }

    fn item(&mut self, item: &Item) {
        match item {
            Item::Shape { path, fill, stroke } => self.shape(path, fill.as_ref(), stroke.as_ref()),
            Item::Text(text) => self.text(text),
            Item::Clipped { to, items } => {
                self.clips += 1;
                let id = format!("{}clip{}", self.prefix, self.clips);
                self.push(&format!(
                    "<clipPath id=\"{id}\"><rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/></clipPath>\n<g clip-path=\"url(#{id})\">\n",
                    number(to.left),
                    number(to.top),
                    number(to.width()),
                    number(to.height())
                ));
                for inner in items {
                    self.item(inner);
                }
                self.push("</g>\n");
            }
        }
    }

    fn shape(&mut self, path: &Path, fill: Option<&Fill>, stroke: Option<&Stroke>) {
        let fill = match fill {
            None => "fill=\"none\"".to_owned(),
            Some(Fill::Plain { ink, opacity }) if *opacity >= 1.0 => format!("fill=\"{}\"", self.colour(*ink)),
            Some(Fill::Plain { ink, opacity }) => {
                format!("fill=\"{}\" fill-opacity=\"{}\"", self.colour(*ink), number(*opacity))
            }
            Some(Fill::Hatched { hatch, ink }) => format!("fill=\"url(#{})\"", self.hatch_id(*hatch, *ink)),
        };
        let stroke = stroke.map_or_else(String::new, |s| {
            let breaks = match s.style {
                LineStyle::Full => "",
                LineStyle::Dashed => " stroke-dasharray=\"9 4\"",
                LineStyle::FineDashed => " stroke-dasharray=\"4 3\"",
                LineStyle::DashDot => " stroke-dasharray=\"10 4 2 4\"",
                LineStyle::Dotted => " stroke-dasharray=\"1.5 3.5\"",
            };
            format!(
                " stroke=\"{}\" stroke-width=\"{}\" stroke-linejoin=\"round\"{breaks}",
                self.colour(s.ink),
                number(s.width)
            )
        });
        self.push(&format!("<path d=\"{}\" {fill}{stroke}/>\n", outline(path)));
    }

    fn text(&mut self, text: &Text) {
        let (x, y) = (number(text.at.x), number(text.at.y));
        let anchor = match text.anchor {
            Anchor::Start => "",
            Anchor::Middle => " text-anchor=\"middle\"",
            Anchor::End => " text-anchor=\"end\"",
        };
        let weight = if text.weight == Weight::Bold {
            " font-weight=\"bold\""
        } else {
            ""
        };
        let turn = if text.upward {
            format!(" transform=\"rotate(-90 {x} {y})\"")
        } else {
            String::new()
        };
        let place = format!(
            "x=\"{x}\" y=\"{y}\" font-size=\"{}\"{weight}{anchor}{turn}",
            number(text.size)
        );
        let words = escaped(&text.words);
        // The rim is a text of its own below: renderers differ in what they make of paint-order.
        if let Some(halo) = text.halo {
            let colour = self.colour(halo);
            self.push(&format!(
                "<text {place} fill=\"none\" stroke=\"{colour}\" stroke-width=\"4\" stroke-linejoin=\"round\">{words}</text>\n"
            ));
        }
        self.push(&format!(
            "<text {place} fill=\"{}\">{words}</text>\n",
            self.colour(text.ink)
        ));
    }
}

fn outline(path: &Path) -> String {
    let mut out = String::new();
    let mut put = |letter: char, points: &[&Point]| {
        out.push(letter);
        for (i, p) in points.iter().enumerate() {
            if i > 0 {
                out.push(' ');
            }
            out.push_str(&number(p.x));
            out.push(' ');
            out.push_str(&number(p.y));
        }
    };
    for segment in &path.segments {
        match segment {
            Segment::Move(p) => put('M', &[p]),
            Segment::Line(p) => put('L', &[p]),
            Segment::Curve(a, b, p) => put('C', &[a, b, p]),
            Segment::Close => put('Z', &[]),
        }
    }
    out
}

/// Two decimals are a hundredth of a point; zeros at the end go. What is no number is drawn at the origin.
fn number(value: f64) -> String {
    if !value.is_finite() {
        return "0".to_owned();
    }
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::{Mark, Rect};

    #[test]
    fn a_picture_holds_everything_it_needs() {
        let mut picture = Picture::on(Ink::Panel, 200.0, 100.0, "A <title>", "What & how");
        let area = Rect {
            left: 10.0,
            top: 10.0,
            right: 90.0,
            bottom: 90.0,
        };
        picture.draw(Item::Clipped {
            to: area,
            items: vec![Item::filled(
                area.path(),
                Fill::Hatched {
                    hatch: Hatch::Rising,
                    ink: Ink::Good,
                },
            )],
        });
        picture.draw(Item::Text(
            Text::new(Point::new(5.0, 5.0), "a \"b\" \u{7}", 12.0).with_halo(Ink::Inset),
        ));
        for mark in [
            Mark::Dot,
            Mark::OpenCircle,
            Mark::TriangleUp,
            Mark::Plus,
            Mark::Cross,
            Mark::Good,
            Mark::Near,
            Mark::Off,
        ] {
            for item in mark.items(Point::new(50.0, 50.0), 10.0, Ink::Off, Ink::Inset) {
                picture.draw(item);
            }
        }
        let text = write(&picture, Theme::Paper);
        assert!(text.contains("<title>A &lt;title&gt;</title>"), "{text}");
        assert!(
            text.contains("pattern id=\"rising-good\"") && text.contains("url(#rising-good)"),
            "{text}"
        );
        assert!(text.contains("#1f7858") && !text.contains("#7fdabb"), "paper's colours");
        assert!(text.contains(">a &quot;b&quot; </text>"), "{text}");
        assert!(
            !text.contains("href") && !text.contains("NaN"),
            "nothing from outside, no place without a number"
        );
        let slate = write(&picture, Theme::Slate);
        assert!(slate.contains("#7fdabb") && slate != text, "slate's colours");
        assert_eq!(text, write(&picture, Theme::Paper), "same picture, same bytes");
        let inside = inline(&picture, Theme::Paper, "a1-");
        assert!(
            !inside.contains("http") && inside.contains("id=\"a1-clip1\"") && inside.contains("url(#a1-rising-good)"),
            "{inside}"
        );
    }
}
