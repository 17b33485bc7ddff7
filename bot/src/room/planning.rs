//! From a sentence to a proposal: what is missing is asked, a button where there is a choice.
//!
//! A draft belongs to one person; others may watch, not press. Nothing here touches a live plan until `Accept`.

use super::action::{Action, Mark};
use super::order::{self, gap};
use super::sitting::button;
use super::state::{Draft, LivePlan, Question};
use super::turn::{How, Say, To};
use super::{
    PersonId, RoomKind, Sitting, amend, birds, board, calls, dishes, eve, feedback, may, new_bird, own_kitchen,
    proposal, questions, settings, stray, there, way_out,
};
use crate::reading::sentence::Sentence;
use crate::reading::{self, Problem, Wish};
use crate::words::{Arg, Text};
use carvetime_core::plan::{self, Conflict, Fact, Order, Schedule};
use carvetime_core::quantity::{in_grams, kilograms, pounds};
use chrono::TimeDelta;

/// A proposal accepted within this time is taken as it was shown.
const FRESH: TimeDelta = TimeDelta::minutes(30);

/// What solving a draft came to.
enum Solved {
    Works(Order, Box<Schedule>),
    Clashes(Order, Box<Conflict>),
}

/// `/plan` with words, or a sentence that is plainly a wish.
pub(super) fn told(sitting: &mut Sitting<'_>, who: PersonId, wish: Wish, problems: &[Problem]) {
    // Nothing told of a bird without times is kept: it would become a turkey's.
    if problems.contains(&Problem::OtherBird) {
        sitting.answer_all(problems.iter().map(Problem::text).collect());
        return;
    }
    let mut draft = sitting.room.drafts.remove(&who).unwrap_or_default();
    let people = order::guests(&draft.wish);
    draft.wish.merge_at(by_the_clock(sitting, wish), &sitting.ground());
    if people > 0 && order::guests(&draft.wish) != people {
        draft.people_before = Some(people);
    }
    complete_dinner(sitting, &mut draft.wish);
    sitting.room.drafts.insert(who, draft);
    if problems.is_empty() {
        go_on(sitting, who, How::New);
    } else {
        complain(sitting, who, problems);
    }
}

/// "Wait no, back to 3" after "make it 6", of what is only drafted. `false`: it was not so many before.
pub(super) fn people_back(sitting: &mut Sitting<'_>, who: PersonId, text: &str) -> bool {
    let number = reading::read_retold(text, sitting.lexicon()).and_then(|retold| retold.number);
    let Some(draft) = sitting.room.drafts.get_mut(&who) else { return false };
    let before = draft.people_before.filter(|before| number.map(u32::from) == Some(*before));
    let Some(before) = before.and_then(|before| u16::try_from(before).ok()) else { return false };
    (draft.wish.adults, draft.wish.children) = (Some(before), None);
    go_on(sitting, who, How::New);
    true
}

/// `/plan` without words: the live plan, or the first question.
pub(super) fn asked(sitting: &mut Sitting<'_>, who: PersonId) {
    if sitting.room.plan.is_some() && !sitting.room.drafts.contains_key(&who) {
        board::repost(sitting);
        return;
    }
    sitting.room.drafts.entry(who).or_default();
    go_on(sitting, who, How::New);
}

/// Words from someone who was asked something. `false`: they were about something else.
pub(super) fn answered(sitting: &mut Sitting<'_>, who: PersonId, text: &str) -> bool {
    let Some(question) = sitting.room.drafts.get(&who).and_then(|draft| draft.asked) else { return false };
    if question == Question::Zone {
        super::settings::zone_told(sitting, text);
        return true;
    }
    if asks_what(sitting, text) {
        return false;
    }
    let (wish, mut problems) = read(sitting, text);
    let mut wish = stray::without(sitting, who, text, wish);
    let read_already = wish.clone();
    bare_answer(sitting, question, text, &mut wish);
    if wish != read_already {
        problems.retain(|problem| !matches!(problem, Problem::LooseNumber(_)));
    }
    if wish == Wish::default() && problems.is_empty() {
        return false;
    }
    told(sitting, who, wish, &problems);
    true
}

/// Whether someone who is telling of a dinner tells more of it: "12 of us, gas oven 170" asks nothing, though alone it would be
/// taken for a question.
pub(super) fn is_told(sitting: &Sitting<'_>, who: PersonId, text: &str) -> bool {
    let open = sitting.room.drafts.get(&who).is_some_and(|draft| draft.asked.is_some());
    let planned = sitting.room.plan.is_some() || sitting.room.drafts.contains_key(&who);
    let (wish, _) = read(sitting, text);
    let people = wish.adults.is_some() || wish.children.is_some();
    // "Horno 180": what it is set to, not whether it may be.
    let heat = planned && wish.cooker.is_some() && wish.setting_c.is_some() && text.split_whitespace().count() <= 5;
    (heat || (open || planned && (wish.more || wish.fewer)) && people) && !asks_more(sitting, text)
}

/// "And another 12 lb turkey in the same oven": one more bird for the dinner that is planned, told as far as it differs. `false`: the
/// words are about something else.
pub(super) fn another(sitting: &mut Sitting<'_>, who: PersonId, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let (told_of, problems) = read(sitting, text);
    let bird = told_of.mass_g.is_some() && (told_of.kind.is_some() || sentence.has("bird-any"));
    let Some(plan) = sitting.room.plan.as_ref().filter(|_| bird && sentence.has("another") && !text.contains('?'))
    else {
        return false;
    };
    let standing = plan.wish.clone();
    let mut wish = Wish {
        kind: standing.kind,
        condition: standing.condition,
        cooker: standing.cooker,
        setting_c: standing.setting_c,
        dinner: standing.dinner,
        elsewhere: standing.elsewhere,
        drive_min: standing.drive_min,
        hot: standing.hot,
        there: standing.there,
        ..Wish::default()
    };
    wish.merge(told_of);
    sitting.room.drafts.remove(&who);
    told(sitting, who, wish, &problems);
    true
}

/// "What's a fan oven", "how do I carve": a word is asked about, and nothing of a dinner told.
pub(super) fn asks_what(sitting: &Sitting<'_>, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let numbers = text.contains(|c: char| c.is_ascii_digit());
    reading::begins_as_question(text, sitting.lexicon()) && !numbers && !sentence.has("instead")
}

/// Reads a sentence with this room's language, spoons and zone.
pub(super) fn read(sitting: &Sitting<'_>, text: &str) -> (Wish, Vec<Problem>) {
    reading::read_wish(text, &sitting.ground())
}

/// A bare number means what was asked.
pub(super) fn bare_answer(sitting: &Sitting<'_>, question: Question, text: &str, wish: &mut Wish) {
    let sentence = Sentence::read(text, sitting.lexicon());
    let number = (0..sentence.len()).find_map(|at| sentence.number(at)).filter(|n| n.fract() == 0.0);
    match question {
        // "The breast is 175" counts nobody.
        Question::Size
            if wish.mass_g.is_none()
                && wish.adults.is_none()
                && !(0..sentence.len()).any(|at| is_of_bird(&sentence, at)) =>
        {
            wish.adults = number.filter(|n| (1.0..=200.0).contains(n)).map(|n| n as u16);
        }
        Question::Weight if wish.mass_g.is_none() && !(0..sentence.len()).any(|at| is_of_bird(&sentence, at)) => {
            /// As any bird weighs, in pounds and in kilograms.
            const POUNDS: std::ops::RangeInclusive<f64> = 2.0..=40.0;
            const KILOGRAMS: std::ops::RangeInclusive<f64> = 1.0..=18.0;
            let us = sitting.us_units();
            let told = (0..sentence.len()).find_map(|at| sentence.number(at));
            let told = told.filter(|n| if us { POUNDS } else { KILOGRAMS }.contains(n));
            wish.mass_g = told.map(|n| in_grams(if us { pounds(n) } else { kilograms(n) }));
        }
        Question::Condition if wish.condition.is_none() => {
            wish.condition = is_frozen(sitting, text).map(|frozen| if frozen { "frozen" } else { "fresh" }.to_owned());
        }
        Question::Drive if wish.drive_min.is_none() => {
            let span =
                (0..sentence.len()).find_map(|at| sentence.amount(at)?.span()).map(|span| span.num_minutes() as f64);
            wish.drive_min = span.or(number).filter(|n| (1.0..=720.0).contains(n)).map(|n| n as u32);
        }
        Question::Dinner | Question::DinnerHour | Question::DinnerDay
            if wish.dinner.is_none() && wish.dinner_day.is_none() && wish.dinner_hour.is_none() =>
        {
            let (told, _) = reading::read_dinner_time(text, &sitting.ground());
            wish.merge(told);
        }
        _ => {}
    }
}

/// "Yes", "nope, it isn't", to whether the bird is frozen. Among people only for a while: later it is said to somebody else.
fn is_frozen(sitting: &Sitting<'_>, text: &str) -> Option<bool> {
    const LATELY: TimeDelta = TimeDelta::minutes(5);
    let lexicon = sitting.lexicon();
    let asked = sitting.speaker().and_then(|who| sitting.room.drafts.get(&who)?.asked_at);
    let lately = asked.is_some_and(|at| sitting.now - at <= LATELY);
    if !lately && sitting.room.kind == RoomKind::Group {
        return None;
    }
    if reading::is_so(text, lexicon) || reading::is_plain_yes(text, lexicon) {
        return Some(true);
    }
    (reading::is_not_so(text, lexicon) || reading::is_plain_no(text, lexicon)).then_some(false)
}

/// "What's the plan?", "show me", of what is being planned: the question that lies open, or the proposal.
pub(super) fn shown_again(sitting: &mut Sitting<'_>, who: PersonId, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let asks = reading::asks_what_is_next(text, lexicon)
        || reading::asks_when(text, lexicon)
        || reading::asks_bare_when(text, lexicon);
    let drafted = sitting.room.drafts.contains_key(&who) && sitting.room.plan.is_none();
    if asks && drafted {
        go_on(sitting, who, How::New);
    }
    asks && drafted
}

fn is_of_bird(sentence: &Sentence, at: usize) -> bool {
    sentence.of(at, "spot-").is_some() || sentence.of(at, "bird-").is_some()
}

/// Whether a sentence without a command is plainly a wish: it names a dinner and something of the bird, or a good part of both.
pub(super) fn is_wish(sitting: &Sitting<'_>, text: &str, addressed: bool) -> bool {
    let (wish, _) = read(sitting, text);
    let when = wish.dinner.is_some() || wish.dinner_day.is_some() || wish.dinner_hour.is_some() || wish.starts;
    let bird = wish.mass_g.is_some() || wish.kind.is_some();
    let guests = wish.adults.is_some() || wish.children.is_some();
    // "The turkey is in the fridge since Saturday, is that ok?" plans nothing.
    let safe = Sentence::read(text, sitting.lexicon()).has("ask-safe");
    let asks = (text.contains('?') || safe) && wish.mass_g.is_none() && wish.dinner.is_none();
    // "My turkey is still frozen inside on Thanksgiving morning, help".
    let asks = asks || !(wish.mass_g.is_some() || guests) && questions::is_answerable(sitting, text);
    // Of a dinner that is planned, hour and guests alone are news.
    let planned =
        sitting.room.plan.is_some() && sitting.speaker().is_none_or(|who| !sitting.room.drafts.contains_key(&who));
    // "I'm bringing 12 lb of potatoes on Thursday", to the others, is no second bird; one that is named and weighed is.
    let among = sitting.room.kind == RoomKind::Group && !addressed && planned;
    let another = wish.mass_g.is_some() && wish.kind.is_some();
    // "12 lb fresh turkey, oven at 325, 8 people, at my sister's, 3 h drive": all but the hour.
    let whole =
        another && guests && (wish.cooker.is_some() || wish.elsewhere == Some(true)) && !asks_more(sitting, text);
    (when || whole)
        && (bird || guests && !planned || is_date_alone(sitting, text, &wish))
        && (!among || another)
        && !asks
}

/// A question that numbers of a dinner stand in.
fn asks_more(sitting: &Sitting<'_>, text: &str) -> bool {
    const ASKS: [&str; 7] =
        ["ask-how-much", "ask-how-many", "ask-how-big", "ask-how-long", "ask-when", "ask-how", "ask-safe"];
    let sentence = Sentence::read(text, sitting.lexicon());
    text.contains(['?', '¿']) || ASKS.into_iter().any(|ask| sentence.has(ask))
}

/// "Thursday like 4ish", to the bot alone where nothing is planned yet: what else would it be of?
fn is_date_alone(sitting: &Sitting<'_>, text: &str, wish: &Wish) -> bool {
    let fresh = sitting.room.kind == RoomKind::Private && sitting.room.plan.is_none() && sitting.room.drafts.is_empty();
    fresh && wish.dinner.is_some() && amend::is_plain(sitting, &Sentence::read(text, sitting.lexicon()))
}

/// Before the zone is known an hour is only an hour on the kitchen's wall.
fn by_the_clock(sitting: &Sitting<'_>, mut wish: Wish) -> Wish {
    if let (None, Some(dinner), None) = (sitting.zone(), wish.dinner, &wish.there) {
        let wall = dinner.naive_utc();
        (wish.dinner, wish.dinner_day, wish.dinner_hour) = (None, Some(wall.date()), Some(wall.time()));
    }
    wish
}

/// Puts a day and an hour told apart together, once the zone is known.
fn complete_dinner(sitting: &Sitting<'_>, wish: &mut Wish) {
    if sitting.zone().is_some() {
        wish.settle(&sitting.ground());
    }
}

/// Asks the next question, or shows the proposal.
pub(super) fn go_on(sitting: &mut Sitting<'_>, who: PersonId, how: How) {
    let Some(mut draft) = sitting.room.drafts.get(&who).cloned() else { return };
    if sitting.keeps_clock_of(who) && sitting.room.kind == RoomKind::Group {
        settings::clock_kept(sitting);
    }
    complete_dinner(sitting, &mut draft.wish);
    own_kitchen::fill(sitting, who, &mut draft.wish);
    if draft.wish.cooker.is_some() && !sitting.us_units() {
        draft.wish.celsius_dial = Some(true);
    }
    draft.suggestion = None;
    draft.asked = if sitting.zone().is_none() { Some(Question::Zone) } else { missing(&draft) };
    draft.asked_at = draft.asked.map(|_| sitting.now);
    let asked = draft.asked;
    let wish = draft.wish.clone();
    sitting.room.drafts.insert(who, draft);
    match asked {
        Some(question) => ask(sitting, who, question, &wish, how),
        None => propose(sitting, who, how),
    }
}

/// What is still to be asked of it. A bird bought in place of another has a weight, whatever would feed as many.
pub(super) fn missing(draft: &Draft) -> Option<Question> {
    let unweighed = draft.replaces.is_some() && draft.wish.mass_g.is_none();
    if unweighed { Some(Question::Weight) } else { gap(&draft.wish) }
}

fn ask(sitting: &mut Sitting<'_>, who: PersonId, question: Question, wish: &Wish, how: How) {
    let pick = |field: &str, value: &str, label: &'static str| {
        button(label, &Action::Pick(who, field.to_owned(), value.to_owned()))
    };
    let known = proposal::understood(wish);
    let private = sitting.room.kind == super::RoomKind::Private;
    let id = match question {
        Question::Zone => "room-ask-zone",
        Question::Dinner => "room-ask-dinner",
        Question::DinnerHour => "room-ask-dinner-hour",
        Question::DinnerDay => "room-ask-dinner-day",
        Question::Size => "room-ask-size",
        Question::Weight => "room-ask-weight",
        Question::Condition => "room-ask-condition",
        Question::Cooker => "room-ask-cooker",
        Question::Drive => "room-ask-drive",
        Question::Change => "room-ask-change",
    };
    let say = sitting.answer(Text::new(id)).key(draft_key(who)).how(how);
    if let Some(known) = known {
        say.text.insert(0, known);
    }
    match question {
        Question::Condition => {
            say.row([
                pick("condition", "frozen", "room-condition-frozen"),
                pick("condition", "fresh", "room-condition-fresh"),
                pick("condition", "part-thawed", "room-condition-part-thawed"),
            ]);
        }
        Question::Cooker => {
            say.row([
                pick("cooker", "oven", "room-cooker-oven"),
                pick("cooker", "fan-oven", "room-cooker-fan-oven"),
                pick("cooker", "smoker", "room-cooker-smoker"),
            ]);
        }
        Question::Drive => {
            say.row([
                pick("drive", "15", "room-drive-15"),
                pick("drive", "30", "room-drive-30"),
                pick("drive", "60", "room-drive-60"),
            ]);
        }
        Question::Zone => say.ask_place = private,
        _ => {}
    }
    let typed = matches!(
        question,
        Question::Zone | Question::Dinner | Question::DinnerHour | Question::Size | Question::Weight
    );
    // The platform takes a reply field or buttons, not both. In a private chat everything typed is read anyway.
    say.ask_reply = typed && !private;
    if question != Question::Zone && !say.ask_reply {
        say.row([button("room-button-discard", &Action::Discard(who))]);
    }
}

/// The proposal; where the wish as told can't be met, what stands against it and the nearest plan that works.
fn propose(sitting: &mut Sitting<'_>, who: PersonId, how: How) {
    let (zone, now) = (sitting.zone_or_utc(), sitting.now);
    let Some(draft) = sitting.room.drafts.get_mut(&who) else { return };
    draft.proposed_at = Some(now);
    let (wish, draft) = (draft.wish.clone(), draft.clone());
    let replaces = new_bird::replaced(sitting, &draft);
    let facts = new_bird::done_dishes(sitting, replaces);
    let mut shared = Vec::new();
    let (text, offers) = match solve(&wish, zone, &facts, sitting.now) {
        Ok(Some(Solved::Works(order, schedule))) => {
            shared = birds::same_heat(sitting, who, &order, &schedule);
            shared.extend(birds::same_fridge(sitting, who, &order, &schedule));
            shared.extend(proposal::start(&wish, &schedule));
            shared.extend(proposal::shop(&wish, &schedule));
            shared.extend(there::whose_hour(&wish));
            (proposal::text(&order, &wish, &schedule, sitting.usual_salt()), None)
        }
        Ok(Some(Solved::Clashes(order, conflict))) => {
            let mut text = proposal::clash(&conflict);
            if let Some(offer) = conflict.offers.first() {
                let nearest = offer.change.apply(&order);
                shared = birds::same_heat(sitting, who, &nearest, &offer.schedule);
                shared.extend(birds::same_fridge(sitting, who, &nearest, &offer.schedule));
                shared.extend(proposal::start(&wish, &offer.schedule));
                shared.extend(proposal::shop(&wish, &offer.schedule));
                shared.extend(there::whose_hour(&wish));
                let mut suggestion = wish.clone();
                order::absorb(&mut suggestion, &nearest);
                text.push(proposal::instead(offer));
                text.extend(proposal::text(&nearest, &suggestion, &offer.schedule, sitting.usual_salt()));
                if let Some(draft) = sitting.room.drafts.get_mut(&who) {
                    draft.suggestion = Some(suggestion);
                }
            }
            text.extend(proposal::other_offers(&conflict));
            (text, Some(conflict.offers))
        }
        Ok(None) => return,
        Err(error) => return refuse(sitting, who, of_order(error)),
    };
    let mut text = text;
    // The bird whose place it takes is in nobody's way.
    text.extend(shared.into_iter().filter(|_| replaces.is_none()));
    text.extend(proposal::beside(&wish));
    text.extend(sitting.people.get(&who).and_then(own_kitchen::too_warm));
    let (last_time, better) = feedback::last_time(sitting, who);
    text.extend(last_time);
    let hopeless = offers.as_ref().is_some_and(Vec::is_empty);
    let standing = if hopeless || replaces.is_some() { None } else { birds::choice(sitting, who) };
    let say = sitting.answer_all(text).key(draft_key(who)).how(how);
    let accept = (!hopeless && standing.is_none()).then(|| button("room-button-accept", &Action::Accept(who)));
    if let Some((line, buttons)) = standing {
        say.line(line);
        for button in buttons {
            say.row([button]);
        }
    }
    say.row(accept.into_iter().chain([button("room-button-change", &Action::Change(who))]));
    for offer in offers.iter().flatten().skip(1).take(proposal::MOST_OFFERS) {
        say.row([way_out::button(offer, &wish.dishes, |way| Action::Offer(who, way))]);
    }
    say.row(better);
    if !hopeless {
        say.row([button("room-button-why", &Action::WhyDraft(who))]);
    }
}

fn solve(
    wish: &Wish,
    zone: chrono_tz::Tz,
    facts: &[Fact],
    now: plan::Moment,
) -> Result<Option<Solved>, order::OrderError> {
    Ok(order::order(wish, zone)?.map(|order| match plan::solve(&order, facts, now) {
        Ok(schedule) => Solved::Works(order, Box::new(schedule)),
        Err(conflict) => Solved::Clashes(order, Box::new(conflict)),
    }))
}

/// "Use by Friday": the date on a pack is told, and nothing asked.
pub(super) fn dates_the_pack(sitting: &Sitting<'_>, text: &str) -> bool {
    let planning = sitting.room.plan.is_some() || !sitting.room.drafts.is_empty();
    let told = || {
        let (wish, problems) = read(sitting, text);
        wish.use_by.is_some() || problems.iter().any(|problem| matches!(problem, Problem::UseBy(..)))
    };
    planning && !text.contains(['?', '¿']) && told()
}

/// Says what could not be taken, keeps everything else and goes on with it: the next question, or the proposal.
pub(super) fn complain(sitting: &mut Sitting<'_>, who: PersonId, problems: &[Problem]) {
    let nothing_else = sitting.room.drafts.get(&who).is_none_or(|draft| draft.wish == Wish::default());
    let lines: Vec<Text> = problems.iter().map(Problem::text).collect();
    if nothing_else {
        sitting.room.drafts.remove(&who);
        sitting.answer_all(lines);
        return;
    }
    let before = sitting.says.len();
    go_on(sitting, who, How::New);
    match sitting.says.get_mut(before) {
        Some(say) => drop(say.text.splice(0..0, lines)),
        None => drop(sitting.answer_all(lines)),
    }
}

/// The wish as a whole makes no dinner.
fn refuse(sitting: &mut Sitting<'_>, who: PersonId, why: Text) {
    let known = sitting.room.drafts.get(&who).and_then(|draft| proposal::understood(&draft.wish));
    if let Some(draft) = sitting.room.drafts.get_mut(&who) {
        draft.asked = Some(Question::Change);
    }
    let say = sitting.answer(why);
    if let Some(known) = known {
        say.line(Text::new("room-kept").with("known", Arg::from(known)));
    }
}

/// "325" to a proposal: no clock, no table and no bird has such a number, an oven does.
pub(super) fn heated(sitting: &mut Sitting<'_>, who: PersonId, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let at = usize::from(sentence.is(0, "at"));
    let Some(setting) = sentence.number(at).filter(|_| sentence.len() == at + 1) else { return false };
    let fahrenheit = (200.0..=600.0).contains(&setting) && !(sitting.ground().metric && setting <= 290.0);
    let celsius = (100.0..=290.0).contains(&setting) && !fahrenheit;
    let Some(draft) = sitting.room.drafts.get_mut(&who).filter(|_| fahrenheit || celsius) else { return false };
    draft.wish.setting_c = Some(if celsius { setting } else { (setting - 32.0) / 1.8 });
    go_on(sitting, who, How::New);
    true
}

/// `/move` while there is only a proposal.
pub(super) fn moved(sitting: &mut Sitting<'_>, who: PersonId, text: &str) -> bool {
    let ground = sitting.ground();
    // A number alone may be people, pounds or an hour; one that is asked about moves nothing.
    let sentence = Sentence::read(text, sitting.lexicon());
    let moves = ["later", "earlier", "instead"].into_iter().any(|word| sentence.has(word));
    let plain = moves || reading::says_an_hour(text, &ground);
    if text.trim().chars().all(|c| c.is_ascii_digit()) || text.contains('?') || !plain {
        return false;
    }
    let Some(draft) = sitting.room.drafts.get_mut(&who) else { return false };
    let Some(dinner) = draft.wish.dinner else { return false };
    let Some(to) = reading::read_shift(text, dinner, &ground).and_then(|shift| shift.applied(dinner)) else {
        return false;
    };
    draft.wish.dinner = Some(to);
    go_on(sitting, who, How::New);
    true
}

/// What is wrong with numbers that were readable each by itself.
fn of_order(error: order::OrderError) -> Text {
    match error {
        order::OrderError::Mass(error) => Problem::Mass(carvetime_core::quantity::in_kilograms(error.given)).text(),
        order::OrderError::TooManyGuests(guests) => Problem::Guests(f64::from(guests)).text(),
    }
}

/// Whether they have been asked something of a dinner half told that no "yes" answers.
pub(super) fn is_asked(sitting: &Sitting<'_>, who: PersonId) -> bool {
    let asked = sitting.room.drafts.get(&who).and_then(|draft| draft.asked);
    asked.is_some_and(|question| question != Question::Change)
}

/// Whether a proposal of theirs lies open.
pub(super) fn is_proposed(sitting: &Sitting<'_>, who: PersonId) -> bool {
    sitting.room.drafts.get(&who).is_some_and(|draft| draft.asked.is_none() && draft.proposed_at.is_some())
}

// ---- buttons of a draft

/// `Accept`. Where something is planned already, whether it joins that or takes its place is asked first.
pub(super) fn accept(sitting: &mut Sitting<'_>, who: PersonId) {
    let draft = sitting.room.drafts.get(&who).cloned();
    if let Some(serial) = draft.as_ref().and_then(|draft| new_bird::replaced(sitting, draft)) {
        return in_its_place(sitting, who, serial);
    }
    if draft.is_some() && !birds::standing(sitting).is_empty() {
        return go_on(sitting, who, How::Edit);
    }
    let Some(plan) = accepted(sitting, who) else { return };
    birds::drop_over(sitting);
    sitting.room.plan = Some(plan);
    begin(sitting, who);
}

/// One more bird.
pub(super) fn beside(sitting: &mut Sitting<'_>, who: PersonId) {
    let standing = birds::standing(sitting).len();
    if standing >= birds::MOST {
        return sitting.notice(birds::too_many());
    }
    let Some(mut plan) = accepted(sitting, who) else { return };
    birds::drop_over(sitting);
    plan.beside = standing > 0;
    sitting.hold(None);
    sitting.room.plan = Some(plan);
    begin(sitting, who);
}

/// In place of a plan whose bird was thrown away: it was theirs to give up already.
fn in_its_place(sitting: &mut Sitting<'_>, who: PersonId, serial: u32) {
    sitting.hold(Some(serial));
    let Some(plan) = accepted(sitting, who) else { return };
    let Some(old) = sitting.room.end_plan(sitting.now) else { return };
    sitting.room.plan = Some(new_bird::in_place(old, plan));
    begin(sitting, who);
}

/// In place of a plan that stands.
pub(super) fn instead(sitting: &mut Sitting<'_>, who: PersonId, serial: u32) {
    if !sitting.room.plans().iter().any(|plan| plan.serial == serial) {
        return gone(sitting);
    }
    sitting.hold(Some(serial));
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let Some(plan) = accepted(sitting, who) else { return };
    let beside = sitting.room.end_plan(sitting.now).is_some_and(|old| old.beside);
    sitting.room.plan = Some(LivePlan { beside, ..plan });
    begin(sitting, who);
}

/// The plan of the draft, which is over with it; what is missing is asked for.
fn accepted(sitting: &mut Sitting<'_>, who: PersonId) -> Option<LivePlan> {
    let Some(draft) = sitting.room.drafts.get(&who).cloned() else {
        gone(sitting);
        return None;
    };
    let zone = sitting.zone_or_utc();
    if missing(&draft).is_some() {
        go_on(sitting, who, How::Edit);
        return None;
    }
    let facts = new_bird::done_dishes(sitting, new_bird::replaced(sitting, &draft));
    let mut wish = draft.suggestion.unwrap_or(draft.wish);
    // What is accepted is what was shown, unless it has been lying about.
    let shown = draft.proposed_at.filter(|at| sitting.now - *at < FRESH).unwrap_or(sitting.now);
    let Ok(Some(Solved::Works(order, schedule))) = solve(&wish, zone, &facts, shown) else {
        go_on(sitting, who, How::Edit);
        return None;
    };
    order::absorb(&mut wish, &order);
    if order.carry.is_some() && wish.drive_min.is_none() {
        wish.drive_min = order.carry.map(|carry| u32::try_from(carry.drive.num_minutes()).unwrap_or(0));
    }
    sitting.room.drafts.remove(&who);
    sitting.room.plans_made += 1;
    Some(LivePlan::new(sitting.room.plans_made, who, wish, &schedule, sitting.now))
}

/// The plan in hand has just been accepted.
fn begin(sitting: &mut Sitting<'_>, who: PersonId) {
    sitting.look_at_hand();
    let room = To::Room(sitting.room.id);
    sitting.say(Say::new(room, Text::new("room-accepted"))).key(draft_key(who)).how(How::Edit);
    board::repost(sitting);
    calls::overdue_at_start(sitting);
    eve::begin(sitting);
    birds::refresh_others(sitting);
    dishes_beside(sitting);
}

/// The dishes told with the bird join its plan, as if they were told now.
fn dishes_beside(sitting: &mut Sitting<'_>) {
    let told = sitting.room.plan.as_mut().map(|plan| std::mem::take(&mut plan.wish.beside)).unwrap_or_default();
    for dish in told {
        dishes::told(sitting, &format!("add {dish}"));
    }
}

/// `Change`: the quick switches, and leave to say it in words.
pub(super) fn change(sitting: &mut Sitting<'_>, who: PersonId) {
    let Some(draft) = sitting.room.drafts.get_mut(&who) else { return gone(sitting) };
    draft.asked = Some(Question::Change);
    let wish = draft.wish.clone();
    let pick = |field: &str, value: &str, label: &'static str| {
        button(label, &Action::Pick(who, field.to_owned(), value.to_owned()))
    };
    let salted = wish.salting.as_deref() != Some("none");
    let frozen = wish.condition.as_deref() == Some("frozen");
    let in_water = matches!(wish.thawing.as_deref(), Some("cold-water" | "fridge-then-water"));
    let ahead = wish.ahead == Some(true) || wish.elsewhere == Some(true);
    let say = sitting.answer(Text::new("room-ask-change")).key(draft_key(who)).how(How::Edit);
    say.row(if salted {
        [pick("salting", "none", "room-change-no-salt")]
    } else {
        [pick("salting", "dry", "room-change-dry-salt")]
    });
    if frozen {
        say.row(if in_water {
            [pick("thawing", "fridge", "room-change-fridge")]
        } else {
            [pick("thawing", "cold-water", "room-change-cold-water")]
        });
    }
    if wish.elsewhere == Some(true) {
        let hot = wish.hot == Some(true) && wish.ahead != Some(true);
        say.row([if hot { pick("hot", "no", "room-change-cold") } else { pick("hot", "yes", "room-change-hot") }]);
    }
    if !ahead {
        say.row([pick("ahead", "yes", "room-change-ahead")]);
    } else if wish.elsewhere != Some(true) {
        say.row([pick("ahead", "no", "room-change-same-day")]);
    }
    say.row([button("room-button-back", &Action::Back(who)), button("room-button-discard", &Action::Discard(who))]);
}

/// Back to the proposal.
pub(super) fn back(sitting: &mut Sitting<'_>, who: PersonId) {
    if sitting.room.drafts.contains_key(&who) {
        go_on(sitting, who, How::Edit);
    } else {
        gone(sitting);
    }
}

/// The draft is dropped; a live plan stays as it is.
pub(super) fn discard(sitting: &mut Sitting<'_>, who: PersonId) {
    if sitting.room.drafts.remove(&who).is_none() {
        return gone(sitting);
    }
    sitting.answer(Text::new("room-discarded")).key(draft_key(who)).how(How::Edit);
}

/// "never mind" typed while a dinner is being told: the button of that name, answered where it was typed.
pub(super) fn discard_told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    if !crate::reading::is_discard(text, sitting.lexicon()) {
        return false;
    }
    let Some(who) = sitting.speaker().filter(|who| sitting.room.drafts.contains_key(who)) else { return false };
    sitting.room.drafts.remove(&who);
    sitting.answer(Text::new("room-discarded"));
    true
}

/// A value picked with a button.
pub(super) fn pick(sitting: &mut Sitting<'_>, who: PersonId, field: &str, value: &str) {
    let Some(draft) = sitting.room.drafts.get_mut(&who) else { return gone(sitting) };
    let wish = &mut draft.wish;
    let named = Some(value.to_owned());
    match field {
        "condition" => wish.condition = named,
        "cooker" => wish.cooker = named,
        "salting" => wish.salting = named,
        "thawing" => wish.thawing = named,
        "strength" => wish.strength = named,
        "drive" => wish.drive_min = value.parse().ok().filter(|minutes| (1..=1440).contains(minutes)),
        "ahead" => wish.ahead = Some(value == "yes"),
        "hot" => wish.merge(Wish { hot: Some(value == "yes"), ..Wish::default() }),
        _ => return gone(sitting),
    }
    go_on(sitting, who, How::Edit);
}

/// An offer against a conflict is taken.
pub(super) fn offer(sitting: &mut Sitting<'_>, who: PersonId, way: Mark) {
    let zone = sitting.zone_or_utc();
    let Some(draft) = sitting.room.drafts.get(&who).cloned() else { return gone(sitting) };
    let (mut wish, replaces) = (draft.wish.clone(), draft.replaces);
    let facts = new_bird::done_dishes(sitting, new_bird::replaced(sitting, &draft));
    let Ok(Some(order)) = order::order(&wish, zone) else { return gone(sitting) };
    if let Ok(Some(Solved::Clashes(_, conflict))) = solve(&wish, zone, &facts, sitting.now) {
        let Some(offer) = way_out::meant(&conflict, &wish.dishes, way) else {
            gone(sitting);
            return go_on(sitting, who, How::New);
        };
        order::absorb(&mut wish, &offer.change.apply(&order));
    }
    sitting.room.drafts.insert(who, Draft { wish, replaces, ..Draft::default() });
    go_on(sitting, who, How::Edit);
}

/// Why the proposed times are what they are.
pub(super) fn why(sitting: &mut Sitting<'_>, who: PersonId) {
    let zone = sitting.zone_or_utc();
    let Some(draft) = sitting.room.drafts.get(&who) else { return gone(sitting) };
    let wish = draft.suggestion.as_ref().unwrap_or(&draft.wish);
    let facts = new_bird::done_dishes(sitting, new_bird::replaced(sitting, draft));
    if let Ok(Some(Solved::Works(_, schedule))) = solve(wish, zone, &facts, sitting.now) {
        let text = proposal::reasons(&schedule);
        let say = sitting.answer(Text::new("room-why"));
        say.lines(text);
    }
}

/// What lies proposed to `who`, if it works.
pub(super) fn proposed(sitting: &Sitting<'_>, who: PersonId) -> Option<(Order, Wish, Schedule)> {
    let draft = sitting.room.drafts.get(&who).filter(|draft| draft.asked.is_none())?;
    let wish = draft.suggestion.as_ref().unwrap_or(&draft.wish);
    let facts = new_bird::done_dishes(sitting, new_bird::replaced(sitting, draft));
    match solve(wish, sitting.zone_or_utc(), &facts, sitting.now) {
        Ok(Some(Solved::Works(order, schedule))) => Some((order, wish.clone(), *schedule)),
        _ => None,
    }
}

/// The button is older than the draft.
fn gone(sitting: &mut Sitting<'_>) {
    sitting.notice(Text::new("room-stale"));
}

/// The message of a person's draft.
pub(super) fn draft_key(who: PersonId) -> String {
    format!("draft-{}", who.0)
}
