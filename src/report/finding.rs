//! One finding as the receiver reads it: what is wrong, what was seen, why it matters, the numbers with their picture, the retry in the
//! sample's favour, what would settle it, and its sources.

use super::markup::Markup;
use super::photos::Photos;
use crate::domain::assess::Assessment;
use crate::domain::finding::{Conformity, Finding, Reason};
use crate::domain::view::View;
use crate::drawing::found::{self, Picture};
use crate::words::statement::{Bar, Sentence};
use crate::words::{reason, report as words, statement};

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

    /// One finding.
    pub fn tell(&self, page: &mut Markup, finding: &Finding) {
        let kind = self.view.kind();
        let home = self.said.iter().find(|sentence| sentence.findings.iter().any(|f| f.code == finding.code));
        let seen = statement::seen(finding, home, kind);
        // What the sentence of such an answer says is the reason already.
        let is_answer = matches!(finding.judgement.reason, Reason::CouldNotTell | Reason::Refused);
        let reason = if is_answer && !seen.is_empty() { String::new() } else { reason::reason(finding, kind) };
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
        page.element("p", "", &reason::in_its_favour(finding))
            .element("p", "", reason::settles(finding))
            .element("p", "", reason::bearing(finding))
            .element("p", "source", &words::held_against(&finding.against));
        // Findings of one sentence share its photos, which stand under the first.
        if let Some(home) = home.filter(|home| home.findings.first().is_some_and(|first| first.code == finding.code)) {
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
