//! The languages are complete and alike: same messages, same variables, proper plurals, nothing unused, nothing missing.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/stretched.rs"]
mod stretched;

use carvetime::words::{Arg, Reader, Text, locales};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey};
use regex::Regex;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// Words people type, not messages: each language has as many as it needs.
const LEXICON: &str = "lexicon";

/// What the tests look at in one message.
#[derive(Debug, Default, PartialEq)]
struct Message {
    variables: BTreeSet<String>,
    /// Keys of selectors in which plural categories stand.
    plurals: Vec<BTreeSet<String>>,
    references: BTreeSet<String>,
}

/// The languages, and the regions that say some things otherwise.
fn all_tags() -> Vec<&'static str> {
    locales::languages().into_iter().chain(locales::regional()).collect()
}

/// All messages of a language by id. Fails on anything that is no Fluent and on an id that stands twice.
fn messages(language: &str) -> BTreeMap<String, Message> {
    let mut all = BTreeMap::new();
    for (file, text) in locales::files(language) {
        let resource = fluent_syntax::parser::parse(text).unwrap_or_else(|(_, e)| panic!("{language}/{file}: {e:?}"));
        for entry in resource.body {
            let (id, pattern) = match entry {
                Entry::Message(m) => (m.id.name.to_owned(), m.value),
                Entry::Term(t) => (format!("-{}", t.id.name), Some(t.value)),
                _ => continue,
            };
            let area = file.trim_end_matches(".ftl");
            assert!(
                id.starts_with(&format!("{area}-")) || id.starts_with('-'),
                "{language}/{file}: {id} belongs elsewhere"
            );
            let mut message = Message::default();
            look_at(&pattern.unwrap_or_else(|| panic!("{language}: {id} is empty")), &mut message);
            assert!(all.insert(id.clone(), message).is_none(), "{language}: {id} stands twice");
        }
    }
    all
}

fn look_at(pattern: &Pattern<&str>, message: &mut Message) {
    for element in &pattern.elements {
        let PatternElement::Placeable { expression } = element else { continue };
        look_into(expression, message);
    }
}

fn look_into(expression: &Expression<&str>, message: &mut Message) {
    let inline = match expression {
        Expression::Inline(inline) => inline,
        Expression::Select { selector, variants } => {
            let keys = variants.iter().filter_map(|v| match v.key {
                VariantKey::Identifier { name } => Some(name.to_owned()),
                VariantKey::NumberLiteral { .. } => None,
            });
            let keys: BTreeSet<String> = keys.collect();
            if keys.iter().any(|key| CATEGORIES.contains(&key.as_str()) && key != "other") {
                message.plurals.push(keys);
            }
            variants.iter().for_each(|variant| look_at(&variant.value, message));
            selector
        }
    };
    match inline {
        InlineExpression::VariableReference { id } => drop(message.variables.insert(id.name.to_owned())),
        InlineExpression::MessageReference { id, .. } => drop(message.references.insert(id.name.to_owned())),
        InlineExpression::TermReference { id, .. } => drop(message.references.insert(format!("-{}", id.name))),
        InlineExpression::FunctionReference { id, .. } => panic!("{}: numbers come written already", id.name),
        InlineExpression::Placeable { expression } => look_into(expression, message),
        InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
    }
}

const CATEGORIES: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

/// Plural categories by Unicode's rules for numbers below a million.
fn plural_categories(language: &str) -> BTreeSet<String> {
    use icu::plurals::{PluralCategory as P, PluralRules};
    let locale: icu::locale::Locale = language.parse().unwrap();
    let rules = PluralRules::try_new_cardinal((&locale).into()).unwrap();
    let name = |category| match category {
        P::Zero => "zero",
        P::One => "one",
        P::Two => "two",
        P::Few => "few",
        P::Many => "many",
        P::Other => "other",
    };
    let whole = (0..1000u32).map(|n| name(rules.category_for(n)).to_owned());
    whole.chain(rules.categories().filter(|c| *c == P::Other).map(|c| name(c).to_owned())).collect()
}

/// Every Rust file under `bot/src`, without its tests.
fn sources() -> Vec<(PathBuf, String)> {
    fn walk(dir: &Path, found: &mut Vec<(PathBuf, String)>) {
        for entry in std::fs::read_dir(dir).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                walk(&path, found);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                let text = std::fs::read_to_string(&path).unwrap();
                let text = text.split("#[cfg(test)]").next().unwrap_or_default();
                let code = text.lines().filter(|line| !line.trim_start().starts_with("//"));
                found.push((path, code.collect::<Vec<_>>().join("\n")));
            }
        }
    }
    let mut found = Vec::new();
    walk(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &mut found);
    assert!(found.len() > 5, "the sources are here");
    found
}

#[test]
fn every_message_named_in_the_code_exists() {
    let english = messages(locales::FIRST);
    let one = Regex::new(r#"Text::new\(\s*"([^"]+)""#).unwrap();
    let family = Regex::new(r#"Text::named\(\s*"([^"]+)""#).unwrap();
    let mut missing = Vec::new();
    for (path, text) in sources() {
        for found in one.captures_iter(&text).filter(|found| !english.contains_key(&found[1])) {
            missing.push(format!("{}: {}", path.display(), &found[1]));
        }
        for found in family.captures_iter(&text) {
            let prefix = format!("{}-", &found[1]);
            if !english.keys().any(|id| id.starts_with(&prefix)) {
                missing.push(format!("{}: {prefix}*", path.display()));
            }
        }
    }
    assert!(missing.is_empty(), "in no file of locales/en: {missing:#?}");
}

/// A weak check on purpose: arguments may be added far from the message's name, but in the same file.
#[test]
fn every_variable_of_a_message_is_given_where_the_message_is_named() {
    let english = messages(locales::FIRST);
    let one = Regex::new(r#"Text::new\(\s*"([^"]+)""#).unwrap();
    let mut missing = Vec::new();
    for (path, text) in sources() {
        for found in one.captures_iter(&text) {
            let variables = english.get(&found[1]).into_iter().flat_map(|message| &message.variables);
            let lacking = variables.filter(|name| !text.contains(&format!("\"{name}\"")));
            missing.extend(lacking.map(|name| format!("{}: {} lacks ${name}", path.display(), &found[1])));
        }
    }
    assert!(missing.is_empty(), "{missing:#?}");
}

#[test]
fn every_message_is_used() {
    let english = messages(locales::FIRST);
    let literal = Regex::new(r#""([a-z0-9]+(?:-[a-z0-9]+)+)""#).unwrap();
    let family = Regex::new(r#"Text::named\(\s*"([^"]+)""#).unwrap();
    let mut used: BTreeSet<String> = english.values().flat_map(|message| message.references.clone()).collect();
    let mut families = BTreeSet::from([format!("{LEXICON}-")]);
    for (_, text) in sources() {
        used.extend(literal.captures_iter(&text).map(|found| found[1].to_owned()));
        families.extend(family.captures_iter(&text).map(|found| format!("{}-", &found[1])));
    }
    let unused: Vec<&String> =
        english.keys().filter(|id| !used.contains(*id) && !families.iter().any(|f| id.starts_with(f))).collect();
    assert!(unused.is_empty(), "nobody says {unused:#?}");
}

#[test]
fn each_language_has_the_messages_and_variables_of_english() {
    let english = messages(locales::FIRST);
    let shape = |all: &BTreeMap<String, Message>| -> BTreeMap<String, BTreeSet<String>> {
        // What helps one language to say the others need not have.
        let own = |id: &str| id.starts_with('-') || id.starts_with("units-example-");
        let said = all.iter().filter(|(id, _)| !id.starts_with(LEXICON) && !own(id));
        said.map(|(id, message)| (id.clone(), message.variables.clone())).collect()
    };
    let expected = shape(&english);
    for language in locales::languages() {
        let got = shape(&messages(language));
        let off: Vec<_> = expected
            .keys()
            .chain(got.keys())
            .filter(|id| expected.get(*id) != got.get(*id))
            .map(|id| (id, expected.get(id), got.get(id)))
            .collect();
        assert!(off.is_empty(), "{language} (message, English variables, its own): {off:#?}");
    }
}

/// What stands in a region's folder takes the place of something of its language, with the same variables, and says something else.
#[test]
fn a_region_says_otherwise_what_its_language_says() {
    assert!(locales::regional().contains(&"es-MX"));
    for region in locales::regional() {
        let (language, _) = region.split_once('-').unwrap();
        let whole = messages(language);
        let own = messages(region);
        assert!(!own.is_empty(), "{region}");
        for (id, message) in &own {
            let of = whole.get(id).unwrap_or_else(|| panic!("{region}: {language} has no {id}"));
            let example = id.starts_with("units-example-");
            let had =
                |name: &&String| example || id.starts_with('-') || of.variables.contains(*name) || *name == "units";
            let foreign: Vec<_> = message.variables.iter().filter(|name| !had(name)).collect();
            assert!(foreign.is_empty(), "{region}: {id}: {foreign:?}");
            let lost: Vec<_> = of.variables.difference(&message.variables).collect();
            assert!(lost.is_empty(), "{region}: {id} lost {lost:?}");
        }
        for (file, text) in locales::files(region) {
            let said =
                locales::files(language).into_iter().find(|(name, _)| *name == file).map_or("", |(_, text)| text);
            for line in text.lines().filter(|line| !line.starts_with('#') && line.contains(" = ")) {
                assert!(line.ends_with("->") || !said.lines().any(|same| same == line), "{region}/{file}: {line}");
            }
        }
    }
}

/// A term has the same forms wherever it is said: a form a region forgets would be read in the wrong case.
#[test]
fn a_regions_terms_have_the_forms_of_its_languages() {
    let forms = |tag: &str| -> BTreeMap<String, BTreeSet<String>> {
        let texts: Vec<&str> = locales::files(tag).into_iter().map(|(_, text)| text).collect();
        let parsed = texts.into_iter().map(|text| fluent_syntax::parser::parse(text).unwrap());
        let terms = parsed.flat_map(|resource| resource.body).filter_map(|entry| match entry {
            Entry::Term(term) => Some(term),
            _ => None,
        });
        let keys = |pattern: &Pattern<&str>| -> BTreeSet<String> {
            let selects = pattern.elements.iter().filter_map(|element| match element {
                PatternElement::Placeable { expression: Expression::Select { variants, .. } } => Some(variants),
                _ => None,
            });
            let keys = selects.flatten().filter_map(|variant| match variant.key {
                VariantKey::Identifier { name } => Some(name.to_owned()),
                VariantKey::NumberLiteral { .. } => None,
            });
            keys.collect()
        };
        terms.map(|term| (term.id.name.to_owned(), keys(&term.value))).collect()
    };
    for region in locales::regional() {
        let (language, _) = region.split_once('-').unwrap();
        let whole = forms(language);
        for (term, own) in forms(region) {
            assert_eq!(whole.get(&term), Some(&own), "{region}: -{term}");
        }
    }
}

#[test]
fn plurals_are_those_of_the_language() {
    for language in all_tags() {
        let proper = plural_categories(language);
        for (id, message) in messages(language) {
            for keys in message.plurals {
                assert_eq!(keys, proper, "{language}: {id}");
            }
        }
    }
}

#[test]
fn every_message_can_be_written_with_any_of_its_choices() {
    for language in all_tags() {
        let mut bundle = FluentBundle::new_concurrent(vec![language.parse().unwrap()]);
        let under = language.split_once('-').map(|(whole, _)| whole);
        for (file, text) in under.into_iter().flat_map(locales::files).chain(locales::files(language)) {
            let resource = FluentResource::try_new(text.to_owned()).unwrap();
            if under.is_some() {
                bundle.add_resource_overriding(resource);
            } else {
                bundle.add_resource(resource).unwrap_or_else(|e| panic!("{language}/{file}: {e:?}"));
            }
        }
        for (id, message) in messages(language).into_iter().filter(|(id, _)| !id.starts_with('-')) {
            for value in [FluentValue::from(0), FluentValue::from(1), FluentValue::from(7), FluentValue::from("word")] {
                let mut args: FluentArgs =
                    message.variables.iter().map(|name| (name.as_str(), value.clone())).collect();
                args.set("units", "us"); // given to every message
                let mut errors = Vec::new();
                let pattern = bundle.get_message(&id).unwrap().value().unwrap();
                let said = bundle.format_pattern(pattern, Some(&args), &mut errors);
                assert!(errors.is_empty(), "{language}: {id}: {errors:?}");
                assert!(!said.contains("{$"), "{language}: {id}: {said}");
            }
        }
    }
}

#[test]
fn markup_is_only_bold_and_italic_and_closed() {
    let tag = Regex::new(r"<[^>]*>").unwrap();
    for language in all_tags() {
        for (file, text) in locales::files(language) {
            for (n, line) in text.lines().enumerate().filter(|(_, line)| !line.starts_with('#')) {
                let tags: Vec<&str> = tag.find_iter(line).map(|found| found.as_str()).collect();
                let balanced = ["b", "i"].iter().all(|name| {
                    let count = |tag: String| tags.iter().filter(|found| **found == tag).count();
                    count(format!("<{name}>")) == count(format!("</{name}>"))
                });
                let known = tags.iter().all(|tag| ["<b>", "</b>", "<i>", "</i>"].contains(tag));
                assert!(balanced && known, "{language}/{file}:{}: {line}", n + 1);
            }
        }
    }
}

#[test]
fn a_stretched_language_reads_the_same_numbers() {
    let reader = Reader::new(stretched::STRETCHED, chrono_tz::UTC, chrono::DateTime::UNIX_EPOCH);
    let text = Text::new("room-proposal-small")
        .with("guests", Arg::Count(12))
        .with("mass", Arg::Mass(carvetime_core::quantity::kilograms(6.5)));
    let said = stretched::voice().label(&text, &reader);
    assert_eq!(said, "[Å ļîţţļé šmäļļ: föŕ 12 þéöþļé Î'd ļööķ föŕ 6.5 kg. ~~~~~~~~~~~~]");
}

/// The name of the drying job is for a goose too, whose skin gets no butter; what goes to the heat is said as a cook says it.
#[test]
fn jobs_are_named_as_cooks_name_them() {
    let butter = Regex::new("(?i)butter|beurr|mantequilla|manteiga|imburr|unta").unwrap();
    for language in ["en", "es", "fr", "de", "pt", "it"] {
        for (file, text) in locales::files(language) {
            for line in text.lines().filter(|_| file != "lexicon.ftl") {
                let name = line.starts_with("plan-step-temper =") || line.starts_with("plan-done-temper =");
                assert!(!(name && butter.is_match(line)), "{language}: {line}");
                let word_for_word = match language {
                    "de" => line.contains("in die Hitze"),
                    "es" => line.contains("ve al calor"),
                    "pt" => line.contains("ve no calor"),
                    _ => false,
                };
                assert!(!word_for_word, "{language}: {line}");
            }
        }
    }
}
