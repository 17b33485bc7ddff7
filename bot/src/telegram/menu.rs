//! The lists of commands that apps show, and the bot's description, in every language.

use super::refusal::{self, Refusal};
use crate::words::{Reader, Text, Voice};
use chrono::Utc;
use teloxide::Bot;
use teloxide::RequestError;
use teloxide::payloads::{SetMyCommandsSetters, SetMyDescriptionSetters, SetMyShortDescriptionSetters};
use teloxide::requests::Requester;
use teloxide::types::{BotCommand, BotCommandScope};

/// Commands in a private chat, most used first.
const PRIVATE: [&str; 15] = [
    "plan", "ask", "salt", "board", "log", "when", "move", "take", "drop", "undo", "export", "settings", "help",
    "stop", "forget",
];

/// Commands in a group.
const GROUP: [&str; 15] = [
    "board", "take", "drop", "log", "when", "plan", "move", "undo", "salt", "ask", "export", "settings", "help",
    "stop", "forget",
];

/// Tells the platform. Nothing depends on it, so what fails is left for the next start.
pub async fn publish(bot: &Bot, voice: &Voice) {
    for (nth, language) in voice.languages().into_iter().enumerate() {
        // The first language is for everyone whose own is not there.
        let code = if nth == 0 { "" } else { language };
        match publish_in(bot, voice, language, code).await.map_err(|error| refusal::read(&error)) {
            Ok(()) => {}
            Err(Refusal::Wait(wait)) => {
                tracing::warn!(seconds = wait.as_secs(), "the platform wants the menus later");
                return;
            }
            Err(refusal) => {
                tracing::warn!(?refusal, "the menus could not be set");
                return;
            }
        }
    }
}

async fn publish_in(bot: &Bot, voice: &Voice, language: &str, code: &str) -> Result<(), RequestError> {
    let reader = Reader::new(language, chrono_tz::UTC, Utc::now());
    let label = |text: Text| voice.label(&text, &reader);
    let commands = |names: &[&str]| -> Vec<BotCommand> {
        names.iter().map(|name| BotCommand::new(*name, label(Text::named("telegram-command", name)))).collect()
    };
    for (scope, names) in [(BotCommandScope::AllPrivateChats, PRIVATE), (BotCommandScope::AllGroupChats, GROUP)] {
        let request = bot.set_my_commands(commands(&names)).scope(scope);
        if code.is_empty() {
            request.await?
        } else {
            request.language_code(code).await?
        };
    }
    let request = bot.set_my_description().description(label(Text::new("telegram-description")));
    if code.is_empty() {
        request.await?
    } else {
        request.language_code(code).await?
    };
    let request = bot.set_my_short_description().short_description(label(Text::new("telegram-short-description")));
    if code.is_empty() {
        request.await?
    } else {
        request.language_code(code).await?
    };
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_command_has_a_description_that_fits_in_every_language() {
        let voice = Voice::new();
        for language in voice.languages() {
            let reader = Reader::new(language, chrono_tz::UTC, Utc::now());
            for name in PRIVATE.iter().chain(&GROUP) {
                let text = voice.label(&Text::named("telegram-command", name), &reader);
                assert!((3..=60).contains(&text.chars().count()), "{language} {name}: {text}");
                assert!(!text.contains("telegram-"), "{language} {name}: {text}");
            }
            let length = |id| voice.label(&Text::new(id), &reader).encode_utf16().count();
            assert!(length("telegram-description") <= 512);
            assert!(length("telegram-short-description") <= 120);
        }
        let mut both = (PRIVATE, GROUP);
        both.0.sort_unstable();
        both.1.sort_unstable();
        assert_eq!(both.0, both.1);
    }
}
