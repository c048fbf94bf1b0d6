//! What the file says, the problem first: verdict, what is wrong, what could not be told, what nobody looked at, what it claims, all that was
//! seen with its photos, where it came from, how grave it is, how to read it, sources, seal and cautions.

use std::collections::BTreeSet;

use super::document::{Block, Run, Tone};
use super::finding::Told;
use super::origin;
use super::photos::Photos;
use super::risk;
use crate::domain::assess::{Assessment, RuleBook, assess};
use crate::domain::finding::{Conformity, Finding, Severity};
use crate::domain::sample::{Kind, Place};
use crate::domain::standard::{Clause, Provenance};
use crate::domain::view::View;
use crate::drawing::found;
use crate::record::Record;
use crate::seal::{PublicKey, fingerprint};
use crate::words::statement::{Bar, Sentence, homeless, not_looked_at, sentences};
use crate::words::{check, claims, clause, mark, reason, report as words, seal, verdict};

/// Everything that a file says, whatever it is made into.
#[derive(Debug)]
pub struct Content<'a> {
    /// What it is called.
    pub title: String,
    /// What it says.
    pub blocks: Vec<Block<'a>>,
}

impl<'a> Content<'a> {
    /// Of a record and the stored bytes of its photos by SHA-256; a photo whose bytes are not there is named as missing.
    ///
    /// A page to be sealed says with which key, and how that is checked.
    pub fn of(record: &'a Record, photos: &'a [(String, Vec<u8>)], key: Option<&PublicKey>) -> Self {
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        let said = sentences(&record.examination, &assessment);
        let view = View::new(&record.examination);
        let photos = Photos { of_record: &record.photos, bytes: photos };
        let told = Told::new(&view, &said, photos, &assessment);
        let blocks = Vec::new();
        let mut writer = Writer { record, assessment: &assessment, said: &said, photos, kind: view.kind(), blocks };
        let key = key.map(fingerprint);
        writer.verdict();
        writer.text(Tone::Small, &key.as_deref().map(seal::sealed_with).unwrap_or_default());
        writer.wrong(&told);
        writer.only_print();
        writer.not_looked_at();
        writer.claims();
        writer.seen(&told);
        writer.blocks.extend(origin::blocks(record, photos));
        writer.blocks.extend(risk::blocks(record, &assessment));
        writer.how_to_read();
        writer.sources();
        if let Some(key) = key {
            let said = [&seal::key(&key), seal::HOW_TO_CHECK, seal::COMPARE, seal::CLAIMS_NOTHING];
            writer.paragraphs(seal::HEADING, &said);
        }
        writer.paragraphs(words::CAUTIONS_HEADING, words::CAUTIONS);
        let title = format!("{}: {}", verdict::headline(&assessment), mark::title(record));
        Self { title, blocks: writer.blocks }
    }
}

struct Writer<'p, 'a> {
    record: &'p Record,
    assessment: &'a Assessment,
    said: &'a [Sentence<'a>],
    photos: Photos<'p>,
    kind: Kind,
    blocks: Vec<Block<'p>>,
}

impl<'p> Writer<'p, '_> {
    fn text(&mut self, tone: Tone, text: &str) {
        self.blocks.extend(Block::text(tone, text));
    }

    fn verdict(&mut self) {
        let (record, assessment) = (self.record, self.assessment);
        let examination = &record.examination;
        self.text(Tone::Small, words::WHAT_THIS_IS);
        self.text(Tone::Subject, &mark::what_it_is(record));
        let (headline, reach) = (verdict::headline(assessment), verdict::reach(assessment));
        self.blocks.push(Block::Verdict(assessment.verdict.code(), headline, reach));
        self.text(Tone::Advice, verdict::advice(assessment.verdict));
        self.text(Tone::Plain, &words::how_looked(examination));
        self.text(Tone::Small, &words::coverage(assessment, &examination.sample, examination.equipment));
        self.text(Tone::Small, &words::origin(&record.origin));
        self.text(Tone::Small, &words::when(&record.begun, &record.changed, assessment.edition));
    }

    /// What breaks a rule, what is a bad sign, what could not be told: each in the order of its weight.
    fn wrong(&mut self, told: &Told<'p, '_>) {
        let is_bad_sign = |f: &Finding| f.judgement.severity == Severity::BadSign;
        let breaks = |f: &Finding| f.outcome() == Conformity::Nonconforming;
        self.findings(told, words::WHAT_IS_WRONG, |f| breaks(f) && !is_bad_sign(f));
        self.findings(told, words::BAD_SIGNS, |f| breaks(f) && is_bad_sign(f));
        let doubts: Vec<&Finding> =
            self.assessment.findings.iter().filter(|f| f.outcome() == Conformity::Inconclusive).collect();
        if !doubts.is_empty() {
            self.blocks.push(Block::Heading(words::COULD_NOT_BE_TOLD));
            self.blocks.extend(told.tell_doubts(doubts));
        }
    }

    fn findings(&mut self, told: &Told<'p, '_>, heading: &'static str, is_wanted: impl Fn(&Finding) -> bool) {
        let mut wanted = self.assessment.findings.iter().filter(|finding| is_wanted(finding)).peekable();
        if wanted.peek().is_some() {
            self.blocks.push(Block::Heading(heading));
        }
        self.blocks.extend(wanted.map(|finding| told.tell(finding)));
    }

    /// Dangers of which only print speaks: what the maker claims, and nobody saw or measured.
    fn only_print(&mut self) {
        let is_print =
            |f: &&Finding| f.outcome() == Conformity::Conforms && self.assessment.dangers_not_tested.contains(&f.code);
        let names = names(self.assessment.findings.iter().filter(is_print));
        if !names.is_empty() {
            self.blocks.push(Block::Heading(words::ONLY_PRINT));
            self.text(Tone::Plain, words::ONLY_PRINT_MEANS);
            self.blocks.push(Block::Said(Bar::Empty, vec![Run::Plain(reason::capital(&names))]));
        }
    }

    /// What nobody looked at, by place, the dangers apart from the rest.
    fn not_looked_at(&mut self) {
        let open = not_looked_at(self.assessment);
        if open.is_empty() {
            return;
        }
        self.blocks.push(Block::Heading(words::NOBODY_LOOKED_AT));
        self.text(Tone::Plain, words::NOT_LOOKED_MEANS);
        for (place, findings) in open {
            let (dangers, others): (Vec<&Finding>, Vec<&Finding>) =
                findings.into_iter().partition(|f| f.judgement.severity == Severity::Danger);
            self.blocks.push(Block::Subheading(verdict::place(place, self.kind).to_owned()));
            for (heading, findings) in [(words::DANGERS, dangers), (words::OTHERS, others)] {
                let names = names(findings.into_iter());
                if !names.is_empty() {
                    let runs = vec![Run::Strong(heading.to_owned()), Run::Plain(names)];
                    self.blocks.push(Block::Said(Bar::Empty, runs));
                }
            }
        }
    }

    fn claims(&mut self) {
        let table = claims::table(&self.record.examination);
        if !table.rows.is_empty() {
            self.blocks.extend([Block::Heading(words::WHAT_IT_CLAIMS), Block::Claims(table)]);
        }
    }

    /// Everything that was seen, by place, in the order of looking.
    fn seen(&mut self, told: &Told) {
        self.blocks.push(Block::Heading(words::WHAT_WAS_SEEN));
        let mut last: Option<Place> = None;
        for sentence in self.said {
            let place = sentence.question.place;
            if last.replace(place) != Some(place) {
                self.blocks.push(Block::Subheading(verdict::place(place, self.kind).to_owned()));
                if place == Place::Plug && !told.has_shown_plug_face() {
                    self.blocks.extend(found::plug_face(&self.assessment.findings).map(Block::Picture));
                }
            }
            self.said(sentence.bar, sentence.text.clone(), sentence.blame());
            if sentence.findings.is_empty() {
                self.blocks.extend(self.photos.of(sentence));
            }
        }
        for finding in homeless(&self.record.examination, self.assessment) {
            let bar = Bar::of(finding);
            self.said(bar, reason::reason(finding, self.kind), bar.word().to_owned());
        }
    }

    /// A sentence with its bar, and what the bar says; nothing where it is a plain fact.
    fn said(&mut self, bar: Bar, text: String, says: String) {
        let says = (!says.is_empty()).then_some(Run::Small(says));
        self.blocks.push(Block::Said(bar, [Run::Plain(text)].into_iter().chain(says).collect()));
    }

    fn how_to_read(&mut self) {
        self.blocks.push(Block::Heading(words::HOW_TO_READ));
        for bar in [Bar::Solid, Bar::Hatched, Bar::Double, Bar::Dotted, Bar::Empty, Bar::Thin] {
            self.blocks.push(Block::Said(bar, vec![Run::Plain(words::bar(bar).to_owned())]));
        }
        for paragraph in words::NUMBERS {
            self.text(Tone::Plain, paragraph);
        }
    }

    /// Every source that what was found rests on, once.
    fn sources(&mut self) {
        let is_published = |clause: &&Clause| clause.provenance != Provenance::CommonPractice;
        let is_told = |f: &&Finding| matches!(f.outcome(), Conformity::Nonconforming | Conformity::Inconclusive);
        let told = self.assessment.findings.iter().filter(is_told);
        let sources = told.flat_map(|finding| &finding.against).filter(is_published).map(clause::citation);
        let sources: BTreeSet<String> = sources.collect();
        self.paragraphs(words::SOURCES, &[words::SOURCES_MEAN]);
        if !sources.is_empty() {
            self.blocks.push(Block::List(Tone::Small, sources.into_iter().collect()));
        }
    }

    fn paragraphs(&mut self, heading: &'static str, paragraphs: &[&str]) {
        self.blocks.push(Block::Heading(heading));
        for paragraph in paragraphs {
            self.text(Tone::Plain, paragraph);
        }
    }
}

/// What findings look for, in one sentence.
fn names<'a>(findings: impl Iterator<Item = &'a Finding>) -> String {
    let names: Vec<&str> = findings.map(|f| check::of(f.code).wrong).collect();
    if names.is_empty() { String::new() } else { format!("{}.", names.join("; ")) }
}
