//! Words of the place: plug.

use super::check::CheckWords;
use super::question::{AnswerWords, QuestionWords};

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[QuestionWords {
    id: "fuse-in-the-holder",
    asks: "What is in the fuse holder?",
    answers: &[
        AnswerWords {
            code: "marked-bs-1362",
            answer: "a fuse marked BS 1362",
            says: "The plug has a fuse marked BS 1362.",
        },
        AnswerWords {
            code: "other-marking",
            answer: "a fuse with other marks",
            says: "The plug has a fuse, but BS 1362 is not printed on it.",
        },
        AnswerWords {
            code: "unmarked",
            answer: "a fuse with no print",
            says: "The plug has a fuse with no print at all.",
        },
        AnswerWords {
            code: "bridged",
            answer: "foil, wire or a piece of metal",
            says: "In place of a fuse the plug has foil, wire or a piece of metal.",
        },
        AnswerWords { code: "empty", answer: "nothing: it is empty", says: "The plug's fuse holder is empty." },
        AnswerWords {
            code: "holder-broken",
            answer: "the holder is cracked, loose or gone",
            says: "The plug's fuse holder is cracked, loose or gone.",
        },
        AnswerWords { code: "no-holder", answer: "there is no fuse holder", says: "The plug has no place for a fuse." },
    ],
    says: "",
    look: "The holder is between the pins. Lever it out with a fingernail or a coin; never by force.",
    why: "The circuit behind a wall socket carries 30 A or more. In a fault only the plug's fuse keeps the flex from burning.",
    caution: "Unplugged, always.",
}];

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords {
        code: "fuse-missing",
        wrong: "a plug without a fuse",
        why: "In a fault nothing would stop the current before the flex burns.",
        settles: "Take the fuse holder out and look.",
    },
    CheckWords {
        code: "fuse-link-bridged",
        wrong: "metal in place of the fuse",
        why: "Metal in the fuse's place never opens: in a fault the flex burns.",
        settles: "Take the fuse holder out and look.",
    },
    CheckWords {
        code: "fuse-carrier-missing",
        wrong: "a broken or missing fuse holder",
        why: "The fuse and its clips are live when the plug is in, and fingers can reach them.",
        settles: "Close the holder and pull at it gently.",
    },
];
