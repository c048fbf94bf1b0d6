//! Which metal a conductor is made of: how likely each is, from resistance with size or mass, a magnet, and a scraped strand.
//!
//! Source: resistivities and densities of IEC 60287, ASTM B566 and B869 (read or derived, see each metal); their spreads between
//! products and the chances of a magnet's or scrape's answer are working values of usual practice. Numbers are compared as
//! logarithms, because the doubt about a strand's diameter counts twice and makes the resistivity lopsided. Every metal counts as
//! equally likely beforehand.
//!
//! What it cannot tell: copper-clad aluminium with 10 % from 15 % copper, by any of these; clad aluminium from aluminium without the
//! mass; anything from the width of one hair-thin strand; brass from clad steel without a magnet. A weak pull says nothing. How the
//! signs are weighed together, and what follows where they contradict each other, is in `signs`.

use uom::si::electrical_resistivity::ohm_meter;
use uom::si::f64::{ElectricalResistivity, MassDensity, Ratio};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::ratio::ratio;
use uom::si::{ISQ, Quantity, SI};
use uom::typenum::{N2, N3, P2, Z0};

use crate::domain::decision::Probability;
use crate::domain::quantity::{Area, ElectricalResistance, Length, Mass, Measurand, ResistancePerLength};
use crate::domain::standard::iec60287;
use crate::domain::uncertainty::Measured;

/// Resistance times mass over length squared: resistivity times density, known without any diameter.
pub type MassResistivity = Quantity<ISQ<Z0, P2, N3, N2, Z0, Z0, Z0>, SI<f64>, f64>;

/// A metal that conductors are made or faked of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Metal {
    /// Copper, bare or tinned.
    Copper,
    /// Aluminium clad with 15 % copper by volume.
    CladAluminium15,
    /// Aluminium clad with 10 % copper by volume.
    CladAluminium10,
    /// Aluminium.
    Aluminium,
    /// Steel clad with copper to 40 % of copper's conductivity.
    CladSteel40,
    /// Steel clad with copper to 30 %.
    CladSteel30,
    /// Steel clad with copper to 21 %.
    CladSteel21,
    /// Mild steel.
    Steel,
    /// Brass.
    Brass,
    /// Stainless steel.
    Stainless,
}

/// What is known of a metal.
pub(super) struct Properties {
    /// Resistivity at 20 °C, Ω·mm²/m.
    resistivity: f64,
    /// Its spread between products, relative standard deviation.
    pub(super) spread: f64,
    /// kg/m³.
    density: f64,
    /// Chances of no, a weak and a strong pull.
    pub(super) pull: [f64; 3],
    /// Chances of what a scrape shows, in the order of [`Scrape`].
    pub(super) scrape: [f64; 5],
}

const NOT_PULLED: [f64; 3] = [0.898, 0.1, 0.002];
const PULLED: [f64; 3] = [0.01, 0.1, 0.89];
const CLAD: [f64; 5] = [0.12, 0.03, 0.75, 0.09, 0.01];
const SILVERY: [f64; 5] = [0.01, 0.01, 0.02, 0.95, 0.01];

impl Metal {
    /// Every metal, the best conductor of each family first.
    pub const ALL: [Self; 10] = [
        Self::Copper,
        Self::CladAluminium15,
        Self::CladAluminium10,
        Self::Aluminium,
        Self::CladSteel40,
        Self::CladSteel30,
        Self::CladSteel21,
        Self::Steel,
        Self::Brass,
        Self::Stainless,
    ];

    /// Resistivity at 20 °C.
    pub fn resistivity(self) -> ElectricalResistivity {
        ElectricalResistivity::new::<ohm_meter>(self.properties().resistivity * 1e-6)
    }

    /// How much the resistivity differs from product to product, as a relative standard deviation.
    pub fn spread(self) -> Ratio {
        Ratio::new::<ratio>(self.properties().spread)
    }

    /// Density.
    pub fn density(self) -> MassDensity {
        MassDensity::new::<kilogram_per_cubic_meter>(self.properties().density)
    }

    /// Resistivity times density.
    pub fn mass_resistivity(self) -> MassResistivity {
        self.resistivity() * self.density()
    }

    /// The area that a core of this metal needs for a resistance over length.
    pub fn area_for(self, core: ResistancePerLength) -> Area {
        self.resistivity() / core
    }

    /// Copper: between the international standard and 3 % above it, for drawing and tinning. Clad aluminium: ASTM B566 (read).
    /// Clad steel: ASTM B869 (class read, resistivity derived, density memory-medium). Steel: IEC 60287 armour (read). Brass:
    /// memory-medium.
    pub(super) const fn properties(self) -> Properties {
        let (resistivity, spread, density, pull, scrape) = match self {
            Self::Copper => (0.01735, 0.015, 8890.0, NOT_PULLED, [0.42, 0.30, 0.01, 0.24, 0.03]),
            Self::CladAluminium15 => (0.0270, 0.02, 3630.0, NOT_PULLED, CLAD),
            Self::CladAluminium10 => (0.0275, 0.02, 3320.0, NOT_PULLED, CLAD),
            Self::Aluminium => (0.02826, 0.03, 2703.0, NOT_PULLED, SILVERY),
            Self::CladSteel40 => (0.0431, 0.04, 8240.0, PULLED, CLAD),
            Self::CladSteel30 => (0.0575, 0.04, 8150.0, PULLED, CLAD),
            Self::CladSteel21 => (0.0821, 0.04, 7990.0, PULLED, CLAD),
            Self::Steel => (0.138, 0.18, 7850.0, PULLED, [0.02, 0.02, 0.05, 0.85, 0.06]),
            Self::Brass => (0.064, 0.06, 8470.0, NOT_PULLED, [0.10, 0.05, 0.01, 0.04, 0.80]),
            Self::Stainless => (0.70, 0.06, 7900.0, [0.6, 0.3, 0.1], SILVERY),
        };
        Properties { resistivity, spread, density, pull, scrape }
    }
}

/// How a magnet takes to the bare strands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pull {
    /// Not at all.
    None,
    /// So little that one is not sure.
    Weak,
    /// They jump to it or hang from it.
    Strong,
}

/// What a strand shows when it is scraped.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scrape {
    /// Red all the way.
    Red,
    /// Silver outside, red under it: tinned copper.
    SilverThenRed,
    /// Red outside, silver under it: clad.
    RedThenSilver,
    /// Silver all the way.
    Silver,
    /// Yellow.
    Yellow,
}

/// A value known within a factor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Within<Q> {
    /// The value.
    pub value: Q,
    /// Its relative standard uncertainty.
    pub relative: Ratio,
}

/// The strands of one core.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strands {
    /// How many.
    pub count: u8,
    /// Diameter of one.
    pub diameter: Measured<Length>,
}

/// One in fifty strands is missed or counted twice (usual practice).
const MISCOUNT: f64 = 0.02;

impl Strands {
    /// Area of all strands together.
    pub fn area(&self) -> Measured<Area> {
        let one = |d: Length| d * d * (core::f64::consts::FRAC_PI_4 * f64::from(self.count));
        let area = self.diameter.map(one);
        Measured::new(area.value, Area::from_base(libm::hypot(area.u.base(), MISCOUNT * area.value.base())))
    }
}

/// Resistivity of a core from its resistance at 20 °C, its length and its strands.
pub fn resistivity(
    at_20: Measured<ElectricalResistance>,
    length: Measured<Length>,
    strands: &Strands,
) -> Within<ElectricalResistivity> {
    let area = strands.area();
    let relative = [relative(at_20), relative(length), relative(area)].into_iter().fold(0.0, libm::hypot);
    Within { value: at_20.value * area.value / length.value, relative: Ratio::new::<ratio>(relative) }
}

/// Mass resistivity of a core from its resistance at 20 °C, its length and the mass of its bare metal.
pub fn mass_resistivity(
    at_20: Measured<ElectricalResistance>,
    length: Measured<Length>,
    mass: Measured<Mass>,
) -> Within<MassResistivity> {
    let relative = [relative(at_20), 2.0 * relative(length), relative(mass)].into_iter().fold(0.0, libm::hypot);
    let value = at_20.value * mass.value / (length.value * length.value);
    Within { value, relative: Ratio::new::<ratio>(relative) }
}

fn relative<Q: Measurand>(measured: Measured<Q>) -> f64 {
    measured.u.base() / measured.value.base()
}

/// Everything seen and measured that speaks of the metal.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Signs {
    /// Resistivity by size.
    pub resistivity: Option<Within<ElectricalResistivity>>,
    /// Mass resistivity. It shares the reading of the resistance with the resistivity: give the better known of the two.
    pub mass_resistivity: Option<Within<MassResistivity>>,
    /// The magnet.
    pub pull: Option<Pull>,
    /// The scraped strand.
    pub scrape: Option<Scrape>,
}

/// A metal and how likely it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Candidate {
    /// The metal.
    pub metal: Metal,
    /// Its probability, all metals equally likely beforehand.
    pub share: Probability,
}

/// Those that cannot be told apart: the likeliest metals that together come to 95 %.
pub fn not_told_apart(ranked: &[Candidate]) -> Vec<Candidate> {
    let mut sum = 0.0;
    ranked
        .iter()
        .copied()
        .take_while(|candidate| {
            let before = sum;
            sum += candidate.share.value();
            before < 0.95
        })
        .collect()
}

/// What could explain, by itself, that a core of the claimed area has so much resistance.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Explanation {
    /// Copper-clad aluminium could.
    CladAluminium,
    /// Clad aluminium could not; steel, or copper-clad steel, could.
    Steel,
    /// Of all metals, only stainless steel could.
    Stainless,
    /// No metal sold as a conductor could: the core is too thin, whatever it is made of.
    NoMetal,
}

/// What could explain a core's resistance if it had its claimed area: beyond 1.9 times pure copper's not clad aluminium, beyond
/// 12 times no steel, beyond 41 times no metal.
pub fn explanation(core: ResistancePerLength, claimed: Area) -> Explanation {
    let copper: ResistancePerLength = iec60287::copper_resistivity() / claimed;
    let times = (core / copper).get::<ratio>();
    if times <= 1.9 {
        Explanation::CladAluminium
    } else if times <= 12.0 {
        Explanation::Steel
    } else if times <= 41.0 {
        Explanation::Stainless
    } else {
        Explanation::NoMetal
    }
}
