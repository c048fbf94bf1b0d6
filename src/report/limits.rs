//! The page of limits and rules: everything that decides, with its source. It is made natively and lies beside the app as a file.

use super::markup::Markup;
use crate::domain::check::{self, Check};
use crate::domain::standard::registry::{self, Cell, Given, Published};
use crate::domain::standard::{Clause, Provenance};
use crate::words::{check as check_words, limits as words, reason};

const STYLE: &str = include_str!("limits.css");

/// The whole page.
pub fn limits() -> String {
    let mut page = Markup::default();
    head(&mut page);
    page.raw("<body>\n<main>\n").raw("<p><a href=\"./\">").text(words::BACK).raw("</a></p>\n").element(
        "h1",
        "",
        words::TITLE,
    );
    for paragraph in words::INTRODUCTION {
        page.element("p", "", paragraph);
    }
    limits_by_publication(&mut page);
    rules(&mut page, words::RULES, "", registry::RULES);
    practice(&mut page);
    rules(&mut page, words::MODELS, words::MODELS_MEANS, registry::MODELS);
    rules(&mut page, words::PRINT, "", registry::PRINT);
    list(&mut page, words::LEFT_OUT, words::OMISSIONS.iter().map(|line| (*line).to_owned()));
    page.raw("</main>\n</body>\n</html>\n");
    page.into_string()
}

fn head(page: &mut Markup) {
    page.raw("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n")
        .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1, viewport-fit=cover\">\n")
        .raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; font-src 'self'; style-src 'unsafe-inline'\">\n")
        .raw("<link rel=\"icon\" href=\"data:,\">\n")
        .element("title", "", words::TITLE)
        .raw("<style>\n")
        .raw(STYLE)
        .raw("</style>\n</head>\n");
}

fn is_practice(clause: &Clause) -> bool {
    clause.provenance == Provenance::CommonPractice
}

/// Limits that a publication has, under its name, in the order in which they come up.
fn limits_by_publication(page: &mut Markup) {
    page.element("h2", "", words::LIMITS);
    let published: Vec<&Published> = registry::all().filter(|limit| !is_practice(&limit.clause)).collect();
    for heading in in_order(published.iter().map(|limit| words::publication(&limit.clause))) {
        page.element("h3", "", &heading);
        for limit in published.iter().filter(|limit| words::publication(&limit.clause) == heading) {
            limit_of(page, limit);
        }
    }
}

/// Each once, where it comes first.
fn in_order(names: impl Iterator<Item = String>) -> Vec<String> {
    let mut found: Vec<String> = Vec::new();
    for name in names {
        if !found.contains(&name) {
            found.push(name);
        }
    }
    found
}

fn limit_of(page: &mut Markup, limit: &Published) {
    let known = words::sureness(limit.clause.provenance);
    let source =
        if is_practice(&limit.clause) { String::new() } else { format!("{}: {known}.", words::place(&limit.clause)) };
    page.open("section", "").element("p", "", words::what(limit.code));
    page.raw("<ul>\n");
    for cell in (limit.cells)() {
        cell_of(page, &cell, limit.clause.provenance);
    }
    page.raw("</ul>\n").element("p", "small", &source).element("p", "small", &decides(limit.decides.iter().copied()));
    page.close("section");
}

fn cell_of(page: &mut Markup, cell: &Cell, usual: Provenance) {
    page.raw("<li>");
    if cell.given != Given::Nothing {
        page.element("span", "", &words::given(cell.given));
    }
    page.element("span", "value", &words::range(cell.range));
    if let Some(known) = cell.provenance.filter(|known| *known != usual) {
        page.element("span", "small", words::sureness(known));
    }
    page.raw("</li>\n");
}

/// Clauses without a limit of their own, under the name of their publication.
fn rules(page: &mut Markup, heading: &str, means: &str, clauses: &[Clause]) {
    page.element("h2", "", heading).element("p", "", means);
    for publication in in_order(clauses.iter().map(words::publication)) {
        page.element("h3", "", &publication);
        for clause in clauses.iter().filter(|clause| words::publication(clause) == publication) {
            let source = format!("{}: {}.", words::place(clause), words::sureness(clause.provenance));
            page.open("section", "")
                .element("p", "", words::says(clause))
                .element("p", "small", &source)
                .element("p", "small", &decides(citing(clause).map(|check| check.code)))
                .close("section");
        }
    }
}

fn citing(clause: &Clause) -> impl Iterator<Item = &'static Check> {
    check::all().filter(move |check| check.against.contains(clause))
}

fn practice(page: &mut Markup) {
    page.element("h2", "", words::PRACTICE).element("p", "", words::PRACTICE_MEANS);
    for limit in registry::all().filter(|limit| is_practice(&limit.clause)) {
        limit_of(page, limit);
    }
    let faults = check::all().filter(|check| check.against.iter().any(is_practice));
    list(page, words::PRACTICE_FAULTS, faults.map(|check| reason::capital(check_words::of(check.code).wrong)));
}

fn list(page: &mut Markup, heading: &str, lines: impl Iterator<Item = String>) {
    page.element("h2", "", heading).open("ul", "plain");
    for line in lines {
        page.element("li", "", &line);
    }
    page.close("ul");
}

/// The faults of some checks, in a line; empty where there is none.
fn decides(codes: impl Iterator<Item = &'static str>) -> String {
    let faults: Vec<&str> = codes.map(|code| check_words::of(code).wrong).collect();
    if faults.is_empty() { String::new() } else { format!("{}{}.", words::DECIDES, faults.join("; ")) }
}
