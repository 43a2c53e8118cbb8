//! The one door to transcendental functions.
//!
//! The standard library takes sine, exponential and the like from the machine's C library, and their last bits
//! differ from machine to machine. `libm` is plain Rust arithmetic, so that the same inputs give the same bits
//! everywhere, which replay and scoring stand on. Addition, multiplication, division and `sqrt` are exact by
//! IEEE 754 and need no door.
//!
//! Source: `libm`, a port of the C library musl, whose double functions are those of FreeBSD's msun and go back to Sun
//! Microsystems' fdlibm (1993).

/// Sine and cosine of an angle in radians.
pub fn sin_cos(angle_rad: f64) -> (f64, f64) {
    libm::sincos(angle_rad)
}

/// Sine of an angle in radians.
pub fn sin(angle_rad: f64) -> f64 {
    libm::sin(angle_rad)
}

/// Cosine of an angle in radians.
pub fn cos(angle_rad: f64) -> f64 {
    libm::cos(angle_rad)
}

/// Tangent of an angle in radians.
pub fn tan(angle_rad: f64) -> f64 {
    libm::tan(angle_rad)
}

/// Arc sine in radians, −π/2 to π/2; NaN outside −1 to 1.
pub fn asin(x: f64) -> f64 {
    libm::asin(x)
}

/// Arc cosine in radians, 0 to π; NaN outside −1 to 1.
pub fn acos(x: f64) -> f64 {
    libm::acos(x)
}

/// Arc tangent in radians, −π/2 to π/2.
pub fn atan(x: f64) -> f64 {
    libm::atan(x)
}

/// Angle of the vector (x, y) from the x axis in radians, −π to π.
pub fn atan2(y: f64, x: f64) -> f64 {
    libm::atan2(y, x)
}

/// e to the power x.
pub fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// Natural logarithm; NaN for negative x.
pub fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// Logarithm to base 10; NaN for negative x.
pub fn log10(x: f64) -> f64 {
    libm::log10(x)
}

/// `base` to the power `exponent`; NaN for a negative base with a fractional exponent.
pub fn pow(base: f64, exponent: f64) -> f64 {
    libm::pow(base, exponent)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Values to 20 digits from Abramowitz & Stegun, *Handbook of Mathematical Functions*, tables 4.1, 4.2, 4.6, 4.14.
    #[test]
    fn values_of_the_handbook() {
        let rows = [
            ("sin 1", sin(1.0), 0.841_470_984_807_896_506_65),
            ("cos 1", cos(1.0), 0.540_302_305_868_139_717_40),
            ("tan 1", tan(1.0), 1.557_407_724_654_902_230_5),
            ("exp 1", exp(1.0), 2.718_281_828_459_045_235_4),
            ("ln 2", ln(2.0), 0.693_147_180_559_945_309_42),
            ("log10 2", log10(2.0), 0.301_029_995_663_981_195_21),
            ("atan 1", atan(1.0), 0.785_398_163_397_448_309_62),
            ("asin 0.5", asin(0.5), 0.523_598_775_598_298_873_08),
            ("acos 0.5", acos(0.5), 1.047_197_551_196_597_746_2),
            ("2^0.5", pow(2.0, 0.5), 1.414_213_562_373_095_048_8),
        ];
        for (name, got, want) in rows {
            let deviation = (got - want).abs() / want;
            println!("{name}: {got} (deviation {deviation:.1e})");
            assert!(deviation < 3.0e-16, "{name}: {got}, handbook {want}");
        }
    }

    /// The bits themselves: what replay stands on. Computed once with libm 0.2.16; a change of the library that
    /// changes bits must be seen here first.
    #[test]
    fn bits_are_those_of_the_portable_library() {
        let bits: Vec<u64> = (0..64)
            .map(|i| 0.37 * f64::from(i) - 9.0)
            .flat_map(|x| {
                [
                    sin(x),
                    cos(x),
                    tan(x),
                    exp(x),
                    atan(x),
                    atan2(x, 1.5),
                    pow(x.abs(), 0.9),
                ]
            })
            .map(f64::to_bits)
            .collect();
        let mut hash = blake3::Hasher::new();
        for b in &bits {
            hash.update(&b.to_le_bytes());
        }
        let want = "794cf90ac3992826dd9312ec6e5b88b6b870dc8374def42cb976a8e29766b677";
        assert_eq!(hash.finalize().to_hex().as_str(), want, "bits of libm");
    }
}
