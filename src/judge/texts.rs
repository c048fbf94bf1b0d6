//! Takes the texts of examinations out of a stream, as many at a time as are there without waiting.

use std::io::{self, BufRead, BufReader, Read};
use std::mem;

use crate::record::LARGEST;

/// How much is asked of the stream at a time, in bytes: what a pipe holds.
const AT_A_TIME: usize = 64 * 1024;

/// What stands where one examination belongs.
pub struct Text {
    /// The number of its first line in the stream, from 1.
    pub line: usize,
    /// Its bytes; of what is larger than any examination no more than shows that it is.
    pub bytes: Vec<u8>,
}

/// A stream with one examination a line, or as the app writes them: over lines from a brace that stands alone to a brace that is not
/// indented.
pub struct Texts<R> {
    input: BufReader<R>,
    line: usize,
    /// An examination over lines, as far as it has come.
    open: Option<Text>,
    is_within_line: bool,
}

impl<R: Read> Texts<R> {
    /// All texts of this stream.
    pub fn of(input: R) -> Self {
        Self { input: BufReader::with_capacity(AT_A_TIME, input), line: 0, open: None, is_within_line: false }
    }

    /// The next text and those after it that are there already, so that nobody waits for an answer to what has come; nothing at
    /// the end.
    ///
    /// Of a line that is too long the start is handed out before the rest is passed over.
    ///
    /// # Errors
    ///
    /// When the stream cannot be read.
    pub fn batch(&mut self) -> io::Result<Vec<Text>> {
        let mut batch = Vec::new();
        while batch.is_empty() || self.has_line_at_hand() {
            let Some(line) = self.line()? else {
                batch.extend(self.open.take());
                break;
            };
            self.add(line, &mut batch);
        }
        Ok(batch)
    }

    fn has_line_at_hand(&self) -> bool {
        !self.is_within_line && self.input.buffer().contains(&b'\n')
    }

    /// The next line without its end, or as much of it as shows that it is too long.
    fn line(&mut self) -> io::Result<Option<Vec<u8>>> {
        if mem::take(&mut self.is_within_line) {
            self.input.skip_until(b'\n')?;
        }
        let mut line = Vec::new();
        if self.input.by_ref().take(one_too_many()).read_until(b'\n', &mut line)? == 0 {
            return Ok(None);
        }
        self.line += 1;
        self.is_within_line = line.pop_if(|last| *last == b'\n').is_none() && line.len() > LARGEST;
        Ok(Some(line))
    }

    fn add(&mut self, line: Vec<u8>, batch: &mut Vec<Text>) {
        match self.open.take() {
            Some(mut open) if !line.starts_with(b"{") => {
                if open.bytes.len() <= LARGEST {
                    open.bytes.push(b'\n');
                    open.bytes.extend_from_slice(&line);
                }
                match line.trim_ascii_end() {
                    b"}" => batch.push(open),
                    _ => self.open = Some(open),
                }
                return;
            }
            // The next one begins before this one has ended: only this one is lost.
            cut_short => batch.extend(cut_short),
        }
        let text = Text { line: self.line, bytes: line };
        match text.bytes.trim_ascii_end() {
            b"" => {}
            b"{" => self.open = Some(text),
            _ => batch.push(text),
        }
    }
}

/// One byte more than any examination has.
pub fn one_too_many() -> u64 {
    u64::try_from(LARGEST).unwrap_or(u64::MAX).saturating_add(1)
}
