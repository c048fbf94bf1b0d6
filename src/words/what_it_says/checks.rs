//! What is looked for in print, package and listing, why, and what would settle it.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords { code: "rating-above-plug", wrong: "a claim above what a 13 A plug carries" },
    CheckWords { code: "class-mark-contradicted", wrong: "a double square on a product that needs an earth" },
    CheckWords { code: "outdoor-promise-unmet", wrong: "a lead sold for outdoors that is not made for it" },
    CheckWords { code: "rating-missing", wrong: "a product that does not say what it carries" },
    CheckWords { code: "rating-impossible", wrong: "more watts than its volts and amperes make" },
    CheckWords { code: "ratings-disagree", wrong: "two places that state different things" },
    CheckWords { code: "length-overstated", wrong: "a flex shorter than promised" },
    CheckWords { code: "conformity-mark-missing", wrong: "a missing CE or UKCA mark" },
    CheckWords { code: "maker-not-named", wrong: "no maker with an address" },
    CheckWords { code: "importer-not-named", wrong: "nobody at an address in this market" },
    CheckWords { code: "electronic-address-missing", wrong: "no email or web address of maker or importer" },
    CheckWords { code: "type-or-batch-missing", wrong: "no type or batch number" },
    CheckWords { code: "instructions-missing", wrong: "no instructions" },
    CheckWords { code: "recalled-product", wrong: "a product that was called back" },
    CheckWords { code: "approval-number-false", wrong: "an approval number that is not this product’s" },
    CheckWords { code: "mark-not-applicable", wrong: "CE or UKCA where neither belongs" },
    CheckWords { code: "conformity-mark-malformed", wrong: "a CE or UKCA mark of wrong shape or size" },
    CheckWords { code: "management-mark-as-product-mark", wrong: "ISO 9001 shown as if it certified the product" },
    CheckWords { code: "waste-mark-missing", wrong: "no crossed-out bin" },
    CheckWords { code: "standard-misquoted", wrong: "a standard that is not for such a product" },
    CheckWords { code: "barcode-invalid", wrong: "a barcode number that cannot be" },
    CheckWords { code: "print-misspelt", wrong: "misspelt print" },
    CheckWords { code: "packaging-sharp", wrong: "a package with sharp edges" },
    CheckWords { code: "seller-untraceable", wrong: "a seller without name and address" },
];
