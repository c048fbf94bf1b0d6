//! What the command answers: a line of JSON for each examination, a complaint for what is none.

use std::fs::File;
use std::path::Path;

use super::archive::{self, Archive};
use super::texts::Text;
use crate::record::{self, LARGEST, RecordFault};

/// What standard output holds for an examination that cannot be read.
#[derive(Clone, Copy)]
pub enum Unread {
    /// Nothing.
    Nothing,
    /// A line that says so, so that each examination has its line.
    Line,
}

/// What there is to say on one or several examinations.
pub struct Answers {
    unread: Unread,
    lines: String,
    complaints: String,
}

impl Answers {
    /// Nothing to say yet.
    pub fn new(unread: Unread) -> Self {
        Self { unread, lines: String::new(), complaints: String::new() }
    }

    /// Judges a file.
    pub fn add_file(&mut self, path: &Path) {
        let name = path.display().to_string();
        let mut bytes = Vec::new();
        match File::open(path).and_then(|file| archive::open(file, &mut bytes)) {
            Ok(None) => match verdict(bytes) {
                Ok(line) => self.say(&line),
                Err(fault) => self.complain(&name, &format!("{fault}. {}", fault.hint())),
            },
            Ok(Some(archive)) => self.add_archive(&name, archive),
            Err(error) => self.complain(&name, &error.to_string()),
        }
    }

    /// Judges every examination of an archive, in the order of its list.
    fn add_archive(&mut self, name: &str, mut archive: Archive) {
        let entries = match archive.examinations() {
            Ok(entries) => entries,
            Err(error) => return self.complain(name, &error.to_string()),
        };
        for entry in entries {
            match archive.examination(&entry) {
                Ok(record) => self.say(&record::judged_line(&record)),
                Err(error) => self.complain(&format!("{name}: {}", entry.name), &error.to_string()),
            }
        }
    }

    /// Judges what came in a stream; a place in it is named by the line of the stream.
    pub fn add_line(&mut self, text: Text) {
        match verdict(text.bytes) {
            Ok(line) => self.say(&line),
            Err(mut fault) => {
                if let RecordFault::Damaged { line, .. } | RecordFault::Form { line, .. } = &mut fault {
                    *line += text.line - 1;
                }
                self.complain(&format!("line {}", text.line), &fault.to_string());
            }
        }
    }

    /// What goes to standard output: whole lines.
    pub fn lines(&self) -> &str {
        &self.lines
    }

    /// What goes to standard error: whole lines, and none where everything could be read.
    pub fn complaints(&self) -> &str {
        &self.complaints
    }

    fn say(&mut self, line: &str) {
        self.lines += line;
        self.lines.push('\n');
    }

    fn complain(&mut self, name: &str, why: &str) {
        self.complaints.extend([name, ": ", why, "\n"]);
        match self.unread {
            Unread::Nothing => {}
            Unread::Line => self.say(&serde_json::json!({ "unread": name, "why": why }).to_string()),
        }
    }
}

/// The line of JSON about an examination.
fn verdict(bytes: Vec<u8>) -> Result<String, RecordFault> {
    if bytes.len() > LARGEST {
        return Err(RecordFault::TooLarge);
    }
    let text = String::from_utf8(bytes).ok().ok_or(RecordFault::Foreign)?;
    record::from_file(&text).map(|carried| record::judged_line(&carried.record))
}
