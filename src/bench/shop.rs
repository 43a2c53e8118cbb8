//! The shop around the axle: where the shims are, what was used how often, and what it has taken.

use std::collections::BTreeMap;

use super::kit::Packs;
use super::ledger::Ledger;
use super::measurand::Measurand;
use super::refusal::Refusal;
use super::setting::BenchSetUp;
use super::sheet::text_bits;
use super::tools::Instrument;

/// Kit, instruments in use, account.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Shop {
    pub(super) packs: Packs,
    pub(super) ledger: Ledger,
    /// How often each instrument was used and set up.
    uses: BTreeMap<String, Usage>,
}

/// How often an instrument was used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) struct Usage {
    /// Readings taken.
    pub(super) readings: u32,
    /// Times that it was set up.
    pub(super) set_ups: u32,
    /// What it was set up for.
    pub(super) set_up_for: &'static str,
}

impl Shop {
    pub(super) fn new(packs: Packs) -> Self {
        Self {
            packs,
            ledger: Ledger::default(),
            uses: BTreeMap::new(),
        }
    }

    /// Counts one use of an instrument. It is set up again for another quantity, or where asked to.
    pub(super) fn use_tool(
        &mut self,
        setting: &BenchSetUp,
        name: &str,
        what: Measurand,
        set_up_again: bool,
    ) -> Result<(Instrument, Usage), Refusal> {
        let instrument = setting.instrument(name)?;
        let usage = self.uses.entry(name.to_owned()).or_default();
        if set_up_again || usage.set_ups == 0 || usage.set_up_for != what.name() {
            usage.set_ups = usage.set_ups.saturating_add(1);
        }
        usage.readings = usage.readings.saturating_add(1);
        usage.set_up_for = what.name();
        Ok((instrument, *usage))
    }

    /// Hands everything on as bits, in a fixed order.
    pub(super) fn bits(&self, sink: &mut dyn FnMut(u64)) {
        let Self { packs, ledger, uses } = self;
        packs.bits(sink);
        ledger.bits(sink);
        sink(uses.len() as u64);
        for (name, usage) in uses {
            text_bits(name, sink);
            text_bits(usage.set_up_for, sink);
            sink(u64::from(usage.readings));
            sink(u64::from(usage.set_ups));
        }
    }
}
