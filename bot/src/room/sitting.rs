//! One turn in the making: the state being changed and the messages said so far.
//!
//! Everything in `room` works on a [`Sitting`]; [`Sitting::rise`] closes it into a [`Turn`]. Front ends never see it.

use super::action::Action;
use super::birds::{self, Hand};
use super::heard::{Heard, PersonId, RoomId, RoomKind};
use super::state::{Person, Room, Taste};
use super::tongue::{self, Tongue};
use super::turn::{Button, Forget, How, Say, To, Turn, Urgency};
use super::{Scene, What};
use crate::ask::usual_grain;
use crate::reading::{Ground, Lexicon};
use crate::words::{Arg, Reader, Text, UnitSystem};
use carvetime_core::plan::Moment;
use carvetime_core::salt::Grain;
use chrono_tz::Tz;
use std::collections::{BTreeMap, BTreeSet};

/// A turn in the making.
pub(super) struct Sitting<'a> {
    pub heard: &'a Heard,
    pub now: Moment,
    pub room: Room,
    pub people: BTreeMap<PersonId, Person>,
    pub says: Vec<Say>,
    pub forget: Option<Forget>,
    pub moved: Option<RoomId>,
    /// Chance not yet used this turn; see [`Scene::chance`].
    pub chance: u128,
    /// The plan in hand, as its messages are marked.
    pub hand: Hand,
    /// The turn is about the plan in hand; its messages are marked.
    pub about: bool,
    /// Messages of plans that were in hand before.
    pub sealed: Vec<Say>,
    /// The speaker's own language, while this turn's words are in it.
    pub tongue: Option<Tongue>,
    pub(super) before: &'a Scene,
    touched: BTreeSet<PersonId>,
}

impl<'a> Sitting<'a> {
    pub fn new(scene: &'a Scene, heard: &'a Heard, now: Moment) -> Self {
        let mut sitting = Self {
            heard,
            now,
            room: scene.room.clone(),
            people: scene.people.clone(),
            says: Vec::new(),
            forget: None,
            moved: None,
            chance: scene.chance,
            hand: Hand::default(),
            about: false,
            sealed: Vec::new(),
            tongue: None,
            before: scene,
            touched: BTreeSet::new(),
        };
        sitting.look_at_hand();
        sitting.meet();
        if let Some(host) = sitting.room.plan.as_ref().map(|plan| plan.host) {
            sitting.keeps_clock_of(host);
        }
        sitting
    }

    /// A room without a clock of its own goes by that of whoever plans in it, from then on: what is said to everyone, and what rings with
    /// nobody speaking, has to go by one. `true`: it has just begun to.
    pub fn keeps_clock_of(&mut self, person: PersonId) -> bool {
        let zone = || self.people.get(&person)?.taste.zone.clone();
        let Some(zone) = zone().filter(|_| self.room.taste.zone.is_none()) else { return false };
        self.room.taste.zone = Some(zone);
        true
    }

    /// Notes who speaks: name, language, membership.
    fn meet(&mut self) {
        let Some(speaker) = &self.heard.by else { return };
        let id = speaker.id;
        let mut person = self.people.get(&id).cloned().unwrap_or_else(|| Person::new(speaker));
        person.name = speaker.name.clone();
        person.username = speaker.username.clone();
        if person.taste.language.is_none() {
            person.taste.language = speaker.language.clone();
        }
        if self.heard.kind == RoomKind::Private && self.heard.room == id.private_room() {
            person.reachable = true;
        }
        let heard = matches!(self.heard.what, What::Said { .. } | What::Pressed { .. }) && !self.routed();
        let heard = heard && speaker.inside != Some(false);
        if heard && self.room.kind == RoomKind::Group && (self.room.plan.is_some() || person.shares_in.is_none()) {
            person.shares_in = Some(self.room.id);
        }
        if self.people.get(&id) != Some(&person) {
            self.people.insert(id, person.clone());
            self.touched.insert(id);
        }
        if self.routed() {
            // Whoever presses elsewhere is no member for it.
            return;
        }
        // Anyone can press what stands in public.
        let outside = self.room.left.contains(&id) || speaker.inside == Some(false);
        if matches!(self.heard.what, What::Pressed { .. }) && outside {
            return;
        }
        self.room.left.retain(|left| *left != id); // whoever speaks here is here
        if self.room.admit(id) {
            // Kept from now on, even if nothing about them is new to this turn: the others see their name.
            self.touched.insert(id);
        }
        if self.room.taste.language.is_none() {
            self.room.taste.language = person.taste.language;
        }
        if !matches!(self.heard.what, What::Removed) {
            self.room.gone = false;
        }
    }

    /// The press came from another chat than the room it concerns.
    pub fn routed(&self) -> bool {
        self.heard.kind == RoomKind::Private && self.room.kind == RoomKind::Group
    }

    pub fn speaker(&self) -> Option<PersonId> {
        self.heard.by.as_ref().map(|speaker| speaker.id)
    }

    pub fn name_of(&self, person: PersonId) -> String {
        self.people.get(&person).map(|person| person.name.clone()).unwrap_or_default()
    }

    /// Changes a person; the change is stored with the turn.
    pub fn change_person(&mut self, id: PersonId, change: impl FnOnce(&mut Person)) {
        if let Some(person) = self.people.get_mut(&id) {
            change(person);
            self.touched.insert(id);
        }
    }

    /// Whose settings a private or group room goes by: the room's own first, then the speaker's.
    pub fn taste(&self) -> Taste {
        let room = &self.room.taste;
        let taste = self.speaking().map_or_else(|| room.clone(), |person| room.or(&person.taste));
        Taste { language: self.language().map(str::to_owned), ..taste }
    }

    /// The language of [`Self::taste`].
    fn language(&self) -> Option<&str> {
        let rooms = self.room.taste.language.as_deref();
        let Some(person) = self.speaking() else { return rooms };
        let persons = person.taste.language.as_deref();
        // Privately people are spoken to, and answer, in their own language.
        if self.routed() {
            return persons.or(rooms);
        }
        self.tongue.as_ref().map(|tongue| tongue.language.as_str()).or(rooms).or(persons)
    }

    /// What is known of the speaker.
    fn speaking(&self) -> Option<&Person> {
        self.speaker().and_then(|id| self.people.get(&id))
    }

    /// The kitchen's zone, where it is known.
    pub fn zone(&self) -> Option<Tz> {
        let persons = || self.speaking()?.taste.zone.as_deref();
        self.room.taste.zone.as_deref().or_else(persons)?.parse().ok()
    }

    /// The kitchen's zone, or UTC for what does not hang on it.
    pub fn zone_or_utc(&self) -> Tz {
        self.zone().unwrap_or(Tz::UTC)
    }

    pub fn lexicon(&self) -> &'static Lexicon {
        Lexicon::of(self.language().unwrap_or("en"))
    }

    /// How the room is spoken to.
    pub fn reader(&self) -> Reader {
        let persons = self.speaking().map(|person| &person.taste);
        self.room.taste.reader_before(persons, self.language(), self.now)
    }

    /// What the readers of text stand on here.
    pub fn ground(&self) -> Ground {
        let reader = self.reader();
        Ground::new(&reader.locale, reader.units != UnitSystem::Us, reader.zone, reader.now)
    }

    /// The salt reckoned with for those who have told of none: the one usual where they cook.
    pub fn usual_salt(&self) -> Grain {
        usual_grain(self.us_units())
    }

    pub fn us_units(&self) -> bool {
        self.reader().units == UnitSystem::Us
    }

    // ---- saying things

    /// An answer into the room.
    pub fn answer(&mut self, text: Text) -> &mut Say {
        self.say(Say::new(To::Room(self.room.id), text))
    }

    /// An answer of several paragraphs into the room.
    pub fn answer_all(&mut self, text: Vec<Text>) -> &mut Say {
        self.say(Say::of(To::Room(self.room.id), text))
    }

    /// A notice that only the presser sees; where nobody pressed, an answer into the room.
    pub fn notice(&mut self, text: Text) {
        self.notice_all(vec![text]);
    }

    /// The same, of several paragraphs.
    pub fn notice_all(&mut self, text: Vec<Text>) {
        match &self.heard.what {
            super::What::Pressed { press, .. } => {
                let to = To::Press(press.clone());
                self.say(Say::of(to, text));
            }
            _ => match self.typed_by_reachable() {
                Some(who) => {
                    let text = super::calls::from(self).into_iter().chain(text).collect();
                    self.say(Say::of(To::Person(who), text));
                }
                None => {
                    self.answer_all(text);
                }
            },
        }
    }

    /// Who typed in a group and has the private chat open: what concerns them alone is no news to the others.
    fn typed_by_reachable(&self) -> Option<PersonId> {
        let who = self.speaker().filter(|_| self.room.kind == RoomKind::Group && !self.routed())?;
        self.people.get(&who).is_some_and(|person| person.reachable).then_some(who)
    }

    pub fn say(&mut self, say: Say) -> &mut Say {
        let at = self.says.len();
        self.says.push(say);
        &mut self.says[at]
    }

    /// A button in someone's private chat must find its way back to this room.
    fn address_private_buttons(&mut self) {
        let here = self.room.id;
        for say in &mut self.says {
            if matches!(say.to, To::Person(person) if person.private_room() != here) {
                for button in say.buttons.iter_mut().flatten() {
                    button.data = format!("r{}:{}", here.0, button.data);
                }
            }
        }
    }

    /// What reaches somebody in their quiet hours makes no sound. Whom a call may wake is the ladder's to say, and safety wakes anyone.
    fn hush(&mut self) {
        let speaker = self.speaker();
        let calls = |key: &Option<String>| key.as_ref().is_some_and(|key| key.starts_with(super::calls::KEY));
        let wakes = |say: &Say| say.urgency == Urgency::Safety || calls(&say.key);
        for at in 0..self.says.len() {
            let Some(say) = self.says.get(at).filter(|say| say.how == How::New && !wakes(say)) else { continue };
            let To::Person(who) = say.to else { continue };
            let asleep = Some(who) != speaker && super::ladder::quiet_until(self, who, self.now).is_some();
            if let Some(say) = self.says.get_mut(at).filter(|_| asleep) {
                say.how = How::Quiet;
            }
        }
    }

    /// Closes the sitting.
    pub fn rise(mut self) -> Turn {
        self.seal();
        self.says = std::mem::take(&mut self.sealed);
        tongue::mark(&mut self);
        if let (true, super::What::Said { text, .. }, Some(who)) = (self.routed(), &self.heard.what, self.speaker())
            && super::payload(text).is_none()
        {
            self.answer_privately(who);
        }
        self.hush();
        super::retracted::note(&mut self);
        super::offered::note(&mut self);
        self.address_private_buttons();
        self.room.put_in_order();
        self.room.keep_few();
        let people = self.touched.iter().filter_map(|id| self.people.get(id).cloned()).collect();
        let changed = self.room != self.before.room;
        let bells = changed.then(|| birds::bells(&self.room, self.now));
        Turn {
            bells,
            room: changed.then_some(self.room),
            people,
            says: self.says,
            moved: self.moved,
            forget: self.forget,
        }
    }
}

impl Say {
    pub(super) fn key(&mut self, key: impl Into<String>) -> &mut Self {
        self.key = Some(key.into());
        self
    }

    pub(super) fn how(&mut self, how: How) -> &mut Self {
        self.how = how;
        self
    }

    pub(super) fn line(&mut self, text: Text) -> &mut Self {
        self.text.push(text);
        self
    }

    pub(super) fn lines(&mut self, texts: impl IntoIterator<Item = Text>) -> &mut Self {
        self.text.extend(texts);
        self
    }

    pub(super) fn row(&mut self, buttons: impl IntoIterator<Item = Button>) -> &mut Self {
        let row: Vec<Button> = buttons.into_iter().collect();
        if !row.is_empty() {
            self.buttons.push(row);
        }
        self
    }

    pub(super) fn urgency(&mut self, urgency: Urgency) -> &mut Self {
        self.urgency = urgency;
        self
    }
}

/// A button with a plain label.
pub(super) fn button(label: &'static str, action: &Action) -> Button {
    labelled(Text::new(label), action)
}

/// A button with any label.
pub(super) fn labelled(label: Text, action: &Action) -> Button {
    Button { label, data: action.data() }
}

/// A person's name as an argument.
pub(super) fn name(sitting: &Sitting<'_>, person: PersonId) -> Arg {
    Arg::Verbatim(sitting.name_of(person))
}

/// The same where room is short: on the board, on a button.
pub(super) fn short_name(sitting: &Sitting<'_>, person: PersonId) -> Arg {
    Arg::Verbatim(shortened(&sitting.name_of(person)))
}

/// As many words as fit; if not even one does, its beginning.
fn shortened(name: &str) -> String {
    const LONGEST: usize = 20;
    if name.chars().count() <= LONGEST {
        return name.to_owned();
    }
    let mut short: String = name.chars().take(LONGEST).collect();
    if let Some((words, _)) = short.rsplit_once(char::is_whitespace) {
        short = words.trim_end().to_owned();
    } else {
        short.pop();
    }
    short + "…"
}

#[cfg(test)]
mod tests {
    use super::shortened;

    #[test]
    fn a_long_name_is_cut_after_a_word_that_fits() {
        for (name, short) in [
            ("Rosa", "Rosa"),
            ("Wilhelmina Feather", "Wilhelmina Feather"),
            ("A rather long name for a cook", "A rather long name…"),
            ("Bartholomew-Maximilian von und zu", "Bartholomew-Maximil…"),
            ("👨‍👩‍👧‍👦", "👨‍👩‍👧‍👦"),
        ] {
            assert_eq!(shortened(name), short);
        }
    }
}
