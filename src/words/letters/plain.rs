//! Text that somebody else brought in, made harmless in plain text: one line, and nothing hidden in it.
//!
//! Marks that turn the direction of writing, characters without width and control characters are shown by number, `[U+202E]`, as on paper:
//! taken away, they would make a print look honest that was not. Markup and formulas mean nothing in plain text and stay as they are.

/// One line with nothing hidden in it.
///
/// ```
/// use plugwary::words::letters::plain::line;
/// assert_eq!(line("safe\u{202e}gnp\nDear Sir"), "safe[U+202E]gnp Dear Sir");
/// ```
pub fn line(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for c in text.trim().chars() {
        match c {
            '\n' | '\r' | '\t' | '\u{2028}' | '\u{2029}' => plain.push(' '),
            hidden if is_hidden(hidden) => {
                plain.extend(["[U+", &format!("{:04X}", u32::from(hidden)), "]"]);
            }
            shown => plain.push(shown),
        }
    }
    plain
}

fn is_hidden(c: char) -> bool {
    c.is_control()
        || matches!(c,
            '\u{ad}' | '\u{61c}' | '\u{180e}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}'
            | '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{fff9}'..='\u{fffb}' | '\u{e0000}'..='\u{e007f}')
}
