//! Settings are remembered, and forbidden storage stops nothing.

use plugwary::domain::instrument::{Accuracy, Instrument, OwnInstrument, ReadWith};
use plugwary::domain::quantity::Unit;
use plugwary::domain::question::Question;
use plugwary::domain::sample::{Equipment, Place};
use plugwary::store::settings;
use wasm_bindgen::JsValue;
use wasm_bindgen_test::wasm_bindgen_test;

use crate::StandIn;

const SHUTTERS: Question = Question::one("shutters", Place::Sockets, Equipment::Eyes, &["all-closed"]);
const GRIP: Question = Question::one("grip", Place::Sockets, Equipment::Eyes, &["firm"]);

fn forget_everything() -> Result<(), JsValue> {
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    window.local_storage()?.ok_or(JsValue::NULL)?.clear()
}

#[wasm_bindgen_test]
fn equipment_is_remembered() -> Result<(), JsValue> {
    forget_everything()?;
    assert_eq!(settings::equipment(), None);
    for equipment in Equipment::ALL {
        settings::set_equipment(equipment);
        assert_eq!(settings::equipment(), Some(equipment));
    }
    Ok(())
}

#[wasm_bindgen_test]
fn instrument_is_remembered_for_its_question_only() -> Result<(), JsValue> {
    forget_everything()?;
    assert_eq!(settings::read_with(&SHUTTERS), None);
    settings::remember_read_with(&SHUTTERS, "rule".to_owned());
    settings::remember_read_with(&SHUTTERS, "hand-meter my own".to_owned());
    assert_eq!(settings::read_with(&SHUTTERS).as_deref(), Some("hand-meter my own"));
    assert_eq!(settings::read_with(&GRIP), None);
    Ok(())
}

#[wasm_bindgen_test]
fn own_instruments_come_back_as_they_were() -> Result<(), JsValue> {
    forget_everything()?;
    assert_eq!(settings::own_instruments(), []);
    let accuracy = Accuracy { of_reading: 0.005, digits: 2.0, fixed: (0.1, Unit::Milliohm) };
    let own = OwnInstrument { name: "the blue one".to_owned(), accuracy };
    let mine = [ReadWith { instrument: Instrument::HandMeterNulled, own: Some(own) }];
    settings::set_own_instruments(&mine);
    assert_eq!(settings::own_instruments(), mine);
    Ok(())
}

#[wasm_bindgen_test]
fn instruments_of_another_edition_are_passed_over() -> Result<(), JsValue> {
    forget_everything()?;
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    let storage = window.local_storage()?.ok_or(JsValue::NULL)?;
    for other in [r#"[["dowsing-rod","mine",0.1,1,0,"mm"]]"#, r#"[["rule","mine",0.1,1,0,"furlong"]]"#, "no JSON"] {
        storage.set_item("plugwary.own-instruments", other)?;
        assert_eq!(settings::own_instruments(), []);
        storage.set_item("plugwary.instruments", other)?;
        assert_eq!(settings::read_with(&GRIP), None);
    }
    Ok(())
}

#[wasm_bindgen_test]
fn example_stays_thrown_away() -> Result<(), JsValue> {
    forget_everything()?;
    assert!(!settings::example_dismissed());
    settings::dismiss_example();
    assert!(settings::example_dismissed());
    Ok(())
}

#[wasm_bindgen_test]
fn ready_without_a_network_is_said_once() -> Result<(), JsValue> {
    forget_everything()?;
    assert!(settings::say_offline_ready_once());
    assert!(!settings::say_offline_ready_once());
    Ok(())
}

#[wasm_bindgen_test]
fn forbidden_storage_stops_nothing() -> Result<(), JsValue> {
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    for getter in ["throw new DOMException('no', 'SecurityError')", "return null"] {
        forget_everything()?;
        let stand_in = StandIn::new(&window, "localStorage", getter)?;
        settings::set_equipment(Equipment::Meters);
        settings::remember_read_with(&GRIP, "rule".to_owned());
        settings::dismiss_example();
        assert_eq!(settings::equipment(), None);
        assert_eq!(settings::read_with(&GRIP), None);
        assert!(!settings::example_dismissed());
        assert!(!settings::say_offline_ready_once());
        drop(stand_in);
    }
    Ok(())
}

#[wasm_bindgen_test]
fn storage_without_room_stops_nothing() -> Result<(), JsValue> {
    forget_everything()?;
    settings::set_equipment(Equipment::Eyes);
    let prototype = js_sys::eval("Storage.prototype")?.into();
    let getter = "return () => { throw new DOMException('no room', 'QuotaExceededError') }";
    let stand_in = StandIn::new(&prototype, "setItem", getter)?;
    settings::set_equipment(Equipment::Meters);
    assert!(!settings::say_offline_ready_once());
    drop(stand_in);
    assert_eq!(settings::equipment(), Some(Equipment::Eyes));
    Ok(())
}
