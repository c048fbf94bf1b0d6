//! What is looked for in print, package and listing, why, and what would settle it.

use crate::words::check::CheckWords;

const EVERYWHERE: &str = "Look at the product, the package and the papers; ask for the package if it is gone.";

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords {
        code: "rating-above-plug",
        wrong: "a claim above what a 13 A plug carries",
        why: "A British plug carries 13 A, which is 3250 W at 250 V. Whoever trusts a higher claim overheats plug and flex.",
        settles: "Read the total amperes or watts on the body and the package.",
    },
    CheckWords {
        code: "class-mark-contradicted",
        wrong: "a double square on a product that needs an earth",
        why: "The double square says that no earth is needed. On a lead that is untrue, and whoever believes it goes without.",
        settles: "Look for one square inside another on the label, and see whether the connector has an earth.",
    },
    CheckWords {
        code: "outdoor-promise-unmet",
        wrong: "a lead sold for outdoors that is not made for it",
        why: "Outdoors water gets in without IPX4, and a PVC flex cracks in the cold. Then wet hands meet the mains.",
        settles: "Look for IPX4, IP44 or more, and read the type on the flex: H05VV is PVC, H05RR and H07RN are rubber.",
    },
    CheckWords {
        code: "rating-missing",
        wrong: "a product that does not say what it carries",
        why: "Without volts, amperes or watts on the product nobody knows what may be plugged in.",
        settles: "Look at the underside of the body and between the pins of the plug.",
    },
    CheckWords {
        code: "rating-impossible",
        wrong: "more watts than its volts and amperes make",
        why: "Volts times amperes are the most watts there can be.",
        settles: "Copy volts, amperes and watts exactly as they are printed.",
    },
    CheckWords {
        code: "ratings-disagree",
        wrong: "two places that state different things",
        why: "Both cannot be true.",
        settles: "Copy what each place states.",
    },
    CheckWords {
        code: "length-overstated",
        wrong: "a flex shorter than promised",
        why: "The buyer gets less than was promised. Whoever saves there may save on copper too.",
        settles: "Measure the flex alone, stretched out, and read the promised length.",
    },
    CheckWords {
        code: "conformity-mark-missing",
        wrong: "a missing CE or UKCA mark",
        why: "Goods with USB or electronics need it: CE or UKCA in Great Britain, CE in Northern Ireland. A plain lead needs none.",
        settles: EVERYWHERE,
    },
    CheckWords {
        code: "maker-not-named",
        wrong: "no maker with an address",
        why: "Nobody answers for it.",
        settles: EVERYWHERE,
    },
    CheckWords {
        code: "importer-not-named",
        wrong: "nobody at an address in this market",
        why: "Somebody abroad is out of reach of customer and authority.",
        settles: EVERYWHERE,
    },
    CheckWords {
        code: "electronic-address-missing",
        wrong: "no email or web address of maker or importer",
        why: "The law of Northern Ireland wants one, so that a complaint arrives.",
        settles: EVERYWHERE,
    },
    CheckWords {
        code: "type-or-batch-missing",
        wrong: "no type or batch number",
        why: "Without one it cannot be called back.",
        settles: EVERYWHERE,
    },
    CheckWords {
        code: "instructions-missing",
        wrong: "no instructions",
        why: "Nobody is told not to coil it up, cover it or overload it.",
        settles: EVERYWHERE,
    },
    CheckWords {
        code: "recalled-product",
        wrong: "a product that was called back",
        why: "It was called back because somebody was hurt by one like it, or nearly.",
        settles: "Search for maker, model and the word recall where there is a network, and say what was found.",
    },
    CheckWords {
        code: "approval-number-false",
        wrong: "an approval number that is not this product’s",
        why: "The mark is forged, and nobody tested the plug.",
        settles: "Look the number up in the list of the body whose mark it is, and say what was found.",
    },
    CheckWords {
        code: "mark-not-applicable",
        wrong: "CE or UKCA where neither belongs",
        why: "A British plug and a plain lead carry neither mark. Whoever prints one does not know the rules.",
        settles: "Look whether the mark stands on the plug or lead itself, and whether it has USB or electronics.",
    },
    CheckWords {
        code: "conformity-mark-malformed",
        wrong: "a CE or UKCA mark of wrong shape or size",
        why: "The mark has a drawing to follow and is at least 5 mm high.",
        settles: "Hold the mark against a rule, and against CE on goods you trust.",
    },
    CheckWords {
        code: "management-mark-as-product-mark",
        wrong: "ISO 9001 shown as if it certified the product",
        why: "ISO 9001 says how an office is run. It says nothing of this product.",
        settles: "Read what stands beside the mark.",
    },
    CheckWords {
        code: "waste-mark-missing",
        wrong: "no crossed-out bin",
        why: "It will end in household waste.",
        settles: EVERYWHERE,
    },
    CheckWords {
        code: "standard-misquoted",
        wrong: "a standard that is not for such a product",
        why: "It is not among the standards for plugs, leads and cord sets. Whoever quotes a wrong one has tested to none.",
        settles: "Copy each standard with the letters before it, such as BS 1363-2.",
    },
    CheckWords {
        code: "barcode-invalid",
        wrong: "a barcode number that cannot be",
        why: "The last digit has to follow from the others, or the number was never given to anybody. Check that it was copied right.",
        settles: "Copy all digits under the bars again: 8, 12, 13 or 14 of them.",
    },
    CheckWords {
        code: "print-misspelt",
        wrong: "misspelt print",
        why: "Nobody who knows this market read it before it was printed.",
        settles: "Read the label and the package slowly.",
    },
    CheckWords {
        code: "packaging-sharp",
        wrong: "a package with sharp edges",
        why: "It cuts fingers, and it may have cut the flex.",
        settles: "Look at edges, staples and wire ties.",
    },
    CheckWords {
        code: "seller-untraceable",
        wrong: "a seller without name and address",
        why: "There is nobody to take it back.",
        settles: "Ask for a receipt with a name and an address.",
    },
];
