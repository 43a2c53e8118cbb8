//! Lists: texts, numbers and tables in a row, and yes or no.

use std::ops::RangeInclusive;

use toml::Spanned;
use toml::de::DeValue;

use super::{Table, kind, on_characters, shortened};
use crate::text::problem::{ItemKind, ProblemKind, Problems, Wanted};
use crate::text::range::NumberRange;

impl<'d> Table<'d> {
    /// True or false; `default` where the key is left out.
    pub fn flag<F>(&mut self, key: &'static str, default: bool, problems: &mut Problems<F>) -> Option<bool> {
        let Some(found) = self.value(key) else {
            return Some(default);
        };
        if let DeValue::Boolean(flag) = found.get_ref() {
            return Some(*flag);
        }
        self.wrong_kind(key, found, Wanted::Flag, problems);
        None
    }

    /// The items of a list of `count` items; an empty list where the key may be left out and is.
    fn items<F>(
        &mut self,
        key: &'static str,
        of: ItemKind,
        count: &RangeInclusive<usize>,
        problems: &mut Problems<F>,
    ) -> Option<Vec<&'d Spanned<DeValue<'d>>>> {
        let Some(found) = self.value(key) else {
            if *count.start() == 0 {
                return Some(Vec::new());
            }
            self.missing(key, Wanted::List(of, count.clone()), problems);
            return None;
        };
        let DeValue::Array(array) = found.get_ref() else {
            self.wrong_kind(key, found, Wanted::List(of, count.clone()), problems);
            return None;
        };
        let items: Vec<_> = array.iter().collect();
        if count.contains(&items.len()) {
            return Some(items);
        }
        problems.note(
            on_characters(self.text, found.span()),
            ProblemKind::ListLength {
                path: self.path(key),
                of,
                count: items.len(),
                allowed: count.clone(),
            },
        );
        None
    }

    /// A list of `count` texts of `length` characters each, without control characters.
    pub fn texts<F>(
        &mut self,
        key: &'static str,
        count: &RangeInclusive<usize>,
        length: &RangeInclusive<usize>,
        problems: &mut Problems<F>,
    ) -> Option<Vec<String>> {
        let items = self.items(key, ItemKind::Texts, count, problems)?;
        let path = self.path(key);
        let mut texts = Vec::with_capacity(items.len());
        let mut good = true;
        for item in items {
            match item.get_ref() {
                DeValue::String(text)
                    if length.contains(&text.chars().count()) && !text.chars().any(char::is_control) =>
                {
                    texts.push(text.clone().into_owned());
                }
                other => {
                    good = false;
                    problems.note(
                        on_characters(self.text, item.span()),
                        ProblemKind::ItemNoText {
                            path: path.clone(),
                            found: kind(other),
                            length: length.clone(),
                        },
                    );
                }
            }
        }
        good.then_some(texts)
    }

    /// A list that may be left out, of `count` texts of `length` characters each, without control characters.
    pub fn optional_texts<F>(
        &mut self,
        key: &'static str,
        count: &RangeInclusive<usize>,
        length: &RangeInclusive<usize>,
        problems: &mut Problems<F>,
    ) -> Option<Vec<String>> {
        self.value(key)?;
        self.texts(key, count, length, problems)
    }

    /// A list of `count` numbers, each inside `range`.
    pub fn numbers<F>(
        &mut self,
        key: &'static str,
        count: &RangeInclusive<usize>,
        range: NumberRange,
        problems: &mut Problems<F>,
    ) -> Option<Vec<f64>> {
        let items = self.items(key, ItemKind::Numbers, count, problems)?;
        let path = self.path(key);
        let mut numbers = Vec::with_capacity(items.len());
        let mut good = true;
        for item in items {
            let number = match item.get_ref() {
                DeValue::Float(float) => float.as_str().parse::<f64>().ok(),
                DeValue::Integer(integer) => i64::from_str_radix(integer.as_str(), integer.radix())
                    .ok()
                    .map(|n| n as f64),
                _ => None,
            };
            if let Some(number) = number.filter(|n| range.holds(*n)) {
                numbers.push(number);
            } else {
                good = false;
                problems.note(
                    on_characters(self.text, item.span()),
                    ProblemKind::ItemNoNumber {
                        path: path.clone(),
                        range,
                    },
                );
            }
        }
        good.then_some(numbers)
    }

    /// The tables written as `[key.NAME]`, whose names the file chooses, in their order; at most `most` of them, none where
    /// there are none.
    pub fn named_tables<F>(
        &mut self,
        key: &'static str,
        most: usize,
        problems: &mut Problems<F>,
    ) -> Vec<(String, Self)> {
        let Some(outer) = self.optional_table(key, problems) else {
            return Vec::new();
        };
        if outer.entries.len() > most {
            problems.note(
                outer.place(),
                ProblemKind::ListLength {
                    path: outer.name,
                    of: ItemKind::Tables,
                    count: outer.entries.len(),
                    allowed: 0..=most,
                },
            );
            return Vec::new();
        }
        let mut tables = Vec::with_capacity(outer.entries.len());
        for (name, found) in outer.entries {
            let name = name.get_ref().as_ref();
            let path = outer.path(&shortened(name));
            let header = on_characters(self.text, found.span());
            if let DeValue::Table(entries) = found.get_ref() {
                let table = Self {
                    text: self.text,
                    name: path,
                    header,
                    entries,
                    asked: Vec::new(),
                };
                tables.push((table.header.start, name.to_owned(), table));
            } else {
                let found = kind(found.get_ref());
                problems.note(
                    header,
                    ProblemKind::NotATable {
                        path,
                        found,
                        item: false,
                    },
                );
            }
        }
        tables.sort_by_key(|(place, ..)| *place);
        tables.into_iter().map(|(_, name, table)| (name, table)).collect()
    }

    /// The tables written as `[[key]]`, at most `most` of them; none where there are none.
    pub fn tables<F>(&mut self, key: &'static str, most: usize, problems: &mut Problems<F>) -> Vec<Self> {
        let Some(items) = self.items(key, ItemKind::Tables, &(0..=most), problems) else {
            return Vec::new();
        };
        let path = self.path(key);
        let mut tables = Vec::with_capacity(items.len());
        for item in items {
            if let DeValue::Table(entries) = item.get_ref() {
                tables.push(Self {
                    text: self.text,
                    name: path.clone(),
                    header: on_characters(self.text, item.span()),
                    entries,
                    asked: Vec::new(),
                });
            } else {
                problems.note(
                    on_characters(self.text, item.span()),
                    ProblemKind::NotATable {
                        path: path.clone(),
                        found: kind(item.get_ref()),
                        item: true,
                    },
                );
            }
        }
        tables
    }
}
