//! The print along a flex, said back in plain English.

use super::number::amount;
use crate::domain::marking::{Meaning, Oddity, Piece};
use crate::domain::quantity::Measurand;
use crate::domain::standard::cord_type::{CordType, Duty, Family, Use};
use crate::domain::standard::hd361::{Compound, ConductorForm, Construction, Harmonisation, Metallic};

/// A piece with what it means: "VV: insulated and sheathed in ordinary PVC".
pub fn explained(piece: &Piece) -> String {
    format!("{}: {}", piece.printed, phrase(&piece.means))
}

/// What a piece means.
pub fn phrase(means: &Meaning) -> String {
    match means {
        Meaning::Aluminium => "the conductor is aluminium".to_owned(),
        Meaning::ApprovalMark => "a mark of approval or origin, as claimed".to_owned(),
        Meaning::Area(area) => format!("{} of conductor in each core", amount(area.amount())),
        Meaning::Conductor(form) => conductor(*form).to_owned(),
        Meaning::Construction(part) => construction(*part).to_owned(),
        Meaning::Cores(1) => "one core".to_owned(),
        Meaning::Cores(count) => format!("{count} cores"),
        Meaning::CoresWithEarth(count) => format!("{count} cores, one of them green-and-yellow for earth"),
        Meaning::CoresWithoutEarth(count) => format!("{count} cores, none of them green-and-yellow"),
        Meaning::Gauge(gauge, area) => format!("American wire gauge {gauge}, about {}", amount(area.amount())),
        Meaning::Harmonisation(relation) => harmonisation(*relation).to_owned(),
        Meaning::Insulation(of) => format!("insulated in {}", compound(*of)),
        Meaning::InsulationAndSheath(inner, outer) if inner == outer => {
            format!("insulated and sheathed in {}", compound(*inner))
        }
        Meaning::InsulationAndSheath(inner, outer) => {
            format!("insulated in {}, sheathed in {}", compound(*inner), compound(*outer))
        }
        Meaning::Maker => "perhaps the maker’s name".to_owned(),
        Meaning::Metallic(metal) => metallic(*metal).to_owned(),
        Meaning::Sheath(of) => format!("sheathed in {}", compound(*of)),
        Meaning::Standard => "the number of a standard".to_owned(),
        Meaning::Temperature => "a temperature that the flex may have".to_owned(),
        Meaning::Type(cord) => cord_type(cord),
        Meaning::Voltage(code) => match code.voltages() {
            Some((to_earth, to_core)) => in_figures(to_earth.base(), to_core.base()),
            None => "rated below 300 V".to_owned(),
        },
        Meaning::VoltageInFigures(to_earth, to_core) => in_figures(to_earth.base(), to_core.base()),
    }
}

/// What is odd about a print.
pub fn oddity(oddity: &Oddity) -> String {
    match oddity {
        Oddity::EarthNeedsMoreCores { cores } => {
            format!(
                "G promises a green-and-yellow core for earth, but {cores} cores are too few for line, neutral and earth"
            )
        }
        Oddity::LookAlike { printed, taken } => format!("{printed} is no designation; it was read as {taken}"),
        Oddity::NoSuchSize { area } => format!("flexes are not made with {}", amount(area.amount())),
        Oddity::TooThickForLight { area, at_most } => {
            let (size, at_most) = (amount(area.amount()), amount(at_most.amount()));
            format!("this light type is made up to {at_most}, and the print says {size}")
        }
        Oddity::TooThinForOrdinary { area, at_least } => {
            let (size, at_least) = (amount(area.amount()), amount(at_least.amount()));
            format!("this type is made from {at_least} on, and the print says {size}")
        }
        Oddity::VoltagesDiffer { by_type, in_figures } => {
            let (by_type, in_figures) = (amount(by_type.amount()), amount(in_figures.amount()));
            format!("the type stands for {by_type} between cores, the figures say {in_figures}")
        }
    }
}

fn in_figures(to_earth: f64, to_core: f64) -> String {
    if to_earth.total_cmp(&to_core).is_eq() {
        format!("rated {to_core:.0}\u{A0}V")
    } else {
        format!("rated {to_earth:.0}\u{A0}V to earth and {to_core:.0}\u{A0}V between cores")
    }
}

const fn harmonisation(relation: Harmonisation) -> &'static str {
    match relation {
        Harmonisation::Harmonised => "made to a standard that the countries of Europe share",
        Harmonisation::RecognisedNational => "a national type that the others recognise",
        Harmonisation::OtherNational => "a national type",
    }
}

const fn compound(compound: Compound) -> &'static str {
    match compound {
        Compound::EthylenePropylene => "ethylene-propylene rubber for 90 °C",
        Compound::EthyleneVinylAcetate => "ethylene-vinyl acetate",
        Compound::GlassBraid => "glass-fibre braid",
        Compound::Mineral => "mineral",
        Compound::Polychloroprene => "polychloroprene rubber",
        Compound::PolychloropreneForWelding => "polychloroprene rubber for welding cables",
        Compound::ChlorinatedPolyethylene => "chlorinated polyethylene",
        Compound::PolychloropreneForWater => "polychloroprene rubber that stands water",
        Compound::Polyurethane => "polyurethane",
        Compound::Polyamide => "polyamide",
        Compound::Rubber => "ordinary rubber",
        Compound::Silicone => "silicone rubber",
        Compound::TextileBraid => "textile braid over all cores",
        Compound::TextileBraidOnCores => "textile braid over each core",
        Compound::Pvc => "ordinary PVC",
        Compound::PvcForHeat => "PVC for 90 °C",
        Compound::PvcForCold => "PVC for low temperature",
        Compound::CrossLinkedPvc => "cross-linked PVC",
        Compound::PvcForOil => "oil-resistant PVC",
        Compound::CrossLinkedPolyolefin => "cross-linked polyolefin of low smoke",
        Compound::Polyolefin => "polyolefin of low smoke",
    }
}

const fn metallic(metal: Metallic) -> &'static str {
    match metal {
        Metallic::ConcentricCopper => "a layer of copper wires around the cores",
        Metallic::CopperBraid => "copper braid around the cores",
    }
}

const fn construction(part: Construction) -> &'static str {
    match part {
        Construction::StrainElement => "with a strain-bearing element",
        Construction::StrainElements => "with strain-bearing elements",
        Construction::Heart => "around a heart that bears no strain",
        Construction::TelecomCore => "with a core for telecommunication",
        Construction::FlatDivisible => "flat, can be pulled apart",
        Construction::Flat => "flat, cannot be pulled apart",
        Construction::FlatOfManyCores => "flat, three cores or more",
        Construction::TwoLayers => "insulation of two layers",
        Construction::Coiled => "coiled",
    }
}

const fn conductor(form: ConductorForm) -> &'static str {
    match form {
        ConductorForm::FineForWelding => "fine strands, for welding",
        ConductorForm::VeryFineForWelding => "very fine strands, for welding",
        ConductorForm::Flexible => "fine strands, flexible",
        ConductorForm::VeryFlexible => "very fine strands, very flexible",
        ConductorForm::FineForFixedWiring => "fine strands, for wiring that does not move",
        ConductorForm::Stranded => "thick strands, for wiring that does not move",
        ConductorForm::Solid => "one solid wire, for wiring that does not move",
        ConductorForm::Tinsel => "tinsel",
    }
}

fn cord_type(cord: &CordType) -> String {
    let origin = match cord.family {
        Family::Hd361 => "European",
        Family::Iec60227 | Family::Iec60245 => "international",
        Family::Chinese => "Chinese",
        Family::American => "American",
        Family::Japanese => "Japanese",
    };
    let made_for = match (cord.use_of, cord.duty) {
        (Use::FixedWiring, _) => "wire for walls",
        (Use::InsideEquipment, _) => "wire for the inside of equipment",
        (Use::FlexOutdoors, _) => "flex for outdoors",
        (Use::Flex, Some(Duty::Light)) => "flex for light duty",
        (Use::Flex, Some(Duty::Ordinary)) => "flex for ordinary duty",
        (Use::Flex, Some(Duty::Heavy)) => "flex for heavy duty",
        (Use::Flex, None) => "flex",
    };
    let insulation = compound(cord.insulation);
    match cord.sheath {
        None => format!("{made_for}, {origin} type, insulated in {insulation}, without a sheath"),
        Some(sheath) if sheath == cord.insulation => {
            format!("{made_for}, {origin} type, insulated and sheathed in {insulation}")
        }
        Some(sheath) => {
            format!("{made_for}, {origin} type, insulated in {insulation}, sheathed in {}", compound(sheath))
        }
    }
}
