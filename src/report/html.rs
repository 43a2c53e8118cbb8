//! A page of HTML: one file, no script, nothing from outside. Whatever people wrote goes through `escaped`.

pub(super) use crate::drawing::markup::escaped;
use crate::drawing::{Ink, Picture, Theme, svg};

/// Style of the page. Colours are filled in from the tokens of the look.
const STYLE: &str = "\
@page{size:auto;margin:14mm 13mm 15mm}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:var(--ground);color:var(--text);font:13px/18px B612,'DejaVu Sans',sans-serif;\
font-variant-numeric:tabular-nums}
main{max-width:1000px;margin:0 auto;background:var(--panel);padding:24px}
h1{font-size:24px;line-height:30px;margin:2px 0 4px}
h2{font-size:18px;line-height:24px;margin:36px 0 4px;padding-top:8px;border-top:2px solid var(--text)}
h3{font-size:15px;line-height:20px;margin:20px 0 4px}
p{margin:4px 0 8px;max-width:78ch}
.small,figcaption,.muted{font-size:12px;line-height:16px}
.muted{color:var(--muted)}
.caution{display:flex;gap:12px;align-items:center;background:var(--caution);color:var(--on_caution);padding:8px 12px;\
margin:10px 0;border:1px solid var(--on_caution)}
.caution b{white-space:nowrap}
table{border-collapse:collapse;width:100%;margin:6px 0 10px;background:var(--inset)}
caption{text-align:left;font-weight:bold;padding:4px 0}
th,td{text-align:left;vertical-align:top;padding:4px 8px;border-bottom:1px solid var(--hairline)}
thead th{border-bottom:1px solid var(--line);font-size:12px;line-height:16px;vertical-align:bottom}
thead{display:table-header-group}
tr{break-inside:avoid}
tbody th{font-weight:normal}
td.n,th.n{text-align:right;white-space:nowrap}
td.m{width:52px}
td.scale{width:258px}
td.scale svg{width:244px;max-width:none}
td.box{width:138px}
td.box svg{width:122px;max-width:none}
.none{color:var(--muted)}
.belief{color:var(--accent)}
.truth{font-weight:bold}
.inch{color:var(--muted);font-size:12px;white-space:nowrap}
.tag{display:inline-block;border:1px solid currentColor;padding:0 4px;font-size:12px;line-height:15px;font-weight:bold;\
white-space:nowrap}
.off{color:var(--off)}
.head{display:flex;flex-wrap:wrap;gap:12px 18px;align-items:flex-end;margin:8px 0}
.big{font-size:44px;line-height:46px;font-weight:bold}
.part{font-size:12px;line-height:16px;width:114px}
.part div{white-space:nowrap;font-weight:bold}
.row{margin:8px 0}
figure{display:inline-block;vertical-align:top;width:208px;margin:0 10px 16px 0;break-inside:avoid}
figure.wide{display:block;width:100%;margin:0}
figcaption b{font-size:13px}
figcaption div{border-top:1px solid var(--hairline);padding:2px 0}
svg{max-width:100%;height:auto;display:block}
ul{margin:4px 0;padding-left:18px}
li{margin:0 0 2px}
a{color:inherit}
tr.tear td,tr.tear th{border-top:3px solid var(--text)}
dl.key{display:flex;flex-wrap:wrap;gap:4px 18px;margin:6px 0;font-size:12px}
dl.key div{display:flex;gap:6px;align-items:center}
dl.key dd{margin:0}
p.lead{break-after:avoid}
@media print{
body{background:none;font-size:9.5pt;line-height:13pt}
main{max-width:none;padding:0;background:none}
table,.panel{background:none}
h2{break-after:avoid}h3{break-after:avoid}
.small,figcaption,.muted,.inch,thead th{font-size:8.5pt;line-height:11.5pt}
th,td{padding:2.5pt 5pt}
.long{font-size:8.5pt;line-height:11pt}
.head{gap:12px}.part{width:100px}
a{text-decoration:none}
}
";

/// What stands over a column of a table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Head {
    /// Nothing: names of rows, or pictures.
    Empty,
    /// Over words.
    Words(String),
    /// Over numbers, which stand to the right.
    Numbers(String),
}

/// A page that grows.
#[derive(Debug)]
pub(super) struct Page {
    body: String,
    pictures: u32,
}

impl Page {
    pub(super) fn new() -> Self {
        Self {
            body: String::new(),
            pictures: 0,
        }
    }

    /// Markup that is known to be good.
    pub(super) fn raw(&mut self, markup: &str) {
        self.body.push_str(markup);
    }

    /// An element with plain words in it. `tag` may hold attributes.
    pub(super) fn element(&mut self, tag: &str, words: &str) {
        let name = tag.split(' ').next().unwrap_or(tag);
        self.raw(&format!("<{tag}>{}</{name}>\n", escaped(words)));
    }

    /// A paragraph of plain words.
    pub(super) fn paragraph(&mut self, words: &str) {
        self.element("p", words);
    }

    /// A picture as an element.
    pub(super) fn picture(&mut self, picture: &Picture) -> String {
        self.pictures += 1;
        svg::inline(picture, Theme::Paper, &format!("g{}-", self.pictures))
    }

    /// A table: its heading cells, then rows of cells, all markup.
    pub(super) fn table(&mut self, class: &str, heads: &[Head], rows: &[String]) {
        if rows.is_empty() {
            return;
        }
        self.raw(&format!("<table class=\"{class}\"><thead><tr>"));
        for head in heads {
            let (class, words) = match head {
                Head::Empty => ("", ""),
                Head::Words(words) => ("", words.as_str()),
                Head::Numbers(words) => (" class=\"n\"", words.as_str()),
            };
            self.raw(&format!("<th scope=\"col\"{class}>{}</th>", escaped(words)));
        }
        self.raw("</tr></thead><tbody>\n");
        for row in rows {
            self.raw(row);
            self.raw("\n");
        }
        self.raw("</tbody></table>\n");
    }

    /// The whole file.
    pub(super) fn end(self, title: &str) -> String {
        let tokens: Vec<String> = Ink::ALL
            .into_iter()
            .filter(|ink| !ink.token().contains('.'))
            .map(|ink| {
                let [r, g, b] = ink.rgb(Theme::Paper);
                format!("--{}:#{r:02x}{g:02x}{b:02x}", ink.token())
            })
            .collect();
        format!(
            "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" \
             content=\"width=device-width, initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light\">\n\
             <title>{}</title>\n<style>\n:root{{{}}}\n{STYLE}</style>\n</head>\n<body>\n<main>\n{}</main>\n</body>\n</html>\n",
            escaped(title),
            tokens.join(";"),
            self.body
        )
    }
}

/// A row of cells; each is a class and markup.
pub(super) fn row(class: &str, cells: &[(&str, String)]) -> String {
    let mut out = if class.is_empty() {
        "<tr>".to_owned()
    } else {
        format!("<tr {class}>")
    };
    for (class, markup) in cells {
        if class.is_empty() {
            out.extend([format!("<td>{markup}</td>")]);
        } else {
            out.extend([format!("<td class=\"{class}\">{markup}</td>")]);
        }
    }
    out.push_str("</tr>");
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_people_write_stays_text() {
        let mut page = Page::new();
        page.element("p class=\"small\"", "a<script>");
        let heads = [Head::Numbers("n".to_owned()), Head::Words("<x>".to_owned())];
        page.table("", &heads, &[row("", &[("n", escaped("1<2"))])]);
        let text = page.end("</title><script>");
        assert!(!text.contains("<script") && !text.contains("<x>"), "{text}");
        assert!(text.contains("<p class=\"small\">a&lt;script&gt;</p>"), "{text}");
        assert!(text.contains("<td class=\"n\">1&lt;2</td>"), "{text}");
    }
}
