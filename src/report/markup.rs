//! The little HTML that the file is made of. Text can only get in escaped, so that markup in a text stays text.

use core::fmt::Write;

/// HTML in the making.
#[derive(Debug, Default)]
pub struct Markup(String);

impl Markup {
    /// HTML that comes from the program itself, as it is.
    pub fn raw(&mut self, html: &str) -> &mut Self {
        self.0.push_str(html);
        self
    }

    /// Any text, escaped for content and for quoted attributes.
    pub fn text(&mut self, text: &str) -> &mut Self {
        for c in text.chars() {
            match c {
                '&' => self.0.push_str("&amp;"),
                '<' => self.0.push_str("&lt;"),
                '>' => self.0.push_str("&gt;"),
                '"' => self.0.push_str("&quot;"),
                '\'' => self.0.push_str("&#39;"),
                // Marks that turn the reading direction could make a sentence say something else; shown as what they are.
                '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}' | '\u{200E}' | '\u{200F}' | '\u{061C}' => {
                    let _ = write!(self.0, "[U+{:04X}]", u32::from(c));
                }
                c if c.is_control() && c != '\n' && c != '\t' => self.0.push('\u{FFFD}'),
                c => self.0.push(c),
            }
        }
        self
    }

    /// An element with text in it; nothing at all where the text is empty.
    pub fn element(&mut self, tag: &str, class: &str, text: &str) -> &mut Self {
        if text.is_empty() {
            return self;
        }
        self.open(tag, class).text(text).close(tag)
    }

    /// Opens an element.
    pub fn open(&mut self, tag: &str, class: &str) -> &mut Self {
        self.raw("<").raw(tag);
        if !class.is_empty() {
            self.raw(" class=\"").text(class).raw("\"");
        }
        self.raw(">")
    }

    /// Closes an element.
    pub fn close(&mut self, tag: &str) -> &mut Self {
        self.raw("</").raw(tag).raw(">\n")
    }

    /// The finished HTML.
    pub fn into_string(self) -> String {
        self.0
    }
}
