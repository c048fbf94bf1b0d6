//! What is asked of print, package and listing, and what its answers say.

use crate::words::question::{AnswerWords, QuestionWords};
use crate::words::screens::NOTHING_PRINTED;

const fn answer(code: &'static str, answer: &'static str, says: &'static str) -> AnswerWords {
    AnswerWords { code, answer, says }
}

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "rating",
        asks: "What volts, amperes and watts does {which} state?",
        topic: "what volts, amperes and watts {which} states",
        answers: &[answer("nothing", NOTHING_PRINTED, "No volts, amperes or watts stand on {which}.")],
        says: "On {which} it says {value}.",
        caution: "",
    },
    QuestionWords {
        id: "promises",
        asks: "Which of these does it promise?",
        topic: "what else it promises",
        answers: &[
            answer("surge", "protection against surges or lightning", "It promises protection against surges."),
            answer("overload", "a cut-out or overload protection", "It promises to cut out on overload."),
            answer("shutters", "child safety or shutters", "It promises shutters or child safety."),
            answer("switch", "switched sockets", "It promises a switch."),
            answer("outdoor", "outdoor use, splash or weather proof", "It promises that it may be used outdoors."),
            answer("thermal", "a thermal cut-out", "It promises a thermal cut-out."),
        ],
        says: "It promises none of the things that were asked about.",
        caution: "",
    },
    QuestionWords {
        id: "outdoors",
        asks: "Outdoor use: which of these are true?",
        topic: "whether it is fit for outdoor use",
        answers: &[
            answer("ipx4-or-more", "IPX4, IP44 or more is printed", "IPX4, IP44 or more is printed on it."),
            answer("used-wet", "it is or will be used in the wet", "It is used in the wet."),
        ],
        says: "No IPX4 or more is printed on it, and it is not used in the wet.",
        caution: "Never try it with water.",
    },
    QuestionWords {
        id: "marks",
        asks: "Which of these marks do you see?",
        topic: "which marks it bears",
        answers: &[
            answer("ce", "CE", "CE is printed on it."),
            answer("ukca", "UKCA", "UKCA is printed on it."),
            answer(
                "mark-malformed",
                "CE or UKCA under 5 mm or oddly drawn",
                "The CE or UKCA mark is under 5 mm high or oddly drawn.",
            ),
            answer(
                "double-square",
                "one square inside another",
                "It bears the double square, one square inside another.",
            ),
            answer(
                "functional-earth",
                "such a square with an earth sign",
                "An earth sign stands in or beside its double square.",
            ),
            answer("wheeled-bin", "a crossed-out bin on wheels", "It bears the crossed-out bin."),
            answer("iso-9001", "ISO 9001 or ISO 9000", "It shows ISO 9001 as if that certified the product."),
        ],
        says: "None of the marks that were asked about is on it.",
        caution: "",
    },
    QuestionWords {
        id: "identity",
        asks: "Which of these does it come with?",
        topic: "who made it, who answers for it and whether it has instructions",
        answers: &[
            answer("maker", "a maker’s name with an address", "A maker is named with a postal address."),
            answer(
                "local-address",
                "someone at an address in the country of sale",
                "A maker or importer is named at an address in this market.",
            ),
            answer("electronic-address", "an email or web address", "An email or web address is given."),
            answer("seller", "a seller’s name and address", "The seller’s name and address are known."),
            answer("type-or-batch", "a type, batch or serial number", "It bears a type, batch or serial number."),
            answer("instructions", "instructions", "It comes with instructions."),
            answer("package-gone", "the package or papers are gone", "The package or papers are gone."),
        ],
        says: "It names no maker, importer or seller, no type, and has no instructions.",
        caution: "",
    },
    QuestionWords {
        id: "print-faults",
        asks: "Do you see any of these?",
        topic: "whether print and package are tidy",
        answers: &[
            answer("misspelt", "misspelt or garbled words", "Words on it are misspelt or garbled."),
            answer("sharp", "sharp edges or staples on the package", "The package has sharp edges or staples."),
        ],
        says: "Print and package look tidy.",
        caution: "Mind your fingers.",
    },
    QuestionWords {
        id: "standards-named",
        asks: "Which standards does it name?",
        topic: "which standards it names",
        answers: &[answer("nothing", NOTHING_PRINTED, "It names no standard.")],
        says: "It names these standards: {value}.",
        caution: "",
    },
    QuestionWords {
        id: "barcode",
        asks: "What number stands under the bars?",
        topic: "what number stands under the bars",
        answers: &[answer("nothing", NOTHING_PRINTED, "It bears no bar code.")],
        says: "The number under the bars is {value}.",
        caution: "",
    },
    QuestionWords {
        id: "approval-search",
        asks: "Whose is the approval number?",
        topic: "whose the approval number is",
        answers: &[
            answer("fits", "this product’s", "The approval number is listed for this product."),
            answer("another-product", "another product’s", "The approval number belongs to another product."),
            answer("no-such-number", "nobody’s: there is no such number", "The approval number is in no list."),
            answer("no-number-printed", "no number is printed", "No number stands beside the approval mark."),
        ],
        says: "",
        caution: "",
    },
    QuestionWords {
        id: "recall-search",
        asks: "Was it called back?",
        topic: "whether it was called back",
        answers: &[
            answer("nothing-found", "nothing was found", "A search found no recall of this product."),
            answer("recalled", "yes, it was called back", "This product was called back."),
        ],
        says: "",
        caution: "",
    },
];
