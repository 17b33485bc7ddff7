//! Two clocks: what happens at the other house is told by that house's clock, with its name, where it differs.

use super::state::{LivePlan, Room};
use super::turn::{FileContent, Say};
use super::{PersonId, RoomKind, Sitting, amend};
use crate::reading::sentence::{Sentence, What};
use crate::reading::{Ground, There, Wish, fold};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step, spans};
use chrono::{Offset, TimeDelta};
use chrono_tz::Tz;

/// The other house as the plan stands, and as it stood before this turn.
struct Clocks {
    is: Option<House>,
    was: Option<House>,
}

/// The other house: from when on its clock counts, and which it is.
#[derive(Clone)]
struct House {
    from: Moment,
    zone: Tz,
    place: String,
    kitchen: Tz,
}

impl Sitting<'_> {
    /// The ground on which a dinner's hour is read: the clock of the table.
    pub(super) fn table_ground(&self) -> Ground {
        let ground = self.ground();
        self.room.plan.as_ref().map_or(ground, |plan| plan.wish.table_ground(&ground))
    }

    /// Turns times at the other house into that house's, in what is said of the plan in hand or of a draft.
    pub(super) fn tell_by_the_table(&self, say: &mut Say) {
        let kitchen = self.zone_or_utc();
        let (wish, plan) = wish_of(&self.room, self.speaker(), say);
        let stood = self.before.room.plans().into_iter().find(|old| Some(old.serial) == plan.map(|plan| plan.serial));
        let clocks = Clocks {
            is: wish.and_then(|wish| house(wish, plan, kitchen)),
            was: stood.and_then(|old| house(&old.wish, Some(old), kitchen)),
        };
        if clocks.is.is_none() && clocks.was.is_none() {
            return;
        }
        let labels = say.buttons.iter_mut().flatten().map(|button| &mut button.label);
        say.text.iter_mut().chain(labels).for_each(|text| tell(text, &clocks));
        if let Some(FileContent::Calendar(calendar)) = say.file.as_mut().map(|file| &mut file.content) {
            for event in &mut calendar.events {
                tell(&mut event.summary, &clocks);
                event.description.iter_mut().for_each(|text| tell(text, &clocks));
            }
        }
        if let Some(FileContent::Sheet(sheet)) = say.file.as_mut().map(|file| &mut file.content) {
            sheet.texts().for_each(|text| tell(text, &clocks));
        }
    }
}

/// "Dinner is at my sister's in Denver, 3 h drive", to everyone: of the dinner that stands, whoever tells of it. `false`: nothing of the kind.
pub(super) fn overheard(sitting: &mut Sitting<'_>, text: &str, wish: &Wish) -> bool {
    let Some(plan) = sitting.room.plan.as_ref().filter(|_| sitting.room.kind == RoomKind::Group) else { return false };
    let sentence = Sentence::read(text, sitting.lexicon());
    let meal = (0..sentence.len()).any(|at| sentence.of(at, "meal-").is_some());
    let away = wish.there.is_some() || wish.home_clock || wish.elsewhere == Some(true) && wish.drive_min.is_some();
    if !meal || !away || text.len() > amend::SHORT || text.contains(['?', '¿']) {
        return false;
    }
    // "Dinner at my sister's in Denver was great" says nothing of this one.
    let place = wish.there.as_ref().map(|there| fold(&there.place)).unwrap_or_default();
    let known = |word: &str| amend::is_empty(sitting, word) || place.split_whitespace().any(|part| part == word);
    let unknown = |at: &usize| matches!(sentence.item(*at).map(|item| &item.what), Some(What::Word([])));
    let plain = (0..sentence.len()).filter(unknown).all(|at| known(&fold(sentence.raw(at))));
    if !plain && wish.drive_min.is_none() {
        return false;
    }
    let date = |at: Moment| at.with_timezone(&sitting.zone_or_utc()).date_naive();
    let told = wish.dinner.map(date).or(wish.dinner_day);
    if told.is_some() && told != plan.wish.dinner.map(date) {
        return false;
    }
    let Wish { dinner, dinner_day, dinner_hour, elsewhere, drive_min, hot, there, home_clock, .. } = wish.clone();
    let place = Wish { elsewhere, drive_min, hot, there, home_clock, ..Wish::default() };
    let place = Wish { dinner, dinner_day, dinner_hour, ..place };
    let mut changed = plan.wish.clone();
    changed.merge_at(place, &sitting.ground());
    changed.settle(&sitting.ground());
    amend::to(sitting, text, changed, false)
}

/// What would be changed, by the clock it would then be told by.
pub(super) fn by_its_clock(mut news: Vec<Text>, wish: &Wish, kitchen: Tz) -> Vec<Text> {
    let house = house(wish, None, kitchen);
    news.iter_mut().for_each(|text| tell(text, &Clocks { is: house.clone(), was: None }));
    news
}

/// The hour was told before the place, and is the place's now: both as they are there, for whoever meant the other.
pub(super) fn whose_hour(wish: &Wish) -> Option<Text> {
    let there = wish.there.as_ref()?;
    let (zone, dinner, home) = (there.zone()?, wish.dinner?, wish.by_home?);
    let at = |at| Arg::There(at, zone, there.place.clone());
    Some(Text::new("room-hour-there").with("there", at(dinner)).with("home", at(home)))
}

fn wish_of<'a>(room: &'a Room, speaker: Option<PersonId>, say: &Say) -> (Option<&'a Wish>, Option<&'a LivePlan>) {
    let drafted = say.key.as_deref().is_some_and(|key| key.starts_with("draft-"));
    match speaker.and_then(|who| room.drafts.get(&who)) {
        Some(draft) if drafted || room.plan.is_none() => (Some(draft.suggestion.as_ref().unwrap_or(&draft.wish)), None),
        _ => (room.plan.as_ref().map(|plan| &plan.wish), room.plan.as_ref()),
    }
}

/// The dinner and what leads up to it there. A plan that stands knows better: from leaving on.
fn house(wish: &Wish, plan: Option<&LivePlan>, kitchen: Tz) -> Option<House> {
    let there = wish.there.as_ref()?;
    let last = if wish.hot == Some(true) { spans::CARVING } else { spans::REHEATING };
    let before = if wish.elsewhere == Some(true) { last + spans::UNPACKING } else { TimeDelta::zero() };
    let from = wish.dinner? - before;
    let left = plan.and_then(|plan| plan.job(Step::Travel, 0)).map(|leave| leave.at + TimeDelta::minutes(1));
    let from = left.map_or(from, |left| from.min(left));
    Some(House { from, zone: There::zone(there)?, place: there.place.clone(), kitchen })
}

/// Each time by the clock of its house; what was, by the house it was in.
fn tell(text: &mut Text, clocks: &Clocks) {
    let undone = matches!(text.id.as_ref(), "room-undone" | "room-undone-by");
    for (name, arg) in &mut text.args {
        let was = *name == "was" || undone && *name == "what";
        let clocks = if was { &Clocks { is: clocks.was.clone(), was: clocks.was.clone() } } else { clocks };
        match (arg, &clocks.is) {
            (arg @ (Arg::DayClock(_) | Arg::Clock(_)), Some(house)) => {
                if let Arg::DayClock(at) | Arg::Clock(at) = arg
                    && *at >= house.from
                    && differs(*at, house)
                {
                    *arg = Arg::There(*at, house.zone, house.place.clone());
                }
            }
            (Arg::Text(text), _) => tell(text, clocks),
            (Arg::List(texts) | Arg::Lines(texts), _) => texts.iter_mut().for_each(|text| tell(text, clocks)),
            _ => {}
        }
    }
}

fn differs(at: Moment, house: &House) -> bool {
    let offset = |zone: Tz| at.with_timezone(&zone).offset().fix().local_minus_utc();
    offset(house.zone) != offset(house.kitchen)
}
