//! `/plan@bot text`: which command, and what stands behind it.

use crate::words::foreign::is_unseen;

/// A command addressed to this bot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Command<'a> {
    /// Its name as written, without the slash. Compare with [`Command::is`].
    pub name: &'a str,
    /// What follows, blanks trimmed.
    pub rest: &'a str,
}

impl Command<'_> {
    /// Whether the command is `name`, in any case.
    pub fn is(&self, name: &str) -> bool {
        self.name.eq_ignore_ascii_case(name)
    }
}

/// What a text is as far as commands go.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Address<'a> {
    /// No command.
    Plain(&'a str),
    /// A command for this bot.
    Command(Command<'a>),
    /// A command that names another bot: none of our business.
    Other,
}

/// What the bot answers to, whatever its account is called.
const NAME: &str = "carvetime";

/// What is said beside our name, with which it begins or ends: "carvetime, what's next?", "how are we doing, carvetime?". At the end it has
/// to be called: "I asked carvetime" is said of it. `None`: it is not, or nothing else is said.
pub fn beside_our_name(text: &str) -> Option<&str> {
    let is_ours = |word: &str| {
        let called = word.trim_start_matches('@').trim_end_matches([',', ':', '.', '!', '?']);
        called.eq_ignore_ascii_case(NAME)
    };
    let text = text.trim();
    let first = text.split_whitespace().next()?;
    if is_ours(first) {
        return text.get(first.len()..).map(str::trim).filter(|rest| !rest.is_empty());
    }
    let last = text.split_whitespace().next_back().filter(|word| is_ours(word))?;
    let before = text.get(..text.len() - last.len())?.trim_end();
    (before.ends_with(',') || last.ends_with('?')).then(|| before.trim_end_matches(',').trim_end())
}

/// Reads the command a text begins with. `bot` is this bot's username without `@`; where it is not known, any name is taken.
pub fn read_command<'a>(text: &'a str, bot: Option<&str>) -> Address<'a> {
    let trimmed = text.trim_start_matches(|c: char| c.is_whitespace() || is_unseen(c));
    let Some(body) = trimmed.strip_prefix('/') else { return Address::Plain(text.trim()) };
    let end = body.find(char::is_whitespace).unwrap_or(body.len());
    let (word, rest) = body.split_at_checked(end).unwrap_or((body, ""));
    let (name, addressee) = match word.split_once('@') {
        Some((name, addressee)) => (name, Some(addressee)),
        None => (word, None),
    };
    let is_name = !name.is_empty() && name.len() <= 32 && name.chars().all(|c| c.is_ascii_alphanumeric() || c == '_');
    if !is_name {
        return Address::Plain(text.trim());
    }
    match (addressee, bot) {
        (Some(addressee), Some(bot)) if !addressee.eq_ignore_ascii_case(bot) => Address::Other,
        _ => Address::Command(Command { name, rest: rest.trim() }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_command_is_read_with_its_bot_its_case_and_its_line_break() {
        let command = |name, rest| Address::Command(Command { name, rest });
        for (text, wanted) in [
            ("/plan 14 lb turkey", command("plan", "14 lb turkey")),
            ("  /PLAN@Carver_Bot\n14 lb turkey", command("PLAN", "14 lb turkey")),
            ("/board", command("board", "")),
            ("/plan@other_bot 14 lb", Address::Other),
            ("plan 14 lb", Address::Plain("plan 14 lb")),
            ("/", Address::Plain("/")),
            ("/1/2 tsp", Address::Plain("/1/2 tsp")),
            ("", Address::Plain("")),
        ] {
            assert_eq!(read_command(text, Some("carver_bot")), wanted, "{text:?}");
        }
        assert_eq!(read_command("/plan@any x", None), command("plan", "x"));
    }
}
