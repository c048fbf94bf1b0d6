//! The JSON Schema of the saved form.

use super::v1;

/// The schema, pretty-printed.
pub fn schema() -> String {
    let schema = schemars::schema_for!(v1::Examination);
    // A schema is plain JSON: nothing in it can fail to be written.
    serde_json::to_string_pretty(&schema).unwrap_or_default() + "\n"
}
