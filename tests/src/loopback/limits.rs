//! Lengths and counts of the Bot API, as the reference's prose states them.
//!
//! Characters are counted in UTF-16 units, the stricter reading. The number of buttons is not published; 8 in a row and
//! 100 in all is what developers report.

use super::html::{self, utf16};
use super::world::Call;
use serde_json::Value;

/// Objections to a call whose types are right.
pub fn check(call: &Call) -> Vec<String> {
    let mut wrong = Vec::new();
    let args = &call.args;
    let mut length = |key: &str, low: usize, high: usize| {
        if let Some(text) = args.get(key).and_then(Value::as_str)
            && !(low..=high).contains(&utf16(text))
        {
            wrong.push(format!("{key} has {} characters, not {low} to {high}", utf16(text)));
        }
    };
    match call.method.as_str() {
        "answerCallbackQuery" => length("text", 0, 200),
        "setMyName" => length("name", 0, 64),
        "setMyDescription" => length("description", 0, 512),
        "setMyShortDescription" => length("short_description", 0, 120),
        "answerInlineQuery" => length("next_offset", 0, 64),
        "setWebhook" => length("secret_token", 1, 256),
        _ => {}
    }
    formatted(call, "text", 1, 4096, &mut wrong);
    formatted(call, "caption", 0, 1024, &mut wrong);
    if let Some(markup) = args.get("reply_markup") {
        check_markup(markup, &mut wrong);
    }
    match call.method.as_str() {
        "setMyCommands" => check_commands(&args["commands"], &mut wrong),
        "answerInlineQuery" => check_results(&args["results"], args.get("button").unwrap_or(&Value::Null), &mut wrong),
        "getUpdates" => {
            let limit = args.get("limit").and_then(Value::as_i64).unwrap_or(100);
            if !(1..=100).contains(&limit) {
                wrong.push(format!("limit {limit} is not 1 to 100"));
            }
        }
        _ => {}
    }
    wrong
}

fn formatted(call: &Call, key: &str, low: usize, high: usize, wrong: &mut Vec<String>) {
    let is_message = call.method.starts_with("send") || call.method.starts_with("edit");
    let Some(text) = call.args.get(key).and_then(Value::as_str).filter(|_| is_message) else { return };
    match plain(text, call.args.get("parse_mode").and_then(Value::as_str)) {
        Ok(plain) => {
            let length = utf16(plain.trim());
            if !(low..=high).contains(&length) {
                wrong.push(format!("{key} has {length} characters, not {low} to {high}"));
            }
        }
        Err(error) => wrong.push(format!("can't parse entities: {error}")),
    }
}

fn plain(text: &str, parse_mode: Option<&str>) -> Result<String, String> {
    match parse_mode {
        None => Ok(text.to_string()),
        Some(mode) if mode.eq_ignore_ascii_case("html") => Ok(html::parse(text)?.0),
        Some(mode) => Err(format!("parse mode {mode} is not understood by this server")),
    }
}

fn check_markup(markup: &Value, wrong: &mut Vec<String>) {
    let rows = |key: &str| markup[key].as_array().cloned().unwrap_or_default();
    let inline = rows("inline_keyboard");
    let buttons: Vec<&Value> = inline.iter().filter_map(Value::as_array).flatten().collect();
    if buttons.len() > 100 || inline.iter().any(|row| row.as_array().is_some_and(|row| row.len() > 8)) {
        wrong.push("reply markup is too long".to_string());
    }
    if inline.iter().any(|row| row.as_array().is_some_and(Vec::is_empty)) {
        wrong.push("a row without buttons".to_string());
    }
    for button in buttons {
        let text = button["text"].as_str().unwrap_or_default();
        if text.trim().is_empty() {
            wrong.push(format!("a button without a label: {button}"));
        }
        if let Some(data) = button["callback_data"].as_str()
            && !(1..=64).contains(&data.len())
        {
            wrong.push(format!("BUTTON_DATA_INVALID: {} bytes in {data:?}", data.len()));
        }
        let decoration = ["text", "style", "icon_custom_emoji_id"];
        let actions =
            button.as_object().into_iter().flat_map(|b| b.keys()).filter(|key| !decoration.contains(&key.as_str()));
        if actions.count() != 1 {
            wrong.push(format!("a button needs exactly one action: {button}"));
        }
    }
    for button in rows("keyboard").iter().filter_map(Value::as_array).flatten() {
        if button["text"].as_str().or(button.as_str()).unwrap_or_default().trim().is_empty() {
            wrong.push(format!("a key without a label: {button}"));
        }
    }
    if let Some(placeholder) = markup["input_field_placeholder"].as_str()
        && !(1..=64).contains(&utf16(placeholder))
    {
        wrong.push(format!("input_field_placeholder has {} characters, not 1 to 64", utf16(placeholder)));
    }
}

fn check_commands(commands: &Value, wrong: &mut Vec<String>) {
    let commands = commands.as_array().cloned().unwrap_or_default();
    if commands.len() > 100 {
        wrong.push(format!("{} commands, not at most 100", commands.len()));
    }
    for command in commands {
        let name = command["command"].as_str().unwrap_or_default();
        let good = |b: u8| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'_';
        if !(1..=32).contains(&name.len()) || !name.bytes().all(good) {
            wrong.push(format!("BOT_COMMAND_INVALID: {name:?}"));
        }
        let description = utf16(command["description"].as_str().unwrap_or_default());
        if !(1..=256).contains(&description) {
            wrong.push(format!("the description of /{name} has {description} characters, not 1 to 256"));
        }
    }
}

fn check_results(results: &Value, button: &Value, wrong: &mut Vec<String>) {
    let results = results.as_array().cloned().unwrap_or_default();
    if results.len() > 50 {
        wrong.push(format!("{} results, not at most 50", results.len()));
    }
    let mut ids: Vec<&str> = results.iter().filter_map(|result| result["id"].as_str()).collect();
    if ids.iter().any(|id| !(1..=64).contains(&id.len())) {
        wrong.push("RESULT_ID_INVALID".to_string());
    }
    ids.sort_unstable();
    if ids.windows(2).any(|pair| pair[0] == pair[1]) {
        wrong.push("RESULT_ID_DUPLICATE".to_string());
    }
    if let Some(start) = button["start_parameter"].as_str()
        && (!(1..=64).contains(&start.len())
            || !start.bytes().all(|b| b.is_ascii_alphanumeric() || matches!(b, b'_' | b'-')))
    {
        wrong.push(format!("START_PARAM_INVALID: {start:?}"));
    }
    if button.is_object() && button["text"].as_str().unwrap_or_default().trim().is_empty() {
        wrong.push("a button without a label".to_string());
    }
    for result in &results {
        if result["title"].as_str().is_some_and(|title| title.trim().is_empty()) {
            wrong.push("RESULT_TITLE_EMPTY".to_string());
        }
        let content = &result["input_message_content"];
        if let Some(text) = content["message_text"].as_str() {
            match plain(text, content["parse_mode"].as_str()) {
                Ok(text) if (1..=4096).contains(&utf16(text.trim())) => {}
                Ok(text) => wrong.push(format!("message_text has {} characters, not 1 to 4096", utf16(&text))),
                Err(error) => wrong.push(format!("can't parse entities: {error}")),
            }
        }
    }
}
