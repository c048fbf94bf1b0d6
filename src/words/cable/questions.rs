//! What is asked of the flex, and what its answers say.

use crate::words::question::{AnswerWords, QuestionWords};
use crate::words::screens::NOTHING_PRINTED;

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "flex-condition",
        asks: "Do you see any of these along the flex?",
        topic: "whether the flex is whole along its length",
        answers: &[
            AnswerWords {
                code: "core-shows",
                answer: "a coloured inner wire or bare metal shows",
                says: "A coloured inner wire or bare metal can be seen on the flex.",
            },
            AnswerWords {
                code: "joined",
                answer: "two pieces are joined together",
                says: "The flex is joined together from two pieces.",
            },
            AnswerWords { code: "taped", answer: "tape is wound around it", says: "Tape is wound around the flex." },
            AnswerWords {
                code: "melted",
                answer: "it is melted, burnt or crushed flat",
                says: "The flex is melted, burnt or crushed flat somewhere.",
            },
            AnswerWords {
                code: "scuffed",
                answer: "scuffs or small cuts on the outside",
                says: "The outside of the flex has scuffs or small cuts.",
            },
            AnswerWords {
                code: "sheath-loose",
                answer: "the outside slides or wrinkles",
                says: "The outside of the flex slides or wrinkles over the wires in it.",
            },
        ],
        says: "The flex looks whole along its length.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "flex-print",
        asks: "What is printed along the flex?",
        topic: "what is printed along the flex",
        answers: &[AnswerWords {
            code: "nothing",
            answer: NOTHING_PRINTED,
            says: "Nothing is printed along the flex.",
        }],
        says: "The flex is printed {value}.",
        caution: "",
    },
    QuestionWords {
        id: "flex-visible",
        asks: "How much of the flex can you see?",
        topic: "how much of the flex can be seen",
        answers: &[
            AnswerWords {
                code: "55-cm-or-more",
                answer: "55 cm or more, on all sides",
                says: "At least 55 cm of the flex were looked at on all sides.",
            },
            AnswerWords { code: "less", answer: "less than 55 cm", says: "Less than 55 cm of the flex could be seen." },
        ],
        says: "",
        caution: "",
    },
    QuestionWords {
        id: "flex-maker",
        asks: "Is there a maker’s name or mark on the flex?",
        topic: "whether a maker’s name or mark is on the flex",
        answers: &[
            AnswerWords {
                code: "name-or-mark",
                answer: "yes, a name or a mark",
                says: "A maker’s name or mark is printed on the flex.",
            },
            AnswerWords { code: "none", answer: "none to be seen", says: "No maker’s name or mark is on the flex." },
        ],
        says: "",
        caution: "",
    },
    QuestionWords {
        id: "flex-length",
        asks: "How long is the flex?",
        topic: "how long the flex is",
        answers: &[],
        says: "The flex is {value} long.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "flex-diameter",
        asks: "How thick is the flex from outside?",
        topic: "how thick the flex is from outside",
        answers: &[],
        says: "The flex measures {value} across.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "earth-colour",
        asks: "What colour is the earth wire?",
        topic: "what colour the earth wire is",
        answers: &[
            AnswerWords {
                code: "green-and-yellow",
                answer: "green and yellow, about half each",
                says: "The earth wire is green and yellow, about half each.",
            },
            AnswerWords {
                code: "nearly-one-colour",
                answer: "green and yellow, but nearly all one",
                says: "The earth wire is nearly all of one colour, with only a trace of the other.",
            },
            AnswerWords { code: "green", answer: "green only", says: "The earth wire is plain green." },
            AnswerWords { code: "yellow", answer: "yellow only", says: "The earth wire is plain yellow." },
            AnswerWords {
                code: "other",
                answer: "another colour",
                says: "The earth wire is neither green nor yellow.",
            },
            AnswerWords {
                code: "green-and-yellow-is-live",
                answer: "green-and-yellow goes to a live pin",
                says: "The green-and-yellow wire goes to line or neutral and not to earth.",
            },
        ],
        says: "",
        caution: "Unplugged, always. Before you cut the flex, take the fuse out and destroy the plug: a cut flex on a plug kills.",
    },
    QuestionWords {
        id: "line-neutral-colours",
        asks: "What colours are the other two wires?",
        topic: "what colours the other two wires are",
        answers: &[
            AnswerWords {
                code: "brown-and-blue",
                answer: "brown to line, blue to neutral",
                says: "Line is brown and neutral is blue.",
            },
            AnswerWords {
                code: "swapped",
                answer: "blue to line, brown to neutral",
                says: "Blue goes to line and brown to neutral: they are swapped.",
            },
            AnswerWords {
                code: "red-and-black",
                answer: "red and black",
                says: "Line and neutral have the old colours, red and black.",
            },
            AnswerWords {
                code: "black-and-white",
                answer: "black and white",
                says: "Line and neutral have American colours, black and white.",
            },
            AnswerWords {
                code: "other",
                answer: "other colours",
                says: "Line and neutral are neither brown and blue nor any older pair.",
            },
        ],
        says: "",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "maker-thread",
        asks: "Is there a thin coloured thread inside?",
        topic: "whether there is a thin coloured thread inside",
        answers: &[
            AnswerWords {
                code: "thread",
                answer: "yes, among the wires",
                says: "A thin coloured thread lies among the wires of the flex.",
            },
            AnswerWords { code: "no-thread", answer: "no thread", says: "No thread lies among the wires of the flex." },
        ],
        says: "",
        caution: "Unplugged, fuse out, plug destroyed. Cut away from your hand.",
    },
    QuestionWords {
        id: "sheath-thickness",
        asks: "How thick is the outer layer at its thinnest?",
        topic: "how thick the outer layer is at its thinnest",
        answers: &[],
        says: "The outer layer of the flex is {value} thick at its thinnest.",
        caution: "Unplugged, fuse out, plug destroyed. Wash your hands after stripping plastic.",
    },
    QuestionWords {
        id: "insulation-thickness",
        asks: "How thick is the thinnest wire’s insulation?",
        topic: "how thick the thinnest wire’s insulation is",
        answers: &[],
        says: "The insulation of the thinnest wire is {value} thick at its thinnest.",
        caution: "Unplugged, fuse out, plug destroyed. Wash your hands after stripping plastic.",
    },
];
