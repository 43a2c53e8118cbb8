//! The hash of a state: two attempts are alike exactly when these are.

use super::state::Bench;

impl Bench {
    /// BLAKE3 over the bits of the whole state in a fixed order, as hexadecimal.
    pub fn state_hash(&self) -> String {
        let mut hasher = blake3::Hasher::new();
        let mut sink = |bits: u64| {
            hasher.update(&bits.to_le_bytes());
        };
        self.bits(&mut sink);
        hasher.finalize().to_hex().to_string()
    }

    /// Hands every number of the state on as bits, in a fixed order.
    fn bits(&self, sink: &mut dyn FnMut(u64)) {
        let Self {
            setting,
            truth,
            pinion,
            carrier,
            sheet,
            shop,
            built,
            // Follows from the placement.
            tight_at: _,
            operations,
            finished,
        } = self;
        sink(setting.seed);
        truth.bits(sink);
        // What is fitted, settled; the rest of `built` follows from it and the truth.
        built.after.bits(sink);
        pinion.bits(sink);
        carrier.bits(sink);
        sheet.bits(sink);
        shop.bits(sink);
        sink(u64::from(*operations));
        sink(u64::from(*finished));
    }
}
