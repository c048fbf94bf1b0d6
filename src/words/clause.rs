//! Citations in words: publication, edition, clause, and how sure we are of it.

use crate::domain::standard::{Clause, Provenance};

/// "BS 1363-1:1995, Table 2", with a word on the provenance where the value was not read.
pub fn citation(clause: &Clause) -> String {
    if clause.provenance == Provenance::CommonPractice {
        return COMMON_PRACTICE.to_owned();
    }
    let said = place(clause);
    match provenance(clause.provenance) {
        "" => said,
        doubt => format!("{said} ({doubt})"),
    }
}

/// "BS 1363-1:1995, Table 2".
fn place(clause: &Clause) -> String {
    let mut said = clause.publication.to_owned();
    if !clause.edition.is_empty() {
        said.push_str(before_edition(clause));
        said.push_str(clause.edition);
    }
    if !clause.clause.is_empty() {
        let is_bare_number = clause.clause.starts_with(|c: char| c.is_ascii_digit());
        said.push_str(if is_bare_number { ", clause " } else { ", " });
        said.push_str(clause.clause);
    }
    said
}

/// A standard's edition follows a colon, a law's year its name, anything longer than a year a comma.
fn before_edition(clause: &Clause) -> &'static str {
    let is_law = clause.publication.contains("Regulation") || clause.publication.contains(" Act");
    let is_year = clause.edition.chars().all(|c| c.is_ascii_digit() || matches!(c, '+' | '/' | 'A'));
    match (is_law, is_year) {
        (true, _) => " ",
        (false, true) => ":",
        (false, false) => ", ",
    }
}

/// Said in the place of a source.
const COMMON_PRACTICE: &str = "usual practice, no published source";

/// What the provenance of a rule or number amounts to, as short as it may be; empty where it was read. The file says it at length once.
pub const fn provenance(provenance: Provenance) -> &'static str {
    match provenance {
        Provenance::Read => "",
        Provenance::ReadNominal => "size read, tolerance quoted from memory",
        Provenance::Derived => "worked out from published values",
        Provenance::MemoryHigh | Provenance::MemoryMedium => "quoted from memory",
        Provenance::MemoryLow => "quoted from memory, a rough guide only: ask a laboratory",
        Provenance::CommonPractice => COMMON_PRACTICE,
    }
}
