//! Prints the engine's answers to generated questions, one JSON line each, for `compare.py` to hold against other people's libraries, and an
//! archive for it to open.
//!
//! The questions are the same at every run. Each line names what was asked, the inputs and the engine's answers, all in base units.

#![expect(clippy::print_stdout, reason = "what it prints is its result")]

use std::fs;
use std::path::Path;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use plugwary::archive::{ArchiveFault, Name, Packer};
use plugwary::collection::Seen;
use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::comparison::{Gap, Readings, between};
use plugwary::domain::decision::Limit;
use plugwary::domain::instrument::{Accuracy, Instrument, OwnInstrument};
use plugwary::domain::physics::conductor::{at_20, joined, per_length};
use plugwary::domain::physics::heating::{LoadedFlex, Steady};
use plugwary::domain::quantity::{
    Amount, ElectricalResistance, Length, Measurand, ThermodynamicTemperature, Unit, amperes, degrees_celsius, metres,
    millimetres, ohms, ohms_per_kilometre,
};
use plugwary::domain::question::Target;
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::standard::gtin::{self, gtin_check_digit};
use plugwary::domain::standard::iec60287::StillAir;
use plugwary::domain::uncertainty::{Correlation, Measured, combine_correlated, combine3};
use plugwary::record::{self, Attached, Photo, Record, read, write};
use plugwary::report::page_sealed_by;
use plugwary::seal::{PublicKey, attach, fingerprint, sign, statement};
use proptest::array::{uniform3, uniform4, uniform32};
use proptest::collection::vec;
use proptest::sample::select;
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;
use serde_json::{Value, json};
use sha2::{Digest, Sha256};
use uom::si::f64::TemperatureInterval;
use uom::si::linear_power_density::watt_per_meter;
use uom::si::temperature_interval::kelvin;

/// How many questions of each sort.
const CASES: usize = 500;

/// How many pages are sealed: each is some twenty thousand bytes.
const SEALS: usize = 20;

/// What is sealed.
const EXAMINATION: &str = include_str!("../record/cases/parcel-lead.json");

fn main() {
    let mut runner = TestRunner::deterministic();
    for _ in 0..CASES {
        let lines = [
            core_over_length(&mut runner),
            cores_joined(&mut runner),
            three_inputs(&mut runner),
            four_correlated(&mut runner),
            conformance(&mut runner),
            check_digit(&mut runner),
            loss(&mut runner),
            warmth(&mut runner),
            normalised_error(&mut runner),
        ];
        for line in lines {
            println!("{line}");
        }
    }
    for _ in 0..SEALS {
        println!("{}", sealed(&mut runner));
    }
    println!("{}", archive());
}

fn draw<S: Strategy>(runner: &mut TestRunner, from: S) -> S::Value {
    // Ranges and lists, unlike filters, never fail to give a value.
    from.new_tree(runner).map_or_else(|reason| unreachable!("{reason}"), |tree| tree.current())
}

/// A value and a doubt of up to 3 % of it.
fn doubtful(runner: &mut TestRunner, from: f64, to: f64) -> (f64, f64) {
    let value = draw(runner, from..to);
    (value, value * draw(runner, 0.000_1..0.03))
}

fn answer<Q: Measurand>(found: &Measured<Q>) -> Value {
    json!({ "value": found.value.base(), "u": found.u.base() })
}

/// A core's resistance at 20 °C over its length: both laws of two inputs in a row.
fn core_over_length(runner: &mut TestRunner) -> Value {
    let (resistance, length) = (doubtful(runner, 0.005, 4.0), doubtful(runner, 0.2, 50.0));
    let room = (draw(runner, 0.0..40.0), draw(runner, 0.1..3.0));
    let warm = Measured::new(degrees_celsius(room.0), ThermodynamicTemperature::from_base(room.1));
    let found = per_length(
        at_20(Measured::new(ohms(resistance.0), ohms(resistance.1)), warm),
        Measured::new(metres(length.0), metres(length.1)),
    );
    json!({ "of": "core over length", "resistance": resistance, "length": length, "celsius": room, "found": answer(&found) })
}

/// Three cores joined.
fn cores_joined(runner: &mut TestRunner) -> Value {
    let cores = [(); 3].map(|()| doubtful(runner, 0.01, 4.0));
    let alone = cores.map(|(value, u)| Measured::new(ohms(value), ohms(u)));
    let found = joined(&alone, Measured::exact(ohms(1.0))).map(|check| answer(&check.expected));
    json!({ "of": "cores joined", "cores": cores, "found": found })
}

/// `a b / c` of three independent inputs.
fn three_inputs(runner: &mut TestRunner) -> Value {
    let inputs = [(); 3].map(|()| doubtful(runner, 0.1, 10.0));
    let [a, b, c] = inputs.map(|(value, u)| Measured::new(metres(value), metres(u)));
    let found: Measured<Length> = combine3(a, b, c, |a, b, c| a * b / c);
    json!({ "of": "three inputs", "inputs": inputs, "found": answer(&found) })
}

/// `a / b (c - d)` of four inputs, each pair with a correlation. Products of one factor an input are always possible together.
fn four_correlated(runner: &mut TestRunner) -> Value {
    let inputs = [(10.0, 20.0), (1.0, 2.0), (5.0, 9.0), (1.0, 3.0)].map(|(from, to)| doubtful(runner, from, to));
    let factors = draw(runner, uniform4(-0.99..0.99));
    let of_pair = |i: usize, j: usize| factors.get(i).zip(factors.get(j)).map_or(0.0, |(one, another)| one * another);
    let measured = inputs.map(|(value, u)| Measured::new(ohms(value), ohms(u)));
    let found: Measured<ElectricalResistance> =
        combine_correlated(measured, |i, j| Correlation::new(of_pair(i, j)), |[a, b, c, d]| a / b * (c - d));
    json!({ "of": "four correlated inputs", "inputs": inputs, "factors": factors, "found": answer(&found) })
}

/// Two readings held against each other.
fn normalised_error(runner: &mut TestRunner) -> Value {
    let inputs = [(); 2].map(|()| (draw(runner, 10.0..10.2), draw(runner, 0.01..0.1)));
    let [one, other] = inputs.map(|(value, u)| Reading {
        shown: Shown::Value(Amount::new(value, Unit::Millimetre)),
        step: Amount::new(0.0, Unit::Millimetre),
        unit: Unit::Millimetre,
        instrument: Instrument::DigitalCalliper,
        own: Some(OwnInstrument {
            name: String::new(),
            accuracy: Accuracy { of_reading: 0.0, digits: 0.0, fixed: (u * f64::sqrt(3.0), Unit::Millimetre) },
        }),
        typed: String::new(),
    });
    let found = match between(&one, &other) {
        Readings::Numbers(found) => Some(json!({
            "value": found.difference.difference_in(Unit::Millimetre),
            "u": found.u.difference_in(Unit::Millimetre),
            "normalised": found.normalised.value(),
            "differs": found.gap == Gap::Beyond,
        })),
        Readings::Ranges(_) => None,
    };
    json!({ "of": "normalised error", "inputs": inputs, "found": found })
}

/// An archive of all cases, with two photos.
fn archive() -> Value {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases");
    let texts =
        fs::read_dir(folder).into_iter().flatten().flatten().filter_map(|case| fs::read_to_string(case.path()).ok());
    let mut records: Vec<Record> = texts.filter_map(|text| read(&text).ok()).collect();
    records.sort_by(|one, other| one.id.cmp(&other.id));
    let digest =
        |bytes: &[u8]| Sha256::digest(bytes).iter().fold(String::new(), |digits, byte| format!("{digits}{byte:02x}"));
    let (mut packer, mut archive, mut files) = (Packer::new(), Vec::new(), serde_json::Map::new());
    let mut put = |bytes: Result<Vec<u8>, ArchiveFault>| {
        archive.extend(bytes.unwrap_or_else(|fault| unreachable!("{fault}")));
    };
    for (record, media_type) in records.iter_mut().zip(["image/jpeg", "image/webp"].into_iter().cycle()) {
        let bytes = record.id.repeat(100).into_bytes();
        let photo = Photo {
            sha256: digest(&bytes),
            media_type: media_type.to_owned(),
            width: 4,
            height: 3,
            taken: record.changed.clone(),
            attached: Attached::Answer { question: "plug-pattern", target: Target::Sample },
        };
        files.insert(Name::of_photo(&photo).to_string(), photo.sha256.clone().into());
        put(packer.photo(&photo, &bytes));
        record.photos = vec![photo];
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        put(packer.examination(Seen { record, assessment: &assessment }));
        files.insert(format!("examinations/{}.json", record.id), digest(write(record).as_bytes()).into());
    }
    put(packer.finish());
    json!({ "of": "archive", "zip": STANDARD.encode(&archive), "files": files, "samples": records.len() })
}

/// The probability of keeping a limit, out to ten standard uncertainties.
fn conformance(runner: &mut TestRunner) -> Value {
    let (value, u) = (draw(runner, -5.0..5.0), draw(runner, 0.01..2.0));
    let [one, another] = [(); 2].map(|()| value + u * draw(runner, -10.0..10.0));
    let (low, high) = (f64::min(one, another), f64::max(one, another));
    let measured = Measured::new(metres(value), metres(u));
    let keeps = |limit: Limit<Length>| limit.conformance(&measured).value();
    let found = [
        keeps(Limit::AtLeast(metres(low))),
        keeps(Limit::AtMost(metres(high))),
        keeps(Limit::Between(metres(low), metres(high))),
    ];
    json!({ "of": "probability of keeping a limit", "value": value, "u": u, "low": low, "high": high, "found": found })
}

/// The check digit of a barcode, and whether a number that may have another last digit is one.
fn check_digit(runner: &mut TestRunner) -> Value {
    let length = draw(runner, select(&gtin::LENGTHS[..]));
    let digits = draw(runner, vec(0_u8..10, length - 1));
    let last = draw(runner, 0_u8..10);
    let printed: String = digits.iter().chain([&last]).map(u8::to_string).collect();
    json!({
        "of": "check digit",
        "printed": printed,
        "found": gtin_check_digit(&digits),
        "is_valid": gtin::is_valid(&printed),
    })
}

/// The heat that a cable gives to still air.
fn loss(runner: &mut TestRunner) -> Value {
    let (diameter, rise, room) = (draw(runner, 5.0..12.0), draw(runner, 5.0..70.0), draw(runner, 15.0..35.0));
    let found = StillAir::around(millimetres(diameter)).loss(TemperatureInterval::new::<kelvin>(rise));
    json!({
        "of": "loss to still air",
        "diameter": diameter * 1e-3,
        "rise": rise,
        "celsius": room,
        "found": found.get::<watt_per_meter>(),
    })
}

/// How warm the conductors of a flex get.
fn warmth(runner: &mut TestRunner) -> Value {
    let [diameter, current, room] = draw(runner, uniform3(0.0..1.0));
    let (diameter, current, room) = (5.5 + 6.0 * diameter, 1.0 + 12.0 * current, 15.0 + 20.0 * room);
    let each = draw(runner, 5.0..40.0) * draw(runner, select(vec![1.0, 10.0]));
    let flex = LoadedFlex { cores: ohms_per_kilometre(2.0 * each), diameter: millimetres(diameter) };
    let conductor = match flex.steady(amperes(current), degrees_celsius(room)) {
        Steady::At(conductor) => Some(conductor.base() - degrees_celsius(0.0).base()),
        Steady::Never => None,
    };
    json!({
        "of": "warmth of the conductors",
        "each": each * 1e-3,
        "diameter": diameter * 1e-3,
        "current": current,
        "celsius": room,
        "found": conductor,
    })
}

/// A page sealed with a key made up here, and what people compare of that key.
fn sealed(runner: &mut TestRunner) -> Value {
    let secret = draw(runner, uniform32(0_u8..=255));
    let (key, record) = (PublicKey::of(&secret), record::read(EXAMINATION).ok());
    let page = record.map(|record| page_sealed_by(&record, &[], &key)).unwrap_or_default();
    let said = statement(&page, &key, "2026-11-24T10:30:00Z").unwrap_or_default();
    let sealed = attach(&page, &said, &sign(&secret, &said)).unwrap_or_default();
    json!({ "of": "seal", "secret": secret, "page": sealed, "found": fingerprint(&key) })
}
