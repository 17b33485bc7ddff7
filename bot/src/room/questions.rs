//! Quick questions: handed to [`crate::ask`], answered where they were asked, the sources one tap away.
//!
//! The last question of each person is kept, so that a unit can be added with a button and "why?" can be answered.

use super::action::Action;
use super::sitting::{button, labelled};
use super::state::{AskedBack, JobState, OwnSalt};
use super::turn::{How, Urgency};
use super::{
    PersonId, RoomKind, Sitting, air, amend, broth, dose, forecast, help, hot_day, kept_hot, new_bird, off_dial, order,
    own_kitchen, plan_words, salted, spoiled, stood_out,
};
use crate::ask::{self, Advice, Answer, Asker, Habit, Lain, NotUnderstood, Question};
use crate::reading::{self, Wish, sentence::Sentence};
use crate::words::{Arg, Text};
use carvetime_core::bird::{Condition, Kind};
use carvetime_core::plan::clock::date;
use carvetime_core::plan::{Step, spans};
use carvetime_core::quantity::Measure;
use carvetime_core::safety::Food;
use carvetime_core::salt;
use chrono::TimeDelta;

/// Longest question kept for a second look.
const LONGEST_KEPT: usize = 300;

/// `/salt`, with or without words.
pub(super) fn salt(sitting: &mut Sitting<'_>, text: &str) {
    if text.is_empty() {
        sitting.answer(Text::new("room-help-salt"));
        return;
    }
    // The command has said what it is about.
    let asker = asker(sitting);
    let whole = format!("salt {text}");
    let text = if ask::read_question(text, &asker).is_ok() { text } else { &whole };
    answer(sitting, text);
}

/// `/ask`.
pub(super) fn asked(sitting: &mut Sitting<'_>, text: &str) {
    if text.is_empty() {
        sitting.answer(Text::new("room-help-safe"));
        return;
    }
    answer(sitting, text);
}

/// Words that may be a question; else one short line of help, to those who spoke to the bot.
pub(super) fn plain(sitting: &mut Sitting<'_>, text: &str, addressed: bool) {
    let salted = salted::put_on(sitting, text, &asker(sitting)).is_some();
    if !addressed && !salted && is_talk(sitting, text) {
        return;
    }
    // A danger is heard before all else (`peril`), or is none here.
    if matches!(ask::read_question(text, &asker(sitting)), Ok(Question::Peril(_))) {
        if addressed {
            help::unread(sitting);
        }
        return;
    }
    if let Some(limit) = own_limit(sitting, text).filter(|_| addressed) {
        sitting.answer(limit);
        return;
    }
    if salted {
        return answer(sitting, text);
    }
    if let Some(question) = of_thawing(sitting, text, addressed) {
        return answer_of(sitting, text, &question);
    }
    match ask::ask(text, &asker(sitting)) {
        Err(NotUnderstood::Unknown) if addressed => help::unread(sitting),
        // What is wrong with a number nobody told it is nobody's business.
        Err(_) if !addressed => {}
        _ => {
            answer(sitting, text);
            condemns(sitting, text);
        }
    }
}

/// The raw bird is to be thrown away, as that answer said, or may have to be.
fn condemns(sitting: &mut Sitting<'_>, text: &str) {
    if !is_raw_still(sitting) {
        return;
    }
    let asker = asker(sitting);
    let Ok(question) = ask::read_question(text, &asker) else { return };
    let discard = |answer: &Answer| answer.values.iter().any(|value| value.name == "discard" && value.value > 0.5);
    let discards = ask::answer(&question, &asker).is_ok_and(|answer| discard(&answer));
    new_bird::condemned(sitting, text, &question, discards);
}

/// "The skin was so crispy", "ok, 4 then", "no, five stays": said among people, and nothing was asked.
pub(super) fn is_talk(sitting: &Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let asks = text.contains('?') || reading::begins_as_question(text, lexicon);
    // "We salted it twice, what do I do"
    let asks = asks || Sentence::read(text, lexicon).has("ask-help");
    let asker = asker(sitting);
    let read = ask::read_question(text, &asker);
    // "Dee, can you salt it for me?": no dose was asked for.
    if matches!(&read, Ok(Question::SaltDose { bird, .. }) if bird.mass.is_none())
        && !Sentence::read(text, sitting.lexicon()).has("ask-how-much")
    {
        return true;
    }
    // "Ben is out sick": what would have to be asked back, nobody asked.
    let asks_back = || ask::ask(text, &asker).is_ok_and(|answer| answer.ask_back.is_some());
    // "I'm 20 minutes out": on the way, and no food.
    let told = sitting.lexicon().talk_words(text);
    let of_us =
        (1..=2).any(|count| told.get(..count).is_some_and(|lead| sitting.lexicon().talk(&lead.join(" "), "of-us")));
    if of_us && matches!(read, Ok(Question::LeftOut { .. })) && !names_kitchen(&Sentence::read(text, sitting.lexicon()))
    {
        return true;
    }
    // "My oven died last week", "chicken in the fryer" beside a turkey: of nothing that cooks here.
    let planned = sitting.room.plan.as_ref().map(|plan| order::kind(&plan.wish));
    let down = [Advice::OvenDown, Advice::Habit(Habit::FridgeDown), Advice::Habit(Habit::FreezerDown)];
    let past = matches!(&read, Ok(Question::Advice(about)) if down.contains(about)) && air::is_elsewhere(sitting, text);
    let fried = matches!(&read, Ok(Question::Fry { bird, frozen: false }) if bird.kind != Kind::Turkey
        && planned.is_some_and(|planned| planned != bird.kind));
    if !asks && (past || fried) {
        return true;
    }
    // "The train is late"
    if matches!(read, Ok(Question::Advice(Advice::TooSlow))) && super::late::is_of_a_thing(sitting, text) {
        return true;
    }
    // "Can I take it off at 160 and let it coast?" is of the one bird there is; "pull it at 155", of one that cooks.
    let pulls = matches!(read, Ok(Question::Lethality { .. })) && reading::speaks_of_pulling(text, sitting.lexicon());
    if pulls && (asks && sitting.room.plan.is_some() || super::readings::cooks(sitting)) {
        return false;
    }
    // "It's been out since 11, still ok?", of the bird that is off the heat.
    if matches!(read, Ok(Question::LeftOut { ahead: false, .. })) && stood_out::is_of_it(sitting, text) {
        return false;
    }
    // "Foie gras at 74 degrees is pâté": no sum of this kitchen's.
    if !asks
        && matches!(read, Ok(Question::UnitConvert { .. }))
        && reading::names_what_is_beside(text, sitting.lexicon())
    {
        return true;
    }
    if asks {
        // "How long is the line at the store?": nothing of a kitchen is named in it, and other things are.
        let sentence = Sentence::read(text, sitting.lexicon());
        let of_food = |read: &Question| !read.is_of_danger() && !matches!(read, Question::Advice(_));
        // "Is it raining?"
        let asks_of_it = ["ask-safe", "ask-how", "ask-help", "habit-must"].iter().any(|ask| sentence.has(ask));
        if matches!(read, Ok(Question::Advice(Advice::Habit(Habit::Weather))))
            && !asks_of_it
            && !names_kitchen(&sentence)
        {
            return true;
        }
        // "How hot is it outside?"
        if matches!(read, Ok(Question::SafeTemperature { .. })) && sentence.has("ask-out") {
            return true;
        }
        return read.as_ref().is_ok_and(of_food) && !names_kitchen(&sentence) && !amend::is_plain(sitting, &sentence);
    }
    match read {
        // "The capon fell on the floor", and not a glass.
        Ok(Question::Advice(Advice::Habit(Habit::Dropped))) => {
            let sentence = Sentence::read(text, sitting.lexicon());
            !sentence.has("habit-dropped") && sentence.of_any("bird-").is_none()
        }
        Ok(Question::Advice(Advice::Habit(habit))) => !habit.is_of_safety(),
        // "Bia's flight is 19h30 on day 23": hours, and nobody wants them in days.
        Ok(Question::UnitConvert { amount, .. }) if amount.measure() == Some(Measure::Span) => true,
        // Whose bird it is, and what it takes, the plan knows.
        Ok(Question::OverSalt { .. }) => sitting.room.plan.is_none(),
        Ok(read) if read.is_of_danger() => false,
        // "Coarse salt for the potatoes": not the bird's.
        Ok(Question::OnlySalt { .. }) => !amend::is_plain(sitting, &Sentence::read(text, sitting.lexicon())),
        // "Is 150 chairs enough": of no bird.
        Ok(Question::Lethality { .. }) => {
            let sentence = Sentence::read(text, sitting.lexicon());
            !names_kitchen(&sentence) && !amend::is_plain(sitting, &sentence) || asks_back()
        }
        // "Still pink at the bone", with the bird over the heat or just off it.
        Ok(Question::SafeTemperature { colour: true, .. }) => {
            !(near_the_table(sitting) && reading::speaks_of_pink(text, sitting.lexicon()))
        }
        Ok(
            Question::Unwell(_)
            | Question::Diner(_)
            | Question::Allergies(_)
            | Question::WarmThaw(_)
            | Question::Keeps { age: None, .. }
            | Question::OffDial(_)
            | Question::OvenLevel(_)
            | Question::Stuffing
            | Question::Wash
            | Question::HoldHot
            | Question::Reheat { .. }
            | Question::Stand
            | Question::Cooling
            | Question::BirdFor { .. }
            | Question::SaltWeigh { .. }
            | Question::UnitConvert { to: None, .. }
            | Question::SafeTemperature { .. }
            | Question::OvenTemperature { setting: None, .. },
        ) => true,
        _ => asks_back(),
    }
}

/// Something of a kitchen stands in it.
fn names_kitchen(sentence: &Sentence) -> bool {
    const GROUPS: [&str; 7] = ["bird-", "food-", "spot-", "cooker-", "salt-", "grain-", "place-"];
    const CONCEPTS: [&str; 7] =
        ["ask-salt", "ask-thaw", "ask-brine", "ask-reheat", "ask-refreeze", "condition-frozen", "ask-stuff"];
    let grouped = |at: usize| GROUPS.iter().any(|group| sentence.of(at, group).is_some());
    (0..sentence.len()).any(grouped) || CONCEPTS.iter().any(|concept| sentence.has(concept))
}

/// Whether the raw bird may stand out before it goes on.
pub(super) fn asks_of_tempering(sitting: &Sitting<'_>, text: &str) -> bool {
    let tempering = || matches!(read(sitting, text), Some(Question::Advice(Advice::Habit(Habit::Temper))));
    text.contains(['?', '¿']) && tempering()
}

/// What is asked, if it can be answered.
pub(super) fn read(sitting: &Sitting<'_>, text: &str) -> Option<Question> {
    ask::read_question(text, &asker(sitting)).ok()
}

/// Whether the text is a question that can be answered.
pub(super) fn is_question(sitting: &Sitting<'_>, text: &str) -> bool {
    ask::read_question(text, &asker(sitting)).is_ok() || of_thawing(sitting, text, false).is_some()
}

/// "How long does the duck take?", of a bird whose weight and heat are not told: of one that is planned they are known.
pub(super) fn asks_how_long(sitting: &Sitting<'_>, text: &str) -> bool {
    let asked = || ask::read_question(text, &Asker::of_reader(&sitting.reader()));
    // "The duck is in the oven" is read as one, too.
    let asks = Sentence::read(text, sitting.lexicon()).has("ask-how-long");
    asks && matches!(asked(), Ok(Question::RoastTime { bird, heat: None }) if bird.mass.is_none())
}

/// Whether the text is a question that can be answered without anything being asked back.
pub(super) fn is_answerable(sitting: &Sitting<'_>, text: &str) -> bool {
    ask::ask(text, &asker(sitting)).is_ok_and(|answer| answer.ask_back.is_none())
}

/// "I can do hot water right?", "microwave it?", where a frozen bird is planned and nothing else is understood of it: it is the thaw
/// that is meant. Among people only from the one who is planning, or to the bot.
fn of_thawing(sitting: &Sitting<'_>, text: &str, addressed: bool) -> Option<Question> {
    let draft = sitting.speaker().and_then(|who| sitting.room.drafts.get(&who)).map(|draft| &draft.wish);
    let thaws = |wish: &Wish| wish.condition.as_deref() != Some(Condition::Fresh.name());
    let planned =
        sitting.room.plan.as_ref().filter(|plan| plan.ahead(sitting.now).any(|job| job.step() == Some(Step::On)));
    // Into warm water nobody may put it, whoever is asked.
    let warm = reading::puts_into_warm_water(text, sitting.lexicon());
    let heard = addressed || warm || sitting.room.kind == RoomKind::Private;
    let planned = planned.map(|plan| &plan.wish).filter(|_| heard);
    draft.or(planned).filter(|wish| thaws(wish))?;
    let sentence = Sentence::read(text, sitting.lexicon());
    let food = (0..sentence.len()).any(|at| sentence.of(at, "food-").is_some() || sentence.of(at, "dish-").is_some());
    let question = if sentence.has("ask-hot-water") || warm {
        Question::CounterThaw
    } else if sentence.has("habit-microwave") {
        Question::Advice(Advice::Habit(Habit::ThawMicrowave))
    } else {
        return None;
    };
    // What is understood by itself is asked so.
    (!food && ask::read_question(text, &asker(sitting)).is_err()).then_some(question)
}

pub(super) fn answer_of(sitting: &mut Sitting<'_>, text: &str, question: &Question) {
    if let Ok(answer) = ask::answer(question, &asker(sitting)) {
        say(sitting, text, answer, How::New);
    }
}

/// Whether the text tells how long raw or cooked food stood out.
pub(super) fn tells_of_hours_out(sitting: &Sitting<'_>, text: &str) -> bool {
    let read = ask::read_question(text, &asker(sitting));
    matches!(read, Ok(Question::LeftOut { ahead: false, span: Some(span), .. }) if span > TimeDelta::zero())
}

/// "Thursday, 12 people, what size do I get?" is a wish and a question: the answer stands before what the wish came to.
pub(super) fn size_first(sitting: &mut Sitting<'_>, text: &str) {
    if !Sentence::read(text, sitting.lexicon()).has("ask-how-big") {
        return;
    }
    let asker = asker(sitting);
    let Ok(question @ Question::BirdFor { .. }) = ask::read_question(text, &asker) else { return };
    if let (Ok(answer), Some(say)) = (ask::answer(&question, &asker), sitting.says.last_mut()) {
        say.text.splice(0..0, answer.lines());
    }
}

/// Advice nobody has asked for in so many words.
pub(super) fn advise(sitting: &mut Sitting<'_>, advice: Advice) {
    if let Ok(answer) = ask::answer(&Question::Advice(advice), &asker(sitting)) {
        sitting.answer_all(answer.lines());
    }
}

/// An answer nobody may miss.
pub(super) fn tell(sitting: &mut Sitting<'_>, question: &Question, urgency: Urgency) {
    if let Ok(answer) = ask::answer(question, &asker(sitting)) {
        sitting.answer_all(answer.lines()).urgency(urgency);
    }
}

/// "The food is still on the table, is it ok?", "how long may this stand on the table": the plan knows when it came off, and by when it
/// goes into the fridge.
fn own_limit(sitting: &Sitting<'_>, text: &str) -> Option<Text> {
    let sentence = Sentence::read(text, sitting.lexicon());
    // No broth is made of bones that stood out, whatever the hour.
    if sentence.has("habit-carcass") {
        return None;
    }
    let table = sentence.has("ask-counter");
    let asks = ["ask-safe", "ask-how-long"].iter().any(|ask| sentence.has(ask)) || table && text.contains(['?', '¿']);
    // Of what is raw or frozen it is another question.
    let raw = sentence.has("ask-thaw") || (0..sentence.len()).any(|at| sentence.of(at, "condition-").is_some());
    let out = (table || sentence.has("ask-out")) && asks && !raw;
    let spans = (0..sentence.len()).any(|at| sentence.number(at).is_some() || sentence.amount(at).is_some());
    let plan = sitting.room.plan.as_ref().filter(|plan| out && !spans && plan.is_off())?;
    let job = plan.jobs.iter().find(|job| job.step() == Some(Step::Chill) && job.state == JobState::Waiting)?;
    if sitting.now > job.latest {
        return Some(Text::new("room-limit-chill"));
    }
    let order = plan.order(sitting.zone_or_utc());
    plan_words::step_call(Step::Chill, job.nth, 1, order.as_ref(), job.latest).into_iter().next()
}

/// At home, and not over the heat yet.
fn waits_in_fridge(sitting: &Sitting<'_>) -> bool {
    sitting.room.plan.as_ref().is_some_and(|plan| {
        let bought = plan.job(Step::Buy, 0).is_none_or(|job| job.state != JobState::Waiting);
        bought && plan.on_since(sitting.now).is_none() && !plan.is_off()
    })
}

/// Planned, and not over the heat yet: "it" is raw.
fn is_raw_still(sitting: &Sitting<'_>) -> bool {
    let waits = |plan: &super::state::LivePlan| {
        plan.job(Step::On, 0).is_some_and(|job| job.state == JobState::Waiting) && !plan.is_off()
    };
    sitting.room.plan.as_ref().is_some_and(|plan| waits(plan) && plan.on_since(sitting.now).is_none())
}

/// Leftovers, a dish or what is cooked are named.
fn names_food(text: &str, sitting: &Sitting<'_>) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let named = |at: usize| {
        ["food-", "dish-"].iter().any(|group| sentence.of(at, group).is_some())
            || ["done", "ask-cook", "ask-reheat"].iter().any(|concept| sentence.is(at, concept))
    };
    (0..sentence.len()).any(named)
}

/// Off the heat and not carved yet.
fn stands(sitting: &Sitting<'_>) -> bool {
    sitting
        .room
        .plan
        .as_ref()
        .is_some_and(|plan| plan.is_off() && plan.job(Step::Carve, 0).is_some_and(|job| job.state == JobState::Waiting))
}

/// Off the heat for more than two hours, and not read hot since.
pub(super) fn stands_too_long(sitting: &Sitting<'_>) -> bool {
    const EATEN: TimeDelta = TimeDelta::hours(8);
    sitting.room.plan.as_ref().is_some_and(|plan| {
        let off = kept_hot::known(plan);
        let waits = plan.jobs.iter().any(|job| job.step() == Some(Step::Chill) && job.state == JobState::Waiting);
        let over = |off| sitting.now - off > hot_day::most(plan) && sitting.now - off < EATEN;
        waits && off.is_some_and(over)
    })
}

/// Over the heat, or off it and not long eaten.
pub(super) fn near_the_table(sitting: &Sitting<'_>) -> bool {
    const EATEN: TimeDelta = TimeDelta::hours(3);
    let now = sitting.now;
    sitting.room.plan.as_ref().is_some_and(|plan| {
        let eaten = plan.wish.dinner.is_some_and(|dinner| now - dinner > EATEN);
        !eaten && (plan.is_off() || plan.on_since(now).is_some())
    })
}

fn answer(sitting: &mut Sitting<'_>, text: &str) {
    let asker = asker(sitting);
    if let Some(limit) = own_limit(sitting, text) {
        sitting.answer(limit);
        return;
    }
    if of_leftovers(ask::read_question(text, &asker).ok().as_ref()) && spoiled::says_gone(sitting) {
        return;
    }
    if ask::read_question(text, &asker)
        .is_ok_and(|question| stood_out::told(sitting, text, &question) || broth::told(sitting, &question))
    {
        return;
    }
    if let Ok(question @ Question::FridgeAt(at)) = ask::read_question(text, &asker)
        && waits_in_fridge(sitting)
        && ask::fridge_too_warm(Some(at)).is_some()
        && let Ok(answer) = ask::answer(&question, &asker)
    {
        let bird = Text::new("room-fridge-bird").with("limit", Arg::Span(spans::HOT_MOST));
        let cold = Arg::Temperature(carvetime_core::quantity::fahrenheit(40.0));
        sitting.answer_all(vec![bird.with("cold", cold)]).lines(answer.lines()).urgency(Urgency::Safety);
        return;
    }
    let is_done = || forecast::foresight(sitting).is_some_and(|sight| sight.is_done());
    if matches!(ask::read_question(text, &asker), Ok(Question::Advice(Advice::Foil))) && (stands(sitting) || is_done())
    {
        // Done, it is no skin that browns: it is kept warm while it stands.
        let least = carvetime_core::safety::US_STAND_TIME.time().map_or(TimeDelta::minutes(20), |time| time.low);
        sitting.answer(Text::new("room-foil-off").with("least", Arg::Span(least)));
        return;
    }
    if stands_too_long(sitting)
        && matches!(
            ask::read_question(text, &asker),
            Ok(Question::Lethality { .. }
                | Question::SafeTemperature { .. }
                | Question::Advice(Advice::Habit(ask::Habit::RawInside)))
        )
    {
        // What stood out in the cold for two hours is not cooked safe again, whatever it reads by now.
        kept_hot::say_over(sitting);
        return;
    }
    if let Ok(Question::Keeps { food: Food::Leftovers, place, age, .. }) = ask::read_question(text, &asker)
        && is_raw_still(sitting)
        && !names_food(text, sitting)
    {
        return answer_of(sitting, text, &Question::Keeps { food: Food::RawWhole, raw_too: false, place, age });
    }
    let own = ask::read_question(text, &asker).ok().and_then(|question| salted::asked(sitting, &question, &asker));
    if let Some(answer) = own.or_else(|| over_salt(sitting, text)) {
        return say(sitting, text, answer, How::New);
    }
    match ask::ask(text, &asker) {
        Ok(answer) => {
            // A weight that is asked back may be known: from the plan, or from the one being made.
            let lacks_weight = answer.ask_back.as_ref().is_some_and(|back| back.choices.is_empty());
            let whole = lacks_weight.then(|| own_bird(sitting, text)).flatten().map(|bird| format!("{text} {bird}"));
            match whole.and_then(|whole| Some((of_own_bird(sitting, &whole, &asker)?, whole))) {
                Some((answer, whole)) if answer.ask_back.is_none() => say(sitting, &whole, answer, How::New),
                _ => say(sitting, text, answer, How::New),
            }
        }
        Err(error) => {
            sitting.answer(error.text());
        }
    }
}

/// The answer for the bird in hand; over its own heat, where none is named.
fn of_own_bird(sitting: &Sitting<'_>, whole: &str, asker: &Asker) -> Option<Answer> {
    let question = match ask::read_question(whole, asker).ok()? {
        Question::RoastTime { bird, heat: None } => {
            let heat = own_wish(sitting).filter(|wish| wish.cooker.is_some()).map(order::heat);
            Question::RoastTime { bird, heat }
        }
        other => other,
    };
    ask::answer(&question, asker).ok()
}

fn own_wish<'s>(sitting: &'s Sitting<'_>) -> Option<&'s Wish> {
    let drafted = sitting.speaker().and_then(|who| sitting.room.drafts.get(&who)).map(|draft| &draft.wish);
    sitting.room.plan.as_ref().map(|plan| &plan.wish).or(drafted)
}

/// The bird of this room's plan or of the speaker's draft, in words every language's reader knows. `None`: the text names another.
fn own_bird(sitting: &Sitting<'_>, text: &str) -> Option<String> {
    let wish = own_wish(sitting)?;
    let kind = order::kind(wish).name();
    let named = super::planning::read(sitting, text).0.kind;
    let kind = Some(kind).filter(|kind| named.is_none_or(|named| named == *kind))?.replace('-', " ");
    // Cut to whole grams, 14 lb would come back a hair lighter, and feed fewer.
    Some(format!("{} g {kind}", (wish.mass_g? - 0.05).ceil()))
}

fn say(sitting: &mut Sitting<'_>, text: &str, answer: Answer, how: How) {
    let Some(who) = sitting.speaker() else {
        // An administrator nobody can name: answered, and nothing kept to come back to.
        sitting.answer_all(answer.lines());
        return;
    };
    if let Some(own) = &answer.own_salt {
        let grams_per_ml = own.grams_per_ml();
        sitting.change_person(who, |person| person.own_salt = Some(OwnSalt { grams_per_ml }));
    }
    let kept = answer.own_salt.is_some().then(|| Text::new("room-own-salt-kept"));
    let own_dose = answer.own_salt.as_ref().and_then(|_| dose_again(sitting, who));
    let leftovers = answer.kind == "keeps"
        && matches!(
            ask::read_question(text, &asker(sitting)),
            Ok(Question::Keeps { food: Food::Leftovers, age: None, .. })
        );
    let own_leftovers = if leftovers { leftovers_of(sitting) } else { None };
    let asked = AskedBack { by: who, at: sitting.now, passed: false, serial: None };
    let others = sitting.room.asked_back.filter(|asked| asked.by != who);
    sitting.room.asked_back = answer.ask_back.as_ref().map(|_| asked).or(others);
    let keep = text.len() <= LONGEST_KEPT && (answer.ask_back.is_some() || !answer.sources.is_empty());
    if keep {
        sitting.room.questions.insert(who, text.to_owned());
    }
    let say =
        sitting.answer_all(answer.lines()).lines(kept).lines(own_dose).lines(own_leftovers).key(key(who)).how(how);
    if !keep {
        return;
    }
    match answer.ask_back {
        Some(back) => {
            let choices = back
                .choices
                .into_iter()
                .enumerate()
                .map(|(n, choice)| labelled(choice.label, &Action::Reply(who, u8::try_from(n).unwrap_or(u8::MAX))));
            say.row(choices);
        }
        None => {
            say.row([button("room-button-sources", &Action::Sources(who))]);
        }
    }
}

/// "5 hours", "16 lb", "flake": what was asked back, typed. `false`: nothing was asked back lately, or this is no answer to it.
pub(super) fn completed(sitting: &mut Sitting<'_>, text: &str) -> bool {
    const LATELY: TimeDelta = TimeDelta::minutes(10);
    const LONGEST: usize = 40;
    let asked = sitting.room.asked_back.filter(|asked| sitting.now - asked.at <= LATELY);
    let Some(who) = sitting.speaker().filter(|who| asked.is_some_and(|asked| asked.by == *who)) else { return false };
    if text.chars().count() > LONGEST || is_question(sitting, text) && text.contains('?') {
        return false;
    }
    hear_again(sitting, who);
    let Some((question, before)) = last(sitting, who).filter(|(_, answer)| answer.ask_back.is_some()) else {
        return false;
    };
    let whole = format!("{question} {text}");
    match ask::ask(&whole, &asker(sitting)) {
        Ok(answer) if answer.ask_back.is_none() && answer.kind == before.kind => {
            say(sitting, &whole, answer, How::New);
            true
        }
        _ => false,
    }
}

/// "I put 3 tbsp on it, too much?" of the bird that is planned: against its own dose, and how long the salt has been on it.
fn over_salt(sitting: &Sitting<'_>, text: &str) -> Option<Answer> {
    const GOES_IN: TimeDelta = TimeDelta::hours(1);
    let asker = asker(sitting);
    let put_on = salted::put_on(sitting, text, &asker);
    let question = put_on.or_else(|| ask::read_question(text, &asker).ok())?;
    let Question::OverSalt { bird, .. } = &question else { return None };
    let plan = sitting.room.plan.as_ref().filter(|_| bird.mass.is_none())?;
    let (order, strength) = (plan.order(sitting.zone_or_utc())?, dose::strength(&plan.wish));
    // Where the plan salts nothing, it takes what a bird like it takes.
    let dose = dose::dry(&order, strength).or_else(|| salt::dose(&order.bird, strength).ok())?;
    let lain = match plan.job(Step::Salt, 0).map(|job| &job.state) {
        Some(JobState::Done { at, .. }) if sitting.now - *at >= GOES_IN => Lain::Soaked,
        Some(JobState::Done { .. }) => Lain::Fresh,
        _ => Lain::Unknown,
    };
    ask::over_salt(&question, Some(dose.total), lain, &asker).ok()
}

/// The plan's dose in the salt they have just told of, while it is still to be salted.
fn dose_again(sitting: &Sitting<'_>, who: PersonId) -> Option<Text> {
    let plan = sitting.room.plan.as_ref()?;
    plan.job(Step::Salt, 0).filter(|job| job.state == JobState::Waiting)?;
    let order = plan.order(sitting.zone_or_utc())?;
    let own = sitting.people.get(&who)?.own_salt;
    dose::lines(&order, own, dose::strength(&plan.wish), sitting.usual_salt()).into_iter().next()
}

/// What is asked of cooked food that is kept, warmed up or cooked into something else.
fn of_leftovers(question: Option<&Question>) -> bool {
    match question {
        Some(Question::Keeps { food, .. } | Question::Reheat { food }) => {
            matches!(food, Food::Leftovers | Food::CookedInGravy | Food::Soup)
        }
        Some(Question::Advice(Advice::Habit(habit))) => *habit == Habit::Carcass,
        Some(Question::Refreeze | Question::Cooling | Question::LeftOut { .. }) => true,
        _ => false,
    }
}

/// Until when this dinner's own leftovers keep, or that they no longer do.
pub(super) fn leftovers_of(sitting: &Sitting<'_>) -> Option<Text> {
    let plan = sitting.room.plan.as_ref()?;
    let job = plan.job(Step::Leftovers, 0)?;
    if spoiled::is_gone(plan) {
        return Some(Text::new("cook-gone"));
    }
    plan.wish.dinner.filter(|dinner| *dinner <= sitting.now)?;
    // "Eat or freeze them today" was said of this whole day, and of no later one.
    let zone = sitting.zone_or_utc();
    let is_today = date(zone, job.at) == date(zone, sitting.now);
    let (id, last) = match sitting.now <= job.at || is_today && sitting.now <= job.latest {
        true => ("room-leftovers-until", if sitting.now <= job.at { job.at } else { job.latest }),
        false => ("room-leftovers-over", job.at),
    };
    Some(Text::new(id).with("when", Arg::DayClock(last)))
}

/// A reply to what was asked back.
pub(super) fn reply(sitting: &mut Sitting<'_>, who: PersonId, place: u8) {
    hear_again(sitting, who);
    let Some((text, answer)) = last(sitting, who) else { return sitting.notice(Text::new("room-question-gone")) };
    let choices = answer.ask_back.map(|back| back.choices).unwrap_or_default();
    let Some(choice) = choices.get(usize::from(place)) else {
        return sitting.notice(Text::new("room-question-gone"));
    };
    let text = format!("{text} {}", choice.adds);
    match ask::ask(&text, &asker(sitting)) {
        Ok(answer) => say(sitting, &text, answer, How::Edit),
        Err(error) => sitting.notice(error.text()),
    }
}

/// Where the numbers of the last answer come from.
pub(super) fn sources(sitting: &mut Sitting<'_>, who: PersonId) {
    hear_again(sitting, who);
    let Some((_, answer)) = last(sitting, who) else { return sitting.notice(Text::new("room-question-gone")) };
    let lines: Vec<Text> = answer.sources.iter().map(ask::source_line).collect();
    sitting.answer(Text::new("room-sources")).lines(lines);
}

/// What is answered to it, for an answer that says more.
pub(super) fn lines(sitting: &Sitting<'_>, question: &Question) -> Vec<Text> {
    ask::answer(question, &asker(sitting)).map(|answer| answer.lines()).unwrap_or_default()
}

/// Answers as if it had been asked for.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) {
    answer(sitting, text);
}

/// The question was asked in the language it is read in again.
fn hear_again(sitting: &mut Sitting<'_>, who: PersonId) {
    if let Some(text) = sitting.room.questions.get(&who).cloned() {
        super::tongue::hear(sitting, who, &text);
    }
}

fn last(sitting: &Sitting<'_>, who: PersonId) -> Option<(String, Answer)> {
    let text = sitting.room.questions.get(&who)?.clone();
    let asker = asker(sitting);
    // The dose of the planned bird was answered by its plan, not asked back.
    let planned = ask::read_question(&text, &asker).ok().and_then(|question| salted::asked(sitting, &question, &asker));
    let answer = planned.or_else(|| ask::ask(&text, &asker).ok())?;
    Some((text, answer))
}

/// The asker behind the speaker: the room's units and language, their own salt.
pub(super) fn asker(sitting: &Sitting<'_>) -> Asker {
    let person = sitting.speaker().and_then(|id| sitting.people.get(&id));
    let own = person.and_then(|person| person.own_salt);
    let mut asker = Asker::of_reader(&sitting.reader());
    asker.fridge = person.and_then(own_kitchen::fridge);
    asker.heat = off_dial::heat(sitting);
    asker.own_salt = own.and_then(|own| salt::OwnSalt::new(None, own.grams_per_ml).ok());
    asker
}

fn key(who: PersonId) -> String {
    format!("question-{}", who.0)
}
