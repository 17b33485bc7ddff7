//! From the platform's updates to what the room hears.
//!
//! Pure but for what it must look up: which of our messages is replied to or pressed on, and who administers a group.

use crate::engine::{Arrival, Topic, UpdateId};
use crate::reading::command::beside_our_name;
use crate::room::{Document, Heard, PersonId, RoomId, RoomKind, Speaker, What, payload};
use crate::words::foreign::is_visible;
use teloxide::types::{
    CallbackQuery, Chat, ChatMember, ChatMemberKind, ChatMemberUpdated, Document as TelegramDocument, MediaKind,
    Message, MessageKind, Update, UpdateKind, User,
};

/// Longest name kept.
const MAX_NAME: usize = 64;

/// Largest file fetched: a reading a second for a day is less.
pub const LARGEST: u32 = 2 << 20;

/// Who has no name that can be seen.
const NAMELESS: &str = "👤";

/// Who we are on the platform.
#[derive(Debug, Clone)]
pub struct Identity {
    /// Our id.
    pub id: i64,
    /// Our name, without the sign.
    pub username: String,
}

/// What has to be looked up.
pub trait Lookup {
    /// What our message with this number is called.
    fn key_of(&self, room: RoomId, message: i64) -> Option<String>;
    /// Whether a person administers a group.
    fn is_admin(&self, room: RoomId, person: PersonId) -> bool;
    /// Whether a person is in the group, if the platform was asked and has answered.
    fn is_inside(&self, room: RoomId, person: PersonId) -> Option<bool>;
}

/// Whether a person is in a group has to be asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Membership {
    /// The group.
    pub room: RoomId,
    /// The person.
    pub person: PersonId,
    /// They pressed there: whoever is known to be in it need not be asked for.
    pub pressed: bool,
}

/// What `update` lets the room hear; nothing if it is none of our business.
pub fn hear(update: &Update, me: &Identity, lookup: &dyn Lookup) -> Option<Arrival> {
    let ear = Ear { me, lookup };
    let mut arrival = match &update.kind {
        UpdateKind::Message(message) => ear.message(message, false),
        UpdateKind::EditedMessage(message) => ear.message(message, true),
        UpdateKind::CallbackQuery(query) => ear.press(query),
        UpdateKind::MyChatMember(change) => ear.membership(change),
        _ => None,
    }?;
    arrival.title = title_of(update);
    arrival.update = Some(UpdateId(update.id.0.into()));
    if let (What::Document { content, .. }, UpdateKind::Message(message)) = (&mut arrival.heard.what, &update.kind) {
        let file = &table(message)?.file;
        match file.size > LARGEST {
            true => *content = Document::TooLarge,
            false => arrival.file = Some(file.id.0.clone()),
        }
    }
    Some(arrival)
}

/// What the group an update comes from is called.
fn title_of(update: &Update) -> Option<String> {
    let chat = update.chat().filter(|chat| kind_of(chat) == Some(RoomKind::Group))?;
    Some(chat.title()?.chars().take(MAX_NAME).collect())
}

/// The groups whose administrators have to be known before `update` is heard.
pub fn needs_admins(update: &Update) -> Option<RoomId> {
    let chat = match &update.kind {
        UpdateKind::Message(message) | UpdateKind::EditedMessage(message) => {
            let matters = message.reply_to_message().is_some() || message.text().is_some_and(is_command);
            matters.then_some(&message.chat)
        }
        UpdateKind::CallbackQuery(query) => query.message.as_ref().map(|message| message.chat()),
        _ => None,
    }?;
    (kind_of(chat)? == RoomKind::Group).then_some(RoomId(chat.id.0))
}

/// The group a link leads into and who follows it, or the public group that is pressed in: whether they are in it has to be known
/// before `update` is heard. Links are forwarded, and what stands in public anyone can press.
pub fn needs_member(update: &Update) -> Option<Membership> {
    match &update.kind {
        UpdateKind::Message(message) => {
            followed(message).map(|(room, person)| Membership { room, person, pressed: false })
        }
        UpdateKind::CallbackQuery(query) => {
            let chat = query.message.as_ref()?.chat();
            let public = kind_of(chat)? == RoomKind::Group && chat.username().is_some();
            let (room, person) = (RoomId(chat.id.0), PersonId(query.from.id.0.cast_signed()));
            public.then_some(Membership { room, person, pressed: true })
        }
        _ => None,
    }
}

fn followed(message: &Message) -> Option<(RoomId, PersonId)> {
    let (room, _) = payload(message.text().filter(|_| message.chat.is_private())?)?;
    Some((room, PersonId(message.from.as_ref()?.id.0.cast_signed())))
}

/// The message of ours whose name has to be known before `update` is heard.
pub fn needs_key(update: &Update) -> Option<(RoomId, i64)> {
    let (chat, message) = match &update.kind {
        UpdateKind::Message(message) => (&message.chat, message.reply_to_message()?.id),
        UpdateKind::CallbackQuery(query) => query.message.as_ref().map(|message| (message.chat(), message.id()))?,
        _ => return None,
    };
    Some((RoomId(chat.id.0), message.0.into()))
}

/// Who says something where, and whether they send a file. `None` for what the platform itself tells.
pub fn speech(update: &Update) -> Option<(i64, i64, bool)> {
    let (from, chat, file) = match &update.kind {
        UpdateKind::Message(message) | UpdateKind::EditedMessage(message) => {
            let told = matches!(message.kind, MessageKind::Common(_) | MessageKind::Empty {});
            let file = table(message).is_some();
            (message.from.as_ref().filter(|_| told)?, message.chat.id, file)
        }
        UpdateKind::CallbackQuery(query) => (&query.from, query.message.as_ref()?.chat().id, false),
        _ => return None,
    };
    Some((from.id.0.cast_signed(), chat.0, file))
}

/// In place of what someone said too much: that it was too much, where anyone waits for an answer.
pub fn flooded(mut arrival: Arrival) -> Option<Arrival> {
    let press = match arrival.heard.what {
        What::Said { addressed: false, .. } => return None,
        What::Pressed { press, .. } => Some(press),
        _ => None,
    };
    arrival.heard.what = What::Flooded { press };
    arrival.file = None;
    Some(arrival)
}

/// The table sent with a message, if there is one.
fn table(message: &Message) -> Option<&TelegramDocument> {
    let document = message.document()?;
    let name = document.file_name.as_deref().unwrap_or_default().to_lowercase();
    let typed = document.mime_type.as_ref().is_some_and(|mime| mime.essence_str() == "text/csv");
    (typed || name.ends_with(".csv")).then_some(document)
}

/// The words under a file speak to us.
fn is_captioned(message: &Message, me: &Identity) -> bool {
    message.caption().is_some_and(|caption| {
        let named = caption
            .split_whitespace()
            .filter_map(|word| word.split_once('@'))
            .any(|(_, name)| name.trim_end_matches([',', ':', '.', '!', '?']).eq_ignore_ascii_case(&me.username));
        named || is_command(caption) && !caption.contains('@')
    })
}

fn is_command(text: &str) -> bool {
    text.trim_start().starts_with('/')
}

fn kind_of(chat: &Chat) -> Option<RoomKind> {
    if chat.is_private() {
        Some(RoomKind::Private)
    } else if chat.is_group() || chat.is_supergroup() {
        Some(RoomKind::Group)
    } else {
        None // channels
    }
}

struct Ear<'a> {
    me: &'a Identity,
    lookup: &'a dyn Lookup,
}

impl Ear<'_> {
    fn message(&self, message: &Message, edited: bool) -> Option<Arrival> {
        let room = RoomId(message.chat.id.0);
        let kind = kind_of(&message.chat)?;
        if let Some(moved) = migration(message, room) {
            return Some(moved);
        }
        if let Some(user) = message.left_chat_member() {
            // Our own going is told by a change of our membership.
            let who = PersonId(user.id.0.cast_signed());
            let heard = Heard { room, kind, by: None, for_group: false, what: What::Left { who } };
            return (!user.is_bot).then(|| Arrival::from(heard));
        }
        // One at a time matters: whoever was away and is let in again may press at once.
        if let Some(user) = message.new_chat_members().and_then(|users| users.iter().find(|user| !user.is_bot)) {
            let who = PersonId(user.id.0.cast_signed());
            let heard = Heard { room, kind, by: None, for_group: false, what: What::Came { who } };
            return Some(Arrival::from(heard));
        }
        if message.is_automatic_forward()
            || message.via_bot.as_ref().is_some_and(|bot| bot.id.0.cast_signed() == self.me.id)
        {
            return None;
        }
        // A channel is nobody who could be answered: what it posts is for its readers.
        if message.sender_chat.as_ref().is_some_and(|sender| sender.id != message.chat.id) {
            return None;
        }
        let mut by = match message.from.as_ref() {
            // An anonymous administrator: nobody in particular. Any other bot is not for us.
            _ if message.sender_chat.is_some() => None,
            Some(user) if user.is_bot => return None,
            user => user.map(|user| self.speaker(user, room, kind)),
        };
        let (what, addressed) = self.what(message, room, kind, edited)?;
        if let (Some(by), Some((group, who))) = (&mut by, followed(message)) {
            by.inside = self.lookup.is_inside(group, who);
        }
        let for_group = message.sender_chat.as_ref().is_some_and(|chat| chat.id == message.chat.id);
        let mut arrival = Arrival::from(Heard { room, kind, by, for_group, what });
        arrival.message = Some(message.id.0.into());
        arrival.topic = (addressed && kind == RoomKind::Group).then(|| topic(message));
        let sent = message.edit_date().filter(|_| edited).copied();
        arrival.sent = Some(sent.unwrap_or(message.date));
        Some(arrival)
    }

    /// What the message says, and whether it is meant for us.
    fn what(&self, message: &Message, room: RoomId, kind: RoomKind, edited: bool) -> Option<(What, bool)> {
        let replied = message.reply_to_message();
        let to_us = replied.filter(|to| to.from.as_ref().is_some_and(|from| from.id.0.cast_signed() == self.me.id));
        let near = kind == RoomKind::Private || to_us.is_some();
        if let Some(text) = message.text() {
            let (text, named) = self.strip(text)?;
            let addressed = near || named || is_command(&text);
            let reply_to = to_us.and_then(|to| self.lookup.key_of(room, to.id.0.into()));
            return Some((What::Said { text, addressed, reply_to, edited }, addressed));
        }
        if let Some(document) = table(message).filter(|_| !edited && (near || is_captioned(message, self.me))) {
            let name = document.file_name.as_deref().unwrap_or_default().chars().take(MAX_NAME).collect();
            return Some((What::Document { name, content: Document::Lost }, true)); // until it is fetched
        }
        let MessageKind::Common(common) = &message.kind else {
            // Service messages say nothing; a message of a kind newer than our library has nothing in it.
            let unknown = matches!(message.kind, MessageKind::Empty {}) && near && !edited;
            return unknown.then_some((What::Unreadable, true));
        };
        if !near || edited {
            return None; // a picture for the others; a live location that moves on
        }
        let place = match &common.media_kind {
            MediaKind::Location(media) => Some(&media.location),
            MediaKind::Venue(media) => Some(&media.venue.location),
            _ => None,
        };
        let what = place
            .map_or(What::Unreadable, |place| What::Located { latitude: place.latitude, longitude: place.longitude });
        Some((what, true))
    }

    /// The text without our name in a command or at its start, and whether we were named. Nothing, if it is a command
    /// for another bot.
    fn strip(&self, text: &str) -> Option<(String, bool)> {
        let text = text.trim();
        let word = text.split_whitespace().next().unwrap_or_default();
        let rest = text.get(word.len()..).unwrap_or_default();
        if let Some((command, bot)) = word.split_once('@').filter(|_| is_command(word)) {
            return self.is_me(bot).then(|| (format!("{command}{rest}"), true));
        }
        if word.strip_prefix('@').map(|name| name.trim_end_matches([',', ':'])).is_some_and(|name| self.is_me(name)) {
            return Some((rest.trim_start().to_owned(), true));
        }
        if let Some(rest) = beside_our_name(text) {
            return Some((rest.to_owned(), true));
        }
        let named = text.split_whitespace().any(|word| {
            word.strip_prefix('@').is_some_and(|name| self.is_me(name.trim_end_matches([',', ':', '.', '!', '?'])))
        });
        Some((text.to_owned(), named))
    }

    fn is_me(&self, name: &str) -> bool {
        name.eq_ignore_ascii_case(&self.me.username)
    }

    fn press(&self, query: &CallbackQuery) -> Option<Arrival> {
        let message = query.message.as_ref()?;
        let chat = message.chat();
        let (room, kind) = (RoomId(chat.id.0), kind_of(chat)?);
        let on = self.lookup.key_of(room, message.id().0.into());
        let data = query.data.clone()?;
        let what = What::Pressed { press: query.id.0.clone(), data, on };
        let mut by = self.speaker(&query.from, room, kind);
        by.inside = self.lookup.is_inside(room, by.id);
        let mut arrival = Arrival::from(Heard { room, kind, by: Some(by), for_group: false, what });
        arrival.topic = message.regular_message().filter(|_| kind == RoomKind::Group).map(topic);
        Some(arrival)
    }

    fn membership(&self, change: &ChatMemberUpdated) -> Option<Arrival> {
        let (room, kind) = (RoomId(change.chat.id.0), kind_of(&change.chat)?);
        let what = match (may_speak(&change.old_chat_member), may_speak(&change.new_chat_member)) {
            (false, true) => What::Welcomed,
            (true, false) => What::Removed,
            _ => return None,
        };
        let by = (!change.from.is_bot).then(|| self.speaker(&change.from, room, kind));
        Some(Arrival::from(Heard { room, kind, by, for_group: false, what }))
    }

    fn speaker(&self, user: &User, room: RoomId, kind: RoomKind) -> Speaker {
        let id = PersonId(user.id.0.cast_signed());
        // Some are called nothing but blanks.
        let names = [Some(&user.first_name), user.last_name.as_ref(), user.username.as_ref()];
        let seen = names.into_iter().flatten().find(|name| is_visible(name)).map_or(NAMELESS, String::as_str);
        let name: String = seen.chars().take(MAX_NAME).collect();
        Speaker {
            id,
            name,
            username: user.username.clone(),
            language: user.language_code.clone(),
            admin: kind == RoomKind::Group && self.lookup.is_admin(room, id),
            inside: None,
        }
    }
}

/// A member who is muted might as well be away.
fn may_speak(member: &ChatMember) -> bool {
    let muted = matches!(&member.kind, ChatMemberKind::Restricted(rights) if !rights.can_send_messages);
    member.is_present() && !muted
}

fn topic(message: &Message) -> Topic {
    match message.thread_id {
        Some(thread) if message.is_topic_message => Topic::Thread(thread.0.0),
        _ => Topic::General,
    }
}

/// The two service messages of a group that became another; they come in any order.
fn migration(message: &Message, room: RoomId) -> Option<Arrival> {
    let (from, to) = match (message.migrate_to_chat_id(), message.migrate_from_chat_id()) {
        (Some(to), _) => (room, RoomId(to.0)),
        (None, Some(from)) => (RoomId(from.0), room),
        (None, None) => return None,
    };
    Some(Arrival::from(Heard {
        room: from,
        kind: RoomKind::Group,
        by: None,
        for_group: false,
        what: What::Migrated { to },
    }))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use serde_json::{Value, json};

    struct World;

    impl Lookup for World {
        fn key_of(&self, _: RoomId, message: i64) -> Option<String> {
            (message == 50).then(|| "board".to_owned())
        }
        fn is_inside(&self, _: RoomId, _: PersonId) -> Option<bool> {
            None
        }
        fn is_admin(&self, room: RoomId, person: PersonId) -> bool {
            room == RoomId(-9) && person == PersonId(7)
        }
    }

    fn heard(kind: &str, content: Value) -> Option<Arrival> {
        // As text: teloxide wants the number first.
        let update: Update = serde_json::from_str(&format!(r#"{{"update_id": 3, "{kind}": {content}}}"#)).unwrap();
        let me = Identity { id: 1, username: "carve_bot".to_owned() };
        hear(&update, &me, &World)
    }

    fn message(chat: i64, more: Value) -> Value {
        let kind = if chat > 0 { "private" } else { "supergroup" };
        let mut all = json!({
            "message_id": 5, "date": 1_000, "chat": {"id": chat, "type": kind, "title": "Dinner", "first_name": "Rosa"},
            "from": {"id": 7, "is_bot": false, "first_name": "Rosa", "language_code": "es"},
        });
        for (key, value) in more.as_object().unwrap() {
            all[key] = value.clone();
        }
        all
    }

    fn said(chat: i64, more: Value) -> Option<(String, bool)> {
        match heard("message", message(chat, more))?.heard.what {
            What::Said { text, addressed, .. } => Some((text, addressed)),
            _ => None,
        }
    }

    #[test]
    fn a_private_message_is_always_meant_for_us() {
        let arrival = heard("message", message(7, json!({"text": "14 lb frozen"}))).unwrap();
        assert_eq!(arrival.update, Some(UpdateId(3)));
        assert_eq!(arrival.sent.unwrap().timestamp(), 1_000);
        let by = arrival.heard.by.unwrap();
        assert_eq!((by.name.as_str(), by.language.as_deref(), by.admin), ("Rosa", Some("es"), false));
        assert_eq!(said(7, json!({"text": "14 lb frozen"})), Some(("14 lb frozen".into(), true)));
    }

    #[test]
    fn who_is_called_blanks_is_known_by_another_name() {
        let called = |from: Value| {
            heard("message", message(7, json!({"text": "hi", "from": from}))).unwrap().heard.by.unwrap().name
        };
        let blank = |more: Value| {
            let mut from = json!({"id": 7, "is_bot": false, "first_name": "\u{3164}\u{202E}"});
            more.as_object().unwrap().iter().for_each(|(key, value)| from[key] = value.clone());
            called(from)
        };
        assert_eq!(blank(json!({"last_name": "Levi", "username": "noa"})), "Levi");
        assert_eq!(blank(json!({"username": "noa"})), "noa");
        assert_eq!(blank(json!({})), "👤");
    }

    #[test]
    fn our_name_is_taken_off_and_other_bots_are_left_alone() {
        let table = [
            ("/plan@Carve_Bot 14 lb", Some(("/plan 14 lb", true))),
            ("/plan@other_bot 14 lb", None),
            ("/plan", Some(("/plan", true))),
            ("@carve_bot breast 128", Some(("breast 128", true))),
            ("what does @carve_bot say?", Some(("what does @carve_bot say?", true))),
            ("breast 128", Some(("breast 128", false))),
            ("Carvetime, what's next?", Some(("what's next?", true))),
            ("carvetime que sigue", Some(("que sigue", true))),
            ("carvetime", Some(("carvetime", false))),
            ("is carvetime still on?", Some(("is carvetime still on?", false))),
        ];
        for (text, expected) in table {
            let expected = expected.map(|(text, addressed)| (text.to_owned(), addressed));
            assert_eq!(said(-9, json!({"text": text})), expected, "{text}");
        }
    }

    #[test]
    fn a_reply_to_our_board_says_so() {
        let mut board = message(-9, json!({"text": "Board", "message_id": 50}));
        board["from"] = json!({"id": 1, "is_bot": true, "first_name": "Carvetime"});
        let arrival = heard("message", message(-9, json!({"text": "128", "reply_to_message": board}))).unwrap();
        let What::Said { addressed, reply_to, .. } = arrival.heard.what else { unreachable!() };
        assert_eq!((addressed, reply_to.as_deref()), (true, Some("board")));
        assert!(arrival.heard.by.unwrap().admin);
    }

    #[test]
    fn an_anonymous_administrator_is_nobody_and_a_channel_and_another_bot_are_not_heard() {
        let fake = json!({"id": 1_087_968_824, "is_bot": true, "first_name": "Group"});
        let group = json!({"id": -9, "type": "supergroup", "title": "Dinner"});
        let arrival = heard("message", message(-9, json!({"text": "/board", "from": fake, "sender_chat": group})));
        let heard_of_it = arrival.unwrap().heard;
        assert_eq!((heard_of_it.by, heard_of_it.for_group), (None, true));
        let channel = json!({"id": -77, "type": "channel", "title": "News"});
        let posted = heard("message", message(-9, json!({"text": "/move 6 pm", "from": fake, "sender_chat": channel})));
        assert!(posted.is_none(), "nobody is there to be answered");
        assert!(heard("message", message(-9, json!({"text": "/board", "from": fake}))).is_none());
    }

    #[test]
    fn an_edited_text_is_an_edit_and_a_live_location_that_moves_is_nothing() {
        let arrival = heard("edited_message", message(7, json!({"text": "breast 129", "edit_date": 2_000}))).unwrap();
        assert!(matches!(arrival.heard.what, What::Said { edited: true, .. }));
        assert_eq!(arrival.sent.unwrap().timestamp(), 2_000);
        let place = json!({"location": {"latitude": 41.9, "longitude": -87.6}, "edit_date": 2_000});
        assert!(heard("edited_message", message(7, place)).is_none());
    }

    #[test]
    fn a_place_is_heard_privately_and_a_picture_is_unreadable_there_but_ignored_in_a_group() {
        let place = json!({"location": {"latitude": 41.9, "longitude": -87.6}});
        let arrival = heard("message", message(7, place.clone())).unwrap();
        assert_eq!(arrival.heard.what, What::Located { latitude: 41.9, longitude: -87.6 });
        assert!(heard("message", message(-9, place)).is_none());
        let voice = json!({"voice": {"file_id": "a", "file_unique_id": "b", "duration": 1, "file_size": 9}});
        assert_eq!(heard("message", message(7, voice.clone())).unwrap().heard.what, What::Unreadable);
        assert!(heard("message", message(-9, voice)).is_none());
    }

    #[test]
    fn a_log_is_to_be_fetched_where_it_is_meant_for_us() {
        let file = json!({"file_id": "log", "file_unique_id": "l", "file_name": "Cook.CSV", "file_size": 9});
        let log = |content| What::Document { name: "Cook.CSV".into(), content };
        let arrives =
            |chat, more| heard("message", message(chat, more)).map(|arrival| (arrival.heard.what, arrival.file));
        let fetched = Some((log(Document::Lost), Some("log".to_owned())));
        assert_eq!(arrives(7, json!({"document": file})), fetched);
        assert_eq!(arrives(-9, json!({"document": file})), None);
        assert_eq!(arrives(-9, json!({"document": file, "caption": "/log"})), fetched);
        assert_eq!(arrives(-9, json!({"document": file, "caption": "/log@carve_bot"})), fetched);
        assert_eq!(arrives(-9, json!({"document": file, "caption": "/log@other_bot"})), None);
        let mut large = file.clone();
        large["file_size"] = json!(LARGEST + 1);
        assert_eq!(arrives(7, json!({"document": large})), Some((log(Document::TooLarge), None)));
        let other = json!({"file_id": "x", "file_unique_id": "x", "file_name": "menu.pdf", "file_size": 9});
        assert_eq!(arrives(7, json!({"document": other})), Some((What::Unreadable, None)));
    }

    #[test]
    fn the_topic_is_taken_from_what_is_meant_for_us() {
        let topic = |text: &str| {
            let more = json!({"text": text, "message_thread_id": 4, "is_topic_message": true});
            heard("message", message(-9, more)).unwrap().topic
        };
        assert_eq!(topic("/board"), Some(Topic::Thread(4)));
        assert_eq!(topic("hello all"), None);
        // In an ordinary group the number marks a thread of replies.
        let reply = heard("message", message(-9, json!({"text": "/board", "message_thread_id": 4}))).unwrap();
        assert_eq!(reply.topic, Some(Topic::General));
    }

    #[test]
    fn both_signs_of_a_moved_group_mean_the_same() {
        let moved = |chat: i64, more| {
            let arrival = heard("message", message(chat, more)).unwrap();
            (arrival.heard.room, arrival.heard.what)
        };
        let expected = (RoomId(-9), What::Migrated { to: RoomId(-1_009) });
        assert_eq!(moved(-9, json!({"migrate_to_chat_id": -1_009})), expected);
        assert_eq!(moved(-1_009, json!({"migrate_from_chat_id": -9})), expected);
    }

    #[test]
    fn a_press_is_heard_with_the_name_of_its_message_even_on_one_that_is_too_old() {
        let from = json!({"id": 7, "is_bot": false, "first_name": "Rosa"});
        for date in [0, 1_000] {
            let on = json!({"message_id": 50, "date": date, "text": "Board", "chat": {"id": -9, "type": "supergroup", "title": "D"}});
            let query = json!({"id": "p", "from": from, "chat_instance": "c", "data": "job:done", "message": on});
            let arrival = heard("callback_query", query).unwrap();
            let pressed = What::Pressed { press: "p".into(), data: "job:done".into(), on: Some("board".into()) };
            assert_eq!((arrival.heard.what, arrival.sent), (pressed, None), "date {date}");
        }
    }

    #[test]
    fn coming_and_going_is_heard_and_a_promotion_is_not() {
        let me = json!({"id": 1, "is_bot": true, "first_name": "Carvetime"});
        let member = |status: &str| {
            let mut member = json!({"user": me, "status": status, "until_date": 0});
            if status == "restricted" {
                let rights = [
                    "can_send_messages",
                    "can_send_audios",
                    "can_send_documents",
                    "can_send_photos",
                    "can_send_videos",
                    "can_send_video_notes",
                    "can_send_voice_notes",
                    "can_send_polls",
                    "can_send_other_messages",
                    "can_add_web_page_previews",
                    "can_change_info",
                    "can_invite_users",
                    "can_pin_messages",
                    "can_manage_topics",
                ];
                rights.iter().for_each(|right| member[*right] = json!(false));
                member["is_member"] = json!(true);
            }
            member
        };
        let change = |old: &str, new: &str| {
            let change = json!({
                "chat": {"id": -9, "type": "supergroup", "title": "D"}, "date": 1_000,
                "from": {"id": 7, "is_bot": false, "first_name": "Rosa"},
                "old_chat_member": member(old), "new_chat_member": member(new),
            });
            heard("my_chat_member", change).map(|arrival| arrival.heard.what)
        };
        assert_eq!(change("left", "member"), Some(What::Welcomed));
        assert_eq!(change("member", "kicked"), Some(What::Removed));
        assert_eq!(change("member", "member"), None);
        assert_eq!(change("member", "restricted"), Some(What::Removed), "muted");
        assert_eq!(change("restricted", "member"), Some(What::Welcomed));
        let gone = json!({"left_chat_member": {"id": 8, "is_bot": false, "first_name": "Tom"}});
        assert_eq!(heard("message", message(-9, gone)).unwrap().heard.what, What::Left { who: PersonId(8) });
        let come = json!({"new_chat_members": [{"id": 8, "is_bot": false, "first_name": "Tom"}]});
        assert_eq!(heard("message", message(-9, come)).unwrap().heard.what, What::Came { who: PersonId(8) });
        let us = json!({"left_chat_member": me});
        assert!(heard("message", message(-9, us)).is_none());
    }
}
