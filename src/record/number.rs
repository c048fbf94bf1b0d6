//! A number in a record, kept as the digits that stand there: they tell how fine it was read.

use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;

/// Whatever stands where a number should; [`Number::value`] tells whether it is one.
#[derive(Debug, Deserialize, Serialize)]
#[serde(transparent)]
pub struct Number(Box<RawValue>);

impl Number {
    /// The shortest digits that read back as `value`; what is no number is written as nothing.
    pub fn new(value: f64) -> Self {
        let plain = value.to_string();
        let digits = if plain.len() > 24 { format!("{value:e}") } else { plain };
        Self(RawValue::from_string(digits).unwrap_or_else(|_| RawValue::NULL.to_owned()))
    }

    /// What stands there.
    pub fn text(&self) -> &str {
        self.0.get()
    }

    /// The number, where it is one and a machine can hold it.
    pub fn value(&self) -> Option<f64> {
        let is_number = self.text().starts_with(|c: char| c == '-' || c.is_ascii_digit());
        let value: f64 = self.text().parse().ok().filter(|_| is_number)?;
        value.is_finite().then_some(value)
    }

    /// One step of the last digit that is written: 0.01 for `0.37`, 0.001 for `0.370`, 1 for `12`.
    pub fn step(&self) -> Option<f64> {
        let (digits, exponent) = self.text().split_once(['e', 'E']).unwrap_or((self.text(), "0"));
        let decimals = digits.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        let exponent = exponent.parse::<i64>().ok()?.checked_sub(i64::try_from(decimals).ok()?)?;
        format!("1e{exponent}").parse().ok().filter(|step: &f64| *step > 0.0 && step.is_finite())
    }
}
