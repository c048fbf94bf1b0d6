//! Look next: what ranks a check, and what the samples on a device teach.

use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::check::plug::fuse;
use plugwary::domain::examination::Answer;
use plugwary::domain::experience::{Experience, Tried};
use plugwary::domain::next_check::{NextCheck, learned};
use plugwary::domain::question::Target;
use plugwary::domain::sample::Equipment::{Eyes, HandTools};

use crate::bench::Bench;

#[track_caller]
fn next(bench: &Bench, code: &str) -> NextCheck {
    bench.assessed().next.into_iter().find(|next| next.code == code).expect(code)
}

fn near(got: f64, expected: f64) -> bool {
    (got - expected).abs() < 1e-12
}

/// LOOKS: chance that it breaks × severity × chance that the equipment can decide it ÷ minutes; the figures are those stated with the check.
#[test]
fn worth_is_chance_by_weight_by_chance_to_tell_by_the_minute() {
    let missing = next(&Bench::lead(Eyes), "fuse-missing");
    assert!(near(missing.worth(), missing.chance * 10.0 * 0.9 / missing.minutes), "{missing:?}");
    let recalled = next(&Bench::lead(HandTools), "pin-width-off");
    assert!(near(recalled.tells, 0.2), "a tolerance from memory seldom settles anything");
    let worths: Vec<f64> = Bench::lead(HandTools).assessed().next.iter().map(NextCheck::worth).collect();
    assert!(worths.len() > 30 && worths.is_sorted_by(|a, b| a >= b), "{worths:?}");
}

/// Beta-binomial model: with a default of 0.3 that weighs four samples, three breaks of six give (0.3 × 4 + 3) / (4 + 6) = 0.42.
#[test]
fn samples_move_the_default_chance_as_a_beta_distribution_does() {
    let broke = |answer| {
        let bench = Bench::lead(Eyes).answer(fuse::IN_THE_HOLDER, Target::Sample, answer);
        assess(&bench.0, &RuleBook::CURRENT)
    };
    let empty = || broke(Answer::One("empty"));
    let fused = || broke(Answer::One("marked-bs-1362"));
    let six = [empty(), empty(), empty(), fused(), fused(), fused(), broke(Answer::CannotTell), broke(Answer::Later)];
    let experience = Experience::of(&six);
    assert_eq!(experience.tried("fuse-missing"), Tried { broke: 3, of: 6 }, "a doubt teaches nothing");
    assert!(near(experience.chance("fuse-missing", 0.3), 0.42));
    assert!(near(experience.chance("plug-foreign", 0.3), 0.3), "nothing was tried");
    let sixty: Vec<_> = (0..60).map(|_| empty()).collect();
    assert!(Experience::of(&sixty).chance("fuse-missing", 0.02) > 0.9, "the default is outweighed in the end");
}

#[test]
fn what_broke_before_is_looked_at_sooner() {
    let fresh = Bench::lead(Eyes).assessed().next;
    let before = fresh.iter().position(|next| next.code == "fuse-missing").expect("it is open");
    let empty = Bench::lead(Eyes).answer(fuse::IN_THE_HOLDER, Target::Sample, Answer::One("empty")).assessed();
    let taught = learned(&fresh, &Experience::of([&empty, &empty, &empty, &empty]));
    let after = taught.iter().position(|next| next.code == "fuse-missing").expect("it is open");
    assert!(after < before, "{after} {before}");
    assert_eq!(taught.len(), fresh.len());
    assert_eq!(learned(&fresh, &Experience::default()), fresh);
}
