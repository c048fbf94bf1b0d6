//! One finding as the receiver reads it: what is wrong, what was seen, why it matters, the numbers with their picture, the retry in the
//! sample's favour, what would settle it, and its sources.

use super::document::{Block, Tone};
use super::photos::Photos;
use crate::domain::assess::Assessment;
use crate::domain::finding::{Conformity, Finding, Reason};
use crate::domain::view::View;
use crate::drawing::found;
use crate::words::statement::{Bar, Sentence};
use crate::words::{favour, reason, report as words, statement};

/// All that findings are told with.
pub struct Told<'p, 'a> {
    view: &'a View<'a>,
    said: &'a [Sentence<'a>],
    photos: Photos<'p>,
    assessment: &'a Assessment,
    /// The finding under which the face of the plug is drawn: the weightiest that it shows.
    plug_face_under: Option<&'static str>,
}

impl<'p, 'a> Told<'p, 'a> {
    /// From an assessment and its statement.
    pub fn new(view: &'a View<'a>, said: &'a [Sentence<'a>], photos: Photos<'p>, assessment: &'a Assessment) -> Self {
        let is_told = |f: &&Finding| matches!(f.outcome(), Conformity::Nonconforming | Conformity::Inconclusive);
        let of_plug = assessment.findings.iter().filter(is_told).find(|finding| found::is_on_plug_face(finding));
        Self { view, said, photos, assessment, plug_face_under: of_plug.map(|finding| finding.code) }
    }

    /// Whether the face of the plug is drawn under one of the findings that are told.
    pub const fn has_shown_plug_face(&self) -> bool {
        self.plug_face_under.is_some()
    }

    /// Doubts; those that rest on the same answer for the same reason are told together, the weightiest group first.
    pub fn tell_doubts(&self, doubts: Vec<&Finding>) -> Vec<Block<'p>> {
        let (mut rest, mut told) = (doubts, Vec::new());
        while let Some(first) = rest.first().copied() {
            let grounds = self.seen_and_reason(first);
            let is_measured = !first.judgement.evidence.is_empty() || grounds.0.is_empty();
            let is_same = |finding: &&Finding| {
                finding.code == first.code
                    || (!is_measured
                        && finding.judgement.evidence.is_empty()
                        && self.seen_and_reason(finding) == grounds)
            };
            let (same, others): (Vec<_>, Vec<_>) = rest.into_iter().partition(is_same);
            rest = others;
            told.push(match same.as_slice() {
                [only] => self.tell(only),
                several => self.tell_together(several, grounds),
            });
        }
        told
    }

    fn tell_together(&self, findings: &[&Finding], (seen, reason): (String, String)) -> Block<'p> {
        let mut against = Vec::new();
        for clause in findings.iter().flat_map(|finding| &finding.against) {
            if !against.contains(clause) {
                against.push(*clause);
            }
        }
        let doubts = findings.iter().map(|finding| words::doubt(finding)).collect();
        let mut told = vec![Block::Subheading(seen)];
        told.extend(Block::text(Tone::Plain, &reason));
        told.extend([Block::Text(Tone::Plain, words::SO_NOT_TOLD.to_owned()), Block::List(Tone::Plain, doubts)]);
        told.extend(Block::text(Tone::Source, &words::held_against(&against)));
        let homes = findings.iter().filter_map(|finding| self.home_of_photos(finding));
        told.extend(homes.flat_map(|home| self.photos.of(home)));
        Block::Section(Bar::Dotted, told)
    }

    /// The sentence that a finding stands under.
    fn home(&self, finding: &Finding) -> Option<&'a Sentence<'a>> {
        self.said.iter().find(|sentence| sentence.findings.iter().any(|f| f.code == finding.code))
    }

    /// The same where the finding is the first of those that share its photos.
    fn home_of_photos(&self, finding: &Finding) -> Option<&'a Sentence<'a>> {
        self.home(finding).filter(|home| home.findings.first().is_some_and(|first| first.code == finding.code))
    }

    /// What was seen, and why that leads to the outcome where it does not say so itself.
    fn seen_and_reason(&self, finding: &Finding) -> (String, String) {
        let kind = self.view.kind();
        let seen = statement::seen(finding, self.home(finding), kind);
        let is_answer = matches!(finding.judgement.reason, Reason::CouldNotTell | Reason::Refused);
        let reason = if is_answer && !seen.is_empty() { String::new() } else { reason::reason(finding, kind) };
        (seen, reason)
    }

    /// One finding.
    pub fn tell(&self, finding: &Finding) -> Block<'p> {
        let kind = self.view.kind();
        let (seen, reason) = self.seen_and_reason(finding);
        let plain = |text: &str| Block::text(Tone::Plain, text);
        let mut told = vec![Block::Subheading(words::heading(finding))];
        told.extend([&seen, &reason].into_iter().filter_map(|text| plain(text)));
        told.extend(found::of(finding, self.view).into_iter().map(Block::Picture));
        if self.plug_face_under == Some(finding.code) {
            told.extend(found::plug_face(&self.assessment.findings).map(Block::Picture));
        }
        told.extend(reason::numbers(finding, kind).iter().filter_map(|line| Block::text(Tone::Numbers, line)));
        let favour = favour::in_its_favour(finding, kind);
        told.extend([&favour, reason::settles(finding), reason::bearing(finding)].into_iter().filter_map(plain));
        told.extend(Block::text(Tone::Source, &words::held_against(&finding.against)));
        if let Some(home) = self.home_of_photos(finding) {
            told.extend(self.photos.of(home));
        }
        Block::Section(Bar::of(finding), told)
    }
}
