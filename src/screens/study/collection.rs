//! All samples: sorted out, put together by product, written as tables, and out and in as one archive.

use leptos::prelude::*;

use super::archive::Archive;
use super::way::Room;
use crate::collection::{self, Filter, Product, Seen, Table, products};
use crate::domain::assess::{Assessment, RuleBook, assess};
use crate::domain::sample::{Kind, Market};
use crate::domain::verdict::Verdict;
use crate::record::Record;
use crate::screens::platform::file;
use crate::screens::state::Samples;
use crate::screens::way::Way;
use crate::words::{check, collection as words, faults, mark, screens, study, verdict};

/// Every sample with what it amounts to and with all of its text.
type All = Memo<Vec<(Record, Assessment, String)>>;

/// The page.
#[component]
pub fn Collection() -> impl IntoView {
    let samples = expect_context::<Samples>();
    let all: All = Memo::new(move |_| {
        let of = |record: Record| {
            let assessment = assess(&record.examination, &RuleBook::CURRENT);
            let text = collection::text(Seen { record: &record, assessment: &assessment });
            (record, assessment, text)
        };
        samples.all().into_iter().map(of).collect()
    });
    let filter = RwSignal::new(Filter::default());
    let found = Memo::new(move |_| {
        all.with(|all| {
            filter.with(|filter| {
                let keeps = |(record, assessment, text): &&(Record, Assessment, String)| {
                    filter.keeps_all_but_words(Seen { record, assessment }) && filter.has_words(text)
                };
                all.iter().filter(keeps).map(|(record, ..)| record.id.clone()).collect::<Vec<String>>()
            })
        })
    });
    let count = move || {
        if samples.is_loading() {
            screens::READING.to_owned()
        } else {
            words::shown(found.read().len(), all.read().len())
        }
    };
    let list = move || {
        let found = found.get();
        let line = |(record, assessment): (&Record, &Assessment)| {
            let class = format!("said bar-{}", mark::of_verdict(assessment.verdict).code());
            let (looking, study) = (Way::Sample(record.id.clone()).path(), Room::Sample(record.id.clone()).href());
            view! {
                <li class=class>
                    <a class="sample" href=looking>
                        <b>{mark::title(record)}</b>
                        <span class="verdict-so-far">{verdict::headline(assessment)}</span>
                    </a>
                    <a class="small" href=study>{study::AFTERWARDS}</a>
                </li>
            }
        };
        all.with(|all| {
            let wanted = all.iter().filter(|(record, ..)| found.contains(&record.id));
            wanted.map(|(record, assessment, _)| line((record, assessment))).collect_view()
        })
    };
    view! {
        <main class="page study">
            <p class="way"><a href=Way::AllSamples.path()>{study::START}</a></p>
            <h1>{screens::ALL_SAMPLES}</h1>
            <Sorting all filter />
            <p class="small" role="status">{count}</p>
            <ul class="samples">{list}</ul>
            <Products all />
            <h2>{study::TABLES}</h2>
            <Tables all found />
            <Archive />
        </main>
    }
}

/// What the samples to be shown must be.
#[component]
fn Sorting(
    /// The samples.
    all: All,
    /// What they must be.
    filter: RwSignal<Filter>,
) -> impl IntoView {
    let seen = move |find: fn(&[Seen]) -> Vec<(String, String)>| {
        Memo::new(move |_| {
            all.with(|all| {
                let seen: Vec<Seen> = all.iter().map(|(record, assessment, _)| Seen { record, assessment }).collect();
                find(&seen)
            })
        })
    };
    let sellers = seen(|all| {
        collection::sellers(all).into_iter().map(|(seller, n)| (seller.to_owned(), format!("{seller} ({n})"))).collect()
    });
    let faults = seen(|all| {
        let named = |(code, n): (&'static str, usize)| (code.to_owned(), format!("{} ({n})", check::of(code).wrong));
        collection::breaks(all).into_iter().map(named).collect()
    });
    let fixed = |all: Vec<(&'static str, String)>| {
        let all: Vec<_> = all.into_iter().map(|(code, name)| (code.to_owned(), name)).collect();
        Memo::new(move |_| all.clone())
    };
    let verdicts = fixed(Verdict::ALL.map(|one| (one.code(), verdict::name(one).to_owned())).to_vec());
    let kinds = fixed(Kind::ALL.map(|one| (one.code(), verdict::kind(one).to_owned())).to_vec());
    let markets = fixed(Market::ALL.map(|one| (one.code(), verdict::market(one).to_owned())).to_vec());
    let some = |code: String| (!code.is_empty()).then_some(code);
    view! {
        <input
            class="search"
            type="search"
            aria-label=screens::SEARCH
            placeholder=screens::SEARCH
            on:input=move |event| filter.update(|filter| filter.words = event_target_value(&event))
        />
        <details class="more">
            <summary>{words::SORT_OUT}</summary>
            <Pick label=words::BY_VERDICT id="by-verdict" among=verdicts put=Callback::new(move |code: String| {
                filter.update(|filter| filter.verdict = Verdict::ALL.into_iter().find(|one| one.code() == code));
            }) />
            <Pick label=words::BY_KIND id="by-kind" among=kinds put=Callback::new(move |code: String| {
                filter.update(|filter| filter.kind = Kind::ALL.into_iter().find(|one| one.code() == code));
            }) />
            <Pick label=words::BY_MARKET id="by-market" among=markets put=Callback::new(move |code: String| {
                filter.update(|filter| filter.market = Market::ALL.into_iter().find(|one| one.code() == code));
            }) />
            <Pick label=words::BY_SELLER id="by-seller" among=sellers put=Callback::new(move |code: String| {
                filter.update(|filter| filter.seller = some(code));
            }) />
            <Pick label=words::BY_FAULT id="by-fault" among=faults put=Callback::new(move |code: String| {
                filter.update(|filter| filter.breaks = some(code));
            }) />
        </details>
    }
}

/// One choice among many, or none.
#[component]
fn Pick(
    /// What it is.
    label: &'static str,
    /// Its id.
    id: &'static str,
    /// The code and the words of each.
    among: Memo<Vec<(String, String)>>,
    /// Called with the code; empty for none.
    put: Callback<String>,
) -> impl IntoView {
    let options =
        move || among.get().into_iter().map(|(code, name)| view! { <option value=code>{name}</option> }).collect_view();
    view! {
        <label class="line">
            {label}
            <select id=id on:change=move |event| put.run(event_target_value(&event))>
                <option value="">{words::ANY}</option>
                {options}
            </select>
        </label>
    }
}

/// Products of which there are several samples, and what these have in common.
#[component]
fn Products(
    /// The samples.
    all: All,
) -> impl IntoView {
    let products = Memo::new(move |_| {
        all.with(|all| {
            let seen: Vec<Seen> = all.iter().map(|(record, assessment, _)| Seen { record, assessment }).collect();
            products(&seen)
        })
    });
    let one = |product: Product| {
        let lines = words::in_common(&product).into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
        view! { <h3>{words::same_by(&product)}</h3> <ul class="in-common">{lines}</ul> }
    };
    move || {
        let products = products.get();
        (!products.is_empty()).then(|| {
            view! {
                <section id="products">
                    <h2>{words::SEVERAL_OF_ONE}</h2>
                    {products.into_iter().map(one).collect_view()}
                    <p class="small">{words::HOW_GROUPED}</p>
                </section>
            }
        })
    }
}

/// The tables of the samples that are shown.
#[component]
fn Tables(
    /// The samples.
    all: All,
    /// The ids of those that are shown.
    found: Memo<Vec<String>>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let save = move |table: Table, name: &'static str| {
        let text = all.with_untracked(|all| {
            let found = found.get_untracked();
            let shown = all.iter().filter(|(record, ..)| found.contains(&record.id));
            let seen: Vec<Seen> = shown.map(|(record, assessment, _)| Seen { record, assessment }).collect();
            collection::csv(table, &seen)
        });
        if let Err(fault) = file::save(&format!("plugwary-{name}.csv"), "text/csv", &text.as_str().into()) {
            samples.tell_text(faults::file(&fault));
        }
    };
    view! {
        <p class="asides">
            <button class="aside" id="csv-samples" on:click=move |_| save(Table::Samples, "samples")>{words::SAMPLES_CSV}</button>
            <button class="aside" id="csv-readings" on:click=move |_| save(Table::Readings, "readings")>{words::READINGS_CSV}</button>
            <button class="aside" id="csv-findings" on:click=move |_| save(Table::Findings, "findings")>{words::FINDINGS_CSV}</button>
        </p>
    }
}
