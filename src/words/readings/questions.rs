//! What is asked while the sample is dead, and what the answers say.

use crate::words::question::{AnswerWords, QuestionWords};

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "readings-prepared",
        asks: "What have you made sure of?",
        topic: "whether it was ready to be read",
        answers: &[
            AnswerWords { code: "unplugged", answer: "it is unplugged", says: "It is unplugged." },
            AnswerWords {
                code: "nothing-connected",
                answer: "nothing is plugged into it",
                says: "Nothing is plugged into it.",
            },
            AnswerWords {
                code: "switches-on",
                answer: "every switch is on, or there is none",
                says: "Every switch on it is on, or there is none.",
            },
            AnswerWords {
                code: "fuse-good",
                answer: "its fuse is in, and beeps end to end",
                says: "Its fuse is in and known to be good.",
            },
        ],
        says: "Nothing was made ready for the readings.",
        caution: "The plug lies on the table where you see it, all the time. To reach a plug’s partner, use a loose socket that is wired to nothing.",
    },
    QuestionWords {
        id: "earth-path",
        asks: "Earth pin to the earth of {which}: does it beep?",
        topic: "whether there is a path from the plug’s earth pin to the earth of {which}",
        answers: &[
            AnswerWords {
                code: "beeps",
                answer: "it beeps all the while",
                says: "A tester beeps all the while from the plug’s earth pin to the earth of {which}.",
            },
            AnswerWords {
                code: "comes-and-goes",
                answer: "it comes and goes",
                says: "The beep from the plug’s earth pin to the earth of {which} comes and goes when the flex is bent.",
            },
            AnswerWords {
                code: "silent",
                answer: "it stays silent",
                says: "A tester stays silent from the plug’s earth pin to the earth of {which}.",
            },
        ],
        says: "",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "earth-resistance",
        asks: "What does the earth of {which} read?",
        topic: "what the earth of {which} reads",
        answers: &[],
        says: "From the plug’s earth pin to the earth of {which} it reads {value}.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "earth-while-bent",
        asks: "What does the reading do while you bend the flex?",
        topic: "what the earth reading does while the flex is bent",
        answers: &[
            AnswerWords {
                code: "steady",
                answer: "it stays steady",
                says: "The earth reading stays steady while the flex is bent.",
            },
            AnswerWords {
                code: "jumps",
                answer: "it jumps or drops out",
                says: "The earth reading jumps or drops out while the flex is bent.",
            },
            AnswerWords {
                code: "open-all-the-while",
                answer: "there is no path at all",
                says: "There is no earth path at all while the flex is bent.",
            },
        ],
        says: "",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "pole-path",
        asks: "Where do line and neutral beep at {which}?",
        topic: "whether line and neutral are where they belong at {which}",
        answers: &[
            AnswerWords {
                code: "both-beep",
                answer: "both, each in its own hole",
                says: "At {which} line and neutral are each where they belong.",
            },
            AnswerWords {
                code: "crossed",
                answer: "both, but the wrong way round",
                says: "At {which} line and neutral are the wrong way round.",
            },
            AnswerWords {
                code: "line-silent",
                answer: "neutral beeps, line is silent",
                says: "At {which} line has no path from the plug.",
            },
            AnswerWords {
                code: "neutral-silent",
                answer: "line beeps, neutral is silent",
                says: "At {which} neutral has no path from the plug.",
            },
            AnswerWords {
                code: "both-silent",
                answer: "both are silent",
                says: "At {which} neither line nor neutral has a path from the plug.",
            },
        ],
        says: "",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "poles-together",
        asks: "Plug’s line pin to its neutral pin: a beep?",
        topic: "whether there is a path from the plug’s line pin to its neutral pin",
        answers: &[
            AnswerWords {
                code: "silent",
                answer: "silent",
                says: "From the plug’s line pin to its neutral pin a tester stays silent.",
            },
            AnswerWords {
                code: "beeps-for-a-moment",
                answer: "a beep that ends at once",
                says: "From the plug’s line pin to its neutral pin a tester beeps for a moment only.",
            },
            AnswerWords {
                code: "beeps",
                answer: "a beep that lasts",
                says: "From the plug’s line pin to its neutral pin a tester beeps.",
            },
        ],
        says: "",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "pole-resistance",
        asks: "What do the two short pins read?",
        topic: "what the two lower pins read, from one to the other",
        answers: &[],
        says: "From the plug’s line pin to its neutral pin it reads {value}.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "earth-to-poles",
        asks: "Long pin to a short pin: beep, or under 1 MΩ?",
        topic: "whether line or neutral has a path to earth",
        answers: &[
            AnswerWords {
                code: "neither",
                answer: "neither short pin",
                says: "Neither line nor neutral has a path to earth.",
            },
            AnswerWords { code: "line", answer: "the line pin", says: "Line has a path to earth." },
            AnswerWords { code: "neutral", answer: "the neutral pin", says: "Neutral has a path to earth." },
            AnswerWords {
                code: "both",
                answer: "both short pins",
                says: "Line and neutral both have a path to earth.",
            },
        ],
        says: "",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "insulation-test",
        asks: "How do you test the insulation?",
        topic: "at what voltage the insulation is to be tested",
        answers: &[
            AnswerWords {
                code: "500-v",
                answer: "500 V d.c., short pins joined",
                says: "The insulation was tested at 500 V d.c., line and neutral joined.",
            },
            AnswerWords {
                code: "250-v",
                answer: "250 V d.c., short pins joined",
                says: "The insulation was tested at 250 V d.c., line and neutral joined.",
            },
            AnswerWords {
                code: "less-than-250-v",
                answer: "with less, or an ordinary meter",
                says: "The insulation was tested at less than 250 V.",
            },
            AnswerWords {
                code: "not-joined",
                answer: "the short pins are not joined",
                says: "The insulation was tested without joining line and neutral.",
            },
        ],
        says: "",
        caution: "500 V hurts. Nobody touches the sample while it is tested; afterwards wait until it is discharged, and take the joining wire off.",
    },
    QuestionWords {
        id: "insulation",
        asks: "What does the insulation read?",
        topic: "what the insulation reads",
        answers: &[],
        says: "From line and neutral together to earth it reads {value}.",
        caution: "500 V hurts. Nobody touches the sample while it is tested; afterwards wait until it is discharged, and take the joining wire off.",
    },
    QuestionWords {
        id: "output-insulation",
        asks: "USB output to both short pins: what does it read?",
        topic: "what the insulation of the USB output reads",
        answers: &[],
        says: "From the USB output to line and neutral together it reads {value}.",
        caution: "500 V hurts. Nobody touches the sample while it is tested; afterwards wait until it is discharged.",
    },
    QuestionWords {
        id: "fuse-taken-out",
        asks: "Fuse taken out: what still beeps to a socket?",
        topic: "what still reaches a socket with the fuse out",
        answers: &[
            AnswerWords {
                code: "only-neutral-beeps",
                answer: "only neutral",
                says: "With the fuse out only neutral still reaches a socket.",
            },
            AnswerWords {
                code: "line-still-beeps",
                answer: "line still does",
                says: "With the fuse out line still reaches a socket.",
            },
            AnswerWords {
                code: "neither-beeps",
                answer: "neither line nor neutral",
                says: "With the fuse out neither line nor neutral reaches a socket.",
            },
        ],
        says: "",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "room-temperature",
        asks: "How warm is the room?",
        topic: "how warm the room is",
        answers: &[],
        says: "The room has {value}.",
        caution: "",
    },
];
