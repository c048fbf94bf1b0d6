//! A finding tried again in the sample's favour, as data. It annotates and never lifts a danger.

use uom::si::f64::Ratio;

use super::quantity::Amount;

/// What becomes of a value when every doubt is granted to the sample.
#[derive(Debug, Clone, PartialEq)]
pub struct Favour {
    /// The value after the reading is moved two standard uncertainties to the friendly side.
    pub value: Amount,
    /// Whether the limit is kept then.
    pub holds: bool,
    /// The same with gross errors granted too, one by one and, where there are several, all together.
    pub granted: Vec<Granted>,
}

/// The same value with gross errors granted on top.
#[derive(Debug, Clone, PartialEq)]
pub struct Granted {
    /// The errors.
    pub errors: Vec<GrossError>,
    /// The value then.
    pub value: Amount,
    /// Whether the limit is kept then.
    pub holds: bool,
}

/// A gross error that the cross-checks or the instrument suggest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum GrossError {
    /// So much of the leads of a two-wire meter is in the reading.
    Leads(Amount),
    /// Clips add so much to every reading, as the cores joined suggest.
    Clips(Amount),
    /// Meter or length are wrong by so much, as the known wire suggests.
    Scale(Ratio),
}
