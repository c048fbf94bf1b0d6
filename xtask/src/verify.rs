//! `cargo verify`: runs every test there is and ends with a list of what ran, what failed, and
//! what was left out and why.

use std::{
    env,
    process::ExitCode,
    time::{Duration, Instant},
};

use crate::{
    Trouble,
    setup::{Piece, Setup},
    steps::{Bench, STEPS, Step},
};

enum Outcome {
    Passed(Duration),
    Failed(Duration, Trouble),
    LeftOut(Trouble),
}

/// Names the steps.
pub fn list() -> ExitCode {
    for step in &STEPS {
        println!("{:<12} {}", step.name, step.about);
    }
    ExitCode::SUCCESS
}

/// Runs the named steps, or all. A failed step does not keep the others from running.
///
/// In CI a step that had to be left out counts as failed.
///
/// # Errors
/// When there is no step of a given name.
pub fn verify(setup: &mut Setup, names: &[&str]) -> Result<ExitCode, Trouble> {
    if let Some(name) = names.iter().find(|name| STEPS.iter().all(|step| step.name != **name)) {
        return Err(format!("no step is called {name}; `cargo verify --list` names them"));
    }
    let start = Instant::now();
    let steps: Vec<&Step> = STEPS.iter().filter(|step| names.is_empty() || names.contains(&step.name)).collect();

    println!("== set-up");
    // The toolchain comes first and for all steps, so that they share what they build.
    let needs: Vec<Piece> = steps.iter().flat_map(|step| step.needs).copied().collect();
    if let Err(trouble) = setup.prepare(&[&[Piece::Toolchain], needs.as_slice()].concat()) {
        println!("{trouble}");
    }
    let ready: Vec<Result<(), Trouble>> = steps.iter().map(|step| setup.prepare(step.needs)).collect();
    println!("-- set-up: {}", seconds(start.elapsed()));

    let bench = Bench::new(setup);
    let outcomes = steps.iter().zip(ready).map(|(step, ready)| match ready {
        Ok(()) => run(step, &bench),
        Err(trouble) => Outcome::LeftOut(trouble),
    });
    let outcomes: Vec<Outcome> = outcomes.collect();
    Ok(sum_up(&steps, &outcomes, start.elapsed()))
}

fn run(step: &Step, bench: &Bench) -> Outcome {
    println!("\n== {}: {}", step.name, step.about);
    let start = Instant::now();
    let outcome = (step.run)(bench);
    let time = start.elapsed();
    match outcome {
        Ok(()) => {
            println!("-- {}: {}", step.name, seconds(time));
            Outcome::Passed(time)
        }
        Err(trouble) => {
            println!("-- {} FAILED after {}: {trouble}", step.name, seconds(time));
            Outcome::Failed(time, trouble)
        }
    }
}

fn sum_up(steps: &[&Step], outcomes: &[Outcome], time: Duration) -> ExitCode {
    println!("\n== all steps");
    for (step, outcome) in steps.iter().zip(outcomes) {
        let (word, time, reason) = match outcome {
            Outcome::Passed(time) => ("passed", seconds(*time), ""),
            Outcome::Failed(time, trouble) => ("FAILED", seconds(*time), trouble.as_str()),
            Outcome::LeftOut(trouble) => ("LEFT OUT", String::new(), trouble.as_str()),
        };
        println!("{word:<8} {:<12} {time:>7}  {}", step.name, reason.replace('\n', " "));
    }
    let failed = outcomes.iter().filter(|outcome| matches!(outcome, Outcome::Failed(..))).count();
    let left_out = outcomes.iter().filter(|outcome| matches!(outcome, Outcome::LeftOut(_))).count();
    let passed = outcomes.len() - failed - left_out;
    println!("{passed} passed, {failed} failed, {left_out} left out, in {}", seconds(time));
    exit(failed, left_out, env::var_os("CI").is_some_and(|ci| !ci.is_empty()))
}

fn exit(failed: usize, left_out: usize, in_ci: bool) -> ExitCode {
    if failed > 0 || (in_ci && left_out > 0) { ExitCode::FAILURE } else { ExitCode::SUCCESS }
}

fn seconds(time: Duration) -> String {
    format!("{:.1} s", time.as_secs_f64())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_step_left_out_is_a_failure_in_ci_alone() {
        assert_eq!(exit(0, 1, true), ExitCode::FAILURE);
        assert_eq!(exit(0, 1, false), ExitCode::SUCCESS);
        assert_eq!(exit(1, 0, false), ExitCode::FAILURE);
        assert_eq!(exit(0, 0, true), ExitCode::SUCCESS);
    }
}
