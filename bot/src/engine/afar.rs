//! What a group says in somebody's private chat, and what is said and pressed about it there. One person may have a part in several
//! groups' dinners: what stands there carries the group it is of, in its buttons and in the name it is known by.

use super::{DecideFn, Engine};
use crate::book::{BookError, Shelf, person_key};
use crate::room::{Heard, RoomId, RoomKind, Scene, To, Turn, What};
use chrono::{DateTime, Utc};

/// What goes before everything of `room` that stands in a private chat.
pub fn mark(room: RoomId) -> String {
    format!("r{}:", room.0)
}

/// `r<room>:rest` to its parts.
pub fn addressed(data: &str) -> Option<(RoomId, &str)> {
    let (room, rest) = data.strip_prefix('r')?.split_once(':')?;
    Some((RoomId(room.parse().ok()?), rest))
}

/// What a button or a message of `room` is called where it goes: in a private chat with its mark.
pub fn called(name: &str, to: &To, room: RoomId) -> String {
    let elsewhere = matches!(to, To::Person(person) if person.private_room() != room);
    match addressed(name) {
        None if elsewhere => format!("{}{name}", mark(room)),
        _ => name.to_owned(),
    }
}

/// The group the message replied to is of, its name without the mark from here on.
fn told_of(reply_to: &mut Option<String>) -> Option<RoomId> {
    let (room, rest) = addressed(reply_to.as_deref()?)?;
    *reply_to = Some(rest.to_owned());
    Some(room)
}

impl Engine {
    /// The group whose private call these words answer, or whose plan they are of. Who plans a bird of their own with the bot speaks of that one, unless
    /// they name another.
    pub(super) fn answered_from_afar(
        &self,
        heard: &mut Heard,
        now: DateTime<Utc>,
    ) -> Result<Option<RoomId>, BookError> {
        let told = match &mut heard.what {
            What::Said { reply_to, .. } => told_of(reply_to),
            _ => None,
        };
        let meant = self.meant_from_afar(heard, told, now)?;
        if let (Some(_), None, What::Said { reply_to, .. }) = (told, meant, &mut heard.what) {
            *reply_to = None; // nothing of this room's
        }
        Ok(meant)
    }

    /// What the group says to words its member's own chat made nothing of, with the scene it was decided in and the words as heard there.
    /// `None`: they have no part in exactly one dinner to come, plan one of their own, or the group makes no more of it.
    pub(super) fn otherwise(
        &self,
        heard: &Heard,
        here: &Turn,
        decide: DecideFn,
        as_of: DateTime<Utc>,
    ) -> Result<Option<(Scene, Heard, Turn)>, BookError> {
        let said = matches!(heard.what, What::Said { edited: false, .. });
        let (true, RoomKind::Private, Some(by)) = (said, heard.kind, &heard.by) else { return Ok(None) };
        if heard.room != by.id.private_room() || !crate::room::is_lost(here) {
            return Ok(None);
        }
        let own = self.drafted.room(heard.room)?;
        if own.is_some_and(|own| own.plan.is_some() || own.drafts.contains_key(&by.id)) {
            return Ok(None);
        }
        let Some(person) = self.drafted.person(by.id)? else { return Ok(None) };
        let mut groups = Vec::new();
        for group in [person.called_from, person.shares_in].into_iter().flatten() {
            let room = self.drafted.room(self.drafted.now_at(group)?)?;
            groups.extend(room.filter(|room| crate::room::has_part(room, &person, as_of)).map(|room| room.id));
        }
        groups.dedup();
        let [group] = groups.as_slice() else { return Ok(None) };
        let mut there = heard.clone();
        there.room = *group;
        there.by.iter_mut().for_each(|by| by.admin = false);
        let scene = self.scene(&there)?;
        let turn = decide(&scene, &there, as_of);
        Ok(crate::room::is_found(here, &turn).then_some((scene, there, turn)))
    }

    fn meant_from_afar(
        &self,
        heard: &Heard,
        told: Option<RoomId>,
        now: DateTime<Utc>,
    ) -> Result<Option<RoomId>, BookError> {
        let (What::Said { edited: false, .. }, RoomKind::Private, Some(by)) = (&heard.what, heard.kind, &heard.by)
        else {
            return Ok(None);
        };
        let person = match self.draft.has(Shelf::People, &person_key(by.id)) {
            true => self.drafted.person(by.id)?, // an earlier turn of the batch has changed them
            false => self.acquaintance(by.id)?,
        };
        let Some(person) = person.filter(|_| heard.room == by.id.private_room()) else {
            return Ok(None);
        };
        if let Some(group) = told {
            // What is replied to says which group is meant, whatever else they cook.
            let room = self.drafted.room(self.drafted.now_at(group)?)?;
            let meant = room.filter(|room| crate::room::is_answered(room, &person, &heard.what, now));
            return Ok(meant.map(|room| room.id));
        }
        if person.called_from.is_none() && person.shares_in.is_none() {
            return Ok(None);
        }
        let own = self.drafted.room(heard.room)?;
        if own.as_ref().is_some_and(|own| own.drafts.contains_key(&by.id)) {
            return Ok(None);
        }
        let own = own.filter(|own| own.plan.is_some());
        for group in [person.called_from, person.shares_in].into_iter().flatten() {
            let Some(room) = self.drafted.room(self.drafted.now_at(group)?)? else { continue };
            let meant = match &own {
                Some(own) => {
                    let mut owners = Vec::new();
                    for plan in room.plans() {
                        owners.extend(self.drafted.person(plan.host)?);
                    }
                    crate::room::is_of_a_groups_bird(&room, own, &owners, &person, &heard.what, now)
                }
                None => crate::room::is_answered(&room, &person, &heard.what, now),
            };
            if meant {
                return Ok(Some(room.id));
            }
        }
        Ok(None)
    }
}
