//! ISO 13528:2015, statistical methods for comparisons between laboratories: the normalised error.
//!
//! Formula and line were read in secondary copies (a national metrology institute's handbook, a journal's article); ISO/IEC 17043 has the
//! same. The standards themselves were not open on the desk.

use super::{Clause, Provenance};

/// The normalised error of two results, `(x - X) / √(U² + U_ref²)` with expanded uncertainties (k = 2).
pub const NORMALISED_ERROR: Clause = Clause::new("ISO 13528", "2015", "E_n scores", Provenance::Read);

/// From more than this on, a difference is more than the doubt of both results explains. The line itself is none.
pub const LINE: f64 = 1.0;
