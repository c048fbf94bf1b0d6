//! Checks of the plug.

use plugwary::domain::check::plug::fuse;
use plugwary::domain::finding::{Conformity, Severity};
use plugwary::domain::sample::Equipment;

use crate::bench::Bench;

#[test]
fn an_empty_fuse_holder_is_a_danger() {
    let bench = Bench::lead(Equipment::Eyes).one(fuse::IN_THE_HOLDER, "empty");
    bench.expect_break("fuse-missing", Severity::Danger);
}

#[test]
fn a_fuse_with_its_marks_keeps_the_rule() {
    let bench = Bench::lead(Equipment::Eyes).one(fuse::IN_THE_HOLDER, "marked-bs-1362");
    bench.expect("fuse-missing", Conformity::Conforms);
}
