//! What is asked with the body open, and what the answers say.

use crate::words::question::{AnswerWords, QuestionWords};

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "switch-opens",
        asks: "Switch off: which short pin falls silent?",
        topic: "which pole the switch opens",
        answers: &[
            AnswerWords { code: "line", answer: "line", says: "The switch opens line." },
            AnswerWords { code: "both", answer: "both line and neutral", says: "The switch opens line and neutral." },
            AnswerWords {
                code: "neutral",
                answer: "neutral only",
                says: "The switch opens neutral and leaves line joined.",
            },
            AnswerWords {
                code: "neither",
                answer: "neither: both still beep",
                says: "The switch opens neither line nor neutral.",
            },
        ],
        says: "",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "opened",
        asks: "Can you open the body?",
        topic: "whether the body opens",
        answers: &[
            AnswerWords { code: "opened", answer: "it is open", says: "The body was opened." },
            AnswerWords { code: "stays-closed", answer: "it stays closed", says: "The body stays closed." },
        ],
        says: "",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead. Eye protection for glue and cracked fuses. Do not open it at a stall.",
    },
    QuestionWords {
        id: "seen-inside",
        asks: "Do you see any of these inside?",
        topic: "whether anything is burnt, loose or hurt inside",
        answers: &[
            AnswerWords {
                code: "scorched",
                answer: "black, brown or charred spots",
                says: "There are scorched spots inside.",
            },
            AnswerWords {
                code: "stray-conductor",
                answer: "loose wire, strand or metal that can move",
                says: "There is a loose wire, strand or bit of metal inside that can move to another pole.",
            },
            AnswerWords { code: "melted", answer: "melted insulation", says: "Insulation inside has melted." },
            AnswerWords {
                code: "nicked",
                answer: "cut, pinched or scraped insulation",
                says: "Insulation inside is cut, pinched or scraped.",
            },
            AnswerWords {
                code: "foreign-matter",
                answer: "solder balls, dirt, things left behind",
                says: "There are things inside that do not belong there.",
            },
        ],
        says: "No burns, loose metal, hurt insulation or dirt were seen inside.",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "earth-joined-to",
        asks: "What is the green-and-yellow wire joined to?",
        topic: "what the green-and-yellow wire is joined to",
        answers: &[
            AnswerWords {
                code: "every-socket",
                answer: "the earth of every socket",
                says: "The green-and-yellow wire is joined to the earth of every socket.",
            },
            AnswerWords {
                code: "some-sockets",
                answer: "only some of the sockets",
                says: "The green-and-yellow wire is joined to the earth of some sockets only.",
            },
            AnswerWords { code: "nothing", answer: "nothing", says: "The green-and-yellow wire is joined to nothing." },
            AnswerWords {
                code: "no-earth-core",
                answer: "there is no such wire",
                says: "There is no green-and-yellow wire.",
            },
        ],
        says: "",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "joints",
        asks: "Do you see any of these joints?",
        topic: "whether joints and contacts are sound",
        answers: &[
            AnswerWords {
                code: "solder-alone",
                answer: "wires held by solder and nothing else",
                says: "Wires are held by solder and nothing else.",
            },
            AnswerWords {
                code: "terminal-unsupported",
                answer: "terminals or contacts that nothing holds",
                says: "Terminals or contacts are held by nothing.",
            },
            AnswerWords {
                code: "contact-flimsy",
                answer: "contacts that bend at a touch",
                says: "The socket contacts bend at a touch.",
            },
        ],
        says: "No poor joints or contacts were seen.",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "wires-inside",
        asks: "How thick is the copper inside?",
        topic: "how thick the copper inside is",
        answers: &[
            AnswerWords {
                code: "metal-bars",
                answer: "metal bars feed the sockets",
                says: "Metal bars feed the sockets.",
            },
            AnswerWords {
                code: "as-thick-as-the-flex",
                answer: "wires as thick as the flex’s",
                says: "The wires inside are as thick as those of the flex.",
            },
            AnswerWords {
                code: "thinner-than-the-flex",
                answer: "wires thinner than the flex’s",
                says: "The wires inside are thinner than those of the flex.",
            },
        ],
        says: "",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "colours-inside",
        asks: "Which colours do the wires inside have?",
        topic: "which colours the wires inside have",
        answers: &[
            AnswerWords {
                code: "right-or-bars",
                answer: "brown, blue, green-and-yellow, or bars",
                says: "The wires inside have the right colours, or there are bars.",
            },
            AnswerWords {
                code: "other-colours",
                answer: "other colours, or swapped",
                says: "The wires inside have other colours, or they are swapped.",
            },
            AnswerWords {
                code: "green-and-yellow-is-live",
                answer: "green-and-yellow is line or neutral",
                says: "A green-and-yellow wire inside carries line or neutral.",
            },
        ],
        says: "",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "parts-inside",
        asks: "Which of these parts do you see?",
        topic: "which protective parts are inside",
        answers: &[
            AnswerWords {
                code: "surge-part",
                answer: "a surge part: a coated disc",
                says: "There is a surge part inside.",
            },
            AnswerWords {
                code: "overload-cut-out",
                answer: "an overload cut-out with a button",
                says: "There is an overload cut-out.",
            },
            AnswerWords {
                code: "thermal-fuse",
                answer: "a thermal fuse on something that heats",
                says: "There is a thermal fuse inside.",
            },
            AnswerWords {
                code: "switch",
                answer: "a switch that opens wires",
                says: "There is a switch that opens wires.",
            },
        ],
        says: "There is no surge part, cut-out, thermal fuse or switch inside.",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "surge-part",
        asks: "What keeps the surge part from burning?",
        topic: "what keeps the surge part from burning",
        answers: &[
            AnswerWords {
                code: "with-thermal-fuse",
                answer: "a thermal fuse touches it",
                says: "A thermal fuse touches the surge part.",
            },
            AnswerWords { code: "bare", answer: "nothing", says: "Nothing keeps the surge part from burning." },
            AnswerWords { code: "scorched", answer: "it is scorched already", says: "The surge part is scorched." },
        ],
        says: "",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "across-the-barrier",
        asks: "What joins the mains side to the USB side?",
        topic: "what joins the mains side to the USB side",
        answers: &[
            AnswerWords {
                code: "nothing",
                answer: "only the transformer",
                says: "Nothing but the transformer joins the mains side of the supply to its output.",
            },
            AnswerWords {
                code: "one-y1",
                answer: "one capacitor marked Y1",
                says: "One capacitor marked Y1 joins the mains side of the supply to its output.",
            },
            AnswerWords {
                code: "two-y2",
                answer: "two capacitors marked Y2, in a row",
                says: "Two capacitors marked Y2, in a row, join the mains side of the supply to its output.",
            },
            AnswerWords {
                code: "one-y2",
                answer: "a single capacitor marked Y2",
                says: "A single capacitor marked Y2 joins the mains side of the supply to its output.",
            },
            AnswerWords {
                code: "class-x",
                answer: "a capacitor marked X1 or X2",
                says: "A capacitor marked X joins the mains side of the supply to its output.",
            },
            AnswerWords {
                code: "ordinary",
                answer: "an ordinary capacitor",
                says: "An ordinary capacitor joins the mains side of the supply to its output.",
            },
            AnswerWords {
                code: "unmarked",
                answer: "a part with no print",
                says: "A part with no print joins the mains side of the supply to its output.",
            },
        ],
        says: "",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "creepage",
        asks: "How far apart along the board, at the closest?",
        topic: "how far mains and USB keep apart along the board",
        answers: &[],
        says: "Along the board the mains side keeps {value} from the USB side.",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "clearance",
        asks: "How far apart through the air, at the closest?",
        topic: "how far mains and USB keep apart through the air",
        answers: &[],
        says: "Through the air the mains side keeps {value} from the USB side.",
        caution: "Unplugged. Nobody uses it again once it was opened. With a USB supply wait 5 minutes, then make sure with a meter that its large capacitor is dead.",
    },
    QuestionWords {
        id: "core-count",
        asks: "How many wires has the flex, by sight?",
        topic: "how many wires the flex has",
        answers: &[
            AnswerWords { code: "three", answer: "three", says: "The flex has three wires." },
            AnswerWords { code: "two", answer: "two", says: "The flex has two wires." },
            AnswerWords { code: "other", answer: "another number", says: "The flex has neither two nor three wires." },
        ],
        says: "",
        caution: "Unplugged, with the fuse out.",
    },
    QuestionWords {
        id: "may-cut",
        asks: "May the flex be cut up?",
        topic: "whether the flex may be cut up",
        answers: &[
            AnswerWords { code: "yes", answer: "yes, this sample may be destroyed", says: "The flex may be cut up." },
            AnswerWords {
                code: "no",
                answer: "no, it stays whole",
                says: "The flex stays whole, so the metal in it is not looked at.",
            },
        ],
        says: "",
        caution: "Take the fuse out first, and cut the pins off or hammer them flat as soon as the plug is off: a plug on a cut flex kills if somebody plugs it in. Wash your hands after stripping PVC.",
    },
];
