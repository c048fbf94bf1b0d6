//! What readings of a cut flex say of its cores: the doubt of the length, and the room they were read in.

use plugwary::domain::facts;
use plugwary::domain::finding::{Conformity, RoomTemperature};
use plugwary::domain::instrument::Instrument::{FourWireMeter, Thermometer};
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::question::{Core, Target};
use plugwary::domain::reading::Shown;

use super::{cores, piece, resistance_of, shows, with};

/// The doubt of length and room is granted: 1 m by tape may be wrong by 5 mm and 0.2 %, 7 mm, a room by 2 K of 0.4 % each; with their last
/// digits 0.405 % and 0.462 %, so that two standard uncertainties are 1.23 %. "More than" must stand so far above 13.7 mΩ to break its
/// limit, from 13.87 mΩ on, "less than" so far below to keep it, up to 13.53 mΩ.
#[test]
fn more_than_and_less_than_grant_the_doubt_of_length_and_room() {
    let sound = cores(piece(1.0), [13.0; 3], FourWireMeter);
    let earth = |shown| resistance_of(&shows(sound.clone(), Core::Earth, shown, FourWireMeter), 1.5).outcome;
    let milliohms = |value: f64| Amount::new(value, Unit::Milliohm);
    assert_eq!(earth(Shown::Above(milliohms(13.86))), Conformity::Inconclusive);
    assert_eq!(earth(Shown::Above(milliohms(13.88))), Conformity::Nonconforming);
    assert_eq!(earth(Shown::Below(milliohms(13.54))), Conformity::Inconclusive);
    assert_eq!(earth(Shown::Below(milliohms(13.52))), Conformity::Conforms);
}

/// Nobody stands in a room of 50 K of frost or 90 °C with a meter: such a reading is a slip, and the room counts as not read. Frost and the
/// heat of a parked car are rooms.
#[test]
fn a_room_nobody_stands_in_was_not_read() {
    #[expect(
        clippy::redundant_closure_for_method_calls,
        reason = "the method's own path binds one lifetime, the closure any"
    )]
    let room = |celsius: f64| {
        let bench = cores(piece(10.0), [130.0; 3], FourWireMeter);
        let reading = (celsius, 0.1, Unit::DegreeCelsius);
        let read = bench.reads(facts::ROOM_TEMPERATURE, Target::Sample, reading, Thermometer);
        with(&read, None, None, |flex| flex.room_temperature())
    };
    for celsius in [-50.0, -41.0, 81.0, 90.0] {
        assert_eq!(room(celsius), RoomTemperature::Assumed, "{celsius} °C");
    }
    for celsius in [-39.0, 5.0, 60.0, 79.0] {
        assert_eq!(room(celsius), RoomTemperature::Read, "{celsius} °C");
    }
}
