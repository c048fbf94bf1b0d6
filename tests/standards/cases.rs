//! The cases as they are written: one file for each clause, one limit for each cell, three kinds of case for each limit.

use std::fs;
use std::path::{Path, PathBuf};

use plugwary::domain::standard::registry::{self, Cell, Published};
use plugwary::domain::standard::{Clause, Provenance};
use plugwary::words::limits as words;
use serde::Deserialize;

/// One clause of one publication.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sheet {
    pub publication: String,
    pub edition: String,
    pub clause: String,
    /// How the values of the clause reached us.
    pub provenance: String,
    /// What the source says, in figures, and where copies of it differ.
    pub source: String,
    pub limit: Vec<Limit>,
}

/// One limit, or one cell of a table.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Limit {
    pub code: String,
    /// Which row of the table; left out where there is only one.
    #[serde(default)]
    pub given: String,
    /// The limit as the source has it: "at least 9.5 mm".
    pub allows: String,
    /// How this cell reached us, where that differs from the rest of the clause.
    pub provenance: Option<String>,
    /// The check that uses it; left out where no examination can vary what is limited.
    pub check: Option<String>,
    /// What the finding shows in its place, where it is made of this limit and of the sample: "at most 0.1585 Ω".
    pub shows: Option<String>,
    /// Why the finding does not show it.
    pub unseen: Option<String>,
    #[serde(default = "extension_lead")]
    pub kind: String,
    #[serde(default = "meters")]
    pub equipment: String,
    /// What else is known of the sample, as it stands in a record.
    #[serde(default)]
    pub answers: Vec<serde_json::Value>,
    /// The answers that the cases vary: {0}, {1} stand for the parts of a value between bars.
    #[serde(default)]
    pub varies: Vec<serde_json::Value>,
    pub inside: Vec<Case>,
    pub at: Vec<Case>,
    pub outside: Vec<Case>,
}

/// A value and the outcome that the source asks for.
#[derive(Debug, Deserialize)]
pub struct Case(pub String, pub String);

/// Where a value stands to its limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stands {
    Inside,
    At,
    Outside,
}

impl Limit {
    /// Every case, with where it stands.
    pub fn cases(&self) -> impl Iterator<Item = (Stands, &Case)> {
        let inside = self.inside.iter().map(|case| (Stands::Inside, case));
        let at = self.at.iter().map(|case| (Stands::At, case));
        let outside = self.outside.iter().map(|case| (Stands::Outside, case));
        inside.chain(at).chain(outside)
    }

    /// What it is in a message.
    pub fn name(&self) -> String {
        format!("{} {}", self.code, self.given)
    }

    /// The limit of the registry, and its cell.
    #[track_caller]
    pub fn published(&self) -> (&'static Published, Cell) {
        let published = registry::by_code(&self.code).unwrap_or_else(|| panic!("{}: no such limit", self.code));
        let cell = (published.cells)().into_iter().find(|cell| plain(&words::given(cell.given)) == self.given);
        (published, cell.unwrap_or_else(|| panic!("{}: no such cell", self.name())))
    }
}

fn extension_lead() -> String {
    "extension-lead".to_owned()
}

fn meters() -> String {
    "meters".to_owned()
}

/// Words of the app with plain spaces, as one types them.
pub fn plain(words: &str) -> String {
    words.replace('\u{A0}', " ")
}

/// What a provenance is called in the cases.
pub fn tag(provenance: Provenance) -> &'static str {
    match provenance {
        Provenance::Read => "read",
        Provenance::ReadNominal => "read-nominal",
        Provenance::Derived => "derived",
        Provenance::MemoryHigh => "memory-high",
        Provenance::MemoryMedium => "memory-medium",
        Provenance::MemoryLow => "memory-low",
        Provenance::CommonPractice => "usual-practice",
    }
}

/// Whether a sheet is about a clause.
pub fn is_about(sheet: &Sheet, clause: &Clause) -> bool {
    (sheet.publication.as_str(), sheet.edition.as_str(), sheet.clause.as_str(), sheet.provenance.as_str())
        == (clause.publication, clause.edition, clause.clause, tag(clause.provenance))
}

/// Every sheet with its path, in the order of the paths.
pub fn sheets() -> Vec<(PathBuf, Sheet)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/standards/cases");
    let mut paths: Vec<PathBuf> = entries(&folder).iter().flat_map(|publication| entries(publication)).collect();
    paths.sort();
    let read = |path: PathBuf| {
        let text = fs::read_to_string(&path).expect("a sheet can be read");
        let sheet = toml::from_str(&text).unwrap_or_else(|trouble| panic!("{}: {trouble}", path.display()));
        (path, sheet)
    };
    paths.into_iter().map(read).collect()
}

fn entries(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).expect("the folder can be read");
    entries.map(|entry| entry.expect("an entry can be read").path()).collect()
}
