//! The page itself: verdict, what is wrong with numbers and sources, what could not be told, what nobody looked at, photos, and the
//! examination inside it.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use super::markup::Markup;
use crate::domain::assess::{Assessment, RuleBook, assess};
use crate::domain::finding::{Conformity, Finding, Severity};
use crate::domain::sample::Kind;
use crate::record::{self, Photo, Record};
use crate::words::statement::{Bar, Sentence, homeless, not_looked_at, sentences};
use crate::words::{check, claims, clause, favour, mark, reason, report as words, verdict};

const STYLE: &str = include_str!("page.css");

/// The self-contained page for a record. `photos` are the stored bytes by SHA-256; a photo whose bytes are not there is named as missing.
pub fn page(record: &Record, photos: &[(String, Vec<u8>)]) -> String {
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let said = sentences(&record.examination, &assessment);
    let writer = Writer { record, assessment: &assessment, said: &said, photos, kind: record.examination.sample.kind };
    let mut page = Markup::default();
    head(&mut page, record, &assessment);
    page.raw("<body>\n<main>\n");
    writer.verdict(&mut page);
    writer.wrong(&mut page);
    writer.doubtful(&mut page);
    writer.only_print(&mut page);
    writer.seen(&mut page);
    writer.claims(&mut page);
    writer.not_looked_at(&mut page);
    how_to_read(&mut page);
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
    for bar in [Bar::Solid, Bar::Hatched, Bar::Dotted, Bar::Empty, Bar::Thin] {
        page.open("p", &format!("said bar-{}", bar.code())).text(words::bar(bar)).close("p");
    }
    for paragraph in words::CAUTIONS {
        page.element("p", "", paragraph);
    }
}

struct Writer<'a> {
    record: &'a Record,
    assessment: &'a Assessment,
    said: &'a [Sentence<'a>],
    photos: &'a [(String, Vec<u8>)],
    kind: Kind,
}

impl Writer<'_> {
    fn verdict(&self, page: &mut Markup) {
        let assessment = self.assessment;
        page.element("p", "small", words::WHAT_THIS_IS)
            .open("header", &format!("verdict {}", assessment.verdict.code()))
            .element("h1", "", &verdict::headline(assessment))
            .element("p", "", &verdict::reach(assessment))
            .close("header")
            .element("p", "advice", verdict::advice(assessment.verdict))
            .element("p", "subject", &mark::subject(self.record))
            .element("p", "subject", &words::origin(&self.record.origin))
            .element("p", "small", &words::when(&self.record.begun, &self.record.changed, assessment.edition));
    }

    fn wrong(&self, page: &mut Markup) {
        let is_bad_sign = |f: &Finding| f.judgement.severity == Severity::BadSign;
        self.findings(page, words::WHAT_IS_WRONG, |f| f.outcome() == Conformity::Nonconforming && !is_bad_sign(f));
        self.findings(page, words::BAD_SIGNS, |f| f.outcome() == Conformity::Nonconforming && is_bad_sign(f));
    }

    fn doubtful(&self, page: &mut Markup) {
        self.findings(page, words::COULD_NOT_BE_TOLD, |f| f.outcome() == Conformity::Inconclusive);
    }

    /// Findings of one outcome, the weightiest first, each under the sentence it rests on.
    fn findings(&self, page: &mut Markup, heading: &str, is_wanted: impl Fn(&Finding) -> bool) {
        let wanted: Vec<&Finding> = self.assessment.findings.iter().filter(|f| is_wanted(f)).collect();
        if wanted.is_empty() {
            return;
        }
        page.element("h2", "", heading);
        let mut above = String::new();
        for finding in wanted {
            above = self.finding(page, finding, &above);
        }
    }

    /// One finding under its sentence; the sentence stands only once above findings that share it. Returns it.
    fn finding(&self, page: &mut Markup, finding: &Finding, above: &str) -> String {
        let home = self.said.iter().find(|s| s.findings.iter().any(|f| f.code == finding.code));
        let bar = Bar::of(finding);
        let heading = home.map_or_else(|| reason::capital(check::of(finding.code).wrong), |s| s.text.clone());
        page.open("section", &format!("said bar-{}", bar.code()))
            .element("h3", "", if heading == above { "" } else { &heading })
            .element(
                "p",
                "",
                &format!("{}: {}.", reason::capital(reason::label(finding)), check::of(finding.code).wrong),
            )
            .element("p", "", &reason::reason(finding, self.kind));
        for line in reason::numbers(finding, self.kind) {
            page.element("p", "numbers", &line);
        }
        let against = finding.against.iter().map(clause::citation).collect::<Vec<_>>().join("; ");
        page.element("p", "", &favour::in_its_favour(finding, self.kind))
            .element("p", "", reason::settles(finding))
            .element("p", "", reason::bearing(finding))
            .element("p", "source", &words::held_against(&against));
        if let Some(home) = home.filter(|_| heading != above) {
            self.photos_of(page, home);
        }
        page.close("section");
        heading
    }

    /// Dangers of which only print speaks: what the maker claims, and nobody saw or measured.
    fn only_print(&self, page: &mut Markup) {
        let is_print =
            |f: &&Finding| f.outcome() == Conformity::Conforms && self.assessment.dangers_not_tested.contains(&f.code);
        let names = names(self.assessment.findings.iter().filter(is_print));
        if !names.is_empty() {
            page.element("h2", "", words::ONLY_PRINT).element("p", "", words::ONLY_PRINT_MEANS);
            page.element("p", "said bar-empty", &names);
        }
    }

    /// Everything that was seen, by place.
    fn seen(&self, page: &mut Markup) {
        page.element("h2", "", words::WHAT_WAS_SEEN);
        let mut last = None;
        for sentence in self.said {
            let place = sentence.question.place;
            if last.replace(place) != Some(place) {
                page.element("h3", "", verdict::place(place, self.kind));
            }
            page.open("p", &format!("said bar-{}", sentence.bar.code())).text(&sentence.text).close("p");
            if sentence.findings.is_empty() {
                self.photos_of(page, sentence);
            }
        }
        for finding in homeless(&self.record.examination, self.assessment) {
            let bar = Bar::of(finding);
            page.element("p", &format!("said bar-{}", bar.code()), &reason::reason(finding, self.kind));
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
            page.raw("<tr>").element("th", "", &row.name);
            for cell in &row.cells {
                page.open("td", "").text(cell).close("td");
            }
            page.raw("</tr>\n");
        }
        page.raw("</table></div>\n");
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

    fn photos_of(&self, page: &mut Markup, sentence: &Sentence) {
        let belongs = |p: &&Photo| p.question == sentence.question.id && p.target == sentence.target;
        for photo in self.record.photos.iter().filter(belongs) {
            match self.photos.iter().find(|(sha256, _)| *sha256 == photo.sha256) {
                Some((_, bytes)) => {
                    page.raw("<figure><img alt=\"")
                        .text(&sentence.text)
                        .raw("\" data-sha256=\"")
                        .text(&photo.sha256)
                        .raw("\" src=\"data:")
                        .text(&photo.media_type)
                        .raw(";base64,")
                        .raw(&STANDARD.encode(bytes))
                        .raw("\">")
                        .element("figcaption", "small", &words::photo_of(&photo.taken, &photo.sha256))
                        .close("figure");
                }
                None => {
                    page.element("p", "small", words::PHOTO_MISSING);
                }
            }
        }
    }
}

/// What findings look for, in one sentence.
fn names<'a>(findings: impl Iterator<Item = &'a Finding>) -> String {
    let names: Vec<&str> = findings.map(|f| check::of(f.code).wrong).collect();
    if names.is_empty() { String::new() } else { format!("{}.", names.join("; ")) }
}
