//! The print along a flex: HD 361 designations, IEC 60227 and 60245 numbers, national codes and AWG sizes.

use crate::domain::quantity::Area;

/// The print on a flex as far as it could be read.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct FlexPrint {
    /// Cross-section of one core.
    pub area: Option<Area>,
    /// How many cores.
    pub cores: Option<u8>,
    /// Pieces that could not be read, as they were printed.
    pub unread: Vec<String>,
}

impl FlexPrint {
    /// Reads the print on a flex.
    pub fn parse(printed: &str) -> Self {
        Self { unread: vec![printed.to_owned()], ..Self::default() }
    }
}
