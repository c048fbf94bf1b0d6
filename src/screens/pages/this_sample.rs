//! This sample: the statement grows, the newest question stands at the thumb.

use leptos::prelude::*;

use crate::domain::assess::{Assessment, RuleBook, assess};
use crate::domain::finding::Severity;
use crate::domain::next_check::{NextCheck, learned};
use crate::domain::sample::Equipment;
use crate::record::Record;
use crate::screens::platform::scroll;
use crate::screens::state::Samples;
use crate::screens::way::{Link, Way, Ways, afterwards, make_file};
use crate::screens::widgets::{At, Dock, Given, NEWEST, Statement, VerdictLine};
use crate::words::{check, mark, screens as words, statement, verdict};

/// The page.
#[component]
pub fn ThisSample(
    /// Its id.
    id: String,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    samples.open_for_looking(Some(id.clone()));
    let found = Memo::new(move |_| samples.get(&id));
    let is_there = Memo::new(move |_| found.with(Option::is_some));
    on_cleanup(move || samples.open_for_looking(None));
    move || {
        if is_there.get() {
            view! { <Looking found /> }.into_any()
        } else {
            let text = if samples.is_loading() { words::READING } else { words::NOT_HERE };
            view! {
                <main class="page">
                    <p class="way"><Link to=Way::AllSamples>{words::ALL_SAMPLES}</Link></p>
                    <p>{text}</p>
                </main>
            }
            .into_any()
        }
    }
}

/// The statement and the dock of a sample that is there.
#[component]
fn Looking(
    /// The record.
    found: Memo<Option<Record>>,
) -> impl IntoView {
    let last = StoredValue::new(found.get_untracked());
    let record = Memo::new(move |_| {
        let record = found.get().or_else(|| last.get_value());
        last.set_value(record.clone());
        record.unwrap_or_else(mark::blank)
    });
    let assessment = Memo::new(move |_| record.with(|record| assess(&record.examination, &RuleBook::CURRENT)));
    let at = RwSignal::new(At::Walk);
    let given = Memo::new(move |before| record.with(|record| Given::after(before, &record.examination.answers)));
    Effect::new(move |_| {
        given.with(|given| match given.newest {
            Some(_) => scroll::into_view(NEWEST),
            None => scroll::to_end_of(".scroll"),
        });
    });
    view! {
        <main class="looking">
            <VerdictLine record assessment />
            <div class="scroll">
                <Head record />
                <More record assessment at />
                <Statement record assessment given at />
                <Enough record assessment />
            </div>
            <Dock record assessment at />
        </main>
    }
}

/// The ways out of the statement.
#[component]
fn Head(
    /// The record.
    record: Memo<Record>,
) -> impl IntoView {
    let file = record.with_untracked(|record| make_file(&record.id));
    view! {
        <nav class="way">
            <Link to=Way::AllSamples>{words::ALL_SAMPLES}</Link>
            <a href=file id="make-file">{words::MAKE_FILE}</a>
        </nav>
    }
}

/// What the sample is, what to look at next, what nobody looked at, and deleting: folded away.
#[component]
fn More(
    /// The record.
    record: Memo<Record>,
    /// What the answers amount to.
    assessment: Memo<Assessment>,
    /// Where the dock stands.
    at: RwSignal<At>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let ways = expect_context::<Ways>();
    let id = record.with_untracked(|record| record.id.clone());
    let experience = StoredValue::new(samples.experience(&id));
    let study = afterwards(&id);
    let delete = move |_| {
        samples.delete(&id);
        ways.go(Way::AllSamples);
    };
    view! {
        <p class="subject">{move || record.with(mark::subject)}</p>
        <details class="more">
            <summary>{words::MORE}</summary>
            <h2>{words::LOOK_NEXT}</h2>
            {move || {
                let next = assessment.with(|assessment| learned(&assessment.next, &experience.read_value()));
                next.iter().take(5).filter_map(|next| next_line(next, at)).collect_view()
            }}
            <h2>{words::LOOKED_BY_PLACE}</h2>
            <p class="small">{move || record.with(|record| assessment.with(|a| verdict::looked_by_place(a, record.examination.sample.kind)))}</p>
            <h2>{words::NOT_LOOKED_AT}</h2>
            {move || {
                assessment.with(|assessment| {
                    statement::not_looked_at(assessment)
                        .into_iter()
                        .flat_map(|(_, findings)| findings)
                        .map(|finding| view! { <p class="said bar-empty">{check::of(finding.code).wrong}</p> })
                        .collect_view()
                })
            }}
            <p><a href=study id="afterwards">{words::AFTERWARDS}</a></p>
            <button class="aside" id="save-json" on:click=move |_| samples.save_alone(&record.get_untracked())>{words::SAVE_JSON}</button>
            <button class="aside" id="delete" on:click=delete>{words::DELETE}</button>
        </details>
    }
}

/// One check worth making, with the numbers that rank it; tapping it asks its question.
fn next_line(next: &NextCheck, at: RwSignal<At>) -> Option<impl IntoView + use<>> {
    let question = crate::domain::check::question(next.question)?;
    let target = next.target;
    Some(view! {
        <button class="next" on:click=move |_| at.set(At::Asked(question, target))>
            {check::of(next.code).wrong}
            <span class="small">{words::next_numbers(next)}</span>
        </button>
    })
}

/// Said after the first danger: enough for a buyer, and what more would add for an inspector.
#[component]
fn Enough(
    /// The record.
    record: Memo<Record>,
    /// What the answers amount to.
    assessment: Memo<Assessment>,
) -> impl IntoView {
    let is_danger = Memo::new(move |_| assessment.with(|a| a.findings.iter().any(|f| f.breaks(Severity::Danger))));
    let file = record.with_untracked(|record| make_file(&record.id));
    let first = move || match record.with(|record| record.examination.equipment) {
        Equipment::Eyes => verdict::ENOUGH,
        Equipment::HandTools | Equipment::Meters => verdict::ENOUGH_TO_DECIDE,
    };
    view! {
        <Show when=move || is_danger.get()>
            <p class="enough">
                <b>{first}</b>
                " "
                {move || assessment.with(|a| verdict::advice(a.verdict))}
                " "
                <a href=file.clone()>{words::STOP_HERE}</a>
            </p>
        </Show>
    }
}
