//! Names of flex types beside HD 361: numbers of IEC 60227 and IEC 60245 and national names, each with what it stands for.
//!
//! Numbers of IEC 60227, and that GB 5023 uses the same, are read in secondary copies; those of IEC 60245 are memory-high; the
//! American names are memory-medium (NEC Table 400.5(A) for what they carry); the Japanese ones are memory-medium.

use super::hd361::{Compound, VoltageCode};
use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricPotential, volts};

/// IEC 60227, PVC; GB 5023 has the same numbers.
pub const IEC_60227: Clause = Clause::new("IEC 60227", "", "types by number", Provenance::Read);

/// IEC 60245, rubber; GB 5013 has the same numbers.
pub const IEC_60245: Clause = Clause::new("IEC 60245", "", "types by number", Provenance::MemoryHigh);

/// Chinese names.
pub const CHINESE: Clause = Clause::new("GB 5023, GB 5013, JB 8734", "", "types by name", Provenance::Read);

/// American names.
pub const AMERICAN: Clause = Clause::new("NFPA 70 (NEC)", "", "Table 400.5(A)", Provenance::MemoryMedium);

/// Japanese names.
pub const JAPANESE: Clause = Clause::new("JIS C 3306", "", "types by name", Provenance::MemoryMedium);

/// Which system of names a type belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Family {
    /// HD 361 designations, `H05VV-F`.
    Hd361,
    /// IEC 60227, `60227 IEC 53`.
    Iec60227,
    /// IEC 60245, `60245 IEC 57`.
    Iec60245,
    /// Chinese names, `RVV`.
    Chinese,
    /// American names, `SJT`.
    American,
    /// Japanese names, `VCTF`.
    Japanese,
}

/// How hard a flex may be treated.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Duty {
    /// Light duty: lamps, radios; no leads.
    Light,
    /// Ordinary duty.
    Ordinary,
    /// Heavy duty.
    Heavy,
}

/// What a type's name stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CordType {
    /// The name or number.
    pub name: &'static str,
    /// The system it belongs to.
    pub family: Family,
    /// Material of the insulation.
    pub insulation: Compound,
    /// Material of the sheath; `None` where there is none.
    pub sheath: Option<Compound>,
    /// Rated voltage; `None` where the name does not fix it.
    pub voltage: Option<RatedVoltage>,
    /// How hard it may be treated; `None` where the name does not fix it.
    pub duty: Option<Duty>,
    /// Whether it is a flex at all, or wire for walls.
    pub use_of: Use,
}

/// What a type is made for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Use {
    /// Fixed wiring.
    FixedWiring,
    /// Wiring inside equipment.
    InsideEquipment,
    /// A flex, indoors.
    Flex,
    /// A flex that stands weather.
    FlexOutdoors,
}

/// Rated voltage in one or two figures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RatedVoltage {
    /// Core to earth over core to core.
    Pair(VoltageCode),
    /// One figure, 300 V.
    V300,
}

impl RatedVoltage {
    /// Core to earth, core to core; the same where one figure is given.
    pub fn voltages(self) -> Option<(ElectricPotential, ElectricPotential)> {
        match self {
            Self::Pair(code) => code.voltages(),
            Self::V300 => Some((volts(300.0), volts(300.0))),
        }
    }
}

impl CordType {
    /// Where the meaning of the name comes from.
    pub const fn clause(&self) -> Clause {
        match self.family {
            Family::Hd361 => super::hd361::DESIGNATION,
            Family::Iec60227 => IEC_60227,
            Family::Iec60245 => IEC_60245,
            Family::Chinese => CHINESE,
            Family::American => AMERICAN,
            Family::Japanese => JAPANESE,
        }
    }
}

const fn of(name: &'static str, family: Family, use_of: Use) -> CordType {
    CordType { name, family, insulation: Compound::Pvc, sheath: None, voltage: None, duty: None, use_of }
}

impl CordType {
    const fn made_of(mut self, insulation: Compound, sheath: Option<Compound>) -> Self {
        self.insulation = insulation;
        self.sheath = sheath;
        self
    }

    const fn sheathed(mut self) -> Self {
        self.sheath = Some(self.insulation);
        self
    }

    const fn rated(mut self, voltage: RatedVoltage) -> Self {
        self.voltage = Some(voltage);
        self
    }

    const fn duty(mut self, duty: Duty) -> Self {
        self.duty = Some(duty);
        self
    }
}

const V300V300: RatedVoltage = RatedVoltage::Pair(VoltageCode::V300V300);
const V300V500: RatedVoltage = RatedVoltage::Pair(VoltageCode::V300V500);
const V450V750: RatedVoltage = RatedVoltage::Pair(VoltageCode::V450V750);

use Compound::{EthylenePropylene, Polychloroprene, PvcForHeat, Rubber};
use Duty::{Heavy, Light, Ordinary};
use Family::{American, Chinese, Iec60227, Iec60245, Japanese};
use Use::{FixedWiring, Flex, FlexOutdoors, InsideEquipment};

/// Types by their number in IEC 60227, in the order of the numbers; the voltages of cords are memory-high.
pub const OF_IEC_60227: &[CordType] = &[
    of("01", Iec60227, FixedWiring),
    of("02", Iec60227, FixedWiring),
    of("05", Iec60227, InsideEquipment),
    of("06", Iec60227, InsideEquipment),
    of("07", Iec60227, InsideEquipment).made_of(PvcForHeat, None),
    of("08", Iec60227, InsideEquipment).made_of(PvcForHeat, None),
    of("10", Iec60227, FixedWiring).sheathed(),
    of("41", Iec60227, Flex).rated(V300V300).duty(Light),
    of("42", Iec60227, Flex).rated(V300V300).duty(Light),
    of("43", Iec60227, Flex).rated(V300V300).duty(Light),
    of("52", Iec60227, Flex).sheathed().rated(V300V300).duty(Light),
    of("53", Iec60227, Flex).sheathed().rated(V300V500).duty(Ordinary),
    of("56", Iec60227, Flex).made_of(PvcForHeat, Some(PvcForHeat)).rated(V300V300).duty(Light),
    of("57", Iec60227, Flex).made_of(PvcForHeat, Some(PvcForHeat)).rated(V300V500).duty(Ordinary),
];

/// Types by their number in IEC 60245, in the order of the numbers.
pub const OF_IEC_60245: &[CordType] = &[
    of("53", Iec60245, Flex).made_of(Rubber, Some(Rubber)).rated(V300V500).duty(Ordinary),
    of("57", Iec60245, FlexOutdoors).made_of(Rubber, Some(Polychloroprene)).rated(V300V500).duty(Ordinary),
    of("66", Iec60245, FlexOutdoors).made_of(Rubber, Some(Polychloroprene)).rated(V450V750).duty(Heavy),
];

/// Types by their national name. RVV is made for 300/300 V and for 300/500 V: its name alone fixes neither voltage nor duty.
pub const NATIONAL: &[CordType] = &[
    of("BV", Chinese, FixedWiring),
    of("BVR", Chinese, FixedWiring),
    of("RVB", Chinese, Flex).rated(V300V300).duty(Light),
    of("RVS", Chinese, Flex).rated(V300V300).duty(Light),
    of("RVV", Chinese, Flex).sheathed(),
    of("RVVB", Chinese, Flex).sheathed(),
    of("YCW", Chinese, FlexOutdoors).made_of(Rubber, Some(Polychloroprene)).rated(V450V750).duty(Heavy),
    of("YZ", Chinese, Flex).made_of(Rubber, Some(Rubber)).rated(V300V500).duty(Ordinary),
    of("YZW", Chinese, FlexOutdoors).made_of(Rubber, Some(Polychloroprene)).rated(V300V500).duty(Ordinary),
    of("SPT-1", American, Flex).rated(RatedVoltage::V300).duty(Light),
    of("SPT-2", American, Flex).rated(RatedVoltage::V300).duty(Light),
    of("SVT", American, Flex).sheathed().rated(RatedVoltage::V300).duty(Light),
    of("SJT", American, Flex).sheathed().rated(RatedVoltage::V300).duty(Ordinary),
    of("SJTW", American, FlexOutdoors).sheathed().rated(RatedVoltage::V300).duty(Ordinary),
    of("SJOOW", American, FlexOutdoors)
        .made_of(EthylenePropylene, Some(Compound::ChlorinatedPolyethylene))
        .rated(RatedVoltage::V300)
        .duty(Ordinary),
    of("VCTF", Japanese, Flex).sheathed().rated(RatedVoltage::V300).duty(Light),
    of("VCTFK", Japanese, Flex).sheathed().rated(RatedVoltage::V300).duty(Light),
    of("VFF", Japanese, Flex).rated(RatedVoltage::V300).duty(Light),
];

/// A type by its number in IEC 60227 or IEC 60245; either may be printed without the leading 60.
pub fn by_number(publication: u32, number: u32) -> Option<&'static CordType> {
    let list = match publication {
        227 | 60227 => OF_IEC_60227,
        245 | 60245 => OF_IEC_60245,
        _ => return None,
    };
    let name = format!("{number:02}");
    list.iter().find(|cord| cord.name == name)
}

/// A type by its national name, in capitals; the dash may be missing.
pub fn by_name(name: &str) -> Option<&'static CordType> {
    fn plain(name: &str) -> impl Iterator<Item = char> {
        name.chars().filter(|&letter| letter != '-')
    }
    NATIONAL.iter().find(|cord| plain(cord.name).eq(plain(name)))
}
