//! A change of mind in plain words: "12 people now", "make it 6 instead", "the bird is fresh".
//!
//! With a proposal open it changes the proposal; with a plan standing it changes the plan, if it still can, and can be
//! taken back.

use super::action::Action;
use super::sitting::{button, name};
use super::state::{JobState, LivePlan};
use super::{
    PersonId, RoomKind, Sitting, board, jobs, late, live, may, moves, planning, proposal, spoiled, stepping_down,
    stray, swap, there, which,
};
use crate::reading::sentence::{Sentence, What};
use crate::reading::{self, Problem, Wish};
use crate::words::{Arg, Text};
use carvetime_core::bird::Form;
use carvetime_core::plan::{Moment, Salting, Step};

/// Short enough to be nothing but a change.
pub(super) const SHORT: usize = 60;

/// `false`: the words change nothing.
pub(super) fn told(sitting: &mut Sitting<'_>, who: PersonId, text: &str, addressed: bool) -> bool {
    // "Got it, thanks" has no bird at home.
    let chats = !sitting.room.drafts.contains_key(&who) && reading::is_chatter(text, sitting.lexicon());
    if chats || planning::asks_what(sitting, text) {
        return false;
    }
    let (wish, problems) = planning::read(sitting, text);
    if sitting.room.drafts.contains_key(&who) {
        let taught = is_taught(sitting, text, &wish);
        if !addressed && !taught && !is_of_the_hour(&Sentence::read(text, sitting.lexicon())) && wish.adults.is_none() {
            return false;
        }
        let told = !wish.is_empty();
        let wish = stray::without(sitting, who, text, wish);
        if told && wish.is_empty() {
            return false;
        }
        // "make it 6 instead": a number that means nothing else is the hour.
        let loose = problems.iter().all(|problem| matches!(problem, Problem::LooseNumber(_)));
        if wish.is_empty() && loose && planning::people_back(sitting, who, text) {
            return true;
        }
        if wish.is_empty() && loose {
            return planning::heated(sitting, who, text) || text.len() <= SHORT && planning::moved(sitting, who, text);
        }
        planning::told(sitting, who, wish, &problems);
        return true;
    }
    if sitting.room.plan.is_none() {
        // The beginning of a plan, told in pieces.
        let wish = stray::without(sitting, who, text, wish);
        // "I have a stomach bug": what one has is no dinner yet.
        let only_had = Wish { at_home: None, ..wish.clone() }.is_empty();
        let greets = reading::is_greeting(text, sitting.lexicon());
        let begins = addressed && text.len() <= SHORT && !only_had && !wish.fewer && !greets;
        // "Breast 104" is read in a bird, and plans none.
        let begins = begins && !(sizes_nothing(&wish) && reads(sitting, text));
        if begins {
            planning::told(sitting, who, wish, &problems);
        }
        return begins;
    }
    standing(sitting, who, text, addressed, wish, &problems)
}

/// "Carry it hot", "cook it there", "use by Friday", in the words a proposal teaches: of this bird, whoever else is in the room.
fn is_taught(sitting: &Sitting<'_>, text: &str, wish: &Wish) -> bool {
    let told = wish.hot.is_some() || wish.use_by.is_some() || reading::says_cooked_there(text, sitting.lexicon());
    text.len() <= SHORT && told
}

/// Neither how heavy, nor for whom, nor when.
fn sizes_nothing(wish: &Wish) -> bool {
    let kind = wish.kind.clone();
    Wish { kind, ..Wish::default() } == *wish
}

/// A spot and a number no plan has.
fn reads(sitting: &Sitting<'_>, text: &str) -> bool {
    const LEAST: f64 = 30.0;
    let log = reading::read_log(text, &sitting.ground()).ok().flatten();
    log.is_some_and(|log| log.readings.iter().any(|reading| reading.place.is_some() && reading.value >= LEAST))
}

/// How much solution the bird holds was told in a question: the plan knows it from then on.
pub(super) fn solution(sitting: &mut Sitting<'_>, who: PersonId, text: &str) {
    let (Wish { solution_percent, .. }, _) = planning::read(sitting, text);
    let told = Wish { solution_percent, ..Wish::default() };
    if let Some(draft) = sitting.room.drafts.get_mut(&who) {
        draft.wish.merge(told);
        planning::go_on(sitting, who, super::turn::How::New);
    } else if let Some(plan) = &sitting.room.plan {
        let salted = plan.jobs.iter().any(|job| job.step() == Some(Step::Salt) && job.state != JobState::Waiting);
        let mut wish = plan.wish.clone();
        wish.merge(told);
        if wish != plan.wish && !salted && may::steer(sitting) {
            apply(sitting, wish);
        }
    }
}

fn standing(
    sitting: &mut Sitting<'_>,
    who: PersonId,
    text: &str,
    addressed: bool,
    wish: Wish,
    problems: &[Problem],
) -> bool {
    let Some(plan) = &sitting.room.plan else { return false };
    if plan.wish.dinner.is_some_and(|dinner| dinner <= sitting.now)
        || reading::speaks_of_another_year(text, sitting.lexicon())
    {
        return false;
    }
    // What people say to each other changes no plan: only what is said to the bot does.
    if !addressed {
        return opened_flat(sitting, text)
            || unsalted(sitting, text)
            || there::overheard(sitting, text, &wish)
            || overheard(sitting, text, wish);
    }
    let changed = wished(sitting, plan, text, wish);
    if changed == plan.wish {
        let stands = reading::settled(text, sitting.lexicon()).and_then(|_| shifted(sitting, text));
        if let Some(dinner) = stands.filter(|at| Some(*at) == plan.wish.dinner) {
            moves::already(sitting, dinner);
            return true;
        }
        // "My thermometer reads 5 degrees low" sets no oven.
        let sentence = Sentence::read(text, sitting.lexicon());
        let heats = (0..sentence.len()).any(|at| sentence.of(at, "cooker-").is_some() || sentence.is(at, "spot-pit"));
        let of_plan = |problem: &&Problem| match problem {
            Problem::LooseNumber(_) => false,
            Problem::Setting(_) => heats || is_brief(text),
            _ => true,
        };
        let complains: Vec<Problem> = problems.iter().filter(of_plan).cloned().collect();
        if !complains.is_empty() {
            planning::complain(sitting, who, &complains);
        }
        return !complains.is_empty();
    }
    if spoiled::says_gone(sitting) {
        return true;
    }
    if !may::steer(sitting) {
        may::refuse(sitting);
        return true;
    }
    apply(sitting, changed);
    true
}

/// "Wes spatchcocked it": a flat bird is done much sooner, whoever tells of it.
fn opened_flat(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let raw = |plan: &&LivePlan| plan.on_since(sitting.now).is_none() && !plan.is_off();
    let whole = |plan: &&LivePlan| plan.wish.form.as_deref().is_none_or(|form| form == Form::Whole.name());
    let said = text.len() <= SHORT && reading::says_opened_flat(text, sitting.lexicon());
    let Some(plan) = sitting.room.plan.as_ref().filter(raw).filter(whole).filter(|_| said) else { return false };
    let flat = Wish { form: Some(Form::Flat.name().to_owned()), stuffed: Some(false), ..plan.wish.clone() };
    to(sitting, text, flat, false)
}

/// "It's stuffed", "the stuffing goes inside": it takes longer, and its middle has to be measured, whoever tells of it. `false`: nothing of
/// the kind, or the plan knows.
pub(super) fn stuffed(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let waits = |plan: &&LivePlan| !plan.is_off() && plan.wish.stuffed != Some(true);
    let said = text.len() <= SHORT && reading::says_stuffed(text, sitting.lexicon());
    if !said || planning::read(sitting, text).0.stuffed == Some(false) {
        return false;
    }
    let drafting = sitting.speaker().filter(|who| sitting.room.drafts.contains_key(who));
    if let Some(who) = drafting {
        planning::told(sitting, who, Wish { stuffed: Some(true), ..Wish::default() }, &[]);
        return true;
    }
    let Some(plan) = sitting.room.plan.as_ref().filter(waits) else { return false };
    let wish = Wish { stuffed: Some(true), ..plan.wish.clone() };
    to(sitting, text, wish, addressed)
}

/// "No salt please", to everyone, by whoever is planning. `false`: nothing of the kind.
pub(super) fn salted_so(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let drafting = sitting.speaker().filter(|who| sitting.room.drafts.contains_key(who) && !addressed);
    let Some(who) = drafting.filter(|_| !text.contains(['?', '¿'])) else { return false };
    let first = text.split([',', ';', '.', '!']).next().unwrap_or(text);
    let (wish, _) = planning::read(sitting, first);
    let Wish { salting: Some(salting), .. } = wish else { return false };
    if !is_plain(sitting, &Sentence::read(first, sitting.lexicon())) {
        return false;
    }
    planning::told(sitting, who, Wish { salting: Some(salting), ..Wish::default() }, &[]);
    true
}

/// "No salt, dad has a bad heart": why stands behind it.
fn unsalted(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some((first, rest)) = text.split_once([',', ';', '.', '!']) else { return false };
    // "No salt please, on the rim"
    if !reading::tells_who_may_not(rest, sitting.lexicon()) {
        return false;
    }
    let (wish, _) = planning::read(sitting, first);
    let none = Some(Salting::None.name().to_owned());
    let plainly = is_plain(sitting, &Sentence::read(first, sitting.lexicon()));
    if wish.salting != none || !plainly || text.contains(['?', '¿']) || !may::steer(sitting) {
        return false;
    }
    let salted = |plan: &&LivePlan| plan.wish.salting != none && plan.on_since(sitting.now).is_none();
    let Some(plan) = sitting.room.plan.as_ref().filter(salted) else { return false };
    let wish = Wish { salting: none.clone(), ..plan.wish.clone() };
    to(sitting, text, wish, false)
}

/// "14 people now", said to everyone: of whoever may decide it changes the plan, and can be taken back. Only where nothing else was said, and
/// of nothing but the table, the hour and how it is carried; of others, whom the host is asked about, of the table alone.
fn overheard(sitting: &mut Sitting<'_>, text: &str, wish: Wish) -> bool {
    let steers = may::steer(sitting);
    let Some(plan) = sitting.room.plan.as_ref().filter(|_| sitting.room.kind == RoomKind::Group) else { return false };
    let sentence = Sentence::read(text, sitting.lexicon());
    // "Set the oven to 375 for the pie": whatever else it is for, it is said of that.
    let plainly = |at: usize| {
        let word = reading::fold(sentence.raw(at));
        is_empty(sitting, &word) || sitting.lexicon().talk(&word, "heat-change")
    };
    let unknown = |at: &usize| matches!(sentence.item(*at).map(|item| &item.what), Some(What::Word([])));
    let heats = steers && changes_heat(sitting, text) && (0..sentence.len()).filter(unknown).all(plainly);
    let told = heats || is_plain(sitting, &sentence) || is_of_guests(&sentence, &wish);
    // "The dogs eat at 5"
    let pets = sentence.has("habit-dog");
    if text.len() > SHORT || text.contains(['?', '¿']) || !told || pets || is_of_another_day(sitting, text, &wish) {
        return false;
    }
    let Wish { adults, children, among, more, fewer, .. } = wish;
    let people = Wish { adults, children, among, more, fewer, ..Wish::default() };
    let table = counts_the_table(&sentence, &wish);
    let mut changed = plan.wish.clone();
    changed.merge(if table || wish.adults.is_some() { people } else { Wish::default() });
    if !steers {
        let news = news(&plan.wish, &changed);
        return table && !news.is_empty() && ask_host(sitting, text, news);
    }
    let meal = (0..sentence.len()).any(|at| sentence.of(at, "meal-").is_some());
    let Wish { hot, use_by, .. } = wish;
    let elsewhere = wish.elsewhere.filter(|_| hot.is_some() || reading::says_cooked_there(text, sitting.lexicon()));
    if heats {
        let Wish { cooker, setting_c, .. } = wish.clone();
        changed.merge(Wish { cooker, setting_c, ..Wish::default() });
    }
    // "The turkey is 18 lb not 14", "it's frozen, not fresh": said of the bird by name, or against what was thought.
    let raw = plan.on_since(sitting.now).is_none() && !plan.is_off();
    let bird = (0..sentence.len()).any(|at| sentence.of(at, "bird-").is_some() || sentence.is(at, "negation"));
    if raw && (bird || is_of_a_bird(&wish)) {
        let Wish { mass_g, condition, .. } = wish.clone();
        changed.merge(Wish { mass_g, condition, ..Wish::default() });
    }
    let unsalted = raw && (0..sentence.len()).any(|at| sentence.of(at, "salting-") == Some("none"));
    let salting = wish.salting.clone().filter(|_| unsalted);
    let presalted = wish.presalted.filter(|_| raw && is_of_a_bird(&wish));
    let salting = salting.or(presalted.and(wish.salting.clone()));
    changed.merge(Wish { hot, elsewhere, use_by, salting, presalted, ..Wish::default() });
    changed.settle(&sitting.ground());
    changed.dinner = shifted(sitting, text).filter(|_| meal).or(changed.dinner);
    if let Some((dinner, to)) = only_dinner(&plan.wish, &changed) {
        moves::settled(sitting, to, dinner);
        return true;
    }
    if news(&plan.wish, &changed).is_empty() {
        return false;
    }
    apply(sitting, changed);
    true
}

/// Changes the plan to that wish: at once where whoever may decide says so, else the host is asked. `false`: nothing changes.
pub(super) fn to(sitting: &mut Sitting<'_>, text: &str, wish: Wish, addressed: bool) -> bool {
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| plan.wish != wish) else { return false };
    let news = there::by_its_clock(news(&plan.wish, &wish), &wish, sitting.zone_or_utc());
    match (may::steer(sitting), addressed) {
        (true, _) => apply(sitting, wish),
        (false, true) => may::refuse(sitting),
        (false, false) => return ask_host(sitting, text, news),
    }
    true
}

/// "2 more people are coming", from a helper: the host is asked.
fn ask_host(sitting: &mut Sitting<'_>, text: &str, news: Vec<Text>) -> bool {
    let host = sitting.room.plan.as_ref().map(|plan| plan.host);
    let (Some(host), Some(by)) = (host, sitting.speaker()) else { return false };
    let told = Text::new("room-amend-told")
        .with("name", name(sitting, by))
        .with("change", Arg::List(news))
        .with("host", name(sitting, host));
    which::offer_to(sitting, host, text, told);
    true
}

/// "Aunt Carol isn't coming", "2 more people are coming, Ben and Kate": the names in it are of those who come or stay away.
fn is_of_guests(sentence: &Sentence, wish: &Wish) -> bool {
    const MOST_NAMES: usize = 6;
    let turns = sentence.has("joining") || sentence.has("leaving") || wish.more || wish.fewer;
    let unknown = |at: &usize| matches!(sentence.item(*at).map(|item| &item.what), Some(What::Word([])));
    let counted = wish.adults.is_some() || wish.children.is_some();
    turns && counted && (0..sentence.len()).filter(unknown).count() <= MOST_NAMES
}

/// "2 more people", "we're 12 now": a number of people that is one of the table. "Two kids are sick" may be said of any.
fn counts_the_table(sentence: &Sentence, wish: &Wish) -> bool {
    let words = ["now", "in-all", "for", "joining", "leaving"];
    wish.more || wish.fewer || words.iter().any(|word| sentence.has(word))
}

/// It names a day, and not that of the dinner.
fn is_of_another_day(sitting: &Sitting<'_>, text: &str, wish: &Wish) -> bool {
    let date = |at: Moment| at.with_timezone(&sitting.zone_or_utc()).date_naive();
    let stands = sitting.room.plan.as_ref().and_then(|plan| plan.wish.dinner).map(date);
    let told = wish.dinner.map(date).or(wish.dinner_day);
    let people = wish.adults.is_some() || wish.children.is_some();
    people && told.is_some() && told != stands
        || stepping_down::is_of_another_day(&sitting.room, text, sitting.lexicon())
}

/// "Change the oven to 350", "smoker at 275 instead", of a bird that is not on yet: what it is to be roasted at, and no question.
pub(super) fn changes_heat(sitting: &Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, lexicon);
    let raw = |plan: &&LivePlan| plan.on_since(sitting.now).is_none() && !plan.is_off();
    let Some(plan) = sitting.room.plan.as_ref().filter(raw).filter(|_| !asks && text.len() <= SHORT) else {
        return false;
    };
    let sentence = Sentence::read(text, lexicon);
    let dish = |at: usize| sentence.of(at, "food-").is_some() || sentence.of(at, "dish-").is_some();
    let (wish, _) = planning::read(sitting, text);
    let told = wish.setting_c.is_some() && wish.cooker.is_some() && !(0..sentence.len()).any(dish);
    let changes = || lexicon.talk_words(text).iter().any(|word| lexicon.talk(word, "heat-change"));
    told && (wish.cooker != plan.wish.cooker || changes())
}

/// What of a wish is other than before.
pub(super) fn news(before: &Wish, wish: &Wish) -> Vec<Text> {
    let known = proposal::known(before);
    let carried = wish.hot.filter(|hot| *hot != before.hot.unwrap_or(false));
    let carried = carried.map(|hot| Text::new(if hot { "room-change-hot" } else { "room-change-cold" }));
    let there = before.elsewhere == Some(true) && wish.elsewhere == Some(false);
    // "Cook it there" leaves the other house in the wish.
    let home = wish.there.is_none() && wish.drive_min.is_none();
    let there = there.then(|| Text::new(if home { "room-change-home" } else { "room-change-there" }));
    let carried = carried.into_iter().chain(there);
    proposal::known(wish).into_iter().filter(|part| !known.contains(part)).chain(carried).collect()
}

/// Every word is one that plans are made of, or says nothing.
pub(super) fn is_plain(sitting: &Sitting<'_>, sentence: &Sentence) -> bool {
    let is_word = |at: usize| matches!(sentence.item(at).map(|item| &item.what), Some(What::Word([])));
    (0..sentence.len()).all(|at| !is_word(at) || is_empty(sitting, &reading::fold(sentence.raw(at))))
}

/// A word that says nothing by itself.
pub(super) fn is_empty(sitting: &Sitting<'_>, word: &str) -> bool {
    const GROUPS: [&str; 7] = ["filler", "mine-link", "manners", "meat", "meat-reads", "meat-rests", "slip"];
    GROUPS.iter().any(|group| sitting.lexicon().talk(word, group))
}

/// The wish of the plan with what the words say.
fn wished(sitting: &Sitting<'_>, plan: &LivePlan, text: &str, wish: Wish) -> Wish {
    let mut changed = plan.wish.clone();
    changed.merge_at(meant(sitting, text, wish), &sitting.ground());
    changed.settle(&sitting.ground());
    if changed == plan.wish && text.len() <= SHORT {
        changed.dinner = shifted(sitting, text).or(changed.dinner);
    }
    changed
}

/// Whether the words, said to the bot, would change the plan in hand.
pub(super) fn would(sitting: &Sitting<'_>, text: &str) -> bool {
    let (wish, _) = planning::read(sitting, text);
    sitting.room.plan.as_ref().is_some_and(|plan| wished(sitting, plan, text, wish) != plan.wish)
}

/// What a sentence really says of this dinner. "My sister arrives at 8" and "5 lb potatoes" say nothing of it: an hour counts
/// beside a word of the meal or of moving, a weight beside a bird, a setting beside a cooker, unless there is little else.
fn meant(sitting: &Sitting<'_>, text: &str, mut wish: Wish) -> Wish {
    let sentence = Sentence::read(text, sitting.lexicon());
    let says = |group: &str| (0..sentence.len()).any(|at| sentence.of(at, group).is_some());
    // "Breast 45, thigh 50" is a reading that came too early, and no other bird.
    if !says("bird-") {
        wish.kind = None;
    }
    let brief = is_brief(text);
    let hour = is_of_this_dinner(sitting, text, &sentence, &wish);
    let of_bird = says("bird-") || is_of_a_bird(&wish);
    if !(hour || of_bird) {
        let Wish {
            adults, children, among, more, fewer, strength, solution_percent, hot, use_by, presalted, shop, ..
        } = wish;
        let salting = wish.salting.filter(|_| sentence.has("salted-already") || says("salting-none"));
        let there = reading::says_cooked_there(text, sitting.lexicon());
        let elsewhere = wish.elsewhere.filter(|_| hot.is_some() || there);
        let heat = changes_heat(sitting, text);
        let (cooker, setting_c) = (wish.cooker.filter(|_| heat), wish.setting_c.filter(|_| heat));
        let people = Wish { adults, children, among, more, fewer, cooker, setting_c, ..Wish::default() };
        return Wish { strength, solution_percent, salting, presalted, hot, elsewhere, use_by, shop, ..people };
    }
    if !hour {
        (wish.dinner, wish.dinner_day, wish.dinner_hour) = (None, None, None);
    }
    if !(brief || of_bird) {
        wish.mass_g = None;
    }
    if !(brief || says("cooker-")) {
        wish.setting_c = None;
    }
    wish
}

/// "It's a fresh 13 lb one": what only a bird has two of.
fn is_of_a_bird(wish: &Wish) -> bool {
    wish.mass_g.is_some() && (wish.condition.is_some() || wish.form.is_some() || wish.presalted.is_some())
}

/// Whether the hour in it is this dinner's: the meal is named, or little is said but the hour. "Pizza tonight at 7" is another meal, and so is
/// "dinner with the neighbours on Friday" where this one is on Thursday and nothing is said of moving it.
fn is_of_this_dinner(sitting: &Sitting<'_>, text: &str, sentence: &Sentence, wish: &Wish) -> bool {
    let plain = || is_plain(sitting, sentence);
    if reading::settled(text, sitting.lexicon()).is_some() || is_brief(text) && plain() {
        return true;
    }
    if reading::settles_a_day(text, sitting.lexicon()) {
        return true;
    }
    if !is_of_the_hour(sentence) {
        return false;
    }
    let date = |at: Moment| at.with_timezone(&sitting.zone_or_utc()).date_naive();
    let told = wish.dinner.map(date).or(wish.dinner_day);
    let stands = sitting.room.plan.as_ref().and_then(|plan| plan.wish.dinner).map(date);
    let moves = ["later", "earlier", "instead"].iter().any(|word| sentence.has(word));
    told.is_none() || told == stands || moves || plain()
}

/// The meal is named, or that something moves.
fn is_of_the_hour(sentence: &Sentence) -> bool {
    let meal = (0..sentence.len()).any(|at| sentence.of(at, "meal-").is_some());
    meal || sentence.has("later") || sentence.has("earlier")
}

/// "5 pm", "16 lb", "make it 6 instead": hardly more than the value itself.
fn is_brief(text: &str) -> bool {
    const FEW: usize = 4;
    text.split_whitespace().count() <= FEW
}

/// The dinner hour in words like "make it 6 instead"; a number alone is no hour.
fn shifted(sitting: &Sitting<'_>, text: &str) -> Option<carvetime_core::plan::Moment> {
    let dinner = sitting.room.plan.as_ref()?.wish.dinner?;
    let bare = text.trim().chars().all(|c| c.is_ascii_digit());
    let sentence = Sentence::read(text, sitting.lexicon());
    // The date on a pack moves no dinner.
    if sentence.has("use-by") {
        return None;
    }
    // "We are 10 by now": people, however they were counted.
    let counts = (0..sentence.len()).any(|at| sentence.is(at, "for") && sentence.raw(at).contains(' '));
    let (wish, _) = planning::read(sitting, text);
    // "Table for 6", "+2 for dinner": the one number of it counts people.
    let numbers = (0..sentence.len()).filter(|at| sentence.number(*at).is_some() || sentence.amount(*at).is_some());
    if (wish.adults.is_some() || wish.children.is_some()) && numbers.count() == 1 {
        return None;
    }
    let hour = (!counts || is_of_the_hour(&sentence)) && is_of_this_dinner(sitting, text, &sentence, &wish);
    // "Is it enough for 15?", "no, it's 5": what moves a dinner says that it moves, or says an hour as one.
    let settled = reading::settled(text, sitting.lexicon()).is_some();
    let moves = is_of_the_hour(&sentence) || sentence.has("instead") || settled;
    let hour = hour && !text.contains('?') && (moves || reading::says_an_hour(text, &sitting.table_ground()));
    let shift = (hour && !bare).then(|| reading::read_shift(text, dinner, &sitting.table_ground())).flatten()?;
    // "2 hours" alone is an answer to something, and moves no dinner.
    let signed = text.contains(['+', '-', '−']);
    if matches!(shift, reading::Shift::By(_)) && !moves && !signed {
        return None;
    }
    shift.applied(dinner).filter(|to| *to > sitting.now)
}

fn apply(sitting: &mut Sitting<'_>, wish: Wish) {
    let (light, now, by) = (sitting.light(), sitting.now, sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let mut changed = LivePlan { wish, ..plan.clone() };
    let swapped = swap::is_swapped(plan, &changed.wish);
    let told_shop = plan.wish.shop != changed.wish.shop;
    let by_home = plan.wish.by_home;
    if swapped {
        swap::unassume(&mut changed, now);
    }
    match changed.solve(&light) {
        Some(Ok(schedule)) => {
            plan.remember("mended", None, by, now);
            // Only what is other than before: the rest stands on the board.
            let mut known = news(&plan.wish, &changed.wish);
            plan.wish = changed.wish;
            if known.is_empty() {
                known = proposal::known(&plan.wish);
            }
            let before = plan.jobs.clone();
            plan.jobs = changed.jobs;
            plan.adopt(&schedule, now);
            let shifts = live::shifts(&before, plan);
            let undo = super::undo::newest(plan);
            let small = plan.order(light.zone).and_then(|order| proposal::size_doubt(&order));
            let text = Text::new("room-amended").with("known", Arg::List(known));
            let keeps = swap::keeps(plan).filter(|_| swapped);
            let shop = proposal::shop(&plan.wish, &schedule).filter(|_| told_shop);
            let hour = there::whose_hour(&plan.wish).filter(|_| by_home != plan.wish.by_home);
            let lines: Vec<Text> = shop
                .into_iter()
                .chain(hour)
                .chain(small)
                .chain(proposal::cautions(&schedule))
                .chain(jobs::shift_lines(&shifts))
                .collect();
            let (keeps, there) = keeps.unzip();
            let there = there.map(|it| button("room-button-have-it", &Action::Done(it)));
            let say = sitting.answer(text).lines(keeps).lines(lines).key("amended");
            say.row(there.into_iter().chain([button("room-button-undo", &undo)]));
            board::refresh(sitting);
        }
        // "Half an hour later" and nothing else: the hours that would do are a press away.
        Some(Err(conflict)) if only_dinner(&plan.wish, &changed.wish).is_some() => {
            let (dinner, to) = only_dinner(&plan.wish, &changed.wish).unwrap_or((now, now));
            late::ask_first(sitting, to, dinner, &late::Outlook::Clash(Box::new(conflict)));
        }
        // What a bird weighs that was bought is no wish: the plan goes by it, and something else gives way.
        Some(Err(_)) if swapped || is_weighed(plan, &changed.wish) => {
            plan.remember("mended", None, by, now);
            let known = news(&plan.wish, &changed.wish);
            (plan.wish, plan.jobs) = (changed.wish, changed.jobs);
            let undo = super::undo::newest(plan);
            let text = Text::new("room-amended").with("known", Arg::List(known));
            sitting.answer(text).key("amended").row([button("room-button-undo", &undo)]);
            let solved = sitting.solve_again();
            if let Err(conflict) = &solved.outcome {
                jobs::tell_conflict(sitting, conflict);
            }
            board::refresh(sitting);
        }
        Some(Err(conflict)) => {
            let mut lines = proposal::clash(&conflict);
            lines.extend(proposal::all_offers(&conflict));
            sitting.answer(Text::new("room-amend-clash")).lines(lines);
        }
        None => {}
    }
}

/// Only the weight is another, of a bird that is in the house.
fn is_weighed(plan: &LivePlan, wished: &Wish) -> bool {
    let bought = plan.job(Step::Buy, 0).is_none_or(|job| job.state != JobState::Waiting);
    bought && wished.mass_g != plan.wish.mass_g && Wish { mass_g: wished.mass_g, ..plan.wish.clone() } == *wished
}

/// Dinner as it stands and as it is wished, where nothing else changes.
fn only_dinner(stands: &Wish, wished: &Wish) -> Option<(Moment, Moment)> {
    let (dinner, to) = (stands.dinner?, wished.dinner?);
    let same = Wish { dinner: Some(to), ..stands.clone() } == *wished;
    (dinner != to && same).then_some((dinner, to))
}
