//! What each Bot API method does to the world. `getUpdates` waits and stands in [`super::http`].

use super::html;
use super::world::{Answer, BOT, Call, Chat, ChatId, DELETABLE, INLINE_LIVES, Message, PRESS_LIVES, Refusal, World};
use serde_json::{Value, json};
use std::collections::BTreeMap;

/// Applies a call that passed every check.
pub fn apply(world: &mut World, call: &Call) -> Result<Value, Refusal> {
    match call.method.as_str() {
        "getMe" => Ok(world.bot_json()),
        "sendMessage" | "sendDocument" | "sendPhoto" => send(world, call),
        "editMessageText" | "editMessageReplyMarkup" | "editMessageCaption" => edit(world, call),
        "deleteMessage" => delete(world, call),
        "pinChatMessage" => pin(world, call, true),
        "unpinChatMessage" => pin(world, call, false),
        "answerCallbackQuery" => answer_press(world, call),
        "answerInlineQuery" => answer_inline(world, call),
        "sendChatAction" => {
            world.may_write(chat(call)?)?;
            Ok(json!(true))
        }
        "setMyCommands" | "deleteMyCommands" => {
            let listed = call.args.get("commands").and_then(Value::as_array).cloned().unwrap_or_default();
            let text = |value: &Value| value.as_str().unwrap_or_default().to_string();
            let list = listed.iter().map(|c| (text(&c["command"]), text(&c["description"]))).collect();
            world.commands.insert((scope(call), string(call, "language_code")), list);
            Ok(json!(true))
        }
        "getMyCommands" => {
            let list = world.commands.get(&(scope(call), string(call, "language_code"))).cloned().unwrap_or_default();
            Ok(list.into_iter().map(|(c, d)| json!({"command": c, "description": d})).collect())
        }
        "setMyName" | "setMyDescription" | "setMyShortDescription" => {
            let key = ["name", "description", "short_description"].into_iter().find(|key| call.args.contains_key(*key));
            let text = key.map(|key| string(call, key)).unwrap_or_default();
            world.texts.insert((call.method.clone(), string(call, "language_code")), text);
            Ok(json!(true))
        }
        "getMyName" | "getMyDescription" | "getMyShortDescription" => {
            let method = call.method.replacen("get", "set", 1);
            let text = world.texts.get(&(method, string(call, "language_code"))).cloned().unwrap_or_default();
            let key = match call.method.as_str() {
                "getMyName" => "name",
                "getMyDescription" => "description",
                _ => "short_description",
            };
            Ok(json!({key: text}))
        }
        "getFile" => {
            let id = string(call, "file_id");
            let file = world.files.get(&id).ok_or_else(|| Refusal::bad("invalid file_id"))?;
            let path = format!("documents/{id}");
            Ok(
                json!({"file_id": id, "file_unique_id": id, "file_size": world.told_size(file.bytes.len()), "file_path": path}),
            )
        }
        "getChat" => {
            let id = chat(call)?;
            let here = known(world, id)?;
            let mut json = world.chat_json(id);
            json["accent_color_id"] = json!(0);
            json["max_reaction_count"] = json!(11);
            json["accepted_gift_types"] = json!({
                "unlimited_gifts": false, "limited_gifts": false, "unique_gifts": false,
                "premium_subscription": false, "gifts_from_channels": false,
            });
            if here.kind != "private" {
                json["permissions"] = json!({});
            }
            Ok(json)
        }
        "getChatMemberCount" => Ok(json!(known(world, chat(call)?)?.members.len() + 1)),
        "getChatAdministrators" => {
            let here = known(world, chat(call)?)?;
            if here.kind == "private" {
                return Err(Refusal::bad("there are no administrators in the private chat"));
            }
            Ok(here.admins.iter().map(|id| member(world, here, *id)).collect())
        }
        "getChatMember" => {
            let here = known(world, chat(call)?)?;
            Ok(member(world, here, call.args["user_id"].as_i64().unwrap_or_default()))
        }
        "leaveChat" => {
            let id = chat(call)?;
            known(world, id)?;
            if let Some(here) = world.chats.get_mut(&id) {
                here.bot_in = false;
            }
            Ok(json!(true))
        }
        "setWebhook" => {
            let url = string(call, "url");
            if !url.is_empty() && !url.starts_with("https://") {
                return Err(Refusal::bad("bad webhook: An HTTPS URL must be provided for webhook"));
            }
            let secret = call.args.get("secret_token").and_then(Value::as_str).map(str::to_string);
            world.webhook = (!url.is_empty()).then_some((url, secret));
            allow(world, call);
            Ok(json!(true))
        }
        "deleteWebhook" => {
            world.webhook = None;
            if call.args.get("drop_pending_updates") == Some(&json!(true)) {
                world.updates.clear();
            }
            Ok(json!(true))
        }
        "getWebhookInfo" => {
            let url = world.webhook.as_ref().map(|(url, _)| url.clone()).unwrap_or_default();
            Ok(json!({"url": url, "has_custom_certificate": false, "pending_update_count": world.updates.len()}))
        }
        "logOut" | "close" => Ok(json!(true)),
        other => Err(Refusal::new(501, format!("the loopback server does not do {other}"))),
    }
}

/// Takes over `allowed_updates`, which stays in force until it is given again.
pub fn allow(world: &mut World, call: &Call) {
    if let Some(kinds) = call.args.get("allowed_updates").and_then(Value::as_array) {
        world.allowed = Some(kinds.iter().filter_map(|kind| Some(kind.as_str()?.to_string())).collect());
    }
}

fn string(call: &Call, key: &str) -> String {
    call.args.get(key).and_then(Value::as_str).unwrap_or_default().to_string()
}

fn chat(call: &Call) -> Result<ChatId, Refusal> {
    call.args.get("chat_id").and_then(Value::as_i64).ok_or_else(|| Refusal::bad("chat not found"))
}

fn known(world: &World, id: ChatId) -> Result<&Chat, Refusal> {
    world.chats.get(&id).ok_or_else(|| Refusal::bad("chat not found"))
}

fn scope(call: &Call) -> String {
    let Some(scope) = call.args.get("scope") else { return "default".to_string() };
    let kind = scope["type"].as_str().unwrap_or("default");
    match scope.get("chat_id") {
        Some(chat) => format!("{kind} {chat}"),
        None => kind.to_string(),
    }
}

fn member(world: &World, chat: &Chat, id: i64) -> Value {
    let user = world.user_json(id);
    let inside = if id == BOT { chat.bot_in } else { chat.members.contains(&id) };
    if chat.admins.contains(&id) {
        json!({"status": "creator", "user": user, "is_anonymous": false})
    } else if inside {
        json!({"status": "member", "user": user})
    } else {
        json!({"status": "left", "user": user})
    }
}

/// Inline buttons, and whatever else the markup holds.
fn markup(call: &Call) -> (Vec<Vec<(String, String)>>, Option<Value>) {
    let Some(markup) = call.args.get("reply_markup") else { return (Vec::new(), None) };
    let Some(rows) = markup.get("inline_keyboard").and_then(Value::as_array) else {
        return (Vec::new(), Some(markup.clone()));
    };
    let button = |button: &Value| {
        let text = |key: &str| button[key].as_str().map(str::to_string);
        (text("text").unwrap_or_default(), text("callback_data").or(text("url")).unwrap_or_default())
    };
    let rows = rows.iter().map(|row| row.as_array().into_iter().flatten().map(button).collect()).collect();
    (rows, None)
}

fn formatted(call: &Call, key: &str) -> (String, Vec<html::Entity>) {
    let text = string(call, key);
    match call.args.get("parse_mode") {
        Some(_) => html::parse(&text).unwrap_or((text, Vec::new())),
        None => (text, Vec::new()),
    }
}

fn send(world: &mut World, call: &Call) -> Result<Value, Refusal> {
    let id = chat(call)?;
    world.may_write(id)?;
    let part = match call.method.as_str() {
        "sendDocument" => Some("document"),
        "sendPhoto" => Some("photo"),
        _ => None,
    };
    let thread = call.args.get("message_thread_id").and_then(Value::as_i64);
    if thread.is_some() && !known(world, id)?.forum {
        return Err(Refusal::bad("message thread not found"));
    }
    if thread.is_some_and(|thread| known(world, id).is_ok_and(|chat| chat.closed.contains(&thread))) {
        return Err(Refusal::bad("TOPIC_CLOSED"));
    }
    let reply = call.args.get("reply_parameters");
    let reply_to = reply.and_then(|reply| reply["message_id"].as_i64());
    let lenient = reply.is_some_and(|reply| reply["allow_sending_without_reply"] == json!(true));
    if let Some(reply_to) = reply_to
        && !lenient
        && !known(world, id)?.messages.contains_key(&reply_to)
    {
        return Err(Refusal::bad("message to be replied not found"));
    }
    world.within_limits(id)?;
    let (text, entities) = formatted(call, if part.is_some() { "caption" } else { "text" });
    let (buttons, other) = markup(call);
    let mut message = Message::new(id, BOT, text.trim(), world.now());
    message.entities = entities;
    message.buttons = buttons;
    message.markup = other;
    message.thread = thread;
    message.reply_to = reply_to;
    message.silent = call.args.get("disable_notification") == Some(&json!(true));
    if let Some(part) = part {
        let place = string(call, part);
        let file =
            place.strip_prefix("attach://").and_then(|name| call.files.get(name)).or_else(|| world.files.get(&place));
        message.file = Some(file.cloned().ok_or_else(|| Refusal::bad("wrong file identifier/HTTP URL specified"))?);
        message.photo = part == "photo";
        let file_id = format!("file-{}", world.fresh_id());
        world.files.extend(message.file.clone().map(|file| (file_id.clone(), file)));
        message.file_id = Some(file_id);
    }
    let message = world.put(message);
    let file = message.file.as_ref().map(|file| format!("({}) ", file.name)).unwrap_or_default();
    log(world, &message, &format!("carvetime: {file}"));
    Ok(world.message_json(&message))
}

fn log(world: &mut World, message: &Message, who: &str) {
    let labels: String = message.labels().iter().map(|label| format!(" [{label}]")).collect();
    let buttons = if labels.is_empty() { String::new() } else { format!("\n   {labels}") };
    let line = format!("{who}{}{buttons}", message.text.replace('\n', "\n    "));
    world.event(message.chat, true, Some(message.id), line, message.text.clone());
}

fn own_message(world: &World, call: &Call) -> Result<Message, Refusal> {
    let id = chat(call)?;
    world.may_write(id)?;
    let message_id = call.args.get("message_id").and_then(Value::as_i64).unwrap_or_default();
    let message = known(world, id)?.messages.get(&message_id);
    let message = message.cloned().ok_or_else(|| Refusal::bad("message to edit not found"))?;
    if message.from == BOT { Ok(message) } else { Err(Refusal::bad("message can't be edited")) }
}

fn edit(world: &mut World, call: &Call) -> Result<Value, Refusal> {
    let old = own_message(world, call)?;
    let mut new = old.clone();
    match call.method.as_str() {
        "editMessageText" if old.file.is_some() => return Err(Refusal::bad("there is no text in the message to edit")),
        "editMessageText" => (new.text, new.entities) = formatted(call, "text"),
        "editMessageCaption" => (new.text, new.entities) = formatted(call, "caption"),
        _ => {}
    }
    new.text = new.text.trim().to_string();
    new.buttons = markup(call).0;
    if (&new.text, &new.entities, &new.buttons) == (&old.text, &old.entities, &old.buttons) {
        return Err(Refusal::bad(
            "message is not modified: specified new message content and reply markup are exactly the same as a current \
             content and reply markup of the message",
        ));
    }
    new.edited = Some(world.now());
    store(world, &new);
    let who = if new.text == old.text {
        format!("carvetime (buttons of {}): ", new.id)
    } else {
        format!("carvetime (edit of {}): ", new.id)
    };
    log(world, &new, &who);
    Ok(world.message_json(&new))
}

fn store(world: &mut World, message: &Message) {
    if let Some(chat) = world.chats.get_mut(&message.chat) {
        chat.messages.insert(message.id, message.clone());
    }
}

fn delete(world: &mut World, call: &Call) -> Result<Value, Refusal> {
    let id = chat(call)?;
    world.may_write(id)?;
    let message_id = call.args.get("message_id").and_then(Value::as_i64).unwrap_or_default();
    let old = known(world, id)?.messages.get(&message_id).is_some_and(|message| world.now() - message.date > DELETABLE);
    if old {
        return Err(Refusal::bad("message can't be deleted"));
    }
    let removed = world.chats.get_mut(&id).and_then(|chat| chat.messages.remove(&message_id));
    removed.ok_or_else(|| Refusal::bad("message to delete not found"))?;
    world.event(id, true, Some(message_id), format!("carvetime deleted {message_id}"), String::new());
    Ok(json!(true))
}

fn pin(world: &mut World, call: &Call, pinned: bool) -> Result<Value, Refusal> {
    let id = chat(call)?;
    world.may_write(id)?;
    let here = known(world, id)?;
    if here.kind != "private" && !here.bot_admin {
        return Err(Refusal::bad("not enough rights to manage pinned messages in the chat"));
    }
    let newest = here.messages.values().rev().find(|message| message.pinned).map(|message| message.id);
    let message_id = call.args.get("message_id").and_then(Value::as_i64).or(newest.filter(|_| !pinned));
    let message = message_id.and_then(|id| here.messages.get(&id)).cloned();
    let mut message = message.ok_or_else(|| Refusal::bad("message to pin not found"))?;
    message.pinned = pinned;
    store(world, &message);
    let verb = if pinned { "pinned" } else { "unpinned" };
    world.event(id, true, Some(message.id), format!("carvetime {verb} {}", message.id), String::new());
    Ok(json!(true))
}

fn answer_press(world: &mut World, call: &Call) -> Result<Value, Refusal> {
    let id = string(call, "callback_query_id");
    let answer = Answer { text: string(call, "text"), alert: call.args.get("show_alert") == Some(&json!(true)) };
    let too_old = || Refusal::bad("query is too old and response timeout expired or query ID is invalid");
    let now = world.now();
    let press = world.presses.get_mut(&id).filter(|press| now - press.at <= PRESS_LIVES).ok_or_else(too_old)?;
    press.answer = Some(answer.clone());
    let (chat, by) = (press.chat, press.by);
    let name = world.users.get(&by).map(|user| user.name.clone()).unwrap_or_default();
    if !answer.text.is_empty() {
        world.event(chat, true, None, format!("carvetime (notice to {name}): {}", answer.text), answer.text);
    }
    Ok(json!(true))
}

fn answer_inline(world: &mut World, call: &Call) -> Result<Value, Refusal> {
    let args: BTreeMap<_, _> = call.args.iter().map(|(key, value)| (key.clone(), value.clone())).collect();
    let too_old = || Refusal::bad("query is too old and response timeout expired or query ID is invalid");
    let now = world.now();
    let query = world.inline.get_mut(&string(call, "inline_query_id"));
    let query = query.filter(|query| now - query.at <= INLINE_LIVES).ok_or_else(too_old)?;
    query.answer = Some((json!(args), query.asked.elapsed()));
    Ok(json!(true))
}
