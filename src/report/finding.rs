//! One finding as the receiver reads it: what is wrong, what was seen, why it matters, the numbers with their picture, the retry in the
//! sample's favour, what would settle it, and its sources.

use super::markup::Markup;
use super::photos::Photos;
use crate::domain::assess::Assessment;
use crate::domain::finding::{Conformity, Finding, Reason};
use crate::domain::view::View;
use crate::drawing::found::{self, Picture};
use crate::words::statement::{Bar, Sentence};
use crate::words::{favour, reason, report as words, statement};

/// All that findings are told with.
pub struct Told<'a> {
    view: &'a View<'a>,
    said: &'a [Sentence<'a>],
    photos: &'a Photos<'a>,
    assessment: &'a Assessment,
    /// The finding under which the face of the plug is drawn: the weightiest that it shows.
    plug_face_under: Option<&'static str>,
}

impl<'a> Told<'a> {
    /// From an assessment and its statement.
    pub fn new(
        view: &'a View<'a>,
        said: &'a [Sentence<'a>],
        photos: &'a Photos<'a>,
        assessment: &'a Assessment,
    ) -> Self {
        let is_told = |f: &&Finding| matches!(f.outcome(), Conformity::Nonconforming | Conformity::Inconclusive);
        let of_plug = assessment.findings.iter().filter(is_told).find(|finding| found::is_on_plug_face(finding));
        Self { view, said, photos, assessment, plug_face_under: of_plug.map(|finding| finding.code) }
    }

    /// Whether the face of the plug is drawn under one of the findings that are told.
    pub const fn has_shown_plug_face(&self) -> bool {
        self.plug_face_under.is_some()
    }

    /// Doubts; those that rest on the same answer for the same reason are told together, the weightiest group first.
    pub fn tell_doubts(&self, page: &mut Markup, doubts: Vec<&Finding>) {
        let mut rest = doubts;
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
            match same.as_slice() {
                [only] => self.tell(page, only),
                several => self.tell_together(page, several, &grounds),
            }
        }
    }

    fn tell_together(&self, page: &mut Markup, findings: &[&Finding], (seen, reason): &(String, String)) {
        page.open("section", &format!("said bar-{}", Bar::Dotted.code()))
            .element("h3", "", seen)
            .element("p", "", reason)
            .element("p", "", words::SO_NOT_TOLD)
            .open("ul", "");
        let mut against = Vec::new();
        for finding in findings {
            page.element("li", "", &words::doubt(finding));
            against.extend(
                finding.against.iter().filter(|clause| !against.contains(*clause)).copied().collect::<Vec<_>>(),
            );
        }
        page.close("ul").element("p", "source", &words::held_against(&against));
        for home in findings.iter().filter_map(|finding| self.home_of_photos(finding)) {
            self.photos.of(page, home);
        }
        page.close("section");
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
    pub fn tell(&self, page: &mut Markup, finding: &Finding) {
        let kind = self.view.kind();
        let (seen, reason) = self.seen_and_reason(finding);
        page.open("section", &format!("said bar-{}", Bar::of(finding).code()))
            .element("h3", "", &words::heading(finding))
            .element("p", "", &seen)
            .element("p", "", &reason);
        figures(page, found::of(finding, self.view).iter());
        if self.plug_face_under == Some(finding.code) {
            figures(page, &found::plug_face(&self.assessment.findings));
        }
        for line in reason::numbers(finding, kind) {
            page.element("p", "numbers", &line);
        }
        page.element("p", "", &favour::in_its_favour(finding, kind))
            .element("p", "", reason::settles(finding))
            .element("p", "", reason::bearing(finding))
            .element("p", "source", &words::held_against(&finding.against));
        if let Some(home) = self.home_of_photos(finding) {
            self.photos.of(page, home);
        }
        page.close("section");
    }
}

/// Pictures, each with its notes.
pub fn figures<'p>(page: &mut Markup, pictures: impl IntoIterator<Item = &'p Picture>) {
    for picture in pictures {
        page.open("figure", "").raw(&picture.svg);
        if !picture.notes.is_empty() {
            page.open("figcaption", "small");
            for note in &picture.notes {
                page.element("div", "", note);
            }
            page.close("figcaption");
        }
        page.close("figure");
    }
}
