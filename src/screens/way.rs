//! The four addresses of the app, and the links between them.
//!
//! `leptos_router` does far more, and would break the budget of the first load for four addresses without any nesting.

use leptos::prelude::*;

use super::platform::address;

/// An address.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Way {
    /// All samples.
    AllSamples,
    /// Beginning an examination.
    NewSample,
    /// One sample, by id.
    Sample(String),
    /// What the app is.
    About,
}

impl Way {
    /// The path of the address.
    pub fn path(&self) -> String {
        match self {
            Self::AllSamples => "/".to_owned(),
            Self::NewSample => "/new".to_owned(),
            Self::Sample(id) => format!("/sample/{id}"),
            Self::About => "/about".to_owned(),
        }
    }

    /// The address of a path; an unknown one leads to all samples.
    fn of_path(path: &str) -> Self {
        let parts: Vec<&str> = path.split('/').filter(|part| !part.is_empty()).collect();
        match parts.as_slice() {
            ["new"] => Self::NewSample,
            ["sample", id] => Self::Sample((*id).to_owned()),
            ["about"] => Self::About,
            _ => Self::AllSamples,
        }
    }
}

/// The address in the study of all samples together.
pub const COLLECTION: &str = "/study.html#/samples";
/// The address in the study of one's own instruments.
pub const INSTRUMENTS: &str = "/study.html#/instruments";
/// The address in the study where files are looked at and taken in.
pub const TAKE_IN: &str = "/study.html#/take-in";

/// The address in the study of what can be done with a sample afterwards.
pub fn afterwards(id: &str) -> String {
    format!("/study.html#/sample/{id}")
}

/// The address in the study where the file of a sample is made.
pub fn make_file(id: &str) -> String {
    afterwards(id) + "/file"
}

/// Where one is. A handle: copies speak of the same place.
#[derive(Debug, Clone, Copy)]
pub struct Ways(RwSignal<Way>);

impl Ways {
    /// Starts where the address line says, and follows the browser's way back.
    pub fn open() -> Self {
        let here = RwSignal::new(Way::of_path(&address::path()));
        address::on_back(move || here.set(Way::of_path(&address::path())));
        Self(here)
    }

    /// Where one is.
    pub fn here(self) -> Way {
        self.0.get()
    }

    /// Goes somewhere.
    pub fn go(self, way: Way) {
        address::go(&way.path());
        self.0.set(way);
    }
}

/// A link to another address of the app.
#[component]
pub fn Link(
    /// Where it leads.
    to: Way,
    /// Its style class.
    #[prop(optional)]
    class: &'static str,
    /// Its id; none where it is empty.
    #[prop(optional)]
    id: &'static str,
    /// Its words.
    children: Children,
) -> impl IntoView {
    let ways = expect_context::<Ways>();
    let href = to.path();
    let follow = move |event: leptos::ev::MouseEvent| {
        // With a key held the browser opens another tab: that is its business.
        if !event.ctrl_key() && !event.meta_key() && !event.shift_key() {
            event.prevent_default();
            ways.go(to.clone());
        }
    };
    view! { <a href=href class=class id=(!id.is_empty()).then_some(id) on:click=follow>{children()}</a> }
}
