//! Words of the conductor: resistance, metal and heat.

use super::check::CheckWords;
use super::question::{AnswerWords, QuestionWords};
use super::screens::NOTHING_PRINTED;

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "piece-length",
        asks: "How long is the piece of flex you measure?",
        topic: "how long the piece of flex is whose cores are read",
        answers: &[],
        says: "The piece of flex whose cores were read is {value} long.",
        caution: "Take the fuse out first, and cut the pins off or hammer them flat as soon as the plug is off: a plug on a cut flex kills if somebody plugs it in.",
    },
    QuestionWords {
        id: "core-resistance",
        asks: "What does {which} read from end to end?",
        topic: "what {which} reads from end to end",
        answers: &[],
        says: "From end to end, {which} reads {value}.",
        caution: "Only on a piece that is cut off at both ends. Never on anything that is plugged in.",
    },
    QuestionWords {
        id: "cores-joined",
        asks: "What do all cores read, joined at both ends?",
        topic: "what the cores read, joined at both ends",
        answers: &[],
        says: "Joined at both ends, the cores read {value} together.",
        caution: "",
    },
    QuestionWords {
        id: "reference-wire",
        asks: "Is a copper wire of known size at hand?",
        topic: "whether a copper wire of known size is at hand",
        answers: &[
            AnswerWords {
                code: "size-stated",
                answer: "yes, its size is printed or told",
                says: "A copper wire of stated size was at hand.",
            },
            AnswerWords {
                code: "can-be-measured",
                answer: "yes, a solid one that can be measured",
                says: "A solid copper wire that can be measured was at hand.",
            },
            AnswerWords { code: "none", answer: "none at hand", says: "No copper wire of known size was at hand." },
        ],
        says: "",
        caution: "",
    },
    QuestionWords {
        id: "reference-size",
        asks: "What is printed or told of the wire’s size?",
        topic: "what is said of the known wire’s size",
        answers: &[AnswerWords {
            code: "nothing",
            answer: NOTHING_PRINTED,
            says: "Nothing is said of the known wire’s size.",
        }],
        says: "The known wire is said to be {value}.",
        caution: "",
    },
    QuestionWords {
        id: "reference-diameter",
        asks: "How thick is the bare wire?",
        topic: "how thick the known wire is",
        answers: &[],
        says: "The known wire is {value} thick.",
        caution: "",
    },
    QuestionWords {
        id: "reference-length",
        asks: "How long is the known wire?",
        topic: "how long the known wire is",
        answers: &[],
        says: "The known wire is {value} long.",
        caution: "",
    },
    QuestionWords {
        id: "reference-resistance",
        asks: "What does the known wire read?",
        topic: "what the known wire reads",
        answers: &[],
        says: "The known wire reads {value}.",
        caution: "",
    },
    QuestionWords {
        id: "half-length-resistance",
        asks: "What does half of the worst core read?",
        topic: "what half of the worst core reads",
        answers: &[],
        says: "Half of the core that reads most reads {value}.",
        caution: "Only on a piece that is cut off at both ends.",
    },
    QuestionWords {
        id: "core-magnet",
        asks: "Do the bare strands go to a magnet?",
        topic: "whether the bare strands go to a magnet",
        answers: &[
            AnswerWords {
                code: "none",
                answer: "no, not at all",
                says: "A magnet does not pull the bare strands of the cores.",
            },
            AnswerWords {
                code: "weak",
                answer: "perhaps, a little",
                says: "A magnet pulls the bare strands of the cores so little that it says nothing.",
            },
            AnswerWords {
                code: "strong",
                answer: "yes, they jump to it",
                says: "A magnet pulls the bare strands of the cores strongly.",
            },
        ],
        says: "",
        caution: "",
    },
    QuestionWords {
        id: "core-scrape",
        asks: "Scrape one strand with a knife. What shows?",
        topic: "what a scraped strand shows",
        answers: &[
            AnswerWords {
                code: "red",
                answer: "red all the way",
                says: "A scraped strand is red all the way, like copper.",
            },
            AnswerWords {
                code: "silver-then-red",
                answer: "silver outside, red under it",
                says: "A scraped strand is silver outside and red under it, like tinned copper.",
            },
            AnswerWords {
                code: "red-then-silver",
                answer: "red outside, silver under it",
                says: "A scraped strand is red outside and silver under it: another metal with a skin of copper.",
            },
            AnswerWords {
                code: "silver",
                answer: "silver all the way",
                says: "A scraped strand is silver all the way: no copper showed.",
            },
            AnswerWords { code: "yellow", answer: "yellow", says: "A scraped strand is yellow, like brass." },
        ],
        says: "",
        caution: "Cut away from your fingers.",
    },
    QuestionWords {
        id: "strand-count",
        asks: "How many strands has the brown core?",
        topic: "how many strands the brown core has",
        answers: &[],
        says: "The brown core has {value} strands.",
        caution: "",
    },
    QuestionWords {
        id: "ten-strands-width",
        asks: "How wide are ten strands, side by side?",
        topic: "how wide ten strands are, side by side",
        answers: &[],
        says: "Ten strands of the brown core, side by side, are {value} wide.",
        caution: "",
    },
    QuestionWords {
        id: "one-strand-width",
        asks: "How thick is one strand?",
        topic: "how thick one strand is",
        answers: &[],
        says: "One strand of the brown core is {value} thick.",
        caution: "",
    },
    QuestionWords {
        id: "core-mass",
        asks: "What does the brown core’s bare metal weigh?",
        topic: "what the brown core’s bare metal weighs",
        answers: &[],
        says: "The bare metal of the brown core weighs {value}.",
        caution: "Wash your hands after stripping flex: the plastic may hold lead.",
    },
];

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords { code: "core-resistance-high", wrong: "cores with too little conductor" },
    CheckWords { code: "overheats-at-claim", wrong: "a flex too hot at the current it claims" },
    CheckWords { code: "metal-not-copper", wrong: "cores of some other metal than copper" },
    CheckWords { code: "strand-area-short", wrong: "strands with less metal than promised" },
    CheckWords { code: "mass-below-copper-promised", wrong: "a core lighter than its copper would be" },
    CheckWords { code: "volt-drop-high", wrong: "a flex that loses much of the voltage" },
    CheckWords { code: "readings-inconsistent", wrong: "readings of the cores that do not agree" },
];
