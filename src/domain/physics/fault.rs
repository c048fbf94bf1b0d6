//! What happens when line touches earthed metal at the far end of the flex: the current, when the fuse opens, what a hand feels
//! meanwhile, and whether the earth core lasts until then.
//!
//! Source: the loop of BS 7671 (voltage factor 0.95), the gates of BS 1362 (read) joined by straight lines on logarithmic paper,
//! constant I²t above the last gate, and the adiabatic law of IEC 60949.
//!
//! What it cannot tell: the loop outside the sample is not known, so two usual supplies are tried; a supply earthed by a rod (TT)
//! clears by its RCD or not at all and is not modelled. The time of a fuse is only known to a factor of 20 to 400. Heating
//! lengthens every time (resistance rises, heat leaks, an arc burns on) and is left out: a race between fuse and earth core is
//! decided only where the slowest metal still loses against the earliest fuse. Stainless steel is not among the metals tried.

use uom::si::f64::Time;
use uom::si::ratio::ratio;
use uom::si::time::second;

use crate::domain::quantity::{
    ElectricCurrent, ElectricPotential, ElectricalResistance, Length, ResistancePerLength, amperes, degrees_celsius,
    ohms,
};
use crate::domain::standard::adiabatic::{Melts, Withstand};
use crate::domain::standard::bs1362::{GATES_OF_13_A, fusing_current, non_fusing_current};
use crate::domain::standard::bs7671_shock::nominal_voltage;

/// The adiabatic law tells nothing of longer times: heat leaks out of the core.
const LONGEST_ADIABATIC: f64 = 5.0;

/// The time, in seconds, that the conventional currents of a fuse link are stated for.
const CONVENTIONAL_TIME: f64 = 1800.0;

/// The lowest voltage that the loop is reckoned with, as a part of the nominal voltage (BS 7671, Cmin).
const VOLTAGE_FACTOR: f64 = 0.95;

/// What feeds the sample.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Supply {
    /// The loop outside the installation.
    pub outside: ElectricalResistance,
    /// Line and earth of the fixed wiring together, up to the socket.
    pub wiring: ElectricalResistance,
}

impl Supply {
    /// Earth and neutral joined in the supply's cable (TN-C-S): at most 0.35 Ω outside (memory-medium).
    pub fn joined_earth_and_neutral() -> Self {
        Self { outside: ohms(0.35), wiring: ohms(0.35) }
    }

    /// Earth by the sheath of the supply's cable (TN-S): at most 0.8 Ω outside (memory-medium).
    pub fn earth_by_cable_sheath() -> Self {
        Self { outside: ohms(0.8), wiring: ohms(0.35) }
    }
}

/// Line touching earthed metal at the end of a flex.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fault {
    /// What feeds it.
    pub supply: Supply,
    /// The flex's line core.
    pub line: ElectricalResistance,
    /// The flex's earth core.
    pub earth: ElectricalResistance,
}

impl Fault {
    /// The whole loop.
    pub fn loop_resistance(&self) -> ElectricalResistance {
        self.supply.outside + self.supply.wiring + self.line + self.earth
    }

    /// The current at 0.95 times 230 V.
    pub fn current(&self) -> ElectricCurrent {
        VOLTAGE_FACTOR * nominal_voltage() / self.loop_resistance()
    }

    /// What the metal at the end of the flex is lifted to: along the earth core and half of the fixed wiring.
    pub fn touch_voltage(&self) -> ElectricPotential {
        self.current() * (self.earth + self.supply.wiring / 2.0)
    }

    /// The part of it that the flex causes.
    pub fn touch_voltage_of_flex(&self) -> ElectricPotential {
        self.current() * self.earth
    }
}

/// When a fuse opens at a current.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FuseTime {
    /// It holds at least so long.
    pub shortest: Time,
    /// It has opened by then; `None` where it may never open.
    pub longest: Option<Time>,
}

/// When a 13 A link opens.
pub fn fuse_time(current: ElectricCurrent) -> FuseTime {
    let rating = amperes(13.0);
    let time = Time::new::<second>(CONVENTIONAL_TIME);
    let shortest = GATES_OF_13_A.map(|(at, shortest, _)| (amperes(at), Time::new::<second>(shortest)));
    let longest = GATES_OF_13_A.map(|(at, _, longest)| (amperes(at), Time::new::<second>(longest)));
    FuseTime {
        shortest: along((non_fusing_current(rating), time), shortest, current).unwrap_or(time),
        longest: along((fusing_current(rating), time), longest, current),
    }
}

/// The time at a current along a chain of points, with constant I²t after the last; `None` before the first.
fn along(start: Point, rest: [Point; 3], current: ElectricCurrent) -> Option<Time> {
    if current < start.0 {
        return None;
    }
    let [_, _, last] = rest;
    let froms = core::iter::once(start).chain(rest);
    let stretch = froms.zip(rest).find(|(_, to)| current <= to.0);
    Some(stretch.map_or_else(
        || last.1 * libm::pow((last.0 / current).get::<ratio>(), 2.0),
        |(from, to)| on_line(from, to, current),
    ))
}

/// A current, and a time at it.
type Point = (ElectricCurrent, Time);

/// The time at a current on the straight line between two points on logarithmic paper.
fn on_line(from: Point, to: Point, current: ElectricCurrent) -> Time {
    let ln = |numerator: ElectricCurrent| libm::log((numerator / from.0).get::<ratio>());
    let part = ln(current) / ln(to.0);
    let (from, to) = (from.1.get::<second>(), to.1.get::<second>());
    Time::new::<second>(from * libm::pow(to / from, part))
}

/// How long a core of unknown metal lasts at a current before it melts, from 20 °C: its area follows from the metal it would be.
pub fn melting_time(metal: Melts, core: ResistancePerLength, current: ElectricCurrent) -> Time {
    let area = metal.resistivity() / core;
    Withstand::between(metal, degrees_celsius(20.0), metal.melts_at()).time(area, current)
}

/// What a fault does over the usual supplies: the least and the most of each.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Course {
    /// How long the flex is.
    pub length: Length,
    /// Its earth core.
    pub earth: ElectricalResistance,
    /// The whole loop.
    pub loop_resistance: (ElectricalResistance, ElectricalResistance),
    /// The current.
    pub current: (ElectricCurrent, ElectricCurrent),
    /// What the metal at the end of the flex is lifted to.
    pub touch: (ElectricPotential, ElectricPotential),
    /// When a 13 A link opens.
    pub fuse: FuseTime,
    /// When the earth core would melt, over the metals tried.
    pub melts: (Time, Time),
    /// Which opens first, where all supplies agree.
    pub race: Race,
}

/// What happens at the end of a flex whose cores have so much resistance over length.
pub fn course(line: ResistancePerLength, earth: ResistancePerLength, length: Length) -> Course {
    let [joined, sheath] = [Supply::joined_earth_and_neutral(), Supply::earth_by_cable_sheath()].map(|supply| Fault {
        supply,
        line: line * length,
        earth: earth * length,
    });
    let (most, least) = (joined.current(), sheath.current());
    let melts = |current| Melts::ALL.map(|metal| melting_time(metal, earth, current));
    let soonest = melts(most).into_iter().fold(Time::new::<second>(f64::INFINITY), Time::min);
    let latest = melts(least).into_iter().fold(Time::new::<second>(0.0), Time::max);
    let races = (race(&joined, earth), race(&sheath, earth));
    Course {
        length,
        earth: earth * length,
        loop_resistance: (joined.loop_resistance(), sheath.loop_resistance()),
        current: (least, most),
        touch: (sheath.touch_voltage(), joined.touch_voltage()),
        fuse: FuseTime { shortest: fuse_time(most).shortest, longest: fuse_time(least).longest },
        melts: (soonest, latest),
        race: if races.0 == races.1 { races.0 } else { Race::CannotTell },
    }
}

/// Which opens first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Race {
    /// The earth core, whatever it is made of: what should be earthed stays live.
    EarthOpensFirst,
    /// The fuse, whatever the core is made of.
    FuseOpensFirst,
    /// Not to be told.
    CannotTell,
}

/// Which opens first in a fault: the earth core or a 13 A fuse link.
pub fn race(fault: &Fault, earth: ResistancePerLength) -> Race {
    let current = fault.current();
    let fuse = fuse_time(current);
    let melts = Melts::ALL.map(|metal| melting_time(metal, earth, current));
    let slower_than_all = |time: Time| melts.iter().all(|melt| *melt < time);
    let faster_than_all = |time: Time| melts.iter().all(|melt| *melt > time);
    let earliest = fuse.shortest.min(Time::new::<second>(LONGEST_ADIABATIC));
    if slower_than_all(earliest) {
        Race::EarthOpensFirst
    } else if fuse.longest.is_some_and(faster_than_all) {
        Race::FuseOpensFirst
    } else {
        Race::CannotTell
    }
}
