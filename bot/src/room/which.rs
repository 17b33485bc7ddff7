//! Which of several birds is meant.
//!
//! A button, or the message replied to, says it outright. Else the words do ("Rosa's bird", "the duck", "the smoker one"),
//! else that it makes sense for one only, else that it is the speaker's own, else that the speaker has jobs in it. Where
//! that leaves two, the one who spoke is asked, and what they said waits. With one plan in the room nothing here is looked at.

use super::action::Action;
pub(super) use super::asked_which::offer_to;
use super::heard::Document;
use super::state::{LivePlan, Unsure};
use super::{
    BellKind, PersonId, Sitting, air, alarms, amend, asked_which, birds, calls, cooled, done_yet, each_its_own,
    farewell, jobs, logs, may, misplaced, naming, no_heat, planning, questions, readings, reports, shares, which_dish,
};
use crate::reading::command::{Address, read_command};
use crate::reading::{self, Place, Problem, Report, ReportKind};
use crate::words::Text;
use carvetime_core::plan::{Moment, Step};
use chrono::{DateTime, Utc};

/// What is said of a bird, as far as it matters for which.
enum Topic {
    /// Thermometer readings; a number alone answers a question.
    Readings { bare: bool, edited: bool, of: Of },
    /// A number of meat that may be off the heat.
    Cooled,
    /// The heat has failed, or is back.
    Heat { back: bool, fire: bool },
    /// A job done or not done.
    Report(Report),
    /// A job to take, or to hand back.
    Job { step: Option<(Step, Option<u8>)>, take: bool },
    /// The last change is taken back.
    Undo,
    /// Dinner moves, or the plan ends.
    Steer,
    /// The plan changes.
    Amend,
    /// A look at it.
    Look,
    /// Who has a job, when it is due, whether it is done.
    Asked(Option<Step>),
    /// No plan in particular.
    Free,
}

/// What the readings can only be of.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Of {
    /// A bird, over the heat or just off it.
    Bird,
    /// One that is kept hot.
    Kept,
    /// The air around one.
    Air,
    /// The air over coals or in a smoker.
    Pit,
}

/// Which plan.
enum Which {
    One(u32),
    /// A look at each.
    Each(Vec<u32>),
    Unclear(Vec<u32>),
}

// ---- what is heard

/// Words.
pub(super) fn said(sitting: &mut Sitting<'_>, text: &str, addressed: bool, reply_to: Option<&str>, edited: bool) {
    let bare = reply_to.map(|key| birds::unmarked(key).0);
    if let Some(serial) = reply_to.and_then(|key| birds::of_key(&sitting.room, key)) {
        about(sitting, serial);
        return super::said(sitting, text, addressed, bare, edited);
    }
    if sitting.room.others.is_empty() {
        sitting.about = true;
        return super::said(sitting, text, addressed, bare, edited);
    }
    if let Some(serial) = farewell::is_answer(sitting, text) {
        about(sitting, serial);
        return super::said(sitting, text, addressed, bare, edited);
    }
    // "Mine!" takes a job on.
    let willing = reading::read_willing(text, sitting.lexicon()).is_some();
    let named = naming::names(sitting, text).filter(|_| !willing);
    if let Some((number, serial)) = asked_which::answers(sitting, text) {
        return asked_which::told(sitting, number, serial);
    }
    if let Some(asked) = asked_which::answers_both(sitting, text) {
        if asked.reads(sitting) {
            // No two birds read the same.
            sitting.answer(Text::new("birds-each"));
            return;
        }
        for serial in all(sitting) {
            if !sitting.room.unsure.iter().any(|unsure| unsure.number == asked.number) {
                sitting.room.unsure.push(asked.clone());
            }
            asked_which::told(sitting, asked.number, serial);
        }
        return;
    }
    if !edited && misplaced::moved(sitting, text) {
        return;
    }
    if let Some(logs) = each_its_own::read(sitting, text).filter(|logs| logs.iter().all(|(it, _)| cooks(sitting, *it)))
    {
        for (serial, log) in logs {
            about(sitting, serial);
            readings::noted(sitting, &log, edited);
        }
        return;
    }
    let alone = each_its_own::at_a_number(sitting, text).zip(named.as_deref());
    if let Some((log, [serial])) = alone.filter(|(_, named)| matches!(named, [one] if cooks(sitting, *one))) {
        about(sitting, *serial);
        return readings::noted(sitting, &log, edited);
    }
    if !edited && which_dish::told(sitting, text, addressed) {
        return;
    }
    let parts: Vec<&str> = text.split_whitespace().collect();
    let mentions = naming::mentions(sitting, &parts);
    // "Tom is done" is said of Tom.
    let bird = !text.starts_with('/') && (text.contains(['?', '¿']) || mentions.iter().any(|mention| mention.sure));
    if let Some([serial]) = named.as_deref().filter(|_| bird && !edited) {
        let serial = *serial;
        let words = naming::unnamed(sitting, text);
        let hand = sitting.room.plan.as_ref().map(|plan| plan.serial);
        about(sitting, serial);
        // "Bens is done", "is the duck safe?": with its name it is of that bird, whoever it is said to.
        if done_yet::told(sitting, &words) || no_heat::asks_if_safe(sitting, text) && no_heat::eaten(sitting) {
            return;
        }
        if questions::asks_how_long(sitting, text) {
            return readings::when(sitting);
        }
        sitting.hold(hand);
        sitting.about = false;
    }
    if !edited && of_both(sitting, text) {
        return;
    }
    let several = named.is_none() && naming::names_several(sitting, text);
    let day = naming::of_the_day(sitting, text);
    let (topic, text) = topic(sitting, text, addressed, edited, (named.is_some(), day.is_some()));
    let addressed = addressed || matches!(topic, Topic::Cooled) && named.is_some();
    let people = mentions.iter().any(|mention| !mention.sure);
    if several && people && !naming::names_a_spot(sitting, &text) {
        // "Ben owes me 20, Marta 15"
        return;
    }
    if several && (matches!(topic, Topic::Readings { .. }) || reads_twice(sitting, &text)) {
        // Whose number is whose is not for guessing.
        sitting.answer(Text::new("birds-each"));
        return;
    }
    let serials = match which(sitting, &topic, named, day) {
        Which::One(serial) => vec![serial],
        Which::Each(serials) => serials,
        Which::Unclear(serials) => {
            return asked_which::ask(sitting, &serials, |number, by, at| Unsure {
                number,
                by,
                at,
                text,
                log: None,
                addressed,
                edited,
                passed: false,
            });
        }
    };
    for serial in serials {
        sitting.hold(Some(serial));
        sitting.about = !matches!(topic, Topic::Free);
        super::said(sitting, &text, addressed, bare, edited);
    }
}

/// "Both are in", "got both birds": done with each. What comes off or is put away is told bird by bird: its hours count from then. `false`:
/// the words say nothing of both.
fn of_both(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let report = naming::without_both(sitting, text).and_then(|rest| reading::read_report(&rest, sitting.lexicon()));
    let early = [Step::Buy, Step::Thaw, Step::Salt, Step::Temper, Step::Fire, Step::On];
    let fits = |report: &Report| {
        let steps = [report.step, report.or];
        report.kind == ReportKind::Done && steps.into_iter().flatten().all(|step| early.contains(&step))
    };
    let Some(report) = report.filter(|report| report.step.is_some() && fits(report)) else { return false };
    let serials = all(sitting);
    let meant = those(sitting, &serials, |sitting| reports::means(sitting, &report));
    for serial in &meant {
        about(sitting, *serial);
        reports::heard(sitting, &report);
    }
    !meant.is_empty()
}

/// A button.
pub(super) fn pressed(sitting: &mut Sitting<'_>, data: &str) {
    let (bare, marked) = birds::unmarked(data);
    let action = Action::read(bare);
    let named = marked.or(action.as_ref().and_then(Action::serial));
    // These name no plan themselves.
    let asked = matches!(action, Some(Action::Yes(..) | Action::No(..) | Action::Meant(_)));
    let first = sitting.room.plans().iter().find(|plan| !plan.beside).map(|plan| plan.serial);
    match if asked { marked.or(first) } else { named.filter(|serial| has(sitting, *serial)) } {
        Some(serial) => about(sitting, serial),
        // What was asked was of a plan that is over.
        None if asked => sitting.hold(None),
        None if sitting.room.others.is_empty() => sitting.about = true,
        None => {
            if let Which::One(serial) = which(sitting, &Topic::Free, None, None) {
                sitting.hold(Some(serial));
            }
        }
    }
    super::pressed(sitting, bare);
}

/// A thermometer's log.
pub(super) fn sent(sitting: &mut Sitting<'_>, name: &str, content: &Document) {
    if sitting.room.others.is_empty() {
        sitting.about = true;
        return logs::sent(sitting, name, content);
    }
    match (which(sitting, &Topic::Readings { bare: false, edited: false, of: Of::Bird }, None, None), content) {
        // What waits is kept thinned: a file may be large.
        (Which::Unclear(serials), Document::Text(text)) => match reading::read_table(text) {
            Ok(table) => asked_which::ask(sitting, &serials, |number, by, at| Unsure {
                number,
                by,
                at,
                text: table.to_text(),
                log: Some(name.to_owned()),
                addressed: true,
                edited: false,
                passed: false,
            }),
            Err(problem) => {
                sitting.answer(problem.text());
            }
        },
        (Which::One(serial), _) => {
            about(sitting, serial);
            logs::sent(sitting, name, content);
        }
        (Which::Each(_) | Which::Unclear(_), _) => logs::sent(sitting, name, content),
    }
}

/// Bells: each rings for its own plan. One without a mark is the first plan's.
pub(super) fn rang(sitting: &mut Sitting<'_>, bells: &[(DateTime<Utc>, BellKind)]) {
    let plans: Vec<(u32, bool)> = sitting.room.plans().iter().map(|plan| (plan.serial, plan.beside)).collect();
    if plans.is_empty() {
        return calls::rang(sitting, bells);
    }
    for (serial, beside) in plans {
        let own: Vec<(DateTime<Utc>, BellKind)> = bells
            .iter()
            .filter_map(|(at, kind)| match kind {
                BellKind::Beside { serial: of, kind } => (beside && *of == serial).then(|| (*at, (**kind).clone())),
                kind => (!beside).then(|| (*at, kind.clone())),
            })
            .collect();
        if !own.is_empty() {
            about(sitting, serial);
            calls::rang(sitting, &own);
        }
    }
}

/// The turn is about that plan.
pub(super) fn about(sitting: &mut Sitting<'_>, serial: u32) {
    sitting.hold(Some(serial));
    sitting.about = true;
}

pub(super) fn has(sitting: &Sitting<'_>, serial: u32) -> bool {
    sitting.room.plans().iter().any(|plan| plan.serial == serial)
}

// ---- what it is about

/// What the words are about, and the words as they are to be read: the name of a bird may hide the rest.
fn topic(
    sitting: &mut Sitting<'_>,
    text: &str,
    addressed: bool,
    edited: bool,
    (named, dated): (bool, bool),
) -> (Topic, String) {
    let Address::Command(command) = read_command(text, None) else {
        let plain = text.trim();
        let bare = named.then(|| naming::unnamed(sitting, plain));
        let sizeless = named.then(|| naming::without_size(sitting, plain));
        for words in [sizeless, Some(plain.to_owned()), bare].into_iter().flatten() {
            let topic = match plain_topic(sitting, &words, addressed, edited) {
                // "The small one dropped to 138": with its name no other number is meant.
                Topic::Free if named && any(sitting, |sitting| cooled::would(sitting, &words, true)) => Topic::Cooled,
                topic => topic,
            };
            if !matches!(topic, Topic::Free) {
                return (topic, words);
            }
        }
        // "I'll carve on Friday"
        if dated {
            let words = naming::without_day(sitting, plain);
            let topic = plain_topic(sitting, &words, addressed, edited);
            if matches!(topic, Topic::Asked(_) | Topic::Look | Topic::Job { .. }) {
                return (topic, words);
            }
        }
        return (Topic::Free, plain.to_owned());
    };
    let name = command.name.to_ascii_lowercase();
    let rest = if named { naming::unnamed(sitting, command.rest) } else { command.rest.to_owned() };
    let rest =
        if dated && matches!(name.as_str(), "take" | "drop") { naming::without_day(sitting, &rest) } else { rest };
    let topic = match name.as_str() {
        // Whoever logs a number need not have been asked for it.
        "log" => return (Topic::Readings { bare: false, edited, of: Of::Bird }, text.to_owned()),
        "when" | "board" => Topic::Look,
        "move" | "stop" => Topic::Steer,
        "undo" => Topic::Undo,
        "take" | "drop" => Topic::Job { step: reading::read_step(&rest, sitting.lexicon()), take: name == "take" },
        _ => return (Topic::Free, text.to_owned()),
    };
    (topic, format!("/{name} {rest}"))
}

/// What words without a command are about, in the order in which they are read ([`super::plainly`]).
fn plain_topic(sitting: &mut Sitting<'_>, text: &str, addressed: bool, edited: bool) -> Topic {
    if !edited {
        if reading::cancels(text, sitting.lexicon()) {
            return Topic::Steer;
        }
        let back = reading::read_heat_back(text, &sitting.ground()).is_some();
        let of_air = || reading::read_air(text, &sitting.ground()).is_some();
        let fails = || reading::says_heat_failed(text, &sitting.ground()) || of_air();
        if back || fails() && !air::is_elsewhere(sitting, text) {
            let fire = sitting.lexicon().talk_words(text).iter().any(|word| sitting.lexicon().talk(word, "of-a-fire"));
            return Topic::Heat { back, fire };
        }
    }
    let bare = any(sitting, |sitting| jobs::is_asked_for_readings(sitting) || edited && readings::corrects(sitting));
    if any(sitting, readings::expected)
        && let Ok(Some(log)) = reading::read_log(text, &sitting.ground())
        && (bare || log.readings.iter().any(|reading| reading.place.is_some()))
        && any(sitting, |sitting| !readings::is_talk(sitting, text))
    {
        let bare = log.readings.iter().all(|reading| reading.place.is_none());
        return Topic::Readings { bare, edited, of: of(sitting, text, &log) };
    }
    if any(sitting, |sitting| cooled::would(sitting, text, addressed)) {
        return Topic::Cooled;
    }
    if edited || planning::is_wish(sitting, text, addressed) {
        return Topic::Free;
    }
    let lexicon = sitting.lexicon();
    if reading::asks_when(text, lexicon) || reading::asks_what_is_next(text, lexicon) {
        return Topic::Look;
    }
    if let Some(step) = asks(sitting, text) {
        return Topic::Asked(step);
    }
    if let Some(step) = shares::volunteers(sitting, text, addressed) {
        return Topic::Job { step: Some((step, None)), take: true };
    }
    if let Some(report) = reading::read_report(text, lexicon) {
        return Topic::Report(report);
    }
    let planning = sitting.speaker().is_some_and(|who| sitting.room.drafts.contains_key(&who));
    if planning || !addressed || questions::is_question(sitting, text) {
        return Topic::Free;
    }
    if any(sitting, |sitting| amend::would(sitting, text)) {
        return Topic::Amend;
    }
    if reading::is_undo(text, sitting.lexicon()) { Topic::Undo } else { Topic::Free }
}

/// What the numbers can only be of.
fn of(sitting: &Sitting<'_>, text: &str, log: &reading::Log) -> Of {
    let lexicon = sitting.lexicon();
    let words = lexicon.talk_words(text);
    let says = |group: &str| words.iter().any(|word| lexicon.talk(word, group));
    match () {
        () if log.readings.iter().any(|reading| reading.place != Some(Place::Pit)) => {
            if says("kept") {
                Of::Kept
            } else {
                Of::Bird
            }
        }
        () if says("of-a-fire") => Of::Pit,
        () => Of::Air,
    }
}

/// "Who carves?", "when do I salt it?", "what do I have to do?": the job asked for, if it is one.
fn asks(sitting: &Sitting<'_>, text: &str) -> Option<Option<Step>> {
    let lexicon = sitting.lexicon();
    let step = reading::asks_who(text, lexicon)
        .or_else(|| reading::asks_when_step(text, lexicon).into_iter().next())
        .or_else(|| reading::asks_whether_done(text, lexicon).map(|(step, _)| step));
    let all = || reading::asks_own_jobs(text, lexicon).is_some() || reading::asks_who_does_what(text, lexicon);
    step.map(Some).or_else(|| all().then_some(None))
}

/// Whether it holds for some plan.
fn any(sitting: &mut Sitting<'_>, test: impl Fn(&Sitting<'_>) -> bool) -> bool {
    !those(sitting, &all(sitting), test).is_empty()
}

fn all(sitting: &Sitting<'_>) -> Vec<u32> {
    sitting.room.plans().iter().map(|plan| plan.serial).collect()
}

/// The plans it holds for, each tried in hand.
pub(super) fn those(sitting: &mut Sitting<'_>, serials: &[u32], test: impl Fn(&Sitting<'_>) -> bool) -> Vec<u32> {
    let hand = sitting.room.plan.as_ref().map(|plan| plan.serial);
    let fits = |serial: &u32| {
        sitting.hold(Some(*serial));
        test(sitting)
    };
    let found = serials.iter().copied().filter(fits).collect();
    sitting.hold(hand);
    found
}

/// The plan meant.
fn which(sitting: &mut Sitting<'_>, topic: &Topic, named: Option<Vec<u32>>, day: Option<u32>) -> Which {
    let dated = matches!(topic, Topic::Asked(_) | Topic::Look | Topic::Job { .. });
    let day = day.filter(|_| dated && named.is_none()).map(|day| vec![day]);
    let mut left = named.or(day).unwrap_or_else(|| all(sitting));
    // Each narrows what is left, unless it would leave nothing.
    let mut keep = |sitting: &mut Sitting<'_>, test: &dyn Fn(&Sitting<'_>) -> bool| {
        let kept = those(sitting, &left, test);
        if !kept.is_empty() {
            left = kept;
        }
    };
    let speaker = sitting.speaker();
    if !matches!(topic, Topic::Report(_) | Topic::Undo) {
        keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| !birds::is_past(plan, sitting.now)));
    }
    match topic {
        Topic::Readings { bare, edited, of } => {
            if *edited {
                keep(sitting, &readings::corrects);
            }
            keep(sitting, &readings::expected);
            match of {
                Of::Kept => keep(sitting, &|sitting| hand(sitting).is_some_and(rests)),
                Of::Bird => {
                    keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| is_on(plan, sitting.now) || rests(plan)))
                }
                Of::Pit | Of::Air => {
                    keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| is_on(plan, sitting.now)))
                }
            }
            if *of == Of::Pit {
                keep(sitting, &|sitting| hand(sitting).is_some_and(naming::is_smoked));
            }
            // Who has only the one that rests means that one.
            keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| Some(plan.host) == speaker));
            // A bird that is kept hot has a thermometer in it as the one over the heat has: then the words don't tell.
            keep(sitting, &|sitting| {
                hand(sitting).is_some_and(|plan| is_on(plan, sitting.now) || rests(plan) && plan.held_hot)
            });
            if *bare {
                keep(sitting, &jobs::is_asked_for_readings);
            }
        }
        Topic::Cooled => keep(sitting, &|sitting| hand(sitting).is_some_and(LivePlan::is_off)),
        Topic::Heat { back, fire } => {
            if *back {
                keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| plan.down_since.is_some()));
            }
            if *fire {
                keep(sitting, &|sitting| hand(sitting).is_some_and(naming::is_smoked));
            }
            keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| is_on(plan, sitting.now)));
        }
        Topic::Asked(Some(step)) => keep(sitting, &|sitting| jobs::by_step(sitting, *step, None).is_some()),
        Topic::Report(report) => keep(sitting, &|sitting| reports::means(sitting, report)),
        Topic::Job { step: Some((step, nth)), take } => {
            keep(sitting, &|sitting| jobs::by_step(sitting, *step, *nth).is_some());
            if !take {
                keep(sitting, &|sitting| owner_of(sitting, *step, *nth) == Some(speaker));
            }
        }
        Topic::Undo => {
            let own = |plan: &&&LivePlan| plan.history.last().is_some_and(|last| last.by == speaker);
            let plans = sitting.room.plans();
            let newest = plans.iter().filter(own).max_by_key(|plan| plan.history.last().map(|last| last.at));
            let newest = newest.map(|plan| plan.serial);
            keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| Some(plan.serial) == newest));
            keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| !plan.history.is_empty()));
        }
        Topic::Steer => keep(sitting, &may::steer),
        Topic::Job { step: None, .. } | Topic::Asked(None) | Topic::Amend | Topic::Look | Topic::Free => {}
    }
    if !matches!(topic, Topic::Asked(_)) {
        keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| Some(plan.host) == speaker));
    }
    match topic {
        Topic::Asked(Some(_)) => {}
        Topic::Job { step: Some((step, nth)), take: true } => {
            keep(sitting, &|sitting| owner_of(sitting, *step, *nth) == Some(None));
        }
        _ => keep(sitting, &|sitting| {
            hand(sitting).is_some_and(|plan| plan.waiting().any(|job| job.owner.is_some() && job.owner == speaker))
        }),
    }
    match (left.as_slice(), topic) {
        ([one], _) => Which::One(*one),
        ([first, ..], Topic::Free) => Which::One(*first),
        (_, Topic::Look | Topic::Asked(_) | Topic::Heat { .. }) => Which::Each(left),
        _ => Which::Unclear(left),
    }
}

fn hand<'a>(sitting: &'a Sitting<'_>) -> Option<&'a LivePlan> {
    sitting.room.plan.as_ref()
}

/// Who has the job of the plan in hand.
fn owner_of(sitting: &Sitting<'_>, step: Step, nth: Option<u8>) -> Option<Option<PersonId>> {
    let it = jobs::by_step(sitting, step, nth)?;
    Some(hand(sitting)?.job(it.step, it.nth)?.owner)
}

/// Whether a thermometer may be in the bird of that plan.
fn cooks(sitting: &Sitting<'_>, serial: u32) -> bool {
    let plans = sitting.room.plans();
    plans
        .iter()
        .any(|plan| plan.serial == serial && plan.on_since(sitting.now).is_some() && (!plan.is_off() || rests(plan)))
}

/// Off the heat and whole, as far as anyone has said.
fn rests(plan: &LivePlan) -> bool {
    let carved = plan.facts.iter().any(|fact| fact.done && fact.step == Step::Carve.name());
    alarms::off_at(plan).is_some() && !carved
}

/// Over the heat now.
fn is_on(plan: &LivePlan, now: Moment) -> bool {
    plan.on_since(now).is_some() && !plan.is_off()
}

/// Two numbers for one place: no one bird has them.
fn reads_twice(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let twice = matches!(reading::read_log(text, &sitting.ground()), Err(Problem::TooManyReadings));
    twice && any(sitting, readings::expected)
}
