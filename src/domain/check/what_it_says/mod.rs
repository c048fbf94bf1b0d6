//! Checks of what the sample, its package, its papers and its seller say: each a claim, held against the others and against the law.

pub mod identity;
pub mod lookup;
pub mod marks;
pub mod presentation;
pub mod promise;
pub mod ratings;
pub mod standards;

use super::Check;
use crate::domain::facts;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[
    facts::RATING,
    marks::MARKS,
    facts::PROMISES,
    promise::OUTDOOR_BUILD,
    identity::IDENTITY,
    presentation::PRESENTATION,
    standards::STANDARDS_NAMED,
    presentation::BARCODE,
    marks::MARK_HEIGHT,
    lookup::MAKER_AND_TYPE,
    lookup::APPROVAL_NUMBER,
    lookup::RECALL_LISTS,
    lookup::APPROVAL_REGISTER,
];

/// The checks.
pub const CHECKS: &[&Check] = &[
    marks::CLASS_MARK_CONTRADICTED,
    ratings::RATING_ABOVE_PLUG,
    ratings::RATING_MISSING,
    ratings::RATING_IMPOSSIBLE,
    ratings::RATINGS_DISAGREE,
    ratings::LENGTH_OVERSTATED,
    promise::OUTDOOR_PROMISE_UNMET,
    marks::CONFORMITY_MARK_MISSING,
    identity::MAKER_NOT_NAMED,
    identity::IMPORTER_NOT_NAMED,
    identity::TYPE_OR_BATCH_MISSING,
    identity::INSTRUCTIONS_MISSING,
    lookup::RECALLED_PRODUCT,
    lookup::APPROVAL_NUMBER_FALSE,
    marks::MARK_NOT_APPLICABLE,
    marks::CONFORMITY_MARK_MALFORMED,
    marks::MANAGEMENT_MARK_AS_PRODUCT_MARK,
    standards::STANDARD_MISQUOTED,
    presentation::BARCODE_INVALID,
    presentation::PRINT_MISSPELT,
    presentation::PACKAGING_SHARP,
    identity::WASTE_MARK_MISSING,
    identity::SELLER_UNTRACEABLE,
];
