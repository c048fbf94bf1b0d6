//! The law of Great Britain on plugs, leads and electrical equipment.
//!
//! What is not marked as law of Great Britain only holds in all of the United Kingdom.
//!
//! Statutory instruments and official notes, read in part; no wording is taken over.

use super::{Clause, Provenance};
use crate::domain::sample::Market::GreatBritain;

/// Plugs and fuse links are to their British Standards and plugs are approved by a body; line and neutral are sleeved; the fuse is to
/// BS 1362; a foreign plug needs a conversion plug to BS 1363-5.
pub const PLUGS: Clause =
    Clause::new("Plugs and Sockets etc. (Safety) Regulations", "1994 (SI 1994/1768)", "", Provenance::Read);

/// Electrical equipment bears CE or UKCA, on itself or where that cannot be on package or papers. A plain lead or plug is outside.
pub const EQUIPMENT_MARK: Clause =
    Clause::new("Electrical Equipment (Safety) Regulations", "2016 (SI 2016/1101)", "regulation 6", Provenance::Read)
        .only_in(GreatBritain);

/// A domestic plug, socket or plain lead is outside, and bears neither mark.
pub const EQUIPMENT_SCOPE: Clause =
    Clause::new("Electrical Equipment (Safety) Regulations", "2016 (SI 2016/1101)", "scope", Provenance::Read)
        .only_in(GreatBritain);

/// Maker and importer with a postal address, type or batch, and instructions are on the equipment, its package or its papers.
pub const EQUIPMENT_IDENTITY: Clause = Clause::new(
    "Electrical Equipment (Safety) Regulations",
    "2016 (SI 2016/1101)",
    "duties of maker and importer",
    Provenance::MemoryHigh,
)
.only_in(GreatBritain);

/// What is sold is safe and its producer can be found; goods that were recalled are not sold.
pub const GENERAL_SAFETY: Clause =
    Clause::new("General Product Safety Regulations", "2005 (SI 2005/1803)", "", Provenance::MemoryHigh)
        .only_in(GreatBritain);

/// What is said of goods is true.
pub const TRUE_CLAIMS: Clause =
    Clause::new("Digital Markets, Competition and Consumers Act", "2024", "", Provenance::MemoryHigh);
