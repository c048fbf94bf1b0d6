//! The newest question, at the thumb: what is asked, its answers as words, how to look, photo, later, undo.

use leptos::prelude::*;

use super::answers::Answers;
use crate::domain::assess::Assessment;
use crate::domain::examination::Answer;
use crate::domain::question::{Question, Target};
use crate::domain::sample::Place;
use crate::domain::view::View;
use crate::domain::walk;
use crate::record::Record;
use crate::screens::platform::scroll;
use crate::screens::state::Samples;
use crate::screens::way::{Link, Way};
use crate::words::{question, screens, verdict, which};

/// Where the dock stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum At {
    /// At the first thing not looked at.
    Walk,
    /// At the first thing not looked at in a place, then on with the walk.
    Place(Place),
    /// At one thing that was tapped.
    Asked(&'static Question, Target),
}

impl At {
    /// The question the dock shows; `None` where everything asked has an answer.
    fn question(self, record: &Record) -> Option<(&'static Question, Target)> {
        if let Self::Asked(question, target) = self {
            return Some((question, target));
        }
        let view = View::new(&record.examination);
        let open = walk::unanswered(&view);
        let fresh = |&&(question, target): &&(&'static Question, Target)| view.answer(question, target).is_none();
        let here = |&&(question, _): &&(&'static Question, Target)| self == Self::Place(question.place);
        open.iter()
            .filter(fresh)
            .find(here)
            .or_else(|| open.iter().find(here))
            .or_else(|| open.iter().find(fresh))
            .or_else(|| open.first())
            .copied()
    }
}

/// The dock.
#[component]
pub fn Dock(
    /// The record.
    record: Memo<Record>,
    /// What it amounts to.
    assessment: Memo<Assessment>,
    /// Where the dock stands.
    at: RwSignal<At>,
) -> impl IntoView {
    let asked = Memo::new(move |_| record.with(|record| at.get().question(record)));
    // A long list of answers may have been scrolled: the next question begins at its beginning.
    Effect::new(move |_| asked.with(|_| scroll::to_start_of(".asked")));
    view! {
        <section class="dock" aria-live="polite">
            <PlaceLine record asked at />
            {move || match asked.get() {
                Some((question, target)) => view! { <Asked record assessment question target at /> }.into_any(),
                None => view! { <AllLooked record /> }.into_any(),
            }}
        </section>
    }
}

/// The places, to jump to.
#[component]
fn PlaceLine(
    /// The record.
    record: Memo<Record>,
    /// What the dock shows.
    asked: Memo<Option<(&'static Question, Target)>>,
    /// Where the dock stands.
    at: RwSignal<At>,
) -> impl IntoView {
    let places = Memo::new(move |_| record.with(|record| walk::places(&View::new(&record.examination))));
    let kind = move || record.with(|record| record.examination.sample.kind);
    view! {
        <nav class="places">
            {move || {
                places
                    .get()
                    .into_iter()
                    .map(|place| {
                        let here = move || asked.get().is_some_and(|(question, _)| question.place == place);
                        view! {
                            <button
                                class="place-word"
                                data-place=place.code()
                                aria-current=move || here().then_some("location")
                                on:click=move |_| at.set(At::Place(place))
                            >
                                {verdict::place(place, kind())}
                            </button>
                        }
                    })
                    .collect_view()
            }}
        </nav>
    }
}

/// One question and its answers.
#[component]
fn Asked(
    /// The record.
    record: Memo<Record>,
    /// What it amounts to.
    assessment: Memo<Assessment>,
    /// The question.
    question: &'static Question,
    /// Which of several.
    target: Target,
    /// Where the dock stands.
    at: RwSignal<At>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let words = question::of(question);
    let kind = record.with_untracked(|record| record.examination.sample.kind);
    let id = record.with_untracked(|record| record.id.clone());
    let help_open = RwSignal::new(false);
    let answer = {
        let id = id.clone();
        Callback::new(move |answer: Answer| {
            samples.answer(&id, question, target, answer);
            if matches!(at.get_untracked(), At::Asked(..)) {
                at.set(At::Walk);
            }
        })
    };
    let can_undo = {
        let id = id.clone();
        move || samples.can_undo(&id)
    };
    let undo = {
        let id = id.clone();
        move |_| samples.undo(&id)
    };
    let asks = words.asks.replace("{which}", &which::which(target, kind));
    let current = record.with_untracked(|record| record.examination.answer(question, target).cloned());
    let photo_id = id.clone();
    let withdrawn = move || question.place == Place::Live && assessment.with(|a| a.live_withdrawn_by.is_some());
    view! {
        <div class="asked" data-question=question.id>
            <h2 class="asks">{asks}</h2>
            {(!words.caution.is_empty()).then(|| view! { <p class="caution">{words.caution}</p> })}
            <Show when=move || help_open.get()>
                <div class="help">
                    <p>{words.look}</p>
                    <p>{words.why}</p>
                </div>
            </Show>
            <div class="drawing" inner_html=crate::drawing::of(question.id).unwrap_or_default()></div>
            <Show when=move || !withdrawn() fallback=|| view! { <p class="caution">{screens::LIVE_WITHDRAWN}</p> }>
                <Answers question target current=current.clone() answer id=id.clone() />
            </Show>
            <div class="tools">
                <button class="tool" aria-expanded=move || help_open.get().to_string() on:click=move |_| {
                        help_open.update(|open| *open = !*open);
                        scroll::to_start_of(".asked");
                    }>
                    {screens::HOW_TO_LOOK}
                </button>
                <PhotoTool id=photo_id question target />
                <button class="tool" id="later" on:click=move |_| answer.run(Answer::Later)>{screens::LATER}</button>
                <button class="tool" id="undo" disabled=move || !can_undo() on:click=undo>{screens::UNDO}</button>
            </div>
        </div>
    }
}

/// Takes a photo for a question.
#[component]
fn PhotoTool(
    /// The sample's id.
    id: String,
    /// The question.
    question: &'static Question,
    /// Which of several.
    target: Target,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let picked = move |event: leptos::ev::Event| {
        for file in crate::screens::platform::file::picked(&event) {
            samples.attach_photo(id.clone(), question, target, file);
        }
    };
    view! {
        <label class="tool">
            {screens::PHOTO}
            <input type="file" accept="image/*" multiple class="unseen" on:change=picked />
        </label>
    }
}

/// What stands there when everything asked has an answer.
#[component]
fn AllLooked(
    /// The record.
    record: Memo<Record>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let id = record.with_untracked(|record| record.id.clone());
    let file = Way::File(id.clone());
    let equipment = move || record.with(|record| record.examination.equipment);
    let more = crate::domain::sample::Equipment::ALL;
    view! {
        <div class="asked" data-question="all-looked">
            <h2 class="asks">{screens::ALL_LOOKED}</h2>
            <ul class="answers">
                {move || {
                    let id = id.clone();
                    more.into_iter()
                        .filter(|other| *other > equipment())
                        .map(|other| {
                            let id = id.clone();
                            view! {
                                <li>
                                    <button class="answer" on:click=move |_| samples.equip(&id, other)>
                                        {format!("{}: {}", screens::MORE_EQUIPMENT, verdict::equipment(other))}
                                    </button>
                                </li>
                            }
                        })
                        .collect_view()
                }}
            </ul>
            <p><Link to=file class="answer decisive">{screens::MAKE_FILE}</Link></p>
        </div>
    }
}
