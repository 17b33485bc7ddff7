//! Parameters and nested objects against the published reference (`tests/bot-api.json`, Bot API 10.1).
//!
//! Knows types, not lengths: those stand in the reference's prose and in [`super::limits`].

use serde_json::{Map, Value};
use std::collections::{BTreeMap, HashMap};
use std::sync::OnceLock;

/// A file that came with a call.
#[derive(Debug, Clone)]
pub struct Upload {
    /// Name given by the sender.
    pub name: String,
    /// Type given by the sender; empty where it leaves that to the platform, which goes by the name.
    pub mime: String,
    /// Content.
    pub bytes: Vec<u8>,
}

/// The parameters of a call as they came over the wire.
#[derive(Debug, Default)]
pub struct Args {
    /// From a JSON body: already typed.
    pub json: Map<String, Value>,
    /// From a query, a form or a multipart body: text until the reference says what they are.
    pub text: BTreeMap<String, String>,
    /// Parts with a file name.
    pub files: BTreeMap<String, Upload>,
}

struct Field {
    name: String,
    types: Vec<String>,
    required: bool,
    /// The one value a discriminating field may have.
    constant: Option<String>,
}

struct Type {
    fields: Vec<Field>,
    subtypes: Vec<String>,
}

struct Reference {
    /// By lower-case name: the proper name and the parameters.
    methods: HashMap<String, (String, Vec<Field>)>,
    types: HashMap<String, Type>,
}

fn reference() -> &'static Reference {
    static REFERENCE: OnceLock<Reference> = OnceLock::new();
    REFERENCE.get_or_init(|| {
        let all: Value = serde_json::from_str(include_str!("../../bot-api.json")).expect("the reference is JSON");
        let entries = |key: &str| all[key].as_object().expect("a map by name").clone();
        Reference {
            methods: entries("methods")
                .into_iter()
                .map(|(name, method)| (name.to_ascii_lowercase(), (name, fields(&method))))
                .collect(),
            types: entries("types")
                .into_iter()
                .map(|(name, shape)| (name, Type { fields: fields(&shape), subtypes: strings(&shape["subtypes"]) }))
                .collect(),
        }
    })
}

fn fields(of: &Value) -> Vec<Field> {
    let field = |field: &Value| Field {
        name: field["name"].as_str().unwrap_or_default().to_string(),
        types: strings(&field["types"]),
        required: field["required"].as_bool().unwrap_or(false),
        constant: constant(field["description"].as_str().unwrap_or_default()),
    };
    of["fields"].as_array().map(|all| all.iter().map(field).collect()).unwrap_or_default()
}

/// `Type of the media, must be photo`, `..., always "creator"`: one last word.
fn constant(description: &str) -> Option<String> {
    let (_, value) = description.rsplit_once("must be ").or_else(|| description.rsplit_once("always "))?;
    let value = value.trim_matches('"');
    value.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'_').then(|| value.to_string())
}

fn strings(list: &Value) -> Vec<String> {
    list.as_array().into_iter().flatten().filter_map(|item| Some(item.as_str()?.to_string())).collect()
}

/// The method's proper name and its parameters as JSON values, with everything that is wrong with them.
/// A method the reference does not know is `None`.
pub fn check_call(method: &str, args: &Args) -> Option<(String, Map<String, Value>, Vec<String>)> {
    let (name, fields) = reference().methods.get(&method.to_ascii_lowercase())?;
    let mut wrong = Vec::new();
    let mut values = args.json.clone();
    let field = |key: &str| fields.iter().find(|field| field.name == key);
    for (key, text) in &args.text {
        match field(key) {
            Some(field) => match typed(&field.types, text) {
                Some(value) => drop(values.insert(key.clone(), value)),
                None => wrong.push(format!("{key}: {text:?} is no {}", field.types.join(" or "))),
            },
            None => wrong.push(format!("unknown parameter {key}")),
        }
    }
    for key in args.files.keys() {
        if field(key).is_some() && !values.contains_key(key) {
            values.insert(key.clone(), Value::String(format!("attach://{key}")));
        } else if field(key).is_none() && !mentions(&values, &format!("attach://{key}")) {
            wrong.push(format!("file {key} belongs to no parameter"));
        }
    }
    check_fields(fields, &values, "", &mut wrong);
    for value in values.values() {
        if let Some(part) = value.as_str().and_then(|text| text.strip_prefix("attach://"))
            && !args.files.contains_key(part)
        {
            wrong.push(format!("attach://{part} has no file"));
        }
    }
    Some((name.clone(), values, wrong))
}

/// Everything that keeps `value` from being a `name` of the reference (`Update`, `Message`, `Array of String`).
pub fn check_type(name: &str, value: &Value) -> Vec<String> {
    let mut wrong = Vec::new();
    check_one(name, value, name, &mut wrong);
    wrong
}

fn typed(types: &[String], text: &str) -> Option<Value> {
    for name in types {
        let value = match name.as_str() {
            "String" | "InputFile" => Some(Value::String(text.to_string())),
            "Integer" => text.parse::<i64>().ok().map(Value::from),
            "Float" => text.parse::<f64>().ok().map(Value::from),
            "Boolean" => match text {
                "true" | "True" | "1" => Some(Value::Bool(true)),
                "false" | "False" | "0" => Some(Value::Bool(false)),
                _ => None,
            },
            _ => serde_json::from_str(text).ok(),
        };
        if value.is_some() {
            return value;
        }
    }
    None
}

fn mentions(values: &Map<String, Value>, needle: &str) -> bool {
    values.values().any(|value| value.to_string().contains(needle))
}

fn check_fields(fields: &[Field], values: &Map<String, Value>, path: &str, wrong: &mut Vec<String>) {
    let at = |key: &str| if path.is_empty() { key.to_string() } else { format!("{path}.{key}") };
    for (key, value) in values {
        match fields.iter().find(|field| field.name == *key) {
            None => wrong.push(format!("unknown parameter {}", at(key))),
            Some(field) => {
                check_any(&field.types, value, &at(key), wrong);
                if let Some(constant) = &field.constant
                    && value.as_str().is_some_and(|text| text != constant)
                {
                    wrong.push(format!("{} must be {constant}", at(key)));
                }
            }
        }
    }
    for field in fields.iter().filter(|field| field.required && !values.contains_key(&field.name)) {
        wrong.push(format!("{} is missing", at(&field.name)));
    }
}

/// The alternative with the fewest objections counts.
fn check_any(types: &[String], value: &Value, path: &str, wrong: &mut Vec<String>) {
    let objections = |name: &String| {
        let mut wrong = Vec::new();
        check_one(name, value, path, &mut wrong);
        wrong
    };
    wrong.extend(types.iter().map(objections).min_by_key(Vec::len).unwrap_or_default());
}

fn check_one(name: &str, value: &Value, path: &str, wrong: &mut Vec<String>) {
    if let Some(item) = name.strip_prefix("Array of ") {
        match value.as_array() {
            Some(items) => {
                for (n, value) in items.iter().enumerate() {
                    check_one(item, value, &format!("{path}[{n}]"), wrong);
                }
            }
            None => wrong.push(format!("{path}: an array is wanted, not {value}")),
        }
        return;
    }
    let fits = match name {
        "Integer" => value.is_i64() || value.is_u64(),
        "Float" => value.is_number(),
        "Boolean" => value.is_boolean(),
        "String" => value.is_string(),
        "InputFile" => value.as_str().is_some_and(|text| text.starts_with("attach://")),
        _ => match (reference().types.get(name), value.as_object()) {
            (None, _) => true,
            (Some(shape), _) if !shape.subtypes.is_empty() => {
                check_any(&shape.subtypes, value, path, wrong);
                true
            }
            (Some(shape), Some(values)) => {
                check_fields(&shape.fields, values, path, wrong);
                true
            }
            (Some(_), None) => false,
        },
    };
    if !fits {
        wrong.push(format!("{path}: {name} is wanted, not {value}"));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    fn wrong(method: &str, args: Value) -> Vec<String> {
        let args = Args { json: args.as_object().unwrap().clone(), ..Args::default() };
        check_call(method, &args).unwrap().2
    }

    #[test]
    fn a_proper_call_has_nothing_wrong() {
        let markup = json!({"inline_keyboard": [[{"text": "Accept", "callback_data": "a"}]]});
        let args = json!({"chat_id": -5, "text": "hi", "parse_mode": "HTML", "reply_markup": markup});
        assert_eq!(wrong("SENDMESSAGE", args), Vec::<String>::new());
        let scope = json!({"type": "all_group_chats"});
        let commands = json!([{"command": "plan", "description": "Plan"}]);
        assert_eq!(wrong("setMyCommands", json!({"commands": commands, "scope": scope})), Vec::<String>::new());
    }

    #[test]
    fn every_kind_of_mistake_is_named() {
        let objections = wrong("sendMessage", json!({"chat_id": true, "texxt": "hi"}));
        assert_eq!(objections.len(), 3, "{objections:?}");
        let markup = json!({"inline_keyboard": [[{"text": 5, "data": "a"}]]});
        let nested = wrong("sendMessage", json!({"chat_id": 1, "text": "", "reply_markup": markup}));
        assert_eq!(nested.len(), 2, "{nested:?}");
        let scope = json!({"type": "everywhere"});
        assert_eq!(wrong("setMyCommands", json!({"commands": [], "scope": scope})).len(), 1);
        assert!(check_call("sendPigeon", &Args::default()).is_none());
    }

    #[test]
    fn text_parameters_are_read_by_the_declared_type() {
        let text = BTreeMap::from([("chat_id".into(), "-5".into()), ("document".into(), "attach://part".into())]);
        let files =
            BTreeMap::from([("part".into(), Upload { name: "a.ics".into(), mime: String::new(), bytes: vec![1] })]);
        let (name, values, wrong) = check_call("senddocument", &Args { text, files, ..Args::default() }).unwrap();
        assert_eq!((name.as_str(), wrong), ("sendDocument", vec![]));
        assert_eq!(values["chat_id"], json!(-5));
    }
}
