//! What an instrument showed, to and from its saved form.

use super::entry::{bounded, not_true};
use super::entry_fault::EntryFault;
use super::fault::Said;
use super::number::Number;
use super::{spelling, v1};
use crate::domain::instrument::{Accuracy, Instrument, OwnInstrument};
use crate::domain::quantity::{Amount, QuantityKind, Unit};
use crate::domain::reading::{Reading, Shown};

/// The saved form of a reading.
pub fn to_v1(reading: &Reading) -> v1::Reading {
    let number = |amount| Some(number_beside(reading.unit, amount));
    let form = v1::Reading {
        unit: spelling::of_unit(reading.unit).to_owned(),
        step: number(reading.step),
        instrument: Some(reading.instrument.code().to_owned()),
        own_instrument: reading.own.as_ref().map(own_to_v1),
        typed: Some(reading.typed.clone()),
        ..v1::Reading::default()
    };
    match reading.shown {
        Shown::Value(amount) => v1::Reading { value: number(amount), ..form },
        Shown::Above(amount) => v1::Reading { above: number(amount), ..form },
        Shown::Below(amount) => v1::Reading { below: number(amount), ..form },
        Shown::Open => v1::Reading { open: Some(true), ..form },
    }
}

fn own_to_v1(own: &OwnInstrument) -> v1::OwnInstrument {
    let Accuracy { of_reading, digits, fixed: (fixed, unit) } = own.accuracy;
    v1::OwnInstrument {
        name: own.name.clone(),
        percent: Number::new(percent_of(of_reading)),
        digits: Number::new(digits),
        fixed: Number::new(fixed),
        fixed_unit: spelling::of_unit(unit).to_owned(),
    }
}

/// The percent that a fraction was made of, without the digits that dividing by a hundred has left.
fn percent_of(fraction: f64) -> f64 {
    let near = 100.0 * fraction;
    let mut short = (0..17).filter_map(|decimals| format!("{near:.decimals$e}").parse::<f64>().ok());
    short.find(|short| (short / 100.0).to_bits() == fraction.to_bits()).unwrap_or(near)
}

/// The shortest number that is the amount when it stands beside the unit, as it was when somebody typed it.
fn number_beside(unit: Unit, amount: Amount) -> Number {
    let near = amount.in_unit(unit).unwrap_or(f64::NAN);
    let short = |decimals: usize| format!("{near:.decimals$e}").parse().ok();
    let exact = (0..17).filter_map(short).find(|short| Amount::new(*short, unit) == amount);
    Number::new(exact.unwrap_or(near))
}

/// The numbers that a reading of a kind of quantity may have.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Range {
    /// Any: a temperature.
    Any,
    /// Zero or more: a fair reading of most meters.
    FromZero,
    /// More than zero: a length, mass or area of nothing is a slip.
    AboveZero,
}

impl Range {
    /// The range of a kind of quantity.
    pub const fn of(kind: QuantityKind) -> Self {
        match kind {
            QuantityKind::Temperature => Self::Any,
            QuantityKind::Area | QuantityKind::Length | QuantityKind::Mass => Self::AboveZero,
            QuantityKind::Current
            | QuantityKind::Potential
            | QuantityKind::Power
            | QuantityKind::Resistance
            | QuantityKind::ResistancePerLength => Self::FromZero,
        }
    }

    /// The number, if there is one in range.
    fn number(self, field: &'static str, number: &Number) -> Result<f64, EntryFault> {
        let is_in = |value: &f64| match self {
            Self::Any => true,
            Self::FromZero => *value >= 0.0,
            Self::AboveZero => *value > 0.0,
        };
        let takes = match self {
            Self::Any => "a finite number",
            Self::FromZero => "a finite number, zero or more",
            Self::AboveZero => "a finite number above zero",
        };
        let fault = || EntryFault::Field { field, takes, got: Said::from(number.text()) };
        number.value().filter(is_in).ok_or_else(fault)
    }
}

/// A question that takes a reading.
pub struct Measure {
    /// Its id.
    pub question: &'static str,
    /// The quantity it asks for.
    pub kind: QuantityKind,
    /// The instruments that measure it, the least exact last.
    pub instruments: &'static [Instrument],
}

impl Measure {
    /// The reading that a saved form stands for.
    pub fn reading(&self, form: v1::Reading) -> Result<Reading, EntryFault> {
        let unit = self.unit(&form.unit)?;
        let (shown, typed, digits) = self.shown(&form, unit)?;
        let step = match &form.step {
            Some(step) => Range::AboveZero.number("step", step)?,
            None => digits,
        };
        Ok(Reading {
            shown,
            step: Amount::new(step, unit),
            unit,
            instrument: self.instrument(form.instrument.as_deref())?,
            own: form.own_instrument.map(|own| self.own(own)).transpose()?,
            typed: bounded("typed", form.typed.unwrap_or(typed))?,
        })
    }

    /// What stood on the display, how somebody would have typed it, and one step of its last digit.
    fn shown(&self, form: &v1::Reading, unit: Unit) -> Result<(Shown, String, f64), EntryFault> {
        let is_open = form.open.map(|holds| if holds { Ok(()) } else { Err(not_true("open")) }).transpose()?;
        let (number, field, side, mark): (_, _, fn(Amount) -> Shown, _) =
            match (&form.value, &form.above, &form.below, is_open) {
                (Some(number), None, None, None) => (number, "value", Shown::Value, ""),
                (None, Some(number), None, None) => (number, "above", Shown::Above, "> "),
                (None, None, Some(number), None) => (number, "below", Shown::Below, "< "),
                (None, None, None, Some(())) => return Ok((Shown::Open, "OL".to_owned(), 1.0)),
                _ => return Err(EntryFault::NotOneReading { question: self.question }),
            };
        let amount = Amount::new(Range::of(self.kind).number(field, number)?, unit);
        let fault =
            || EntryFault::Field { field, takes: "a number that a display can show", got: Said::from(number.text()) };
        Ok((side(amount), format!("{mark}{}", number.text()), number.step().ok_or_else(fault)?))
    }

    fn unit(&self, code: &str) -> Result<Unit, EntryFault> {
        let measures = spelling::kind_in_words(self.kind);
        let fault = || EntryFault::Unit { question: self.question, measures, unit: Said::from(code) };
        spelling::units(self.kind).find(|unit| spelling::of_unit(*unit) == code).ok_or_else(fault)
    }

    fn own(&self, form: v1::OwnInstrument) -> Result<OwnInstrument, EntryFault> {
        let number = |field, number: &Number| Range::FromZero.number(field, number);
        let accuracy = Accuracy {
            of_reading: number("percent", &form.percent)? / 100.0,
            digits: number("digits", &form.digits)?,
            fixed: (number("fixed", &form.fixed)?, self.unit(&form.fixed_unit)?),
        };
        Ok(OwnInstrument { name: bounded("name", form.name)?, accuracy })
    }

    fn instrument(&self, code: Option<&str>) -> Result<Instrument, EntryFault> {
        let instrument = code.map_or(Said::NOTHING, Said::from);
        let fits = |instrument: &Instrument| code.is_none_or(|code| instrument.code() == code);
        let fault = EntryFault::Instrument { question: self.question, instrument };
        // Whoever does not say what it was read with is granted no exactness.
        self.instruments.iter().copied().rfind(fits).ok_or(fault)
    }
}
