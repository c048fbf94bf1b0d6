//! What is looked for on label, package, papers and listing, why, and what would settle it.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords {
        code: "class-mark-contradicted",
        wrong: "a double square on goods that need an earth",
        why: "The mark says that no earth is needed. Whoever believes it leaves the earth out, or does not test it.",
        settles: "Find out which product the mark stands for, and test the earth whatever it says.",
    },
    CheckWords {
        code: "rating-above-plug",
        wrong: "a total load above what the plug carries",
        why: "A UK plug carries 13 A. More overheats plug and flex, and only the fuse stands between.",
        settles: "Copy what the body, the package and the seller state for the whole.",
    },
    CheckWords {
        code: "rating-missing",
        wrong: "a product that states no volts, amps or watts",
        why: "Nobody can know how much may be plugged in.",
        settles: "Look at the body and the plug on all sides, in slanting light.",
    },
    CheckWords {
        code: "rating-impossible",
        wrong: "more watts than its own volts and amps can make",
        why: "Volts times amps are the most watts there can be. Whoever believes the higher number overloads the product.",
        settles: "Copy volts, amps and watts exactly as they are printed.",
    },
    CheckWords {
        code: "ratings-disagree",
        wrong: "two places that state different things",
        why: "One of the two is not true.",
        settles: "Copy what each place states, exactly as it is printed.",
    },
    CheckWords {
        code: "length-overstated",
        wrong: "a flex shorter than claimed",
        why: "The buyer pays for length that is not there.",
        settles: "Lay the flex out straight and measure it again, without plug and body.",
    },
    CheckWords {
        code: "outdoor-promise-unmet",
        wrong: "an outdoor promise without the build for it",
        why: "Water gets to live parts, and plastic flex cracks in the cold.",
        settles: "Look for IPX4 or better on the product, and read the print on the flex.",
    },
    CheckWords {
        code: "conformity-mark-missing",
        wrong: "electronics without CE or UKCA",
        why: "Goods with electronics must bear the mark: CE or UKCA in Great Britain, CE in Northern Ireland. Without it nobody even claims that they keep the law.",
        settles: "Look on the product, the package and the papers.",
    },
    CheckWords {
        code: "maker-not-named",
        wrong: "goods that do not say who made them",
        why: "Nobody answers for them, and nobody can call them back.",
        settles: "Find the package and the papers, and look there.",
    },
    CheckWords {
        code: "importer-not-named",
        wrong: "goods without an address in the country of sale",
        why: "A maker far away cannot be reached when something happens.",
        settles: "Find the package and the papers, and look there.",
    },
    CheckWords {
        code: "type-or-batch-missing",
        wrong: "goods without type, batch or serial number",
        why: "A recall cannot name them.",
        settles: "Look on the product, and on the package and papers if you can find them.",
    },
    CheckWords {
        code: "instructions-missing",
        wrong: "goods without instructions or warnings",
        why: "Nobody tells the user how much may be plugged in.",
        settles: "Find the package and the papers, and look there.",
    },
    CheckWords {
        code: "recalled-product",
        wrong: "a product that was recalled",
        why: "Others of its kind have hurt somebody, or would.",
        settles: "Search lists of recalls for the maker, the type and the barcode.",
    },
    CheckWords {
        code: "approval-number-false",
        wrong: "an approval number that is not its own",
        why: "The mark is forged, and nobody has tested the plug.",
        settles: "Ask the body whose mark it is for the number.",
    },
    CheckWords {
        code: "mark-not-applicable",
        wrong: "CE or UKCA where it does not belong",
        why: "A plug or a plain lead bears neither mark. Whoever printed it does not know the rules, or hopes that nobody does.",
        settles: "Look whether the mark stands on the plug, and whether the lead has any electronics.",
    },
    CheckWords {
        code: "conformity-mark-malformed",
        wrong: "a CE or UKCA mark drawn wrongly",
        why: "The mark must be 5 mm high or more and drawn in its proportions. Imitations seldom are.",
        settles: "Measure the largest such mark there is.",
    },
    CheckWords {
        code: "management-mark-as-product-mark",
        wrong: "ISO 9001 used as if it certified the product",
        why: "ISO 9001 speaks of how a firm is run, and of no product.",
        settles: "Read the sentence in which ISO 9001 is named.",
    },
    CheckWords {
        code: "standard-misquoted",
        wrong: "a standard that does not belong on it",
        why: "The number was copied from something else, or is long withdrawn.",
        settles: "Look the number up in the catalogue of the body that publishes it.",
    },
    CheckWords {
        code: "barcode-invalid",
        wrong: "a barcode number that cannot be",
        why: "Such a number was made up.",
        settles: "Copy every digit under the bars again, the small ones at the ends too.",
    },
    CheckWords {
        code: "print-misspelt",
        wrong: "misspelt words",
        why: "Careful makers read their labels.",
        settles: "Read the product and the package once, slowly.",
    },
    CheckWords {
        code: "packaging-sharp",
        wrong: "a package with sharp edges or staples",
        why: "It cuts fingers, and may have cut the flex.",
        settles: "Look along the edges of the package.",
    },
    CheckWords {
        code: "waste-mark-missing",
        wrong: "no crossed-out wheeled bin",
        why: "A maker that leaves it out tends to leave out more.",
        settles: "Look on the product, the package and the papers.",
    },
    CheckWords {
        code: "seller-untraceable",
        wrong: "a seller without name or address",
        why: "Nobody takes the goods back.",
        settles: "Ask the seller for a name and an address, or look on the receipt.",
    },
];
