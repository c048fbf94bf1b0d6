//! What is known of a cut piece of flex: readings of its cores, its length, and what is claimed for it.

use super::cross_check;
use crate::domain::check::cable::cores::EARTH_COLOUR;
use crate::domain::decision::Limit;
use crate::domain::examination::Answer;
use crate::domain::facts;
use crate::domain::finding::{Granted, GrossError, Judgement, Reason, RoomTemperature, Severity};
use crate::domain::instrument::Instrument;
use crate::domain::physics::conductor::{at_20, per_length, usual_room};
use crate::domain::quantity::{
    Area, ElectricCurrent, ElectricalResistance, Length, Measurand, ResistancePerLength, ThermodynamicTemperature,
    degrees_celsius, millimetres,
};
use crate::domain::question::{Core, Target};
use crate::domain::reading::Reading;
use crate::domain::uncertainty::Measured;
use crate::domain::view::View;

/// A cut piece of flex.
#[derive(Debug, Clone)]
pub struct CutFlex<'a> {
    /// Every core there is, with the answer about its resistance.
    pub cores: Vec<(Core, Option<&'a Answer>)>,
    /// Length of the piece; `None` where nobody measured it, or what was typed is no length.
    pub piece: Option<Measured<Length>>,
    /// Temperature of the room; `None` where nobody read it.
    pub room: Option<Measured<ThermodynamicTemperature>>,
    /// The area to hold it to.
    pub area: Option<Area>,
    /// The current that the product claims.
    pub current: Option<ElectricCurrent>,
    /// Outer diameter; `None` where nobody measured it.
    pub diameter: Option<Measured<Length>>,
    /// Length of the whole flex, measured or claimed.
    pub length: Option<Measured<Length>>,
    /// The fuse that a fault has to open, as printed on it.
    pub fuse: Fuse,
    /// How sure it is which core is the earth.
    pub earth: EarthCore,
    /// Whether a cross-check failed, so that readings may be too good: they clear nothing then.
    pub is_doubted: bool,
    /// Gross errors that the meter or the cross-checks suggest.
    pub suspected: Vec<GrossError>,
    /// Those that are granted to the flex: resistances are lowered by them.
    pub granted: Vec<GrossError>,
}

/// The fuse that a fault has to open.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fuse {
    /// 13 A, or one that may be.
    UpTo13A,
    /// Surely less; its gates are not modelled.
    Smaller,
}

/// How sure it is that the green-and-yellow core is the earth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EarthCore {
    /// Somebody saw where it goes.
    Seen,
    /// Taken for it by its colour.
    Taken,
    /// It goes elsewhere; which core is the earth is not known.
    Unknown,
}

/// What one core's reading says of its resistance over length at 20 °C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CoreResistance {
    /// So much.
    Read(Measured<ResistancePerLength>),
    /// Read with leads that were not taken off.
    WithLeads {
        /// The least it can be: leads granted.
        granted: Measured<ResistancePerLength>,
        /// The most it can be: as if the leads had none.
        whole: Measured<ResistancePerLength>,
    },
    /// More than so much.
    Above(ResistancePerLength),
    /// Less than so much.
    Below(ResistancePerLength),
}

impl CoreResistance {
    /// The least that it can be, two standard uncertainties down, and never below nothing.
    pub fn least(&self) -> ResistancePerLength {
        let nothing = ResistancePerLength::from_base(0.0);
        match self {
            Self::Read(measured) | Self::WithLeads { granted: measured, .. } => measured.shifted(-2.0).max(nothing),
            Self::Above(value) => *value,
            Self::Below(_) => nothing,
        }
    }

    /// The best estimate, leads granted.
    pub fn likely(&self) -> ResistancePerLength {
        match self {
            Self::Read(measured) | Self::WithLeads { granted: measured, .. } => measured.value,
            Self::Above(value) | Self::Below(value) => *value,
        }
    }

    /// The most that it can be, two standard uncertainties up.
    pub fn most(&self) -> ResistancePerLength {
        match self {
            Self::Read(measured) | Self::WithLeads { whole: measured, .. } => measured.shifted(2.0),
            Self::Above(_) => ResistancePerLength::from_base(f64::INFINITY),
            Self::Below(value) => *value,
        }
    }
}

impl<'a> CutFlex<'a> {
    /// What an examination tells of it.
    pub fn of(view: &View<'a>) -> Self {
        let length = |question| view.reading(question, Target::Sample).and_then(Reading::measured::<Length>);
        let no_slip = |length: &Measured<Length>| length.value >= millimetres(1.0);
        let flex = Self {
            cores: view
                .cores()
                .iter()
                .map(|&core| (core, view.answer(facts::CORE_RESISTANCE, Target::Core(core))))
                .collect(),
            piece: length(facts::PIECE_LENGTH).filter(no_slip),
            room: view.reading(facts::ROOM_TEMPERATURE, Target::Sample).and_then(Reading::measured).filter(is_a_room),
            area: view.area_to_hold_to(),
            current: view.claimed_current(),
            diameter: length(facts::FLEX_DIAMETER).filter(no_slip),
            length: view.flex_length().filter(no_slip),
            fuse: match view.one(facts::FUSE_RATING) {
                Some("3" | "5" | "10") => Fuse::Smaller,
                _ => Fuse::UpTo13A,
            },
            earth: match view.one(EARTH_COLOUR) {
                Some("green-and-yellow" | "nearly-one-colour") => EarthCore::Seen,
                Some("green-and-yellow-is-live") => EarthCore::Unknown,
                _ => EarthCore::Taken,
            },
            is_doubted: false,
            suspected: Vec::new(),
            granted: Vec::new(),
        };
        let is_doubted = cross_check::may_read_too_little(view, &flex);
        Self { is_doubted, suspected: cross_check::suspected(view, &flex), ..flex }
    }

    /// What a value that hangs on the cores becomes when suspected gross errors are granted, one by one and then all together.
    pub fn retried<Q: Measurand>(&self, limit: &Limit<Q>, value: impl Fn(&Self) -> Option<Q>) -> Vec<Granted> {
        let one_by_one = self.suspected.iter().map(|error| vec![*error]);
        let all = (self.suspected.len() > 1).then(|| self.suspected.clone());
        let retry = |errors: Vec<GrossError>| {
            let value = value(&self.granting(&errors))?;
            Some(Granted { errors, value: value.amount(), holds: limit.holds(value) })
        };
        one_by_one.chain(all).filter_map(retry).collect()
    }

    /// The same flex with gross errors granted to it.
    #[must_use]
    pub fn granting(&self, errors: &[GrossError]) -> Self {
        Self { granted: errors.to_vec(), ..self.clone() }
    }

    /// A resistance without the clips that are granted, over the scale that is granted.
    fn less_granted(&self, read: Measured<ElectricalResistance>) -> Measured<ElectricalResistance> {
        let lower = |read: Measured<ElectricalResistance>, error: &GrossError| match error {
            GrossError::Leads(_) => read,
            GrossError::Clips(clips) => Measured::new(less(read.value, clips.to().unwrap_or_default()), read.u),
            GrossError::Scale(times) => Measured::new(read.value / *times, read.u / *times),
        };
        self.granted.iter().fold(read, lower)
    }

    /// Where the temperature of the room came from.
    pub const fn room_temperature(&self) -> RoomTemperature {
        if self.room.is_some() { RoomTemperature::Read } else { RoomTemperature::Assumed }
    }

    /// The reading of a core, if there is one.
    pub fn reading(&self, core: Core) -> Option<&'a Reading> {
        match self.cores.iter().find(|(known, _)| *known == core)?.1 {
            Some(Answer::Reading(reading)) => Some(reading),
            _ => None,
        }
    }

    /// Every reading there is, of whichever core.
    pub fn readings(&self) -> impl Iterator<Item = (Core, &'a Reading)> {
        self.cores.iter().filter_map(|&(core, _)| self.reading(core).map(|reading| (core, reading)))
    }

    /// A core that has no path from end to end.
    pub fn open_core(&self) -> Option<Core> {
        self.readings().find(|(_, reading)| reading.is_open()).map(|(core, _)| core)
    }

    /// What to say where no core was read: what was answered instead.
    pub fn nothing_read(&self, severity: Severity) -> Judgement {
        let judged = self.cores.iter().map(|(_, answer)| Judgement::without_choice(severity, *answer));
        Judgement::worst(judged.collect(), severity)
    }

    /// Whether a reading still carries its leads.
    pub fn has_leads(&self) -> bool {
        self.readings().any(|(_, reading)| carries_leads(reading))
    }

    /// Resistance of a core at 20 °C, leads taken off.
    pub fn at_20(&self, core: Core) -> Option<Measured<ElectricalResistance>> {
        let reading = self.reading(core).filter(|reading| !carries_leads(reading))?;
        Some(self.cooled(self.less_granted(reading.measured().filter(is_resistance)?)))
    }

    /// What a core's reading says; `None` without a reading that can be used, or without a length.
    pub fn core(&self, core: Core) -> Option<CoreResistance> {
        let reading = self.reading(core)?;
        let piece = self.piece?;
        let over_length = |resistance| per_length(self.cooled(self.less_granted(resistance)), piece);
        let leads = reading.instrument.leads_at_most();
        let without = |resistance| less(resistance, leads);
        if let Some(measured) = reading.measured().filter(is_resistance) {
            let whole = over_length(measured);
            return Some(if carries_leads(reading) {
                let granted = over_length(Measured::new(without(measured.value), measured.u));
                CoreResistance::WithLeads { granted, whole }
            } else {
                CoreResistance::Read(whole)
            });
        }
        if let Some(above) = reading.above() {
            return Some(CoreResistance::Above(over_length(Measured::exact(without(above))).shifted(-2.0)));
        }
        let below = over_length(Measured::exact(reading.below()?));
        Some(if carries_leads(reading) {
            let granted = Measured::exact(ResistancePerLength::from_base(0.0));
            CoreResistance::WithLeads { granted, whole: below }
        } else {
            CoreResistance::Below(below.shifted(2.0))
        })
    }

    /// A resistance that was read in the same room, as it is at 20 °C.
    pub fn cooled(&self, resistance: Measured<ElectricalResistance>) -> Measured<ElectricalResistance> {
        at_20(resistance, self.room.unwrap_or_else(usual_room))
    }

    /// What to say where cores were read and yet nothing can be made of them.
    pub fn unusable(&self, severity: Severity) -> Judgement {
        use crate::domain::finding::Needed;
        let reason = if self.piece.is_none() { Reason::Needs(Needed::PieceLength) } else { Reason::OutOfRange };
        Judgement::cannot_tell(severity, reason)
    }
}

/// What is left of a resistance, and never less than nothing.
fn less(resistance: ElectricalResistance, by: ElectricalResistance) -> ElectricalResistance {
    (resistance - by).max(ElectricalResistance::from_base(0.0))
}

/// Whether leads are still in a reading.
pub fn carries_leads(reading: &Reading) -> bool {
    matches!(reading.instrument, Instrument::HandMeter)
}

fn is_resistance(measured: &Measured<ElectricalResistance>) -> bool {
    measured.value.base() >= 0.0
}

/// Whether somebody could stand there with a meter: from 40 K of frost to 80 °C. Any other reading is a slip, and the room counts as
/// not read.
fn is_a_room(room: &Measured<ThermodynamicTemperature>) -> bool {
    degrees_celsius(-40.0) <= room.value && room.value <= degrees_celsius(80.0)
}
