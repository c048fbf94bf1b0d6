//! A sample beside a known good.

use leptos::prelude::*;

use super::frame::id_of;
use crate::domain::assess::{RuleBook, assess};
use crate::domain::comparison::{Compared, Likeness, compare};
use crate::drawing::found;
use crate::record::Record;
use crate::screens::state::Samples;
use crate::words::{comparison as words, mark, study};

/// The page.
pub fn compared(record: Memo<Record>) -> AnyView {
    let samples = expect_context::<Samples>();
    let others = Memo::new(move |_| {
        let mine = record.with(|record| record.id.clone());
        let (good, rest): (Vec<Record>, Vec<Record>) =
            samples.all().into_iter().filter(|other| other.id != mine).partition(|other| other.is_known_good);
        good.into_iter().chain(rest).map(|other| (other.id.clone(), name(&other))).collect::<Vec<_>>()
    });
    let chosen = RwSignal::new(String::new());
    let reference = Memo::new(move |_| samples.get(&chosen.read()));
    let is_known_good = Memo::new(move |_| record.with(|record| record.is_known_good));
    let mark_it = move |_| samples.edit(&id_of(record), |record| record.is_known_good = !record.is_known_good);
    let choices = move || {
        let all = others.get().into_iter();
        all.map(
            |(id, name)| view! { <option value=id.clone() selected=move || chosen.with(|c| *c == id)>{name}</option> },
        )
        .collect_view()
    };
    let told = move || {
        reference.with(|reference| {
            let reference = reference.as_ref()?;
            Some(record.with(|record| beside(record, reference)))
        })
    };
    view! {
        <button class="aside" id="known-good" aria-pressed=move || is_known_good.get().to_string() on:click=mark_it>
            {move || if is_known_good.get() { study::NO_LONGER_KNOWN_GOOD } else { words::KEEP_AS_KNOWN_GOOD }}
        </button>
        <label class="line">
            {study::COMPARE_WITH}
            <select id="compare-with" on:change=move |event| chosen.set(event_target_value(&event))>
                <option value="">{study::CHOOSE}</option>
                {choices}
            </select>
        </label>
        {move || others.with(Vec::is_empty).then(|| view! { <p class="small">{study::NOTHING_TO_COMPARE}</p> })}
        {told}
    }
    .into_any()
}

fn name(record: &Record) -> String {
    let title = mark::title(record);
    if record.is_known_good { format!("{title} ({})", words::IS_KNOWN_GOOD) } else { title }
}

/// The two beside each other: what differs first.
fn beside(sample: &Record, reference: &Record) -> impl IntoView + use<> {
    let kind = sample.examination.sample.kind;
    let all = compare(&sample.examination, &reference.examination);
    let judged = |record: &Record| assess(&record.examination, &RuleBook::CURRENT).findings;
    let faces = found::plug_faces(&judged(sample), &judged(reference)).map(|picture| {
        let notes = picture.notes.into_iter().map(|note| view! { <p class="small">{note}</p> }).collect_view();
        view! { <figure class="picture"><div inner_html=picture.svg></div>{notes}</figure> }
    });
    let is_one_sided = |one: &Compared| matches!(one.likeness, Likeness::OnlySample | Likeness::OnlyReference);
    let part = |heading: &'static str, wanted: &dyn Fn(&Compared) -> bool| {
        let lines: Vec<String> = all.iter().filter(|one| wanted(one)).map(|one| words::sentence(one, kind)).collect();
        (!lines.is_empty()).then(|| {
            let lines = lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
            view! { <h2>{heading}</h2> <ul class="told">{lines}</ul> }
        })
    };
    let cautions = words::cautions(&sample.examination, &reference.examination);
    view! {
        <section id="compared">
            <p>{words::summary(&all)}</p>
            {cautions.into_iter().map(|said| view! { <p class="small">{said}</p> }).collect_view()}
            {part(words::DIFFERS, &|one| one.differs())}
            {faces}
            {part(words::THE_REST, &|one| !one.differs() && !is_one_sided(one))}
            {part(words::ONLY_ONE, &is_one_sided)}
            <p class="small">{words::how()}</p>
        </section>
    }
}
