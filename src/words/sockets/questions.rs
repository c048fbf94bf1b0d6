//! What is asked of the sockets, their body or the connector, and what the answers say.

use crate::words::question::{AnswerWords, QuestionWords};

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "connector-pattern",
        asks: "Which connector is at the other end?",
        topic: "which connector is at the other end",
        answers: &[
            AnswerWords {
                code: "c13",
                answer: "three slots, as on computers (C13, C15)",
                says: "The connector has three slots, as on computers and kettles (C13 or C15).",
            },
            AnswerWords {
                code: "c5",
                answer: "a cloverleaf, as on laptops (C5)",
                says: "The connector has the shape of a cloverleaf (C5).",
            },
            AnswerWords {
                code: "c19",
                answer: "three slots lying flat, large (C19)",
                says: "The connector is the large one with three slots lying flat (C19).",
            },
            AnswerWords {
                code: "two-holes",
                answer: "two holes only, as a figure of eight",
                says: "The connector has two holes only and is for appliances without an earth. Sets of that kind are not what is examined here.",
            },
            AnswerWords {
                code: "other",
                answer: "another shape",
                says: "The connector has a shape that is not in the list.",
            },
            AnswerWords {
                code: "free-ends",
                answer: "no connector: loose wire ends",
                says: "The flex has no connector but free ends.",
            },
        ],
        says: "",
        caution: "Unplugged, always. A plug on a flex with free ends kills when it is plugged in.",
    },
    QuestionWords {
        id: "socket-holes",
        asks: "Is any socket odd in one of these ways?",
        topic: "whether any socket is odd",
        answers: &[
            AnswerWords {
                code: "other-plugs-fit",
                answer: "odd holes that take other plugs too",
                says: "There are holes shaped to take plugs of several countries.",
            },
            AnswerWords { code: "two-holes", answer: "two holes only", says: "There is a socket with two holes only." },
            AnswerWords {
                code: "no-earth-hole",
                answer: "no top hole for the earth pin",
                says: "There is a socket without a hole for the earth pin.",
            },
        ],
        says: "Each socket has the three flat holes of a 13 A socket and no others.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "shutters",
        asks: "Are the two lower holes of each socket closed?",
        topic: "whether the two lower holes of each socket are closed",
        answers: &[
            AnswerWords {
                code: "all-closed",
                answer: "all are closed by a shutter",
                says: "Shutters close the two lower holes of each socket.",
            },
            AnswerWords { code: "some-open", answer: "some stand open", says: "Some of the lower holes stand open." },
            AnswerWords {
                code: "all-open",
                answer: "all stand open: no shutters",
                says: "The lower holes have no shutters.",
            },
        ],
        says: "",
        caution: "Unplugged, always. Only look: push nothing in.",
    },
    QuestionWords {
        id: "earth-holes",
        asks: "Is there metal inside each earth hole?",
        topic: "whether there is metal inside each earth hole",
        answers: &[
            AnswerWords {
                code: "metal-in-all",
                answer: "metal in all of them",
                says: "There is metal inside each earth hole. That it is connected is not shown by this.",
            },
            AnswerWords {
                code: "some-empty",
                answer: "some are empty",
                says: "Some earth holes have no metal in them.",
            },
            AnswerWords { code: "all-empty", answer: "no metal in any", says: "No earth hole has metal in it." },
        ],
        says: "",
        caution: "Unplugged, always. Only look: push nothing in.",
    },
    QuestionWords {
        id: "body-condition",
        asks: "Do you see any of these on the body?",
        topic: "whether the body is whole and closed",
        answers: &[
            AnswerWords {
                code: "live-metal",
                answer: "metal parts a finger can reach",
                says: "A finger can reach metal parts that are live when it is plugged in.",
            },
            AnswerWords {
                code: "slot-to-the-inside",
                answer: "a slot on the back that goes inside",
                says: "A slot for hanging it up leads to the inside.",
            },
            AnswerWords {
                code: "broken",
                answer: "cracks, or a piece missing",
                says: "The body is cracked or a piece of it is missing.",
            },
            AnswerWords {
                code: "opens-by-hand",
                answer: "it opens or gapes by hand",
                says: "The body opens or gapes when it is twisted by hand.",
            },
            AnswerWords {
                code: "scorched",
                answer: "brown, melted or blistered plastic",
                says: "The plastic at the sockets is brown, melted or blistered.",
            },
        ],
        says: "The body looks whole and closed.",
        caution: "Unplugged, always. Push nothing in.",
    },
    QuestionWords {
        id: "socket-count",
        asks: "How many 13 A sockets are there?",
        topic: "how many 13 A sockets there are",
        answers: &[],
        says: "13 A sockets: {value}.",
        caution: "",
    },
    QuestionWords {
        id: "extras",
        asks: "What else does it have?",
        topic: "what else it has beside plug, flex and sockets",
        answers: &[
            AnswerWords { code: "usb", answer: "USB holes", says: "It has USB outlets." },
            AnswerWords { code: "switch", answer: "a switch", says: "It has a switch." },
            AnswerWords { code: "neon", answer: "a lamp that shows mains", says: "It has a lamp that shows mains." },
            AnswerWords { code: "timer", answer: "a timer", says: "It has a timer." },
            AnswerWords {
                code: "rcd",
                answer: "an RCD, with a test button",
                says: "It has a residual current device (RCD).",
            },
            AnswerWords {
                code: "electronics",
                answer: "other electronics",
                says: "It has other electronics, such as a meter or a remote control.",
            },
        ],
        says: "It has nothing but its plug, flex and sockets or connector.",
        caution: "",
    },
    QuestionWords {
        id: "total-rating",
        asks: "Does the body say how much it carries in all?",
        topic: "whether the body says how much it carries in all",
        answers: &[
            AnswerWords {
                code: "marked",
                answer: "yes, amperes (A) or watts (W)",
                says: "The body states in amperes or watts how much it carries in all.",
            },
            AnswerWords {
                code: "not-marked",
                answer: "no",
                says: "The body does not state how much it carries in all.",
            },
        ],
        says: "",
        caution: "",
    },
    QuestionWords {
        id: "switch-marks",
        asks: "Does the switch say which way is on?",
        topic: "whether the switch says which way is on",
        answers: &[
            AnswerWords {
                code: "marked",
                answer: "yes, by a mark or a lamp",
                says: "The switch says which way is on.",
            },
            AnswerWords { code: "not-marked", answer: "no", says: "The switch does not say which way is on." },
        ],
        says: "",
        caution: "",
    },
    QuestionWords {
        id: "shutter-opened-by",
        asks: "What opens the shutters?",
        topic: "what opens the shutters",
        answers: &[
            AnswerWords {
                code: "one-lower-hole",
                answer: "one stick in one lower hole",
                says: "One thing pushed into one lower hole opens a shutter.",
            },
            AnswerWords {
                code: "stays-open",
                answer: "a shutter stays open afterwards",
                says: "A shutter does not close again.",
            },
            AnswerWords {
                code: "earth-hole",
                answer: "a stick in the top hole",
                says: "The shutters open from the earth hole, and not to one lower hole alone.",
            },
            AnswerWords {
                code: "both-lower-holes",
                answer: "only two sticks, in both lower holes",
                says: "The shutters open only when both lower holes are pushed at once.",
            },
            AnswerWords {
                code: "all-three",
                answer: "only all three holes at once",
                says: "The shutters open only when all three holes are pushed at once.",
            },
        ],
        says: "",
        caution: "Unplugged, with the plug in your sight. Wood or plastic only: nothing metal is ever pushed into a socket.",
    },
    QuestionWords {
        id: "plug-upside-down",
        asks: "Does a good plug go in upside down?",
        topic: "whether a good plug goes in upside down",
        answers: &[
            AnswerWords {
                code: "does-not-enter",
                answer: "no, it does not enter",
                says: "A good plug does not go in upside down.",
            },
            AnswerWords { code: "enters", answer: "yes, its pins enter", says: "A good plug goes in upside down." },
        ],
        says: "",
        caution: "Unplugged. Never do this with a live socket, and use no plug that has a flex with free ends.",
    },
    QuestionWords {
        id: "hole-to-edge",
        asks: "How far is it from a lower hole to the edge?",
        topic: "how far it is from a lower hole to the edge",
        answers: &[],
        says: "It is {value} from the nearest lower hole to the edge of the body.",
        caution: "Unplugged. Keep the jaws of the calliper out of the holes.",
    },
    QuestionWords {
        id: "socket-grip",
        asks: "How does a good plug sit in the sockets?",
        topic: "how a good plug sits in the sockets",
        answers: &[
            AnswerWords { code: "firm", answer: "firmly in all of them", says: "All sockets hold a good plug firmly." },
            AnswerWords { code: "wobbles", answer: "it wobbles", says: "A good plug wobbles in a socket." },
            AnswerWords {
                code: "falls-out",
                answer: "it falls or slips out",
                says: "A good plug falls or slips out of a socket.",
            },
        ],
        says: "",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "connector-earth",
        asks: "Is there a path from the connector’s earth?",
        topic: "whether there is a path from the connector’s earth",
        answers: &[
            AnswerWords {
                code: "path",
                answer: "yes, all the time",
                says: "There is a path from the connector’s earth contact to the plug’s earth pin.",
            },
            AnswerWords {
                code: "comes-and-goes",
                answer: "it comes and goes",
                says: "The path from the connector’s earth contact to the plug’s earth pin comes and goes.",
            },
            AnswerWords {
                code: "no-path",
                answer: "no path",
                says: "There is no path from the connector’s earth contact to the plug’s earth pin.",
            },
        ],
        says: "",
        caution: "Unplugged at both ends, and nothing connected. Never a probe in or from a live socket.",
    },
    QuestionWords {
        id: "contact-metal",
        asks: "Does a magnet pull the live contacts?",
        topic: "whether a magnet pulls the live contacts",
        answers: &[
            AnswerWords {
                code: "not-pulled",
                answer: "not at all",
                says: "A magnet does not pull the line and neutral contacts.",
            },
            AnswerWords {
                code: "weakly",
                answer: "a little",
                says: "A magnet pulls the line and neutral contacts a little.",
            },
            AnswerWords {
                code: "strongly",
                answer: "strongly",
                says: "A magnet pulls the line and neutral contacts strongly.",
            },
        ],
        says: "",
        caution: "Unplugged, always.",
    },
];
