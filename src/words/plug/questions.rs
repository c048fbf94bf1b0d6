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
        look: "Look at the pins. A British plug has two flat pins below and a longer one above.",
        why: "A plug that does not fit is forced in or used with a travel adaptor, and the earth is lost.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "converter",
        asks: "How does the converter sit on the plug?",
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
        look: "Look for BS 1363-5 on the converter, and pull at it gently.",
        why: "A converter that is made for it and stays on is allowed; a loose adaptor is not.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "plug-make",
        asks: "How is the plug made?",
        answers: &[
            answer("moulded", "in one piece with the flex", "The plug is moulded in one piece with the flex."),
            answer("rewirable", "with a cover held by a screw", "The plug has a cover held by a screw."),
        ],
        says: "",
        look: "Look at the face with the pins: a cover is held by one screw in the middle.",
        why: "A plug with a cover can be opened and looked into.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "under-the-cover",
        asks: "Do you see any of these under the cover?",
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
        look: "Unscrew the cover. Green-and-yellow goes to E, brown to L at the fuse, blue to N. Look at the fuse now too.",
        why: "A wire at the wrong place makes metal live or leaves it without earth.",
        caution: "Unplugged, always. Not at a stall: the plug must be yours.",
    },
    QuestionWords {
        id: "fuse-in-the-holder",
        asks: "What is in the fuse holder?",
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
        look: "The holder is between the pins. Lever it out with a fingernail or a coin; never by force.",
        why: "The circuit behind a wall socket carries 30 A or more. In a fault only the plug’s fuse keeps the flex from burning.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "fuse-rating",
        asks: "How many amperes does the fuse say?",
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
        look: "The number stands on the fuse itself. 3 A is red, 13 A brown; do not go by the plug.",
        why: "The fuse has to suit the flex and the product. No fuse for a plug is larger than 13 A.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "pins-and-sleeves",
        asks: "Do you see any of these on the pins?",
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
        look: "Hold the plug with the pins towards you, the long pin up. Move each pin gently. A plug in order has 9.5 mm from the lower pins to the edge.",
        why: "The sleeves keep fingers from live metal, and the long pin brings the earth before the mains.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "sold-as",
        asks: "Is the plug sold as new?",
        answers: &[
            answer("new", "new", "The plug without sleeves is offered as new."),
            answer(
                "old-stock",
                "old: made before about 1987",
                "The plug is old and was made before sleeves were the rule. It is better replaced.",
            ),
        ],
        says: "",
        look: "Go by the product and not by the seller: an old plug looks old and has no approval mark of today.",
        why: "New goods have had sleeves since 1987. Old plugs without them are not against the law, but should be replaced.",
        caution: "",
    },
    QuestionWords {
        id: "plug-and-flex",
        asks: "Do you see any of these on plug and flex?",
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
        look: "Look at all sides. Pull and twist the flex gently where it enters. The fuse holder and a screwed cover are meant to come off.",
        why: "Each of these puts live metal within reach.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "plug-print",
        asks: "Which of these are printed on the plug?",
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
        look: "Look between the pins and on the back, in slanting light: the print may be raised and of the plug’s own colour.",
        why: "A plug names its maker, BS 1363, its fuse and rating, and who approved it. All of it can be forged.",
        caution: "Unplugged, always.",
    },
    QuestionWords {
        id: "magnet-on-pins",
        asks: "Does a magnet pull at the pins?",
        answers: &[
            answer("no-pull", "no", "A magnet does not pull at the pins."),
            answer("weak-pull", "a little", "A magnet pulls at the pins a little, as at a thin coat of nickel."),
            answer("strong-pull", "strongly, it sticks", "A magnet sticks to a pin: the pin is of steel."),
        ],
        says: "",
        look: "Hold a strong magnet to the bare metal of each pin and note the strongest pull.",
        why: "Pins are of brass, which no magnet pulls. Steel carries badly and rusts.",
        caution: "Unplugged, always.",
    },
];
