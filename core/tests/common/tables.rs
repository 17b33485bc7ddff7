//! The published tables, a row a map from its header.

use std::collections::HashMap;

/// The rows of `tests/tables/NAME.csv`.
pub fn rows(name: &str) -> Vec<HashMap<String, String>> {
    csv::Reader::from_path(format!("{}/../tests/tables/{name}.csv", env!("CARGO_MANIFEST_DIR")))
        .unwrap()
        .deserialize()
        .map(Result::unwrap)
        .collect()
}
