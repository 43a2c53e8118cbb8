//! Checks against the outside world: one module a source; the deviation from each number is printed
//! (`cargo test --test outside -- --nocapture`).

mod bearing;
