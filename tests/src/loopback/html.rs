//! HTML parse mode as the Bot API documents it: known tags, balanced, four named entities and numeric ones.
//!
//! Stricter than the platform in one place: a bare `&` or `>` is refused too, since it shows text that was not escaped.

use serde_json::{Value, json};

/// A span of formatted text, in UTF-16 units as everywhere in the Bot API.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entity {
    /// `bold`, `italic`, `text_link`, ...
    pub kind: String,
    /// Start.
    pub offset: usize,
    /// Length.
    pub length: usize,
    /// Target of a link.
    pub url: Option<String>,
}

impl Entity {
    /// As a `MessageEntity`; a link to `tg://user?id=N` becomes a `text_mention` of that user if `user` knows them.
    pub fn to_json(&self, user: impl Fn(i64) -> Option<Value>) -> Value {
        let mention =
            self.url.as_deref().and_then(|url| url.strip_prefix("tg://user?id=")?.parse().ok()).and_then(user);
        match (&self.url, mention) {
            (_, Some(user)) => {
                json!({"type": "text_mention", "offset": self.offset, "length": self.length, "user": user})
            }
            (Some(url), None) => {
                json!({"type": "text_link", "offset": self.offset, "length": self.length, "url": url})
            }
            (None, None) => json!({"type": self.kind, "offset": self.offset, "length": self.length}),
        }
    }
}

/// Plain text and entities of `html`.
///
/// # Errors
/// What is wrong and at which byte, in the platform's manner.
pub fn parse(html: &str) -> Result<(String, Vec<Entity>), String> {
    let mut plain = String::new();
    let mut open: Vec<(String, usize, Option<String>)> = Vec::new();
    let mut entities = Vec::new();
    let mut rest = html;
    while let Some(c) = rest.chars().next() {
        let at = html.len() - rest.len();
        match c {
            '<' => {
                let end = rest.find('>').ok_or(format!("unclosed start tag at byte offset {at}"))?;
                let tag = rest[1..end].trim();
                rest = &rest[end + 1..];
                if let Some(name) = tag.strip_prefix('/') {
                    let (start_name, start, url) =
                        open.pop().ok_or(format!("unexpected end tag </{name}> at byte offset {at}"))?;
                    if !start_name.eq_ignore_ascii_case(name.trim()) {
                        return Err(format!("unmatched end tag at byte offset {at}, expected </{start_name}>"));
                    }
                    let length = utf16(&plain) - start;
                    if length > 0 {
                        entities.push(Entity { kind: kind(&start_name).to_string(), offset: start, length, url });
                    }
                } else {
                    let (name, attributes) = tag.split_once(char::is_whitespace).unwrap_or((tag, ""));
                    let name = name.to_ascii_lowercase();
                    if kind(&name).is_empty() {
                        return Err(format!("unsupported start tag \"{name}\" at byte offset {at}"));
                    }
                    let url = if name == "a" { Some(href(attributes, at)?) } else { None };
                    open.push((name, utf16(&plain), url));
                }
            }
            '&' => {
                let (c, length) = entity(rest).ok_or(format!("unescaped & at byte offset {at}"))?;
                plain.push(c);
                rest = &rest[length..];
            }
            '>' => return Err(format!("unescaped > at byte offset {at}")),
            _ => {
                plain.push(c);
                rest = &rest[c.len_utf8()..];
            }
        }
    }
    match open.pop() {
        Some((name, ..)) => Err(format!("can't find end tag corresponding to start tag \"{name}\"")),
        None => {
            entities.sort_by_key(|entity| (entity.offset, usize::MAX - entity.length));
            Ok((plain, entities))
        }
    }
}

/// Length in UTF-16 units.
pub fn utf16(text: &str) -> usize {
    text.encode_utf16().count()
}

fn kind(tag: &str) -> &'static str {
    match tag {
        "b" | "strong" => "bold",
        "i" | "em" => "italic",
        "u" | "ins" => "underline",
        "s" | "strike" | "del" => "strikethrough",
        "tg-spoiler" | "span" => "spoiler",
        "a" => "text_link",
        "code" => "code",
        "pre" => "pre",
        "blockquote" => "blockquote",
        _ => "",
    }
}

fn href(attributes: &str, at: usize) -> Result<String, String> {
    let quoted = attributes.trim().strip_prefix("href=\"").and_then(|rest| rest.strip_suffix('"'));
    match quoted {
        Some(url) if !url.is_empty() && !url.contains('"') => Ok(parse(url)?.0),
        _ => Err(format!("a link without a quoted href at byte offset {at}")),
    }
}

fn entity(text: &str) -> Option<(char, usize)> {
    let end = text.find(';')?;
    let c = match &text[1..end] {
        "lt" => '<',
        "gt" => '>',
        "amp" => '&',
        "quot" => '"',
        number => {
            let digits = number.strip_prefix('#')?;
            let code = match digits.strip_prefix('x') {
                Some(hex) => u32::from_str_radix(hex, 16).ok()?,
                None => digits.parse().ok()?,
            };
            char::from_u32(code)?
        }
    };
    Some((c, end + 1))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn plain_text_and_entities_are_told_apart() {
        let (plain, entities) =
            parse("🍗 <b>Pull</b> at &lt;165&gt; <a href=\"tg://user?id=7\">Rosa &amp; Tom</a>").unwrap();
        assert_eq!(plain, "🍗 Pull at <165> Rosa & Tom");
        assert_eq!(entities[0], Entity { kind: "bold".into(), offset: 3, length: 4, url: None });
        assert_eq!(entities[1].url.as_deref(), Some("tg://user?id=7"));
    }

    #[test]
    fn what_the_platform_would_not_parse_is_refused() {
        for bad in
            ["<b>open", "</b>", "<b><i>crossed</b></i>", "<h1>no such tag</h1>", "a < b", "salt & pepper", "<a>x</a>"]
        {
            assert!(parse(bad).is_err(), "{bad}");
        }
    }
}
