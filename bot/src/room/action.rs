//! What a button means: the data behind it, written and read.
//!
//! At most 64 bytes, dots between the parts. The data are forgeable, so they only say what is wanted; whether the presser
//! may have it, and whether the plan they speak of still stands, is checked where it is done.

use super::heard::PersonId;
use carvetime_core::plan::Step;

/// One job of one plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct JobRef {
    /// Serial of the plan.
    pub serial: u32,
    /// Step.
    pub step: Step,
    /// Which of several.
    pub nth: u8,
}

/// Which way out of a clash a button offers (`way_out`).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Mark(pub u32);

impl Mark {
    fn read(text: &str) -> Option<Self> {
        let written = text.len() == 8 && text.bytes().all(|byte| byte.is_ascii_hexdigit());
        u32::from_str_radix(text, 16).ok().filter(|_| written).map(Mark)
    }
}

impl std::fmt::Display for Mark {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:08x}", self.0)
    }
}

/// What a press asks for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Action {
    /// Start the proposed plan of this person's draft.
    Accept(PersonId),
    /// The same, as one more bird beside those that are planned.
    Beside(PersonId),
    /// The same, in place of the plan of that serial.
    Instead(PersonId, u32),
    /// What that person said (by its number) was said of the plan of that serial.
    Bird(PersonId, u32, u32),
    /// Show what can be changed in the draft.
    Change(PersonId),
    /// Leave the draft as it is and show the proposal again.
    Back(PersonId),
    /// Show why the proposed times are what they are.
    WhyDraft(PersonId),
    /// Drop the draft.
    Discard(PersonId),
    /// Give the draft this value.
    Pick(PersonId, String, String),
    /// Take that way out of a conflict, in the draft.
    Offer(PersonId, Mark),
    /// Take that way out of a conflict, in the live plan.
    Mend(u32, Mark),
    /// Mark done.
    Done(JobRef),
    /// Done when it was planned: yes to whether it was.
    AsPlanned(JobRef),
    /// No to the same.
    NotYet(JobRef),
    /// Done although the last reading says otherwise.
    Sure(JobRef),
    /// The bird of that plan is kept hot until it is carved.
    Held(u32),
    /// Call again later.
    Later(JobRef),
    /// Leave it out.
    Skip(JobRef),
    /// Take the job.
    Take(JobRef),
    /// Hand it back.
    Drop(JobRef),
    /// Show whom the job could be given to.
    Give(JobRef),
    /// Ask that person to take it.
    AskFor(JobRef, PersonId),
    /// The one who was asked takes it.
    Willing(JobRef),
    /// The one who was asked does not.
    Unwilling(JobRef),
    /// How it was: what is judged, and how.
    Rate(u32, String, String),
    /// Take that way out for the dish that did not fit.
    Seat(u32, Mark),
    /// The dish that did not fit is left as it was.
    Leave(u32),
    /// One more of the dish of that place.
    Another(u32, u8),
    /// Show the jobs one by one, to give them to someone.
    Giving(u32),
    /// Take back the change of that number in that plan.
    Undo(u32, u32),
    /// Show the jobs one by one, to take them.
    Jobs(u32),
    /// Show why the times are what they are.
    Why(u32),
    /// The reply of that place to what was asked back.
    Reply(PersonId, u8),
    /// Show the sources of the last answer.
    Sources(PersonId),
    /// Yes to a question (`stop`, `forget`).
    Yes(String, PersonId),
    /// No to it.
    No(String, PersonId),
    /// The reading that was doubted, as it was probably meant.
    Meant(PersonId),
    /// Dinner in that plan at this minute since 1970.
    Dinner(u32, i64),
    /// Dinner in that plan stays at this minute since 1970.
    Stay(u32, i64),
    /// Dinner in that plan at this minute since 1970, by that way out; offered for the plan of that edition.
    Shift(u32, i64, Mark, u32),
    /// The pit of that plan up to so many °F.
    Hotter(u32, u16),
    /// A page of the settings.
    Settings(String),
    /// A value of a setting.
    Set(String, String),
    /// A page of the help.
    Help(String),
}

impl Action {
    /// The data of the button.
    pub fn data(&self) -> String {
        let job = |verb: &str, job: &JobRef| format!("{verb}.{}.{}.{}", job.serial, job.step.name(), job.nth);
        match self {
            Action::Accept(who) => format!("accept.{}", who.0),
            Action::Beside(who) => format!("beside.{}", who.0),
            Action::Instead(who, serial) => format!("instead.{}.{serial}", who.0),
            Action::Bird(who, number, serial) => format!("bird.{}.{number}.{serial}", who.0),
            Action::Change(who) => format!("change.{}", who.0),
            Action::Back(who) => format!("back.{}", who.0),
            Action::WhyDraft(who) => format!("reasons.{}", who.0),
            Action::Discard(who) => format!("discard.{}", who.0),
            Action::Pick(who, field, value) => format!("pick.{}.{field}.{value}", who.0),
            Action::Offer(who, way) => format!("offer.{}.{way}", who.0),
            Action::Mend(serial, way) => format!("mend.{serial}.{way}"),
            Action::Done(it) => job("done", it),
            Action::AsPlanned(it) => job("asplanned", it),
            Action::NotYet(it) => job("notyet", it),
            Action::Sure(it) => job("sure", it),
            Action::Held(serial) => format!("held.{serial}"),
            Action::Later(it) => job("later", it),
            Action::Skip(it) => job("skip", it),
            Action::Take(it) => job("take", it),
            Action::Drop(it) => job("drop", it),
            Action::Give(it) => job("give", it),
            Action::AskFor(it, who) => format!("{}.{}", job("askfor", it), who.0),
            Action::Willing(it) => job("willing", it),
            Action::Unwilling(it) => job("unwilling", it),
            Action::Giving(serial) => format!("giving.{serial}"),
            Action::Rate(serial, what, answer) => format!("rate.{serial}.{what}.{answer}"),
            Action::Seat(serial, way) => format!("seat.{serial}.{way}"),
            Action::Leave(serial) => format!("leave.{serial}"),
            Action::Another(serial, place) => format!("another.{serial}.{place}"),
            Action::Undo(serial, number) => format!("undo.{serial}.{number}"),
            Action::Jobs(serial) => format!("jobs.{serial}"),
            Action::Why(serial) => format!("why.{serial}"),
            Action::Reply(who, place) => format!("reply.{}.{place}", who.0),
            Action::Sources(who) => format!("sources.{}", who.0),
            Action::Yes(what, who) => format!("yes.{what}.{}", who.0),
            Action::No(what, who) => format!("no.{what}.{}", who.0),
            Action::Meant(who) => format!("meant.{}", who.0),
            Action::Dinner(serial, minute) => format!("dinner.{serial}.{minute}"),
            Action::Stay(serial, minute) => format!("stay.{serial}.{minute}"),
            Action::Shift(serial, minute, way, edition) => format!("shift.{serial}.{minute}.{way}-{edition}"),
            Action::Hotter(serial, setting) => format!("hotter.{serial}.{setting}"),
            Action::Settings(page) => format!("settings.{page}"),
            Action::Set(setting, value) => format!("set.{setting}.{value}"),
            Action::Help(page) => format!("help.{page}"),
        }
    }

    /// The plan it names. What a person was asked of a plan beside another is marked from outside instead.
    pub fn serial(&self) -> Option<u32> {
        match self {
            Action::Mend(serial, _)
            | Action::Seat(serial, _)
            | Action::Leave(serial)
            | Action::Another(serial, _)
            | Action::Rate(serial, ..)
            | Action::Held(serial)
            | Action::Undo(serial, _)
            | Action::Jobs(serial)
            | Action::Giving(serial)
            | Action::Why(serial)
            | Action::Dinner(serial, _)
            | Action::Stay(serial, _)
            | Action::Shift(serial, ..)
            | Action::Hotter(serial, _) => Some(*serial),
            Action::Done(it)
            | Action::AsPlanned(it)
            | Action::NotYet(it)
            | Action::Sure(it)
            | Action::Later(it)
            | Action::Skip(it)
            | Action::Take(it)
            | Action::Give(it)
            | Action::AskFor(it, _)
            | Action::Willing(it)
            | Action::Unwilling(it)
            | Action::Drop(it) => Some(it.serial),
            Action::Accept(_)
            | Action::Beside(_)
            | Action::Instead(..)
            | Action::Bird(..)
            | Action::Change(_)
            | Action::Back(_)
            | Action::WhyDraft(_)
            | Action::Discard(_)
            | Action::Pick(..)
            | Action::Offer(..)
            | Action::Reply(..)
            | Action::Sources(_)
            | Action::Yes(..)
            | Action::No(..)
            | Action::Meant(_)
            | Action::Settings(_)
            | Action::Set(..)
            | Action::Help(_) => None,
        }
    }

    /// Reads data back; `None` for anything this version did not write.
    pub fn read(data: &str) -> Option<Self> {
        if data.len() > 64 {
            return None;
        }
        let mut parts = data.splitn(4, '.');
        let verb = parts.next()?;
        let mut next = || parts.next();
        let person = |text: &str| text.parse().ok().map(PersonId);
        Some(match verb {
            "accept" => Action::Accept(person(next()?)?),
            "beside" => Action::Beside(person(next()?)?),
            "instead" => Action::Instead(person(next()?)?, next()?.parse().ok()?),
            "bird" => Action::Bird(person(next()?)?, next()?.parse().ok()?, next()?.parse().ok()?),
            "change" => Action::Change(person(next()?)?),
            "back" => Action::Back(person(next()?)?),
            "reasons" => Action::WhyDraft(person(next()?)?),
            "discard" => Action::Discard(person(next()?)?),
            "pick" => Action::Pick(person(next()?)?, next()?.to_owned(), next()?.to_owned()),
            "offer" => Action::Offer(person(next()?)?, Mark::read(next()?)?),
            "mend" => Action::Mend(next()?.parse().ok()?, Mark::read(next()?)?),
            "askfor" => {
                let (serial, step) = (next()?.parse().ok()?, Step::from_name(next()?)?);
                let (nth, who) = next()?.split_once('.')?;
                Action::AskFor(JobRef { serial, step, nth: nth.parse().ok()? }, person(who)?)
            }
            "rate" => Action::Rate(next()?.parse().ok()?, next()?.to_owned(), next()?.to_owned()),
            "leave" => Action::Leave(next()?.parse().ok()?),
            "seat" => Action::Seat(next()?.parse().ok()?, Mark::read(next()?)?),
            "another" => Action::Another(next()?.parse().ok()?, next()?.parse().ok()?),
            "giving" => Action::Giving(next()?.parse().ok()?),
            "done" | "asplanned" | "notyet" | "sure" | "later" | "skip" | "take" | "drop" | "give" | "willing"
            | "unwilling" => {
                let job = JobRef {
                    serial: next()?.parse().ok()?,
                    step: Step::from_name(next()?)?,
                    nth: next()?.parse().ok()?,
                };
                match verb {
                    "done" => Action::Done(job),
                    "asplanned" => Action::AsPlanned(job),
                    "notyet" => Action::NotYet(job),
                    "sure" => Action::Sure(job),
                    "later" => Action::Later(job),
                    "skip" => Action::Skip(job),
                    "take" => Action::Take(job),
                    "give" => Action::Give(job),
                    "willing" => Action::Willing(job),
                    "unwilling" => Action::Unwilling(job),
                    _ => Action::Drop(job),
                }
            }
            "held" => Action::Held(next()?.parse().ok()?),
            "undo" => Action::Undo(next()?.parse().ok()?, next()?.parse().ok()?),
            "jobs" => Action::Jobs(next()?.parse().ok()?),
            "why" => Action::Why(next()?.parse().ok()?),
            "reply" => Action::Reply(person(next()?)?, next()?.parse().ok()?),
            "sources" => Action::Sources(person(next()?)?),
            "yes" => Action::Yes(next()?.to_owned(), person(next()?)?),
            "no" => Action::No(next()?.to_owned(), person(next()?)?),
            "meant" => Action::Meant(person(next()?)?),
            "dinner" => Action::Dinner(next()?.parse().ok()?, next()?.parse().ok()?),
            "stay" => Action::Stay(next()?.parse().ok()?, next()?.parse().ok()?),
            "shift" => {
                let (serial, minute) = (next()?.parse().ok()?, next()?.parse().ok()?);
                let (way, edition) = next()?.split_once('-')?;
                Action::Shift(serial, minute, Mark::read(way)?, edition.parse().ok()?)
            }
            "hotter" => Action::Hotter(next()?.parse().ok()?, next()?.parse().ok()?),
            "settings" => Action::Settings(next()?.to_owned()),
            "set" => Action::Set(next()?.to_owned(), next()?.to_owned()),
            "help" => Action::Help(next()?.to_owned()),
            _ => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read_back_and_fits_a_button() {
        let who = PersonId(7_999_999_999_999);
        let job = JobRef { serial: u32::MAX, step: Step::Leftovers, nth: 255 };
        let all = [
            Action::Accept(who),
            Action::Change(who),
            Action::Back(who),
            Action::WhyDraft(who),
            Action::Why(2),
            Action::Discard(who),
            Action::Pick(who, "condition".into(), "part-thawed".into()),
            Action::Offer(who, Mark(9)),
            Action::Mend(3, Mark(u32::MAX)),
            Action::Done(job),
            Action::AsPlanned(job),
            Action::NotYet(job),
            Action::Sure(job),
            Action::Held(3),
            Action::Later(job),
            Action::Skip(job),
            Action::Take(job),
            Action::Drop(job),
            Action::Give(job),
            Action::AskFor(job, who),
            Action::Willing(job),
            Action::Unwilling(job),
            Action::Giving(3),
            Action::Seat(3, Mark(1)),
            Action::Leave(3),
            Action::Another(3, 1),
            Action::Rate(3, "meat".into(), "underdone".into()),
            Action::Undo(3, 900),
            Action::Jobs(1),
            Action::Reply(who, 1),
            Action::Sources(who),
            Action::Yes("forget".into(), who),
            Action::No("stop".into(), who),
            Action::Meant(who),
            Action::Dinner(2, 30_000_000),
            Action::Stay(2, 30_000_000),
            Action::Shift(u32::MAX, 30_000_000, Mark(3), u32::MAX),
            Action::Hotter(2, 350),
            Action::Settings("language".into()),
            Action::Set("zone".into(), "America/Argentina/Buenos_Aires".into()),
            Action::Help("safety".into()),
        ];
        for action in all {
            let data = action.data();
            assert!(data.len() <= 46, "{data}: the prefix of a routed press must fit too");
            assert_eq!(Action::read(&data), Some(action));
        }
    }

    #[test]
    fn forged_data_mean_nothing() {
        for data in [
            "",
            "done",
            "done.1",
            "done.1.fly.0",
            "accept.x",
            "done.-1.thaw.0",
            "mend.1.999",
            "mend.1.2",
            "mend.1.+000000f",
            &"a".repeat(65),
        ] {
            assert_eq!(Action::read(data), None, "{data}");
        }
    }
}
