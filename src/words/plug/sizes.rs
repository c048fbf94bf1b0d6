//! What is measured on the plug and its fuse.

use crate::words::question::QuestionWords;

const UNPLUGGED: &str = "Unplugged, always.";

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "fuse-length",
        asks: "How long is the fuse?",
        topic: "how long the fuse is",
        answers: &[],
        says: "The fuse is {value} long.",
        caution: UNPLUGGED,
    },
    QuestionWords {
        id: "fuse-diameter",
        asks: "How thick are the caps of the fuse?",
        topic: "how thick the caps of the fuse are",
        answers: &[],
        says: "The caps of the fuse measure {value} across.",
        caution: UNPLUGGED,
    },
    QuestionWords {
        id: "fuse-mass",
        asks: "What does the fuse weigh?",
        topic: "what the fuse weighs",
        answers: &[],
        says: "The fuse weighs {value}.",
        caution: "",
    },
    QuestionWords {
        id: "pin-to-edge",
        asks: "How far is a lower pin from the plug’s edge?",
        topic: "how far a lower pin is from the plug’s edge",
        answers: &[],
        says: "From the nearer of the two lower pins to the edge of the plug it is {value}.",
        caution: UNPLUGGED,
    },
    QuestionWords {
        id: "live-pin-width",
        asks: "How wide are the two lower pins?",
        topic: "how wide the two lower pins are",
        answers: &[],
        says: "The two lower pins are {value} wide.",
        caution: UNPLUGGED,
    },
    QuestionWords {
        id: "earth-pin-width",
        asks: "How wide is the long pin?",
        topic: "how wide the long pin is",
        answers: &[],
        says: "The earth pin is {value} wide.",
        caution: UNPLUGGED,
    },
    QuestionWords {
        id: "pin-thickness",
        asks: "How thick are the pins?",
        topic: "how thick the pins are",
        answers: &[],
        says: "The pin furthest from its size is {value} thick.",
        caution: UNPLUGGED,
    },
    QuestionWords {
        id: "live-pin-length",
        asks: "How long are the two lower pins?",
        topic: "how long the two lower pins are",
        answers: &[],
        says: "The two lower pins are {value} long.",
        caution: UNPLUGGED,
    },
    QuestionWords {
        id: "earth-pin-length",
        asks: "How long is the long pin?",
        topic: "how long the long pin is",
        answers: &[],
        says: "The earth pin is {value} long.",
        caution: UNPLUGGED,
    },
    QuestionWords {
        id: "across-live-pins",
        asks: "How wide is it over the two lower pins?",
        topic: "how wide it is over the two lower pins",
        answers: &[],
        says: "Over the outer sides of the two lower pins it is {value}.",
        caution: UNPLUGGED,
    },
    QuestionWords {
        id: "earth-pin-to-far-side",
        asks: "How far is it over the long pin and a lower one?",
        topic: "how far it is over the long pin and a lower one",
        answers: &[],
        says: "From the far side of the earth pin to the far side of the lower pins it is {value}.",
        caution: UNPLUGGED,
    },
];
