//! The page itself, the problem first: verdict, what is wrong, what could not be told, what nobody looked at, what it claims, all that was
//! seen with its photos, how to read it, sources and cautions, and the examination inside it.

use std::collections::BTreeSet;

use super::finding::Told;
use super::markup::Markup;
use super::photos::Photos;
use crate::domain::assess::{Assessment, RuleBook, assess};
use crate::domain::finding::{Conformity, Finding, Severity};
use crate::domain::sample::{Kind, Place};
use crate::domain::standard::{Clause, Provenance};
use crate::domain::view::View;
use crate::drawing::found;
use crate::record::{self, Record};
use crate::words::statement::{Bar, Sentence, homeless, not_looked_at, sentences};
use crate::words::{check, claims, clause, mark, reason, report as words, verdict};

const STYLE: &str = include_str!("page.css");

/// The self-contained page for a record. `photos` are the stored bytes by SHA-256; a photo whose bytes are not there is named as missing.
pub fn page(record: &Record, photos: &[(String, Vec<u8>)]) -> String {
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let said = sentences(&record.examination, &assessment);
    let view = View::new(&record.examination);
    let photos = Photos { of_record: &record.photos, bytes: photos };
    let told = Told::new(&view, &said, &photos, &assessment);
    let writer = Writer { record, assessment: &assessment, said: &said, photos, kind: view.kind() };
    let mut page = Markup::default();
    head(&mut page, record, &assessment);
    page.raw("<body>\n<main>\n");
    writer.verdict(&mut page);
    writer.wrong(&mut page, &told);
    writer.only_print(&mut page);
    writer.not_looked_at(&mut page);
    writer.claims(&mut page);
    writer.seen(&mut page, &told);
    how_to_read(&mut page);
    writer.sources(&mut page);
    paragraphs(&mut page, words::CAUTIONS_HEADING, words::CAUTIONS);
    page.raw("</main>\n");
    carry(&mut page, "plugwary-examination", &record::write(record));
    carry(&mut page, "plugwary-verdict", &record::judged_line(record));
    page.raw("</body>\n</html>\n");
    page.into_string()
}

fn head(page: &mut Markup, record: &Record, assessment: &Assessment) {
    page.raw("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n")
        .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\">\n")
        .element("title", "", &format!("{}: {}", verdict::headline(assessment), mark::title(record)))
        .raw("<style>\n")
        .raw(STYLE)
        .raw("</style>\n</head>\n");
}

/// Puts data into the page that a program can take back; it is never run as a script.
fn carry(page: &mut Markup, id: &str, json: &str) {
    page.raw("<script type=\"application/json\" id=\"")
        .text(id)
        .raw("\">")
        .raw(&record::embed(json))
        .raw("</script>\n");
}

fn how_to_read(page: &mut Markup) {
    page.element("h2", "", words::HOW_TO_READ);
    for bar in [Bar::Solid, Bar::Hatched, Bar::Double, Bar::Dotted, Bar::Empty, Bar::Thin] {
        page.open("p", &format!("said bar-{}", bar.code())).text(words::bar(bar)).close("p");
    }
    for paragraph in words::NUMBERS {
        page.element("p", "", paragraph);
    }
}

fn paragraphs(page: &mut Markup, heading: &str, paragraphs: &[&str]) {
    page.element("h2", "", heading);
    for paragraph in paragraphs {
        page.element("p", "", paragraph);
    }
}

struct Writer<'a> {
    record: &'a Record,
    assessment: &'a Assessment,
    said: &'a [Sentence<'a>],
    photos: Photos<'a>,
    kind: Kind,
}

impl Writer<'_> {
    fn verdict(&self, page: &mut Markup) {
        let (record, assessment) = (self.record, self.assessment);
        let examination = &record.examination;
        page.element("p", "small", words::WHAT_THIS_IS)
            .element("p", "subject", &mark::what_it_is(record))
            .open("header", &format!("verdict {}", assessment.verdict.code()))
            .element("h1", "", &verdict::headline(assessment))
            .element("p", "", &verdict::reach(assessment))
            .close("header")
            .element("p", "advice", verdict::advice(assessment.verdict))
            .element("p", "", &words::how_looked(examination))
            .element("p", "small", &words::coverage(assessment, &examination.sample, examination.equipment))
            .element("p", "small", &words::origin(&record.origin))
            .element("p", "small", &words::when(&record.begun, &record.changed, assessment.edition));
    }

    /// What breaks a rule, what is a bad sign, what could not be told: each in the order of its weight.
    fn wrong(&self, page: &mut Markup, told: &Told) {
        let is_bad_sign = |f: &Finding| f.judgement.severity == Severity::BadSign;
        let breaks = |f: &Finding| f.outcome() == Conformity::Nonconforming;
        self.findings(page, told, words::WHAT_IS_WRONG, |f| breaks(f) && !is_bad_sign(f));
        self.findings(page, told, words::BAD_SIGNS, |f| breaks(f) && is_bad_sign(f));
        let doubts: Vec<&Finding> =
            self.assessment.findings.iter().filter(|f| f.outcome() == Conformity::Inconclusive).collect();
        if !doubts.is_empty() {
            page.element("h2", "", words::COULD_NOT_BE_TOLD);
            told.tell_doubts(page, doubts);
        }
    }

    fn findings(&self, page: &mut Markup, told: &Told, heading: &str, is_wanted: impl Fn(&Finding) -> bool) {
        let mut wanted = self.assessment.findings.iter().filter(|finding| is_wanted(finding)).peekable();
        if wanted.peek().is_some() {
            page.element("h2", "", heading);
        }
        for finding in wanted {
            told.tell(page, finding);
        }
    }

    /// Dangers of which only print speaks: what the maker claims, and nobody saw or measured.
    fn only_print(&self, page: &mut Markup) {
        let is_print =
            |f: &&Finding| f.outcome() == Conformity::Conforms && self.assessment.dangers_not_tested.contains(&f.code);
        let names = names(self.assessment.findings.iter().filter(is_print));
        if !names.is_empty() {
            page.element("h2", "", words::ONLY_PRINT).element("p", "", words::ONLY_PRINT_MEANS);
            page.element("p", "said bar-empty", &reason::capital(&names));
        }
    }

    /// What nobody looked at, by place, the dangers apart from the rest.
    fn not_looked_at(&self, page: &mut Markup) {
        let open = not_looked_at(self.assessment);
        if open.is_empty() {
            return;
        }
        page.element("h2", "", words::NOBODY_LOOKED_AT).element("p", "", words::NOT_LOOKED_MEANS);
        for (place, findings) in open {
            let (dangers, others): (Vec<&Finding>, Vec<&Finding>) =
                findings.into_iter().partition(|f| f.judgement.severity == Severity::Danger);
            page.element("h3", "", verdict::place(place, self.kind));
            for (heading, findings) in [(words::DANGERS, dangers), (words::OTHERS, others)] {
                let names = names(findings.into_iter());
                if !names.is_empty() {
                    page.open("p", "said bar-empty").element("b", "", heading).text(&names).close("p");
                }
            }
        }
    }

    fn claims(&self, page: &mut Markup) {
        let table = claims::table(&self.record.examination);
        if table.rows.is_empty() {
            return;
        }
        page.element("h2", "", words::WHAT_IT_CLAIMS).raw("<div class=\"wide\"><table>\n<tr><td></td>");
        for column in &table.columns {
            page.element("th", "", column);
        }
        page.raw("</tr>\n");
        for row in &table.rows {
            page.raw("<tr>").open("th", "").text(&row.name);
            if row.is_contradicted {
                page.raw("<br>").element("b", "", words::DISAGREE);
            }
            page.close("th");
            for cell in &row.cells {
                page.open("td", "").text(cell).close("td");
            }
            page.raw("</tr>\n");
        }
        page.raw("</table></div>\n");
    }

    /// Everything that was seen, by place, in the order of looking.
    fn seen(&self, page: &mut Markup, told: &Told) {
        page.element("h2", "", words::WHAT_WAS_SEEN);
        let mut last: Option<Place> = None;
        for sentence in self.said {
            let place = sentence.question.place;
            if last.replace(place) != Some(place) {
                page.element("h3", "", verdict::place(place, self.kind));
                if place == Place::Plug && !told.has_shown_plug_face() {
                    super::finding::figures(page, &found::plug_face(&self.assessment.findings));
                }
            }
            said(page, sentence.bar, &sentence.text);
            if sentence.findings.is_empty() {
                self.photos.of(page, sentence);
            }
        }
        for finding in homeless(&self.record.examination, self.assessment) {
            said(page, Bar::of(finding), &reason::reason(finding, self.kind));
        }
    }

    /// Every source that what was found rests on, once.
    fn sources(&self, page: &mut Markup) {
        let is_published = |clause: &&Clause| clause.provenance != Provenance::CommonPractice;
        let is_told = |f: &&Finding| matches!(f.outcome(), Conformity::Nonconforming | Conformity::Inconclusive);
        let told = self.assessment.findings.iter().filter(is_told);
        let sources = told.flat_map(|finding| &finding.against).filter(is_published).map(clause::citation);
        let sources: BTreeSet<String> = sources.collect();
        page.element("h2", "", words::SOURCES).element("p", "", words::SOURCES_MEAN);
        if !sources.is_empty() {
            page.open("ul", "small");
            for source in sources {
                page.element("li", "", &source);
            }
            page.close("ul");
        }
    }
}

/// A sentence with its bar, and the word of the bar where it is more than a plain fact.
fn said(page: &mut Markup, bar: Bar, text: &str) {
    page.open("p", &format!("said bar-{}", bar.code())).text(text);
    if bar > Bar::Thin {
        page.raw(" ").element("small", "", bar.word());
    }
    page.close("p");
}

/// What findings look for, in one sentence.
fn names<'a>(findings: impl Iterator<Item = &'a Finding>) -> String {
    let names: Vec<&str> = findings.map(|f| check::of(f.code).wrong).collect();
    if names.is_empty() { String::new() } else { format!("{}.", names.join("; ")) }
}
