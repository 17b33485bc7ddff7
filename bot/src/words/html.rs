//! The little HTML that messages may carry: `<b>`, `<i>`, and a link to a person.

use super::foreign::{cleaned, is_visible, isolated};
use std::borrow::Cow;

/// Foreign text made safe: nothing in it is markup, breaks the line or reorders it.
pub(super) fn escape(text: &str) -> String {
    let kept = cleaned(text);
    isolated(&kept, without_markup(&kept))
}

/// A link to a person, whom the platform then notifies. Isolates stand around it: the link is the name and nothing else.
pub(super) fn link(person: i64, name: &str) -> String {
    let mut kept = cleaned(name);
    if !is_visible(&kept) {
        kept = NAMELESS.to_owned();
    }
    isolated(&kept, format!("<a href=\"tg://user?id={person}\">{}</a>", without_markup(&kept)))
}

/// In a link where there is no name to see: the platform drops a link without letters, and its person would hear nothing.
const NAMELESS: &str = "…";

fn without_markup(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            c => out.push(c),
        }
    }
    out
}

/// What a person sees of rendered text: tags stripped, entities read.
pub fn plain(html: &str) -> String {
    if !html.contains(['<', '&']) {
        return html.to_owned();
    }
    let mut out = String::with_capacity(html.len());
    let mut rest = html;
    while let Some(at) = rest.find(['<', '&']) {
        let (before, mark) = rest.split_at(at);
        out.push_str(before);
        rest = if mark.starts_with('<') {
            mark.split_once('>').map_or("", |(_, after)| after)
        } else {
            let (entity, after) = ENTITIES
                .iter()
                .find_map(|(entity, c)| mark.strip_prefix(entity).map(|after| (*c, after)))
                .unwrap_or(("&", mark.get(1..).unwrap_or_default()));
            out.push_str(entity);
            after
        };
    }
    out.push_str(rest);
    out
}

const ENTITIES: [(&str, &str); 4] = [("&amp;", "&"), ("&lt;", "<"), ("&gt;", ">"), ("&quot;", "\"")];

/// Ordinary spaces for the no-break ones that locale data brings: people copy times back to us, and terminals differ.
pub(super) fn ordinary_spaces(text: &str) -> Cow<'_, str> {
    if text.contains(['\u{202F}', '\u{A0}', '\u{2009}']) {
        text.replace(['\u{202F}', '\u{A0}', '\u{2009}'], " ").into()
    } else {
        text.into()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_plain_form_has_no_tags_and_no_entities() {
        assert_eq!(plain("<b>Salt</b> &amp; <a href=\"tg://user?id=7\">Rosa &lt;3</a>"), "Salt & Rosa <3");
    }

    #[test]
    fn a_name_can_neither_open_a_tag_nor_turn_the_line_round() {
        assert_eq!(escape("<b>\u{202E}x\ny</b>"), "&lt;b&gt;x y&lt;/b&gt;");
    }

    #[test]
    fn isolates_stand_around_a_link_and_a_link_is_never_empty() {
        assert_eq!(link(7, "נועה <3"), "\u{2068}<a href=\"tg://user?id=7\">נועה &lt;3</a>\u{2069}");
        assert_eq!(link(7, "\u{3164}\u{202E}"), "<a href=\"tg://user?id=7\">…</a>");
    }

    proptest! {
        #[test]
        fn what_was_escaped_reads_the_same_again(text in "[ -~äñ¼]*") {
            prop_assert_eq!(plain(&escape(&text)), text);
        }
    }
}
