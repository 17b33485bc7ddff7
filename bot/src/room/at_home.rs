//! "We eat at home after all": no drive, nothing carried, and the dinner's hour is the kitchen's clock's.

use super::state::LivePlan;
use super::{PersonId, Sitting, amend, planning};
use crate::reading::{self, Wish};
use crate::room::turn::How;
use carvetime_core::plan::{Moment, Step};
use chrono_tz::Tz;

/// Longer texts tell a story.
const LONGEST: usize = 80;

/// `false`: nothing of the kind, or it is eaten at home as it is.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let said = text.chars().count() <= LONGEST && reading::says_eaten_at_home(text, sitting.lexicon());
    let Some(who) = sitting.speaker().filter(|_| said) else { return false };
    if sitting.room.drafts.contains_key(&who) {
        return drafted(sitting, who);
    }
    let now = sitting.now;
    let goes = |plan: &&LivePlan| {
        let ahead = plan.wish.dinner.is_some_and(|dinner| dinner > now);
        ahead && is_away(&plan.wish) && plan.ahead(now).any(|job| job.step() == Some(Step::Travel))
    };
    // "Let's eat at home on Friday" is another meal.
    let date = |at: Moment| at.with_timezone(&sitting.zone_or_utc()).date_naive();
    let (told, _) = planning::read(sitting, text);
    let told = told.dinner.map(date).or(told.dinner_day);
    let stands = sitting.room.plan.as_ref().and_then(|plan| plan.wish.dinner).map(date);
    if told.is_some() && told != stands {
        return !addressed;
    }
    // Eaten at home as it is: among people nothing is to be said, and nothing else is meant.
    let Some(plan) = sitting.room.plan.as_ref().filter(goes) else { return !addressed && sitting.room.plan.is_some() };
    let wish = home(&plan.wish, sitting.zone_or_utc());
    amend::to(sitting, text, wish, addressed)
}

fn drafted(sitting: &mut Sitting<'_>, who: PersonId) -> bool {
    let zone = sitting.zone_or_utc();
    let Some(draft) = sitting.room.drafts.get_mut(&who).filter(|draft| is_away(&draft.wish)) else { return false };
    draft.wish = home(&draft.wish, zone);
    planning::go_on(sitting, who, How::New);
    true
}

fn is_away(wish: &Wish) -> bool {
    wish.elsewhere == Some(true) || wish.there.is_some()
}

/// The same wish without the other house; five there is five here, unless home's clock was meant all along.
fn home(wish: &Wish, zone: Tz) -> Wish {
    let there = wish.there.as_ref().filter(|_| !wish.home_clock).and_then(reading::There::zone);
    let wall = |at: Moment| {
        let hour = at.with_timezone(&there?).naive_local();
        hour.and_local_timezone(zone).earliest().map(|at| at.to_utc())
    };
    let dinner = wish.dinner.and_then(wall).or(wish.dinner);
    Wish { dinner, elsewhere: Some(false), hot: None, drive_min: None, there: None, by_home: None, ..wish.clone() }
}
