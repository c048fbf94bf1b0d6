//! EN 50678:2020, tests after repair: resistance of the protective conductor. Rules of the Continent, beside those of the IET Code.
//!
//! Read in secondary copies; the standard itself was not open on the desk. Samples for the United Kingdom are held to the IET Code of
//! Practice, whose limit is the tighter one for every lead up to 5 m.

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricalResistance, Length, metres, ohms};
use uom::si::ratio::ratio;

/// Protective conductor of cords up to 1.5 mm².
pub const PROTECTIVE_CONDUCTOR: Clause =
    Clause::new("EN 50678", "2020", "protective conductor resistance", Provenance::Read);

/// What [`PROTECTIVE_CONDUCTOR`] allows a cord: 0.3 Ω up to 5 m, 0.1 Ω more for each further 7.5 m or part of them, and 1 Ω at the most.
pub fn protective_conductor(cord: Length) -> ElectricalResistance {
    let further = ((cord - metres(5.0)) / metres(7.5)).get::<ratio>();
    ohms((0.3 + 0.1 * libm::ceil(further.max(0.0))).min(1.0))
}
