//! Who does which job, said in words: "ben salts, dee carves", "I'll do salt and carving", "can someone else carve?".
//!
//! Whoever is named is asked, as with `/take JOB NAME` (`hands`); whoever speaks for themselves has the job; what is passed on is
//! offered to the others (`stepping_down`). Among people only what can mean nothing else is heard.

use super::action::JobRef;
use super::sitting::name;
use super::turn::How;
use super::{PersonId, RoomKind, Sitting, hands, jobs, may, stepping_down};
use crate::reading::{self, Share, Whose, fold};
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;

/// `false`: the words share out nothing that is planned.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    if sitting.room.kind != RoomKind::Group || sitting.room.plan.is_none() {
        return false;
    }
    given(sitting, text, addressed) || volunteered(sitting, text, addressed) || passed_on(sitting, text, addressed)
}

/// "Ben salts and dee carves": each of them is asked. One job given to one is heard among people from whoever may decide, and of a job
/// nobody has from anyone.
fn given(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let members = sitting.room.members.clone();
    let names: Vec<Vec<String>> = members.iter().map(|member| goes_by(sitting, *member)).collect();
    let Some(shares) = reading::read_shares(text, &names, sitting.lexicon()) else { return false };
    // Nobody has it, and whoever is named is asked: that may come from anyone.
    let free = |share: &Share| {
        share.does && jobs::by_step(sitting, share.step, None).is_some_and(|it| owner(sitting, it).is_none())
    };
    let does = shares.iter().all(|share| share.does);
    let sure = shares.len() > 1 || does && may::steer(sitting) || shares.iter().all(free);
    let plain = |share: &Share| share.plain || matches!(share.step, Step::Travel | Step::Fire) && free(share);
    if !(addressed || sure && shares.iter().all(plain)) {
        return false;
    }
    let planned = |share: Share| Some((jobs::by_step(sitting, share.step, None)?, share.whose));
    let shares: Vec<(JobRef, Whose)> = shares.into_iter().filter_map(planned).collect();
    if shares.is_empty() {
        return false;
    }
    let from = sitting.says.len();
    for (it, whose) in shares {
        match whose {
            Whose::Mine => jobs::take(sitting, it),
            Whose::Named(at) => match members.get(at) {
                // They have it, and all has been said.
                Some(person) if owner(sitting, it) == Some(*person) && !addressed => {}
                Some(person) => hands::ask(sitting, it, *person),
                None => {}
            },
            Whose::Stranger(told) => unknown(sitting, &as_written(text, &told)),
        }
    }
    together(sitting, from);
    true
}

/// "I'll carve", "I'll do salt and carving": theirs, as if taken with a button.
///
/// What people say to each other counts where the words can't mean anything else: "I'll check" may be about anything.
fn volunteered(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let taken = reading::read_takings(text, sitting.lexicon());
    if taken.is_empty() || !(addressed || taken.iter().all(|(_, plain)| *plain)) {
        return false;
    }
    let planned: Vec<JobRef> = taken.into_iter().filter_map(|(step, _)| jobs::by_step(sitting, step, None)).collect();
    if planned.is_empty() {
        return false;
    }
    let from = sitting.says.len();
    for it in planned {
        jobs::take(sitting, it);
    }
    together(sitting, from);
    true
}

/// The first job [`volunteered`] takes for the speaker, if it does.
pub(super) fn volunteers(sitting: &Sitting<'_>, text: &str, addressed: bool) -> Option<Step> {
    let taken = reading::read_takings(text, sitting.lexicon());
    let sure = addressed || taken.iter().all(|(_, plain)| *plain);
    taken.first().map(|(step, _)| *step).filter(|_| sure && sitting.room.kind == RoomKind::Group)
}

/// "Can someone else carve?": one's own is free again and offered; of another's it is said who has it.
fn passed_on(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some((step, plain)) = reading::asks_for_another(text, sitting.lexicon()) else { return false };
    let Some(it) = jobs::by_step(sitting, step, None) else { return false };
    let own = owner(sitting, it).filter(|owner| Some(*owner) == sitting.speaker());
    // "Can someone drive?" may be of anyone who needs a lift.
    if !(addressed || plain && (step != Step::Travel || own.is_some())) {
        return false;
    }
    match own {
        Some(who) => stepping_down::let_go(sitting, who, step),
        None => jobs::who_has(sitting, it),
    }
}

/// Somebody of that name has not spoken here: said with who has.
pub(super) fn unknown(sitting: &mut Sitting<'_>, told: &str) {
    let known: Vec<Text> = sitting
        .room
        .members
        .iter()
        .map(|member| Text::new("sharing-name").with("name", name(sitting, *member)))
        .collect();
    let text =
        Text::new("sharing-give-unknown").with("name", Arg::Verbatim(told.to_owned())).with("known", Arg::List(known));
    sitting.answer(text);
}

/// "/take on Cal": the name in it that nobody here has. `None`: every word is one of a job or of somebody here.
pub(super) fn stranger(sitting: &Sitting<'_>, text: &str) -> Option<String> {
    let plan = sitting.room.plan.as_ref().filter(|_| sitting.room.kind == RoomKind::Group)?;
    if let Some(handle) = foreign_handle(sitting, text) {
        return Some(handle.to_owned());
    }
    let dishes = plan.wish.dishes.iter().flatten().map(|dish| dish.name.as_str());
    let people = sitting.room.members.iter().filter_map(|member| sitting.people.get(member));
    let names: Vec<String> = people.map(|person| person.name.clone()).collect();
    let own: Vec<String> = dishes
        .chain(names.iter().map(String::as_str))
        .flat_map(|name| sitting.lexicon().talk_words(name).to_vec())
        .collect();
    reading::stranger(text, &own, sitting.lexicon()).map(str::to_owned)
}

/// `@nobody_here`: a handle is no word, whatever it is made of.
fn foreign_handle<'t>(sitting: &Sitting<'_>, text: &'t str) -> Option<&'t str> {
    let handles = text.split_whitespace().filter_map(|word| word.strip_prefix('@'));
    let mut handles = handles.map(|handle| handle.trim_end_matches(|c: char| !c.is_alphanumeric() && c != '_'));
    let known = |handle: &str| sitting.room.members.iter().any(|who| goes_by(sitting, *who).contains(&fold(handle)));
    handles.find(|handle| !handle.is_empty() && !known(handle))
}

/// What a person goes by: the first part of their name, and their handle.
fn goes_by(sitting: &Sitting<'_>, person: PersonId) -> Vec<String> {
    let Some(person) = sitting.people.get(&person) else { return Vec::new() };
    let first = sitting.lexicon().talk_words(&person.name).first().cloned();
    first.into_iter().chain(person.username.as_deref().map(fold)).collect()
}

fn owner(sitting: &Sitting<'_>, it: JobRef) -> Option<PersonId> {
    sitting.room.plan.as_ref()?.job(it.step, it.nth)?.owner
}

/// The word of the text that was folded to `told`.
fn as_written(text: &str, told: &str) -> String {
    let mut words = text.split(|c: char| !c.is_alphanumeric());
    words.find(|word| fold(word) == told).unwrap_or(told).to_owned()
}

/// What was said of several jobs to the same people is one message.
fn together(sitting: &mut Sitting<'_>, from: usize) {
    let mut joined: Vec<super::turn::Say> = Vec::new();
    for say in sitting.says.split_off(from.min(sitting.says.len())) {
        let plain = |say: &super::turn::Say| say.key.is_none() && say.how == How::New && say.step.is_none();
        let same = joined.iter_mut().find(|other| plain(other) && plain(&say) && other.to == say.to);
        match same {
            Some(other) => {
                let lines: Vec<Text> = say.text.into_iter().filter(|line| !other.text.contains(line)).collect();
                other.text.extend(lines);
                other.buttons.extend(say.buttons);
            }
            None => joined.push(say),
        }
    }
    sitting.says.extend(joined);
}
