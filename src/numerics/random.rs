//! Reproducible random numbers: one named stream a quantity.
//!
//! A stream is ChaCha with 8 rounds, keyed by the seed, numbered by a hash of the quantity's name. Streams with other
//! names never share numbers, so that adding a part to an axle does not shift the numbers of the parts that were
//! there before. The mappings to distributions are our own and written out, since a library may change its own from
//! one version to the next.
//!
//! Source: D. J. Bernstein, ChaCha, a Variant of Salsa20 (2008); D. Lemire, ACM TOMACS 29(1), 2019 (numbers below a
//! bound); G. E. P. Box and M. E. Muller, Annals of Mathematical Statistics 29 (1958) (normal deviates).

use chacha20::ChaCha8Rng;
use rand::{Rng as _, SeedableRng as _};

use super::math;

/// An endless row of random numbers, the same on every machine for the same seed and name.
#[derive(Debug)]
pub struct Stream {
    generator: ChaCha8Rng,
}

impl Stream {
    /// The stream of the quantity `name` (for example `"head bearing stand"`) under `seed`.
    pub fn new(seed: u64, name: &str) -> Self {
        let mut key = [0u8; 32];
        for (place, byte) in key.iter_mut().zip(seed.to_le_bytes()) {
            *place = byte;
        }
        let mut generator = ChaCha8Rng::from_seed(key);
        // The first eight bytes of the name's hash number the stream.
        let number = blake3::hash(name.as_bytes())
            .as_bytes()
            .iter()
            .take(8)
            .rev()
            .fold(0u64, |n, b| n << 8 | u64::from(*b));
        generator.set_stream(number);
        Self { generator }
    }

    /// 64 random bits.
    pub fn bits(&mut self) -> u64 {
        self.generator.next_u64()
    }

    /// Uniform over 0 ≤ x < 1, in steps of 2⁻⁵³.
    pub fn unit(&mut self) -> f64 {
        (self.bits() >> 11) as f64 * (1.0 / 9_007_199_254_740_992.0)
    }

    /// Uniform over `low` ≤ x ≤ `high`.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }

    /// One of 0 … `count` − 1, each equally likely; 0 for a count of 0.
    ///
    /// Multiplies instead of taking a remainder (D. Lemire, *Fast random integer generation in an interval*, ACM
    /// TOMACS 29(1), 2019) and rejects the few numbers that would favour some outcomes.
    pub fn index(&mut self, count: u64) -> u64 {
        if count == 0 {
            return 0;
        }
        let threshold = count.wrapping_neg() % count;
        loop {
            let product = u128::from(self.bits()) * u128::from(count);
            let (low, high) = (product & u128::from(u64::MAX), product >> 64);
            if low >= u128::from(threshold) {
                // Below `count`, so it always fits.
                return u64::try_from(high).unwrap_or(0);
            }
        }
    }

    /// Normal with mean 0 and standard deviation 1.
    ///
    /// G. E. P. Box and M. E. Muller, *A note on the generation of random normal deviates*, Ann. Math. Statist. 29
    /// (1958). The second of the pair is thrown away, so that each call takes the same two numbers.
    pub fn normal(&mut self) -> f64 {
        // 1 − u lies in (0, 1]: its logarithm is finite.
        let radius = (-2.0 * math::ln(1.0 - self.unit())).sqrt();
        let angle = 2.0 * std::f64::consts::PI * self.unit();
        radius * math::cos(angle)
    }

    /// Normal with mean 0 and standard deviation 1, drawn again until within `limit` deviations of 0: a dimension
    /// that passed inspection. `limit` is taken as at least 0.1, so that the draw ends.
    pub fn normal_within(&mut self, limit: f64) -> f64 {
        let limit = if limit > 0.1 { limit } else { 0.1 };
        loop {
            let x = self.normal();
            if x.abs() <= limit {
                return x;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ChaCha8 key stream for the all-zero 256-bit key and all-zero IV, first 32 bytes: J. Strömbergson, *Test
    /// Vectors for the Stream Cipher ChaCha* (internet draft, 2013), TC1 (from memory; 256 bits cannot agree by luck).
    #[test]
    fn the_generator_is_chacha8() {
        let want = "3e00ef2f895f40d67f5bb8e81f09a5a12c840ec3ce9a7f3b181be188ef711a1e";
        let mut generator = ChaCha8Rng::from_seed([0; 32]);
        let mut bytes = [0u8; 32];
        generator.fill_bytes(&mut bytes);
        let got = blake3::Hash::from_bytes(bytes).to_hex();
        assert_eq!(got.as_str(), want, "key stream, written in hexadecimal");
    }

    #[test]
    fn same_seed_and_name_same_row_and_other_names_other_rows() {
        let row = |seed, name| {
            let mut s = Stream::new(seed, name);
            (0..8).map(|_| s.bits()).collect::<Vec<_>>()
        };
        assert_eq!(row(7, "housing depth"), row(7, "housing depth"), "repeat");
        assert_ne!(row(7, "housing depth"), row(7, "housing offset"), "other name");
        assert_ne!(row(7, "housing depth"), row(8, "housing depth"), "other seed");
    }

    /// Means and spreads against the distributions' own: each bound is five standard errors of 40,000 draws.
    #[test]
    fn distributions_have_their_moments() {
        let n = 40_000;
        let count = f64::from(n);
        let mut s = Stream::new(1, "moments");
        let unit: Vec<f64> = (0..n).map(|_| s.unit()).collect();
        let normal: Vec<f64> = (0..n).map(|_| s.normal()).collect();
        let mean = |v: &[f64]| v.iter().sum::<f64>() / count;
        let second = |v: &[f64]| v.iter().map(|x| x * x).sum::<f64>() / count;
        let fourth = |v: &[f64]| v.iter().map(|x| x * x * x * x).sum::<f64>() / count;
        let error = 5.0 / count.sqrt();
        assert!(
            (mean(&unit) - 0.5).abs() < error * (1.0_f64 / 12.0).sqrt(),
            "uniform mean {}",
            mean(&unit)
        );
        assert!(
            (second(&unit) - 1.0 / 3.0).abs() < error * (4.0_f64 / 45.0).sqrt(),
            "uniform second moment"
        );
        assert!(unit.iter().all(|x| (0.0..1.0).contains(x)), "uniform range");
        assert!(mean(&normal).abs() < error, "normal mean {}", mean(&normal));
        assert!(
            (second(&normal) - 1.0).abs() < error * 2.0_f64.sqrt(),
            "normal variance {}",
            second(&normal)
        );
        assert!(
            (fourth(&normal) - 3.0).abs() < error * 96.0_f64.sqrt(),
            "normal kurtosis {}",
            fourth(&normal)
        );
    }

    #[test]
    fn indices_are_even() {
        let mut s = Stream::new(3, "index");
        let mut seen = [0u32; 7];
        for _ in 0..70_000 {
            seen[usize::try_from(s.index(7)).expect("small")] += 1;
        }
        // Five standard deviations of a count with mean 10,000 and chance 1/7.
        let bound = 5.0 * (70_000.0_f64 * (1.0 / 7.0) * (6.0 / 7.0)).sqrt();
        for count in seen {
            assert!((f64::from(count) - 10_000.0).abs() < bound, "{seen:?}");
        }
        assert_eq!(s.index(0), 0, "nothing to choose from");
    }

    #[test]
    fn a_truncated_normal_keeps_its_limit() {
        let mut s = Stream::new(5, "limit");
        assert!(
            (0..5_000).map(|_| s.normal_within(1.5)).all(|x| x.abs() <= 1.5),
            "limit 1.5"
        );
        assert!(s.normal_within(f64::NAN).abs() <= 0.1, "a limit that is no number");
    }
}
