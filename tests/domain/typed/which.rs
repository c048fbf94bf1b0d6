//! Which one of several a sentence speaks of.

use plugwary::domain::question::{ClaimPlace, Core, Target};
use plugwary::domain::sample::Kind;
use plugwary::words::which::which;

#[test]
fn every_target_has_its_own_words_on_a_lead() {
    let sockets = [1, 2].map(Target::Socket);
    let targets = [Target::Sample]
        .into_iter()
        .chain(sockets)
        .chain(Core::ALL.map(Target::Core))
        .chain(ClaimPlace::ALL.map(Target::Claim));
    let mut words: Vec<_> = targets.map(|target| which(target, Kind::ExtensionLead)).collect();
    let all = words.len();
    words.sort();
    words.dedup();
    assert_eq!(words.len(), all, "{words:?}");
}

#[test]
fn words_are_those_of_the_kind() {
    assert_eq!(which(Target::Socket(2), Kind::ExtensionLead), "socket 2");
    assert_eq!(which(Target::Socket(1), Kind::CordSet), "the connector");
    assert_eq!(which(Target::Claim(ClaimPlace::Body), Kind::CordSet), "the connector");
    assert_eq!(which(Target::Claim(ClaimPlace::Package), Kind::ExtensionLead), "the package");
}
