//! "Can I make broth of the bones?" after this dinner: not of those that were said to have stood out, and of others only if they were put
//! away in time.

use super::state::{JobState, LivePlan};
use super::turn::Urgency;
use super::{Moment, Sitting, forecast, questions};
use crate::ask::{Advice, Habit, Question};
use crate::words::Text;
use carvetime_core::plan::Step;

/// `false`: it is of no broth, or of none of this dinner.
pub(super) fn told(sitting: &mut Sitting<'_>, question: &Question) -> bool {
    if *question != Question::Advice(Advice::Habit(Habit::Carcass)) {
        return false;
    }
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| plan.is_off()) else { return false };
    let unsaid = unsaid(plan, now);
    let out = Question::Advice(Advice::Habit(Habit::BonesOut));
    // Whoever asked of them before, it was of these bones.
    let asked = sitting.room.questions.values().any(|text| questions::read(sitting, text).as_ref() == Some(&out));
    if asked {
        questions::tell(sitting, &out, Urgency::Safety);
        return true;
    }
    let Some(by) = unsaid else { return false };
    let only = Text::new("cook-reheat-only").with("by", forecast::clock(by, now, zone));
    let lines = questions::lines(sitting, question);
    sitting.answer_all(lines).line(only).urgency(Urgency::Safety);
    true
}

/// By when it had to be in the fridge, where nobody has said that it was.
fn unsaid(plan: &LivePlan, now: Moment) -> Option<Moment> {
    let job = plan.job(Step::Chill, 0)?;
    (job.state == JobState::Waiting && job.latest < now).then_some(job.latest)
}
