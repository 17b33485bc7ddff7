//! "That's the score lol", "not our bird", "I meant the pit", right after a number was heard as this bird's reading: it is taken back.

use super::action::Action;
use super::sitting::button;
use super::state::{Change, Doubted, LivePlan, StoredReading};
use super::{PersonId, RoomKind, Sitting, doubted, may, readings, undo};
use crate::reading::{self, Misread};
use crate::words::Text;
use chrono::TimeDelta;

/// Such words are of a number told within this time.
const JUST_TOLD: TimeDelta = TimeDelta::minutes(5);

/// `false`: no number was told just now, or they say something else.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let said = sitting.speaker().zip(reading::read_misread(text, sitting.lexicon()));
    let Some((who, said)) = said else { return false };
    if let Some(reading) = asked_about(sitting, who) {
        doubted::taken_back(sitting, who);
        if said == Misread::Air {
            note_of_air(sitting, who, &[reading]);
        }
        return true;
    }
    let Some(plan) = sitting.room.plan.as_ref() else { return false };
    let Some((change, told)) = just_told(sitting, plan) else {
        // "Not our bird" among people marks no job as open.
        let among = sitting.room.kind == RoomKind::Group;
        return among && reading::read_report(text, sitting.lexicon()).is_some();
    };
    if change.by != Some(who) && !may::steer(sitting) {
        ask(sitting, &change, &told);
        return true;
    }
    undo::last(sitting);
    if said == Misread::Air {
        note_of_air(sitting, who, &told);
    }
    true
}

/// The reading of theirs that was asked about and not counted yet.
fn asked_about(sitting: &Sitting<'_>, who: PersonId) -> Option<StoredReading> {
    let now = sitting.now;
    let open = |doubted: &&Doubted| doubted.given.by == Some(who) && now - doubted.given.at <= JUST_TOLD;
    let plan = sitting.room.plan.as_ref()?;
    plan.doubted.iter().find(open).map(|doubted| doubted.given.clone())
}

/// The newest change, if it is readings told just now, and these.
fn just_told(sitting: &Sitting<'_>, plan: &LivePlan) -> Option<(Change, Vec<StoredReading>)> {
    let last = plan.history.last().filter(|change| change.name == "logged" && sitting.now - change.at <= JUST_TOLD)?;
    let told = plan.readings.get(last.readings..).unwrap_or_default();
    Some((last.clone(), told.to_vec()))
}

/// Somebody else told it: whoever did, or the host, says so with a press.
fn ask(sitting: &mut Sitting<'_>, change: &Change, told: &[StoredReading]) {
    let (Some(plan), Some(reading)) = (sitting.room.plan.as_ref(), told.last()) else { return };
    let action = Action::Undo(plan.serial, change.number);
    let parts = readings::parts(&readings::spots_of(reading));
    sitting.answer(Text::new("room-misread").with("parts", parts)).row([button("room-button-undo", &action)]);
}

/// The one number was the air's.
fn note_of_air(sitting: &mut Sitting<'_>, who: PersonId, told: &[StoredReading]) {
    let [reading] = told else { return };
    let spots = [reading.breast_c, reading.thigh_c, reading.wing_c, reading.stuffing_c, reading.pit_c];
    let mut told = spots.into_iter().flatten();
    let (Some(air), None) = (told.next(), told.next()) else { return };
    let none = StoredReading { breast_c: None, thigh_c: None, wing_c: None, stuffing_c: None, ..reading.clone() };
    doubted::judge(sitting, who, StoredReading { pit_c: Some(air), ..none });
}
