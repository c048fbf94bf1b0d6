//! Settings are remembered, and forbidden storage stops nothing.

use plugwary::domain::instrument::Instrument;
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
    assert_eq!(settings::instrument(&SHUTTERS), None);
    settings::remember_instrument(&SHUTTERS, Instrument::Rule);
    settings::remember_instrument(&SHUTTERS, Instrument::HandMeter);
    assert_eq!(settings::instrument(&SHUTTERS), Some(Instrument::HandMeter));
    assert_eq!(settings::instrument(&GRIP), None);
    Ok(())
}

#[wasm_bindgen_test]
fn instrument_of_another_edition_is_passed_over() -> Result<(), JsValue> {
    forget_everything()?;
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    let storage = window.local_storage()?.ok_or(JsValue::NULL)?;
    storage.set_item("plugwary.instruments", r#"{"shutters":"dowsing-rod","grip":"tape"}"#)?;
    assert_eq!(settings::instrument(&SHUTTERS), None);
    assert_eq!(settings::instrument(&GRIP), Some(Instrument::Tape));
    for damaged in ["no JSON at all", r#"["tape"]"#] {
        storage.set_item("plugwary.instruments", damaged)?;
        assert_eq!(settings::instrument(&GRIP), None);
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
        settings::remember_instrument(&GRIP, Instrument::Rule);
        settings::dismiss_example();
        assert_eq!(settings::equipment(), None);
        assert_eq!(settings::instrument(&GRIP), None);
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
