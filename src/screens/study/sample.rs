//! What can be done with one sample once it has been looked at.

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::frame::id_of;
use super::way::Room;
use crate::domain::assess::{RuleBook, assess};
use crate::record::Record;
use crate::screens::platform::press;
use crate::words::{custody, risk, screens, study as words, verdict};

/// The page.
pub fn afterwards(record: Memo<Record>) -> AnyView {
    let id = id_of(record);
    let judged = move || {
        let assessment = record.with(|record| assess(&record.examination, &RuleBook::CURRENT));
        view! {
            <p class="verdict-word">{verdict::headline(&assessment)}</p>
            <p>{verdict::reach(&assessment)}</p>
        }
    };
    let ways = [
        (Room::File(id.clone()).href(), screens::MAKE_FILE),
        (Room::Drawn(id.clone()).href(), words::DRAWN),
        (Room::Letters(id.clone()).href(), words::LETTERS),
        (Room::Origin(id.clone()).href(), custody::HEADING),
        (Room::Risk(id.clone()).href(), risk::HEADING),
        (Room::Compare(id).href(), words::COMPARE),
    ];
    let ways = ways.map(|(to, name)| view! { <li><a href=to>{name}</a></li> });
    let key = RwSignal::new(String::new());
    spawn_local(async move {
        if let Ok(fingerprint) = press::fingerprint().await {
            let _ = key.try_set(words::this_device(&fingerprint));
        }
    });
    view! {
        {judged}
        <ul class="rooms">{ways.into_iter().collect_view()}</ul>
        <p class="small" id="device-key">{key}</p>
    }
    .into_any()
}
