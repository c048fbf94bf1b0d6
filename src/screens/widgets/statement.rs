//! The running statement: sentences with their bars, each of which can be tapped to be looked at again.

use leptos::prelude::*;

use super::dock::At;
use crate::domain::assess::Assessment;
use crate::domain::examination::Answered;
use crate::domain::finding::Finding;
use crate::domain::question::{Question, Target};
use crate::domain::sample::Kind;
use crate::record::{Attached, Photo, Record};
use crate::screens::state::Samples;
use crate::words::statement::{Bar, Sentence, homeless, sentences};
use crate::words::{check, clause, favour, reason, screens, verdict};

/// The sentence of the newest answer.
pub const NEWEST: &str = ".said[data-newest]";

/// Every answer that was given, and which of them is new.
#[derive(Debug, Clone, PartialEq)]
pub struct Given {
    answers: Vec<Answered>,
    /// What was answered last; nothing before the first answer since the page was opened, nor once one was taken back.
    pub newest: Option<(&'static Question, Target)>,
}

impl Given {
    /// The answers now, after those before. What is no answer, such as a photo, makes nothing new of them.
    pub fn after(before: Option<&Self>, answers: &[Answered]) -> Self {
        if let Some(same) = before.filter(|before| before.answers == answers) {
            return same.clone();
        }
        let is_new = |before: &Self| answers.iter().rev().find(|answered| !before.answers.contains(answered));
        let newest = before.and_then(is_new).map(|answered| (answered.question, answered.target));
        Self { answers: answers.to_vec(), newest }
    }
}

/// The statement of one sample.
#[component]
pub fn Statement(
    /// The record.
    record: Memo<Record>,
    /// What it amounts to.
    assessment: Memo<Assessment>,
    /// Which answer is new.
    given: Memo<Given>,
    /// Where the dock stands; a tapped sentence moves it.
    at: RwSignal<At>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    move || {
        // The statement is made anew once the reasons can be said.
        samples.has_all_words();
        let record = record.get();
        let assessment = assessment.get();
        let kind = record.examination.sample.kind;
        let newest = given.with(|given| given.newest);
        let mut last = None;
        let said = sentences(&record.examination, &assessment)
            .into_iter()
            .map(|sentence| {
                let place = sentence.question.place;
                let heading = (last.replace(place) != Some(place))
                    .then(|| view! { <h2 class="place">{verdict::place(place, kind)}</h2> });
                let answer = Attached::Answer { question: sentence.question.id, target: sentence.target };
                let belongs = |photo: &&Photo| photo.attached == answer;
                let photos = screens::photos(record.photos.iter().filter(belongs).count());
                let is_newest = newest == Some((sentence.question, sentence.target));
                view! { {heading} <SentenceLine sentence photos kind is_newest at /> }
            })
            .collect_view();
        let also = homeless(&record.examination, &assessment);
        let also = (!also.is_empty()).then(|| {
            view! {
                <h2 class="place">{screens::ALSO}</h2>
                {also.into_iter().map(|finding| view! { <FindingLines finding kind with_name=WithName::Yes /> }).collect_view()}
            }
        });
        view! { <div class="statement">{said}{also}</div> }
    }
}

/// One sentence and the findings under it.
#[component]
fn SentenceLine<'a>(
    /// The sentence.
    sentence: Sentence<'a>,
    /// How many photos belong to it, in words; empty where there are none.
    photos: String,
    /// The kind of sample.
    kind: Kind,
    /// Whether it is of the newest answer.
    is_newest: bool,
    /// Where the dock stands.
    at: RwSignal<At>,
) -> impl IntoView + use<> {
    let (question, target) = (sentence.question, sentence.target);
    let bar = sentence.bar;
    // Where findings stand under it they say what is wrong; the word beside a plain fact would blame that.
    let is_bare = bar > Bar::Thin && sentence.findings.is_empty();
    let source = sources(&sentence.findings);
    let source = (!source.is_empty()).then(|| view! { <p class="source">{source}</p> });
    view! {
        <div class=format!("said bar-{}", bar.code()) data-question=question.id data-newest=is_newest>
            <button class="sentence" on:click=move |_| at.set(At::Asked(question, target))>
                {sentence.text}
                {is_bare.then(|| view! { <span class="bar-word">{bar.word()}</span> })}
            </button>
            {(!photos.is_empty()).then(|| view! { <p class="small">{photos}</p> })}
            {sentence.findings.into_iter().map(|finding| view! { <FindingLines finding kind with_name=WithName::No /> }).collect_view()}
            {source}
        </div>
    }
}

/// Whether a finding says what is wrong, or the sentence above it did.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum WithName {
    Yes,
    No,
}

/// The reason, numbers and source of one finding.
#[component]
fn FindingLines<'a>(
    /// The finding.
    finding: &'a Finding,
    /// The kind of sample.
    kind: Kind,
    /// Whether it says what is wrong.
    with_name: WithName,
) -> impl IntoView + use<> {
    let words = check::of(finding.code);
    let bar = Bar::of(finding);
    let class = if with_name == WithName::Yes { format!("said bar-{}", bar.code()) } else { String::new() };
    let source = if with_name == WithName::Yes { sources(&[finding]) } else { String::new() };
    let settles = reason::settles(finding);
    let lines: Vec<String> = reason::numbers(finding, kind)
        .into_iter()
        .chain([favour::in_its_favour(finding, kind), settles.to_owned(), reason::bearing(finding).to_owned()])
        .filter(|line| !line.is_empty())
        .collect();
    view! {
        <div class=class data-code=finding.code>
            <p class="finding">
                <b>{format!("{}, {}: ", reason::capital(reason::label(finding)), words.wrong)}</b>
                {reason::reason(finding, kind)}
            </p>
            {lines.into_iter().map(|line| view! { <p class="numbers">{line}</p> }).collect_view()}
            <p class="source">{source}</p>
        </div>
    }
}

/// What findings are held against, each source once.
fn sources(findings: &[&Finding]) -> String {
    let mut sources: Vec<String> = Vec::new();
    for citation in findings.iter().flat_map(|finding| &finding.against).map(clause::citation) {
        if !sources.contains(&citation) {
            sources.push(citation);
        }
    }
    sources.join("; ")
}
