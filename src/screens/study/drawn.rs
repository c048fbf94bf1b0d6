//! What was measured, drawn beside its limit, and what each place claims: the pictures of the file.

use leptos::prelude::*;

use crate::domain::assess::{RuleBook, assess};
use crate::domain::view::View;
use crate::drawing::found::{self, Picture};
use crate::record::Record;
use crate::words::statement::Bar;
use crate::words::{claims, reason, report, study as words};

/// The page.
pub fn drawn(record: Memo<Record>) -> AnyView {
    let all = move || {
        record.with(|record| {
            let assessment = assess(&record.examination, &RuleBook::CURRENT);
            let view = View::new(&record.examination);
            let kind = view.kind();
            let face = found::plug_face(&assessment.findings).map(self::picture);
            let measured = assessment.findings.iter().filter_map(|finding| {
                let pictures = found::of(finding, &view);
                (!pictures.is_empty()).then(|| {
                    let pictures = pictures.into_iter().map(self::picture).collect_view();
                    let class = format!("said bar-{}", Bar::of(finding).code());
                    view! {
                        <section class=class>
                            <h2>{report::heading(finding)}</h2>
                            <p>{reason::reason(finding, kind)}</p>
                            {pictures}
                        </section>
                    }
                })
            });
            let measured: Vec<_> = measured.collect();
            let is_nothing = measured.is_empty() && face.is_none();
            view! {
                {is_nothing.then(|| view! { <p>{words::NOTHING_MEASURED}</p> })}
                {face}
                {measured}
                {claimed(record)}
            }
        })
    };
    view! { {all} }.into_any()
}

fn picture(picture: Picture) -> impl IntoView + use<> {
    let notes = picture.notes.into_iter().map(|note| view! { <p class="small">{note}</p> }).collect_view();
    view! { <figure class="picture"><div inner_html=picture.svg></div>{notes}</figure> }
}

/// What each place claims; nothing where none does.
fn claimed(record: &Record) -> Option<impl IntoView + use<>> {
    let table = claims::table(&record.examination);
    let columns = table.columns.into_iter().map(|column| view! { <th scope="col">{column}</th> }).collect_view();
    let rows: Vec<_> = table
        .rows
        .into_iter()
        .map(|row| {
            let cells = row.cells.into_iter().map(|cell| view! { <td>{cell}</td> }).collect_view();
            let disagree = row.is_contradicted.then(|| view! { <br /><b>{report::DISAGREE}</b> });
            view! { <tr><th scope="row">{row.name}{disagree}</th>{cells}</tr> }
        })
        .collect();
    (!rows.is_empty()).then(|| {
        view! {
            <h2>{report::WHAT_IT_CLAIMS}</h2>
            <div class="wide"><table><thead><tr><td></td>{columns}</tr></thead><tbody>{rows}</tbody></table></div>
        }
    })
}
