//! One message to the platform: which calls it takes.

use super::refusal::{self, Refusal};
use super::rows::fitted;
use super::split::{MAX_CAPTION, MAX_NOTICE, MAX_TEXT, shorten, split, units_of};
use crate::engine::{Attachment, Key, Message, Outgoing};
use crate::room::{How, To};
use crate::words::plain;
use teloxide::Bot;
use teloxide::RequestError;
use teloxide::payloads::{
    AnswerCallbackQuerySetters, EditMessageTextSetters, PinChatMessageSetters, SendDocumentSetters, SendMessageSetters,
    SendPhotoSetters, UnpinChatMessageSetters,
};
use teloxide::requests::Requester;
use teloxide::types::{
    ButtonRequest, CallbackQueryId, ChatId, ForceReply, InlineKeyboardButton, InlineKeyboardMarkup, InputFile,
    KeyboardButton, KeyboardMarkup, LinkPreviewOptions, MessageId, ParseMode, ReplyMarkup, ReplyParameters, ThreadId,
};

/// Links are not shown as pictures.
pub const NO_PREVIEW: LinkPreviewOptions = LinkPreviewOptions {
    is_disabled: true,
    url: None,
    prefer_small_media: false,
    prefer_large_media: false,
    show_above_text: false,
};

/// What became of a message.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Delivered {
    /// Its number now.
    pub number: Option<i64>,
    /// It stands, but the platform does not let the bot pin it.
    pub not_pinned: bool,
}

impl Delivered {
    fn at(number: Option<i64>) -> Self {
        Self { number, not_pinned: false }
    }
}

/// Sends `out`.
///
/// What the platform finds malformed goes once more without markup and buttons: the words matter most.
pub async fn deliver(bot: &Bot, out: &Outgoing) -> Result<Delivered, Refusal> {
    let first = attempt(bot, out, Dress::Full).await.map_err(|error| refusal::read(&error));
    if first != Err(Refusal::Malformed) || matches!(out.message.to, To::Press(_)) {
        return first;
    }
    tracing::error!("the platform found a message malformed; it goes without markup");
    attempt(bot, out, Dress::Bare).await.map_err(|error| refusal::read(&error))
}

/// How a message goes.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Dress {
    /// With markup and buttons.
    Full,
    /// Plain words.
    Bare,
}

async fn attempt(bot: &Bot, out: &Outgoing, dress: Dress) -> Result<Delivered, RequestError> {
    let message = &out.message;
    let chat = match &message.to {
        To::Press(press) => return answer(bot, press, &message.html).await.map(|()| Delivered::default()),
        To::Room(room) => ChatId(room.0),
        To::Person(person) => ChatId(person.0),
    };
    let shown = out.shown.and_then(|number| i32::try_from(number).ok()).map(MessageId);
    match (message.how, shown) {
        (How::Close, Some(old)) => {
            bot.edit_message_reply_markup(chat, old).await?;
            Ok(Delivered::at(out.shown))
        }
        (How::Close, None) => Ok(Delivered::default()),
        (How::Edit, Some(old)) if message.file.is_none() => {
            edit(bot, chat, old, message, dress).await?;
            Ok(Delivered::at(out.shown))
        }
        (_, shown) => {
            let new = Sending { bot, chat, thread: out.topic, message, dress }.send().await?;
            let mut delivered = Delivered::at(new.map(|new| new.0.into()));
            if let Some(new) = new {
                let old = shown.filter(|old| *old != new);
                delivered.not_pinned = message.pin && !pin(bot, chat, new).await;
                if let Some(old) = old.filter(|_| message.sole) {
                    retire(bot, chat, old, message.pin).await;
                }
            }
            Ok(delivered)
        }
    }
}

async fn answer(bot: &Bot, press: &str, html: &str) -> Result<(), RequestError> {
    let request = bot.answer_callback_query(CallbackQueryId(press.to_owned()));
    if html.is_empty() {
        request.await?;
    } else {
        request.text(shorten(&plain(html), MAX_NOTICE)).await?;
    }
    Ok(())
}

async fn edit(bot: &Bot, chat: ChatId, old: MessageId, message: &Message, dress: Dress) -> Result<(), RequestError> {
    // A message cannot become two: what does not fit is left out. No board is that long.
    let text = split(&message.html, MAX_TEXT).into_iter().next().unwrap_or_default();
    let bare = dress == Dress::Bare;
    let mut request = bot.edit_message_text(chat, old, if bare { plain(&text) } else { text });
    request = request.link_preview_options(NO_PREVIEW);
    if !bare {
        request = request.parse_mode(ParseMode::Html);
        if !message.buttons.is_empty() {
            request = request.reply_markup(keyboard(&message.buttons));
        }
    }
    request.await.map(drop)
}

/// Whether it is pinned, or may be for all we know: nothing depends on it.
async fn pin(bot: &Bot, chat: ChatId, new: MessageId) -> bool {
    let pinned = bot.pin_chat_message(chat, new).disable_notification(true).await;
    !matches!(pinned.map_err(|error| refusal::read(&error)), Err(Refusal::Malformed))
}

/// A message that a newer one has replaced: gone, so that nobody reads old times or presses old buttons. What is older than
/// 48 hours can't be deleted, and stays without its buttons and its pin.
async fn retire(bot: &Bot, chat: ChatId, old: MessageId, pinned: bool) {
    if bot.delete_message(chat, old).await.is_err() {
        let _ = bot.edit_message_reply_markup(chat, old).await;
        if pinned {
            let _ = bot.unpin_chat_message(chat).message_id(old).await;
        }
    }
}

/// A new message.
struct Sending<'a> {
    bot: &'a Bot,
    chat: ChatId,
    thread: Option<i32>,
    message: &'a Message,
    dress: Dress,
}

impl Sending<'_> {
    /// The number of the last message it took.
    async fn send(&self) -> Result<Option<MessageId>, RequestError> {
        let html = &self.message.html;
        let caption = self.message.file.as_ref().filter(|_| units_of(&plain(html)) <= MAX_CAPTION);
        if let Some(file) = caption {
            return self.file(file, html).await.map(Some);
        }
        let parts = split(html, MAX_TEXT);
        let mut last = None;
        for (nth, part) in parts.iter().enumerate() {
            let whole = nth + 1 == parts.len() && self.message.file.is_none();
            last = Some(self.text(part, whole).await?);
        }
        match &self.message.file {
            Some(file) => self.file(file, "").await.map(Some),
            None => Ok(last),
        }
    }

    async fn text(&self, html: &str, last: bool) -> Result<MessageId, RequestError> {
        let mut request = self.bot.send_message(self.chat, self.dressed(html)).link_preview_options(NO_PREVIEW);
        if self.dress == Dress::Full {
            request = request.parse_mode(ParseMode::Html);
        }
        if let Some(markup) = self.markup().filter(|_| last) {
            request = request.reply_markup(markup);
        }
        if let Some(thread) = self.thread() {
            request = request.message_thread_id(thread);
        }
        if self.quiet() {
            request = request.disable_notification(true);
        }
        if let Some(number) = self.message.reply_to.and_then(|number| i32::try_from(number).ok()) {
            let reply = ReplyParameters::new(MessageId(number)).allow_sending_without_reply();
            request = request.reply_parameters(reply);
        }
        Ok(request.await?.id)
    }

    async fn file(&self, file: &Attachment, html: &str) -> Result<MessageId, RequestError> {
        let content = InputFile::memory(file.bytes.clone()).file_name(file.name.clone());
        // Two requests that differ in type only.
        macro_rules! dressed {
            ($request:expr) => {{
                let mut request = $request;
                if !html.is_empty() {
                    request = request.caption(self.dressed(html));
                    if self.dress == Dress::Full {
                        request = request.parse_mode(ParseMode::Html);
                    }
                }
                if let Some(markup) = self.markup() {
                    request = request.reply_markup(markup);
                }
                if let Some(thread) = self.thread() {
                    request = request.message_thread_id(thread);
                }
                if self.quiet() {
                    request = request.disable_notification(true);
                }
                Ok(request.await?.id)
            }};
        }
        if file.name.ends_with(".png") && !file.print {
            dressed!(self.bot.send_photo(self.chat, content))
        } else {
            dressed!(self.bot.send_document(self.chat, content))
        }
    }

    fn dressed(&self, html: &str) -> String {
        if self.dress == Dress::Bare { plain(html) } else { html.to_owned() }
    }

    fn thread(&self) -> Option<ThreadId> {
        self.thread.map(|thread| ThreadId(MessageId(thread)))
    }

    fn quiet(&self) -> bool {
        self.message.how == How::Quiet
    }

    /// Buttons, else the button that shares the place, else a reply field: the platform takes one of them.
    fn markup(&self) -> Option<ReplyMarkup> {
        let message = self.message;
        if self.dress == Dress::Bare {
            None
        } else if !message.buttons.is_empty() {
            Some(keyboard(&message.buttons).into())
        } else if let Some(label) = message.ask_place.as_ref().filter(|_| self.chat.is_user()) {
            let share = KeyboardButton::new(label).request(ButtonRequest::Location);
            Some(KeyboardMarkup::new([[share]]).resize_keyboard().one_time_keyboard().into())
        } else if message.ask_reply {
            Some(ForceReply::new().selective().into())
        } else {
            None
        }
    }
}

fn keyboard(rows: &[Vec<Key>]) -> InlineKeyboardMarkup {
    let row = |row: &[Key]| -> Vec<InlineKeyboardButton> {
        let button = |key: &Key| match key.data.starts_with("https://").then(|| key.data.parse()) {
            Some(Ok(address)) => InlineKeyboardButton::url(&key.label, address),
            _ => InlineKeyboardButton::callback(&key.label, &key.data),
        };
        row.iter().map(button).collect()
    };
    InlineKeyboardMarkup::new(fitted(rows).map(row))
}
