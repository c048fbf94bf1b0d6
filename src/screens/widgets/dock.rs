//! The newest question, at the thumb: what is asked, its answers as words, how to look, photo, later, undo.

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::answers::{Answers, WaysOut};
use crate::domain::assess::Assessment;
use crate::domain::examination::Answer;
use crate::domain::question::{Question, Stage, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::view::View;
use crate::domain::walk;
use crate::record::{Attached, Record};
use crate::screens::platform::{self, scroll};
use crate::screens::state::Samples;
use crate::screens::way::make_file;
use crate::words::{help, question, screens, verdict, which};

/// Where the dock stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum At {
    /// At the first thing not looked at.
    Walk,
    /// At the first thing not looked at in a place, then on with the walk.
    Place(Place),
    /// At what informs bad signs only, now that the rest is done.
    Lesser,
    /// At one thing that was tapped.
    Asked(&'static Question, Target),
}

impl At {
    /// The question the dock shows; `None` where everything asked has an answer.
    fn question(self, record: &Record, live: Live) -> Option<(&'static Question, Target)> {
        if let Self::Asked(question, target) = self {
            return Some((question, target));
        }
        let view = View::new(&record.examination);
        let open = walk::unanswered(&view);
        let is_here = |question: &Question| self == Self::Place(question.place);
        let is_on_the_way = |question: &Question| {
            (self == Self::Lesser || question.stage < Stage::Lesser)
                && (question.place != Place::Live || live == Live::MayBeAsked)
        };
        let is_fresh = |question: &Question, target| view.answer(question, target).is_none();
        let find = |wanted: &dyn Fn(&Question, Target) -> bool| {
            open.iter().find(|(question, target)| wanted(question, *target))
        };
        find(&|question, target| is_here(question) && is_fresh(question, target))
            .or_else(|| find(&|question, _| is_here(question)))
            .or_else(|| find(&|question, target| is_on_the_way(question) && is_fresh(question, target)))
            .or_else(|| find(&|question, _| is_on_the_way(question)))
            .copied()
    }
}

/// Whether anything is asked of the sample under voltage.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Live {
    MayBeAsked,
    Withdrawn,
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
    let live = Memo::new(move |_| match assessment.with(|assessment| assessment.live_withdrawn_by) {
        Some(_) => Live::Withdrawn,
        None => Live::MayBeAsked,
    });
    let asked = Memo::new(move |_| record.with(|record| at.get().question(record, live.get())));
    // A long list of answers may have been scrolled: the next question begins at its beginning.
    Effect::new(move |_| {
        asked.with(|_| {
            scroll::to_start_of(".asked");
            scroll::into_view("[aria-current=location]");
        });
    });
    view! {
        <section class="dock" aria-live="polite">
            <PlaceLine record asked at />
            {move || match asked.get() {
                Some((question, _)) if question.place == Place::Live && live.get() == Live::Withdrawn => {
                    view! { <div class="asked" data-question="live-withdrawn"><p class="caution">{screens::LIVE_WITHDRAWN}</p></div> }
                        .into_any()
                }
                Some((question, target)) => view! { <Asked record question target at /> }.into_any(),
                None => view! { <AllLooked record at /> }.into_any(),
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
            if answer == Answer::NoTool {
                samples.lack_tool(&id, question, target);
            } else {
                samples.answer(&id, question, target, answer);
            }
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
    view! {
        <div class="asked" data-question=question.id>
            <h2 class="asks">{asks}</h2>
            {(!words.caution.is_empty()).then(|| view! { <p class="caution">{words.caution}</p> })}
            <Show when=move || help_open.get()>
                <HelpOf question />
            </Show>
            <div class="drawing" inner_html=crate::drawing::of(question.id).unwrap_or_default()></div>
            <Answers question target current answer id />
            <div class="ways-out">
                <WaysOut question answer />
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
        </div>
    }
}

/// How to look, and why; fetched when it is asked for.
#[component]
fn HelpOf(
    /// The question.
    question: &'static Question,
) -> impl IntoView {
    let help = RwSignal::new(None);
    spawn_local(async move {
        let all = platform::help::text(platform::help::HELP).await.unwrap_or_default();
        let found = help::find(&all, question.id);
        help.set(Some(found.map_or_else(|| vec![screens::NO_HELP.to_owned()], |help| vec![help.look, help.why])));
    });
    view! {
        <div class="help">
            {move || help.get().unwrap_or_default().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
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
            samples.attach_photo(id.clone(), Attached::Answer { question: question.id, target }, file);
        }
    };
    view! {
        <label class="tool">
            {screens::PHOTO}
            <input type="file" accept="image/*" multiple class="unseen" on:change=picked />
        </label>
    }
}

/// What stands there when everything that may decide has an answer.
#[component]
fn AllLooked(
    /// The record.
    record: Memo<Record>,
    /// Where the dock stands.
    at: RwSignal<At>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let id = record.with_untracked(|record| record.id.clone());
    let file = make_file(&id);
    let lesser = Memo::new(move |_| {
        record.with(|record| {
            let open = walk::unanswered(&View::new(&record.examination));
            open.iter().filter(|(question, _)| question.stage == Stage::Lesser).count()
        })
    });
    let heading = move || if lesser.get() > 0 { screens::ALL_DECIDING_LOOKED } else { screens::ALL_LOOKED };
    let more = move || {
        let equipment = record.with(|record| record.examination.equipment);
        let id = id.clone();
        let greater = Equipment::ALL.into_iter().filter(move |other| *other > equipment);
        greater
            .map(move |other| {
                let id = id.clone();
                let words = format!("{}: {}", screens::MORE_EQUIPMENT, verdict::equipment(other));
                view! { <li><button class="answer" on:click=move |_| samples.equip(&id, other)>{words}</button></li> }
            })
            .collect_view()
    };
    view! {
        <div class="asked" data-question="all-looked">
            <h2 class="asks">{heading}</h2>
            <ul class="answers">
                <li><a href=file class="answer decisive">{screens::MAKE_FILE}</a></li>
                <Show when=move || { lesser.get() > 0 }>
                    <li><button class="answer" id="lesser" on:click=move |_| at.set(At::Lesser)>{screens::lesser(lesser.get())}</button></li>
                </Show>
                {more}
            </ul>
        </div>
    }
}
