//! What an attempt has taken so far: minutes, money, tear-downs, parts, unsafe acts.

use super::caution::Caution;
use super::kind::OperationKind;
use super::part::Part;

/// The account of an attempt.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Ledger {
    /// Minutes.
    pub minutes: f64,
    /// Money for parts.
    pub money: f64,
    /// How often something built was taken apart again.
    pub tear_downs: u32,
    /// One entry for each operation that was done.
    pub entries: Vec<Entry>,
    /// Parts spoiled, with the operation that did it.
    pub spoiled: Vec<(u32, Part)>,
    /// Parts of single use that were used again.
    pub reused: Vec<(u32, Part)>,
    /// Hazards that were not met.
    pub unsafe_acts: Vec<(u32, Caution)>,
}

/// What one operation took.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// Number of the operation, from 1.
    pub operation: u32,
    /// Which it was.
    pub kind: OperationKind,
    /// Minutes.
    pub minutes: f64,
    /// Money.
    pub money: f64,
}

impl Ledger {
    /// Hands everything on as bits, in a fixed order.
    pub(super) fn bits(&self, sink: &mut dyn FnMut(u64)) {
        let Self {
            minutes,
            money,
            tear_downs,
            entries,
            spoiled,
            reused,
            unsafe_acts,
        } = self;
        sink(minutes.to_bits());
        sink(money.to_bits());
        sink(u64::from(*tear_downs));
        sink(entries.len() as u64);
        for entry in entries {
            sink(u64::from(entry.operation));
            sink(entry.kind as u64);
            sink(entry.minutes.to_bits());
            sink(entry.money.to_bits());
        }
        sink(spoiled.len() as u64);
        sink(reused.len() as u64);
        for (operation, part) in spoiled.iter().chain(reused) {
            sink(u64::from(*operation));
            sink(*part as u64);
        }
        sink(unsafe_acts.len() as u64);
        for (operation, caution) in unsafe_acts {
            sink(u64::from(*operation));
            sink(*caution as u64);
        }
    }
}
