//! Two clocks: what happens at the other house is told by that house's clock, with its name, where it differs.

use super::state::{LivePlan, Room};
use super::turn::{FileContent, Say};
use super::{PersonId, Sitting};
use crate::reading::{Ground, There, Wish};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step, spans};
use chrono::{Offset, TimeDelta};
use chrono_tz::Tz;

/// The other house: from when on its clock counts, and which it is.
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
        let (wish, plan) = wish_of(&self.room, self.speaker(), say);
        let Some(mut house) = wish.and_then(|wish| house(wish, self.zone_or_utc())) else { return };
        if let Some(leave) = plan.and_then(|plan| plan.job(Step::Travel, 0)) {
            house.from = house.from.min(leave.at + TimeDelta::minutes(1));
        }
        let labels = say.buttons.iter_mut().flatten().map(|button| &mut button.label);
        say.text.iter_mut().chain(labels).for_each(|text| tell(text, &house));
        if let Some(FileContent::Calendar(calendar)) = say.file.as_mut().map(|file| &mut file.content) {
            for event in &mut calendar.events {
                tell(&mut event.summary, &house);
                event.description.iter_mut().for_each(|text| tell(text, &house));
            }
        }
        if let Some(FileContent::Sheet(sheet)) = say.file.as_mut().map(|file| &mut file.content) {
            sheet.texts().for_each(|text| tell(text, &house));
        }
    }
}

fn wish_of<'a>(room: &'a Room, speaker: Option<PersonId>, say: &Say) -> (Option<&'a Wish>, Option<&'a LivePlan>) {
    let drafted = say.key.as_deref().is_some_and(|key| key.starts_with("draft-"));
    match speaker.and_then(|who| room.drafts.get(&who)) {
        Some(draft) if drafted || room.plan.is_none() => (Some(draft.suggestion.as_ref().unwrap_or(&draft.wish)), None),
        _ => (room.plan.as_ref().map(|plan| &plan.wish), room.plan.as_ref()),
    }
}

/// The dinner and what leads up to it there. A plan that stands knows better: from leaving on.
fn house(wish: &Wish, kitchen: Tz) -> Option<House> {
    let there = wish.there.as_ref()?;
    let last = if wish.hot == Some(true) { spans::CARVING } else { spans::REHEATING };
    let from = wish.dinner? - last - spans::UNPACKING;
    Some(House { from, zone: There::zone(there)?, place: there.place.clone(), kitchen })
}

fn tell(text: &mut Text, house: &House) {
    for (_, arg) in &mut text.args {
        match arg {
            Arg::DayClock(at) | Arg::Clock(at) if *at >= house.from && differs(*at, house) => {
                *arg = Arg::There(*at, house.zone, house.place.clone());
            }
            Arg::Text(text) => tell(text, house),
            Arg::List(texts) | Arg::Lines(texts) => texts.iter_mut().for_each(|text| tell(text, house)),
            _ => {}
        }
    }
}

fn differs(at: Moment, house: &House) -> bool {
    let offset = |zone: Tz| at.with_timezone(&zone).offset().fix().local_minus_utc();
    offset(house.zone) != offset(house.kitchen)
}
