//! Rows of a table as comma-separated values (RFC 4180): lines end in CR LF, a cell is quoted where it must be.
//!
//! A spreadsheet takes a text that begins with certain characters for a formula and works it out, whoever wrote it. Such a text gets an
//! apostrophe before it; a number never does.

use core::fmt::Write;

/// So many digits of a number are written: more than any reading has, and fewer than binary numbers are off by.
const DIGITS: usize = 9;

/// What stands in one place of a table.
#[derive(Debug, Clone, PartialEq)]
pub enum Cell {
    /// A text, whatever somebody typed.
    Text(String),
    /// A number, with a decimal point.
    Number(f64),
    /// Nothing.
    Empty,
}

impl Cell {
    /// A text.
    pub fn text(text: impl Into<String>) -> Self {
        Self::Text(text.into())
    }

    /// A number, or nothing.
    pub fn number(number: Option<f64>) -> Self {
        number.filter(|number| number.is_finite()).map_or(Self::Empty, Self::Number)
    }
}

/// One row with its end.
pub fn row(cells: impl IntoIterator<Item = Cell>) -> String {
    let mut row = String::new();
    for (at, cell) in cells.into_iter().enumerate() {
        if at > 0 {
            row.push(',');
        }
        match cell {
            Cell::Text(text) => push_text(&mut row, &text),
            Cell::Number(number) => {
                // The decimal digits of a number are the same on every machine; writing to a string cannot fail.
                let cut: f64 = format!("{number:.*e}", DIGITS - 1).parse().unwrap_or(number);
                let _ = write!(row, "{}", cut + 0.0);
            }
            Cell::Empty => {}
        }
    }
    row.push_str("\r\n");
    row
}

fn push_text(row: &mut String, text: &str) {
    let looks_like_formula = text.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']);
    let text = if looks_like_formula { format!("'{text}") } else { text.to_owned() };
    if text.contains([',', '"', '\r', '\n', ';']) || text.starts_with(' ') || text.ends_with(' ') {
        row.push('"');
        row.push_str(&text.replace('"', "\"\""));
        row.push('"');
    } else {
        row.push_str(&text);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn becomes(text: &str, cell: &str) {
        assert_eq!(row([Cell::text(text)]), format!("{cell}\r\n"));
    }

    #[test]
    fn a_text_is_quoted_where_it_must_be() {
        becomes("plain", "plain");
        becomes("", "");
        becomes("a,b", "\"a,b\"");
        becomes("he said \"13 A\"", "\"he said \"\"13 A\"\"\"");
        becomes("two\r\nlines", "\"two\r\nlines\"");
        becomes("<b>& 'it'", "<b>& 'it'");
        becomes(" ", "\" \"");
        becomes("\u{202e}dlog\u{200f}", "\u{202e}dlog\u{200f}");
    }

    #[test]
    fn a_text_is_never_a_formula() {
        becomes("=cmd|' /C calc'!A0", "'=cmd|' /C calc'!A0");
        becomes("+44", "'+44");
        becomes("-1", "'-1");
        becomes("@SUM(A1)", "'@SUM(A1)");
        becomes("\t=1", "'\t=1");
        becomes("\r=1", "\"'\r=1\"");
        becomes("=1,2", "\"'=1,2\"");
        becomes("\u{ff1d}1", "'\u{ff1d}1");
        becomes("a=1", "a=1");
    }

    #[test]
    fn a_number_stays_a_number_without_the_rounding_of_binary_numbers() {
        let number = |number| row([Cell::number(Some(number))]);
        assert_eq!(number(-5.0), "-5\r\n");
        assert_eq!(number(0.1 + 0.2), "0.3\r\n");
        assert_eq!(number(31.199_999_999_999_996), "31.2\r\n");
        assert_eq!(number(999e6), "999000000\r\n");
        assert_eq!(number(-0.0), "0\r\n");
        assert_eq!(row([Cell::number(Some(f64::INFINITY)), Cell::number(None), Cell::text("x")]), ",,x\r\n");
    }
}
