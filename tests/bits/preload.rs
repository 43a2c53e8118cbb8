//! Bits of preload and rotating torque.

use lashwright::bearing::SpacerMemory;
use lashwright::contact::PHYSICS_VERSION;
use lashwright::job::supports;

/// The physics version that the hash below belongs to.
const VERSION: u32 = 2;
/// BLAKE3 over the bits of four supports at five nut torques each.
const SUPPORTS: &str = "426580e0dfc37e820f3447ed8c06dfbe496c59017a63c4c5e22fb3c2b9562466";

#[test]
fn preload_has_the_committed_bits() {
    assert_eq!(
        PHYSICS_VERSION, VERSION,
        "the hash below belongs to another physics version"
    );
    let mut hash = blake3::Hasher::new();
    let mut add = |value: f64| {
        hash.update(&value.to_bits().to_le_bytes());
    };
    for found in supports::embedded().unwrap_or_else(|failure| panic!("{failure}")) {
        let meant = found
            .support
            .meant_nut_torque_nm
            .expect("every embedded support is meant for a torque");
        for share in [0.05, 0.5, 0.9, 1.0, 1.1] {
            let state = found
                .support
                .tightened_to(share * meant, SpacerMemory::default())
                .expect("a torque in its range");
            let running = found.support.running(20.0, 20.0);
            let (rolling, breakaway) = (
                found.support.rolling_torque(state.preload_n, running),
                found.support.breakaway_torque(state.preload_n),
            );
            for value in [
                state.clamp_n,
                state.spacer_n,
                state.preload_n,
                state.play_mm,
                state.spacer_loaded_length_mm,
                state.pinion_shift_mm,
                rolling.total_nm,
                breakaway.total_nm,
            ] {
                add(value);
            }
        }
    }
    assert_eq!(hash.finalize().to_hex().as_str(), SUPPORTS, "bits of preload");
}
