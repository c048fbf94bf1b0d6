//! What is asked while the sample is dead, and what the answers say.

use crate::words::question::{AnswerWords, QuestionWords};

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "readings-prepared",
        asks: "What have you made sure of?",
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
        look: "Tap all that is true. Take the fuse out, touch the tester to its two ends, and put it back. Set every switch to on.",
        why: "A switch that is off or a blown fuse looks just like a broken wire, and would condemn a sound lead.",
        caution: "The plug lies on the table where you see it, all the time. To reach a plug’s partner, use a loose socket that is wired to nothing.",
    },
    QuestionWords {
        id: "earth-path",
        asks: "Earth pin to the earth of {which}: does it beep?",
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
        look: "One probe on the long pin of the plug, the other on the metal inside the socket’s top hole. Bend the flex where it enters the plug and where it enters the body.",
        why: "The earth is what makes a fault switch itself off. A beep says that there is a path, not that it is a good one.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "earth-resistance",
        asks: "What does the earth of {which} read?",
        answers: &[],
        says: "From the plug’s earth pin to the earth of {which} it reads {value}.",
        look: "One probe on the long pin of the plug, the other on the metal inside the socket’s top hole. First join the probes and take off what they read, or use four wires. Use 200 mA or less; 25 A only after it read well.",
        why: "In a fault this path must let enough current through to blow the fuse. A meter whose leads were not taken off can show that a short lead is bad, but never that it is good.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "earth-while-bent",
        asks: "What does the reading do while you bend the flex?",
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
        look: "Keep the probes on the earth of the socket farthest from the flex. Bend the flex every way where it enters the plug, then where it enters the body.",
        why: "Broken strands hold while the flex lies still, and let go in use.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "pole-path",
        asks: "Where do line and neutral beep at {which}?",
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
        look: "Hold the plug with its pins towards you and the long pin up: the left pin is line. Look at the socket with the long hole up: the right hole is line. Open the shutter with a loose plug’s earth pin; touch the contacts with thin probes. A connector has L and N beside its holes.",
        why: "Where they are crossed, fuse and switch leave what is plugged in live.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "poles-together",
        asks: "Plug’s line pin to its neutral pin: a beep?",
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
        look: "Touch the two short pins of the plug. A short beep is a part being charged.",
        why: "Line and neutral must not be joined anywhere: the whole current of the wall circuit would flow.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "pole-resistance",
        asks: "What do the two short pins read?",
        answers: &[],
        says: "From the plug’s line pin to its neutral pin it reads {value}.",
        look: "Meter to ohms, one probe on each short pin of the plug. No path at all is what a plain lead reads.",
        why: "Line and neutral must not be joined anywhere. A lamp, surge part or supply reads thousands of ohms; a short reads next to nothing.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "earth-to-poles",
        asks: "Long pin to a short pin: beep, or under 1 MΩ?",
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
        look: "From the long pin to each short pin in turn. With a meter use the highest ohm range; with a tester a beep counts.",
        why: "Earth must be joined to nothing but earth. Otherwise the metal of what is plugged in carries the mains.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "insulation-test",
        asks: "How do you test the insulation?",
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
        look: "Join the two short pins of the plug with a bit of wire or a clip. 500 V d.c.; only 250 V where surge protection is promised or fitted.",
        why: "Weak insulation holds a meter’s few volts and gives way to the mains. Surge parts conduct at 500 V and look like a fault.",
        caution: "500 V hurts. Nobody touches the sample while it is tested; afterwards wait until it is discharged, and take the joining wire off.",
    },
    QuestionWords {
        id: "insulation",
        asks: "What does the insulation read?",
        answers: &[],
        says: "From line and neutral together to earth it reads {value}.",
        look: "One probe on the joined short pins, the other on the long pin. Wait until the display rests. What is beyond the range is typed as it stands, such as > 999.",
        why: "It shows damp, dirt and bruised insulation before they shock or burn.",
        caution: "500 V hurts. Nobody touches the sample while it is tested; afterwards wait until it is discharged, and take the joining wire off.",
    },
    QuestionWords {
        id: "output-insulation",
        asks: "USB output to both short pins: what does it read?",
        answers: &[],
        says: "From the USB output to line and neutral together it reads {value}.",
        look: "Short pins of the plug joined as before. One probe there, the other on the metal shell of the USB socket, then on its contacts; type the lower reading.",
        why: "A telephone on its cable is held in the hand. The mains must not reach it.",
        caution: "500 V hurts. Nobody touches the sample while it is tested; afterwards wait until it is discharged.",
    },
    QuestionWords {
        id: "fuse-taken-out",
        asks: "Fuse taken out: what still beeps to a socket?",
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
        look: "Take the fuse out of the plug. From each short pin of the plug to its own hole in a socket that beeped before. Put the fuse back afterwards.",
        why: "The fuse protects only what is behind it. It must stand in the line.",
        caution: "Unplugged, always. Never put a probe into a live socket, and never plug the sample into one for this.",
    },
    QuestionWords {
        id: "room-temperature",
        asks: "How warm is the room?",
        answers: &[],
        says: "The room has {value}.",
        look: "A thermometer that has lain beside the sample for a while. The sample must be as warm as the room.",
        why: "Copper reads more when it is warm: 4 % for each 10 °C. The limits are made for 20 °C.",
        caution: "",
    },
];
