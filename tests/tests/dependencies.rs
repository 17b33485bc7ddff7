//! What the program is built from: licences it may carry, one registry, nothing that was ruled out, and the known advisories.
//!
//! Works without a network, from the lock file and what cargo has at hand. Covered: every package built on this platform, tests
//! included. Not covered: packages for other platforms only, and advisories newer than the list below: no database of them
//! is kept here, `cargo deny check advisories` or `cargo audit` with a network asks one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use serde_json::Value;
use spdx::{Expression, LicenseReq, ParseMode};
use std::collections::BTreeSet;
use std::process::Command;

/// Licences that ask for no more than their text and the names of the authors, and data licences that ask for their notice.
const ALLOWED: [&str; 11] = [
    "MIT",
    "Apache-2.0",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "0BSD",
    "ISC",
    "Zlib",
    "Unlicense",
    "BSL-1.0",
    "Unicode-3.0",
    "CDLA-Permissive-2.0",
];

/// Licences that ask for more, each for one package only: why it is fine.
const EXCEPTIONS: [(&str, &str); 3] = [
    ("option-ext", "MPL-2.0"), // used unchanged, file by file
    ("colored", "MPL-2.0"),
    ("tzf-dist", "ODbL-1.0"), // boundaries of zones, from OpenStreetMap: the README names it
];

/// Advisories known and lived with: the package, the advisory, why. A package that has gone takes its line along.
const ADVISORIES: [(&str, &str, &str); 4] = [
    ("fxhash", "RUSTSEC-2025-0057", "unmaintained; a hasher inside sled, which has no newer one"),
    ("instant", "RUSTSEC-2024-0384", "unmaintained; inside sled"),
    ("ttf-parser", "RUSTSEC-2026-0192", "unmaintained; reads the bundled font only, never one from outside"),
    ("proc-macro-error2", "RUSTSEC-2026-0173", "unmaintained; at build time only, inside teloxide"),
];

/// What must not come in: a system's TLS, what is known to be broken or has been given up.
const BANNED: [&str; 8] =
    ["openssl-sys", "native-tls", "serde_cbor", "bincode", "serde_yaml", "atty", "dotenv", "proc-macro-error"];

/// Packages of the build on this platform.
fn packages() -> Vec<Value> {
    let host = Command::new("rustc").arg("-vV").output().expect("rustc runs");
    let host = String::from_utf8(host.stdout).unwrap();
    let host = host.lines().find_map(|line| line.strip_prefix("host: ")).expect("a host");
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let told = Command::new(cargo)
        .args(["metadata", "--format-version", "1", "--locked", "--offline", "--filter-platform", host])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .expect("cargo runs");
    assert!(told.status.success(), "{}", String::from_utf8_lossy(&told.stderr));
    let all: Value = serde_json::from_slice(&told.stdout).unwrap();
    all["packages"].as_array().unwrap().clone()
}

fn name(package: &Value) -> &str {
    package["name"].as_str().unwrap()
}

/// Whether the package may be used under what it says of its licence.
fn is_allowed(package: &str, licence: &str) -> bool {
    let Ok(expression) = Expression::parse_mode(licence, ParseMode::LAX) else { return false };
    expression.evaluate(|wanted: &LicenseReq| {
        let Some(id) = wanted.license.id() else { return false };
        ALLOWED.contains(&id.name) || EXCEPTIONS.contains(&(package, id.name))
    })
}

#[test]
fn every_package_has_a_licence_that_allows_this_use() {
    let packages = packages();
    assert!(packages.len() > 200, "{}", packages.len());
    let wrong: Vec<String> = packages
        .iter()
        .map(|package| (name(package), package["license"].as_str().unwrap_or("none")))
        .filter(|(name, licence)| !is_allowed(name, licence))
        .map(|(name, licence)| format!("{name}: {licence}"))
        .collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn a_licence_that_asks_for_more_is_found() {
    for (package, licence, allowed) in [
        ("some", "MIT/Apache-2.0", true),
        ("some", "Apache-2.0 OR GPL-2.0-only", true),
        ("some", "MIT AND GPL-3.0-only", false),
        ("some", "AGPL-3.0-only", false),
        ("some", "none", false),
        ("some", "MIT AND ODbL-1.0", false),
        ("tzf-dist", "MIT AND ODbL-1.0", true),
    ] {
        assert_eq!(is_allowed(package, licence), allowed, "{package}: {licence}");
    }
}

#[test]
fn packages_come_from_one_registry_and_none_is_banned() {
    for package in packages() {
        let source = package["source"].as_str();
        let ours = name(&package).starts_with("carvetime");
        let registry = source == Some("registry+https://github.com/rust-lang/crates.io-index");
        assert!(if ours { source.is_none() } else { registry }, "{}: {source:?}", name(&package));
        assert!(!BANNED.contains(&name(&package)), "{} is banned", name(&package));
    }
}

#[test]
fn every_exception_and_advisory_still_concerns_something_we_use() {
    let packages = packages();
    let names: BTreeSet<&str> = packages.iter().map(name).collect();
    for (package, _) in EXCEPTIONS {
        assert!(names.contains(package), "{package} is gone: take its exception out");
    }
    for (package, id, why) in ADVISORIES {
        assert!(names.contains(package), "{package} is gone: take {id} out");
        assert!(id.starts_with("RUSTSEC-") && !why.is_empty());
    }
}

/// The words in double quotes of a section of `.deny.toml`, from `from` to the next line that is only a bracket.
fn quoted(section: &str, from: &str) -> Vec<String> {
    let text = include_str!("../../.deny.toml");
    let (_, rest) = text.split_once(&format!("[{section}]")).unwrap();
    let (_, rest) = rest.split_once(from).unwrap();
    let (list, _) = rest.split_once("\n]").unwrap();
    list.split('"').skip(1).step_by(2).map(str::to_owned).collect()
}

#[test]
fn the_configuration_of_cargo_deny_says_the_same() {
    assert_eq!(quoted("licenses", "\nallow = ["), ALLOWED);
    let exceptions: Vec<&str> = EXCEPTIONS.iter().flat_map(|(package, licence)| [*package, *licence]).collect();
    assert_eq!(quoted("licenses", "\nexceptions = ["), exceptions);
    assert_eq!(quoted("bans", "\ndeny = ["), BANNED);
    let lived_with: Vec<String> =
        ADVISORIES.iter().flat_map(|(package, id, why)| [(*id).to_owned(), format!("{package}: {why}")]).collect();
    assert_eq!(quoted("advisories", "\nignore = ["), lived_with);
}
