//! Citations in words: publication, edition, clause, and how sure we are of it.

use crate::domain::standard::{Clause, Provenance};

/// "BS 1363-1:1995, Table 2", with a word on the provenance where the value was not read.
pub fn citation(clause: &Clause) -> String {
    if clause.provenance == Provenance::CommonPractice {
        return "usual practice, no published source".to_owned();
    }
    let mut said = clause.publication.to_owned();
    if !clause.edition.is_empty() {
        // A standard's edition follows a colon, a book's a comma, a law's year its name.
        said.push_str(if clause.publication.contains("Regulation") || clause.publication.contains(" Act") {
            " "
        } else if clause.edition.contains("edition") {
            ", "
        } else {
            ":"
        });
        said.push_str(clause.edition);
    }
    if !clause.clause.is_empty() {
        said.push_str(", ");
        said.push_str(clause.clause);
    }
    let doubt = provenance(clause.provenance);
    if !doubt.is_empty() {
        said.push_str(" (");
        said.push_str(doubt);
        said.push(')');
    }
    said
}

/// What the provenance of a value amounts to; empty where it was read.
pub const fn provenance(provenance: Provenance) -> &'static str {
    match provenance {
        Provenance::Read => "",
        Provenance::ReadNominal => "nominal read, tolerance recalled, not checked",
        Provenance::Derived => "worked out from published values",
        Provenance::MemoryHigh | Provenance::MemoryMedium => "recalled, not checked",
        Provenance::MemoryLow => "recalled, not checked; indicative only, ask a lab",
        Provenance::CommonPractice => "usual practice, no published source",
    }
}
