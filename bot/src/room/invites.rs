//! Ways into the private chat: a link that one person follows once, so that calls for them reach them there.
//!
//! The link carries the room's number and a secret of 128 bits. It is good for two days and for one person; following it again does
//! nothing more. It lets in whoever is in the group: links are forwarded, and one alone proves nothing. Where the platform does not say
//! who is in the group, only those heard in it are let in; the others press a button there first. The room keeps a hash of the secret
//! only: who reads the book has no way in.

use super::state::Invite;
use super::turn::{Button, Say, To};
use super::{PersonId, RoomId, RoomKind, Sitting, calls, plan_words};
use crate::words::{Arg, Text};
use chrono::TimeDelta;
use serde::{Deserialize, Deserializer};
use sha2::{Digest, Sha256};

/// What the data of a button begins with that opens the private chat instead of being pressed.
pub const LINK: &str = "start:";

/// How long a link is good.
const GOOD_FOR: TimeDelta = TimeDelta::hours(48);
/// As many links as a room remembers.
const MOST: usize = 40;
/// Length of a link's payload: the room's number and the secret in hexadecimal.
const LENGTH: usize = 48;

/// What a hash begins with: no secret does.
const HASHED: &str = "sha256:";

/// What is kept of a secret. One of 128 random bits needs no salt and no slow hash.
fn hash(secret: &str) -> String {
    Sha256::digest(secret.as_bytes()).iter().fold(HASHED.to_owned(), |text, byte| format!("{text}{byte:02x}"))
}

/// Reads what is kept of a secret; earlier versions kept it as it was.
pub(super) fn hashed<'de, D: Deserializer<'de>>(deserializer: D) -> Result<String, D::Error> {
    let kept = String::deserialize(deserializer)?;
    Ok(if kept.starts_with(HASHED) { kept } else { hash(&kept) })
}

/// The room and the secret of "/start PAYLOAD".
pub fn payload(text: &str) -> Option<(RoomId, &str)> {
    let (command, payload) = text.trim().split_once(char::is_whitespace)?;
    command.eq_ignore_ascii_case("/start").then(|| read(payload.trim())).flatten()
}

/// The room a payload speaks of and the secret in it. Both may be made up.
fn read(payload: &str) -> Option<(RoomId, &str)> {
    let plain = payload.len() == LENGTH && payload.bytes().all(|byte| byte.is_ascii_hexdigit());
    let (room, secret) = payload.split_at_checked(16).filter(|_| plain)?;
    Some((RoomId(u64::from_str_radix(room, 16).ok()?.cast_signed()), secret))
}

/// A button that takes whoever follows it to the private chat. `None`: there is no chance to make it of, or one was made this turn.
pub(super) fn button(sitting: &mut Sitting<'_>) -> Option<Button> {
    if sitting.room.kind != RoomKind::Group || sitting.chance == 0 {
        return None;
    }
    let secret = format!("{:032x}", std::mem::take(&mut sitting.chance));
    let (now, room) = (sitting.now, sitting.room.id);
    let invites = &mut sitting.room.invites;
    invites.retain(|invite| invite.until > now);
    let beyond = (invites.len() + 1).saturating_sub(MOST);
    invites.drain(..beyond);
    invites.push(Invite { hash: hash(&secret), until: now + GOOD_FOR, used: None });
    let data = format!("{LINK}{:016x}{secret}", room.0.cast_unsigned());
    Some(Button { label: Text::new("sharing-button-private"), data })
}

/// Someone has followed a link to this room.
pub(super) fn followed(sitting: &mut Sitting<'_>, secret: &str) {
    let Some(who) = sitting.speaker() else { return };
    let now = sitting.now;
    let hash = hash(secret);
    let member = sitting.room.members.contains(&who).then_some(true);
    let inside = sitting.heard.by.as_ref().and_then(|by| by.inside).or(member);
    let to = To::Person(who);
    let invite = sitting.room.invites.iter_mut().find(|invite| invite.hash == hash);
    let open = |invite: &Invite| invite.used == Some(who) || invite.used.is_none() && invite.until > now;
    let Some(invite) = invite.filter(|invite| open(invite)) else {
        sitting.say(Say::new(to, Text::new("sharing-link-over")));
        return;
    };
    match inside {
        Some(true) => invite.used = Some(who),
        // The link stays good for whom it was made.
        Some(false) => {
            sitting.say(Say::new(to, Text::new("sharing-link-outside")));
            return;
        }
        None => {
            sitting.say(Say::new(to, Text::new("sharing-link-unsure")));
            return;
        }
    }
    let here = sitting.room.id;
    sitting.change_person(who, |person| {
        person.reachable = true;
        person.shares_in = Some(here);
    });
    sitting.room.admit(who);
    let mut lines = vec![match sitting.room.title.clone() {
        Some(title) => Text::new("sharing-link-titled").with("title", Arg::Verbatim(title)),
        None => Text::new("sharing-link"),
    }];
    lines.extend(calls::from(sitting).filter(|_| sitting.room.title.is_none()));
    lines.extend(own_jobs(sitting, who));
    sitting.say(Say::of(to, lines));
}

/// What they have taken so far.
pub(super) fn own_jobs(sitting: &Sitting<'_>, who: PersonId) -> Vec<Text> {
    const MOST_JOBS: usize = 6;
    let plans = sitting.room.plans();
    let jobs = plans.iter().flat_map(|plan| plan.waiting()).filter(|job| job.owner == Some(who));
    jobs.filter_map(|job| {
        let what = Arg::from(plan_words::step_name(job.step()?, job.nth));
        Some(Text::new("sharing-link-job").with("when", Arg::DayClock(job.at)).with("what", what))
    })
    .take(MOST_JOBS)
    .collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn what_an_earlier_version_kept_as_it_was_becomes_its_hash() {
        // The example in FIPS 180-2, appendix B.1.
        let abc = "sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        let kept = r#"{"secret":"abc","until":"2027-11-25T17:00:00Z","used":null}"#;
        let invite: Invite = serde_json::from_str(kept).unwrap();
        assert_eq!(invite.hash, abc);
        let written = serde_json::to_string(&invite).unwrap();
        assert!(!written.contains(r#""abc""#) && written.contains(abc), "{written}");
        assert_eq!(serde_json::from_str::<Invite>(&written).unwrap(), invite);
    }

    #[test]
    fn a_payload_is_read_back_and_made_up_ones_are_not() {
        let payload = format!("{:016x}{:032x}", (-1_002_003_004_005_i64).cast_unsigned(), u128::MAX);
        assert!(payload.len() <= 64);
        assert_eq!(read(&payload), Some((RoomId(-1_002_003_004_005), "f".repeat(32).as_str())));
        for made_up in ["", "plan", &"g".repeat(LENGTH), &"0".repeat(LENGTH - 1), &"é".repeat(LENGTH / 2)] {
            assert_eq!(read(made_up), None, "{made_up}");
        }
    }
}
