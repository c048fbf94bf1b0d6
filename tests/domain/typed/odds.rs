//! How likely somebody takes an event to be, typed in any of the usual ways.

use plugwary::domain::decision::Probability;
use plugwary::words::input_problem::InputProblem;
use plugwary::words::number::odds;
use plugwary::words::typed_odds::parse_odds;
use proptest::prelude::*;

#[test]
fn one_chance_may_be_typed_in_many_ways() {
    for typed in [
        "1/100",
        "1 / 100",
        "1 in 100",
        "1 out of 100",
        "1 of 100",
        "0.01",
        "0,01",
        ".01",
        "1 %",
        "1%",
        "1,0 %",
        "１/１００",
        " 1/100 ",
    ] {
        assert_eq!(parse_odds(typed), Ok(Probability::new(0.01)), "{typed}");
    }
    for typed in ["1", "certain", "Certain", "100 %", "7/7"] {
        assert_eq!(parse_odds(typed), Ok(Probability::ONE), "{typed}");
    }
    assert_eq!(parse_odds("1 in 1\u{a0}000\u{a0}000"), Ok(Probability::new(1e-6)));
    assert_eq!(parse_odds("27/160000"), Ok(Probability::new(27.0 / 160_000.0)));
}

#[test]
fn what_is_no_chance_is_refused() {
    for typed in [
        "0", "0/100", "0 %", "2", "101 %", "3/2", "1/0", "0/0", "-0.1", "1/-2", "often", "1:100", "1/2/3", "NaN",
        "inf", "1e-3",
    ] {
        assert!(matches!(parse_odds(typed), Err(InputProblem::NoChance { .. })), "{typed}: {:?}", parse_odds(typed));
    }
    assert_eq!(parse_odds(" "), Err(InputProblem::Empty));
    for typed in ["1/1,000", "1.000,5", "1/", "/2", "%", &"1".repeat(41)] {
        assert!(parse_odds(typed).is_err(), "{typed}");
    }
}

#[test]
fn a_chance_is_said_as_people_say_it() {
    for (value, said) in [
        (1.0, "certain"),
        (0.5, "1 in 2"),
        (0.1, "1 in 10"),
        (0.3, "30 in 100"),
        (0.123, "about 123 in 1000"),
        (0.9999, "over 999 in 1000"),
        (1.0 / 50.0, "1 in 50"),
        (1.0 / 4000.0, "1 in 4000"),
        (27.0 / 160_000.0, "about 1 in 5900"),
        (1e-5, "1 in 100\u{a0}000"),
        (1e-6, "1 in 1\u{a0}000\u{a0}000"),
        (1.0 / 12_345.0, "about 1 in 12\u{a0}000"),
        (0.0, "never"),
    ] {
        assert_eq!(odds(Probability::new(value)), said, "{value}");
    }
}

proptest! {
    #[test]
    fn what_is_said_is_read_back_as_nearly_the_same(value in 1e-7..0.999) {
        let said = odds(Probability::new(value));
        let back = parse_odds(&said);
        let near = back.as_ref().is_ok_and(|back| (back.value() / value - 1.0).abs() < 0.051);
        prop_assert!(near, "{} {} {:?}", value, said, back);
    }

    #[test]
    fn no_text_makes_it_panic_or_leave_its_bounds(typed in any::<String>()) {
        let chance = parse_odds(&typed).map(Probability::value);
        prop_assert!(chance.is_err() || chance.is_ok_and(|value| value > 0.0 && value <= 1.0));
    }
}
