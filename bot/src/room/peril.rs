//! Fire, gas or somebody in need in someone's kitchen: answered at once, whoever says it, in the language it was said in, and whatever
//! else is going on.

use super::Sitting;
use super::questions;
use super::state::{JobState, LivePlan};
use super::turn::Urgency;
use crate::ask::Question;
use crate::reading::{self, Peril, ReportKind};
use carvetime_core::plan::Step;
use carvetime_core::roast::Cooker;
use chrono::TimeDelta;

/// Words that tell of danger to people. `false`: they tell of something else.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let here = sitting.lexicon();
    if reading::burns_indoors(text, here) {
        sitting.room.fumes = Some(sitting.now);
    }
    let own = reading::says_peril(text, here).map(|peril| (peril, None));
    let abroad = || {
        let first = sitting.speaker().and_then(|who| sitting.people.get(&who)?.taste.language.as_deref());
        let first = first.map(|tag| reading::Lexicon::of(tag).language());
        reading::read_peril_abroad(text, here.language(), first).map(|(peril, language)| (peril, Some(language)))
    };
    // With slips mended last: they would make words of one language out of another's.
    let mended = || reading::read_peril(text, here).map(|peril| (peril, None));
    let Some((peril, language)) = own.or_else(abroad).or_else(mended).or_else(|| felt(sitting, text)) else {
        return false;
    };
    if !is_meant(sitting, text, peril, addressed) {
        return false;
    }
    let language = language.map(|language| spoken(sitting, language));
    questions::tell(sitting, &Question::Peril(peril), Urgency::Safety);
    if let Some(say) = sitting.says.last_mut() {
        say.language = language;
    }
    true
}

/// "My head hurts", of a house in which something was said to burn indoors a while ago.
fn felt(sitting: &Sitting<'_>, text: &str) -> Option<(Peril, Option<&'static str>)> {
    /// So long a house may hold it, and people may not know why they feel unwell.
    const HELD: TimeDelta = TimeDelta::hours(6);
    let burnt = sitting.room.fumes.is_some_and(|at| sitting.now - at <= HELD);
    (burnt && reading::feels_fumes(text, sitting.lexicon())).then_some((Peril::CarbonMonoxide, None))
}

/// That language as the speaker or the room has it, with its region.
fn spoken(sitting: &Sitting<'_>, language: &'static str) -> String {
    let speakers = sitting.speaker().and_then(|who| sitting.people.get(&who)?.taste.language.clone());
    let tags = [speakers, sitting.room.taste.language.clone()];
    let same = |tag: &String| tag.split(['-', '_']).next() == Some(language);
    tags.into_iter().flatten().find(same).unwrap_or_else(|| language.to_owned())
}

/// Whether what may be harmless is none: "fire" of a song, "it burns" of the smoker just lit, "it's smoking" of one.
fn is_meant(sitting: &Sitting<'_>, text: &str, peril: Peril, addressed: bool) -> bool {
    let lexicon = sitting.lexicon();
    let plan = sitting.room.plan.as_ref();
    match peril {
        Peril::Fire => {
            let english = reading::Lexicon::of("en");
            let bare = [lexicon, english].into_iter().any(|lexicon| reading::is_bare_fire(text, lexicon));
            (addressed || !bare) && (reading::is_loud(text) || !plan.is_some_and(|plan| is_lit(sitting, plan, text)))
        }
        Peril::Smoke if reading::only_smokes(text, lexicon) => {
            let heats = |plan: &LivePlan| {
                let lit = plan.job(Step::Fire, 0).is_some_and(|job| matches!(job.state, JobState::Done { .. }));
                lit || plan.on_since(sitting.now).is_some()
            };
            plan.map_or(addressed, |plan| !burns(plan) && (addressed || heats(plan) && !plan.is_off()))
        }
        _ => true,
    }
}

/// It cooks over a fire.
fn burns(plan: &LivePlan) -> bool {
    plan.wish.cooker.as_deref() == Some(Cooker::Smoker.name())
}

/// The fire that is to be lit is.
fn is_lit(sitting: &Sitting<'_>, plan: &LivePlan, text: &str) -> bool {
    let waits = plan.job(Step::Fire, 0).is_some_and(|job| job.state == JobState::Waiting);
    let lit = || reading::read_report(text, sitting.lexicon()).filter(|report| report.kind == ReportKind::Done);
    burns(plan) && waits && lit().is_some_and(|report| [report.step, report.or].contains(&Some(Step::Fire)))
}
