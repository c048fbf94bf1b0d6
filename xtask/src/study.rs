//! The page of the study: the app's own page with another program in it, so that both have the same styles and the same policy.

use std::{fs, path::Path};

use crate::Trouble;

/// Its name; the program's files are named alike.
pub const PAGE: &str = "study.html";
const SCRIPT: &str = "/study.js";
const PROGRAM: &str = "/study_bg.wasm";
/// What its pages have beyond the app's.
const STYLE: &str = "<link rel=\"stylesheet\" href=\"/study.css\">";

/// Puts the page of the study beside the app's.
///
/// # Errors
/// When the app's page cannot be read or does not say which program it starts.
pub fn add(folder: &Path) -> Result<(), Trouble> {
    let (from, to) = (folder.join("index.html"), folder.join(PAGE));
    let page = fs::read_to_string(&from).map_err(|trouble| format!("cannot read {}: {trouble}", from.display()))?;
    let page = of_app(&page).ok_or_else(|| format!("{} does not say which program it starts", from.display()))?;
    fs::write(&to, page).map_err(|trouble| format!("cannot write {}: {trouble}", to.display()))
}

fn of_app(page: &str) -> Option<String> {
    let page = with_attribute(page, "data-js", SCRIPT)?;
    let page = with_attribute(&page, "data-wasm", PROGRAM)?;
    let page = without_links(&page, &["modulepreload", "preload"]);
    let (head, rest) = page.split_once("</head>")?;
    Some(format!("{head}{STYLE}</head>{rest}"))
}

/// The text with another value of the first attribute of this name.
fn with_attribute(text: &str, name: &str, value: &str) -> Option<String> {
    let (before, rest) = text.split_once(&format!("{name}=\""))?;
    let (_, after) = rest.split_once('"')?;
    Some(format!("{before}{name}=\"{value}\"{after}"))
}

/// The text without the links that fetch the app's program beforehand.
fn without_links(text: &str, kinds: &[&str]) -> String {
    let is_unwanted = |link: &str| kinds.iter().any(|kind| link.contains(&format!("rel=\"{kind}\"")));
    let mut kept = String::new();
    let mut rest = text;
    while let Some((before, link)) = rest.split_once("<link") {
        let (link, after) = link.split_once('>').unwrap_or((link, ""));
        kept.push_str(before);
        if !is_unwanted(link) {
            kept.extend(["<link", link, ">"]);
        }
        rest = after;
    }
    kept + rest
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn page_starts_the_study_and_fetches_nothing_of_the_app() {
        let page = concat!(
            "<link rel=\"icon\" href=\"i\"><link rel=\"modulepreload\" href=\"/app.js\" as=\"script\">",
            "<link rel=\"preload\" href=\"/app.wasm\"><link rel=\"stylesheet\" href=\"/s.css\"></head>",
            "<script src=\"/boot.js\" data-js=\"/app.js\" data-wasm=\"/app.wasm\"></script>",
        );
        let expected = concat!(
            "<link rel=\"icon\" href=\"i\"><link rel=\"stylesheet\" href=\"/s.css\"><link rel=\"stylesheet\" href=\"/study.css\"></head>",
            "<script src=\"/boot.js\" data-js=\"/study.js\" data-wasm=\"/study_bg.wasm\"></script>",
        );
        assert_eq!(of_app(page).as_deref(), Some(expected));
    }

    #[test]
    fn page_without_a_program_is_refused() {
        assert_eq!(of_app("<p>Soup</p>"), None);
    }
}
