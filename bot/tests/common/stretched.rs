//! A language that no one speaks: English in accented letters, two fifths longer, each message between brackets. What does not
//! fit shows before a real language runs into it.

use carvetime::words::{Voice, locales};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::serializer::serialize;

/// Its tag.
pub const STRETCHED: &str = "qps";

/// All languages, and the stretched one.
pub fn voice() -> Voice {
    let files = |language| locales::files(language).into_iter().map(|(name, text)| (name, text.to_owned()));
    let spoken = locales::languages()
        .into_iter()
        .chain(locales::regional())
        .map(|tag| (tag, files(tag).map(|(_, text)| text).collect()));
    // Units are symbols and numbers: no language makes much more of them.
    let long = files(locales::FIRST).map(|(name, text)| if name == "units.ftl" { text } else { stretched(&text) });
    let all = spoken.chain([(STRETCHED, long.collect::<Vec<String>>())]);
    Voice::of_sources(all.map(|(language, files)| (language.to_owned(), files)))
}

fn stretched(text: &str) -> String {
    let mut resource = fluent_syntax::parser::parse(text.to_owned()).unwrap();
    for entry in &mut resource.body {
        let Entry::Message(message) = entry else { continue };
        let Some(pattern) = message.value.as_mut() else { continue };
        let letters = letters(pattern);
        if letters == 0 {
            continue; // nothing in it but arguments
        }
        accent(pattern);
        let more = "~".repeat((letters * 2).div_ceil(5));
        // As a literal: a line can't begin with a bracket.
        let open = InlineExpression::StringLiteral { value: "[".to_owned() };
        pattern.elements.insert(0, PatternElement::Placeable { expression: Expression::Inline(open) });
        pattern.elements.push(PatternElement::TextElement { value: format!(" {more}]") });
    }
    let text = serialize(&resource);
    fluent_syntax::parser::parse(text.as_str()).expect("what was made can be read");
    text
}

/// How long it is without its arguments, with the longest of each choice.
fn letters(pattern: &Pattern<String>) -> usize {
    let of = |element: &PatternElement<String>| match element {
        PatternElement::TextElement { value } => plain(value).filter(|c| c.is_alphabetic()).count(),
        PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
            variants.iter().map(|variant| letters(&variant.value)).max().unwrap_or_default()
        }
        PatternElement::Placeable { .. } => 0,
    };
    pattern.elements.iter().map(of).sum()
}

/// Letters outside of tags.
fn plain(text: &str) -> impl Iterator<Item = char> {
    let mut inside = false;
    text.chars().filter(move |c| {
        inside = inside && *c != '>' || *c == '<';
        !inside
    })
}

fn accent(pattern: &mut Pattern<String>) {
    for element in &mut pattern.elements {
        match element {
            PatternElement::TextElement { value } => {
                let mut inside = false;
                let accented = value.chars().map(|c| {
                    inside = inside && c != '>' || c == '<';
                    if inside { c } else { accented(c) }
                });
                *value = accented.collect();
            }
            PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
                variants.iter_mut().for_each(|variant| accent(&mut variant.value));
            }
            PatternElement::Placeable { .. } => {}
        }
    }
}

fn accented(c: char) -> char {
    const PLAIN: &str = "aceghiklnoprstuwyzADEGHIKLNOPRSTUWYZ";
    const ACCENTED: &str = "äćéĝĥîķļñöþŕšţûŵýžÅÐÉĜĤÎĶĻÑÖÞŔŠŢÛŴÝŽ";
    PLAIN.chars().zip(ACCENTED.chars()).find_map(|(plain, accented)| (plain == c).then_some(accented)).unwrap_or(c)
}
