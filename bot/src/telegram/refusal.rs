//! What to make of an error of the platform. teloxide hides the error code and knows few of today's texts, so they are
//! told apart by their words, with a safe answer for the rest.

use crate::room::RoomId;
use std::time::Duration;
use teloxide::{ApiError, RequestError};

/// What became of a request.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Refusal {
    /// The platform took it after all, perhaps with this message number.
    Taken(Option<i64>),
    /// This chat (or the bot) has to wait.
    Wait(Duration),
    /// The network or the platform is down.
    Down,
    /// The group has become another.
    Migrated(RoomId),
    /// The chat cannot be written to.
    Gone,
    /// The message to be changed is not there.
    Vanished,
    /// The topic is gone or closed.
    NoTopic,
    /// The token is not accepted.
    BadToken,
    /// Another process asks for updates with the same token.
    Conflict,
    /// A webhook is set, so updates do not come this way.
    Webhook,
    /// It was too late, and no matter.
    Late,
    /// The request itself is not accepted.
    Malformed,
}

/// Reads `error`.
pub fn read(error: &RequestError) -> Refusal {
    match error {
        RequestError::RetryAfter(seconds) => Refusal::Wait(seconds.duration()),
        RequestError::MigrateToChatId(chat) => Refusal::Migrated(RoomId(chat.0)),
        RequestError::Network(_) => Refusal::Down,
        RequestError::InvalidJson { raw, .. } => taken(raw),
        RequestError::Io(_) => Refusal::Malformed,
        RequestError::Api(error) => api(error),
    }
}

/// An answer that teloxide cannot read can still say that the message was taken; sending it again would double it.
fn taken(raw: &str) -> Refusal {
    let Ok(answer) = serde_json::from_str::<serde_json::Value>(raw) else { return Refusal::Down };
    match answer["ok"].as_bool() {
        Some(true) => Refusal::Taken(answer["result"]["message_id"].as_i64()),
        _ => Refusal::Down,
    }
}

/// The bot is in the chat and may not write.
const MUTED: &[&str] =
    &["not enough rights to send text messages", "have no rights to send a message", "chat_write_forbidden"];

fn api(error: &ApiError) -> Refusal {
    match error {
        ApiError::InvalidToken => return Refusal::BadToken,
        ApiError::TerminatedByOtherGetUpdates => return Refusal::Conflict,
        ApiError::CantGetUpdates => return Refusal::Webhook,
        _ => {}
    }
    let text = match error {
        ApiError::Unknown(text) => text.to_lowercase(),
        known => known.to_string().to_lowercase(),
    };
    let has = |words: &[&str]| words.iter().any(|word| text.contains(word));
    if has(&["message is not modified"]) {
        Refusal::Taken(None)
    } else if has(&["query is too old", "query id is invalid"]) {
        Refusal::Late
    } else if has(&["webhook is active"]) {
        Refusal::Webhook
    } else if text.starts_with("conflict") {
        Refusal::Conflict
    } else if text.starts_with("unauthorized: ")
        || text.starts_with("forbidden")
        || has(&["chat not found", "group is deactivated", "group chat was deleted", "user is deactivated"])
        || has(MUTED)
    {
        Refusal::Gone
    } else if text == "unauthorized" {
        Refusal::BadToken
    } else if has(&[
        "message to edit not found",
        "message can't be edited",
        "message_id_invalid",
        "no text in the message",
    ]) {
        Refusal::Vanished
    } else if has(&["thread not found", "topic_closed", "topic_deleted", "topic_id_invalid"]) {
        Refusal::NoTopic
    } else if has(&["internal server error", "bad gateway", "gateway timeout", "service unavailable", "restart"]) {
        Refusal::Down
    } else {
        Refusal::Malformed
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn api_text(text: &str) -> Refusal {
        #[allow(clippy::unwrap_used)]
        let error: ApiError = serde_json::from_value(serde_json::json!(text)).unwrap();
        read(&RequestError::Api(error))
    }

    #[test]
    fn the_platforms_words_are_understood() {
        let table = [
            ("Unauthorized", Refusal::BadToken),
            ("Not Found", Refusal::BadToken),
            ("Forbidden: bot was blocked by the user", Refusal::Gone),
            ("Forbidden: bot was kicked from the group chat", Refusal::Gone),
            ("Forbidden: bot is not a member of the supergroup chat", Refusal::Gone),
            ("Forbidden: the group chat was deleted", Refusal::Gone),
            ("Forbidden: user is deactivated", Refusal::Gone),
            ("Forbidden: bot can't initiate conversation with a user", Refusal::Gone),
            ("Bad Request: chat not found", Refusal::Gone),
            (
                "Bad Request: message is not modified: specified new message content and reply markup are exactly the \
                 same as a current content and reply markup of the message",
                Refusal::Taken(None),
            ),
            ("Bad Request: message to edit not found", Refusal::Vanished),
            ("Bad Request: message can't be edited", Refusal::Vanished),
            ("Bad Request: MESSAGE_ID_INVALID", Refusal::Vanished),
            ("Bad Request: there is no text in the message to edit", Refusal::Vanished),
            ("Bad Request: message thread not found", Refusal::NoTopic),
            ("Bad Request: TOPIC_CLOSED", Refusal::NoTopic),
            ("Bad Request: query is too old and response timeout expired or query ID is invalid", Refusal::Late),
            (
                "Conflict: terminated by other getUpdates request; make sure that only one bot instance is running",
                Refusal::Conflict,
            ),
            (
                "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook \
                 first",
                Refusal::Webhook,
            ),
            ("Internal Server Error", Refusal::Down),
            ("Bad Gateway", Refusal::Down),
            ("Bad Request: reply markup is too long", Refusal::Malformed),
            ("Bad Request: BUTTON_DATA_INVALID", Refusal::Malformed),
            ("Bad Request: not enough rights to send text messages to the chat", Refusal::Gone),
            ("Bad Request: CHAT_WRITE_FORBIDDEN", Refusal::Gone),
            ("Bad Request: not enough rights to manage pinned messages in the chat", Refusal::Malformed),
            ("Bad Request: can't parse entities: unsupported start tag", Refusal::Malformed),
        ];
        for (text, expected) in table {
            assert_eq!(api_text(text), expected, "{text}");
        }
    }

    #[test]
    fn an_unreadable_answer_that_says_ok_counts_as_sent() {
        assert_eq!(taken(r#"{"ok":true,"result":{"message_id":17,"odd":{}}}"#), Refusal::Taken(Some(17)));
        assert_eq!(taken("<html>502</html>"), Refusal::Down);
    }
}
