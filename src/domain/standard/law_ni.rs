//! The law of Northern Ireland where it differs from that of Great Britain: rules of the European Union.

use super::{Clause, Provenance};
use crate::domain::sample::Market::NorthernIreland;

/// Electrical equipment bears CE; UKCA alone does not do.
pub const EQUIPMENT_MARK: Clause =
    Clause::new("Directive 2014/35/EU", "", "", Provenance::MemoryHigh).only_in(NorthernIreland);

/// A plug or socket for homes is outside, and does not bear CE.
pub const EQUIPMENT_SCOPE: Clause =
    Clause::new("Directive 2014/35/EU", "", "Annex II", Provenance::MemoryHigh).only_in(NorthernIreland);

/// Maker and importer with a postal address, type or batch, and instructions.
pub const EQUIPMENT_IDENTITY: Clause =
    Clause::new("Directive 2014/35/EU", "", "articles 6(5), 6(6) and 8(3)", Provenance::MemoryHigh)
        .only_in(NorthernIreland);

/// Any consumer goods: maker with postal and electronic address, type or batch, and somebody responsible in the market.
pub const GENERAL_SAFETY: Clause =
    Clause::new("Regulation (EU) 2023/988", "", "articles 9 and 16", Provenance::MemoryHigh).only_in(NorthernIreland);
