//! The conversation as a pure function: what was heard, the state it concerns and the time give a [`Turn`].
//!
//! Start at [`decide`]. A turn is worked out on a `Sitting` (`sitting.rs`); each file beside it owns one thing people come
//! for. Reads no clock, opens no file, sends nothing, holds no sentence: messages are named and get their words in
//! [`crate::words`].

mod after;
mod air;
mod alarms;
mod allergy;
mod amend;
mod answered_by;
mod aside;
mod asked_of_dishes;
mod asked_of_jobs;
mod asked_setting;
mod asked_which;
mod at_home;
mod at_rest;
mod back_on;
mod behind;
mod bells;
mod birds;
mod board;
mod bought;
mod broth;
mod burns_on;
mod calls;
mod comings;
mod cooled;
mod digits_apart;
mod diner;
mod dish_hour;
mod dish_is_in;
mod dishes;
mod done_yet;
mod dose;
mod doubted;
mod each_its_own;
mod eve;
mod export;
mod farewell;
mod feedback;
mod forecast;
mod from_afar;
mod frozen_on;
mod hands;
mod heat;
mod held_up;
mod help;
mod hot_day;
mod hot_road;
mod ice;
mod inside;
mod invites;
mod job_hour;
mod jobs;
mod kept_hot;
mod ladder;
mod late;
mod live;
mod logs;
mod may;
mod misplaced;
mod misread;
mod moves;
mod naming;
mod near_look;
mod never_off;
mod new_bird;
mod no_heat;
mod not_bought;
mod not_lit;
mod of_dishes;
mod off_dial;
mod offered;
mod offering;
mod order;
mod other_cooker;
mod overheard;
pub(crate) mod own_kitchen;
mod owners;
mod peril;
mod pink;
pub(crate) mod plan_words;
mod planning;
mod proposal;
mod pull_ahead;
mod questions;
mod raw;
mod readings;
mod reheated;
mod reports;
mod retold;
mod retracted;
mod sag;
mod salted;
mod scales;
mod settings;
mod shares;
mod sitting;
mod slips;
mod spoiled;
mod stepping_down;
mod stood_out;
mod stray;
mod stuffing;
mod swap;
mod taken_home;
mod there;
mod tongue;
mod undo;
mod unwell;
mod wandering;
mod wanted;
mod warm_thaw;
mod way_out;
mod went_in;
mod which;
mod which_dish;

pub mod action;
pub mod chart;
pub mod heard;
pub mod sheet;
pub mod state;
pub mod turn;

pub use forecast::why_wide;
pub use from_afar::{has_part, is_answered, is_found, is_lost, is_of_a_groups_bird};
pub use heard::{Document, Heard, PersonId, RoomId, RoomKind, Speaker, What};
pub use invites::{LINK, payload};
pub use turn::{Bell, BellKind, Button, How, Say, To, Turn, Urgency};

use crate::reading::command::{Address, Command, read_command};
use crate::words::Text;
use action::Action;
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::{Temperature, fahrenheit};
use sitting::Sitting;
use state::{Person, Room};
use std::collections::BTreeMap;

/// The state a turn concerns: the room, and what is known of the people in it. A speaker met for the first time is not among them.
#[derive(Debug, Clone, PartialEq)]
pub struct Scene {
    /// The room. A room nobody has spoken in yet comes as [`Room::new`].
    pub room: Room,
    /// Its people.
    pub people: BTreeMap<PersonId, Person>,
    /// Chance for what nobody may guess; fresh every turn. 0: there is none, and nothing is handed out that needs it.
    pub chance: u128,
}

/// What the room does about `heard`. Reads no clock, opens no file, sends nothing.
pub fn decide(scene: &Scene, heard: &Heard, now: Moment) -> Turn {
    crate::reading::once(|| turn(scene, heard, now))
}

fn turn(scene: &Scene, heard: &Heard, now: Moment) -> Turn {
    let mut sitting = Sitting::new(scene, heard, now);
    match &heard.what {
        What::Said { text, reply_to, .. } if sitting.routed() => match invites::payload(text) {
            Some((_, secret)) => invites::followed(&mut sitting, secret),
            None if !may::belongs(&sitting)
                || peril::told(&mut sitting, text, true)
                || diner::swallowed(&mut sitting, text)
                || unwell::told(&mut sitting, text, true) => {}
            None => which::said(&mut sitting, text, true, reply_to.as_deref(), false),
        },
        What::Said { text, addressed, reply_to, edited } => {
            if let Some(who) = sitting.speaker() {
                tongue::hear(&mut sitting, who, text);
            }
            if !peril::told(&mut sitting, text, *addressed)
                && !diner::swallowed(&mut sitting, text)
                && !unwell::told(&mut sitting, text, *addressed)
                && !aside::told(&mut sitting, text, *addressed || *edited || reply_to.is_some())
            {
                which::said(&mut sitting, text, *addressed, reply_to.as_deref(), *edited);
            }
        }
        What::Pressed { data, .. } => which::pressed(&mut sitting, data),
        What::Located { latitude, longitude } => settings::located(&mut sitting, *latitude, *longitude),
        What::Document { name, content } => which::sent(&mut sitting, name, content),
        What::Unreadable => unreadable(&mut sitting),
        What::Flooded { press } => flooded(&mut sitting, press.clone()),
        What::Welcomed => comings::welcomed(&mut sitting),
        What::Removed => comings::removed(&mut sitting),
        What::Came { who } => sitting.room.left.retain(|left| left != who),
        What::Left { who } => comings::left(&mut sitting, *who),
        What::NotPinned => comings::not_pinned(&mut sitting),
        What::Migrated { to } => comings::migrated(&mut sitting, *to),
        What::Rang { bells } => which::rang(&mut sitting, bells),
    }
    sitting.rise()
}

/// 165 °F everywhere in the bird: the authority's figure.
fn target() -> Temperature {
    fahrenheit(165.0)
}

/// Longest text read: a dinner is told in less.
const LONGEST_TEXT: usize = 1000;

fn said(sitting: &mut Sitting<'_>, text: &str, addressed: bool, reply_to: Option<&str>, edited: bool) {
    let length = text.chars().count();
    if length > LONGEST_TEXT {
        if addressed {
            sitting.answer(
                Text::new("room-too-long")
                    .with("length", crate::words::Arg::Count(length as i64))
                    .with("most", crate::words::Arg::Count(LONGEST_TEXT as i64)),
            );
        }
        return;
    }
    match read_command(text, None) {
        Address::Command(command) => ordered(sitting, command, edited),
        Address::Other => {}
        Address::Plain(plain) => plainly(sitting, plain, addressed, reply_to, edited),
    }
}

fn ordered(sitting: &mut Sitting<'_>, command: Command<'_>, edited: bool) {
    let rest = command.rest;
    match command.name.to_ascii_lowercase().as_str() {
        "start" => help::start(sitting, How::New),
        "help" => help::help(sitting),
        "settings" => settings::ordered(sitting, rest),
        "plan" => plan(sitting, rest),
        "board" => {
            if sitting.room.plan.is_some() {
                board::repost(sitting);
            } else {
                sitting.answer(Text::new("room-no-plan"));
            }
        }
        "salt" => questions::salt(sitting, rest),
        "ask" => questions::asked(sitting, rest),
        "log" => readings::ordered(sitting, rest, edited),
        "when" => readings::when(sitting),
        "move" => moves::told(sitting, rest),
        "take" => match hands::named(sitting, rest) {
            Some(person) => step_named(sitting, rest, move |sitting, it| hands::ask(sitting, it, person)),
            None => match shares::stranger(sitting, rest) {
                Some(told) => shares::unknown(sitting, &told),
                None => step_named(sitting, rest, jobs::take),
            },
        },
        "drop" if crate::reading::is_everything(rest, sitting.lexicon()) => stepping_down::everything(sitting),
        "drop" => step_named(sitting, rest, jobs::drop),
        "undo" if sitting.room.plan.is_none() && retracted::back(sitting) => {}
        "undo" => undo::last(sitting),
        "export" => export::all(sitting),
        "stop" => farewell::stop(sitting),
        "forget" => farewell::forget(sitting),
        _ => help::unread(sitting),
    }
}

fn plan(sitting: &mut Sitting<'_>, rest: &str) {
    let Some(who) = sitting.speaker() else { return sitting.notice(Text::new("room-need-person")) };
    if rest.is_empty() {
        return planning::asked(sitting, who);
    }
    if dishes::of_the_plan(sitting, rest) || dishes::shelves_told(sitting, rest) {
        return;
    }
    if new_bird::planned(sitting, who, rest) {
        return;
    }
    let (mut wish, problems) = planning::read(sitting, rest);
    // "/plan dinner is an hour later", "/plan no salt" of a dinner that is planned change that one.
    // "/plan 16 lb" of a bird that is planned is that one's weight.
    let bird = wish.kind.is_some() || wish.mass_g.is_some() && sitting.room.plan.is_none();
    let begun = bird || wish.dinner.is_some() || wish.dinner_day.is_some() || sitting.room.drafts.contains_key(&who);
    let moves = moves_standing(sitting, who, &wish);
    if sitting.room.plan.is_some() && (!begun || moves) && amend::told(sitting, who, rest, true) {
        return;
    }
    if let Some(dinner) = wish.dinner.filter(|_| moves && wish.adults.is_none()) {
        return moves::already(sitting, dinner);
    }
    if wish == crate::reading::Wish::default() && problems.is_empty() {
        sitting.answer(Text::new("room-plan-unread").with("text", crate::words::Arg::Verbatim(moves::clip(rest))));
        return;
    }
    bought::keeps_packers_salt(sitting, who, rest, &mut wish);
    planning::told(sitting, who, wish, &problems);
}

/// "/plan dinner Thursday 5 pm" where Thursday's dinner stands: another hour of that one, and no second dinner.
fn moves_standing(sitting: &Sitting<'_>, who: PersonId, wish: &crate::reading::Wish) -> bool {
    let bird = wish.kind.is_some() || wish.mass_g.is_some();
    let standing = sitting.room.plan.as_ref().and_then(|plan| plan.wish.dinner).filter(|dinner| *dinner > sitting.now);
    let day = |at: Moment| at.with_timezone(&sitting.zone_or_utc()).date_naive();
    let same = |told: Moment| standing.is_some_and(|dinner| day(told) == day(dinner));
    !bird && !sitting.room.drafts.contains_key(&who) && wish.dinner.is_some_and(same)
}

fn step_named(sitting: &mut Sitting<'_>, rest: &str, act: impl FnOnce(&mut Sitting<'_>, action::JobRef)) {
    let Some(plan) = &sitting.room.plan else {
        sitting.answer(Text::new("room-no-plan"));
        return;
    };
    let serial = plan.serial;
    if rest.is_empty() {
        return jobs::list(sitting, serial);
    }
    let lexicon = sitting.lexicon();
    let kind = || Some((crate::reading::read_kind(rest, lexicon)?, None));
    let step = crate::reading::read_step(rest, lexicon).or_else(kind);
    match dishes::job(sitting, rest).or_else(|| step.and_then(|(step, nth)| jobs::by_step(sitting, step, nth))) {
        Some(it) => act(sitting, it),
        None => {
            sitting.answer(Text::new("room-step-unread").with("text", crate::words::Arg::Verbatim(moves::clip(rest))));
            jobs::list(sitting, serial);
        }
    }
}

/// Words without a command: readings, a wish, an answer to what was asked, a job done, a change of mind, a question; else
/// one short line of help to those who spoke to the bot.
fn plainly(sitting: &mut Sitting<'_>, text: &str, addressed: bool, reply_to: Option<&str>, edited: bool) {
    if addressed && !edited && planning::discard_told(sitting, text) {
        return;
    }
    if text.is_empty() {
        return;
    }
    if !edited && asked_setting::answered(sitting, text) {
        return;
    }
    // "Score 21 to 17", "it's frozen outside": of no bird, no oven and no clock.
    let lexicon = sitting.lexicon();
    if crate::reading::tells_a_score(text, lexicon) || crate::reading::tells_of_frost(text, lexicon) {
        if addressed {
            help::unread(sitting);
        }
        return;
    }
    if !addressed && crate::reading::speaks_of_own_body(text, lexicon) {
        return;
    }
    if !edited && allergy::told(sitting, text, addressed) {
        return;
    }
    if !edited && diner::asked(sitting, text, addressed) {
        return;
    }
    if let Some(it) = reply_to.and_then(|key| replied_job(sitting, key)) {
        if crate::reading::is_done(text, sitting.lexicon()) {
            return jobs::done(sitting, it);
        }
        if !edited && dish_is_in::replied(sitting, text, it) {
            return;
        }
        if not_bought::answered(sitting, text, Some(it)) {
            return;
        }
        if it.step == Step::Check && readings::heard(sitting, text, true, edited) {
            return;
        }
    }
    if !edited {
        let on = reply_to.and_then(|key| replied_job(sitting, key));
        if hands::replied(sitting, text, addressed, reply_to)
            || asked_which::agreed(sitting, text, addressed, reply_to)
            || reply_to.is_none() && addressed && not_bought::answered(sitting, text, None)
            || wanted::answered(sitting, text, reply_to)
            || reply_to.is_none() && offered::answered(sitting, text)
            || questions::completed(sitting, text)
            || feedback::told(sitting, text, addressed)
            || misread::told(sitting, text)
            || retracted::told(sitting, text, addressed)
            || farewell::told(sitting, text, reply_to)
            || stepping_down::told(sitting, text, addressed, on)
        {
            return;
        }
    }
    if !edited && (new_bird::told(sitting, text, addressed) || spoiled::of_gone(sitting, text)) {
        return;
    }
    if !edited && reheated::told(sitting, text) {
        return;
    }
    if !edited && pull_ahead::told(sitting, text, addressed) {
        return;
    }
    // "Do I take it out of the fridge the night before?", of a plan that lies open: it is no wish to cook it then.
    if !edited && addressed && questions::asks_of_tempering(sitting, text) {
        return questions::told(sitting, text);
    }
    // "Breast should be 165": of what it has to reach, and no turkey breast is planned.
    if !edited && addressed && crate::reading::wants_degrees(text, &sitting.ground()) {
        return questions::told(sitting, text);
    }
    if !edited && dishes::timed(sitting, text) {
        return;
    }
    if !edited && (dish_is_in::told(sitting, text, addressed) || asked_of_dishes::told(sitting, text, addressed)) {
        return;
    }
    let done = |sitting: &mut Sitting<'_>| match addressed {
        true => done_yet::told(sitting, text),
        false => done_yet::overheard(sitting, text),
    };
    if !edited && taken_home::told(sitting, text) {
        return;
    }
    if !edited
        && (never_off::asked(sitting, text) || pink::told(sitting, text) || late::guests(sitting, text, addressed))
    {
        return;
    }
    if !edited && (done(sitting) || done_yet::pulled_at(sitting, text)) {
        return;
    }
    let dish = !edited && sitting.room.plan.is_some();
    if dish
        && (addressed && crate::reading::is_dish_beside(text, &sitting.ground()) && dishes::told(sitting, text)
            || dishes::brought(sitting, text)
            || addressed && dishes::retold(sitting, text))
    {
        return;
    }
    if !edited
        && (not_lit::told(sitting, text)
            || off_dial::told(sitting, text, addressed)
            || hot_day::told(sitting, text, addressed)
            || wandering::told(sitting, text, addressed)
            || digits_apart::told(sitting, text)
            || went_in::told(sitting, text)
            || stuffing::told(sitting, text))
    {
        return;
    }
    if !edited && (air::was_otherwise(sitting, text) || heat::sets_heat(sitting, text)) {
        return;
    }
    if !edited && (heat::lit(sitting, text) || slips::told(sitting, text) || slips::doubted(sitting, text)) {
        return;
    }
    if !edited && (inside::told(sitting, text, addressed) || retold::told(sitting, text, addressed)) {
        return;
    }
    if !edited && not_bought::told(sitting, text, addressed) {
        return;
    }
    if readings::expected(sitting) && (scales::disagree(sitting, text) || !edited && behind::told(sitting, text)) {
        return;
    }
    if !edited
        && (frozen_on::told(sitting, text)
            || frozen_on::worried(sitting, text)
            || warm_thaw::told(sitting, text, addressed))
    {
        return;
    }
    if !edited && (spoiled::asked(sitting, text) || no_heat::asked(sitting, text))
        || cooled::told(sitting, text, addressed, edited)
        || !edited && spoiled::told(sitting, text)
    {
        return;
    }
    // A number and nothing else, told to the bot alone while a bird cooks, is what its thermometer shows.
    let alone = addressed && text.trim().replace(',', ".").parse::<f64>().is_ok() && readings::cooks(sitting);
    let awaited = jobs::is_asked_for_readings(sitting) || reheated::is_in(sitting);
    let asked = awaited || alone || near_look::is_reading(sitting, text) || edited && readings::corrects(sitting);
    let told = readings::expected(sitting) || addressed && readings::names_meat(sitting, text);
    if told && !readings::only_asks(sitting, text) {
        // "Bird in, oven at 350", "166 breast 175 thigh, pulled it": what was done is heard with the numbers.
        let beside = if edited { None } else { crate::reading::report_beside(text, sitting.lexicon()) };
        let (before, behind) = match beside {
            Some(report) if report.step == Some(Step::On) => (Some(report), None),
            report => (None, report),
        };
        let on = before.is_some_and(|report| readings::holds(sitting, text, asked) && reports::heard(sitting, &report));
        if readings::heard(sitting, text, asked, edited) {
            if let Some(report) = behind {
                reports::heard(sitting, &report);
            }
            return;
        }
        if on {
            return;
        }
    }
    if edited || !addressed && of_other_years(sitting, text) || addressed && readings::said_before(sitting, text) {
        return;
    }
    let Some(who) = sitting.speaker() else {
        if addressed {
            sitting.notice(Text::new("room-need-person"));
        }
        return;
    };
    if proposal::asked_needs(sitting, text) {
        return;
    }
    // Of the fridge it is for the host to say among people, as a dish asks for.
    let kitchen = addressed || sitting.room.plan.is_some() && may::steer(sitting);
    if addressed && settings::quiet_told(sitting, text) || kitchen && dishes::shelves_told(sitting, text) {
        return;
    }
    if addressed && sitting.room.plan.is_some() && crate::reading::asks_of_the_dinner(text, sitting.lexicon()) {
        return readings::when(sitting);
    }
    if answered_by::told(sitting, who, text, reply_to) {
        return;
    }
    // "It weighs 3.4 kg after all", before it is on: the planned bird does.
    if let Some(weight) = crate::reading::weighs(text, sitting.lexicon())
        && sitting.room.plan.as_ref().is_some_and(|plan| plan.on_since(sitting.now).is_none() && !plan.is_off())
        && may::steer(sitting)
        && amend::told(sitting, who, &weight, true)
    {
        return;
    }
    if planning::is_wish(sitting, text, addressed) {
        plan(sitting, text);
        questions::size_first(sitting, text);
        return allergy::beside(sitting, text);
    }
    let asks_why = crate::reading::asks_why_these_times(text, sitting.lexicon())
        || crate::reading::asks_why_an_hour(text, sitting.lexicon());
    if addressed && asks_why && why(sitting, who) {
        return;
    }
    if addressed && planning::shown_again(sitting, who, text) {
        return;
    }
    if addressed && sitting.room.plan.is_some() {
        if crate::reading::asks_when(text, sitting.lexicon()) || crate::reading::asks_bare_when(text, sitting.lexicon())
        {
            return readings::when(sitting);
        }
        let lexicon = sitting.lexicon();
        if crate::reading::asks_what_is_next(text, lexicon)
            || crate::reading::asks_what_now(text, lexicon)
            || crate::reading::asks_how_it_goes(text, lexicon)
        {
            return board::repost(sitting);
        }
        if job_hour::told(sitting, text, true) || sitting.room.kind == RoomKind::Group && jobs::who(sitting, text) {
            return;
        }
    }
    if (addressed || sitting.room.kind == RoomKind::Group)
        && let Some(serial) = sitting.room.plan.as_ref().map(|plan| plan.serial)
        && crate::reading::asks_who_does_what(text, sitting.lexicon())
    {
        return jobs::list(sitting, serial);
    }
    if asked_of_jobs::on_a_day(sitting, text, addressed) {
        return;
    }
    if asked_of_jobs::told(sitting, text, addressed) {
        return;
    }
    if !addressed && overheard::told(sitting, text) {
        return;
    }
    if wanted::told(sitting, text, addressed) || shares::told(sitting, text, addressed) {
        return;
    }
    if hands::asked_by_name(sitting, text, addressed) {
        return;
    }
    if addressed && (hands::told(sitting, text) || sitting.room.plan.is_some() && dishes::told(sitting, text)) {
        return;
    }
    if amend::stuffed(sitting, text, addressed) || amend::salted_so(sitting, text, addressed) {
        return;
    }
    if other_cooker::told(sitting, text, addressed) || at_home::told(sitting, text, addressed) {
        return;
    }
    if bought::told(sitting, text) || bought::is_salted(sitting, text, addressed) || reports::told(sitting, text) {
        return;
    }
    if addressed && planning::another(sitting, who, text) {
        return;
    }
    // A question in the middle of planning is answered; the draft waits.
    // "Ok cool" asks nothing of chilling.
    let nods = crate::reading::is_assent(text, sitting.lexicon());
    let asked = !nods && questions::is_question(sitting, text) && (addressed || !questions::is_talk(sitting, text));
    let question = asked
        && !planning::is_told(sitting, who, text)
        && !planning::dates_the_pack(sitting, text)
        && !amend::changes_heat(sitting, text);
    if !question && planning::answered(sitting, who, text) {
        return;
    }
    if (addressed || late::may_mean(sitting)) && !question && late::told(sitting, text) {
        return;
    }
    if !question && held_up::told(sitting, text) {
        return;
    }
    if !question && amend::told(sitting, who, text, addressed) {
        return;
    }
    let lexicon = sitting.lexicon();
    if addressed && !question {
        if crate::reading::is_undo(text, lexicon) {
            return undo::last(sitting);
        }
        if crate::reading::is_greeting(text, lexicon) {
            return help::hello(sitting);
        }
        if crate::reading::asks_what_this_is(text, lexicon) {
            return help::how(sitting);
        }
        if crate::reading::is_help(text, lexicon) {
            return help::help(sitting);
        }
        let nods = crate::reading::is_wordless(text) && crate::reading::read_willing(text, lexicon).is_some();
        if crate::reading::is_assent(text, lexicon) || nods && planning::is_proposed(sitting, who) {
            return reports::agreed(sitting, who, text);
        }
        if crate::reading::is_thanks(text, lexicon) {
            sitting.answer(Text::new("room-welcome"));
            return;
        }
        if help::small_talk(sitting, text) {
            return;
        }
    }
    // "Pulled it. it's kinda pink tho?": what was done counts, and the rest is answered.
    if question
        && sitting.room.plan.is_some()
        && let Some(report) = crate::reading::report_beside(text, sitting.lexicon())
    {
        reports::heard(sitting, &report);
    }
    // Nothing else was understood of it.
    if addressed
        && !question
        && sitting.room.plan.is_some()
        && let Some(report) = crate::reading::report_among(text, sitting.lexicon())
    {
        reports::heard(sitting, &report);
        return;
    }
    questions::plain(sitting, text, addressed);
    // "Contains 8 % solution, do I still salt it?": answered, and kept for the plan.
    if question && addressed && planning::read(sitting, text).0.solution_percent.is_some() {
        amend::solution(sitting, who, text);
    }
}

/// Of the proposal that lies open, else of the plan. `false`: there is neither.
fn why(sitting: &mut Sitting<'_>, who: PersonId) -> bool {
    if sitting.room.drafts.contains_key(&who) {
        planning::why(sitting, who);
        return true;
    }
    let serial = sitting.room.plan.as_ref().map(|plan| plan.serial);
    serial.inspect(|serial| jobs::why(sitting, *serial)).is_some()
}

/// "We had 14 people last year", said among people: of no dinner of theirs now, and nobody was asked.
fn of_other_years(sitting: &Sitting<'_>, text: &str) -> bool {
    sitting.room.kind == RoomKind::Group
        && crate::reading::tells_of_other_years(text, sitting.lexicon())
        && crate::reading::read_report(text, sitting.lexicon()).is_none()
}

/// The job whose call was replied to.
fn replied_job(sitting: &Sitting<'_>, key: &str) -> Option<action::JobRef> {
    let (step, nth) = key.strip_prefix("job-")?.rsplit_once('-')?;
    let serial = sitting.room.plan.as_ref()?.serial;
    Some(action::JobRef { serial, step: Step::from_name(step)?, nth: nth.parse().ok()? })
}

fn pressed(sitting: &mut Sitting<'_>, data: &str) {
    if !may::belongs(sitting) {
        return sitting.notice(Text::new("room-not-here"));
    }
    let Some(action) = Action::read(data) else { return sitting.notice(Text::new("room-stale")) };
    let own_draft = match &action {
        Action::Accept(who)
        | Action::Beside(who)
        | Action::Instead(who, _)
        | Action::Bird(who, ..)
        | Action::Change(who)
        | Action::Back(who)
        | Action::WhyDraft(who)
        | Action::Discard(who)
        | Action::Reply(who, _)
        | Action::Pick(who, _, _)
        | Action::Offer(who, _) => may::owns_draft(sitting, *who),
        _ => true,
    };
    if !own_draft {
        return sitting.notice(Text::new("room-not-yours"));
    }
    match action {
        Action::Accept(who) => planning::accept(sitting, who),
        Action::Beside(who) => planning::beside(sitting, who),
        Action::Instead(who, serial) => planning::instead(sitting, who, serial),
        Action::Bird(_, number, serial) => asked_which::told(sitting, number, serial),
        Action::Change(who) => planning::change(sitting, who),
        Action::Back(who) => planning::back(sitting, who),
        Action::WhyDraft(who) => planning::why(sitting, who),
        Action::Discard(who) => planning::discard(sitting, who),
        Action::Pick(who, field, value) => planning::pick(sitting, who, &field, &value),
        Action::Offer(who, way) => planning::offer(sitting, who, way),
        Action::Mend(serial, way) => jobs::mend(sitting, serial, way),
        Action::Done(it) => jobs::done(sitting, it),
        Action::AsPlanned(it) => not_bought::as_planned(sitting, it),
        Action::NotYet(it) => not_bought::not_yet(sitting, it),
        Action::Sure(it) => jobs::surely_done(sitting, it),
        Action::Held(serial) => jobs::held(sitting, serial),
        Action::Later(it) => jobs::later(sitting, it),
        Action::Skip(it) => jobs::skip(sitting, it),
        Action::Take(it) => jobs::take(sitting, it),
        Action::Drop(it) => jobs::drop(sitting, it),
        Action::Rate(serial, what, answer) => feedback::rate(sitting, serial, &what, &answer),
        Action::Seat(serial, way) => dishes::seat(sitting, serial, way),
        Action::Leave(serial) => dishes::leave(sitting, serial),
        Action::Another(serial, place) => dishes::another(sitting, serial, place),
        Action::Giving(serial) => hands::giving(sitting, serial),
        Action::Give(it) => hands::give(sitting, it),
        Action::AskFor(it, who) => hands::ask(sitting, it, who),
        Action::Willing(it) => hands::answered(sitting, it, true),
        Action::Unwilling(it) => hands::answered(sitting, it, false),
        Action::Undo(serial, number) => undo::pressed(sitting, serial, number),
        Action::Reply(who, place) => questions::reply(sitting, who, place),
        Action::Sources(who) => questions::sources(sitting, who),
        Action::Jobs(serial) => jobs::list(sitting, serial),
        Action::Why(serial) => jobs::why(sitting, serial),
        Action::Yes(what, who) if what == doubted::ASKED => doubted::stands(sitting, who),
        Action::No(what, who) if what == doubted::ASKED => doubted::taken_back(sitting, who),
        Action::Meant(who) => doubted::meant(sitting, who),
        Action::Dinner(serial, minute) => readings::move_dinner(sitting, serial, minute),
        Action::Stay(serial, minute) => late::stay(sitting, serial, minute),
        Action::Shift(serial, minute, way, edition) => late::shift(sitting, serial, minute, way, edition),
        Action::Hotter(serial, setting_f) => heat::hotter(sitting, serial, setting_f),
        Action::Yes(what, who) => farewell::yes(sitting, &what, who),
        Action::No(what, who) => farewell::no(sitting, &what, who),
        Action::Settings(page) => settings::page(sitting, &page),
        Action::Set(setting, value) => settings::set(sitting, &setting, &value),
        Action::Help(page) => help::page(sitting, &page),
    }
}

/// Said once, to the one who floods.
fn flooded(sitting: &mut Sitting<'_>, press: Option<String>) {
    let to = press.map_or(To::Room(sitting.room.id), To::Press);
    sitting.say(Say::new(to, Text::new("room-flooded")));
}

fn unreadable(sitting: &mut Sitting<'_>) {
    if sitting.room.kind == RoomKind::Private {
        sitting.answer(Text::new("room-unreadable"));
    }
}
