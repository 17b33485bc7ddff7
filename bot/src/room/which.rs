//! Which of several birds is meant.
//!
//! A button, or the message replied to, says it outright. Else the words do ("Rosa's bird", "the duck", "the smoker one"),
//! else that it makes sense for one only, else that it is the speaker's own, else that the speaker has jobs in it. Where
//! that leaves two, the one who spoke is asked, and what they said waits. With one plan in the room nothing here is looked at.

use super::action::Action;
use super::heard::Document;
use super::state::{LivePlan, Unsure};
use super::turn::{How, Say, To};
use super::{BellKind, PersonId, Sitting, amend, birds, calls, jobs, logs, may, moves, planning, readings, reports};
use crate::reading::command::{Address, read_command};
use crate::reading::sentence::Sentence;
use crate::reading::{self, Problem, Report, fold};
use crate::words::{Arg, Text};
use carvetime_core::bird::Kind;
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::in_grams;
use carvetime_core::roast::Cooker;
use chrono::{DateTime, TimeDelta, Utc};

/// Birds within this part of each other's weight are not told apart by it.
const SAME_WEIGHT: f64 = 0.03;
/// As much as waits for an answer; the oldest makes room.
const MOST_UNSURE: usize = 8;
/// What was said so long ago is not acted on any more.
const KEPT: TimeDelta = TimeDelta::hours(12);

/// What is said of a bird, as far as it matters for which.
enum Topic {
    /// Thermometer readings; a number alone answers a question.
    Readings { bare: bool, edited: bool },
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
    /// No plan in particular.
    Free,
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
    let named = names(sitting, text);
    if let Some((number, serial)) = named.as_deref().and_then(|named| answers(sitting, text, named)) {
        return told(sitting, number, serial);
    }
    if let Some(asked) = answers_both(sitting, text) {
        for serial in all(sitting) {
            if !sitting.room.unsure.iter().any(|unsure| unsure.number == asked.number) {
                sitting.room.unsure.push(asked.clone());
            }
            told(sitting, asked.number, serial);
        }
        return;
    }
    let several = named.is_none() && names_several(sitting, text);
    let (topic, text) = topic(sitting, text, addressed, edited, named.is_some());
    if several && (matches!(topic, Topic::Readings { .. }) || reads_twice(sitting, &text)) {
        // Whose number is whose is not for guessing.
        sitting.answer(Text::new("birds-each"));
        return;
    }
    let serials = match which(sitting, &topic, named) {
        Which::One(serial) => vec![serial],
        Which::Each(serials) => serials,
        Which::Unclear(serials) => {
            return ask(sitting, &serials, |number, by, at| Unsure {
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
            if let Which::One(serial) = which(sitting, &Topic::Free, None) {
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
    match (which(sitting, &Topic::Readings { bare: false, edited: false }, None), content) {
        // What waits is kept thinned: a file may be large.
        (Which::Unclear(serials), Document::Text(text)) => match reading::read_table(text) {
            Ok(table) => ask(sitting, &serials, |number, by, at| Unsure {
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
fn about(sitting: &mut Sitting<'_>, serial: u32) {
    sitting.hold(Some(serial));
    sitting.about = true;
}

fn has(sitting: &Sitting<'_>, serial: u32) -> bool {
    sitting.room.plans().iter().any(|plan| plan.serial == serial)
}

// ---- asking

fn ask(sitting: &mut Sitting<'_>, serials: &[u32], unsure: impl FnOnce(u32, PersonId, Moment) -> Unsure) {
    let Some(who) = sitting.speaker() else { return sitting.notice(Text::new("room-need-person")) };
    let now = sitting.now;
    let mut quoted = String::new();
    let number = keep(sitting, |number| {
        let unsure = unsure(number, who, now);
        quoted = moves::clip(unsure.log.as_deref().unwrap_or(&unsure.text));
        unsure
    });
    let buttons: Vec<_> = sitting
        .room
        .plans()
        .iter()
        .filter(|plan| serials.contains(&plan.serial))
        .filter_map(|plan| {
            let label = birds::label(sitting, plan)?;
            Some(super::sitting::labelled(label, &Action::Bird(who, number, plan.serial)))
        })
        .collect();
    let say = sitting.answer(Text::new("birds-which").with("text", Arg::Verbatim(quoted))).key(key(number));
    for button in buttons {
        say.row([button]);
    }
}

/// Words that were meant for no one in particular, with what they would change: heard as told to the bot once their speaker says so.
pub(super) fn offer(sitting: &mut Sitting<'_>, text: &str, change: Text) {
    if let Some(who) = sitting.speaker() {
        offer_to(sitting, who, text, change);
    }
}

/// The same, where somebody else is to say whether they were meant.
pub(super) fn offer_to(sitting: &mut Sitting<'_>, who: PersonId, text: &str, change: Text) {
    let Some(serial) = sitting.room.plan.as_ref().map(|plan| plan.serial) else { return };
    let (text, at) = (text.to_owned(), sitting.now);
    let number = keep(sitting, |number| Unsure {
        number,
        by: who,
        at,
        text,
        log: None,
        addressed: true,
        edited: false,
        passed: false,
    });
    let yes = super::sitting::button("room-button-amend", &Action::Bird(who, number, serial));
    sitting.answer(change).key(key(number)).row([yes]);
}

/// "Yes", typed by whom a change was just offered to, instead of the button. `false`: none was.
pub(super) fn agreed(sitting: &mut Sitting<'_>, text: &str, addressed: bool, reply_to: Option<&str>) -> bool {
    // Beside another bird what lies open may be which of them was meant.
    let serial = sitting.room.plan.as_ref().filter(|_| sitting.room.others.is_empty()).map(|plan| plan.serial);
    let (Some(who), Some(serial)) = (sitting.speaker(), serial) else { return false };
    if sitting.room.drafts.contains_key(&who) || reading::read_willing(text, sitting.lexicon()).is_none() {
        return false;
    }
    let Some(number) = offered(sitting, who, addressed, reply_to) else { return false };
    told(sitting, number, serial);
    true
}

/// What was offered to that person, as far as a bare yes or no is to it: the next they say, or a reply to it.
fn offered(sitting: &Sitting<'_>, who: PersonId, addressed: bool, reply_to: Option<&str>) -> Option<u32> {
    const LATELY: chrono::TimeDelta = chrono::TimeDelta::minutes(5);
    let now = sitting.now;
    let open = |unsure: &&Unsure| {
        let fresh = !addressed && !unsure.passed && now - unsure.at <= LATELY;
        unsure.by == who && unsure.log.is_none() && (fresh || reply_to == Some(key(unsure.number).as_str()))
    };
    sitting.room.unsure.iter().rev().find(open).map(|unsure| unsure.number)
}

/// "No, leave it", of the one a change was just offered to: it goes. `false`: none was.
pub(super) fn declined(sitting: &mut Sitting<'_>, who: PersonId) -> bool {
    let Some(number) = offered(sitting, who, false, None) else { return false };
    sitting.room.unsure.retain(|unsure| unsure.number != number);
    sitting.answer(Text::new("room-kept-going")).key(key(number)).how(How::Edit);
    true
}

/// Keeps what waits for an answer; its number.
fn keep(sitting: &mut Sitting<'_>, unsure: impl FnOnce(u32) -> Unsure) -> u32 {
    sitting.room.unsure_made = sitting.room.unsure_made.wrapping_add(1);
    let number = sitting.room.unsure_made;
    let now = sitting.now;
    let waiting = &mut sitting.room.unsure;
    waiting.retain(|old| now - old.at <= KEPT);
    if waiting.len() >= MOST_UNSURE {
        waiting.remove(0);
    }
    waiting.push(unsure(number));
    number
}

fn key(number: u32) -> String {
    format!("which-{number}")
}

/// "The duck", from one who was asked which: the question, and the plan.
fn answers(sitting: &Sitting<'_>, text: &str, named: &[u32]) -> Option<(u32, u32)> {
    let speaker = sitting.speaker();
    let [serial] = *named else { return None };
    let asked = sitting.room.unsure.iter().rev().find(|unsure| Some(unsure.by) == speaker)?;
    // "The small one": what stands around the name says nothing.
    let rest = unnamed(sitting, text);
    let says = |part: &&str| {
        let sentence = Sentence::read(part, sitting.lexicon());
        let article = sentence.is(0, "number-1") || sentence.is(0, "number-article");
        !article && !sitting.lexicon().talk(&word(part), "dish-link")
    };
    let only = !text.trim_start().starts_with('/') && rest.split_whitespace().filter(says).count() <= 1;
    only.then_some((asked.number, serial))
}

/// "Both", from one who was asked which.
fn answers_both(sitting: &Sitting<'_>, text: &str) -> Option<Unsure> {
    let speaker = sitting.speaker();
    let asked = sitting.room.unsure.iter().rev().find(|unsure| Some(unsure.by) == speaker && unsure.log.is_none())?;
    let words = sitting.lexicon().talk_words(text).join(" ");
    sitting.lexicon().talk(&words, "both").then(|| asked.clone())
}

/// Told which: what was said is heard now, as of when it was said.
pub(super) fn told(sitting: &mut Sitting<'_>, number: u32, serial: u32) {
    let now = sitting.now;
    let place = sitting.room.unsure.iter().position(|unsure| unsure.number == number && now - unsure.at <= KEPT);
    let Some(place) = place.filter(|_| has(sitting, serial)) else {
        return sitting.notice(Text::new("birds-which-gone"));
    };
    let unsure = sitting.room.unsure.remove(place);
    let room = To::Room(sitting.room.id);
    sitting.say(Say::of(room, Vec::new())).key(key(number)).how(How::Close);
    about(sitting, serial);
    sitting.now = unsure.at;
    match unsure.log {
        Some(name) => logs::sent(sitting, &name, &Document::Text(unsure.text)),
        None => super::said(sitting, &unsure.text, unsure.addressed, None, unsure.edited),
    }
    sitting.now = now;
}

// ---- what it is about

/// What the words are about, and the words as they are to be read: the name of a bird may hide the rest.
fn topic(sitting: &mut Sitting<'_>, text: &str, addressed: bool, edited: bool, named: bool) -> (Topic, String) {
    let Address::Command(command) = read_command(text, None) else {
        let plain = text.trim();
        let bare = named.then(|| unnamed(sitting, plain));
        let sizeless = named.then(|| without_size(sitting, plain));
        for words in [Some(plain.to_owned()), sizeless, bare].into_iter().flatten() {
            let topic = plain_topic(sitting, &words, addressed, edited);
            if !matches!(topic, Topic::Free) {
                return (topic, words);
            }
        }
        return (Topic::Free, plain.to_owned());
    };
    let name = command.name.to_ascii_lowercase();
    let rest = if named { unnamed(sitting, command.rest) } else { command.rest.to_owned() };
    let topic = match name.as_str() {
        // Whoever logs a number need not have been asked for it.
        "log" => return (Topic::Readings { bare: false, edited }, text.to_owned()),
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
    let bare = any(sitting, |sitting| jobs::is_asked_for_readings(sitting) || edited && readings::corrects(sitting));
    if any(sitting, readings::expected)
        && let Ok(Some(log)) = reading::read_log(text, &sitting.ground())
        && (bare || log.readings.iter().any(|reading| reading.place.is_some()))
    {
        let bare = log.readings.iter().all(|reading| reading.place.is_none());
        return Topic::Readings { bare, edited };
    }
    if edited || planning::is_wish(sitting, text, addressed) {
        return Topic::Free;
    }
    let lexicon = sitting.lexicon();
    if addressed && (reading::asks_when(text, lexicon) || reading::asks_what_is_next(text, lexicon)) {
        return Topic::Look;
    }
    if let Some(report) = reading::read_report(text, lexicon) {
        return Topic::Report(report);
    }
    let planning = sitting.speaker().is_some_and(|who| sitting.room.drafts.contains_key(&who));
    if planning || !addressed || super::questions::is_question(sitting, text) {
        return Topic::Free;
    }
    if any(sitting, |sitting| amend::would(sitting, text)) {
        return Topic::Amend;
    }
    if reading::is_undo(text, sitting.lexicon()) { Topic::Undo } else { Topic::Free }
}

/// Whether it holds for some plan.
fn any(sitting: &mut Sitting<'_>, test: impl Fn(&Sitting<'_>) -> bool) -> bool {
    !those(sitting, &all(sitting), test).is_empty()
}

fn all(sitting: &Sitting<'_>) -> Vec<u32> {
    sitting.room.plans().iter().map(|plan| plan.serial).collect()
}

/// The plans it holds for, each tried in hand.
fn those(sitting: &mut Sitting<'_>, serials: &[u32], test: impl Fn(&Sitting<'_>) -> bool) -> Vec<u32> {
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
fn which(sitting: &mut Sitting<'_>, topic: &Topic, named: Option<Vec<u32>>) -> Which {
    let mut left = named.unwrap_or_else(|| all(sitting));
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
        Topic::Readings { bare, edited } => {
            if *edited {
                keep(sitting, &readings::corrects);
            }
            keep(sitting, &readings::expected);
            keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| is_on(plan, sitting.now)));
            if *bare {
                keep(sitting, &jobs::is_asked_for_readings);
            }
        }
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
        Topic::Job { step: None, .. } | Topic::Amend | Topic::Look | Topic::Free => {}
    }
    keep(sitting, &|sitting| hand(sitting).is_some_and(|plan| Some(plan.host) == speaker));
    match topic {
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
        (_, Topic::Look) => Which::Each(left),
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

/// Over the heat now.
fn is_on(plan: &LivePlan, now: Moment) -> bool {
    plan.on_since(now).is_some() && !plan.is_off()
}

// ---- names

/// The plans the words name, if they tell some from others: by host, by bird, by cooker.
fn names(sitting: &Sitting<'_>, text: &str) -> Option<Vec<u32>> {
    let mut left = all(sitting);
    let all = left.len();
    for named in named_by(sitting, text) {
        if !named.is_empty() {
            left.retain(|serial| named.contains(serial));
        }
    }
    // "Tom put Rosa's on" names both, "Tom's goose" may name neither: then the words tell nothing.
    (!left.is_empty() && left.len() < all).then_some(left)
}

/// Whether the words tell of several birds, each by its name: "turkey 150, duck 140".
fn names_several(sitting: &Sitting<'_>, text: &str) -> bool {
    let alike = |of: fn(&LivePlan) -> String, serials: &[u32]| {
        let plans = sitting.room.plans();
        let mut kinds = plans.iter().filter(|plan| serials.contains(&plan.serial)).map(|plan| of(plan));
        let first = kinds.next();
        kinds.all(|kind| Some(kind) == first)
    };
    let [by_host, by_bird, by_cooker, by_size] = named_by(sitting, text);
    let host: fn(&LivePlan) -> String = |plan| plan.host.0.to_string();
    let bird: fn(&LivePlan) -> String = |plan| super::order::kind(&plan.wish).name().into();
    let cooker: fn(&LivePlan) -> String = |plan| is_smoked(plan).to_string();
    !alike(host, &by_host) || !alike(bird, &by_bird) || !alike(cooker, &by_cooker) || by_size.len() > 1
}

/// Two numbers for one place: no one bird has them.
fn reads_twice(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let twice = matches!(reading::read_log(text, &sitting.ground()), Err(Problem::TooManyReadings));
    twice && any(sitting, readings::expected)
}

/// The plans whose host, whose bird, whose cooker, whose size is named.
fn named_by(sitting: &Sitting<'_>, text: &str) -> [Vec<u32>; 4] {
    let words: Vec<String> = text.split_whitespace().map(word).collect();
    let sentence = Sentence::read(&words.join(" "), sitting.lexicon());
    let by_host = |plan: &LivePlan| words.iter().any(|word| is_name_of(sitting, plan.host, word));
    // "Turkey breast 148": the breast of the turkey, unless one of the birds is a breast.
    let breast_alone = sitting.room.plans().iter().any(|plan| super::order::kind(&plan.wish) == Kind::TurkeyBreast);
    let by_bird = |plan: &LivePlan| {
        let kind = super::order::kind(&plan.wish);
        let whole = kind == Kind::Turkey && !breast_alone;
        (0..sentence.len())
            .filter_map(|at| sentence.of(at, "bird-"))
            .any(|named| named == kind.name() || whole && named == Kind::TurkeyBreast.name())
    };
    let by_cooker = |plan: &LivePlan| (0..sentence.len()).any(|at| cooks_in(&sentence, at, plan));
    let [lightest, heaviest] = by_weight(sitting);
    let by_size = |plan: &LivePlan| {
        let named = |concept: &str, serial: Option<u32>| serial == Some(plan.serial) && sentence.has(concept);
        let mass = |at: usize| sentence.amount(at).and_then(|amount| amount.mass()).map(in_grams);
        let weighs = |told: f64| plan.wish.mass_g.is_some_and(|mass| (told - mass).abs() < mass * SAME_WEIGHT);
        named("size-small", lightest) || named("size-big", heaviest) || (0..sentence.len()).filter_map(mass).any(weighs)
    };
    [&by_host as &dyn Fn(&LivePlan) -> bool, &by_bird, &by_cooker, &by_size].map(|by| {
        let plans = sitting.room.plans();
        plans.iter().filter(|plan| by(plan)).map(|plan| plan.serial).collect()
    })
}

/// The lightest and the heaviest bird, where they differ.
fn by_weight(sitting: &Sitting<'_>) -> [Option<u32>; 2] {
    let plans = sitting.room.plans();
    let mut masses: Vec<(f64, u32)> = plans.iter().filter_map(|plan| Some((plan.wish.mass_g?, plan.serial))).collect();
    masses.sort_by(|one, other| one.0.total_cmp(&other.0));
    match (masses.first(), masses.last()) {
        (Some(light), Some(heavy)) if heavy.0 > light.0 * (1.0 + SAME_WEIGHT) => [Some(light.1), Some(heavy.1)],
        _ => [None, None],
    }
}

fn is_smoked(plan: &LivePlan) -> bool {
    plan.wish.cooker.as_deref() == Some(Cooker::Smoker.name())
}

/// Whether the piece names the cooker of the plan. "Pit" is the air of any of them.
fn cooks_in(sentence: &Sentence, at: usize, plan: &LivePlan) -> bool {
    let named = sentence.of(at, "cooker-").filter(|_| fold(sentence.raw(at)) != reading::Place::Pit.name());
    named.is_some_and(|cooker| is_smoked(plan) == (cooker == Cooker::Smoker.name()))
}

/// A word as names are compared: folded, without signs around it or the ending of a genitive.
fn word(text: &str) -> String {
    let folded = fold(text);
    let bare = folded.trim_matches(|c: char| !c.is_alphanumeric());
    bare.strip_suffix("'s").unwrap_or(bare).to_owned()
}

/// Whether a word names a person: the first part of their name, or their handle.
fn is_name_of(sitting: &Sitting<'_>, person: PersonId, told: &str) -> bool {
    let Some(person) = sitting.people.get(&person) else { return false };
    let first = person.name.split_whitespace().map(word).find(|part| !part.is_empty());
    let handle = person.username.as_deref().map(word);
    // "Rosas": a genitive without its sign.
    [first, handle].into_iter().flatten().any(|name| told == name || told.strip_suffix('s') == Some(name.as_str()))
}

/// The words without "the big one": "big one in the oven" is in the oven.
fn without_size(sitting: &Sitting<'_>, text: &str) -> String {
    let parts: Vec<&str> = text.split_whitespace().collect();
    let is = |at: usize, what: &dyn Fn(&Sentence) -> bool| {
        parts.get(at).is_some_and(|part| what(&Sentence::read(&word(part), sitting.lexicon())))
    };
    let size = |at: usize| is(at, &|told| told.len() == 1 && told.of(0, "size-").is_some());
    let one = |at: usize| is(at, &|told| told.is(0, "number-1"));
    let kept = (0..parts.len()).filter(|at| !(size(*at) || *at > 0 && size(at - 1) && one(*at)));
    kept.filter_map(|at| parts.get(at).copied()).collect::<Vec<_>>().join(" ")
}

/// The words without those that only say which bird.
fn unnamed(sitting: &Sitting<'_>, text: &str) -> String {
    let hosts: Vec<PersonId> = sitting.room.plans().iter().map(|plan| plan.host).collect();
    let names = |part: &str| {
        let told = word(part);
        let sentence = Sentence::read(&told, sitting.lexicon());
        let of = |group: &str| sentence.of(0, group).is_some();
        let bird = sentence.len() == 1 && (of("bird-") || of("cooker-") || of("size-"));
        bird || hosts.iter().any(|host| is_name_of(sitting, *host, &told))
    };
    let parts: Vec<&str> = text.split_whitespace().collect();
    let naming: Vec<bool> = parts.iter().map(|part| names(part)).collect();
    // "Pato de Tom": what stands between two of them goes with them.
    let between = |at: usize| at > 0 && naming.get(at - 1) == Some(&true) && naming.get(at + 1) == Some(&true);
    let kept = (0..parts.len()).filter(|at| !(naming.get(*at) == Some(&true) || between(*at)));
    kept.filter_map(|at| parts.get(at).copied()).collect::<Vec<_>>().join(" ")
}
