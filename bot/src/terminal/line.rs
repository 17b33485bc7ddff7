//! What a line typed in the terminal means.

/// A line.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Line<'a> {
    /// Nothing.
    Blank,
    /// Words. Without a name it is the person at the keyboard.
    Say {
        /// Who says it.
        name: Option<&'a str>,
        /// In the private chat with the bot.
        private: bool,
        /// What.
        text: &'a str,
    },
    /// A button by its number.
    Press {
        /// Who presses it.
        name: Option<&'a str>,
        /// From 1.
        number: usize,
    },
}

impl<'a> Line<'a> {
    /// Reads a line: `@Rosa hello`, `@Rosa (private): hello`, `#1`, `#1 @Tom`; anything else is said as it stands.
    pub fn read(line: &'a str) -> Self {
        let line = line.trim();
        if line.is_empty() {
            return Self::Blank;
        }
        if let Some(press) = press(line) {
            return press;
        }
        let said = |text| Self::Say { name: None, private: false, text };
        let Some((name, rest)) = line.strip_prefix('@').and_then(|rest| rest.split_once(char::is_whitespace)) else {
            return said(line);
        };
        let name = name.trim_end_matches([':', ',']);
        let (private, text) = match rest.trim_start().strip_prefix("(private)") {
            Some(text) => (true, text.trim_start_matches(':').trim_start()),
            None => (false, rest.trim_start()),
        };
        if name.is_empty() || text.is_empty() { said(line) } else { Self::Say { name: Some(name), private, text } }
    }
}

fn press(line: &str) -> Option<Line<'_>> {
    let mut words = line.strip_prefix('#')?.split_whitespace();
    let number = words.next()?.parse().ok()?;
    let name = match words.next() {
        Some(word) => Some(word.strip_prefix('@').filter(|name| !name.is_empty())?),
        None => None,
    };
    words.next().is_none().then_some(Line::Press { name, number })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_is_said_pressed_or_blank() {
        let say = |name, private, text| Line::Say { name, private, text };
        let press = |name, number| Line::Press { name, number };
        for (line, expected) in [
            ("", Line::Blank),
            ("  \t", Line::Blank),
            ("/plan 12 lb", say(None, false, "/plan 12 lb")),
            ("@Rosa hello there", say(Some("Rosa"), false, "hello there")),
            ("@Rosa: hello", say(Some("Rosa"), false, "hello")),
            ("@Rosa (private): /start", say(Some("Rosa"), true, "/start")),
            ("@Rosa (private) /start", say(Some("Rosa"), true, "/start")),
            ("@Rosa", say(None, false, "@Rosa")),
            ("#1", press(None, 1)),
            (" #12  @Tom ", press(Some("Tom"), 12)),
            ("# 1", press(None, 1)),
            ("#1 Tom", say(None, false, "#1 Tom")),
            ("#one", say(None, false, "#one")),
            ("#1 @Tom now", say(None, false, "#1 @Tom now")),
        ] {
            assert_eq!(Line::read(line), expected, "{line:?}");
        }
    }
}
