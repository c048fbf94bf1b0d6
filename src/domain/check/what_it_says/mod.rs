//! Checks of what the product says of itself: ratings, names, marks, promises, print.

pub mod claims;
pub mod identity;
pub mod looked_up;
pub mod marks;
pub mod print;
pub mod promises;

use super::Check;
use crate::domain::facts;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[
    facts::RATING,
    facts::PROMISES,
    promises::OUTDOORS,
    marks::SEEN,
    identity::STATED,
    print::FAULTS,
    print::STANDARDS,
    print::BARCODE,
    looked_up::APPROVAL,
    looked_up::RECALL,
];

/// The checks.
pub const CHECKS: &[&Check] = &[
    claims::RATING_ABOVE_PLUG,
    marks::CLASS_MARK_CONTRADICTED,
    promises::OUTDOOR_PROMISE_UNMET,
    claims::RATING_MISSING,
    claims::RATING_IMPOSSIBLE,
    claims::RATINGS_DISAGREE,
    claims::LENGTH_OVERSTATED,
    marks::CONFORMITY_MARK_MISSING,
    identity::MAKER_NOT_NAMED,
    identity::IMPORTER_NOT_NAMED,
    identity::ELECTRONIC_ADDRESS_MISSING,
    identity::TYPE_OR_BATCH_MISSING,
    identity::INSTRUCTIONS_MISSING,
    looked_up::RECALLED_PRODUCT,
    looked_up::APPROVAL_NUMBER_FALSE,
    marks::MARK_NOT_APPLICABLE,
    marks::CONFORMITY_MARK_MALFORMED,
    marks::MANAGEMENT_MARK_AS_PRODUCT_MARK,
    marks::WASTE_MARK_MISSING,
    print::STANDARD_MISQUOTED,
    print::BARCODE_INVALID,
    print::PRINT_MISSPELT,
    print::PACKAGING_SHARP,
    identity::SELLER_UNTRACEABLE,
];
