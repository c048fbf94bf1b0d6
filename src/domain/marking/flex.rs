//! The print along a flex: HD 361 designations, IEC 60227 and 60245 numbers, national names and wire gauges.

use super::cores::{area_of_gauge, is_sold};
use super::flex_reader::FlexReader;
use super::{Designation, Meaning, Piece, Stated};
use crate::domain::quantity::{Area, ElectricPotential, Measurand, square_millimetres};
use crate::domain::standard::cord_type::{CordType, Duty, Family, Use};
use crate::domain::standard::hd361::{
    self, Compound, ConductorForm, FEWEST_CORES_WITH_EARTH, Harmonisation, VoltageCode,
};

/// The print on a flex as far as it could be read.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct FlexPrint {
    /// The designation of HD 361, if there is one.
    pub designation: Option<Designation>,
    /// The first type named by number or national name.
    pub cord_type: Option<&'static CordType>,
    /// Cross-section of one core.
    pub area: Option<Area>,
    /// The wire gauge, where the cross-section is printed so and not in mm².
    pub gauge: Option<u8>,
    /// How many cores.
    pub cores: Option<u8>,
    /// Whether one of the cores is green-and-yellow, where the print says so.
    pub has_earth: Option<bool>,
    /// Rated voltage in figures, core to earth and core to core (equal where one is printed).
    pub voltage_in_figures: Option<(ElectricPotential, ElectricPotential)>,
    /// Perhaps the maker's name: the first words that mean nothing else.
    pub maker: Option<String>,
    /// Marks of approval and origin, as they are printed.
    pub origin_marks: Vec<String>,
    /// Numbers of standards, as they are printed.
    pub standards: Vec<String>,
    /// Each piece that was understood, in the order of the print.
    pub pieces: Vec<Piece>,
    /// What the print only said when letters were taken for others that look alike, as it is printed.
    pub look_alike: Option<String>,
    /// Pieces that could not be read, as they were printed.
    pub unread: Vec<String>,
}

/// Something in a print that cannot be right, or is seldom right.
#[derive(Debug, Clone, PartialEq)]
pub enum Oddity {
    /// `G` on a flex with too few cores for line, neutral and earth.
    EarthNeedsMoreCores {
        /// How many cores are printed.
        cores: u8,
    },
    /// The designation made sense only with letters taken for others, `O` for a zero or `W` for `VV`: misread here, or misprinted.
    LookAlike {
        /// As it is printed.
        printed: String,
        /// As it was read.
        taken: String,
    },
    /// Not a size that flexes are made in.
    NoSuchSize {
        /// The printed size.
        area: Area,
    },
    /// Larger than an H03VV-F is made.
    TooThickForLight {
        /// The printed size.
        area: Area,
        /// The largest there is.
        at_most: Area,
    },
    /// Smaller than an H05VV-F is made.
    TooThinForOrdinary {
        /// The printed size.
        area: Area,
        /// The smallest there is.
        at_least: Area,
    },
    /// Type and figures state different voltages, core to core.
    VoltagesDiffer {
        /// What the type means.
        by_type: ElectricPotential,
        /// What the figures say.
        in_figures: ElectricPotential,
    },
}

impl FlexPrint {
    /// Reads the print on a flex.
    pub fn parse(printed: &str) -> Self {
        FlexReader::new(printed).read()
    }

    /// Each piece that was understood, in the order of the print.
    pub fn pieces(&self) -> &[Piece] {
        &self.pieces
    }

    /// Whether nothing was understood but, perhaps, a name.
    pub fn says_nothing(&self) -> bool {
        self.pieces.iter().all(|piece| piece.means == Meaning::Maker)
    }

    /// The name of the type as understood: `H05VV-F`, `60227 IEC 53`, `RVV`.
    pub fn name(&self) -> Option<String> {
        let by_number = |publication: &str, number: &str| format!("{publication} IEC {number}");
        let name_of = |cord: &CordType| match cord.family {
            Family::Iec60227 => by_number("60227", cord.name),
            Family::Iec60245 => by_number("60245", cord.name),
            Family::Hd361 | Family::Chinese | Family::American | Family::Japanese => cord.name.to_owned(),
        };
        self.designation.as_ref().map(Designation::text).or_else(|| self.cord_type.map(name_of))
    }

    /// The system that the type's name belongs to.
    pub fn family(&self) -> Option<Family> {
        self.designation.as_ref().map(|_| Family::Hd361).or(self.cord_type.map(|cord| cord.family))
    }

    /// The cross-section with what its digits declare; a wire gauge stands for all sizes nearer to it than to its neighbours.
    pub fn stated_area(&self) -> Option<Stated<Area>> {
        let named = |area| Stated::new(area, square_millimetres(0.01));
        self.gauge.and_then(area_of_gauge).or_else(|| self.area.map(named))
    }

    /// Rated voltage, core to earth and core to core: in figures, else by the type.
    pub fn voltage(&self) -> Option<(ElectricPotential, ElectricPotential)> {
        self.voltage_in_figures.or_else(|| self.voltage_by_type())
    }

    fn voltage_by_type(&self) -> Option<(ElectricPotential, ElectricPotential)> {
        match &self.designation {
            Some(designation) => designation.voltage.voltages(),
            None => self.cord_type?.voltage?.voltages(),
        }
    }

    /// How hard it may be treated, where type or voltage fix it.
    pub fn duty(&self) -> Option<Duty> {
        let by_code = |code| match code {
            VoltageCode::Below300 | VoltageCode::V300V300 => Duty::Light,
            VoltageCode::V300V500 => Duty::Ordinary,
            VoltageCode::V450V750 | VoltageCode::V600V1000 => Duty::Heavy,
        };
        if let Some(designation) = &self.designation {
            return Some(by_code(designation.voltage));
        }
        let codes = VoltageCode::ALL.iter().copied();
        let by_figures =
            || codes.into_iter().find(|code| code.voltages().is_some_and(|pair| Some(pair) == self.voltage_in_figures));
        self.cord_type?.duty.or_else(|| by_figures().map(by_code))
    }

    /// Material of the outer sheath; `Some(None)` where the type has none, `None` where no type is printed.
    pub fn sheath(&self) -> Option<Option<Compound>> {
        match &self.designation {
            Some(designation) => Some(designation.sheath()),
            None => self.cord_type.map(|cord| cord.sheath),
        }
    }

    /// Whether it is a flex and not wire for walls or the inside of equipment, where the type says so.
    pub fn is_flexible(&self) -> Option<bool> {
        match &self.designation {
            Some(designation) => Some(designation.conductor.is_flexible()),
            None => self.cord_type.map(|cord| matches!(cord.use_of, Use::Flex | Use::FlexOutdoors)),
        }
    }

    /// Whether the type stands weather. PVC for low temperature and materials that no rule names stay open.
    pub fn is_for_outdoors(&self) -> Option<bool> {
        let Some(designation) = &self.designation else {
            return self.cord_type.map(|cord| cord.use_of == Use::FlexOutdoors);
        };
        match designation.sheath() {
            None | Some(Compound::Pvc | Compound::PvcForHeat | Compound::PvcForOil | Compound::TextileBraid) => {
                Some(false)
            }
            Some(
                Compound::Polychloroprene
                | Compound::PolychloropreneForWater
                | Compound::ChlorinatedPolyethylene
                | Compound::Polyurethane,
            ) => Some(true),
            Some(_) => None,
        }
    }

    /// What cannot be right in it, or is seldom right (HD 361 and EN 50525-2-11; [`hd361::SANITY`]).
    pub fn oddities(&self) -> Vec<Oddity> {
        let taken = || self.designation.as_ref().map(Designation::text).unwrap_or_default();
        let look_alike = self.look_alike.clone().map(|printed| Oddity::LookAlike { printed, taken: taken() });
        let too_few = match (self.has_earth, self.cores) {
            (Some(true), Some(cores)) if cores < FEWEST_CORES_WITH_EARTH => Some(Oddity::EarthNeedsMoreCores { cores }),
            _ => None,
        };
        // Beside a wire gauge the size in mm² is only its conversion.
        let is_of_gauge = self.pieces.iter().any(|piece| matches!(piece.means, Meaning::Gauge(..)));
        let no_size = self.area.filter(|&area| !is_of_gauge && !is_sold(area)).map(|area| Oddity::NoSuchSize { area });
        [look_alike, too_few, no_size, self.size_against_type(), self.voltage_against_figures()]
            .into_iter()
            .flatten()
            .collect()
    }

    fn size_against_type(&self) -> Option<Oddity> {
        let (designation, area) = (self.designation.as_ref()?, self.area?);
        let hair = square_millimetres(0.001);
        if !designation.is_harmonised_pvc() {
            return None;
        }
        let (at_most, at_least) = (hd361::largest_light_area(), hd361::smallest_ordinary_area());
        match designation.voltage {
            VoltageCode::V300V300 if area > at_most + hair => Some(Oddity::TooThickForLight { area, at_most }),
            VoltageCode::V300V500 if area + hair < at_least => Some(Oddity::TooThinForOrdinary { area, at_least }),
            VoltageCode::Below300
            | VoltageCode::V300V300
            | VoltageCode::V300V500
            | VoltageCode::V450V750
            | VoltageCode::V600V1000 => None,
        }
    }

    fn voltage_against_figures(&self) -> Option<Oddity> {
        let (_, by_type) = self.voltage_by_type()?;
        let (_, in_figures) = self.voltage_in_figures?;
        let differ = by_type.base().total_cmp(&in_figures.base()).is_ne();
        differ.then_some(Oddity::VoltagesDiffer { by_type, in_figures })
    }
}

impl Designation {
    /// Whether it is an H..VV-F, round or flat: the light and ordinary PVC flexes that EN 50525-2-11 sets sizes for.
    fn is_harmonised_pvc(&self) -> bool {
        self.harmonisation == Harmonisation::Harmonised
            && self.insulation == Compound::Pvc
            && self.sheath() == Some(Compound::Pvc)
            && self.conductor == ConductorForm::Flexible
    }
}
