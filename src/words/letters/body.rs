//! The text of a letter, paragraph by paragraph. Whatever goes in becomes one plain line.

use super::plain;

/// A text that grows.
#[derive(Debug, Default)]
pub struct Body(String);

impl Body {
    /// A paragraph of its own; none where there is nothing to say.
    pub fn paragraph(&mut self, text: &str) -> &mut Self {
        self.gap();
        self.line(text)
    }

    /// A line that follows on the one before; none where there is nothing to say.
    pub fn line(&mut self, text: &str) -> &mut Self {
        let text = plain::line(text);
        if !text.is_empty() {
            self.0.extend([&text, "\n"]);
        }
        self
    }

    /// A heading.
    pub fn heading(&mut self, text: &str) -> &mut Self {
        self.gap();
        self.line(&text.to_uppercase())
    }

    /// Entries of a list, a line each.
    pub fn list<T: AsRef<str>>(&mut self, entries: impl IntoIterator<Item = T>) -> &mut Self {
        for entry in entries {
            self.line(&format!("- {}", plain::line(entry.as_ref())));
        }
        self
    }

    /// Names with their values, a line each.
    pub fn table(&mut self, rows: &[(&'static str, String)]) -> &mut Self {
        for (name, value) in rows {
            self.line(&format!("{name}: {}", plain::line(value)));
        }
        self
    }

    /// Whether these words stand in it so far.
    pub fn has(&self, words: &str) -> bool {
        self.0.contains(words)
    }

    /// The whole text.
    pub fn finish(self) -> String {
        self.0
    }

    fn gap(&mut self) {
        if !self.0.is_empty() && !self.0.ends_with("\n\n") {
            self.0.push('\n');
        }
    }
}
