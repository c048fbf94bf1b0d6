//! HD 308 S2:2001, colours of cores.
//!
//! Read in secondary copies; the document itself was not open on the desk.

use super::{Clause, Provenance};

/// Three-core flex: green-and-yellow, blue, brown; two-core flex: blue, brown.
pub const COLOURS: Clause = Clause::new("HD 308 S2", "2001", "flexible cords", Provenance::Read);
