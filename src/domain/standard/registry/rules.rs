//! Clauses without a limit of their own: rules, the numbers of models, and the codes by which print is read.

use crate::domain::standard::{
    Clause, adiabatic, astm_b566, astm_b869, awg, bs1362, bs1363_1, bs1363_2, bs7671_flex, bs7671_shock, cord_type,
    en50525, gtin, hd308, hd361, iec60227_1, iec60228, iec60287, iec60384_14, iec60799, iet_code, law_gb, law_ni,
    marks,
};

/// Rules that are kept or broken, with no number or with none that anybody measures here.
pub const RULES: &[Clause] = &[
    law_gb::PLUGS,
    law_gb::EQUIPMENT_MARK,
    law_gb::EQUIPMENT_SCOPE,
    law_gb::EQUIPMENT_IDENTITY,
    law_gb::GENERAL_SAFETY,
    law_gb::TRUE_CLAIMS,
    law_ni::EQUIPMENT_MARK,
    law_ni::EQUIPMENT_SCOPE,
    law_ni::EQUIPMENT_IDENTITY,
    law_ni::GENERAL_SAFETY,
    marks::CE_AND_UKCA_SIZE,
    marks::DOUBLE_SQUARE,
    marks::WHEELED_BIN,
    marks::MANAGEMENT_SYSTEM,
    marks::RATING_PLATE,
    gtin::CHECK_DIGIT,
    bs1363_1::MARKING,
    bs1363_1::FUSE,
    bs1363_1::TEST_PIN,
    bs1363_1::PIN_MAKE,
    bs1363_1::SHUTTER_OPENER,
    bs1363_1::SLEEVES,
    bs1363_1::GAUGE,
    bs1363_1::PIN_TWIST,
    bs1363_1::CORD_ANCHORAGE,
    bs1362::MARKING,
    bs1362::BODY,
    hd308::COLOURS,
    iec60227_1::MAKER,
    bs1363_2::SHUTTERS,
    bs1363_2::APERTURES,
    bs1363_2::TOUCH,
    bs1363_2::MARKING,
    bs1363_2::EXTENSION_SETS_ARE_EARTHED,
    iec60799::PLUG_AND_CONNECTOR,
    iec60228::COPPER_ONLY,
    iet_code::SURGE_LEADS,
    bs7671_shock::SWITCH_IN_LINE,
    iec60384_14::ACROSS_THE_BARRIER,
];

/// Numbers that a model reckons with, or another limit is made of.
pub const MODELS: &[Clause] = &[
    en50525::SIZES,
    iec60228::ANNEX_A,
    bs7671_flex::TABLE_4F3B,
    bs7671_flex::TABLE_4C1,
    bs1362::GATES,
    adiabatic::LAW,
    iec60287::METALS,
    iec60287::FREE_AIR,
    iec60287::THERMAL_RESISTIVITIES,
    astm_b566::CLASSES,
    astm_b869::CLASSES,
];

/// Codes by which print is read.
pub const PRINT: &[Clause] = &[
    hd361::DESIGNATION,
    hd361::SANITY,
    cord_type::IEC_60227,
    cord_type::IEC_60245,
    cord_type::CHINESE,
    cord_type::AMERICAN,
    cord_type::JAPANESE,
    awg::DIAMETERS,
];
