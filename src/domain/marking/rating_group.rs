//! Volts, amperes and watts that belong together: one rating of mains or of an output at extra-low voltage.

use super::Stated;
use super::rating::{Output, Rating};
use crate::domain::quantity::{ElectricCurrent, ElectricPotential, Measurand, Power, amperes, volts, watts};

/// One electrical value in print.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Item {
    Volts(Stated<ElectricPotential>, Stated<ElectricPotential>),
    Amperes(Stated<ElectricCurrent>),
    Watts(Stated<Power>),
}

/// Which circuit a group speaks of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Circuit {
    #[default]
    Undecided,
    Mains,
    Output,
}

/// How binding the print makes a group: "13 A each" is no claim of the whole product, "total 13 A" is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub(super) enum Weight {
    Each,
    #[default]
    Plain,
    Most,
}

/// Values that stand together.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Group {
    pub(super) volts: Option<(Stated<ElectricPotential>, Stated<ElectricPotential>)>,
    pub(super) amperes: Option<Stated<ElectricCurrent>>,
    pub(super) watts: Option<Stated<Power>>,
    pub(super) circuit: Circuit,
    pub(super) weight: Weight,
}

impl Item {
    /// The circuit that the size of the value speaks for.
    ///
    /// Extra-low voltage ends at 60 V here; USB outputs end at 6.5 A (fast chargers) and 240 W (USB Power Delivery), so more is mains.
    pub(super) fn circuit(&self) -> Circuit {
        match self {
            Self::Volts(_, highest) if highest.value <= volts(60.0) => Circuit::Output,
            Self::Volts(..) => Circuit::Mains,
            Self::Amperes(current) if current.value > amperes(6.5) => Circuit::Mains,
            Self::Watts(power) if power.value > watts(240.0) => Circuit::Mains,
            Self::Amperes(_) | Self::Watts(_) => Circuit::Undecided,
        }
    }
}

impl Group {
    /// Whether an item can join: there is no other of its kind, and both may be of one circuit.
    pub(super) fn has_room_for(&self, item: &Item) -> bool {
        let has_one = match item {
            Item::Volts(..) => self.volts.is_some(),
            Item::Amperes(_) => self.amperes.is_some(),
            Item::Watts(_) => self.watts.is_some(),
        };
        let is_of_it = matches!(
            (self.circuit, item.circuit()),
            (Circuit::Undecided, _)
                | (_, Circuit::Undecided)
                | (Circuit::Mains, Circuit::Mains)
                | (Circuit::Output, Circuit::Output)
        );
        !has_one && is_of_it
    }

    /// Takes an item in.
    pub(super) fn put(&mut self, item: Item) {
        if self.circuit == Circuit::Undecided {
            self.circuit = item.circuit();
        }
        match item {
            Item::Volts(lowest, highest) => self.volts = Some((lowest, highest)),
            Item::Amperes(current) => self.amperes = Some(current),
            Item::Watts(power) => self.watts = Some(power),
        }
    }

    /// The group as an output.
    pub(super) const fn output(&self) -> Output {
        Output { voltage: self.volts, current: self.amperes, power: self.watts }
    }
}

/// Chooses what the product as a whole claims among the groups of mains, and keeps the outputs apart.
pub(super) fn choose(groups: &[Group], rating: &mut Rating) {
    let mains: Vec<&Group> = groups.iter().filter(|group| group.circuit != Circuit::Output).collect();
    let by_current = best(&mains, |group| group.amperes.map(|current| current.value.base()));
    let by_power = best(&mains, |group| group.watts.map(|power| power.value.base()));
    let by_voltage = best(&mains, |group| group.volts.map(|(_, highest)| highest.value.base()));
    rating.current = by_current.and_then(|group| group.amperes);
    rating.power = by_power.and_then(|group| group.watts);
    rating.power_is_maximum = by_power.is_some_and(|group| group.weight == Weight::Most);
    rating.voltage = by_current.and_then(|group| group.volts).or(by_voltage.and_then(|group| group.volts));
    rating.outputs = groups.iter().filter(|group| group.circuit == Circuit::Output).map(Group::output).collect();
}

/// The group that binds most, the one with the highest value among equals.
fn best<'a>(groups: &[&'a Group], value: impl Fn(&Group) -> Option<f64>) -> Option<&'a Group> {
    let valued = groups.iter().filter_map(|group| Some((group.weight, value(group)?, *group)));
    valued.max_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1))).map(|(.., group)| group)
}
