//! What is asked of the plug by eye and by hand, and what its answers say.

use crate::words::question::{AnswerWords, QuestionWords};

const fn answer(code: &'static str, answer: &'static str, says: &'static str) -> AnswerWords {
    AnswerWords { code, answer, says }
}

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[
    QuestionWords {
        id: "plug-pattern",
        asks: "What plug is it?",
        topic: "what plug it is",
        answers: &[
            answer("uk-three-pin", "three flat pins, British", "The plug has three flat British pins."),
            answer(
                "uk-plug-with-converter",
                "a foreign plug in a British converter",
                "A foreign plug sits in a British converter.",
            ),
            answer("two-round-pins", "two round pins", "The plug has two round pins."),
            answer("flat-parallel-pins", "flat pins, side by side", "The plug has flat parallel pins."),
            answer("flat-slanted-pins", "flat pins, slanted", "The plug has slanted flat pins."),
            answer("other", "something else", "The plug is of none of the known patterns."),
        ],
        says: "",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "converter",
        asks: "How does the converter sit on the plug?",
        topic: "how the converter sits on the plug",
        answers: &[
            answer(
                "marked-and-fixed",
                "marked BS 1363-5, held by a screw",
                "The converter is marked BS 1363-5 and cannot be taken off without a tool.",
            ),
            answer("not-marked", "fixed, but without that mark", "BS 1363-5 is not printed on the converter."),
            answer("comes-off", "it comes off by hand", "The converter comes off by hand."),
        ],
        says: "",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "plug-make",
        asks: "How is the plug made?",
        topic: "how the plug is made",
        answers: &[
            answer("moulded", "in one piece with the flex", "The plug is moulded in one piece with the flex."),
            answer("rewirable", "with a cover held by a screw", "The plug has a cover held by a screw."),
        ],
        says: "",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "under-the-cover",
        asks: "Do you see any of these under the cover?",
        topic: "whether all is well under the plug’s cover",
        answers: &[
            answer(
                "wrong-terminal",
                "a wire is loose or at the wrong letter",
                "Under the cover a wire is loose or at the wrong terminal.",
            ),
            answer(
                "grip-on-cores",
                "the grip does not hold the outer layer",
                "The cord grip in the plug does not hold the outer layer of the flex.",
            ),
            answer(
                "stray-strand",
                "a strand of wire stands out",
                "A strand of wire stands outside its terminal in the plug.",
            ),
        ],
        says: "Under the plug’s cover all wires are held and in their places.",
        caution: "Unplugged, always. Not at a stall: the plug must be yours.",
    },
    QuestionWords {
        id: "fuse-in-the-holder",
        asks: "What is in the fuse holder?",
        topic: "what is in the fuse holder",
        answers: &[
            answer("marked-bs-1362", "a fuse marked BS 1362", "The plug has a fuse marked BS 1362."),
            answer(
                "other-marking",
                "a fuse with other print",
                "The plug has a fuse, but BS 1362 is not printed on it.",
            ),
            answer("unmarked", "a fuse with no print", "The plug has a fuse with no print at all."),
            answer("glass", "a fuse of glass", "The plug has a fuse of glass."),
            answer(
                "bridged",
                "foil, wire or a piece of metal",
                "In place of a fuse the plug has foil, wire or a piece of metal.",
            ),
            answer("empty", "nothing: it is empty", "The plug’s fuse holder is empty."),
            answer(
                "holder-broken",
                "the holder is cracked, loose or gone",
                "The plug’s fuse holder is cracked, loose or gone.",
            ),
            answer("no-holder", "there is no fuse holder", "The plug has no place for a fuse."),
            answer(
                "under-the-cover",
                "it is under a screwed cover",
                "The fuse is under the plug’s screwed cover, which was not opened.",
            ),
        ],
        says: "",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "fuse-rating",
        asks: "How many amperes does the fuse say?",
        topic: "how many amperes the fuse says",
        answers: &[
            answer("3", "3 A", "The fuse is marked 3 A."),
            answer("5", "5 A", "The fuse is marked 5 A."),
            answer("10", "10 A", "The fuse is marked 10 A."),
            answer("13", "13 A", "The fuse is marked 13 A."),
            answer("above-13", "more than 13 A", "The fuse is marked with more than 13 A."),
            answer("other-up-to-13", "another number up to 13 A", "The fuse is marked with another rating up to 13 A."),
            answer("not-printed", "no number", "No rating is printed on the fuse."),
        ],
        says: "",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "pins-and-sleeves",
        asks: "Do you see any of these on the pins?",
        topic: "whether pins and sleeves are as they should be",
        answers: &[
            answer(
                "no-sleeves",
                "the lower pins are bare metal throughout",
                "The two lower pins have no plastic sleeves.",
            ),
            answer(
                "sleeve-damaged",
                "a sleeve is cut, cracked or loose",
                "A sleeve on a lower pin is cut, cracked, melted or loose.",
            ),
            answer("sleeve-on-earth", "a plastic sleeve on the long pin", "The earth pin has a plastic sleeve."),
            answer("plastic-earth-pin", "the long pin is all plastic", "The earth pin is made of plastic."),
            answer(
                "short-earth-pin",
                "the top pin is no longer than the others",
                "The earth pin is no longer than the other two.",
            ),
            answer("pin-loose", "a pin is loose or bent", "A pin is loose or bent."),
            answer("rolled-sheet", "a pin is hollow or has a seam", "A pin is hollow or folded from sheet metal."),
            answer(
                "near-edge",
                "a lower pin is under 1 cm from the edge",
                "By eye a lower pin is less than 1 cm from the plug’s edge.",
            ),
        ],
        says: "The pins look right: two lower ones with sleeves, a longer bare one above, none loose.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "sold-as",
        asks: "Is the plug sold as new?",
        topic: "whether the plug is sold as new",
        answers: &[
            answer("new", "new", "The plug without sleeves is offered as new."),
            answer(
                "old-stock",
                "old: made before about 1987",
                "The plug is old and was made before sleeves were the rule. It is better replaced.",
            ),
        ],
        says: "",
        caution: "",
    },
    QuestionWords {
        id: "plug-and-flex",
        asks: "Do you see any of these on plug and flex?",
        topic: "whether plug and flex are whole and closed",
        answers: &[
            answer(
                "scorched",
                "brown, melted or bubbled plastic",
                "The plastic of the plug is brown, melted or bubbled.",
            ),
            answer("broken", "a hole, a crack or a piece missing", "The plug is cracked or has a hole."),
            answer("opens-by-hand", "it opens without a tool", "The plug opens without a tool."),
            answer("head-detaches", "the part with the pins comes off", "The part with the pins comes off the plug."),
            answer(
                "cord-moves",
                "the flex slides or turns in the plug",
                "The flex slides or turns where it enters the plug.",
            ),
            answer(
                "second-plug",
                "a plug or pins at the other end too",
                "The flex has a plug or bare pins at its other end too.",
            ),
            answer("severed", "the other end is cut off", "The plug sits on a flex that was cut off."),
        ],
        says: "Plug and flex are whole, closed and in one piece.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "plug-print",
        asks: "Which of these are printed on the plug?",
        topic: "what is printed on the plug",
        answers: &[
            answer("maker", "a maker’s name or mark", "The plug bears a maker’s name or mark."),
            answer("bs-1363", "BS 1363", "BS 1363 is printed on the plug."),
            answer("fuse-sign", "FUSE, FUSED or the fuse symbol", "The plug says that it has a fuse."),
            answer("rating", "amperes, such as 13A", "The plug states its amperes."),
            answer(
                "approval-mark",
                "a kite, ASTA, BSI, Nemko or the like",
                "The plug bears the mark of a body that approves plugs.",
            ),
            answer("ce-or-ukca", "CE or UKCA", "CE or UKCA is printed on the plug."),
        ],
        says: "None of the print that was looked for is on the plug.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "magnet-on-pins",
        asks: "Does a magnet pull at the pins?",
        topic: "whether a magnet pulls at the pins",
        answers: &[
            answer("no-pull", "no", "A magnet does not pull at the pins."),
            answer("weak-pull", "a little", "A magnet pulls at the pins a little, as at a thin coat of nickel."),
            answer("strong-pull", "strongly, it sticks", "A magnet sticks to a pin: the pin is of steel."),
        ],
        says: "",
        caution: "Unplugged, always.",
    },
];
