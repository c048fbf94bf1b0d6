//! What the command says of files that may be sealed: a line of JSON each, whatever is in them.

use std::ffi::OsString;
use std::fs::File;
use std::io::Read;
use std::path::Path;

use super::texts::one_too_many;
use crate::seal;

/// What there is to say about some files.
pub struct Checks {
    /// Whole lines for standard output.
    pub lines: String,
    /// Whole lines for standard error: files that cannot be opened.
    pub complaints: String,
    /// Whether each of them is as it was sealed, and its chain of custody unbroken.
    pub are_sound: bool,
}

impl Checks {
    /// Looks at one file.
    pub fn of(file: &OsString) -> Self {
        let path = Path::new(file);
        let name = path.display().to_string();
        let mut bytes = Vec::new();
        match File::open(path).and_then(|file| file.take(one_too_many()).read_to_end(&mut bytes)) {
            Ok(_) => {
                let checked = seal::check(&bytes);
                let lines = seal::checked_line(&checked, Some(&name)) + "\n";
                Self { lines, complaints: String::new(), are_sound: checked.is_sound() }
            }
            Err(error) => Self { lines: String::new(), complaints: format!("{name}: {error}\n"), are_sound: false },
        }
    }
}
