//! What a check found: outcome, how much it matters, evidence and reason, all as data; the sentences are made in `words`.

use super::decision::Probability;
use super::physics::fault::Course;
use super::physics::heating::{Steady, Warmth};
use super::physics::metal::{Candidate, Explanation};
use super::physics::signs::Look;
use super::quantity::Amount;
use super::question::{Core, Question, Target};
use super::sample::Place;
use super::standard::Clause;

/// Outcome of a check (terms of ISO/IEC 17000).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Conformity {
    /// Keeps the rule; inside the limit.
    Conforms,
    /// The check does not apply to this sample.
    NotApplicable,
    /// Nobody looked.
    NotExamined,
    /// Looked at, and it could not be told.
    Inconclusive,
    /// Breaks the rule; outside the limit.
    Nonconforming,
}

impl Conformity {
    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Conforms => "conforms",
            Self::NotApplicable => "not-applicable",
            Self::NotExamined => "not-examined",
            Self::Inconclusive => "inconclusive",
            Self::Nonconforming => "nonconforming",
        }
    }
}

/// How much a break matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Poor or dishonest work, or a mere hint; never decides.
    BadSign,
    /// Breaks a law or standard.
    Breach,
    /// Can hurt or kill, or set fire.
    Danger,
}

impl Severity {
    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::BadSign => "bad-sign",
            Self::Breach => "breach",
            Self::Danger => "danger",
        }
    }
}

/// What an outcome rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Basis {
    /// Print only: a claim. It can break a rule, but a danger stays untested until it is seen or measured.
    Print,
    /// Something seen or tried.
    Sight,
    /// A reading against a limit.
    Reading,
}

/// Whether an outcome may decide the verdict.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bearing {
    /// It counts.
    Decides,
    /// It is told and counts as looked at, but decides nothing (recalled tolerances within their doubt, notes).
    IsOnlyTold,
}

/// One value that an outcome rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Evidence {
    /// Which socket, core or claim it speaks of.
    pub target: Target,
    /// The question whose reading it speaks of; `None` where the check reads one thing only.
    pub question: Option<&'static Question>,
    /// What was compared with the limit.
    pub value: Amount,
    /// Its standard uncertainty.
    pub u: Amount,
    /// The limit it was held against.
    pub limit: Bound,
    /// The probability that the true value keeps the limit.
    pub probability: Probability,
    /// What that amounts to.
    pub outcome: Conformity,
    /// The same with every doubt granted to the product.
    pub favour: Favour,
}

impl Evidence {
    /// The same, of the reading of one question among several.
    #[must_use]
    pub const fn of(mut self, question: &'static Question) -> Self {
        self.question = Some(question);
        self
    }
}

/// A limit with its kind of quantity kept as data.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Bound {
    /// No less than.
    AtLeast(Amount),
    /// No more than.
    AtMost(Amount),
    /// Between two values.
    Between(Amount, Amount),
}

/// What a check makes of the answers.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgement {
    /// The outcome.
    pub outcome: Conformity,
    /// How much a break matters in this case.
    pub severity: Severity,
    /// What the outcome rests on.
    pub basis: Basis,
    /// Whether it may decide.
    pub bearing: Bearing,
    /// Why, as data.
    pub reason: Reason,
    /// The values it rests on.
    pub evidence: Vec<Evidence>,
}

/// A check's outcome for this sample.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// The check's code.
    pub code: &'static str,
    /// Where one looks for it.
    pub place: Place,
    /// What was found.
    pub judgement: Judgement,
    /// What it is held against in the market where it is sold.
    pub against: Vec<Clause>,
    /// The questions whose answers it rests on, or would.
    pub asks: &'static [&'static Question],
}

impl Finding {
    /// The outcome.
    pub const fn outcome(&self) -> Conformity {
        self.judgement.outcome
    }

    /// Whether it breaks a rule at a severity.
    pub fn breaks(&self, severity: Severity) -> bool {
        self.judgement.outcome == Conformity::Nonconforming
            && self.judgement.severity == severity
            && self.judgement.bearing == Bearing::Decides
    }

    /// The smallest conformance probability among its evidence.
    pub fn probability(&self) -> Option<Probability> {
        let by_size = |a: &Probability, b: &Probability| a.value().total_cmp(&b.value());
        self.judgement.evidence.iter().map(|e| e.probability).min_by(by_size)
    }
}

/// Why an outcome is what it is. Words are found for each in `words::reason`.
#[derive(Debug, Clone, PartialEq)]
pub enum Reason {
    /// An answer says so.
    Answered {
        /// The question.
        question: &'static str,
        /// Which one it was asked of.
        target: Target,
        /// The answer's code.
        answer: &'static str,
    },
    /// None of the answers that would break it was given.
    NothingWrongAnswered,
    /// Nobody answered what it needs.
    NotAsked,
    /// Somebody looked and could not tell.
    CouldNotTell,
    /// The seller would not let one look.
    Refused,
    /// The check has nothing to say about this sample.
    DoesNotApply,
    /// Readings decide, see the evidence.
    Measured,
    /// Some of the sockets or cores were read, and not all.
    OnlySomeRead {
        /// How many were read.
        read: u8,
        /// How many there are.
        of: u8,
    },
    /// A reading taken with leads not taken off cannot clear so short a piece.
    LeadsNotTakenOff,
    /// What is printed could not be read as a rating or designation.
    PrintNotUnderstood {
        /// Where it stands.
        place: ClaimPlace,
    },
    /// Something the decision needs is not known.
    Needs(Needed),
    /// Two places state different things.
    ClaimsDisagree {
        /// The place that states the higher value.
        higher: (ClaimPlace, Amount),
        /// The place that states the lower value.
        lower: (ClaimPlace, Amount),
    },
    /// Watts above what volts times amperes allow.
    WattsAboveVoltsTimesAmperes {
        /// Where it stands.
        place: ClaimPlace,
        /// The stated power.
        watts: Amount,
        /// The most that volts times amperes allow, with the stated digits.
        at_most: Amount,
    },
    /// A claimed value against another value.
    ClaimAgainst {
        /// Where the claim stands.
        place: ClaimPlace,
        /// The claim.
        claim: Amount,
        /// What it is held against.
        limit: Amount,
    },
    /// A claim that keeps the rule, as far as print can.
    FitsTheClaim,
    /// No place states it.
    NowhereStated,
    /// The flex's print names a type that does not suit this product.
    FlexType {
        /// The designation as understood.
        designation: String,
    },
    /// Readings outside what an instrument can show.
    OutOfRange,
    /// The cores' resistance over length decides, see the evidence.
    CoresMeasured {
        /// Where the temperature of the room came from.
        room: RoomTemperature,
        /// What could explain the worst core if it had the area it is held to; `None` where no core breaks its limit.
        explanation: Option<Explanation>,
        /// What makes the break a danger; `None` where nothing does.
        danger: Option<CoreDanger>,
        /// What a fault to earth does, where that is worth telling.
        fault: Option<FaultTold>,
    },
    /// A core has no path from end to end.
    CoreOpen {
        /// The core.
        core: Core,
    },
    /// The heat balance of the straight flex in still air.
    HeatBalance {
        /// The claimed current.
        current: Amount,
        /// Where it leads the conductors.
        conductor: Steady,
        /// The coolest and the hottest that readings and model allow.
        between: (Steady, Steady),
        /// The current that brings them to 60 °C.
        carries: Amount,
    },
    /// The metals that the cores may be of.
    Metals {
        /// Those that cannot be told apart, the likeliest first.
        candidates: Vec<Candidate>,
        /// Whether no metal explains all that was seen and read, so that something of it is wrong.
        contradict: bool,
        /// What would tell most; `None` where it is settled, or nothing would.
        next: Option<Look>,
        /// Whether a break stands when what the cross-checks suggest is granted; `None` where there is nothing to grant.
        stands: Option<bool>,
    },
    /// Readings held against each other and against a wire of known size.
    CrossChecked(Vec<CrossCheck>),
    /// An answer that should be among those that fit is not: a mark or a name is missing.
    NotAmong {
        /// The question.
        question: &'static str,
        /// The code of the answer that was not given.
        answer: &'static str,
    },
    /// The fuse's rating against the largest that something else allows.
    FuseAgainst {
        /// The rating of the fuse; `None` where it is only known to be above the limit.
        fuse: Option<Amount>,
        /// The largest it may be.
        limit: Amount,
    },
    /// What is printed there is what breaks the rule, or cannot be understood.
    Reads {
        /// The print.
        print: String,
    },
    /// An RCD, a timer or electronics may hold the poles open while the lead is dead: silence then proves nothing.
    PolesOpenWhenDead,
    /// The insulation was not tested at the voltage that decides: 500 V d.c., or 250 V where surge parts are fitted.
    WrongTestVoltage,
    /// The earth path keeps its limit, but the cores were not read: a short lead with far too little copper keeps it too.
    ClearsOnlyWithCores,
    /// The readings failed a cross-check: they clear nothing.
    CrossCheckFailed,
    /// A stated cross-section under the one that is needed.
    FlexShort {
        /// Where it is stated.
        place: ClaimPlace,
        /// The stated cross-section.
        claim: Amount,
        /// The one that is needed.
        limit: Amount,
        /// How warm such a flex gets; empty where it is thinner than any that is modelled.
        warmth: Vec<Warmth>,
    },
}

/// Where the temperature of the room came from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RoomTemperature {
    /// It was read.
    Read,
    /// Nobody read it: taken as 20 °C, give or take 5 K.
    Assumed,
}

/// What a fault to earth does, and whether it is sure which core is the earth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FaultTold {
    /// What it does.
    pub course: Course,
    /// Whether somebody saw which core goes to the earth pin.
    pub earth_was_seen: bool,
}

/// What makes too little conductor a danger.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CoreDanger {
    /// A core has more than one and a half times the resistance allowed.
    HalfAsMuchAgain,
    /// The flex overheats at the claimed current.
    Overheats,
    /// In a fault the earth core opens before the fuse.
    EarthOpensFirst,
}

pub use super::cross_check::{CrossCheck, Crossed};
pub use super::favour::{Favour, Granted, GrossError};
pub use super::question::ClaimPlace;

/// Something that a decision needs and that is not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Needed {
    /// The cross-section that the flex claims.
    ClaimedArea,
    /// The current that the product claims.
    ClaimedCurrent,
    /// The length of the flex.
    FlexLength,
    /// The rating of the fuse.
    FuseRating,
    /// The diameter of the flex.
    FlexDiameter,
    /// The resistance of the cores.
    CoreResistance,
    /// The preconditions of dead readings: switches on, fuse in, nothing connected.
    ReadingsPrepared,
    /// The length of the piece whose cores were read.
    PieceLength,
    /// The size and length of the known wire.
    KnownWire,
}
