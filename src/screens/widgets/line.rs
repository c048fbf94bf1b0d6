//! A line of text to type.

use leptos::prelude::*;

/// A labelled line of text.
#[component]
pub fn Line(
    /// What it is.
    label: &'static str,
    /// The text.
    text: RwSignal<String>,
    /// Its id; none where it is empty.
    #[prop(optional)]
    id: &'static str,
    /// Called with the text at each key.
    #[prop(optional)]
    typed: Option<Callback<String>>,
    /// The sort of field, as HTML names it.
    #[prop(default = "text")]
    sort: &'static str,
    /// The keyboard it wants, as HTML names it; any where it is empty.
    #[prop(optional)]
    keyboard: &'static str,
) -> impl IntoView {
    let put = move |event| {
        text.set(event_target_value(&event));
        if let Some(typed) = typed {
            typed.run(text.get_untracked());
        }
    };
    view! {
        <label class="line">
            {label}
            <input
                type=sort
                id=(!id.is_empty()).then_some(id)
                inputmode=(!keyboard.is_empty()).then_some(keyboard)
                maxlength="400"
                prop:value=text
                on:input=put
            />
        </label>
    }
}
