//! A room to try the conversation in: keeps the state between turns, the clock where it is put, and rings what is due.

use carvetime::room::state::{Person, Room};
use carvetime::room::{BellKind, Heard, PersonId, RoomId, RoomKind, Say, Scene, Speaker, To, Turn, What, decide};
use carvetime::words::{Voice, plain};
use chrono::{DateTime, NaiveDateTime, TimeZone, Utc};
use chrono_tz::Tz;
use std::collections::BTreeMap;

/// A room with people in it.
pub struct Kitchen {
    pub scene: Scene,
    pub now: DateTime<Utc>,
    pub said: Vec<Say>,
    pub zone: Tz,
    /// What the platform says of whoever follows a link.
    pub inside: Option<bool>,
    bells: Vec<(DateTime<Utc>, BellKind)>,
    voice: Voice,
    names: Vec<String>,
}

impl Kitchen {
    /// A room of that kind in that zone, its clock at `local`.
    pub fn new(kind: RoomKind, language: &str, zone: Tz, local: &str) -> Self {
        let id = match kind {
            RoomKind::Private => RoomId(1),
            RoomKind::Group => RoomId(-100),
        };
        let mut room = Room::new(id, kind);
        room.taste.language = Some(language.to_owned());
        room.taste.zone = Some(zone.name().to_owned());
        let mut kitchen = Self {
            scene: Scene { room, people: BTreeMap::<PersonId, Person>::new(), chance: 0x5eed },
            now: Utc::now(),
            said: Vec::new(),
            zone,
            inside: Some(true),
            bells: Vec::new(),
            voice: Voice::new(),
            names: Vec::new(),
        };
        kitchen.now = kitchen.local(local);
        kitchen
    }

    pub fn local(&self, local: &str) -> DateTime<Utc> {
        let naive = NaiveDateTime::parse_from_str(local, "%Y-%m-%d %H:%M").unwrap();
        self.zone.from_local_datetime(&naive).unwrap().to_utc()
    }

    fn speaker(&mut self, name: &str) -> Speaker {
        let at = self.names.iter().position(|known| known == name).unwrap_or_else(|| {
            self.names.push(name.to_owned());
            self.names.len() - 1
        });
        Speaker {
            id: PersonId(at as i64 + 1),
            name: name.to_owned(),
            username: None,
            language: None,
            admin: false,
            inside: self.inside,
        }
    }

    /// Someone says something meant for the bot; what the room answers, in plain words.
    pub fn say(&mut self, who: &str, text: &str) -> String {
        self.hear(Some(who), What::Said { text: text.into(), addressed: true, reply_to: None, edited: false })
    }

    /// Someone presses the newest button with that label.
    #[allow(dead_code)] // each test file takes what it needs
    pub fn press(&mut self, who: &str, label: &str) -> String {
        let mut found = None;
        for say in self.said.iter().rev() {
            let reader = self.scene.room.taste.reader(self.now);
            for button in say.buttons.iter().flatten() {
                if self.voice.label(&button.label, &reader) == label {
                    found = found.or(Some((button.data.clone(), say.key.clone())));
                }
            }
            if found.is_some() {
                break;
            }
        }
        let (data, on) = found.unwrap_or_else(|| panic!("no button {label:?}"));
        self.hear(Some(who), What::Pressed { press: "p".into(), data, on })
    }

    /// Lets the clock run to `local`, ringing what falls due on the way.
    #[allow(dead_code)] // each test file takes what it needs
    pub fn run_to(&mut self, local: &str) -> String {
        let end = self.local(local);
        let mut heard = String::new();
        while let Some(next) = self.bells.iter().map(|(at, _)| *at).filter(|at| *at <= end).min() {
            self.now = self.now.max(next);
            let due: Vec<_> = self.bells.iter().filter(|(at, _)| *at <= self.now).cloned().collect();
            self.bells.retain(|(at, _)| *at > self.now);
            heard.push_str(&self.hear(None, What::Rang { bells: due }));
        }
        self.now = end;
        heard
    }

    /// A press in somebody's private chat about this room, as the engine routes it.
    #[allow(dead_code)] // each test file takes what it needs
    pub fn hear_privately(&mut self, who: &str, what: What) -> String {
        let by = Some(self.speaker(who));
        let heard = Heard { room: self.scene.room.id, kind: RoomKind::Private, by, for_group: false, what };
        self.turn(&heard)
    }

    /// Said to everyone in a group and not to the bot; how many messages come of it.
    #[allow(dead_code)] // each test file takes what it needs
    pub fn among(&mut self, who: &str, text: &str) -> usize {
        let before = self.said.len();
        self.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false });
        self.said.len() - before
    }

    /// What is said of it, by the ids of its lines and in words.
    #[allow(dead_code)] // each test file takes what it needs
    pub fn ids(&mut self, who: &str, text: &str, addressed: bool) -> (Vec<String>, String) {
        let from = self.said.len();
        let words = self.hear(Some(who), What::Said { text: text.into(), addressed, reply_to: None, edited: false });
        (self.said[from..].iter().flat_map(|say| say.text.iter().map(|text| text.id.to_string())).collect(), words)
    }

    /// One turn, its state kept, its messages rendered.
    pub fn hear(&mut self, who: Option<&str>, what: What) -> String {
        let by = who.map(|who| self.speaker(who));
        let heard = Heard { room: self.scene.room.id, kind: self.scene.room.kind, by, for_group: false, what };
        self.turn(&heard)
    }

    fn turn(&mut self, heard: &Heard) -> String {
        let turn = decide(&self.scene, heard, self.now);
        self.keep(&turn);
        let words = self.render(&turn);
        self.said.extend(turn.says);
        words
    }

    fn keep(&mut self, turn: &Turn) {
        if let Some(room) = &turn.room {
            self.scene.room = room.clone();
        }
        for person in &turn.people {
            self.scene.people.insert(person.id, person.clone());
        }
        if let Some(bells) = &turn.bells {
            self.bells = bells.iter().map(|bell| (bell.at, bell.kind.clone())).collect();
        }
    }

    fn render(&self, turn: &Turn) -> String {
        let mut out = String::new();
        for say in &turn.says {
            let mut taste = self.scene.room.taste.clone();
            taste.language = say.language.clone().or(taste.language);
            let reader = taste.reader(self.now);
            let to = match &say.to {
                To::Room(_) => String::new(),
                To::Person(person) => format!("(to {}) ", person.0),
                To::Press(_) => "(notice) ".into(),
            };
            let stamp = self.now.with_timezone(&self.zone).format("%a %H:%M");
            out.push_str(&format!("[{stamp}] {to}{:?}: {}\n", say.how, plain(&self.voice.render(&say.text, &reader))));
            for row in &say.buttons {
                let labels: Vec<String> =
                    row.iter().map(|button| format!("[{}]", self.voice.label(&button.label, &reader))).collect();
                out.push_str(&format!("    {}\n", labels.join(" ")));
            }
        }
        out
    }
}

/// A fresh bird planned for Thursday six o'clock in that language, over the heat since two, the clock at half past three.
#[allow(dead_code)] // each test file takes what it needs
pub fn over_heat(kind: RoomKind, tag: &str) -> Kitchen {
    let (plan, accept, on) = match tag {
        "es-ES" => (
            "/plan pavo fresco de 5 kg, ya lo tengo, cena el jueves a las 18:00, 8 personas, horno a 180, sin sal",
            "Aceptar",
            "el pavo ya está en el horno",
        ),
        "fr-FR" => (
            "/plan dinde fraîche de 5 kg, je l'ai déjà, repas jeudi à 18h, 8 personnes, four à 180, sans sel",
            "Accepter",
            "la dinde est dans le four",
        ),
        "de-DE" => (
            "/plan frische Pute 5 kg, haben wir schon, Essen Donnerstag um 18 Uhr, 8 Personen, Ofen auf 180, kein Salz",
            "Annehmen",
            "die Pute ist im Ofen",
        ),
        "it-IT" => (
            "/plan tacchino fresco 5 kg, ce l'abbiamo, cena giovedì alle 18, 8 persone, forno a 180, senza sale",
            "Accetta",
            "il tacchino è in forno",
        ),
        "pt-BR" => (
            "/plan peru fresco de 5 kg, já temos, ceia quinta às 18h, 8 pessoas, forno a 180, sem sal",
            "Aceitar",
            "o peru está no forno",
        ),
        _ => (
            "/plan 11 lb fresh turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 350, no salt",
            "Accept",
            "the turkey is in the oven",
        ),
    };
    let mut kitchen = Kitchen::new(kind, tag, chrono_tz::America::Chicago, "2027-11-24 10:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    kitchen.run_to("2027-11-25 14:00");
    kitchen.say("Ana", on);
    kitchen.run_to("2027-11-25 15:30");
    kitchen
}
