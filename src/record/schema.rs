//! The JSON Schema of the saved form: the fields of version 1, and for each question what answers it.

use schemars::Schema;
use schemars::generate::SchemaSettings;
use schemars::transform::{Transform, transform_subschemas};
use serde_json::{Value, json};

use super::reading::Range;
use super::{entry, spelling, v1};
use crate::domain::check;
use crate::domain::instrument::Instrument;
use crate::domain::question::{Ask, Per, Question};

/// The schema of an examination (JSON Schema 2020-12), pretty, with a newline at its end.
///
/// A text that fits it is read; beyond it [`read`](super::read) refuses only a question answered twice.
pub fn schema() -> String {
    let mut schema = SchemaSettings::draft2020_12()
        .with_transform(WithoutNull)
        .into_generator()
        .into_root_schema_for::<v1::Examination>();
    name_the_questions(&mut schema);
    format!("{:#}\n", schema.as_value())
}

/// A field is left out rather than null.
#[derive(Debug, Clone)]
struct WithoutNull;

impl Transform for WithoutNull {
    fn transform(&mut self, schema: &mut Schema) {
        transform_subschemas(self, schema);
        if let Some(Value::Array(types)) = schema.get_mut("type") {
            types.retain(|of| of != "null");
            if let [only] = types.as_slice() {
                let only = only.clone();
                schema.insert("type".to_owned(), only);
            }
        }
        if let Some(Value::Array(choices)) = schema.remove("anyOf") {
            // The only choice that is made of fields is between a thing and null.
            for choice in choices.into_iter().filter(|choice| choice != &json!({ "type": "null" })) {
                if let Value::Object(fields) = choice {
                    fields.into_iter().for_each(|(key, value)| drop(schema.insert(key, value)));
                }
            }
        }
    }
}

fn name_the_questions(schema: &mut Schema) {
    let Some(Value::Object(parts)) = schema.get_mut("$defs") else { return };
    let ids: Vec<&str> = check::questions().map(|question| question.id).collect();
    let flags = ["nothing", "cannot_tell", "refused", "no_tool", "later"];
    let all = ["one", "any", "printed", "count", "reading"].into_iter().chain(flags);
    let one_of = |fields: &mut dyn Iterator<Item = &str>| -> Value {
        fields.map(|field| json!({ "required": [field] })).collect::<Vec<_>>().into()
    };
    for (part, key, value) in [
        ("Answer", "oneOf", one_of(&mut all.into_iter())),
        ("Answer", "anyOf", check::questions().map(branch).collect::<Vec<_>>().into()),
        ("Reading", "oneOf", one_of(&mut ["value", "above", "below", "open"].into_iter())),
        (
            "Photo",
            "oneOf",
            json!([{ "required": ["question"] }, { "required": ["origin"], "properties": { "of": false } }]),
        ),
        (
            "Handling",
            "anyOf",
            json!([{ "required": ["number", "link"] }, { "properties": { "number": false, "link": false } }]),
        ),
    ] {
        if let Some(Value::Object(part)) = parts.get_mut(part) {
            part.insert(key.to_owned(), value);
        }
    }
    if let Some(Value::Object(question)) =
        parts.get_mut("Photo").and_then(|photo| photo.pointer_mut("/properties/question"))
    {
        question.insert("enum".to_owned(), json!(ids));
    }
    if let Some(Value::Object(of)) = parts.get_mut("Scenario").and_then(|part| part.pointer_mut("/properties/of")) {
        of.insert("items".to_owned(), json!({ "enum": check::all().map(|check| check.code).collect::<Vec<_>>() }));
        of.insert("uniqueItems".to_owned(), json!(true));
    }
    parts.insert("Flag".to_owned(), json!({ "anyOf": one_of(&mut flags.into_iter()) }));
    for per in [Per::Socket, Per::Core, Per::Claim] {
        let spelled: Vec<String> = spelling::targets(per).into_iter().filter_map(spelling::of_target).collect();
        parts.insert(targets(per).to_owned(), json!({ "enum": spelled }));
    }
}

const fn targets(per: Per) -> &'static str {
    match per {
        Per::Sample => "Sample",
        Per::Socket => "Socket",
        Per::Core => "Core",
        Per::Claim => "Place",
    }
}

/// What answers a question: its own field, or one of the flags that fit every question.
fn branch(question: &'static Question) -> Value {
    let field = entry::field(question.ask);
    let (of, required) = match question.per {
        Per::Sample => (json!(false), json!(["question"])),
        per @ (Per::Socket | Per::Core | Per::Claim) => {
            (json!({ "$ref": format!("#/$defs/{}", targets(per)) }), json!(["question", "of"]))
        }
    };
    json!({
        "title": format!("{}: {}, {}", question.id, question.place.code(), question.needs.code()),
        "properties": { "question": { "const": question.id }, "of": of, field: answers(question.ask) },
        "required": required,
        "anyOf": [{ "required": [field] }, { "$ref": "#/$defs/Flag" }]
    })
}

fn answers(ask: Ask) -> Value {
    match ask {
        Ask::One(codes) => json!({ "enum": codes }),
        Ask::Any(codes) => json!({ "items": { "enum": codes }, "uniqueItems": true }),
        Ask::Printed(_) => json!(true),
        Ask::Count(least, most) => json!({ "minimum": least, "maximum": most }),
        Ask::Measure { kind, instruments, .. } => {
            let units: Vec<&str> = spelling::units(kind).map(spelling::of_unit).collect();
            let instruments: Vec<&str> = instruments.iter().copied().map(Instrument::code).collect();
            let number = match Range::of(kind) {
                Range::Any => json!(true),
                Range::FromZero => json!({ "minimum": 0 }),
                Range::AboveZero => json!({ "exclusiveMinimum": 0 }),
            };
            json!({ "properties": {
                "unit": { "enum": units }, "instrument": { "enum": instruments },
                "value": number, "above": number, "below": number
            } })
        }
    }
}
