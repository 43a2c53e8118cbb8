//! Somebody who plays a seed to its end.

use std::sync::Arc;

use crate::exercise::technician::{Policy, play};
use crate::job::{Failure, scenarios};
use crate::words::{self, say};

use super::axle::unplayable;

/// The operations of somebody who plays a seed to its end, as JSON lines: `reference`, `reversed` or `random`.
///
/// # Errors
/// A policy that there is not; a scenario that cannot be found, read or played.
pub fn played(scenario: &str, seed: u64, policy: &str) -> Result<Vec<String>, Failure> {
    let Some(policy) = Policy::ALL.into_iter().find(|p| p.name() == policy) else {
        let names: Vec<&str> = Policy::ALL.into_iter().map(Policy::name).collect();
        return Err(Failure::bad_input(say!(
            "card-nobody-plays",
            policy = policy,
            names = names.join(", ")
        )));
    };
    let found = scenarios::find(scenario)?;
    let attempt = play(&Arc::new(found.exercise.clone()), seed, policy)
        .map_err(|error| unplayable(scenario, seed, &words::error::exercise(&error).line()))?;
    attempt
        .steps()
        .iter()
        .map(|step| serde_json::to_string(&step.operation).map_err(Failure::of_program))
        .collect()
}
