//! Every word a person may see, in one place, so that all of them can be read and a change of any of them shows.

#![expect(clippy::expect_used, reason = "a test that cannot find its words must stop")]

mod bars;
mod letters;
mod many;
mod moments;
mod places;
mod refusals;
mod risk;
mod seals;
mod statement;
mod verdicts;

/// Holds a text against the accepted snapshot of that name.
#[track_caller]
fn accepted(name: &str, text: &str) {
    let mut settings = insta::Settings::clone_current();
    settings.set_prepend_module_to_snapshot(false);
    settings.set_omit_expression(true);
    settings.bind(|| insta::assert_snapshot!(name, text));
}
