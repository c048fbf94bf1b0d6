//! Marks on products: how they are drawn and what they say.

use super::{Clause, Provenance};
use crate::domain::decision::Limit;
use crate::domain::quantity::{Length, millimetres};

/// CE is drawn in its proportions and at least 5 mm high; UKCA likewise (memory-high).
pub const CE_SIZE: Clause = Clause::new("Regulation (EC) 765/2008", "2008", "Annex II", Provenance::Read);

/// The height of CE and UKCA.
pub fn mark_height() -> Limit<Length> {
    Limit::AtLeast(millimetres(5.0))
}

/// The double square says that no earth is needed.
pub const DOUBLE_SQUARE: Clause = Clause::new("IEC 60417", "", "5172", Provenance::MemoryHigh);

/// The crossed-out wheeled bin says that the goods are collected apart.
pub const WHEELED_BIN: Clause = Clause::new("EN 50419", "", "", Provenance::MemoryMedium);

/// A certified management system certifies no product and is never named on one.
pub const MANAGEMENT_SYSTEM: Clause = Clause::new("ISO 9001", "2015", "use of the name", Provenance::Read);

/// A rating plate states voltage and current.
pub const RATING_PLATE: Clause = Clause::new("IEC 60884-1", "", "8.1", Provenance::MemoryHigh);

/// A current printed beside a voltage bounds the power printed with them.
pub const POWER_FROM_RATING: Clause = Clause::common_practice();
