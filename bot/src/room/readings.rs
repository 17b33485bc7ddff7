//! Thermometer readings: noted, answered with what they mean, never taken for more than they are.

use super::action::{Action, JobRef};
use super::chart::Chart;
use super::forecast::{self, Foresight, Standing};
use super::live::Solved;
use super::sitting::{button, labelled, name};
use super::state::{JobState, LiveJob, Rung, StoredReading, Told};
use super::turn::{Button, File, FileContent, Say, To, Urgency};
use super::{
    PersonId, RoomKind, Sitting, air, alarms, amend, birds, board, burns_on, doubted, hot_day, hot_road, jobs,
    kept_hot, late, may, moves, order, plan_words, spoiled, stuffing,
};
use crate::reading::sentence::{Sentence, What};
use crate::reading::{self, Log, Place, Problem, Scale};
use crate::words::{Arg, Text};
use carvetime_core::bird::Form;
use carvetime_core::heat;
use carvetime_core::plan::{Moment, Step, spans};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius, in_fahrenheit};
use chrono::TimeDelta;

/// A set of readings, each in its place.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Spots {
    pub(super) pit: Option<Temperature>,
    pub(super) breast: Option<Temperature>,
    pub(super) thigh: Option<Temperature>,
    pub(super) stuffing: Option<Temperature>,
    pub(super) wing: Option<Temperature>,
}

impl Spots {
    /// The newest reading of each place.
    pub(super) fn last_of(readings: &[StoredReading]) -> Self {
        let last = |of: fn(&StoredReading) -> Option<f64>| readings.iter().rev().find_map(of).map(celsius);
        Self {
            pit: last(|reading| reading.pit_c),
            breast: last(|reading| reading.breast_c),
            thigh: last(|reading| reading.thigh_c),
            stuffing: last(|reading| reading.stuffing_c),
            wing: last(|reading| reading.wing_c),
        }
    }

    /// Breast and thigh.
    pub(super) fn meat(&self) -> (Option<Temperature>, Option<Temperature>) {
        (self.breast, self.thigh)
    }

    /// Every place and its reading.
    pub(super) fn named(&self) -> [(&'static str, Option<Temperature>); 5] {
        [
            ("breast", self.breast),
            ("thigh", self.thigh),
            ("wing", self.wing),
            ("stuffing", self.stuffing),
            ("pit", self.pit),
        ]
    }
}

/// An edited message corrects its author's last reading if it was told this recently: the platform gives the new text, not
/// which reading the old one was.
const CORRECTED_WITHIN: TimeDelta = TimeDelta::minutes(30);

/// `/log` with words.
pub(super) fn ordered(sitting: &mut Sitting<'_>, text: &str, edited: bool) {
    match reading::read_log(text, &sitting.ground()) {
        Ok(Some(log)) => told(sitting, &log, edited),
        Ok(None) => {
            sitting.answer(Text::new("room-log-how"));
        }
        Err(problem) => {
            sitting.answer(problem.text());
        }
    }
}

/// Plain words while something is over the heat. `false`: no readings in them.
pub(super) fn heard(sitting: &mut Sitting<'_>, text: &str, asked: bool, edited: bool) -> bool {
    if reading::sits_somewhere(text, sitting.lexicon()) {
        return false;
    }
    let talk = is_talk(sitting, text);
    match reading::read_log(text, &sitting.ground()) {
        Ok(Some(log))
            if is_of_before(sitting, text, &log) && (asked || log.readings.iter().any(|it| it.place.is_some())) =>
        {
            sitting.answer(Text::new("room-log-when"));
            true
        }
        // A number alone only answers a question; `41` in a chat may mean anything.
        Ok(Some(log)) if !talk && (asked || log.readings.iter().any(|reading| reading.place.is_some())) => {
            let before = sitting.says.len();
            told(sitting, &log, edited);
            if reading::asks_whether_enough(text, sitting.lexicon()) {
                no_first(sitting, &log, before);
            }
            true
        }
        // "Not done at half past eight, what do we do": asked of the dinner's hour.
        Err(Problem::Future(_)) if reading::Told::of(text, sitting.lexicon()).says("what-now") => false,
        Err(problem @ (Problem::Reading { .. } | Problem::Future(_) | Problem::TooManyReadings)) if asked && !talk => {
            sitting.answer(problem.text());
            true
        }
        _ => false,
    }
}

/// A number told with "is that ok?" that isn't: the answer opens with the no, and what it has to reach. `before`: how much was said
/// before it.
fn no_first(sitting: &mut Sitting<'_>, log: &Log, before: usize) {
    let short = |spot: Option<Temperature>| spot.is_some_and(|at| in_fahrenheit(at) < in_fahrenheit(super::target()));
    let Some((spot, _)) = spots(sitting, log).named().into_iter().find(|(spot, at)| *spot != "pit" && short(*at))
    else {
        return;
    };
    let no = Text::new("room-log-asked-not")
        .with("spot", Arg::Choice(spot))
        .with("target", Arg::Temperature(super::target()));
    if let Some(say) = sitting.says.get_mut(before) {
        say.text.insert(0, no);
    }
}

/// As many pieces as anyone asks for: no meat over heat reads less.
const MOST_PIECES: f64 = 12.0;

/// "2 thighs for me", "a wing and one leg": pieces that are counted, and nothing is read.
fn counts_portions(sentence: &Sentence) -> bool {
    let few = |at: usize| sentence.number(at).is_some_and(|n| n <= MOST_PIECES);
    let spot = |at: usize| sentence.of(at, "spot-").is_some_and(|spot| spot != "pit");
    let measured = |at: usize| sentence.amount(at).is_some_and(|amount| amount.unit().is_some());
    let many = (0..sentence.len()).any(|at| sentence.number(at).is_some() && !few(at) || measured(at));
    !many && (0..sentence.len()).any(|at| few(at) && spot(at + 1))
}

/// "3rd and 15 at the 35", "pit stop at exit 165".
fn counts_downs(sitting: &Sitting<'_>, text: &str) -> bool {
    let down = |word: &String| {
        let ends = ["st", "nd", "rd", "th"].iter().find_map(|end| word.strip_suffix(end));
        ends.and_then(|n| n.parse::<u8>().ok()).is_some_and(|n| f64::from(n) <= MOST_PIECES)
    };
    let road = |word: &String| sitting.lexicon().talk(word, "on-the-road");
    sitting.lexicon().talk_words(text).iter().any(|word| down(word) || road(word))
}

/// "24-17 cowboys", "120/80, my blood pressure", "it's 28 out": numbers said to everyone in a group, no spot named, beside words of
/// something else, of the weather or of the dial.
pub(super) fn is_talk(sitting: &Sitting<'_>, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let named =
        (0..sentence.len()).any(|at| sentence.of(at, "spot-").is_some() || of_its_breast(sitting, &sentence, at));
    let addressed = matches!(&sitting.heard.what, super::What::Said { addressed: true, .. });
    let elsewhere = ["ask-out", "heat-set", "people"].iter().any(|concept| sentence.has(concept));
    let day = |at: usize| ["weekday-", "month-"].iter().any(|day| sentence.of(at, day).is_some());
    let dated = (0..sentence.len()).any(day);
    let among = sitting.room.kind == RoomKind::Group && !addressed;
    among
        && (counts_portions(&sentence)
            || counts_downs(sitting, text)
            || of_others(sitting, &sentence)
            || is_of_elsewhere(sitting, text)
            || !named && is_unlike(sitting, text)
            || !named && (elsewhere || dated || !amend::is_plain(sitting, &sentence)))
}

/// "Bob says breast 155 at his place", "my blood pressure was 142 over 90".
fn is_of_elsewhere(sitting: &Sitting<'_>, text: &str) -> bool {
    let words = sitting.lexicon().talk_words(text);
    (1..=3).any(|count| words.windows(count).any(|some| sitting.lexicon().talk(&some.join(" "), "elsewhere")))
}

/// "141-138", "102/98", "mine is 142 over 90": two numbers without a name that this bird can't have, or that are written as scores are.
fn is_unlike(sitting: &Sitting<'_>, text: &str) -> bool {
    /// No bird cools by so much over the heat, nor is its breast so much hotter than its thigh.
    const MOST: f64 = 15.0;
    let score = text.split_whitespace().any(|word| {
        let number = |part: &str| !part.is_empty() && part.bytes().all(|b| b.is_ascii_digit());
        word.split_once(['-', '–']).is_some_and(|(one, other)| number(one) && number(other))
    });
    let Ok(Some(log)) = reading::read_log(text, &sitting.ground()) else { return score };
    let Some(plan) = sitting.room.plan.as_ref().filter(|_| log.readings.len() == 2) else { return score };
    let told = spots(sitting, &log);
    let last = Spots::last_of(&plan.readings);
    let hotter = |one: Option<Temperature>, other: Option<Temperature>| {
        one.zip(other).is_some_and(|(one, other)| in_fahrenheit(one) - in_fahrenheit(other) > MOST)
    };
    score || hotter(told.breast, told.thigh) || hotter(last.breast, told.breast) || hotter(last.thigh, told.thigh)
}

/// "Ben's turkey breast 120": the breast of the turkey, and no other food.
fn of_its_breast(sitting: &Sitting<'_>, sentence: &Sentence, at: usize) -> bool {
    let before = at.checked_sub(1).map(|before| reading::fold(sentence.raw(before))).unwrap_or_default();
    let owner = before.trim_end_matches('s').trim_end_matches(['\'', '’']);
    let mut hosts = sitting.room.plans().into_iter().filter_map(|plan| sitting.people.get(&plan.host));
    sentence.is(at, "bird-turkey-breast")
        && hosts.any(|host| [owner, &before].contains(&reading::fold(&host.name).as_str()))
}

/// "Kellys turkey is 166", "the chicken in the fryer is at 160", "leg is 150 dollars": another bird than ours, or none.
fn of_others(sitting: &Sitting<'_>, sentence: &Sentence) -> bool {
    /// Shorter than that it is no name with an s behind it.
    const NAME: usize = 4;
    let ours = sitting.room.plan.as_ref().map(|plan| order::kind(&plan.wish).name());
    let same = |kind: &str| kind == "any" || ours.is_some_and(|ours| ours.starts_with(kind) || kind.starts_with(ours));
    let other = |at: usize| sentence.of(at, "bird-").is_some_and(|kind| !same(kind));
    let bird = |name: &str| Sentence::read(name, sitting.lexicon()).of(0, "bird-").is_some();
    let here = |name: &str| {
        let mut members = sitting.room.members.iter().filter_map(|who| sitting.people.get(who));
        members.any(|known| reading::fold(&known.name) == name)
    };
    let thing = |at: usize| ["bird-", "spot-", "cooker-"].iter().any(|group| sentence.of(at, group).is_some());
    let unknown = |at: usize| matches!(sentence.item(at).map(|item| &item.what), Some(What::Word([])));
    let theirs = |at: usize| {
        let name = reading::fold(sentence.raw(at));
        let owner = name.ends_with('s') && name.chars().count() >= NAME && unknown(at);
        let stem = name.trim_end_matches('s').trim_end_matches(['\'', '’']);
        owner && thing(at + 1) && !amend::is_empty(sitting, &name) && !here(stem) && !bird(stem)
    };
    sentence.has("money") || (0..sentence.len()).any(|at| other(at) || theirs(at))
}

/// "Thermometer said 95 before that": read some time ago, and nobody says when. It is no reading of now.
fn is_of_before(sitting: &Sitting<'_>, text: &str, log: &Log) -> bool {
    let one_each =
        (1..log.readings.len()).all(|at| log.readings[..at].iter().all(|it| it.place != log.readings[at].place));
    log.at.is_none() && one_each && Sentence::read(text, sitting.lexicon()).has("reading-before")
}

/// The same of the bird over the heat, no spot being named: "at 1:30 it said 95" is taken for then, without an hour it is asked for.
/// `false`: it tells of no thermometer.
pub(super) fn said_before(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let cooking = sitting.room.plan.as_ref().is_some_and(|plan| !plan.is_off() && plan.on_since(sitting.now).is_some());
    let sentence = Sentence::read(text, sitting.lexicon());
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, sitting.lexicon());
    if !cooking || asks || !["reading-said", "heat-was"].iter().any(|said| sentence.has(said)) {
        return false;
    }
    match reading::read_log(text, &sitting.ground()) {
        Ok(Some(log)) if log.readings.len() == 1 && (log.at.is_some() || is_of_before(sitting, text, &log)) => {
            heard(sitting, text, true, false)
        }
        _ => false,
    }
}

/// Whether [`heard`] will take the words for readings.
pub(super) fn holds(sitting: &Sitting<'_>, text: &str, asked: bool) -> bool {
    reading::read_log(text, &sitting.ground())
        .is_ok_and(|log| log.is_some_and(|log| asked || log.readings.iter().any(|reading| reading.place.is_some())))
}

/// "Is 158 ok if it stays there 2 minutes?": a number asked about, and no spot named that it was read at.
pub(super) fn only_asks(sitting: &Sitting<'_>, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let named = (0..sentence.len()).any(|at| sentence.of(at, "spot-").is_some());
    let asks = sentence.has("ask-safe") || text.contains('?');
    // "Dinner at 530": nobody measures a dinner.
    let of_dinner = !named && (0..sentence.len()).any(|at| sentence.of(at, "meal-").is_some());
    let begins = reading::begins_as_question(text, sitting.lexicon());
    // "Is 250 ok for the oven": of the air it may be asked by name.
    let meat = (0..sentence.len()).any(|at| sentence.of(at, "spot-").is_some_and(|spot| spot != "pit"));
    let of_air = !meat
        && (text.contains('?') || sentence.has("ask-safe") && reading::opens_as_question(text, sitting.lexicon()));
    // "Oven to 275 then?"
    let toward = text.trim_end().ends_with('?')
        && !meat
        && named
        && sitting.lexicon().talk_words(text).iter().any(|word| sitting.lexicon().talk(word, "toward"));
    // "Is 160 enough in the breast?"
    let opens = text.contains('?') && sentence.has("ask-safe") && reading::opens_as_question(text, sitting.lexicon());
    begins || opens || of_dinner || toward || (of_air || !named && asks) && super::questions::is_question(sitting, text)
}

/// Whether the speaker has told a reading that an edit may correct.
pub(super) fn corrects(sitting: &Sitting<'_>) -> bool {
    sitting.speaker().is_some_and(|who| last_of(sitting, who).is_some())
}

/// The place in the list of what the person told last, if that was recently.
pub(super) fn last_of(sitting: &Sitting<'_>, who: PersonId) -> Option<usize> {
    let plan = sitting.room.plan.as_ref()?;
    let recent = |reading: &StoredReading| reading.told_at.is_some_and(|at| sitting.now - at <= CORRECTED_WITHIN);
    let last = plan.readings.iter().rposition(|reading| reading.by == Some(who) && recent(reading))?;
    let replaced = plan.readings.iter().any(|reading| reading.replaces == Some(last));
    (!replaced).then_some(last)
}

fn told(sitting: &mut Sitting<'_>, log: &Log, edited: bool) {
    let Some(who) = sitting.speaker() else { return sitting.notice(Text::new("room-need-person")) };
    let now = sitting.now;
    let corrected = if edited { last_of(sitting, who) } else { None };
    let Some(plan) = sitting.room.plan.as_mut() else {
        sitting.answer(Text::new("room-no-plan"));
        return;
    };
    if edited {
        plan.doubted.retain(|doubted| doubted.given.by != Some(who));
    }
    let before = corrected.and_then(|place| plan.readings.get(place)).map(|reading| reading.at);
    let spots = spots(sitting, log);
    let reading = stored(sitting, log, who);
    let reading = StoredReading { at: log.at.or(before).unwrap_or(now), replaces: corrected, ..reading };
    let reading = doubted::mends(sitting, who, &reading).unwrap_or(reading);
    let asked = plan_asks_off(sitting);
    doubted::judge(sitting, who, reading);
    // "Does it read that now?" is answered by what it reads.
    let short = |spot: Option<Temperature>| spot.is_some_and(|at| in_fahrenheit(at) < in_fahrenheit(super::target()));
    if asked && (short(spots.breast) || short(spots.thigh) || short(spots.wing)) {
        sitting.answer(super::done_yet::back_in()).urgency(Urgency::Safety);
    }
}

/// Whether it came off too cold, as far as was read, and was asked about a moment ago.
fn plan_asks_off(sitting: &Sitting<'_>) -> bool {
    const JUST_ASKED: TimeDelta = TimeDelta::minutes(10);
    let asked = sitting.room.plan.as_ref().and_then(|plan| plan.off_asked);
    asked.is_some_and(|at| sitting.now - at <= JUST_ASKED)
}

/// Readings that are of the plan in hand for sure, whatever else the words may be.
pub(super) fn noted(sitting: &mut Sitting<'_>, log: &Log, edited: bool) {
    told(sitting, log, edited);
}

/// Where the last number of whoever speaks now was read, if it was in one spot of meat and not long ago.
fn own_last_spot(sitting: &Sitting<'_>) -> Option<Place> {
    const LATELY: TimeDelta = TimeDelta::minutes(90);
    let (who, plan) = (sitting.speaker()?, sitting.room.plan.as_ref()?);
    let last = plan.counted().into_iter().rev().find(|reading| reading.by == Some(who))?;
    let other = last.breast_c.is_some() || last.stuffing_c.is_some() || last.wing_c.is_some();
    (last.thigh_c.is_some() && !other && sitting.now - last.at <= LATELY).then_some(Place::Thigh)
}

/// Puts each number in its place and on its scale. A number alone is of the spot that was read before, else the breast's.
pub(super) fn spots(sitting: &Sitting<'_>, log: &Log) -> Spots {
    let usual = if sitting.us_units() { Scale::Fahrenheit } else { Scale::Celsius };
    // `58/64/165C`: one letter speaks for all of them.
    let written = log.readings.iter().find_map(|reading| reading.scale);
    let mut spots = Spots::default();
    for reading in &log.readings {
        let temperature = reading.temperature(written.unwrap_or(usual));
        let spot = match reading.place.or_else(|| own_last_spot(sitting)) {
            Some(Place::Pit) => {
                spots.pit = Some(temperature);
                continue;
            }
            Some(Place::Thigh) => &mut spots.thigh,
            Some(Place::Stuffing) => &mut spots.stuffing,
            Some(Place::Wing) => &mut spots.wing,
            Some(Place::Breast) | None => &mut spots.breast,
        };
        // Two sides of one spot, or two thermometers: the colder one counts.
        *spot = Some(spot.map_or(temperature, |other| other.min(temperature)));
    }
    spots
}

/// Readings as they are kept, each number in its place.
pub(super) fn stored(sitting: &Sitting<'_>, log: &Log, who: PersonId) -> StoredReading {
    let spots = spots(sitting, log);
    StoredReading {
        at: log.at.unwrap_or(sitting.now),
        breast_c: spots.breast.map(in_celsius),
        thigh_c: spots.thigh.map(in_celsius),
        stuffing_c: spots.stuffing.map(in_celsius),
        wing_c: spots.wing.map(in_celsius),
        pit_c: spots.pit.map(in_celsius),
        ..of_air(0.0, Some(who), sitting.now)
    }
}

/// A reading of the air alone.
pub(super) fn of_air(pit_c: f64, by: Option<PersonId>, now: Moment) -> StoredReading {
    StoredReading {
        at: now,
        pit_c: Some(pit_c),
        breast_c: None,
        thigh_c: None,
        stuffing_c: None,
        wing_c: None,
        by,
        told_at: Some(now),
        sure: false,
        replaces: None,
    }
}

pub(super) fn note(sitting: &mut Sitting<'_>, who: PersonId, reading: &StoredReading) {
    if too_many(sitting, 1) {
        return;
    }
    // What was asked about is answered by the next number.
    if let Some(plan) = sitting.room.plan.as_mut() {
        plan.doubted.retain(|doubted| doubted.given.by != Some(who) || !doubted::same_spots(&doubted.given, reading));
    }
    let spots = spots_of(reading);
    keep(sitting, who, [reading.clone()]);
    let back = air::burns_again(sitting, spots.pit).or_else(|| burns_on::rises(sitting));
    let noted = Text::new("room-log-noted").with("parts", parts(&spots));
    answer(sitting, back.into_iter().chain([noted]), &spots);
}

/// As many readings as one bird's plan keeps: one a minute for sixteen hours.
const MOST: usize = 1000;

/// Whether so many more would be too many; says so.
pub(super) fn too_many(sitting: &mut Sitting<'_>, more: usize) -> bool {
    let full = sitting.room.plan.as_ref().is_some_and(|plan| plan.readings.len() + more > MOST);
    if full {
        sitting.answer(
            Text::new("cook-log-full")
                .with("most", Arg::Count(MOST as i64))
                .with("target", Arg::Temperature(super::target())),
        );
    }
    full
}

/// Adds readings to the plan as one change, and settles the looks that asked for them.
pub(super) fn keep(sitting: &mut Sitting<'_>, who: PersonId, readings: impl IntoIterator<Item = StoredReading>) {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    plan.remember("logged", None, Some(who), now);
    let before = plan.readings.len();
    plan.readings.extend(readings);
    if plan.readings.iter().skip(before).any(still_on) {
        plan.off_asked = None;
    }
    let is_due = |job: &&LiveJob| {
        let open = job.state == JobState::Waiting && job.at <= now + TimeDelta::minutes(15);
        open && job.step() == Some(Step::Check)
    };
    let due: Vec<u8> = plan.jobs.iter().filter(is_due).map(|job| job.nth).collect();
    for nth in due {
        plan.record(Step::Check, nth, now, true, Some(who));
    }
}

/// Only over heat does it reach its target, and only there is air that hot.
fn still_on(reading: &StoredReading) -> bool {
    let hot = |spot: Option<f64>, limit: Temperature| spot.is_some_and(|spot| celsius(spot) >= limit);
    hot(reading.breast_c, super::target()) || hot(reading.pit_c, fahrenheit(200.0))
}

/// Says what was noted and what it means for the bird, the plan and the dinner.
pub(super) fn answer(sitting: &mut Sitting<'_>, noted: impl IntoIterator<Item = Text>, spots: &Spots) {
    let Some(plan) = sitting.room.plan.as_ref() else { return };
    let undo = super::undo::newest(plan);
    // No number undoes hours without heat, and no hour is told for what is thrown away.
    if !plan.is_off() && plan.alarms.iter().any(|name| name == alarms::RAW_OVER) {
        let raw = Text::new("cook-air-raw").with("limit", Arg::Span(spans::HOT_MOST));
        let lines: Vec<Text> = noted.into_iter().chain([raw]).collect();
        sitting.answer_all(lines).urgency(Urgency::Safety).row([button("room-button-undo", &undo)]);
        return;
    }
    // A bird that is carried hot has a clock of its own.
    let carried = hot_road::meaning(sitting, spots).is_some();
    let hold = if carried { None } else { kept_hot::broken(sitting, spots) };
    kept_hot::begins_anew(sitting);
    let Some(plan) = sitting.room.plan.as_ref() else { return };
    // Readings move nothing until the bird is known to be on: they would push it away from the heat it is already on.
    let is_on = plan.on_since(sitting.now).is_some();
    let unmoved = Solved { outcome: Ok(Vec::new()), sight: None };
    let Solved { outcome, sight } = if is_on { sitting.solve_again() } else { unmoved };
    let mut lines: Vec<Text> = noted.into_iter().collect();
    let mut aloud = None;
    let read = lines.clone();
    let told = hold.or_else(|| meaning(sitting, spots)).or_else(|| hot_road::meaning(sitting, spots));
    let still = kept_hot::meaning(sitting, spots);
    let kept = told.is_none() && still.is_some();
    let told = told.or(still);
    lines.extend(told.or_else(|| standing(sitting)));
    let mut rows = vec![vec![button("room-button-undo", &undo)]];
    match &sight {
        Some(sight) => {
            let odd = sight.outlook.suspects.len();
            if odd > 0 {
                lines.push(Text::new("cook-odd").with("count", Arg::Count(i64::try_from(odd).unwrap_or(i64::MAX))));
            }
            if !sight.is_done() {
                lines.push(sight.line());
                stays_on(sitting, sight.next_look());
            }
            let news = if sight.cooks() { news(sitting, sight) } else { News::default() };
            aloud = privately_read(sitting, read, sight, &news);
            lines.extend(news.lines);
            let hotter = |button: &Button| matches!(Action::read(&button.data), Some(Action::Hotter(..)));
            if news.rows.iter().flatten().any(hotter) {
                lines.extend(birds::hotter_too(sitting));
            }
            rows.extend(news.rows);
            if sight.is_done() && below(sitting).is_none() {
                rows.extend(pull_now(sitting));
            }
        }
        // What was planned for a hot oven no longer holds.
        None => {
            let cool = super::heat::too_cool(sitting, spots.pit);
            if cool.is_none() {
                alarms::raise_unread(sitting);
            }
            lines.extend(cool.or_else(|| outlook(sitting)));
        }
    }
    sitting.says.extend(aloud);
    let on = on_unsaid(sitting);
    let say = sitting.answer_all(lines);
    say.buttons = rows;
    if let Some(on) = on {
        say.line(Text::new("room-log-on-unsaid")).row([labelled(plan_words::step_done(Step::On, 0), &on)]);
    }
    let mut outcome = outcome;
    if let (Ok(shifts), true) = (&mut outcome, kept) {
        // From when its two hours run has just been said.
        shifts.retain(|(step, ..)| *step != Step::Chill);
    }
    match (outcome, &sight) {
        // What the forecast does to dinner has been said, with its ways out.
        (_, Some(_)) => {}
        (Ok(shifts), None) => jobs::tell_shifts(sitting, &shifts),
        (Err(conflict), None) => jobs::tell_conflict(sitting, &conflict),
    }
    if let Some(sight) = &sight {
        alarms::raise(sitting, sight);
    }
    board::refresh(sitting);
}

/// What a reading told privately does to dinner is everyone's news, with the ways out that are the host's to choose.
fn privately_read(sitting: &Sitting<'_>, read: Vec<Text>, sight: &Foresight, news: &News) -> Option<Say> {
    let who = sitting.speaker().filter(|_| sitting.routed() && sitting.room.kind == RoomKind::Group)?;
    if news.lines.is_empty() && news.rows.is_empty() {
        return None;
    }
    let by = Text::new("cook-read-by").with("name", name(sitting, who));
    let lines = std::iter::once(by).chain(read).chain([sight.line()]).chain(news.lines.iter().cloned());
    let mut say = Say::of(To::Room(sitting.room.id), lines.collect());
    say.buttons = news.rows.clone();
    say.urgency = Urgency::Due; // an answer would go where it was read
    Some(say)
}

/// It is not done: whoever was called to take it off has measured, and is called afresh, not before the next look.
fn stays_on(sitting: &mut Sitting<'_>, look: Moment) {
    let pull = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(Step::Pull, 0));
    if let Some(job) = pull.filter(|job| job.state == JobState::Waiting && job.calls > 0) {
        job.calls = 0;
        job.rungs.clear();
        job.reached.clear();
        job.call_at = Some(job.at.max(look));
    }
}

/// It is at its targets: the answer calls for the pull, so the job doesn't have to at the same moment.
fn pull_now(sitting: &mut Sitting<'_>) -> Option<Vec<Button>> {
    const AGAIN: TimeDelta = TimeDelta::minutes(10);
    let now = sitting.now;
    let plan = sitting.room.plan.as_mut()?;
    let serial = plan.serial;
    let job = plan.job_mut(Step::Pull, 0).filter(|job| job.state == JobState::Waiting)?;
    job.calls = job.calls.max(1);
    if job.rungs.is_empty() {
        job.rungs.push(Rung::Room);
    }
    job.call_at = Some(now + AGAIN);
    let it = JobRef { serial, step: Step::Pull, nth: 0 };
    Some(vec![labelled(plan_words::step_done(Step::Pull, 0), &Action::Done(it))])
}

/// What has to be said of dinner, with ways out.
#[derive(Default)]
struct News {
    lines: Vec<Text>,
    rows: Vec<Vec<Button>>,
}

/// Spots read within this time are one look.
pub(super) const ONE_LOOK: TimeDelta = TimeDelta::minutes(10);
/// A change this long since it was last told is told again.
const WORTH_TELLING: TimeDelta = TimeDelta::minutes(10);

/// Says once how the forecast stands to dinner, when that has changed or grown by ten minutes.
fn news(sitting: &mut Sitting<'_>, sight: &Foresight) -> News {
    let (finish, standing, now) = (sight.finish(), sight.standing(), sitting.now);
    let is_done = sight.is_done();
    // A fire that goes out comes first; what becomes of dinner is said once it burns again, or for good.
    let dying = sight.outlook.doubts.iter().any(|doubt| matches!(doubt, heat::Doubt::FireDying(_)));
    let name = if dying { "fire" } else { standing.name() };
    let told = Told { at: now, p10: finish.p10, p50: finish.p50, p90: finish.p90, standing: name.into() };
    let Some(plan) = sitting.room.plan.as_mut() else { return News::default() };
    let serial = plan.serial;
    let last = plan.told.take();
    let stands = last.as_ref().filter(|(_, last)| last.standing == told.standing);
    let moved = stands.map(|(_, last)| told.p50 - last.p50);
    let same = moved.is_some_and(|moved| moved.abs() < WORTH_TELLING);
    let was = last.as_ref().map(|(_, last)| last.standing.clone());
    let kept = if same { last.as_ref().map_or(told.clone(), |(_, last)| last.clone()) } else { told.clone() };
    plan.told = Some((last.map_or(told, |(first, _)| first), kept));
    if same {
        return News::default();
    }
    match standing {
        _ if dying => News::default(),
        // Not as late as it was, or off the heat now: the new hour is offered without the rest of the speech.
        Standing::Late if is_done || moved.is_some_and(|moved| moved < TimeDelta::zero()) => {
            News { lines: Vec::new(), ..late(sight, serial) }
        }
        Standing::Late => late(sight, serial),
        Standing::Early if moved.is_none() => early(sight, serial, is_done),
        Standing::InTime if matches!(was.as_deref(), Some("late" | "tight" | "fire")) => {
            News { lines: vec![Text::new("cook-in-time-again")], rows: Vec::new() }
        }
        Standing::InTime | Standing::Tight | Standing::Early | Standing::Ahead => News::default(),
    }
}

fn late(sight: &Foresight, serial: u32) -> News {
    let mut news = News { lines: vec![Text::new("cook-late-choices")], rows: Vec::new() };
    let needed = sight.finish().p90 + (sight.dinner() - sight.latest().unwrap_or(sight.dinner()));
    news.rows.push(vec![dinner_button(sight, serial, quarter_after(needed))]);
    let finish = sight.finish();
    // The mildest setting that saves the hour, else the hottest there is.
    let settings: Vec<_> = order::hotter_settings(&sight.cook.heat)
        .into_iter()
        .filter_map(|setting| Some((setting, sight.hotter(setting).filter(|at| finish.p50 - *at >= WORTH_TELLING)?)))
        .collect();
    let saves = settings.iter().find(|(_, at)| sight.latest().is_some_and(|latest| *at <= latest));
    if let Some((setting, at)) = saves.or(settings.last()) {
        let text = Text::new("cook-late-hotter").with("setting", Arg::Temperature(*setting));
        news.lines.push(text.with("about", sight.clock(forecast::rounded(*at, false))));
        let label = Text::new("cook-button-hotter").with("setting", Arg::Temperature(*setting));
        news.rows.push(vec![labelled(label, &Action::Hotter(serial, in_fahrenheit(*setting).round() as u16))]);
    }
    if sight.cook.bird.form != Form::Pieces {
        news.lines.push(Text::new("cook-late-carve").with("target", Arg::Temperature(super::target())));
    }
    news
}

fn early(sight: &Foresight, serial: u32, is_done: bool) -> News {
    let off = sight.finish().p50;
    let hold = Text::new("cook-early")
        .with("done", Arg::Choice(if is_done { "yes" } else { "no" }))
        .with("hot", Arg::Temperature(fahrenheit(140.0)))
        .with("until", sight.clock(forecast::rounded(off + spans::HOT_MOST, is_done)))
        .with("dinner", sight.clock(sight.dinner()))
        .with("target", Arg::Temperature(super::target()));
    // On the road it stands anyway.
    const UNHURRIED: TimeDelta = TimeDelta::minutes(10);
    let road = sight.latest().map_or(TimeDelta::zero(), |latest| sight.dinner() - latest + UNHURRIED);
    let sooner = quarter_after(sight.finish().p90 + road.max(spans::STAND + spans::CARVING));
    let rows = if sooner < sight.dinner() { vec![vec![dinner_button(sight, serial, sooner)]] } else { Vec::new() };
    News { lines: vec![hold], rows }
}

fn dinner_button(sight: &Foresight, serial: u32, at: Moment) -> Button {
    let label = Text::new("cook-button-dinner").with("at", sight.clock(at));
    labelled(label, &Action::Dinner(serial, at.timestamp().div_euclid(60)))
}

/// The next quarter of an hour.
fn quarter_after(at: Moment) -> Moment {
    let seconds = (at.timestamp() + 899).div_euclid(900) * 900;
    Moment::from_timestamp(seconds, 0).unwrap_or(at)
}

/// Dinner moves to what was offered.
pub(super) fn move_dinner(sitting: &mut Sitting<'_>, serial: u32, minute: i64) {
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let to = minute.checked_mul(60).and_then(|seconds| Moment::from_timestamp(seconds, 0));
    match to.filter(|to| *to > sitting.now && sitting.room.plan.as_ref().is_some_and(|plan| plan.serial == serial)) {
        Some(to) => {
            late::close(sitting);
            moves::to_then(sitting, to);
        }
        None => sitting.notice(Text::new("room-stale")),
    }
}

pub(super) fn spots_of(reading: &StoredReading) -> Spots {
    Spots {
        pit: reading.pit_c.map(celsius),
        breast: reading.breast_c.map(celsius),
        thigh: reading.thigh_c.map(celsius),
        stuffing: reading.stuffing_c.map(celsius),
        wing: reading.wing_c.map(celsius),
    }
}

/// The first readings come, and nobody has said that the bird is on. Asked once: the readings themselves say that it is.
fn on_unsaid(sitting: &Sitting<'_>) -> Option<Action> {
    let plan = sitting.room.plan.as_ref()?;
    if plan.readings.iter().any(|reading| reading.told_at.is_some_and(|told| told < sitting.now)) {
        return None;
    }
    let on = plan.job(Step::On, 0).filter(|job| job.state == JobState::Waiting)?;
    Some(Action::Done(JobRef { serial: plan.serial, step: Step::On, nth: on.nth }))
}

/// What was understood.
pub(super) fn parts(spots: &Spots) -> Arg {
    let part = |(spot, temperature): (&'static str, Option<Temperature>)| {
        Some(
            Text::new("room-log-spot")
                .with("spot", Arg::Choice(spot))
                .with("temperature", Arg::Temperature(temperature?)),
        )
    };
    Arg::List(spots.named().into_iter().filter_map(part).collect())
}

/// What the numbers mean for safety: 165 °F in every spot, by the authority; one spot alone proves nothing.
fn meaning(sitting: &Sitting<'_>, spots: &Spots) -> Option<Text> {
    let target = super::target();
    let there = |spot: Option<Temperature>| spot.map(|spot| in_fahrenheit(spot) >= in_fahrenheit(target));
    let plan = sitting.room.plan.as_ref()?;
    let over = plan.job(Step::Pull, 0).is_some_and(|job| job.state != JobState::Waiting);
    // What was read there before still stands: of breast and thigh, what was read just now.
    let last = Spots::last_of(&plan.readings);
    let lately: Vec<StoredReading> =
        plan.counted().into_iter().filter(|reading| sitting.now - reading.at <= ONE_LOOK).cloned().collect();
    let look = Spots::last_of(&lately);
    let meat = spots.breast.or(spots.thigh).or(spots.wing.filter(|_| there(spots.wing) == Some(true))).is_some();
    let now = |told: Option<Temperature>, look: Option<Temperature>| told.or(look.filter(|_| meat));
    let (breast, thigh) = (now(spots.breast, look.breast), now(spots.thigh, look.thigh));
    let id = match (there(breast), there(thigh)) {
        _ if over => return None,
        (Some(true), Some(true)) if there(last.stuffing) == Some(false) && !stuffing::is_out(plan) => {
            "room-log-stuffing-behind"
        }
        // A bird that is stuffed is not done before its middle is.
        (Some(true), Some(true)) if plan.wish.stuffed == Some(true) && last.stuffing.is_none() => {
            "room-log-stuffing-unread"
        }
        (Some(true), Some(true)) if there(last.wing) == Some(false) => "room-log-wing-behind",
        (None, None) if there(spots.wing) == Some(false) => "room-log-wing-behind",
        (Some(true), Some(true)) if there(last.wing) == Some(true) => "room-log-all",
        (Some(true), Some(true)) => "room-log-both",
        (Some(true), Some(false)) => "room-log-thigh-behind",
        (Some(false), Some(true)) => "room-log-breast-behind",
        (Some(true), None) | (None, Some(true)) => "room-log-one-spot",
        _ => return None,
    };
    // Heat does not undo hours without it.
    let id = if ["room-log-all", "room-log-both"].contains(&id) && alarms::stood_too_long(plan) {
        "room-log-too-long"
    } else {
        id
    };
    Some(Text::new(id).with("target", Arg::Temperature(target)))
}

/// Off the heat and whole, what it reads changes nothing of its two hours; never hot enough, it goes back.
pub(super) fn standing(sitting: &Sitting<'_>) -> Option<Text> {
    let plan = sitting.room.plan.as_ref().filter(|plan| !plan.held_hot && !hot_road::is_hot(plan))?;
    let carved = plan.facts.iter().any(|fact| fact.done && fact.step == Step::Carve.name());
    let off = alarms::off_at(plan).filter(|_| !carved)?;
    let by = off + hot_day::most(plan);
    if by < sitting.now {
        return Some(hot_day::over(plan));
    }
    let text = Text::new("cook-standing").with("off", Arg::Clock(off)).with("by", Arg::Clock(by));
    under(sitting).or(Some(text.with("hot", Arg::Temperature(fahrenheit(140.0)))))
}

/// A spot whose last reading is below the authority's figure, however long ago: which, what, when. What has warmed since nobody has
/// measured.
///
/// Off the heat it cools, or climbs a little: what counts is the last reading before the pull, or the hottest since.
pub(super) fn below(sitting: &Sitting<'_>) -> Option<(&'static str, Temperature, Moment)> {
    let plan = sitting.room.plan.as_ref()?;
    /// A bird that has just come off is as hot as it was: what reads less now was never hotter there.
    const STILL_AS_HOT: TimeDelta = TimeDelta::minutes(15);
    let off = alarms::off_at(plan);
    let counted = plan.counted();
    let last = |of: fn(&StoredReading) -> Option<f64>| {
        let read: Vec<_> = counted.iter().filter_map(|reading| Some((celsius(of(reading)?), reading.at))).collect();
        let (before, since): (Vec<_>, Vec<_>) = read.into_iter().partition(|(_, at)| off.is_none_or(|off| *at <= off));
        let (newest, at) = since.last().copied().unzip();
        let just_off = at.zip(off).is_some_and(|(at, off)| at - off <= STILL_AS_HOT);
        if let Some(cold) = newest.filter(|newest| just_off && in_fahrenheit(*newest) < in_fahrenheit(super::target()))
        {
            return Some((cold, at?));
        }
        let hottest = since.into_iter().reduce(|one, other| if other.0 > one.0 { other } else { one });
        let told = [before.last().copied(), hottest];
        told.into_iter().flatten().reduce(|one, other| if other.0 > one.0 { other } else { one })
    };
    let spots = [
        ("breast", last(|reading| reading.breast_c)),
        ("thigh", last(|reading| reading.thigh_c)),
        ("wing", last(|reading| reading.wing_c)),
        ("stuffing", last(|reading| reading.stuffing_c).filter(|_| !stuffing::is_out(plan))),
    ];
    spots.into_iter().find_map(|(spot, read)| {
        let (read, at) = read?;
        (in_fahrenheit(read) < in_fahrenheit(super::target()) - 0.5).then_some((spot, read, at))
    })
}

/// What is said of a bird that is cut up and was never read at its target.
pub(super) fn under(sitting: &Sitting<'_>) -> Option<Text> {
    let (spot, read, at) = below(sitting)?;
    let text = Text::new("room-carve-under").with("spot", Arg::Choice(spot)).with("read", Arg::Temperature(read));
    Some(text.with("at", Arg::Clock(at)).with("target", Arg::Temperature(super::target())))
}

/// What is asked of a bird that was cut up and was never measured, as far as anyone has said.
pub(super) fn unread(sitting: &Sitting<'_>) -> Option<Text> {
    let (breast, thigh) = Spots::last_of(&sitting.room.plan.as_ref()?.readings).meat();
    let unread = breast.is_none() && thigh.is_none();
    unread.then(|| Text::new("room-carve-unread").with("target", Arg::Temperature(super::target())))
}

/// `/when`.
pub(super) fn when(sitting: &mut Sitting<'_>) {
    let Some(plan) = &sitting.room.plan else {
        sitting.answer(Text::new("room-no-plan"));
        return;
    };
    let dinner = plan.wish.dinner;
    if spoiled::says_gone(sitting) {
        return;
    }
    if let Some(sight) = forecast::foresight(sitting) {
        let chart = Chart::of(&sight, sitting.now);
        let say = sitting.answer_all(sight.lines());
        say.file = Some(File { name: "carvetime.png".into(), content: FileContent::Picture(Box::new(chart)) });
        return;
    }
    if let Some(off) = sitting.room.plan.as_ref().filter(|plan| plan.is_off()).and_then(alarms::off_at) {
        return off_the_heat(sitting, off);
    }
    match outlook(sitting) {
        Some(text) => sitting.answer(text),
        None => sitting.answer(
            Text::new("room-when-dinner").with("dinner", dinner.map_or(Arg::Verbatim(String::new()), Arg::DayClock)),
        ),
    };
}

/// Since when it is off, and what comes next.
fn off_the_heat(sitting: &mut Sitting<'_>, off: Moment) {
    let Some(plan) = &sitting.room.plan else { return };
    let ahead = plan.wish.dinner.filter(|dinner| *dinner > sitting.now);
    let mut text = Text::new("room-when-off").with("since", Arg::Clock(off));
    text = match ahead {
        Some(dinner) => text.with("eaten", Arg::Choice("no")).with("dinner", Arg::DayClock(dinner)),
        None => text.with("eaten", Arg::Choice("yes")),
    };
    let coming = |job: &&LiveJob| job.step().is_some() && job.at > sitting.now;
    let next = plan.waiting().filter(coming).min_by_key(|job| job.at);
    let next = next.and_then(|job| Some((job.at, plan_words::step_name(job.step()?, job.nth))));
    let line = next.map(|(at, what)| Text::new("room-line").with("when", Arg::DayClock(at)).with("what", what.into()));
    sitting.answer(text).lines(line);
}

/// When the bird comes off, by what is known now.
pub(super) fn outlook(sitting: &Sitting<'_>) -> Option<Text> {
    let plan = sitting.room.plan.as_ref()?;
    let pulled = plan.job(Step::Pull, 0).is_none_or(|job| job.state != JobState::Waiting);
    if pulled {
        return None;
    }
    let (from, to, dinner) = (plan.ready_from?, plan.ready_to?, plan.wish.dinner?);
    Some(
        Text::new("room-when")
            .with("from", Arg::DayClock(from))
            .with("to", Arg::Clock(to))
            .with("dinner", Arg::DayClock(dinner)),
    )
}

/// Whether the words, said to the bot before readings are looked for, tell what a thermometer in the bird shows.
pub(super) fn names_meat(sitting: &Sitting<'_>, text: &str) -> bool {
    let cooking = sitting.room.plan.as_ref().is_some_and(|plan| !plan.is_off() && plan.job(Step::On, 0).is_some());
    let in_bird = |log: &Log| log.readings.iter().any(|r| matches!(r.place, Some(Place::Breast | Place::Thigh)));
    // Numbers alone may be anything.
    let sentence = Sentence::read(text, sitting.lexicon());
    let named = ["spot-breast", "spot-thigh"].iter().any(|spot| sentence.has(spot));
    cooking && named && reading::read_log(text, &sitting.ground()).is_ok_and(|log| log.as_ref().is_some_and(in_bird))
}

/// Whether the bird is over the heat, as far as anyone knows.
pub(super) fn cooks(sitting: &Sitting<'_>) -> bool {
    sitting.room.plan.as_ref().is_some_and(|plan| plan.on_since(sitting.now).is_some() && !plan.is_off())
}

/// Whether words in the room may be readings: from the fire on, until dinner is long over.
pub(super) fn expected(sitting: &Sitting<'_>) -> bool {
    const BEFORE: TimeDelta = TimeDelta::hours(6);
    const AFTER: TimeDelta = TimeDelta::hours(6);
    sitting.room.plan.as_ref().is_some_and(|plan| {
        let on =
            plan.job(Step::On, 0).is_some_and(|job| job.state != JobState::Waiting || job.at <= sitting.now + BEFORE);
        on && plan.job(Step::Serve, 0).is_none_or(|job| job.at + AFTER > sitting.now)
    })
}
