//! As much of JSON Schema 2020-12 as the published schema uses. A keyword that is not known here fails the test.

#![expect(clippy::panic, reason = "a schema that says what is not understood must not look as if it held")]

use serde_json::Value;

/// Why a value does not fit the root of a schema; nothing where it does.
pub fn problem(schema: &Value, value: &Value) -> Option<String> {
    fits(schema, schema, value).err()
}

fn fits(root: &Value, schema: &Value, value: &Value) -> Result<(), String> {
    if let Value::Bool(may_stand) = schema {
        return if *may_stand { Ok(()) } else { Err(format!("{value} may not stand here")) };
    }
    let keywords = schema.as_object().expect("a schema is an object, true or false");
    for (keyword, says) in keywords {
        let holds = match keyword.as_str() {
            "$schema" | "$defs" | "title" | "description" | "default" | "format" => true,
            "$ref" => {
                let pointer =
                    says.as_str().and_then(|to| to.strip_prefix('#')).expect("a reference stays in the schema");
                fits(root, root.pointer(pointer).expect("a reference leads somewhere"), value)?;
                true
            }
            "type" => is_of_type(says.as_str().expect("there is one type"), value),
            "const" => says == value,
            "enum" => list(says).contains(value),
            "minimum" => number(value).is_none_or(|n| Some(n) >= number(says)),
            "exclusiveMinimum" => number(value).is_none_or(|n| Some(n) > number(says)),
            "maximum" => number(value).is_none_or(|n| Some(n) <= number(says)),
            "maxLength" => value.as_str().is_none_or(|text| Some(count(text.chars())) <= says.as_u64()),
            "maxItems" => value.as_array().is_none_or(|items| Some(count(items.iter())) <= says.as_u64()),
            "pattern" => value.as_str().is_none_or(|text| matches(says.as_str().expect("a pattern is a text"), text)),
            "uniqueItems" => {
                value.as_array().is_none_or(|items| items.iter().all(|a| count(items.iter().filter(|b| *b == a)) == 1))
            }
            "required" => value.as_object().is_none_or(|fields| {
                list(says).iter().all(|name| fields.contains_key(name.as_str().expect("a name is a text")))
            }),
            "properties" => {
                for (name, schema) in says.as_object().expect("properties have names") {
                    if let Some(field) = value.get(name) {
                        fits(root, schema, field).map_err(|why| format!("{name}: {why}"))?;
                    }
                }
                true
            }
            "additionalProperties" => value.as_object().is_none_or(|fields| {
                assert_eq!(says, &Value::Bool(false), "the schema only ever closes its objects");
                fields.keys().all(|name| keywords["properties"].get(name).is_some())
            }),
            "items" => {
                for item in value.as_array().into_iter().flatten() {
                    fits(root, says, item)?;
                }
                true
            }
            "anyOf" => list(says).iter().any(|schema| fits(root, schema, value).is_ok()),
            "oneOf" => count(list(says).iter().filter(|schema| fits(root, schema, value).is_ok())) == 1,
            unknown => panic!("the schema uses {unknown}"),
        };
        if !holds {
            return Err(format!("{value} is not {keyword} {says}"));
        }
    }
    Ok(())
}

fn is_of_type(name: &str, value: &Value) -> bool {
    match name {
        "object" => value.is_object(),
        "array" => value.is_array(),
        "string" => value.is_string(),
        "boolean" => value.is_boolean(),
        "number" => value.is_number(),
        "integer" => value.is_u64() || value.is_i64(),
        unknown => panic!("the schema has the type {unknown}"),
    }
}

fn list(value: &Value) -> &[Value] {
    value.as_array().expect("it is a list")
}

fn number(value: &Value) -> Option<f64> {
    value.as_f64()
}

fn count(items: impl Iterator) -> u64 {
    items.map(|_| 1).sum()
}

/// Patterns of the schema, one by one: hexadecimal names and moments.
fn matches(pattern: &str, text: &str) -> bool {
    let is_hexadecimal = |digits| text.len() == digits && text.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'));
    match pattern {
        "^[0-9a-f]{32}$" => is_hexadecimal(32),
        "^[0-9a-f]{64}$" => is_hexadecimal(64),
        r"^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\.[0-9]*)?(Z|[+-][0-9]{2}:[0-9]{2})$" => {
            let shape: String = text.chars().map(|c| if c.is_ascii_digit() { '0' } else { c }).collect();
            let zone = shape.strip_prefix("0000-00-00T00:00:00").unwrap_or_default();
            let zone = zone.strip_prefix('.').map_or(zone, |rest| rest.trim_start_matches('0'));
            matches!(zone, "Z" | "+00:00" | "-00:00")
        }
        unknown => panic!("the schema has the pattern {unknown}"),
    }
}
