//! How long it takes to judge a whole examination: every answer given, meters at hand. It happens after each tap.

#![expect(clippy::expect_used, reason = "a benchmark that cannot read its case must stop")]

use std::fs;
use std::hint::black_box;
use std::path::Path;

use criterion::{Criterion, criterion_group, criterion_main};
use plugwary::domain::assess::{RuleBook, assess};
use plugwary::record::read;

/// The largest sound lead, and the smallest one.
const CASES: [&str; 2] = ["sound-lead-live", "sound-lead-eyes"];

fn judge(criterion: &mut Criterion) {
    for case in CASES {
        let file = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("tests/examinations/cases/{case}.json"));
        let text = fs::read_to_string(file).expect("the case is there");
        let examination = read(&text).expect("the case can be read").examination;
        criterion.bench_function(case, |bencher| bencher.iter(|| assess(black_box(&examination), &RuleBook::CURRENT)));
    }
}

criterion_group!(benches, judge);
criterion_main!(benches);
