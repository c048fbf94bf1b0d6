//! Records made up at random, with any question and any answer it takes.

use plugwary::domain::check;
use plugwary::domain::custody::{Acquisition, Custody, Entry, Handling};
use plugwary::domain::decision::Probability;
use plugwary::domain::examination::{Answer, Answered, Examination};
use plugwary::domain::instrument::{Accuracy, Instrument, OwnInstrument};
use plugwary::domain::quantity::{Amount, QuantityKind, Unit};
use plugwary::domain::question::{Ask, ClaimPlace, Core, Per, Question, Target};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::risk::{Scenario, Standing, Step};
use plugwary::domain::sample::{Equipment, Kind, Market, Sample};
use plugwary::domain::standard::eu_risk::Injury;
use plugwary::record::{Attached, Photo, Record, append};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{select, subsequence};

/// Any text, markup and control characters included.
fn text() -> impl Strategy<Value = String> {
    let awkward =
        select(vec!['<', '>', '&', '"', '\'', '\\', '\u{2028}', '\u{2029}', '\u{0}', '\u{1b}', '\u{202e}', 'Ω']);
    vec(prop_oneof![any::<char>(), awkward], 0..30).prop_map(|chars| chars.into_iter().collect())
}

fn moment() -> impl Strategy<Value = String> {
    select(vec![
        "",
        "2026-05-02T11:04:00Z",
        "2026-05-02T11:04:00.125Z",
        "2026-10-25T01:30:00+01:00",
        "2027-01-01T00:00:00-00:30",
    ])
    .prop_map(str::to_owned)
}

fn target(per: Per) -> BoxedStrategy<Target> {
    match per {
        Per::Sample => Just(Target::Sample).boxed(),
        Per::Socket => (1_u8..=20).prop_map(Target::Socket).boxed(),
        Per::Core => select(&Core::ALL[..]).prop_map(Target::Core).boxed(),
        Per::Claim => select(&ClaimPlace::ALL[..]).prop_map(Target::Claim).boxed(),
    }
}

/// A decimal number as somebody types it, and one step of its last digit.
fn typed() -> impl Strategy<Value = (f64, f64)> {
    (1_u32..1_000_000, 0_i32..7).prop_map(|(digits, decimals)| {
        let number = |digits: u32| format!("{digits}e-{decimals}").parse().expect("digits are a number");
        (number(digits), number(1))
    })
}

/// Somebody's own instrument, with the numbers of a maker's data sheet.
fn own(units: Vec<Unit>) -> impl Strategy<Value = OwnInstrument> {
    (text(), 0_u32..500, 0_u32..20, typed(), select(units)).prop_map(|(name, percent, digits, (fixed, _), unit)| {
        let of_reading = f64::from(percent) / 100.0 / 100.0;
        OwnInstrument { name, accuracy: Accuracy { of_reading, digits: f64::from(digits), fixed: (fixed, unit) } }
    })
}

fn reading(kind: QuantityKind, instruments: &'static [Instrument]) -> BoxedStrategy<Answer> {
    let units: Vec<Unit> = Unit::ALL.into_iter().filter(|unit| unit.kind() == kind).collect();
    (typed(), select(units.clone()), select(instruments), 0..4, text(), proptest::option::of(own(units)))
        .prop_map(|((value, step), unit, instrument, side, typed, own)| {
            let amount = Amount::new(value, unit);
            let shown = match side {
                0 => Shown::Value(amount),
                1 => Shown::Above(amount),
                2 => Shown::Below(amount),
                _ => Shown::Open,
            };
            Answer::Reading(Reading { shown, step: Amount::new(step, unit), unit, instrument, own, typed })
        })
        .boxed()
}

fn answer(ask: Ask) -> BoxedStrategy<Answer> {
    let own = match ask {
        Ask::One(codes) => select(codes).prop_map(Answer::One).boxed(),
        Ask::Any(codes) => subsequence(codes, 0..=codes.len()).prop_map(Answer::Any).boxed(),
        Ask::Measure { kind, instruments, .. } => reading(kind, instruments),
        Ask::Printed(_) => text().prop_map(Answer::Printed).boxed(),
        Ask::Count(least, most) => (least..=most).prop_map(Answer::Count).boxed(),
    };
    let flags = select(vec![Answer::Nothing, Answer::CannotTell, Answer::Refused, Answer::NoTool, Answer::Later]);
    prop_oneof![4 => own, 1 => flags].boxed()
}

fn asked() -> impl Strategy<Value = (&'static Question, Target)> {
    select(check::questions().collect::<Vec<_>>()).prop_flat_map(|question| (Just(question), target(question.per)))
}

fn answered() -> impl Strategy<Value = Answered> {
    asked().prop_flat_map(|(question, target)| {
        answer(question.ask).prop_map(move |answer| Answered { question, target, answer })
    })
}

fn examination() -> impl Strategy<Value = Examination> {
    let sample = (text(), text(), select(&Kind::ALL[..]), select(&Market::ALL[..]))
        .prop_map(|(number, title, kind, market)| Sample { number, title, kind, market });
    (sample, select(&Equipment::ALL[..]), vec(answered(), 0..40)).prop_map(|(sample, equipment, answers)| {
        let mut examination = Examination::new(sample, equipment);
        for Answered { question, target, answer } in answers {
            examination.record(question, target, answer);
        }
        examination
    })
}

fn photo() -> impl Strategy<Value = Photo> {
    let media_type = select(vec!["image/jpeg", "image/webp"]).prop_map(str::to_owned);
    let answer = asked().prop_map(|(question, target)| Attached::Answer { question: question.id, target });
    let attached = prop_oneof![4 => answer, 1 => Just(Attached::Origin)];
    (any::<[u128; 2]>(), media_type, any::<[u32; 2]>(), moment(), attached).prop_map(
        |([high, low], media_type, [width, height], taken, attached)| Photo {
            sha256: format!("{high:032x}{low:032x}"),
            media_type,
            width,
            height,
            taken,
            attached,
        },
    )
}

fn custody() -> impl Strategy<Value = Custody> {
    let acquisition = (text(), moment(), [text(), text(), text(), text(), text()]).prop_map(
        |(place, when, [seller, price, order, listing, parcel])| Acquisition {
            place,
            when,
            seller,
            price,
            order,
            listing,
            parcel,
        },
    );
    let by_hand = handling().prop_map(|handling| Entry { handling, link: None });
    (prop_oneof![acquisition, Just(Acquisition::default())], vec(by_hand, 0..4))
        .prop_map(|(acquisition, entries)| Custody { acquisition, entries })
}

/// Anything that somebody may write down of a sample that changed hands.
pub fn handling() -> impl Strategy<Value = Handling> {
    (moment(), text(), text(), text()).prop_map(|(when, who, done, seal)| Handling { when, who, done, seal })
}

fn standing() -> impl Strategy<Value = Standing> {
    select(vec![Standing::Guess, Standing::Weighed])
}

fn step() -> impl Strategy<Value = Step> {
    (text(), typed(), text(), standing()).prop_map(|(happens, (number, _), reason, standing)| Step {
        happens,
        probability: Probability::new(number),
        reason,
        standing,
    })
}

fn scenario() -> impl Strategy<Value = Scenario> {
    let codes: Vec<&'static str> = check::all().map(|check| check.code).collect();
    let said = (text(), text(), select(&Injury::ALL[..]), standing());
    (said, vec(step(), 0..5), subsequence(codes, 0..4)).prop_map(
        |((title, injury_reason, injury, injury_standing), steps, of)| Scenario {
            title,
            steps,
            injury,
            injury_reason,
            injury_standing,
            of,
        },
    )
}

/// Any record that the app could have made.
pub fn record() -> impl Strategy<Value = Record> {
    let said = (any::<u128>(), moment(), moment(), text(), text(), any::<[bool; 2]>());
    let added = (custody(), vec(handling(), 0..4), vec(scenario(), 0..3));
    (said, added, examination(), vec(photo(), 0..4)).prop_map(
        |(said, (custody, linked, scenarios), examination, photos)| {
            let (id, begun, changed, edition, origin, [is_example, is_known_good]) = said;
            let id = format!("{id:032x}");
            let mut record = Record {
                id,
                begun,
                changed,
                edition,
                origin,
                custody,
                is_example,
                is_known_good,
                examination,
                photos,
                scenarios,
            };
            for handling in linked {
                append(&mut record, handling).expect("what is made here can be saved");
            }
            record
        },
    )
}
