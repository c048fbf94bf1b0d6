//! Types of flex by their printed codes: HD 361 designations, IEC 60227 and 60245 numbers, codes of other countries.
//!
//! HD 361 S3 as read in secondary copies; IEC 60227 numbers read, 60245 numbers memory-high; American ratings memory-medium.

/// Who wrote the code.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Family {
    /// HD 361: European designations.
    Hd361,
    /// IEC 60227: PVC insulated cables by number.
    Iec60227,
    /// IEC 60245: rubber insulated cables by number.
    Iec60245,
    /// Chinese letter codes.
    Chinese,
    /// American letter codes.
    American,
}

/// What a flex is meant to bear.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Duty {
    /// Light: table lamps, radios. Unfit for extension leads, heating, kitchens and outdoors.
    Light,
    /// Ordinary: household.
    Ordinary,
    /// Heavy: workshops, outdoors.
    Heavy,
    /// For fixed wiring or inside equipment: not a flex to be moved.
    NoFlex,
}

/// What covers the cores.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Covering {
    /// Polyvinyl chloride.
    Pvc,
    /// Natural or synthetic rubber.
    Rubber,
    /// Anything else.
    Other,
}

/// A type of flex.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FlexType {
    /// The code as it is printed, without size: `H05VV-F`.
    pub code: String,
    /// Who wrote the code.
    pub family: Family,
    /// What it is meant to bear.
    pub duty: Duty,
    /// What covers the cores.
    pub sheath: Covering,
    /// Rated voltages U0 and U in volts, where the code states them.
    pub voltages: Option<(u16, u16)>,
    /// Whether the cores lie side by side without a common round sheath.
    pub is_flat: bool,
    /// Whether a conductor of aluminium or tinsel is stated.
    pub is_not_stranded_copper: bool,
}

/// Insulation and sheath codes of HD 361 S3, the longer first.
const COVERINGS: &[(&str, Covering)] = &[
    ("N2", Covering::Rubber),
    ("N4", Covering::Rubber),
    ("N8", Covering::Rubber),
    ("Q4", Covering::Other),
    ("T6", Covering::Other),
    ("V2", Covering::Pvc),
    ("V3", Covering::Pvc),
    ("V4", Covering::Pvc),
    ("V5", Covering::Pvc),
    ("Z1", Covering::Other),
    ("B", Covering::Rubber),
    ("G", Covering::Other),
    ("J", Covering::Other),
    ("M", Covering::Other),
    ("N", Covering::Rubber),
    ("Q", Covering::Other),
    ("R", Covering::Rubber),
    ("S", Covering::Rubber),
    ("T", Covering::Other),
    ("V", Covering::Pvc),
    ("Z", Covering::Other),
];

/// Constructions of HD 361 S3, the longer first.
const CONSTRUCTIONS: &[&str] = &["C4", "D3", "D5", "H2", "H6", "H7", "H8", "C", "D", "H"];

/// Codes of countries outside Europe: code, family, duty, sheath, flat.
const NATIONAL: &[(&str, Family, Duty, Covering, bool)] = &[
    ("BV", Family::Chinese, Duty::NoFlex, Covering::Pvc, false),
    ("BVR", Family::Chinese, Duty::NoFlex, Covering::Pvc, false),
    ("RVB", Family::Chinese, Duty::Light, Covering::Pvc, true),
    ("RVV", Family::Chinese, Duty::Ordinary, Covering::Pvc, false),
    ("RVVB", Family::Chinese, Duty::Ordinary, Covering::Pvc, true),
    ("YZ", Family::Chinese, Duty::Ordinary, Covering::Rubber, false),
    ("YZW", Family::Chinese, Duty::Ordinary, Covering::Rubber, false),
    ("YCW", Family::Chinese, Duty::Heavy, Covering::Rubber, false),
    ("SPT-1", Family::American, Duty::Light, Covering::Pvc, true),
    ("SPT-2", Family::American, Duty::Light, Covering::Pvc, true),
    ("SVT", Family::American, Duty::Light, Covering::Pvc, false),
    ("SJT", Family::American, Duty::Ordinary, Covering::Pvc, false),
    ("SJTW", Family::American, Duty::Ordinary, Covering::Pvc, false),
];

impl FlexType {
    /// Reads an HD 361 designation without cores and size, in capitals: `H05VV-F`.
    pub fn hd361(code: &str) -> Option<Self> {
        let rest = code.strip_prefix(['H', 'A', 'N'])?;
        let (voltages, rest) =
            [("01", (100, 100)), ("03", (300, 300)), ("05", (300, 500)), ("07", (450, 750)), ("1", (600, 1000))]
                .into_iter()
                .find_map(|(digits, voltages)| rest.strip_prefix(digits).map(|rest| (voltages, rest)))?;
        let (parts, conductor) = rest.split_once('-')?;
        let (insulation, parts) = covering(parts)?;
        let (sheath, mut parts) = covering(parts).map_or((None, parts), |(sheath, rest)| (Some(sheath), rest));
        let mut is_flat = false;
        while let Some((construction, rest)) =
            CONSTRUCTIONS.iter().find_map(|c| parts.strip_prefix(c).map(|rest| (*c, rest)))
        {
            is_flat |= matches!(construction, "H" | "H2" | "H6");
            parts = rest;
        }
        if !parts.is_empty() {
            return None;
        }
        let (is_aluminium, conductor) = conductor.strip_prefix('A').map_or((false, conductor), |rest| (true, rest));
        let is_flexible = matches!(conductor, "F" | "H" | "D" | "E" | "Y");
        let is_known = is_flexible || matches!(conductor, "K" | "R" | "U");
        is_known.then(|| Self {
            code: code.to_owned(),
            family: Family::Hd361,
            duty: match (is_flexible && sheath.is_some(), voltages) {
                (false, _) => Duty::NoFlex,
                (true, (_, 0..=300)) => Duty::Light,
                (true, (_, 301..=500)) => Duty::Ordinary,
                (true, _) => Duty::Heavy,
            },
            sheath: sheath.unwrap_or(insulation),
            voltages: Some(voltages),
            is_flat,
            is_not_stranded_copper: is_aluminium || conductor == "Y",
        })
    }

    /// The type behind a number of IEC 60227 or IEC 60245.
    pub fn iec(publication: u32, number: u32) -> Option<Self> {
        let (family, duty, sheath, voltages, is_flat) = match (publication, number) {
            (227 | 60227, 1 | 2 | 5..=8 | 10) => (Family::Iec60227, Duty::NoFlex, Covering::Pvc, (450, 750), false),
            (227 | 60227, 41..=43) => (Family::Iec60227, Duty::Light, Covering::Pvc, (300, 300), number != 43),
            (227 | 60227, 52 | 56) => (Family::Iec60227, Duty::Light, Covering::Pvc, (300, 300), false),
            (227 | 60227, 53 | 57) => (Family::Iec60227, Duty::Ordinary, Covering::Pvc, (300, 500), false),
            (245 | 60245, 53 | 57) => (Family::Iec60245, Duty::Ordinary, Covering::Rubber, (300, 500), false),
            (245 | 60245, 66) => (Family::Iec60245, Duty::Heavy, Covering::Rubber, (450, 750), false),
            _ => return None,
        };
        Some(Self {
            code: format!("{publication} IEC {number}"),
            family,
            duty,
            sheath,
            voltages: Some(voltages),
            is_flat,
            is_not_stranded_copper: (family, number) == (Family::Iec60227, 41),
        })
    }

    /// The type behind a national code, in capitals.
    pub fn national(code: &str) -> Option<Self> {
        NATIONAL.iter().find(|row| row.0 == code).map(|&(code, family, duty, sheath, is_flat)| Self {
            code: code.to_owned(),
            family,
            duty,
            sheath,
            voltages: None,
            is_flat,
            is_not_stranded_copper: false,
        })
    }
}

fn covering(parts: &str) -> Option<(Covering, &str)> {
    COVERINGS.iter().find_map(|(code, covering)| parts.strip_prefix(code).map(|rest| (*covering, rest)))
}
