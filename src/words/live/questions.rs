//! What is asked while the sample is energised, and what the answers say.

use crate::words::question::{AnswerWords, QuestionWords};

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "live-competent",
        asks: "Which of these are true?",
        topic: "whether all is ready for live tests",
        answers: &[
            AnswerWords {
                code: "competent",
                answer: "I am trained and allowed to do this",
                says: "The examiner is trained and allowed to test live.",
            },
            AnswerWords {
                code: "place-isolated",
                answer: "the place is set apart and insulated",
                says: "The place is set apart and insulated.",
            },
            AnswerWords {
                code: "rcd",
                answer: "the supply has a 30 mA RCD that was tried",
                says: "The supply has a 30 mA RCD that was tried.",
            },
            AnswerWords {
                code: "not-alone",
                answer: "someone is with me who can switch off",
                says: "Somebody is there who can switch off.",
            },
        ],
        says: "None of what a live test needs was made sure of.",
        caution: "Competent persons only, in an isolated place, behind an RCD, never alone. Local rules and licensed practice come first. Never with a sample that showed a danger. This app advises; it allows nothing.",
    },
    QuestionWords {
        id: "withstand",
        asks: "1250 V between earth and both poles: what happened?",
        topic: "whether the insulation holds 1250 V",
        answers: &[
            AnswerWords {
                code: "held-1250-v",
                answer: "it held 1250 V",
                says: "It held 1250 V between earth and both poles.",
            },
            AnswerWords {
                code: "held-less",
                answer: "it held, at less than 1250 V",
                says: "It held less than 1250 V; no more was tried.",
            },
            AnswerWords {
                code: "broke-down",
                answer: "it broke down at 1250 V or less",
                says: "It broke down at 1250 V or less between earth and both poles.",
            },
            AnswerWords {
                code: "broke-down-above-1250-v",
                answer: "it broke down above 1250 V",
                says: "It broke down above 1250 V between earth and both poles.",
            },
        ],
        says: "",
        caution: "High voltage. Nobody touches the sample while it is tested; discharge it afterwards. Competent persons only, in an isolated place, behind an RCD, never alone. Local rules and licensed practice come first. Never with a sample that showed a danger.",
    },
    QuestionWords {
        id: "touch-current",
        asks: "How much current flows from what is touched?",
        topic: "how much current flows from what is touched",
        answers: &[],
        says: "From what people touch {value} flows to earth.",
        caution: "Competent persons only, in an isolated place, behind an RCD, never alone. Local rules and licensed practice come first. Never with a sample that showed a danger.",
    },
    QuestionWords {
        id: "rcd-trips",
        asks: "What does the built-in RCD do?",
        topic: "what the built-in RCD does",
        answers: &[
            AnswerWords { code: "in-time", answer: "it trips in time", says: "The built-in RCD trips in time." },
            AnswerWords { code: "late", answer: "it trips late", says: "The built-in RCD trips late." },
            AnswerWords { code: "not-at-all", answer: "it does not trip", says: "The built-in RCD does not trip." },
            AnswerWords {
                code: "only-the-button-tried",
                answer: "only its button was tried",
                says: "Only the button of the built-in RCD was tried.",
            },
        ],
        says: "",
        caution: "Competent persons only, in an isolated place, behind an RCD, never alone. Local rules and licensed practice come first. Never with a sample that showed a danger.",
    },
    QuestionWords {
        id: "hottest-spot",
        asks: "How hot is the hottest spot after an hour?",
        topic: "how hot the hottest spot gets",
        answers: &[],
        says: "At its rated current the hottest spot reaches {value}.",
        caution: "Somebody watches it all the time. If it smells, smokes, buzzes or is too hot to hold, switch off at the consumer unit; do not pull the plug. Competent persons only, in an isolated place, behind an RCD, never alone. Local rules and licensed practice come first. Never with a sample that showed a danger.",
    },
    QuestionWords {
        id: "indicator",
        asks: "Does its lamp or meter say what is so?",
        topic: "whether its lamp or meter says what is so",
        answers: &[
            AnswerWords {
                code: "says-what-is",
                answer: "it says what is so",
                says: "Its lamp or meter says what is so.",
            },
            AnswerWords {
                code: "says-what-is-not",
                answer: "it says what is not so",
                says: "Its lamp or meter says what is not so.",
            },
        ],
        says: "",
        caution: "Competent persons only, in an isolated place, behind an RCD, never alone. Local rules and licensed practice come first. Never with a sample that showed a danger.",
    },
];
