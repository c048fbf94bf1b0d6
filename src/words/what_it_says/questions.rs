//! What is asked of label, package, papers and listing, and what the answers say.

use crate::words::question::{AnswerWords, QuestionWords};

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "rating",
        asks: "What volts, amps or watts does it state here?",
        answers: &[],
        says: "On {which} it says “{value}”.",
        look: "Copy it as it is printed, with volts, amps, watts, metres and mm², such as “13A 250V~ 3000W max”. Where nothing of the kind stands there, say so.",
        why: "Each place makes a claim of its own. Where two of them differ, one is not true.",
        caution: "",
    },
    QuestionWords {
        id: "marks",
        asks: "Which of these marks does it bear?",
        answers: &[
            AnswerWords {
                code: "double-square",
                answer: "a square inside a square",
                says: "It bears the double square, which says that it needs no earth.",
            },
            AnswerWords {
                code: "functional-earth",
                answer: "that square with an earth sign in or by it",
                says: "An earth sign stands with the double square.",
            },
            AnswerWords { code: "ce", answer: "CE", says: "It bears the mark CE." },
            AnswerWords { code: "ukca", answer: "UKCA", says: "It bears the mark UKCA." },
            AnswerWords {
                code: "odd-ce-or-ukca",
                answer: "CE or UKCA, tiny or oddly drawn",
                says: "Its CE or UKCA mark is less than 5 mm high or oddly drawn.",
            },
            AnswerWords {
                code: "iso-9001",
                answer: "ISO 9001, or “ISO certified”",
                says: "It names ISO 9001 as if that certified the product.",
            },
        ],
        says: "It bears no CE, no UKCA, no double square and no ISO 9001.",
        look: "Look on the product, the package and the papers. In a true CE the letters are parts of two circles, with a clear gap between them; in imitations they nearly touch.",
        why: "A mark is easily printed. One that is false or out of place tells more than one that is there.",
        caution: "",
    },
    QuestionWords {
        id: "promises",
        asks: "What does it promise?",
        answers: &[
            AnswerWords {
                code: "surge",
                answer: "protection from surges or lightning",
                says: "It promises protection from surges.",
            },
            AnswerWords {
                code: "overload",
                answer: "a cut-out or overload protection",
                says: "It promises protection from overload.",
            },
            AnswerWords {
                code: "shutters",
                answer: "shutters or child protection",
                says: "It promises shutters in its sockets.",
            },
            AnswerWords { code: "switch", answer: "a switch", says: "It promises a switch." },
            AnswerWords { code: "outdoor", answer: "use outdoors, or in the wet", says: "It promises use outdoors." },
            AnswerWords {
                code: "thermal",
                answer: "that it switches off when hot",
                says: "It promises to switch off when it gets hot.",
            },
        ],
        says: "It promises nothing of its own.",
        look: "Look on the package, the product and the seller’s page or sign.",
        why: "A promise is asked for again where its part can be seen. An empty one is a lie about safety.",
        caution: "",
    },
    QuestionWords {
        id: "outdoor-build",
        asks: "It promises use outdoors. Which of these is so?",
        answers: &[
            AnswerWords {
                code: "splash-proof",
                answer: "IPX4, IP44 or better is printed on it",
                says: "Protection from splashing (IPX4 or better) is printed on it.",
            },
            AnswerWords { code: "rubber-flex", answer: "the flex is of rubber", says: "Its flex is of rubber." },
            AnswerWords { code: "used-wet", answer: "it is used in the wet", says: "It is used in the wet." },
        ],
        says: "No protection from splashing is printed on it, and its flex is not of rubber.",
        look: "The last figure after IP must be 4 or more. Rubber flex is dull and stays soft in the cold; its print has the letters RN or RR, that of PVC has VV.",
        why: "Rain gets into what is not made for it, and plastic flex cracks in the cold.",
        caution: "Do not touch it while it is wet and plugged in.",
    },
    QuestionWords {
        id: "identity",
        asks: "Which of these can you find anywhere?",
        answers: &[
            AnswerWords { code: "maker", answer: "the maker’s name or trade mark", says: "The maker is named." },
            AnswerWords {
                code: "maker-address",
                answer: "the maker’s postal address",
                says: "The maker’s postal address is given.",
            },
            AnswerWords {
                code: "local-address",
                answer: "an address in the country of sale",
                says: "Somebody with an address in the country of sale is named.",
            },
            AnswerWords {
                code: "electronic-address",
                answer: "an e-mail or web address",
                says: "An e-mail or web address is given.",
            },
            AnswerWords {
                code: "type-or-batch",
                answer: "a type, batch or serial number",
                says: "A type, batch or serial number is given.",
            },
            AnswerWords {
                code: "instructions",
                answer: "instructions or warnings",
                says: "There are instructions or warnings.",
            },
            AnswerWords {
                code: "wheeled-bin",
                answer: "a crossed-out wheeled bin",
                says: "It bears the crossed-out wheeled bin.",
            },
            AnswerWords {
                code: "seller",
                answer: "the seller’s name and address",
                says: "The seller’s name and address are known.",
            },
            AnswerWords {
                code: "package-gone",
                answer: "package or papers are gone",
                says: "The package or the papers are gone, and what they said with them.",
            },
        ],
        says: "It names no maker, no address, no type and no seller, and has no instructions.",
        look: "Look on the product, the package, the papers, the listing and the receipt. For Northern Ireland an address in the EU counts as one in the country of sale.",
        why: "Where nobody is named, nobody answers for it and nobody can call it back.",
        caution: "",
    },
    QuestionWords {
        id: "print-and-package",
        asks: "Do you see any of these?",
        answers: &[
            AnswerWords {
                code: "misspelt",
                answer: "misspelt or senseless words",
                says: "There are misspelt or senseless words on it.",
            },
            AnswerWords {
                code: "sharp-edges",
                answer: "sharp edges or staples on the package",
                says: "The package has sharp edges or staples.",
            },
        ],
        says: "Its print reads well, and its package has no sharp edges.",
        look: "Read the product and the package once, slowly.",
        why: "Careless print often comes with careless work. It proves nothing by itself.",
        caution: "",
    },
    QuestionWords {
        id: "standards-named",
        asks: "Which standards does it name?",
        answers: &[],
        says: "It names “{value}”.",
        look: "Copy the numbers, with a comma between them, such as BS 1363, BS 5733. Where none is named, say so.",
        why: "A number that belongs elsewhere, or is long withdrawn, was copied and not tested to.",
        caution: "",
    },
    QuestionWords {
        id: "barcode",
        asks: "What number stands under the barcode?",
        answers: &[],
        says: "The number under the barcode is {value}.",
        look: "Copy all digits, the small first and last ones too. Where there is no barcode, say so.",
        why: "The last digit follows from the others. In a made-up number it often does not.",
        caution: "",
    },
    QuestionWords {
        id: "mark-height",
        asks: "How high is the CE or UKCA mark?",
        answers: &[],
        says: "Its CE or UKCA mark is {value} high.",
        look: "Measure from the bottom to the top of the letters, on the largest one there is.",
        why: "It must be at least 5 mm high.",
        caution: "",
    },
    QuestionWords {
        id: "maker-and-type",
        asks: "Which maker and type are printed on it?",
        answers: &[],
        says: "It calls itself “{value}”.",
        look: "Copy the maker’s name or mark and the type or batch number as they are printed.",
        why: "Lists of recalls are searched by these words.",
        caution: "",
    },
    QuestionWords {
        id: "approval-number",
        asks: "Which number stands by the approval mark?",
        answers: &[],
        says: "The number by its approval mark is “{value}”.",
        look: "It stands close to the mark, often as letters and five or six digits. Where there is none, say so.",
        why: "The body that approved the plug can say whether the number is its own.",
        caution: "",
    },
    QuestionWords {
        id: "recall-lists",
        asks: "Has somebody looked it up in lists of recalls?",
        answers: &[
            AnswerWords {
                code: "not-found",
                answer: "yes, and did not find it",
                says: "It was looked up in lists of recalls and not found.",
            },
            AnswerWords {
                code: "found",
                answer: "yes, and it is listed there",
                says: "It is listed among recalled products.",
            },
        ],
        says: "",
        look: "This needs a network, so leave it for later if there is none. Search the government’s product safety alerts, and the EU’s Safety Gate, for the maker, the type and the barcode.",
        why: "Others of its kind may have hurt somebody already. Lists know names, and names change: not found is no proof.",
        caution: "",
    },
    QuestionWords {
        id: "approval-register",
        asks: "Has somebody looked the approval number up?",
        answers: &[
            AnswerWords {
                code: "listed",
                answer: "yes, and it is for this plug",
                says: "Its approval number is listed for such a plug.",
            },
            AnswerWords {
                code: "not-listed",
                answer: "yes, and there is no such number",
                says: "Its approval number is not listed by the body that it names.",
            },
            AnswerWords {
                code: "listed-for-another",
                answer: "yes, and it is for something else",
                says: "Its approval number is listed for something else.",
            },
        ],
        says: "",
        look: "This needs a network, so leave it for later if there is none. The body whose mark it is keeps a list of its numbers.",
        why: "Approval marks are the ones most often forged. A number that is listed may still have been copied.",
        caution: "",
    },
];
