//! What each place claims, as a table of words.

use crate::domain::examination::Examination;
use crate::domain::marking::Claimed;
use crate::domain::quantity::QuantityKind;
use crate::domain::question::ClaimPlace;
use crate::domain::view::View;

use super::{number, which};

/// A table: quantities down, places across.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ClaimTable {
    /// The places that state anything.
    pub columns: Vec<String>,
    /// The quantities that any place states.
    pub rows: Vec<ClaimRow>,
}

/// One quantity, and what each place states of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ClaimRow {
    /// The quantity.
    pub name: String,
    /// A cell for each place; empty where it states nothing.
    pub cells: Vec<String>,
    /// Whether two places cannot both be true.
    pub is_contradicted: bool,
}

/// The claims of an examination.
pub fn table(examination: &Examination) -> ClaimTable {
    let view = View::new(examination);
    let claims = view.claims();
    let kinds: Vec<QuantityKind> = claims.quantities().collect();
    let speaks = |place: &ClaimPlace| kinds.iter().any(|kind| claims.stated(*kind).iter().any(|c| c.place == *place));
    let places: Vec<ClaimPlace> = ClaimPlace::ALL.into_iter().filter(speaks).collect();
    let disagreements = claims.disagreements();
    let rows = kinds.iter().map(|&kind| {
        let stated = claims.stated(kind);
        let cell = |place: &ClaimPlace| stated.iter().find(|c| c.place == *place).map_or_else(String::new, said);
        ClaimRow {
            name: quantity(kind).to_owned(),
            cells: places.iter().map(cell).collect(),
            is_contradicted: disagreements.iter().any(|d| d.kind == kind),
        }
    });
    let rows = rows.collect();
    let columns =
        places.iter().map(|place| which::claim_in_short(*place, examination.sample.kind).to_owned()).collect();
    ClaimTable { columns, rows }
}

fn said(claimed: &Claimed) -> String {
    let (from, to) = (number::amount(claimed.from), number::amount(claimed.to));
    if from == to { from } else { format!("{from} to {to}") }
}

/// The name of a quantity on a rating plate.
pub const fn quantity(kind: QuantityKind) -> &'static str {
    match kind {
        QuantityKind::Area => "size of a core",
        QuantityKind::Current => "current",
        QuantityKind::Length => "length",
        QuantityKind::Mass => "mass",
        QuantityKind::Potential => "voltage",
        QuantityKind::Power => "power",
        QuantityKind::Resistance => "resistance",
        QuantityKind::ResistancePerLength => "resistance per length",
        QuantityKind::Temperature => "temperature",
    }
}
