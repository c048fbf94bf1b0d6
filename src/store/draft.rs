//! What somebody began to type for one question of one sample, with the unit and the instrument that were tapped.

use crate::domain::quantity::Unit;
use crate::domain::question::{Question, Target};

/// What is half typed.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Draft {
    /// What was typed.
    pub text: String,
    /// The unit that was tapped, if one was.
    pub unit: Option<Unit>,
    /// The key of the instrument that was named; empty where none was.
    pub read_with: String,
}

impl Draft {
    /// The key under which it is kept: the sample's id comes first.
    pub fn key(id: &str, question: &Question, target: Target) -> String {
        let target = match target {
            Target::Sample => "sample".to_owned(),
            Target::Socket(n) => format!("socket-{n}"),
            Target::Core(core) => core.code().to_owned(),
            Target::Claim(place) => place.code().to_owned(),
        };
        format!("{id} {} {target}", question.id)
    }

    /// The id of the sample that a key speaks of.
    pub fn sample_of(key: &str) -> &str {
        key.split(' ').next().unwrap_or(key)
    }

    /// The form in which it is kept: unit and instrument in a line each, empty where there is none, and then the text as it is.
    pub fn to_text(&self) -> String {
        let unit = self.unit.map_or("", Unit::symbol);
        let read_with = self.read_with.replace('\n', " ");
        format!("{unit}\n{read_with}\n{}", self.text)
    }

    /// Reads that form; what another edition wrote there and this one does not know is left out.
    pub fn from_text(kept: &str) -> Self {
        let mut lines = kept.splitn(3, '\n');
        let (unit, read_with, text) = (lines.next(), lines.next(), lines.next());
        Self {
            text: text.unwrap_or_default().to_owned(),
            unit: Unit::ALL.into_iter().find(|known| Some(known.symbol()) == unit),
            read_with: read_with.unwrap_or_default().to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::domain::facts;

    #[test]
    fn comes_back_as_it_was() {
        for unit in Unit::ALL.map(Some).into_iter().chain([None]) {
            for text in ["", "0,3", "two\nlines\n", "\u{3a9}"] {
                let draft = Draft { text: text.to_owned(), unit, read_with: "rule".to_owned() };
                assert_eq!(Draft::from_text(&draft.to_text()), draft);
            }
        }
    }

    #[test]
    fn of_another_edition_keeps_its_text() {
        let draft = Draft::from_text("furlong\n\n0,3");
        assert_eq!(draft, Draft { text: "0,3".to_owned(), ..Draft::default() });
        assert_eq!(Draft::from_text("rubbish"), Draft::default());
    }

    #[test]
    fn belongs_to_one_question_of_one_sample() {
        let key = |id, question, n| Draft::key(id, question, Target::Socket(n));
        let key_here = key("one", facts::FLEX_LENGTH, 2);
        assert_eq!(Draft::sample_of(&key_here), "one");
        for other in [
            key("another", facts::FLEX_LENGTH, 2),
            key("one", facts::FLEX_DIAMETER, 2),
            key("one", facts::FLEX_LENGTH, 3),
            Draft::key("one", facts::FLEX_LENGTH, Target::Sample),
        ] {
            assert_ne!(other, key_here);
        }
    }
}
